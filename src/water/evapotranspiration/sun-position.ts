import { declinationOn, sunsetAt } from "../../calendar/house.js";
import { type Angle, made, type Read, readRecord } from "../read.js";
import { distanceOn } from "./fao56.js";
import { dayNumber, latitude } from "./weather.js";

/**
 * The inverse of the distance from the Earth to the Sun, by its mean: `dr = 1 + 0.033 cos(2 pi J / 365)`.
 *
 * - `dayOfYear` `J`, 1 to 366
 *
 * @throws RatewrightError `range`, `missing`, `not-finite`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 23 and example 8 (day 246: 0.985).
 *
 * @example
 * ```ts
 * import { inverseSunDistance } from "ratewright";
 * inverseSunDistance({ dayOfYear: 246 }).toFixed(3); // => "0.985"
 * ```
 */
export const inverseSunDistance = (input: { readonly dayOfYear: number }): number =>
  distanceOn(readRecord(input, { dayOfYear: dayNumber }, "a record with dayOfYear").dayOfYear);

/**
 * The solar declination, `d = 0.409 sin(2 pi J / 365 - 1.39)`, in radians.
 *
 * - `dayOfYear` `J`, 1 to 366
 *
 * @throws RatewrightError `range`, `missing`, `not-finite`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 24 and example 8 (day 246: 0.120).
 *
 * @example
 * ```ts
 * import { solarDeclination } from "ratewright";
 * solarDeclination({ dayOfYear: 246 }).in("rad").toFixed(3); // => "0.120"
 * ```
 */
export const solarDeclination = (input: { readonly dayOfYear: number }): Angle => {
  const q = readRecord(input, { dayOfYear: dayNumber }, "a record with dayOfYear");
  return made(declinationOn(q.dayOfYear), "rad", "angle");
};

/** The readers of {@link SolarDay}. */
export const solarDayReaders: { readonly latitude: Read<Angle>; readonly dayOfYear: Read<number> } = {
  latitude,
  dayOfYear: dayNumber,
};

/** A latitude, negative in the south, and a day of the year. */
export interface SolarDay {
  readonly latitude: Angle;
  readonly dayOfYear: number;
}

/**
 * The hour angle of sunset, `ws = arccos(-tan(phi) tan(d))`, in radians; pi where the sun does not set and 0 where it does
 * not rise. The hours of daylight, `24 ws / pi`, are `dayLength` with the method `"FAO-56"`.
 *
 * - `latitude` `phi`, negative in the south; `dayOfYear` for the declination `d`
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 25 and example 8 (20° S, day 246: 1.527).
 *
 * @example
 * ```ts
 * import { quantity, sunsetHourAngle } from "ratewright";
 * sunsetHourAngle({ latitude: quantity(-20, "deg"), dayOfYear: 246 }).in("rad").toFixed(3); // => "1.527"
 * ```
 */
export const sunsetHourAngle = (input: SolarDay): Angle => {
  const q = readRecord(input, solarDayReaders, "a record with latitude and dayOfYear");
  return made(sunsetAt(q.latitude.in("rad"), declinationOn(q.dayOfYear)), "rad", "angle");
};
