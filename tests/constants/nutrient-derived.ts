// Nutrient arithmetic by hand: halves, quarters and whole shares.
import {
  analysis,
  analysisByWeight,
  analysisOfMix,
  blendSaltIndex,
  blendToGrade,
  concentrationOf,
  fertilizer,
  highestProductRate,
  highestProductRatesKgPerHa,
  inventoryShrink,
  nitrogenBreakdown,
  nutrientCost,
  nutrientPerVolume,
  nutrientsSuppliedKg,
  percentOf,
  potentialAcidity,
  productForConcentration,
  productMass,
  productRatesKgPerHa,
  ratesBySource,
  saltIndex,
  slowShareNeeded,
} from "../../src/nutrient/index.js";
import { money, quantity } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "nutrient";
const derived = { room, reached: "derived" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;
const bag = (grade: string) => fertilizer({ id: "bag", analysis: grade });
const nitrogen = (value: number) => quantity(value, "lb/1000 ft2", "N");

type Composition = Parameters<typeof potentialAcidity>[0]["percent"];
const acid = (percent: Composition, convention: Parameters<typeof potentialAcidity>[0]["convention"]) => () =>
  potentialAcidity({ percent, convention }).in("% w/w");
/** What neutralizes one mole of acid: half of CaCO3. */
const lime = (40.078 + 12.011 + 3 * 15.999) / 2;
const acidity: readonly ConstantCheck[] = cells(
  {
    ...derived,
    within: 1e-9,
    source:
      "one mole in 100 g: N one of acid (half of it where half is credited), S two; Ca and Mg two of base; half of CaCO3 to the mole (IUPAC weights)",
  },
  [
    ["14.007 % N, all nitrified", lime, acid({ N: 14.007 }, "full nitrification")],
    ["14.007 % N, half credited", lime / 2, acid({ N: 14.007 }, "half nitrogen credit")],
    ["32.06 % S", 2 * lime, acid({ S: 32.06 }, "full nitrification")],
    ["40.078 % Ca", -2 * lime, acid({ Ca: 40.078 }, "full nitrification")],
    ["24.305 % Mg", -2 * lime, acid({ Mg: 24.305 }, "full nitrification")],
  ],
);

const dollars = (value: number) => money(value, "USD").per(quantity(1, "lb"));
const mix = () =>
  analysisOfMix({
    parts: [
      { product: bag("46-0-0"), amount: quantity(50, "lb") },
      { product: fertilizer({ id: "potash", analysis: "0-0-60" }), amount: quantity(50, "lb") },
    ],
  });
const array = (...values: readonly number[]) => Float64Array.from(values);
const shares: readonly ConstantCheck[] = cells(
  { ...derived, within: 1e-12, source: "halves, quarters and tenths of a whole" },
  [
    [
      "8 % from 20 %, % of the batch",
      40,
      () =>
        number(
          blendToGrade({ batch: quantity(2000, "lb"), grade: "0-8-0", materials: [bag("0-20-0")] }).parts[0]
            ?.percentOfBatch,
        ),
    ],
    [
      "a dollar a pound for half nitrogen",
      2,
      () => nutrientCost({ product: bag("50-0-0"), price: dollars(1), nutrient: "N" }).in("money:USD/lb"),
    ],
    [
      "a dollar a pound, less a quarter of nitrogen at a dollar, for half phosphate",
      1.5,
      () =>
        nutrientCost({
          product: bag("25-50-0"),
          price: dollars(1),
          nutrient: "P2O5",
          worth: { N: money(1, "USD").per(quantity(1, "lb", "N")) },
        }).in("money:USD/lb"),
    ],
    [
      "200 mg/L of a fifth, mg/L",
      1000,
      () => productForConcentration(quantity(200, "mg/L", "N"), bag("20-0-0")).in("mg/L"),
    ],
    [
      "a fifth of 1000 mg/L, mg/L",
      200,
      () => concentrationOf(quantity(1000, "mg/L", "product:bag"), bag("20-0-0"), "N").in("mg/L"),
    ],
    [
      "8 of 24 % slow, % of the nitrogen",
      100 / 3,
      () => nitrogenBreakdown({ percent: { urea: 16, waterInsoluble: 8 } }, 24).slowShare.in("% w/w"),
    ],
    [
      "from 10 to 12.5 lb/gal, % v/v",
      20,
      () => inventoryShrink(quantity(10, "lb/gal"), quantity(12.5, "lb/gal")).in("% v/v"),
    ],
    [
      "a quarter of 10 lb/gal, lb/gal",
      2.5,
      () =>
        nutrientPerVolume(
          fertilizer({ id: "bag", analysis: "25-0-0", form: "liquid", density: quantity(10, "lb/gal") }),
          "N",
        ).in("lb/gal"),
    ],
    [
      "2.5 in 10 lb/gal, %",
      25,
      () =>
        percentOf(
          analysisByWeight({
            perVolume: { N: quantity(2.5, "lb/gal", "N") },
            density: quantity(10, "lb/gal"),
          }),
          "N",
        ),
    ],
    ["half of 46 %", 23, () => percentOf(mix(), "N")],
    [
      "0.9 lb of a fifth, lb/1000 ft2",
      4.5,
      () =>
        number(
          highestProductRate({ product: bag("20-0-0"), caps: [{ limit: nitrogen(0.9) }] }).rate?.in(
            "lb/1000 ft2",
          ),
        ),
    ],
    [
      "1 lb with 0.75 quick, % slow",
      25,
      () =>
        slowShareNeeded({ total: nitrogen(1), quickCap: quantity(0.75, "lb/1000 ft2", "N:quick") }).in(
          "% w/w",
        ),
    ],
    ["5 lb of a quarter, lb", 20, () => productMass(quantity(5, "lb", "N"), bag("25-0-0")).in("lb")],
    ["48 kg/ha of 24 %, kg/ha", 200, () => number(productRatesKgPerHa(array(48), 24)[0])],
    [
      "24 % of 200 kg/ha on half a hectare, kg",
      24,
      () => number(nutrientsSuppliedKg({ rateKgPerHa: array(200), areaM2: array(5000), percent: 24 })[0]),
    ],
    [
      "45 kg/ha of a fifth, kg/ha",
      225,
      () => number(highestProductRatesKgPerHa([{ limitKgPerHa: array(45), percent: 20 }])[0]),
    ],
    [
      "three quarters of a pound, lb/1000 ft2",
      0.75,
      () =>
        number(
          ratesBySource({
            target: nitrogen(1),
            parts: [
              { product: bag("31-0-0"), share: quantity(75, "%") },
              { product: fertilizer({ id: "urea", analysis: "46-0-0" }), share: quantity(25, "%") },
            ],
          })[0]?.part.in("lb/1000 ft2"),
        ),
    ],
  ],
);

const most = (what: string, call: (at: number) => unknown): Cell => [
  what,
  100,
  () => edge((at) => goes(() => call(at)), 50, 200),
];
const whole: readonly ConstantCheck[] = cells(
  { ...derived, within: 1e-8, source: "no part is more than the whole, 100 %" },
  [
    most("of one nutrient, %", (N) => analysis({ basis: "oxide", percent: { N } })),
    most("of two nutrients, %", (at) => analysis({ basis: "oxide", percent: { N: at / 2, K2O: at / 2 } })),
    most("of a record made by hand, %", (N) => percentOf({ basis: "oxide", percent: { N } } as never, "N")),
    most("of a row of rates, %", (percent) => productRatesKgPerHa(array(1), percent)),
    most("of elements, %", (at) =>
      potentialAcidity({ percent: { K: at / 2, Cl: at / 2 }, convention: "full nitrification" }),
    ),
    most("of a liquid by weight, %", (at) =>
      analysisByWeight({
        perVolume: { N: quantity(at / 10, "lb/gal", "N") },
        density: quantity(10, "lb/gal"),
      }),
    ),
    most("of units of a blend", (units) =>
      blendSaltIndex([
        { units, partial: saltIndex({ value: 1, scale: "per unit", basis: "N", source: "by hand" }) },
      ] as never),
    ),
  ],
);

/** Nutrients, by hand. */
export const nutrientDerivedConstants: readonly ConstantCheck[] = [...acidity, ...shares, ...whole];
