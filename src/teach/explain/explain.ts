import {
  allOf,
  type Dimension,
  expectFields,
  expectNumber,
  expectOneOf,
  fail,
  inUnit,
  isUnit,
  outOfRange,
} from "../../quantity/index.js";
import { type RunnableEntry, runnableEntry } from "../catalogue/catalogue.js";
import { readInputs, resultOf } from "../catalogue/entry-result.js";
import type {
  Derivation,
  DerivationStep,
  DerivationUnits,
  DerivedQuantity,
} from "../derivation/derivation.js";
import type { CatalogueVariable } from "../entry/catalogue-entry.js";
import { equationTex, equationText } from "../expression/equation-text.js";
import { readEquation } from "../expression/read-expression.js";
import { plainScript, symbolText } from "../expression/scripts.js";
import { written } from "../expression/write-expression.js";
import { amountText } from "./amount-text.js";
import { crossingSteps } from "./crossing-steps.js";
import { rounded } from "./digits.js";

/** How a derivation is written. */
export interface ExplainOptions {
  /** `"US"` customary where left out, or `"metric"`. */
  readonly units?: DerivationUnits;
  /** Significant digits of the last line, 1 to 6; 3 where left out. */
  readonly digits?: number;
  /** The unit of the result; the usual one where left out. */
  readonly unit?: string;
}

/** Options that have been read. */
export interface ReadOptions {
  readonly units: DerivationUnits;
  readonly digits: number;
  readonly unit: string | undefined;
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

const givenStep = ({ symbol, label }: CatalogueVariable, q: DerivedQuantity): DerivationStep => ({
  kind: "given",
  text: `${symbolText(symbol)} = ${amountText(q)} (${label})`,
  quantities: [q],
});

/** A number where a symbol stood: in parentheses where a minus or a unit would be misread. */
const putIn = (q: DerivedQuantity): string => {
  const text = amountText(q);
  return q.value < 0 || / /.test(text) ? `(${text})` : text;
};

const substitution = (equation: string, amounts: ReadonlyMap<string, DerivedQuantity>): DerivationStep => {
  const { symbol, tree } = readEquation(equation);
  const script = {
    ...plainScript,
    symbol: (name: string) => {
      const q = amounts.get(name);
      return q === undefined ? plainScript.symbol(name) : putIn(q);
    },
  };
  return {
    kind: "substitution",
    text: `${symbolText(symbol)} = ${written(tree, script)}`,
    quantities: [...amounts.values()],
  };
};

/** The last line: the result with fewer digits. */
export const roundingStep = (exact: DerivedQuantity, digits: number): DerivationStep => {
  const result = rounded(exact, digits);
  const how = digits === 1 ? "1 significant digit" : `${digits} significant digits`;
  return {
    kind: "rounding",
    text:
      amountText(result) === amountText(exact)
        ? `${amountText(exact)} needs no rounding`
        : `${amountText(exact)} ≈ ${amountText(result)}, rounded to ${how}`,
    quantities: [exact, result],
  };
};

/** The unit that was asked for, where it is one of the result. */
const resultUnit = ({ dimension, usualUnits }: CatalogueVariable, unit: string): string =>
  isUnit(unit, dimension as Dimension)
    ? unit
    : fail("unit/mismatch", "options.unit", unit, `a unit of ${dimension}, such as ${usualUnits.US}`);

/** The working of one formula for inputs that have been read. */
export const derivationOf = (
  found: RunnableEntry,
  given: Readonly<Record<string, DerivedQuantity>>,
  { units, digits, unit }: ReadOptions,
): Derivation => {
  const { entry } = found;
  const output = entry.output;
  const amounts = entry.inputs.map((input) => [input, given[input.name] as DerivedQuantity] as const);
  const inEquation = new Map(
    amounts.map(([{ symbol, equationUnits }, q]) => [symbol, inUnit(q, equationUnits[units])]),
  );
  const result = resultOf(found, given);
  const gives = inUnit(result, output.equationUnits[units]);
  const exact = inUnit(gives, unit === undefined ? output.usualUnits[units] : resultUnit(output, unit));
  return {
    type: "derivation",
    version: 1,
    title: entry.title,
    units,
    steps: [
      ...amounts.map(([input, q]) => givenStep(input, q)),
      {
        kind: "equation",
        text: equationText(entry.equation),
        tex: equationTex(entry.equation),
        quantities: [],
      },
      ...amounts.flatMap(([{ equationUnits }, q]) => crossingSteps(q, equationUnits[units])),
      substitution(entry.equation, inEquation),
      { kind: "result", text: `${symbolText(output.symbol)} = ${amountText(gives)}`, quantities: [gives] },
      ...crossingSteps(gives, exact.unit),
      roundingStep(exact, digits),
    ],
    exact,
    result: rounded(exact, digits),
  };
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
