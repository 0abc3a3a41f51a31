import { dimensionDue } from "../../quantity/house.js";
import { allOf, expectAmount, fail, type Quantity, quantityOf } from "../../quantity/index.js";
import { sprayOf } from "../inputs.js";

/**
 * The rate per volume of finished spray of a recipe such as 2 pt per 100 gal:
 * `rate = amount / volume`.
 *
 * @param amount - mass or volume of product, zero or more
 * @param volume - the volume of spray that the amount is printed for, more than zero
 * @throws RatewrightError with every problem: `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`,
 *   `type`
 *
 * Source: definition; `1 qt/100 gal = 0.25 % v/v` in Texas A&M AgriLife L-1839 (surfactant note).
 *
 * @example
 * ```ts
 * import { perVolume, quantity } from "ratewright";
 * const rate = perVolume(quantity(1, "qt", "product:wetter"), quantity(100, "gal", "spray"));
 * rate.in("% v/v"); // => 0.25
 * ```
 */
export const perVolume = <S extends string, D extends "mass" | "volume">(
  amount: Quantity<D, S>,
  volume: Quantity<"volume", "spray">,
): Quantity<`${D}/volume`, `${S}/spray`> => {
  const { top, bottom } = allOf({
    top: () => productAmount(amount),
    bottom: () => sprayOf(volume, "volume"),
  });
  return quantityOf<`${D}/volume`, `${S}/spray`>(
    top.value / bottom.value,
    `${top.unit}/${bottom.unit}`,
    `${top.of}/spray`,
    "amount",
  );
};

const productAmount = (input: unknown): Quantity<"mass" | "volume", string> => {
  const { dimension } = Object(input) as { readonly dimension?: unknown };
  if (dimension === "mass/area" || dimension === "volume/area") {
    const way = "a rate by area goes by area: rate.per(applicationVolume), and impliedAreaRate goes back";
    dimensionDue("unit/mismatch", "amount", input, ["mass", "volume"], `; ${way}`);
  }
  const amount = expectAmount(input, { dimensions: ["mass", "volume"], bound: "non-negative" }, "amount");
  return /^product(:[^/]+)?$/.test(amount.of)
    ? amount
    : fail("substance/mismatch", "amount", amount, "an amount of product");
};
