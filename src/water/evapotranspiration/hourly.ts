import { declinationOn } from "../../calendar/house.js";
import type { Instant } from "../../calendar/index.js";
import { exceeds, roundTo } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  expectQuantity,
  type Finding,
  fail,
  isUnit,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import {
  type Angle,
  type Irradiance,
  type Length,
  made,
  optional,
  type Pressure,
  percent,
  type Rate,
  type Read,
  readRecord,
  type Share,
  type Temperature,
  type Time,
} from "../read.js";
import { readWind, type Wind } from "./air.js";
import { hourRadiation, solarHourReaders } from "./extraterrestrial-radiation.js";
import {
  clearSkyShare,
  longwave,
  penmanTerms,
  pressureAt,
  psychrometric,
  saturation,
  slopeAt,
  stefanBoltzmannOfHour,
} from "./fao56.js";
import { grassAlbedo } from "./radiation.js";
import { irradiance } from "./sunlight.js";
import { elevation, temperature } from "./weather.js";

type Exposure = Quantity<"radiant exposure", "none">;

/** Reference evapotranspiration of an hour or a part of one; radiations in MJ/m2 of the period. */
export interface HourlyReferenceEvapotranspiration {
  readonly type: "hourly-reference-evapotranspiration";
  readonly version: 1;
  /** `ETo`, mm/h. */
  readonly value: Rate;
  /** What it comes to in the period. */
  readonly depth: Length;
  readonly radiationTerm: Rate;
  readonly windTerm: Rate;
  readonly dayOfYear: number;
  readonly pressure: Pressure;
  /** kPa/°C. */
  readonly psychrometricConstant: number;
  /** Slope of the saturation vapor pressure curve, kPa/°C. */
  readonly slope: number;
  readonly saturationVaporPressure: Pressure;
  readonly actualVaporPressure: Pressure;
  readonly vaporPressureDeficit: Pressure;
  readonly windAtTwoMeters: Rate;
  /** Hour angle of the sun in the middle of the period, zero at noon and negative before. */
  readonly hourAngle: Angle;
  readonly sunsetHourAngle: Angle;
  readonly extraterrestrialRadiation: Exposure;
  readonly solarRadiation: Exposure;
  readonly clearSkyRadiation: Exposure;
  /** `Rs / Rso`: measured by day, stated by night; 100 % where it is above. */
  readonly clearness: Share;
  readonly netShortwave: Exposure;
  readonly netLongwave: Exposure;
  readonly netRadiation: Exposure;
  readonly soilHeatFlux: Exposure;
  readonly findings: readonly Finding[];
}

/** The weather of an hour or a part of one. */
export interface HourlyWeatherForReference {
  readonly temperature: Temperature;
  readonly humidity: Share;
  /** Mean radiation over the period, W/m2, or what it brought in the period, MJ/m2. */
  readonly solar: Irradiance | Exposure;
  readonly wind: Wind;
  readonly latitude: Angle;
  /** Negative in the west. */
  readonly longitude: Angle;
  readonly elevation: Length;
  readonly start: Instant;
  readonly length: Time;
  /** `Rs / Rso` of the hours before sunset, for the night. */
  readonly clearnessBefore?: Share;
}

/** Radiation as a mean over the period or as what it brought: a function from hours to MJ/m2. */
const solarInput: Read<(hours: number) => number> = (input, path) => {
  const unit: unknown = Object(input).unit;
  if (typeof unit === "string" && isUnit(unit, "radiant exposure")) {
    const brought = { dimension: "radiant exposure", of: "none", bound: "non-negative" } as const;
    const mj = expectQuantity(input, brought, path).in("MJ/m2");
    return () => mj;
  }
  const mean = irradiance(input, path);
  return (hours) => (mean.in("MJ/m2/d") * hours) / 24;
};

const readers = {
  temperature,
  humidity: percent({ above: 0, max: 100 }, 0.99),
  solar: solarInput,
  wind: readWind,
  elevation,
  ...solarHourReaders,
  clearnessBefore: optional(percent({ min: 0, max: 100 })),
};

