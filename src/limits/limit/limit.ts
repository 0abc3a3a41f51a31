import type { CivilDate, MonthDayWindow } from "../../calendar/index.js";
import type { Stated } from "../../ledger/index.js";
import type { FactSource } from "../../quantity/index.js";
import type { LimitCondition } from "./limit-condition.js";

/**
 * Over what a limit adds up: one application, a calendar year, a season of the year, so many days in a
 * row, or so many months in a row. The last two roll: every stretch of that length counts.
 */
export type LimitPeriod =
  | "application"
  | "calendar year"
  | MonthDayWindow
  | { readonly days: number }
  | { readonly months: number };

/** What every limit may state beside its figure. */
export interface LimitBase {
  /** A short name, such as `us-md/total-n`, for lists and findings. */
  readonly id?: string;
  /** Where it is stated: a citation, or the words of the caller. */
  readonly source: FactSource;
  /** The day on which the source was read. */
  readonly readOn?: CivilDate;
  /** For what it is stated: all that is named here must hold. For everything where it is left out. */
  readonly scope?: LimitCondition;
  /** What lifts it: it does not bind where one of these is shown. */
  readonly exemptIf?: readonly LimitCondition[];
}

/** The most of a substance per area over a period: total N, soluble N, P2O5, P, an active ingredient, an acid equivalent. */
export interface AmountLimit extends LimitBase {
  /** May be left out. */
  readonly kind?: "amount";
  /** Mass or volume per area, of what is limited: `N`, `N:quick`, `P2O5`, `P`, `ai:prodiamine`, `ae:2,4-D`, ... */
  readonly amount: Stated;
  readonly per: LimitPeriod;
}

/** The most applications over a period. Entries of one day that name the same treatment, as those of a tank mix, are one. */
export interface CountLimit extends LimitBase {
  readonly kind: "count";
  /** Of what: a substance (`ai:prodiamine`, `N`) or a product (`product:feed-a`). */
  readonly of: string;
  readonly atMost: number;
  readonly per: LimitPeriod;
}

/** The least number of days from one application to the next. */
export interface IntervalLimit extends LimitBase {
  readonly kind: "interval";
  readonly of: string;
  readonly atLeastDays: number;
}

/** The least share of the nitrogen that has to be slow-release, as percent of NITROGEN (not of product). */
export interface SlowShareLimit extends LimitBase {
  readonly kind: "slow share";
  readonly atLeastPercentOfN: number;
}

/** The most of a nutrient in the product, percent by weight, such as 0.67 % of `P2O5`. */
export interface ContentLimit extends LimitBase {
  readonly kind: "content";
  readonly of: string;
  readonly atMostPercent: number;
}

/** A part of the year in which nothing that holds one of the substances goes down. Both ends are part of it. */
export interface BlackoutLimit extends LimitBase {
  readonly kind: "blackout dates";
  /** `"any"`, or the substances: `["N", "P"]`. */
  readonly of: "any" | readonly string[];
  readonly blackout: MonthDayWindow;
}

/** The least distance to water. */
export interface SetbackLimit extends LimitBase {
  readonly kind: "setback";
  readonly of: "any" | readonly string[];
  readonly atLeast: Stated;
}

/** A measure that shortens a buffer, with its share as the label prints it: `{ measure: "hooded sprayer", percent: 50 }`. */
export interface BufferReduction {
  readonly measure: string;
  readonly percent: number;
}

/**
 * The least distance to water or to another edge, after the reductions that the label lists for measures in use, and
 * never less than its floor. Which measures are in use, and how far away the edge lies, stand in the facts (`edges`).
 */
export interface BufferLimit extends LimitBase {
  readonly kind: "buffer";
  readonly of: "any" | readonly string[];
  /** What it is kept from, in the words of the facts: `"water"`, `"a well"`, `"habitat"`. */
  readonly from: string;
  /** The distance before any reduction. */
  readonly atLeast: Stated;
  readonly reductions?: readonly BufferReduction[];
  /** How several reductions go together: added up, or each of what is left. Needed beside `reductions`. */
  readonly together?: "sum" | "in turn";
  /** The least that the distance comes down to, where the label states one. */
  readonly floor?: Stated;
}

/** A measure against runoff, with its points. */
export interface RunoffMeasure {
  readonly measure: string;
  readonly points: number;
}

/** The least points of measures against runoff. Which measures are in place stands in the facts (`runoff`). */
export interface RunoffPointsLimit extends LimitBase {
  readonly kind: "runoff points";
  readonly of: "any" | readonly string[];
  /** The points that the label or its bulletin asks for. */
  readonly atLeastPoints: number;
  /**
   * The points of each measure: a list of your own, or `"US EPA"` for those of `runoffMenu`. Points that the facts state
   * win over both.
   */
  readonly menu?: "US EPA" | readonly RunoffMeasure[];
}

/** Ground on which nothing goes down. */
export interface GroundLimit extends LimitBase {
  readonly kind: "ground";
  readonly of: "any" | readonly string[];
  readonly not: readonly ("frozen" | "snow-covered" | "saturated")[];
}

/**
 * How often a mode of action is used: the most applications of its group over a period, the most in a row, or both. What
 * goes down on one day is one application; a run is counted among applications that hold any active ingredient of
 * `among`.
 */
export interface RotationLimit extends LimitBase {
  readonly kind: "rotation";
  /** The group as the label prints it: `"FRAC 11"`. */
  readonly group: string;
  /** The active ingredients of the group: `["ai:azoxystrobin", "ai:pyraclostrobin"]`. */
  readonly of: readonly string[];
  /** What ends a run: the other active ingredients of the scheme. Any active ingredient where it is left out. */
  readonly among?: readonly string[];
  readonly atMost?: number;
  /** Over which `atMost` counts. */
  readonly per?: LimitPeriod;
  readonly atMostInARow?: number;
}

/** A limit as data. What it does not state is not checked. */
export type Limit =
  | AmountLimit
  | CountLimit
  | IntervalLimit
  | SlowShareLimit
  | ContentLimit
  | BlackoutLimit
  | SetbackLimit
  | BufferLimit
  | RunoffPointsLimit
  | GroundLimit
  | RotationLimit;

/** The limits of one place or label, with what of its text the limits do not hold. */
export interface LimitSet {
  readonly type: "limit-set";
  readonly version: 1;
  readonly id: string;
  readonly name: string;
  readonly source: FactSource;
  /** The day on which the source was read; `null` where it was not read. */
  readonly readOn: CivilDate | null;
  /** Whether the figures were read in the source, or come from memory. */
  readonly reached: "read" | "from memory";
  readonly caution: string;
  readonly limits: readonly Limit[];
  /** What the source also asks for and no limit here can state. */
  readonly notHeld: readonly string[];
}
