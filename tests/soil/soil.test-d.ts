import { describe, expectTypeOf, test } from "vitest";
import {
  amountInSoil,
  blendShare,
  contentInSoil,
  limeForRating,
  limeProductRate,
  limeQuality,
  nutrientNeed,
  type Quantity,
  quantity,
} from "../../src/index.js";

const layer = { assumed: "2,000,000 lb/acre" } as const;

describe("what the compiler tells apart", () => {
  test("a content and an amount keep their element", () => {
    const potassium = quantity(50, "mg/kg", "K/soil");
    expectTypeOf(amountInSoil(potassium, layer)).toEqualTypeOf<Quantity<"mass/area", "K">>();
    expectTypeOf(contentInSoil(quantity(1, "lb/acre", "K"), layer)).toEqualTypeOf<
      Quantity<"mass/mass", "K/soil">
    >();
    // @ts-expect-error an amount of potassium is no content of the soil
    amountInSoil(quantity(50, "mg/kg", "K"), layer);
  });
  test("a need is of one element", () => {
    const need = {
      nutrient: "K",
      extractant: "Mehlich 3",
      guideline: "minimum levels, Mehlich 3",
      layer,
    } as const;
    const use = quantity(8, "g/m2", "K");
    nutrientNeed({ ...need, use, test: quantity(50, "mg/kg", "K/soil") });
    // @ts-expect-error phosphorus tests nothing of potassium
    nutrientNeed({ ...need, use, test: quantity(50, "mg/kg", "P/soil") });
    // @ts-expect-error a use of potash is no use of potassium
    nutrientNeed({ ...need, use: quantity(8, "g/m2", "K2O"), test: quantity(50, "mg/kg", "K/soil") });
  });
  test("a rate of lime is of what it counts", () => {
    const quality = limeQuality({ CCE: 90 });
    const rate = quantity(50, "lb/1000 ft2", "CaCO3 equivalent");
    expectTypeOf(limeProductRate({ rate, measure: "CCE", quality, id: "a" }).rate).toEqualTypeOf<
      Quantity<"mass/area", "product:a">
    >();
    // @ts-expect-error a rate of product is no rate of calcium carbonate
    limeProductRate({ rate: quantity(50, "lb/1000 ft2", "product"), measure: "CCE", quality, id: "a" });
    limeForRating({
      recommended: quantity(1200, "lb/acre", "other:ENM"),
      // @ts-expect-error ECCE is no ENM
      rating: quantity(400, "lb/US ton", "other:ECCE/product"),
    });
  });
  test("two waters are compared in one kind", () => {
    blendShare({
      first: quantity(2, "dS/m"),
      second: quantity(15, "dS/m"),
      // @ts-expect-error milligrams are no conductivity
      target: quantity(8, "mg/L"),
    });
  });
});
