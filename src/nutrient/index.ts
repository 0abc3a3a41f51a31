// From the label on the bag to the nitrogen of a season.

// label: what a label states: analysis, fertilizer, breakdown of nitrogen, oxide and element.
export { type Analysis, analysis, type Nutrient, percentOf } from "./label/analysis.js";
export { atomicWeights, type ChemicalElement, formulaWeight } from "./label/atomic-weights.js";
export { type Fertilizer, type FertilizerInput, fertilizer } from "./label/fertilizer.js";
export { type FormOf, formFactor, nutrientForms } from "./label/forms.js";
export {
  type Elements,
  elementOf,
  inForm,
  type NitrogenForm,
  type NutrientDimension,
  nitrogenOf,
  type Oxides,
  oxideOf,
} from "./label/in-form.js";
export {
  type LiquidFertilizer,
  type LiquidFertilizerInput,
  liquidFertilizer,
} from "./label/liquid-fertilizer.js";
export {
  coatedNitrogenSource,
  type NitrogenBreakdown,
  type NitrogenGuarantee,
  type NitrogenLine,
  nitrogenBreakdown,
  productNitrogen,
} from "./label/nitrogen-breakdown.js";
export { isNutrient, nutrients, type StatedBy } from "./label/nutrient.js";
export type { NutrientsPerVolume } from "./label/per-volume.js";
export {
  type ReleaseClass,
  type ReleaseScheme,
  type ReleaseSchemeName,
  releaseClass,
  releaseSchemes,
} from "./label/release-class.js";

// rate: how much product for a target, what it supplies, and the highest rate under caps.
export { analysisOfMix, type MixedMaterial } from "./rate/analysis-of-mix.js";
export {
  type CapAtRate,
  type HighestProductRate,
  highestProductRate,
  slowShareNeeded,
} from "./rate/highest-product-rate.js";
export {
  type NutrientsSupplied,
  nutrientsSupplied,
  type ProductDimension,
  type WeighedDimension,
} from "./rate/nutrients-supplied.js";
export { productMass } from "./rate/product-mass.js";
export { productRate } from "./rate/product-rate.js";
export {
  type ProductRates,
  productRates,
  type RateOrder,
  type StepRate,
  type TargetBalance,
} from "./rate/product-rates.js";
export {
  type CapArray,
  highestProductRatesKgPerHa,
  nutrientsSuppliedKg,
  productRatesKgPerHa,
} from "./rate/rate-arrays.js";
export type { CappedSubstance, RateCap } from "./rate/rate-cap.js";
export type { RateStep } from "./rate/rate-steps.js";
export type { RateTarget } from "./rate/rate-target.js";
export { type SourceRate, slowShareRates, ratesBySource } from "./rate/rates-by-source.js";

// cost: how many packages, how far one goes, and what a nutrient costs.
export {
  type CheapestSource,
  cheapestSource,
  type PricedProduct,
  type SourceCost,
} from "./cost/cheapest-source.js";
export { costPerArea } from "./cost/cost-per-area.js";
export { type NutrientWorth, nutrientCost } from "./cost/nutrient-cost.js";
export {
  areaCovered,
  type Packaged,
  type Packages,
  packageContents,
  packageCoverage,
  packagesFor,
} from "./cost/packages.js";
export type { ProductPrice } from "./cost/product-price.js";

// blend: materials mixed to a grade; the cheapest blend is a path of its own.
export { type Blend, type BlendPart, blendToGrade } from "./blend/blend-to-grade.js";

// liquid: liquids by weight and by volume: density, rates, salting out.
export {
  densityAt,
  densitySlopeOfUan,
  inventoryShrink,
  liquidDensity,
  saltOutFindings,
} from "./liquid/liquid-density.js";
export {
  type LiquidMaterial,
  type LiquidMaterialId,
  liquidMaterials,
  type SaltOut,
} from "./liquid/liquid-materials.js";
export {
  analysisByWeight,
  liquidProductRate,
  nutrientPerVolume,
  volumeOfLiquid,
  weightOfLiquid,
} from "./liquid/liquid-rates.js";

