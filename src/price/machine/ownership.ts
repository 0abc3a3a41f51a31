import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  fail,
  likeQuantity,
  type Quantity,
  quantity,
  toldBy,
} from "../../quantity/index.js";
import { expectCash, expectShare, type Money, type Share } from "../cash.js";

/**
 * What a machine costs a year to own, interest and loss of value together: the capital recovery
 * `(price - remaining) i / (1 - (1 + i)^-n) + remaining i`, with `i` the interest and `n` the years. Without interest it is
 * `(price - remaining) / n`.
 *
 * @param input.price - what was paid
 * @param input.remaining - what it will sell for at the end; not more than the price
 * @param input.years - whole or part of a year, 0.5 to 50
 * @param input.interest - per year; 0 % where there is none. No default
 * @returns money per year, as an amount
 * @throws RatewrightError `conflict` for a remaining value above the price; `missing`, `range`, `unit/mismatch`, `type`
 * Source: Iowa State University Extension, Ag Decision Maker A3-29 (capital recovery).
 *
 * @example
 * ```ts
 * import { capitalRecovery, money, quantity } from "ratewright";
 * const mower = { price: money(60000, "USD"), remaining: money(12000, "USD"), years: 8 };
 * Number(capitalRecovery({ ...mower, interest: quantity(6, "%") }).value.toFixed(0)); // => 8450
 * capitalRecovery({ ...mower, interest: quantity(0, "%") }).value; // => 6000
 * ```
 */
export const capitalRecovery = <C extends string>(input: {
  readonly price: Money<C>;
  readonly remaining: Money<C>;
  readonly years: number;
  readonly interest: Share;
}): Money<C> => {
  const fields = expectFields(input, ["price", "remaining", "years", "interest"]);
  const { price, remaining, years, interest } = allOf({
    price: () => expectCash(fields.price, "price", { what: "the price" }),
    remaining: () => expectCash(fields.remaining, "remaining", { what: "the value at the end" }),
    years: () => expectNumber(fields.years, "years", { min: 0.5, max: 50 }),
    interest: () => expectShare(fields.interest, "interest", "the interest per year", 100) / 100,
  });
  if (price.currency !== remaining.currency) {
    fail("unit/mismatch", "remaining", fields.remaining, `money in ${price.currency}, as the price is`);
  }
  if (remaining.value > price.value) {
    fail("conflict", "remaining", fields.remaining, `not more than the price, which is ${price.value}`);
  }
  // In this form i / (1 - (1 + i)^-n) keeps its digits, however small the interest is.
  const factor = interest === 0 ? 1 / years : interest / -Math.expm1(-years * Math.log1p(interest));
  const annual = (price.value - remaining.value) * factor + remaining.value * interest;
  return toldBy({ like: "price" }, () => likeQuantity(input.price, annual));
};

/** Gallons of fuel per hour for each horsepower at the power take-off, averaged over a year of work. */
const gallonsPerHorsepower = { diesel: 0.044, gasoline: 0.06 } as const;

/**
 * The fuel that a tractor or a large mower burns on average: `0.044` gal/h for each horsepower at the power take-off with
 * diesel, `0.060` with gasoline.
 *
 * An average over a year of mixed farm work. A mower under full load burns more; your own fuel log is better.
 *
 * @param input.horsepower - maximum power at the power take-off, in horsepower
 * @throws RatewrightError `range`, `not-finite`, `missing`, `type`
 * Source: Iowa State University Extension, Ag Decision Maker A3-29.
 *
 * @example
 * ```ts
 * import { fuelUse } from "ratewright";
 * Number(fuelUse({ horsepower: 180, fuel: "diesel" }).in("gal/h").toFixed(2)); // => 7.92
 * ```
 */
export const fuelUse = (input: {
  readonly horsepower: number;
  readonly fuel: "diesel" | "gasoline";
}): Quantity<"volume/time", "none"> => {
  const fields = expectFields(input, ["horsepower", "fuel"]);
  const { horsepower, fuel } = allOf({
    horsepower: () => expectNumber(fields.horsepower, "horsepower", { above: 0, max: 1000 }),
    fuel: () => expectOneOf(fields.fuel, ["diesel", "gasoline"], "fuel"),
  });
  return quantity(horsepower * gallonsPerHorsepower[fuel], "gal/h");
};
