import { exceeds } from "../../numeric/index.js";
import { numberIn, type Quantity } from "../../quantity/index.js";
import type { Nutrient } from "../label/analysis.js";
import { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
import type { FoundStep } from "./rate-steps.js";
import { fromOtherForm } from "./sum-of-supplies.js";

/** What several supplies hold of a nutrient, whatever the form in which each label states it. */
export const supplyOf = (
  brought: readonly NutrientsSupplied<"mass/area">[],
  nutrient: Nutrient,
  unit: string,
): number => {
  let total = 0;
  for (const supply of brought as readonly Readonly<Record<string, Quantity<string, string>>>[]) {
    const part = supply[nutrient] ?? fromOtherForm(supply, nutrient);
    if (part !== undefined) total += numberIn(part, unit);
  }
  return total;
};

/** What each product brings. */
export const broughtBy = (steps: readonly FoundStep[]): NutrientsSupplied<"mass/area">[] =>
  steps.map(({ rate, product }) => nutrientsSupplied(rate, product));

/** Whether one of the targets is exceeded. */
export const oversupplies = (steps: readonly FoundStep[]): boolean => {
  const brought = broughtBy(steps);
  return steps.some(({ target }) => exceeds(supplyOf(brought, target.of, target.unit), target.value));
};
