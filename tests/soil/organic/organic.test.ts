import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  availableNitrogen,
  compostAmount,
  foliarMicronutrient,
  onDryBasis,
  onWetBasis,
  quantity,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

describe("wet and dry", () => {
  test("come back", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 100, noNaN: true }),
        fc.double({ min: 1.1, max: 95, noNaN: true }),
        (percent, moisture) => {
          const dry = quantity(percent, "% w/w", "N/product");
          const wet = onWetBasis({ content: dry, moisture });
          expect(wet.value).toBeLessThanOrEqual(percent * (1 + 1e-12));
          expect(onDryBasis({ content: wet, moisture }).in("% w/w")).toBeCloseTo(percent, 6);
        },
      ),
    );
  });
  test("there is not more of it than dry matter", () => {
    const content = quantity(60, "% w/w", "N/product");
    expect(complaints(() => onDryBasis({ content, moisture: 50 }))).toEqual(["range content"]);
    expect(complaints(() => onDryBasis({ content, moisture: 100 }))).toEqual(["range moisture"]);
  });
});

test("a layer of compost is the same in feet and meters", () => {
  const us = compostAmount({
    area: quantity(10_000, "ft2"),
    depth: quantity(0.5, "in"),
    bulkDensity: quantity(1000, "lb/yd3", "product"),
    moisture: 35,
  });
  const metric = compostAmount({
    area: quantity(quantity(10_000, "ft2").in("m2"), "m2"),
    depth: quantity(12.7, "mm"),
    bulkDensity: quantity(quantity(1000, "lb/yd3", "product").in("kg/m3"), "kg/m3", "product"),
    moisture: 35,
  });
  expect(us.volume.in("m3")).toBeCloseTo(metric.volume.in("m3"), 8);
  expect(us.dryRate.in("kg/ha")).toBeCloseTo(metric.dryRate.in("kg/ha"), 6);
  expect(us.dryWeight.in("lb") / us.weight.in("lb")).toBeCloseTo(0.65, 10);
  expect(
    complaints(() =>
      compostAmount({
        area: quantity(0, "ft2"),
        depth: quantity(-1, "in"),
        bulkDensity: quantity(1000, "lb/yd3", "product"),
        moisture: 130,
      }),
    ),
  ).toEqual(["range area", "range depth", "range moisture"]);
});

describe("nitrogen of an organic amendment", () => {
  test("adds up over the years to what was there", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.double({ min: 1.1, max: 50, noNaN: true }),
        fc.integer({ min: 1, max: 50 }),
        fc.constantFrom("half of the year before" as const, "same share of what is left" as const),
        (organic, firstYear, years, later) => {
          const found = availableNitrogen({
            organic: quantity(organic, "kg/ha", "N"),
            firstYear,
            years,
            later,
          });
          const free = found.years.reduce((sum, { value }) => sum + value, 0);
          expect(free + found.left.value).toBeCloseTo(organic, 6);
          found.years.forEach(({ value }, i) => {
            expect(value).toBeLessThanOrEqual(found.years[Math.max(0, i - 1)]?.value as number);
          });
        },
      ),
    );
  });
  test("mineral nitrogen counts at once", () => {
    const found = availableNitrogen({
      organic: quantity(100, "kg/ha", "N"),
      mineral: quantity(7, "kg/ha", "N"),
      firstYear: 10,
      years: 2,
      later: "half of the year before",
    });
    expect(found.years.map(({ value }) => value)).toEqual([17, 5]);
    const organic = quantity(1, "kg/ha", "N");
    expect(
      complaints(() =>
        availableNitrogen({ organic, firstYear: 60, years: 1.5, later: "half of the year before" }),
      ),
    ).toEqual(["range firstYear", "range years"]);
  });
});

test("a rate of iron is not a rate of product", () => {
  const by = (ounces: number) =>
    foliarMicronutrient({ product: quantity(ounces, "oz/1000 ft2", "product"), element: "Fe", percent: 20 });
  expect(by(2).element.in("oz/1000 ft2")).toBeCloseTo(0.4, 12);
  expect([1, 2, 4, 20].map((ounces) => by(ounces).findings[0]?.severity)).toEqual([
    "note",
    undefined,
    undefined,
    "warning",
  ]);
  const iron = quantity(1, "oz/1000 ft2", "Fe") as never;
  expect(complaints(() => foliarMicronutrient({ product: iron, element: "Fe", percent: 20 }))).toEqual([
    "substance/mismatch product",
  ]);
});
