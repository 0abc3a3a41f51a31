import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  type Finding,
  fail,
  likeQuantity,
  numberIn,
  ofKind,
  type Quantity,
  timesOf,
} from "../../quantity/index.js";
import { passesOf } from "../calibration/spread-rate.js";
import { type AnyArea, fieldsOf } from "../inputs.js";

/** A rate cut into passes over the same ground. */
export interface PassRates<S extends string = string> {
  readonly type: "pass-rates";
  readonly version: 1;
  readonly passes: number;
  /** What to calibrate for: the rate of one pass. */
  readonly perPass: Quantity<"mass/area", S>;
  /** The sum of the passes: what the ground gets, and what a limit counts. */
  readonly total: Quantity<"mass/area", S>;
  /** Loads for an area, where one was given: the same for every pass. */
  readonly load?: { readonly perPass: Quantity<"mass", S>; readonly total: Quantity<"mass", S> };
  readonly findings: readonly Finding[];
  /** What was compared; nothing else was. */
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/**
 * The rate of each pass where an area is covered more than once: two passes at right angles, each at half
 * the rate.
 *
 * `R1 = R / n`; with an area `A`, `W = R A` and `W1 = W / n`
 *
 * - `R` the rate that the ground is to get, of product or of a nutrient
 * - `n` the number of passes, 2 where it is left out
 * - `R1` the rate to calibrate for
 *
 * A limit counts the sum of the passes, so it is compared with `R`, never with `R1`. A limit on a nutrient is
 * compared with a rate of that nutrient.
 *
 * Sources disagree on what two passes are good for: many advise right angles; Ohio bulletin 817 finds that
 * half the rate at half the swath, in parallel, mends a poor pattern better. Both halve the rate.
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`
 *
 * Source: University of Massachusetts Extension, "Rotary Spreader Calibration Procedures" (5 lb/1000 ft2 in
 * two passes of 2.5); the limit on the sum: Rutgers, drop spreader page, calculation 2.
 *
 * @example
 * ```ts
 * import { passRates, quantity } from "ratewright";
 * const plan = passRates({ rate: quantity(5, "lb/1000 ft2", "product"), area: quantity(8000, "ft2") });
 * plan.perPass.in("lb/1000 ft2"); // => 2.5
 * plan.load?.perPass.in("lb"); // => 20
 *
 * const nitrogen = { rate: quantity(1, "lb/1000 ft2", "N"), limit: quantity(0.9, "lb/1000 ft2", "N") };
 * passRates(nitrogen).findings.map((finding) => finding.code); // => ["limit/exceeded"]
 * ```
 */
export const passRates = <S extends string>(input: {
  readonly rate: Quantity<"mass/area", S>;
  readonly passes?: number;
  readonly area?: AnyArea;
  /** A stated limit on one application, compared with the sum of the passes. */
  readonly limit?: Quantity<"mass/area", NoInfer<S>>;
}): PassRates<S> => {
  const record = expectFields(input, ["rate", "passes", "area", "limit"], "input", "a record with a rate");
  const { passes, found } = allOf({
    found: () =>
      fieldsOf(record, {
        rate: { dimension: "mass/area" },
        area: { dimension: "area", optional: true },
        limit: { dimension: "mass/area", optional: true },
      }),
    passes: () => passesOf(record.passes ?? 2),
  });
  const { rate, area, limit } = found;
  if (limit !== undefined && limit.of !== rate.of) {
    fail("substance/mismatch", "limit", limit, `a limit on ${rate.of}, as the rate`);
  }
  const total = ofKind<"mass/area", S>(rate);
  const amount = area && ofKind<"mass", S>(timesOf(rate, area));
  return {
    type: "pass-rates",
    version: 1,
    passes,
    perPass: perPass(total, passes),
    total,
    ...(amount && { load: { perPass: perPass(amount, passes), total: amount } }),
    findings: limit ? overLimit(rate, limit, passes) : [],
    checked: limit
      ? [`the sum of ${passes === 1 ? "1 pass" : `${passes} passes`} against the stated limit of ${limit}`]
      : [],
    notChecked: limit ? [] : ["the sum of the passes against a limit: none was stated"],
  };
};

const overLimit = (
  rate: Quantity<"mass/area", "none">,
  limit: Quantity<"mass/area", "none">,
  passes: number,
): readonly Finding[] => {
  const most = numberIn(limit, rate.unit);
  if (!exceeds(rate.value, most)) return [];
  return [
    {
      code: "limit/exceeded",
      severity: "warning",
      path: "rate",
      params: { total: rate.value, unit: rate.unit, of: rate.of, limit: most },
      text: `${passes === 1 ? "One pass puts" : `The ${passes} passes together put`} down ${rate}, above the stated limit of ${limit}. A limit counts the sum of the passes.`,
      source: "the limit that was stated",
    },
  ];
};

const perPass = <D extends string, S extends string>(whole: Quantity<D, S>, passes: number): Quantity<D, S> =>
  likeQuantity(whole, whole.value / passes);
