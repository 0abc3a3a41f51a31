/** A block of whole lines of the file: what a worker gets, and what it gives back. */
import { cellsOf, lineOf } from "./csv.js";
import { type Refusal, siteOrder } from "./site-order.js";

/** What a block comes to. */
export interface BatchResult {
  readonly rows: number;
  /** The lines of the sites that were computed. */
  readonly lines: string;
  /** What is wrong with the others; the row counts from 0 within the block. */
  readonly refused: readonly (Refusal & { readonly row: number; readonly site: string })[];
  readonly totals: Totals;
}

/** Sums over sites; amounts in hundredths of their unit, which add up to the same in any order. */
export interface Totals {
  readonly sites: number;
  readonly feed: number;
  readonly bags: number;
  readonly product: number;
  readonly loads: number;
}

/** Nothing yet. */
export const none: Totals = { sites: 0, feed: 0, bags: 0, product: 0, loads: 0 };

/** Two sums together. */
export const together = (a: Totals, b: Totals): Totals => ({
  sites: a.sites + b.sites,
  feed: a.feed + b.feed,
  bags: a.bags + b.bags,
  product: a.product + b.product,
  loads: a.loads + b.loads,
});

const hundredths = (text: string | undefined): number => Math.round(Number(text) * 100);

/** The rows of a block: what stands between its line ends. */
export const rowsOf = (text: string): readonly string[] => {
  const rows = text.split("\n").map((line) => (line.endsWith("\r") ? line.slice(0, -1) : line));
  return rows.at(-1) === "" ? rows.slice(0, -1) : rows;
};

/** A block computed, row by row. */
export const computeBatch = (text: string): BatchResult => {
  const rows = rowsOf(text);
  const refused: BatchResult["refused"][number][] = [];
  let lines = "";
  let totals = none;
  rows.forEach((line, row) => {
    const cells = cellsOf(line);
    const { cells: figures, refusals } =
      cells === undefined
        ? { refusals: [{ path: "", reason: "expected quotes that are closed at the end of a cell" }] }
        : siteOrder(cells);
    if (refusals !== undefined) {
      for (const refusal of refusals) refused.push({ row, site: cells?.[0] ?? "", ...refusal });
      return;
    }
    lines += lineOf(figures);
    const [, feed, bags, , , loads, product] = figures;
    totals = together(totals, {
      sites: 1,
      feed: hundredths(feed),
      bags: Number(bags),
      product: hundredths(product),
      loads: Number(loads),
    });
  });
  return { rows: rows.length, lines, refused, totals };
};
