import { allOf, expectFields, expectNumber, fail, type Quantity, quantityOf } from "../../quantity/index.js";
import { sprayOf } from "../inputs.js";
import type { ProductSubstance } from "../rate/rate.js";

/** How "one to so many" is meant: one part in so many of the whole, or one part and so many of carrier. */
export type PartsReading = "1 in x" | "1 plus x";

/** Product and carrier of a dilution in parts. */
export interface DilutionAmounts<P extends string> {
  readonly type: "dilution-amounts";
  readonly version: 1;
  readonly product: Quantity<"volume", P>;
  readonly carrier: Quantity<"volume", "water">;
  readonly finished: Quantity<"volume", "spray">;
  /** Product in the finished spray. */
  readonly share: Quantity<"volume/volume", `${P}/spray`>;
}

/**
 * Product and carrier of a dilution that is told in parts: of `x` parts
 *
 * - `"1 in x"`: product is `finished / x`
 * - `"1 plus x"`: product is `finished / (x + 1)`
 *
 * A bare "1:x" is read both ways, and sources seldom say which; so there is no default. In the field it
 * is read a third way, as acres that a gallon of product treats (1:32 is 4 fl oz/acre, Mississippi State
 * University Extension P2939): that is a rate per area and no dilution.
 *
 * @param input - `parts`, the `x`: 1 or more for `"1 in x"`, more than zero for `"1 plus x"`; `reading`;
 *   `finished` volume of spray, more than zero; `product`, the substance of the concentrate, `"product"`
 *   where left out
 * @throws RatewrightError with every problem: `range`, `type`, `missing`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: definition.
 *
 * @example
 * ```ts
 * import { dilutionAmounts, quantity } from "ratewright";
 * const finished = quantity(5, "gal", "spray");
 * const inTen = dilutionAmounts({ parts: 10, reading: "1 in x", finished });
 * inTen.product.in("gal"); // => 0.5
 * inTen.carrier.in("gal"); // => 4.5
 * const plusNine = dilutionAmounts({ parts: 9, reading: "1 plus x", finished });
 * plusNine.share.in("% v/v"); // => 10
 * ```
 */
export const dilutionAmounts = <const P extends ProductSubstance = "product">(input: {
  readonly parts: number;
  readonly reading: PartsReading;
  readonly finished: Quantity<"volume", "spray">;
  readonly product?: P;
}): DilutionAmounts<P> => {
  expectFields(input, ["parts", "reading", "finished", "product"]);
  const { parts, reading, finished, product } = allOf({
    parts: () => expectNumber(input.parts, "parts", input.reading === "1 in x" ? { min: 1 } : { above: 0 }),
    reading: () => readingOf(input.reading),
    finished: () => sprayOf(input.finished, "finished"),
    product: () => productOf(input.product),
  });
  const whole = reading === "1 in x" ? parts : parts + 1;
  const { value, unit } = finished;
  const amount = value / whole;
  return {
    type: "dilution-amounts",
    version: 1,
    product: quantityOf<"volume", P>(amount, unit, product, "product"),
    carrier: quantityOf<"volume", "water">(value - amount, unit, "water", "carrier"),
    finished,
    share: quantityOf<"volume/volume", `${P}/spray`>(100 / whole, "% v/v", `${product}/spray`, "parts"),
  };
};

const readingOf = (input: unknown): PartsReading =>
  input === "1 in x" || input === "1 plus x"
    ? input
    : fail("type", "reading", input, '"1 in x" or "1 plus x"');

const productOf = (input: unknown): ProductSubstance => {
  const product = input === undefined ? "product" : input;
  return typeof product === "string" && /^product(:[^/:\s][^/:]*)?$/.test(product)
    ? (product as ProductSubstance)
    : fail("substance/mismatch", "product", product, "product, or product with an id");
};
