import { outOfRange } from "../../quantity/index.js";
import {
  type Irradiance,
  type Length,
  made,
  number,
  optional,
  type Pressure,
  pressure,
  readRecord,
  type Temperature,
  type Time,
  timeOrNone,
  word,
} from "../read.js";
import { clearSkyShare, longwave, stefanBoltzmannOfDay } from "./fao56.js";
import { byRange, coefficientA, coefficientB, irradiance, solarOf } from "./sunlight.js";
import { elevation, expectOrder, temperature } from "./weather.js";

const topReader = { extraterrestrial: irradiance };

/**
 * Solar radiation from the hours of bright sunshine, `Rs = (a + b n / N) Ra`, in MJ/m2/d.
 *
 * - `extraterrestrial` `Ra`, see {@link extraterrestrialRadiation}; `daylight` `N`, `dayLength` with the method `"FAO-56"`
 * - `sunshine` `n`, hours of bright sun a day (of a month: the mean of its days), not more than the daylight
 * - `a` and `b` Angstrom's coefficients, 0.25 and 0.50 where none were found for the place
 *
 * @throws RatewrightError `range` for more sunshine than daylight; `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 35 and example 10 (14.5 MJ/m2/d).
 *
 * @example
 * ```ts
 * import { quantity, solarRadiationFromSunshine } from "ratewright";
 * const day = { extraterrestrial: quantity(25.1, "MJ/m2/d"), daylight: quantity(10.9, "h") };
 * const rs = solarRadiationFromSunshine({ ...day, sunshine: quantity(7.1, "h") });
 * rs.in("MJ/m2/d").toFixed(1); // => "14.4"
 * ```
 */
export const solarRadiationFromSunshine = (input: {
  readonly extraterrestrial: Irradiance;
  readonly sunshine: Time;
  readonly daylight: Time;
  readonly a?: number;
  readonly b?: number;
}): Irradiance => {
  const q = readRecord(
    input,
    {
      ...topReader,
      sunshine: timeOrNone,
      daylight: timeOrNone,
      a: coefficientA,
      b: coefficientB,
    },
    "a record with extraterrestrial, sunshine and daylight",
  );
  const daylight = q.daylight.in("h");
  if (!(daylight > 0)) outOfRange("daylight", q.daylight, { above: 0 });
  const light = { solar: undefined, sunshine: q.sunshine, a: q.a, b: q.b, temperatures: undefined };
  return made(
    solarOf(light, { ra: q.extraterrestrial.in("MJ/m2/d"), daylight, range: 0 }),
    "MJ/m2/d",
    "irradiance",
  );
};

/**
 * Solar radiation from the range of the temperature, `Rs = k sqrt(Tmax - Tmin) Ra`, in MJ/m2/d, where neither radiation nor
 * sunshine was measured: clear days have cold nights.
 *
 * - `extraterrestrial` `Ra`; `min`, `max` temperatures of the air
 * - `location`: `"interior"` with `k` 0.16, `"coastal"` with 0.19; single days scatter, means of a week or more do better
 *
 * @throws RatewrightError `conflict` where min is above max; `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 50 and example 20 (22.29 MJ/m2/d).
 *
 * @example
 * ```ts
 * import { quantity, solarRadiationFromTemperatures } from "ratewright";
 * const rs = solarRadiationFromTemperatures({
 *   extraterrestrial: quantity(40.55, "MJ/m2/d"), min: quantity(14.8, "°C"), max: quantity(26.6, "°C"), location: "interior",
 * });
 * rs.in("MJ/m2/d").toFixed(2); // => "22.29"
 * ```
 */
export const solarRadiationFromTemperatures = (input: {
  readonly extraterrestrial: Irradiance;
  readonly min: Temperature;
  readonly max: Temperature;
  readonly location: "interior" | "coastal";
}): Irradiance => {
  const q = readRecord(
    input,
    { ...topReader, min: temperature, max: temperature, location: word(["interior", "coastal"]) },
    "a record with extraterrestrial, min, max and location",
  );
  expectOrder(q.min, q.max);
  const range = Math.max(0, q.max.in("°C") - q.min.in("°C"));
  return made(
    byRange[q.location] * Math.sqrt(range) * q.extraterrestrial.in("MJ/m2/d"),
    "MJ/m2/d",
    "irradiance",
  );
};

