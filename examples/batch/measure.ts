/**
 * Runs the same sites in one thread, in worker threads and in DuckDB, one after the other, holds their files against each
 * other byte for byte, and draws the table of docs/batch.md: `npm run batch:measure`, some minutes.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { createReadStream, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, cpus, tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { pipeline } from "node:stream/promises";
import { fileURLToPath } from "node:url";
import { DuckDBInstance } from "@duckdb/node-api";
import { bundled } from "./bundle.js";
import { writeSites } from "./sites.js";

interface Measured {
  readonly seconds: number;
  readonly peakMiB: number;
}

const most = Number(process.argv[2] ?? 1_000_000);
const workers = availableParallelism();
const folder = mkdtempSync(join(tmpdir(), "batch-measure-"));
const { folder: programs, remove } = await bundled();

/** One way through one file, in a process of its own, and the hash of what it wrote. */
const measured = async (
  program: "program" | "in-duckdb",
  input: string,
  more: readonly string[],
): Promise<Measured & { readonly hash: string }> => {
  const own = join(folder, "own");
  rmSync(own, { recursive: true, force: true });
  mkdirSync(own);
  const { status, stderr } = spawnSync(
    process.execPath,
    [join(programs, `${program}.mjs`), `--input=${input}`, `--folder=${own}`, ...more],
    { encoding: "utf8", maxBuffer: 1e8 },
  );
  if (status !== 0) throw new Error(stderr);
  const hash = createHash("sha256");
  for (const name of ["orders.csv", "refused.csv"])
    await pipeline(createReadStream(join(own, name)), hash, { end: false });
  const line = stderr.trim().split("\n").at(-1) as string;
  return { ...(JSON.parse(line) as Measured), hash: hash.digest("hex") };
};

const grouped = (value: number, digits = 0): string =>
  value.toLocaleString("en-US", { minimumFractionDigits: digits, maximumFractionDigits: digits });

try {
  const inputs = new Map<number, string>();
  for (const rows of [most / 100, most / 10, most]) {
    const input = join(folder, `sites-${rows}.csv`);
    await writeSites(input, rows, 7);
    inputs.set(rows, input);
  }
  const whole = inputs.get(most) as string;
  const parquet = join(folder, "sites.parquet");
  const connection = await (await DuckDBInstance.create(":memory:")).connect();
  await connection.run(
    `COPY (SELECT * FROM read_csv('${whole}', header = true, all_varchar = true)) TO '${parquet}' (FORMAT parquet)`,
  );
  connection.closeSync();
  const ways = [
    ...[...inputs].map(([rows, input]) => ({
      name: `${workers} worker threads`,
      rows,
      run: () => measured("program", input, ["--measure", `--workers=${workers}`]),
    })),
    { name: "one thread", rows: most, run: () => measured("program", whole, ["--measure", "--workers=0"]) },
    { name: "DuckDB over CSV", rows: most, run: () => measured("in-duckdb", whole, []) },
    { name: "DuckDB over Parquet", rows: most, run: () => measured("in-duckdb", parquet, []) },
  ];
  const lines: string[] = [];
  const hashes = new Set<string>();
  for (const { name, rows, run } of ways) {
    const { seconds, peakMiB, hash } = await run();
    if (rows === most) hashes.add(hash);
    lines.push(
      `| ${name} | ${grouped(rows)} | ${grouped(seconds, 1)} | ${grouped(Math.round(rows / seconds / 100) * 100)} | ${grouped(peakMiB)} |`,
    );
    console.log(lines.at(-1));
  }
  if (hashes.size !== 1) throw new Error("the ways differ in what they wrote");
  console.log("All wrote the same, byte for byte.");
  const engine = JSON.parse(
    readFileSync(new URL("../../node_modules/@duckdb/node-api/package.json", import.meta.url), "utf8"),
  ) as { version: string };
  const table = [
    "<!-- table: batch -->",
    "",
    "| way | sites | seconds | sites a second | peak memory, MiB |",
    "| --- | ---: | ---: | ---: | ---: |",
    ...lines,
    "",
    `${availableParallelism()} cores (${cpus()[0]?.model.trim() ?? "unknown"}), Node ${process.versions.node}, \`@duckdb/node-api\` ${engine.version}.`,
    "All ways over the same sites wrote the same two files, byte for byte.",
    "",
    "<!-- end -->",
  ];
  const page = fileURLToPath(new URL("../../docs/batch.md", import.meta.url));
  const text = readFileSync(page, "utf8");
  if (most === 1_000_000)
    writeFileSync(page, text.replace(/<!-- table: batch -->[\s\S]*<!-- end -->/, table.join("\n")));
} finally {
  remove();
  rmSync(folder, { recursive: true, force: true });
}
