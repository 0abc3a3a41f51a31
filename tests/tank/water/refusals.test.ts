import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  alkalineHydrolysis,
  ammoniumSulfateFromHardness,
  ammoniumSulfateMinimum,
  expectWaterTest,
  halfLives,
  hardnessClass,
  hardnessFromIons,
  hydrolysisLoss,
  relativeAcidity,
  waterReport,
} from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of spray water, where the refusal points, and what happens exactly at a limit.

const hard = (value: number) => quantity(value, "mg/L", "hardness as CaCO3");
const calcium = (value: number) => quantity(value, "mg/L", "Ca");
const magnesium = (value: number) => quantity(value, "mg/L", "Mg");
const hour = quantity(1, "h");
const report = (more: object) => () => waterReport({ test: { pH: 7 }, ...more } as never);
const one = (product: object) => report({ products: [{ id: "a", ...product }] });

const rows: readonly Refused[] = [
  [report({ test: undefined }), "missing", "test", "a test of the water"],
  [report({ test: null }), "missing", "test", "a test of the water"],
  [report({ test: 7 }), "type", "test", "a test of the water"],
  [report({ test: { ph: 7 } }), "type", "test.ph", "pH"],
  [report({ test: { pH: 14.1 } }), "range", "test.pH", "14 or less"],
  [report({ test: { pH: -0.1 } }), "range", "test.pH", "0 or more"],
  [report({ test: { hardness: 150 } }), "type", "test.hardness", "an amount of hardness as CaCO3 in water"],
  [report({ test: { hardness: hard(-1) } }), "range", "test.hardness", "zero or more"],
  [report({ test: { HCO3: calcium(1) } }), "substance/mismatch", "test.HCO3", "an amount of HCO3 in water"],
  [
    report({ test: { HCO3: quantity(1, "lb", "HCO3") } }),
    "unit/mismatch",
    "test.HCO3",
    "mg/L, grain/gal or ppm w/w",
  ],
  ...(["K", "Na", "Ca", "Mg", "Fe"] as const).map(
    (name): Refused => [
      report({ test: { [name]: hard(1) } }),
      "substance/mismatch",
      `test.${name}`,
      `an amount of ${name} in water`,
    ],
  ),
  [report({ timeToEmpty: quantity(-1, "h") }), "range", "timeToEmpty", "zero or more"],
  [report({ timeToEmpty: quantity(1, "acre") }), "unit/mismatch", "timeToEmpty", "a time"],
  [
    report({ ammoniumSulfate: quantity(1, "% v/v", "product:a/spray") }),
    "unit/mismatch",
    "ammoniumSulfate",
    "a mass of ammonium sulfate per volume of spray",
  ],
  [
    report({ ammoniumSulfate: quantity(1, "lb/acre", "product:a") }),
    "unit/mismatch",
    "ammoniumSulfate",
    "per volume of spray",
  ],
  [report({ ammoniumSulfate: 7 }), "type", "ammoniumSulfate", "a rate of product"],
  [report({ hours: 1 }), "type", "input.hours", "timeToEmpty"],
  [report({ products: 7 }), "type", "products", "a list of products"],
  [report({ products: [7] }), "type", "products[0]", "a product"],
  [
    report({ products: [{ id: "a" }, { id: "a" }] }),
    "duplicate",
    "products[1].id",
    "an id that no other product has",
  ],
  [one({ id: "" }), "missing", "products[0].id", "an id of the product"],
  [one({ name: 7 }), "type", "products[0].name", "a text"],
  [one({ active: 7 }), "type", "products[0].active", "a text"],
  [one({ contains: ["iron"] }), "type", "products[0].contains[0]", '"iron sulfate"'],
  [one({ contains: 7 }), "type", "products[0].contains", "list"],
  [one({ labelPH: 6 }), "type", "products[0].labelPH", "a record with min, max or both"],
  [one({ labelPH: { least: 6 } }), "type", "products[0].labelPH.least", "min"],
  [one({ labelPH: { min: 15 } }), "range", "products[0].labelPH.min", "14 or less"],
  [one({ labelPH: { max: -1 } }), "range", "products[0].labelPH.max", "0 or more"],
  [one({ labelPH: { min: 7, max: 6 } }), "conflict", "products[0].labelPH.max", "7 or more"],
  [one({ rate: 1 }), "type", "products[0].rate", "labelPH"],
  [() => expectWaterTest({ pH: "7" }, "well"), "not-finite", "well.pH", "a finite number"],
  [() => expectWaterTest(null, "well"), "missing", "well", "a test of the water"],
  [() => expectWaterTest({}, 7 as never), "type", "path", "how an error names the test"],
  [() => hardnessFromIons({ Ca: calcium(80) } as never), "missing", "Mg", "an amount of Mg in water"],
  [() => hardnessFromIons({ Mg: magnesium(80) } as never), "missing", "Ca", "an amount of Ca in water"],
  [() => hardnessFromIons({ Ca: calcium(-1), Mg: magnesium(1) }), "range", "Ca", "zero or more"],
  [() => hardnessFromIons({ Ca: calcium(1), Mg: magnesium(1), Fe: 1 } as never), "type", "ions.Fe", "Ca"],
  [() => hardnessClass(hard(1), "Ohio" as never), "type", "scheme", "whose classes"],
  [() => hardnessClass(150 as never, "USGS"), "type", "hardness", "an amount of hardness as CaCO3 in water"],
  [() => ammoniumSulfateMinimum({}), "missing", "ions", "at least one of K, Na, Ca, Mg and Fe"],
  [() => ammoniumSulfateMinimum(7 as never), "type", "ions", "cations of a water test"],
  [
    () => ammoniumSulfateMinimum({ Ca: magnesium(1) as never }),
    "substance/mismatch",
    "Ca",
    "an amount of Ca in water",
  ],
  [
    () => ammoniumSulfateMinimum({ Ca: calcium(1) }, { product: "" }),
    "missing",
    "options.product",
    "the id of the ammonium sulfate in the mix",
  ],
  [() => ammoniumSulfateMinimum({ Ca: calcium(1) }, { id: "a" } as never), "type", "options.id", "product"],
  [
    () => ammoniumSulfateFromHardness(calcium(1) as never),
    "substance/mismatch",
    "hardness",
    "hardness as CaCO3",
  ],
  [() => hydrolysisLoss({ halfLife: quantity(0, "h"), time: hour }), "range", "halfLife", "more than zero"],
  [() => hydrolysisLoss({ halfLife: hour, time: quantity(-1, "h") }), "range", "time", "zero or more"],
  [
    () => hydrolysisLoss({ halfLife: hour, time: quantity(1, "acre") as never }),
    "unit/mismatch",
    "time",
    "a time",
  ],
  [
    () => alkalineHydrolysis({ active: 7 as never, pH: 7, time: hour }),
    "type",
    "active",
    "the ISO common name of an active ingredient",
  ],
  [() => alkalineHydrolysis({ active: "captan", pH: 15, time: hour }), "range", "pH", "14 or less"],
  [
    () => alkalineHydrolysis({ active: "captan", pH: 7, time: quantity(-1, "h") }),
    "range",
    "time",
    "zero or more",
  ],
  [() => relativeAcidity(15), "range", "pH", "14 or less"],
  [() => relativeAcidity(7, -1), "range", "reference", "0 or more"],
];

