import type { CivilDate, DateSpan } from "../../calendar/index.js";
import type { AvoidedDays, IntervalRule, TemperatureSources } from "../../interval/index.js";
import type { Ledger } from "../../ledger/index.js";
import type { ApplicationFacts, Limit, Proposal } from "../../limits/index.js";
import type { Finding } from "../../quantity/index.js";
import type { LabelOnTurf, TreatmentUse, TurfState } from "../grow-in/turf-types.js";
import type { JobDegreeDays } from "../job/job.js";

/** A treatment of a season: what each application is, and when it is due. */
export interface SeasonTreatment {
  readonly id: string;
  readonly parts?: readonly string[];
  /** How often, as the label or a source states it. */
  readonly interval?: Omit<IntervalRule, "type" | "version">;
  /** The dates within which the caller wants it; the whole season where it is left out. */
  readonly within?: DateSpan;
  /**
   * How many applications. Where it is left out, a treatment with `maximumDays` or with an interval by
   * degreeDays is repeated as long as the season lasts, and any other is done once.
   */
  readonly count?: number;
  readonly degreeDays?: JobDegreeDays;
  /** The days on which it was done, beside the entries of the ledger that name it as `treatment`, on one of its parts. */
  readonly applied?: readonly CivilDate[];
  /** What one application puts down, for the limits; like an entry of the ledger. */
  readonly puts?: Omit<Proposal, "date" | "parts" | "facts" | "treatment">;
  /** What it is used as, and what its label says of the turf. */
  readonly use?: TreatmentUse;
  readonly activeIngredient?: string;
  readonly label?: LabelOnTurf;
}

/** What {@link schedule} is told. */
export interface SeasonPlan extends TemperatureSources {
  readonly season: DateSpan;
  readonly treatments: readonly SeasonTreatment[];
  /** Days on which nobody comes: weekdays, events, closures. */
  readonly avoid?: AvoidedDays;
  /** By how many days a treatment may move to share a visit; 0 where it is left out. */
  readonly shareWithinDays?: number;
  readonly limits?: readonly Limit[];
  readonly ledger?: Ledger;
  readonly facts?: ApplicationFacts;
  readonly turf?: TurfState;
}

/** Why a date is what it is. */
export interface DateReason {
  /** Stable: a program may branch on it. */
  readonly code: string;
  readonly text: string;
  readonly source?: unknown;
}

/** One application of a schedule. */
export interface ScheduledApplication {
  readonly treatment: string;
  /** 1 for the first of this schedule. */
  readonly number: number;
  readonly parts: readonly string[];
  /** The first day by the stated rules, and the last useful one; `null` where none is stated. */
  readonly earliestByStatedRules: CivilDate;
  readonly reapplyBy: CivilDate | null;
  readonly reasons: readonly DateReason[];
}

/** A day on which somebody comes. */
export interface ScheduledVisit {
  readonly date: CivilDate;
  readonly applications: readonly ScheduledApplication[];
}

/** An application that found no day. */
export interface NotPlaced {
  readonly treatment: string;
  readonly number: number;
  readonly reasons: readonly DateReason[];
}

/** The visits of a season. It does not authorize an application: see `notChecked`. */
export interface Schedule {
  readonly type: "schedule";
  readonly version: 1;
  readonly season: DateSpan;
  readonly visits: readonly ScheduledVisit[];
  readonly notPlaced: readonly NotPlaced[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}
