import {
  allOf,
  expectFields,
  fail,
  ofKind,
  perOf,
  type Quantity,
  quantityOf,
  timesOf,
} from "../../quantity/index.js";
import { applicationVolumeOf, type SprayPerArea } from "../inputs.js";
import type { ProductOf } from "./amount-for.js";
import { expectRate, type ReadRate } from "./rate.js";

/**
 * The rate per area that a rate per volume of spray implies, where the spray goes on at a measured
 * rate: `rate per area = rate per volume * spray per area`. What a spot treatment with a hand sprayer
 * amounts to, to hold against a limit per area.
 *
 * @param input - `rate` per volume of spray, zero or more; `applicationVolume`, volume of spray per area that
 *   the applicator puts on the spots; `density` of the spray, where a calibration with water stands for that volume
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
 *   applicationVolume: quantity(10, "gal/acre", "spray"),
 * }).in("qt/acre"); // => 1
 * ```
 */
export const impliedAreaRate = <const S extends string, D extends "mass" | "volume">(input: {
  readonly rate: Quantity<`${D}/volume`, S>;
  readonly applicationVolume: SprayPerArea;
  readonly density?: Quantity<"mass/volume", "none">;
}): Quantity<`${D}/area`, ProductOf<S>> => {
  const given = expectFields(input, ["rate", "applicationVolume", "density"]);
  const { read, spray } = allOf({
    read: () => perVolumeOf(given.rate),
    spray: () => applicationVolumeOf(given.applicationVolume, given.density),
  });
  const implied = timesOf(read.rate, spray.value);
  // The kind follows from that of `rate`, which the compiler reads from the call.
  return quantityOf<`${D}/area`, ProductOf<S>>(implied.value, implied.unit, read.product, "rate");
};

const perVolumeOf = (input: unknown): ReadRate => {
  const read = expectRate(input, "rate");
  return read.basis === "area"
    ? fail(
        "unit/mismatch",
        "rate",
        read.rate,
        "a rate per volume of spray; strengthForAreaRate takes one per area",
      )
    : read;
};

/** The product in the spray, for a rate of the product per area: `product:a/spray` of `product:a`. */
export type InSpray<S extends string> = S extends `${string}/spray` ? S : `${S}/spray`;

/**
 * The strength of the spray that puts on a rate per area, where the spray goes on at a measured volume per area:
 * `rate per volume = rate per area / spray per area`, the way back from {@link impliedAreaRate}. What to mix into a
 * hand sprayer for a rate per acre or per 1000 ft2.
 *
 * @param input - `rate` per area, zero or more; `applicationVolume`, volume of spray per area, more than zero, or a
 *   calibration, also with water; `density` of the spray for that
 * @throws RatewrightError with every problem: `unit/mismatch`, `substance/mismatch`, `range` (also for more than all of
 *   the spray), `type`
 *
 * Source: as {@link impliedAreaRate}.
 *
 * @example
 * ```ts
 * import { quantity, strengthForAreaRate } from "ratewright";
 * strengthForAreaRate({
 *   rate: quantity(1, "qt/acre", "product:oil"),
 *   applicationVolume: quantity(10, "gal/acre", "spray"),
 * }).in("% v/v"); // => 2.5
 * ```
 */
export const strengthForAreaRate = <const S extends string, D extends "mass" | "volume">(input: {
  readonly rate: Quantity<`${D}/area`, S>;
  readonly applicationVolume: SprayPerArea;
  readonly density?: Quantity<"mass/volume", "none">;
}): Quantity<`${D}/volume`, InSpray<S>> => {
  const given = expectFields(input, ["rate", "applicationVolume", "density"]);
  const { read, spray } = allOf({
    read: () => perAreaOf(given.rate),
    spray: () => applicationVolumeOf(given.applicationVolume, given.density),
  });
  const strength = perOf(read.rate, spray.value);
  const of = `${read.product}/spray`;
  // Read again: more than all of the spray cannot be.
  const { rate } = expectRate({ value: strength.value, unit: strength.unit, of }, "rate");
  return ofKind<`${D}/volume`, InSpray<S>>(rate);
};

const perAreaOf = (input: unknown): ReadRate => {
  const read = expectRate(input, "rate");
  return read.basis === "area"
    ? read
    : fail(
        "unit/mismatch",
        "rate",
        read.rate,
        "a rate per area; impliedAreaRate takes one per volume of spray",
      );
};
