import { type Area, expectQuantity, fail, outOfRange, Quantity, quantity } from "../quantity/index.js";
import type { UnitSet } from "./lengths.js";

export type { Area } from "../quantity/index.js";

/** An area, as the shapes give it. */

/** An area of ground: of nothing, or tagged as what is treated. */
export type GroundArea = Area | Quantity<"area", "treated">;

/** What to do with an area of a tag that a formula cannot take. */
const nextStep: Readonly<Record<string, string>> = {
  plan: "an area along the ground: surfaceArea(plan, slope) gives it, of 0 % grade where the ground is level",
  gross: "the area that remains after what is cut out: netArea gives it as net",
  treated: "an area without the tag treated: what is treated is not the whole",
};

/**
 * Takes an area that is there and above zero, of no tag or of one that is listed, or throws with the way on.
 * The area is given without its tag.
 */
export const areaOf = (input: unknown, path: string, tags: readonly string[] = []): Area => {
  if (input === undefined) return fail("missing", path, input, 'an area, such as quantity(12400, "ft2")');
  if (typeof input === "number")
    return fail("type", path, input, 'an area, such as quantity(12400, "ft2"): a number has no unit');
  const area = expectQuantity(input, { dimension: "area", bound: "positive" }, path);
  if (area.of !== "none" && !tags.includes(area.of)) {
    fail("substance/mismatch", path, area, nextStep[area.of] ?? "an area, which is of nothing");
  }
  return new Quantity(area.value, area.unit, "none", "area");
};

/** A computed area; one too small or too large for a number is an error, not a zero. */
export const areaIn = (value: number, set: UnitSet): Area =>
  value > 0 || !Number.isFinite(value)
    ? quantity(value, set.area)
    : outOfRange("shape", value, { above: 0 }, "an area of {}");

/** Whether a unit of area is a metric one. */
export const isMetricArea = (unit: string): boolean => /m2$|^ha$/.test(unit);
