import type { CivilDate, DailyTemperatures, Instant } from "../../calendar/index.js";
import type { BaseTemperature, DegreeDayMethod, IntervalRule, UpperCutoff } from "../../interval/index.js";
import type { Ledger, Stated } from "../../ledger/index.js";
import type { ApplicationFacts, Limit } from "../../limits/index.js";
import type { Analysis, NitrogenGuarantee } from "../../nutrient/index.js";
import type { Finding } from "../../quantity/index.js";
import type { SiteDescription } from "../../site/index.js";
import type {
  CodeScheme,
  MeasuringIncrement,
  MixIngredient,
  MixingOrderId,
  WaterTest,
} from "../../tank/index.js";
import type { TreatmentUse } from "../grow-in/turf-types.js";

/** A rate of product: per area, per volume of spray, or an amount per so much spray (2 pt per 100 gal). */
export interface StatedRate extends Stated {
  /** `"product"`, or `"product:feed-a"` with the id; `"product/spray"` for a rate per volume of spray. */
  readonly of: string;
  /** The volume of spray under a rate such as 2 pt per 100 gal. A `Quantity` has its method there. */
  readonly per?: Stated | ((divisor: never) => unknown);
}

/**
 * What a visit is planned from: one site, the products, the machines, what is to be done, and what was
 * done before. Plain JSON, so that it can be kept in a file.
 */
export interface Job {
  readonly type: "job";
  readonly version: 1;
  readonly title: string;
  /** The day of the visit. */
  readonly date: CivilDate;
  readonly site: JobSite;
  readonly products: readonly JobProduct[];
  readonly treatments: readonly JobTreatment[];
  /** Needed where a treatment is sprayed. */
  readonly sprayer?: JobSprayer;
  /** What went down before, in any order. */
  readonly log?: readonly JobLogEntry[];
  /**
   * The ledger of the site, in place of `log`: what {@link visitEntries} of the visits before put into it. Its corrections
   * count, and entries after the visit count toward limits that roll.
   */
  readonly ledger?: Ledger;
  /** Limits to compare with: of a limit set, or stated here. */
  readonly limits?: readonly Limit[];
  /** What is known of the visit beside its amounts, for limits that ask for it. */
  readonly facts?: ApplicationFacts;
  /** Daily temperatures, for treatments whose interval is told in degree-days. */
  readonly temperatures?: DailyTemperatures;
  /** The units of the sheets. Where it is left out: those of the rates and of the site, as the job writes them. */
  readonly units?: SheetUnits;
  /** Who does the work; a blank on the sheet where it is left out. */
  readonly applicator?: JobApplicator;
  /** The spreader, for treatments that are spread. */
  readonly spreader?: JobSpreader;
  /** Rain and irrigation after the work, for products whose label states what water they need or must not get. */
  readonly water?: JobWater;
}

/** Rain and irrigation after the work: what fell, is forecast or is planned. */
export interface JobWater {
  /** Every watering and every rain up to `until`; an empty list says that there is none. */
  readonly events: readonly JobWaterEvent[];
  /** The moment up to which the list is complete. */
  readonly until: Instant;
}

/** One watering, when it stops, or one rain, at its end. */
export interface JobWaterEvent {
  readonly at: Instant;
  readonly depth: Stated;
  readonly by: "rain" | "irrigation";
  readonly known: "planned" | "forecast" | "observed";
  /** The parts of the site that it waters; the whole site where it is left out. */
  readonly parts?: readonly string[];
}

/** What a label states of water after the application: each part may be left out, but not all. */
export interface JobWateringIn {
  /** At least so much, rain and irrigation together, and at most so much. */
  readonly least?: Stated;
  readonly most?: Stated;
  /** How soon after the end of the application `least` has to be there, and for how long `most` counts. */
  readonly within?: Stated;
  /** How long after the end no water may reach the leaf: the rain-free time. */
  readonly notBefore?: Stated;
  /** Who states it: the label, by section. */
  readonly source: string;
}

/** The units of a sheet; with `"both"` US customary comes first, with metric beside the totals. */
export type SheetUnits = "US customary" | "metric" | "both";

/** Who does the work. */
export interface JobApplicator {
  readonly name?: string;
  /** The number of the certificate or license. */
  readonly certificate?: string;
}

/** What is known of the spreader; a blank on the sheet for each that is left out. */
export interface JobSpreader {
  readonly name?: string;
  /** The width of one pass, from the pattern test. */
  readonly swath?: Stated;
  readonly speed?: Stated;
}

/** The site: its name, the shapes that it is made of, and what is cut out of them. */
export interface JobSite extends SiteDescription {
  readonly name: string;
}

