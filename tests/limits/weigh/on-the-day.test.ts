import { describe, expect, test } from "vitest";
import type { LedgerEntry } from "../../../src/ledger/index.js";
import { floridaLimits, type Limit } from "../../../src/limits/index.js";
import { type Before, lb, n, type On, put, source } from "./put.js";

// What a limit says on the day itself, the day before and the day after; every date counted on a calendar.

const yearly: Limit = { amount: lb(3, "N"), per: "calendar year", source };

/** An entry that states nothing of what it puts down. */
const untold = (date: On): readonly [On, Partial<LedgerEntry>] => [date, {}];

describe("an interval beside an entry that does not tell", () => {
  const rule: Limit = { kind: "interval", of: "N", atLeastDays: 14, source };
  const on = (before: Before) => {
    const { tests, earliestByStatedRules } = put(rule, "2026-06-08", n(0.5), before);
    return [tests[0]?.violated, tests[0]?.earliestByStatedLimit, earliestByStatedRules];
  };

  test("is not told within the time on either side: fourteen days from 8 June are 25 May and 22 June", () => {
    for (const day of ["2026-05-26", "2026-06-08", "2026-06-21"] as const)
      expect([day, ...on([untold(day)])]).toEqual([day, null, null, "2026-06-08"]);
  });

  test("is told where that entry lies outside of it, however many there are", () => {
    const far = (["2026-05-24", "2026-05-25", "2026-06-22", "2027-04-01"] as const).map(untold);
    expect(on(far)).toEqual([false, "2026-06-08", "2026-06-08"]);
  });

  test("names no later day that lies too near to it", () => {
    // After 1 June the 15th is free; fourteen days from it are 29 June.
    const known = ["2026-06-01", n(0.5)] as const;
    expect(on([known, untold("2026-06-29")])).toEqual([true, "2026-06-15", "2026-06-15"]);
    expect(on([known, untold("2026-06-28")])).toEqual([true, null, null]);
  });
});

describe("an interval", () => {
  const rule: Limit = { kind: "interval", of: "N", atLeastDays: 21, source };
  const on = (date: On, before: readonly On[]) =>
    put(
      rule,
      date,
      n(0.5),
      before.map((day) => [day] as const),
    ).tests[0];

  test("ends on the day: 22 May and 21 days is 12 June", () => {
    expect(on("2026-06-11", ["2026-05-22"])).toMatchObject({
      violated: true,
      found: "applied on 2026-05-22",
      earliestByStatedLimit: "2026-06-12",
    });
    expect(on("2026-06-12", ["2026-05-22"])).toMatchObject({
      violated: false,
      found: "none within that time",
      earliestByStatedLimit: "2026-06-12",
    });
  });

  test("leaves a gap that is just long enough: 12 June lies 21 days from 22 May and from 3 July", () => {
    expect(on("2026-06-10", ["2026-05-22", "2026-07-03"])?.earliestByStatedLimit).toBe("2026-06-12");
    // 2 July is a day too near: 23 July it is then
    expect(on("2026-06-10", ["2026-05-22", "2026-07-02"])?.earliestByStatedLimit).toBe("2026-07-23");
    expect(on("2026-06-10", ["2026-05-22", "2026-06-20"])?.found).toBe("applied on 2026-05-22, 2026-06-20");
  });

  test("says what it states, and what was not found", () => {
    expect(on("2026-06-10", [])?.limit).toMatchObject({
      of: "N",
      kind: "interval",
      states: "at least 21 days between applications",
    });
    const other = put(rule, "2026-06-10", { supplies: [lb(1, "K2O")] }, [["2026-06-09", n(1)]]).tests[0];
    expect([other?.violated, other?.found, other?.earliestByStatedLimit]).toEqual([
      false,
      "no N",
      "2026-06-10",
    ]);
    const untold = { productName: "unknown" };
    expect(put(rule, "2026-06-10", n(0.5), [["2026-06-01", untold]]).tests[0]?.violated).toBeNull();
    expect(put(rule, "2026-06-10", n(0.5), [["2026-05-20", untold]]).tests[0]?.violated).toBe(false);
    expect(put(rule, "2026-06-10", untold, [["2026-06-01", n(1)]]).tests[0]?.violated).toBeNull();
    // One that is too near is enough, whatever is not known beside it
    expect(
      put(rule, "2026-06-10", n(0.5), [
        ["2026-06-01", untold],
        ["2026-06-02", n(1)],
      ]).tests[0]?.violated,
    ).toBe(true);
  });

  test("looks at no application that lies too far back, also from a later day on", () => {
    // Shut up to 31 July; on 1 August the one of 5 August is too near, and 21 days behind it is 26 August
    const shut: Limit = {
      kind: "blackout dates",
      of: "any",
      blackout: { from: "06-08", to: "07-31" },
      source,
    };
    const result = put([rule, shut], "2026-06-08", n(0.5), [["2026-06-05"], ["2026-08-05"]]);
    expect(result.earliestByStatedRules).toBe("2026-08-26");
  });
});