describeRefused("what is refused of spray water", rows);

test("the ends of the pH scale, water without any ion, and a label with one pH are read", () => {
  for (const pH of [0, 14]) {
    expect(problemsOf(() => waterReport({ test: { pH } }))).toEqual([]);
    expect(relativeAcidity(pH, pH)).toBe(1);
  }
  expect(hardnessFromIons({ Ca: calcium(0), Mg: magnesium(0) }).value).toBe(0);
  expect(problemsOf(one({ labelPH: { min: 6, max: 6 } }))).toEqual([]);
  expect(problemsOf(one({ contains: [] }))).toEqual([]);
  expect(problemsOf(report({ products: [] }))).toEqual([]);
  expect(problemsOf(() => hardnessClass(hard(1), "Ohio" as never))[0]?.choices).toEqual(["USGS", "Vermont"]);
});

test("an ion may be written as one in water, and an amount of nothing is none of it", () => {
  const written = { Ca: { value: 80, unit: "mg/L", of: "Ca/water" }, Mg: magnesium(20) } as const;
  // 80 x 2.497 + 20 x 4.118
  expect(hardnessFromIons(written).in("mg/L")).toBeCloseTo(282.1, 1);
  expect(
    hardnessFromIons({ ...written, Ca: { value: 80, unit: "ppm w/w", of: "Ca" } }).in("mg/L"),
  ).toBeCloseTo(282.1, 1);
  const [bare] = problemsOf(() => hardnessFromIons({ ...written, Ca: { value: 80, unit: "mg/L" } as never }));
  expect([bare?.code, bare?.path]).toEqual(["substance/mismatch", "Ca"]);
});

describe("classes of hardness, at their printed ends", () => {
  test.each([
    ["USGS", 60, "soft"],
    ["USGS", 61, "moderately hard"],
    ["USGS", 120, "moderately hard"],
    ["USGS", 121, "hard"],
    ["USGS", 180, "hard"],
    ["USGS", 181, "very hard"],
    ["Vermont", 75, "soft"],
    ["Vermont", 76, "moderately hard"],
    ["Vermont", 150, "moderately hard"],
    ["Vermont", 151, "hard"],
    ["Vermont", 300, "hard"],
    ["Vermont", 301, "very hard"],
  ] as const)("by %s %s mg/L is %s", (scheme, value, name) => {
    expect(hardnessClass(hard(value), scheme)).toBe(name);
    // The lists print whole numbers: half a milligram more is rounded up to the next.
    expect(hardnessClass(hard(value + 0.4), scheme)).toBe(name);
    expect(hardnessClass(hard(value - 0.5), scheme)).toBe(name);
  });
});

