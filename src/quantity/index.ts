export {
  type BaseUnit,
  type BaseUnitDimension,
  type BaseUnitDimensions,
  type BaseUnitOf,
  unitTable,
} from "./base-units.js";
export { allOf, type Checks, checks } from "./checks.js";
export {
  depthOf,
  type FractionDimension,
  fractionByVolume,
  fractionByWeight,
  shareOf,
  temperatureDifference,
  volumePerAreaOf,
  weightFractionOf,
  weightPerVolumeOf,
} from "./crossing.js";
export {
  type BaseDimension,
  type Dimension,
  type PerDimension,
  type PlainDimension,
  rateQuotients,
  simpleQuotients,
  type TimesDimension,
} from "./dimensions.js";
export { type ErrorCode, fail, type Problem, problemText, RatewrightError, shown } from "./errors.js";
export { expectNumber, expectRecord } from "./expect.js";
export { expectAmount } from "./expect-amount.js";
export { expectFields, expectFlag, expectList, expectOneOf, expectText } from "./expect-fields.js";
export { max, min, sum } from "./fold.js";
export { type FormatOptions, format } from "./format.js";
export { frozen } from "./frozen.js";
export { inUnit, likeQuantity, numberIn, perOf, timesOf } from "./like-quantity.js";
export { type CheckedCurrency, money } from "./money.js";
export { nearName } from "./near-name.js";
export type { DecimalSign } from "./number-text.js";
export { parseQuantity, parseRange, type QuantityRange } from "./parse.js";
export { oneWayProducts, productTable } from "./product-table.js";
export {
  type Addend,
  type Bound,
  expectQuantity,
  Quantity,
  type QuantityJson,
  quantity,
  quantityOf,
} from "./quantity.js";
export { quantityReviver } from "./quantity-reviver.js";
export {
  type ExpectedQuantity,
  type QuantityInput,
  type QuantityReading,
  quantityFrom,
  readQuantity,
} from "./read.js";
export type { Caution, Citation, FactSource, Finding } from "./remark.js";
export { type QuantitySchema, quantitySchema, type SchemaIssue } from "./schema.js";
export {
  type AtomicSubstance,
  type CheckedSubstance,
  isSubstance,
  type NeutralSubstance,
  type PerSubstance,
  type PlainSubstance,
  perSubstance,
  type SubstanceHint,
  substances,
  type TimesSubstance,
  timesSubstance,
} from "./substances.js";
export { suggestSubstance, suggestUnit } from "./suggest.js";
export { type FromUcumOptions, fromUcum, toUcum } from "./ucum.js";
export { type UnitSystem, unitName, unitSymbol, unitSystem } from "./unit-names.js";
export {
  type AnyUnitHint,
  type CheckedUnit,
  type CheckedUnitOf,
  commonQuotients,
  type DimensionOf,
  type Unit,
  type UnitHint,
} from "./unit-text.js";
export { isDimension, isUnit, type UnitChoice, unitsOf } from "./units-of.js";
