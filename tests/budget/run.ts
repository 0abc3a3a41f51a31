// What the types cost a user: compiles an empty project and `consumer.ts` against the built declarations,
// and prints what the second costs more, for each compiler that a user may have. Fails where the instantiations
// are over the budget; the time is only shown, for it depends on the machine. Needs a build.
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
import { compilers } from "../consumers/compilers.js";

const most = { instantiations: 30_000, seconds: 0.3 };
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

/** The middle of several runs: the time varies, the instantiations do not. */
const middle = (program: string, folder: string): Cost => {
  const costs = Array.from({ length: rounds }, () => costOf(program, folder)).sort(
    (a, b) => a.seconds - b.seconds,
  );
  return costs[Math.floor(rounds / 2)] as Cost;
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
    const [without, used] = [middle(program, empty), middle(program, consumer)];
    const instantiations = used.instantiations - without.instantiations;
    const seconds = used.seconds - without.seconds;
    const verdict = (within: boolean): string => (within ? "within it" : "OVER it");
    console.log(
      `  TypeScript ${version}\n    instantiations: +${instantiations}, budget +${most.instantiations}: ${verdict(instantiations <= most.instantiations)}`,
    );
    console.log(
      `    time: +${seconds.toFixed(2)} s (${without.seconds.toFixed(2)} to ${used.seconds.toFixed(2)}), budget +${most.seconds} s: ${verdict(seconds <= most.seconds)}`,
    );
    if (instantiations > most.instantiations) process.exitCode = 1;
  }
} finally {
  rmSync(parent, { recursive: true, force: true });
}
