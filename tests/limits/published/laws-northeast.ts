import {
  connecticutLimits,
  manitobaLimits,
  newYorkLimits,
  vermontLimits,
} from "../../../src/limits/index.js";
import { days, each, every, feet, type Law, nitrogen, phosphorus, potash, product, tested } from "./law.js";

const farm = { place: "farm" } as const;
const sodFarm = { place: "sod farm" } as const;
const golf = { place: "golf course" } as const;
const park = { place: "park" } as const;
const season = (growingSeason: number) => ({ growingSeason });
const wide = { equipment: "rotary spreader" } as const;
const narrow = [
  { equipment: "drop spreader" },
  { equipment: "rotary spreader with deflector" },
  { equipment: "targeted spray" },
] as const;
const guarded = [{ equipment: "rotary spreader with deflector" }, { equipment: "drop spreader" }] as const;

export const northeastLaws: readonly Law[] = [
  {
    set: newYorkLimits,
    source:
      "N.Y. ECL 17-2101, 17-2103: fertilizer of more than 0.67 % available phosphate only by a soil test or in the first growing season; none between December first and April first; none within 20 ft of surface water but behind a natural buffer of 10 ft or in the first season, 3 ft by guard, deflector or drop spreader; turf farms and agriculture are no lawn",
    reached: "read again",
    rows: [
      {
        limit: "p",
        over: each(
          [park, season(2), golf, { soilTest: { date: "2026-01-01", shortOf: ["K"] } }],
          product("20-0.68-10"),
        ),
        within: [product("20-0.67-10")],
        free: each([tested("1990-06-08"), season(1), sodFarm, farm], product("20-2-10")),
      },
      {
        limit: "blackout-dates",
        over: every([potash, nitrogen(1)], { on: "2026-12-01" }).concat(
          days(["2027-04-01", "2027-01-01"], { ...potash, facts: park }),
        ),
        within: days(["2026-11-30", "2027-04-02"], potash),
        free: each([sodFarm, farm], { on: "2027-01-01" }),
      },
      {
        limit: "setback",
        over: every([nitrogen(1), potash], {
          facts: { toWater: feet(19.9), buffer: feet(9.9), growingSeason: 2, ...wide },
        }),
        within: [{ facts: { toWater: feet(20), buffer: feet(0), growingSeason: 2, ...wide } }],
        free: each([{ buffer: feet(10) }, ...guarded, season(1), sodFarm, farm], {
          facts: { toWater: feet(1) },
        }),
      },
      {
        limit: "setback-with-guard",
        over: each(guarded, {
          ...potash,
          facts: { toWater: feet(2.9), buffer: feet(9.9), growingSeason: 2 },
        }),
        within: each(guarded, { facts: { toWater: feet(3), buffer: feet(0), growingSeason: 2 } }),
        free: [
          ...each([{ buffer: feet(10) }, season(1), sodFarm, farm], {
            facts: { toWater: feet(1), equipment: "drop spreader" },
          }),
          { facts: { toWater: feet(1), ...wide } },
        ],
      },
    ],
  },
  {
    set: vermontLimits,
    source:
      "10 V.S.A. 1266b (a): less than 15 percent slow-release nitrogen, more than 0.67 percent phosphate; no sod, agriculture or golf course. Summary of Act 37 by the Agency of Agriculture: neither goes on turf, phosphate but by a soil test or in the first season; none before April 1 or after October 15, none within 25 ft of water. Age of the test, 18 months: regional summary, read once",
    reached: "read again",
    rows: [
      {
        limit: "slow-share",
        over: [{ ...nitrogen(1, 0.149), facts: park }],
        within: [nitrogen(1, 0.15)],
        free: each([golf, sodFarm, farm], nitrogen(1, 0)),
      },
      {
        limit: "p",
        over: each([park, tested("2024-12-07"), season(2)], product("20-0.68-10")),
        within: [product("20-0.67-10")],
        free: each([golf, sodFarm, farm, tested("2024-12-08"), season(1)], product("20-2-10")),
      },
      {
        limit: "blackout-dates",
        over: days(["2026-10-16", "2027-01-01", "2027-03-31"], { ...potash, facts: park }),
        within: days(["2026-10-15", "2027-04-01"], potash),
        free: each([golf, sodFarm, farm], { on: "2027-01-01" }),
      },
      {
        limit: "setback",
        over: [{ ...potash, facts: { toWater: feet(24.9), ...park, equipment: "drop spreader" } }],
        within: [{ facts: { toWater: feet(25) } }],
        free: each([golf, sodFarm, farm], { facts: { toWater: feet(1) } }),
      },
    ],
  },
  {
    set: connecticutLimits,
    source:
      "Connecticut General Statutes 22-111yy: (b) no phosphate on lawns of two or more growing seasons, but by a soil test of the previous two years or for new grass or repair with seed or sod; (c) not for agricultural land and golf courses; (d) none on any lawn beginning December first and ending March fifteenth; (e) none twenty feet or less from water, with a drop spreader, rotary spreader with a deflector or targeted spray liquid not less than fifteen feet; (j) 0.67 per cent or less is free",
    reached: "read again",
    rows: [
      {
        limit: "p",
        over: each([park, tested("2024-06-07"), sodFarm], {
          ...product("20-0.68-10"),
          facts: { turf: "established" },
        }),
        within: [{ ...product("20-0.67-10"), facts: { turf: "established" } }],
        free: [
          ...each([tested("2024-06-08"), golf, farm], {
            ...product("20-2-10"),
            facts: { turf: "established" },
          }),
          ...each([{ turf: "being established" }, { turf: "repair" }], product("20-2-10")),
        ],
      },
      {
        limit: "blackout-dates",
        over: [
          ...days(["2026-12-01", "2027-01-01", "2027-03-15"], { ...phosphorus(0.1), facts: park }),
          ...each([{ turf: "being established" }, tested("2026-06-08")], {
            on: "2027-01-01",
            ...phosphorus(0.1),
          }),
        ],
        within: [
          ...days(["2026-11-30", "2027-03-16"], phosphorus(0.1)),
          { on: "2027-01-01", ...nitrogen(1) },
        ],
        free: each([golf, farm], { on: "2027-01-01", ...phosphorus(0.1) }),
      },
      {
        limit: "setback",
        over: [{ ...phosphorus(0.1), facts: { toWater: feet(19.9), ...wide, ...park } }],
        within: [
          { ...phosphorus(0.1), facts: { toWater: feet(20.1), ...wide } },
          ...every([nitrogen(1), potash], { facts: { toWater: feet(1), ...wide } }),
        ],
        free: each([golf, farm, ...narrow], { ...phosphorus(0.1), facts: { toWater: feet(1) } }),
      },
      {
        limit: "setback-targeted",
        over: each(narrow, { ...phosphorus(0.1), facts: { toWater: feet(14.9), ...park } }),
        within: [
          ...each(narrow, { ...phosphorus(0.1), facts: { toWater: feet(15) } }),
          ...each(narrow, { ...nitrogen(1), facts: { toWater: feet(1) } }),
        ],
        free: [
          ...each([golf, farm], {
            ...phosphorus(0.1),
            facts: { toWater: feet(1), equipment: "drop spreader" },
          }),
          { ...phosphorus(0.1), facts: { toWater: feet(1), ...wide } },
        ],
      },
    ],
  },
  {
    set: manitobaLimits,
    source:
      "Manitoba, Nutrient Management Regulation, zone N5: no more than 1 per cent phosphorus, as P2O5, but on turf in the year of establishment and the next; nitrogen and phosphorus prohibited between and including November 10th and April 10th, as a trade body prints it",
    reached: "read again",
    rows: [
      {
        limit: "p",
        over: each([park, season(3), golf], product("20-1.1-10")),
        within: [product("20-1-10")],
        free: each([season(1), season(2)], product("20-5-10")),
      },
      {
        limit: "blackout-dates",
        over: [
          ...days(["2026-11-10", "2027-01-01", "2027-04-10"], nitrogen(1)),
          { on: "2027-01-01", ...phosphorus(0.1) },
        ],
        within: [...days(["2026-11-09", "2027-04-11"], nitrogen(1)), { on: "2027-01-01", ...potash }],
      },
    ],
  },
];
