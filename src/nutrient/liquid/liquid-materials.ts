import { type Citation, type FactSource, frozen } from "../../quantity/index.js";

/** A temperature at which crystals form in a liquid fertilizer, as one source prints it. */
export interface SaltOut {
  readonly fahrenheit: number;
  readonly source: FactSource;
}

/** What sources print of one liquid fertilizer. */
export interface LiquidMaterial {
  readonly name: string;
  readonly analysis: string;
  /** Density by temperature: °F and lb/gal, in rising order of temperature. */
  readonly fahrenheit: readonly number[];
  readonly lbPerGal: readonly number[];
  readonly source: Citation;
  readonly saltOut: readonly SaltOut[];
  readonly note?: string;
}

const virginia: Citation = /* @__PURE__ */ frozen({
  title: "Common fertilizers used in Virginia: nitrogen, phosphorus and potassium (SPES-199)",
  publisher: "Virginia Cooperative Extension",
  where: "table 1",
  url: "https://ext.vt.edu/content/pubs_ext_vt_edu/en/SPES/SPES-199/SPES-199NP.html",
});
const factSheet: Citation = /* @__PURE__ */ frozen({
  title: "Estimated physical characteristics of fertilizer material",
  publisher: "fertilizer industry fact sheet in a document archive",
  where: "liquid table and density by temperature",
});
const mississippi: Citation = /* @__PURE__ */ frozen({
  title: "Publication P1466",
  publisher: "Mississippi State University Extension",
});
const typical =
  "The sheet prints the typical density without a temperature; it is taken as that of 60 °F, since its figure for 28-0-0 is the one that the Virginia table prints for 60 °F. The densities at 20 and 30 °F are printed with their temperature.";

/**
 * Densities and salting-out temperatures of common liquid fertilizers, as printed. Sources differ: 28-0-0
 * is 10.6 lb/gal at Purdue and 10.7 in a Cornell adviser page, 10-34-0 11.7 there. A label, or a weighed
 * gallon, comes first.
 */
export const liquidMaterials: Readonly<Record<LiquidMaterialId, LiquidMaterial>> = /* @__PURE__ */ frozen({
  "UAN 28": {
    name: "urea ammonium nitrate solution, 28 % N",
    analysis: "28-0-0",
    fahrenheit: [30, 50, 60, 70, 80, 90],
    lbPerGal: [10.76, 10.7, 10.67, 10.64, 10.61, 10.58],
    source: virginia,
    saltOut: [
      { fahrenheit: -1, source: factSheet },
      { fahrenheit: 1, source: virginia },
    ],
  },
  "UAN 30": {
    name: "urea ammonium nitrate solution, 30 % N",
    analysis: "30-0-0",
    fahrenheit: [30, 50, 60, 70, 80, 90],
    lbPerGal: [10.99, 10.93, 10.9, 10.87, 10.84, 10.81],
    source: virginia,
    saltOut: [{ fahrenheit: 14, source: virginia }],
    note: "The fact sheet prints 10.95 at 30 °F.",
  },
  "UAN 32": {
    name: "urea ammonium nitrate solution, 32 % N",
    analysis: "32-0-0",
    fahrenheit: [20, 30, 60],
    lbPerGal: [11.17, 11.14, 11.06],
    source: factSheet,
    saltOut: [
      { fahrenheit: 28, source: factSheet },
      { fahrenheit: 32, source: mississippi },
    ],
    note: typical,
  },
  "ammonium polyphosphate": {
    name: "ammonium polyphosphate solution",
    analysis: "10-34-0",
    fahrenheit: [20, 30, 60],
    lbPerGal: [11.76, 11.74, 11.65],
    source: factSheet,
    saltOut: [{ fahrenheit: -10, source: factSheet }],
    note: typical,
  },
  "ammonium thiosulfate": {
    name: "ammonium thiosulfate solution",
    analysis: "12-0-0-26S",
    fahrenheit: [60],
    lbPerGal: [11.04],
    source: factSheet,
    saltOut: [],
    note: `${typical} Salting out is printed only as below 20 °F.`,
  },
  "zinc ammonia solution": {
    name: "zinc ammonia solution",
    analysis: "10-0-0-10Zn",
    fahrenheit: [60],
    lbPerGal: [10.4],
    source: factSheet,
    saltOut: [{ fahrenheit: 32, source: factSheet }],
    note: typical,
  },
  "7-21-7": {
    name: "clear starter 7-21-7",
    analysis: "7-21-7",
    fahrenheit: [60],
    lbPerGal: [11.2],
    source: factSheet,
    saltOut: [{ fahrenheit: 20, source: factSheet }],
    note: typical,
  },
  "4-10-10": {
    name: "clear starter 4-10-10",
    analysis: "4-10-10",
    fahrenheit: [60],
    lbPerGal: [10.3],
    source: factSheet,
    saltOut: [{ fahrenheit: 18, source: factSheet }],
    note: typical,
  },
});

/** The name of a material of {@link liquidMaterials}. */
export type LiquidMaterialId =
  | "UAN 28"
  | "UAN 30"
  | "UAN 32"
  | "ammonium polyphosphate"
  | "ammonium thiosulfate"
  | "zinc ammonia solution"
  | "7-21-7"
  | "4-10-10";
