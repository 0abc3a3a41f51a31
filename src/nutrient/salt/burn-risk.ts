import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  expectQuantity,
  type FactSource,
  type Finding,
  frozen,
  type Quantity,
} from "../../quantity/index.js";
import { type BurnClass, type BurnScheme, type BurnSchemeName, burnSchemes } from "./burn-schemes.js";
import { checkedSaltIndex, type SaltIndex } from "./salt-index.js";

/** What a salt index says of burning, and what it does not. */
export interface BurnRisk {
  readonly type: "burn-risk";
  readonly version: 1;
  /** What the scheme calls the source; absent where it has no class for it, and for a spray. */
  readonly class?: BurnClass;
  /** The scheme that was applied; absent for a spray. */
  readonly scheme?: BurnSchemeName;
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

const iowa: Citation = /* @__PURE__ */ frozen({
  title: "Fertilizer burn study (Agnew and Moore)",
  publisher: "Iowa State University, turf research report, page 69",
  year: 1989,
  where: "abstract",
  url: "https://tic.msu.edu/tgif/fullrecord?recno=18060",
});

const otherRisks =
  "wet leaves, heat, drought, overlaps and watering-in: each changes the risk more than the index (common practice, no source)";

/** The partial salt index above which the turf list calls a source high: see {@link burnSchemes}. */
export const highPartialSaltIndex: 1.5 = 1.5;

/** The scheme of the table that an index comes from; the one of the university for any other index. */
const schemeOf = (source: FactSource): BurnSchemeName => {
  const title = typeof source === "string" ? source : source.title;
  return title === burnSchemes["turf list"].source.title ? "turf list" : "Oregon State University";
};

/** The class of an index by a scheme; undefined where the scheme has none for it. */
const classOf = (value: number, scheme: BurnScheme): BurnClass | undefined =>
  scheme.classes.find(({ from, to }) => !exceeds(from, value) && !exceeds(value, to))?.name;

const classTexts: Readonly<Record<BurnClass, string>> = {
  low: "",
  moderate: "moderate: watch rate, heat and wet leaves",
  high: "high: leaves burn more easily",
};

/**
 * What a published scheme calls the burn potential of a source by its partial salt index, with the finding that says so.
 *
 * The index ranks materials at equal nutrient; its sources say that it does not predict injury on a
 * given soil, so no finding is no all-clear. Schemes disagree ({@link burnSchemes}): where none is named, an index out of
 * the turf list is sorted by that list, every other by the table of Oregon State University, which sorts indexes
 * per unit of N.
 *
 * The figure depends on what counts as a unit: potassium nitrate reads 5.3 by N, 1.6 by K2O and 1.2 by both. An index on
 * a basis that a scheme does not use gets no class from it, and `notChecked` says on which basis to state it.
 *
 * @param partial - the index per unit, from a table or made by `saltIndex`
 * @param options.scheme - a name of {@link burnSchemes}
 * @throws RatewrightError `conflict` for an index on another scale; `type`, `range`
 *
 * Source: Oregon State University, table 26-2, burn potential; list after McCarty 2001 in a turf agronomy company
 * article: above 1.5 per unit is high.
 *
 * @example
 * ```ts
 * import { burnRisk, oregonSaltIndexes, tabulatedSaltIndex, turfListSaltIndexes } from "ratewright";
 * burnRisk(tabulatedSaltIndex(oregonSaltIndexes, "urea")).class; // => "moderate"
 * burnRisk(tabulatedSaltIndex(turfListSaltIndexes, "urea")).class; // => "high"
 * burnRisk(tabulatedSaltIndex(oregonSaltIndexes, "sulfur-coated urea")).findings; // => []
 * ```
 */
export const burnRisk = (
  partial: SaltIndex<"per unit">,
  options: { readonly scheme?: BurnSchemeName } = {},
): BurnRisk => {
  expectFields(options, ["scheme"], "options");
  const index = checkedSaltIndex(partial, "per unit", "partial");
  const scheme =
    options.scheme === undefined
      ? schemeOf(index.source)
      : expectOneOf(options.scheme, Object.keys(burnSchemes) as BurnSchemeName[], "options.scheme");
  const rules = burnSchemes[scheme];
  const sorted = rules.bases.includes(index.basis);
  const found = sorted ? classOf(index.value, rules) : undefined;
  const value = Number(index.value.toPrecision(3));
  const findings: Finding[] = [];
  if (found === "moderate" || found === "high") {
    findings.push({
      code: `salt/${found}`,
      severity: found === "high" ? "caution" : "note",
      path: "partial",
      params: { value: index.value, class: found, scheme, basis: index.basis },
      text: `A salt index of ${value} per unit of ${index.basis} is ${classTexts[found]}, by ${rules.source.title}.`,
      source: rules.source,
    });
  }
  if (index.doubtful !== undefined) {
    findings.push({
      code: "salt/doubtful-figure",
      severity: "note",
      path: "partial.value",
      params: { value: index.value },
      text: `The printed index is in doubt: ${index.doubtful}.`,
      source: index.source,
    });
  }
  return {
    type: "burn-risk",
    version: 1,
    ...(found === undefined ? {} : { class: found }),
    scheme,
    findings,
    checked: found === undefined ? [] : [`salt index per unit of ${index.basis} by ${scheme}`],
    notChecked: [
      ...(sorted
        ? []
        : [`the index per unit of ${index.basis}: ${scheme} sorts per unit of ${rules.bases.join(", ")}`]),
      ...(sorted && found === undefined
        ? [`${value} per unit of ${index.basis}: it lies between two classes of ${scheme}`]
        : []),
      otherRisks,
      "injury on this soil, which the index does not predict",
    ],
  };
};

/** Liquid nitrogen sources of the burn study, from the one that burned most to the one that burned least. */
export const foliarBurnOrder: readonly ["urea", "formaldehyde-urea solution", "triazone solution"] =
  /* @__PURE__ */ frozen(["urea", "formaldehyde-urea solution", "triazone solution"]);

/** A liquid nitrogen source of the burn study. */
export type FoliarSource = (typeof foliarBurnOrder)[number];

/**
 * What a field study says of burn by liquid nitrogen on the leaf: at 1 lb N per 1000 ft2 in 1, 2 or
 * 4 gal of water, in hot weather, urea burned most at every volume; a formaldehyde-urea solution burned
 * in 1 gal; a triazone-type solution did no appreciable damage.
 *
 * The study speaks of 1 lb N and 1 to 4 gal per 1000 ft2 on irrigated Kentucky bluegrass in July and
 * August. A higher rate, or less water, gets its finding too; a lower rate or more water is listed as
 * not checked.
 *
 * @param input.source - the liquid, or `"other"`
 * @param input.nitrogen - its rate
 * @param input.volume - spray volume
 * @throws RatewrightError `type`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: Agnew and Moore, "Fertilizer burn study", Iowa State University turf research report 1989, p. 69
 * (abstract).
 *
 * @example
 * ```ts
 * import { foliarBurnRisk, quantity } from "ratewright";
 * const risk = foliarBurnRisk({
 *   source: "urea",
 *   nitrogen: quantity(1, "lb/1000 ft2", "N"),
 *   volume: quantity(2, "gal/1000 ft2", "spray"),
 * });
 * risk.findings.map(({ code }) => code); // => ["salt/foliar-burn"]
 * ```
 */
export const foliarBurnRisk = (input: {
  readonly source: FoliarSource | "other";
  readonly nitrogen: Quantity<"mass/area", "N">;
  readonly volume: Quantity<"volume/area", "spray">;
}): BurnRisk => {
  expectFields(input, ["source", "nitrogen", "volume"], "input");
  const { source, nitrogen, volume } = allOf({
    source: () => expectOneOf(input.source, [...foliarBurnOrder, "other"], "source"),
    nitrogen: () =>
      expectQuantity(input.nitrogen, { dimension: "mass/area", of: "N", bound: "positive" }, "nitrogen").in(
        "lb/1000 ft2",
      ),
    volume: () =>
      expectQuantity(input.volume, { dimension: "volume/area", of: "spray", bound: "positive" }, "volume").in(
        "gal/1000 ft2",
      ),
  });
  const rank = source === "other" ? -1 : foliarBurnOrder.indexOf(source);
  // A salt burns more at a higher rate and in less water, so that each result reaches one way only.
  const strong = !exceeds(1, nitrogen);
  const burned = strong && !exceeds(volume, ([4, 1] as const)[rank] ?? 0);
  const unhurt = source === "triazone solution" && !exceeds(nitrogen, 1) && !exceeds(1, volume);
  const findings: Finding[] = [];
  if (burned) {
    findings.push({
      code: "salt/foliar-burn",
      severity: "warning",
      path: "source",
      params: { source, nitrogen, volume },
      text:
        source === "urea"
          ? "At 1 lb N per 1000 ft2 in hot weather urea burned leaves most at 1, 2 and 4 gal per 1000 ft2."
          : "At 1 lb N per 1000 ft2 in hot weather a urea-formaldehyde solution burned leaves in 1 gal per 1000 ft2.",
      source: iowa,
    });
  }
  const known = burned || unhurt;
  const notChecked = [
    otherRisks,
    "another grass, another season: the study had Kentucky bluegrass in July and August",
  ];
  if (!known && rank >= 0) {
    notChecked.unshift(
      source === "formaldehyde-urea solution"
        ? "this rate and volume: the study had 1 lb N in 1 to 4 gal per 1000 ft2, and reports burn of this solution for 1 gal only"
        : "this rate and volume: the study had 1 lb N in 1 to 4 gal per 1000 ft2",
    );
  }
  if (rank < 0) notChecked.unshift("this source: the study had three others");
  return {
    type: "burn-risk",
    version: 1,
    findings,
    checked: known ? ["leaf burn against one field study"] : [],
    notChecked,
  };
};
