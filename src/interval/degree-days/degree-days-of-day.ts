import { type DegreeDayMethod, type HeatRule, meanAbove } from "./degree-day-method.js";
import { sineHeat } from "./single-sine.js";
import { triangleHeat } from "./single-triangle.js";

/** The mean, held at the upper threshold, less the base; 0 or more. */
export const cappedAverageHeat = (max: number, min: number, base: number, upper: number): number => {
  const mean = (max + min) / 2;
  // biome-ignore lint/complexity/useMathMinMax: as above.
  const heat = (mean > upper ? upper : mean) - base;
  // biome-ignore lint/complexity/useMathMinMax: as above.
  return heat > 0 ? heat : 0;
};

// biome-ignore lint/complexity/useMathMinMax: Math.max and Math.min make the kernel twice as slow.
const held = (t: number, base: number, upper: number): number => (t > upper ? upper : t < base ? base : t);

/** The mean of both temperatures, each held between the thresholds, less the base. */
export const clampedHeat = (max: number, min: number, base: number, upper: number): number =>
  (held(max, base, upper) + held(min, base, upper)) / 2 - base;

/** The four cases: above the base all day, never, and on either side of it with the mean above or below. */
export const metOfficeHeat = (max: number, min: number, base: number): number => {
  if (min >= base) return meanAbove(max, min, base);
  if (max <= base) return 0;
  return (max + min) / 2 >= base ? (max - base) / 2 - (base - min) / 4 : (max - base) / 4;
};

/**
 * The mean of two days: one like the half from the lowest temperature up to the highest, one like the half
 * from there to the lowest of the next day. The curve is the same up and down, so that the next lowest
 * temperature may lie above the highest of this day.
 */
export const doubleHeat = (
  heat: (max: number, min: number, rule: HeatRule) => number,
  max: number,
  min: number,
  nextMin: number,
  rule: HeatRule,
): number =>
  (heat(max, min, rule) + (nextMin > max ? heat(nextMin, max, rule) : heat(max, nextMin, rule))) / 2;

/** Whether a method needs the lowest temperature of the next day. */
export const needsNextDay = (method: DegreeDayMethod): boolean =>
  method === "double sine" || method === "double triangle";

/** The heat of a day; all temperatures on the scale of the rule. */
export const heatOfDay = (rule: HeatRule, max: number, min: number, nextMin: number): number => {
  const { method, base, upper } = rule;
  switch (method) {
    case "simple average":
      return upper === Number.POSITIVE_INFINITY
        ? Math.max(0, meanAbove(max, min, base))
        : cappedAverageHeat(max, min, base, upper);
    case "substitution":
    case "clamped average":
      return clampedHeat(max, min, base, upper);
    case "met office cases":
      return metOfficeHeat(max, min, base);
    case "single sine":
      return sineHeat(max, min, rule);
    case "single triangle":
      return triangleHeat(max, min, rule);
    case "double sine":
      return doubleHeat(sineHeat, max, min, nextMin, rule);
    case "double triangle":
      return doubleHeat(triangleHeat, max, min, nextMin, rule);
  }
};
