import { formulaWeight } from "../../nutrient/index.js";
import { hasOwn } from "../../quantity/house.js";
import {
  allOf,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { acidForms } from "./acid-forms.js";

/** Acids, by their formulas, checked by the molar masses that handbooks print. */
const acids = {
  "2,4-D": { C: 8, H: 6, Cl: 2, O: 3 },
  "2,4-DB": { C: 10, H: 10, Cl: 2, O: 3 },
  "dichlorprop-P": { C: 9, H: 8, Cl: 2, O: 3 },
  MCPA: { C: 9, H: 9, Cl: 1, O: 3 },
  "mecoprop-P": { C: 10, H: 11, Cl: 1, O: 3 },
  dicamba: { C: 8, H: 6, Cl: 2, O: 3 },
  triclopyr: { C: 7, H: 4, Cl: 3, N: 1, O: 3 },
  clopyralid: { C: 6, H: 3, Cl: 2, N: 1, O: 2 },
  aminopyralid: { C: 6, H: 4, Cl: 2, N: 2, O: 2 },
  fluroxypyr: { C: 7, H: 5, Cl: 2, F: 1, N: 2, O: 3 },
  quinclorac: { C: 10, H: 5, Cl: 2, N: 1, O: 2 },
  glyphosate: { C: 3, H: 8, N: 1, O: 5, P: 1 },
} as const;

/** What a salt or an ester has more than its acid: a cation stands for a hydrogen, an alcohol gives off water. */
const partners = {
  sodium: { Na: 1, H: -1 },
  potassium: { K: 1, H: -1 },
  ammonium: { N: 1, H: 3 },
  diammonium: { N: 2, H: 6 },
  dimethylammonium: { C: 2, H: 7, N: 1 },
  isopropylammonium: { C: 3, H: 9, N: 1 },
  triethylammonium: { C: 6, H: 15, N: 1 },
  diglycolammonium: { C: 4, H: 11, N: 1, O: 2 },
  olamine: { C: 2, H: 7, N: 1, O: 1 },
  diolamine: { C: 4, H: 11, N: 1, O: 2 },
  choline: { C: 5, H: 13, N: 1, O: 1 },
  "2-ethylhexyl": { C: 8, H: 16 },
  meptyl: { C: 8, H: 16 },
  butotyl: { C: 6, H: 12, O: 1 },
} as const;

/** The acids whose salts and esters are known here, by ISO common name. */
export type HerbicideAcid = keyof typeof acids;

/**
 * A salt (sodium to choline) or an ester (2-ethylhexyl, meptyl, butotyl), by the ISO name. Labels also say
 * dimethylamine, isopropylamine or triethylamine salt for `...ammonium`, diglycolamine for
 * `diglycolammonium`, monoethanolamine for `olamine`, diethanolamine for `diolamine`, isooctyl for
 * `2-ethylhexyl`, 1-methylheptyl for `meptyl` and butoxyethyl for `butotyl`.
 */
export type AcidPartner = keyof typeof partners;

/**
 * How much acid a salt or an ester stands for, `M(acid) / M(salt)`, from the formulas and the atomic
 * weights: `M(salt) = M(acid) + M(base)` (a metal or choline takes the place of a hydrogen), `M(ester) = M(acid) +
 * M(alcohol) - M(water)`. A label that states both wins over the computed figure.
 *
 * @throws RatewrightError `type` for an acid or a partner that is not known; `conflict` for a pair that is no known
 * form of the acid ({@link acidForms}), with the forms that are
 * Source: IUPAC atomic weights; molar masses of 2,4-D, MCPA, dicamba and their salts and esters as the entries
 * of a pesticide handbook print them (dicamba 221.0, its dimethylammonium salt 266.1); labels of 2,4-D salts, of
 * triclopyr butotyl and of glyphosate dimethylammonium, which print both.
 *
 * @example
 * ```ts
 * import { acidShare } from "ratewright";
 * Number(acidShare("2,4-D", "dimethylammonium").in("% w/w").toFixed(2)); // => 83.06
 * Number(acidShare("glyphosate", "isopropylammonium").in("% w/w").toFixed(1)); // => 74.1
 * acidShare("quinclorac", "butotyl"); // => throws conflict
 * ```
 */
export const acidShare = (acid: HerbicideAcid, partner: AcidPartner): Quantity<"mass/mass", "ae/ai"> => {
  allOf({
    acid: () => oneOf(acid, "acid", acids),
    partner: () => oneOf(partner, "partner", partners),
  });
  const forms = acidForms.filter((form) => form.acid === acid).map((form) => form.partner);
  if (!forms.includes(partner)) {
    fail("conflict", "partner", partner, `a known form of ${acid}: ${forms.join(", ")}`);
  }
  const weight = formulaWeight(acids[acid]);
  return quantity((100 * weight) / (weight + formulaWeight(partners[partner])), "% w/w", "ae/ai");
};

const oneOf = (name: string, path: string, known: object): void => {
  if (typeof name === "string" && hasOwn(known, name)) return;
  fail("type", path, name, `one of ${Object.keys(known).join(", ")}`);
};

/**
 * Active ingredient as acid equivalent, `ae = ai * share`, for an amount, a rate per area or a weight per
 * volume. A content of a product, `ai/product`, becomes `ae/product` by `content.times(share)`.
 *
 * @param active - of `ai`, with the id of the active ingredient or without; the result keeps it
 * @param share - acid in the active ingredient: from the label, or `acidShare`
 * @throws RatewrightError `missing`, `range` for a share of nothing or above 100 %, `unit/mismatch`,
 * `substance/mismatch`
 * Source: definition of the acid equivalent.
 *
 * @example
 * ```ts
 * import { acidEquivalentOf, acidShare, quantity } from "ratewright";
 * const share = acidShare("2,4-D", "dimethylammonium");
 * const ae = acidEquivalentOf(quantity(4.58, "lb/gal", "ai"), share);
 * Number(ae.in("lb/gal").toFixed(2)); // => 3.8
 * ```
 */
export const acidEquivalentOf = <D extends AcidMeasure, const S extends "ai" | `ai:${string}`>(
  active: Quantity<D, S>,
  share: Quantity<"mass/mass", "ae/ai">,
): Quantity<D, AcidOf<S>> => {
  const { q, percent } = read(active, "active", "ai", share);
  return quantityOf<D, AcidOf<S>>((q.value * percent) / 100, q.unit, q.of.replace("ai", "ae"), "active");
};

/**
 * Acid equivalent as active ingredient, `ai = ae / share`: {@link acidEquivalentOf} the other way round.
 *
 * @throws RatewrightError as {@link acidEquivalentOf}
 * Source: definition of the acid equivalent.
 *
 * @example
 * ```ts
 * import { activeOfAcid, quantity } from "ratewright";
 * const label = quantity(75, "% w/w", "ae/ai");
 * activeOfAcid(quantity(3, "lb/acre", "ae"), label).in("lb/acre"); // => 4
 * ```
 */
export const activeOfAcid = <D extends AcidMeasure, const S extends "ae" | `ae:${string}`>(
  acid: Quantity<D, S>,
  share: Quantity<"mass/mass", "ae/ai">,
): Quantity<D, ActiveOf<S>> => {
  const { q, percent } = read(acid, "acid", "ae", share);
  return quantityOf<D, ActiveOf<S>>((q.value * 100) / percent, q.unit, q.of.replace("ae", "ai"), "acid");
};

/** The acid of an active ingredient, with its id. */
export type AcidOf<S extends string> = S extends `ai:${infer Id}` ? `ae:${Id}` : "ae";

/** The active ingredient of an acid, with its id. */
export type ActiveOf<S extends string> = S extends `ae:${infer Id}` ? `ai:${Id}` : "ai";

/** What active ingredient and acid equivalent may be measured in. */
export type AcidMeasure = "mass" | "mass/area" | "mass/volume";

/** Reads both arguments and tells the problems of both. */
const read = (
  input: unknown,
  path: string,
  of: "ai" | "ae",
  share: unknown,
): { readonly q: Quantity<AcidMeasure, string>; readonly percent: number } => {
  return allOf({ q: () => massOf(input, path, of), percent: () => shareOfAcid(share) });
};

const massOf = (input: unknown, path: string, of: "ai" | "ae"): Quantity<AcidMeasure, string> => {
  const unit = (input as { readonly unit?: unknown } | null | undefined)?.unit;
  if (typeof unit !== "string") return fail("missing", path, input, `a quantity of ${of}`);
  const given = input as { value: number; of?: string };
  const { dimension } = quantityOf(given.value, unit, given.of ?? "none", path);
  if (dimension !== "mass" && dimension !== "mass/area" && dimension !== "mass/volume") {
    return fail("unit/mismatch", path, input, "a mass, a mass per area or a mass per volume");
  }
  const q = expectQuantity(input, { dimension: dimension as AcidMeasure, bound: "non-negative" }, path);
  return q.of === of || q.of.startsWith(`${of}:`)
    ? q
    : fail("substance/mismatch", path, q, `a quantity of ${of}`);
};

const shareOfAcid = (input: unknown): number => {
  if (input === undefined || input === null)
    fail("missing", "share", input, "the acid in the active ingredient");
  const share = expectQuantity(input, { dimension: "mass/mass", of: "ae/ai", bound: "positive" }, "share");
  const percent = share.in("% w/w");
  return percent > 100 ? outOfRange("share", share, { max: 100, unit: "%" }) : percent;
};
