import { anyLength, isMetric, type Length, made, type Pressure, pressure, readRecord } from "../read.js";

/** Pressure of a column of water a meter high, kPa: 1000 kg/m3 by standard gravity, 9.80665 m/s2. */
export const kPaPerMeter = 9.80665;

/**
 * The pressure of a height of water, `p = rho g h`; in kPa for a height in metric units, else in psi: 0.4335 psi to the foot,
 * 2.307 ft to the psi. Below zero for a height below zero: a head downhill gains pressure, one uphill loses it.
 *
 * - `height` `h` by which the head lies below the supply; negative where it lies above
 *
 * @throws RatewrightError `missing`, `unit/mismatch`, `type`, `not-finite`
 *
 * Source: standard gravity 9.80665 m/s2 (3rd CGPM, 1901) and water of 1000 kg/m3.
 *
 * @example
 * ```ts
 * import { pressureOfHeight, quantity } from "ratewright";
 * pressureOfHeight({ height: quantity(10, "ft") }).in("psi").toFixed(2); // => "4.34"
 * pressureOfHeight({ height: quantity(-10, "m") }).in("kPa").toFixed(1); // => "-98.1"
 * ```
 */
export const pressureOfHeight = (input: { readonly height: Length }): Pressure => {
  const q = readRecord(input, { height: anyLength }, "a record with height");
  const own = made(q.height.in("m") * kPaPerMeter, "kPa", "pressure");
  return isMetric(q.height.unit) ? own : made(own.in("psi"), "psi", "pressure");
};

/**
 * The height of water that stands for a pressure, `h = p / (rho g)`: its pressure head. In m for kPa and bar, else in ft:
 * 2.307 ft to the psi. The inverse of {@link pressureOfHeight}.
 *
 * - `pressure` `p`, more than zero
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`, `not-finite`
 *
 * Source: standard gravity 9.80665 m/s2 (3rd CGPM, 1901) and water of 1000 kg/m3.
 *
 * @example
 * ```ts
 * import { pressureHead, quantity } from "ratewright";
 * pressureHead({ pressure: quantity(45, "psi") }).in("ft").toFixed(1); // => "103.8"
 * pressureHead({ pressure: quantity(300, "kPa") }).in("m").toFixed(1); // => "30.6"
 * ```
 */
export const pressureHead = (input: { readonly pressure: Pressure }): Length => {
  const q = readRecord(input, { pressure }, "a record with pressure");
  const own = made(q.pressure.in("kPa") / kPaPerMeter, "m", "length");
  return isMetric(q.pressure.unit) ? own : made(own.in("ft"), "ft", "length");
};
