import { describe, expect, test } from "vitest";
import { checkLimits, type Limit, ledger, ledgerTotals, resistanceRotation } from "../../../src/index.js";

/** A fertilizer that holds an herbicide, written down with the name and without its percentage. */
const book = ledger([
  {
    id: "a",
    date: "2026-04-04",
    product: "feed-and-herbicide",
    analysis: "24-0-11",
    activeIngredient: "Prodiamine 0.38%",
    area: { value: 1000, unit: "ft2" },
    amount: { value: 4, unit: "lb" },
  },
]);
const limits: readonly Limit[] = [
  { amount: { value: 0.75, unit: "lb/acre", of: "ai:prodiamine" }, per: "calendar year", source: "label" },
  { kind: "count", of: "ai:prodiamine", atMost: 1, per: "calendar year", source: "label" },
  { kind: "interval", of: "ai:prodiamine", atLeastDays: 90, source: "label" },
  { kind: "count", of: "ai:dithiopyr", atMost: 1, per: "calendar year", source: "label" },
];

describe("an active ingredient that an entry only names", () => {
  test("counts as an application, its amount as not known", () => {
    const { uses, tests, findings } = checkLimits({
      ledger: book,
      proposal: { date: "2026-06-01", supplies: [{ value: 0.5, unit: "lb/acre", of: "ai:prodiamine" }] },
      limits,
    });
    expect(uses.map(({ violated }) => violated)).toEqual([null, true, false]);
    expect(tests.map(({ violated, earliestByStatedLimit }) => [violated, earliestByStatedLimit])).toEqual([
      [true, "2026-07-03"],
    ]);
    expect(findings.map(({ code }) => code)).toContain("limit/not-known");
  });

  test("is told in the totals, and has its group without the percentage", () => {
    const year = { from: "2026-01-01", to: "2026-12-31" } as const;
    const totals = ledgerTotals({ ledger: book, ...year });
    expect(totals.supplies.N?.in("lb/1000 ft2")).toBeCloseTo(0.96, 9);
    expect(totals.notCounted).toEqual(["a"]);
    const { groups, withoutCode } = resistanceRotation({ ledger: book, ...year });
    expect(withoutCode).toEqual([]);
    expect(groups.map(({ scheme, group }) => `${scheme} ${group}`)).toEqual(["HRAC 3"]);
  });

  test("entries of one part are named where the whole site is asked for", () => {
    const year = { from: "2026-01-01", to: "2026-12-31" } as const;
    const parted = ledger([
      { id: "x", date: "2026-05-04", parts: ["north"], activeIngredient: "propiconazole" },
    ]);
    expect(resistanceRotation({ ledger: parted, ...year }).notCounted).toEqual(["x"]);
    expect(ledgerTotals({ ledger: parted, ...year }).notCounted).toEqual(["x"]);
    expect(resistanceRotation({ ledger: parted, ...year, part: "north" }).notCounted).toEqual([]);
    expect(ledgerTotals({ ledger: parted, ...year, part: "south" }).notCounted).toEqual([]);
  });
});
