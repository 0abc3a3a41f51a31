import { type Estimate, estimateOfProduct, meanEstimate } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
  type Share,
} from "../../quantity/index.js";
import { eachOf, type Length, type Speed, type Time } from "../inputs.js";
import { rateOfRun } from "./spread-rate.js";
import type { TestArea } from "./test-area.js";
import { timedRate } from "./timed-rate.js";

type Given = Readonly<Record<string, unknown>>;

/** Stands for the mean, to show what is wrong with the rest of a run before there is a mean. */
const standIn = (): Quantity<"mass", "none"> => quantity(1, "kg");

/** The catches as one estimate and the stated errors, with every problem of either and of the rest of the run. */
const parts = <S extends string>(
  record: Given,
  keys: readonly string[],
  rest: () => unknown,
): { readonly mean: Estimate<"mass", S>; readonly errors: readonly Share[] } => {
  const { list, errors } = allOf({
    list: () => massesOf<S>(record.amounts),
    errors: () => eachOf(keys, "errors", (_, i) => errorOf(record, keys[i] as string)),
    rest,
  });
  const mean = meanEstimate(list);
  if (!(mean.value.value > 0)) outOfRange("amounts", mean.value, { above: 0 }, "catches whose mean is {}");
  return { mean, errors };
};

const errorOf = (record: Given, key: string): Share =>
  record[key] === undefined || record[key] === null
    ? fail("missing", key, record[key], "a relative standard error, 0 % where there is none")
    : expectQuantity(record[key], { dimension: "1", of: "none", bound: "non-negative" }, key);

const massesOf = <S extends string>(amounts: unknown): readonly Quantity<"mass", S>[] => {
  if (!Array.isArray(amounts)) {
    return fail("type", "amounts", amounts, "a list of catches");
  }
  if (amounts.length < 2) fail("missing", "amounts", amounts, "two catches or more: one has no spread");
  let first: Quantity<"mass", S> | undefined;
  return eachOf(amounts, "amounts", (amount, i) => {
    const path = `amounts[${i}]`;
    if (amount === undefined || amount === null) return fail("missing", path, amount, "a mass");
    const q = expectQuantity<"mass", S>(amount, { dimension: "mass", bound: "non-negative" }, path);
    first ??= q;
    return q.of === first.of ? q : fail("substance/mismatch", path, q, `a mass of ${first.of}, as the first`);
  });
};

const withErrors = <S extends string>(
  rate: Quantity<"mass/area", S>,
  { mean, errors }: { readonly mean: Estimate<"mass", S>; readonly errors: readonly Share[] },
): Estimate<"mass/area", S> =>
  estimateOfProduct(rate, [{ estimate: mean }, ...errors.map((relativeError) => ({ relativeError }))]);

/**
 * A calibrated rate with its standard error, from repeated catches over the same area.
 *
 * `R = mean(W) / (A n)` as {@link spreadRate}, `u(R) / R = sqrt((s / (mean(W) sqrt(k)))^2 + uA^2)`
 *
 * - `W` the catches, `amounts`: at least two, of runs over areas of the same size; by difference, what each
 *   run used: `before.minus(after)`
 * - `s` their standard deviation (divisor `k - 1`), `k` how many there are
 * - `uA` relative standard error of the area, `areaError`: stated, 0 % where it is taken as exact
 *
 * The result goes into `checkAgainstTarget` and `confidenceInterval`, and into `gateSetting` as a trial.
 *
 * Range: catches that are independent of one another, and errors that are small against their values.
 *
 * @param runs.passes - passes over the area in each run; 1 where left out
 * @throws RatewrightError `missing` for fewer than two catches, and for an error that is not stated; `range`,
 * `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`; as {@link spreadRate}
 *
 * Source: JCGM 100:2008 (GUM), 4.2.3 and 5.1.6.
 *
 * @example
 * ```ts
 * import { checkAgainstTarget, quantity, spreadRateEstimate } from "ratewright";
 * const measured = spreadRateEstimate({
 *   amounts: [2.9, 3.1, 3].map((value) => quantity(value, "lb", "product")),
 *   area: quantity(1000, "ft2"), areaError: quantity(1, "%"),
 * });
 * Number(measured.value.in("lb/1000 ft2").toFixed(6)); // => 3
 * Number(measured.standardError.in("lb/1000 ft2").toFixed(4)); // => 0.0651
 * const target = quantity(4, "lb/1000 ft2", "product");
 * checkAgainstTarget({ measured, target, tolerance: quantity(5, "%") }).verdict; // => "adjust"
 * ```
 */
export const spreadRateEstimate = <S extends string>(
  runs: {
    readonly amounts: readonly Quantity<"mass", S>[];
    /** Relative standard error of the area, such as 1 %. */
    readonly areaError: Share;
    readonly passes?: number;
  } & TestArea,
): Estimate<"mass/area", S> => {
  const record = expectFields(
    runs,
    [
      "amounts",
      "areaError",
      "passes",
      "length",
      "width",
      "swath",
      "distance",
      "circumference",
      "turns",
      "area",
    ],
    "runs",
    "a record with amounts, areaError and an area",
  );
  const { amounts: _, areaError: __, ...ground } = record;
  const found = parts<S>(record, ["areaError"], () => rateOfRun({ ...ground, amount: standIn() }));
  return withErrors(rateOfRun<S>({ ...ground, amount: found.mean.value }), found);
};

/**
 * A rate from a timed discharge with its standard error.
 *
 * `R` as {@link timedRate} of the mean catch, `u(R) / R = sqrt((s / (mean(W) sqrt(k)))^2 + ut^2 + uw^2 + uv^2)`
 *
 * - `W`, `s`, `k` the catches as in {@link spreadRateEstimate}
 * - `ut`, `uw`, `uv` relative standard errors of time, swath and speed: `timeError`, `swathError`, `speedError`
 *
 * @param runs.amounts - `W`, at least two
 * @throws RatewrightError as {@link spreadRateEstimate} and {@link timedRate}
 *
 * Source: JCGM 100:2008 (GUM), 4.2.3 and 5.1.6.
 *
 * @example
 * ```ts
 * import { quantity, timedRateEstimate } from "ratewright";
 * const measured = timedRateEstimate({
 *   amounts: [2.45, 2.55].map((value) => quantity(value, "kg", "product")),
 *   time: quantity(30, "s"), timeError: quantity(1, "%"),
 *   swath: quantity(6, "m"), swathError: quantity(0, "%"),
 *   speed: quantity(5, "km/h"), speedError: quantity(2, "%"),
 * });
 * Number(measured.value.in("kg/ha").toFixed(6)); // => 100
 * Number(measured.standardError.in("kg/ha").toFixed(4)); // => 3
 * ```
 */
export const timedRateEstimate = <S extends string>(runs: {
  readonly amounts: readonly Quantity<"mass", S>[];
  readonly time: Time;
  readonly timeError: Share;
  readonly swath: Length;
  readonly swathError: Share;
  readonly speed: Speed;
  readonly speedError: Share;
}): Estimate<"mass/area", S> => {
  const record = expectFields(
    runs,
    ["amounts", "time", "timeError", "swath", "swathError", "speed", "speedError"],
    "runs",
    "a record with amounts, time, swath, speed and their errors",
  );
  const { time, swath, speed } = runs;
  const found = parts<S>(record, ["timeError", "swathError", "speedError"], () =>
    timedRate({ amount: standIn(), time, swath, speed }),
  );
  return withErrors(timedRate<S>({ amount: found.mean.value, time, swath, speed }), found);
};
