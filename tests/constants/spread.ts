// Spreading by hand: the sizes of the units, patterns whose area is known, and printed limits typed a second time.
import { quantity } from "../../src/quantity/index.js";
import {
  deicingRate,
  effectiveFieldCapacity,
  headerStrips,
  loadCoverage,
  spreadPattern,
  spreadRate,
  spreadWidth,
  swathCvPercent,
  swathSearch,
  targetCatch,
  targetDischarge,
  throwRules,
  timedRate,
  uniformityLimit,
} from "../../src/spread/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "spread";
const derived = { room, reached: "derived" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;
const ft = (value: number) => quantity(value, "ft");
const m = (value: number) => quantity(value, "m");
const percent = (value: number) => quantity(value, "%");
const product = (value: number, unit: "lb" | "kg") =>
  unit === "lb" ? quantity(value, "lb", "product") : quantity(value, "kg", "product");
const onAcre = (value: number) => quantity(value, "lb/acre", "product");
const onHectare = (value: number) => quantity(value, "kg/ha", "product");
/** 10 ft wide, 100 ft in a minute: 1000 ft2. */
const usRun = { swath: ft(10), speed: quantity(100, "ft/min") };
/** 10 m wide, 1000 m in a minute: a hectare. */
const metricRun = { swath: m(10), speed: quantity(1000, "m/min") };

const rates: readonly ConstantCheck[] = cells(
  {
    ...derived,
    within: 1e-12,
    source: "1 acre is 43 560 ft2, 1 ha 10 000 m2, 1 mi 5280 ft (NIST Handbook 44, appendix C; SI brochure)",
  },
  [
    [
      "1 lb on 1 ft2, lb/acre",
      43_560,
      () => spreadRate({ amount: product(1, "lb"), area: quantity(1, "ft2") }).in("lb/acre"),
    ],
    [
      "1 kg on 1 m2, kg/ha",
      10_000,
      () => spreadRate({ amount: product(1, "kg"), area: quantity(1, "m2") }).in("kg/ha"),
    ],
    [
      "caught on an acre at 1 lb/acre, lb",
      1,
      () => targetCatch({ rate: onAcre(1), area: quantity(43_560, "ft2") }).in("lb"),
    ],
    [
      "caught on a hectare at 1 kg/ha, kg",
      1,
      () => targetCatch({ rate: onHectare(1), area: quantity(10_000, "m2") }).in("kg"),
    ],
    [
      "1 lb on 1000 ft2 in a minute, lb/acre",
      43.56,
      () => timedRate({ amount: product(1, "lb"), time: quantity(1, "min"), ...usRun }).in("lb/acre"),
    ],
    [
      "1 kg on a hectare in a minute, kg/ha",
      1,
      () => timedRate({ amount: product(1, "kg"), time: quantity(1, "min"), ...metricRun }).in("kg/ha"),
    ],
    [
      "discharge for 43.56 lb/acre on 1000 ft2 a minute, lb/min",
      1,
      () => targetDischarge({ rate: onAcre(43.56), ...usRun }).in("lb/min"),
    ],
    [
      "discharge for 1 kg/ha on a hectare a minute, kg/min",
      1,
      () => targetDischarge({ rate: onHectare(1), ...metricRun }).in("kg/min"),
    ],
    [
      "43.56 lb at 43.56 lb/acre, ft2",
      43_560,
      () => loadCoverage({ load: product(43.56, "lb"), rate: onAcre(43.56), swath: ft(10) }).area.in("ft2"),
    ],
    [
      "1 kg at 1 kg/ha, m2",
      10_000,
      () => loadCoverage({ load: product(1, "kg"), rate: onHectare(1), swath: m(10) }).area.in("m2"),
    ],
    [
      "8.25 ft at 1 mi/h, acre/h",
      1,
      () =>
        effectiveFieldCapacity({
          swath: ft(8.25),
          speed: quantity(1, "mi/h"),
          efficiency: percent(100),
        }).in("acre/h"),
    ],
    [
      "10 m at 1 km/h, ha/h",
      1,
      () =>
        effectiveFieldCapacity({ swath: m(10), speed: quantity(1, "km/h"), efficiency: percent(100) }).in(
          "ha/h",
        ),
    ],
    [
      "ten outlets 12 in apart, ft",
      10,
      () => spreadWidth({ kind: "outlets", outlets: 10, spacing: quantity(12, "in") }).in("ft"),
    ],
    [
      "ten outlets 100 mm apart, m",
      1,
      () => spreadWidth({ kind: "outlets", outlets: 10, spacing: quantity(100, "mm") }).in("m"),
    ],
  ],
);

const whole: readonly ConstantCheck[] = cells(
  { ...derived, within: 1e-8, source: "no field efficiency is above the whole, 100 %" },
  [
    [
      "most field efficiency, %",
      100,
      () =>
        edge(
          (at) =>
            goes(() =>
              effectiveFieldCapacity({ swath: m(10), speed: quantity(1, "km/h"), efficiency: percent(at) }),
            ),
          50,
          200,
        ),
    ],
  ],
);

const field = (along: "perimeter" | "ends") => () =>
  headerStrips({ length: m(100), width: m(60), swath: m(5), strips: 2, along });
const headers: readonly ConstantCheck[] = cells(
  {
    ...derived,
    within: 1e-12,
    source:
      "100 by 60 m, two strips of 5 m: rounds through 2.5 and 7.5 m from the edge are 2(95 + 55) and 2(85 + 45) m; 80 by 40 m are left, 8 passes of 80 m; across the ends 4 strips of 60 m, and 12 passes of 80 m",
  },
  [
    ["left inside two rounds, m2", 80 * 40, () => field("perimeter")().inner.area.in("m2")],
    ["two rounds and the inside, m", 300 + 260 + 8 * 80, () => field("perimeter")().distance.in("m")],
    ["left inside two strips at each end, m2", 80 * 60, () => field("ends")().inner.area.in("m2")],
    ["two strips at each end and the inside, m", 4 * 60 + 12 * 80, () => field("ends")().distance.in("m")],
  ],
);

const limitOf = (id: Parameters<typeof uniformityLimit>[0], printed: number): Cell => [
  `CV limit ${id}, %`,
  printed,
  () => uniformityLimit(id).limit.in("%"),
];
const ruleOf = (id: string, least: number, most: number): readonly Cell[] => [
  [`swath of the throw, ${id}, least`, least, () => number(throwRules.find((one) => one.id === id)?.least)],
  [`swath of the throw, ${id}, most`, most, () => number(throwRules.find((one) => one.id === id)?.most)],
];

const printed: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "LandWISE citing Lawrence 2007: CV 15 % for nitrogenous, 25 % for low-analysis fertilizer (spread-042); Fertilizer Australia: 15 % (spread-043); farm press: 5 % only in a hall, up to 15 % acceptable, above 20 % loss (spread-044); Maldaner et al.: 20 % (spread-045)",
    },
    [
      limitOf("nz-nitrogen", 15),
      limitOf("nz-low-analysis", 25),
      limitOf("australia", 15),
      limitOf("ireland-test-hall", 5),
      limitOf("ireland-field", 15),
      limitOf("ireland-loss", 20),
      limitOf("brazil-lime", 20),
    ],
  ),
  ...cells({ room, reached: "from memory", source: "EN 13739: 15 % (spread-057)" }, [
    limitOf("en-13739", 15),
  ]),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Purdue: edge on the wheel track of the pass before, half of the throw (spread-038); NC State AG-826: 30 to 35 % on each side (spread-039); Iowa State, Picking the right swath width, November 2025: throws 45 ft, 25 to 30 ft effective; slides: 20 ft thrown, 12 ft effective (spread-007)",
    },
    [
      ...ruleOf("half", 0.5, 0.5),
      ...ruleOf("shared strips", 0.65, 0.7),
      ...ruleOf("manure", 5 / 9, 2 / 3),
      ...ruleOf("slides", 0.6, 0.6),
    ],
  ),
];

