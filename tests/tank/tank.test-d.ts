import { describe, expectTypeOf, test } from "vitest";
import { type Quantity, quantity } from "../../src/quantity/index.js";
import { amountFor, formulationOf, perVolume, tankLoads } from "../../src/tank/index.js";

const area = quantity(1, "acre");
const sprayVolume = quantity(100, "gal", "spray");

describe("types of the tank formulas", () => {
  test("the form says whether an amount is weighed or poured, the rate says of what", () => {
    const dry = amountFor({ rate: quantity(1, "lb/acre", "product:a"), form: "dry", area });
    expectTypeOf(dry).toEqualTypeOf<Quantity<"mass", "product:a">>();
    const wet = amountFor({ rate: quantity(1, "% v/v", "product:b/spray"), form: "liquid", sprayVolume });
    expectTypeOf(wet).toEqualTypeOf<Quantity<"volume", "product:b">>();
    const rate = perVolume(quantity(2, "pt", "product:b"), sprayVolume);
    expectTypeOf(rate).toEqualTypeOf<Quantity<"volume/volume", "product:b/spray">>();
  });

  test("what is no rate, no spray or no area does not compile", () => {
    const ofSpray = quantity(1, "gal/acre", "spray");
    // @ts-expect-error a pressure is no rate
    amountFor({ rate: quantity(1, "psi", "product:a"), form: "dry", area });
    // @ts-expect-error an area is not a volume of spray
    amountFor({ rate: quantity(1, "% v/v", "product:b/spray"), form: "liquid", sprayVolume: area });
    // @ts-expect-error water is not finished spray
    tankLoads({ area, applicationVolume: ofSpray, capacity: quantity(1, "gal", "water") });
    // @ts-expect-error an area of product is no area
    tankLoads({ area: quantity(1, "acre", "product"), applicationVolume: ofSpray, capacity: sprayVolume });
    // @ts-expect-error no such scheme
    formulationOf("SC", { scheme: "UK" });
  });

  test("a rate of nitrogen is no rate of product", () => {
    // @ts-expect-error the rate is of N, not of a product
    amountFor({ rate: quantity(1, "lb/acre", "N"), form: "dry", area });
  });
});
