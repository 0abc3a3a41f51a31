import { expectFields, expectNumber, fail, outOfRange } from "../../quantity/index.js";
import type { ToxicityCategory } from "./restricted-entry-interval.js";

/** What the front panel of a label carries by the most severe category of the product. */
export interface SignalWord {
  /** `null` where none is required. */
  readonly word: "DANGER" | "WARNING" | "CAUTION" | null;
  /** Whether "Poison" in red and the skull and crossbones stand beside it. */
  readonly poison: boolean;
}

/**
 * The signal word of a product by its acute toxicity categories, of which the most severe counts: I is
 * DANGER, II WARNING, III CAUTION; in IV none is required, and where one is used it is CAUTION. Category I
 * by mouth, by breathing or through the skin carries "Poison" and the skull and crossbones as well.
 *
 * It is of the whole product. Entry intervals go by the active ingredient: see `interimRestrictedEntryHours`.
 *
 * @param categories - I to IV for each way in: `oral`, `dermal`, `inhalation`, `eye` and `skin`
 * @throws RatewrightError `range`, `not-finite`, `type`
 * Source: US EPA, 40 CFR 156.64 (a).
 *
 * @example
 * ```ts
 * import { signalWord } from "ratewright";
 * signalWord({ oral: 3, dermal: 3, inhalation: 4, eye: 2, skin: 3 }); // => { word: "WARNING", poison: false }
 * signalWord({ oral: 1, dermal: 3, inhalation: 4, eye: 2, skin: 3 }); // => { word: "DANGER", poison: true }
 * ```
 */
export const signalWord = (categories: {
  readonly oral: ToxicityCategory;
  readonly dermal: ToxicityCategory;
  readonly inhalation: ToxicityCategory;
  readonly eye: ToxicityCategory;
  readonly skin: ToxicityCategory;
}): SignalWord => {
  if (typeof categories !== "object" || categories === null) {
    return fail("type", "categories", categories, "a record of five categories");
  }
  expectFields(categories, ["oral", "dermal", "inhalation", "eye", "skin"], "categories");
  const of = (route: keyof typeof categories): number => {
    const n = expectNumber(categories[route], route, { min: 1, max: 4 });
    return Number.isInteger(n) ? n : outOfRange(route, n, { step: 1, min: 1, max: 4 }, "a category, {}");
  };
  const inner = Math.min(of("oral"), of("dermal"), of("inhalation"));
  const worst = Math.min(inner, of("eye"), of("skin"));
  const words = ["DANGER", "WARNING", "CAUTION", null] as const;
  return { word: words[worst - 1] ?? null, poison: inner === 1 };
};
