import { declinationOn, sunsetAt } from "../../calendar/house.js";
import { dateOfInstant, dayOfYear, hoursBetween, type Instant, instant } from "../../calendar/index.js";
import { expectWithin } from "../../numeric/house.js";
import { fail, type Quantity } from "../../quantity/index.js";
import { type Angle, type Irradiance, made, type Read, readRecord, type Time, time } from "../read.js";
import { distanceOn, extraterrestrialBetween, extraterrestrialOf, seasonalCorrection } from "./fao56.js";
import { type SolarDay, solarDayReaders } from "./sun-position.js";
import { latitude, longitude } from "./weather.js";

/**
 * The radiation at the top of the atmosphere on a day, in MJ/m2/d:
 * `Ra = (24 60 / pi) 0.0820 dr (ws sin(phi) sin(d) + cos(phi) cos(d) sin(ws))`; 0 where the sun does not rise.
 *
 * - `latitude` `phi`, negative in the south; `dayOfYear` for `dr`, `d` and `ws`
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 21 and example 8 (20° S, day 246: 32.2 MJ/m2/d).
 *
 * @example
 * ```ts
 * import { extraterrestrialRadiation, quantity } from "ratewright";
 * const day = { latitude: quantity(-20, "deg"), dayOfYear: 246 };
 * extraterrestrialRadiation(day).in("MJ/m2/d").toFixed(1); // => "32.2"
 * ```
 */
export const extraterrestrialRadiation = (input: SolarDay): Irradiance => {
  const q = readRecord(input, solarDayReaders, "a record with latitude and dayOfYear");
  return made(dayRadiation(q.latitude.in("rad"), q.dayOfYear), "MJ/m2/d", "irradiance");
};

/** Extraterrestrial radiation of a day, MJ/m2. */
export const dayRadiation = (phi: number, j: number): number => {
  const d = declinationOn(j);
  // Where the sun just does not rise the two parts cancel but for rounding.
  return Math.max(0, extraterrestrialOf(distanceOn(j), phi, d, sunsetAt(phi, d)));
};

/** Where the sun stands in an hour or a part of one. */
export interface SolarHour {
  readonly latitude: Angle;
  /** Negative in the west. */
  readonly longitude: Angle;
  /** When the period begins, with its offset. */
  readonly start: Instant;
  /** How long it lasts; at most three hours. */
  readonly length: Time;
}

const shortTime = (input: unknown, path: string): Time => {
  const t = time(input, path);
  return expectWithin(t, t.in("h"), path, { max: 3, unit: "h" }, "{}: for a day take the daily form");
};

/** The readers of {@link SolarHour}. */
export const solarHourReaders: {
  readonly latitude: Read<Angle>;
  readonly longitude: Read<Angle>;
  readonly start: Read<Instant>;
  readonly length: Read<Time>;
} = {
  latitude,
  longitude,
  start: (input: unknown, path: string): Instant =>
    input === undefined
      ? fail("missing", path, input, "the moment with its offset")
      : instant(input as Instant, path),
  length: shortTime,
};

/** The hour angles of the middle, of sunset, and the radiation of a period, MJ/m2. */
export const hourRadiation = (
  phi: number,
  longitudeDeg: number,
  start: Instant,
  hours: number,
): { readonly j: number; readonly middle: number; readonly sunset: number; readonly ra: number } => {
  const j = dayOfYear(dateOfInstant(start));
  const d = declinationOn(j);
  // Solar time from UTC: four minutes a degree, and the equation of time. The offset of the clock drops out.
  const utc = hoursBetween("1970-01-01T00:00Z", start) + hours / 2;
  const solar = utc + longitudeDeg / 15 + seasonalCorrection(j);
  const clock = solar - 24 * Math.floor(solar / 24);
  const middle = ((clock - 12) * Math.PI) / 12;
  const sunset = sunsetAt(phi, d);
  const half = (Math.PI * hours) / 24;
  let ra = 0;
  // The period, and the same a day on and before, where it reaches over midnight.
  for (const turn of [-2 * Math.PI, 0, 2 * Math.PI]) {
    const from = Math.max(middle - half + turn, -sunset);
    const to = Math.min(middle + half + turn, sunset);
    if (to > from) {
      ra += extraterrestrialBetween({ distance: distanceOn(j), latitude: phi, declination: d, from, to });
    }
  }
  return { j, middle, sunset, ra: Math.max(0, ra) };
};

/**
 * The radiation at the top of the atmosphere in an hour or a part of one, in MJ/m2 of the period:
 * `Ra = (12 60 / pi) 0.0820 dr ((w2 - w1) sin(phi) sin(d) + cos(phi) cos(d) (sin(w2) - sin(w1)))`, from the hour angle
 * `w1` to `w2`; only the part between sunrise and sunset counts, so that the hours of a day add up to the day.
 *
 * - `latitude` `phi`, `longitude` negative in the west
 * - `start` the moment at which the period begins, with its offset, and `length` up to 3 h. The offset of the clock says
 *   where the zone lies, also in summer time: no meridian is asked for
 *
 * @throws RatewrightError `date`, `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equations 28 to 33 and example 19 (16°13' N, 16°15' W, 1 October, 14 to
 * 15 h: 3.543 MJ/m2); cut at sunrise and sunset as the ASCE standardized equation does (its equation 56, as a public program has it).
 *
 * @example
 * ```ts
 * import { hourlyExtraterrestrialRadiation, quantity } from "ratewright";
 * const hour = {
 *   latitude: quantity(16.21667, "deg"), longitude: quantity(-16.25, "deg"),
 *   start: "1998-10-01T14:00-01:00", length: quantity(1, "h"),
 * } as const;
 * hourlyExtraterrestrialRadiation(hour).in("MJ/m2").toFixed(3); // => "3.543"
 * ```
 */
export const hourlyExtraterrestrialRadiation = (input: SolarHour): Quantity<"radiant exposure", "none"> => {
  const q = readRecord(input, solarHourReaders, "a record with latitude, longitude, start and length");
  const { ra } = hourRadiation(q.latitude.in("rad"), q.longitude.in("deg"), q.start, q.length.in("h"));
  return made(ra, "MJ/m2", "radiant exposure");
};