const salt = (fahrenheit: number, prewet: "none" | "a third less" = "none") =>
  deicingRate({ pavement: quantity(fahrenheit, "°F"), prewet });
const told = (code: string, fahrenheit: number) => () =>
  number(Number(Object.values(salt(fahrenheit).findings.find((one) => one.code === code)?.params ?? {})[0]));
const ice: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "DuPage River Salt Creek Workgroup, Parking lot deicing: above 30 °F 3, 25-30 5, 20-25 6, 15-20 7, 5-15 8 lb/1000 ft2, below 5 ineffective; prewetting saves up to one third",
    },
    [
      ...(
        [
          [31, 3],
          [27, 5],
          [22, 6],
          [17, 7],
          [10, 8],
        ] as const
      ).map(
        ([f, rate]): Cell => [
          `salt at ${f} °F, lb/1000 ft2`,
          rate,
          () => number(salt(f).rate?.in("lb/1000 ft2")),
        ],
      ),
      ["prewetted at 22 °F, lb/1000 ft2", 4, () => number(salt(22, "a third less").rate?.in("lb/1000 ft2"))],
      ["none below 5 °F", 0, () => (salt(4).rate === null ? 0 : 1)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Minnesota Stormwater Manual: no dry salt below 15 °F of pavement; Elm Creek watershed, Smart salting: less than 4 lb/1000 ft2",
    },
    [
      ["too cold for dry salt, °F", 15, told("deicing/too-cold", 10)],
      ["enough salt, lb/1000 ft2", 4, told("deicing/sources-differ", 22)],
    ],
  ),
];

