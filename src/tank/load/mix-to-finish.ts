import {
  allOf,
  expectFields,
  type Finding,
  inUnit,
  likeQuantity,
  type NeutralSubstance,
  numberIn,
  ofKind,
  perOf,
  type Quantity,
  quantity,
  timesOf,
} from "../../quantity/index.js";
import { applicationVolumeOf, type SprayPerArea, sprayOf } from "../inputs.js";
import { areaOf } from "../rate/amount-for.js";

/** What is still to be mixed to finish a job, and what will be left. */
export interface MixToFinish {
  readonly type: "mix-to-finish";
  readonly version: 1;
  /** Spray that the area still takes. */
  readonly needed: Quantity<"volume", "spray">;
  /** Spray that has to be mixed for it; zero where enough is at hand. */
  readonly toMix: Quantity<"volume", "spray">;
  /** The area for which the products of it are measured out: `toMix / applicationVolume`. */
  readonly mixedFor: Quantity<"area", "none">;
  /** Spray that is left when the area is done. */
  readonly leftOver: Quantity<"volume", "spray">;
  readonly findings: readonly Finding[];
}

/**
 * The smallest mix that finishes a job that is under way: `toMix = applicationVolume * area left + residualVolume +
 * plumbingVolume - at hand`, and never less than zero. What is left over is then
 * `at hand + toMix - applicationVolume * area left`.
 *
 * @param input - `area` still to do, zero or more; `applicationVolume`, more than zero, or a calibration, also
 *   with water (`density` as in {@link tankLoads}); `atHand`, all spray in tank
 *   and hoses now; `residualVolume` and `plumbingVolume` as in {@link tankLoads}; each of them zero where left out
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
 *   applicationVolume: quantity(15, "gal/acre", "spray"),
 *   atHand: quantity(4, "gal", "spray"),
 *   plumbingVolume: quantity(1, "gal", "spray"),
 * });
 * last.toMix.in("gal"); // => 19.5
 * last.mixedFor.in("acre"); // => 1.3
 * last.leftOver.in("gal"); // => 1
 * ```
 */
export const mixToFinish = <A extends NeutralSubstance>(input: {
  readonly area: Quantity<"area", A>;
  readonly applicationVolume: SprayPerArea;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly atHand?: Quantity<"volume", "spray">;
  readonly residualVolume?: Quantity<"volume", "spray">;
  readonly plumbingVolume?: Quantity<"volume", "spray">;
}): MixToFinish => {
  const given = expectFields(input, [
    "area",
    "applicationVolume",
    "density",
    "atHand",
    "residualVolume",
    "plumbingVolume",
  ]);
  const liters = (path: "atHand" | "residualVolume" | "plumbingVolume"): number =>
    given[path] === undefined ? 0 : sprayOf(given[path], path, "non-negative").in("L");
  const { area, spray, atHand, residual, plumbing } = allOf({
    area: () => areaOf(given.area),
    spray: () => applicationVolumeOf(given.applicationVolume, given.density),
    atHand: () => liters("atHand"),
    residual: () => liters("residualVolume"),
    plumbing: () => liters("plumbingVolume"),
  });
  const needed = ofKind<"volume", "spray">(timesOf(spray.value, area, "area"));
  const inUnitOf = (value: number): number => numberIn(quantity(value, "L"), needed.unit);
  const kept = inUnitOf(residual) + inUnitOf(plumbing);
  const toMix = likeQuantity(needed, Math.max(0, needed.value + kept - inUnitOf(atHand)));
  return {
    type: "mix-to-finish",
    version: 1,
    needed,
    toMix,
    mixedFor: inUnit(ofKind<"area", "none">(perOf(toMix, spray.value)), area.unit),
    leftOver: likeQuantity(needed, Math.max(0, inUnitOf(atHand) + toMix.value - needed.value)),
    findings: spray.findings,
  };
};
