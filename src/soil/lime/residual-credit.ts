import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  Quantity,
} from "../../quantity/index.js";

/** Percent of the lime applied that is used up in a month, by soil class. */
const perMonth = { mineral: 8, "mineral-organic": 16, organic: 16 } as const;

/** A soil class of North Carolina. */
export type CreditSoil = "mineral" | "mineral-organic" | "organic";

const soils = ["mineral", "mineral-organic", "organic"] as const;

/**
 * What lime of the last months still does, and is taken off the next rate: `C = L (1 - r n)`, down to zero.
 *
 * - `L` lime applied; `n` months since; `r` 8 % a month for mineral soils (nothing after 12.5 months), 16 % for
 *   mineral-organic and organic soils (nothing after 6.25)
 *
 * @param input.applied - in the lime that the next rate is in: for North Carolina standard lime
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`
 *
 * Source: "Soil testing: lime and fertilizer requirements", North Carolina Department of Agriculture and Consumer Services:
 * the lime rate less the lime rate times months times the percentage.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { residualLimeCredit } from "ratewright/soil";
 * const applied = quantity(1, "US ton/acre", "product:standard-lime");
 * Number(residualLimeCredit({ applied, months: 4, soil: "mineral" }).in("US ton/acre").toFixed(2)); // => 0.68
 * residualLimeCredit({ applied, months: 8, soil: "organic" }).value; // => 0
 * ```
 */
export const residualLimeCredit = <S extends string>(input: {
  readonly applied: Quantity<"mass/area", S>;
  readonly months: number;
  readonly soil: CreditSoil;
}): Quantity<"mass/area", S> => {
  const record = expectFields(input, ["applied", "months", "soil"], "input");
  const read = allOf({
    applied: () =>
      expectQuantity(record.applied, { dimension: "mass/area", bound: "non-negative" }, "applied"),
    months: () => expectNumber(record.months, "months", { min: 0 }),
    soil: () => expectOneOf(record.soil, soils, "soil"),
  });
  const left = Math.max(0, 100 - perMonth[read.soil] * read.months);
  const { value, unit, of } = read.applied;
  return new Quantity((value * left) / 100, unit, of as S, "mass/area");
};
