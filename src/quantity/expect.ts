import { fail } from "./errors.js";
import { operand, type Quantity } from "./quantity.js";

/** How a quantity must lie: above zero, at or above zero, or anywhere. */
export type Bound = "positive" | "non-negative" | "any";

/**
 * Takes an argument as a quantity of the given dimension, or throws with its path: what every formula
 * does at its door. A quantity of another copy of the package and what JSON left of one are taken too.
 *
 * @throws RatewrightError `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`
 */
export const expectQuantity = <const D extends string, const S extends string = string>(
  input: unknown,
  expected: { readonly dimension: D; readonly of?: S; readonly bound?: Bound },
  path: string,
): Quantity<D, S> => {
  const q = operand(input, path);
  if (q.dimension !== expected.dimension) {
    fail("unit/mismatch", path, q, `a quantity of ${expected.dimension}`);
  }
  if (expected.of !== undefined && q.of !== expected.of) {
    fail("substance/mismatch", path, q, `a quantity of ${expected.of}`);
  }
  if (!Number.isFinite(q.value)) fail("not-finite", path, q.value, "a finite number");
  if (expected.bound === "positive" && q.value <= 0) fail("range", path, q, "more than zero");
  if (expected.bound === "non-negative" && q.value < 0) fail("range", path, q, "zero or more");
  return q as unknown as Quantity<D, S>;
};

/** Takes an argument as a finite number within bounds, or throws with its path. */
export const expectNumber = (
  input: unknown,
  path: string,
  bounds: {
    readonly min?: number;
    readonly max?: number;
    readonly above?: number;
    readonly below?: number;
  } = {},
): number => {
  if (typeof input !== "number" || !Number.isFinite(input)) {
    return fail("not-finite", path, input, "a finite number");
  }
  const { min, max, above, below } = bounds;
  if (min !== undefined && input < min) fail("range", path, input, `${min} or more`);
  if (max !== undefined && input > max) fail("range", path, input, `${max} or less`);
  if (above !== undefined && input <= above) fail("range", path, input, `more than ${above}`);
  if (below !== undefined && input >= below) fail("range", path, input, `less than ${below}`);
  return input + 0;
};
