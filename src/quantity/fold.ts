import { fail } from "./errors.js";
import type { Quantity } from "./quantity.js";

const listOf = <Q>(items: readonly Q[]): readonly Q[] =>
  Array.isArray(items) ? items : fail("type", "items", items, "a list of quantities");

/**
 * The sum of a list, in the unit of its first item; the list must not be empty, for an empty sum has
 * no unit.
 *
 * @throws RatewrightError `missing` for an empty list, `unit/mismatch`, `substance/mismatch`
 *
 * @example
 * ```ts
 * import { quantity, sum } from "ratewright";
 * sum([quantity(1, "acre"), quantity(21780, "ft2")]).in("acre"); // => 1.5
 * ```
 */
export const sum = <D extends string, S extends string>(items: readonly Quantity<D, S>[]): Quantity<D, S> => {
  const [first, ...rest] = listOf(items);
  if (first === undefined) return fail("missing", "items", "an empty list", "at least one quantity");
  return rest.reduce((total, item) => total.plus(item as never), first);
};

const extreme = <D extends string, S extends string>(
  items: readonly Quantity<D, S>[],
  sign: 1 | -1,
): Quantity<D, S> => {
  const [first, ...rest] = listOf(items);
  if (first === undefined) return fail("missing", "items", "an empty list", "at least one quantity");
  return rest.reduce((best, item) => (item.compare(best) === sign ? item : best), first);
};

/**
 * The smallest of a list, as it was given.
 *
 * @throws RatewrightError `missing` for an empty list, `unit/mismatch`, `substance/mismatch`
 *
 * @example
 * ```ts
 * import { min, quantity } from "ratewright";
 * min([quantity(20, "fl oz"), quantity(1, "pt")]).toJSON(); // => { value: 1, unit: "pt", of: "none" }
 * ```
 */
export const min = <D extends string, S extends string>(items: readonly Quantity<D, S>[]): Quantity<D, S> =>
  extreme(items, -1);

/**
 * The largest of a list, as it was given.
 *
 * @throws RatewrightError `missing` for an empty list, `unit/mismatch`, `substance/mismatch`
 *
 * @example
 * ```ts
 * import { max, quantity } from "ratewright";
 * max([quantity(20, "fl oz"), quantity(1, "pt")]).toJSON(); // => { value: 20, unit: "fl oz", of: "none" }
 * ```
 */
export const max = <D extends string, S extends string>(items: readonly Quantity<D, S>[]): Quantity<D, S> =>
  extreme(items, 1);
