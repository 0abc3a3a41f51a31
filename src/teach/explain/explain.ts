import { allOf, expectFields, expectNumber, expectOneOf, fail, outOfRange } from "../../quantity/index.js";
import { runnableEntry } from "../catalogue/catalogue.js";
import type { Derivation, DerivationUnits } from "../derivation/derivation.js";
import { readInputs } from "../entry/runnable-entry.js";
import { derivationOf, type ReadOptions } from "./derivation-of.js";

/** How a derivation is written. */
export interface ExplainOptions {
  /** `"US"` customary where left out, or `"metric"`. */
  readonly units?: DerivationUnits;
  /** Significant digits of the last line, 1 to 6; 3 where left out. */
  readonly digits?: number;
  /** The unit of the result; the usual one where left out. */
  readonly unit?: string;
}

const expectDigits = (digits: unknown): number => {
  if (digits === undefined) return 3;
  const number = expectNumber(digits, "options.digits", { min: 1, max: 6 });
  return Number.isInteger(number)
    ? number
    : outOfRange("options.digits", number, { step: 1, min: 1, max: 6 });
};

/** The options of a derivation, or every problem with them. */
export const readOptions = (options: unknown): ReadOptions => {
  const { units = "US", digits, unit } = expectFields(options, ["units", "digits", "unit"], "options");
  return allOf({
    units: () => expectOneOf(units, ["US", "metric"], "options.units"),
    digits: () => expectDigits(digits),
    unit: () =>
      unit === undefined || typeof unit === "string"
        ? unit
        : fail("type", "options.unit", unit, "a unit, such as lb/1000 ft2"),
  });
};

/**
 * The working of a formula, line by line: what is given, the equation, each unit that is crossed, the numbers put in,
 * what comes out, and how it was rounded. The figures are carried unrounded from line to line and written with six
 * digits; the last line has `digits`.
 *
 * @param id - of an entry of the {@link catalogue}
 * @param inputs - quantities by the names of the entry's inputs, in any unit
 * @param options - `units`, US customary where left out; `digits` of the result, 3 where left out; its `unit`
 * @throws RatewrightError `type` for an id, a field or a word that is not known; `missing`, `unit/mismatch`,
 * `substance/mismatch` by the path of the input, all at once; `range`; and whatever the formula throws
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { derivationText, explain } from "ratewright/teach";
 * const working = explain("course-time", { course: quantity(88, "ft"), speed: quantity(3, "mi/h") });
 * const lines = derivationText(working).split("\n");
 * lines[3]; // => "t = L ÷ v"
 * lines[4]; // => "3 mi/h × 5,280 = 15,840 ft/h"
 * lines[5]; // => "15,840 ft/h ÷ 3,600 = 4.4 ft/s"
 * lines[6]; // => "t = (88 ft) ÷ (4.4 ft/s)"
 * lines[7]; // => "t = 20 s"
 * ```
 */
export const explain = (
  id: string,
  inputs: Readonly<Record<string, unknown>>,
  options: ExplainOptions = {},
): Derivation => {
  const read = allOf({
    found: () => {
      const found = runnableEntry(id, "id");
      return { found, given: readInputs(found.entry, inputs, "inputs") };
    },
    options: () => readOptions(options),
  });
  return derivationOf(read.found.found, read.found.given, read.options);
};
