import { problemText } from "../errors/errors.js";
import type { CheckedSubstance, SubstanceHint } from "../substance/substances.js";
import type { DecimalSign } from "../text/number-text.js";
import type { Measures } from "../text/text-reading.js";
import type { Dimension } from "../unit/dimensions.js";
import type { Bound } from "../value/expected.js";
import type { Quantity } from "../value/quantity.js";
import { readParts } from "./read.js";
import { checkExpected, type QuantityInput } from "./record.js";

/** One thing that a Standard Schema validator found wrong. */
export interface SchemaIssue {
  readonly message: string;
  readonly path?: readonly PropertyKey[];
}

/**
 * The part of the Standard Schema v1 interface that this library implements; form libraries take it as
 * a `StandardSchemaV1`. Written down here, so that the types need no other package.
 */
export interface QuantitySchema<Input, Output> {
  readonly "~standard": {
    readonly version: 1;
    readonly vendor: "ratewright";
    /** The quantity, or what is wrong with the input. */
    readonly validate: (
      value: unknown,
    ) =>
      | { readonly value: Output; readonly issues?: undefined }
      | { readonly issues: readonly SchemaIssue[] };
    readonly types?: { readonly input: Input; readonly output: Output } | undefined;
  };
}

/**
 * A Standard Schema v1 validator for a quantity, for form libraries and for composing with other
 * validators. Takes what `readQuantity` takes and reports every problem, each at its part (`value`,
 * `unit`, `of`). Numbers with a decimal comma and imperial measures are read where `decimal` and `measures` say so.
 *
 * @param expected - `dimension`, `of` and `bound` of what is wanted
 * @throws RatewrightError `type`, `substance/unknown` where dimension or substance is wrong
 *
 * @example
 * ```ts
 * import { quantitySchema } from "ratewright";
 * const schema = quantitySchema({ dimension: "mass/area", of: "N", bound: "positive" });
 * const result = schema["~standard"].validate({ value: 3, unit: "lb/M", of: "N" });
 * result.issues?.map((issue) => issue.path); // => [["unit"]]
 * const british = quantitySchema({ dimension: "volume", measures: "imperial" });
 * british["~standard"].validate("8 pt"); // => { value: { value: 1, unit: "imp gal", of: "none" } }
 * ```
 */
export function quantitySchema<const D extends Dimension, const S extends SubstanceHint>(expected: {
  readonly dimension: D;
  readonly of: CheckedSubstance<S>;
  readonly bound?: Bound;
  readonly decimal?: DecimalSign;
  readonly measures?: Measures;
}): QuantitySchema<QuantityInput, Quantity<D, S>>;
export function quantitySchema<const D extends Dimension>(expected: {
  readonly dimension: D;
  readonly of?: undefined;
  readonly bound?: Bound;
  readonly decimal?: DecimalSign;
  readonly measures?: Measures;
}): QuantitySchema<QuantityInput, Quantity<D, string>>;
export function quantitySchema(expected: {
  readonly dimension: Dimension;
  readonly of?: string | undefined;
  readonly bound?: Bound;
  readonly decimal?: DecimalSign;
  readonly measures?: Measures;
}): unknown {
  checkExpected(expected);
  const { dimension, of, bound, decimal, measures } = expected;
  const wanted = {
    dimension,
    ...(of !== undefined && { of }),
    ...(bound !== undefined && { bound }),
    ...(decimal !== undefined && { decimal }),
    ...(measures !== undefined && { measures }),
  };
  const schema: QuantitySchema<QuantityInput, Quantity<string, string>> = {
    "~standard": {
      version: 1,
      vendor: "ratewright",
      validate: (input) => {
        const { value, problems } = readParts(input, wanted);
        if (value !== undefined) return { value };
        return {
          issues: problems.map((one) => ({
            message: problemText({ ...one, path: one.path || "quantity" }),
            path: one.path === "" ? [] : [one.path],
          })),
        };
      },
    },
  };
  return schema;
}
