// What the whole of something is, 100 %, where a percentage is read; and a few turns of nutrient arithmetic, by hand.
import {
  activityIndex,
  analysis,
  blendSaltIndex,
  fertilizer,
  firstOrderRate,
  highestProductRate,
  injector,
  methyleneUrea,
  percentOf,
  potentialAcidity,
  productRates,
  productRatesKgPerHa,
  type ReleaseModel,
  releasedNitrogen,
  releaseModel,
  saltIndex,
  stockTank,
  sulfurCoatedUrea,
  ureaFormaldehyde,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import { problemsOf } from "../errors.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const derived = { room: "nutrient", reached: "derived" } as const;
const number = (value: unknown): number => (typeof value === "number" ? value : Number.NaN);
const bag = (grade: string) => fertilizer({ id: "bag", analysis: grade });
const nitrogen = (value: number) => quantity(value, "lb/1000 ft2", "N");

/** Where a call begins to be refused, and the bound that the refusal tells. */
const both = (what: string, call: (at: number) => unknown): readonly Cell[] => [
  [`most ${what}`, 100, () => edge((at) => goes(() => call(at)), 50, 200)],
  told(what, () => call(150)),
];
const told = (what: string, call: () => unknown): Cell => [
  `told: most ${what}`,
  100,
  () => {
    const { max, below } = problemsOf(call).find(({ params }) => params !== undefined)?.params ?? {};
    return number(max ?? below);
  },
];

const units = (at: number) =>
  blendSaltIndex(
    [1, 2].map(() => ({
      units: at / 2,
      partial: saltIndex({ value: 1, scale: "per unit", basis: "N", source: "by hand" }),
    })),
  );
const firstOrder = (at: number, { rate = 0.1, fitErrorPercent = 0 } = {}): ReleaseModel =>
  releaseModel({
    fitErrorPercent,
    name: "by hand",
    placement: "either",
    curve: {
      kind: "first order",
      ratePerDay: { low: rate, high: rate },
      mostPercent: { low: at, high: at },
    },
    temperature: { kind: "none" },
    assumptions: ["none"],
    source: "by hand",
  });

const whole: readonly ConstantCheck[] = cells(
  { ...derived, within: 1e-8, source: "no part is more than the whole, 100 %, and the refusal says so" },
  [
    ...both("of the nitrogen that is slow, %", (at) =>
      highestProductRate({
        product: bag("20-0-0"),
        caps: [{ limit: nitrogen(1), fromSlowShare: quantity(at, "% w/w", "N:slow/N") }],
      }),
    ),
    ...both("that cold water leaves, %", (at) =>
      activityIndex({
        coldInsoluble: quantity(at, "% w/w", "N/product"),
        hotInsoluble: quantity(1, "% w/w", "N/product"),
      }),
    ),
    ...both("of the nitrogen that is insoluble, %", (at) =>
      methyleneUrea({
        waterInsolubleShare: quantity(at, "% w/w", "other:WIN/N"),
        activityIndex: quantity(60, "%"),
      }),
    ),
    ...both("that dissolves in seven days, %", (at) =>
      sulfurCoatedUrea({ sevenDayDissolution: quantity(at, "%"), sealed: true, source: "the maker's sheet" }),
    ),
    ...both("that comes out at last, %", (at) => firstOrder(at)),
    told("of one nutrient, %", () => analysis({ basis: "oxide", percent: { N: 101 } })),
    told("of two nutrients, %", () => analysis({ basis: "oxide", percent: { N: 60, K2O: 60 } })),
    told("of a record made by hand, %", () =>
      percentOf({ basis: "oxide", percent: { N: 101 } } as never, "N"),
    ),
    told("of a row of rates, %", () => productRatesKgPerHa(Float64Array.of(1), 101)),
    told("of elements, %", () =>
      potentialAcidity({ percent: { K: 60, Cl: 60 }, convention: "full nitrification" }),
    ),
    told("units of a blend", () => units(150)),
  ],
);

const lastOf = ({ curve }: ReleaseModel): number =>
  curve.kind === "first order" ? number(curve.mostPercent?.high) : Number.NaN;
const release = (unit: "°C" | "°F", low: number, high: number) =>
  releasedNitrogen({
    applied: "2026-05-01",
    days: 10,
    placement: "incorporated",
    temperature: {
      type: "daily-temperatures",
      start: "2026-05-01",
      unit,
      sensor: "air",
      source: "by hand",
      min: new Array(10).fill(low),
      max: new Array(10).fill(high),
    } as never,
    portions: [{ name: "slow", nitrogen: quantity(1, "lb/1000 ft2", "N:slow"), model: methyleneUrea() }],
  });
const daily = (unit: "°C" | "°F", low: number, high: number): number =>
  number(release(unit, low, high).cumulative.mid[9]);
/** How many of ten days are told to lie outside the temperatures that were measured. */
const strays = (low: number, high: number): number => {
  const found = release("°C", low, high).findings;
  return number(found.find(({ code }) => code === "release/beyond-observed-temperature")?.params.days ?? 0);
};
const made = () =>
  stockTank({
    targets: [quantity(200, "mg/L", "N")],
    salts: [{ product: bag("20-0-10") }],
    injector: injector("1:200"),
    tank: quantity(100, "gal"),
  }).solution;
const exact = () =>
  productRates({
    steps: [
      { target: quantity(2, "lb/1000 ft2", "N"), product: fertilizer({ id: "a", analysis: "20-5-10" }) },
      { target: quantity(1, "lb/1000 ft2", "P2O5"), product: fertilizer({ id: "b", analysis: "10-10-10" }) },
    ],
  }).steps.map(({ rate }) => rate.in("lb/1000 ft2"));

const turns: readonly ConstantCheck[] = cells(
  {
    ...derived,
    within: 1e-12,
    source:
      "by hand: 2 = 0.2 a + 0.1 b and 1 = 0.05 a + 0.1 b, so a = b = 20/3; K2O is half of N; 80 % by day 35 at first order is -ln(0.2)/35; 100 % x (1 - 2/8) is 75",
  },
  [
    ["first of two exact rates, lb/1000 ft2", 20 / 3, () => number(exact()[0])],
    ["second of two exact rates, lb/1000 ft2", 20 / 3, () => number(exact()[1])],
    ["K2O beside 200 mg/L of N, mg/L", 100, () => number(made().K2O?.in("mg/L"))],
    ["first-order rate, per day", -Math.log(0.2) / 35, () => firstOrderRate({ percent: 80, days: 35 })],
    [
      "nitrogen at the highest rate, lb/1000 ft2",
      0.9,
      () =>
        number(
          highestProductRate({ product: bag("20-0-0"), caps: [{ limit: nitrogen(0.9) }] }).caps[0]?.at?.in(
            "lb/1000 ft2" as never,
          ),
        ),
    ],
    [
      "2 of 8 insoluble in hot water: activity index, %",
      75,
      () =>
        activityIndex({
          coldInsoluble: quantity(8, "% w/w", "N/product"),
          hotInsoluble: quantity(2, "% w/w", "N/product"),
        }).index.in("%"),
    ],
    ["urea formaldehyde: what comes at the high end, %", 100, () => lastOf(ureaFormaldehyde)],
    ["days of 5 to 15 °C lie at 10 °C, where it was measured", 1, () => (strays(5, 15) === 0 ? 1 : 0)],
    ["days of 5 to 14.9 °C lie below it", 10, () => strays(5, 14.9)],
    ["59 to 95 °F is 15 to 35 °C: the same release", 1, () => daily("°F", 59, 95) / daily("°C", 15, 35)],
    ["50 to 77 °F is 10 to 25 °C: the same release", 1, () => daily("°F", 50, 77) / daily("°C", 10, 25)],
    [
      "ten points of error above a hundredth a day, on day 30",
      0.1 + (1 - Math.exp(-0.3)),
      () =>
        number(
          releasedNitrogen({
            applied: "2026-05-01",
            days: 31,
            placement: "incorporated",
            temperature: { mean: quantity(25, "°C") },
            portions: [
              {
                name: "slow",
                nitrogen: quantity(1, "lb/1000 ft2", "N:slow"),
                model: firstOrder(100, { rate: 0.01, fitErrorPercent: 10 }),
              },
            ],
          }).cumulative.high[29],
        ),
    ],
  ],
);

/** Bounds and turns of nutrients, by hand. */
export const nutrientBoundConstants: readonly ConstantCheck[] = [...whole, ...turns];
