// A laboratory report turned into amendments, by the convention of the laboratory that wrote it.

// report/: what the figures of a report mean: units, charge, layers of soil, exchange capacity.
export {
  type AcidityBuffer,
  acidityBuffers,
  acidityFromBuffer,
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
export { type AssumedSoil, assumedSoils, type SoilLayer, soilMass } from "./report/soil-layer.js";
