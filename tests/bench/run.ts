// `npm run bench`: everything, on what is built, beside plain arithmetic and other libraries; prints it and writes
// results.json. `npm run bench -- reading` runs the close look at one thing that has a file of that name here;
// `npm run bench -- --quick` measures everything in few rounds and keeps nothing.
import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { Results } from "./compare/rows.js";
import { performancePage } from "./page.js";

const here = new URL("./", import.meta.url);
const path = (name: string): string => fileURLToPath(new URL(name, here));
const [word = ""] = process.argv.slice(2);
const quick = word === "--quick";

/** Everything, in a process of its own: bundled, so that nothing but what is measured is compiled as it runs. */
const compare = async (): Promise<void> => {
  if (!existsSync(path("../../dist/esm/index.js"))) throw new Error("there is no build: npm run build");
  await build({
    entryPoints: [path("compare/program.ts")],
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    external: ["ratewright"],
    packages: "external",
    outfile: path("out/program.mjs"),
  });
  const into = path("out/results.json");
  execFileSync(process.execPath, ["--expose-gc", path("out/program.mjs"), into, quick ? "3" : "15"], {
    stdio: "inherit",
  });
  const written = readFileSync(into, "utf8");
  rmSync(path("out/"), { recursive: true });
  console.log(performancePage(JSON.parse(written) as Results));
  if (quick) return;
  writeFileSync(path("results.json"), written);
  console.log(
    "kept in tests/bench/results.json: npm run bench:page draws docs/performance.md and its figures",
  );
};

if (word === "" || quick) await compare();
else {
  const files = readdirSync(here).filter((name) => name.endsWith(".ts") && name.startsWith(word));
  for (const name of files.sort()) await import(new URL(name, here).href);
}
