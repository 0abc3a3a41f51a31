import {
  illinoisLimits,
  michiganLimits,
  minnesotaLimits,
  wisconsinLimits,
} from "../../../src/limits/index.js";
import { each, every, feet, type Law, nitrogen, phosphorus, potash, product, tested } from "./law.js";

const trained = { place: "golf course", applicator: "trained golf course staff" } as const;
const untrained = { place: "golf course", applicator: "professional" } as const;
const elsewhere = { place: "park", applicator: "trained golf course staff" } as const;
const farm = { place: "farm" } as const;
const sodFarm = { place: "sod farm" } as const;
const park = { place: "park" } as const;
const season = (growingSeason: number) => ({ growingSeason });
const wide = { equipment: "rotary spreader" } as const;
const guarded = [{ equipment: "rotary spreader with deflector" }, { equipment: "drop spreader" }] as const;
const sprays = [{ equipment: "targeted spray" }, { equipment: "broadcast spray" }] as const;
const hired = { applicator: "for hire" } as const;

export const greatLakesLaws: readonly Law[] = [
  {
    set: minnesotaLimits,
    source:
      "Minn. Stat. 18C.60 subd. 1, 2: no phosphorus on turf, which no turf farm and no other agriculture is, but by a test within the last three years, in the first growing season of turf from seed or sod, on a golf course under a trained person",
    reached: "read again",
    rows: [
      {
        limit: "p",
        over: each([park, tested("2023-06-07"), season(2), untrained, elsewhere], phosphorus(0.01)),
        within: [potash],
        free: each([tested("2023-06-08"), season(1), trained, sodFarm, farm], phosphorus(0.01)),
      },
    ],
  },
  {
    set: wisconsinLimits,
    source:
      "Wis. Stat. 94.643 (2): no fertilizer labeled as containing phosphorus or phosphate but in the growing season in which the grass is begun, or by a test no more than 36 months old; none on frozen ground; (3)(c): pasture, sod and other agriculture",
    reached: "read again",
    rows: [
      {
        limit: "p",
        over: each([park, tested("2023-06-07"), season(2), trained], product("20-1-10")),
        within: [product("20-0-10")],
        free: each([tested("2023-06-08"), season(1), sodFarm, farm], product("20-1-10")),
      },
      {
        limit: "ground",
        over: every([nitrogen(1), potash], { facts: { ground: ["frozen"], ...park } }),
        within: [{ facts: { ground: ["saturated", "snow-covered"] } }, { facts: { ground: [] } }],
        free: each([sodFarm, farm], { facts: { ground: ["frozen"] } }),
      },
    ],
  },
  {
    set: michiganLimits,
    source:
      "Michigan State University, Part 85 for lawns: 15 ft of surface water but behind a natural buffer of 10 ft, or by guard, deflector or drop spreader not less than 3 ft; not on soil frozen or saturated. Michigan State University Extension on Public Act 299: phosphorus by a test of three years, on new turf, on golf courses with approved training, in agriculture",
    reached: "read again",
    rows: [
      {
        limit: "p",
        over: each(
          [park, tested("2023-06-07"), { turf: "established" }, untrained, elsewhere],
          phosphorus(0.01),
        ),
        within: [potash],
        free: each(
          [tested("2023-06-08"), { turf: "being established" }, trained, farm, sodFarm],
          phosphorus(0.01),
        ),
      },
      {
        limit: "setback",
        over: every([nitrogen(1), potash], {
          facts: { toWater: feet(14.9), buffer: feet(9.9), ...wide },
        }),
        within: [{ facts: { toWater: feet(15), buffer: feet(0), ...wide } }],
        free: [
          { facts: { toWater: feet(11), buffer: feet(10), ...wide } },
          ...each(guarded, { facts: { toWater: feet(1), buffer: feet(0) } }),
        ],
      },
      {
        limit: "setback-with-guard",
        over: each(guarded, { ...potash, facts: { toWater: feet(2.9), buffer: feet(9.9) } }),
        within: each(guarded, { facts: { toWater: feet(3), buffer: feet(0) } }),
        free: [
          ...each(guarded, { facts: { toWater: feet(1), buffer: feet(10) } }),
          ...each([wide, ...sprays], { facts: { toWater: feet(1) } }),
        ],
      },
      {
        limit: "ground",
        over: [
          { ...potash, facts: { ground: ["frozen"] } },
          { ...nitrogen(1), facts: { ground: ["saturated"] } },
        ],
        within: [{ facts: { ground: ["snow-covered"] } }, { facts: { ground: [] } }],
      },
    ],
  },
  {
    set: illinoisLimits,
    source:
      "415 ILCS 65/5a (a) to (c): an applicator for hire puts no phosphorus on a lawn but by a test of 36 months or in the first 2 growing seasons; not within 3 ft of water by spray, drop spreader or rotary spreader with a deflector, else 15 ft; not on a lawn frozen or saturated; not for commercial farms and golf courses, nor for lawn repair products",
    reached: "read again",
    rows: [
      {
        limit: "p",
        over: each([park, tested("2023-06-07"), season(3), sodFarm, { turf: "being established" }], {
          ...phosphorus(0.01),
          facts: hired,
        }),
        within: [{ ...potash, facts: hired }],
        free: [
          ...each(
            [tested("2023-06-08"), season(1), season(2), { turf: "repair" }, farm, { place: "golf course" }],
            { ...phosphorus(0.01), facts: hired },
          ),
          ...each([{ applicator: "homeowner" }, { applicator: "professional" }], phosphorus(0.01)),
        ],
      },
      {
        limit: "setback",
        over: every([nitrogen(1), potash], { facts: { toWater: feet(14.9), ...wide, ...hired } }),
        within: [{ facts: { toWater: feet(15), ...wide, ...hired } }],
        free: [
          ...each([...guarded, ...sprays], { facts: { toWater: feet(1), ...hired } }),
          ...each([farm, { place: "golf course" }], { facts: { toWater: feet(1), ...wide, ...hired } }),
          { facts: { toWater: feet(1), ...wide, applicator: "homeowner" } },
        ],
      },
      {
        limit: "setback-with-guard",
        over: each([...guarded, ...sprays], { ...potash, facts: { toWater: feet(2.9), ...hired } }),
        within: each([...guarded, ...sprays], { facts: { toWater: feet(3), ...hired } }),
        free: [
          { facts: { toWater: feet(1), ...wide, ...hired } },
          ...each([farm, { place: "golf course" }], {
            facts: { toWater: feet(1), equipment: "drop spreader", ...hired },
          }),
          { facts: { toWater: feet(1), equipment: "drop spreader", applicator: "homeowner" } },
        ],
      },
      {
        limit: "ground",
        over: [
          { ...potash, facts: { ground: ["frozen"], ...hired } },
          { ...nitrogen(1), facts: { ground: ["saturated"], ...hired } },
        ],
        within: [{ facts: { ground: ["snow-covered"], ...hired } }],
        free: [
          ...each([farm, { place: "golf course" }], { facts: { ground: ["frozen"], ...hired } }),
          { facts: { ground: ["frozen"], applicator: "homeowner" } },
        ],
      },
    ],
  },
];
