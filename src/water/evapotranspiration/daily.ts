import { type CivilDate, civilDate, dayOfYear } from "../../calendar/index.js";
import { fail } from "../../quantity/index.js";
import {
  type Angle,
  type Irradiance,
  type Length,
  made,
  optional,
  readRecord,
  type Temperature,
  whole,
} from "../read.js";
import { readWind, type Wind } from "./air.js";
import { type ReferenceEvapotranspiration, referenceOf } from "./reference-terms.js";
import { readSunlight, type Sunlight } from "./sunlight.js";
import { type AirMoisture, readMoisture } from "./vapor.js";
import { elevation, expectOrder, latitude, temperature } from "./weather.js";

/** The weather of a day, or the mean weather of the days of a month, and where it was. */
export interface ReferenceWeather {
  readonly min: Temperature;
  readonly max: Temperature;
  readonly moisture: AirMoisture;
  readonly sunlight: Sunlight;
  readonly wind: Wind;
  /** Negative in the south. */
  readonly latitude: Angle;
  readonly elevation: Length;
}

const weatherReaders = {
  min: temperature,
  max: temperature,
  moisture: readMoisture,
  sunlight: readSunlight,
  wind: readWind,
  latitude,
  elevation,
};

/**
 * Reference evapotranspiration of a day by Penman and Monteith as FAO-56 has it: the water that a wide, well-watered
 * cool-season grass of 0.12 m uses. What your turf uses is {@link turfUse}.
 *
 * `ETo = (0.408 D (Rn - G) + g 900 / (T + 273) u2 (es - ea)) / (D + g (1 + 0.34 u2))`, with `G = 0` for a day
 *
 * - `min`, `max` air temperature; `moisture` as {@link AirMoisture}; `wind` with the height of the anemometer
 * - `sunlight`: `{ solar }` measured radiation; `{ sunshine }` hours of bright sun, with Angstrom's `a` and `b` where known;
 *   or `{ temperatures: "interior" | "coastal" }`
 * - `latitude` negative in the south; `elevation`; `date`
 *
 * A radiation below 26 % of that of a clear sky is a finding: no cloud is so thick on a whole day, but a dead sensor reads it.
 * Every step is in the result, in the units of the paper. Nothing that is missing is filled in: what stands in for it is
 * stated by the caller, and comes back as a finding.
 *
 * @throws RatewrightError `conflict` for min above max, more vapor than the air holds, two statements for one thing; `range`
 * for humidity above 100 %, a latitude beyond 90 degrees, more sun than there is; `infeasible` where the sun does not rise;
 * `date`, `missing`, `unit/mismatch`, `type`; all that are found
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 6, example 18 (3.88 mm/d).
 *
 * @example
 * ```ts
 * import { dailyReferenceEvapotranspiration, quantity } from "ratewright";
 * const day = dailyReferenceEvapotranspiration({
 *   min: quantity(12.3, "°C"), max: quantity(21.5, "°C"),
 *   moisture: { rhMax: quantity(84, "%"), rhMin: quantity(63, "%") },
 *   sunlight: { sunshine: quantity(9.25, "h") },
 *   wind: { speed: quantity(10, "km/h"), height: quantity(10, "m") },
 *   latitude: quantity(50.8, "deg"), elevation: quantity(100, "m"), date: "1998-07-06",
 * });
 * day.value.in("mm/d").toFixed(2); // => "3.88"
 * day.netRadiation.in("MJ/m2/d").toFixed(2); // => "13.28"
 * ```
 */
export const dailyReferenceEvapotranspiration = (
  input: ReferenceWeather & { readonly date: CivilDate },
): ReferenceEvapotranspiration => {
  const q = readRecord(
    input,
    {
      ...weatherReaders,
      date: (value: unknown, path: string): CivilDate =>
        value === undefined
          ? fail("missing", path, value, "the date of the day")
          : civilDate(value as CivilDate, path),
    },
    "a record with the weather of a day, latitude, elevation and date",
  );
  expectOrder(q.min, q.max);
  return referenceOf("day", {
    tMin: q.min.in("°C"),
    tMax: q.max.in("°C"),
    moisture: q.moisture,
    sunlight: q.sunlight,
    u2: q.wind,
    latitude: q.latitude.in("rad"),
    elevation: q.elevation.in("m"),
    dayOfYear: dayOfYear(q.date),
    soilHeat: 0,
  });
};

