import { described } from "../../quantity/house.js";
import { checks, fail } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthOf, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";
import { heron } from "./triangle-area.js";

/** A four-sided shape by one diagonal, and what lies on either side of it. */
export type Quadrilateral =
  | {
      readonly diagonal: Length;
      /** Distance of one corner from the diagonal, measured square to it. */
      readonly height1: Length;
      /** The same on the other side. */
      readonly height2: Length;
    }
  | {
      readonly diagonal: Length;
      /** The two sides on one side of the diagonal. */
      readonly a: Length;
      readonly b: Length;
      /** The two sides on the other side of it. */
      readonly c: Length;
      readonly d: Length;
    };

const heights = ["height1", "height2"] as const;
const sides = ["a", "b", "c", "d"] as const;

/**
 * The area of a four-sided shape of any form, from a diagonal inside it.
 *
 * - With the distances of the two other corners from the diagonal, measured square to it:
 *   `A = diagonal * (height1 + height2) / 2`
 * - With the four sides, for a tape alone: two triangles by Heron's formula, `diagonal, a, b` on one side of the
 *   diagonal and `diagonal, c, d` on the other. Four sides without a diagonal do not fix an area.
 *
 * In the square of the unit of the diagonal; all above zero. The corners lie on opposite sides of the diagonal:
 * of a shape with a dent, take the diagonal that runs inside.
 *
 * @throws RatewrightError `missing` where neither set is whole, `conflict` where both are begun; `infeasible`
 * where a triangle does not close; `type`, `unit/mismatch`, `not-finite`, `range`; every length is reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { quadrilateralArea } from "ratewright/site";
 * const ft = (value: number) => quantity(value, "ft");
 * quadrilateralArea({ diagonal: ft(100), height1: ft(40), height2: ft(35) }).in("ft2"); // => 3750
 * quadrilateralArea({ diagonal: ft(50), a: ft(30), b: ft(40), c: ft(30), d: ft(40) }).in("ft2"); // => 1200
 * ```
 */
export const quadrilateralArea = (shape: Quadrilateral): Area => {
  const refused = checks();
  const record = recordWith(shape, ["diagonal", ...heights, ...sides], refused);
  const byHeights = heights.some((key) => record[key] !== undefined);
  const bySides = sides.some((key) => record[key] !== undefined);
  const expected = "height1 and height2, or the four sides a, b, c, d";
  if (byHeights && bySides)
    refused.run(() => fail("conflict", "height1", described("heights and sides"), expected));
  if (!byHeights && !bySides) refused.run(() => fail("missing", "height1", undefined, expected));
  const keys = byHeights ? heights : bySides ? sides : [];
  const diagonal = refused.run(() => lengthOf(record.diagonal, "diagonal"));
  const rest = keys.map((key) => refused.run(() => lengthOf(record[key], key)));
  refused.done();
  const units = unitSet((diagonal as Length).unit);
  const d = (diagonal as Length).in(units.length);
  const [p = 0, q = 0, r = 0, s = 0] = rest.map((length) => (length as Length).in(units.length));
  if (byHeights) return areaIn((d * (p + q)) / 2, units);
  const problems = checks();
  const one = problems.run(() => heron({ diagonal: d, a: p, b: q }, units.length));
  const other = problems.run(() => heron({ diagonal: d, c: r, d: s }, units.length));
  problems.done();
  return areaIn((one as number) + (other as number), units);
};
