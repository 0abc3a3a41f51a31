import type { StandardSchemaV1 } from "@standard-schema/spec";
import { describe, expectTypeOf, test } from "vitest";
import {
  type CheckedSubstance,
  type CheckedUnitOf,
  type Dimension,
  depthOf,
  format,
  fractionByWeight,
  fromUcum,
  isUnit,
  money,
  type PlainSubstance,
  parseQuantity,
  parseRange,
  type Quantity,
  type QuantityInput,
  type QuantityReading,
  quantity,
  quantityFrom,
  quantitySchema,
  readQuantity,
  type SubstanceHint,
  shareOf,
  temperatureDifference,
  type Unit,
  type UnitChoice,
  type UnitHint,
  unitsOf,
  volumePerAreaOf,
  weightFractionOf,
  weightPerVolumeOf,
} from "../../../src/quantity/index.js";

declare const chosen: string;

describe("text", () => {
  test("what is known of the expected is known of the result", () => {
    expectTypeOf(parseQuantity("3 lb")).toEqualTypeOf<Quantity<string, string>>();
    expectTypeOf(parseQuantity("3 lb", { decimal: "," })).toEqualTypeOf<Quantity<string, string>>();
    expectTypeOf(parseQuantity("3 lb", { dimension: "mass" })).toEqualTypeOf<Quantity<"mass", string>>();
    expectTypeOf(parseQuantity("3 lb", { of: "N" })).toEqualTypeOf<Quantity<string, "N">>();
    expectTypeOf(parseQuantity("3 lb", { dimension: "mass", of: "N" })).toEqualTypeOf<
      Quantity<"mass", "N">
    >();
    expectTypeOf(parseQuantity("$3", { dimension: "money:USD" })).toEqualTypeOf<
      Quantity<"money:USD", string>
    >();
    expectTypeOf(parseRange("1-2 lb", { dimension: "mass", of: "N" }).min).toEqualTypeOf<
      Quantity<"mass", "N">
    >();
    // @ts-expect-error no such dimension
    parseQuantity("3 lb", { dimension: "weight" });
    // @ts-expect-error no such substance
    parseQuantity("3 lb", { dimension: "mass", of: "nitrogen" });
    // @ts-expect-error a text is wanted
    parseQuantity(3);
  });

  test("a quantity whose substance was not asked for is no quantity of N", () => {
    const read = parseQuantity("3 lb", { dimension: "mass" });
    // @ts-expect-error the text may have said anything
    const nitrogen: Quantity<"mass", "N"> = read;
    expectTypeOf(nitrogen).not.toBeNever();
  });

  test("readQuantity narrows", () => {
    const read = readQuantity(chosen, { dimension: "mass/area", of: "N", bound: "positive", path: "rate" });
    expectTypeOf(read).toEqualTypeOf<QuantityReading<"mass/area", "N">>();
    if (read.value !== null) expectTypeOf(read.value).toEqualTypeOf<Quantity<"mass/area", "N">>();
    else expectTypeOf(read.problems[0]?.path).toEqualTypeOf<string | undefined>();
    const any = readQuantity(chosen, { dimension: "mass/area" });
    expectTypeOf(any).toEqualTypeOf<QuantityReading<"mass/area", string>>();
    expectTypeOf(quantityFrom({})).toEqualTypeOf<Quantity<string, string>>();
    // @ts-expect-error no such substance
    readQuantity(chosen, { dimension: "mass", of: "nitrogen" });
    // @ts-expect-error no such dimension
    readQuantity(chosen, { dimension: "weight" });
  });

  test("a string from a select box reaches a quantity without a cast", () => {
    // @ts-expect-error a plain string is no unit
    quantity(3, chosen);
    if (isUnit(chosen, "mass/area")) {
      expectTypeOf(chosen).toEqualTypeOf<Unit<"mass/area">>();
      const rate = quantity(3, chosen, "N");
      expectTypeOf(rate).toEqualTypeOf<Quantity<"mass/area", "N">>();
      expectTypeOf(rate.in(chosen)).toBeNumber();
      expectTypeOf(format(rate, { unit: chosen })).toBeString();
    }
    if (isUnit(chosen)) expectTypeOf(quantity(3, chosen)).toEqualTypeOf<Quantity<Dimension, "none">>();
    for (const choice of unitsOf("volume/area")) {
      expectTypeOf(choice).toEqualTypeOf<UnitChoice<"volume/area">>();
      expectTypeOf(quantity(1, choice.unit)).toEqualTypeOf<Quantity<"volume/area", "none">>();
    }
    // @ts-expect-error no such dimension
    unitsOf("weight");
    expectTypeOf(fromUcum(chosen)).toEqualTypeOf<Unit<Dimension>>();
  });

  test("a unit of another dimension is refused, also where only its dimension is known", () => {
    const rate = quantity(3, "lb/acre", "N");
    for (const { unit } of unitsOf("volume/area")) {
      // @ts-expect-error a fluid ounce per acre is no weight per area
      rate.in(unit);
      // @ts-expect-error nor is it written as one
      format(rate, { unit });
    }
    // @ts-expect-error any unit at all may be one of another dimension
    if (isUnit(chosen)) rate.in(chosen);
    // @ts-expect-error a plain string is no unit
    rate.in(chosen);
  });

  test("an editor offers units and substances, not sentences", () => {
    expectTypeOf<CheckedSubstance<SubstanceHint>>().toEqualTypeOf<PlainSubstance>();
    expectTypeOf<CheckedSubstance<string>>().toExtend<`a plain string may be no substance${string}`>();
    type Offered = UnitHint<"mass/area">;
    expectTypeOf<CheckedUnitOf<Offered | (string & {}), "mass/area">>().toEqualTypeOf<Offered>();
    expectTypeOf<CheckedUnitOf<string, "mass/area">>().toExtend<`a plain string is no unit${string}`>();
  });

  test("a field that is generic over dimension and substance needs no cast", () => {
    interface Field<D extends Dimension, S extends string> {
      readonly dimension: D;
      readonly of: CheckedSubstance<S>;
    }
    const readField = <D extends Dimension, S extends string>(
      input: unknown,
      { dimension, of }: Field<D, S>,
    ): QuantityReading<D, S> => readQuantity(input, { dimension, of });
    const inEveryUnit = <D extends Dimension, S extends string>(
      amount: Quantity<D, S>,
    ): readonly (readonly [number, string])[] =>
      unitsOf(amount.dimension).map(({ unit }) => [amount.in(unit), format(amount, { unit })]);
    const read = readField({}, { dimension: "mass/area", of: "N" });
    expectTypeOf(read).toEqualTypeOf<QuantityReading<"mass/area", "N">>();
    if (read.value !== null) expectTypeOf(inEveryUnit(read.value)[0]).not.toBeAny();
    // @ts-expect-error no such substance
    readField({}, { dimension: "mass/area", of: "nitrogen" });
  });

  test("format takes units of the dimension only", () => {
    expectTypeOf(format(quantity(1, "acre"), { unit: "ft2" })).toBeString();
    // @ts-expect-error a pound is no area
    format(quantity(1, "acre"), { unit: "lb" });
  });

  test("the schema is a Standard Schema", () => {
    const schema = quantitySchema({ dimension: "mass/area", of: "N" });
    const standard: StandardSchemaV1<QuantityInput, Quantity<"mass/area", "N">> = schema;
    expectTypeOf(standard).not.toBeNever();
    type Output = StandardSchemaV1.InferOutput<typeof schema>;
    expectTypeOf<Output>().toEqualTypeOf<Quantity<"mass/area", "N">>();
    // @ts-expect-error no such substance
    quantitySchema({ dimension: "mass/area", of: "nitrogen" });
  });
});

