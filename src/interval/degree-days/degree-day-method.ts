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

/**
 * What a cutoff takes from the degree-days above the base, `whole`; `over` are those above the upper
 * threshold, `share` is the part of the day above it.
 */
export const cutoffLoss = (
  whole: number,
  over: number,
  share: number,
  { base, upper, cutoff }: HeatRule,
): number => {
  if (cutoff === "horizontal") return over;
  if (cutoff === "intermediate") return 2 * over;
  return Math.min(whole, cutoff === "vertical" ? over + (upper - base) * share : 2 * over);
};
