// Amounts with a unit and a substance, checked by the compiler and at run time.

// errors: what a refusal says, and how a record, a list or a number is read at the door.
export { allOf, type Checks, checks } from "./errors/checks.js";
export {
  type ErrorCode,
  fail,
  type Problem,
  problemReason,
  problemText,
  RatewrightError,
  shown,
} from "./errors/errors.js";
export { expectNumber, expectRecord } from "./errors/expect.js";
export { expectFields, expectFlag, expectList, expectOneOf, expectText } from "./errors/expect-fields.js";
export { expectName } from "./errors/expect-name.js";
export { frozen } from "./errors/frozen.js";
export { nearName } from "./errors/near-name.js";
export { outOfRange, type RangeBounds, type RangeWords, rangeProblem } from "./errors/out-of-range.js";
export { plainCopy } from "./errors/plain-copy.js";
export { type Reader, readFields, toldAt, toldBy, unreadable } from "./errors/read-fields.js";
export type { Caution, Citation, FactSource, Finding } from "./errors/remark.js";

// unit: which units and dimensions there are, and how one converts to another.
export {
  type BaseUnit,
  type BaseUnitDimension,
  type BaseUnitDimensions,
  type BaseUnitOf,
  unitTable,
} from "./unit/base-units.js";
export {
  type BaseDimension,
  type Dimension,
  type PerDimension,
  type PlainDimension,
  rateQuotients,
  simpleQuotients,
  type TimesDimension,
} from "./unit/dimensions.js";
export { oneWayProducts, productTable } from "./unit/product-table.js";
export { type UnitSystem, unitName, unitSymbol, unitSystem } from "./unit/unit-names.js";
export {
  type AnyUnitHint,
  type CheckedUnit,
  type CheckedUnitOf,
  commonQuotients,
  type DimensionOf,
  type Unit,
  type UnitHint,
} from "./unit/unit-text.js";
export { isDimension, isUnit, type UnitChoice, unitsOf } from "./unit/units-of.js";

// substance: what an amount is of: nitrogen, phosphate, product, spray.
export {
  type AtomicSubstance,
  type CheckedSubstance,
  isSubstance,
  type NeutralSubstance,
  type PerSubstance,
  type PlainSubstance,
  type Substance,
  perSubstance,
  type SubstanceHint,
  substances,
  type TimesSubstance,
  timesSubstance,
} from "./substance/substances.js";
export { type SubstanceChoice, substanceChoices } from "./substance/substance-names.js";

// value: the quantity itself, its arithmetic, and the named crossings between kinds.
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
} from "./value/crossing.js";
export { expectAmount } from "./value/expect-amount.js";
export type { Bound, QuantityJson } from "./value/expected.js";
export { max, min, sum } from "./value/fold.js";
export { inUnit, likeQuantity, numberIn, ofKind, perOf, timesOf } from "./value/like-quantity.js";
export { type CheckedCurrency, money } from "./value/money.js";
export type { Addend } from "./value/kinds.js";
export { expectQuantity } from "./value/expect-quantity.js";
export type {
  Area,
  Length,
  Pressure,
  Share,
  Speed,
  Temperature,
  Time,
  Volume,
} from "./value/plain-quantities.js";
export { Quantity, quantity, quantityOf } from "./value/quantity.js";

// text: what people type and what is printed: parsing, suggestions, formatting, UCUM codes.
export { type FormatOptions, format } from "./text/format.js";
export type { DecimalSign } from "./text/number-text.js";
export { parseQuantity, parseRange, type QuantityRange } from "./text/parse.js";
export type { Measures } from "./text/text-reading.js";
export { suggestSubstance, suggestUnit } from "./text/suggest.js";
export { type FromUcumOptions, fromUcum, toUcum } from "./text/ucum.js";

// border: from forms, JSON and validators to quantities.
export { convertedNumbers } from "./border/converted-numbers.js";
export { correctedTexts } from "./border/corrected-texts.js";
export { quantityReviver } from "./border/quantity-reviver.js";
export { quantityFrom, readQuantity } from "./border/read.js";
export { readExact } from "./border/read-exact.js";
export type { ExpectedQuantity, QuantityInput, QuantityReading } from "./border/record.js";
export { type QuantitySchema, quantitySchema, type SchemaIssue } from "./border/schema.js";
