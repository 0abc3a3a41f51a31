import type { Problem } from "../errors/errors.js";
import { checkExpectation } from "../text/expectation.js";
import type { DecimalSign } from "../text/number-text.js";
import type { Measures } from "../text/text-reading.js";
import { exampleUnit } from "../unit/dimension-words.js";
import type { Dimension } from "../unit/dimensions.js";
import { unitDimension } from "../unit/unit-facts.js";
import type { Bound } from "../value/expected.js";
import { Quantity } from "../value/quantity.js";
import {
  isBlank,
  type PartProblem,
  problem,
  readOf,
  readUnit,
  readValue,
  strangeFields,
  told,
  type Words,
} from "./parts.js";

// What every reader of the border does with a record, whether it reads words or exact names alone.

/** What a form or a file may hold for a quantity: a quantity, its parts, or a text. */
export type QuantityInput =
  | Quantity<string, string>
  | { readonly value: number | string; readonly unit: string; readonly of?: string }
  | string;

/** What {@link readQuantity} gives: the quantity, or all that is wrong. */
export type QuantityReading<D extends string, S extends string> =
  | { readonly value: Quantity<D, S>; readonly problems: readonly [] }
  | { readonly value: null; readonly problems: readonly Problem[] };

/** What is wanted of an unknown input. */
export interface ExpectedQuantity {
  readonly dimension: Dimension;
  /** The substance; `"none"` for an area or a time. Where it is left out, any is taken, and a missing one reads as `none`. */
  readonly of?: string;
  /** Where the value must lie; anywhere where left out. */
  readonly bound?: Bound;
  /** The name of the field in problems; `quantity` where left out. */
  readonly path?: string;
  /** The sign before the decimals in texts; `"."` where left out. */
  readonly decimal?: DecimalSign;
  /** Whose measures a text means that does not say it; `"US"` where left out. Units of records are exact names. */
  readonly measures?: Measures;
}

/** What is wanted of an input; the dimension may be left open. */
export type Wanted = Omit<ExpectedQuantity, "dimension"> & { readonly dimension?: Dimension };

/** What was read, with paths inside the input. */
export interface PartsReading {
  readonly value: Quantity<string, string> | undefined;
  readonly problems: readonly PartProblem[];
}

/** A reading that came to nothing. */
export const failed = (...problems: readonly PartProblem[]): PartsReading => ({ value: undefined, problems });

const partsOf = (input: object | null): { value: unknown; unit: unknown; of: unknown } | undefined => {
  try {
    const { value, unit, of } = input as { value?: unknown; unit?: unknown; of?: unknown };
    return Array.isArray(input) ? undefined : { value, unit, of };
  } catch {
    return undefined;
  }
};

/** What is wrong with a value that lies out of bounds. */
export const bounded = (value: number, bound: Bound | undefined, path: string): readonly PartProblem[] =>
  bound === "positive" && value <= 0
    ? [{ ...problem("range", path, String(value), "more than zero"), params: { above: 0 } }]
    : bound === "non-negative" && value < 0
      ? [{ ...problem("range", path, String(value), "zero or more"), params: { min: 0 } }]
      : [];

/** Reads a quantity or a record as a quantity and collects every problem; never throws. */
export const readRecord = (input: unknown, wanted: Wanted, words?: Words): PartsReading => {
  if (isBlank(input)) {
    const such = wanted.dimension === undefined ? "" : `, such as 3 ${exampleUnit(wanted.dimension)}`;
    return failed(problem("missing", "", told(input), `a quantity${such}`));
  }
  const parts = typeof input === "object" ? partsOf(input) : undefined;
  if (parts === undefined) {
    const texts = words === undefined ? "; readQuantity reads a text" : ", or a text";
    return failed(problem("type", "", told(input), `a quantity, { value, unit, of }${texts}`));
  }
  const value = readValue(parts.value, wanted.decimal ?? ".");
  const unit = readUnit(parts.unit, wanted.dimension, words);
  const of = readOf(parts.of, wanted.of, words);
  const strange = input instanceof Quantity ? [] : strangeFields(input as object);
  const outside = typeof value === "number" ? bounded(value, wanted.bound, "value") : [];
  if (
    typeof value === "number" &&
    typeof unit === "string" &&
    typeof of === "string" &&
    strange.length + outside.length === 0
  ) {
    return made(value, unit, of);
  }
  const wrong = [value, unit, of].filter((part): part is PartProblem => typeof part === "object");
  return failed(...outside, ...wrong, ...strange);
};

/** The quantity of parts that were found sound. */
export const made = (value: number, unit: string, of: string): PartsReading => ({
  value: new Quantity(value, unit, of, unitDimension(unit) as string),
  problems: [],
});

/** Problems told of the place that the input came from. */
export const placed = (problems: readonly PartProblem[], path: string): readonly Problem[] =>
  problems.map((one) => ({ ...one, path: one.path === "" ? path : `${path}.${one.path}` }));

/** A reading as callers get it. */
export const readingAt = (reading: PartsReading, path = "quantity"): unknown =>
  reading.value === undefined ? { value: null, problems: placed(reading.problems, path) } : reading;

const expectedNames = ["dimension", "of", "bound", "path", "decimal", "measures"] as const;

/** Refuses an expectation that nothing could meet. */
export const checkExpected = (expected: unknown): void =>
  checkExpectation(expected, "expected", expectedNames);
