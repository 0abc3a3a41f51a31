import { type Citation, frozen } from "../../quantity/index.js";

/** A published half-life in water of a stated pH. */
export interface HalfLife {
  /** ISO common name. */
  readonly active: string;
  readonly pH: number;
  /** The printed half-life, shortest and longest where a range is printed. */
  readonly shortest: { readonly value: number; readonly unit: "min" | "h" | "d" };
  readonly longest: { readonly value: number; readonly unit: "min" | "h" | "d" };
  /** Temperature of the water in °C as the source prints it; `"not printed"` where it prints none. */
  readonly temperature: number | "not printed";
  readonly source: Citation;
}

const ontario: Citation = /* @__PURE__ */ frozen({
  title: "Sprayer loading and the jar test",
  publisher: "Ontario Ministry of Agriculture (sprayers101)",
  where: "The carrier",
});
const hawaii: Citation = /* @__PURE__ */ frozen({
  title: "Pesticides leftover (garden column)",
  publisher: "Hawaii horticulture column",
  year: 2016,
});

const dataSheet: Citation = /* @__PURE__ */ frozen({
  title: "Carbaryl, data sheet with the stability of the pesticide handbooks",
  publisher: "chemical supplier, China",
  where: "Stability: DT50 c. 12 d (pH 7), 3.2 h (pH 9)",
  url: "http://szchemsz.com/en/products_01.asp?Menuid=45&Menuidd=25&id=80",
});
const dossier: Citation = /* @__PURE__ */ frozen({
  title: "Captan, registration dossier, endpoint summary of environmental fate",
  publisher: "European Chemicals Agency",
  year: 2023,
  where: "Description of key information",
  url: "https://poisoncentres.echa.europa.eu/hr/web/guest/registration-dossier/-/registered-dossier/12775/5/1",
});
const jmpr: Citation = /* @__PURE__ */ frozen({
  title: "Thiophanate-methyl (077), evaluation of 1998",
  publisher: "FAO/WHO Joint Meeting on Pesticide Residues",
  year: 1998,
  where: "Physical and chemical properties: hydrolysis at 25 °C",
});

type Unit = "min" | "h" | "d";

const row = (
  active: string,
  pH: number,
  [shortest, longest, unit]: readonly [number, number, Unit],
  source: Citation,
  temperature: HalfLife["temperature"] = "not printed",
): HalfLife => ({
  active,
  pH,
  shortest: { value: shortest, unit },
  longest: { value: longest, unit },
  temperature,
  source,
});

/**
 * Half-lives in water that were read in a source, by active ingredient from the lowest pH up. Temperature and
 * what else is dissolved move them several-fold, and sources differ by as much: of carbaryl at pH 9 one prints 3.2 h,
 * another 1 to 3 days. All are kept, and {@link alkalineHydrolysis} takes the whole range. Most print no temperature:
 * in water of the Sacramento River the US Geological Survey (1999) found 2 to 3 weeks for carbaryl and malathion at 10 °C, 1 to
 * 5 days at 25 °C. Tables with more rows are reprinted widely; what was not read is not here.
 */
export const halfLives: readonly HalfLife[] = /* @__PURE__ */ frozen([
  row("captan", 5, [32, 32, "h"], ontario),
  row("captan", 7, [8, 8, "h"], hawaii),
  row("captan", 7, [4.9, 4.9, "h"], dossier),
  row("captan", 8, [10, 10, "min"], ontario),
  row("captan", 9, [2, 2, "min"], hawaii),
  row("malathion", 6, [8, 8, "d"], hawaii),
  row("malathion", 8, [19, 19, "h"], hawaii),
  row("carbaryl", 6, [100, 150, "d"], hawaii),
  row("carbaryl", 7, [24, 30, "d"], hawaii),
  row("carbaryl", 7, [12, 12, "d"], dataSheet),
  row("carbaryl", 9, [1, 3, "d"], hawaii),
  row("carbaryl", 9, [3.2, 3.2, "h"], dataSheet),
  row("thiophanate-methyl", 5, [867, 867, "d"], jmpr, 25),
  row("thiophanate-methyl", 7, [36, 36, "d"], jmpr, 25),
  row("thiophanate-methyl", 9, [0.7, 0.7, "d"], jmpr, 25),
]);
