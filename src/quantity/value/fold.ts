import { described, fail } from "../errors/errors.js";
import { expectQuantity } from "./expect-quantity.js";
import { operand, type Quantity } from "./quantity.js";

/** The items as quantities, all of the first one's kind. */
const listOf = <D extends string, S extends string>(
  items: readonly Quantity<D, S>[],
): readonly [Quantity<D, S>, ...Quantity<D, S>[]] => {
  if (!Array.isArray(items)) return fail("type", "items", items, "a list of quantities");
  if (items.length === 0)
    return fail("missing", "items", described("an empty list"), "at least one quantity");
  // Of the kind that the caller's list has by its type; all others are held against it.
  const first = operand(items[0], "items[0]") as unknown as Quantity<D, S>;
  const rest = Array.from(items).slice(1);
  return [first, ...rest.map((item, at) => expectQuantity(item, first, `items[${at + 1}]`))];
};

/**
 * The sum of a list, in the unit of its first item; the list must not be empty, for an empty sum has
 * no unit.
 *
 * @throws RatewrightError `missing` for an empty list, `type` for anything but a quantity and for temperatures,
 *   `unit/mismatch`, `substance/mismatch`, each with the place: `items[2]`
 *
 * @example
 * ```ts
 * import { quantity, sum } from "ratewright";
 * sum([quantity(1, "acre"), quantity(21780, "ft2")]).in("acre"); // => 1.5
 * ```
 */
export const sum = <D extends string, S extends string>(items: readonly Quantity<D, S>[]): Quantity<D, S> => {
  const [first, ...rest] = listOf(items);
  if (first.dimension === "temperature") fail("type", "items", first, "what adds up; temperatures do not");
  // The type of an addend asks whether D is a temperature, which the compiler cannot know yet; it was ruled out above.
  return rest.reduce((total, item) => total.plus(item as never), first);
};

const extreme = <D extends string, S extends string>(
  items: readonly Quantity<D, S>[],
  sign: 1 | -1,
): Quantity<D, S> => {
  const [first, ...rest] = listOf(items);
  return rest.reduce((best, item) => (item.compare(best) === sign ? item : best), first);
};

/**
 * The smallest of a list, as it was given.
 *
 * @throws RatewrightError `missing` for an empty list, `type`, `unit/mismatch`, `substance/mismatch`, each with
 *   the place: `items[2]`
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
 * @throws RatewrightError `missing` for an empty list, `type`, `unit/mismatch`, `substance/mismatch`, each with
 *   the place: `items[2]`
 *
 * @example
 * ```ts
 * import { max, quantity } from "ratewright";
 * max([quantity(20, "fl oz"), quantity(1, "pt")]).toJSON(); // => { value: 20, unit: "fl oz", of: "none" }
 * ```
 */
export const max = <D extends string, S extends string>(items: readonly Quantity<D, S>[]): Quantity<D, S> =>
  extreme(items, 1);
