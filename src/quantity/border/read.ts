import { RatewrightError, shown } from "../errors/errors.js";
import type { CheckedSubstance, SubstanceHint } from "../substance/substances.js";
import { readText } from "../text/read-text.js";
import type { Dimension } from "../unit/dimensions.js";
import type { Quantity } from "../value/quantity.js";
import { isBlank } from "./parts.js";
import {
  bounded,
  checkExpected,
  type ExpectedQuantity,
  failed,
  made,
  type PartsReading,
  placed,
  type QuantityReading,
  readingAt,
  readRecord,
  type Wanted,
} from "./record.js";
import { words } from "./words.js";

/** Reads any input as a quantity and collects every problem; never throws. */
export const readParts = (input: unknown, wanted: Wanted): PartsReading => {
  if (typeof input !== "string" || isBlank(input)) return readRecord(input, wanted, words);
  const { value = Number.NaN, unit, of, problems } = readText(input, wanted, "");
  const outside = bounded(value, wanted.bound, "");
  // Where nothing is wrong with a text, it has a unit and a substance.
  return problems.length + outside.length > 0
    ? failed(...problems, ...outside)
    : made(value, unit as string, of as string);
};

/**
 * Reads what came from outside as a quantity of the dimension and substance that are wanted: a quantity,
 * `{ value, unit, of }` (the value a number, or a text such as `"1 1/2"`), or a text as `parseQuantity`
 * reads it. Gives every problem at once, each with its path and a suggestion where one is near.
 *
 * A record has no other fields (`dimension` is passed over): a misspelt one is told with the one that is near.
 * The substance of a record is never inferred: where `of` is wanted and the record has none, that is a
 * problem. A text is typed into a field that says what it is for, so there `of` is taken as wanted.
 *
 * @throws RatewrightError `type`, `substance/unknown` where `expected` itself is wrong
 *
 * @example
 * ```ts
 * import { readQuantity } from "ratewright";
 * const read = readQuantity({ value: "3", unit: "lb/1000 ft2", of: "N" }, { dimension: "mass/area", of: "N" });
 * read.value?.in("lb/acre"); // => 130.68
 * const wrong = readQuantity({ value: "x", unit: "lbs", of: "nitrogen" }, { dimension: "mass", of: "N", path: "bag" });
 * wrong.problems.map((problem) => problem.path); // => ["bag.value", "bag.unit", "bag.of"]
 * wrong.problems.map((problem) => problem.suggestion); // => [undefined, "lb", "N"]
 * ```
 */
export function readQuantity<const D extends Dimension, const S extends SubstanceHint>(
  input: unknown,
  expected: ExpectedQuantity & { readonly dimension: D; readonly of: CheckedSubstance<S> },
): QuantityReading<D, S>;
export function readQuantity<const D extends Dimension>(
  input: unknown,
  expected: ExpectedQuantity & { readonly dimension: D; readonly of?: undefined },
): QuantityReading<D, string>;
export function readQuantity(input: unknown, expected: ExpectedQuantity): unknown {
  checkExpected(expected);
  return readingAt(readParts(input, expected), expected.path);
}

/**
 * The quantity that `JSON.parse` left as `{ value, unit, of }`, of whatever dimension and substance.
 *
 * @param path - the name of the field in problems
 * @throws RatewrightError with every problem: `missing`, `type`, `not-finite`, `unit/unknown`, `substance/unknown`
 *
 * @example
 * ```ts
 * import { quantityFrom } from "ratewright";
 * quantityFrom({ value: 3, unit: "lb/1000 ft2", of: "N" }).toString(); // => "3 lb/1000 ft2 of N"
 * ```
 */
export const quantityFrom = (json: unknown, path = "quantity"): Quantity<string, string> => {
  if (typeof json === "string") {
    throw new RatewrightError({ code: "type", path, got: shown(json), expected: "{ value, unit, of }" });
  }
  const { value, problems } = readParts(json, {});
  if (value === undefined) throw new RatewrightError(placed(problems, path));
  return value;
};
