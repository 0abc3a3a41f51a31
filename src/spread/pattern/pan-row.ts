import { wholeUnitsFor } from "../../numeric/index.js";
import { expectFields, quantity } from "../../quantity/index.js";
import { fieldsOf, type Length } from "../inputs.js";

/** How long a row of pans has to be. */
export interface PanRow {
  readonly type: "pan-row";
  readonly version: 1;
  readonly least: Length;
  readonly most: Length;
  /** Pans for the least and the most, one of them at the center; left out without a spacing. */
  readonly pans?: { readonly least: number; readonly most: number };
}

/**
 * How long a row of pans should be for a pattern test.
 *
 * `1.5 w` to `2 w`, with `w` the expected effective swath; pans for a length `L` at the spacing `d`:
 * `2 ceil(L / (2 d)) + 1`, the same on both sides of the one at the center.
 *
 * The row has to reach past the last granule on both sides: what falls beyond it is not weighed. Pans are
 * not set in wheel tracks.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: Ohio State University Extension, bulletin 817, pattern method.
 *
 * @example
 * ```ts
 * import { panRow, quantity } from "ratewright";
 * const row = panRow({ swath: quantity(12, "ft"), spacing: quantity(1, "ft") });
 * row.least.in("ft"); // => 18
 * row.most.in("ft"); // => 24
 * row.pans; // => { least: 19, most: 25 }
 * ```
 */
export const panRow = (input: { readonly swath: Length; readonly spacing?: Length }): PanRow => {
  const { swath, spacing } = fieldsOf(
    expectFields(input, ["swath", "spacing"], "input", "a record with swath"),
    {
      swath: { dimension: "length" },
      spacing: { dimension: "length", optional: true },
    },
  );
  const pansFor = (times: number): number => {
    const half = (times * swath.value) / 2;
    return 2 * wholeUnitsFor(half, (spacing as Length).in(swath.unit as "ft")) + 1;
  };
  const length = (times: number): Length => quantity(times * swath.value, swath.unit as "ft");
  return {
    type: "pan-row",
    version: 1,
    least: length(1.5),
    most: length(2),
    ...(spacing && { pans: { least: pansFor(1.5), most: pansFor(2) } }),
  };
};
