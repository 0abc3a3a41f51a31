import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger } from "../../../src/ledger/index.js";
import { checkLimits, floridaLimits, type Limit, type Proposal } from "../../../src/limits/index.js";

// What a limit says on the day itself, the day before and the day after; every date counted on a calendar.

const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
const n = (value: number, slow?: number) => ({
  supplies: slow === undefined ? [lb(value, "N")] : [lb(value, "N"), lb(slow, "N:slow")],
});
const source = "plan of the park (invented)";
type On = LedgerEntry["date"];
type Before = readonly (readonly [date: On, more?: Partial<LedgerEntry>])[];
const put = (rules: Limit | readonly Limit[], date: On, more: Partial<Proposal>, before: Before = []) =>
  checkLimits({
    ledger: ledger(
      before.map(([on, rest], i) => ({ id: `e${i}`, date: on, ...(rest ?? more) }) as LedgerEntry),
    ),
    limits: "source" in rules ? [rules] : rules,
    proposal: { ...more, date },
  });
const yearly: Limit = { amount: lb(3, "N"), per: "calendar year", source };

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

describe("what does not add up", () => {
  const told = (rule: object, date: On, more: Partial<Proposal>) => {
    const result = put({ source, ...rule } as Limit, date, more);
    const [one] = result.tests;
    return [one?.limit.of, one?.limit.states, one?.found, one?.violated, result.findings[0]?.text];
  };
  const label = (kind: string, more: object) => ({ kind, of: ["N", "P"], ...more });
  const park = { place: "park" } as const;

  test("says in words what it states and what was found", () => {
    expect(told({ kind: "slow share", atLeastPercentOfN: 20 }, "2026-06-08", n(1, 0.1))).toEqual([
      "N:slow",
      "at least 20 % of N slow",
      "10 % of N",
      true,
      "whole site: 10 % of N; the stated limit is at least 20 % of N slow.",
    ]);
    expect(
      told({ kind: "slow share", atLeastPercentOfN: 20 }, "2026-06-08", { supplies: [lb(1, "K2O")] }).slice(
        2,
        4,
      ),
    ).toEqual(["no N", false]);
    expect(
      told({ kind: "slow share", atLeastPercentOfN: 20 }, "2026-06-08", { productName: "unknown" }).slice(
        2,
        4,
      ),
    ).toEqual([null, null]);
    expect(
      told({ kind: "content", of: "P2O5", atMostPercent: 0.67 }, "2026-06-08", {
        analysis: "20-2-10",
        rate: { value: 3, unit: "lb/1000 ft2" },
      }).slice(0, 4),
    ).toEqual(["P2O5", "at most 0.67 % of P2O5 in the product", "2 %", true]);
    expect(
      told(label("blackout dates", { blackout: { from: "11-16", to: "02-29" } }), "2026-12-01", n(1)),
    ).toEqual([
      "N or P",
      "none from 11-16 to 02-29",
      "the day 2026-12-01",
      true,
      "whole site: the day 2026-12-01; the stated limit is none from 11-16 to 02-29. The first day within this limit, as far as the stated applications go: 2027-03-01.",
    ]);
    expect(
      told(label("blackout dates", { blackout: { from: "11-16", to: "02-29" } }), "2026-12-01", {
        supplies: [lb(1, "K2O")],
      }).slice(2, 4),
    ).toEqual(["no N or P", false]);
    const setback = label("setback", { of: "any", atLeast: { value: 15, unit: "ft" } });
    expect(told(setback, "2026-06-08", { ...n(1), facts: { toWater: { value: 4, unit: "m" } } })).toEqual([
      "any product",
      "at least 15 ft from water",
      "4 m",
      true,
      "whole site: 4 m; the stated limit is at least 15 ft from water.",
    ]);
    expect(told({ ...setback, of: ["P"] }, "2026-06-08", n(1)).slice(2, 4)).toEqual(["no P", false]);
    const ground = label("ground", { not: ["frozen", "snow-covered"] });
    expect(told(ground, "2026-06-08", { ...n(1), facts: { ground: ["saturated", "frozen"] } })).toEqual([
      "N or P",
      "none on frozen or snow-covered ground",
      "frozen",
      true,
      "whole site: frozen; the stated limit is none on frozen or snow-covered ground.",
    ]);
    expect(told(ground, "2026-06-08", { ...n(1), facts: { ground: [] } }).slice(2, 4)).toEqual([
      "none of these",
      false,
    ]);
    expect(told(ground, "2026-06-08", { supplies: [lb(1, "K2O")], facts: park }).slice(2, 4)).toEqual([
      "no N or P",
      false,
    ]);
  });

  test("a buffer and points say the same way what they state", () => {
    const buffer = { kind: "buffer", of: ["N"], from: "water", atLeast: { value: 50, unit: "ft" } };
    const at = (away: number) => ({
      ...n(1),
      facts: { edges: [{ from: "Water", away: { value: away, unit: "ft" } }] },
    });
    expect(told(buffer, "2026-06-08", at(49)).slice(0, 4)).toEqual([
      "N",
      "at least 50 ft from water",
      "49 ft",
      true,
    ]);
    expect(told({ ...buffer, floor: { value: 10, unit: "ft" } }, "2026-06-08", at(50)).slice(1, 4)).toEqual([
      "at least 50 ft from water, no less than 10 ft after reductions",
      "50 ft",
      false,
    ]);
    expect(told(buffer, "2026-06-08", { supplies: [lb(1, "K2O")] }).slice(2, 4)).toEqual(["no N", false]);
    expect(told(buffer, "2026-06-08", { ...n(1), facts: { edges: [] } }).slice(2, 4)).toEqual([
      "no water beside it",
      false,
    ]);
    const points = { kind: "runoff points", of: ["N"], atLeastPoints: 6 };
    expect(told(points, "2026-06-08", { ...n(1), facts: { runoff: [] } }).slice(0, 4)).toEqual([
      "N",
      "at least 6 points of measures against runoff",
      "no points",
      true,
    ]);
    expect(told(points, "2026-06-08", { supplies: [lb(1, "K2O")] }).slice(2, 4)).toEqual(["no N", false]);
    const one = { runoff: [{ measure: "records", points: 1 }] };
    expect(told(points, "2026-06-08", { ...n(1), facts: one })[2]).toBe("1 point: records 1");
  });

  test("blackout dates that leave out 29 February alone open on that day", () => {
    const rule: Limit = {
      kind: "blackout dates",
      of: "any",
      blackout: { from: "03-01", to: "02-28" },
      source,
    };
    expect(put(rule, "2026-06-08", n(1)).tests[0]?.earliestByStatedLimit).toBe("2028-02-29");
    const always: Limit = {
      kind: "blackout dates",
      of: "any",
      blackout: { from: "01-01", to: "12-31" },
      source,
    };
    expect(put(always, "2026-06-08", n(1)).tests[0]?.earliestByStatedLimit).toBeNull();
  });
});

