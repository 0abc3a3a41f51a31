// The tables of the interval room, typed a second time from what their sources print.
import {
  annualBluegrassFlowering,
  earlyEntryObjections,
  fractionRemaining,
  growthClass,
  growthPotential,
  interimRestrictedEntryHours,
  persistenceClass,
  publishedSprayRules,
  timeUntilRemaining,
  turfHalfLives,
} from "../../src/interval/index.js";
import { quantity } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "interval";
const read = { room, reached: "read" } as const;

type Range = readonly [low: number, high: number];
const halfLife = (active: string, where: string, [low, high]: Range): readonly Cell[] => {
  const of = () => turfHalfLives.find((one) => one.active === active && one.where === where);
  return [
    [`${active}, ${where}: half-life, low`, low, () => of()?.days[0] ?? Number.NaN],
    [`${active}, ${where}: half-life, high`, high, () => of()?.days[1] ?? Number.NaN],
  ];
};
const halfLives: readonly ConstantCheck[] = [
  ...cells(
    { ...read, source: "Schleicher et al. 1995, Weed Science 43(1), abstract: DT50 of 35 and 23 days" },
    [...halfLife("dithiopyr", "turf", [35, 35]), ...halfLife("pendimethalin", "turf", [23, 23])],
  ),
  ...cells(
    {
      ...read,
      source: "Effect of turfgrass cover and irrigation on ... mefenoxam and propiconazole, abstract",
    },
    [
      ...halfLife("mefenoxam", "turf", [5, 6]),
      ...halfLife("mefenoxam", "bare soil", [7, 8]),
      ...halfLife("propiconazole", "turf", [12, 15]),
      ...halfLife("propiconazole", "bare soil", [29, 29]),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Pesticide half-life, National Pesticide Information Center: low under 16, moderate 16 to 59, high over 60 days",
    },
    [
      ["persistence: low below", 16, () => edge((d) => persistenceClass(quantity(d, "d")) === "low", 1, 30)],
      [
        "persistence: moderate to",
        59,
        () => edge((d) => persistenceClass(quantity(d, "d")) === "moderate", 30, 59.9),
      ],
      [
        "persistence: high above",
        60,
        () => edge((d) => persistenceClass(quantity(d, "d")) === "high", 90, 59.5),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "derived",
      source: "the definition of a half-life: a half is left after one, a quarter after two",
    },
    [
      [
        "left after two half-lives, %",
        25,
        () => fractionRemaining({ halfLife: quantity(10, "d"), elapsed: quantity(20, "d") }).in("%"),
      ],
      [
        "half-lives until a quarter is left",
        2,
        () => timeUntilRemaining({ halfLife: quantity(10, "d"), remaining: quantity(25, "%") }).in("d") / 10,
      ],
      [
        "all is left until no time has passed, %",
        100,
        () =>
          edge(
            (p) =>
              goes(() => timeUntilRemaining({ halfLife: quantity(10, "d"), remaining: quantity(p, "%") })),
            50,
            101,
          ),
      ],
    ],
  ),
];

type Season = "cool-season" | "warm-season";
/** Optimum and width of a growth curve from two of its values on the cold side, `ln GP = -((t - o) / w)² / 2`. */
const curve = (
  season: Season,
  constants: "°C" | "°F",
): { readonly optimum: number; readonly width: number } => {
  const [cold, mild] = constants === "°C" ? [12, 18] : [50, 62];
  const steps = (t: number): number =>
    Math.sqrt(
      -2 * Math.log(growthPotential({ mean: quantity(t, constants), season, constants }).in("%") / 100),
    );
  const width = (mild - cold) / (steps(cold) - steps(mild));
  return { optimum: cold + steps(cold) * width, width };
};
const growthWithin = 1e-8;
const growth: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      within: growthWithin,
      source:
        "On day length, growth potential, and fertilizer estimates, 2014, equation: C3 20 and 5.5, C4 31 and 7 °C",
    },
    [
      ["cool-season: optimum, °C", 20, () => curve("cool-season", "°C").optimum],
      ["cool-season: width, °C", 5.5, () => curve("cool-season", "°C").width],
      ["warm-season: optimum, °C", 31, () => curve("warm-season", "°C").optimum],
      ["warm-season: width, °C", 7, () => curve("warm-season", "°C").width],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      within: growthWithin,
      source: "Gelernter and Stowell 2005, table of constants in °F",
    },
    [
      ["cool-season: optimum, °F", 68, () => curve("cool-season", "°F").optimum],
      ["cool-season: width, °F", 10, () => curve("cool-season", "°F").width],
      ["warm-season: optimum, °F", 88, () => curve("warm-season", "°F").optimum],
      ["warm-season: width, °F", 12, () => curve("warm-season", "°F").width],
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Turf growth potentials: a tool with many uses: 50-100 % good, 10 % or lower extremely limited, never above 100 %",
    },
    [
      [
        "growth potential: good from, %",
        50,
        () => edge((p) => growthClass(quantity(p, "%")) === "good", 90, 20),
      ],
      [
        "growth potential: extremely limited to, %",
        10,
        () => edge((p) => growthClass(quantity(p, "%")) === "extremely limited", 1, 20),
      ],
      [
        "growth potential of a warm-season grass above its optimum, %",
        100,
        () => growthPotential({ mean: quantity(35, "°C"), season: "warm-season" }).in("%"),
      ],
      [
        "growth potential: the most, %",
        100,
        () => edge((p) => goes(() => growthClass(quantity(p, "%"))), 90, 101),
      ],
    ],
  ),
];

