import { cutoffLoss, type HeatRule, meanAbove } from "./degree-day-method.js";

/** Degree-days above a level under straight lines, `(Tx - L)² / (2 (Tx - Tn))`. */
export const triangleAbove = (max: number, min: number, level: number): number => {
  if (max <= level) return 0;
  return min >= level ? meanAbove(max, min, level) : triangleTip(max, min, level);
};

/** The tip of the triangle above a level that lies between the two temperatures. */
export const triangleTip = (max: number, min: number, level: number): number => {
  const above = max - level;
  return ((above / (max - min)) * above) / 2;
};

/** What the cutoff takes from a day, or a half-day, that rises above the upper threshold in straight lines. */
export const triangleLoss = (max: number, min: number, rule: HeatRule): number => {
  const { base, upper } = rule;
  const share = min >= upper ? 1 : (max - upper) / (max - min);
  return cutoffLoss(triangleAbove(max, min, base), triangleAbove(max, min, upper), share, rule);
};

/** The heat of a day or of a half-day under straight lines. */
export const triangleHeat = (max: number, min: number, rule: HeatRule): number => {
  const whole = triangleAbove(max, min, rule.base);
  return max > rule.upper ? whole - triangleLoss(max, min, rule) : whole;
};
