// A laboratory report turned into amendments, by the convention of the laboratory that wrote it.

// report: what the figures of a report mean: units, charge, layers of soil, exchange capacity.
export { type AcidityBuffer, acidityBuffers, acidityFromBuffer } from "./report/buffer-acidity.js";
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
export { type AssumedSoil, assumedSoils, type SoilLayer, soilMass } from "./report/soil-layer.js";

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
