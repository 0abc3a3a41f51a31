// From labels to loads: how much goes in, in which order, and how the tank is rinsed.

export { type TankCaution, tankCautions } from "./cautions.js";
export type { SprayPerArea } from "./inputs.js";

// formulation: what kind of product it is, by name or by code.
export {
  type Formulation,
  formulations,
  isFormulation,
  type ProductForm,
} from "./formulation/formulation.js";
export {
  type CodeMeaning,
  type CodeScheme,
  codeMeanings,
  formulationOf,
} from "./formulation/formulation-of.js";
export { type JugCode, jugCode } from "./formulation/jug-code.js";
export { type InternationalCode, internationalCodes } from "./formulation/international-codes.js";
export {
  type AbbreviationList,
  type AbbreviationListId,
  labelAbbreviations,
} from "./formulation/label-abbreviations.js";

// rate: a label rate, and how much product it asks for.
export { type Amount, type AmountInput, amountFor, type ProductOf } from "./rate/amount-for.js";
export { impliedAreaRate, type InSpray, strengthForAreaRate } from "./rate/implied-area-rate.js";
export { type LabelRate, type LabelRateInput, labelRate } from "./rate/label-rate.js";
export { perVolume } from "./rate/per-volume.js";
export type {
  ProductSubstance,
  RateBasis,
  RateDimension,
  RateOf,
  RateSubstance,
  Recipe,
} from "./rate/rate.js";

// load: how many loads, how large, and what goes into each.
export { areaPerTank } from "./load/area-per-tank.js";
export type {
  LoadAmounts,
  LoadProduct,
  LoadShare,
  ProductAmount,
  ProductLoads,
  MeasuringIncrement,
} from "./load/load-amount-types.js";
export { loadAmounts } from "./load/load-amounts.js";
export type { LoadSplit } from "./load/load-volumes.js";
export { type MixToFinish, mixToFinish } from "./load/mix-to-finish.js";
export { type TankLoad, type TankLoads, tankLoads } from "./load/tank-loads.js";

// dilution: how much concentrate and water make a strength.
export { concentrateFor, type Dilution } from "./dilution/concentrate-for.js";
export { type DilutionAmounts, dilutionAmounts, type PartsReading } from "./dilution/dilution-amounts.js";
export type { MeasuredOut, StrengthDimension } from "./dilution/dilution-strength.js";
export { finishedFrom } from "./dilution/finished-from.js";
export { strengthOf } from "./dilution/strength-of.js";

// published-orders: the published mixing orders, and what they say of a pair.
export { consensusOrder } from "./published-orders/consensus-order.js";
export type { BetweenSteps, MixingOrder, MixingOrderId } from "./published-orders/mixing-order.js";
export { mixingOrders } from "./published-orders/mixing-orders.js";
export { type PairOrder, pairOrder, type Standing } from "./published-orders/pair-order.js";
export {
  type MixingOrderTable,
  comparedKinds,
  mixingOrderTable,
} from "./published-orders/mixing-order-table.js";

// partners: which products published sources object to mixing.
export {
  type Incompatibilities,
  type IncompatibilitiesInput,
  incompatibilities,
} from "./partners/incompatibilities.js";
export type { LoadVolume, MixAmount, MixProduct } from "./partners/mix-product.js";
export {
  type GroupRule,
  groupRules,
  type MixIngredient,
  mixIngredients,
  mixRuleSources,
} from "./partners/mix-rules.js";

// order: the loading order with its steps and reasons.
export { loadingOrder } from "./order/loading-order.js";
export type {
  LoadingAction,
  LoadingOrder,
  LoadingOrderInput,
  LoadingStep,
  OrderedPair,
} from "./order/loading-order-types.js";

// water: hardness, pH and ammonium sulfate: what the carrier does to the mix.
export {
  type AmmoniumSulfateMinimum,
  type AmmoniumSulfateRate,
  ammoniumSulfateFromHardness,
  ammoniumSulfateMinimum,
  type HardnessIon,
  sulfateCoefficients,
  type WaterIons,
} from "./water/ammonium-sulfate.js";
export { type HalfLife, halfLives } from "./water/half-lives.js";
export {
  type HardnessScheme,
  type HardnessSchemeId,
  hardnessClass,
  hardnessFromIons,
  hardnessSchemes,
} from "./water/hardness.js";
export {
  type AlkalineHydrolysis,
  alkalineHydrolysis,
  type HydrolysisLoss,
  hydrolysisLoss,
  relativeAcidity,
} from "./water/hydrolysis.js";
export type { InWater } from "./water/in-water.js";
export {
  ammoniumSulfateRates,
  type CarrierPH,
  carrierPHs,
  type HardnessThreshold,
  hardnessThresholds,
} from "./water/water-facts.js";
export { waterReport } from "./water/water-report.js";
export { expectWaterTest, type ReadWater } from "./water/water-test.js";
export type { WaterProduct, WaterReport, WaterReportInput, WaterTest } from "./water/water-types.js";

// jar: the jar test: amounts, steps and how to read it.
export { type JarReading, type JarSign, jarCannotShow, jarFailures, jarReadings } from "./jar/jar-facts.js";
export { fixedJarAmount, type TwoJarReading, twoJarReading } from "./jar/jar-reading.js";
export { jarTest } from "./jar/jar-test.js";
export type { JarAmount, JarProduct, JarStep, JarTest } from "./jar/jar-test-types.js";

// rinse: rinsing containers and the tank.
export { type ContainerRinse, containerRinse, rinsateGoes } from "./rinse/container-rinse.js";
export { rinseResidue } from "./rinse/rinse-residue.js";
export { type RinseRule, type RinseRuleId, rinseRules } from "./rinse/rinse-rules.js";
export { rinsesFor, type TankRinse, tankRinse } from "./rinse/tank-rinse.js";
