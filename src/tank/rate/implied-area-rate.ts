import { allOf, expectRecord, fail, type Quantity, quantityOf } from "../../quantity/index.js";
import { sprayRateOf } from "../inputs.js";
import type { ProductOf } from "./amount-for.js";
import { expectRate, type ReadRate } from "./rate.js";

/**
 * The rate per area that a rate per volume of spray implies, where the spray goes on at a measured
 * rate: `rate per area = rate per volume * spray per area`. What a spot treatment with a hand sprayer
 * amounts to, to hold against a limit per area.
 *
 * @param input - `rate` per volume of spray, zero or more; `sprayRate`, volume of spray per area that
 *   the applicator puts on the spots
 * @throws RatewrightError with every problem: `unit/mismatch`, `substance/mismatch`, `range`, `type`
 *
 * Source: 1 qt/acre in 10 gal/acre of spray is 2.5 gal/100 gal, University of Florida and University of
 * Georgia in The Peanut Grower; the same equation read the other way.
 *
 * @example
 * ```ts
 * import { impliedAreaRate, quantity } from "ratewright";
 * impliedAreaRate({
 *   rate: quantity(2.5, "% v/v", "product:oil/spray"),
 *   sprayRate: quantity(10, "gal/acre", "spray"),
 * }).in("qt/acre"); // => 1
 * ```
 */
export const impliedAreaRate = <const S extends string, D extends "mass" | "volume">(input: {
  readonly rate: Quantity<`${D}/volume`, S>;
  readonly sprayRate: Quantity<"volume/area", "spray">;
}): Quantity<`${D}/area`, ProductOf<S>> => {
  expectRecord(input, "input");
  const { read, spray } = allOf({
    read: () => perVolumeOf(input.rate),
    spray: () => sprayRateOf(input.sprayRate),
  });
  const { rate, product } = read;
  const implied = (rate as unknown as Quantity<"volume/volume", "product/spray">).times(
    quantityOf(spray.value, spray.unit, "none", "sprayRate") as Quantity<"volume/area", "none">,
  );
  return quantityOf(implied.value, implied.unit, product, "rate") as never;
};

const perVolumeOf = (input: unknown): ReadRate => {
  const read = expectRate(input, "rate");
  return read.basis === "area"
    ? fail("unit/mismatch", "rate", read.rate, "a rate per volume of spray")
    : read;
};