/**
 * Reference evapotranspiration of an hour or a part of one by Penman and Monteith as FAO-56 has it:
 * `ETo = (0.408 D (Rn - G) + g 37 / (T + 273) u2 (e(T) - ea)) / (D + g (1 + 0.34 u2))`, in mm/h, with `G = 0.1 Rn` by day
 * and `0.5 Rn` by night.
 *
 * - `temperature`, `humidity` and `solar` as means over the period (`solar` also as MJ/m2 of it); `wind` with its height
 * - `latitude`, `longitude` negative in the west and south; `elevation`; `start` with its offset and `length`, up to 3 h
 * - `clearnessBefore`, `Rs / Rso` two to three hours before sunset, tells the clouds of a night; the source takes 40 to 60 %
 *   in humid and 70 to 80 % in dry places where it is not known. Needed where the sun is down; taken in place of the radiation
 *   where it stands below 17 degrees, and refused where it stands higher
 *
 * @throws RatewrightError `missing` by night without `clearnessBefore`; `range` for humidity above 100 %, more radiation than
 * at the top of the atmosphere; `date`, `unit/mismatch`, `type`; all that are found
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 53, example 19 (14 to 15 h: 0.63 mm/h; 2 to 3 h: 0.00). The
 * Stefan-Boltzmann constant is that of an hour, 2.043e-10 MJ/m2/K4, as public programs after the paper have it. The ASCE
 * standardized equation of 2005 has 2.042e-10, and another soil heat and resistance by night; it is not offered here.
 *
 * @example
 * ```ts
 * import { hourlyReferenceEvapotranspiration, quantity } from "ratewright";
 * const hour = hourlyReferenceEvapotranspiration({
 *   temperature: quantity(38, "°C"), humidity: quantity(52, "%"), solar: quantity(2.45, "MJ/m2"),
 *   wind: { speed: quantity(3.3, "m/s"), height: quantity(2, "m") }, elevation: quantity(8, "m"),
 *   latitude: quantity(16.21667, "deg"), longitude: quantity(-16.25, "deg"),
 *   start: "1998-10-01T14:00-01:00", length: quantity(1, "h"),
 * });
 * hour.value.in("mm/h").toFixed(2); // => "0.63"
 * ```
 */
export const hourlyReferenceEvapotranspiration = (
  input: HourlyWeatherForReference,
): HourlyReferenceEvapotranspiration => {
  const q = readRecord(input, readers, "a record with the weather of an hour, its place and its start");
  const [t, hours, z] = [q.temperature.in("°C"), q.length.in("h"), q.elevation.in("m")];
  const sun = hourRadiation(q.latitude.in("rad"), q.longitude.in("deg"), q.start, hours);
  const es = saturation(t);
  const ea = (es * q.humidity) / 100;
  const rs = q.solar(hours);
  const rso = clearSkyShare(z) * sun.ra;
  notAboveAtmosphere(rs, sun.ra, hours);
  const low = altitudeOf(q.latitude.in("rad"), sun) < lowSun;
  const ratio = clearnessOf(q.clearnessBefore, { rs, rso, up: sun.ra > 0, low });
  const rns = (1 - grassAlbedo) * rs;
  const rnl = longwave({ tMin: t, tMax: t, ea, ratio, sigma: stefanBoltzmannOfHour * hours });
  const soil = (sun.ra > 0 ? 0.1 : 0.5) * (rns - rnl);
  const [slope, pressure] = [slopeAt(t), pressureAt(z)];
  const gamma = psychrometric(pressure);
  const terms = penmanTerms({
    t,
    slope,
    gamma,
    energy: (rns - rnl - soil) / hours,
    deficit: es - ea,
    u2: q.wind,
    constant: 37,
  });
  return {
    type: "hourly-reference-evapotranspiration",
    version: 1,
    value: perHour(terms.radiation + terms.wind),
    depth: made((terms.radiation + terms.wind) * hours, "mm", "length"),
    radiationTerm: perHour(terms.radiation),
    windTerm: perHour(terms.wind),
    dayOfYear: sun.j,
    pressure: kPa(pressure),
    psychrometricConstant: gamma,
    slope,
    saturationVaporPressure: kPa(es),
    actualVaporPressure: kPa(ea),
    vaporPressureDeficit: kPa(es - ea),
    windAtTwoMeters: made(q.wind, "m/s", "length/time"),
    hourAngle: made(sun.middle, "rad", "angle"),
    sunsetHourAngle: made(sun.sunset, "rad", "angle"),
    extraterrestrialRadiation: exposure(sun.ra),
    solarRadiation: exposure(rs),
    clearSkyRadiation: exposure(rso),
    clearness: made(100 * ratio, "%", "1"),
    netShortwave: exposure(rns),
    netLongwave: exposure(rnl),
    netRadiation: exposure(rns - rnl),
    soilHeatFlux: exposure(soil),
    // In the night and where the sun is low the ratio was stated.
    findings: q.clearnessBefore === undefined ? remarks(rs, rso) : [],
  };
};

