import { expectNumber } from "../../quantity/index.js";
import { finite } from "./numbers.js";

/**
 * The multiple of a step that lies nearest to a value: for display, and for setting a machine that has
 * steps. A value half-way between two is rounded away from zero, also where its binary form lies a hair
 * to the other side.
 *
 * @param step - more than zero
 * @throws RatewrightError `range`, `not-finite`
 *
 * @example
 * ```ts
 * import { roundTo } from "ratewright";
 * roundTo(3.14159, 0.01); // => 3.14
 * roundTo(1.005, 0.01); // => 1.01
 * roundTo(-2.5, 1); // => -3
 * roundTo(47, 2.5); // => 47.5
 * ```
 */
export const roundTo = (value: number, step: number): number => {
  const x = expectNumber(value, "value");
  const each = expectNumber(step, "step", { above: 0 });
  const steps = Math.abs(x) / each;
  // Beyond 2^52 steps the value has no digit that the step could take off.
  if (!(steps < 2 ** 52)) return x;
  // Where a step is less than a few last digits of the value, a hair would be a step.
  const hair = steps < 1e13 ? 4 * Number.EPSILON : 0;
  const whole = Math.floor(steps * (1 + hair) + 0.5);
  // Fifteen digits: the product of a whole number and a decimal step has no more that mean anything.
  const size = whole < 1e15 ? Number((whole * each).toPrecision(15)) : whole * each;
  return finite(x < 0 ? -size : size, "value", value);
};
