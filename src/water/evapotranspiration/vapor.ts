import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import { expectRecord, fail } from "../../quantity/index.js";
import {
  type Length,
  made,
  optional,
  type Pressure,
  percent,
  pressure,
  type Read,
  readRecord,
  type Share,
  type Temperature,
  word,
} from "../read.js";
import { pressureAt, saturation, slopeAt } from "./fao56.js";
import { elevation, expectOrder, temperature } from "./weather.js";

/**
 * The saturation vapor pressure over water, `e(T) = 0.6108 exp(17.27 T / (T + 237.3))`, in kPa with `T` in °C.
 *
 * - `temperature` of the air, -90 to 60 °C; below freezing it is that over supercooled water
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 11 and example 3 (24.5 °C: 3.075 kPa).
 *
 * @example
 * ```ts
 * import { quantity, saturationVaporPressure } from "ratewright";
 * saturationVaporPressure({ temperature: quantity(24.5, "°C") }).in("kPa").toFixed(3); // => "3.075"
 * ```
 */
export const saturationVaporPressure = (input: { readonly temperature: Temperature }): Pressure => {
  const q = readRecord(input, { temperature }, "a record with temperature");
  return made(saturation(q.temperature.in("°C")), "kPa", "pressure");
};

/**
 * The slope of the curve of saturation vapor pressure, `D = 4098 e(T) / (T + 237.3)²`, a number in kPa/°C: there is no
 * unit of it here.
 *
 * - `temperature` of the air, -90 to 60 °C
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 13 and example 17 (30.2 °C: 0.246).
 *
 * @example
 * ```ts
 * import { quantity, vaporPressureSlopeKPaPerC } from "ratewright";
 * vaporPressureSlopeKPaPerC({ temperature: quantity(30.2, "°C") }).toFixed(3); // => "0.246"
 * ```
 */
export const vaporPressureSlopeKPaPerC = (input: { readonly temperature: Temperature }): number =>
  slopeAt(readRecord(input, { temperature }, "a record with temperature").temperature.in("°C"));

/**
 * The mean saturation vapor pressure of a day, `es = (e(Tmax) + e(Tmin)) / 2`, in kPa: the mean of the two pressures, and
 * not the pressure at the mean, which is lower.
 *
 * - `min`, `max` the lowest and highest temperature of the air
 *
 * @throws RatewrightError `conflict` where the lowest is above the highest; `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 12 and example 3 (15 and 24.5 °C: 2.39 kPa).
 *
 * @example
 * ```ts
 * import { meanSaturationVaporPressure, quantity } from "ratewright";
 * const day = { min: quantity(15, "°C"), max: quantity(24.5, "°C") };
 * meanSaturationVaporPressure(day).in("kPa").toFixed(2); // => "2.39"
 * ```
 */
export const meanSaturationVaporPressure = (input: {
  readonly min: Temperature;
  readonly max: Temperature;
}): Pressure => {
  const q = readRecord(input, { min: temperature, max: temperature }, "a record with min and max");
  expectOrder(q.min, q.max);
  return made((saturation(q.min.in("°C")) + saturation(q.max.in("°C"))) / 2, "kPa", "pressure");
};

/**
 * What is known of the moisture of the air, best first: the dew point or the vapor pressure itself; wet and dry bulb; the
 * highest and lowest relative humidity of the day; the highest alone (where the lowest is in doubt); the mean; or nothing,
 * and the air is taken to be saturated at the lowest temperature, which reads too moist in dry places.
 */
export type AirMoisture =
  | { readonly dewPoint: Temperature }
  | { readonly vaporPressure: Pressure }
  | { readonly wet: Temperature; readonly dry: Temperature; readonly psychrometer: Psychrometer }
  | { readonly rhMax: Share; readonly rhMin: Share }
  | { readonly rhMax: Share }
  | { readonly rhMean: Share }
  | { readonly saturatedAtMinimum: true };

/** How the wet bulb is aired: an Asmann type, a natural draft, or still air indoors. */
export type Psychrometer = "ventilated" | "natural" | "indoor";

const psychrometers: Readonly<Record<Psychrometer, number>> = {
  ventilated: 0.000662,
  natural: 0.0008,
  indoor: 0.0012,
};

const moistureReaders = {
  dewPoint: optional(temperature),
  vaporPressure: optional(pressure),
  wet: optional(temperature),
  dry: optional(temperature),
  psychrometer: optional(word(["ventilated", "natural", "indoor"])),
  rhMax: optional(percent({ above: 0, max: 100 }, 1)),
  rhMin: optional(percent({ min: 0, max: 100 }, 0.99)),
  rhMean: optional(percent({ above: 0, max: 100 }, 1)),
  saturatedAtMinimum: (input: unknown, path: string): true | undefined =>
    input === undefined || input === true ? input : fail("type", path, input, "true, or left out"),
};

/** The sets of fields that stand for one statement each. */
const statements: readonly (readonly string[])[] = [
  ["dewPoint"],
  ["vaporPressure"],
  ["wet", "dry", "psychrometer"],
  ["rhMax", "rhMin"],
  ["rhMax"],
  ["rhMean"],
  ["saturatedAtMinimum"],
];

