import { expectRecord, type Problem, type Quantity, RatewrightError, shown } from "../quantity/index.js";
import {
  expectRate,
  type ProductSubstance,
  type RateBasis,
  type RateDimension,
  type RateOf,
} from "./rate.js";

/** The rate that a label states, as a range. */
export interface LabelRate {
  readonly type: "label-rate";
  readonly version: 1;
  readonly product: ProductSubstance;
  /** Per area of ground, or per volume of finished spray: what the dimension says. */
  readonly basis: RateBasis;
  readonly min: Quantity<RateDimension, string>;
  readonly max: Quantity<RateDimension, string>;
  /** `spot`: sprayed to wet or on spots, so that the area treated is not the area of the field. */
  readonly use: "broadcast" | "spot";
  readonly note?: string;
}

/** What {@link labelRate} takes: one rate, or the range. */
export type LabelRateInput = (
  | { readonly rate: RateOf; readonly min?: undefined; readonly max?: undefined }
  | { readonly min: RateOf; readonly max: RateOf; readonly rate?: undefined }
) & {
  readonly use?: "broadcast" | "spot";
  readonly note?: string;
};

/**
 * The rate that a label states: a range, or one rate as a range of that one. What it is counted on is
 * told by its dimension: per area, or per volume of spray (`% v/v`, `fl oz/gal`, 2 lb per 100 gal).
 *
 * @param input - `rate`, or `min` and `max` of one dimension and product; `use` is `"broadcast"` where
 *   left out
 * @throws RatewrightError `unit/mismatch`, `substance/mismatch`, `missing`, `conflict` (min above max)
 *
 * @example
 * ```ts
 * import { labelRate, quantity } from "ratewright";
 * const rate = labelRate({
 *   min: quantity(1.5, "pt/acre", "product:herbicide-a"),
 *   max: quantity(2, "pt/acre", "product:herbicide-a"),
 * });
 * rate.basis; // => "area"
 * rate.max.in("qt/acre"); // => 1
 * ```
 */
export const labelRate = (input: LabelRateInput): LabelRate => {
  expectRecord(input, "input");
  const problems: Problem[] = [];
  const read = (name: "min" | "max" | "rate") => expectRate(input[name], name);
  const single = input.rate !== undefined;
  if (!single) {
    for (const name of ["min", "max"] as const) {
      if (input[name] === undefined) {
        problems.push({ code: "missing", path: name, got: "undefined", expected: "a rate of product" });
      }
    }
  } else if (input.min !== undefined || input.max !== undefined) {
    problems.push({ code: "conflict", path: "rate", got: "rate and a range", expected: "one of them" });
  }
  const { use = "broadcast" } = input;
  if (use !== "broadcast" && use !== "spot") {
    problems.push({ code: "type", path: "use", got: shown(use), expected: '"broadcast" or "spot"' });
  }
  if (problems.length > 0) throw new RatewrightError(problems);
  const min = read(single ? "rate" : "min");
  const max = single ? min : read("max");
  const wanted = { got: shown(max.rate), path: "max" };
  if (max.rate.dimension !== min.rate.dimension) {
    throw new RatewrightError({
      ...wanted,
      code: "unit/mismatch",
      expected: `a rate of ${min.rate.dimension}`,
    });
  }
  if (max.rate.of !== min.rate.of) {
    throw new RatewrightError({
      ...wanted,
      code: "substance/mismatch",
      expected: `a rate of ${min.rate.of}`,
    });
  }
  if (min.rate.compare(max.rate) > 0) {
    throw new RatewrightError({ ...wanted, code: "conflict", expected: `${shown(min.rate)} or more` });
  }
  return {
    type: "label-rate",
    version: 1,
    product: min.product,
    basis: min.basis,
    min: min.rate,
    max: max.rate,
    use,
    ...(input.note === undefined ? {} : { note: input.note }),
  };
};
