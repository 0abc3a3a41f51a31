import type { Analysis, Nutrient } from "./analysis.js";

const twins: Readonly<Partial<Record<Nutrient, Nutrient>>> = { P2O5: "P", P: "P2O5", K2O: "K", K: "K2O" };

/** The nutrients that an analysis states, and phosphorus and potassium in both forms: limits use either. */
export const elementShareForms = (analysis: Analysis): readonly Nutrient[] =>
  (Object.keys(analysis.percent) as Nutrient[]).flatMap((nutrient) => {
    const twin = twins[nutrient];
    return twin === undefined ? [nutrient] : [nutrient, twin];
  });
