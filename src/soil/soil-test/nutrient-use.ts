import { described } from "../../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  fail,
  frozen,
  Quantity,
} from "../../quantity/index.js";
import { type TestedNutrient, testedNutrients } from "./guideline-types.js";

/** Parts of an element in the leaf for each part of nitrogen. */
export interface LeafRatio {
  readonly P: number | null;
  readonly K: number | null;
  readonly source: Citation;
}

/** A grass whose leaf ratio was read. */
export type LeafRatioGrass = "cool-season grass" | "bermudagrass" | "seashore paspalum";

const workingOut: Citation = /* @__PURE__ */ frozen({
  title: "Working out the fertilizer recommendation from a soil test",
  publisher: "Asian Turfgrass Center (turfgrass research blog)",
  year: 2014,
  url: "https://www.blog.asianturfgrass.com/2014/09/working-out-the-fertilizer-recommendation-from-a-soil-test.html",
});
const potassium: Citation = /* @__PURE__ */ frozen({
  title: "Calculating potassium fertilizer requirement",
  publisher: "Asian Turfgrass Center (turfgrass research blog)",
  year: 2014,
  url: "https://www.blog.asianturfgrass.com/2014/06/calculating-potassium-fertilizer-requirement-using-the-mlsn-guideline.html",
});

/** Leaf ratios to nitrogen: 8:1:4 of N, P and K for cool-season grass, N to K 3:2 for bermudagrass, 1:1 for paspalum. */
export const leafRatios: Readonly<Record<LeafRatioGrass, LeafRatio>> = /* @__PURE__ */ frozen({
  "cool-season grass": { P: 1 / 8, K: 4 / 8, source: workingOut },
  bermudagrass: { P: null, K: 2 / 3, source: potassium },
  "seashore paspalum": { P: null, K: 1, source: potassium },
});

const grasses = /* @__PURE__ */ Object.keys(leafRatios) as readonly LeafRatioGrass[];

/**
 * What a grass takes up of an element with its nitrogen: `U = N r`.
 *
 * - `N` nitrogen that the turf gets; `r` parts of the element for each part of nitrogen in the leaf, by grass or stated
 *
 * It is the most that leaves with the clippings: what stays on the turf comes back.
 *
 * @param input.perNitrogen - from a leaf analysis, in place of a grass
 * @param input.nutrient - the element: `"P"`, `"K"`, ...
 * @throws RatewrightError `missing` where no ratio was read for the grass, `conflict`, `range`, `type`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: named in `leafRatios`.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { nutrientUse } from "ratewright/soil";
 * nutrientUse({ nitrogen: quantity(25, "g/m2", "N"), nutrient: "K", grass: "cool-season grass" }).toString();
 * // => "12.5 g/m2 of K"
 * ```
 */
export const nutrientUse = <const E extends TestedNutrient>(input: {
  readonly nitrogen: Quantity<"mass/area", "N">;
  readonly nutrient: E;
  readonly grass?: LeafRatioGrass;
  readonly perNitrogen?: number;
}): Quantity<"mass/area", E> => {
  const record = expectFields(input, ["nitrogen", "nutrient", "grass", "perNitrogen"], "input");
  const read = allOf({
    nitrogen: () =>
      expectQuantity(record.nitrogen, { dimension: "mass/area", of: "N", bound: "non-negative" }, "nitrogen"),
    nutrient: () => expectOneOf(record.nutrient, testedNutrients, "nutrient"),
    ratio: () => ratioOf(record),
  });
  const { value, unit } = read.nitrogen;
  return new Quantity(value * read.ratio, unit, read.nutrient as E, "mass/area");
};

const ratioOf = (record: {
  readonly nutrient?: unknown;
  readonly grass?: unknown;
  readonly perNitrogen?: unknown;
}): number => {
  if (record.perNitrogen !== undefined) {
    if (record.grass !== undefined)
      fail("conflict", "perNitrogen", described("both"), "a grass or a ratio, not both");
    return expectNumber(record.perNitrogen, "perNitrogen", { min: 0, max: 2 });
  }
  const grass = expectOneOf(record.grass, grasses, "grass");
  const known =
    record.nutrient === "P" || record.nutrient === "K" ? leafRatios[grass][record.nutrient] : null;
  const { nutrient } = record;
  const named = typeof nutrient === "string" && nutrient !== "" ? nutrient : "the nutrient";
  return known === null
    ? fail(
        "missing",
        "perNitrogen",
        undefined,
        `parts of ${named} for each part of nitrogen, from a leaf analysis: none was read for ${grass}`,
      )
    : known;
};
