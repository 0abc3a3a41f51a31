import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";

/** A volume of anything, in liters. */
export const litersOf = (input: unknown, path: string, bound: "positive" | "non-negative"): number =>
  expectQuantity(input, { dimension: "volume", bound }, path).in("L");

/** A count of rinses, three where it is left out. */
export const rinsesOf = (input: unknown, path: string): number => {
  if (input === undefined) return 3;
  const count = expectNumber(input, path, { min: 1, max: 1000 });
  if (!Number.isInteger(count)) outOfRange(path, input, { step: 1, count: "rinses" });
  return count;
};

/**
 * The share of what clings to a container or stays in a tank that is still there after a number of rinses:
 * `residue = (r / (r + v))^n`, where r is what stays each time and v the water of one rinse, both volumes.
 *
 * It holds where each rinse mixes fully with what stays, and as much stays after draining as before. Dried
 * residue rinses off worse.
 *
 * @param input - `heel`, what stays after draining; `rinse`, water of one rinse, zero or more; `rinses`,
 *   a whole number, 3 where left out
 * @throws RatewrightError with every problem: `range`, `unit/mismatch`, `not-finite`, `type`
 *
 * Source: dilution by mass balance, derived; with 4 oz in a 2.5 gal jug a quarter full three times it
 * leaves 0.011 %, a little more than a US standard of 99.99 % removal leaves (0.01 %).
 *
 * @example
 * ```ts
 * import { quantity, rinseResidue } from "ratewright";
 * const left = rinseResidue({
 *   heel: quantity(4, "fl oz", "product"),
 *   rinse: quantity(0.625, "gal", "water"),
 * });
 * Number(left.in("%").toFixed(4)); // => 0.0108
 * ```
 */
export const rinseResidue = <H extends string, W extends string>(input: {
  readonly heel: Quantity<"volume", H>;
  readonly rinse: Quantity<"volume", W>;
  readonly rinses?: number;
}): Quantity<"1", "none"> => {
  expectFields(input, ["heel", "rinse", "rinses"]);
  const { heel, rinse, rinses } = allOf({
    heel: () => litersOf(input.heel, "heel", "positive"),
    rinse: () => litersOf(input.rinse, "rinse", "non-negative"),
    rinses: () => rinsesOf(input.rinses, "rinses"),
  });
  return quantity((1 / (1 + rinse / heel)) ** rinses * 100, "%");
};
