/** Worker threads that take a block each, and what happens to a block whose worker dies. */
import type { Worker } from "node:worker_threads";
import { type BatchResult, none, rowsOf, together } from "./batch.js";

/** A run that loses more workers than this has something wrong with it that no second try mends. */
const mostDeaths = 60;

interface Task {
  readonly text: string;
  /** With the result, or with `undefined` where the worker died over it. */
  readonly settle: (result: BatchResult | undefined) => void;
  readonly fail: (error: Error) => void;
}

const merged = (a: BatchResult, b: BatchResult): BatchResult => ({
  rows: a.rows + b.rows,
  lines: a.lines + b.lines,
  refused: [...a.refused, ...b.refused.map((refusal) => ({ ...refusal, row: refusal.row + a.rows }))],
  totals: together(a.totals, b.totals),
});

/** A fixed number of workers. A block waits where all are at work; who calls bounds how many wait. */
export class Pool {
  readonly #started: () => Worker;
  readonly #size: number;
  readonly #workers = new Map<Worker, Task | undefined>();
  readonly #waiting: Task[] = [];
  #closed = false;
  /** How many workers died, and what the last of them said. */
  deaths = 0;
  lastWords = "it said nothing";

  constructor(started: () => Worker, size: number) {
    this.#started = started;
    this.#size = size;
  }

  /** A block computed; where its worker dies over it, in halves, until the row that does it stands alone. */
  async run(text: string): Promise<BatchResult> {
    const result = await new Promise<BatchResult | undefined>((settle, fail) => {
      this.#waiting.push({ text, settle, fail });
      this.#next();
    });
    if (result !== undefined) return result;
    const rows = rowsOf(text);
    if (rows.length === 1) {
      const reason = `the worker died over this row each time that it was tried: ${this.lastWords}`;
      return {
        rows: 1,
        lines: "",
        refused: [{ row: 0, site: "", path: "", reason }],
        totals: none,
      };
    }
    const half = Math.ceil(rows.length / 2);
    const part = (from: number, to?: number): Promise<BatchResult> =>
      this.run(`${rows.slice(from, to).join("\n")}\n`);
    const first = await part(0, half);
    return merged(first, await part(half));
  }

  /** Ends the workers. */
  async close(): Promise<void> {
    this.#closed = true;
    await Promise.all([...this.#workers.keys()].map((worker) => worker.terminate()));
  }

  #next(): void {
    if (this.#closed || this.#waiting.length === 0) return;
    const idle = [...this.#workers].find(([, task]) => task === undefined)?.[0];
    const worker = idle ?? (this.#workers.size < this.#size ? this.#start() : undefined);
    if (worker === undefined) return;
    const task = this.#waiting.shift() as Task;
    this.#workers.set(worker, task);
    worker.postMessage(task.text);
  }

  #start(): Worker {
    const worker = this.#started();
    worker.on("message", (result: BatchResult) => {
      const task = this.#workers.get(worker);
      this.#workers.set(worker, undefined);
      task?.settle(result);
      this.#next();
    });
    // What a worker throws, and running out of memory, ends it: `exit` follows, and is what counts.
    worker.on("error", (error: Error) => {
      this.lastWords = error.message;
    });
    worker.on("exit", () => {
      const task = this.#workers.get(worker);
      this.#workers.delete(worker);
      if (this.#closed) return;
      this.deaths++;
      if (this.deaths > mostDeaths) {
        const error = new Error(`${this.deaths} workers died, the last with: ${this.lastWords}`);
        for (const one of [task, ...this.#waiting.splice(0)]) one?.fail(error);
        return;
      }
      task?.settle(undefined);
      this.#next();
    });
    return worker;
  }
}
