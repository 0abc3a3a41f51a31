import type { Nutrient } from "./nutrient.js";

const twins: Readonly<Partial<Record<Nutrient, Nutrient>>> = { P2O5: "P", P: "P2O5", K2O: "K", K: "K2O" };

/** The nutrients that a label states, and phosphorus and potassium in both forms: limits use either. */
export const elementShareForms = (stated: readonly string[]): readonly Nutrient[] =>
  (stated as readonly Nutrient[]).flatMap((nutrient) => {
    const twin = twins[nutrient];
    return twin === undefined ? [nutrient] : [nutrient, twin];
  });