describe("crossings", () => {
  test("types", () => {
    expectTypeOf(depthOf(quantity(1, "gal/acre", "water"))).toEqualTypeOf<Quantity<"length", "none">>();
    expectTypeOf(volumePerAreaOf(quantity(1, "in"), "water")).toEqualTypeOf<
      Quantity<"volume/area", "water">
    >();
    expectTypeOf(volumePerAreaOf(quantity(1, "in"))).toEqualTypeOf<Quantity<"volume/area", "none">>();
    expectTypeOf(shareOf(quantity(1, "% w/w", "N/product"))).toEqualTypeOf<Quantity<"1", "N/product">>();
    expectTypeOf(fractionByWeight(quantity(1, "%", "N/product"))).toEqualTypeOf<
      Quantity<"mass/mass", "N/product">
    >();
    const density = quantity(10, "lb/gal", "product");
    const nitrogen = quantity(28, "% w/w", "N/product");
    expectTypeOf(weightPerVolumeOf(nitrogen, density)).toEqualTypeOf<Quantity<"mass/volume", "N">>();
    expectTypeOf(weightFractionOf(quantity(3, "lb/gal", "N"), density)).toEqualTypeOf<
      Quantity<"mass/mass", "N/product">
    >();
    expectTypeOf(temperatureDifference(quantity(70, "°F"), quantity(10, "°C"))).toEqualTypeOf<
      Quantity<"temperature difference", "none">
    >();
    // @ts-expect-error the density of water is not that of the product
    weightPerVolumeOf(nitrogen, quantity(1, "kg/L", "water"));
    // @ts-expect-error a rate by weight is no depth
    depthOf(quantity(1, "lb/acre"));
    // @ts-expect-error a weight per volume is no fraction
    shareOf(quantity(1, "% w/v"));
    // @ts-expect-error differences do not differ
    temperatureDifference(quantity(1, "°F diff"), quantity(1, "°F diff"));
  });

  test("money", () => {
    expectTypeOf(money(1, "USD")).toEqualTypeOf<Quantity<"money:USD", "none">>();
    // @ts-expect-error two currencies do not add
    money(1, "USD").plus(money(1, "EUR"));
    // @ts-expect-error three capitals
    money(1, "usd");
    // @ts-expect-error three capitals
    money(1, "USDX");
    // @ts-expect-error a plain string is no currency
    money(1, chosen);
  });
});