/** Passes 2 m apart, every other one mirrored: pans at -1, 0 and 1 with 1, 3 and 0 put 3, 0, 3 and 2 on four places. */
const mirrored = cells(
  { ...derived, source: "passes back and forth by hand: mean 2, squares 1, 4, 1 and 0" },
  [
    [
      "CV back and forth, %",
      100 * Math.sqrt(6 / 16),
      () =>
        number(
          swathCvPercent({
            depositsKgPerM2: Float64Array.of(1, 3, 0),
            spacingM: 1,
            firstPanM: -1,
            swathsM: Float64Array.of(2),
            driving: "back and forth",
            divisor: "n",
          })[0],
        ),
    ],
  ],
);

/** The least swath that a refusal names, in the unit it is said in. */
const leastOf = (call: () => unknown): number => {
  try {
    call();
    return 0;
  } catch (error) {
    return Number(/(\S+)(?: m)? or more/.exec((error as Error).message)?.[1]);
  }
};
const sevenPans = { catches: [1, 2, 3, 4, 3, 2, 1], unit: "g", pans: { spacing: m(3), left: 3 } } as const;
const inOneDirection = { driving: "one direction", divisor: "n-1" } as const;
const onePosition = cells(
  { ...derived, source: "pans 3 m apart: a swath of 3 m has one of them, a swath of 6 m two" },
  [
    [
      "least swath with a divisor of n-1, m",
      6,
      () =>
        leastOf(() =>
          swathCvPercent({
            depositsKgPerM2: Float64Array.of(1, 2, 3, 4, 3, 2, 1),
            spacingM: 3,
            firstPanM: -9,
            swathsM: Float64Array.of(3),
            ...inOneDirection,
          }),
        ),
    ],
    [
      "least swath to search from with a divisor of n-1, m",
      6,
      () =>
        leastOf(() =>
          swathSearch(spreadPattern(sevenPans), {
            ...inOneDirection,
            positions: "pans",
            limit: percent(15),
            from: m(3),
          }),
        ),
    ],
    [
      "no refusal of two positions",
      0,
      () =>
        leastOf(() =>
          swathSearch(spreadPattern(sevenPans), {
            ...inOneDirection,
            positions: "pans",
            limit: percent(15),
            from: m(6),
          }),
        ),
    ],
  ],
);

/** Spreading. */
export const spreadConstants: readonly ConstantCheck[] = [
  ...rates,
  ...whole,
  ...headers,
  ...printed,
  ...ice,
  ...mirrored,
  ...onePosition,
];