/** A product as its label states it. With an `analysis` it feeds; with a `formulation` it can be sprayed. */
export interface JobProduct {
  /** A record that `fertilizer` made says these two; it can stand here as it is. */
  readonly type?: "fertilizer";
  readonly version?: 1;
  readonly id: string;
  readonly name?: string;
  readonly form: "dry" | "liquid";
  /** The grade, such as `"24-0-11"`, or an analysis record. */
  readonly analysis?: string | Analysis;
  /** How the second and third figure of a grade are read; as oxides where it is left out. */
  readonly basis?: "oxide" | "element";
  /** The label's breakdown of nitrogen, percent of PRODUCT; the slow nitrogen follows from it. */
  readonly nitrogen?: NitrogenGuarantee;
  /** Percent of PRODUCT, as labels print it, of `N:slow/product`. Beside a breakdown it says the same. */
  readonly slowNitrogen?: Stated;
  /** Mass per volume of a liquid. */
  readonly density?: Stated;
  /** What it holds beside nutrients, each once: `4 lb/gal` of `ai:prodiamine/product`, or `65 % w/w` of it. */
  readonly contents?: readonly Stated[];
  /** What one bag, jug or packet holds. */
  readonly package?: Stated;
  /** What `fertilizer` found of the label: it is found anew here. */
  readonly findings?: readonly Finding[];
  /** What one water-soluble packet holds, where a package holds several; packets go in whole. */
  readonly packetSize?: Stated;
  /** What it is used as, for the cautions that go with it. */
  readonly use?: TreatmentUse;
  /** The registration number on the label, such as that of the EPA, and the lot: a blank on the sheet where left out. */
  readonly registrationNumber?: string;
  readonly lot?: string;
  /** What its label states of water after the application. */
  readonly wateringIn?: JobWateringIn;
  /** The kind of product, for the loading order: a name such as `"surfactant"`, or a code on the label. */
  readonly formulation?: string | { readonly code: string; readonly scheme: CodeScheme };
  /** The rate on the label, as a range: both ends the same where the label prints one. */
  readonly labelRate?: { readonly min: StatedRate; readonly max: StatedRate };
  /** Ids that the label puts after this product in the tank, and before it. */
  readonly addBefore?: readonly string[];
  readonly addAfter?: readonly string[];
  readonly labelNote?: string;
  /** Used at so small an amount that it is stirred into water first. */
  readonly lowRate?: boolean;
  /** What it contains of the things that published mixing rules speak of, such as `"amine phenoxy"`. */
  readonly contains?: readonly MixIngredient[];
  /** Groups of its active ingredients, such as `"ALS"`. */
  readonly groups?: readonly string[];
  /** Products (ids) or groups that its label says not to mix it with. */
  readonly labelProhibits?: readonly string[];
}

/** What is known of the sprayer. */
export interface JobSprayer {
  /** What the tank is filled to. */
  readonly tank: Stated;
  /** Application volume by the calibration: volume of spray per area, of `spray`. */
  readonly applicationVolume: Stated;
  /** The least that the agitation can keep moving, where it is known. */
  readonly minimumLoad?: Stated;
  /** Even loads are all of one size; one more of them where they would not fit on top of the dead volume. */
  readonly loadSplit?: "full then partial" | "even";
  /** What the scale and the jug can read. */
  readonly increments?: { readonly dry?: MeasuringIncrement; readonly liquid?: MeasuringIncrement };
  /** The loading order to follow; the derived consensus where it is left out. */
  readonly mixingOrder?: "consensus" | MixingOrderId;
  /** What the pump leaves in the tank, and what hoses and boom keep: mixed too, and left over. */
  readonly residualVolume?: Stated;
  readonly plumbingVolume?: Stated;
  /** A test of the water that goes into the tank. */
  readonly water?: WaterTest;
  /** From mixing until a load is sprayed out; for what the water destroys meanwhile. */
  readonly timeToEmpty?: Stated;
  /** What the sprayer was calibrated with; a blank on the sheet for each that is left out. */
  readonly nozzle?: string;
  readonly pressure?: Stated;
  readonly speed?: Stated;
}

/** What is to be done. */
export type JobTreatment = JobSpread | JobSpray;

/** What every treatment may state. */
export interface JobTreatmentBase {
  readonly id: string;
  /** Names of the parts of the site that are treated; the whole site where it is left out. */
  readonly parts?: readonly string[];
  /** The area treated, where it is neither the whole site nor whole parts of it. */
  readonly area?: Stated;
  /** How often, as the label or a source states it. */
  readonly interval?: Omit<IntervalRule, "type" | "version">;
  /** When to come back by growing degree days, where a source states it. */
  readonly degreeDays?: JobDegreeDays;
  /** What is known of this treatment, over the facts of the job. */
  readonly facts?: ApplicationFacts;
  /** When the application is expected to end, for the clock times of watering and of rain-free hours. */
  readonly end?: Instant;
  /** What the irrigation puts down there, such as 0.6 in/h, for how long to run it. */
  readonly irrigationRate?: Stated;
}

/** Spread dry. Exactly one of `target` and `rate`. */
export interface JobSpread extends JobTreatmentBase {
  readonly method: "spread";
  readonly product: string;
  /** Rate of a nutrient, such as 0.9 lb/1000 ft2 of N. */
  readonly target?: Stated;
  readonly rate?: StatedRate;
  /** In how many passes, each at an equal part of the rate; 1 where it is left out. */
  readonly passes?: number;
  /** The setting of the spreader that puts down one pass; a blank on the sheet where it is left out. */
  readonly setting?: string;
}

/** Sprayed: everything that goes into one tank. */
export interface JobSpray extends JobTreatmentBase {
  readonly method: "spray";
  readonly mix: readonly {
    readonly product: string;
    readonly rate: StatedRate;
  }[];
}

/** An interval in degree-days: how they are counted, and how many. */
export interface JobDegreeDays {
  readonly method: DegreeDayMethod;
  readonly base: BaseTemperature;
  /** The upper threshold and what happens above it, where the source states them. */
  readonly upper?: BaseTemperature;
  readonly cutoff?: UpperCutoff;
  readonly interval: { readonly value: number; readonly unit: "°C d" | "°F d" };
  readonly source: string;
}

/** What went down before: a product and its rate, or the nutrients themselves. */
export interface JobLogEntry {
  readonly date: CivilDate;
  /** Which treatment it was, for the intervals; where left out, every treatment with the product. */
  readonly treatment?: string;
  readonly parts?: readonly string[];
  readonly product?: string;
  readonly rate?: StatedRate;
  /** Nutrients or active ingredients per area, such as 0.7 lb/1000 ft2 of N. */
  readonly nutrients?: readonly Stated[];
  readonly note?: string;
}
