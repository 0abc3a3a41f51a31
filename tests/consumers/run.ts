// Packs the library and uses the package as a stranger would: from an ES module, from CommonJS and
// from TypeScript, in a temporary folder that knows nothing of this repository. Needs a build.
import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { blocksOfPage, runBlock } from "../examples/blocks.js";
import { writeAddOn } from "./add-on.js";
import { compilers, installed } from "./compilers.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const here = dirname(fileURLToPath(import.meta.url));
/** What can be imported: `ratewright`, `ratewright/quantity`, ... */
const names = readdirSync(join(root, "dist/esm"), { recursive: true, encoding: "utf8" })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => /(^|\/)index\.js$/.test(path))
  .map((path) => `ratewright/${path.replace(/\/?index\.js$/, "")}`.replace(/\/$/, ""));

/** Runs a program and gives back what it printed; a failure stops everything. */
const run = (folder: string, command: string, ...args: string[]): string => {
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd: folder,
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  if (status !== 0) {
    throw new Error(`${command} ${args.join(" ")}\n${error?.message ?? ""}${stdout}${stderr}`);
  }
  return stdout.trim();
};

const node = (folder: string, ...args: string[]): string => run(folder, process.execPath, ...args);

const equal = (what: string, actual: string, expected: string): void => {
  if (actual !== expected) throw new Error(`${what}: expected ${expected}, got ${actual}`);
  console.log(`  ${what}: ${actual}`);
};

/** What `ratewright/teach/problems` and `ratewright/teach/qti` need, with what that needs. */
const peers = ["pure-rand", "fast-xml-builder", "path-expression-matcher", "xml-naming"];

/** A project that has the package installed from the packed file, and nothing else. */
const project = (parent: string, name: string, type: "module" | "commonjs", packed: string): string => {
  const folder = join(parent, name);
  mkdirSync(folder);
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name, private: true, type }));
  run(folder, "npm", "install", "--offline", "--no-audit", "--no-fund", packed);
  const installed = readdirSync(join(folder, "node_modules")).filter((entry) => !entry.startsWith("."));
  equal(`${name} has installed`, installed.join(), "ratewright");
  // Two paths load an optional package as they open; who imports them installs it.
  for (const peer of peers)
    cpSync(join(root, "node_modules", peer), join(folder, "node_modules", peer), { recursive: true });
  return folder;
};

/** Quantities and records of one copy of the package in the hands of another; only `instanceof` tells them apart. */
const copies = `
import { createRequire } from "node:module";
import * as here from "ratewright";
const there = createRequire(import.meta.url)("ratewright");
const target = there.quantity(0.9, "lb/1000 ft2", "N");
const feed = there.fertilizer({ id: "feed-a", analysis: "24-0-11", package: there.quantity(50, "lb") });
const cloned = here.productRate(structuredClone(target), structuredClone(feed)).in("lb/1000 ft2");
const parsed = here.productRate(target, here.fertilizer(JSON.parse(JSON.stringify(feed)))).in("lb/1000 ft2");
const sum = here.quantity(0.9, "lb/1000 ft2", "N").plus(target).value;
let name;
try {
  there.productRate(here.quantity(1, "lb/1000 ft2", "P2O5"), feed);
} catch (error) {
  name = error.name;
}
console.log(cloned, parsed, sum, target instanceof here.Quantity, name);
`;

/** A package on top of this one must find a name for each type that its declarations need. */
const checkAddOn = (folder: string, compilerOptions: object): void => {
  console.log("a package on top of this one, which writes its declarations");
  const required = createRequire(join(folder, "here.cjs"));
  const exported = names.map((name) => [name, Object.keys(required(name))] as const);
  writeAddOn(folder, new Map(exported));
  const config = join(folder, "add-on.json");
  const options = { ...compilerOptions, declaration: true, emitDeclarationOnly: true, skipLibCheck: true };
  writeFileSync(config, JSON.stringify({ compilerOptions: options, include: ["add-on"] }));
  node(folder, installed(root).program, "-p", config);
  console.log(`  has a name for each type in ${exported.flatMap(([, all]) => all).length} exports`);
};

