import { fail, type Problem, RatewrightError, shown } from "../errors/errors.js";
import { expectFields, expectOneOf } from "../errors/expect-fields.js";
import { type CheckedSubstance, isSubstance, type SubstanceHint } from "../substance/substances.js";
import type { DecimalSign } from "../text/number-text.js";
import { readText } from "../text/read-text.js";
import type { Measures } from "../text/text-reading.js";
import type { Dimension } from "../unit/dimensions.js";
import { unitDimension } from "../unit/unit-facts.js";
import { expectDimension } from "../unit/units-of.js";
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
} from "./parts.js";

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

type Wanted = Omit<ExpectedQuantity, "dimension"> & { readonly dimension?: Dimension };

/** What was read, with paths inside the input. */
export interface PartsReading {
  readonly value: Quantity<string, string> | undefined;
  readonly problems: readonly PartProblem[];
}

const partsOf = (input: object): { value: unknown; unit: unknown; of: unknown } | undefined => {
  try {
    const { value, unit, of } = input as { value?: unknown; unit?: unknown; of?: unknown };
    return Array.isArray(input) ? undefined : { value, unit, of };
  } catch {
    return undefined;
  }
};

const bounded = (value: number, bound: Bound | undefined, path: string): readonly PartProblem[] =>
  bound === "positive" && value <= 0
    ? [problem("range", path, String(value), "more than zero")]
    : bound === "non-negative" && value < 0
      ? [problem("range", path, String(value), "zero or more")]
      : [];

/** Reads any input as a quantity and collects every problem; never throws. */
export const readParts = (input: unknown, wanted: Wanted): PartsReading => {
  const failed = (problems: readonly PartProblem[]): PartsReading => ({ value: undefined, problems });
  if (isBlank(input)) return failed([problem("missing", "", told(input), "a quantity")]);
  let value: number | PartProblem;
  let unit: string | PartProblem;
  let of: string | PartProblem;
  if (typeof input === "string") {
    const text = readText(input, wanted, "");
    if (text.problems.length === 0 && anyBound(wanted.bound)) {
      return made(text.value as number, text.unit as string, text.of as string);
    }
    const { value: number = Number.NaN, unit: name = "", of: stuff = "none" } = text;
    const outside = Number.isFinite(number) ? bounded(number, wanted.bound, "") : [];
    const problems = [...(text.problems as readonly PartProblem[]), ...outside];
    if (problems.length > 0) return failed(problems);
    [value, unit, of] = [number, name, stuff];
  } else {
    const parts = typeof input === "object" && input !== null ? partsOf(input) : undefined;
    if (parts === undefined) {
      return failed([problem("type", "", told(input), "a quantity, { value, unit, of }, or a text")]);
    }
    value = readValue(parts.value, wanted.decimal ?? ".");
    unit = readUnit(parts.unit, wanted.dimension);
    of = readOf(parts.of, wanted.of);
    const strange = input instanceof Quantity ? [] : strangeFields(input as object);
    if (
      strange.length === 0 &&
      typeof unit === "string" &&
      typeof of === "string" &&
      typeof value === "number" &&
      anyBound(wanted.bound)
    ) {
      return made(value, unit, of);
    }
    const problems = [value, unit, of].filter((part): part is PartProblem => typeof part === "object");
    problems.push(...strange);
    if (typeof value === "number") problems.unshift(...bounded(value, wanted.bound, "value"));
    if (problems.length > 0) return failed(problems);
  }
  return made(value as number, unit as string, of as string);
};

const anyBound = (bound: Bound | undefined): boolean => bound === undefined || bound === "any";

const made = (value: number, unit: string, of: string): PartsReading => ({
  value: new Quantity(value, unit, of, unitDimension(unit) as string),
  problems: [],
});

const placed = (problems: readonly PartProblem[], path: string): readonly Problem[] =>
  problems.map((one) => ({ ...one, path: one.path === "" ? path : `${path}.${one.path}` }));

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
  const reading = readParts(input, expected);
  return reading.value === undefined
    ? { value: null, problems: placed(reading.problems, expected.path ?? "quantity") }
    : reading;
}

const expectedNames = ["dimension", "of", "bound", "path", "decimal", "measures"] as const;

/** Refuses an expectation that nothing could meet. */
export const checkExpected = (expected: unknown): void => {
  const wanted = expectFields(
    expected,
    expectedNames,
    "expected",
    'what is expected, such as { dimension: "mass" }',
  );
  expectDimension(wanted.dimension, "expected.dimension");
  const { of, bound, decimal, measures, path } = wanted;
  if (bound !== undefined) expectOneOf(bound, ["positive", "non-negative", "any"], "expected.bound");
  if (decimal !== undefined) expectOneOf(decimal, [".", ","], "expected.decimal");
  if (measures !== undefined) expectOneOf(measures, ["US", "imperial"], "expected.measures");
  if (path !== undefined && typeof path !== "string")
    fail("type", "expected.path", path, "the name of a field");
  if (of !== undefined && (typeof of !== "string" || (of !== "none" && !isSubstance(of)))) {
    throw new RatewrightError({
      code: "substance/unknown",
      path: "expected.of",
      got: told(of),
      expected: "a substance, such as N or product",
    });
  }
};

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
