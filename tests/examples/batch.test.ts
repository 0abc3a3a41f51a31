import { spawn, spawnSync } from "node:child_process";
import { EventEmitter } from "node:events";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { Worker } from "node:worker_threads";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { computeBatch } from "../../examples/batch/batch.js";
import { bundled } from "../../examples/batch/bundle.js";
import { cellsOf, lineOf } from "../../examples/batch/csv.js";
import { Pool } from "../../examples/batch/pool.js";
import { columns, siteOrder } from "../../examples/batch/site-order.js";
import { siteLines } from "../../examples/batch/sites.js";
import { runFile } from "../../examples/batch/stream.js";

const good =
  "practice pitch 1,12400 ft2,24-0-11,0.9 lb/1000 ft2,50 lb,2 gal/1000 ft2,10 gal,3 fl oz/1000 ft2";
const head = columns.join();

describe("a row", () => {
  it("gives the figures of the site", () => {
    // 0.9 / 0.24 = 3.75 lb per 1000 ft2, 46.5 lb: one bag; 24.8 gal in three loads; 37.2 fl oz
    expect(siteOrder(good.split(",")).cells).toEqual([
      "practice pitch 1",
      "46.50",
      "1",
      "3.50",
      "24.80",
      "3",
      "37.20",
    ]);
  });

  it("tells every cell that is wrong, by its column", () => {
    const { refusals } = siteOrder([
      "",
      "?",
      "24-0",
      "1 lb",
      "50 fl oz",
      "2 gal",
      "-10 gal",
      "3 oz/1000 ft2",
    ]);
    expect(refusals?.map(({ path }) => path)).toEqual([...columns]);
  });

  it("tells what only the arithmetic can find", () => {
    const cells = good.replace("24-0-11", "0-0-60").replace("10 gal", "0.001 gal").split(",");
    expect(siteOrder(cells).refusals?.map(({ path }) => path)).toEqual(["analysis", "capacity"]);
  });

  it("has the cells of the head", () => {
    expect(siteOrder(["a", "b"]).refusals).toEqual([{ path: "", reason: "got 2 cells; expected 8" }]);
  });
});

describe("a line", () => {
  it("is read as it was written", () => {
    const cells = ["park lawn 3, ward 7", 'the "old" green', "", "12400 ft2", '"'];
    expect(cellsOf(lineOf(cells).trimEnd())).toEqual(cells);
  });

  it.each(['a,"b', 'a,"b"c', 'a,b"c'])("with a stray quote is no row: %s", (line) => {
    expect(cellsOf(line)).toBeUndefined();
    expect(computeBatch(line).refused).toMatchObject([{ row: 0, path: "" }]);
  });
});

const folder = mkdtempSync(join(tmpdir(), "batch-test-"));
const at = (name: string): string => join(folder, name);
let programs: Awaited<ReturnType<typeof bundled>>;
beforeAll(async () => {
  programs = await bundled();
});
afterAll(() => {
  programs.remove();
  rmSync(folder, { recursive: true, force: true });
});

/** A file through the function itself, in this thread. */
const ran = (text: string, given: Partial<Parameters<typeof runFile>[0]> = {}) => {
  writeFileSync(at("rows.csv"), text);
  return runFile({
    input: at("rows.csv"),
    output: at("orders.csv"),
    refused: at("refused.csv"),
    blockSize: 1024,
    inFlight: 3,
    compute: async (block) => computeBatch(block),
    stopped: () => false,
    progress: () => {},
    ...given,
  });
};

describe("a file", () => {
  it.each([
    ["without a line end at the end", `${head}\n${good}`, 1],
    ["with line ends of two characters", `${head}\r\n${good}\r\n${good}\r\n`, 2],
    ["with a mark of its encoding", `\uFEFF${head}\n${good}\n`, 1],
    ["with no row", `${head}\n`, 0],
  ])("%s is read", async (_, text, rows) => {
    expect(await ran(text)).toMatchObject({ rows, refusedRows: 0, totals: { sites: rows }, whole: true });
  });
});

