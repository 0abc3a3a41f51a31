import { newJerseyLimits, newJerseySummaryLimits, pennsylvaniaLimits } from "../../../src/limits/index.js";
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
import {
  days,
  each,
  every,
  feet,
  type Law,
  lb,
  nitrogen,
  phosphate,
  phosphorus,
  potash,
  product,
  tested,
} from "./law.js";
import { marylandLaws } from "./laws-maryland.js";

export const midAtlanticLaws: readonly Law[] = [
  ...marylandLaws,
  {
    set: newJerseyLimits,
    source:
      "N.J.S.A. 58:10A-62 a, b: no fertilizer on saturated soil; none with phosphorus or nitrogen before March 1st, after November 15th, a professional after December 1st, or on frozen ground",
    reached: "read again",
    rows: [
      {
        limit: "blackout-dates",
        over: [
          ...days(winter, { ...nitrogen(0.3), facts: homeowner }),
          { on: "2027-01-10", ...phosphorus(0.1) },
        ],
        within: [
          ...days(summer, nitrogen(0.3)),
          ...days(winter, potash),
          { on: "2026-10-28", ...nitrogen(0.3) },
        ],
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
        limit: "ground-frozen",
        over: every(both, { facts: { ground: ["frozen"] } }),
        within: [
          { facts: { ground: ["saturated", "snow-covered"] } },
          { ...potash, facts: { ground: ["frozen"] } },
        ],
      },
      {
        limit: "ground-saturated",
        over: every([...both, potash], { facts: { ground: ["saturated"] } }),
        within: [{ facts: { ground: ["frozen", "snow-covered"] } }, { ...potash, facts: { ground: [] } }],
      },
    ],
  },
  {
    set: newJerseySummaryLimits,
    source:
      "Jersey-Yards, what homeowners need to know: 0.9 lb of nitrogen, at least 20 % slow; phosphorus by a soil test of three years or on new grass; 25 ft of water, 10 ft by drop spreader, rotary spreader with a deflector or targeted spray liquid. Landscape trade magazine, New Jersey fertilizer law causing problems: consumers 0.9 lb per application and 3.2 lb for the year, professionals up to a pound in each application and not to exceed 4.25 lb for the year. Section 11 a of the act, quoted by an applicator: 0.7 lb of water-soluble nitrogen",
    reached: "read again",
    rows: [
      { limit: "soluble-n", over: [nitrogen(0.9, 0.199)], within: [nitrogen(0.9, 0.2)] },
      {
        limit: "total-n-homeowner",
        over: [{ ...nitrogen(0.901), facts: homeowner }],
        within: [{ ...nitrogen(0.9), facts: homeowner }],
        free: [{ ...nitrogen(3), facts: professional }],
      },
      {
        limit: "total-n-professional",
        over: [{ ...nitrogen(1.01), facts: professional }],
        within: [{ ...nitrogen(1), facts: professional }],
        free: [{ ...nitrogen(1.01), facts: homeowner }],
      },
      {
        limit: "n-per-year-homeowner",
        over: [{ ...nitrogen(0.21), facts: homeowner, before: [{ on: "2026-01-01", ...nitrogen(3) }] }],
        within: [{ ...nitrogen(0.2), facts: homeowner, before: [{ on: "2026-01-01", ...nitrogen(3) }] }],
        free: [{ ...nitrogen(5), facts: professional }],
      },
      {
        limit: "n-per-year-professional",
        over: [{ ...nitrogen(0.26), facts: professional, before: [{ on: "2026-01-01", ...nitrogen(4) }] }],
        within: [{ ...nitrogen(0.25), facts: professional, before: [{ on: "2026-01-01", ...nitrogen(4) }] }],
        free: [{ ...nitrogen(5), facts: homeowner }],
      },
      {
        limit: "slow-share-homeowner",
        over: [{ ...nitrogen(0.5, 0.099), facts: homeowner }],
        within: [{ ...nitrogen(0.5, 0.1), facts: homeowner }],
        free: [{ ...nitrogen(0.5, 0), facts: professional }],
      },
      {
        limit: "p",
        over: each([old, tested("2023-06-07"), { ...organic, ...professional }], phosphorus(0.01)),
        within: [potash],
        free: each([tested("2023-06-08"), sown, repair], phosphorus(0.01)),
      },
      {
        limit: "setback",
        over: every([nitrogen(0.3), potash], { facts: { toWater: feet(24.9), ...wide } }),
        within: [{ facts: { toWater: feet(25), ...wide } }],
        free: each(narrow, { facts: { toWater: feet(1) } }),
      },
      {
        limit: "setback-with-guard",
        over: each(narrow, { ...potash, facts: { toWater: feet(9.9) } }),
        within: each(narrow, { facts: { toWater: feet(10) } }),
        free: [{ facts: { toWater: feet(1), ...wide } }],
      },
    ],
  },
  {
    set: pennsylvaniaLimits,
    source:
      "3 Pa.C.S. 6813 (a), (b): 0.7 lb of readily available and 0.9 lb of total nitrogen but for enhanced-efficiency nitrogen; zero phosphorus but for first establishing, reestablishing or repairing, or enhanced-efficiency phosphorus, natural organic or organic-based at 0.25 lb of phosphorus and 0.5 lb a year; none with nitrogen or phosphorus on ground frozen to 2 in or snow covered; at most 0.5 lb of nitrogen after December 15 and before March 1. Act 83 of 2022: 15 ft",
    reached: "read again",
    rows: [
      {
        limit: "soluble-n",
        over: [nitrogen(0.9, 0.199), { ...nitrogen(0.8, 0), facts: efficientN }],
        within: [nitrogen(0.9, 0.2)],
      },
      {
        limit: "total-n",
        over: [nitrogen(0.901, 0.5), { ...nitrogen(1, 1), facts: efficientP }],
        within: [nitrogen(0.9, 0.5)],
        free: [{ ...nitrogen(1, 1), facts: efficientN }],
      },
      {
        limit: "p",
        over: each([old, conventional, efficientN, tested("2026-06-01")], phosphorus(0.01)),
        within: [product("20-0-10")],
        free: each([sown, repair, efficientP, organic], phosphorus(0.01)),
      },
      {
        limit: "p-excepted-per-application",
        over: [
          ...each([efficientP, organic], phosphorus(0.251)),
          // 0.573 lb of phosphate is 0.25 lb of phosphorus
          { ...phosphate(0.58), facts: organic },
        ],
        within: [...each([efficientP, organic], phosphorus(0.25)), { ...phosphate(0.57), facts: organic }],
        free: each([conventional, { ...efficientP, ...sown }, { ...organic, ...repair }], phosphorus(0.9)),
      },
      {
        limit: "p-excepted-per-year",
        over: each([efficientP, organic], {
          ...phosphorus(0.101),
          before: [{ on: "2026-01-01", supplies: [lb(0.4, "P")] }],
        }),
        within: each([efficientP, organic], {
          ...phosphorus(0.1),
          before: [
            { on: "2026-01-01", supplies: [lb(0.4, "P")] },
            { on: "2025-12-31", supplies: [lb(0.4, "P")] },
          ],
        }),
        free: each([conventional, { ...efficientP, ...sown }, { ...organic, ...repair }], phosphorus(0.9)),
      },
      {
        limit: "winter-n",
        over: days(["2026-12-16", "2027-02-28", "2028-02-29"], nitrogen(0.501)),
        within: days(["2026-12-16", "2027-02-28", "2028-02-29"], nitrogen(0.5)),
        free: days(["2026-12-15", "2027-03-01"], nitrogen(0.9)),
      },
      {
        limit: "ground",
        over: [
          ...every(both, { facts: { ground: ["frozen"] } }),
          ...every(both, { facts: { ground: ["snow-covered"] } }),
        ],
        within: [{ facts: { ground: ["saturated"] } }, { ...potash, facts: { ground: ["frozen"] } }],
      },
      {
        limit: "setback",
        over: every([...both, potash], { facts: { toWater: feet(14.9) } }),
        within: [{ facts: { toWater: feet(15) } }],
      },
    ],
  },
];
