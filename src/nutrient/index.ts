export { type Analysis, analysis, type Nutrient, percentOf } from "./analysis.js";
export { atomicWeights, type Element, formulaWeight } from "./atomic-weights.js";
export { type Fertilizer, type FertilizerInput, fertilizer } from "./fertilizer.js";
export { type FormOf, formFactor, nutrientForms } from "./forms.js";
export { type Elements, elementOf, inForm, type NutrientDimension, type Oxides, oxideOf } from "./in-form.js";
export { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
export { areaCovered, type Packaged, type Packages, packageCoverage, packagesFor } from "./packages.js";
export { productRate } from "./product-rate.js";
export { type ActivityIndex, activityIndex } from "./activity-index.js";
export { type Blend, type BlendPart, blendToGrade } from "./blend-to-grade.js";
export {
  type CapAtRate,
  type HighestProductRate,
  highestProductRate,
  slowShareNeeded,
} from "./highest-product-rate.js";
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
export {
  type CheapestSource,
  cheapestSource,
  costPerArea,
  type NutrientWorth,
  nutrientCost,
  type PricedProduct,
  type ProductPrice,
  type SourceCost,
} from "./nutrient-cost.js";
export {
  type ProductRates,
  productRates,
  type RateStep,
  type StepRate,
  type TargetBalance,
} from "./product-rates.js";
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
export { type SplitRate, slowShareRates, splitRates } from "./split-rates.js";