// release: how much of the nitrogen is out after so many weeks, by model and weather.
export { type ActivityIndex, activityIndex } from "./release/activity-index.js";
export {
  polymerCoatedInSoil,
  polymerCoatedOnSurface,
  slowPolymerCoatedInSoil,
  sulfurCoatedOnSurface,
  sulfurCoatedUrea,
} from "./release/coated-urea.js";
export {
  type ControlledReleaseTest,
  controlledReleaseTest,
  type ReleaseLimit,
} from "./release/controlled-release-test.js";
export { type ReleaseCurve, releasedShares } from "./release/release-curve.js";
export { type PublishedDuration, publishedDurations } from "./release/release-durations.js";
export {
  type ObservedReach,
  type Placement,
  type ReleaseModel,
  type ReleaseModelInput,
  releaseModel,
} from "./release/release-model.js";
export { firstOrderRate, naturalOrganic, quickRelease, statedDuration } from "./release/release-models.js";
export type { Bound3, ReleaseRange } from "./release/release-range.js";
export { accumulateEquivalentDaysC, type TemperatureResponse } from "./release/release-temperature.js";
export type { MeanTemperature } from "./release/release-weather.js";
export { isobutylideneDiurea } from "./release/isobutylidene-diurea.js";
export type { NitrogenPortion, NitrogenRate } from "./release/nitrogen-portion.js";
export type { DailyEstimate, NitrogenRelease, PortionRelease } from "./release/nitrogen-release.js";
export { type ReleaseWeek, releaseByWeek } from "./release/release-by-week.js";
export { releasedNitrogen } from "./release/released-nitrogen.js";
export {
  methyleneUrea,
  type UreaFormaldehydeLabel,
  ureaFormaldehyde,
  ureaform,
} from "./release/urea-formaldehyde.js";

// season: how a season of nitrogen is divided, what is left under its caps, and programs side by side.
export type { CapName, DatedNitrogen, NitrogenCap, NitrogenCaps } from "./season/nitrogen-caps.js";
export {
  type NitrogenEstimate,
  type NitrogenProgram,
  type ProgramApplication,
  type ProgramComparison,
  type ProgramOutcome,
  type ProgramWeek,
  programComparison,
} from "./season/program-comparison.js";
export { type ComparedProgram, programFindings } from "./season/program-findings.js";
export type { ClosedSeason, ProgramMonth, ProgramPlan, SeasonProgramInput } from "./season/program-parts.js";
export {
  type ApplicationInterval,
  type IntervalPractice,
  intervalPractices,
  type LeastApplication,
} from "./season/program-spacing.js";
export {
  type CapUse,
  type RemainingNitrogen,
  remainingNitrogen,
} from "./season/remaining-nitrogen.js";
export { type MonthBalance, type SeasonProgram, seasonProgram } from "./season/season-program.js";

// salt: salt indexes by scale and table, and the risk of burn.
export {
  type BurnRisk,
  burnRisk,
  type FoliarSource,
  foliarBurnOrder,
  foliarBurnRisk,
  highPartialSaltIndex,
} from "./salt/burn-risk.js";
export { type BurnClass, type BurnScheme, type BurnSchemeName, burnSchemes } from "./salt/burn-schemes.js";
export { gardenSaltIndexes } from "./salt/garden-salt-indexes.js";
export { newMexicoSaltIndexes } from "./salt/new-mexico-salt-indexes.js";
export { oregonSaltIndexes } from "./salt/oregon-salt-indexes.js";
export { rememberedSaltIndexes } from "./salt/remembered-salt-indexes.js";
export {
  blendSaltIndex,
  compareSaltIndexes,
  partialSaltIndex,
  type SaltIndex,
  type SaltPart,
  type SaltScale,
  saltIndex,
  scaledSaltIndex,
  type UnitBasis,
} from "./salt/salt-index.js";
export { type SaltRow, type SaltTable, tabulatedSaltIndex } from "./salt/salt-table.js";
export { turfListSaltIndexes } from "./salt/turf-list-salt-indexes.js";
export { weightSaltIndexes } from "./salt/weight-salt-indexes.js";

// acidity: what fertilizer does to soil pH: potential acidity and the lime that makes up for it.
export {
  type AcidityBasis,
  type AcidityRow,
  type AcidityTable,
  tabulatedAcidity,
} from "./acidity/acidity-table.js";
export { adviserAcidity } from "./acidity/adviser-acidity.js";
export { californiaAcidity } from "./acidity/california-acidity.js";
export { growerAcidity } from "./acidity/grower-acidity.js";
export { oregonAcidity } from "./acidity/oregon-acidity.js";
export {
  type AcidComposition,
  type AcidifyingNitrogen,
  type AcidityConvention,
  type AcidSource,
  acidityPerNitrogen,
  limeForNitrogen,
  potentialAcidity,
  potentialAcidityOfSource,
} from "./acidity/potential-acidity.js";

// injection: stock tanks, injectors and concentrations in irrigation water.
export { injectionRate, stockFlow } from "./injection/injection-rate.js";
export {
  type Injector,
  type InjectorReading,
  type InjectorText,
  injector,
  type ReadingOf,
} from "./injection/injector.js";
export {
  type ChartRow,
  chartAmount,
  chartConductivity,
  type InjectorChart,
} from "./injection/injector-chart.js";
export { labelChart20 } from "./injection/label-chart-20.js";
export { concentrationOf, productForConcentration } from "./injection/solution-concentration.js";
export type { StockAmount, StockSalt } from "./injection/stock-salt.js";
export { type NutrientConcentration, type StockTank, stockTank } from "./injection/stock-tank.js";