/** The three coefficients of the flowering rate from three of its values. */
const quadratic = (): readonly [a: number, b: number, c: number] => {
  const [low, middle, high] = [800, 1000, 1200].map(annualBluegrassFlowering) as [number, number, number];
  const a = (high - 2 * middle + low) / (2 * 200 ** 2);
  const b = (high - low) / 400 - 2000 * a;
  return [a, b, middle - a * 1e6 - b * 1000];
};
const flowering = cells(
  {
    ...read,
    within: 1e-8,
    source: "Calhoun et al. 2021, International Turfgrass Society Research Journal 14, 462-469, abstract",
  },
  [
    ["flowering rate: quadratic coefficient", -3.331599e-6, () => quadratic()[0]],
    ["flowering rate: linear coefficient", 0.006968782, () => quadratic()[1]],
    ["flowering rate: constant", -2.841894, () => quadratic()[2]],
  ],
);

const entry: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "US EPA, reregistration decision text: any category I 48 h, else any II 24 h, else 12 h; PR Notice 95-3: 4 h",
    },
    [
      ["interim entry, category I, h", 48, () => interimRestrictedEntryHours({ dermal: 1, eye: 4, skin: 4 })],
      [
        "interim entry, category II, h",
        24,
        () => interimRestrictedEntryHours({ dermal: 3, eye: 2, skin: 4 }),
      ],
      [
        "interim entry, categories III and IV, h",
        12,
        () => interimRestrictedEntryHours({ dermal: 3, eye: 3, skin: 4 }),
      ],
      [
        "interim entry, low risk, h",
        4,
        () => interimRestrictedEntryHours({ dermal: 4, eye: 4, skin: 4, lowRisk: true }),
      ],
    ],
  ),
  ...cells(
    {
      ...read,
      source: "40 CFR 170.112 (c), edition of 2007: not in the first 4 hours, not over 1 hour in any 24",
    },
    [
      [
        "early entry: hours to wait",
        4,
        () =>
          edge(
            (hoursSinceEnd) =>
              earlyEntryObjections({ hoursSinceEnd, minutesInDay: 10, handLabor: false }).length === 0,
            10,
            0,
          ),
      ],
      [
        "early entry: minutes in a day",
        60,
        () =>
          edge(
            (minutesInDay) =>
              earlyEntryObjections({ hoursSinceEnd: 10, minutesInDay, handLabor: false }).length === 0,
            10,
            100,
          ),
      ],
    ],
  ),
];

const sprayRules: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "from memory",
      source: "Evaluate the weather, Pesticide environmental stewardship: 3 to 8 mph",
    },
    [
      ["wind, least, mi/h", 3, () => publishedSprayRules[0]?.wind?.min?.value ?? Number.NaN],
      ["wind, most, mi/h", 8, () => publishedSprayRules[0]?.wind?.max?.value ?? Number.NaN],
      ["calm below, mi/h", 3, () => publishedSprayRules[0]?.inversion?.calmBelow?.value ?? Number.NaN],
    ],
  ),
  ...cells(
    { room, reached: "from memory", source: "Delta T charts of Australian spray guidance: 2 to 8 preferred" },
    [
      ["delta T, least, °C", 2, () => publishedSprayRules[1]?.deltaT?.min?.value ?? Number.NaN],
      ["delta T, most, °C", 8, () => publishedSprayRules[1]?.deltaT?.max?.value ?? Number.NaN],
    ],
  ),
];

/** Every figure of the interval room that is typed a second time. */
export const intervalConstants: readonly ConstantCheck[] = [
  ...halfLives,
  ...growth,
  ...flowering,
  ...entry,
  ...sprayRules,
];