/** A statement of the moisture of the air, read. */
export interface MoistureRead {
  readonly dewPoint: Temperature | undefined;
  readonly vaporPressure: Pressure | undefined;
  readonly wet: Temperature | undefined;
  readonly dry: Temperature | undefined;
  readonly psychrometer: Psychrometer | undefined;
  readonly rhMax: number | undefined;
  readonly rhMin: number | undefined;
  readonly rhMean: number | undefined;
  readonly saturatedAtMinimum: true | undefined;
}

/** Takes one statement of the moisture of the air. */
export const readMoisture: Read<MoistureRead> = (input, path) => {
  const what =
    "one of dewPoint; vaporPressure; wet, dry and psychrometer; rhMax and rhMin; rhMax; rhMean; saturatedAtMinimum";
  if (input === undefined) return fail("missing", path, input, what);
  const record = expectRecord(input, path, what);
  const moisture = readRecord(record, moistureReaders, what, path);
  const given = Object.keys(record).filter((name) => record[name] !== undefined);
  const known = statements.some(
    (names) => names.length === given.length && names.every((name) => given.includes(name)),
  );
  return known
    ? moisture
    : fail(given.length === 0 ? "missing" : "conflict", path, described(given.join(", ") || "nothing"), what);
};

/** Actual vapor pressure, kPa, from a statement that was read; `elevationM` for wet and dry bulb only. */
export const vaporPressureOf = (
  moisture: MoistureRead,
  tMin: number,
  tMax: number,
  elevationM: number | undefined,
): number => {
  const { dewPoint, vaporPressure, wet, dry, psychrometer, rhMax, rhMin, rhMean } = moisture;
  if (dewPoint !== undefined) return saturation(dewPoint.in("°C"));
  if (vaporPressure !== undefined) return vaporPressure.in("kPa");
  if (wet !== undefined && dry !== undefined && psychrometer !== undefined) {
    if (elevationM === undefined)
      return fail("missing", "elevation", undefined, "the elevation, for wet and dry bulb");
    const gamma = psychrometers[psychrometer] * pressureAt(elevationM);
    const e = saturation(wet.in("°C")) - gamma * (dry.in("°C") - wet.in("°C"));
    if (exceeds(wet.in("°C"), dry.in("°C")))
      fail("conflict", "moisture.wet", wet, "not more than the dry bulb");
    return e > 0
      ? e
      : fail("infeasible", "moisture.wet", wet, "a wet bulb at which air can be as dry as that");
  }
  const [low, high] = [saturation(tMin), saturation(tMax)];
  if (rhMax !== undefined && rhMin !== undefined) {
    if (exceeds(rhMin, rhMax)) fail("conflict", "moisture.rhMin", rhMin, `not more than rhMax, ${rhMax} %`);
    return (low * rhMax + high * rhMin) / 200;
  }
  if (rhMax !== undefined) return (low * rhMax) / 100;
  if (rhMean !== undefined) return (rhMean * (low + high)) / 200;
  return low;
};

/**
 * The actual vapor pressure of the air, `ea`, in kPa, from what is known of its moisture ({@link AirMoisture}):
 *
 * | known | `ea` |
 * | --- | --- |
 * | `dewPoint` | `e(Tdew)` |
 * | `wet`, `dry`, `psychrometer` | `e(Twet) - a P (Tdry - Twet)`, `a` 0.000662 ventilated, 0.0008 natural draft, 0.0012 indoors |
 * | `rhMax`, `rhMin` | `(e(Tmin) RHmax + e(Tmax) RHmin) / 200` |
 * | `rhMax` | `e(Tmin) RHmax / 100` |
 * | `rhMean` | `RHmean (e(Tmax) + e(Tmin)) / 200` |
 * | `saturatedAtMinimum` | `e(Tmin)` |
 *
 * - `min`, `max` temperatures of the air; `elevation` for wet and dry bulb only
 *
 * @throws RatewrightError `missing`, `conflict` for two statements at once, for rhMin above rhMax, min above max, wet above
 * dry; `range`, `unit/mismatch`, `type` for a bare number of humidity
 *
 * Source: FAO Irrigation and Drainage Paper 56, equations 14 to 19 and 48, example 5 (1.70 kPa).
 *
 * @example
 * ```ts
 * import { actualVaporPressure, quantity } from "ratewright";
 * const moisture = { rhMax: quantity(82, "%"), rhMin: quantity(54, "%") };
 * const day = { min: quantity(18, "°C"), max: quantity(25, "°C"), moisture };
 * actualVaporPressure(day).in("kPa").toFixed(2); // => "1.70"
 * actualVaporPressure({ ...day, moisture: { rhMean: quantity(168, "%") } }); // => throws range
 * ```
 */
export const actualVaporPressure = (input: {
  readonly min: Temperature;
  readonly max: Temperature;
  readonly moisture: AirMoisture;
  readonly elevation?: Length;
}): Pressure => {
  const q = readRecord(
    input,
    { min: temperature, max: temperature, moisture: readMoisture, elevation: optional(elevation) },
    "a record with min, max and moisture",
  );
  expectOrder(q.min, q.max);
  const ea = vaporPressureOf(q.moisture, q.min.in("°C"), q.max.in("°C"), q.elevation?.in("m"));
  return made(ea, "kPa", "pressure");
};
