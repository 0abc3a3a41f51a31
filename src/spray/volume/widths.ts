import { notShare } from "../../numeric/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  inUnit,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Length, positive, type Share, wholeNumber } from "../inputs.js";

/**
 * The width that one nozzle stands for where several treat a row: row width over the number of nozzles.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: University of Missouri Extension G1270A, definition of nozzle width.
 *
 * @example
 * ```ts
 * import { quantity, widthPerNozzle } from "ratewright";
 * widthPerNozzle({ row: quantity(40, "in"), nozzles: 2 }).in("in"); // => 20
 * ```
 */
export const widthPerNozzle = (input: { readonly row: Length; readonly nozzles: number }): Length => {
  expectFields(input, ["row", "nozzles"]);
  const { row, nozzles } = allOf({
    row: () => positive(input.row, "row", "length"),
    nozzles: () => wholeNumber(input.nozzles, "nozzles"),
  });
  return row.dividedBy(nozzles);
};

/**
 * The effective swath of a boom, number of nozzles times their spacing: half a spacing more on each side
 * than from tip to tip. For a boomless nozzle the swath is how far apart its passes are driven.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { boomWidth, quantity } from "ratewright";
 * boomWidth({ nozzles: 12, spacing: quantity(20, "in") }).in("ft"); // => 20
 * ```
 */
export const boomWidth = (input: { readonly nozzles: number; readonly spacing: Length }): Length => {
  expectFields(input, ["nozzles", "spacing"]);
  const { nozzles, spacing } = allOf({
    nozzles: () => wholeNumber(input.nozzles, "nozzles"),
    spacing: () => positive(input.spacing, "spacing", "length"),
  });
  return spacing.times(nozzles);
};

/**
 * The width that a flat fan covers at a height, by its geometry, `b = 2 h tan(angle / 2)`. Droplets fall
 * and curve inward, so the wetted width is less, and a fan opens to its angle only at its rated pressure:
 * an 80-degree tip rated at 40 psi opens 65 degrees at 15 psi (teaching slides on nozzles and pumps).
 *
 * @param input - `angle` of the fan, above 0 and below 180 degrees; `height` of the tip over what is to
 * be hit
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { fanWidth, quantity } from "ratewright";
 * Number(fanWidth({ angle: quantity(110, "deg"), height: quantity(50, "cm") }).in("cm").toFixed(1)); // => 142.8
 * ```
 */
export const fanWidth = (input: {
  readonly angle: Quantity<"angle", "none">;
  readonly height: Length;
}): Length => {
  expectFields(input, ["angle", "height"]);
  const { angle, height } = allOf({
    angle: () => fanAngle(input.angle),
    height: () => positive(input.height, "height", "length"),
  });
  return height.times(2 * Math.tan(angle.in("rad") / 2));
};

/**
 * By how much of the spacing neighboring fans overlap, `(b - s) / s`, with `b` the width of a fan and
 * `s` the spacing; negative where strips stay dry. Sources ask for 30 to 100 % of the spacing for flat
 * fans. A percentage of overlap is counted in several ways: this one is of the spacing.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`
 * Source: teaching slides on nozzles and pumps, slides 14-17 (30 to 100 %).
 *
 * @example
 * ```ts
 * import { fanOverlap, quantity } from "ratewright";
 * fanOverlap({ fan: quantity(40, "in"), spacing: quantity(20, "in") }).in("%"); // => 100
 * ```
 */
export const fanOverlap = (input: { readonly fan: Length; readonly spacing: Length }): Share => {
  expectFields(input, ["fan", "spacing"]);
  const { fan, spacing } = allOf({
    fan: () => positive(input.fan, "fan", "length"),
    spacing: () => positive(input.spacing, "spacing", "length"),
  });
  const s = spacing.value;
  return quantity((100 * (fan.in(spacing.unit as "m") - s)) / s, "%");
};

/**
 * How high a boom of flat fans rides for a wanted overlap, `h = s (1 + o) / (2 tan(angle / 2))`, with
 * `s` the spacing and `o` the overlap as a share of it, zero or more: {@link fanOverlap} the other way round.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { boomHeight, quantity } from "ratewright";
 * const fan = { angle: quantity(80, "deg"), spacing: quantity(20, "in") };
 * Number(boomHeight({ ...fan, overlap: quantity(50, "%") }).in("in").toFixed(1)); // => 17.9
 * ```
 */
export const boomHeight = (input: {
  readonly angle: Quantity<"angle", "none">;
  readonly spacing: Length;
  readonly overlap: Share;
}): Length => {
  expectFields(input, ["angle", "spacing", "overlap"]);
  const { angle, spacing, overlap } = allOf({
    angle: () => fanAngle(input.angle),
    spacing: () => positive(input.spacing, "spacing", "length"),
    overlap: () =>
      input.overlap === undefined || input.overlap === null
        ? fail("missing", "overlap", input.overlap, "a share of the spacing, 0 % for fans that just meet")
        : overlapOf(input.overlap),
  });
  const height = spacing.times((1 + overlap.in("1")) / (2 * Math.tan(angle.in("rad") / 2)));
  return inUnit(height, spacing.unit);
};

const fanAngle = (input: unknown): Quantity<"angle", "none"> => {
  const angle = positive(input, "angle", "angle");
  return angle.in("deg") < 180 ? angle : outOfRange("angle", angle, { below: 180, unit: "deg" });
};

/** Takes an overlap: 0.5 % is a share for 50 %. */
const overlapOf = (input: unknown): Share => {
  const overlap = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, "overlap");
  notShare(overlap.in("%"), "overlap");
  return overlap;
};
