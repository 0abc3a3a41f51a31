import { dimensionDue } from "../../quantity/house.js";
import { expectNumber, fail, isSubstance, type Quantity, quantityOf } from "../../quantity/index.js";
import { expectStated } from "../stated.js";

/** Whether a text names something that a limit or a ledger can be about: a nutrient, an ai, an ae or a product with its id. */
export const isLimitedName = (of: unknown): of is string =>
  isSubstance(of) && (isNutrientName(of) || /^(product|ai|ae|other):[^/]+$/.test(of));

const notNutrients = /^(none|treated|gross|plan|product|ai|ae|water|spray|soil|seed|pure live seed)$|[:/]/;

/** Whether a text names a nutrient. */
export const isNutrientName = (of: string): boolean =>
  isSubstance(of) && (of === "N:quick" || of === "N:slow" || !notNutrients.test(of));

const wantedName = "a nutrient such as N or P2O5, or ai:, ae: or product: with a name";

/** Takes the name of something that a limit or a ledger can be about, or throws. */
export const limitedName = (input: unknown, path: string): string =>
  isLimitedName(input)
    ? input
    : fail(input === undefined ? "missing" : "substance/mismatch", path, input, wantedName);

/** An amount of one of these per area. */
export const readAreaAmount = (input: unknown, path: string): Quantity<string, string> => {
  const { of, unit, value } = expectStated(input, path, "an amount per area");
  if (of === undefined) fail("missing", `${path}.of`, of, wantedName);
  const name = limitedName(of, `${path}.of`);
  expectNumber(value, `${path}.value`, { min: 0 });
  if (typeof unit !== "string") fail("type", `${path}.unit`, unit, "a unit");
  const q = quantityOf(value as number, unit as string, name, path);
  const byVolume = /^(product|ai|ae|other):/.test(name) && q.dimension === "volume/area";
  return q.dimension === "mass/area" || byVolume ? q : dimensionDue("unit/mismatch", path, q, "mass/area");
};
