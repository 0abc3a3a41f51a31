import { fail } from "../errors/errors.js";
import { alone, type Bound, kind, recordOr } from "./expected.js";
import { alike, operand, type Quantity } from "./quantity.js";

/** The last expectation that was found sound: a constant is looked at once. */
let sound: unknown;

/**
 * Takes an argument as a quantity of the given dimension, or throws with its path: what every formula
 * does at its door. A quantity of another copy of the package and what JSON left of one are taken too.
 *
 * @param expected - the `dimension`, the substance `of`, and the `bound`: `"positive"` or `"non-negative"`
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`
 * @example
 * ```ts
 * import { expectQuantity, quantity } from "ratewright";
 * expectQuantity({ value: 2, unit: "acre" }, { dimension: "area", bound: "positive" }, "field").in("ft2"); // => 87120
 * expectQuantity(quantity(2, "lb"), { dimension: "area" }, "field"); // => throws unit/mismatch
 * ```
 */
export const expectQuantity = <const D extends string, const S extends string = string>(
  input: unknown,
  expected: { readonly dimension: D; readonly of?: S; readonly bound?: Bound },
  path: string,
): Quantity<D, S> => {
  const wanted = recordOr(expected);
  const { dimension, of, bound } = wanted;
  const given = operand(input, path, dimension);
  if (wanted !== sound) sound = alone(wanted, kind, "expected");
  if (typeof dimension !== "string" || dimension === "")
    fail("type", "expected.dimension", dimension, "the name of a dimension");
  const q = alike(given, dimension, of, path);
  if (bound === "positive" && q.value <= 0)
    fail("range", path, q, "more than zero", { params: { above: 0 } });
  if (bound === "non-negative" && q.value < 0) fail("range", path, q, "zero or more", { params: { min: 0 } });
  // Dimension and substance were held against what was asked, which no narrowing tells the compiler.
  return q as unknown as Quantity<D, S>;
};
