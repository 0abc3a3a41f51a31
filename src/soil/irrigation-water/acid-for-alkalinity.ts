import { notShare } from "../../numeric/house.js";
import { type ChemicalElement, formulaWeight } from "../../nutrient/index.js";
import {
  allOf,
  type Citation,
  expectAmount,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  numberIn,
  Quantity,
  quantity,
} from "../../quantity/index.js";
import { equivalentWeight } from "../report/equivalent-weight.js";

/** An acid that is injected into irrigation water. */
export type WaterAcid = "sulfuric acid" | "phosphoric acid" | "nitric acid";

interface AcidFacts {
  readonly formula: Readonly<Partial<Record<ChemicalElement, number>>>;
  /** Acid that a mole gives to bicarbonate. */
  readonly acid: number;
  readonly brings: "S" | "P" | "N";
}

const acids: Readonly<Record<WaterAcid, AcidFacts>> = {
  "sulfuric acid": { formula: { H: 2, S: 1, O: 4 }, acid: 2, brings: "S" },
  "phosphoric acid": { formula: { H: 3, P: 1, O: 4 }, acid: 1, brings: "P" },
  "nitric acid": { formula: { H: 1, N: 1, O: 3 }, acid: 1, brings: "N" },
};
const names = /* @__PURE__ */ Object.keys(acids) as readonly WaterAcid[];

/** Acid against the alkalinity of a water. */
export interface AcidDose {
  readonly type: "acid-dose";
  readonly version: 1;
  /** Acid as bought, per volume of water. */
  readonly dose: Quantity<"volume/volume", "product/water">;
  /** Alkalinity that it takes away. */
  readonly neutralized: Quantity<"charge/volume", "CaCO3 equivalent">;
  /** The nutrient that comes with it, in the water. */
  readonly brings: Quantity<"mass/volume", "S" | "P" | "N">;
  readonly source: Citation;
  readonly findings: readonly Finding[];
}

/** Alkalinity as calcium carbonate, by weight or by charge. */
export type Alkalinity =
  | Quantity<"mass/volume", "CaCO3 equivalent">
  | Quantity<"charge/volume", "CaCO3 equivalent">;

const source: Citation = /* @__PURE__ */ frozen({
  title: "Adjusting Alkalinity with Acids",
  publisher: "University of Massachusetts Amherst Extension",
  where: "table 1",
  url: "https://ag.umass.edu/greenhouse-floriculture/fact-sheets/adjusting-alkalinity-with-acids",
});

const meqOf = (input: unknown, path: string): number => {
  const dimensions = ["mass/volume", "charge/volume"] as const;
  const expected = { dimensions, of: "CaCO3 equivalent", bound: "non-negative" } as const;
  const q = expectAmount(input, expected, path);
  return q.dimension === "charge/volume"
    ? numberIn(q, "meq/L")
    : numberIn(q, "mg/L") / equivalentWeight("CaCO3 equivalent");
};

/**
 * The acid that brings the alkalinity of a water down to a target: `V = (A1 - A2) M / (10 n rho p)` mL of acid as bought
 * per liter of water.
 *
 * - `A1`, `A2` alkalinity now and after, meq/L (mg/L as CaCO3 over 50.04)
 * - `M` weight of a mole, `n` acid that a mole gives: sulfuric 2, nitric 1, phosphoric 1 (its second only above pH 7)
 * - `rho` density of the acid, g/mL; `p` percent by weight
 *
 * It looks at alkalinity, not at pH: a target of zero makes a water without any buffer, so some is left (a finding says
 * so below 0.5 meq/L).
 *
 * Concentrated acid burns, fumes and ruins equipment that is not made for it: it is licensed or trained work. Acid goes
 * into water, never water into acid; wear what the safety data sheet says; check the dose with a titration.
 *
 * @param input.strength - `p`
 * @throws RatewrightError `conflict` (a target above the present alkalinity), `range`, `missing`, `type`,
 *   `unit/mismatch`, `substance/mismatch`
 *
 * Source: "Adjusting Alkalinity with Acids", University of Massachusetts Amherst, table 1: a fluid ounce of 93 % sulfuric
 * acid in 100 gal takes away 136 mg/L and brings 43.6 ppm of sulfur.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { acidForAlkalinity } from "ratewright/soil";
 * const alkalinity = (value: number) => quantity(value, "mg/L", "CaCO3 equivalent");
 * const found = acidForAlkalinity({
 *   alkalinity: alkalinity(250), target: alkalinity(114),
 *   acid: "sulfuric acid", strength: quantity(93, "% w/w"), density: quantity(1.835, "g/mL", "product"),
 * });
 * Number((found.dose.in("fl oz/gal") * 100).toFixed(2)); // => 1
 * Number(found.brings.in("mg/L").toFixed(1)); // => 43.6
 * ```
 */
export const acidForAlkalinity = (input: {
  readonly alkalinity: Alkalinity;
  readonly target: Alkalinity;
  readonly acid: WaterAcid;
  readonly strength: Quantity<"mass/mass", "none">;
  readonly density: Quantity<"mass/volume", "product">;
}): AcidDose => {
  const record = expectFields(input, ["alkalinity", "target", "acid", "strength", "density"], "input");
  const weighing = { dimension: "mass/volume", of: "product", bound: "positive" } as const;
  const read = allOf({
    now: () => meqOf(record.alkalinity, "alkalinity"),
    target: () => meqOf(record.target, "target"),
    acid: () => expectOneOf(record.acid, names, "acid"),
    strength: () => {
      const strength = expectQuantity(record.strength, { dimension: "mass/mass", of: "none" }, "strength");
      return notShare(expectNumber(strength.in("% w/w"), "strength", { above: 0, max: 100 }), "strength");
    },
    density: () => {
      const density = expectQuantity(record.density, weighing, "density");
      return expectNumber(density.in("g/mL"), "density", { min: 0.9, max: 2 });
    },
  });
  if (read.target > read.now) fail("conflict", "target", record.target, "at most the present alkalinity");
  const { formula, acid, brings } = acids[read.acid];
  const meq = read.now - read.target;
  const perMilliliter = (read.density * read.strength * 10 * acid) / formulaWeight(formula);
  const element = (meq * formulaWeight({ [brings]: 1 })) / acid;
  return {
    type: "acid-dose",
    version: 1,
    dose: quantity(meq / perMilliliter, "mL/L", "product/water"),
    neutralized: quantity(meq, "meq/L", "CaCO3 equivalent"),
    brings: new Quantity<"mass/volume", "S" | "P" | "N">(element, "mg/L", brings, "mass/volume"),
    source,
    findings: [
      {
        code: "water/acid-hazard",
        severity: "warning",
        path: "acid",
        params: { acid: read.acid },
        text: "Acid burns skin, eyes and lungs. Add acid to water, never water to acid. Follow its label and safety data sheet, and have a trained person handle it.",
        source,
      },
      ...(read.target < 0.5
        ? [
            {
              code: "water/no-buffer-left",
              severity: "caution",
              path: "target",
              params: { target: read.target },
              text: "Almost no alkalinity is left: a little more acid then drops the pH sharply.",
              source: "common practice, no source",
            } as const,
          ]
        : []),
    ],
  };
};
