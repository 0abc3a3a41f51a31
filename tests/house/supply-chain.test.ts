// What comes with an import: the bundles of the root, of each room and of each path, walked to their last file.
import { join } from "node:path";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { exists, read, rooms, root, subpaths } from "./sources.js";

interface Manifest {
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

interface Walked {
  readonly files: readonly string[];
  readonly packages: readonly string[];
}

/** The package of an imported path: `pure-rand` of `pure-rand/generator/mersenne`. */
const packageOf = (path: string): string =>
  path.startsWith("node:") ? path : path.split("/", path.startsWith("@") ? 2 : 1).join("/");

/** What a bundle of each entry is made of: all are read in one go, and each is walked by itself. */
const bundles = async (entries: readonly string[] | string): Promise<(entry: string) => Walked> => {
  const { metafile } = await build({
    absWorkingDir: root,
    ...(typeof entries === "string"
      ? { stdin: { contents: entries, resolveDir: root } }
      : { entryPoints: [...entries] }),
    bundle: true,
    format: "esm",
    packages: "external",
    write: false,
    metafile: true,
    outdir: "out",
    logLevel: "silent",
  });
  return (entry) => {
    const files = new Set([entry]);
    const packages = new Set<string>();
    for (const file of files) {
      const input = metafile.inputs[file];
      if (input === undefined) throw new Error(`${file} is not in the bundle`);
      for (const { path, external } of input.imports) {
        if (external) packages.add(packageOf(path));
        else files.add(path);
      }
    }
    return { files: [...files], packages: [...packages].sort() };
  };
};

const manifestOf = (name: string): Manifest =>
  JSON.parse(read(join("node_modules", name, "package.json"))) as Manifest;

/** A package and all that it depends on. */
const closure = (name: string, seen: Set<string> = new Set()): ReadonlySet<string> => {
  if (seen.has(name)) return seen;
  seen.add(name);
  for (const needed of Object.keys(manifestOf(name).dependencies ?? {})) closure(needed, seen);
  return seen;
};

describe("what comes with an import", async () => {
  const walk = await bundles(
    ["", ...[...rooms(), ...subpaths()].map((path) => `${path}/`)].map((path) => `src/${path}index.ts`),
  );

  it("of the root is this library, and no package, built-in module or file of another", () => {
    const { files, packages } = walk("src/index.ts");
    expect(packages).toEqual([]);
    expect(files.length).toBeGreaterThan(100);
    expect(files.filter((file) => !file.startsWith("src/"))).toEqual([]);
  });

  it("of a room is this library too", () => {
    const found = rooms().map((room) => [room, walk(`src/${room}/index.ts`)] as const);
    expect(found.filter(([, { packages }]) => packages.length > 0)).toEqual([]);
  });

  it("of another path is at most an optional package, in the table of DEVELOPERS.md with its license", () => {
    const loaded = new Map<string, string[]>();
    for (const path of subpaths()) {
      for (const name of walk(`src/${path}/index.ts`).packages) {
        loaded.set(name, [...(loaded.get(name) ?? []), path]);
      }
    }
    const peers = (JSON.parse(read("package.json")) as Manifest).peerDependencies ?? {};
    expect([...loaded.keys()].sort()).toEqual(Object.keys(peers).sort());

    const listed = [
      ...read("DEVELOPERS.md").matchAll(
        /^\| `([\w-]+)` \| (\S+) \| ((?:`ratewright\/\S+?`(?:, )?)+) \| (.+) \|$/gm,
      ),
    ];
    const rows = [...loaded].map(([name, paths]) => {
      const others = [...closure(name)].filter((other) => other !== name).sort();
      const brings =
        others.map((other) => `\`${other}\` (${manifestOf(other).license})`).join(", ") || "nothing";
      return [
        name,
        manifestOf(name).license,
        paths.map((path) => `\`ratewright/${path}\``).join(", "),
        brings,
      ];
    });
    expect(listed.map(([, ...cells]) => cells)).toEqual(rows.sort(([a = ""], [b = ""]) => (a < b ? -1 : 1)));
  });

  it("has a bound on its size, for the root and every path: npm run size weighs them", () => {
    const { "size-limit": rows } = JSON.parse(read("package.json")) as {
      readonly "size-limit": readonly { readonly path: string; readonly import: string }[];
    };
    const whole = rows.filter((row) => row.import === "*").map(({ path }) => path);
    const paths = ["", ...[...rooms(), ...subpaths()].map((path) => `${path}/`)];
    expect(whole.sort()).toEqual(paths.map((path) => `dist/esm/${path}index.js`).sort());
  });

  it("is seen when it is there", async () => {
    const contents = 'import "node:fs"; import "highs"; export * from "./src/numeric/index.js";';
    const { packages } = (await bundles(contents))("<stdin>");
    expect(packages).toEqual(["highs", "node:fs"]);
  });

  it("has its license beside it", () => {
    expect((JSON.parse(read("package.json")) as Manifest).license).toBe("MIT");
    expect(exists("LICENSE") && read("LICENSE")).toContain("MIT License");
  });
});
