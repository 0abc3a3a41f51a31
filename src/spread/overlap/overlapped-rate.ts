import { type Estimate, estimateOfProduct, meanEstimate } from "../../numeric/index.js";
import {
  checks,
  expectFields,
  expectQuantity,
  fail,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type Area, above, fieldsOf, isMetric, type Length } from "../inputs.js";
import { patternOf, profileOf } from "../pattern/profile.js";
import type { SpreadPattern } from "../pattern/spread-pattern.js";

const panAreaOf = (pattern: SpreadPattern): Area => {
  if (pattern.panArea === undefined) fail("missing", "pattern.panArea", undefined, "the area of one pan");
  return fieldsOf({ panArea: pattern.panArea }, { panArea: { dimension: "area" } }).panArea;
};

const rateOfRun = <S extends string>(
  pattern: SpreadPattern<S>,
  catches: readonly number[],
  swath: number,
  area: Area,
): Quantity<"mass/area", S> => {
  const mean = profileOf({ ...pattern, catches }).total / swath;
  const metric = isMetric(area.unit);
  const caught = expectQuantity(
    { value: above(mean, "pattern.catches"), unit: pattern.unit, of: pattern.of },
    { dimension: "mass" },
    "pattern.unit",
  );
  const value = metric
    ? (caught.in("kg") * 10_000) / area.in("m2")
    : (caught.in("lb") * 1000) / area.in("ft2");
  const unit = metric ? "kg/ha" : "lb/1000 ft2";
  return quantityOf(above(value, "pattern.catches"), unit, pattern.of, "pattern.of") as unknown as Quantity<
    "mass/area",
    S
  >;
};

/**
 * The mean rate that a pattern puts down at a swath, overlap included.
 *
 * `R = sum(p) dx / (w a)`, for unequal spacing the area below the pattern over `w a`
 *
 * - `p` catch of one pass in a pan, a mass; `dx` distance of the pans; `a` area of a pan
 * - `w` the swath
 *
 * In lb/1000 ft2 where the pans are given in US customary units, else in kg/ha. It holds for every pattern and
 * for both ways of driving (mass balance). The pan at the centre alone overstates the rate of a pattern with a
 * peak.
 *
 * @throws RatewrightError `missing` where the pattern has no pan area; `unit/mismatch` where the catches are
 * no mass; `range`, `type`, `not-finite`
 *
 * Source: mass balance; derived, no published example.
 *
 * @example
 * ```ts
 * import { overlappedRate, quantity, spreadPattern } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [0, 2, 4, 6, 4, 2, 0], unit: "g",
 *   pans: { spacing: quantity(1, "m"), left: 3 }, panArea: quantity(0.25, "m2"),
 * });
 * overlappedRate(pattern, { swath: quantity(4, "m") }).in("kg/ha"); // => 180
 * ```
 */
export const overlappedRate = <S extends string>(
  pattern: SpreadPattern<S>,
  options: { readonly swath: Length },
): Quantity<"mass/area", S> => {
  const row = patternOf<S>(pattern);
  const { swath } = fieldsOf(expectFields(options, ["swath"], "options", "a record with swath"), {
    swath: { dimension: "length" },
  });
  return rateOfRun(row, row.catches, swath.in(row.offsetUnit as "ft"), panAreaOf(row));
};

/**
 * The mean rate that a pattern puts down at a swath, with its standard error from the weighings.
 *
 * The rate of every weighing by {@link overlappedRate}; their mean `R` with `u(R) / R` from
 * `(s / (R sqrt(k)))^2 + ua^2`, with `s` the standard deviation of the `k` rates (divisor `k - 1`) and `ua` the
 * relative standard error of the area of a pan, `panAreaError`.
 *
 * @throws RatewrightError as {@link overlappedRate}; `missing` for a pattern of fewer than two weighings
 *
 * Source: JCGM 100:2008 (GUM), 4.2.3 and 5.1.6.
 *
 * @example
 * ```ts
 * import { overlappedRateEstimate, quantity, spreadPattern } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [[0, 3, 6, 3, 0], [0, 3, 5, 3, 0]], unit: "g",
 *   pans: { spacing: quantity(1, "m"), left: 2 }, panArea: quantity(0.25, "m2"),
 * });
 * const rate = overlappedRateEstimate(pattern, { swath: quantity(3, "m"), panAreaError: quantity(0, "%") });
 * Number(rate.value.in("kg/ha").toFixed(2)); // => 153.33
 * Number(rate.standardError.in("kg/ha").toFixed(2)); // => 6.67
 * ```
 */
export const overlappedRateEstimate = <S extends string>(
  pattern: SpreadPattern<S>,
  options: { readonly swath: Length; readonly panAreaError: Quantity<"1", "none"> },
): Estimate<"mass/area", S> => {
  const row = patternOf<S>(pattern);
  const record = expectFields(
    options,
    ["swath", "panAreaError"],
    "options",
    "a record with swath, panAreaError",
  );
  const door = checks();
  const found = door.run(() => fieldsOf(record, { swath: { dimension: "length" } }));
  const areaError = door.run(() =>
    record.panAreaError === undefined || record.panAreaError === null
      ? fail(
          "missing",
          "panAreaError",
          record.panAreaError,
          "a relative standard error, 0 % where there is none",
        )
      : expectQuantity(
          record.panAreaError,
          { dimension: "1", of: "none", bound: "non-negative" },
          "panAreaError",
        ),
  ) as Quantity<"1", "none">;
  const area = door.run(() => panAreaOf(row)) as Area;
  if (row.runs.length < 2) {
    door.run(() => fail("missing", "pattern.runs", row.runs, "two weighings or more: one has no spread"));
  }
  door.done();
  const w = (found as NonNullable<typeof found>).swath.in(row.offsetUnit as "ft");
  const mean = meanEstimate(row.runs.map((run) => rateOfRun(row, run, w, area)));
  return estimateOfProduct(mean.value, [{ estimate: mean }, { relativeError: areaError }]);
};
