import type { CivilDate } from "../../calendar/index.js";
import type { RateTarget } from "../../nutrient/index.js";
import type { Caution, FactSource, Finding, Quantity } from "../../quantity/index.js";
import type { IonBalance } from "../irrigation-water/ion-balance.js";
import type { IrrigationLoad } from "../irrigation-water/irrigation-load.js";
import type { LeachingLevel, LeachingRequirement } from "../irrigation-water/leaching.js";
import type { ResidualCarbonate } from "../irrigation-water/residual-carbonate.js";
import type { WaterAnalysis } from "../irrigation-water/water-analysis.js";
import type { LimeMethod } from "../lime/lime-methods.js";
import type { LimeRequirement } from "../lime/lime-requirement.js";
import type { LimeProductRate } from "../lime-material/lime-product-rate.js";
import type { LimeQualityInput } from "../lime-material/lime-quality.js";
import type { AcidityBuffer } from "../report/buffer-acidity.js";
import type { BaseCation, ExchangeCapacity } from "../report/exchange-capacity.js";
import type { SoilLayer } from "../report/soil-layer.js";
import type { GypsumRequirement } from "../sodium/gypsum-requirement.js";
import type { Extractant, SoilGuideline, TestedNutrient } from "../soil-test/guideline-types.js";
import type { GuidelineName } from "../soil-test/guidelines.js";
import type { NutrientNeed } from "../soil-test/nutrient-need.js";
import type { LeafRatioGrass } from "../soil-test/nutrient-use.js";
import type { SplitAmendment } from "../split/split-amendment.js";

/** What a report prints of an element: content by weight, or amount per area of the layer. */
export type PrintedElement<E extends string> = Quantity<"mass/mass", `${E}/soil`> | Quantity<"mass/area", E>;

/** What the laboratory wrote. */
export interface SoilReport {
  readonly laboratory: string;
  readonly date: CivilDate;
  readonly extractant: Extractant;
  /** The layer that was sampled. */
  readonly layer: SoilLayer;
  readonly pH: number;
  readonly bufferPH?: number;
  /** The term by which the laboratory turns the buffer pH into acidity. */
  readonly buffer?: AcidityBuffer;
  readonly acidity?: Quantity<"exchange capacity", "none">;
  /** The Ac of a report of North Carolina, meq/100 cm3. */
  readonly acidityPerVolume?: number;
  readonly elements: { readonly [E in TestedNutrient | BaseCation]?: PrintedElement<E> };
  readonly freeLime?: boolean;
  readonly water?: WaterAnalysis;
}

/** Where the amendments go. */
export interface AmendmentSite {
  readonly name: string;
  readonly area: Quantity<"area", "none">;
  /** Whether turf stands on it. Bare soil takes its lime at once, mixed in, unless a `most` is stated. */
  readonly standing: boolean;
  /** Nitrogen of the season, from all sources. */
  readonly nitrogen: Quantity<"mass/area", "N">;
  readonly grass?: LeafRatioGrass;
  /** The soil or turf, where the guideline tells them apart. */
  readonly soil?: string;
  /** Irrigation of the season. */
  readonly irrigation?: Quantity<"length", "none">;
}

/** Whose rules are followed. What is left out is not planned, and the plan says so. */
export interface AmendmentConventions {
  readonly lime?: {
    readonly method: LimeMethod;
    /** For the methods by pH. */
    readonly targetPH?: number;
    /** For base saturation. */
    readonly targetSaturation?: Quantity<"1", "none">;
    /** For pH buffering. */
    readonly perUnitPH?: Quantity<"exchange capacity", "none">;
    readonly material: { readonly id: string; readonly quality: LimeQualityInput };
    /** The most of the material at once, and who says so; it may be left out of bare soil, where the lime is mixed in. */
    readonly most?: { readonly amount: Quantity<"mass/area", "product">; readonly source: FactSource };
    readonly first: CivilDate;
    readonly monthsApart: number;
  };
  readonly nutrients?: {
    readonly guideline: GuidelineName | SoilGuideline;
    readonly list: readonly TestedNutrient[];
    /** Parts of an element for each part of nitrogen in the leaf, where the grass has no published one. */
    readonly perNitrogen?: { readonly [E in TestedNutrient]?: number };
  };
  readonly sodium?: { readonly targetPercent: Quantity<"1", "none">; readonly purity: number };
  readonly leaching?: LeachingLevel;
}

/** A figure of the plan in words, with how it was found and who says so. */
export interface PlanFigure {
  readonly section: "soil" | "lime" | "nutrients" | "sodium" | "water";
  readonly of: string;
  readonly value: string;
  readonly method: string;
  readonly source: FactSource;
}

/** Lime from the requirement to the dates. */
export interface LimePlan {
  readonly requirement: LimeRequirement;
  readonly product: LimeProductRate;
  readonly split: SplitAmendment<`product:${string}`>;
  /** For the whole area. */
  readonly amount: Quantity<"mass", `product:${string}`>;
}

/** What the irrigation water means. */
export interface WaterPlan {
  readonly balance: IonBalance | null;
  readonly sodiumRatio: number | null;
  readonly residualCarbonate: ResidualCarbonate | null;
  readonly leaching: LeachingRequirement | null;
  readonly load: IrrigationLoad | null;
}

/** A report turned into amendments. A plan to be checked against labels, local rules and the laboratory's own advice. */
export interface AmendmentPlan {
  readonly type: "amendment-plan";
  readonly version: 1;
  readonly site: string;
  readonly area: Quantity<"area", "none">;
  readonly laboratory: string;
  readonly date: CivilDate;
  readonly exchange: ExchangeCapacity | null;
  /** `null` where none is called for, or no convention was stated. */
  readonly lime: LimePlan | null;
  readonly needs: readonly NutrientNeed[];
  readonly gypsum: GypsumRequirement | null;
  readonly water: WaterPlan | null;
  /** Nitrogen of the season less what the water brings: the total that `seasonProgram` takes. */
  readonly nitrogen: Quantity<"mass/area", "N">;
  /** Nitrogen and every nutrient that is needed: targets that `productRates` takes. */
  readonly targets: readonly RateTarget[];
  readonly figures: readonly PlanFigure[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** What one section adds to the plan. */
export interface SectionNotes {
  readonly figures: readonly PlanFigure[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}
