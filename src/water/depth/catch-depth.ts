import { expectRecord, fail, plainCopy } from "../../quantity/index.js";
import {
  type Area,
  area,
  isMetric,
  type Length,
  length,
  made,
  optional,
  readRecord,
  type Volume,
  volumeOrNone,
} from "../read.js";

/** The opening of a can: its area, or its diameter where it is round. In square centimeters. */
export const openingOf = (opening: Area | undefined, diameter: Length | undefined): number =>
  opening?.in("cm2") ?? (Math.PI / 4) * (diameter as Length).in("cm") ** 2;

/** Refuses a can that is described twice, or not at all. */
export const expectOneOpening = (input: unknown, path: string): void => {
  const { opening, diameter } = expectRecord(input, "input");
  if (opening === undefined && diameter === undefined)
    fail("missing", path, undefined, "the opening of the can as an area, or its diameter where it is round");
  if (opening !== undefined && diameter !== undefined)
    fail("conflict", path, opening, "either opening or diameter, not both");
};

/**
 * The depth that a catch can shows, `d = V / A`.
 *
 * - `V` what was caught, water, zero or more
 * - `A` the opening of the can, where the rain falls in, not its foot: as `opening`, or from `diameter`
 * - `d` in mm for an opening in metric units, else in inches: `V` in mL by 16.387 and by the square inches
 *
 * @param input.volume - `V`
 * @throws RatewrightError `missing` or `conflict` unless the can is described once; `range`, `unit/mismatch`,
 * `substance/mismatch`, `type`
 *
 * Source: turfgrass information center, photo caption "Catch can, normal" (52 mL at 262 mL to the inch: 0.2 in).
 *
 * @example
 * ```ts
 * import { catchDepth, quantity } from "ratewright";
 * const volume = quantity(52, "mL", "water");
 * Number(catchDepth({ volume, opening: quantity(16, "in2") }).in("in").toFixed(3)); // => 0.198
 * Number(catchDepth({ volume, diameter: quantity(10, "cm") }).in("mm").toFixed(2)); // => 6.62
 * ```
 */
export const catchDepth = (input: {
  readonly volume: Volume;
  readonly opening?: Area;
  readonly diameter?: Length;
}): Length => {
  const given = plainCopy(input);
  const q = readRecord(
    given,
    {
      volume: volumeOrNone,
      opening: (value, path) => {
        expectOneOpening(given, path);
        return optional(area)(value, path);
      },
      diameter: optional(length),
    },
    "a record with volume and opening or diameter",
  );
  const mm = (10 * q.volume.in("mL")) / openingOf(q.opening, q.diameter);
  const metric = isMetric((q.opening ?? q.diameter)?.unit ?? "");
  return metric ? made(mm, "mm", "length") : made(made(mm, "mm", "length").in("in"), "in", "length");
};