/**
 * Solar radiation under a clear sky, `Rso = (0.75 + 0.00002 z) Ra`, in MJ/m2/d.
 *
 * - `extraterrestrial` `Ra`; `elevation` `z` in m
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 37 and example 18 (100 m, 41.09: 30.90 MJ/m2/d).
 *
 * @example
 * ```ts
 * import { clearSkyRadiation, quantity } from "ratewright";
 * const sky = { extraterrestrial: quantity(41.09, "MJ/m2/d"), elevation: quantity(100, "m") };
 * clearSkyRadiation(sky).in("MJ/m2/d").toFixed(2); // => "30.90"
 * ```
 */
export const clearSkyRadiation = (input: {
  readonly extraterrestrial: Irradiance;
  readonly elevation: Length;
}): Irradiance => {
  const q = readRecord(input, { ...topReader, elevation }, "a record with extraterrestrial and elevation");
  return made(clearSkyShare(q.elevation.in("m")) * q.extraterrestrial.in("MJ/m2/d"), "MJ/m2/d", "irradiance");
};

/** The albedo of the grass of reference. */
export const grassAlbedo = 0.23;

/**
 * Net shortwave radiation, `Rns = (1 - albedo) Rs`, in MJ/m2/d: what the turf keeps of the sunlight.
 *
 * - `solar` `Rs`; `albedo` 0.23 of the grass of reference where left out, a number from 0 to 1
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 38 and example 18 (22.07: 17.0 MJ/m2/d).
 *
 * @example
 * ```ts
 * import { netShortwaveRadiation, quantity } from "ratewright";
 * netShortwaveRadiation({ solar: quantity(22.07, "MJ/m2/d") }).in("MJ/m2/d").toFixed(1); // => "17.0"
 * ```
 */
export const netShortwaveRadiation = (input: {
  readonly solar: Irradiance;
  readonly albedo?: number;
}): Irradiance => {
  const q = readRecord(
    input,
    { solar: irradiance, albedo: optional(number({ min: 0, max: 1 })) },
    "a record with solar",
  );
  return made((1 - (q.albedo ?? grassAlbedo)) * q.solar.in("MJ/m2/d"), "MJ/m2/d", "irradiance");
};

/**
 * Net longwave radiation, the heat that the turf loses to the sky, in MJ/m2/d:
 * `Rnl = 4.903e-9 (Tmax^4 + Tmin^4) / 2 (0.34 - 0.14 sqrt(ea)) (1.35 Rs / Rso - 0.35)`, temperatures in K.
 *
 * - `min`, `max` temperatures of the air; `vaporPressure` `ea`
 * - `solar` `Rs` and `clearSky` `Rso`; their ratio counts as 1 where it is above
 *
 * @throws RatewrightError `conflict` where min is above max; `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 39 and example 11 (3.5 MJ/m2/d).
 *
 * @example
 * ```ts
 * import { netLongwaveRadiation, quantity } from "ratewright";
 * const sky = netLongwaveRadiation({
 *   min: quantity(19.1, "°C"), max: quantity(25.1, "°C"), vaporPressure: quantity(2.1, "kPa"),
 *   solar: quantity(14.5, "MJ/m2/d"), clearSky: quantity(18.8, "MJ/m2/d"),
 * });
 * sky.in("MJ/m2/d").toFixed(1); // => "3.5"
 * ```
 */
export const netLongwaveRadiation = (input: {
  readonly min: Temperature;
  readonly max: Temperature;
  readonly vaporPressure: Pressure;
  readonly solar: Irradiance;
  readonly clearSky: Irradiance;
}): Irradiance => {
  const q = readRecord(
    input,
    { min: temperature, max: temperature, vaporPressure: pressure, solar: irradiance, clearSky: irradiance },
    "a record with min, max, vaporPressure, solar and clearSky",
  );
  expectOrder(q.min, q.max);
  const clear = q.clearSky.in("MJ/m2/d");
  if (!(clear > 0)) outOfRange("clearSky", q.clearSky, { above: 0 }, "{}: a day on which the sun rises");
  const air = {
    tMin: q.min.in("°C"),
    tMax: q.max.in("°C"),
    ea: q.vaporPressure.in("kPa"),
    ratio: Math.min(1, q.solar.in("MJ/m2/d") / clear),
    sigma: stefanBoltzmannOfDay,
  };
  return made(longwave(air), "MJ/m2/d", "irradiance");
};
