import { describe, expectTypeOf, test } from "vitest";
import { type Quantity, quantity } from "../../src/quantity/index.js";
import {
  annulusArea,
  areaEstimate,
  areaOfShape,
  circleArea,
  coverVolume,
  netArea,
  offsetArea,
  planArea,
  polygonArea,
  rectangleArea,
  type SiteShape,
  siteArea,
  squareSide,
  surfaceArea,
  type Tank,
  waterDose,
} from "../../src/site/index.js";

type Area = Quantity<"area", "none">;
const ft = quantity(1, "ft");

describe("types of the site room", () => {
  test("results are areas", () => {
    expectTypeOf(rectangleArea({ length: ft, width: ft })).toEqualTypeOf<Quantity<"area", "none">>();
    expectTypeOf(siteArea({ parts: [] }).net).toEqualTypeOf<Area>();
    expectTypeOf(netArea({ parts: [{ area: quantity(1, "m2") }] }).gross).toEqualTypeOf<Area>();
    expectTypeOf(surfaceArea(quantity(1, "m2", "plan"), quantity(5, "% grade"))).toEqualTypeOf<Area>();
  });

  test("an area or a mass is no length", () => {
    // @ts-expect-error an area
    rectangleArea({ length: quantity(1, "ft2"), width: ft });
    // @ts-expect-error a mass
    rectangleArea({ length: ft, width: quantity(1, "lb") });
    // @ts-expect-error the width is not there
    rectangleArea({ length: ft });
  });

  test("a circle takes one measure", () => {
    // @ts-expect-error two measures
    circleArea({ radius: ft, diameter: ft });
    // @ts-expect-error none
    circleArea({});
  });

  test("offsets are widths, or left and right", () => {
    // @ts-expect-error both
    offsetArea({ spacing: ft, widths: [ft], left: [ft], right: [ft] });
    // @ts-expect-error an unknown rule
    offsetArea({ spacing: ft, widths: [ft, ft], rule: "simpsons" });
  });

  test("numbers need a unit for a length, such as ft or m", () => {
    // @ts-expect-error no unit
    polygonArea([[0, 0]]);
    // @ts-expect-error a unit for an area, such as ft2 or m2
    polygonArea([[0, 0]], "ft2");
  });

  test("a treated area is no plan area, a percentage no slope", () => {
    // @ts-expect-error treated
    surfaceArea(quantity(1, "m2", "treated"), quantity(5, "deg"));
    // @ts-expect-error a bare percentage
    surfaceArea(quantity(1, "m2"), quantity(5, "%"));
  });

  test("a shape in JSON: literals and quantities", () => {
    expectTypeOf(areaOfShape({ shape: "measured", area: quantity(1, "acre") })).toEqualTypeOf<Area>();
    // @ts-expect-error an unknown shape
    areaOfShape({ shape: "hexagon" });
    // @ts-expect-error a field that the shape does not have
    const lawn: SiteShape = { shape: "rectangle", length: ft, width: ft, radius: ft };
    expectTypeOf(lawn).toExtend<SiteShape>();
  });

  test("tags: treated ground is covered, a plan area is brought down first", () => {
    expectTypeOf(planArea(quantity(1, "m2"), "3:1")).toEqualTypeOf<Quantity<"area", "plan">>();
    expectTypeOf(squareSide(quantity(1, "acre", "treated"))).toEqualTypeOf<Quantity<"length", "none">>();
    coverVolume({ area: quantity(1, "ft2", "treated"), depth: ft });
    // @ts-expect-error a plan area
    coverVolume({ area: quantity(1, "ft2", "plan"), depth: ft });
    // @ts-expect-error the gross area
    squareSide(quantity(1, "acre", "gross"));
  });

  test("a ring by two of its measures", () => {
    annulusArea({ innerDiameter: ft, width: ft });
    // @ts-expect-error a radius and a width
    annulusArea({ outerRadius: ft, width: ft });
  });

  test("a dose is of what the concentration is of", () => {
    const dose = waterDose({ volume: quantity(1, "m3"), concentration: quantity(1, "mg/L", "Cu") });
    expectTypeOf(dose.active).toEqualTypeOf<Quantity<"mass", "Cu">>();
    // @ts-expect-error a length
    waterDose({ volume: ft, concentration: quantity(1, "mg/L", "Cu") });
  });

  test("errors and tanks", () => {
    // @ts-expect-error what the error means is not said
    areaEstimate({ shape: "square", side: ft }, { reading: ft });
    // @ts-expect-error a side that the tank does not have
    const tank: Tank = { shape: "box", length: ft, width: ft, height: ft, diameter: ft };
    expectTypeOf(tank).toExtend<Tank>();
  });
});
