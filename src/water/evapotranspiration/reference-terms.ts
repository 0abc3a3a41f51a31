import { declinationOn, sunsetAt } from "../../calendar/house.js";
import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import { type Finding, fail } from "../../quantity/index.js";
import {
  type Angle,
  type Irradiance,
  made,
  type Pressure,
  type Rate,
  type Share,
  type Temperature,
  type Time,
} from "../read.js";
import { dayRadiation } from "./extraterrestrial-radiation.js";
import {
  clearSkyShare,
  distanceOn,
  longwave,
  penmanTerms,
  pressureAt,
  psychrometric,
  saturation,
  slopeAt,
  stefanBoltzmannOfDay,
} from "./fao56.js";
import { grassAlbedo } from "./radiation.js";
import { type SunlightRead, solarOf } from "./sunlight.js";
import { type MoistureRead, vaporPressureOf } from "./vapor.js";

/** Reference evapotranspiration of a day, or the mean day of a month, with every step on the way. */
export interface ReferenceEvapotranspiration {
  readonly type: "reference-evapotranspiration";
  readonly version: 1;
  readonly period: "day" | "month";
  /** `ETo`, mm/d. */
  readonly value: Rate;
  /** The part that the radiation drives, and the part that wind and dry air drive. */
  readonly radiationTerm: Rate;
  readonly windTerm: Rate;
  readonly dayOfYear: number;
  readonly meanTemperature: Temperature;
  readonly pressure: Pressure;
  /** kPa/°C. */
  readonly psychrometricConstant: number;
  /** Slope of the saturation vapor pressure curve, kPa/°C. */
  readonly slope: number;
  readonly saturationVaporPressure: Pressure;
  readonly actualVaporPressure: Pressure;
  readonly vaporPressureDeficit: Pressure;
  readonly windAtTwoMeters: Rate;
  readonly inverseSunDistance: number;
  readonly declination: Angle;
  readonly sunsetHourAngle: Angle;
  readonly daylight: Time;
  readonly extraterrestrialRadiation: Irradiance;
  readonly solarRadiation: Irradiance;
  readonly clearSkyRadiation: Irradiance;
  /** `Rs / Rso`, counted as 100 % where it is above. */
  readonly clearness: Share;
  readonly netShortwave: Irradiance;
  readonly netLongwave: Irradiance;
  readonly netRadiation: Irradiance;
  readonly soilHeatFlux: Irradiance;
  readonly findings: readonly Finding[];
}

/** The numbers of a day or a mean day that were read. */
export interface DayNumbers {
  readonly tMin: number;
  readonly tMax: number;
  readonly moisture: MoistureRead;
  readonly sunlight: SunlightRead;
  readonly u2: number;
  readonly latitude: number;
  readonly elevation: number;
  readonly dayOfYear: number;
  readonly soilHeat: number;
}

const kPa = (value: number): Pressure => made(value, "kPa", "pressure");
const perDay = (value: number): Rate => made(value, "mm/d", "length/time");
const energy = (value: number): Irradiance => made(value, "MJ/m2/d", "irradiance");

const paper = "FAO Irrigation and Drainage Paper 56";

/** `Rs / Rso` below which `1.35 Rs / Rso - 0.35` turns negative: the sky would then warm the turf. */
const darkest = 0.35 / 1.35;

/** A day of weather, as far as something in it may be unusual. */
interface DayOfWeather {
  readonly rs: number;
  readonly rso: number;
  readonly ea: number;
  readonly es: number;
  readonly u2: number;
  readonly moisture: MoistureRead;
  readonly sunlight: SunlightRead;
}

const remark = (
  code: string,
  severity: Finding["severity"],
  params: Finding["params"],
  text: string,
): Finding => ({ code: `water/${code}`, severity, params, text, source: paper });

const radiationRemarks = ({ rs, rso }: DayOfWeather): readonly Finding[] => {
  const ratio = rs / rso;
  const said = `The solar radiation is ${ratio.toFixed(2)} times that of a clear sky`;
  const tooBright = `${said}: in the longwave radiation the ratio counts as 1. Check the instrument, or Angstrom's coefficients.`;
  const tooDark = `${said}, less than under the thickest cloud that the longwave radiation is made for: the net radiation comes out too high. Check the instrument.`;
  return [
    ...(exceeds(rs, rso)
      ? [remark("brighter-than-clear-sky", ratio > 1.1 ? "caution" : "note", { ratio }, tooBright)]
      : []),
    ...(ratio < darkest ? [remark("darker-than-overcast", "caution", { ratio }, tooDark)] : []),
  ];
};

