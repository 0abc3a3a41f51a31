import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import { checks, expectFields, fail, numberIn, type Quantity, shown } from "../../quantity/index.js";

import {
  expectRate,
  type ProductSubstance,
  type RateBasis,
  type RateDimension,
  type RateOf,
  type ReadRate,
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
 * @throws RatewrightError with every problem: `unit/mismatch`, `substance/mismatch`, `missing`, `range`,
 *   `type`, `conflict` (min above max, or a rate beside a range)
 *
 * Source: the label.
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
  expectFields(input, ["rate", "min", "max", "use", "note"]);
  const { use = "broadcast", note } = input;
  const single = input.rate !== undefined;
  const problems = checks();
  const read = (name: "min" | "max" | "rate"): ReadRate | undefined =>
    problems.run(() =>
      input[name] === undefined
        ? fail("missing", name, undefined, "a rate of product")
        : expectRate(input[name], name),
    );
  if (single && (input.min !== undefined || input.max !== undefined)) {
    problems.run(() => fail("conflict", "rate", described("rate and a range"), "one of them"));
  }
  const min = read(single ? "rate" : "min");
  const max = single ? min : read("max");
  if (min !== undefined && max !== undefined) problems.run(() => expectRange(min, max));
  if (use !== "broadcast" && use !== "spot") {
    problems.run(() => fail("type", "use", use, '"broadcast" or "spot"'));
  }
  if (note !== undefined && typeof note !== "string")
    problems.run(() => fail("type", "note", note, "a text"));
  problems.done();
  const [least, most] = [min as ReadRate, max as ReadRate];
  return {
    type: "label-rate",
    version: 1,
    product: least.product,
    basis: least.basis,
    min: least.rate,
    max: most.rate,
    use,
    ...(note === undefined ? {} : { note }),
  };
};

/** The two ends of a range: of one measure and product, and the right way round but for rounding noise. */
const expectRange = ({ rate: min }: ReadRate, { rate: max }: ReadRate): void => {
  if (max.dimension !== min.dimension) {
    fail("unit/mismatch", "max", max, `a rate of ${min.dimension}`);
  }
  if (max.of !== min.of) fail("substance/mismatch", "max", max, `a rate of ${min.of}`);
  if (exceeds(min.value, numberIn(max, min.unit))) fail("conflict", "max", max, `${shown(min)} or more`);
};
