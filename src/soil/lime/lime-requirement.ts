import {
  expectOneOf,
  expectRecord,
  type FactSource,
  type Finding,
  fail,
  Quantity,
  quantity,
} from "../../quantity/index.js";
import type { FoundRequirement, LimeSubstance } from "./found-requirement.js";
import { northCarolinaRequirement, pennsylvaniaFieldRequirement } from "./lime-by-buffer-ph.js";
import { tableRequirement } from "./lime-by-buffer-ph-table.js";
import { chemicalRequirement } from "./lime-by-soil-charge.js";
import type { LimeRequirementInput } from "./lime-inputs.js";
import { type LimeMeasure, type LimeMethod, limeMethods } from "./lime-methods.js";

/** Lime by a named method, before it is turned into the lime at hand. */
export interface LimeRequirement {
  readonly type: "lime-requirement";
  readonly version: 1;
  readonly method: LimeMethod | "potential acidity of nitrogen";
  readonly rate: Quantity<"mass/area", LimeSubstance>;
  readonly measure: LimeMeasure;
  /** The soil that the rate is for; `null` where the source states none. */
  readonly depth: Quantity<"length", "none"> | null;
  readonly targetPH: number | null;
  readonly source: FactSource;
  readonly findings: readonly Finding[];
}

const names = /* @__PURE__ */ Object.keys(limeMethods) as readonly LimeMethod[];

/** Methods that people ask for and that are not here, and why. */
const notHere = (method: unknown): void => {
  if (typeof method !== "string" || !/adams|woodruff|smp|tri-?state|lime test index/i.test(method)) return;
  const expected =
    "a method whose equation or table was read in full; for Adams-Evans, Woodruff and the SMP buffer (the lime test index of Ohio, Indiana and Michigan) take the rate that the laboratory printed: limeProductRate takes a rate of CaCO3, limeForRating one of ENM";
  fail("type", "method", method, expected, { choices: names });
};

/**
 * The lime that a soil needs by a named method, from its buffer pH, its acidity or its charge, as calcium carbonate equivalent (as standard lime for North Carolina).
 * A method belongs to the laboratory that measured: a buffer pH of one is no buffer pH of another.
 *
 * - North Carolina: `L = A (t - p) / (6.6 - p) - C` US tons an acre, `A = 4 (6.6 - b)` meq/100 cm3; `p` soil pH,
 *   `t` target, `b` Mehlich buffer pH, `C` residual credit (see `residualLimeCredit`). Undefined at pH 6.6
 * - Pennsylvania turf: a table by exchangeable acidity. Pennsylvania fields: `L = 1000 A` lb an acre for pH 7.0,
 *   `840 A` for 6.5 where `A` is above 4.0, 2000 below; to 7 in
 * - Oregon, Iowa: tables by buffer pH, to 6 in
 * - not here: the SMP buffer of Ohio, Indiana and Michigan, whose table was not read, and was changed by a third in 2020
 *   (notes of a soil laboratory of the Great Lakes on the revised Tri-State recommendations). The report has the rate
 * - exchangeable acidity: `L = A w m f`; base saturation: `L = CEC (t - s) w m`; pH buffering: `L = B (t - p) w m`;
 *   `w` = 50.04 mg of CaCO3 a meq, `m` weight of the layer, `f` share to neutralize, `s` and `t` base saturation,
 *   `B` charge for a unit of pH. They are chemistry; lime in a field does less, and states apply factors of 1 to 2
 *
 * Between the rows of a table the rate lies on a straight line, and a finding says that the source has none there.
 * Beyond a table it is refused. A soil at its target gets none; a target below the soil pH is refused.
 *
 * @throws RatewrightError `range` (outside a table, a pH that no soil has, a singular formula), `conflict` (a target below
 *   the soil pH, a target saturation below the present one), `missing`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: named for each method in `limeMethods`.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { limeRequirement } from "ratewright/soil";
 * const oregon = limeRequirement({ method: "Sikora buffer, Oregon", pH: 5.2, targetPH: 5.6, bufferPH: 6.0 });
 * oregon.rate.toString(); // => "1.7 US ton/acre of CaCO3 equivalent"
 * const turf = limeRequirement({
 *   method: "Mehlich buffer, Pennsylvania turf", pH: 5.6, targetPH: 6.5, acidity: quantity(5.2, "meq/100 g"),
 * });
 * turf.rate.in("lb/1000 ft2"); // => 90
 * ```
 */
export const limeRequirement = (input: LimeRequirementInput): LimeRequirement => {
  const { method: given } = expectRecord(input, "input");
  notHere(given);
  const method = expectOneOf(given, names, "method");
  const found = requirementOf(method, input);
  const { depthInches, measure, source } = limeMethods[method];
  const depth = found.depth ?? (depthInches === null ? null : quantity(depthInches, "in"));
  return {
    type: "lime-requirement",
    version: 1,
    method,
    rate: new Quantity(found.value, found.unit, found.of, "mass/area"),
    measure,
    depth,
    targetPH: found.targetPH ?? null,
    source,
    findings: found.findings,
  };
};

const requirementOf = (method: LimeMethod, input: unknown): FoundRequirement => {
  switch (method) {
    case "Mehlich buffer, North Carolina":
      return northCarolinaRequirement(input);
    case "Mehlich buffer, Pennsylvania fields":
      return pennsylvaniaFieldRequirement(input);
    case "Mehlich buffer, Pennsylvania turf":
    case "Sikora buffer, Oregon":
    case "buffer pH, Iowa":
      return tableRequirement(method, input);
    default:
      return chemicalRequirement(method, input);
  }
};
