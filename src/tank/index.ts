export {
  type Amount,
  type AmountInput,
  amountFor,
  type ProductOf,
} from "./amount-for.js";
export { type TankCaution, tankCautions } from "./cautions.js";
export { consensusOrder } from "./consensus-order.js";
export { type Formulation, formulations, isFormulation, type ProductForm } from "./formulation.js";
export { type CodeScheme, formulationOf } from "./formulation-of.js";
export { impliedAreaRate } from "./implied-area-rate.js";
export { type InternationalCode, internationalCodes } from "./international-codes.js";
export { type LabelRate, type LabelRateInput, labelRate } from "./label-rate.js";
export type { Ladder, LadderId } from "./ladder.js";
export { ladders } from "./ladders.js";
export {
  type LoadAmounts,
  type LoadProduct,
  type LoadShare,
  loadAmounts,
  type ProductAmount,
  type ProductLoads,
  type ReadableStep,
} from "./load-amounts.js";
export { loadingOrder } from "./loading-order.js";
export type {
  LoadingAction,
  LoadingOrder,
  LoadingOrderInput,
  LoadingStep,
  MixAmount,
  MixProduct,
  OrderedPair,
} from "./loading-order-types.js";
export { type PairVotes, pairVotes, type Standing } from "./pair-votes.js";
export { perVolume } from "./per-volume.js";
export type { ProductSubstance, RateBasis, RateDimension, RateOf, RateSubstance, Recipe } from "./rate.js";
export { type LoadSplit, type TankLoad, type TankLoads, tankLoads } from "./tank-loads.js";
