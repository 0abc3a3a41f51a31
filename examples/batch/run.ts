/**
 * `npm run batch`: writes the file of an invented city's grounds, 10,000 sites, and runs it through worker threads.
 *
 * npm run batch -- [--rows=10000] [--seed=7] [--input=sites.csv] [--folder=.] [--workers=2] [--block=131072]
 */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import process from "node:process";
import { bundled } from "./bundle.js";

const { folder, remove } = await bundled();
const program = spawn(process.execPath, [join(folder, "program.mjs"), ...process.argv.slice(2)], {
  stdio: "inherit",
});
// A terminal sends Ctrl+C to both: the program ends when its rows are written, and this one behind it.
process.on("SIGINT", () => {});
process.on("SIGTERM", () => program.kill("SIGTERM"));
const [code] = (await once(program, "exit")) as [number | null];
remove();
process.exitCode = code ?? 1;