describe("a mode of action", () => {
  const qoi = { kind: "rotation", group: "FRAC 11", of: ["ai:azoxystrobin"], source } as const;
  const spray = { supplies: [{ value: 0.3, unit: "lb/acre", of: "ai:azoxystrobin" }] };
  const untold = { productName: "unknown" };
  const on = (rule: Limit, before: Before, date: On = "2026-06-01") =>
    put(rule, date, spray, before).tests[0];
  const inYear: Limit = { ...qoi, atMost: 1, per: "calendar year" };

  test("states what it counts", () => {
    const states = (rule: Limit) => on(rule, [])?.limit.states;
    expect(states(inYear)).toBe("at most 1 in a calendar year of group FRAC 11");
    expect(states({ ...qoi, atMostInARow: 2 })).toBe("at most 2 in a row of group FRAC 11");
    expect(states({ ...qoi, atMost: 4, per: { days: 90 }, atMostInARow: 2 })).toBe(
      "at most 4 in 90 days, and at most 2 in a row of group FRAC 11",
    );
    expect(states({ ...qoi, atMost: 4, per: { months: 12 } })).toBe(
      "at most 4 in 12 months of group FRAC 11",
    );
    expect(states({ ...qoi, atMost: 4, per: { from: "03-01", to: "09-30" } })).toBe(
      "at most 4 from 03-01 to 09-30 of group FRAC 11",
    );
    expect(put(inYear, "2026-06-01", n(1)).tests[0]?.found).toBe("nothing of group FRAC 11");
  });

  test("an entry that tells nothing leaves it open in the same year, on its first and its last day, and in no other", () => {
    const with1 = (date: On) => on(inYear, [[date, untold]])?.violated;
    expect(["2026-01-01", "2026-12-31", "2025-12-31", "2027-01-01"].map((date) => with1(date as On))).toEqual(
      [null, null, false, false],
    );
  });

  test("a first day that fits is told only where it is sure", () => {
    expect(on(inYear, [["2026-03-01", spray]])).toMatchObject({
      violated: true,
      found: "with this one 2 in a calendar year",
      earliestByStatedLimit: "2027-01-01",
    });
    expect(
      on(inYear, [
        ["2026-03-01", spray],
        ["2026-04-01", untold],
      ]),
    ).toMatchObject({ violated: true, earliestByStatedLimit: null });
    // In a row as well, no day alone will do
    expect(
      on({ ...qoi, atMost: 1, per: "calendar year", atMostInARow: 1 }, [["2026-03-01", spray]]),
    ).toMatchObject({
      violated: true,
      found: "with this one 2 in a calendar year, 2 in a row",
      earliestByStatedLimit: null,
    });
  });

  test("outside its season it counts nothing", () => {
    const season: Limit = { ...qoi, atMost: 0, per: { from: "07-01", to: "09-30" } };
    expect(on(season, [])?.violated).toBe(false);
    expect(on(season, [], "2026-07-01")).toMatchObject({
      violated: true,
      earliestByStatedLimit: "2026-10-01",
    });
  });

  test("a run is followed 24 months back, and no further", () => {
    const rule: Limit = { ...qoi, atMostInARow: 1 };
    expect(on(rule, [["2024-06-01", spray]])?.violated).toBe(true);
    expect(on(rule, [["2024-05-31", spray]])?.violated).toBe(false);
  });

  test("what went down on the same day is the same application", () => {
    expect(on({ ...qoi, atMostInARow: 1 }, [["2026-06-01", spray]])?.violated).toBe(false);
    expect(on(inYear, [["2026-06-01", spray]])?.violated).toBe(false);
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

test("an amount that is not known leaves the limit open, with what is known of it", () => {
  const prodiamine: Limit = {
    amount: { value: 1, unit: "lb/acre", of: "ai:prodiamine" },
    per: "calendar year",
    source,
  };
  const named = {
    product: "feed-and-herbicide",
    activeIngredient: "Prodiamine 0.38%",
    area: { value: 1000, unit: "ft2" },
    amount: { value: 4, unit: "lb" },
    analysis: "24-0-11",
  } as const;
  const known = { supplies: [{ value: 0.4, unit: "lb/acre", of: "ai:prodiamine" }] };
  const result = put(prodiamine, "2026-06-08", known, [["2026-03-01", named]]);
  expect(result.uses[0]).toMatchObject({ violated: null, earliestByStatedLimit: null });
  expect(result.findings[0]).toMatchObject({
    code: "limit/not-known",
    severity: "caution",
    params: { limit: 1, known: 0.4, unit: "lb/acre" },
    text: "whole site: at least 0.4 lb/acre of ai:prodiamine in a calendar year, of the stated 1; how much more is not stated or could not be weighed, so it is not known whether the limit is exceeded.",
  });
  expect(result.notChecked[0]).toBe(
    "whole site: the ai:prodiamine applied on 2026-03-01 (e0): not stated, or it cannot be weighed.",
  );
  // Over the limit with what is known alone
  expect(
    put(prodiamine, "2026-06-08", { supplies: [{ value: 1.1, unit: "lb/acre", of: "ai:prodiamine" }] }, [
      ["2026-03-01", named],
    ]).uses[0]?.violated,
  ).toBe(true);
  // In another year it is no matter
  expect(put(prodiamine, "2026-06-08", known, [["2025-03-01", named]]).uses[0]?.violated).toBe(false);
  // More than three are counted, not named
  const four = ["2026-03-01", "2026-03-02", "2026-03-03", "2026-03-04"] as const;
  expect(
    put(
      prodiamine,
      "2026-06-08",
      known,
      four.map((on) => [on, named] as const),
    ).notChecked[0],
  ).toBe(
    "whole site: the ai:prodiamine applied on 2026-03-01 (e0), 2026-03-02 (e1), 2026-03-03 (e2) and 1 more: not stated, or it cannot be weighed.",
  );
  expect(
    put(
      prodiamine,
      "2026-06-08",
      known,
      four.slice(0, 3).map((on) => [on, named] as const),
    ).notChecked[0],
  ).not.toMatch(/more/);
});
