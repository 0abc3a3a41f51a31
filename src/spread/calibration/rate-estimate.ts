import { type Estimate, estimateOfProduct, meanEstimate } from "../../numeric/index.js";
import { checks, expectFields, expectQuantity, fail, type Quantity } from "../../quantity/index.js";
import type { Length, Speed, Time } from "../inputs.js";
import { spreadRate } from "./spread-rate.js";
import type { TestArea } from "./test-area.js";
import { timedRate } from "./timed-rate.js";

type Share = Quantity<"1", "none">;
type Given = Readonly<Record<string, unknown>>;

/** Stands for the mean, to show what is wrong with the rest of a run before there is a mean. */
const standIn = { value: 1, unit: "kg", of: "none" } as const;

/** The catches as one estimate and the stated errors, with every problem of either and of the rest of the run. */
const parts = <S extends string>(
  record: Given,
  keys: readonly string[],
  rest: () => unknown,
): { readonly mean: Estimate<"mass", S>; readonly errors: readonly Share[] } => {
  const door = checks();
  const list = door.run(() => massesOf<S>(record.amounts));
  const errors = keys.map((key) =>
    door.run(() =>
      record[key] === undefined || record[key] === null
        ? fail("missing", key, record[key], "a relative standard error, 0 % where there is none")
        : expectQuantity(record[key], { dimension: "1", of: "none", bound: "non-negative" }, key),
    ),
  );
  door.run(rest);
  door.done();
  const mean = meanEstimate(list as readonly Quantity<"mass", S>[]);
  if (!(mean.value.value > 0)) fail("range", "amounts", mean.value, "catches whose mean lies above zero");
  return { mean, errors: errors as readonly Share[] };
};

const massesOf = <S extends string>(amounts: unknown): readonly Quantity<"mass", S>[] => {
  if (!Array.isArray(amounts)) {
    return fail(amounts === undefined ? "missing" : "type", "amounts", amounts, "a list of catches");
  }
  if (amounts.length < 2) fail("missing", "amounts", amounts, "two catches or more: one has no spread");
  const door = checks();
  const first = amounts.find((one) => typeof one === "object" && one !== null);
  const of = (first as { readonly of?: string } | undefined)?.of ?? "none";
  // Not map, which skips the holes of a list.
  const list = Array.from(amounts as readonly unknown[], (amount, i) =>
    door.run(() =>
      amount === undefined || amount === null
        ? fail("missing", `amounts[${i}]`, amount, "a mass")
        : expectQuantity(amount, { dimension: "mass", of, bound: "non-negative" }, `amounts[${i}]`),
    ),
  );
  door.done();
  return list as unknown as readonly Quantity<"mass", S>[];
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
  const run = (amount: Quantity<"mass", S>): Quantity<"mass/area", S> =>
    spreadRate<S>({ ...ground, amount } as unknown as Parameters<typeof spreadRate<S>>[0]);
  const found = parts<S>(record, ["areaError"], () => run(standIn as unknown as Quantity<"mass", S>));
  return withErrors(run(found.mean.value), found);
};

/**
 * A rate from a timed discharge with its standard error.
 *
 * `R` as {@link timedRate} of the mean catch, `u(R) / R = sqrt((s / (mean(W) sqrt(k)))^2 + ut^2 + uw^2 + uv^2)`
 *
 * - `W`, `s`, `k` the catches as in {@link spreadRateEstimate}
 * - `ut`, `uw`, `uv` relative standard errors of time, swath and speed: `timeError`, `swathError`, `speedError`
 *
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
  const run = (amount: Quantity<"mass", S>): Quantity<"mass/area", S> =>
    timedRate<S>({ amount, time, swath, speed });
  const found = parts<S>(record, ["timeError", "swathError", "speedError"], () =>
    run(standIn as unknown as Quantity<"mass", S>),
  );
  return withErrors(run(found.mean.value), found);
};
