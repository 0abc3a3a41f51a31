import { checks, outOfRange, Quantity } from "../../quantity/index.js";
import { type Area, areaOf } from "../areas.js";
import { type Length, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";

/** The unit of length whose square a unit of area is, for a length that is worked out from an area alone. */
const sideUnits: Readonly<Record<string, "m" | "cm" | "in" | "ft" | "yd">> = {
  m2: "m",
  cm2: "cm",
  "100 m2": "m",
  ha: "m",
  in2: "in",
  yd2: "yd",
};

/** A length above zero in the unit that goes with an area. */
const sideOf = (area: Area, side: (square: number) => number): Length => {
  const unit = sideUnits[area.unit] ?? "ft";
  return positive(side(area.in(`${unit}2`)), unit);
};

const positive = (value: number, unit: string): Length =>
  value > 0 || !Number.isFinite(value)
    ? new Quantity(value, unit, "none", "length")
    : outOfRange("area", value, { above: 0 }, "an area that makes a length of {}");

/** Reads an area and one length; gives the numbers in one unit and makes the length. */
const lengthFrom = <const K extends string>(
  input: unknown,
  key: K,
  other: (area: number, given: number) => number,
): Length => {
  const problems = checks();
  const record = recordWith(input, ["area", key], problems, "input");
  const area = problems.run(() => areaOf(record.area, "area", ["treated"]));
  const given = problems.run(() => lengthOf(record[key], key));
  problems.done();
  const length = given as Length;
  const metric = /m$/.test(length.unit) && length.unit !== "nmi";
  const [unit, squared] = metric
    ? (["m", "m2"] as const)
    : length.unit === "yd"
      ? (["yd", "yd2"] as const)
      : (["ft", "ft2"] as const);
  return positive(other((area as Area).in(squared), length.in(unit)), unit);
};

/**
 * The side of the square that has an area: the size of a test plot.
 *
 * `side = sqrt(A)`, in the unit of length whose square the area is in: ft for ft2, 1000 ft2 and acres, m for m2
 * and ha. The area is above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`
 *
 * Source: the inverse of {@link squareArea}.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { squareSide } from "ratewright/site";
 * squareSide(quantity(14400, "ft2")).in("ft"); // => 120
 * Math.round(squareSide(quantity(1, "acre")).in("ft")); // => 209
 * ```
 */
export const squareSide = (area: Area | Quantity<"area", "treated">): Length =>
  sideOf(areaOf(area, "area", ["treated"]), Math.sqrt);

/**
 * The diameter of the circle that has an area.
 *
 * `diameter = 2 * sqrt(A / pi)`, in the unit of length whose square the area is in: ft for ft2, 1000 ft2 and
 * acres, m for m2 and ha. The area is above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`
 *
 * Source: the inverse of {@link circleArea}.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { circleDiameter } from "ratewright/site";
 * Number(circleDiameter(quantity(1000, "ft2")).in("ft").toFixed(2)); // => 35.68
 * ```
 */
export const circleDiameter = (area: Area | Quantity<"area", "treated">): Length =>
  sideOf(areaOf(area, "area", ["treated"]), (a) => 2 * Math.sqrt(a / Math.PI));

/**
 * The length of a rectangle that has an area at a known width: how far to mark out, or to walk with a swath.
 *
 * `length = A / width`, in ft, yd or m, as the width. Both above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: the inverse of {@link rectangleArea}.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { rectangleLength } from "ratewright/site";
 * rectangleLength({ area: quantity(1000, "ft2"), width: quantity(8, "ft") }).in("ft"); // => 125
 * Number(rectangleLength({ area: quantity(1, "acre"), width: quantity(15, "in") }).in("ft").toFixed(1)); // => 34848
 * ```
 */
export const rectangleLength = (input: {
  readonly area: Area | Quantity<"area", "treated">;
  readonly width: Length;
}): Length => lengthFrom(input, "width", (area, width) => area / width);

/**
 * The height of a triangle that has an area on a known base.
 *
 * `height = 2 * A / base`, square to the base, in ft, yd or m, as the base. Both above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: the inverse of {@link triangleArea}.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { triangleHeight } from "ratewright/site";
 * triangleHeight({ area: quantity(4000, "ft2"), base: quantity(200, "ft") }).in("ft"); // => 40
 * ```
 */
export const triangleHeight = (input: {
  readonly area: Area | Quantity<"area", "treated">;
  readonly base: Length;
}): Length => lengthFrom(input, "base", (area, base) => (2 * area) / base);

/**
 * The length of an ellipse that has an area at a known width.
 *
 * `length = 4 * A / (pi * width)`, the full axis, in ft, yd or m, as the width. Both above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: the inverse of {@link ellipseArea}.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { ellipseLength } from "ratewright/site";
 * Number(ellipseLength({ area: quantity(1885, "ft2"), width: quantity(40, "ft") }).in("ft").toFixed(1)); // => 60
 * ```
 */
export const ellipseLength = (input: {
  readonly area: Area | Quantity<"area", "treated">;
  readonly width: Length;
}): Length => lengthFrom(input, "width", (area, width) => (4 * area) / (Math.PI * width));

/**
 * The width of the ring that has an area around a circle, such as a collar of a known area around a green.
 *
 * `width = sqrt(d^2 / 4 + A / pi) - d / 2`, with `d` the inner diameter, in ft, yd or m, as the diameter. Both
 * above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: the inverse of {@link annulusArea}.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { annulusWidth } from "ratewright/site";
 * Number(annulusWidth({ area: quantity(1056, "ft2"), innerDiameter: quantity(80, "ft") }).in("ft").toFixed(2)); // => 4
 * ```
 */
export const annulusWidth = (input: {
  readonly area: Area | Quantity<"area", "treated">;
  readonly innerDiameter: Length;
}): Length =>
  lengthFrom(input, "innerDiameter", (area, d) => {
    const more = area / Math.PI;
    // the difference of two roots, written so that a thin ring keeps its digits
    return more / (Math.sqrt((d * d) / 4 + more) + d / 2);
  });
