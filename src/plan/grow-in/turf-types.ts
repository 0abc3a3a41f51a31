import type { CivilDate } from "../../calendar/index.js";
import type { Stated } from "../../ledger/index.js";
import type { FactSource, Finding } from "../../quantity/index.js";

/** What a treatment is used as. */
export type TreatmentUse =
  | "pre-emergent herbicide"
  | "post-emergent herbicide"
  | "growth regulator"
  | "fertilizer"
  | "fungicide"
  | "insecticide"
  | "other";

/** What a label says of the turf that it may go on. What is left out is not known. */
export interface LabelOnTurf {
  /** Whether it names use at seeding, or on turf that is not established. */
  readonly namesNewTurf?: boolean;
  readonly minimumMowings?: number;
  readonly minimumDaysAfterSeeding?: number;
  /** From the application to a seeding. */
  readonly minimumDaysToSeeding?: number;
  /** The species that it names, and those that it rules out. */
  readonly species?: readonly string[];
  readonly notSpecies?: readonly string[];
  /** The highest air temperature that it states. */
  readonly maximumTemperature?: Stated;
  readonly source: FactSource;
}

/** What is known of the turf. What is left out is not known. */
export interface TurfState {
  readonly species?: string;
  /** How it was, or is being, established. */
  readonly from?: "seed" | "sprigs" | "stolons" | "plugs" | "sod";
  /** The day of seeding or planting. */
  readonly since?: CivilDate;
  /** Whether it has filled in and rooted, by the eye of who knows it. */
  readonly established?: boolean;
  readonly mowings?: number;
  /** A day on which this turf will be seeded or overseeded. */
  readonly seedingOn?: CivilDate;
  /** An empty list where there is none. */
  readonly stress?: readonly ("heat" | "drought")[];
  /** The highest air temperature that is expected on the day. */
  readonly maximumTemperature?: Stated;
}

/** A treatment, as far as the turf is concerned. */
export interface TurfTreatment {
  readonly id: string;
  readonly use: TreatmentUse;
  readonly activeIngredient?: string;
  readonly label?: LabelOnTurf;
}

/** Conflicts of a treatment with the turf. An empty list of findings is no approval: see `notChecked`. */
export interface TurfConflicts {
  readonly type: "turf-conflicts";
  readonly version: 1;
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}
