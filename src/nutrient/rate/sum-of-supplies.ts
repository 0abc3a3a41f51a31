import { likeQuantity, numberIn, type Quantity, quantityOf } from "../../quantity/index.js";
import { formFactor } from "../label/forms.js";
import type { NutrientsSupplied } from "./nutrients-supplied.js";

/** What several products bring together, in every form that one of them states: 1 lb Ca and 1.4 lb CaO are 2 lb Ca. */
export const sumOfSupplies = <D extends "mass" | "mass/area">(
  supplies: readonly NutrientsSupplied<D>[],
): NutrientsSupplied<D> => {
  const total: Record<string, Quantity<string, string>> = {};
  const parts = supplies as readonly Readonly<Record<string, Quantity<string, string>>>[];
  for (const form of new Set(parts.flatMap((supply) => Object.keys(supply)))) {
    for (const supply of parts) {
      const part = supply[form] ?? fromOtherForm(supply, form);
      const sum = total[form];
      if (part !== undefined) {
        total[form] = sum === undefined ? part : likeQuantity(sum, sum.value + numberIn(part, sum.unit));
      }
    }
  }
  return total as NutrientsSupplied<D>;
};

/** What a supply holds of a nutrient that it states in another form. */
export const fromOtherForm = (
  supply: Readonly<Record<string, Quantity<string, string>>>,
  form: string,
): Quantity<string, string> | undefined => {
  for (const [stated, part] of Object.entries(supply)) {
    const factor = formFactor(stated, form);
    if (factor !== undefined) return quantityOf(part.value * factor, part.unit, form, form);
  }
  return undefined;
};
