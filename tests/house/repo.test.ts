import { describe, expect, it } from "vitest";
import { exists, read, rooms, subpaths, trackedFiles } from "./sources.js";

const topLevel = new Set([
  ".ci",
  ".editorconfig",
  ".github",
  ".gitignore",
  ".npmrc",
  "CHANGELOG.md",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "biome.json",
  "docs",
  "examples",
  "package-lock.json",
  "package.json",
  "src",
  "tests",
  "tsconfig.json",
  "tsup.config.ts",
  "vitest.config.ts",
]);

/** Rooms that stand on a path of their own only, and why: who imports the root does not load them. */
const notInRoot: Readonly<Record<string, string>> = {
  teach: "it has every room's formulas as data, which an application that computes does not need",
};

/** What no file of the repository may contain, and what it is. */
const unwanted: readonly (readonly [RegExp, string])[] = [
  [/(?<![\w./-])\/(work|tmp|root|home|Users)\/[\w.]/, "a path of one machine"],
  [/\bregistry\.[a-z\d-]+\.[a-z]+|\bnpmjs\.(com|org)\b/i, "the host of a registry"],
  [/\b(session|prompt|transcript)s?\b|\bseed documents?\b/i, "a word of the workshop, not of the library"],
];

/** Uses of such words that belong here: file, the whole line without its margin, reason. */
const exceptions: readonly { readonly file: string; readonly line: string; readonly reason: string }[] = [];

/** Files that are not read for words: this one, which has to name them, and what tools write. */
const notRead = new Set(["tests/house/repo.test.ts"]);
const onlyHosts = new Set(["package-lock.json"]);

const isText = (path: string): boolean => !/\.(png|jpe?g|gif|ico|woff2?|zip|gz|tgz|wasm)$/.test(path);

interface Manifest {
  readonly name: string;
  readonly exports: Readonly<Record<string, unknown>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
  readonly peerDependenciesMeta?: Readonly<Record<string, { readonly optional?: boolean }>>;
}

const entry = (folder: string): unknown => {
  const side = (kind: string): unknown => ({
    types: `./dist/${kind}/${folder}index.d.ts`,
    default: `./dist/${kind}/${folder}index.js`,
  });
  return { import: side("esm"), require: side("cjs") };
};

describe("the repository", () => {
  const tracked = trackedFiles();
  const manifest = JSON.parse(read("package.json")) as Manifest;

  it("keeps the top calm", () => {
    const top = [...new Set(tracked.map((path) => path.split("/")[0] ?? path))];
    expect(top.filter((name) => !topLevel.has(name))).toEqual([]);
  });

  it("exports the root and, by one pattern, every folder with an index: ES module and CommonJS", () => {
    expect(manifest.exports).toEqual({
      ".": entry(""),
      "./*": entry("*/"),
      "./package.json": "./package.json",
    });
  });

  it("re-exports every room from the root", () => {
    const index = exists("src/index.ts") ? read("src/index.ts") : "";
    const left = rooms().filter((room) => !index.includes(`"./${room}/index.js"`));
    expect(left).toEqual(Object.keys(notInRoot));
  });

  it("re-exports no subpath from a room: who imports the room does not load what it needs", () => {
    const loaded = subpaths().filter((part) => {
      const room = part.split("/")[0] as string;
      return read(`src/${room}/index.ts`).includes(`./${part.slice(room.length + 1)}/index.js`);
    });
    expect(loaded).toEqual([]);
  });

  it("has no dependencies at run time, but for optional ones that a subpath loads", () => {
    expect(manifest.dependencies ?? {}).toEqual({});
    const optional = Object.entries(manifest.peerDependenciesMeta ?? {}).filter(([, meta]) => meta.optional);
    expect(optional.map(([name]) => name)).toEqual(Object.keys(manifest.peerDependencies ?? {}));
  });

  it("names no machine, no registry host and nothing of how it was made", () => {
    const found = tracked
      .filter((path) => isText(path) && !notRead.has(path))
      .flatMap((path) => {
        const patterns = onlyHosts.has(path) ? unwanted.slice(0, 2) : unwanted;
        return read(path)
          .split("\n")
          .flatMap((line, at) =>
            patterns
              .filter(([pattern]) => pattern.test(line))
              .map(([, what]) => ({ file: path, number: at + 1, line: line.trim(), what })),
          );
      });
    const unexpected = found.filter(
      ({ file, line }) => !exceptions.some((exception) => exception.file === file && exception.line === line),
    );
    expect(unexpected).toEqual([]);
  });

  it("would notice each of them", () => {
    const what = (line: string): string[] =>
      unwanted.filter(([pattern]) => pattern.test(line)).map(([, it]) => it);
    expect(what("see /home/somebody/notes.md")).toEqual(["a path of one machine"]);
    expect(what("registry=https://registry.example.org/")).toEqual(["the host of a registry"]);
    expect(what("written in one session")).toEqual(["a word of the workshop, not of the library"]);
    expect(what("seed 2 lb/1000 ft2, water promptly, docs/work/plan.md, https://example.org/home/x")).toEqual(
      [],
    );
  });

  it("has a lock file that says nothing of where a package was fetched", () => {
    expect(read("package-lock.json")).not.toMatch(/"resolved": "https?:/);
  });
});
