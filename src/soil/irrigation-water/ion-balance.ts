import { allOf, type Finding, type Quantity, quantity } from "../../quantity/index.js";
import { ionCharges } from "../report/equivalent-weight.js";
import { short } from "../report/expect-ph.js";
import { expectCharge, readWaterAnalysis, type WaterAnalysis, type WaterIonName } from "./water-analysis.js";

/** The charge of a water report, cations beside anions. */
export interface IonBalance {
  readonly type: "ion-balance";
  readonly version: 1;
  readonly charges: Readonly<Partial<Record<WaterIonName, Quantity<"charge/volume", "none">>>>;
  readonly cations: Quantity<"charge/volume", "none">;
  readonly anions: Quantity<"charge/volume", "none">;
  /** Cations less anions over their sum. */
  readonly difference: Quantity<"1", "none">;
  readonly findings: readonly Finding[];
}

/** Percent beyond which a report wants a second look. */
const tolerance = 10;
/** What makes up nearly all of the charge of a natural water. */
const major = ["Ca", "Mg", "Na", "HCO3", "Cl", "SO4"] as const;

/**
 * Whether a water report adds up: cations and anions in meq/L, and `100 (C - A) / (C + A)` percent between them.
 *
 * - meq/L is mg/L over the equivalent weight, see `equivalentWeight`
 * - calcium, magnesium, sodium, bicarbonate, chloride and sulfate must have been tested; potassium, ammonium, carbonate
 *   and nitrate count where they were
 *
 * A difference beyond 10 % is a finding: a figure, a unit (NO3 or NO3-N, meq or mg) or an ion is missing or wrong.
 *
 * @throws RatewrightError `missing`, `range`, `conflict`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; the tolerance of 10 % is common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { ionBalance } from "ratewright/soil";
 * const balance = ionBalance({
 *   Ca: quantity(40, "mg/L", "Ca"), Mg: quantity(12, "mg/L", "Mg"), Na: quantity(46, "mg/L", "Na"),
 *   HCO3: quantity(183, "mg/L", "HCO3"), Cl: quantity(35.5, "mg/L", "Cl"), SO4: quantity(48, "mg/L", "SO4"),
 * });
 * Number(balance.cations.in("meq/L").toFixed(2)); // => 4.98
 * Number(balance.difference.in("%").toFixed(1)); // => -0.2
 * ```
 */
export const ionBalance = (water: WaterAnalysis): IonBalance => {
  const read = readWaterAnalysis(water, "water");
  allOf(Object.fromEntries(major.map((ion) => [ion, () => expectCharge(read, ion, "water")])));
  let [cations, anions] = [0, 0];
  for (const [ion, charge] of read.charges) {
    if (ionCharges[ion] > 0) cations += charge;
    else anions += charge;
  }
  const total = cations + anions;
  const difference = total === 0 ? 0 : (100 * (cations - anions)) / total;
  return {
    type: "ion-balance",
    version: 1,
    charges: Object.fromEntries([...read.charges].map(([ion, charge]) => [ion, quantity(charge, "meq/L")])),
    cations: quantity(cations, "meq/L"),
    anions: quantity(anions, "meq/L"),
    difference: quantity(difference, "%"),
    findings:
      Math.abs(difference) > tolerance
        ? [
            {
              code: "water/ions-off-balance",
              severity: "warning",
              path: "water",
              params: { difference: short(difference), tolerance },
              text: `Cations and anions are ${short(Math.abs(difference))} % apart: a figure, a unit or an ion of this report is missing or wrong.`,
              source: "common practice, no source",
            },
          ]
        : [],
  };
};
