// The sources as plain modules that Node loads by itself: compiled once for a run, where Vite would compile and wrap each of
// them in each worker.
import { existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import type { Plugin } from "vitest/config";
import { filesBelow, root } from "./house/sources.js";

const sources = join(root, "src");

/** Beside the packages, which are never compiled again; a folder for each run. */
const folder = join(root, `node_modules/.sources-${process.pid}`);

const isSource = (path: string): boolean => path.startsWith(join(sources, "/"));

/** Compiles the sources as they are now; the folder goes when the run ends. */
const compile = (): void => {
  mkdirSync(folder, { recursive: true });
  process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
  writeFileSync(join(folder, "package.json"), '{ "type": "module" }\n');
  buildSync({
    entryPoints: filesBelow("src")
      .filter((path) => path.endsWith(".ts"))
      .map((path) => join(root, path)),
    outbase: sources,
    outdir: folder,
    format: "esm",
    target: "node20",
    sourcemap: "inline",
  });
};

/** The compiled form of what a test names; nothing for what is no source, and for a second copy of the sources. */
const compiledOf = (named: string, importer: string | undefined): string | undefined => {
  if (named.includes("?") || (importer !== undefined && isSource(importer))) return undefined;
  const path = named.startsWith("file:")
    ? fileURLToPath(named)
    : named.startsWith(".") && importer !== undefined
      ? resolve(dirname(importer), named)
      : named;
  const source = path.replace(/\.js$/, ".ts");
  return isSource(source) && existsSync(source)
    ? join(folder, relative(sources, source).replace(/\.ts$/, ".js"))
    : undefined;
};

/** Has tests load the compiled sources. */
export const compiledSources = (): Plugin => {
  compile();
  return {
    name: "compiled sources",
    enforce: "pre",
    resolveId: (named, importer) => compiledOf(named, importer),
  };
};
