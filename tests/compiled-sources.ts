// The sources and the tests as plain modules that Node loads by itself: compiled once for a run, where Vite would compile
// and wrap each of them in each worker.
import { copyFileSync, existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join, relative, resolve, sep } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import type { Plugin } from "vitest/config";
import { filesBelow, root } from "./house/sources.js";

/** Beside the packages, which are never compiled again; a folder for each run. */
const folder = join(root, `node_modules/.sources-${process.pid}`);

/** What tests load. */
const loaded = ["src", "tests", "examples", ".ci"];

const isSource = (path: string): boolean => path.startsWith(join(root, "src", sep));

const compiledPath = (path: string): string => join(folder, relative(root, path).replace(/\.ts$/, ".js"));

/** Compiles all as it is now; the folder goes when the run ends. */
const compile = (): void => {
  mkdirSync(folder, { recursive: true });
  // Where the tests of a worker find what they load by a path that they put together
  process.env.COMPILED_SOURCES = folder;
  process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
  const exports = { ".": "./src/index.js", "./*": "./src/*/index.js" };
  writeFileSync(
    join(folder, "package.json"),
    JSON.stringify({ name: "ratewright", type: "module", exports }),
  );
  const files = loaded.flatMap(filesBelow).map((name) => join(root, name));
  buildSync({
    entryPoints: files.filter((path) => path.endsWith(".ts") && !path.endsWith(".d.ts")),
    outbase: root,
    outdir: folder,
    format: "esm",
    target: "node20.10",
    sourcemap: "inline",
    sourcesContent: false,
    // What lies beside a test is still found there.
    define: { "import.meta.url": "urlOfSource" },
    banner: {
      js: `const urlOfSource = import.meta.url.replace("/node_modules/${basename(folder)}/", "/").replace(/\\.js$/, ".ts");`,
    },
  });
  for (const path of files.filter((name) => name.endsWith(".json"))) {
    mkdirSync(dirname(compiledPath(path)), { recursive: true });
    copyFileSync(path, compiledPath(path));
  }
};

/** The compiled form of a source that a test names; nothing for what is no source, and for a second copy of the sources. */
const compiledOf = (named: string, importer: string | undefined): string | undefined => {
  if (named.includes("?") || (importer !== undefined && isSource(importer))) return undefined;
  const path = named.startsWith("file:")
    ? fileURLToPath(named)
    : named.startsWith(".") && importer !== undefined
      ? resolve(dirname(importer), named)
      : named;
  const source = path.replace(/\.js$/, ".ts");
  return isSource(source) && existsSync(source) ? compiledPath(source) : undefined;
};

/** Has the runner load the compiled sources and tests. */
export const compiledSources = (): Plugin => {
  compile();
  return {
    name: "compiled sources",
    enforce: "pre",
    resolveId: (named, importer) => compiledOf(named, importer),
    load: (path) => (path.endsWith(".test.ts") ? `import ${JSON.stringify(compiledPath(path))};` : undefined),
  };
};
