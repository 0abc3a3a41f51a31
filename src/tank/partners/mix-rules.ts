import { type Citation, frozen } from "../../quantity/index.js";

const mixIngredientsTable = [
  "ammonium sulfate",
  "ammonium thiosulfate",
  "amine phenoxy",
  "iron sulfate",
  "micronutrients",
  "chloride or sulfur fertilizer",
  "organic solvent",
] as const;

/** What a product contains, as far as published mixing rules speak of it. */
export const mixIngredients: typeof mixIngredientsTable = /* @__PURE__ */ frozen(mixIngredientsTable);

/** One of {@link mixIngredients}. */
export type MixIngredient = (typeof mixIngredients)[number];

/** A group of active ingredients of which a country's rules say that no two go together. */
export interface GroupRule {
  readonly group: string;
  readonly country: "UK";
  readonly text: string;
  readonly source: Citation;
}

const hse: Citation = /* @__PURE__ */ frozen({
  title: "Tank-mix recommendations on pesticide product labels",
  publisher: "UK Health and Safety Executive",
  where: "section 1",
  url: "https://hse.gov.uk/pesticides/applicant-guide/tank-mix-recommendations-pesticide-labels.htm",
});

/** Groups of which no two may go together under a country's rules, unless a label says otherwise. */
export const groupRules: readonly GroupRule[] = /* @__PURE__ */ frozen([
  {
    group: "anticholinesterase",
    country: "UK",
    text: "two or more anticholinesterase products are not mixed unless the label of one of them says so",
    source: hse,
  },
  {
    group: "ALS",
    country: "UK",
    text: "an ALS herbicide is not mixed with, or followed by, another one unless the label says so",
    source: hse,
  },
]);

const mixRuleSourcesTable = {
  "mix/thiosulfate-last": {
    title: "Pest Patrol: jar test with fertilizers and herbicides",
    publisher: "Country Guide",
    where: "ammonium thiosulfate case",
  },
  "mix/undissolved-sulfate-and-amine": {
    title: "Don't start mixing until the water quality is right",
    publisher: "WeedSmart, Australia",
    where: "ammonium sulfate paragraph",
  },
  "mix/iron-and-amine": {
    title: "Iron source in 2,4-D tank-mixtures influences weed control",
    publisher: "ASA-CSSA-SSSA annual meeting",
    year: 2016,
    where: "abstract 101672",
    url: "https://scisoc.confex.com/scisoc/2016am/webprogram/Paper101672.html",
  },
  "mix/film-hindered": {
    title: "Guide to Crop Protection, general rules for mixing, relayed by the Canola Council of Canada",
    publisher: "Manitoba Agriculture",
    year: 2013,
    where: "exception to the fertilizer rule",
    url: "https://www.canolacouncil.org/canola-watch/2013/05/15/general-rules-for-mixing-pesticide/",
  },
  "mix/micronutrient-fines": {
    title: "Understanding the chemistry behind herbicide applications (field-day report)",
    publisher: "University of Wisconsin-Madison Division of Extension",
    year: 2024,
    where: "tips",
  },
  "mix/compatibility-agent": {
    title: "Preparing Spray Solutions: Mixing Order",
    publisher: "South Dakota State University Extension",
    where: "Mixing Order Recommendation",
  },
  "mix/many-partners": {
    title: "Tank Mixing Order and the Jar Test",
    publisher: "Ontario Ministry of Agriculture (sprayers101)",
    url: "https://sprayers101.com/tankmix/",
  },
} as const;

/** The published objections that {@link incompatibilities} looks for, by the code of the finding. */
export const mixRuleSources: typeof mixRuleSourcesTable = /* @__PURE__ */ frozen(mixRuleSourcesTable);

/** The most partners that a published guide advises. */
export const mostPartners = 3;
