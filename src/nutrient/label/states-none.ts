import { described } from "../../quantity/house.js";
import { fail, shown } from "../../quantity/index.js";

/** What a product states by weight: the part of a label that {@link statesNone} reads. */
interface StatedByWeight {
  readonly id: string;
  readonly analysis: { readonly percent: object };
}

/** Refuses a product whose label states none of a nutrient: it points at the analysis, and tells what it states. */
export const statesNone = ({ id, analysis }: StatedByWeight, of: string, path = "product"): never => {
  const stated = Object.entries(analysis.percent).map(([name, percent]) => `${shown(percent)} % ${name}`);
  return fail(
    "infeasible",
    `${path}.analysis`,
    described(stated.join(", ")),
    `some ${of}, of which ${id} states none`,
  );
};
