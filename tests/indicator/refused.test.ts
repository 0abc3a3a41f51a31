import { describe, expect, test } from "vitest";
import {
  activeUses,
  fieldImpact,
  impactQuotient,
  leachingScore,
  treatmentFrequency,
} from "../../src/indicator/index.js";
import { quantity } from "../../src/quantity/index.js";
import { complaints } from "../errors.js";
import { expectRefusals } from "../refusals.js";

const acre = (value: number) => quantity(value, "acre");
const call =
  <I, R>(of: (input: never) => R, good: I) =>
  (change: object) =>
  (): R =>
    of({ ...good, ...change } as never);

describe("the leaching score", () => {
  const score = call(leachingScore, { halfLife: quantity(60, "d"), koc: quantity(100, "mL/g") });

  test("says what it needs", () => {
    expectRefusals([
      [score({ halfLife: undefined }), "missing", "halfLife", /^the half-life in soil/],
      [score({ halfLife: quantity(0, "d") }), "range", "halfLife", /more than zero/],
      [score({ koc: undefined }), "missing", "koc", /^Koc, in mL\/g/],
      [score({ koc: quantity(0, "mL/g") }), "range", "koc", /more than zero/],
    ]);
  });

  test("turns its sign below a day and above 10,000 mL/g, not at them", () => {
    const turns = (days: number, koc: number) =>
      score({ halfLife: quantity(days, "d"), koc: quantity(koc, "mL/g") })().findings.find(
        ({ code }) => code === "leaching/score-turns",
      );
    expect([turns(1, 20_000), turns(0.5, 10_000), turns(2, 20_000)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(turns(0.5, 20_000)).toMatchObject({
      params: { days: 0.5, koc: 20_000 },
      text: expect.stringMatching(/^Half-life below 1 day and Koc above 10,000 mL\/g: .* scores too high/),
      source: {
        title: "Groundwater ubiquity score (GUS)",
        publisher: "National Pesticide Information Center",
      },
    });
    expect(score({})().findings).toMatchObject([
      {
        text: "The score ranks ingredients. It leaves out soil, weather, rate and the depth to groundwater.",
        source: {
          publisher: "FAIRWAY information system",
          url: expect.stringMatching(/groundwater-ubiquity-score/),
        },
      },
    ]);
  });

  test("of a day, or of 10,000 mL/g, is 0: low, and not below zero", () => {
    for (const [days, koc] of [
      [1, 100],
      [60, 10_000],
    ] as const) {
      const zero = score({ halfLife: quantity(days, "d"), koc: quantity(koc, "mL/g") })();
      expect(Object.is(zero.score, 0)).toBe(true);
      expect(zero.potential).toBe("low");
    }
  });

  test("of a half-life that is too short to count is refused at the half-life", () => {
    expectRefusals([
      [score({ halfLife: quantity(5e-324, "s") }), "range", "halfLife", /a half-life that can be measured/],
    ]);
  });
});

describe("active ingredient by year", () => {
  const one = { date: "2026-04-20", active: quantity(0.5, "lb/acre", "ai:dithiopyr"), area: acre(4) };
  const uses = (change: object) => () =>
    activeUses({ area: acre(10), applications: [one, { ...one, ...change }] as never });

  test("names the application", () => {
    expectRefusals([
      [() => activeUses({ area: acre(10), applications: [] }), "missing", "applications", /application/],
      [
        () => activeUses({ area: undefined as never, applications: [one] as never }),
        "missing",
        "area",
        /^the whole area/,
      ],
      [uses({ date: "2026-02-30" }), "date", "applications[1].date", /./],
      [uses({ active: undefined }), "missing", "applications[1].active", /^an amount or a rate of ai/],
      [
        uses({ active: quantity(3, "lb", "product") }),
        "substance/mismatch",
        "applications[1].active",
        /of ai or ae, not of product: activeRate of the product gives it/,
      ],
      [
        uses({ area: undefined }),
        "missing",
        "applications[1].area",
        /^the treated area, because the active is a rate/,
      ],
      [uses({ area: acre(0) }), "range", "applications[1].area", /more than zero/],
    ]);
    expect(complaints(uses({ date: 3, active: 4, area: 5 }))).toEqual([
      expect.stringMatching(/applications\[1\]\.date$/),
      "type applications[1].active",
      "type applications[1].area",
    ]);
  });

  test("lists years in their order, and ingredients by name within one", () => {
    const of = (date: string, name: string) => ({ ...one, date, active: quantity(1, "lb", `ai:${name}`) });
    const { uses: list } = activeUses({
      area: acre(10),
      applications: [
        of("2027-01-01", "azoxystrobin"),
        of("2026-05-01", "prodiamine"),
        of("2026-06-01", "dithiopyr"),
        of("2026-07-01", "dithiopyr"),
      ] as never,
    });
    expect(list.map(({ year, of: name, applications }) => [year, name, applications])).toEqual([
      [2026, "ai:dithiopyr", 2],
      [2026, "ai:prodiamine", 1],
      [2027, "ai:azoxystrobin", 1],
    ]);
  });
});

describe("treatments counted as full rates", () => {
  const pint = (value: number) => quantity(value, "pt/acre", "product");
  const may = { name: "May", rate: pint(2), fullRate: pint(4), treated: acre(10) };
  const season = (change: object) => () =>
    treatmentFrequency({ area: acre(10), treatments: [may, { ...may, ...change }] as never });

  test("names the treatment", () => {
    expectRefusals([
      [() => treatmentFrequency({ area: acre(10), treatments: [] }), "missing", "treatments", /treatment/],
      [
        () => treatmentFrequency({ area: undefined as never, treatments: [may] }),
        "missing",
        "area",
        /^the whole area/,
      ],
      [
        () => treatmentFrequency({ area: acre(10), treatments: Array(5001).fill(may) }),
        "range",
        "treatments",
        /"max":5000,"count":"items"/,
      ],
      [season({ name: "" }), "missing", "treatments[1].name", /^the name of the treatment/],
      [season({ rate: 3 }), "type", "treatments[1].rate", /./],
      [season({ fullRate: pint(0) }), "range", "treatments[1].fullRate", /more than zero/],
      [
        season({ fullRate: quantity(4, "lb/acre", "product") }),
        "unit/mismatch",
        "treatments[1].fullRate",
        /^a full rate of volume\/area, as the rate is/,
      ],
      [
        season({ fullRate: quantity(4, "pt/acre", "product:a") }),
        "substance/mismatch",
        "treatments[1].fullRate",
        /^a full rate of product/,
      ],
      [season({ treated: acre(0) }), "range", "treatments[1].treated", /more than zero/],
      [
        season({ treated: acre(10.01) }),
        "range",
        "treatments[1].treated",
        /the whole area: state a second treatment separately.*"unit":"m2"/,
      ],
      [
        season({ rate: pint(40_001) }),
        "range",
        "treatments[1].rate",
        /check the units of both.*"max":10000,"count":"full rates"/,
      ],
    ]);
    expect(season({ rate: pint(40_000) })().index).toBe(10_000.5);
    expect(treatmentFrequency({ area: acre(10), treatments: Array(5000).fill(may) }).index).toBe(2500);
  });

  test("warns above the full rate, and not at it", () => {
    const found = (rate: number) => season({ rate: pint(rate) })().findings;
    expect(found(4)).toEqual([]);
    expect(found(4.1)).toMatchObject([
      {
        code: "treatment/above-full-rate",
        path: "treatments[1].rate",
        params: { name: "May", share: expect.closeTo(1.025, 12) },
        text: "May: the rate is above the full rate. The label limits the rate; check both figures.",
      },
    ]);
  });
});

describe("the impact quotient", () => {
  const ratings = Object.fromEntries(
    [
      "chronic",
      "dermal",
      "bird",
      "fish",
      "bee",
      "beneficial",
      "soilHalfLife",
      "plantHalfLife",
      "systemicity",
      "leaching",
      "surfaceLoss",
    ].map((name) => [name, 3]),
  );
  const quotient =
    (change: object, source: unknown = "invented") =>
    () =>
      impactQuotient({ ratings: { ...ratings, ...change }, source } as never);
  const impact = call(fieldImpact, { quotient: 20, active: quantity(1.5, "lb/acre", "ai"), per: "lb/acre" });

  test("says what it needs", () => {
    expectRefusals([
      [
        () => impactQuotient({ ratings: 3, source: "a" } as never),
        "type",
        "ratings",
        /^a record of eleven ratings from 1 to 5/,
      ],
      [quotient({ bee: undefined }), "missing", "ratings.bee", /^a rating from 1 to 5/],
      [quotient({ bee: 0.9 }), "range", "ratings.bee", /"min":1,"max":5/],
      [quotient({ leaching: 5.1 }), "range", "ratings.leaching", /5/],
      [quotient({}, " "), "missing", "source", /^who rated, and when/],
      [quotient({}, 3), "missing", "source", /^who rated, and when/],
      [impact({ quotient: 5.9 }), "range", "quotient", /"min":6,"max":227/],
      [impact({ quotient: 228 }), "range", "quotient", /227/],
      [impact({ active: undefined }), "missing", "active", /^active ingredient per area/],
      [impact({ active: quantity(1, "lb/acre", "product") }), "substance/mismatch", "active", /activeRate/],
      [impact({ per: "lb" }), "type", "per", /lb\/acre.*kg\/ha/],
    ]);
    expect([impact({ quotient: 6 })().value, impact({ quotient: 227 })().value]).toEqual([9, 340.5]);
  });

  test("carries what is held against it", () => {
    for (const { findings } of [quotient({})(), impact({})()]) {
      expect(findings).toMatchObject([
        {
          code: "impact-quotient/contested",
          severity: "caution",
          text: expect.stringMatching(
            /^The quotient is contested: .* Do not choose a product by it alone\.$/,
          ),
          source: {
            title: expect.stringMatching(/environmental impact quotient \(EIQ\)/),
            publisher: "PLOS ONE 10(6), e0131200",
            where: expect.stringMatching(/title from memory/),
            url: expect.stringMatching(/journal\.pone\.0131200/),
          },
        },
      ]);
    }
  });
});
