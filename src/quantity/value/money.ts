import { fail } from "../errors/errors.js";
import { Quantity } from "./quantity.js";

type Letter =
  | "A"
  | "B"
  | "C"
  | "D"
  | "E"
  | "F"
  | "G"
  | "H"
  | "I"
  | "J"
  | "K"
  | "L"
  | "M"
  | "N"
  | "O"
  | "P"
  | "Q"
  | "R"
  | "S"
  | "T"
  | "U"
  | "V"
  | "W"
  | "X"
  | "Y"
  | "Z";

/** The text itself where it has the form of an ISO 4217 code, and a sentence where it has not. */
export type CheckedCurrency<C extends string> = string extends C
  ? "a plain string is no currency: give a literal such as USD"
  : C extends `${Letter}${Letter}${infer Last}`
    ? Last extends Letter
      ? C
      : `"${C}" is not a currency code of three capitals`
    : `"${C}" is not a currency code of three capitals`;

/**
 * An amount of money. The currency is part of the dimension: two currencies never add, and there are no
 * exchange rates here.
 *
 * @param currency - an ISO 4217 code of three capitals
 * @throws RatewrightError `not-finite`, `unit/unknown`
 *
 * @example
 * ```ts
 * import { money, quantity } from "ratewright";
 * money(28.5, "USD").per(quantity(50, "lb")).value; // => 0.57
 * ```
 */
export const money = <const C extends string>(
  amount: number,
  currency: CheckedCurrency<C>,
): Quantity<`money:${C}`, "none"> => {
  if (!Number.isFinite(amount)) {
    fail("not-finite", "amount", amount, "a finite number");
  }
  if (typeof currency !== "string" || !/^[A-Z]{3}$/.test(currency)) {
    fail("unit/unknown", "currency", currency, "a currency code of three capitals, such as USD");
  }
  // A currency that is checked is of its own type, or a sentence that says what is wrong with it; it was read above.
  const unit = `money:${currency as unknown as C}` as const;
  return new Quantity(amount, unit, "none", unit);
};
