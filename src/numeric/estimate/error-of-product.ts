import { allOf, checks, expectFields, expectNumber, fail, outOfRange } from "../../quantity/index.js";
import { compensatedSum } from "../number/accurate-sum.js";
import { expectItems, finite } from "../number/numbers.js";

/** A measured value with its error: the standard uncertainty, or any other measure that is the same for all. */
export interface Measured {
  readonly value: number;
  /** Zero or more, in the unit of the value. */
  readonly error: number;
}

/** A factor of a product; `power` is -1 for a divisor and 1 where it is left out. */
export interface Factor extends Measured {
  readonly power?: number;
}

interface Part {
  readonly x: number;
  readonly error: number;
  readonly power: number;
}

const partOf = (factor: unknown, path: string): Part => {
  const given = expectFields(factor, ["value", "error", "power"], path, "a value with its error");
  const { x, error, power } = allOf({
    error: () => expectNumber(given.error, `${path}.error`, { min: 0 }),
    x: () => {
      const value = expectNumber(given.value, `${path}.value`);
      const at = `${path}.value`;
      if (value === 0) fail("range", at, 0, "a number other than 0, which has no relative error");
      if (value < 0 && typeof given.power === "number" && given.power % 1 !== 0) {
        outOfRange(at, value, { above: 0 }, `{} for power ${given.power}`);
      }
      return value;
    },
    power: () => (given.power === undefined ? 1 : expectNumber(given.power, `${path}.power`)),
  });
  return { x, error, power };
};

/**
 * A product of measured values and its error, `y = x1^p1 x2^p2 ...` and
 * `dy / |y| = sqrt((p1 dx1 / x1)^2 + (p2 dx2 / x2)^2 + ...)`: relative errors add as squares. A quotient
 * is a product with a factor of power -1.
 *
 * It holds for errors that are independent of one another and small against their values (a quotient
 * with a divisor known to 10 % is off by about 1 % in the value already). A factor of zero has no
 * relative error and is refused.
 *
 * @throws RatewrightError `range` for a zero factor, a negative error or a root of a negative number;
 * `missing` for an empty list; `not-finite`, `type`
 * Source: JCGM 100:2008 (GUM), 5.1.6, equation 12.
 *
 * @example
 * ```ts
 * import { errorOfProduct } from "ratewright";
 * const p = errorOfProduct([{ value: 3, error: 0.5 }, { value: 30, error: 5 }]);
 * p.value; // => 90
 * Number(p.error.toFixed(2)); // => 21.21
 * ```
 */
export const errorOfProduct = (factors: readonly Factor[]): Measured => {
  const items = expectItems(factors, "factors", 1, "factor");
  const problems = checks();
  const parts = items.map((factor, i) => problems.run(() => partOf(factor, `factors[${i}]`)));
  problems.done();
  let value = 1;
  const relative: number[] = [];
  for (const { x, error, power } of parts.flatMap((part) => part ?? [])) {
    // A divisor is divided by: x ** -1 is rounded once more.
    if (power === -1) value /= x;
    else value *= x ** power;
    relative.push((power * error) / x);
  }
  const share = Math.sqrt(compensatedSum(relative, 0, 2));
  return {
    value: finite(value, "factors", factors),
    error: finite(Math.abs(value) * share, "factors", factors),
  };
};
