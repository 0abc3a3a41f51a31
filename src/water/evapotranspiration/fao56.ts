/**
 * The equations of FAO-56 on plain numbers, in the units of the paper: °C, kPa, MJ/m2, m/s, radians. What the functions
 * with quantities and the array kernels share; numbers of the equations in brackets.
 *
 * Source: R. Allen, L. Pereira, D. Raes and M. Smith, "Crop evapotranspiration", FAO Irrigation and Drainage Paper 56,
 * 1998, chapters 3 and 4; the equations as two public programs and the manual of a weather station repeat them.
 */

/** Solar constant, MJ/m2/min. */
const solarConstant = 0.082;
/** Stefan-Boltzmann constant for a day, MJ/m2/K4, as the paper prints it. */
export const stefanBoltzmannOfDay = 4.903e-9;
/**
 * The same for an hour, MJ/m2/K4: 4.903e-9 / 24, rounded as public programs after the paper have it. The ASCE standardized
 * equation prints 2.042e-10, 0.05 % less.
 */
export const stefanBoltzmannOfHour = 2.043e-10;
/** 0 °C in K, as the paper prints it for radiation; 273.15 is exact. */
const kelvinOfRadiation = 273.16;
/** Water evaporated by energy, mm per MJ/m2: 1/2.45. */
export const mmPerMJ = 0.408;
/** Saturation vapor pressure (11). */
export const saturation = (t: number): number => 0.6108 * Math.exp((17.27 * t) / (t + 237.3));

/** Slope of its curve, kPa/°C (13), from the saturation vapor pressure at the temperature. */
export const slopeAt = (t: number): number => (4098 * saturation(t)) / ((t + 237.3) * (t + 237.3));

/** Pressure of the air by elevation (7). */
export const pressureAt = (z: number): number => 101.3 * ((293 - 0.0065 * z) / 293) ** 5.26;

/** Psychrometric constant, kPa/°C (8). */
export const psychrometric = (p: number): number => 0.000665 * p;

/** Inverse relative distance from the Earth to the Sun (23). */
export const distanceOn = (j: number): number => 1 + 0.033 * Math.cos(((2 * Math.PI) / 365) * j);

/** Extraterrestrial radiation of a day (21). */
export const extraterrestrialOf = (
  distance: number,
  latitude: number,
  declination: number,
  sunset: number,
): number =>
  ((24 * 60) / Math.PI) *
  solarConstant *
  distance *
  (sunset * Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));

/** Extraterrestrial radiation between two hour angles (28), in MJ/m2 of the period. */
export const extraterrestrialBetween = (sun: {
  readonly distance: number;
  readonly latitude: number;
  readonly declination: number;
  readonly from: number;
  readonly to: number;
}): number =>
  ((12 * 60) / Math.PI) *
  solarConstant *
  sun.distance *
  ((sun.to - sun.from) * Math.sin(sun.latitude) * Math.sin(sun.declination) +
    Math.cos(sun.latitude) * Math.cos(sun.declination) * (Math.sin(sun.to) - Math.sin(sun.from)));

/** Seasonal correction of solar time, hours (32, 33). */
export const seasonalCorrection = (j: number): number => {
  const b = (2 * Math.PI * (j - 81)) / 364;
  return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
};

/** Share of the extraterrestrial radiation that a clear sky lets through (37). */
export const clearSkyShare = (z: number): number => 0.75 + 2e-5 * z;

/** Net longwave radiation (39); `sigma` is the constant for the period, `ratio` is Rs/Rso, at most 1. */
export const longwave = (air: {
  readonly tMin: number;
  readonly tMax: number;
  readonly ea: number;
  readonly ratio: number;
  readonly sigma: number;
}): number =>
  air.sigma *
  (((air.tMax + kelvinOfRadiation) ** 4 + (air.tMin + kelvinOfRadiation) ** 4) / 2) *
  (0.34 - 0.14 * Math.sqrt(air.ea)) *
  (1.35 * air.ratio - 0.35);

/** What the equation of Penman and Monteith is made of. */
export interface PenmanTerms {
  readonly radiation: number;
  readonly wind: number;
}

/** The two terms of reference evapotranspiration (6, 53), mm; `constant` is 900 for days and 37 for hours. */
export const penmanTerms = (air: {
  readonly t: number;
  readonly slope: number;
  readonly gamma: number;
  readonly energy: number;
  readonly deficit: number;
  readonly u2: number;
  readonly constant: 900 | 37;
}): PenmanTerms => {
  const below = air.slope + air.gamma * (1 + 0.34 * air.u2);
  return {
    radiation: (mmPerMJ * air.slope * air.energy) / below,
    wind: (((air.gamma * air.constant) / (air.t + 273)) * air.u2 * air.deficit) / below,
  };
};
