import { inForm } from "../../nutrient/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  likeQuantity,
  Quantity,
  quantity,
} from "../../quantity/index.js";
import { equivalentWeight } from "../report/equivalent-weight.js";
import { readWaterAnalysis, type WaterAnalysis, type WaterIonName, waterIonNames } from "./water-analysis.js";

/** What a depth of irrigation brings to the ground. */
export interface IrrigationLoad {
  readonly type: "irrigation-load";
  readonly version: 1;
  readonly depth: Quantity<"length", "none">;
  /** Every ion that was stated. */
  readonly ions: { readonly [E in WaterIonName]?: Quantity<"mass/area", E> };
  /** Nitrate and ammonium nitrogen together, to credit against a program; `null` where neither was stated. */
  readonly nitrogen: Quantity<"mass/area", "N"> | null;
  /** Bicarbonate and carbonate as calcium carbonate; `null` where neither was stated. */
  readonly carbonate: Quantity<"mass/area", "CaCO3 equivalent"> | null;
}

/**
 * What a depth of irrigation water brings per area: `L = c d`, for every ion stated, with nitrogen to credit and
 * bicarbonate as calcium carbonate.
 *
 * - `c` concentration, mg/L; `d` depth of water. A part per million in an inch is 0.2266 lb an acre, in an acre-foot 2.72
 *   lb, in an inch 0.0052 lb per 1000 ft2
 * - nitrate is nitrogen only in part, 0.2259 of it: a report in NO3 read as NO3-N credits 4.43 times too much
 *
 * In lb/1000 ft2 for a depth in US customary units, else in kg/ha.
 *
 * @throws RatewrightError `missing`, `range`, `conflict` (nitrate both ways), `type`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: definition; "Nitrogen in irrigation water", University of California: 45 ppm of NO3 are 10 ppm of NO3-N, 27 lb
 * an acre-foot.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { irrigationLoad } from "ratewright/soil";
 * const load = irrigationLoad({ water: { "NO3-N": quantity(10, "mg/L", "NO3-N") }, depth: quantity(12, "in") });
 * Number(load.nitrogen?.in("lb/acre").toFixed(1)); // => 27.2
 * ```
 */
export const irrigationLoad = (input: {
  readonly water: WaterAnalysis;
  readonly depth: Quantity<"length", "none">;
}): IrrigationLoad => {
  const record = expectFields(input, ["water", "depth"], "input");
  const read = allOf({
    water: () => readWaterAnalysis(record.water, "water"),
    depth: () =>
      expectQuantity(record.depth, { dimension: "length", of: "none", bound: "non-negative" }, "depth"),
  });
  const { weights, charges } = read.water;
  const us = /^(in|ft|yd)$/.test(read.depth.unit);
  const [unit, perMilligram] = us
    ? (["lb/1000 ft2", quantity(read.depth.in("mm"), "mg/m2").in("lb/1000 ft2")] as const)
    : (["kg/ha", quantity(read.depth.in("mm"), "mg/m2").in("kg/ha")] as const);
  const nitrate =
    weights.get("NO3-N") ??
    (weights.has("NO3")
      ? inForm(quantity(weights.get("NO3") as number, "mg/L", "NO3"), "NO3-N").value
      : undefined);
  const nitrogen = sumOf([nitrate, weights.get("NH4-N")]);
  const carbonate = sumOf([charges.get("HCO3"), charges.get("CO3")]);
  return {
    type: "irrigation-load",
    version: 1,
    depth: likeQuantity(read.depth, read.depth.value),
    ions: Object.fromEntries(
      waterIonNames.flatMap((ion) => {
        const value = weights.get(ion);
        return value === undefined
          ? []
          : [[ion, new Quantity(value * perMilligram, unit, ion, "mass/area")] as const];
      }),
    ),
    nitrogen: nitrogen === undefined ? null : quantity(nitrogen * perMilligram, unit, "N"),
    carbonate:
      carbonate === undefined
        ? null
        : quantity(carbonate * equivalentWeight("CaCO3 equivalent") * perMilligram, unit, "CaCO3 equivalent"),
  };
};

/** The sum of what was stated; `undefined` where nothing was. */
const sumOf = (parts: readonly (number | undefined)[]): number | undefined => {
  const stated = parts.filter((part) => part !== undefined);
  return stated.length === 0 ? undefined : stated.reduce((a, b) => a + b, 0);
};
