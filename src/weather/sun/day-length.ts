import { declinationOn, sunsetAt } from "../../calendar/house.js";
import { type CivilDate, civilDate, dayOfYear } from "../../calendar/index.js";
import { allOf, expectFields, expectOneOf, type Quantity, quantity } from "../../quantity/index.js";
import { expectDegrees, north, riseAngle, solarAt } from "./solar.js";

/** `"NOAA"` counts from the upper edge of the sun, with refraction; `"FAO-56"` from its center, without. */
export type DayLengthMethod = "NOAA" | "FAO-56";

/**
 * The length of the day, from sunrise to sunset.
 *
 * - `"NOAA"` (default): `2/15 acos(cos 90.833° / (cos φ cos δ) - tan φ tan δ)` hours, with the declination `δ` of
 *   noon in Greenwich: what {@link sunTimes} counts with, and what an almanac prints.
 * - `"FAO-56"`: `N = 24/π acos(-tan φ tan δ)`, `δ = 0.409 sin(2π J / 365 - 1.39)`, equations 24, 25 and 34: 7 minutes
 *   shorter at the equator, most in October, when its declination is off by more than a degree: 18 minutes shorter at 40°
 *   north, as long at 40° south (reckoned with an astronomy library). Evapotranspiration by that paper asks for it.
 *
 * 0 h where the sun stays down and 24 h where it stays up.
 *
 * @param input.latitude - positive north of the equator
 * @param input.method - `"NOAA"` where left out
 * @throws RatewrightError `missing`, `range`, `date`, `unit/mismatch`, `type`
 * Source: NOAA solar calculator, after J. Meeus, "Astronomical algorithms", as a public implementation repeats it; R. G. Allen et al., FAO Irrigation and
 * Drainage Paper 56, 1998, equations 24, 25 and 34, as a research institute for snow and fire repeats them.
 *
 * @example
 * ```ts
 * import { dayLength, quantity } from "ratewright";
 * const latitude = quantity(-20, "deg");
 * Number(dayLength({ latitude, date: "2026-09-03", method: "FAO-56" }).in("h").toFixed(2)); // => 11.67
 * Number(dayLength({ latitude, date: "2026-09-03" }).in("h").toFixed(2)); // => 11.76
 * ```
 */
export const dayLength = (input: {
  readonly latitude: Quantity<"angle", "none">;
  readonly date: CivilDate;
  readonly method?: DayLengthMethod;
}): Quantity<"time", "none"> => {
  const fields = expectFields(input, ["latitude", "date", "method"]);
  const { latitude, date, method } = allOf({
    latitude: () => expectDegrees(fields.latitude, "latitude", 90, north),
    date: () => civilDate(fields.date as CivilDate, "date"),
    method: () =>
      fields.method === undefined ? "NOAA" : expectOneOf(fields.method, ["NOAA", "FAO-56"], "method"),
  });
  if (method === "NOAA") {
    return quantity((2 * riseAngle(latitude, solarAt(date, 720).declination)) / 15, "h");
  }
  const sunset = sunsetAt((latitude * Math.PI) / 180, declinationOn(dayOfYear(date)));
  return quantity((24 / Math.PI) * sunset, "h");
};
