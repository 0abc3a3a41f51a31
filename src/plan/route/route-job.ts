import type { CivilDate } from "../../calendar/index.js";
import type { Ledger, Stated } from "../../ledger/index.js";
import type { ApplicationFacts, Limit } from "../../limits/index.js";
import type { SiteDescription } from "../../site/index.js";
import type {
  JobApplicator,
  JobProduct,
  JobSpray,
  JobSprayer,
  JobSpread,
  JobSpreader,
  SheetUnits,
} from "../job/job.js";
import type { RefillRule } from "./fill-plan.js";

/**
 * A day on the road: many sites, one mix or one spreader product, one machine. Plain JSON, so that it can be kept in a
 * file. Exactly one of `mix` and `spread`.
 */
export interface RouteJob {
  readonly type: "route-job";
  readonly version: 1;
  readonly title: string;
  readonly date: CivilDate;
  readonly products: readonly JobProduct[];
  /** Everything that goes into the tank. */
  readonly mix?: JobSpray["mix"];
  /** What goes into the hopper. */
  readonly spread?: Pick<JobSpread, "product" | "target" | "rate" | "passes" | "setting">;
  /** Needed with `mix`; without `loadSplit`: a route has its own way to fill. */
  readonly sprayer?: Omit<JobSprayer, "loadSplit">;
  /** Needed with `spread`. */
  readonly spreader?: RouteSpreader;
  /** What is in the tank or the hopper at the start, of the same mix or product; the hoses are then full of it. */
  readonly startWith?: Stated;
  /** `"before a stop"` that the tank does not finish, where left out; or `"when empty"`, in the middle of a stop. */
  readonly refill?: RefillRule;
  /** In the order in which they are driven. */
  readonly stops: readonly RouteStop[];
  /** Limits that hold at every stop, such as those of the labels of the mix. */
  readonly limits?: readonly Limit[];
  readonly facts?: ApplicationFacts;
  readonly units?: SheetUnits;
  readonly applicator?: JobApplicator;
}

/** A spreader, and what its hopper holds. */
export interface RouteSpreader extends JobSpreader {
  readonly hopper: Stated;
}

/** One site of a route. Exactly one of `area` and `site`. */
export interface RouteStop {
  /** A short name that no other stop has. */
  readonly id: string;
  readonly name?: string;
  /** Where it is, for the sheet and for the record. */
  readonly address?: string;
  /** The kind of turf, for the record. */
  readonly turf?: string;
  readonly area?: Stated;
  /** The site by its shapes. */
  readonly site?: SiteDescription;
  /** `false` where the machine cannot be filled. */
  readonly canFill?: boolean;
  /** What went down on this site before. */
  readonly ledger?: Ledger;
  /** Limits that hold here beside those of the route. */
  readonly limits?: readonly Limit[];
  /** What is known of this site, over the facts of the route. */
  readonly facts?: ApplicationFacts;
}
