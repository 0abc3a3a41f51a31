import { outOfRange, type RangeWords } from "../../quantity/index.js";
import { exceeds } from "./exceeds.js";

/** Takes what lies within bounds, both ends counted and rounding borne, or throws `range`. */
export const expectWithin = <T>(
  taken: T,
  value: number,
  path: string,
  bounds: { readonly min?: number; readonly max: number; readonly unit: string },
  words?: RangeWords,
): T =>
  (bounds.min !== undefined && exceeds(bounds.min, value)) || exceeds(value, bounds.max)
    ? outOfRange(path, taken, bounds, words)
    : taken;
