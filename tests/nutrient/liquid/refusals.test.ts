import { describe, expect, test } from "vitest";
import {
  analysisByWeight,
  densityAt,
  fertilizer,
  inventoryShrink,
  liquidDensity,
  liquidFertilizer,
  liquidMaterials,
  liquidProductRate,
  nutrientPerVolume,
  saltOutFindings,
  volumeOfLiquid,
  weightOfLiquid,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of liquids, what happens exactly at a printed temperature, and their table a second time.

const wet = fertilizer({ id: "wet", form: "liquid", analysis: "28-0-0", density: quantity(10, "lb/gal") });
const bare = fertilizer({ id: "bare", form: "liquid", analysis: "28-0-0" });
const jug = liquidFertilizer({ id: "jug", perVolume: { N: quantity(3, "lb/gal", "N") } });
const n = quantity(1, "lb/1000 ft2", "N");
const fahrenheit = (value: number) => quantity(value, "°F");
const at = (change: object) => () =>
  densityAt({
    density: quantity(10.67, "lb/gal"),
    measuredAt: fahrenheit(60),
    slopePerFahrenheit: quantity(-0.003, "lb/gal"),
    temperature: fahrenheit(90),
    ...change,
  } as never);
const byWeight = (change: object) => () =>
  analysisByWeight({
    perVolume: { N: quantity(3, "lb/gal", "N") },
    density: quantity(10, "lb/gal"),
    ...change,
  } as never);

const rows: readonly Refused[] = [
  [() => nutrientPerVolume(wet, "Zz" as never), "type", "nutrient", "a nutrient, such as N or P2O5"],
  [
    () => nutrientPerVolume(bare, "N"),
    "missing",
    "product.density",
    "the density of the liquid at the temperature at which it is measured out",
  ],
  [() => nutrientPerVolume(7 as never, "N"), "type", "product", "fertilizer"],
  [() => liquidProductRate(n, bare), "missing", "product.density", "liquidFertilizer({ id, perVolume })"],
  [
    () => liquidProductRate(quantity(1, "lb", "N") as never, wet),
    "unit/mismatch",
    "target",
    "a weight over an area",
  ],
  [
    () => liquidProductRate(quantity(1, "lb/1000 ft2", "Fe"), wet),
    "infeasible",
    "product.analysis",
    "some Fe, of which wet states none",
  ],
  [
    () => liquidProductRate(quantity(1, "lb/1000 ft2", "Fe"), jug),
    "infeasible",
    "product.perVolume",
    "some Fe, of which jug states none",
  ],
  [
    () => weightOfLiquid(quantity(1, "gal", "product:b") as never, wet),
    "substance/mismatch",
    "amount",
    "product:wet",
  ],
  [
    () => weightOfLiquid(quantity(1, "lb", "product:wet") as never, wet),
    "unit/mismatch",
    "amount",
    "a volume",
  ],
  [() => weightOfLiquid(quantity(-1, "gal", "product:wet"), wet), "range", "amount", "zero or more"],
  [
    () => weightOfLiquid(quantity(1, "gal", "product:bare"), bare),
    "missing",
    "product.density",
    "the density of the liquid",
  ],
  [
    () => volumeOfLiquid(quantity(1, "gal", "product:wet") as never, wet),
    "unit/mismatch",
    "amount",
    "a weight",
  ],
  [() => volumeOfLiquid(quantity(-1, "lb", "product:wet"), wet), "range", "amount", "zero or more"],
  [
    () => volumeOfLiquid(quantity(1, "lb", "product:bare"), bare),
    "missing",
    "product.density",
    "the density of the liquid",
  ],
  [byWeight({ density: quantity(0, "lb/gal") }), "range", "density", "more than zero"],
  [byWeight({ perVolume: {} }), "missing", "perVolume", "at least one nutrient"],
  [
    byWeight({ perVolume: { N: quantity(11, "lb/gal", "N") } }),
    "range",
    "perVolume.N",
    "which is what the product weighs",
  ],
  [byWeight({ form: "liquid" }), "type", "input.form", "density"],
  [() => liquidDensity("water" as never, fahrenheit(60)), "type", "material", '"UAN 28"'],
  [
    () => liquidDensity("UAN 28", quantity(1, "ft") as never),
    "unit/mismatch",
    "temperature",
    "a temperature",
  ],
  [() => liquidDensity("UAN 28", fahrenheit(29.9)), "range", "temperature", "30 to 90 °F, as printed"],
  [() => liquidDensity("UAN 28", fahrenheit(90.1)), "range", "temperature", "30 to 90 °F, as printed"],
  [
    () => liquidDensity("ammonium thiosulfate", fahrenheit(61)),
    "range",
    "temperature",
    "the only one printed",
  ],
  [at({ density: quantity(0, "lb/gal") }), "range", "density", "more than zero"],
  [at({ measuredAt: 60 }), "type", "measuredAt", "quantity"],
  [
    at({ slopePerFahrenheit: quantity(1, "lb") }),
    "unit/mismatch",
    "slopePerFahrenheit",
    "a weight per volume",
  ],
  [
    at({ temperature: fahrenheit(5000) }),
    "range",
    "temperature",
    "a temperature at which the line still gives a density above zero",
  ],
  [at({ slope: 1 }), "type", "input.slope", "slopePerFahrenheit"],
  [() => inventoryShrink(quantity(0, "lb/gal"), quantity(1, "lb/gal")), "range", "before", "more than zero"],
  [() => inventoryShrink(quantity(1, "lb/gal"), quantity(0, "lb/gal")), "range", "after", "more than zero"],
  [() => saltOutFindings("water" as never, fahrenheit(0)), "type", "material", '"UAN 28"'],
  [() => saltOutFindings("UAN 28", quantity(1, "ft") as never), "unit/mismatch", "coldest", "a temperature"],
];

describeRefused("what is refused of liquids", rows);

describe("densities", () => {
  test("at a printed temperature are the printed ones, between two on the line, in °C too", () => {
    const of = (value: number, unit: "°F" | "°C" = "°F") =>
      liquidDensity("UAN 28", quantity(value, unit)).in("lb/gal");
    expect([of(30), of(60), of(90)]).toEqual([10.76, 10.67, 10.58]);
    expect(of(40)).toBeCloseTo(10.73, 12);
    expect(of(140 / 9, "°C")).toBeCloseTo(10.67, 9);
    expect(of(-10 / 9, "°C")).toBeCloseTo(10.76, 9);
    expect(liquidDensity("ammonium thiosulfate", quantity(140 / 9, "°C")).in("lb/gal")).toBeCloseTo(11.04, 9);
  });

  test("by a slope, and what a tank shrinks by", () => {
    expect(at({})().in("lb/gal")).toBeCloseTo(10.58, 12);
    expect(at({ temperature: fahrenheit(30) })().in("lb/gal")).toBeCloseTo(10.76, 12);
    expect(inventoryShrink(quantity(10, "lb/gal"), quantity(10.5, "lb/gal")).in("% v/v")).toBeCloseTo(
      50 / 10.5,
      12,
    );
  });

  test("nutrients in a gallon, by weight and by label", () => {
    expect(nutrientPerVolume(wet, "N").in("lb/gal")).toBeCloseTo(2.8, 12);
    expect(nutrientPerVolume(jug, "N").in("lb/gal")).toBe(3);
    expect(nutrientPerVolume(jug, "K2O").toString()).toBe("0 lb/gal of K2O");
    expect(weightOfLiquid(quantity(2, "gal", "product:wet"), wet).in("lb")).toBeCloseTo(20, 12);
    expect(volumeOfLiquid(quantity(20, "lb", "product:wet"), wet).in("gal")).toBeCloseTo(2, 12);
    expect(byWeight({})()).toMatchObject({ basis: "oxide", percent: { N: expect.closeTo(30, 9) } });
    expect(byWeight({ perVolume: { P: quantity(1, "lb/gal", "P") } })().basis).toBe("element");
    expect(byWeight({ perVolume: { N: quantity(10, "lb/gal", "N") } })().percent.N).toBeCloseTo(100, 9);
  });
});

describe("salting out", () => {
  const codes = (material: keyof typeof liquidMaterials, value: number) =>
    saltOutFindings(material, fahrenheit(value)).map(({ code }) => code);
  test("is told from the printed temperature down, by each source that prints one", () => {
    expect(codes("UAN 30", 14.1)).toEqual([]);
    expect(codes("UAN 30", 14)).toEqual(["liquid/salts-out"]);
    expect(codes("UAN 28", 1)).toHaveLength(1);
    expect(codes("UAN 28", -1)).toHaveLength(2);
    expect(saltOutFindings("UAN 30", fahrenheit(10))[0]).toMatchObject({
      severity: "warning",
      params: { material: "UAN 30", coldestFahrenheit: 10, saltOutFahrenheit: 14 },
      text: "At 10 °F urea ammonium nitrate solution, 30 % N may salt out: its published salt-out temperature is 14 °F. Crystals plug lines and screens, and the liquid left is weaker.",
    });
  });

  test("of which no source prints a temperature is not checked, and that is said", () => {
    expect(saltOutFindings("ammonium thiosulfate", fahrenheit(0))).toEqual([
      {
        code: "liquid/salt-out-not-checked",
        severity: "note",
        params: { material: "ammonium thiosulfate" },
        text: "No source on file gives a salt-out temperature for ammonium thiosulfate solution, so cold was not checked.",
      },
    ]);
  });

  test("by the table, a second time", () => {
    const printed = {
      "UAN 28": ["28-0-0", [-1, 1]],
      "UAN 30": ["30-0-0", [14]],
      "UAN 32": ["32-0-0", [28, 32]],
      "ammonium polyphosphate": ["10-34-0", [-10]],
      "ammonium thiosulfate": ["12-0-0-26S", []],
      "zinc ammonia solution": ["10-0-0-10Zn", [32]],
      "7-21-7": ["7-21-7", [20]],
    };
    for (const [id, [grade, points]] of Object.entries(printed)) {
      const { analysis, saltOut, source, name } = liquidMaterials[id as keyof typeof liquidMaterials];
      expect([analysis, saltOut.map(({ fahrenheit: point }) => point)]).toEqual([grade, points]);
      expect(`${name} ${source.title} ${source.publisher}`).toMatch(/\w+ \w+ \w+/);
    }
  });

  test("densities fall as it gets warmer, one for each temperature", () => {
    for (const { fahrenheit: points, lbPerGal } of Object.values(liquidMaterials)) {
      expect(points).toHaveLength(lbPerGal.length);
      for (let i = 1; i < points.length; i += 1) {
        expect(points[i]).toBeGreaterThan(points[i - 1] as number);
        expect(lbPerGal[i]).toBeLessThan(lbPerGal[i - 1] as number);
      }
    }
  });
});
