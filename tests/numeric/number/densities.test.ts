import { expect, test } from "vitest";
import {
  amountFor,
  analysisByWeight,
  asFinishedSpray,
  compostAmount,
  densityAt,
  densityConversionFactor,
  densitySlopeOfUan,
  dryBulkDensity,
  fertilizer,
  finishedFrom,
  hopperLoad,
  hopperVolume,
  inventoryShrink,
  layerMaterial,
  mixWeights,
  quantity,
  topdressing,
  weighedCatch,
} from "../../../src/index.js";
import { problemsOf } from "../../errors.js";

type Density = ReturnType<typeof quantity<"lb/gal">>;

/** What is told of a density: where, and what the number would be in the unit that it fits. */
const told = (call: () => unknown): readonly (string | undefined)[] =>
  problemsOf(call).map(({ code, path, suggestion }) => `${code} ${path}: ${suggestion}`);

const liquids: readonly (readonly [string, (density: Density) => unknown])[] = [
  ["fertilizer.density", (density) => fertilizer({ id: "uan", analysis: "28-0-0", form: "liquid", density })],
  ["density", (density) => analysisByWeight({ perVolume: { N: quantity(180, "g/L", "N") }, density })],
  ["density", (density) => densityConversionFactor(density)],
  ["density", (density) => asFinishedSpray(quantity(20, "gal/acre", "water"), { density })],
  ["before", (density) => inventoryShrink(density, quantity(10.7, "lb/gal"))],
  ["after", (density) => inventoryShrink(quantity(10.7, "lb/gal"), density)],
  [
    "density",
    (density) =>
      densityAt({
        density,
        measuredAt: quantity(60, "°F"),
        slopePerFahrenheit: densitySlopeOfUan,
        temperature: quantity(61, "°F"),
      }),
  ],
  [
    "density",
    (density) => weighedCatch({ full: quantity(1313, "g", "spray"), tare: quantity(113, "g"), density }),
  ],
  [
    "density",
    (density) =>
      amountFor({
        rate: quantity(2, "lb/acre", "product"),
        form: "liquid",
        area: quantity(1, "acre"),
        density,
      }),
  ],
  [
    "density",
    (density) =>
      finishedFrom({
        product: quantity(2, "L", "product"),
        concentration: quantity(360, "g/L", "ai/product"),
        strength: quantity(1, "% w/w", "ai/spray"),
        density,
      }),
  ],
];

test("a density in kg/L under lb/gal, and the other way round, is told with the unit that it fits", () => {
  // UAN 28 has 1.28 kg/L, which is 10.68 lb/gal or 79.9 lb/ft3
  for (const [path, call] of liquids) {
    expect(
      told(() => call(quantity(1.28, "lb/gal"))),
      path,
    ).toEqual([`range ${path}: 1.28 kg/L`]);
    expect(
      told(() => call(quantity(10.68, "kg/L") as never)),
      path,
    ).toEqual([`range ${path}: 10.68 lb/gal`]);
    expect(
      told(() => call(quantity(79.9, "lb/gal"))),
      path,
    ).toEqual([`range ${path}: 79.9 lb/ft3`]);
    expect(
      told(() => call(quantity(1280, "kg/L") as never)),
      path,
    ).toEqual([`range ${path}: 1280 kg/m3`]);
  }
});

test("the lightest and the heaviest liquids are taken: ammonia, petroleum oil, phosphoric acid, lime sulfur, zinc bromide brine", () => {
  // 5.15 lb/gal of liquid ammonia at 60 °F, 14.1 of 85 % phosphoric acid, 2.3 kg/L of zinc bromide brine, from memory
  for (const density of [quantity(5.15, "lb/gal"), quantity(7, "lb/gal"), quantity(14.1, "lb/gal")])
    expect(problemsOf(() => densityConversionFactor(density))).toEqual([]);
  expect(problemsOf(() => densityConversionFactor(quantity(2.3, "kg/L")))).toEqual([]);
});

const materials: readonly (readonly [string, (density: Density) => unknown])[] = [
  ["bulkDensity", (bulkDensity) => hopperLoad({ volume: quantity(1, "yd3", "product"), bulkDensity })],
  ["bulkDensity", (bulkDensity) => hopperVolume({ load: quantity(1, "US ton", "product"), bulkDensity })],
  [
    "bulkDensity",
    (bulkDensity) => layerMaterial({ area: quantity(1000, "ft2"), depth: quantity(0.25, "in"), bulkDensity }),
  ],
  [
    "bulkDensity",
    (density) => dryBulkDensity({ bulkDensity: density, moisture: quantity(8, "%"), basis: "dry weight" }),
  ],
  [
    "parts[0].bulkDensity",
    (density) =>
      mixWeights({
        volume: quantity(100, "yd3"),
        parts: [
          { name: "sand", share: quantity(80, "%"), bulkDensity: density },
          { name: "peat", share: quantity(20, "%"), bulkDensity: quantity(8, "lb/ft3") },
        ],
      }),
  ],
  [
    "bulkDensity",
    (density) =>
      compostAmount({
        area: quantity(32_400, "ft2"),
        depth: quantity(0.25, "in"),
        bulkDensity: quantity(density.value, density.unit as "lb/gal", "product") as never,
        moisture: 40,
      }),
  ],
  ["density", (density) => topdressing({ area: quantity(1000, "m2"), depth: quantity(2, "mm"), density })],
];

test("so is the bulk density of sand: 1.6 g/mL is 13.4 lb/gal, 100 lb/ft3, 2,700 lb/yd3", () => {
  for (const [path, call] of materials) {
    expect(
      told(() => call(quantity(13.4, "g/mL") as never)),
      path,
    ).toEqual([`range ${path}: 13.4 lb/gal`]);
    expect(
      told(() => call(quantity(1.6, "lb/ft3") as never)),
      path,
    ).toEqual([`range ${path}: 1.6 kg/L`]);
    expect(
      told(() => call(quantity(100, "g/mL") as never)),
      path,
    ).toEqual([`range ${path}: 100 lb/ft3`]);
  }
  expect(
    problemsOf(() =>
      hopperLoad({ volume: quantity(1, "yd3", "product"), bulkDensity: quantity(300, "lb/ft3") }),
    ),
  ).toEqual([
    {
      code: "range",
      path: "bulkDensity",
      got: "300 lb/ft3",
      expected: "a bulk density of 1.9 to 165 lb/ft3; dry sand has some 1.6 g/mL, 100 lb/ft3, 2,700 lb/yd3",
      params: { min: 1.9, max: 165, unit: "lb/ft3" },
      suggestion: "300 kg/m3",
    },
  ]);
});

test("perlite and the heaviest sand are taken", () => {
  // Expanded perlite weighs 2 lb/ft3 and more, wet packed sand 130 lb/ft3, from memory
  for (const value of [2, 130])
    expect(
      problemsOf(() =>
        hopperLoad({ volume: quantity(1, "yd3", "product"), bulkDensity: quantity(value, "lb/ft3") }),
      ),
    ).toEqual([]);
});