describe("a limit that lapses with a part of the year", () => {
  const spring = { from: "03-01", to: "06-30" } as const;
  const scoped: Limit = { amount: lb(1, "N"), per: { days: 30 }, source, scope: { season: spring } };
  const first = (before: On, date: On = "2026-06-08") =>
    put(scoped, date, n(0.7), [[before]]).uses[0]?.earliestByStatedLimit;

  test("frees what is proposed on the earlier of two days", () => {
    // 5 June and 30 days is 5 July, after the end of the season
    expect(first("2026-06-05")).toBe("2026-07-01");
    // 20 May and 30 days is 19 June, within it
    expect(first("2026-05-20")).toBe("2026-06-19");
    // 1 June and 30 days is 1 July, the same day
    expect(first("2026-06-01")).toBe("2026-07-01");
    // Kept on the day itself, it asks for no other
    expect(first("2026-05-01")).toBe("2026-06-08");
  });

  test("what no later day makes fit is free on the day after the season", () => {
    const single: Limit = { amount: lb(1, "N"), per: "application", source, scope: { season: spring } };
    const result = put(single, "2026-06-30", n(2));
    expect(result.uses[0]?.earliestByStatedLimit).toBe("2026-07-01");
    expect(result.earliestByStatedRules).toBe("2026-07-01");
    // With every day in it, the season never ends
    const always: Limit = { ...single, scope: { season: { from: "01-01", to: "12-31" } } };
    expect(put(always, "2026-06-30", n(2)).uses[0]?.earliestByStatedLimit).toBeNull();
  });

  test("what lifts it in a part of the year does so from its first day on", () => {
    const lifted: Limit = {
      amount: lb(1, "N"),
      per: "application",
      source,
      exemptIf: [
        { season: { from: "10-01", to: "10-31" } },
        { season: { from: "08-15", to: "09-15" }, place: ["park"] },
      ],
    };
    expect(put(lifted, "2026-06-08", n(2)).uses[0]?.earliestByStatedLimit).toBe("2026-10-01");
    expect(
      put(lifted, "2026-06-08", { ...n(2), facts: { place: "park" } }).uses[0]?.earliestByStatedLimit,
    ).toBe("2026-08-15");
    expect(put(lifted, "2026-10-31", n(2)).uses).toEqual([]);
    expect(put(lifted, "2026-11-01", n(2)).uses[0]?.earliestByStatedLimit).toBe("2027-10-01");
  });

  test("Florida's 2 lb of spring and summer end with August, and 1 lb binds from September on", () => {
    const { limits } = floridaLimits;
    const result = put(limits, "2026-08-31", { ...n(2.01, 1.5), facts: { place: "home lawn" } });
    expect(result.uses.find(({ violated }) => violated)?.earliestByStatedLimit).toBe("2026-09-01");
    expect(result.earliestByStatedRules).toBeNull();
  });

  test("a test that does not add up lapses as well", () => {
    const rule: Limit = { kind: "slow share", atLeastPercentOfN: 20, source, scope: { season: spring } };
    expect(put(rule, "2026-06-08", n(1, 0.1)).tests[0]?.earliestByStatedLimit).toBe("2026-07-01");
    expect(put(rule, "2026-06-08", n(1, 0.2)).tests[0]?.earliestByStatedLimit).toBe("2026-06-08");
  });
});