const checkAll = async (parent: string): Promise<void> => {
  if (!existsSync(join(root, "dist/esm/index.js"))) throw new Error("there is no build: npm run build");

  const [made] = JSON.parse(
    run(root, "npm", "pack", "--json", "--ignore-scripts", "--pack-destination", parent),
  ) as { filename: string; size: number; files: { path: string }[] }[];
  if (made === undefined) throw new Error("npm pack made nothing");
  const packed = join(parent, made.filename);
  console.log(`packed ${made.filename}: ${made.files.length} files, ${made.size} bytes`);
  const strange = made.files.filter(
    ({ path }) =>
      !/^(dist\/|docs\/(cases\/)?[\w-]+\.md$|docs\/figures\/[\w-]+\.svg$|docs\/check-values(\.schema)?\.json$|examples\/park-visit\/job\.json$|package\.json$|(README|CHANGELOG)\.md$|LICENSE$)/.test(
        path,
      ),
  );
  equal("files that should not be packed", String(strange.length), "0");

  console.log("an ES module in JavaScript");
  const esm = project(parent, "esm", "module", packed);
  cpSync(join(here, "calculation.mjs"), join(esm, "calculation.mjs"));
  equal("rate in lb/1000 ft2", node(esm, "calculation.mjs"), "3.75");
  writeFileSync(join(esm, "all.mjs"), `for (const name of ${JSON.stringify(names)}) await import(name);`);
  node(esm, "all.mjs");
  console.log(`  imports ${names.join(", ")}`);

  console.log("CommonJS in JavaScript");
  const cjs = project(parent, "cjs", "commonjs", packed);
  cpSync(join(here, "calculation.cjs"), join(cjs, "calculation.cjs"));
  equal("rate in lb/1000 ft2", node(cjs, "--no-experimental-require-module", "calculation.cjs"), "3.75");
  writeFileSync(join(cjs, "all.cjs"), `for (const name of ${JSON.stringify(names)}) require(name);`);
  node(cjs, "--no-experimental-require-module", "all.cjs");
  console.log(`  requires ${names.join(", ")}`);

  console.log("both in one process, and what structuredClone and JSON leave");
  writeFileSync(join(esm, "copies.mjs"), copies);
  equal("answers", node(esm, "copies.mjs"), "3.75 3.75 1.8 false RatewrightError");

  console.log("TypeScript, strict, with the declarations checked");
  const typed = project(parent, "typed", "module", packed);
  const compilerOptions = {
    target: "es2022",
    lib: ["es2022"],
    types: [],
    module: "nodenext",
    moduleResolution: "nodenext",
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    skipLibCheck: false,
    outDir: "out",
    rootDir: ".",
  };
  writeFileSync(
    join(typed, "tsconfig.json"),
    JSON.stringify({ compilerOptions, include: ["*.mts", "*.cts"] }),
  );
  const calculation = readFileSync(join(here, "calculation.ts"), "utf8");
  writeFileSync(join(typed, "modern.mts"), calculation);
  writeFileSync(join(typed, "classic.cts"), calculation);
  const all = names.map((name, at) => `export * as room${at} from "${name}";`).join("\n");
  writeFileSync(join(typed, "all.mts"), all);
  writeFileSync(join(typed, "all.cts"), all);
  const readme = existsSync(join(root, "README.md")) ? readFileSync(join(root, "README.md"), "utf8") : "";
  const [first] = blocksOfPage("README.md", readme);
  if (first === undefined) throw new Error("README.md has no example in TypeScript");
  writeFileSync(join(typed, "readme.mts"), first.code);
  for (const { version, program } of compilers(root, parent)) {
    rmSync(join(typed, "out"), { recursive: true, force: true });
    node(typed, program, "-p", ".");
    console.log(`  compiles with TypeScript ${version}, which refuses what it has to refuse`);
  }
  const print = (file: string): string => `import("./out/${file}").then(({ rate }) => console.log(rate))`;
  equal("rate in lb/1000 ft2 (.mts)", node(typed, "-e", print("modern.mjs")), "3.75");
  equal("rate in lb/1000 ft2 (.cts)", node(typed, "-e", print("classic.cjs")), "3.75");

  checkAddOn(typed, compilerOptions);

  console.log(`the first example of README.md (line ${first.line})`);
  const required = createRequire(join(cjs, "here.cjs"));
  await runBlock(first, Object.fromEntries(names.map((name) => [name, required(name)])));
  console.log("  gives what it says, from CommonJS");
  const loader = join(esm, "load.mjs");
  writeFileSync(loader, "export const load = (name) => import(name);");
  const { load } = (await import(pathToFileURL(loader).href)) as { load: (name: string) => Promise<unknown> };
  const loaded = await Promise.all(names.map(async (name) => [name, await load(name)] as const));
  await runBlock(first, Object.fromEntries(loaded));
  console.log("  gives what it says, from an ES module");
};

const parent = mkdtempSync(join(tmpdir(), "ratewright-"));
try {
  await checkAll(parent);
  console.log("all consumers are content");
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
} finally {
  rmSync(parent, { recursive: true, force: true });
}
