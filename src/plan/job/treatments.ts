import type { Instant } from "../../calendar/index.js";
import type { DegreeDayModel, DegreeDaysOf, IntervalRule } from "../../interval/index.js";
import type { ApplicationFacts } from "../../limits/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { RateOf } from "../../tank/index.js";
import type { ReadProduct } from "./read-products.js";
import type { TreatedPart } from "./read-site.js";

/** A growing-degree-day interval, read and checked. */
export interface ReadDegreeDays {
  readonly model: DegreeDayModel;
  readonly interval: Quantity<"degree-days", DegreeDaysOf<string>>;
  readonly source: string;
}

/** What every treatment has, read and checked. */
export interface TreatmentBase {
  readonly id: string;
  readonly path: string;
  readonly parts?: readonly string[];
  readonly area: Quantity<"area", "none">;
  /** What of it lies on each part; empty where the job does not say. */
  readonly byPart: readonly TreatedPart[];
  readonly interval?: IntervalRule;
  readonly degreeDays?: ReadDegreeDays;
  readonly facts: ApplicationFacts;
  readonly end?: Instant;
  readonly irrigationRate?: Quantity<"length/time", "none">;
}

/** A treatment that is spread. */
export interface ReadSpread extends TreatmentBase {
  readonly method: "spread";
  readonly product: ReadProduct;
  readonly passes: number;
  readonly setting?: string;
  readonly wanted:
    | { readonly target: Quantity<"mass/area", string> }
    | { readonly rate: Quantity<"mass/area", `product:${string}`> };
}

/** A treatment that is sprayed. */
export interface ReadSpray extends TreatmentBase {
  readonly method: "spray";
  readonly mix: readonly { readonly product: ReadProduct; readonly rate: RateOf; readonly path: string }[];
}

/** A treatment of a job, read and checked. */
export type ReadTreatment = ReadSpread | ReadSpray;

/** The products of a job that could be read, and the ids of all that it states. */
export interface JobProducts {
  readonly sound: ReadonlyMap<string, ReadProduct>;
  readonly ids: ReadonlySet<unknown>;
}