describe("the program", { timeout: 120_000 }, () => {
  const program = (...args: readonly string[]) =>
    spawnSync(process.execPath, [join(programs.folder, "program.mjs"), ...args], { encoding: "utf8" });
  const written = (name: string) =>
    ["orders.csv", "refused.csv"].map((file) => readFileSync(join(folder, name, file), "utf8"));

  it("computes good rows, tells the bad ones, and gives the same with workers, without, and in a database", () => {
    const rows = [...siteLines(600, 1)];
    writeFileSync(at("sites.csv"), rows.join(""));
    const shared = [`--input=${at("sites.csv")}`, "--block=4096"];
    const threads = program(...shared, `--folder=${at("threads")}`, "--workers=2");
    expect(threads.stdout).toMatch(/^600 rows: [\d,]+ computed, \d+ refused\n/);
    expect(threads.stderr).toContain("100 %");
    expect(threads.status).toBe(0);
    expect(
      program(...shared, `--folder=${at("one")}`, "--workers=0")
        .stdout.split("\n")
        .slice(0, 3),
    ).toEqual(threads.stdout.split("\n").slice(0, 3));
    mkdirSync(at("engine"));
    const engine = spawnSync(
      process.execPath,
      [join(programs.folder, "in-duckdb.mjs"), `--input=${at("sites.csv")}`, `--folder=${at("engine")}`],
      { encoding: "utf8" },
    );
    expect(engine.status, engine.stderr).toBe(0);
    const [orders, refused] = written("threads") as [string, string];
    expect(written("one")).toEqual([orders, refused]);
    expect(written("engine")).toEqual([orders, refused]);
    // Row by row against the function itself.
    const results = rows.slice(1).map((line) => siteOrder(cellsOf(line.trimEnd()) ?? []));
    expect(orders.split("\n").slice(1, -1)).toEqual(
      results.flatMap(({ cells }) => (cells === undefined ? [] : [lineOf(cells).trimEnd()])),
    );
    expect(
      refused
        .split("\n")
        .slice(1, -1)
        .map((line) => cellsOf(line)?.[0]),
    ).toEqual(results.flatMap(({ refusals = [] }, i) => refusals.map(() => String(i + 1))));
    // The file has rows of which every cell is wrong.
    expect(results.some(({ refusals }) => refusals?.length === columns.length)).toBe(true);
  });

  it("sums what it wrote", () => {
    const { stdout } = program("--rows=300", "--seed=3", `--folder=${at("sums")}`, "--workers=1");
    const [orders] = written("sums") as [string];
    const cells = orders
      .trim()
      .split("\n")
      .slice(1)
      .map((line) => cellsOf(line) as string[]);
    const sum = (column: number): number => cells.reduce((total, row) => total + Number(row[column]), 0);
    const [, feed, bags, product, loads] =
      /feed +([\d,.]+) lb in ([\d,]+) bags\nproduct +([\d,.]+) fl oz in ([\d,]+) loads/.exec(stdout) ?? [];
    const told = [feed, bags, product, loads].map((text) => Number(text?.replaceAll(",", "")));
    [1, 2, 6, 5].forEach((column, i) => {
      expect(told[i]).toBeCloseTo(sum(column), 6);
    });
  });

  it("refuses a file with another head, and says which it wants", () => {
    writeFileSync(at("other.csv"), `name,size\n${good}\n`);
    const { status, stderr } = program(`--input=${at("other.csv")}`, `--folder=${at("other")}`);
    expect(status).toBe(1);
    expect(stderr).toContain(`expected ${head}`);
  });

  it("ends behind whole rows when it is told to stop", async () => {
    const args = ["--rows=40000", `--folder=${at("stop")}`, "--workers=2", "--block=8192"];
    const running = spawn(process.execPath, [join(programs.folder, "program.mjs"), ...args]);
    let stdout = "";
    let killed = false;
    running.stdout.on("data", (bytes) => {
      stdout += bytes;
    });
    running.stderr.on("data", (bytes) => {
      if (killed || !String(bytes).includes("rows/s")) return;
      killed = true;
      running.kill("SIGINT");
    });
    const code = await new Promise((resolve) => running.on("exit", resolve));
    expect(code).toBe(130);
    const [, rows, computed] = /STOPPED.*\n([\d,]+) rows: ([\d,]+) computed/.exec(stdout) ?? [];
    const count = (text: string | undefined): number => Number(text?.replaceAll(",", ""));
    expect(count(rows)).toBeGreaterThan(0);
    expect(count(rows)).toBeLessThan(40_000);
    const [orders] = written("stop") as [string];
    const lines = orders.split("\n");
    expect(lines.at(-1)).toBe("");
    expect(lines.length - 2).toBe(count(computed));
    // As far as it came, it is what the whole run writes.
    const first = siteLines(count(rows), 7);
    const whole = computeBatch([...first].slice(1).join("")).lines;
    expect(lines.slice(1).join("\n")).toBe(whole);
  });
});

