import { exceeds } from "../../numeric/index.js";
import { allOf, type Citation, frozen, type Quantity, quantity } from "../../quantity/index.js";
import { expectCharge, readWaterAnalysis, type WaterAnalysis } from "./water-analysis.js";

/** Bicarbonate and carbonate beyond calcium and magnesium. */
export interface ResidualCarbonate {
  readonly type: "residual-sodium-carbonate";
  readonly version: 1;
  /** Below zero where calcium and magnesium outweigh. */
  readonly value: Quantity<"charge/volume", "none">;
  /** Below 1.25, from 1.25 to 2.5, 2.5 meq/L or more. */
  readonly hazard: "low" | "marginal" | "high";
  readonly source: Citation;
}

const source: Citation = /* @__PURE__ */ frozen({
  title: "Salinity Management Guide: bicarbonate and carbonate",
  publisher: "a guide to water reuse",
  url: "http://www.salinitymanagement.org/Salinity%20Management%20Guide/ls/ls_3f3.html",
});

/**
 * The residual sodium carbonate of a water, `RSC = (HCO3 + CO3) - (Ca + Mg)`, meq/L, and its hazard by published limits:
 * low below 1.25, marginal below 2.5, high from there.
 *
 * Carbonate that was not tested counts as none: below pH 8.3 there is next to none. The figure looks at lime in the soil
 * water only, not at sodium; sources that test it against turf find it overstates the hazard.
 *
 * @throws RatewrightError `missing`, `range`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: "Salinity Management Guide", bicarbonate and carbonate.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { residualSodiumCarbonate } from "ratewright/soil";
 * const found = residualSodiumCarbonate({
 *   HCO3: quantity(4.5, "meq/L", "HCO3"), Ca: quantity(2, "meq/L", "Ca"), Mg: quantity(1, "meq/L", "Mg"),
 * });
 * Number(found.value.in("meq/L").toFixed(3)); // => 1.5
 * found.hazard; // => "marginal"
 * ```
 */
export const residualSodiumCarbonate = (water: WaterAnalysis): ResidualCarbonate => {
  const read = readWaterAnalysis(water, "water");
  const { HCO3, Ca, Mg } = allOf({
    HCO3: () => expectCharge(read, "HCO3", "water"),
    Ca: () => expectCharge(read, "Ca", "water"),
    Mg: () => expectCharge(read, "Mg", "water"),
  });
  const value = HCO3 + (read.charges.get("CO3") ?? 0) - Ca - Mg;
  // A limit is met to within what adding up rounds off.
  const at = (limit: number): boolean => !exceeds(limit, value);
  return {
    type: "residual-sodium-carbonate",
    version: 1,
    value: quantity(value, "meq/L"),
    hazard: at(2.5) ? "high" : at(1.25) ? "marginal" : "low",
    source,
  };
};
