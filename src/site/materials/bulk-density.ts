import { expectLooseDensity } from "../../numeric/house.js";
import {
  type Citation,
  checks,
  expectOneOf,
  expectQuantity,
  fail,
  frozen,
  likeQuantity,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { recordWith } from "../records.js";

/** Weight per volume of loose material. */
export type BulkDensity = Quantity<"mass/volume", "none">;

/** What moisture is a percent of: the dry weight, as soil laboratories print it, or the wet weight, as compost is sold. */
export type MoistureBasis = "dry weight" | "wet weight";

const bases = ["dry weight", "wet weight"] as const;

/** Takes a density that is there and above zero. */
export const densityOf = (input: unknown, path: string): BulkDensity => {
  const expected = 'a weight per volume, such as quantity(2700, "lb/yd3")';
  if (input === undefined) return fail("missing", path, input, expected);
  if (typeof input === "number") return fail("type", path, input, `${expected}: a number has no unit`);
  return expectLooseDensity(
    expectQuantity(input, { dimension: "mass/volume", of: "none", bound: "positive" }, path),
    path,
  );
};

/** What the weight of moist material is to its dry weight; 1 where no moisture is given. */
export const wetOverDry = (record: Readonly<Record<string, unknown>>, at = ""): number => {
  const path = (name: string): string => (at === "" ? name : `${at}.${name}`);
  if (record.moisture === undefined) {
    return record.basis === undefined
      ? 1
      : fail("missing", path("moisture"), undefined, 'a share, such as quantity(8, "%")');
  }
  const problems = checks();
  const basis = problems.run(() => expectOneOf(record.basis, bases, path("basis")));
  const share = problems.run(() =>
    expectQuantity(
      record.moisture,
      { dimension: "1", of: "none", bound: "non-negative" },
      path("moisture"),
    ).in("1"),
  );
  if (basis === "wet weight" && share !== undefined && share >= 1) {
    problems.run(() =>
      outOfRange(path("moisture"), record.moisture, { below: 100, unit: "%" }, "{} of the wet weight"),
    );
  }
  if (share !== undefined && share > 20) {
    problems.run(() =>
      outOfRange(path("moisture"), record.moisture, { max: 2000, unit: "%" }, "{} of the dry weight"),
    );
  }
  problems.done();
  return basis === "dry weight" ? 1 + (share as number) : 1 / (1 - (share as number));
};

/** A bulk density with the moisture at which it holds, and of what weight the moisture is a share. */
export interface BulkDensityInput {
  readonly bulkDensity: BulkDensity;
  readonly moisture: Quantity<"1", "none">;
  readonly basis: MoistureBasis;
}

const densityAt = (input: unknown, turn: (density: number, wet: number) => number): BulkDensity => {
  const problems = checks();
  const record = recordWith(input, ["bulkDensity", "moisture", "basis"], problems, "input");
  const density = problems.run(() => densityOf(record.bulkDensity, "bulkDensity"));
  if (record.moisture === undefined) {
    problems.run(() => fail("missing", "moisture", undefined, 'a share, such as quantity(8, "%")'));
  }
  const wet = problems.run(() => wetOverDry(record));
  problems.done();
  return likeQuantity(density as BulkDensity, turn((density as BulkDensity).value, wet as number));
};

/**
 * The dry bulk density of moist material.
 *
 * `dry = moist / (1 + w)` with `w` the moisture by dry weight, as soil laboratories print it; `dry = moist * (1 - u)`
 * with `u` the moisture by wet weight. The volume is that of the moist material.
 *
 * @throws RatewrightError `missing` for no basis; `range` for 100 % or more of the wet weight; `type`, `unit/mismatch`,
 * `not-finite`; everything that is not right is reported
 *
 * Source: "Practice problems: porosity and bulk density", University of California, Davis, Soil Science 100 (oven-dry
 * weight is moist weight over 1.1 at 10 %).
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { dryBulkDensity } from "ratewright/site";
 * const sand = dryBulkDensity({
 *   bulkDensity: quantity(1.62, "g/mL"),
 *   moisture: quantity(8, "%"),
 *   basis: "dry weight",
 * });
 * Number(sand.in("g/mL").toFixed(2)); // => 1.5
 * ```
 */
export const dryBulkDensity = (input: BulkDensityInput): BulkDensity =>
  densityAt(input, (density, wet) => density / wet);

/**
 * The bulk density of material at a moisture, from its dry one: what a load weighs.
 *
 * `moist = dry * (1 + w)` with `w` the moisture by dry weight; `moist = dry / (1 - u)` with `u` the moisture by wet
 * weight. Holds while the volume stays: sand that is only damp takes up more room than dry sand.
 *
 * @throws RatewrightError `missing` for no basis; `range` for 100 % or more of the wet weight; `type`, `unit/mismatch`,
 * `not-finite`; everything that is not right is reported
 *
 * Source: the inverse of {@link dryBulkDensity}.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { moistBulkDensity } from "ratewright/site";
 * const load = moistBulkDensity({
 *   bulkDensity: quantity(2700, "lb/yd3"),
 *   moisture: quantity(6, "%"),
 *   basis: "dry weight",
 * });
 * Math.round(load.in("lb/yd3")); // => 2862
 * ```
 */
export const moistBulkDensity = (input: BulkDensityInput): BulkDensity =>
  densityAt(input, (density, wet) => density * wet);

/** What a loose material weighs, as printed. */
export interface LooseMaterial {
  readonly material: string;
  readonly bulkDensity: { readonly value: number; readonly unit: "lb/yd3" };
  readonly source: Citation;
}

const sandMath: Citation = /* @__PURE__ */ frozen({
  title: "Sand math: how much sand do I need",
  publisher: "sand supplier technical page",
  year: 2011,
  where: "weights per cubic yard",
});

/**
 * Weights per cubic yard as printed, for a first estimate: moisture is not stated, and no load is average. Weigh a
 * bucket of what you buy, and use that. Dry sand of 2700 lb/yd3 is the 100 lb/ft3 of golf course texts.
 */
export const looseMaterials: readonly LooseMaterial[] = /* @__PURE__ */ frozen([
  { material: "sand", bulkDensity: { value: 2700, unit: "lb/yd3" }, source: sandMath },
  { material: "topsoil", bulkDensity: { value: 2200, unit: "lb/yd3" }, source: sandMath },
  { material: "clay", bulkDensity: { value: 3000, unit: "lb/yd3" }, source: sandMath },
  { material: "compost", bulkDensity: { value: 1200, unit: "lb/yd3" }, source: sandMath },
]);
