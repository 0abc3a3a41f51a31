import {
  addDays,
  type CivilDate,
  civilDate,
  type DailySeries,
  type DailyTemperatures,
  dailySeries,
  dailyTemperatures,
  dayOfYear,
} from "../../calendar/index.js";
import { fail, outOfRange, toldAt } from "../../quantity/index.js";
import { type Angle, made, type Rate, readRecord, type Temperature } from "../read.js";
import { dayRadiation } from "./extraterrestrial-radiation.js";
import { mmPerMJ } from "./fao56.js";
import { expectOrder, latitude, temperature } from "./weather.js";

/** Hargreaves and Samani, mm/d, from °C and MJ/m2/d. */
export const hargreavesOf = (tMin: number, tMax: number, ra: number): number =>
  0.0023 * ((tMin + tMax) / 2 + 17.8) * Math.sqrt(Math.max(0, tMax - tMin)) * mmPerMJ * ra;

/**
 * Reference evapotranspiration of a day by Hargreaves and Samani, where only temperatures were measured:
 * `ETo = 0.0023 (Tmean + 17.8) sqrt(Tmax - Tmin) 0.408 Ra`, in mm/d.
 *
 * - `min`, `max` air temperature; `latitude` negative in the south; `date`
 *
 * It knows no wind and no humidity: too low in wind above 3 m/s, too high in moist air. In Mississippi it was 0.28 mm/d too
 * high on the whole, and 0.68 mm/d off on a mean day. Take means of five days and more. Below -17.8 °C there is no answer.
 *
 * @throws RatewrightError `conflict` where min is above max; `range`, also for a mean below -17.8 °C; `date`, `missing`,
 * `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 52; Lyon in July: 5.0 mm/d. Errors: D. Fisher and H. Pringle 2013.
 *
 * @example
 * ```ts
 * import { hargreavesEvapotranspiration, quantity } from "ratewright";
 * const day = { min: quantity(14.8, "°C"), max: quantity(26.6, "°C"), latitude: quantity(45.72, "deg") };
 * hargreavesEvapotranspiration({ ...day, date: "1998-07-15" }).in("mm/d").toFixed(1); // => "5.0"
 * ```
 */
export const hargreavesEvapotranspiration = (input: {
  readonly min: Temperature;
  readonly max: Temperature;
  readonly latitude: Angle;
  readonly date: CivilDate;
}): Rate => {
  const q = readRecord(
    input,
    {
      min: temperature,
      max: temperature,
      latitude,
      date: (value: unknown, path: string): CivilDate =>
        value === undefined
          ? fail("missing", path, value, "the date of the day")
          : civilDate(value as CivilDate, path),
    },
    "a record with min, max, latitude and date",
  );
  expectOrder(q.min, q.max);
  const [tMin, tMax] = [q.min.in("°C"), q.max.in("°C")];
  if ((tMin + tMax) / 2 < -17.8)
    outOfRange("max", q.max, { min: -17.8, unit: "°C" }, "a mean temperature of {}");
  return made(
    hargreavesOf(tMin, tMax, dayRadiation(q.latitude.in("rad"), dayOfYear(q.date))),
    "mm/d",
    "length/time",
  );
};

/**
 * A season of reference evapotranspiration by Hargreaves and Samani from daily temperatures: a daily series in mm, as
 * {@link soilWaterBalance} takes it. A day without both temperatures is `null` and stays a gap.
 *
 * - `temperatures` of the air, see `dailyTemperatures`; `latitude` negative in the south
 *
 * @throws RatewrightError `type` for a series of soil temperatures; `range` for a day with a mean below -17.8 °C,
 *   with its index; what `dailyTemperatures` throws; `unit/mismatch`
 *
 * Source: as {@link hargreavesEvapotranspiration}.
 *
 * @example
 * ```ts
 * import { dailyTemperatures, hargreavesSeries, quantity } from "ratewright";
 * const temperatures = dailyTemperatures({
 *   start: "1998-07-15", unit: "°C", sensor: "air", source: "station", min: [14.8, null], max: [26.6, 27],
 * });
 * const et = hargreavesSeries({ temperatures, latitude: quantity(45.72, "deg") });
 * et.values.map((mm) => mm?.toFixed(1) ?? null); // => ["5.0", null]
 * ```
 */
export const hargreavesSeries = (input: {
  readonly temperatures: DailyTemperatures;
  readonly latitude: Angle;
}): DailySeries => {
  const q = readRecord(
    input,
    { temperatures: airTemperatures, latitude },
    "a record with temperatures and latitude",
  );
  const { start, min, max, unit, source } = q.temperatures;
  const phi = q.latitude.in("rad");
  const celsius = (t: number): number => (unit === "°C" ? t : ((t - 32) * 5) / 9);
  let j = dayOfYear(start);
  const values = min.map((low, i) => {
    const high = max[i];
    const day = j;
    if (i + 1 < min.length) {
      // The calendar is asked at the end of each year only.
      j = j >= 365 ? dayOfYear(addDays(start, i + 1)) : j + 1;
    }
    if (typeof low !== "number" || typeof high !== "number") return null;
    const [tMin, tMax] = [celsius(low), celsius(high)];
    if ((tMin + tMax) / 2 < -17.8)
      outOfRange(`temperatures.max[${i}]`, high, { min: -17.8, unit: "°C" }, "a mean temperature of {}");
    return hargreavesOf(tMin, tMax, dayRadiation(phi, day));
  });
  return dailySeries({
    start,
    unit: "mm",
    what: "reference evapotranspiration by Hargreaves and Samani",
    source: `computed from temperatures: ${source}`,
    values,
  });
};

const airTemperatures = (input: unknown, path: string): DailyTemperatures => {
  if (Object(input).type !== "daily-temperatures")
    return fail("type", path, input, "daily temperatures, as dailyTemperatures makes them");
  const series = toldAt(path, "series", () => dailyTemperatures(input as DailyTemperatures));
  return series.sensor === "air"
    ? series
    : fail("type", `${path}.sensor`, series.sensor, "air: soil temperatures do not show it");
};
