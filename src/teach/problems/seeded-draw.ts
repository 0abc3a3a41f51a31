import { uniformInt } from "pure-rand/distribution/uniformInt";
import { mersenne } from "pure-rand/generator/mersenne";
import type { Draw } from "../topics/topic.js";

/**
 * A draw that a seed fixes, the same on every platform: the Mersenne Twister MT19937 of the package pure-rand, in whole
 * numbers of 32 bits.
 */
export const seededDraw = (seed: number): Draw => {
  const generator = mersenne(seed);
  const int = (low: number, high: number): number => uniformInt(generator, low, high);
  return {
    int,
    // so that 0.1 times 7 is 0.7
    step: (low, high, step) => Number((low + step * int(0, Math.round((high - low) / step))).toPrecision(12)),
    pick: <T>(list: readonly T[]): T => list[int(0, list.length - 1)] as T,
  };
};
