import { describe, expect, test } from "vitest";
import * as all from "../../src/index.js";
import { problemsOf } from "../errors.js";

// A record that another function makes or takes, in the place of the one that is wanted: one line, which says what was given.

const job = {
  type: "job",
  version: 1,
  title: "Feed",
  date: "2026-05-04",
  site: { name: "Park", parts: [{ name: "lawn", shape: "measured", area: { value: 20000, unit: "ft2" } }] },
  products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
  treatments: [
    { id: "feed", method: "spread", product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
  ],
} as const;
const order = all.workOrder(job);
const ledger = all.ledger([
  { id: "a", date: "2026-04-01", supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }] },
]);
const season = { from: "2026-04-01", to: "2026-10-31" } as const;
const check = { ledger, proposal: { date: "2026-06-08" }, limits: [] } as const;
const records: Readonly<Record<string, unknown>> = {
  job,
  "work-order": order,
  ledger,
  "limit-set": all.pennsylvaniaLimits,
  "ledger-totals": all.ledgerTotals({ ledger, from: "2026-01-01", to: "2026-12-31" }),
  "limit-check": all.checkLimits(check),
  schedule: all.schedule({
    season,
    treatments: [{ id: "feed", interval: { minimumDays: 28, maximumDays: 45, source: "plan (invented)" } }],
  } as never),
  "work-order-sheet": all.workOrderSheet(order),
  fertilizer: all.fertilizer({ id: "feed-a", analysis: "24-0-11" }),
};

type Call = (given: never) => unknown;
const calls: Readonly<Record<string, readonly [take: Call, ...own: string[]]>> = {
  workOrder: [all.workOrder, "job"],
  visitEntries: [all.visitEntries, "job"],
  asApplied: [all.asApplied],
  workOrderText: [all.workOrderText, "work-order"],
  workOrderSheet: [all.workOrderSheet, "work-order"],
  ledger: [all.ledger],
  ledgerWith: [(given) => all.ledgerWith(given, { id: "b", date: "2026-05-01" }), "ledger"],
  ledgerCsv: [all.ledgerCsv, "ledger"],
  ledgerTotals: [all.ledgerTotals],
  "ledgerTotals, its ledger": [(given) => all.ledgerTotals({ ...season, ledger: given }), "ledger"],
  missingForRecord: [(given) => all.missingForRecord(given, all.usRestrictedUseRecord)],
  checkLimits: [all.checkLimits],
  "checkLimits, its ledger": [(given) => all.checkLimits({ ...check, ledger: given }), "ledger"],
  "checkLimits, its limits": [(given) => all.checkLimits({ ...check, limits: given })],
  limit: [all.limit],
  schedule: [all.schedule],
  "workOrder, its ledger": [(given) => all.workOrder({ ...job, ledger: given }), "ledger"],
  "workOrder, its limits": [(given) => all.workOrder({ ...job, limits: given })],
  routeOrder: [all.routeOrder],
  routeText: [all.routeText],
  routeSheet: [all.routeSheet],
  routeLoads: [all.routeLoads],
  seasonProgram: [all.seasonProgram],
  purchaseList: [all.purchaseList],
  stockOnHand: [all.stockOnHand],
  fertilizer: [all.fertilizer, "fertilizer"],
  turfConflicts: [all.turfConflicts],
};

describe("another record where one is wanted is one mistake", () => {
  test.each(Object.keys(calls))("%s", (name) => {
    const [take, ...own] = calls[name] as readonly [Call, ...string[]];
    const told = Object.keys(records)
      .filter((type) => !own.includes(type))
      .map((type) => [type, problemsOf(() => take(records[type] as never)).length]);
    expect(told.filter(([, count]) => count !== 1)).toEqual([]);
  });
});

test("with the field that takes it, where there is one", () => {
  expect(problemsOf(() => all.ledgerTotals(ledger as never))).toEqual([
    {
      code: "type",
      path: "input",
      got: 'a record of type "ledger"',
      expected: "a record with ledger, from, to, part: write { ledger: ... }",
    },
  ]);
});

test("a record with a slip in a name is told field by field", () => {
  const typed = { type: "x", version: 1, ledger, from: "2026-01-01", to: "2026-12-31" };
  expect(problemsOf(() => all.ledgerTotals(typed as never)).map(({ path }) => path)).toEqual([
    "input.type",
    "input.version",
  ]);
});
