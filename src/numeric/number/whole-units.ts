import { expectNumber, outOfRange } from "../../quantity/index.js";

/** How near, as a share of it, a quotient must come to a whole number to be taken as that number. */
const guard = 1e-12;

const quotient = (
  amount: number,
  size: number,
  path: string,
): { value: number; near: number | undefined } => {
  const value = amount / size;
  if (!(value <= Number.MAX_SAFE_INTEGER))
    outOfRange(path, amount, { max: Number.MAX_SAFE_INTEGER * size }, "an amount of {}");
  const near = Math.round(value);
  return { value, near: Math.abs(value - near) <= guard * near ? near : undefined };
};

/**
 * How many whole units of a size are needed to have at least an amount: packages to buy, loads to fill.
 * At least 1 for any need above zero. A quotient that misses a whole number by less than 1e-12 of it
 * is that number, so that rounding noise never buys a package.
 *
 * @param need - zero or more, in the same unit as `size`
 * @param size - more than zero
 * @throws RatewrightError `range`, `not-finite`
 *
 * Source: counting; the guard is of this library.
 *
 * @example
 * ```ts
 * import { wholeUnitsFor } from "ratewright";
 * wholeUnitsFor(46.5, 50); // => 1
 * wholeUnitsFor(3 * 1.1, 1.1); // => 3
 * wholeUnitsFor(100.1, 50); // => 3
 * ```
 */
export const wholeUnitsFor = (need: number, size: number): number => {
  const amount = expectNumber(need, "need", { min: 0 });
  const each = expectNumber(size, "size", { above: 0 });
  if (amount === 0) return 0;
  const { value, near } = quotient(amount, each, "need");
  return Math.max(1, near ?? Math.ceil(value));
};

/**
 * How many whole units of a size an amount holds: applications that remain, tanks that can be filled.
 * A quotient that misses a whole number by less than 1e-12 of it is that number.
 *
 * @param amount - zero or more, in the same unit as `size`
 * @param size - more than zero
 * @throws RatewrightError `range`, `not-finite`
 *
 * Source: counting; the guard is of this library.
 *
 * @example
 * ```ts
 * import { wholeUnitsWithin } from "ratewright";
 * wholeUnitsWithin(0.6, 0.2); // => 3
 * wholeUnitsWithin(560, 175); // => 3
 * ```
 */
export const wholeUnitsWithin = (amount: number, size: number): number => {
  const have = expectNumber(amount, "amount", { min: 0 });
  const each = expectNumber(size, "size", { above: 0 });
  const { value, near } = quotient(have, each, "amount");
  return near ?? Math.floor(value);
};