/**
 * The soil heat flux of a month from the mean temperatures of the months beside it: `G = 0.07 (T(i+1) - T(i-1))`, or
 * `G = 0.14 (T(i) - T(i-1))` where the next is not known, in MJ/m2/d. Days have none.
 *
 * - `before` mean temperature of the month before; exactly one of `after`, that of the month after, and `month`, its own
 *
 * @throws RatewrightError `missing` or `conflict` unless exactly one of `after` and `month` is given; `range`,
 *   `type`, `unit/mismatch`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equations 43 and 44, example 13 (0.33 and 0.28 MJ/m2/d).
 *
 * @example
 * ```ts
 * import { monthlySoilHeatFlux, quantity } from "ratewright";
 * const before = quantity(14.1, "°C");
 * monthlySoilHeatFlux({ before, after: quantity(18.8, "°C") }).in("MJ/m2/d").toFixed(2); // => "0.33"
 * monthlySoilHeatFlux({ before, month: quantity(16.1, "°C") }).in("MJ/m2/d").toFixed(2); // => "0.28"
 * ```
 */
export const monthlySoilHeatFlux = (input: {
  readonly before: Temperature;
  readonly after?: Temperature;
  readonly month?: Temperature;
}): Irradiance => {
  const q = readRecord(
    input,
    { before: temperature, after: optional(temperature), month: optional(temperature) },
    "a record with before, and after or month",
  );
  if (q.after !== undefined && q.month !== undefined)
    fail("conflict", "month", q.month, "either after or month, not both");
  const own =
    q.after ??
    q.month ??
    fail("missing", "after", q.after, "the mean temperature of the month after, or month");
  const factor = q.after === undefined ? 0.14 : 0.07;
  return made(factor * (own.in("°C") - q.before.in("°C")), "MJ/m2/d", "irradiance");
};

/** The day of the year of the 15th of a month, of a common year. */
const fifteenth = (month: number): number =>
  dayOfYear(`2001-${String(month).padStart(2, "0")}-15` as CivilDate);

/**
 * Reference evapotranspiration of the mean day of a month, as {@link dailyReferenceEvapotranspiration}, but that the soil
 * takes heat up or gives it off ({@link monthlySoilHeatFlux}).
 *
 * - the weather as means of the days of the month; `month` 1 to 12, whose 15th stands for it
 * - `before` mean temperature of the month before; `after` that of the month after where it is known
 *
 * @throws RatewrightError as {@link dailyReferenceEvapotranspiration}
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 6, example 17 (5.72 mm/d).
 *
 * @example
 * ```ts
 * import { monthlyReferenceEvapotranspiration, quantity } from "ratewright";
 * const april = monthlyReferenceEvapotranspiration({
 *   min: quantity(25.6, "°C"), max: quantity(34.8, "°C"), before: quantity(29.2, "°C"),
 *   moisture: { vaporPressure: quantity(2.85, "kPa") }, sunlight: { sunshine: quantity(8.5, "h") },
 *   wind: { speed: quantity(2, "m/s"), height: quantity(2, "m") },
 *   latitude: quantity(13.7333, "deg"), elevation: quantity(2, "m"), month: 4,
 * });
 * april.value.in("mm/d").toFixed(2); // => "5.72"
 * april.soilHeatFlux.in("MJ/m2/d").toFixed(2); // => "0.14"
 * ```
 */
export const monthlyReferenceEvapotranspiration = (
  input: ReferenceWeather & {
    readonly month: number;
    readonly before: Temperature;
    readonly after?: Temperature;
  },
): ReferenceEvapotranspiration => {
  const q = readRecord(
    input,
    {
      ...weatherReaders,
      month: whole({ min: 1, max: 12 }),
      before: temperature,
      after: optional(temperature),
    },
    "a record with the mean weather of a month, latitude, elevation, month and before",
  );
  expectOrder(q.min, q.max);
  const [tMin, tMax, before] = [q.min.in("°C"), q.max.in("°C"), q.before.in("°C")];
  const soilHeat =
    q.after === undefined ? 0.14 * ((tMin + tMax) / 2 - before) : 0.07 * (q.after.in("°C") - before);
  return referenceOf("month", {
    tMin,
    tMax,
    moisture: q.moisture,
    sunlight: q.sunlight,
    u2: q.wind,
    latitude: q.latitude.in("rad"),
    elevation: q.elevation.in("m"),
    dayOfYear: fifteenth(q.month),
    soilHeat,
  });
};
