import { interpolate } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectOneOf,
  type FactSource,
  type Finding,
  fail,
  frozen,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { ratioOf } from "./sodium-ratio.js";
import {
  expectCharge,
  type ReadWaterAnalysis,
  readWaterAnalysis,
  type WaterAnalysis,
} from "./water-analysis.js";

/** How the ratio is adjusted for bicarbonate. */
export type SodiumAdjustment = "pHc" | "equilibrium calcium";

/** A sodium adsorption ratio adjusted for what bicarbonate does to calcium. */
export interface AdjustedSodiumRatio {
  readonly type: "adjusted-sodium-ratio";
  readonly version: 1;
  readonly method: SodiumAdjustment;
  readonly ratio: number;
  /** Before the adjustment. */
  readonly unadjusted: number;
  /** The calcium that stays in solution, where the method has one. */
  readonly calcium: Quantity<"charge/volume", "none"> | null;
  readonly source: FactSource;
  readonly findings: readonly Finding[];
}

const bower: Citation = /* @__PURE__ */ frozen({
  title: "Alternative method for calculating sodium hazard as a result of bicarbonate, quoting Bower 1968",
  publisher: "University of Wisconsin-Madison, Crop Science Society of America annual meeting",
  year: 2011,
});

const paper: Citation = /* @__PURE__ */ frozen({
  title: "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
  publisher: "FAO",
  year: 1985,
  where: "revision 1, table 11, after Suarez 1981, as a public program carries it",
});

/**
 * Conductivity of the water, dS/m, and the calcium, meq/L, that stays at the least bicarbonate of the table, a twentieth of
 * the calcium: the row with the most digits. The other 26 follow from it by the power, to a hundredth.
 */
const conductivities = [0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 4, 6, 8] as const;
const calciumAtLeast = [
  13.2, 13.61, 13.92, 14.4, 14.79, 15.26, 15.91, 16.43, 17.28, 17.97, 19.07, 19.94,
] as const;
const leastShare = 0.05;

/**
 * The sodium adsorption ratio adjusted for bicarbonate, by a named method.
 *
 * - `"pHc"`: `SAR (1 + 8.4 - pHc)`, with `pHc` as the report prints it, the pH at which the water would be in balance
 *   with lime. It tends to overstate the hazard, as its own critics say
 * - `"equilibrium calcium"`: `Na / sqrt((Cax + Mg) / 2)`, `Cax = k(EC) ((HCO3 + CO3) / Ca / 0.05)^(-2/3)`: the calcium that
 *   stays in the soil water at a carbon dioxide pressure of 0.07 % of an atmosphere. `k` = 13.20 meq/L at 0.1 dS/m to 19.94
 *   at 8, on straight lines between; the power is that of the solubility of lime
 *
 * Range: conductivity from 0.1 to 8 dS/m, (HCO3 + CO3) / Ca from 0.05 to 30.
 *
 * @param input.water - Na, Ca, Mg, and for equilibrium calcium HCO3 (CO3 where tested) and conductivity
 * @throws RatewrightError `missing`, `range`, `conflict`, `infeasible`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: Bower 1968 as quoted by Obear, Soldat, Barak and Bleam 2011; Suarez 1981 in FAO Irrigation and Drainage Paper 29,
 * table 11, as a public program carries it: all but 2 of its 324 figures are met to a hundredth.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { adjustedSodiumRatio } from "ratewright/soil";
 * const water = {
 *   Na: quantity(7.73, "meq/L", "Na"), Ca: quantity(2.32, "meq/L", "Ca"), Mg: quantity(1.44, "meq/L", "Mg"),
 *   HCO3: quantity(3.66, "meq/L", "HCO3"), CO3: quantity(0.42, "meq/L", "CO3"), conductivity: quantity(1.15, "dS/m"),
 * };
 * const found = adjustedSodiumRatio({ water, method: "equilibrium calcium" });
 * Number(found.unadjusted.toFixed(2)); // => 5.64
 * Number(found.ratio.toFixed(1)); // => 6.4
 * ```
 */
export const adjustedSodiumRatio = (input: {
  readonly water: WaterAnalysis;
  readonly method: SodiumAdjustment;
  readonly pHc?: number;
}): AdjustedSodiumRatio => {
  const record = expectFields(input, ["water", "method", "pHc"], "input");
  const { water, method } = allOf({
    water: () => readWaterAnalysis(record.water, "water"),
    method: () => expectOneOf(record.method, ["pHc", "equilibrium calcium"], "method"),
  });
  const ions = allOf({
    Na: () => expectCharge(water, "Na", "water"),
    Ca: () => expectCharge(water, "Ca", "water"),
    Mg: () => expectCharge(water, "Mg", "water"),
  });
  const unadjusted = ratioOf(ions, "water.Ca");
  const base = { type: "adjusted-sodium-ratio", version: 1, method, unadjusted } as const;
  if (method === "pHc") {
    const pHc = expectNumber(record.pHc, "pHc", { min: 6, max: 9 });
    const ratio = unadjusted * (1 + 8.4 - pHc);
    return { ...base, ratio, calcium: null, source: bower, findings: [] };
  }
  if (record.pHc !== undefined)
    fail("conflict", "pHc", record.pHc, "nothing: equilibrium calcium takes no pHc");
  const calcium = equilibriumCalcium(water, ions.Ca);
  return {
    ...base,
    ratio: ratioOf({ ...ions, Ca: calcium }, "water.Ca"),
    calcium: quantity(calcium, "meq/L"),
    source: paper,
    findings: [],
  };
};

const equilibriumCalcium = (water: ReadWaterAnalysis, Ca: number): number => {
  const { bicarbonate, conductivity } = allOf({
    bicarbonate: () => expectCharge(water, "HCO3", "water") + (water.charges.get("CO3") ?? 0),
    conductivity: () =>
      water.conductivity === undefined
        ? fail("missing", "water.conductivity", undefined, "the conductivity of the water")
        : expectNumber(water.conductivity, "water.conductivity", { min: 0.1, max: 8 }),
  });
  if (Ca === 0) fail("infeasible", "water.Ca", 0, "some calcium");
  const share = expectNumber(bicarbonate / Ca, "water.HCO3", { min: leastShare, max: 30 });
  const atLeast = interpolate({ xs: conductivities, ys: calciumAtLeast, x: conductivity });
  return atLeast * (share / leastShare) ** (-2 / 3);
};
