import {
  australianTurfFungicideLimits,
  chlorothalonilRememberedLimits,
  connecticutRememberedLimits,
  newJerseyRememberedLimits,
  twoFourDRememberedLimits,
} from "../../../src/limits/index.js";
import { type Application, days, each, every, feet, type Law, nitrogen, phosphorus, potash } from "./law.js";

const acre = (value: number, of: string) => ({ supplies: [{ value, unit: "lb/acre", of }] });
const professional = { applicator: "professional" } as const;
const homeowner = { applicator: "homeowner" } as const;
const park = { place: "park" } as const;
const golf = { place: "golf course" } as const;
const farm = { place: "farm" } as const;
const wide = { equipment: "rotary spreader" } as const;
const narrow = [
  { equipment: "drop spreader" },
  { equipment: "rotary spreader with deflector" },
  { equipment: "targeted spray" },
] as const;
const acid = (value: number) => acre(value, "ae:2,4-D");

/** So many pounds a year on one kind of place. */
const chlorothalonil = (limit: string, place: string, pounds: number) => {
  const spray = (value: number) => acre(value, "ai:chlorothalonil");
  const before = [{ on: "2026-01-01", ...spray(pounds - 8) }] as const;
  return {
    limit,
    over: [{ ...spray(8.01), facts: { place }, before }],
    within: [{ ...spray(8), facts: { place }, before }],
    free: each([golf, park], { ...spray(8.01), before }),
  };
};

/** Two sprays in a row of one group, and two of different ones. */
const group = (limit: string, names: readonly string[], other: string) => {
  const spray = (name: string): Application => acre(0.2, `ai:${name}`);
  const after = (name: string, of: Application): Application => ({
    ...of,
    before: [{ on: "2026-05-25", supplies: spray(name).supplies ?? [] }],
  });
  return {
    limit,
    over: names.map((name, n) => after(names[(n + 1) % names.length] ?? name, spray(name))),
    within: [
      ...names.map((name) => after(other, spray(name))),
      ...names.map((name) => after(name, spray(other))),
    ],
  };
};

export const rememberedLaws: readonly Law[] = [
  {
    set: newJerseyRememberedLimits,
    source:
      "New Jersey P.L. 2010 c.112, remembered: 0.7 lb of soluble nitrogen; professionals 1 lb and 4.25 lb a year, homeowners 3.2 lb a year",
    reached: "from memory",
    rows: [
      { limit: "soluble-n", over: [nitrogen(0.9, 0.199)], within: [nitrogen(0.9, 0.2)] },
      {
        limit: "total-n-professional",
        over: [{ ...nitrogen(1.01), facts: professional }],
        within: [{ ...nitrogen(1), facts: professional }],
        free: [{ ...nitrogen(1.01), facts: homeowner }],
      },
      {
        limit: "n-per-year-professional",
        over: [{ ...nitrogen(0.26), facts: professional, before: [{ on: "2026-01-01", ...nitrogen(4) }] }],
        within: [{ ...nitrogen(0.25), facts: professional, before: [{ on: "2026-01-01", ...nitrogen(4) }] }],
        free: [{ ...nitrogen(5), facts: homeowner }],
      },
      {
        limit: "n-per-year-homeowner",
        over: [{ ...nitrogen(0.21), facts: homeowner, before: [{ on: "2026-01-01", ...nitrogen(3) }] }],
        within: [{ ...nitrogen(0.2), facts: homeowner, before: [{ on: "2026-01-01", ...nitrogen(3) }] }],
        free: [{ ...nitrogen(5), facts: professional }],
      },
    ],
  },
  {
    set: connecticutRememberedLimits,
    source:
      "Connecticut Public Act 12-155 section 2 (d), (e), remembered: no phosphate from December 1 to March 15; 20 ft of water, 15 ft by drop spreader, rotary spreader with a deflector or targeted spray; not for golf courses and agriculture",
    reached: "from memory",
    rows: [
      {
        limit: "blackout-dates",
        over: days(["2026-12-01", "2027-01-01", "2027-03-15"], { ...phosphorus(0.1), facts: park }),
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
          { ...phosphorus(0.1), facts: { toWater: feet(20), ...wide } },
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
    set: twoFourDRememberedLimits,
    source:
      "2,4-D on ornamental turf, remembered: 1.5 lb of acid an acre, 3 lb and two applications a year, 21 days between them",
    reached: "from memory",
    rows: [
      { limit: "per-application", over: [acid(1.51)], within: [acid(1.5)] },
      {
        limit: "per-year",
        over: [{ ...acid(1.01), before: [{ on: "2026-03-01", ...acid(2) }] }],
        within: [{ ...acid(1), before: [{ on: "2026-03-01", ...acid(2) }] }],
      },
      {
        limit: "count",
        over: [
          {
            ...acid(0.5),
            before: [
              { on: "2026-01-01", ...acid(0.5) },
              { on: "2026-04-01", ...acid(0.5) },
            ],
          },
        ],
        within: [
          {
            ...acid(0.5),
            before: [
              { on: "2025-12-31", ...acid(0.5) },
              { on: "2026-04-01", ...acid(0.5) },
            ],
          },
        ],
      },
      {
        limit: "interval",
        // 18 May and 21 days is 8 June
        over: [{ ...acid(0.5), before: [{ on: "2026-05-19", ...acid(0.5) }] }],
        within: [{ ...acid(0.5), before: [{ on: "2026-05-18", ...acid(0.5) }] }],
      },
    ],
  },
  {
    set: chlorothalonilRememberedLimits,
    source:
      "chlorothalonil on golf courses, remembered: 73 lb an acre and year on greens, 52 on tees, 26 on fairways",
    reached: "from memory",
    rows: [
      chlorothalonil("greens", "golf green", 73),
      chlorothalonil("tees", "golf tee", 52),
      chlorothalonil("fairways", "golf fairway", 26),
    ],
  },
  {
    set: australianTurfFungicideLimits,
    source:
      "CropLife Australia, turf, of 24 June 2026, read again: no consecutive sprays of groups 1, 2, 4, 7, 11 and 21. Which active ingredients are in a group: the list of FRAC, remembered",
    reached: "from memory",
    rows: [
      group("1", ["thiophanate-methyl"], "iprodione"),
      group("2", ["iprodione", "vinclozolin"], "cyazofamid"),
      group("4", ["mefenoxam", "metalaxyl", "metalaxyl-M"], "cyazofamid"),
      group(
        "7",
        [
          "boscalid",
          "fluopyram",
          "flutolanil",
          "fluxapyroxad",
          "isofetamid",
          "penthiopyrad",
          "pydiflumetofen",
        ],
        "iprodione",
      ),
      group(
        "11",
        ["azoxystrobin", "fluoxastrobin", "mandestrobin", "pyraclostrobin", "trifloxystrobin"],
        "iprodione",
      ),
      group("21", ["cyazofamid"], "mefenoxam"),
    ],
  },
];
