/**
 * A file of sites through worker threads, with progress on the terminal; see docs/batch.md. run.ts starts it.
 *
 * With `--input` that file is read; without, a file of `--rows` rows is written into `--folder`. `--workers=0` computes
 * in this thread. Ctrl+C ends the run behind the rows that are on the way, a second one at once.
 */
import { mkdirSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join, resolve } from "node:path";
import process from "node:process";
import { parseArgs } from "node:util";
import { Worker } from "node:worker_threads";
import { computeBatch } from "./batch.js";
import { Pool } from "./pool.js";
import { writeSites } from "./sites.js";
import { type Progress, runFile } from "./stream.js";

const { values: options } = parseArgs({
  options: {
    rows: { type: "string", default: "10000" },
    seed: { type: "string", default: "7" },
    input: { type: "string" },
    folder: { type: "string", default: join(tmpdir(), "ratewright-batch") },
    workers: { type: "string", default: String(availableParallelism()) },
    block: { type: "string", default: "131072" },
    measure: { type: "boolean", default: false },
  },
});
const count = (name: "rows" | "seed" | "workers" | "block", least: number): number => {
  const value = Number(options[name]);
  if (!Number.isInteger(value) || value < least)
    throw new Error(`--${name}: expected a whole number of ${least} or more`);
  return value;
};

const folder = resolve(options.folder);
mkdirSync(folder, { recursive: true });
const input = options.input === undefined ? join(folder, "sites.csv") : resolve(options.input);
if (options.input === undefined) await writeSites(input, count("rows", 1), count("seed", 0));
const [output, refused] = [join(folder, "orders.csv"), join(folder, "refused.csv")];

let stopped = false;
const stop = (): void => {
  if (stopped) process.exit(130);
  stopped = true;
  process.stderr.write("\nstopping behind the rows that are on the way\n");
};
process.on("SIGINT", stop);
process.on("SIGTERM", stop);

const begin = performance.now();
const seconds = (): number => (performance.now() - begin) / 1000;
const grouped = (value: number): string => value.toLocaleString("en-US");

let told = Number.NEGATIVE_INFINITY;
/** One line that is written over on a terminal; elsewhere a line for every tenth of the file. */
const progress = ({ rows, refusedRows, share }: Progress): void => {
  const now = process.stderr.isTTY ? performance.now() / 100 : Math.floor(share * 10);
  if (share < 1 && now < told + 1) return;
  told = now;
  const rate = Math.round(rows / seconds());
  const text = `${(share * 100).toFixed(0).padStart(3)} %  ${grouped(rows)} rows, ${grouped(refusedRows)} refused, ${grouped(rate)} rows/s`;
  process.stderr.write(process.stderr.isTTY ? `\r${text}${share < 1 ? "" : "\n"}` : `${text}\n`);
};

const workers = count("workers", 0);
const started = (): Worker => new Worker(new URL("./worker.mjs", import.meta.url));
const pool = workers === 0 ? undefined : new Pool(started, workers);
const summary = await runFile({
  input,
  output,
  refused,
  blockSize: count("block", 64),
  inFlight: 2 * Math.max(1, workers),
  compute: pool === undefined ? async (text) => computeBatch(text) : (text) => pool.run(text),
  stopped: () => stopped,
  progress,
});
const took = seconds();
await pool?.close();

const { rows, refusedRows, totals, whole, mostInFlight } = summary;
const amount = (hundredths: number): string =>
  (hundredths / 100).toLocaleString("en-US", { minimumFractionDigits: 2 });
process.stdout.write(
  [
    `${whole ? "" : "STOPPED, the file was not read to its end\n"}${grouped(rows)} rows: ${grouped(totals.sites)} computed, ${grouped(refusedRows)} refused`,
    `feed     ${amount(totals.feed)} lb in ${grouped(totals.bags)} bags`,
    `product  ${amount(totals.product)} fl oz in ${grouped(totals.loads)} loads`,
    `orders   ${output}`,
    `refused  ${refused}`,
    ...(pool !== undefined && pool.deaths > 0 ? [`workers that died: ${pool.deaths}`] : []),
    "",
  ].join("\n"),
);
if (options.measure) {
  const peakMiB = Math.round(process.resourceUsage().maxRSS / 1024);
  process.stderr.write(`${JSON.stringify({ rows, seconds: took, mostInFlight, peakMiB })}\n`);
}
process.exitCode = whole ? 0 : 130;
