import { checks, fail, outOfRange } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthOf, type UnitSet, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";

/** A stadium by its width and one of two lengths: the whole, or that of a straight. */
export type Stadium =
  | { readonly width: Length; readonly length: Length }
  | { readonly width: Length; readonly straight: Length };

/**
 * The area of a stadium: a rectangle with a half circle on each end, as the infield of a running track.
 *
 * `A = straight * width + pi / 4 * width^2`, where `straight = length - width` and `length` is the whole length,
 * over both half circles. In the square of the unit of `width`, the diameter of the half circles. Give `length`
 * or `straight`, not both; all above zero.
 *
 * @throws RatewrightError `range` where the whole length is not more than the width; `missing`, `conflict`,
 * `type`, `unit/mismatch`, `not-finite`; every length that is not right is reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { stadiumArea } from "ratewright/site";
 * const infield = stadiumArea({ straight: quantity(84.39, "m"), width: quantity(73, "m") });
 * Math.round(infield.in("m2")); // => 10346
 * Math.round(stadiumArea({ length: quantity(157.39, "m"), width: quantity(73, "m") }).in("m2")); // => 10346
 * ```
 */
export const stadiumArea = (shape: Stadium): Area => {
  const { straight, width, units } = stadiumOf(shape);
  return areaIn(straight * width + (Math.PI / 4) * width * width, units);
};

/** The straight and the width of a stadium, as numbers of a unit. */
export const stadiumOf = (
  input: unknown,
): { readonly straight: number; readonly width: number; readonly units: UnitSet } => {
  const problems = checks();
  const record = recordWith(input, ["width", "length", "straight"], problems);
  const { length, straight } = record;
  const width = problems.run(() => lengthOf(record.width, "width"));
  const key = straight === undefined ? "length" : "straight";
  if (length !== undefined && straight !== undefined) {
    problems.run(() => fail("conflict", "length", length, "length, over all, or straight, not both"));
  }
  const along = problems.run(() =>
    length === undefined && straight === undefined
      ? fail("missing", "length", length, "length, over all, or straight, which is all but the two ends")
      : lengthOf(record[key], key),
  );
  problems.done();
  const units = unitSet((width as Length).unit);
  const [w, l] = [(width as Length).in(units.length), (along as Length).in(units.length)];
  const rest = key === "straight" ? l : l - w;
  return rest > 0
    ? { straight: rest, width: w, units }
    : outOfRange(
        "length",
        length,
        { above: w, unit: units.length },
        "{}, the width; a round shape goes to circleArea",
      );
};
