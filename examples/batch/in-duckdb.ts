/**
 * The same function inside a database engine: `siteOrder` is registered with DuckDB and called from SQL, over CSV or
 * Parquet. The engine reads, writes and sorts in threads and memory of its own; it calls a function of ours in the thread
 * of JavaScript, 2,048 rows at a time.
 */
import { basename, extname, join, resolve } from "node:path";
import process from "node:process";
import { parseArgs } from "node:util";
import { DuckDBInstance, DuckDBScalarFunction, VARCHAR } from "@duckdb/node-api";
import { columns, figures, siteOrder } from "./site-order.js";

/** A row as one text: JSON of the cells, or of what is wrong with them. */
const orderFunction = (): DuckDBScalarFunction =>
  DuckDBScalarFunction.create({
    name: "site_order",
    parameterTypes: columns.map(() => VARCHAR),
    returnType: VARCHAR,
    // An empty cell is a NULL to the engine, and a problem of ours.
    specialHandling: true,
    mainFunction: (_, input, output) => {
      const cells = columns.map((_, i) => input.getColumnVector(i));
      for (let row = 0; row < input.rowCount; row++) {
        const given = cells.map((vector) => (vector.getItem(row) as string | null) ?? "");
        output.setItem(row, JSON.stringify(siteOrder(given)));
      }
      output.flush();
    },
  });

const quoted = (text: string): string => `'${text.replaceAll("'", "''")}'`;
const named = (name: string): string => `"${name.replaceAll('"', '""')}"`;

/** What stands in the file, as the engine reads it; every column as text. */
const source = (input: string): string =>
  extname(input) === ".parquet"
    ? `read_parquet(${quoted(input)})`
    : `read_csv(${quoted(input)}, header = true, all_varchar = true, auto_detect = false, delim = ',', quote = '"', escape = '"', columns = {${columns.map((column) => `${quoted(column)}: 'VARCHAR'`).join(", ")}})`;

/** Runs a file: `orders.csv` and `refused.csv` in the folder, as run.ts writes them. */
export const runInDuckDb = async (input: string, folder: string): Promise<void> => {
  // A database on disk: what does not fit into the memory that it may take goes there.
  const instance = await DuckDBInstance.create(join(folder, `${basename(input)}.duckdb`), {
    memory_limit: "512MB",
    preserve_insertion_order: "true",
  });
  const connection = await instance.connect();
  connection.registerScalarFunction(orderFunction());
  const copy = (query: string, name: string): Promise<unknown> =>
    connection.run(`COPY (${query}) TO ${quoted(join(folder, name))} (FORMAT csv, HEADER true)`);
  await connection.run(
    `CREATE OR REPLACE TABLE results AS
     SELECT row_number() OVER () AS row, site, site_order(${columns.join(", ")}) AS result FROM ${source(input)}`,
  );
  const heads = ["site", ...figures];
  await copy(
    `SELECT ${heads.map((head, i) => `result ->> '$.cells[${i}]' AS ${named(head)}`).join(", ")}
     FROM results WHERE (result -> '$.cells') IS NOT NULL ORDER BY row`,
    "orders.csv",
  );
  await copy(
    `SELECT row, site, refusal.path AS path, refusal.reason AS reason
     FROM (SELECT row, site, unnest(refusals) AS refusal, generate_subscripts(refusals, 1) AS place
           FROM (SELECT row, site,
                        from_json(result -> '$.refusals', '[{"path":"VARCHAR","reason":"VARCHAR"}]') AS refusals
                 FROM results WHERE (result -> '$.refusals') IS NOT NULL))
     ORDER BY row, place`,
    "refused.csv",
  );
  connection.closeSync();
  instance.closeSync();
};

if (process.argv[1] !== undefined && /in-duckdb\.(ts|mjs)$/.test(process.argv[1])) {
  const { values } = parseArgs({ options: { input: { type: "string" }, folder: { type: "string" } } });
  if (values.input === undefined || values.folder === undefined)
    throw new Error("expected --input=FILE --folder=FOLDER");
  const started = performance.now();
  await runInDuckDb(resolve(values.input), resolve(values.folder));
  process.stderr.write(
    `${JSON.stringify({ seconds: (performance.now() - started) / 1000, peakMiB: Math.round(process.resourceUsage().maxRSS / 1024) })}\n`,
  );
}
