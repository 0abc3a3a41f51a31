import {
  type Citation,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";

/** The concentration of copper sulfate that goes with the alkalinity of a pond. */
export interface CopperSulfateConcentration {
  readonly type: "copper-sulfate-concentration";
  readonly version: 1;
  /** Of copper sulfate as it is sold in crystals, not of metallic copper. */
  readonly concentration: Quantity<"mass/volume", "product">;
  /** Whether the alkalinity alone would give more: above 250 mg/L nothing is added. */
  readonly atMost: boolean;
  readonly findings: readonly Finding[];
}

const florida: Citation = /* @__PURE__ */ frozen({
  title: "Use of copper in freshwater aquaculture and farm ponds (FA008)",
  publisher: "University of Florida, IFAS Extension",
  year: 2014,
  where: "equation 1, and the two bounds below it",
  url: "https://edis.ifas.ufl.edu/publication/fa008",
});

/** Below this the source advises against copper, and above that it adds no more: mg/L as CaCO3. */
const [lowest, highest] = [50, 250];

const fish: Finding = {
  code: "pond/copper-and-fish",
  severity: "warning",
  params: { lowest, highest },
  text: "Copper kills fish and other water animals, the more easily the lower the alkalinity. Measure the total alkalinity of this pond, not its hardness or pH. The label's maximum concentration wins over this rule of thumb.",
  source: florida,
};

/**
 * The concentration of copper sulfate by the total alkalinity of a pond: `c = A / 100`, and 2.5 mg/L at the most. A rule of
 * thumb for labels that ask for the alkalinity; {@link waterDose} makes an amount of it.
 *
 * - `alkalinity` `A` total alkalinity as calcium carbonate, from 50 mg/L on: below, the source advises against copper
 * - `c` in mg/L of copper sulfate in crystals, a quarter of which is copper
 *
 * @param input.alkalinity - of `CaCO3 equivalent`. Hardness is another thing and is refused
 * @throws RatewrightError `range` below 50 mg/L or above 2000 mg/L; `substance/mismatch` for hardness; `missing`,
 * `unit/mismatch`, `type`
 *
 * Source: University of Florida, IFAS Extension, FA008, equation 1.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { copperSulfateConcentration, waterDose } from "ratewright/site";
 * const { concentration } = copperSulfateConcentration({ alkalinity: quantity(150, "mg/L", "CaCO3 equivalent") });
 * concentration.in("mg/L"); // => 1.5
 * const dose = waterDose({ surface: quantity(0.5, "acre"), depth: quantity(4, "ft"), concentration });
 * Number(dose.active.in("lb").toFixed(2)); // => 8.16
 * ```
 */
export const copperSulfateConcentration = (input: {
  readonly alkalinity: Quantity<"mass/volume", "CaCO3 equivalent">;
}): CopperSulfateConcentration => {
  const fields = expectFields(input, ["alkalinity"]);
  if (fields.alkalinity === undefined)
    fail(
      "missing",
      "alkalinity",
      undefined,
      'the total alkalinity, such as quantity(120, "mg/L", "CaCO3 equivalent")',
    );
  const alkalinity = expectQuantity(
    fields.alkalinity,
    { dimension: "mass/volume", of: "CaCO3 equivalent", bound: "positive" },
    "alkalinity",
  );
  const measured = alkalinity.in("mg/L");
  if (measured < lowest * (1 - 1e-12) || measured > 2000)
    outOfRange(
      "alkalinity",
      alkalinity,
      measured > 2000 ? { max: 2000, unit: "mg/L" } : { min: lowest, unit: "mg/L" },
      measured > 2000
        ? "{}"
        : "{}: the rule has no concentration for softer water, in which copper kills fish. Ask for another treatment",
    );
  return {
    type: "copper-sulfate-concentration",
    version: 1,
    concentration: quantity(Math.min(measured, highest) / 100, "mg/L", "product"),
    atMost: measured > highest,
    findings: [{ ...fish, params: { ...fish.params } }],
  };
};
