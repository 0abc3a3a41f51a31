import { exceeds } from "../../numeric/index.js";
import { numberIn } from "../../quantity/index.js";
import type { Nutrient } from "../label/analysis.js";
import { formFactor } from "../label/forms.js";
import { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
import type { FoundStep } from "./rate-steps.js";

/** What several supplies hold of a nutrient, whatever the form in which each label states it. */
export const supplyOf = (
  brought: readonly NutrientsSupplied<"mass/area">[],
  nutrient: Nutrient,
  unit: string,
): number => {
  let total = 0;
  for (const supply of brought) {
    const stated = Object.entries(supply).find(
      ([form]) => form === nutrient || formFactor(form, nutrient) !== undefined,
    );
    const direct = supply[nutrient];
    if (direct !== undefined) total += numberIn(direct, unit);
    else if (stated !== undefined) {
      total += numberIn(stated[1], unit) * (formFactor(stated[0], nutrient) as number);
    }
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
