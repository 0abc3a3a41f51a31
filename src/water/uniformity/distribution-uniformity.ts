import { made, readRecord, type Share, word } from "../read.js";
import { type Catches, lowShare, type Remainder, readCatches } from "./catches.js";

/**
 * Distribution uniformity: the mean of the driest cans by the mean of all, `DU = 100 * mean(lowest) / mean(all)`.
 *
 * - `catches` depths, rates, or volumes from cans of one opening; at least 4, an empty can is 0
 * - `part`: `"lower quarter"`, the default, or `"lower half"`
 * - `remainder`, where the cans do not divide by 4 or 2: `"nearest"` number of cans, the default, a half going up;
 *   `"up"`, `"down"`, or `"refuse"`
 *
 * Each can stands for the same ground: put them on a grid. One extension asks for a number that divides by 4, at least
 * 24; another for at least 20 a zone.
 *
 * @throws RatewrightError `missing`, `range` for a catch below zero, empty cans only, or a remainder that is refused;
 * `unit/mismatch`, `substance/mismatch`, `not-finite` with the index of the can; `type`
 *
 * Source: J. Merriam and J. Keller, "Farm irrigation system evaluation", 1978, for the lower quarter; reference page of
 * North Carolina State University for 15 cans: 49.62 and, for the lower half, 71.58 %.
 *
 * @example
 * ```ts
 * import { distributionUniformity, quantity } from "ratewright";
 * const cans = [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12];
 * const catches = cans.map((value) => quantity(value, "mL", "water"));
 * distributionUniformity({ catches }).in("%").toFixed(2); // => "49.62"
 * distributionUniformity({ catches, part: "lower half" }).in("%").toFixed(2); // => "71.58"
 * ```
 */
export const distributionUniformity = (input: {
  readonly catches: Catches;
  readonly part?: "lower quarter" | "lower half";
  readonly remainder?: Remainder;
}): Share => {
  const q = readRecord(
    input,
    {
      catches: readCatches(4),
      part: word(["lower quarter", "lower half"], "lower quarter"),
      remainder: word(["nearest", "up", "down", "refuse"], "nearest"),
    },
    "a record with catches",
  );
  return made(lowShare(q.catches, q.part === "lower quarter" ? 4 : 2, q.remainder), "%", "1");
};
