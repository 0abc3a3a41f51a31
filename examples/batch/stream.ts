/** The file as a stream: blocks in, lines out in their order, and a fixed number of blocks on the way. */
import { once } from "node:events";
import { createReadStream, createWriteStream, type WriteStream } from "node:fs";
import { open } from "node:fs/promises";
import { type BatchResult, none, type Totals, together } from "./batch.js";
import { cellsOf, lineOf } from "./csv.js";
import { columns, figures } from "./site-order.js";

/** What a run came to. */
export interface RunSummary {
  readonly rows: number;
  readonly refusedRows: number;
  readonly totals: Totals;
  /** Whether the whole file was read: a run that is stopped ends behind a whole row. */
  readonly whole: boolean;
  /** The most blocks that were on the way at once. */
  readonly mostInFlight: number;
}

/** Where a run stands. */
export interface Progress {
  readonly rows: number;
  readonly refusedRows: number;
  /** The share of the file that is done. */
  readonly share: number;
}

const newline = 10;

/** The file in blocks of whole lines behind its head, each of some `size` bytes. */
async function* blocksOf(path: string, size: number): AsyncGenerator<string> {
  let left = Buffer.alloc(0);
  for await (const bytes of createReadStream(path, { highWaterMark: size })) {
    const block = left.length === 0 ? (bytes as Buffer) : Buffer.concat([left, bytes as Buffer]);
    const end = block.lastIndexOf(newline) + 1;
    left = Buffer.from(block.subarray(end));
    if (left.length > 16 * size) throw new Error(`${path} has a line of more than ${16 * size} bytes`);
    if (end > 0) yield block.toString("utf8", 0, end);
  }
  if (left.length > 0) yield left.toString("utf8");
}

/** What stands behind the head of the file; the head has to be the one that is wanted. */
const behindHead = (text: string, path: string): string => {
  const end = text.indexOf("\n");
  const head = text.slice(0, end < 0 ? undefined : end).replace(/^\uFEFF|\r$/g, "");
  if (cellsOf(head)?.join() !== columns.join()) {
    throw new Error(`${path} begins with ${JSON.stringify(head.slice(0, 200))}; expected ${columns.join()}`);
  }
  return end < 0 ? "" : text.slice(end + 1);
};

const write = async (stream: WriteStream, text: string): Promise<void> => {
  if (text !== "" && !stream.write(text)) await once(stream, "drain");
};

/**
 * Runs a file through `compute`. At most `inFlight` blocks are on the way, so that the memory that it takes depends on
 * them alone, and not on the length of the file.
 */
export const runFile = async (job: {
  readonly input: string;
  readonly output: string;
  readonly refused: string;
  readonly blockSize: number;
  readonly inFlight: number;
  readonly compute: (text: string) => Promise<BatchResult>;
  readonly stopped: () => boolean;
  readonly progress: (progress: Progress) => void;
}): Promise<RunSummary> => {
  const file = await open(job.input);
  const { size } = await file.stat();
  await file.close();
  const [output, refused] = [createWriteStream(job.output), createWriteStream(job.refused)];
  await write(output, lineOf(["site", ...figures]));
  await write(refused, lineOf(["row", "site", "path", "reason"]));
  const onTheWay: { readonly bytes: number; readonly result: Promise<BatchResult> }[] = [];
  let [rows, refusedRows, bytes, mostInFlight, totals] = [0, 0, 0, 0, none];
  const settle = async (): Promise<void> => {
    const next = onTheWay.shift();
    if (next === undefined) return;
    const result = await next.result;
    await write(output, result.lines);
    const lines = result.refused.map(({ row, site, path, reason }) =>
      lineOf([String(rows + row + 1), site, path, reason]),
    );
    await write(refused, lines.join(""));
    rows += result.rows;
    refusedRows += new Set(result.refused.map(({ row }) => row)).size;
    totals = together(totals, result.totals);
    bytes += next.bytes;
    job.progress({ rows, refusedRows, share: size === 0 ? 1 : Math.min(1, bytes / size) });
  };
  let head = true;
  let whole = true;
  for await (const block of blocksOf(job.input, job.blockSize)) {
    if (job.stopped()) {
      whole = false;
      break;
    }
    const text = head ? behindHead(block, job.input) : block;
    head = false;
    while (onTheWay.length >= job.inFlight) await settle();
    const result = job.compute(text);
    // It is awaited in its turn; until then a failure has to be somebody's.
    result.catch(() => {});
    onTheWay.push({ bytes: Buffer.byteLength(block), result });
    mostInFlight = Math.max(mostInFlight, onTheWay.length);
  }
  if (head && whole) behindHead("", job.input);
  while (onTheWay.length > 0) await settle();
  for (const stream of [output, refused]) {
    stream.end();
    await once(stream, "finish");
  }
  return { rows, refusedRows, totals, whole, mostInFlight };
};
