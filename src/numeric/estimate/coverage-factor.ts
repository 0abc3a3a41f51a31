import { expectNumber, expectQuantity, outOfRange, type Quantity } from "../../quantity/index.js";

/** Above so many degrees of freedom the t distribution is the normal one to seven digits. */
const normalFrom = 1e7;

/** `gamma(a + 1/2) / gamma(a)`, by the asymptotic series (DLMF 5.11.13), after stepping `a` up to where it holds. */
const gammaRatio = (a: number): number => {
  let steps = 1;
  let at = a;
  for (; at < 200; at++) steps *= at / (at + 0.5);
  const series = 1 - 1 / (8 * at) + 1 / (128 * at ** 2) + 5 / (1024 * at ** 3) - 21 / (32768 * at ** 4);
  return steps * Math.sqrt(at) * series;
};

/** The continued fraction of the incomplete beta function (DLMF 8.17.22), by Lentz's method. */
const betaFraction = (x: number, p: number, q: number): number => {
  let c = 1;
  let d = 1 / (1 - ((p + q) * x) / (p + 1));
  let value = d;
  for (let m = 1; m < 20_000; m++) {
    const even = (m * (q - m) * x) / ((p + 2 * m - 1) * (p + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    value *= d * c;
    const odd = (-(p + m) * (p + q + m) * x) / ((p + 2 * m) * (p + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    value *= d * c;
    if (Math.abs(d * c - 1) < Number.EPSILON) break;
  }
  return value;
};

/** The probability that a t-distributed value lies within `t` of zero: `I(1/2, nu/2)` at `t^2 / (nu + t^2)`. */
const within = (t: number, nu: number): number => {
  const [p, q] = [0.5, nu / 2];
  const x = t ** 2 / (nu + t ** 2);
  const log = p * Math.log(x) + q * Math.log1p(-x);
  const front = (Math.exp(log) * gammaRatio(q)) / Math.sqrt(Math.PI);
  return x < (p + 1) / (p + q + 2)
    ? (front * betaFraction(x, p, q)) / p
    : 1 - (front * betaFraction(nu / (nu + t ** 2), q, p)) / q;
};

/** The same for a normal value, by its power series (Abramowitz and Stegun 26.2.11). */
const withinNormal = (z: number): number => {
  let term = z;
  let sum = z;
  for (let k = 3; term > sum * Number.EPSILON; k += 2) {
    term *= z ** 2 / k;
    sum += term;
  }
  return 2 * sum * (Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI));
};

/**
 * The factor `k` by which a standard error is multiplied to give the half-width of an interval:
 * Student's `t` with `P(-k < t < k) = confidence`, and the normal distribution where there are no
 * degrees of freedom to name. Degrees of freedom need not be whole numbers.
 *
 * @param confidence - from 1 % to 99.99 %
 * @param degreesOfFreedom - 1 or more; left out where the error is stated and not estimated from a few
 * readings
 * @throws RatewrightError `range`, `not-finite`, `unit/mismatch`, `substance/mismatch`
 * Source: M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 26.7.1 and 26.2.11; JCGM
 * 100:2008 (GUM), G.3.
 *
 * @example
 * ```ts
 * import { coverageFactor, quantity } from "ratewright";
 * Number(coverageFactor(quantity(95, "%"), 4).toFixed(3)); // => 2.776
 * Number(coverageFactor(quantity(95, "%")).toFixed(3)); // => 1.96
 * ```
 */
export const coverageFactor = (confidence: Quantity<"1", "none">, degreesOfFreedom?: number): number => {
  const wanted = expectQuantity(confidence, { dimension: "1", of: "none" }, "confidence");
  const share = wanted.in("1");
  if (share < 0.01 || share > 0.9999) outOfRange("confidence", wanted, { min: 1, max: 99.99, unit: "%" });
  const nu =
    degreesOfFreedom === undefined
      ? Number.POSITIVE_INFINITY
      : expectNumber(degreesOfFreedom, "degreesOfFreedom", { min: 1 });
  const at = nu > normalFrom ? withinNormal : (t: number): number => within(t, nu);
  let low = 0;
  let high = 1;
  while (at(high) < share) {
    low = high;
    high *= 2;
  }
  // Halving gains a bit a step; sixty are all that a number has.
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (at(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
