import { describe, expectTypeOf, test } from "vitest";
import {
  type BaseUnitDimensions,
  type DimensionOf,
  type PerDimension,
  type PerSubstance,
  Quantity,
  quantity,
  sum,
  type TimesDimension,
  type TimesSubstance,
  type unitTable,
} from "../../../src/quantity/index.js";

/** A result of type never assigns to anything, so every result is also checked not to be never. */
type NotNever<T> = [T] extends [never] ? false : true;

describe("what compiles", () => {
  test("a unit text has a dimension", () => {
    expectTypeOf<DimensionOf<"lb">>().toEqualTypeOf<"mass">();
    expectTypeOf<DimensionOf<"lb/1000 ft2">>().toEqualTypeOf<"mass/area">();
    expectTypeOf<DimensionOf<"fl oz/1000 ft2">>().toEqualTypeOf<"volume/area">();
    expectTypeOf<DimensionOf<"US ton/100 m2">>().toEqualTypeOf<"mass/area">();
    expectTypeOf<DimensionOf<"lb/1000 ft2/week">>().toEqualTypeOf<"mass/area/time">();
    expectTypeOf<DimensionOf<"mm/d">>().toEqualTypeOf<"length/time">();
    expectTypeOf<DimensionOf<"mi/h">>().toEqualTypeOf<"length/time">();
    expectTypeOf<DimensionOf<"% w/w">>().toEqualTypeOf<"mass/mass">();
    expectTypeOf<DimensionOf<"% v/v">>().toEqualTypeOf<"volume/volume">();
    expectTypeOf<DimensionOf<"% w/v">>().toEqualTypeOf<"mass/volume">();
    expectTypeOf<DimensionOf<"meq/100 g">>().toEqualTypeOf<"exchange capacity">();
    expectTypeOf<DimensionOf<"MJ/m2/d">>().toEqualTypeOf<"irradiance">();
    expectTypeOf<DimensionOf<"°C">>().toEqualTypeOf<"temperature">();
    expectTypeOf<DimensionOf<"°F diff">>().toEqualTypeOf<"temperature difference">();
    expectTypeOf<DimensionOf<"money:USD/lb">>().toEqualTypeOf<"money:USD/mass">();
    expectTypeOf<DimensionOf<"grain/gal">>().toEqualTypeOf<"mass/volume">();
    expectTypeOf<DimensionOf<"lbs">>().toEqualTypeOf<never>();
    expectTypeOf<DimensionOf<"acre/psi">>().toEqualTypeOf<never>();
  });

  test("the written-out dimensions of the base units are those of the table", () => {
    type Table = typeof unitTable;
    type Derived = { readonly [D in keyof Table as keyof Table[D]]: D };
    expectTypeOf<{
      readonly [U in keyof BaseUnitDimensions]: BaseUnitDimensions[U];
    }>().toEqualTypeOf<Derived>();
  });

  test("a function that is generic over the substance can multiply and divide by what is neutral", () => {
    const onField = <S extends "N" | "P2O5">(rate: Quantity<"mass/area", S>): number => {
      // @ts-expect-error what S is decides whether this has a product
      rate.times(quantity(1, "acre", "N/product"));
      const amount = rate.times(quantity(1, "acre"));
      return amount.per(quantity(1, "acre", "treated")).in("kg/ha");
    };
    expectTypeOf(onField<"N">).returns.toEqualTypeOf<number>();
  });

  test("a choice of units is a unit", () => {
    expectTypeOf<DimensionOf<"lb" | "kg">>().toEqualTypeOf<"mass">();
    expectTypeOf<DimensionOf<"lb" | "kg/ha" | "gal/acre">>().toEqualTypeOf<
      "mass" | "mass/area" | "volume/area"
    >();
    const system = 1 as number;
    expectTypeOf(quantity(1, system > 0 ? "lb/1000 ft2" : "kg/ha", "N")).toEqualTypeOf<
      Quantity<"mass/area", "N">
    >();
    // @ts-expect-error one of the two is not a unit for a weight, such as lb or kg
    quantity(1, "lb").in(system > 0 ? "kg" : "L");
  });

  test("products and quotients follow the table, in both orders", () => {
    expectTypeOf<TimesDimension<"mass/area", "area">>().toEqualTypeOf<"mass">();
    expectTypeOf<TimesDimension<"area", "mass/area">>().toEqualTypeOf<"mass">();
    expectTypeOf<TimesDimension<"mass/volume", "volume/area">>().toEqualTypeOf<"mass/area">();
    expectTypeOf<TimesDimension<"volume/area", "mass/volume">>().toEqualTypeOf<"mass/area">();
    expectTypeOf<TimesDimension<"length/time", "length">>().toEqualTypeOf<"area/time">();
    expectTypeOf<TimesDimension<"length", "length/time">>().toEqualTypeOf<"area/time">();
    expectTypeOf<TimesDimension<"volume/time", "time">>().toEqualTypeOf<"volume">();
    expectTypeOf<TimesDimension<"length", "area">>().toEqualTypeOf<"volume">();
    expectTypeOf<TimesDimension<"money:USD/mass", "mass/area">>().toEqualTypeOf<"money:USD/area">();
    expectTypeOf<TimesDimension<"mass/area", "money:USD/mass">>().toEqualTypeOf<"money:USD/area">();
    expectTypeOf<TimesDimension<"1", "mass">>().toEqualTypeOf<"mass">();
    expectTypeOf<TimesDimension<"area", "area">>().toEqualTypeOf<never>();
    expectTypeOf<TimesDimension<"mass", "volume">>().toEqualTypeOf<never>();
    expectTypeOf<PerDimension<"mass", "area">>().toEqualTypeOf<"mass/area">();
    expectTypeOf<PerDimension<"mass", "mass/area">>().toEqualTypeOf<"area">();
    expectTypeOf<PerDimension<"mass/area", "mass/mass">>().toEqualTypeOf<"mass/area">();
    expectTypeOf<PerDimension<"mass/area", "mass/area">>().toEqualTypeOf<"mass/mass">();
    expectTypeOf<PerDimension<"area", "area">>().toEqualTypeOf<"1">();
    expectTypeOf<PerDimension<"volume", "area">>().toEqualTypeOf<"volume/area">();
    expectTypeOf<PerDimension<"money:USD", "money:EUR">>().toEqualTypeOf<never>();
    expectTypeOf<PerDimension<"money:USD", "mass">>().toEqualTypeOf<"money:USD/mass">();
    expectTypeOf<PerDimension<"mass", "mass/area/time">>().toEqualTypeOf<never>();
  });

  test("substances: times cancels, per builds the pair", () => {
    expectTypeOf<TimesSubstance<"N/product", "product">>().toEqualTypeOf<"N">();
    expectTypeOf<TimesSubstance<"product", "N/product">>().toEqualTypeOf<"N">();
    expectTypeOf<TimesSubstance<"N/product:a", "product:a">>().toEqualTypeOf<"N">();
    expectTypeOf<TimesSubstance<"N/product:a", "product:b">>().toEqualTypeOf<never>();
    expectTypeOf<TimesSubstance<"N/product", "product/spray">>().toEqualTypeOf<"N/spray">();
    expectTypeOf<TimesSubstance<"none/N", "N">>().toEqualTypeOf<"none">();
    expectTypeOf<TimesSubstance<"N", "N">>().toEqualTypeOf<never>();
    expectTypeOf<TimesSubstance<"ai/product", "spray">>().toEqualTypeOf<never>();
    expectTypeOf<TimesSubstance<"spray", "ai/product">>().toEqualTypeOf<never>();
    expectTypeOf<TimesSubstance<"N", "treated">>().toEqualTypeOf<"N">();
    expectTypeOf<PerSubstance<"N", "product">>().toEqualTypeOf<"N/product">();
    expectTypeOf<PerSubstance<"N", "N/product">>().toEqualTypeOf<"product">();
    expectTypeOf<PerSubstance<"none", "N">>().toEqualTypeOf<"none/N">();
    expectTypeOf<PerSubstance<"N:slow/product", "N/product">>().toEqualTypeOf<"N:slow/N">();
    expectTypeOf<PerSubstance<"N/product", "spray">>().toEqualTypeOf<never>();
  });

  test("results are what the trade expects, and never `never`", () => {
    const rate = quantity(3, "lb/1000 ft2", "product:feed");
    const mass = rate.times(quantity(2, "acre"));
    expectTypeOf(mass).toEqualTypeOf<Quantity<"mass", "product:feed">>();
    const nitrogen = quantity(24, "% w/w", "N/product:feed").times(mass);
    expectTypeOf(nitrogen).toEqualTypeOf<Quantity<"mass", "N">>();
    expectTypeOf<NotNever<typeof mass>>().toEqualTypeOf<true>();
    expectTypeOf<NotNever<typeof nitrogen>>().toEqualTypeOf<true>();
    expectTypeOf(quantity(50, "money:USD").per(quantity(12, "lb", "N"))).toEqualTypeOf<
      Quantity<"money:USD/mass", "none/N">
    >();
    expectTypeOf(quantity(20, "°C").plus(quantity(5, "°F diff"))).toEqualTypeOf<
      Quantity<"temperature", "none">
    >();
    expectTypeOf(sum([quantity(1, "lb", "N"), quantity(2, "oz", "N")])).toEqualTypeOf<
      Quantity<"mass", "N">
    >();
  });
});

