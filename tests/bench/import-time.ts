// What it costs to load the package: a fresh process for each reading, interleaved, the median of them and the least, beside
// an empty module and general-purpose packages in the same run. `npm run build && npm run bench:import`.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { argv, execPath } from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";

const readings = Number(argv[2]) || 9;
const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "import-time-"));
writeFileSync(join(folder, "empty.mjs"), "export {};\n");
writeFileSync(join(folder, "empty.cjs"), "module.exports = {};\n");
const require = createRequire(import.meta.url);

const cases: readonly (readonly [name: string, way: "import" | "require", path: string])[] = [
  ["empty module", "import", join(folder, "empty.mjs")],
  ["ratewright", "import", join(root, "dist/esm/index.js")],
  ["ratewright/quantity", "import", join(root, "dist/esm/quantity/index.js")],
  ["ratewright/nutrient", "import", join(root, "dist/esm/nutrient/index.js")],
  ["empty module", "require", join(folder, "empty.cjs")],
  ["ratewright", "require", join(root, "dist/cjs/index.js")],
  ["ratewright/quantity", "require", join(root, "dist/cjs/quantity/index.js")],
  ...["js-quantities", "mathjs", "@lhncbc/ucum-lhc"].map(
    (name) => [name, "require", require.resolve(name)] as const,
  ),
];

const once = (way: "import" | "require", path: string): number => {
  const load = way === "import" ? `await import(${JSON.stringify(pathToFileURL(path).href)})` : "";
  const code =
    way === "import"
      ? `const t = performance.now(); ${load}; console.log(performance.now() - t);`
      : `const t = performance.now(); require(${JSON.stringify(path)}); console.log(performance.now() - t);`;
  const kind = way === "import" ? "--input-type=module" : "--input-type=commonjs";
  return Number(execFileSync(execPath, [kind, "-e", code], { encoding: "utf8" }).trim());
};

const times = cases.map((): number[] => []);
for (let round = 0; round < readings; round++) {
  for (const [i, [, way, path]] of cases.entries()) times[i]?.push(once(way, path));
}
rmSync(folder, { recursive: true });

for (const [i, [name, way]] of cases.entries()) {
  const sorted = [...(times[i] ?? [])].sort((a, b) => a - b);
  const shown = [sorted[sorted.length >> 1], sorted[0]].map((ms) => ms?.toFixed(1).padStart(7));
  console.log(`${way.padEnd(8)} ${name.padEnd(22)} ${shown[0]} ms, at the least ${shown[1]} ms`);
}
