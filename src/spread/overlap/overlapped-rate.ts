import { type Estimate, estimateOfProduct, meanEstimate } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  inUnit,
  ofKind,
  perOf,
  type Quantity,
  quantityOf,
  toldAt,
} from "../../quantity/index.js";
import { type Area, above, fieldsOf, isMetric, type Length } from "../inputs.js";
import { patternOf, profileOf } from "../pattern/profile.js";
import type { SpreadPattern } from "../pattern/spread-pattern.js";

const panAreaOf = (pattern: SpreadPattern): Area => {
  if (pattern.panArea === undefined) fail("missing", "pattern.panArea", undefined, "the area of one pan");
  return fieldsOf({ panArea: pattern.panArea }, { panArea: { dimension: "area" } }).panArea;
};

/** What is caught in a pan per area of its opening, of the mean over a swath; in the unit of the catches by that of the pan. */
const caughtPerArea = (
  pattern: SpreadPattern,
  catches: readonly number[],
  swath: number,
  area: Area,
): Quantity<string, string> => {
  const mean = above(profileOf({ ...pattern, catches }).total / swath, "pattern.catches");
  const caught = quantityOf(mean, pattern.unit, pattern.of, "pattern.unit");
  return toldAt("pattern.catches", "dividend", () => perOf(caught, area));
};

const rateOfRun = <S extends string>(
  pattern: SpreadPattern<S>,
  catches: readonly number[],
  swath: number,
  area: Area,
): Quantity<"mass/area", S> => {
  const kind = quantityOf(1, pattern.unit, pattern.of, "pattern.unit").dimension;
  if (kind !== "mass") {
    const other = kind === "volume" ? "; overlappedVolume takes catches by volume" : "";
    fail("unit/mismatch", "pattern.unit", pattern.unit, `catches by mass${other}`);
  }
  const unit = isMetric(area.unit) ? "kg/ha" : "lb/1000 ft2";
  const rate = inUnit(caughtPerArea(pattern, catches, swath, area), unit);
  above(rate.value, "pattern.catches");
  return ofKind<"mass/area", S>(rate);
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
 * for both ways of driving (mass balance). The pan at the center alone overstates the rate of a pattern with a
 * peak.
 *
 * @throws RatewrightError `missing` where the pattern has no pan area; `unit/mismatch` where the catches are no mass;
 *   `range`, `type`, `not-finite`, `conflict`
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
 * The mean volume per area that a spray pattern puts down at a swath, overlap included: {@link overlappedRate} for what
 * was caught by volume, or read off as a volume per area. For boomless nozzles, drones and hand guns, whose swath is how
 * far apart their passes are.
 *
 * - catches by volume (`"mL"`): `V = sum(c) dx / (w a)`, with `a` the area of a pan
 * - catches by volume per area (`"gal/acre"`, off cards): `V = sum(c) dx / w`, and no pan area is needed
 *
 * In gal/acre where the pans are given in US customary units, else in L/ha.
 *
 * @throws RatewrightError `missing` where catches by volume have no pan area; `unit/mismatch` for catches of another
 *   kind, with the function that takes them; `range`, `type`, `not-finite`, `conflict`
 *
 * Source: mass balance; derived, no published example.
 *
 * @example
 * ```ts
 * import { overlappedVolume, quantity, spreadPattern } from "ratewright";
 * const cards = spreadPattern({
 *   catches: [0, 2, 4, 2, 0], unit: "gal/acre", of: "spray", pans: { spacing: quantity(5, "ft"), left: 2 },
 * });
 * overlappedVolume(cards, { swath: quantity(20, "ft") }).in("gal/acre"); // => 2
 * const cups = spreadPattern({
 *   catches: [0, 3, 3, 0], unit: "mL", of: "spray", pans: { spacing: quantity(1, "m"), left: 1.5 },
 *   panArea: quantity(0.01, "m2"),
 * });
 * Number(overlappedVolume(cups, { swath: quantity(3, "m") }).in("L/ha").toFixed(6)); // => 2000
 * ```
 */
export const overlappedVolume = <S extends string>(
  pattern: SpreadPattern<S>,
  options: { readonly swath: Length },
): Quantity<"volume/area", S> => {
  const row = patternOf<S>(pattern);
  const { swath } = fieldsOf(expectFields(options, ["swath"], "options", "a record with swath"), {
    swath: { dimension: "length" },
  });
  const w = swath.in(row.offsetUnit as "ft");
  const kind = quantityOf(1, row.unit, row.of, "pattern.unit").dimension;
  if (kind !== "volume" && kind !== "volume/area") {
    const other = kind === "mass" ? "; overlappedRate takes catches by mass" : "";
    fail("unit/mismatch", "pattern.unit", row.unit, `catches by volume, or by volume per area${other}`);
  }
  const unit = isMetric(row.offsetUnit) ? "L/ha" : "gal/acre";
  const found =
    kind === "volume"
      ? caughtPerArea(row, row.catches, w, panAreaOf(row))
      : quantityOf(profileOf(row).total / w, row.unit, row.of, "pattern.unit");
  const volume = inUnit(found, unit);
  above(volume.value, "pattern.catches");
  return ofKind<"volume/area", S>(volume);
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
  const { found, areaError, area } = allOf({
    found: () => fieldsOf(record, { swath: { dimension: "length" } }),
    areaError: () =>
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
    area: () => panAreaOf(row),
    runs: () =>
      row.runs.length < 2 &&
      fail("missing", "pattern.runs", row.runs, "two weighings or more: one has no spread"),
  });
  const w = found.swath.in(row.offsetUnit as "ft");
  const mean = meanEstimate(row.runs.map((run) => rateOfRun(row, run, w, area)));
  return estimateOfProduct(mean.value, [{ estimate: mean }, { relativeError: areaError }]);
};