describe("what does not compile", () => {
  const pound = quantity(1, "lb");
  const acre = quantity(1, "acre");
  const target = quantity(0.9, "lb/1000 ft2", "N");

  test("units", () => {
    // @ts-expect-error misspelt unit
    quantity(1, "lbs");
    // @ts-expect-error a plain string is not known to be a unit
    quantity(1, "lb" as string);
    // @ts-expect-error no such quotient
    quantity(1, "acre/psi");
    // @ts-expect-error time must come last
    quantity(1, "lb/d/acre");
    // @ts-expect-error a unit of another dimension
    target.in("gal/acre");
    // @ts-expect-error misspelt unit
    target.in("lb/1000ft2");
    // @ts-expect-error kg/ha is a rate, kg is not
    pound.in("kg/ha");
  });

  test("dimensions", () => {
    // @ts-expect-error an ounce by weight is not a fluid ounce
    quantity(1, "oz").plus(quantity(1, "fl oz"));
    // @ts-expect-error nor the other way round
    quantity(1, "fl oz").plus(quantity(1, "oz"));
    // @ts-expect-error mass plus area
    pound.plus(acre);
    // @ts-expect-error area plus mass
    acre.plus(pound);
    // @ts-expect-error no product of area and area
    acre.times(acre);
    // @ts-expect-error no product of mass and area
    pound.times(acre);
    // @ts-expect-error a temperature has no multiple
    quantity(20, "°C").times(2);
    // @ts-expect-error a temperature cannot be added to a temperature
    quantity(20, "°C").plus(quantity(3, "°C"));
    // @ts-expect-error two currencies
    quantity(1, "money:USD").plus(quantity(1, "money:EUR"));
    // @ts-expect-error depth and volume per area cross only by a named function
    quantity(1, "in").plus(quantity(1, "gal/1000 ft2"));
    // @ts-expect-error percent by weight and by volume are different
    quantity(1, "% w/w").plus(quantity(1, "% v/v"));
    // @ts-expect-error a percent by weight is no bare percent
    quantity(1, "% w/w").plus(quantity(1, "%"));
    // @ts-expect-error a union of kinds is no kind
    sum([pound, acre]);
  });

  test("substances", () => {
    // @ts-expect-error phosphorus is not phosphate
    quantity(1, "lb", "P").plus(quantity(1, "lb", "P2O5"));
    // @ts-expect-error product is not nutrient
    quantity(1, "lb", "product").plus(quantity(1, "lb", "N"));
    // @ts-expect-error active ingredient is not acid equivalent
    quantity(1, "lb", "ai").plus(quantity(1, "lb", "ae"));
    // @ts-expect-error two products
    quantity(1, "lb", "product:a").plus(quantity(1, "lb", "product:b"));
    // @ts-expect-error no substance is not nitrogen
    pound.plus(quantity(1, "lb", "N"));
    // @ts-expect-error cannot multiply ai/product by spray
    quantity(50, "% w/w", "ai/product").times(quantity(1, "lb", "spray"));
    // @ts-expect-error cannot multiply N by N
    quantity(1, "mass" as never, "N").times(quantity(1, "lb", "K"));
    // @ts-expect-error not a substance
    quantity(1, "lb", "nitrogen");
    // @ts-expect-error not a pair of substances
    quantity(1, "lb", "N/none");
    // @ts-expect-error a union of substances is no substance
    const either: Quantity<"mass", "N" | "P2O5"> = quantity(1, "lb", "N");
    // @ts-expect-error nor is a union of dimensions a dimension
    const any: Quantity<"mass" | "area", "none"> = pound;
    expectTypeOf(either).not.toBeAny();
    expectTypeOf(any).not.toBeAny();
    // @ts-expect-error substance missing where one is required
    const needed: Quantity<"mass", "N"> = pound;
    expectTypeOf(needed).not.toBeAny();
  });

  test("immutability", () => {
    // @ts-expect-error read-only
    pound.value = 2;
    expectTypeOf(Quantity).not.toBeAny();
  });
});