const airRemarks = ({ ea, es, u2 }: DayOfWeather): readonly Finding[] => {
  const moist =
    "The air holds more vapor than the mean of its saturation: the wind term is below zero. Check dew point and temperatures.";
  const still = "Wind below 0.5 m/s at 2 m: the source takes 0.5, this figure the wind as given.";
  return [
    ...(ea > es ? [remark("moister-than-saturated", "caution", { actual: ea, saturation: es }, moist)] : []),
    ...(u2 < 0.5 ? [remark("calm", "note", { speed: u2 }, still)] : []),
  ];
};

const notMeasured = ({ moisture, sunlight }: DayOfWeather): readonly Finding[] => {
  const humidity =
    "Humidity was not measured: the dew point counts as the lowest temperature, too moist in dry places.";
  const radiation =
    "Radiation was not measured: it follows from the temperature range, which scatters from day to day.";
  return [
    ...(moisture.saturatedAtMinimum === true ? [remark("moisture-assumed", "note", {}, humidity)] : []),
    ...(sunlight.temperatures !== undefined ? [remark("sunlight-assumed", "note", {}, radiation)] : []),
  ];
};

/** What is unusual in a day of weather, but possible. */
const remarks = (day: DayOfWeather): readonly Finding[] => [
  ...radiationRemarks(day),
  ...airRemarks(day),
  ...notMeasured(day),
];

/** The sun of a day, and what it leaves on the ground. */
const sunOf = (day: DayNumbers) => {
  const { tMin, tMax, dayOfYear: j, elevation: z, latitude: phi } = day;
  const declination = declinationOn(j);
  const sunset = sunsetAt(phi, declination);
  const daylight = (24 / Math.PI) * sunset;
  const ra = dayRadiation(phi, j);
  if (!(ra > 0)) {
    fail(
      "infeasible",
      "latitude",
      described(`${((phi * 180) / Math.PI).toFixed(1)} deg`),
      "a day on which the sun rises: without it the cloudiness is not known",
    );
  }
  const rs = solarOf(day.sunlight, { ra, daylight, range: Math.max(0, tMax - tMin) });
  const rso = clearSkyShare(z) * ra;
  return {
    declination,
    sunset,
    daylight,
    ra,
    rs,
    rso,
    ratio: Math.min(1, rs / rso),
    rns: (1 - grassAlbedo) * rs,
  };
};

/** The vapor in the air, kPa. */
const vaporOf = ({ moisture, tMin, tMax, elevation }: DayNumbers): number => {
  const ea = vaporPressureOf(moisture, tMin, tMax, elevation);
  return exceeds(ea, saturation(tMax))
    ? fail(
        "conflict",
        "moisture",
        described(`${ea.toFixed(3)} kPa`),
        `not more vapor than saturates the air at max, ${saturation(tMax).toFixed(3)} kPa`,
      )
    : ea;
};

/** Works a day through, step by step. */
export const referenceOf = (period: "day" | "month", day: DayNumbers): ReferenceEvapotranspiration => {
  const { tMin, tMax, u2, dayOfYear: j, elevation: z } = day;
  const mean = (tMin + tMax) / 2;
  const es = (saturation(tMin) + saturation(tMax)) / 2;
  const ea = vaporOf(day);
  const { declination, sunset, daylight, ra, rs, rso, ratio, rns } = sunOf(day);
  const rnl = longwave({ tMin, tMax, ea, ratio, sigma: stefanBoltzmannOfDay });
  const [slope, pressure] = [slopeAt(mean), pressureAt(z)];
  const gamma = psychrometric(pressure);
  const terms = penmanTerms({
    t: mean,
    slope,
    gamma,
    energy: rns - rnl - day.soilHeat,
    deficit: es - ea,
    u2,
    constant: 900,
  });
  return {
    type: "reference-evapotranspiration",
    version: 1,
    period,
    value: perDay(terms.radiation + terms.wind),
    radiationTerm: perDay(terms.radiation),
    windTerm: perDay(terms.wind),
    dayOfYear: j,
    meanTemperature: made(mean, "°C", "temperature"),
    pressure: kPa(pressure),
    psychrometricConstant: gamma,
    slope,
    saturationVaporPressure: kPa(es),
    actualVaporPressure: kPa(ea),
    vaporPressureDeficit: kPa(es - ea),
    windAtTwoMeters: made(u2, "m/s", "length/time"),
    inverseSunDistance: distanceOn(j),
    declination: made(declination, "rad", "angle"),
    sunsetHourAngle: made(sunset, "rad", "angle"),
    daylight: made(daylight, "h", "time"),
    extraterrestrialRadiation: energy(ra),
    solarRadiation: energy(rs),
    clearSkyRadiation: energy(rso),
    clearness: made(100 * ratio, "%", "1"),
    netShortwave: energy(rns),
    netLongwave: energy(rnl),
    netRadiation: energy(rns - rnl),
    soilHeatFlux: energy(day.soilHeat),
    findings: remarks({ rs, rso, ea, es, u2, moisture: day.moisture, sunlight: day.sunlight }),
  };
};
