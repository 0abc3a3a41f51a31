import { type Length, lengthIn } from "../lengths.js";
import { type EdgeShape, edgeOf } from "./outlines.js";

/**
 * The length of the edge of a shape: for edging, fence, paint, or one round of a mower.
 *
 * - rectangle `2 (length + width)`, square `4 * side`, triangle and polygon the sum of the sides
 * - circle `2 pi r`; stadium `2 * straight + pi * width`
 * - ellipse: the series of the arithmetic-geometric mean, exact to the last digits; there is no short formula
 * - annulus: both edges, `2 pi (R + r)`
 *
 * In the unit of the first measure. Shapes by height or by offsets do not tell their edge and are refused: walk it with
 * a wheel, or give the corners as a polygon.
 *
 * @throws RatewrightError with every problem of the shape: `missing`, `type`, `unit/mismatch`, `not-finite`, `range`,
 * `conflict`, `infeasible`
 *
 * Source: plane geometry; the ellipse: Abramowitz and Stegun, "Handbook of Mathematical Functions", 17.6 (from memory).
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { perimeter } from "ratewright/site";
 * const ft = (value: number) => quantity(value, "ft");
 * perimeter({ shape: "rectangle", length: ft(120), width: ft(90) }).in("ft"); // => 420
 * Number(perimeter({ shape: "ellipse", length: ft(60), width: ft(40) }).in("ft").toFixed(2)); // => 158.65
 * ```
 */
export const perimeter = (shape: EdgeShape): Length => {
  const { length, units } = edgeOf(shape);
  return lengthIn(length, units);
};
