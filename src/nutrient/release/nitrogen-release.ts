import type { CivilDate } from "../../calendar/index.js";
import type { Finding } from "../../quantity/index.js";
import type { Placement, ReleaseModel } from "./release-model.js";

/** Low end, middle and high end, one number for each day. */
export interface DailyEstimate {
  readonly low: readonly number[];
  readonly mid: readonly number[];
  readonly high: readonly number[];
}

/** What one portion has given off. */
export interface PortionRelease {
  readonly name: string;
  /** The applied nitrogen, in the unit of the record. */
  readonly applied: number;
  /** By the end of each day. */
  readonly cumulative: DailyEstimate;
  /** On each day, by the middle estimate. */
  readonly perDay: readonly number[];
  readonly model: ReleaseModel;
}

/** Nitrogen given off day by day: an estimate. All figures are of nitrogen, in `unit`. Plain JSON. */
export interface NitrogenRelease {
  readonly type: "nitrogen-release";
  readonly version: 1;
  /** The day of the application, which is the first day. */
  readonly start: CivilDate;
  readonly unit: string;
  readonly placement: Placement;
  readonly applied: number;
  readonly cumulative: DailyEstimate;
  readonly perDay: readonly number[];
  /**
   * What is still inside after the last day, `low` by the fast end: `low` with the last of `cumulative.high`, and
   * `high` with that of `cumulative.low`, add up to `applied`.
   */
  readonly remaining: { readonly low: number; readonly mid: number; readonly high: number };
  readonly portions: readonly PortionRelease[];
  readonly assumptions: readonly string[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** Ten years of days. */
export const longestRelease = 3660;