describe("workers that die", { timeout: 120_000 }, () => {
  /** A worker that computes as ours does, and dies as `dies` says. */
  const pool = (dies: string, size = 2): Pool => {
    const file = join(programs.folder, "dying.mjs");
    writeFileSync(
      file,
      `import { writeFileSync } from "node:fs";
       import { parentPort } from "node:worker_threads";
       import { computeBatch } from "./batch.mjs";
       parentPort.on("message", (text) => { ${dies}; parentPort.postMessage(computeBatch(text)); });`,
    );
    return new Pool(() => new Worker(file), size);
  };
  const rows = (count: number): string[] =>
    Array.from({ length: count }, (_, i) => good.replace("pitch 1", `pitch ${i + 1}`));

  it("over one row cost that row, and no other", async () => {
    const workers = pool('if (text.includes("pitch 5,")) throw new Error("a row of stone")');
    const result = await workers.run(`${rows(9).join("\n")}\n`);
    await workers.close();
    expect(result.rows).toBe(9);
    expect(result.totals.sites).toBe(8);
    expect(result.refused).toMatchObject([
      { row: 4, path: "", reason: expect.stringContaining("a row of stone") },
    ]);
    expect(result.lines).toBe(
      computeBatch(
        rows(9)
          .filter((_, i) => i !== 4)
          .join("\n"),
      ).lines,
    );
  });

  it("once, for no reason of a row, cost nothing", async () => {
    const mark = join(folder, "died");
    // Only one of them can make the file, however close together they begin.
    const make = `writeFileSync(${JSON.stringify(mark)}, "", { flag: "wx" })`;
    const once = `let first = true; try { ${make}; } catch { first = false; } if (first) process.exit(3);`;
    const workers = pool(once);
    const blocks = [rows(20), rows(7), rows(3)].map((list) => `${list.join("\n")}\n`);
    const results = await Promise.all(blocks.map((block) => workers.run(block)));
    await workers.close();
    expect(workers.deaths).toBe(1);
    expect(results).toEqual(blocks.map(computeBatch));
  });

  it("again and again end the run, with what the last one said", async () => {
    // As a thread that dies tells it, without the time that it takes to start sixty of them.
    class Dying extends EventEmitter {
      postMessage(): void {
        setImmediate(() => {
          this.emit("error", new Error("no memory"));
          this.emit("exit", 1);
        });
      }
      terminate(): Promise<number> {
        return Promise.resolve(1);
      }
    }
    const workers = new Pool(() => new Dying() as unknown as Worker, 2);
    await expect(workers.run(`${rows(100).join("\n")}\n`)).rejects.toThrow(/61 workers died.*no memory/);
    await workers.close();
  });

  it("or work have never more blocks on the way than were agreed", async () => {
    let now = 0;
    let most = 0;
    const summary = await ran([head, ...rows(2000), ""].join("\n"), {
      compute: async (text) => {
        most = Math.max(most, ++now);
        await new Promise((resolve) => setTimeout(resolve, Math.random() * 3));
        now--;
        return computeBatch(text);
      },
    });
    expect(most).toBeLessThanOrEqual(3);
    expect(summary.mostInFlight).toBe(3);
    expect(summary.rows).toBe(2000);
    const names = readFileSync(at("orders.csv"), "utf8").split("\n").slice(1, -1);
    expect(names.map((line) => line.split(",")[0])).toEqual(rows(2000).map((line) => line.split(",")[0]));
  });
});