const kPa = (value: number): Pressure => made(value, "kPa", "pressure");
const perHour = (value: number): Rate => made(value, "mm/h", "length/time");
const exposure = (value: number): Exposure => made(value, "MJ/m2", "radiant exposure");

/** Light before sunrise and after sunset, and of an instrument that is not at zero, is small. */
const notAboveAtmosphere = (rs: number, ra: number, hours: number): void => {
  if (rs > ra + 0.05 * hours)
    outOfRange(
      "solar",
      described(`${rs.toFixed(3)} MJ/m2`),
      { max: roundTo(ra, 0.001), unit: "MJ/m2" },
      "{}, what there is at the top of the atmosphere in the period",
    );
};

/** The sun below this altitude, in rad, tells little of the clouds: 17 degrees, of the ASCE standardized equation, as a public program has it. */
const lowSun = 0.3;

const altitudeOf = (phi: number, { j, middle }: { readonly j: number; readonly middle: number }): number => {
  const d = declinationOn(j);
  return Math.asin(Math.sin(phi) * Math.sin(d) + Math.cos(phi) * Math.cos(d) * Math.cos(middle));
};

interface Light {
  readonly rs: number;
  readonly rso: number;
  readonly up: boolean;
  readonly low: boolean;
}

/** How clear the sky is: measured where the sun is up, stated where it is not, and either where it is low. */
const clearnessOf = (before: number | undefined, { rs, rso, up, low }: Light): number => {
  if (before !== undefined) {
    if (up && !low)
      fail(
        "conflict",
        "clearnessBefore",
        before,
        "nothing while the sun is higher than 17 degrees: the radiation shows the clouds",
      );
    return before / 100;
  }
  return up
    ? Math.min(1, rs / rso)
    : fail("missing", "clearnessBefore", before, "Rs / Rso of the hours before sunset: the sun is down");
};

/** `Rs / Rso` below which the sky would warm the turf in the formula of longwave radiation. */
const darkest = 0.35 / 1.35;

const remarks = (rs: number, rso: number): readonly Finding[] =>
  exceeds(rs, rso) ? [tooBright(rs / rso)] : rs / rso < darkest ? [tooDark(rs / rso)] : [];

const tooDark = (ratio: number): Finding => ({
  code: "water/darker-than-overcast",
  severity: "caution",
  params: { ratio },
  text: `The solar radiation is ${ratio.toFixed(2)} times that of a clear sky, less than the longwave radiation is made for: the net radiation comes out too high. Near sunrise and sunset give clearnessBefore, else check the instrument.`,
  source: "FAO Irrigation and Drainage Paper 56",
});

const tooBright = (ratio: number): Finding => ({
  code: "water/brighter-than-clear-sky",
  severity: ratio > 1.1 ? "caution" : "note",
  params: { ratio },
  text: `The solar radiation is ${ratio.toFixed(2)} times that of a clear sky: in the longwave radiation the ratio counts as 1.`,
  source: "FAO Irrigation and Drainage Paper 56",
});
