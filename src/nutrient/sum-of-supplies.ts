import type { Quantity } from "../quantity/index.js";
import type { NutrientsSupplied } from "./nutrients-supplied.js";

/** What several products bring together, form by form. */
export const sumOfSupplies = <D extends "mass" | "mass/area">(
  supplies: readonly NutrientsSupplied<D>[],
): NutrientsSupplied<D> => {
  const total: Record<string, Quantity<string, string>> = {};
  for (const supply of supplies) {
    for (const [form, part] of Object.entries(supply as Record<string, Quantity<string, string>>)) {
      total[form] = total[form]?.plus(part as never) ?? part;
    }
  }
  return total as NutrientsSupplied<D>;
};
