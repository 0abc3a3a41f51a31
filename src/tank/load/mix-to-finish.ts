import {
  allOf,
  expectRecord,
  type NeutralSubstance,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { numberIn, sprayOf, sprayRateOf } from "../inputs.js";
import { areaOf } from "../rate/amount-for.js";

/** What is still to be mixed to finish a job, and what will be left. */
export interface MixToFinish {
  readonly type: "mix-to-finish";
  readonly version: 1;
  /** Spray that the area still takes. */
  readonly needed: Quantity<"volume", "spray">;
  /** Spray that has to be mixed for it; zero where enough is at hand. */
  readonly toMix: Quantity<"volume", "spray">;
  /** The area for which the products of it are measured out: `toMix / sprayRate`. */
  readonly mixedFor: Quantity<"area", "none">;
  /** Spray that is left when the area is done. */
  readonly leftOver: Quantity<"volume", "spray">;
}

/**
 * The smallest mix that finishes a job that is under way: `toMix = sprayRate * area left + deadVolume +
 * hoseVolume - at hand`, and never less than zero. What is left over is then
 * `at hand + toMix - sprayRate * area left`.
 *
 * @param input - `area` still to do, zero or more; `sprayRate`, more than zero; `atHand`, all spray in tank
 *   and hoses now; `deadVolume` and `hoseVolume` as in {@link tankLoads}; each of them zero where left out
 * @throws RatewrightError with every problem: `range`, `unit/mismatch`, `substance/mismatch`, `type`,
 *   `missing` (area)
 *
 * Source: Agrochemical and Pesticide Safety handbook, p. 128, example 4 (volume = area left x rate); dead
 * and hose volume: volumes added up, no source.
 *
 * @example
 * ```ts
 * import { mixToFinish, quantity } from "ratewright";
 * const last = mixToFinish({
 *   area: quantity(1.5, "acre"),
 *   sprayRate: quantity(15, "gal/acre", "spray"),
 *   atHand: quantity(4, "gal", "spray"),
 *   hoseVolume: quantity(1, "gal", "spray"),
 * });
 * last.toMix.in("gal"); // => 19.5
 * last.mixedFor.in("acre"); // => 1.3
 * last.leftOver.in("gal"); // => 1
 * ```
 */
export const mixToFinish = <A extends NeutralSubstance>(input: {
  readonly area: Quantity<"area", A>;
  readonly sprayRate: Quantity<"volume/area", "spray">;
  readonly atHand?: Quantity<"volume", "spray">;
  readonly deadVolume?: Quantity<"volume", "spray">;
  readonly hoseVolume?: Quantity<"volume", "spray">;
}): MixToFinish => {
  expectRecord(input, "input");
  const volume = (path: "atHand" | "deadVolume" | "hoseVolume") =>
    input[path] === undefined ? undefined : sprayOf(input[path], path, "non-negative");
  const { area, sprayRate, ...volumes } = allOf({
    area: () => areaOf(input.area),
    sprayRate: () => sprayRateOf(input.sprayRate),
    atHand: () => volume("atHand"),
    deadVolume: () => volume("deadVolume"),
    hoseVolume: () => volume("hoseVolume"),
  });
  const needed = sprayRate.times(area as Quantity<"area", "none">);
  const read = (path: keyof typeof volumes): number =>
    volumes[path] === undefined ? 0 : numberIn(volumes[path], needed.unit);
  const [atHand, dead, hose] = [read("atHand"), read("deadVolume"), read("hoseVolume")];
  const toMix = Math.max(0, needed.value + dead + hose - atHand);
  const spray = (value: number): Quantity<"volume", "spray"> =>
    quantityOf(value, needed.unit, "spray", "area") as unknown as Quantity<"volume", "spray">;
  return {
    type: "mix-to-finish",
    version: 1,
    needed,
    toMix: spray(toMix),
    mixedFor: spray(toMix).per(sprayRate) as unknown as Quantity<"area", "none">,
    leftOver: spray(Math.max(0, atHand + toMix - needed.value)),
  };
};
