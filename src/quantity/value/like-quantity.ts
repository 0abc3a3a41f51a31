import { converted } from "./converted.js";
import { combined, operand, Quantity } from "./quantity.js";

/**
 * Another number of the same kind: in the unit of a quantity and of its substance.
 *
 * @param value - the number
 * @throws RatewrightError `missing`, `type`, `unit/unknown`, `substance/unknown`, `not-finite`
 *
 * @example
 * ```ts
 * import { likeQuantity, quantity } from "ratewright";
 * likeQuantity(quantity(3, "lb/acre", "N"), 4).toString(); // => "4 lb/acre of N"
 * ```
 */
export const likeQuantity = <D extends string, S extends string>(
  like: Quantity<D, S>,
  value: number,
): Quantity<D, S> => {
  const { unit, of, dimension } = operand(like, "like");
  return new Quantity(value, unit, of as S, dimension as D);
};

/**
 * The number of a quantity in a unit that is known only as the program runs, as out of a select box.
 *
 * @param path - the name of the quantity in problems
 * @throws RatewrightError `missing`, `type`, `unit/unknown`, `unit/mismatch`; `not-finite` where the number is too large
 *
 * @example
 * ```ts
 * import { numberIn, quantity } from "ratewright";
 * const chosen: string = "ft2";
 * numberIn(quantity(1, "acre"), chosen); // => 43560
 * ```
 */
export const numberIn = (q: unknown, unit: string, path = "quantity"): number => {
  const { value, unit: own } = operand(q, path);
  return own === unit ? value : converted(value, own, unit, path);
};

/**
 * The same quantity in a unit that is known only as the program runs.
 *
 * @param path - the name of the quantity in problems
 * @throws RatewrightError `missing`, `type`, `unit/unknown`, `unit/mismatch`; `not-finite` where the number is too large
 *
 * @example
 * ```ts
 * import { inUnit, quantity } from "ratewright";
 * const chosen: string = "ft2";
 * inUnit(quantity(1, "acre"), chosen).toString(); // => "43560 ft2"
 * ```
 */
export const inUnit = <D extends string, S extends string>(
  q: Quantity<D, S>,
  unit: string,
  path = "quantity",
): Quantity<D, S> => {
  const { of, dimension } = operand(q, path);
  return new Quantity(numberIn(q, unit, path), unit, of as S, dimension as D);
};

/**
 * The product of two quantities whose kinds are known only as the program runs; the caller reads what it is
 * from the result.
 *
 * @param b - the other factor
 * @param path - the name of the product's first factor in problems
 * @throws RatewrightError `unit/mismatch` and `substance/mismatch` where there is no such product; `missing`, `type`;
 * `not-finite` where it is too large
 *
 * @example
 * ```ts
 * import { quantity, timesOf } from "ratewright";
 * timesOf(quantity(3, "lb/acre", "N"), quantity(2, "acre")).toString(); // => "6 lb of N"
 * ```
 */
export const timesOf = (a: unknown, b: unknown, path = "factor"): Quantity<string, string> =>
  combined(operand(a, path), operand(b, "factor"), 1, path) as Quantity<string, string>;

/**
 * The quotient of two quantities whose kinds are known only as the program runs.
 *
 * @param b - the divisor
 * @param path - the name of what is divided, in problems
 * @throws RatewrightError `unit/mismatch` and `substance/mismatch` where there is no such quotient; `range` for a
 * divisor of zero; `missing`, `type`; `not-finite` where the quotient is too large
 *
 * @example
 * ```ts
 * import { perOf, quantity } from "ratewright";
 * perOf(quantity(6, "lb", "N"), quantity(2, "acre")).toString(); // => "3 lb/acre of N"
 * ```
 */
export const perOf = (a: unknown, b: unknown, path = "dividend"): Quantity<string, string> =>
  combined(operand(a, path), operand(b, "divisor"), -1, path) as Quantity<string, string>;

/**
 * The same quantity under the dimension and the substance that the caller knows it to have from the types of a call,
 * where the compiler cannot follow the arithmetic. They are believed, as by `quantityOf`.
 *
 * @throws RatewrightError `missing`, `type`, `unit/unknown`, `substance/unknown`, `not-finite`
 *
 * @example
 * ```ts
 * import { ofKind, perOf, quantity } from "ratewright";
 * const rate = ofKind<"mass/area", "N">(perOf(quantity(6, "lb", "N"), quantity(2, "acre")));
 * rate.in("lb/acre"); // => 3
 * ```
 */
export const ofKind = <D extends string, S extends string>(q: unknown): Quantity<NoInfer<D>, NoInfer<S>> => {
  const { value, unit, of, dimension } = operand(q, "quantity");
  return new Quantity(value, unit, of as S, dimension as D);
};
