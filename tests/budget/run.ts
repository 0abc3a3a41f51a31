// What the types and the loading cost a user. Compiles an empty project and `consumer.ts` against the built declarations, in
// turn, and prints what the second costs more, for each compiler that a user may have; loads the package beside other
// packages, in turn. Fails where the instantiations are over the budget, and where a time is twice as many times that of
// the empty project or of the other package as it was when the bound was set: a ratio of medians of one run, in which a
// slow machine slows both. Needs a build.
import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadTimes } from "../bench/compare/opening.js";
import { compilers } from "../consumers/compilers.js";

const most = { instantiations: 12_000, seconds: 0.3, timesEmpty: 10 };
const rounds = 3;

const root = fileURLToPath(new URL("../..", import.meta.url));
const here = dirname(fileURLToPath(import.meta.url));

interface Cost {
  readonly instantiations: number;
  /** Parsing, binding and checking. */
  readonly seconds: number;
}

const costOf = (program: string, folder: string): Cost => {
  const { status, stdout } = spawnSync(process.execPath, [program, "-p", ".", "--extendedDiagnostics"], {
    cwd: folder,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(`${folder} does not compile\n${stdout}`);
  const figure = (name: string): number => {
    const found = new RegExp(`^${name}:\\s+([\\d.]+)`, "m").exec(stdout);
    if (found === null) throw new Error(`tsc did not print ${name}`);
    return Number(found[1]);
  };
  return { instantiations: figure("Instantiations"), seconds: figure("Total time") };
};

/** The middle of several runs of each project, in turn: the time varies, the instantiations do not. */
const middles = (program: string, folders: readonly string[]): readonly Cost[] => {
  const costs = folders.map((): Cost[] => []);
  for (let round = 0; round < rounds; round++)
    for (const [i, folder] of folders.entries()) costs[i]?.push(costOf(program, folder));
  return costs.map((list) => list.sort((a, b) => a.seconds - b.seconds)[Math.floor(rounds / 2)] as Cost);
};

/** How many times as long as another package ours may take to load: twice what it was when the bound was set. */
const loads = [
  { way: "import", own: "esm/index.js", other: "convert/dist/index.js", most: 17 },
  { way: "import", own: "esm/quantity/index.js", other: "convert/dist/index.js", most: 2 },
  { way: "require", own: "cjs/index.js", other: "js-quantities", most: 28 },
  { way: "require", own: "cjs/quantity/index.js", other: "js-quantities", most: 2.6 },
] as const;

const checkLoading = (): void => {
  console.log("loading, processor time, in turn with another package of the same run");
  const times = loadTimes(
    loads.flatMap(({ way, own, other }) => [
      [own, way, join(root, "dist", own)] as const,
      [other, way, join(root, "node_modules", other)] as const,
    ]),
    9,
  );
  for (const [i, { way, own, other, most: bound }] of loads.entries()) {
    const [ours, theirs] = [times[2 * i]?.median ?? Number.NaN, times[2 * i + 1]?.median ?? Number.NaN];
    const ratio = ours / theirs;
    console.log(
      `  ${way} ${own}: ${ours.toFixed(1)} ms, ${ratio.toFixed(1)} times ${other}, budget ${bound} times: ${ratio <= bound ? "within it" : "OVER it"}`,
    );
    if (!(ratio <= bound)) process.exitCode = 1;
  }
};

const project = (parent: string, name: string): string => {
  const folder = join(parent, name);
  mkdirSync(join(folder, "node_modules"), { recursive: true });
  symlinkSync(root, join(folder, "node_modules/ratewright"), "junction");
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name, private: true, type: "module" }));
  const compilerOptions = {
    target: "es2022",
    lib: ["es2022"],
    types: [],
    module: "nodenext",
    moduleResolution: "nodenext",
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    skipLibCheck: true,
    noEmit: true,
  };
  writeFileSync(join(folder, "tsconfig.json"), JSON.stringify({ compilerOptions, include: ["*.ts"] }));
  return folder;
};

if (!existsSync(join(root, "dist/esm/index.d.ts"))) throw new Error("there is no build: npm run build");
const parent = mkdtempSync(join(tmpdir(), "ratewright-budget-"));
try {
  const empty = project(parent, "empty");
  writeFileSync(join(empty, "empty.ts"), "export {};\n");
  const consumer = project(parent, "consumer");
  cpSync(join(here, "consumer.ts"), join(consumer, "consumer.ts"));

  const lines = readFileSync(join(here, "consumer.ts"), "utf8").trimEnd().split("\n").length;
  console.log(`a consumer of ${lines} lines over an empty project, middle of ${rounds} runs`);
  for (const { version, program } of compilers(root, parent)) {
    const [without, used] = middles(program, [empty, consumer]) as [Cost, Cost];
    const timesEmpty = used.seconds / without.seconds;
    const instantiations = used.instantiations - without.instantiations;
    const seconds = used.seconds - without.seconds;
    const verdict = (within: boolean): string => (within ? "within it" : "OVER it");
    console.log(
      `  TypeScript ${version}\n    instantiations: +${instantiations}, budget +${most.instantiations}: ${verdict(instantiations <= most.instantiations)}`,
    );
    console.log(
      `    time: +${seconds.toFixed(2)} s (${without.seconds.toFixed(2)} to ${used.seconds.toFixed(2)}), aim +${most.seconds} s; ${timesEmpty.toFixed(1)} times the empty project, budget ${most.timesEmpty} times: ${verdict(timesEmpty <= most.timesEmpty)}`,
    );
    if (instantiations > most.instantiations || timesEmpty > most.timesEmpty) process.exitCode = 1;
  }
  checkLoading();
} finally {
  rmSync(parent, { recursive: true, force: true });
}
