import { allOf, expectFields, expectQuantity, numberIn, Quantity } from "../../quantity/index.js";

/**
 * A rate for another depth of soil than the one that it was made for: `L = L0 d / d0`. Half the depth takes half the
 * lime: a Tri-State rate for 8 in is halved where the lime stays in the top 4 (sod, no till).
 *
 * The soil is taken as uniform to both depths. More lime than the rate for the depth that it reaches stays above it.
 *
 * @param input.from - `d0`, the depth that the rate is for
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: "Tri-State Fertilizer Recommendations", E-2567: half of the rates for a depth of 4 in; definition.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { limeForDepth } from "ratewright/soil";
 * const rate = quantity(2, "US ton/acre", "CaCO3 equivalent");
 * limeForDepth({ rate, from: quantity(8, "in"), to: quantity(4, "in") }).in("US ton/acre"); // => 1
 * ```
 */
export const limeForDepth = <S extends string>(input: {
  readonly rate: Quantity<"mass/area", S>;
  readonly from: Quantity<"length", "none">;
  readonly to: Quantity<"length", "none">;
}): Quantity<"mass/area", S> => {
  const record = expectFields(input, ["rate", "from", "to"], "input");
  const depth = { dimension: "length", of: "none", bound: "positive" } as const;
  const read = allOf({
    rate: () => expectQuantity(record.rate, { dimension: "mass/area", bound: "non-negative" }, "rate"),
    from: () => expectQuantity(record.from, depth, "from"),
    to: () => expectQuantity(record.to, depth, "to"),
  });
  const { value, unit, of } = read.rate;
  const scaled = (value * numberIn(read.to, read.from.unit)) / read.from.value;
  return new Quantity(scaled, unit, of as S, "mass/area");
};
