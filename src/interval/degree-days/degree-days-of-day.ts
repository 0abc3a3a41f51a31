/**
 * How the heat of a day is estimated from its highest and lowest temperature, `Tx` and `Tn`, above a
 * base `b`.
 *
 * - `"simple average"`: the mean less the base, 0 where that is negative. The floor is on the mean.
 * - `"substitution"`: both temperatures are raised to the base where they lie below it, then averaged.
 * - `"clamped average"`: both are also lowered to the upper threshold; with 50 and 86 °F the growing
 *   degree-days of maize.
 * - `"single sine"`, `"single triangle"`: the area above the base under a sine or straight-sided curve
 *   through the two temperatures.
 * - `"double sine"`, `"double triangle"`: the day in halves, from its lowest to its highest temperature
 *   and from there to the lowest of the next day.
 * - `"met office cases"`: the four cases of the British and Irish weather services.
 *
 * A figure found with one method does not fit another: {@link degreeDays} says where they differ.
 */
export type DegreeDayMethod =
  | "simple average"
  | "substitution"
  | "clamped average"
  | "single sine"
  | "double sine"
  | "single triangle"
  | "double triangle"
  | "met office cases";

/**
 * What happens above the upper threshold.
 *
 * - `"horizontal"`: development goes on as fast as at the threshold.
 * - `"intermediate"`: it slows by as much as the temperature lies above the threshold. Far above, a day
 *   counts less than nothing. Whether to stop before is not settled: the calculator of the University of
 *   California prints no day by a sine below the figure of the vertical cutoff, and so up to 1.1 °F d more
 *   on days that reach 33 °F above the threshold.
 * - `"intermediate floored"`: the same, and no day counts less than 0, of a double method no half of a day.
 * - `"vertical"`: it stops.
 */
export type UpperCutoff = "horizontal" | "intermediate" | "intermediate floored" | "vertical";

/** A method with its thresholds as numbers of one scale. */
export interface HeatRule {
  readonly method: DegreeDayMethod;
  readonly base: number;
  /** Infinite where there is none. */
  readonly upper: number;
  readonly cutoff: UpperCutoff;
}

/** The mean less a level, which may be below 0. */
export const meanAbove = (max: number, min: number, level: number): number => (max + min) / 2 - level;

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

/**
 * What a cutoff takes from the degree-days above the base, `whole`; `over` are those above the upper
 * threshold, `share` is the part of the day above it.
 */
const loss = (whole: number, over: number, share: number, { base, upper, cutoff }: HeatRule): number => {
  if (cutoff === "horizontal") return over;
  if (cutoff === "intermediate") return 2 * over;
  return Math.min(whole, cutoff === "vertical" ? over + (upper - base) * share : 2 * over);
};

const sineLoss = (max: number, min: number, rule: HeatRule): number => {
  const { base, upper } = rule;
  const share = min >= upper ? 1 : Math.acos(height(max, min, upper)) / Math.PI;
  return loss(sineAbove(max, min, base), sineAbove(max, min, upper), share, rule);
};

/** The heat of a day or of a half-day under a sine. */
export const sineHeat = (max: number, min: number, rule: HeatRule): number => {
  const whole = sineAbove(max, min, rule.base);
  return max > rule.upper ? whole - sineLoss(max, min, rule) : whole;
};

/** What the cutoff takes from a day, or a half-day, that rises above the upper threshold in straight lines. */
export const triangleLoss = (max: number, min: number, rule: HeatRule): number => {
  const { base, upper } = rule;
  const share = min >= upper ? 1 : (max - upper) / (max - min);
  return loss(triangleAbove(max, min, base), triangleAbove(max, min, upper), share, rule);
};

/** The heat of a day or of a half-day under straight lines. */
export const triangleHeat = (max: number, min: number, rule: HeatRule): number => {
  const whole = triangleAbove(max, min, rule.base);
  return max > rule.upper ? whole - triangleLoss(max, min, rule) : whole;
};

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
