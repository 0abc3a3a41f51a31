import { expectQuantity, fail, outOfRange, quantity, type Volume } from "../quantity/index.js";
import type { UnitSet } from "./lengths.js";

export type { Volume } from "../quantity/index.js";

/** A volume of space, of water or of loose material: of no substance. */

/** Takes a volume that is there, or throws. */
export const volumeOf = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative" = "positive",
): Volume => {
  const expected = 'a volume, such as quantity(3, "yd3")';
  if (input === undefined) return fail("missing", path, input, expected);
  if (typeof input === "number") return fail("type", path, input, `${expected}: a number has no unit`);
  return expectQuantity(input, { dimension: "volume", of: "none", bound }, path);
};

/** A computed volume; one too small or too large for a number is an error, not a zero. */
export const volumeIn = (value: number, set: UnitSet): Volume =>
  value > 0 || !Number.isFinite(value)
    ? quantity(value, set.volume)
    : outOfRange("shape", value, { above: 0 }, "a volume of {}");
