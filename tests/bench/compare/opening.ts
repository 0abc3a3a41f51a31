// What it costs to load the package: a fresh process for each reading, in turn, beside an empty module and the other
// libraries in the same run. Processor time, from before the import to after it.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { reading } from "./race.js";
import type { Reading, Results } from "./rows.js";

type Case = readonly [name: string, way: "import" | "require", path: string];

/** The folder of the repository, from `tests/bench/out/` or `tests/bench/compare/`. */
const root = fileURLToPath(new URL("../../../", import.meta.url));

const once = (way: "import" | "require", path: string): number => {
  const load =
    way === "import"
      ? `await import(${JSON.stringify(pathToFileURL(path).href)})`
      : `require(${JSON.stringify(path)})`;
  const code = `const t = process.cpuUsage(); ${load}; const { user, system } = process.cpuUsage(t); console.log((user + system) / 1000);`;
  const kind = way === "import" ? "--input-type=module" : "--input-type=commonjs";
  return Number(execFileSync(process.execPath, [kind, "-e", code], { encoding: "utf8" }).trim());
};

/** Milliseconds to load each, in turn. */
export const loadTimes = (cases: readonly Case[], rounds: number): readonly Reading[] => {
  const times = cases.map((): number[] => []);
  for (let round = 0; round < rounds; round++) {
    for (const [i, [, way, path]] of cases.entries()) times[i]?.push(once(way, path));
  }
  return times.map(reading);
};

/** Runs with an empty module of each kind at hand. */
export const withEmpty = <T>(run: (empty: { readonly esm: string; readonly cjs: string }) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), "import-time-"));
  const empty = { esm: join(folder, "empty.mjs"), cjs: join(folder, "empty.cjs") };
  writeFileSync(empty.esm, "export {};\n");
  writeFileSync(empty.cjs, "module.exports = {};\n");
  try {
    return run(empty);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

const module = (path: string): string => join(root, "node_modules", path);

/** Milliseconds to load this library and the others. */
export const measuredOpening = (rounds: number): Results["opening"] =>
  withEmpty((empty) => {
    const cases: readonly Case[] = [
      ["an empty ES module", "import", empty.esm],
      ["import ratewright", "import", join(root, "dist/esm/index.js")],
      ["import ratewright/quantity", "import", join(root, "dist/esm/quantity/index.js")],
      ["import ratewright/nutrient", "import", join(root, "dist/esm/nutrient/index.js")],
      ["import convert", "import", module("convert/dist/index.js")],
      ["an empty CommonJS module", "require", empty.cjs],
      ["require ratewright", "require", join(root, "dist/cjs/index.js")],
      ["require ratewright/quantity", "require", join(root, "dist/cjs/quantity/index.js")],
      ...["safe-units", "uom", "unitmath", "mathjs", "js-quantities"].map(
        (name): Case => [`require ${name}`, "require", module(name)],
      ),
      ["require @buge/ts-units, mass and area", "require", module("@buge/ts-units/mass/index.js")],
    ];
    return loadTimes(cases, rounds).map((ms, i) => ({ name: (cases[i] as Case)[0], ms }));
  });
