import { expectWithin } from "../../numeric/house.js";
import { fail, quantity, toldBy } from "../../quantity/index.js";
import { windAtHeight } from "../../weather/index.js";
import {
  type Length,
  length,
  made,
  type Pressure,
  pressure,
  type Rate,
  type Read,
  readRecord,
} from "../read.js";
import { pressureAt, psychrometric } from "./fao56.js";
import { elevation, speed } from "./weather.js";

/**
 * The pressure of the air by elevation, `P = 101.3 ((293 - 0.0065 z) / 293)^5.26`, in kPa.
 *
 * - `z` elevation above the sea, -500 to 9000 m
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 7 and example 2 (1800 m: 81.8 kPa).
 *
 * @example
 * ```ts
 * import { atmosphericPressure, quantity } from "ratewright";
 * atmosphericPressure({ elevation: quantity(1800, "m") }).in("kPa").toFixed(1); // => "81.8"
 * ```
 */
export const atmosphericPressure = (input: { readonly elevation: Length }): Pressure => {
  const q = readRecord(input, { elevation }, "a record with elevation");
  return made(pressureAt(q.elevation.in("m")), "kPa", "pressure");
};

/** The air of the highest summit has 34 kPa, and no barometer stood above 108.5 (from memory). */
const airPressure: Read<Pressure> = (input, path) => {
  const q = pressure(input, path);
  return expectWithin(
    q,
    q.in("kPa"),
    path,
    { min: 30, max: 110, unit: "kPa" },
    "a pressure of the air of {}",
  );
};

/**
 * The psychrometric constant, `gamma = 0.000665 P`, a number in kPa/°C: there is no unit of it here.
 *
 * - `P` pressure of the air, see {@link atmosphericPressure}
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 8 and example 2 (81.8 kPa: 0.054).
 *
 * @example
 * ```ts
 * import { psychrometricConstantKPaPerC, quantity } from "ratewright";
 * psychrometricConstantKPaPerC({ pressure: quantity(81.8, "kPa") }).toFixed(3); // => "0.054"
 * ```
 */
export const psychrometricConstantKPaPerC = (input: { readonly pressure: Pressure }): number =>
  psychrometric(readRecord(input, { pressure: airPressure }, "a record with pressure").pressure.in("kPa"));

/** Wind as it was measured: its speed, and how high above the ground. A `WindReading` of the weather room is one. */
export interface Wind {
  readonly speed: Rate;
  readonly height: Length;
}

/** Takes wind with its height as the wind at 2 m over short grass, in m/s (47). */
export const readWind: Read<number> = (input, path) => {
  if (input === undefined) fail("missing", path, input, "a record with speed and height");
  const { speed: wind, height } = readRecord(
    input,
    { speed, height: length, type: kept, version: kept },
    "a record with speed and height",
    path,
  );
  return toldBy({ wind: `${path}.speed`, from: `${path}.height` }, () =>
    windAtHeight({ wind, from: height, to: quantity(2, "m") }).in("m/s"),
  );
};

/** What a wind reading says of itself. */
const kept: Read<unknown> = (input) => input;
