import { expectFloat64Array } from "../../numeric/house.js";
import { expectFields, fail, outOfRange } from "../../quantity/index.js";
import { dayRadiation } from "./extraterrestrial-radiation.js";
import {
  clearSkyShare,
  longwave,
  penmanTerms,
  pressureAt,
  psychrometric,
  saturation,
  slopeAt,
  stefanBoltzmannOfDay,
} from "./fao56.js";
import { hargreavesOf } from "./hargreaves.js";

/** The weather of many station-days, one array a figure, all of one length. */
export interface StationDays {
  readonly tMinC: Float64Array;
  readonly tMaxC: Float64Array;
  readonly vaporPressureKPa: Float64Array;
  readonly windAtTwoMetersMPerS: Float64Array;
  readonly solarMJPerM2D: Float64Array;
  readonly elevationM: Float64Array;
  readonly latitudeDeg: Float64Array;
  readonly dayOfYear: Float64Array;
  /** Takes the result; a new array where left out. */
  readonly outMmPerD?: Float64Array;
}

const names = [
  "tMinC",
  "tMaxC",
  "vaporPressureKPa",
  "windAtTwoMetersMPerS",
  "solarMJPerM2D",
  "elevationM",
  "latitudeDeg",
  "dayOfYear",
] as const;

type Name = (typeof names)[number];

const bounds: Readonly<Record<Name, readonly [least: number, most: number, unit: string, what: string]>> = {
  tMinC: [-90, 60, "°C", "an air temperature"],
  tMaxC: [-90, 60, "°C", "an air temperature"],
  vaporPressureKPa: [0, 20, "kPa", "a vapor pressure"],
  windAtTwoMetersMPerS: [0, 120, "m/s", "a wind speed"],
  solarMJPerM2D: [0, 50, "MJ/m2/d", "a radiation"],
  elevationM: [-500, 9000, "m", "an elevation"],
  latitudeDeg: [-90, 90, "deg", "a latitude"],
  dayOfYear: [1, 366, "d", "a day of the year"],
};

const arrayOf = (value: unknown, path: string, length: number | undefined): Float64Array => {
  const array = expectFloat64Array(value, path);
  return length === undefined || array.length === length
    ? array
    : fail("conflict", path, array.length, `${length} places, one for each day`);
};

/** Says what is wrong with a bad day; `otherwise` where each of its figures could be. */
const refuse = <N extends Name>(
  days: Readonly<Record<N | "tMinC" | "tMaxC", Float64Array>>,
  fields: readonly N[],
  i: number,
  otherwise: () => never,
): never => {
  for (const name of fields) {
    const value = days[name][i] as number;
    const [min, max, unit, what] = bounds[name];
    if (!Number.isFinite(value)) fail("not-finite", `${name}[${i}]`, value, "a finite number");
    if (value < min || value > max) outOfRange(`${name}[${i}]`, value, { min, max, unit }, `${what} of {}`);
  }
  const [low, high] = [days.tMinC[i] as number, days.tMaxC[i] as number];
  if (low > high) fail("conflict", `tMinC[${i}]`, low, `not more than tMaxC[${i}], which is ${high}`);
  return otherwise();
};

/**
 * Reference evapotranspiration of many station-days, mm/d: the array form of {@link dailyReferenceEvapotranspiration}, which
 * goes through the same equations. Humidity comes as vapor pressure, radiation as measured or computed, wind at 2 m.
 *
 * - `tMinC`, `tMaxC` °C; `vaporPressureKPa`; `windAtTwoMetersMPerS`; `solarMJPerM2D`; `elevationM`; `latitudeDeg` negative in
 *   the south; `dayOfYear` 1 to 366, one place a day
 * - `outMmPerD` takes the result; a new array where left out. It may be below zero: dew
 *
 * @throws RatewrightError `not-finite`, `range`, `conflict` with the index of the first bad day; `infeasible` where the sun
 * does not rise; `conflict` where lengths differ; `type`, `missing`
 *
 * Source: as {@link dailyReferenceEvapotranspiration}.
 *
 * @example
 * ```ts
 * import { referenceEvapotranspirationsMmPerD } from "ratewright";
 * const of = (value: number) => Float64Array.of(value);
 * const et = referenceEvapotranspirationsMmPerD({
 *   tMinC: of(12.3), tMaxC: of(21.5), vaporPressureKPa: of(1.409), windAtTwoMetersMPerS: of(2.078),
 *   solarMJPerM2D: of(22.07), elevationM: of(100), latitudeDeg: of(50.8), dayOfYear: of(187),
 * });
 * et[0]?.toFixed(2); // => "3.88"
 * ```
 */
