import type { CheckedSubstance, SubstanceHint } from "../substance/substances.js";
import type { Dimension } from "../unit/dimensions.js";
import {
  checkExpected,
  type ExpectedQuantity,
  type QuantityReading,
  readingAt,
  readRecord,
} from "./record.js";

/**
 * Reads a number field beside a select box of units, or a record that a program wrote: `{ value, unit, of }` with the
 * exact name of the unit, as `unitsOf` and `isUnit` have it, and of the substance; the value is a number or a text such
 * as `"1 1/2"`. It refuses what {@link readQuantity} refuses, in the same form.
 *
 * A unit or a substance in words (`lbs`, `nitrogen`) and a whole text (`"3 lb/1000 ft2"`) are refused: `readQuantity`
 * reads those. A form that needs no words ships less than half of the code.
 *
 * @param expected - the `dimension` and, where it is known, the substance `of`; `bound`; `path`
 * @throws RatewrightError `type`, `substance/unknown` where `expected` itself is wrong
 *
 * @example
 * ```ts
 * import { readExact } from "ratewright";
 * const rate = { dimension: "mass/area", of: "N", path: "rate" } as const;
 * readExact({ value: "1 1/2", unit: "lb/1000 ft2", of: "N" }, rate).value?.in("lb/acre"); // => 65.34
 * readExact({ value: "", unit: "lbs", of: "N" }, rate).problems.map(({ path, code }) => [path, code]);
 * // => [["rate.value", "missing"], ["rate.unit", "unit/unknown"]]
 * ```
 */
export function readExact<const D extends Dimension, const S extends SubstanceHint>(
  input: unknown,
  expected: Omit<ExpectedQuantity, "measures"> & {
    readonly dimension: D;
    readonly of: CheckedSubstance<S>;
  },
): QuantityReading<D, S>;
export function readExact<const D extends Dimension>(
  input: unknown,
  expected: Omit<ExpectedQuantity, "measures"> & { readonly dimension: D; readonly of?: undefined },
): QuantityReading<D, string>;
export function readExact(input: unknown, expected: ExpectedQuantity): unknown {
  checkExpected(expected);
  return readingAt(readRecord(input, expected), expected.path);
}
