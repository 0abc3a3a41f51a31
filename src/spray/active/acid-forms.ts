import { type Citation, type FactSource, frozen } from "../../quantity/index.js";

/** A salt or an ester of an acid in which products come, and who prints it. */
export interface AcidForm {
  /** ISO common name of the acid. */
  readonly acid: string;
  readonly partner: string;
  readonly source: FactSource;
}

const npic: Citation = /* @__PURE__ */ frozen({
  title: "2,4-D Technical Fact Sheet, 2,4-D and associated forms",
  publisher: "National Pesticide Information Center",
  url: "http://npic.orst.edu/factsheets/archive/2,4-DTech.html",
});
const epaCholine: Citation = /* @__PURE__ */ frozen({
  title: "2,4-D: evaluation of the choline salt, 2014",
  publisher: "US Environmental Protection Agency",
  url: "https://www.epa.gov/ingredients-used-pesticide-products/24-d",
});
const handbook = (acid: string): Citation => ({
  title: `${acid}, entry of a pesticide handbook (copy)`,
  publisher: "pesticide handbook",
  where: "salts and esters, with their molar masses",
});
const illinois: Citation = /* @__PURE__ */ frozen({
  title: "Herbicide Formulations and Calculations: Active Ingredient or Acid Equivalent?",
  publisher: "University of Illinois",
  where: "chemical names on labels",
});
const triclopyr: Citation = /* @__PURE__ */ frozen({
  title: "Reregistration Eligibility Decision: Triclopyr, fact sheet",
  publisher: "US Environmental Protection Agency",
  year: 1998,
  where: "case 2710: the acid, its triethylamine salt and its butoxyethyl ester",
  url: "https://nepis.epa.gov/Exe/ZyPURL.cgi?Dockey=20000PDW.txt",
});
const triclopyrReview: Citation = /* @__PURE__ */ frozen({
  title: "Triclopyr: Interim Registration Review Decision, case 2710",
  publisher: "US Environmental Protection Agency",
  year: 2020,
  url: "https://nepis.epa.gov/Exe/ZyPURL.cgi?Dockey=P1012S1U.txt",
});
const formulations: Citation = /* @__PURE__ */ frozen({
  title: "Properties and Characteristics of Amine and Ester Formulations of 2,4-D",
  publisher: "industry review",
  year: 2018,
});
const label = (of: string): Citation => ({ title: `Label of ${of} (copy)`, publisher: "US label" });
const chebi: Citation = /* @__PURE__ */ frozen({
  title: "quinclorac",
  publisher: "ChEBI",
  where: "in a copy",
});
const glyphosate: Citation = /* @__PURE__ */ frozen({
  title: "Understanding Glyphosate Acid Equivalents",
  publisher: "Washington State University small grains",
  url: "https://smallgrains.wsu.edu/understanding-glyphosate-acid-equivalents/",
});
const citrus: Citation = /* @__PURE__ */ frozen({
  title: "Understanding glyphosate formulations",
  publisher: "University of Florida, in Citrus Industry",
  year: 2019,
});
const supplier = (name: string): Citation => ({
  title: name,
  publisher: "PubChem, in a chemical supplier's page",
});
const names: Citation = /* @__PURE__ */ frozen({
  title: "Names for simple esters and salts of pesticides",
  publisher: "Compendium of Pesticide Common Names",
  url: "http://www.alanwood.net/pesticides/esters.html",
});
const canada: Citation = /* @__PURE__ */ frozen({
  title: "Proposed Registration Decision PRD2013-15, Dichlorprop-P",
  publisher: "Health Canada",
  year: 2013,
});
const canadaPress: Citation = /* @__PURE__ */ frozen({
  title:
    "Canada to approve herbicide dichlorprop-P (dimethylamine salts of dichlorprop-P, MCPA and mecoprop-P)",
  publisher: "trade press on a decision of Health Canada",
});
const fluoride: Citation = /* @__PURE__ */ frozen({
  title: "Fluroxypyr-meptyl, C15H21Cl2FN2O3",
  publisher: "Fluoride Action Network",
});

const of = (acid: string, source: FactSource, ...partners: readonly string[]): readonly AcidForm[] =>
  partners.map((partner) => ({ acid, partner, source }));

/**
 * The salts and esters in which products of an acid come, as far as a source for them was read; those marked
 * `"from memory"` are known to the trade, and no source was read. A pair that is not here is no known form: its
 * molar mass can be computed, and no jug holds it.
 */
export const acidForms: readonly AcidForm[] = /* @__PURE__ */ frozen(
  /* @__PURE__ */ [
    ...of("2,4-D", npic, "sodium", "dimethylammonium", "isopropylammonium", "diolamine"),
    ...of("2,4-D", epaCholine, "choline"),
    ...of("2,4-D", formulations, "2-ethylhexyl"),
    ...of("2,4-D", label("a herbicide of 2,4-D acid and butoxyethyl ester"), "butotyl"),
    ...of("2,4-D", "from memory", "triethylammonium"),
    ...of("2,4-DB", "from memory", "dimethylammonium", "butotyl", "sodium", "potassium"),
    ...of("dichlorprop-P", canadaPress, "dimethylammonium"),
    ...of("dichlorprop-P", canada, "2-ethylhexyl"),
    ...of("dichlorprop-P", "from memory", "potassium"),
    ...of("MCPA", handbook("MCPA"), "sodium", "potassium", "dimethylammonium", "2-ethylhexyl", "butotyl"),
    ...of("mecoprop-P", canadaPress, "dimethylammonium"),
    ...of("mecoprop-P", names, "potassium"),
    ...of("dicamba", handbook("dicamba"), "sodium", "potassium", "dimethylammonium", "diolamine"),
    ...of("dicamba", illinois, "diglycolammonium"),
    ...of("dicamba", supplier("Dicamba-isopropylammonium"), "isopropylammonium"),
    ...of("triclopyr", triclopyr, "triethylammonium", "butotyl"),
    ...of("triclopyr", triclopyrReview, "choline"),
    ...of("clopyralid", supplier("Clopyralid-olamine"), "olamine"),
    ...of("clopyralid", label("clopyralid with flumetsulam, 2018"), "potassium"),
    ...of("clopyralid", "from memory", "dimethylammonium"),
    ...of("aminopyralid", supplier("Aminopyralid-potassium"), "potassium"),
    ...of("fluroxypyr", fluoride, "meptyl"),
    ...of("quinclorac", chebi, "dimethylammonium"),
    ...of("glyphosate", glyphosate, "isopropylammonium", "potassium", "dimethylammonium", "diammonium"),
    ...of("glyphosate", citrus, "ammonium"),
  ],
);
