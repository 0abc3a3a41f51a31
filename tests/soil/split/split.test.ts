import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addMonths, type CivilDate, quantity, splitAmendment } from "../../../src/index.js";
import { complaints } from "../../errors.js";

const lb = (value: number) => quantity(value, "lb/1000 ft2", "product:lime-a");
const first = "2026-10-01" as CivilDate;
const base = { source: "laboratory report", first, monthsApart: 6 };

describe("a split", () => {
  test("adds up, stays under the maximum, and keeps its months", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 900, noNaN: true }),
        fc.integer({ min: 20, max: 120 }),
        fc.integer({ min: 1, max: 12 }),
        (total, most, monthsApart) => {
          const { applications } = splitAmendment({ ...base, total: lb(total), most: lb(most), monthsApart });
          const sum = applications.reduce((so, { rate }) => so + rate.value, 0);
          expect(sum).toBeCloseTo(total, 8);
          applications.forEach(({ date, rate }, i) => {
            expect(rate.value).toBeLessThanOrEqual(most * (1 + 1e-9));
            expect(date).toBe(addMonths(first, i * monthsApart));
          });
          expect(applications.length).toBe(Math.ceil(total / most - 1e-12));
        },
      ),
    );
  });
  test("keeps a yearly maximum", () => {
    const split = splitAmendment({
      ...base,
      total: lb(30),
      most: lb(5),
      perYear: lb(10),
      monthsApart: 2,
    });
    expect(split.applications.map(({ date }) => date)).toEqual([
      "2026-10-01",
      "2026-12-01",
      "2027-10-01",
      "2027-12-01",
      "2028-10-01",
      "2028-12-01",
    ]);
  });
  test("says that a long one outlasts its soil test", () => {
    const split = splitAmendment({ ...base, total: lb(800), most: lb(100) });
    expect(split.findings.map(({ code }) => code)).toEqual(["soil/split-outlasts-test"]);
    expect(splitAmendment({ ...base, total: lb(0), most: lb(100) }).applications).toEqual([]);
  });
  test("refuses what is no plan", () => {
    expect(complaints(() => splitAmendment({ ...base, total: lb(800), most: lb(1) }))).toEqual([
      "infeasible total",
    ]);
    const other = quantity(100, "lb/1000 ft2", "CaCO3 equivalent") as never;
    expect(
      complaints(() => splitAmendment({ ...base, total: lb(800), most: other, monthsApart: 0.5 })),
    ).toEqual(["substance/mismatch most", "range monthsApart"]);
    expect(
      complaints(() => splitAmendment({ ...base, total: lb(8), most: lb(1), first: "soon" as never })),
    ).toEqual(["date first"]);
  });

  test("what went down on 29 February counts in the twelve months up to 28 February: the next is due on 1 March", () => {
    const dates = (day: CivilDate, monthsApart: number) =>
      splitAmendment({
        ...base,
        total: lb(12),
        most: lb(5),
        perYear: lb(10),
        first: day,
        monthsApart,
      }).applications.map(({ date }) => date);
    // 3 of 4 lb, two in any twelve months.
    expect(dates("2024-02-29", 2)).toEqual(["2024-02-29", "2024-04-29", "2025-03-01"]);
    expect(dates("2024-02-28", 2)).toEqual(["2024-02-28", "2024-04-28", "2025-02-28"]);
    // Six months after 31 August 2027 is 29 February 2028; that one is the second, and the third waits for the first.
    expect(dates("2027-08-31", 6)).toEqual(["2027-08-31", "2028-02-29", "2028-08-31"]);
    const four = splitAmendment({
      ...base,
      total: lb(16),
      most: lb(5),
      perYear: lb(10),
      first: "2027-08-31",
      monthsApart: 6,
    });
    expect(four.applications.map(({ date }) => date)).toEqual([
      "2027-08-31",
      "2028-02-29",
      "2028-08-31",
      "2029-03-01",
    ]);
  });
});
