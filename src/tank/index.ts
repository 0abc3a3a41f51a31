export {
  type AmmoniumSulfateMinimum,
  type AmmoniumSulfateRate,
  ammoniumSulfateFromHardness,
  ammoniumSulfateMinimum,
  type HardnessIon,
  sulfateCoefficients,
  type WaterIons,
} from "./ammonium-sulfate.js";
export {
  type Amount,
  type AmountInput,
  amountFor,
  type ProductOf,
} from "./amount-for.js";
export { areaPerTank } from "./area-per-tank.js";
export { type TankCaution, tankCautions } from "./cautions.js";
export { concentrateFor, type Dilution } from "./concentrate-for.js";
export { consensusOrder } from "./consensus-order.js";
export {
  type ContainerRinse,
  containerRinse,
  type RinseRule,
  type RinseRuleId,
  rinsateGoes,
  rinseRules,
} from "./container-rinse.js";
export { type DilutionAmounts, dilutionAmounts, type PartsReading } from "./dilution-amounts.js";
export type { MeasuredOut, StrengthDimension } from "./dilution-strength.js";
export { finishedFrom } from "./finished-from.js";
export { type Formulation, formulations, isFormulation, type ProductForm } from "./formulation.js";
export { type CodeMeaning, type CodeScheme, codeMeanings, formulationOf } from "./formulation-of.js";
export { type HalfLife, halfLives } from "./half-lives.js";
export {
  type HardnessScheme,
  type HardnessSchemeId,
  hardnessClass,
  hardnessFromIons,
  hardnessSchemes,
} from "./hardness.js";
export {
  type AlkalineHydrolysis,
  alkalineHydrolysis,
  type HydrolysisLoss,
  hydrolysisLoss,
  relativeAcidity,
} from "./hydrolysis.js";
export { impliedAreaRate } from "./implied-area-rate.js";
export type { InWater } from "./in-water.js";
export { type InternationalCode, internationalCodes } from "./international-codes.js";
export { type JarReading, type JarSign, jarCannotShow, jarFailures, jarReadings } from "./jar-facts.js";
export { fixedJarAmount, type TwoJarReading, twoJarReading } from "./jar-reading.js";
export { type JarAmount, type JarProduct, type JarStep, type JarTest, jarTest } from "./jar-test.js";
export {
  type AbbreviationList,
  type AbbreviationListId,
  labelAbbreviations,
} from "./label-abbreviations.js";
export { type LabelRate, type LabelRateInput, labelRate } from "./label-rate.js";
export type { BetweenSteps, Ladder, LadderId } from "./ladder.js";
export { ladders } from "./ladders.js";
export type {
  LoadAmounts,
  LoadProduct,
  LoadShare,
  ProductAmount,
  ProductLoads,
  ReadableStep,
} from "./load-amount-types.js";
export { loadAmounts } from "./load-amounts.js";
export type { LoadSplit } from "./load-volumes.js";
export { loadingOrder } from "./loading-order.js";
export type {
  LoadingAction,
  LoadingOrder,
  LoadingOrderInput,
  LoadingStep,
  OrderedPair,
} from "./loading-order-types.js";
export { type MixObjections, type MixObjectionsInput, mixObjections } from "./mix-objections.js";
export type { LoadVolume, MixAmount, MixProduct } from "./mix-product.js";
export {
  type GroupRule,
  groupRules,
  type MixIngredient,
  mixIngredients,
  mixRuleSources,
} from "./mix-rules.js";
export { type MixToFinish, mixToFinish } from "./mix-to-finish.js";
export { type PairVotes, pairVotes, type Standing } from "./pair-votes.js";
export { perVolume } from "./per-volume.js";
export type { ProductSubstance, RateBasis, RateDimension, RateOf, RateSubstance, Recipe } from "./rate.js";
export { rinseResidue } from "./rinse-residue.js";
export { strengthOf } from "./strength-of.js";
export { type TankLoad, type TankLoads, tankLoads } from "./tank-loads.js";
export { rinsesFor, type TankRinse, tankRinse } from "./tank-rinse.js";
export { type VoteTable, votedKinds, voteTable } from "./vote-table.js";
export {
  ammoniumSulfateRates,
  type CarrierPH,
  carrierPHs,
  type HardnessThreshold,
  hardnessThresholds,
} from "./water-facts.js";
export { waterReport } from "./water-report.js";
export { expectWaterTest, type ReadWater } from "./water-test.js";
export type { WaterProduct, WaterReport, WaterReportInput, WaterTest } from "./water-types.js";
