export { type BaseUnit, baseUnits } from "./base-units.js";
export {
  type BaseDimension,
  type Dimension,
  oneWayProducts,
  type PerDimension,
  type PlainDimension,
  productTable,
  rateQuotients,
  simpleQuotients,
  type TimesDimension,
} from "./dimensions.js";
export { type ErrorCode, fail, type Problem, problemText, RatewrightError, shown } from "./errors.js";
export { type Bound, expectNumber, expectQuantity } from "./expect.js";
export { max, min, sum } from "./fold.js";
export { type Addend, Quantity, type QuantityJson, quantity, quantityOf } from "./quantity.js";
export {
  type AtomicSubstance,
  type CheckedSubstance,
  isSubstance,
  type NeutralSubstance,
  type PerSubstance,
  type PlainSubstance,
  perSubstance,
  substances,
  type TimesSubstance,
  timesSubstance,
} from "./substances.js";
export {
  type AnyUnitHint,
  type CheckedUnit,
  type CheckedUnitOf,
  commonQuotients,
  type DimensionOf,
  type Unit,
  type UnitHint,
} from "./unit-text.js";
