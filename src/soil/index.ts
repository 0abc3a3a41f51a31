// A laboratory report turned into amendments, by the convention of the laboratory that wrote it.

// report: what the figures of a report mean: units, charge, layers of soil, exchange capacity.
export {
  type AcidityBuffer,
  acidityBuffers,
  acidityFromBuffer,
  type BufferTerm,
} from "./report/buffer-acidity.js";
export {
  type EquivalentWeights,
  equivalentWeight,
  type Ion,
  ionCharges,
} from "./report/equivalent-weight.js";
export {
  type BaseCation,
  baseCations,
  type CationShare,
  type ExchangeCapacity,
  exchangeCapacity,
  type PrintedCation,
} from "./report/exchange-capacity.js";
export { contentOfCharge, exchangeableCharge } from "./report/soil-charge.js";
export { amountInSoil, contentInSoil } from "./report/soil-content.js";
export {
  type AssumedLayer,
  type AssumedSoil,
  assumedSoils,
  type SoilLayer,
  soilMass,
} from "./report/soil-layer.js";

// core: what a core says: water by weight and by volume, bulk density, pores.
export { soilBulkDensity } from "./core/bulk-density.js";
export { type SoilPorosity, totalPorosity } from "./core/porosity.js";
export type { SoilWeight } from "./core/soil-weights.js";
export { gravimetricWaterContent, volumetricWaterContent } from "./core/water-content.js";

// lime: how much lime a soil needs, by the method of the laboratory.
export type { LimeSubstance } from "./lime/found-requirement.js";
export { limeForSeason } from "./lime/lime-for-season.js";
export type { LimeRequirementInput } from "./lime/lime-inputs.js";
export { type LimeMeasure, type LimeMethod, type LimeMethodFacts, limeMethods } from "./lime/lime-methods.js";
export { type LimeRequirement, limeRequirement } from "./lime/lime-requirement.js";
export { type CreditSoil, residualLimeCredit } from "./lime/residual-credit.js";

// lime-material: what a liming material is worth, and how much of it a recommendation takes.
export { carbonateEquivalent, type LimingCompound } from "./lime-material/carbonate-equivalent.js";
export {
  type FinenessScheme,
  type FinenessSchemeName,
  finenessSchemes,
} from "./lime-material/fineness-schemes.js";
export { limeForDepth } from "./lime-material/lime-for-depth.js";
export { type LimeProductRate, limeForRating, limeProductRate } from "./lime-material/lime-product-rate.js";
export {
  type LimeQuality,
  type LimeQualityInput,
  limeQuality,
  type RatingSubstance,
} from "./lime-material/lime-quality.js";
export type { SieveTest } from "./lime-material/sieve-test.js";

// split: an amendment in applications by date, under a stated maximum.
export {
  type AmendmentApplication,
  type SplitAmendment,
  type SplitAmendmentInput,
  splitAmendment,
} from "./split/split-amendment.js";
export { type SurfaceMaximum, surfaceMaxima } from "./split/surface-maxima.js";

// acidify: sulfur on turf and in bare soil, and what free lime takes up.
export { sulfurApplications } from "./acidify/sulfur-applications.js";
export { sulfurForCarbonate } from "./acidify/sulfur-for-carbonate.js";
export {
  type AcidifyingMaterial,
  type AcidifyingRate,
  sulfurToIncorporate,
} from "./acidify/sulfur-to-incorporate.js";

// sodium: gypsum and its kin for a sodic soil.
export {
  type CalciumSource,
  gypsumEquivalent,
  type SodicAmendment,
  sodicAmendments,
} from "./sodium/gypsum-equivalent.js";
export {
  type GypsumConvention,
  type GypsumDepth,
  type GypsumRequirement,
  gypsumRequirement,
} from "./sodium/gypsum-requirement.js";
export { type SodiumPercentage, sodiumPercentageFromRatio } from "./sodium/sodium-percentage.js";

// irrigation-water: what a water report means for soil and grass.
export {
  type AcidDose,
  type Alkalinity,
  acidForAlkalinity,
  type WaterAcid,
} from "./irrigation-water/acid-for-alkalinity.js";
export {
  type AdjustedSodiumRatio,
  adjustedSodiumRatio,
  type SodiumAdjustment,
} from "./irrigation-water/adjusted-sodium-ratio.js";
export { type BlendedWater, blendShare, blendWaters } from "./irrigation-water/blend-waters.js";
export {
  dissolvedSalts,
  type SaltFactor,
  type WaterSaltClass,
  waterSaltClass,
  waterSaltClasses,
} from "./irrigation-water/dissolved-salts.js";
export { type IonBalance, ionBalance } from "./irrigation-water/ion-balance.js";
export { type IrrigationLoad, irrigationLoad } from "./irrigation-water/irrigation-load.js";
export {
  irrigationWithLeaching,
  type LeachingLevel,
  type LeachingMethod,
  type LeachingRequirement,
  leachingRequirement,
} from "./irrigation-water/leaching.js";
export { type ResidualCarbonate, residualSodiumCarbonate } from "./irrigation-water/residual-carbonate.js";
export { sodiumAdsorptionRatio } from "./irrigation-water/sodium-ratio.js";
export type { PrintedIon, WaterAnalysis, WaterIonName } from "./irrigation-water/water-analysis.js";

// soil-test: what a nutrient needs, by the guideline of its extractant, and what a leaf analysis says.
export type { Extractant, GuidelineRow, SoilGuideline, TestedNutrient } from "./soil-test/guideline-types.js";
export { type GuidelineName, soilGuidelines } from "./soil-test/guidelines.js";
export {
  type NeedForm,
  type NeedTarget,
  type NutrientNeed,
  type NutrientNeedInput,
  nutrientNeed,
} from "./soil-test/nutrient-need.js";
export { type LeafRatio, type LeafRatioGrass, leafRatios, nutrientUse } from "./soil-test/nutrient-use.js";
export { type SoilTestReading, soilTestReading } from "./soil-test/soil-test-reading.js";
export {
  type TissueNutrient,
  type TissueReading,
  tissueRanges,
  tissueReading,
} from "./soil-test/tissue-reading.js";

// organic: compost by volume and weight, its nitrogen over the years, and elements on the leaf.
export {
  type AvailableNitrogen,
  availableNitrogen,
  type Mineralization,
} from "./organic/available-nitrogen.js";
export { type CompostAmount, compostAmount } from "./organic/compost-amount.js";
export {
  type FoliarElement,
  type FoliarMicronutrient,
  foliarMicronutrient,
} from "./organic/foliar-micronutrient.js";
export { onDryBasis, onWetBasis } from "./organic/moisture-basis.js";

// amendment-plan: a report in, a plan out.
export { amendmentPlan } from "./amendment-plan/amendment-plan.js";
export { amendmentPlanText } from "./amendment-plan/amendment-plan-text.js";
export type {
  AmendmentConventions,
  AmendmentPlan,
  AmendmentSite,
  LimePlan,
  PlanFigure,
  PrintedElement,
  SoilReport,
  WaterPlan,
} from "./amendment-plan/plan-types.js";
