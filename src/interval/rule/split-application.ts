import { addDays, type CivilDate, civilDate, type DateSpan } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  likeQuantity,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";

/** When the second part of a split application may follow, and how large it is at most. */
export interface SplitApplication<S extends string> {
  readonly type: "split-application";
  readonly version: 1;
  /** The dates of the second part by the stated days, both included. */
  readonly second: DateSpan;
  /** What the stated maximum leaves for it; 0 where the first part took all. */
  readonly largestSecond: Quantity<"mass/area", S>;
}

const wholeDays = (input: unknown, path: string): number => {
  const days = expectNumber(input, path, { min: 1 });
  return Number.isInteger(days) ? days : outOfRange(path, days, { step: 1, count: "days" });
};

/**
 * The second part of a split application: `second = first + days`, and at most `M - A`, where `M` is the
 * maximum of the year and `A` the first part.
 *
 * @param input.first - the date of the first part
 * @param input.amount - `A`, what went down then
 * @param input.maximum - `M`, of the year, in the same substance
 * @param input.afterDays - the least and the largest number of days that the source states; where it
 * states one figure, both are that
 * @throws RatewrightError `date`, `range`, `substance/mismatch`, `unit/mismatch`; `conflict` where the
 * first part is above the maximum or the days are in the wrong order
 *
 * Source: what the label states; the rest is arithmetic.
 *
 * @example
 * ```ts
 * import { quantity, splitApplication } from "ratewright";
 * const split = splitApplication({
 *   first: "2026-03-01", amount: quantity(7.5, "lb/1000 ft2", "product"),
 *   maximum: quantity(11.5, "lb/1000 ft2", "product"), afterDays: { min: 60, max: 90 },
 * });
 * split.second; // => { from: "2026-04-30", to: "2026-05-30" }
 * split.largestSecond.in("lb/1000 ft2"); // => 4
 * ```
 */
export const splitApplication = <S extends string>(input: {
  readonly first: CivilDate;
  readonly amount: Quantity<"mass/area", S>;
  readonly maximum: Quantity<"mass/area", NoInfer<S>>;
  readonly afterDays: { readonly min: number; readonly max: number };
}): SplitApplication<S> => {
  expectFields(input, ["first", "amount", "maximum", "afterDays"]);
  const first = civilDate(input.first, "first");
  const amount = expectQuantity(input.amount, { dimension: "mass/area", bound: "positive" }, "amount");
  const wanted = { dimension: "mass/area", of: amount.of, bound: "positive" } as const;
  const maximum = expectQuantity(input.maximum, wanted, "maximum");
  const after = expectFields(input.afterDays, ["min", "max"], "afterDays");
  const { min, max } = allOf({
    min: () => wholeDays(after.min, "afterDays.min"),
    max: () => wholeDays(after.max, "afterDays.max"),
  });
  if (min > max) fail("conflict", "afterDays.min", min, `not more than afterDays.max, which is ${max}`);
  if (exceeds(amount.in("kg/ha"), maximum.in("kg/ha"))) {
    fail("conflict", "amount", amount, `not more than the maximum, which is ${maximum}`);
  }
  const left = maximum.minus(amount);
  return {
    type: "split-application",
    version: 1,
    second: { from: addDays(first, min), to: addDays(first, max) },
    // What rounding leaves over is nothing.
    largestSecond: likeQuantity(input.maximum, left.value <= 1e-9 * maximum.value ? 0 : left.value),
  };
};
