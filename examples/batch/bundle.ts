/** The programs of this folder as plain JavaScript, as a build of an application has them: Node runs them by itself. */
import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

/** Writes them into a folder of their own beside the packages that they load; `remove` takes it away. */
export const bundled = async (): Promise<{ readonly folder: string; readonly remove: () => void }> => {
  const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
  const folder = mkdtempSync(join(at("../../node_modules"), ".batch-"));
  await build({
    entryPoints: ["program.ts", "worker.ts", "batch.ts", "in-duckdb.ts"].map((name) => at(name)),
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["@duckdb/*"],
    logLevel: "error",
  });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
};