describe("at the end of the calendar", () => {
  const heavy = [["9995-02-01", n(2.5)]] as const;

  test("no day is looked for: none is told instead of a date that there is not", () => {
    const use = put(yearly, "9995-06-08", n(1), heavy).uses[0];
    expect([use?.violated, use?.earliestByStatedLimit, use?.moreCanBeAppliedFrom]).toEqual([
      true,
      null,
      null,
    ]);
    const winter: Limit = { ...yearly, scope: { season: { from: "11-01", to: "12-31" } } };
    expect(put(winter, "9999-12-31", n(4)).uses[0]?.earliestByStatedLimit).toBeNull();
    const shut: Limit = {
      kind: "blackout dates",
      of: "any",
      blackout: { from: "11-01", to: "12-31" },
      source,
    };
    expect(put(shut, "9999-12-31", n(1)).tests[0]?.earliestByStatedLimit).toBeNull();
    const rolling: Limit = { amount: lb(3, "N"), per: { days: 30 }, source };
    expect(put(rolling, "9995-02-10", n(1), heavy).uses[0]?.earliestByStatedLimit).toBeNull();
  });

  test("up to 9989 it is as ever", () => {
    const use = put(yearly, "9989-06-08", n(1), [["9989-02-01", n(2.5)]]).uses[0];
    expect([use?.earliestByStatedLimit, use?.moreCanBeAppliedFrom]).toEqual(["9990-01-01", "9990-01-01"]);
  });
});

describe("more can be applied", () => {
  const rolling: Limit = { amount: lb(1, "N"), per: { days: 30 }, source };
  const from = (adds: number, ...before: readonly On[]) =>
    put(
      rolling,
      "2026-06-08",
      n(adds),
      before.map((day) => [day, n(0.1)] as const),
    ).uses[0]?.moreCanBeAppliedFrom;

  test("from the day on which the oldest of the stretch no longer counts, today among them", () => {
    // 8 June and 30 days is 8 July, 20 May and 30 days 19 June, 20 June and 30 days 20 July
    expect(from(0.2)).toBe("2026-07-08");
    expect(from(0.2, "2026-06-20")).toBe("2026-07-08");
    expect(from(0.2, "2026-05-20")).toBe("2026-06-19");
    expect(from(0, "2026-06-20")).toBe("2026-07-20");
    expect(from(0.2, "2026-06-08")).toBe("2026-07-08");
    expect(from(0)).toBeNull();
  });
});

describe("the first day of all", () => {
  test("is the later of two that are asked for, and none where one names none", () => {
    const rules: readonly Limit[] = [
      { kind: "interval", of: "N", atLeastDays: 10, source },
      { amount: lb(1, "N"), per: { days: 30 }, source },
    ];
    const result = put(rules, "2026-06-08", n(0.7), [["2026-06-01", n(0.7)]]);
    expect(result.earliestByStatedRules).toBe("2026-07-01");
    const never: Limit = { amount: lb(0.5, "N"), per: "application", source };
    expect(put([...rules, never], "2026-06-08", n(0.7)).earliestByStatedRules).toBeNull();
  });

  test("what could not be weighed is told", () => {
    const unweighed = put(yearly, "2026-06-08", {
      product: "feed-and-herbicide",
      activeIngredient: "Prodiamine 0.38%",
      analysis: "24-0-11",
      area: { value: 1000, unit: "ft2" },
      amount: { value: 4, unit: "lb" },
    });
    expect(unweighed.notChecked.join("\n")).toMatch(
      /How much the application supplies of ai:prodiamine: it could not be weighed\./,
    );
  });
});