export const referenceEvapotranspirationsMmPerD = (days: StationDays): Float64Array => {
  expectFields(days, [...names, "outMmPerD"], "input", "a record of arrays of station-days");
  const tMin = arrayOf(days.tMinC, "tMinC", undefined);
  const n = tMin.length;
  const [tMax, ea, u2, rs, z, lat, day] = names.slice(1).map((name) => arrayOf(days[name], name, n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const out = days.outMmPerD === undefined ? new Float64Array(n) : arrayOf(days.outMmPerD, "outMmPerD", n);
  for (let i = 0; i < n; i++) {
    // One by one: a list of them would be made on every day until the loop is compiled.
    const low = tMin[i] as number;
    const high = tMax[i] as number;
    const e = ea[i] as number;
    const u = u2[i] as number;
    const sun = rs[i] as number;
    const up = z[i] as number;
    const phi = ((lat[i] as number) * Math.PI) / 180;
    const j = day[i] as number;
    const sound =
      low >= -90 &&
      high <= 60 &&
      low <= high &&
      e >= 0 &&
      e <= 20 &&
      u >= 0 &&
      u <= 120 &&
      sun >= 0 &&
      sun <= 50 &&
      up >= -500 &&
      up <= 9000 &&
      phi >= -Math.PI / 2 &&
      phi <= Math.PI / 2 &&
      j >= 1 &&
      j <= 366;
    const ra = sound ? dayRadiation(phi, j) : 0;
    if (!(ra > 0))
      return refuse(days, names, i, () =>
        fail("infeasible", `latitudeDeg[${i}]`, days.latitudeDeg[i], "a day on which the sun rises"),
      );
    const ratio = sun / (clearSkyShare(up) * ra);
    const t = (low + high) / 2;
    const slope = slopeAt(t);
    const gamma = psychrometric(pressureAt(up));
    const net =
      0.77 * sun -
      longwave({ tMin: low, tMax: high, ea: e, ratio: Math.min(1, ratio), sigma: stefanBoltzmannOfDay });
    const deficit = (saturation(low) + saturation(high)) / 2 - e;
    const { radiation, wind } = penmanTerms({ t, slope, gamma, energy: net, deficit, u2: u, constant: 900 });
    out[i] = radiation + wind + 0;
  }
  return out;
};

/**
 * Reference evapotranspiration of many station-days by Hargreaves and Samani, mm/d: the array form of
 * {@link hargreavesEvapotranspiration}.
 *
 * - `tMinC`, `tMaxC` °C, their mean at least -17.8; `latitudeDeg` negative in the south; `dayOfYear` 1 to 366
 * - `outMmPerD` takes the result; a new array where left out
 *
 * @throws RatewrightError `not-finite`, `range`, `conflict` with the index of the first bad day; `conflict` where lengths
 * differ; `type`, `missing`
 *
 * Source: as {@link hargreavesEvapotranspiration}.
 *
 * @example
 * ```ts
 * import { hargreavesEvapotranspirationsMmPerD } from "ratewright";
 * const of = (value: number) => Float64Array.of(value);
 * const days = { tMinC: of(14.8), tMaxC: of(26.6), latitudeDeg: of(45.72), dayOfYear: of(196) };
 * hargreavesEvapotranspirationsMmPerD(days)[0]?.toFixed(2); // => "5.03"
 * ```
 */
export const hargreavesEvapotranspirationsMmPerD = (
  days: Pick<StationDays, "tMinC" | "tMaxC" | "latitudeDeg" | "dayOfYear" | "outMmPerD">,
): Float64Array => {
  const fields = ["tMinC", "tMaxC", "latitudeDeg", "dayOfYear"] as const;
  expectFields(days, [...fields, "outMmPerD"], "input", "a record of arrays of station-days");
  const tMin = arrayOf(days.tMinC, "tMinC", undefined);
  const n = tMin.length;
  const [tMax, lat, day] = fields.slice(1).map((name) => arrayOf(days[name], name, n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const out = days.outMmPerD === undefined ? new Float64Array(n) : arrayOf(days.outMmPerD, "outMmPerD", n);
  for (let i = 0; i < n; i++) {
    const low = tMin[i] as number;
    const high = tMax[i] as number;
    const phi = ((lat[i] as number) * Math.PI) / 180;
    const j = day[i] as number;
    const sound =
      low >= -90 &&
      high <= 60 &&
      low <= high &&
      (low + high) / 2 >= -17.8 &&
      phi >= -Math.PI / 2 &&
      phi <= Math.PI / 2 &&
      j >= 1 &&
      j <= 366;
    if (!sound)
      return refuse(days, fields, i, () =>
        outOfRange(`tMaxC[${i}]`, high, { min: -17.8, unit: "°C" }, "a mean temperature of {}"),
      );
    out[i] = hargreavesOf(low, high, dayRadiation(phi, j)) + 0;
  }
  return out;
};
