import { expectTypeOf, test } from "vitest";
import { type Quantity, quantity } from "../../src/quantity/index.js";
import {
  acidEquivalentOf,
  acidShare,
  activeInProduct,
  applicationVolume,
  asApplied,
  productForActive,
  travelSpeed,
  waterEquivalent,
} from "../../src/spray/index.js";

const speed = quantity(4, "mi/h");
const width = quantity(20, "in");

test("a volume is of what the flow is of, and the two are not mixed", () => {
  const flow = quantity(1, "gal/min", "water");
  expectTypeOf(applicationVolume({ flow, speed, width })).toEqualTypeOf<Quantity<"volume/area", "water">>();
  // @ts-expect-error a flow of water does not put on a volume of spray
  travelSpeed({ flow, applicationVolume: quantity(20, "gal/acre", "spray"), width });
  // @ts-expect-error a flow of nitrogen is no carrier
  applicationVolume({ flow: quantity(1, "gal/min", "N"), speed, width });
  // @ts-expect-error a width is a length
  applicationVolume({ flow, speed, width: speed });
});

test("water stands for spray only by its density", () => {
  const rho = quantity(1.28, "kg/L");
  expectTypeOf(waterEquivalent(quantity(20, "gal/acre", "spray"), rho)).toEqualTypeOf<
    Quantity<"volume/area", "water">
  >();
  // @ts-expect-error water already
  waterEquivalent(quantity(20, "gal/acre", "water"), rho);
});

test("product comes out in the measure of its content", () => {
  const active = quantity(1, "lb/acre", "ai");
  expectTypeOf(productForActive({ active, content: quantity(4, "lb/gal", "ai/product:a") })).toEqualTypeOf<
    Quantity<"volume/area", "product:a">
  >();
  expectTypeOf(productForActive({ active, content: quantity(80, "% w/w", "ai/product:b") })).toEqualTypeOf<
    Quantity<"mass/area", "product:b">
  >();
  // @ts-expect-error acid equivalent is not active ingredient
  productForActive({ active: quantity(1, "lb/acre", "ae"), content: quantity(4, "lb/gal", "ai/product:a") });
  expectTypeOf(
    activeInProduct({
      product: quantity(1, "gal", "product:a"),
      content: quantity(4, "lb/gal", "ae/product:a"),
    }),
  ).toEqualTypeOf<Quantity<"mass", "ae">>();
});

test("acid equivalent comes from active ingredient only", () => {
  const share = acidShare("2,4-D", "dimethylammonium");
  expectTypeOf(acidEquivalentOf(quantity(1, "lb/gal", "ai"), share)).toEqualTypeOf<
    Quantity<"mass/volume", "ae">
  >();
  expectTypeOf(acidEquivalentOf(quantity(1, "lb", "ai:dicamba"), share)).toEqualTypeOf<
    Quantity<"mass", "ae:dicamba">
  >();
  // @ts-expect-error acid equivalent already
  acidEquivalentOf(quantity(1, "lb/gal", "ae"), share);
});

test("an application is planned and used in one product", () => {
  const used = quantity(50, "lb", "product:a");
  const area = quantity(1, "acre");
  expectTypeOf(asApplied({ used, area }).rate).toEqualTypeOf<Quantity<"mass/area", "product:a">>();
  // @ts-expect-error the plan is of another product
  asApplied({ used, area, planned: quantity(50, "lb/acre", "product:b") });
});
