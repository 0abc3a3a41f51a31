// A tank mix has an entry for each of its products, and is one application all the same.
import { expect, test } from "vitest";
import { ledger, ledgerCsv, ledgerFromCsv, ledgerTotals, ledgerWith } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import { type Job, type RouteJob, routeOrder, visitEntries, workOrder } from "../../../src/plan/index.js";
import { smallJob } from "../helpers.js";

const source = "plan of the park (invented)";
const rate = (value: number, unit: string) => ({ value, unit, of: "product" });
const four = { kind: "count", of: "N", atMost: 4, per: "calendar year", source } as const;
const products = [
  { id: "urea", form: "dry", analysis: "46-0-0", formulation: "dry fertilizer" },
  {
    id: "iron",
    form: "liquid",
    analysis: "6-0-0",
    density: { value: 10, unit: "lb/gal" },
    formulation: "liquid fertilizer",
  },
] as const;
const mix = [
  { product: "urea", rate: rate(0.2, "lb/1000 ft2") },
  { product: "iron", rate: rate(3, "fl oz/1000 ft2") },
];
const sprayer = {
  tank: { value: 50, unit: "gal" },
  applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
};
const spoon = { id: "spoon feed", method: "spray", parts: ["green"], mix } as const;
const visit = (date: Job["date"], book: NonNullable<Job["ledger"]>, more: Partial<Job> = {}): Job =>
  smallJob({
    date,
    site: {
      name: "Park",
      parts: [{ name: "green", shape: "measured", area: { value: 10_000, unit: "ft2" } }],
    },
    products,
    sprayer,
    treatments: [spoon],
    limits: [four],
    ledger: book,
    ...more,
  });
const countOf = (job: Job) => {
  const use = workOrder(job).nutrients[0]?.limits[0];
  return [use?.before.value, use?.adds.value, use?.violated];
};

test("four visits with two nitrogen products in the tank are four applications, and the fifth is one too many", () => {
  let book = ledger([]);
  const dates = ["2026-04-06", "2026-05-04", "2026-06-08", "2026-07-06", "2026-08-03"] as const;
  const counts = dates.map((date) => {
    const job = visit(date, book);
    const count = countOf(job);
    for (const entry of visitEntries(job)) book = ledgerWith(book, entry);
    return count;
  });
  expect(counts).toEqual([
    [0, 1, false],
    [1, 1, false],
    [2, 1, false],
    [3, 1, false],
    [4, 1, true],
  ]);
  const year = { from: "2026-01-01", to: "2026-12-31", part: "green" } as const;
  expect([book.entries.length, ledgerTotals({ ledger: book, ...year }).applications]).toEqual([10, 5]);
  // As anybody reads the book, and from a file.
  const read = ledgerFromCsv(ledgerCsv(book)).ledger;
  expect(read).toEqual(book);
  const check = checkLimits({
    ledger: JSON.parse(JSON.stringify(read)),
    proposal: {
      date: "2026-09-07",
      parts: ["green"],
      supplies: [{ value: 0.1, unit: "lb/1000 ft2", of: "N" }],
    },
    limits: [four],
  });
  expect(check.uses[0]?.before.value).toBe(5);
});

test("two treatments with nitrogen on one day are two, before they are in the ledger and after", () => {
  const granules = {
    id: "granules",
    method: "spread",
    product: "urea",
    rate: rate(0.5, "lb/1000 ft2"),
    parts: ["green"],
  } as const;
  const both = visit("2026-04-06", ledger([]), { treatments: [spoon, granules] });
  expect(countOf(both)).toEqual([0, 2, false]);
  expect(countOf(visit("2026-05-04", ledger(visitEntries(both))))).toEqual([2, 1, false]);
});

test("entries that name no treatment, or another, or another day, are applications of their own", () => {
  const n = { supplies: [{ value: 0.1, unit: "lb/1000 ft2", of: "N" }] } as const;
  const entries = ledger([
    { id: "a", date: "2026-04-06", ...n },
    { id: "b", date: "2026-04-06", ...n },
    { id: "c", date: "2026-04-06", treatment: "x", ...n },
    { id: "d", date: "2026-04-06", treatment: "y", ...n },
    { id: "e", date: "2026-04-07", treatment: "x", ...n },
    { id: "f", date: "2026-04-07", treatment: "x", ...n },
    { id: "g", date: "2026-04-06", treatment: "x", ...n },
  ]);
  // a, b, c with g, d, e with f
  const check = checkLimits({ ledger: entries, proposal: { date: "2026-05-04", ...n }, limits: [four] });
  expect([check.uses[0]?.before.value, check.uses[0]?.after.value]).toEqual([5, 6]);
  const year = { from: "2026-01-01", to: "2026-12-31" } as const;
  expect(ledgerTotals({ ledger: entries, ...year }).applications).toBe(5);
});

test("a log counts as a ledger does, and what tells nothing of nitrogen is no application of it", () => {
  const log = [
    { date: "2026-04-06", treatment: "x", product: "urea", rate: rate(0.2, "lb/1000 ft2") },
    { date: "2026-04-06", treatment: "x", product: "iron", rate: rate(3, "fl oz/1000 ft2") },
    { date: "2026-04-20", product: "iron", rate: rate(3, "fl oz/1000 ft2") },
  ] as const;
  const { ledger: _, ...job } = visit("2026-05-04", ledger([]));
  expect(countOf({ ...job, log })).toEqual([2, 1, false]);
});

test("a stop of a route is one application in the ledger of its site, too", () => {
  const round = (date: Job["date"], book: NonNullable<Job["ledger"]>): RouteJob => ({
    type: "route-job",
    version: 1,
    title: "Tuesday round",
    date,
    products,
    mix,
    sprayer,
    limits: [four],
    stops: [{ id: "hall", area: { value: 12_000, unit: "ft2" }, ledger: book }],
  });
  const first = routeOrder(round("2026-06-09", ledger([]))).stops[0];
  expect(first?.limits.uses[0]?.after.value).toBe(1);
  const next = routeOrder(round("2026-07-07", ledger(first?.entries ?? []))).stops[0];
  expect([next?.limits.uses[0]?.before.value, next?.limits.uses[0]?.after.value]).toEqual([1, 2]);
});
