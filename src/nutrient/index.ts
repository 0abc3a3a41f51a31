export { type ActivityIndex, activityIndex } from "./activity-index.js";
export { type Analysis, analysis, type Nutrient, percentOf } from "./analysis.js";
export { atomicWeights, type ChemicalElement, formulaWeight } from "./atomic-weights.js";
export { type Blend, type BlendPart, blendToGrade } from "./blend-to-grade.js";
export {
  type BurnRisk,
  burnRisk,
  type FoliarSource,
  foliarBurnOrder,
  foliarBurnRisk,
  highPartialSaltIndex,
} from "./burn-risk.js";
export {
  type ControlledReleaseTest,
  controlledReleaseTest,
  type ReleaseLimit,
} from "./controlled-release-test.js";
export { type Fertilizer, type FertilizerInput, fertilizer } from "./fertilizer.js";
export { type FormOf, formFactor, nutrientForms } from "./forms.js";
export {
  type CapAtRate,
  type HighestProductRate,
  highestProductRate,
  slowShareNeeded,
} from "./highest-product-rate.js";
export { type Elements, elementOf, inForm, type NutrientDimension, type Oxides, oxideOf } from "./in-form.js";
export { injectionRate, stockFlow } from "./injection-rate.js";
export {
  type Injector,
  type InjectorReading,
  type InjectorText,
  injector,
  type ReadingOf,
} from "./injector.js";
export { type ChartRow, chartAmount, chartConductivity, type InjectorChart } from "./injector-chart.js";
export {
  densityAt,
  densitySlopeOfUan,
  inventoryShrink,
  liquidDensity,
  saltOutFindings,
} from "./liquid-density.js";
export {
  type LiquidMaterial,
  type LiquidMaterialId,
  liquidMaterials,
  type SaltOut,
} from "./liquid-materials.js";
export {
  analysisByWeight,
  liquidProductRate,
  type NutrientsPerVolume,
  nutrientPerVolume,
  volumeOfLiquid,
  weightOfLiquid,
} from "./liquid-rates.js";
export {
  coatedNitrogenSource,
  type NitrogenBreakdown,
  type NitrogenGuarantee,
  type NitrogenLine,
  nitrogenBreakdown,
  productNitrogen,
} from "./nitrogen-breakdown.js";
export type { CapName, DatedNitrogen, NitrogenCap, NitrogenCaps } from "./nitrogen-caps.js";
export {
  type CheapestSource,
  cheapestSource,
  costPerArea,
  type NutrientWorth,
  nutrientCost,
  type PricedProduct,
  type SourceCost,
} from "./nutrient-cost.js";
export { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
export { areaCovered, type Packaged, type Packages, packageCoverage, packagesFor } from "./packages.js";
export {
  type AcidComposition,
  type AcidifyingNitrogen,
  type AcidityConvention,
  type AcidSource,
  acidityPerNitrogen,
  limeForNitrogen,
  potentialAcidity,
  potentialAcidityOfSource,
} from "./potential-acidity.js";
export type { ProductPrice } from "./product-price.js";
export { productRate } from "./product-rate.js";
export {
  type ProductRates,
  productRates,
  type RateStep,
  type StepRate,
  type TargetBalance,
} from "./product-rates.js";
export {
  type NitrogenEstimate,
  type NitrogenProgram,
  type ProgramApplication,
  type ProgramComparison,
  type ProgramOutcome,
  type ProgramWeek,
  programComparison,
} from "./program-comparison.js";
export { type ComparedProgram, programFindings } from "./program-findings.js";
export type { ClosedSeason, ProgramMonth, ProgramPlan, SeasonProgramInput } from "./program-parts.js";
export {
  type CapArray,
  highestProductRatesKgPerHa,
  nutrientsSuppliedKg,
  productRatesKgPerHa,
} from "./rate-arrays.js";
export type { CappedSubstance, RateCap } from "./rate-cap.js";
export type { RateTarget } from "./rate-target.js";
export {
  type ReleaseClass,
  type ReleaseScheme,
  type ReleaseSchemeName,
  releaseClass,
  releaseSchemes,
} from "./release-class.js";
export { type ReleaseCurve, releasedShares } from "./release-curve.js";
export { type Placement, type ReleaseModel, type ReleaseModelInput, releaseModel } from "./release-model.js";
export {
  firstOrderRate,
  naturalOrganic,
  polymerCoatedInSoil,
  polymerCoatedOnSurface,
  quickRelease,
  slowPolymerCoatedInSoil,
  statedDuration,
  ureaFormaldehyde,
} from "./release-models.js";
export type { Bound3, ReleaseRange } from "./release-range.js";
export { accumulateEquivalentDaysC, type TemperatureResponse } from "./release-temperature.js";
export type { MeanTemperature } from "./release-weather.js";
export {
  type DailyEstimate,
  type NitrogenPortion,
  type NitrogenRate,
  type NitrogenRelease,
  type PortionRelease,
  type ReleaseWeek,
  releaseByWeek,
  releasedNitrogen,
} from "./released-nitrogen.js";
export {
  type CapUse,
  type RemainingNitrogen,
  remainingNitrogenUnderStatedLimits,
} from "./remaining-nitrogen.js";
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
} from "./salt-index.js";
export { type MonthBalance, type SeasonProgram, seasonProgram } from "./season-program.js";
export { concentrationOf, productForConcentration } from "./solution-concentration.js";
export { type SplitRate, slowShareRates, splitRates } from "./split-rates.js";
export type { StockAmount, StockSalt } from "./stock-salt.js";
export { type NutrientConcentration, type StockTank, stockTank } from "./stock-tank.js";
export {
  type AcidityBasis,
  type AcidityRow,
  type AcidityTable,
  tabulatedAcidity,
} from "./tables/acidity-table.js";
export { adviserAcidity } from "./tables/adviser-acidity.js";
export { californiaAcidity } from "./tables/california-acidity.js";
export { gardenSaltIndexes } from "./tables/garden-salt-indexes.js";
export { growerAcidity } from "./tables/grower-acidity.js";
export { labelChart20 } from "./tables/label-chart-20.js";
export { newMexicoSaltIndexes } from "./tables/new-mexico-salt-indexes.js";
export { oregonAcidity } from "./tables/oregon-acidity.js";
export { oregonSaltIndexes } from "./tables/oregon-salt-indexes.js";
export { type PublishedDuration, publishedDurations } from "./tables/release-durations.js";
export { rememberedSaltIndexes } from "./tables/remembered-salt-indexes.js";
export { type SaltRow, type SaltTable, tabulatedSaltIndex } from "./tables/salt-table.js";
export { turfListSaltIndexes } from "./tables/turf-list-salt-indexes.js";
export { weightSaltIndexes } from "./tables/weight-salt-indexes.js";
