import { fail } from "../../quantity/index.js";
import {
  type Flow,
  flow,
  type Length,
  length,
  made,
  percent,
  type Read,
  readRecord,
  type Share,
} from "../read.js";
import { kPaPerMeter } from "./pressure-of-height.js";

/** The power that a pump puts into the water, and the power that it takes at its shaft. */
export interface PumpPower {
  readonly type: "pump-power";
  readonly version: 1;
  /** What the water takes up. */
  readonly waterHorsepower: number;
  /** What the shaft of the pump takes. */
  readonly brakeHorsepower: number;
  /** The water horsepower, in kilowatts. */
  readonly waterKilowatts: number;
  /** The brake horsepower, in kilowatts. */
  readonly brakeKilowatts: number;
}

/** 550 ft lb/s, of the foot, the pound and standard gravity. */
const kilowattsPerHorsepower = (550 * 0.3048 * 0.45359237 * 9.80665) / 1000;

const head: Read<Length> = (input, path) => {
  const dimension: unknown = Object(input).dimension;
  const unit: unknown = Object(input).unit;
  return dimension === "pressure" || (typeof unit === "string" && /^(psi|kPa|bar|Pa)$/.test(unit))
    ? fail("unit/mismatch", path, input, "a head: pressureHead({ pressure }) makes one of a pressure")
    : length(input, path);
};

/**
 * The power of a pump that lifts water: `P = rho g Q H`, the water horsepower; `P / e`, the brake horsepower.
 *
 * - `flow` `Q` of water; `head` `H`, the total dynamic head: lift to the pump, rise from there to the heads, friction and the
 *   pressure at the heads as a head ({@link pressureHead}), added up
 * - `efficiency` `e` of the pump at that flow and head, above 0 to 100 %, from its curve: not assumed. Motor and drive take
 *   more on top
 *
 * Handbooks print `gal/min x ft / 3960`, which takes 8.33 lb to the gallon; here it is that of 1000 kg/m3, 0.14 % more, as
 * in {@link pressureOfHeight}. A motor is larger than the brake horsepower: the next size of the maker, for the whole curve.
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch` (of a pressure, with what makes a head of it),
 * `substance/mismatch`, `type` for a bare number
 *
 * Source: "Calculating horsepower requirements and sizing irrigation supply pipelines", Texas Agricultural Extension Service
 * B-6011; "The pumping unit", Alabama Cooperative Extension ANR-548 (both equations). Standard gravity 9.80665 m/s2; a
 * horsepower is 550 ft lb/s.
 *
 * @example
 * ```ts
 * import { pumpPower, quantity } from "ratewright";
 * const pump = pumpPower({
 *   flow: quantity(60, "gal/min", "water"), head: quantity(150, "ft"), efficiency: quantity(60, "%"),
 * });
 * pump.waterHorsepower.toFixed(1); // => "2.3"
 * pump.brakeHorsepower.toFixed(1); // => "3.8"
 * pump.brakeKilowatts.toFixed(1); // => "2.8"
 * ```
 */
export const pumpPower = (input: {
  readonly flow: Flow;
  readonly head: Length;
  readonly efficiency: Share;
}): PumpPower => {
  const q = readRecord(
    input,
    { flow, head, efficiency: percent({ above: 0, max: 100 }, 1) },
    "a record with flow, head and efficiency",
  );
  const waterKilowatts = (q.flow.in("m3/h") / 3600) * q.head.in("m") * kPaPerMeter;
  const brakeKilowatts = (waterKilowatts * 100) / q.efficiency;
  return {
    type: "pump-power",
    version: 1,
    waterHorsepower: finite(waterKilowatts / kilowattsPerHorsepower),
    brakeHorsepower: finite(brakeKilowatts / kilowattsPerHorsepower),
    waterKilowatts: finite(waterKilowatts),
    brakeKilowatts: finite(brakeKilowatts),
  };
};

/** A power that is a number still; refused as every result of this room is. */
const finite = (power: number): number => made(power, "1", "1").value;
