import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  fail,
  outOfRange,
  plainCopy,
} from "../../quantity/index.js";
import { expectNumbers, type Numbers } from "./numbers.js";

/**
 * The value at `x` on straight lines between the points of a table,
 * `y = y0 + (y1 - y0) (x - x0) / (x1 - x0)`. It hits every point of the table and never leaves the two
 * values between which it lies.
 *
 * @param input.xs - where the table has points, in rising order without repeats
 * @param input.ys - the value at each of them
 * @param input.outside - what happens where `x` lies outside the table: `"refuse"`, the default, throws;
 * `"hold"` takes the value at the nearer end
 * @throws RatewrightError `range` outside the table; `conflict` where the lists differ in length or
 * `xs` does not rise; `missing`, `not-finite`, `type`
 *
 * Source: definition.
 *
 * @example
 * ```ts
 * import { interpolate } from "ratewright";
 * interpolate({ xs: [10, 20, 40], ys: [1, 3, 4], x: 15 }); // => 2
 * interpolate({ xs: [10, 20, 40], ys: [1, 3, 4], x: 50, outside: "hold" }); // => 4
 * ```
 */
export const interpolate = (input: {
  readonly xs: Numbers;
  readonly ys: Numbers;
  readonly x: number;
  readonly outside?: "refuse" | "hold";
}): number => {
  const given = expectFields(plainCopy(input), ["xs", "ys", "x", "outside"]);
  const { xs, ys, x, outside } = allOf({
    xs: () => expectNumbers(given.xs, "xs", 1),
    ys: () => expectNumbers(given.ys, "ys", 1),
    x: () => expectNumber(given.x, "x"),
    outside: () => expectOneOf(given.outside ?? "refuse", ["refuse", "hold"], "outside"),
  });
  if (xs.length !== ys.length) fail("conflict", "ys", ys, `as many numbers as xs has, which is ${xs.length}`);
  for (let i = 1; i < xs.length; i++) {
    const before = xs[i - 1] as number;
    if (!((xs[i] as number) > before))
      fail("conflict", `xs[${i}]`, xs[i], `more than xs[${i - 1}], which is ${before}`);
  }
  const last = xs.length - 1;
  const [first, end] = [xs[0] as number, xs[last] as number];
  if ((x < first || x > end) && outside === "refuse") outOfRange("x", x, { min: first, max: end });
  if (x <= first) return (ys[0] as number) + 0;
  if (x >= end) return (ys[last] as number) + 0;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((xs[middle] as number) <= x) low = middle;
    else high = middle;
  }
  const [x0, x1, y0, y1] = [xs[low], xs[high], ys[low], ys[high]] as [number, number, number, number];
  // A difference too large to be a number is taken in parts; parts always would lose the smallest.
  const share = Number.isFinite(x1 - x0) ? (x - x0) / (x1 - x0) : (x / 2 - x0 / 2) / (x1 / 2 - x0 / 2);
  const y = Number.isFinite(y1 - y0) ? y0 + (y1 - y0) * share : y0 * (1 - share) + y1 * share;
  return Math.min(Math.max(y, Math.min(y0, y1)), Math.max(y0, y1)) + 0;
};
