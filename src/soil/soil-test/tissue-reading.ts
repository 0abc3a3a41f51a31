import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  expectQuantity,
  frozen,
  type Quantity,
} from "../../quantity/index.js";
import { expectPercent } from "../report/expect-ph.js";

/** A nutrient of a leaf analysis whose range was read. */
export type TissueNutrient = "N" | "P" | "K";

/** Sufficiency of turf leaves, percent of dry weight. */
export const tissueRanges: {
  readonly sample: string;
  readonly ranges: Readonly<
    Record<
      TissueNutrient,
      { readonly from: number; readonly to: number; readonly symptomsBelow: number | null }
    >
  >;
  readonly source: Citation;
} = /* @__PURE__ */ frozen({
  sample: "clippings taken just above the ground, at least two days of regrowth",
  ranges: {
    N: { from: 2.2, to: 4, symptomsBelow: null },
    P: { from: 0.3, to: 0.7, symptomsBelow: null },
    K: { from: 1.5, to: 3, symptomsBelow: 1 },
  },
  source: {
    title: "Plant analysis handbook - turfgrass",
    publisher: "University of Georgia Agricultural and Environmental Services Laboratories",
    where: "sufficiency ranges",
    url: "http://aesl.ces.uga.edu/publications/plant/Turfgrass.html",
  },
});

/** A leaf analysis beside its range. */
export interface TissueReading {
  readonly type: "tissue-reading";
  readonly version: 1;
  readonly nutrient: TissueNutrient;
  readonly level: "deficient" | "below" | "within" | "above";
  readonly source: Citation;
}

/**
 * Where a leaf analysis of turf lies beside the published range; `"deficient"` where the source names symptoms.
 *
 * @param input.content - of the dry leaf, `% w/w`, as the element
 * @param input.nutrient - the element: `"N"`, `"P"`, ...
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`
 *
 * Source: "Plant analysis handbook - turfgrass", University of Georgia.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { tissueReading } from "ratewright/soil";
 * tissueReading({ nutrient: "K", content: quantity(0.9, "% w/w") }).level; // => "deficient"
 * tissueReading({ nutrient: "N", content: quantity(3.1, "% w/w") }).level; // => "within"
 * ```
 */
export const tissueReading = (input: {
  readonly nutrient: TissueNutrient;
  readonly content: Quantity<"mass/mass", "none">;
}): TissueReading => {
  const record = expectFields(input, ["nutrient", "content"], "input");
  const { nutrient, percent } = allOf({
    nutrient: () => expectOneOf(record.nutrient, ["N", "P", "K"], "nutrient"),
    percent: () => {
      const content = expectQuantity(record.content, { dimension: "mass/mass", of: "none" }, "content");
      return expectPercent(content.in("% w/w"), "content", 10);
    },
  });
  const { from, to, symptomsBelow } = tissueRanges.ranges[nutrient];
  const level =
    symptomsBelow !== null && percent < symptomsBelow
      ? "deficient"
      : percent < from
        ? "below"
        : percent > to
          ? "above"
          : "within";
  return { type: "tissue-reading", version: 1, nutrient, level, source: { ...tissueRanges.source } };
};
