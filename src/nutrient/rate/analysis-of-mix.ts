import { allOf, expectFields, expectQuantity, numberIn, outOfRange, Quantity } from "../../quantity/index.js";
import { analysis } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { type Analysis, isNutrient, type Nutrient } from "../label/nutrient.js";
import { eachOf, listOf } from "../label/under-path.js";
import { nutrientsSupplied } from "./nutrients-supplied.js";
import { sumOfSupplies } from "./sum-of-supplies.js";

/** A material of a mix and how much of it goes in. */
export interface MixedMaterial {
  readonly product: Fertilizer;
  /** Weighed; tagged with its product where it is the result of another function. */
  readonly amount: Quantity<"mass", "none"> | Quantity<"mass", `product:${string}`>;
}

/**
 * The analysis of a mix of materials: what its label could state, by weight.
 *
 * Equation: `a_i = 100 * sum(m_j a_ij / 100) / (sum(m_j) + f)`
 *
 * - `a_i` percent of nutrient i in the mix; phosphorus and potassium as oxides
 * - `m_j` mass of material j; `a_ij` percent of nutrient i in it
 * - `f` filler without nutrients, zero where it is left out
 *
 * @param input.parts - each material with its analysis and its mass
 * @throws RatewrightError `range` where nothing is mixed; `missing`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: conservation of mass; 31.7 kg of 0-0-60, 41.3 kg of 18-46-0 and 25.2 kg of 46-0-0 in 100 kg are 19-19-19
 * (agronomy question-and-answer site).
 *
 * @example
 * ```ts
 * import { analysisOfMix, fertilizer, quantity } from "ratewright";
 * const mix = analysisOfMix({
 *   parts: [
 *     { product: fertilizer({ id: "urea", analysis: "46-0-0" }), amount: quantity(50, "lb") },
 *     { product: fertilizer({ id: "potash", analysis: "0-0-60" }), amount: quantity(50, "lb") },
 *   ],
 * });
 * mix.percent; // => { N: 23, P2O5: 0, K2O: 30 }
 * ```
 */
export const analysisOfMix = (input: {
  readonly parts: readonly MixedMaterial[];
  readonly filler?: Quantity<"mass", "none">;
}): Analysis => {
  expectFields(input, ["parts", "filler"], "input");
  const { parts, filler } = allOf({
    parts: () => readParts(input.parts),
    filler: () =>
      input.filler === undefined
        ? undefined
        : expectQuantity(input.filler, { dimension: "mass", of: "none", bound: "non-negative" }, "filler"),
  });
  const unit = parts[0]?.amount.unit as string;
  const weight = (list: readonly unknown[]): number =>
    list.reduce<number>((sum, q) => sum + numberIn(q, unit), 0);
  const whole = weight([...parts.map(({ amount }) => amount), ...(filler === undefined ? [] : [filler])]);
  if (!(whole > 0)) outOfRange("parts", whole, { above: 0 }, "a mix that weighs {}");
  const supplied = sumOfSupplies(parts.map(({ product, amount }) => nutrientsSupplied(amount, product)));
  const percent: Partial<Record<Nutrient, number>> = {};
  for (const [of, amount] of Object.entries(supplied)) {
    // Oxides, as on labels: the elements P and K stand beside them in what is supplied.
    if (isNutrient(of) && of !== "P" && of !== "K") percent[of] = (numberIn(amount, unit) * 100) / whole;
  }
  return analysis({ basis: "oxide", percent: oneFormEach(percent) }, undefined, "mix");
};

/** Calcium of one label and lime of another are one nutrient: the first form stands. */
const oneFormEach = (percent: Partial<Record<Nutrient, number>>): Partial<Record<Nutrient, number>> => {
  const twins: readonly (readonly Nutrient[])[] = [
    ["Ca", "CaO"],
    ["Mg", "MgO"],
    ["S", "SO3", "SO4"],
    ["Si", "SiO2"],
  ];
  const extra = twins.flatMap((forms) => forms.filter((form) => percent[form] !== undefined).slice(1));
  return Object.fromEntries(Object.entries(percent).filter(([of]) => !extra.some((form) => form === of)));
};

const mostParts = 200;

interface ReadPart {
  readonly product: Fertilizer;
  readonly amount: Quantity<"mass", `product:${string}`>;
}

const readParts = (input: unknown): readonly ReadPart[] =>
  eachOf(listOf(input, "parts", "{ product, amount }", mostParts), "parts", (item): ReadPart => {
    const given = expectFields(item, ["product", "amount"], "", "{ product, amount }");
    const product = expectFertilizer(given.product as Fertilizer, "product");
    const of = `product:${product.id}` as const;
    const weighed = expectQuantity(given.amount, { dimension: "mass", bound: "non-negative" }, "amount");
    const tagged = weighed.of === "none" ? new Quantity(weighed.value, weighed.unit, of, "mass") : weighed;
    return { product, amount: expectQuantity(tagged, { dimension: "mass", of }, "amount") };
  });
