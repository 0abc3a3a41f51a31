// `npm run runtimes`: packs the library, fetches the runtimes that the registry carries into a temporary folder, runs the same
// set in each and compares the bits with those of Node here. Prints a table and keeps it in results.json, from which
// `npm run runtimes:page` draws docs/runtimes.md. `npm run runtimes -- --here` runs only Node here and the browser, fetches
// nothing and keeps nothing. Needs a build.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { root } from "../house/sources.js";
import { type Compared, compared, shortcomings } from "./compare.js";
import { runtimesPage } from "./page.js";
import { type Bundles, hereRuntimes, type Runtime, registryRuntimes } from "./runtimes.js";
import type { SmokeFigure, SmokeResult } from "./smoke.js";

const only = process.argv.includes("--here");
const path = (name: string): string => join(root, "tests/runtimes", name);

const npm = (folder: string, ...args: readonly string[]): string => {
  const { status, stdout, stderr } = spawnSync("npm", [...args, "--no-audit", "--no-fund"], {
    cwd: folder,
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error(`npm ${args.join(" ")}\n${stderr.trim().slice(-300)}`);
  return stdout;
};

/** The figures that the root's functions give. */
const readFigures = (): readonly SmokeFigure[] => {
  const { checks } = JSON.parse(readFileSync(join(root, "docs/check-values.json"), "utf8")) as {
    readonly checks: readonly { readonly figures: readonly SmokeFigure[] }[];
  };
  return checks.flatMap(({ figures }) => figures);
};

/** The set as programs: one that imports the installed package, and one with everything in it. */
const bundles = async (folder: string): Promise<Bundles> => {
  const [packed] = JSON.parse(
    npm(root, "pack", "--json", "--ignore-scripts", "--pack-destination", folder),
  ) as {
    readonly filename: string;
  }[];
  if (packed === undefined) throw new Error("npm pack made nothing");
  writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true, type: "module" }));
  npm(folder, "install", "--offline", join(folder, packed.filename));
  const figures = readFigures().map(
    ({ function: name, arguments: args, at, unit, printed, right, tolerance, rounding }) => ({
      function: name,
      arguments: args,
      at,
      unit,
      printed,
      right,
      tolerance,
      rounding,
    }),
  );
  writeFileSync(join(folder, "figures.json"), JSON.stringify(figures));
  const program = `
    import * as library from "ratewright";
    import figures from "./figures.json";
    import { smoke } from ${JSON.stringify(path("smoke.ts"))};
    export const answer = () => JSON.stringify(smoke(library, figures));`;
  const made = async (name: string, tail: string, options: object): Promise<string> => {
    const outfile = join(folder, name);
    await build({
      stdin: { contents: program + tail, resolveDir: folder, loader: "ts" },
      bundle: true,
      target: "es2020",
      outfile,
      logLevel: "error",
      tsconfigRaw: {},
      ...options,
    });
    return outfile;
  };
  const printed = "\nconsole.log(answer());";
  return {
    folder,
    importing: await made("importing.mjs", printed, { format: "esm", external: ["ratewright"] }),
    module: await made("whole.mjs", "", { format: "esm" }),
    script: await made("whole.js", "\nglobalThis.ratewrightAnswer = answer;", { format: "iife" }),
  };
};

const measured = async (
  runtime: Runtime,
  parts: Bundles,
): Promise<{ result: SmokeResult; version: string }> => {
  const folder = join(parts.folder, runtime.name.replace(/\W+/g, "-"));
  if (runtime.packages.length > 0) {
    mkdirSync(folder);
    writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true }));
    npm(folder, "install", "--prefer-offline", ...runtime.packages);
  }
  const { answer, version } = await runtime.run(parts, folder);
  return { result: JSON.parse(answer) as SmokeResult, version };
};

const folder = mkdtempSync(join(tmpdir(), "runtimes-"));
try {
  if (!existsSync(join(root, "dist/esm/index.js"))) throw new Error("there is no build: npm run build");
  const parts = await bundles(folder);
  const figures = readFigures();
  const runtimes = [...hereRuntimes, ...(only ? [] : registryRuntimes)];
  const ran: Compared[] = [];
  const missing: { readonly name: string; readonly why: string }[] = [];
  let reference: SmokeResult | undefined;
  for (const runtime of runtimes) {
    try {
      const { result, version } = await measured(runtime, parts);
      reference ??= result;
      ran.push(compared({ name: runtime.name, version, engine: runtime.engine }, result, reference, figures));
      console.error(`  ran: ${runtime.name} ${version}`);
    } catch (error) {
      const why = (error instanceof Error ? error.message : String(error)).split("\n").slice(0, 2).join(" ");
      missing.push({ name: runtime.name, why: why.replaceAll(folder, "").slice(0, 160) });
      console.error(`  did not run: ${runtime.name}: ${why}`);
    }
  }
  const results = { ran, missing };
  console.log(runtimesPage(results));
  const failures = ran.flatMap(shortcomings);
  for (const failure of failures) console.error(`FAILED ${failure}`);
  if (failures.length > 0 || (only && missing.length > 0)) process.exitCode = 1;
  if (!only) writeFileSync(path("results.json"), `${JSON.stringify(results, null, 2)}\n`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
