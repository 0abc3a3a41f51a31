// Mean and spread, guarded rounding, interpolation, and how errors add up.

// number: sums, means, spread, interpolation, rounding and comparing of bare numbers.
export { accurateSum } from "./number/accurate-sum.js";
export { coefficientOfVariation } from "./number/coefficient-of-variation.js";
export { exceeds } from "./number/exceeds.js";
export { interpolate } from "./number/interpolate.js";
export { mean } from "./number/mean.js";
export type { Numbers } from "./number/numbers.js";
export { roundTo } from "./number/round-to.js";
export { type Divisor, standardDeviation } from "./number/standard-deviation.js";
export { wholeUnitsFor, wholeUnitsWithin } from "./number/whole-units.js";

// estimate: a measured quantity with its error: from readings, through products, against a target.
export { checkAgainstTarget, type TargetCheck, type TargetVerdict } from "./estimate/check-against-target.js";
export { type ConfidenceInterval, confidenceInterval } from "./estimate/confidence-interval.js";
export { coverageFactor } from "./estimate/coverage-factor.js";
export { errorOfProduct, type Factor, type Measured } from "./estimate/error-of-product.js";
export type { Estimate } from "./estimate/estimate.js";
export { type AnyEstimate, type EstimateFactor, estimateOfProduct } from "./estimate/estimate-of-product.js";
export { meanEstimate } from "./estimate/mean-estimate.js";
export { expectReadings } from "./estimate/readings.js";
export { readingsFor } from "./estimate/readings-for.js";
export { type ErrorMeaning, statedEstimate } from "./estimate/stated-estimate.js";
