import { fail } from "../../quantity/index.js";
import {
  type Length,
  length,
  made,
  type Pressure,
  pressure,
  type Rate,
  type Read,
  readRecord,
} from "../read.js";
import { pressureAt, psychrometric, windDown } from "./fao56.js";
import { elevation, speed } from "./weather.js";

/**
 * The pressure of the air by elevation, `P = 101.3 ((293 - 0.0065 z) / 293)^5.26`, in kPa.
 *
 * - `z` elevation above the sea, -500 to 9000 m
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 7 and example 2 (1800 m: 81.8 kPa).
 *
 * @example
 * ```ts
 * import { atmosphericPressure, quantity } from "ratewright";
 * atmosphericPressure({ elevation: quantity(1800, "m") }).in("kPa").toFixed(1); // => "81.8"
 * ```
 */
export const atmosphericPressure = (input: { readonly elevation: Length }): Pressure => {
  const q = readRecord(input, { elevation }, "a record with elevation");
  return made(pressureAt(q.elevation.in("m")), "kPa", "pressure");
};

/**
 * The psychrometric constant, `gamma = 0.000665 P`, a number in kPa/°C: there is no unit of it here.
 *
 * - `P` pressure of the air, see {@link atmosphericPressure}
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 8 and example 2 (81.8 kPa: 0.054).
 *
 * @example
 * ```ts
 * import { psychrometricConstantKPaPerC, quantity } from "ratewright";
 * psychrometricConstantKPaPerC({ pressure: quantity(81.8, "kPa") }).toFixed(3); // => "0.054"
 * ```
 */
export const psychrometricConstantKPaPerC = (input: { readonly pressure: Pressure }): number =>
  psychrometric(readRecord(input, { pressure }, "a record with pressure").pressure.in("kPa"));

/** Wind as it was measured: its speed, and how high above the ground. */
export interface Wind {
  readonly speed: Rate;
  readonly height: Length;
}

/** The height of an anemometer. Below half a meter the profile of the formula ends. */
const height: Read<Length> = (input, path) => {
  const z = length(input, path);
  const meters = z.in("m");
  return meters >= 0.5 && meters <= 100
    ? z
    : fail("range", path, z, "a height of 0.5 to 100 m above the ground");
};

/** Takes wind with its height as the wind at 2 m, in m/s. */
export const readWind: Read<number> = (input, path) => {
  if (input === undefined) fail("missing", path, input, "a record with speed and height");
  const wind = readRecord(input, { speed, height }, "a record with speed and height", path);
  const [u, z] = [wind.speed.in("m/s"), wind.height.in("m")];
  // The formula gives 0.9997 at 2 m: what is measured there needs none.
  return z === 2 ? u : windDown(u, z);
};

/**
 * The wind 2 m above short grass from the wind at another height, `u2 = uz 4.87 / ln(67.8 z - 5.42)`.
 *
 * - `uz` the speed, zero or more, at the `height` `z` of 0.5 to 100 m; at 2 m it is taken as it is
 * - in m/s
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 47 and example 14 (3.2 m/s at 10 m: 2.4 m/s).
 *
 * @example
 * ```ts
 * import { quantity, windAtTwoMeters } from "ratewright";
 * const mast = { speed: quantity(3.2, "m/s"), height: quantity(10, "m") };
 * windAtTwoMeters(mast).in("m/s").toFixed(1); // => "2.4"
 * ```
 */
export const windAtTwoMeters = (input: Wind): Rate => {
  const q = readRecord(input, { speed, height }, "a record with speed and height");
  return made(readWind(q, "wind"), "m/s", "length/time");
};
