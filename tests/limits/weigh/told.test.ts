import { describe, expect, test } from "vitest";
import type { Limit, Proposal } from "../../../src/limits/index.js";
import { type Before, lb, n, type On, put, source } from "./put.js";

// What limits say in words.

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
      "whole site: the day 2026-12-01; the stated limit is none from 11-16 to 02-29. By the stated applications, the first day within this limit is 2027-03-01.",
    ]);
    expect(
      told(label("blackout dates", { blackout: { from: "11-16", to: "02-29" } }), "2026-12-01", {
        supplies: [lb(1, "K2O")],
      }).slice(2, 4),
    ).toEqual(["no N or P", false]);
  });

  test("and where", () => {
    const setback = label("setback", { of: "any", atLeast: { value: 15, unit: "ft" } });
    expect(told(setback, "2026-06-08", { ...n(1), facts: { toWater: { value: 4, unit: "m" } } })).toEqual([
      "any product",
      // 15 x 0.3048 = 4.572
      "at least 15 ft (4.572 m) from water",
      "4 m",
      true,
      "whole site: 4 m; the stated limit is at least 15 ft (4.572 m) from water.",
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
