import { fail } from "../errors/errors.js";
import { expectWords } from "../errors/expect-fields.js";
import { dimensionDue } from "../unit/dimension-words.js";
import { expectQuantity } from "./expect-quantity.js";
import { type Bound, recordOr } from "./expected.js";
import { operand, type Quantity } from "./quantity.js";

/**
 * Takes an argument that may have one of a few dimensions, such as an amount or a rate of it per area.
 * What JSON left of a quantity carries no dimension of its own, so it is read from the unit.
 *
 * @param expected - the `dimensions`, the substance `of`, and the `bound`: `"positive"` or `"non-negative"`
 * @throws RatewrightError `missing`, `type`, `unit/unknown`, `unit/mismatch`, `substance/mismatch`, `range`
 *
 * @example
 * ```ts
 * import { expectAmount } from "ratewright";
 * const either = { dimensions: ["mass", "mass/area"] } as const;
 * expectAmount({ value: 3, unit: "lb/acre", of: "N" }, either, "amount").dimension; // => "mass/area"
 * expectAmount({ value: 3, unit: "gal", of: "N" }, either, "amount"); // => throws unit/mismatch
 * ```
 */
export const expectAmount = <const D extends string>(
  input: unknown,
  expected: { readonly dimensions: readonly D[]; readonly of?: string; readonly bound?: Bound },
  path: string,
): Quantity<D, string> => {
  const { dimensions, ...rest } = recordOr(expected);
  if (!Array.isArray(dimensions) || dimensions.length > 1000)
    fail("type", "expected.dimensions", dimensions, "a list of dimensions");
  const q = operand(input, path, dimensions);
  const dimension = dimensions.find((name): name is D => name === q.dimension);
  if (dimension === undefined) {
    expectWords(dimensions, "expected.dimensions");
    return dimensionDue("unit/mismatch", path, q, dimensions);
  }
  return expectQuantity(q, { dimension, ...rest }, path);
};
