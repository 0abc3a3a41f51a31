import {
  addHours,
  type CivilDate,
  civilDate,
  hoursBetween,
  type Instant,
  instant,
} from "../../calendar/index.js";
import { allOf, expectFields, fail, type Quantity, quantity } from "../../quantity/index.js";
import { east, expectDegrees, north, riseAngle, solarAt } from "./solar.js";

/** When the sun rises and sets on a date at a place. A spray window takes it as one of its sun times. */
export type SunDay = {
  readonly type: "sun-day";
  readonly version: 1;
  /** When it stands highest. */
  readonly noon: Instant;
  readonly dayLength: Quantity<"time", "none">;
} & (
  | { readonly state: "rises and sets"; readonly sunrise: Instant; readonly sunset: Instant }
  | { readonly state: "up all day" | "down all day"; readonly sunrise: null; readonly sunset: null }
);

const minutesPerDay = 1440;
/** How far clock and sun may disagree before longitude and offset cannot belong together, in hours. */
const mostApart = 4.5;

const offsetHours = (input: unknown): number => {
  const expected = "the offset of the clock from UTC, such as -05:00 or Z";
  if (typeof input !== "string" || !/^(Z|[+-]\d\d:\d\d)$/.test(input)) {
    return fail("type", "offset", input, expected);
  }
  return hoursBetween(instant(`2000-01-01T00:00${input}`, "offset"), "2000-01-01T00:00Z");
};

/** Minutes after 00:00 UTC of the date at which the sun stands highest, rises (sign 1) or sets (sign -1). */
const eventAt = (
  date: CivilDate,
  latitude: number,
  longitude: number,
  sign: 0 | 1 | -1,
  shift: number,
): number => {
  let minutes = 720 - 4 * longitude;
  // The sun moves on while it rises: two rounds bring the declination to the minute of the event.
  for (let round = 0; round < 3; round++) {
    const { eqtime, declination } = solarAt(date, minutes + shift);
    const angle = sign * riseAngle(latitude, declination);
    minutes = 720 - 4 * (longitude + angle) - eqtime;
  }
  return minutes + shift;
};

/**
 * Sunrise, solar noon and sunset of a date at a place, to the minute, by the equations of the NOAA solar calculator:
 * equation of time and declination from the mean longitude and anomaly of the sun, taken at the hour of each event; the
 * upper edge of the sun on the horizon of a plain, at 90.833° from the zenith.
 *
 * `sunrise = 720 - 4 (longitude + H) - E` minutes after 00:00 UTC, `cos H = cos 90.833° / (cos φ cos δ) - tan φ tan δ`
 *
 * Hills, and air that is colder or denser than usual, move what is seen by minutes; near the polar circles the sun
 * grazes the horizon and they move it by more.
 *
 * @param input.latitude - positive north of the equator
 * @param input.longitude - positive east of Greenwich; in America it is negative
 * @param input.offset - of the clock from UTC on that date, summer time included: `"-05:00"`
 * @returns `sunrise` and `sunset` are `null` where the sun stays up or down all day
 * @throws RatewrightError `conflict` where sun and clock lie more than 4.5 hours apart, as of a longitude with the wrong
 * sign; `missing`, `range`, `date`, `unit/mismatch`, `type`
 * Source: NOAA Global Monitoring Division, "General solar position calculations" (hour angle and times); NOAA solar
 * calculator, after J. Meeus, "Astronomical algorithms", as a public implementation repeats it (position of the sun).
 *
 * @example
 * ```ts
 * import { quantity, sunTimes } from "ratewright";
 * const park = { latitude: quantity(40, "deg"), longitude: quantity(-75, "deg") };
 * const day = sunTimes({ ...park, date: "2026-06-21", offset: "-04:00" });
 * day.sunrise; // => "2026-06-21T05:31-04:00"
 * day.sunset; // => "2026-06-21T20:32-04:00"
 * sunTimes({ ...park, longitude: quantity(75, "deg"), date: "2026-06-21", offset: "-04:00" }); // => throws conflict
 * ```
 */
export const sunTimes = (input: {
  readonly latitude: Quantity<"angle", "none">;
  readonly longitude: Quantity<"angle", "none">;
  readonly date: CivilDate;
  readonly offset: string;
}): SunDay => {
  const fields = expectFields(input, ["latitude", "longitude", "date", "offset"]);
  const { latitude, longitude, date, ahead } = allOf({
    latitude: () => expectDegrees(fields.latitude, "latitude", 90, north),
    longitude: () => expectDegrees(fields.longitude, "longitude", 180, east),
    date: () => civilDate(fields.date as CivilDate, "date"),
    ahead: () => offsetHours(fields.offset),
  });
  // The noon of this date by the clock may lie on the day before or after by UTC.
  const roughly = 720 - 4 * longitude + 60 * ahead;
  const shift = -minutesPerDay * Math.round((roughly - 720) / minutesPerDay);
  if (Math.abs(roughly + shift - 720) > 60 * mostApart) {
    const got = `${longitude} deg and an offset of ${String(fields.offset)}`;
    return fail(
      "conflict",
      "longitude",
      got,
      `a longitude (${east}) and an offset of the same part of the world`,
    );
  }
  const start = instant(`${date}T00:00${String(fields.offset)}`, "date");
  const clock = (minutesUtc: number): Instant => addHours(start, Math.round(minutesUtc + 60 * ahead) / 60);
  const noonUtc = eventAt(date, latitude, longitude, 0, shift);
  const noon = clock(noonUtc);
  const angle = riseAngle(latitude, solarAt(date, noonUtc).declination);
  if (angle === 0 || angle === 180) {
    const state = angle === 0 ? "down all day" : "up all day";
    const hours = quantity(angle === 0 ? 0 : 24, "h");
    return { type: "sun-day", version: 1, noon, dayLength: hours, state, sunrise: null, sunset: null };
  }
  const rise = eventAt(date, latitude, longitude, 1, shift);
  const set = eventAt(date, latitude, longitude, -1, shift);
  return {
    type: "sun-day",
    version: 1,
    noon,
    dayLength: quantity((set - rise) / 60, "h"),
    state: "rises and sets",
    sunrise: clock(rise),
    sunset: clock(set),
  };
};