describe("what is lost in a tank", () => {
  const loss = (active: string, pH: number, time: number, unit: "min" | "h" | "d" = "h") =>
    alkalineHydrolysis({ active, pH, time: quantity(time, unit) });
  const band = (active: string, pH: number, time: number, unit: "min" | "h" | "d" = "h") =>
    loss(active, pH, time, unit)?.atEnd.map((share) => share.in("%"));

  test("at a printed pH is by the rows of that pH alone", () => {
    // Captan at pH 8: half in 10 minutes; an hour is six half-lives, 1/64 is left, 98.4 % gone.
    expect(band("captan", 8, 60, "min")).toEqual([98, 99]);
    expect(loss("captan", 8, 60, "min")?.rows).toHaveLength(1);
    // At pH 7 two sources differ: 8 h and 4.9 h. In 8 h half by one; by the other 1 - 0.5^(8/4.9) = 67.7 %.
    expect(band("captan", 7, 8)).toEqual([50, 70]);
    expect(loss("captan", 7, 8)?.rows).toHaveLength(2);
  });

  test("below the lowest printed pH lies between nothing and that row, above the highest between that row and all", () => {
    // Captan at pH 5: half in 32 h.
    expect(band("captan", 4, 32)).toEqual([0, 50]);
    // At pH 9: half in 2 minutes.
    expect(band("captan", 10, 2, "min")).toEqual([50, 100]);
    expect(band("captan", 10, 0)).toEqual([0, 0]);
  });

  test("between two printed values lies between their rows", () => {
    // Thiophanate-methyl: 36 d at pH 7, 0.7 d at pH 9.
    expect(band("thiophanate-methyl", 8, 0.7, "d")).toEqual([1, 50]);
    expect(loss("thiophanate methyl", 8, 0.7, "d")?.rows.map(({ pH }) => pH)).toEqual([7, 9]);
    expect(loss("  Thiophanate-Methyl ", 7, 1)?.temperatures).toEqual([25]);
    expect(loss("thiophanate-methyl", 7, 1)?.rowsWithoutTemperature).toBe(0);
    expect(loss("captan", 7, 1)?.rowsWithoutTemperature).toBe(2);
    expect(loss("captan", 7, 1)?.temperatures).toEqual([]);
  });

  test("nothing is known of what no source was read for", () => {
    expect(loss("glyphosate", 7, 1)).toBeUndefined();
  });

  test("on average is less than at the end, and half of it for a short time", () => {
    const short = hydrolysisLoss({ halfLife: quantity(1000, "h"), time: quantity(0.001, "h") });
    // ln 2 / 10^6 at the end; half of that on average.
    expect(short.atEnd.in("1") / Math.LN2).toBeCloseTo(1e-6, 11);
    expect(short.onAverage.in("1") / short.atEnd.in("1")).toBeCloseTo(0.5, 5);
    // One half-life: 1 - 0.5 / ln 2.
    const one1 = hydrolysisLoss({ halfLife: hour, time: hour });
    expect(one1.onAverage.in("1")).toBeCloseTo(1 - 0.5 / Math.LN2, 12);
    expect(hydrolysisLoss({ halfLife: hour, time: quantity(0, "h") }).onAverage.value).toBe(0);
  });

  test("both forms of the average agree where one takes over from the other", () => {
    const at = (y: number) =>
      hydrolysisLoss({ halfLife: hour, time: quantity(y / Math.LN2, "h") }).onAverage.in("1") / (y / 2);
    // Half of y, but for a third of it and terms of its square.
    for (const y of [0.9999e-4, 1.0001e-4]) expect(at(y)).toBeCloseTo(1 - y / 3, 8);
  });
});

describe("the table of half-lives", () => {
  test("each row is of a pH and a time that can be, in order, with a source", () => {
    for (const { active, pH, shortest, longest, temperature, source } of halfLives) {
      expect(active).toMatch(/^[a-z-]+$/);
      expect(pH).toBeGreaterThanOrEqual(5);
      expect(pH).toBeLessThanOrEqual(9);
      expect(shortest.unit).toBe(longest.unit);
      expect(shortest.value).toBeLessThanOrEqual(longest.value);
      expect(temperature === "not printed" || temperature === 25).toBe(true);
      expect(source.title.length * source.publisher.length).toBeGreaterThan(0);
    }
  });

  test("half-lives get shorter as the pH rises, source by source", () => {
    const hours = ({ value, unit }: { value: number; unit: "min" | "h" | "d" }): number =>
      quantity(value, unit).in("h");
    for (const one1 of halfLives)
      for (const other of halfLives)
        if (one1.active === other.active && one1.source === other.source && one1.pH < other.pH)
          expect(hours(one1.shortest), `${one1.active} ${one1.pH}`).toBeGreaterThan(hours(other.longest));
  });
});
