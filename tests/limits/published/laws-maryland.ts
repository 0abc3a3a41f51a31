import { marylandProductLimits, marylandUseLimits } from "../../../src/limits/index.js";
import {
  both,
  conventional,
  efficientN,
  efficientP,
  homeowner,
  lateWinter,
  longSummer,
  narrow,
  old,
  organic,
  professional,
  repair,
  sown,
  summer,
  wide,
  winter,
} from "./east-facts.js";
import { days, each, every, feet, type Law, nitrogen, phosphorus, potash, tested } from "./law.js";

export const marylandLaws: readonly Law[] = [
  {
    set: marylandProductLimits,
    source:
      "Md. AG 6-224 (a): not more than 0.7 lb of water-soluble and 0.9 lb of total nitrogen, at least 20 % of it slow; no phosphorus but organic to a professional, by a test of at most 3 years, first establishing, reestablishing or repairing; (b): enhanced efficiency, 2.5 lb a year",
    reached: "read again",
    rows: [
      {
        limit: "soluble-n",
        over: [nitrogen(0.9, 0.199), { ...nitrogen(0.9, 0.1), facts: efficientP }],
        within: [nitrogen(0.9, 0.2)],
        free: [{ ...nitrogen(0.9, 0.1), facts: efficientN }],
      },
      {
        limit: "total-n",
        over: [nitrogen(0.901, 0.5), { ...nitrogen(1, 1), facts: organic }],
        within: [nitrogen(0.9, 0.5)],
        free: [{ ...nitrogen(1, 1), facts: efficientN }],
      },
      {
        limit: "slow-share",
        over: [nitrogen(0.5, 0.099)],
        within: [nitrogen(0.5, 0.1), potash],
        free: [{ ...nitrogen(0.5, 0), facts: efficientN }],
      },
      {
        limit: "eef-per-year",
        over: [{ ...nitrogen(0.51), facts: efficientN, before: [{ on: "2026-01-01", ...nitrogen(2) }] }],
        within: [
          { ...nitrogen(0.5), facts: efficientN, before: [{ on: "2026-01-01", ...nitrogen(2) }] },
          { ...nitrogen(2.5), facts: efficientN, before: [{ on: "2025-12-31", ...nitrogen(2) }] },
        ],
        free: each([conventional, efficientP, organic], nitrogen(3)),
      },
      {
        limit: "p",
        over: each(
          [old, tested("2023-06-07"), { ...organic, ...homeowner }, { ...conventional, ...professional }],
          phosphorus(0.01),
        ),
        within: [potash],
        free: each([tested("2023-06-08"), sown, repair, { ...organic, ...professional }], phosphorus(0.01)),
      },
    ],
  },
  {
    set: marylandUseLimits,
    source:
      "Md. AG 8-803.5 (c), (d): no phosphorus or nitrogen before March 1, after November 15, on frozen ground, within 15 ft of water, 10 ft by drop spreader, rotary spreader with a deflector or targeted spray; notices of the department: professionals up to 0.5 lb of nitrogen until December 1",
    reached: "read again",
    rows: [
      {
        limit: "blackout-dates",
        over: [
          ...days(winter, { ...nitrogen(0.3), facts: homeowner }),
          { on: "2027-01-10", ...phosphorus(0.1) },
        ],
        within: [...days(summer, nitrogen(0.3)), ...days(winter, potash)],
        free: days(winter, { ...nitrogen(0.3), facts: professional }),
      },
      {
        limit: "blackout-dates-professional",
        over: [
          ...days(lateWinter, { ...nitrogen(0.3), facts: professional }),
          { on: "2027-01-10", ...phosphorus(0.1), facts: professional },
        ],
        within: [
          ...days(longSummer, { ...nitrogen(0.3), facts: professional }),
          { on: "2027-01-10", ...potash, facts: professional },
        ],
        free: days(lateWinter, { ...nitrogen(0.3), facts: homeowner }),
      },
      {
        limit: "late-n-professional",
        over: days(["2026-11-16", "2026-12-01"], { ...nitrogen(0.501), facts: professional }),
        within: days(["2026-11-16", "2026-12-01"], { ...nitrogen(0.5), facts: professional }),
        free: [
          ...days(["2026-11-15", "2026-12-02"], { ...nitrogen(0.9), facts: professional }),
          { on: "2026-11-20", ...nitrogen(0.9), facts: homeowner },
        ],
      },
      {
        limit: "setback",
        over: every(both, { facts: { toWater: feet(14.9), ...wide } }),
        within: [
          ...every(both, { facts: { toWater: feet(15), ...wide } }),
          { ...potash, facts: { toWater: feet(1), ...wide } },
        ],
        free: each(narrow, { ...nitrogen(0.3), facts: { toWater: feet(1) } }),
      },
      {
        limit: "setback-with-guard",
        over: narrow.flatMap((by) => every(both, { facts: { toWater: feet(9.9), ...by } })),
        within: [
          ...each(narrow, { facts: { toWater: feet(10) } }),
          { ...potash, facts: { toWater: feet(1), equipment: "drop spreader" } },
        ],
        free: [{ facts: { toWater: feet(1), ...wide } }],
      },
      {
        limit: "ground",
        over: every(both, { facts: { ground: ["frozen"] } }),
        within: [
          { facts: { ground: ["saturated", "snow-covered"] } },
          { facts: { ground: [] } },
          { ...potash, facts: { ground: ["frozen"] } },
        ],
      },
    ],
  },
];
