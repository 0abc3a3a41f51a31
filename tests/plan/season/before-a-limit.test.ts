// A repeat whose reapply-by day falls into a time that a limit rules out.
import { describe, expect, test } from "vitest";
import { ledger } from "../../../src/ledger/index.js";
import { fewestVisits } from "../../../src/plan/fewest-visits/index.js";
import { type SeasonPlan, schedule } from "../../../src/plan/index.js";

const source = "plan of the park (invented)";
/** Done on November 2; by its rule again from December 1 (29 days) up to December 21 (49 days). */
const plan = (more: Partial<SeasonPlan> = {}): SeasonPlan => ({
  season: { from: "2027-11-10", to: "2028-01-10" },
  treatments: [
    {
      id: "feed",
      applied: ["2027-11-02"],
      count: 1,
      interval: { minimumDays: 29, maximumDays: 49, source },
      puts: { supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }] },
    },
  ],
  // Nothing with N from December 16 to March 1.
  limits: [
    { id: "winter", kind: "blackout dates", of: ["N"], blackout: { from: "12-16", to: "03-01" }, source },
  ],
  ...more,
});
const dates = (given: SeasonPlan) => schedule(given).visits.map(({ date }) => date);

describe("a repeat that a limit rules out on its reapply-by day", () => {
  test("comes on the last day before the blackout, and says why", () => {
    const { visits, notPlaced, findings } = schedule(plan());
    expect([visits.map(({ date }) => date), notPlaced, findings]).toEqual([["2027-12-15"], [], []]);
    expect(visits[0]?.applications[0]?.reasons.filter(({ code }) => code === "schedule/limit")).toEqual([
      {
        code: "schedule/limit",
        text: "On 2027-12-21 it would violate winter; 2027-12-15 is the last day by 2027-12-21 within all stated limits.",
        source,
      },
    ]);
  });

  test("on a day that nobody avoids: December 15, 2027 is a Wednesday, the 14th a Tuesday", () => {
    expect(dates(plan({ avoid: { weekdays: [3] } }))).toEqual(["2027-12-14"]);
  });

  test("comes late where no day before is left: the blackout begins on the first one, December 1", () => {
    const limits = [
      { id: "winter", kind: "blackout dates", of: ["N"], blackout: { from: "12-01", to: "12-24" }, source },
    ] as const;
    const { visits, findings } = schedule(plan({ limits }));
    expect(visits.map(({ date }) => date)).toEqual(["2027-12-25"]);
    expect(findings.map(({ code, params }) => [code, params.days])).toEqual([["schedule/late", 4]]);
  });

  test("the fewest visits are as many", async () => {
    const found = await fewestVisits(plan());
    expect([found.outcome, found.visits]).toEqual(["found", 1]);
  });

  test("names a limit once, on however many parts it is violated", () => {
    const book = ledger([
      {
        id: "a",
        date: "2027-11-05",
        parts: ["north"],
        supplies: [{ value: 1, unit: "lb/1000 ft2", of: "N" }],
      },
      {
        id: "b",
        date: "2027-11-05",
        parts: ["south"],
        supplies: [{ value: 1, unit: "lb/1000 ft2", of: "N" }],
      },
    ]);
    const limits = [
      { id: "quarter", amount: { value: 1.2, unit: "lb/1000 ft2", of: "N" }, per: { days: 120 }, source },
    ] as const;
    // November 5 leaves 120 days on March 4: November has 25 more days, then 31, 31 and 29 make 116, and 4.
    expect(schedule(plan({ ledger: book, limits })).notPlaced[0]?.reasons.map(({ text }) => text)).toContain(
      "On 2027-12-21 it would violate quarter; 2028-03-04 is the first day within all stated limits.",
    );
  });
});
