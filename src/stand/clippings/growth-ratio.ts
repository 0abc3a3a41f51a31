import { allOf, expectFields, fail, type Quantity, quantity } from "../../quantity/index.js";
import { given } from "../read.js";

type VolumePerArea = Quantity<"volume/area", "none">;

/** How the grass grows against how it is wanted to. */
export interface GrowthRatio {
  readonly type: "growth-ratio";
  readonly version: 1;
  /** Clippings a day, in the unit of the measured ones a day. */
  readonly measured: Quantity<"volume/area/time", "none">;
  readonly wanted: Quantity<"volume/area/time", "none">;
  /** Measured by wanted: above 1 the grass grows faster than wanted. */
  readonly ratio: number;
  /** The usual rate times wanted by measured; `null` where none was given or nothing grew. */
  readonly nitrogen: Quantity<"mass/area", "N"> | null;
}

/**
 * The growth ratio: clippings that were mown by clippings that are wanted, each over its own days,
 * `G = (V / t) / (Vw / tw)`. With a usual rate of nitrogen, the rate that follows: `N Gw`, `Gw = 1 / G`.
 *
 * The usual rate has to be low enough to be multiplied. Where nothing grew no rate follows: cold, drought or
 * disease may be why, and nitrogen does not answer them.
 *
 * @param input.measured - volume per area, zero or more, and the days over which it grew
 * @param input.wanted - volume per area, more than zero, and its days
 * @param input.nitrogen - the usual rate for one application
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`; all that are found
 * Source: Asian Turfgrass Center, "Growth ratio, nitrogen harvest, and fertilizer adjustment".
 *
 * @example
 * ```ts
 * import { growthRatio, quantity } from "ratewright";
 * const week = growthRatio({
 *   measured: { volume: quantity(140, "mL/m2"), time: quantity(7, "d") },
 *   wanted: { volume: quantity(16, "mL/m2"), time: quantity(1, "d") },
 *   nitrogen: quantity(0.5, "g/m2", "N"),
 * });
 * week.ratio; // => 1.25
 * week.nitrogen?.in("g/m2"); // => 0.4
 * ```
 */
export const growthRatio = (input: {
  readonly measured: { readonly volume: VolumePerArea; readonly time: Quantity<"time", "none"> };
  readonly wanted: { readonly volume: VolumePerArea; readonly time: Quantity<"time", "none"> };
  readonly nitrogen?: Quantity<"mass/area", "N">;
}): GrowthRatio => {
  const record = expectFields(input, ["measured", "wanted", "nitrogen"]);
  const { measured, wanted, usual } = allOf({
    measured: () => perDay(record.measured, "measured", "non-negative"),
    wanted: () => perDay(record.wanted, "wanted", "positive"),
    usual: () =>
      record.nitrogen === undefined
        ? null
        : given(record.nitrogen, "nitrogen", "mass/area", "N", "non-negative"),
  });
  const [now, goal] = [measured.value, wanted.in(measured.unit as "mL/m2/d")];
  const ratio = now / goal;
  if (!Number.isFinite(ratio))
    fail("range", "wanted.volume", record.wanted, "a volume that the measured one can be compared with");
  return {
    type: "growth-ratio",
    version: 1,
    measured,
    wanted,
    ratio,
    nitrogen:
      usual === null || now === 0 ? null : quantity((usual.value * goal) / now, usual.unit as "g/m2", "N"),
  };
};

const perDay = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative",
): Quantity<"volume/area/time", "none"> => {
  const record = expectFields(input, ["volume", "time"], path, "a record with volume and time");
  const { volume, time } = allOf({
    volume: () => given(record.volume, `${path}.volume`, "volume/area", "none", bound),
    time: () => given(record.time, `${path}.time`, "time", "none"),
  });
  return quantity(volume.value / time.in("d"), `${volume.unit}/d` as "mL/m2/d");
};
