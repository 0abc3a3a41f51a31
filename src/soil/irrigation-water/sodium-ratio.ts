import { described } from "../../quantity/house.js";
import { allOf, fail } from "../../quantity/index.js";
import { expectCharge, readWaterAnalysis, type WaterAnalysis } from "./water-analysis.js";

/** Sodium, calcium and magnesium, meq/L. */
export interface SodicIons {
  readonly Na: number;
  readonly Ca: number;
  readonly Mg: number;
}

/** Na over the root of half of Ca and Mg, all in meq/L. */
export const ratioOf = ({ Na, Ca, Mg }: SodicIons, path: string): number => {
  if (!(Ca + Mg > 0)) {
    const expected = "some calcium or magnesium: the ratio has no value";
    return fail("infeasible", path, described("no calcium and no magnesium"), expected);
  }
  const ratio = Na / Math.sqrt((Ca + Mg) / 2);
  return Number.isFinite(ratio)
    ? ratio
    : fail(
        "range",
        path.replace(/\.Ca$/, ".Na"),
        described(`${Na} meq/L`),
        "sodium whose ratio is a finite number",
      );
};

/**
 * The sodium adsorption ratio of a water, `SAR = Na / sqrt((Ca + Mg) / 2)`, all in meq/L.
 *
 * - sodium, calcium and magnesium as printed, mg/L or meq/L: milligrams are never put into the equation
 *
 * It says what a water does to a soil only together with its salt: the same ratio disperses more in pure water.
 *
 * @throws RatewrightError `missing`, `infeasible` without calcium and magnesium, `range`, `unit/mismatch`,
 *   `substance/mismatch`, `type`
 *
 * Source: US Salinity Laboratory 1954, Agriculture Handbook 60, as a turf resource guide has it (SAR example).
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { sodiumAdsorptionRatio } from "ratewright/soil";
 * const ratio = sodiumAdsorptionRatio({
 *   Na: quantity(44, "meq/L", "Na"), Ca: quantity(10, "meq/L", "Ca"), Mg: quantity(8.2, "meq/L", "Mg"),
 * });
 * Number(ratio.toFixed(1)); // => 14.6
 * ```
 */
export const sodiumAdsorptionRatio = (water: WaterAnalysis): number => {
  const read = readWaterAnalysis(water, "water");
  const ions = allOf({
    Na: () => expectCharge(read, "Na", "water"),
    Ca: () => expectCharge(read, "Ca", "water"),
    Mg: () => expectCharge(read, "Mg", "water"),
  });
  return ratioOf(ions, "water.Ca");
};
