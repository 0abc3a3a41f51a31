import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  expectQuantity,
  expectText,
  fail,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import {
  type Extractant,
  extractants,
  type SoilGuideline,
  type TestedNutrient,
  testedNutrients,
} from "./guideline-types.js";
import { type GuidelineName, guidelineRow, readGuideline } from "./guidelines.js";

/** A soil test beside a guideline. */
export interface SoilTestReading {
  readonly type: "soil-test-reading";
  readonly version: 1;
  readonly nutrient: TestedNutrient;
  readonly level: "below" | "within" | "above";
  readonly from: Quantity<"mass/mass", "none">;
  /** `null` where the guideline has no upper end: a soil is then never above it. */
  readonly to: Quantity<"mass/mass", "none"> | null;
  readonly meaning: string;
  readonly source: Citation;
}

/**
 * Where a soil test lies beside a guideline: below, within or above.
 *
 * @param input.content - of the dry soil, as the element; pounds an acre go through `contentInSoil` first
 * @param input.extractant - of the report: a guideline for another one is refused
 * @param input.guideline - by name, or one of your own
 * @param input.soil - where the guideline tells soils or turf apart: `"sand"`, `"other soils"`, `"putting greens"`
 * @param input.nutrient - the element: `"P"`, `"K"`, ...
 * @throws RatewrightError `conflict` for another extractant, `missing`, `range`, `type`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: named in each guideline, see `soilGuidelines`.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { soilTestReading } from "ratewright/soil";
 * const phosphorus = quantity(40, "mg/kg", "P/soil");
 * const by = (guideline: "minimum levels, Mehlich 3" | "sufficiency, Olsen") =>
 *   soilTestReading({ nutrient: "P", content: phosphorus, extractant: "Mehlich 3", guideline }).level;
 * by("minimum levels, Mehlich 3"); // => "within"
 * by("sufficiency, Olsen"); // => throws conflict
 * ```
 */
export const soilTestReading = <E extends TestedNutrient>(input: {
  readonly nutrient: E;
  readonly content: Quantity<"mass/mass", `${NoInfer<E>}/soil`>;
  readonly extractant: Extractant;
  readonly guideline: GuidelineName | SoilGuideline;
  readonly soil?: string;
}): SoilTestReading => {
  const record = expectFields(input, ["nutrient", "content", "extractant", "guideline", "soil"], "input");
  const read = allOf({
    nutrient: () => expectOneOf(record.nutrient, testedNutrients, "nutrient"),
    content: () => {
      const { unit } = Object(record.content) as { readonly unit?: unknown };
      if (typeof unit === "string" && /\/(acre|ha|1000 ft2|100 m2|m2|ft2)$/.test(unit))
        fail(
          "unit/mismatch",
          "content",
          record.content,
          "a content, such as mg/kg; contentInSoil(amount, layer) gives it",
        );
      return expectQuantity(
        record.content,
        {
          dimension: "mass/mass",
          bound: "non-negative",
          // Of what it has to be is open where the nutrient cannot be read
          ...(typeof record.nutrient === "string" ? { of: `${record.nutrient}/soil` } : {}),
        },
        "content",
      ).in("ppm w/w");
    },
    extractant: () => expectOneOf(record.extractant, extractants, "extractant"),
    guideline: () => readGuideline(record.guideline, "guideline"),
    soil: () => (record.soil === undefined ? undefined : expectText(record.soil, "soil", "the soil or turf")),
  });
  const { from, to } = guidelineRow(read.guideline, read);
  return {
    type: "soil-test-reading",
    version: 1,
    nutrient: read.nutrient,
    level: read.content < from ? "below" : to !== null && read.content > to ? "above" : "within",
    from: quantity(from, "ppm w/w"),
    to: to === null ? null : quantity(to, "ppm w/w"),
    meaning: read.guideline.meaning,
    source: { ...read.guideline.source },
  };
};
