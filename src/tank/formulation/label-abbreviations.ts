import { type Citation, frozen } from "../../quantity/index.js";

/** A printed list of abbreviations on US labels, with the meanings as it gives them. */
export interface AbbreviationList {
  readonly source: Citation;
  readonly meanings: Readonly<Record<string, string>>;
}

const labelAbbreviationsTable = {
  "New England": {
    source: {
      title: "New England Vegetable Management Guide, abbreviations",
      publisher: "New England Extension",
    },
    meanings: {
      AS: "aqueous suspension",
      AF: "aqueous flowable",
      D: "dust",
      DF: "dry flowable",
      E: "emulsifiable concentrate",
      EC: "emulsifiable concentrate",
      F: "flowable",
      FL: "flowable",
      FM: "flowable microencapsulated",
      G: "granular",
      L: "liquid concentrate",
      LC: "liquid concentrate",
      S: "soluble concentrate or spray concentrate",
      SC: "soluble concentrate or spray concentrate",
      SL: "slurry",
      SP: "soluble powder",
      WDG: "water dispersible granules",
      WG: "wettable granules",
      W: "wettable powder",
      WP: "wettable powder",
      "W/SL": "water-soluble liquid",
      WSP: "wettable, soluble powder",
    },
  },
  Washington: {
    source: {
      title: "Formulations, crop protection guide for tree fruits",
      publisher: "Washington State University",
      url: "https://cpg.treefruit.wsu.edu/general-recommendations/formulations/",
    },
    meanings: {
      WP: "wettable powder",
      L: "water-soluble liquid concentrate; some makers use it for an emulsifiable concentrate",
      LC: "water-soluble liquid concentrate; some makers use it for an emulsifiable concentrate",
      EC: "emulsifiable concentrate",
      SC: "spray concentrate",
      DF: "dry flowable, which is a water dispersible granule",
      WDG: "water dispersible granules",
      F: "flowable suspension",
      SP: "soluble powder",
      S: "soluble powder",
      D: "dust",
      G: "granules",
    },
  },
  "study list": {
    source: {
      title: "Formulation abbreviations, flash cards",
      publisher: "applicator study set (low authority)",
    },
    meanings: {
      A: "aerosol",
      B: "bait",
      C: "concentrate",
      D: "dust",
      DF: "dry flowable",
      E: "emulsifiable concentrate",
      F: "flowable",
      L: "flowable or liquid",
      G: "granule",
      GL: "gel",
      M: "microencapsulated",
      P: "pellets",
      RTU: "ready to use",
      S: "solution",
      SG: "soluble granule",
      ULV: "ultra low volume",
      W: "wettable powder",
      WDG: "water-dispersible granules",
      DG: "water-dispersible granules",
      WSP: "water-soluble powder or packet",
    },
  },
} as const;

/**
 * Abbreviations of formulations in the United States, by who prints them. There is no one list: the same
 * letters stand for different things, also against the international codes ({@link codeMeanings} sets
 * them side by side).
 */
export const labelAbbreviations: typeof labelAbbreviationsTable =
  /* @__PURE__ */ frozen(labelAbbreviationsTable);

/** Who prints a list of US abbreviations. */
export type AbbreviationListId = keyof typeof labelAbbreviations;
