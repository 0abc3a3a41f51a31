import { cutoffLoss, type HeatRule, meanAbove } from "./degree-day-method.js";

/** Where the level lies on the sine of a day, from -1 at the lowest to 1 at the highest temperature. */
const height = (max: number, min: number, level: number): number =>
  Math.max(-1, Math.min(1, (level - (max + min) / 2) / ((max - min) / 2)));

/** Degree-days above a level under the sine of a day, `a (sqrt(1 - x²) - x acos x) / π`. */
export const sineAbove = (max: number, min: number, level: number): number => {
  if (max <= level) return 0;
  if (min >= level) return meanAbove(max, min, level);
  const x = height(max, min, level);
  return Math.max(0, (((max - min) / 2) * (Math.sqrt(1 - x * x) - x * Math.acos(x))) / Math.PI);
};

const sineLoss = (max: number, min: number, rule: HeatRule): number => {
  const { base, upper } = rule;
  const share = min >= upper ? 1 : Math.acos(height(max, min, upper)) / Math.PI;
  return cutoffLoss(sineAbove(max, min, base), sineAbove(max, min, upper), share, rule);
};

/** The heat of a day or of a half-day under a sine. */
export const sineHeat = (max: number, min: number, rule: HeatRule): number => {
  const whole = sineAbove(max, min, rule.base);
  return max > rule.upper ? whole - sineLoss(max, min, rule) : whole;
};
