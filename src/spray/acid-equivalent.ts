import { formulaWeight } from "../nutrient/index.js";
import { expectQuantity, fail, type Quantity, quantity, quantityOf } from "../quantity/index.js";

/** Acids, by their formulas (from memory; the molar masses that follow are those that labels and handbooks print). */
const acids = {
  "2,4-D": { C: 8, H: 6, Cl: 2, O: 3 },
  "2,4-DP-P": { C: 9, H: 8, Cl: 2, O: 3 },
  MCPA: { C: 9, H: 9, Cl: 1, O: 3 },
  "mecoprop-P": { C: 10, H: 11, Cl: 1, O: 3 },
  dicamba: { C: 8, H: 6, Cl: 2, O: 3 },
  triclopyr: { C: 7, H: 4, Cl: 3, N: 1, O: 3 },
  clopyralid: { C: 6, H: 3, Cl: 2, N: 1, O: 2 },
  glyphosate: { C: 3, H: 8, N: 1, O: 5, P: 1 },
} as const;

/** What a salt or an ester has more than its acid; a cation stands for a hydrogen, an alcohol gives off water. */
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
  choline: { C: 5, H: 13, N: 1, O: 1 },
  "2-ethylhexyl": { C: 8, H: 16 },
  butotyl: { C: 6, H: 12, O: 1 },
} as const;

/** The acids whose salts and esters are known here, by ISO common name. */
export type HerbicideAcid = keyof typeof acids;

/** A salt (sodium to choline) or an ester (2-ethylhexyl, butotyl). */
export type AcidPartner = keyof typeof partners;

/**
 * How much acid a salt or an ester stands for, `M(acid) / M(salt)`, from the formulas and the atomic
 * weights. A label that states both wins over the computed figure.
 *
 * @throws RatewrightError `type` for an acid or a partner that is not known
 * Source: molar masses from IUPAC atomic weights; 2,4-D dimethylammonium 221.04 / 266.12 is 0.8306 (from
 * memory).
 *
 * @example
 * ```ts
 * import { acidShare } from "ratewright";
 * Number(acidShare("2,4-D", "dimethylammonium").in("% w/w").toFixed(2)); // => 83.06
 * Number(acidShare("glyphosate", "isopropylammonium").in("% w/w").toFixed(1)); // => 74.1
 * ```
 */
export const acidShare = (acid: HerbicideAcid, partner: AcidPartner): Quantity<"mass/mass", "ae/ai"> => {
  if (!Object.hasOwn(acids, acid)) fail("type", "acid", acid, Object.keys(acids).join(", "));
  if (!Object.hasOwn(partners, partner)) fail("type", "partner", partner, Object.keys(partners).join(", "));
  const weight = formulaWeight(acids[acid]);
  return quantity((100 * weight) / (weight + formulaWeight(partners[partner])), "% w/w", "ae/ai");
};

/**
 * Active ingredient as acid equivalent, `ae = ai * share`, for an amount, a rate per area or a weight per
 * volume.
 *
 * @param active - of `ai`
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
export const acidEquivalentOf = <D extends AcidMeasure>(
  active: Quantity<D, "ai">,
  share: Quantity<"mass/mass", "ae/ai">,
): Quantity<D, "ae"> => {
  const q = massOf(active, "active", "ai");
  return quantityOf((q.value * shareOfAcid(share)) / 100, q.unit, "ae", "active") as unknown as Quantity<
    D,
    "ae"
  >;
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
export const activeOfAcid = <D extends AcidMeasure>(
  acid: Quantity<D, "ae">,
  share: Quantity<"mass/mass", "ae/ai">,
): Quantity<D, "ai"> => {
  const q = massOf(acid, "acid", "ae");
  return quantityOf((q.value * 100) / shareOfAcid(share), q.unit, "ai", "acid") as unknown as Quantity<
    D,
    "ai"
  >;
};

/** What active ingredient and acid equivalent may be measured in. */
export type AcidMeasure = "mass" | "mass/area" | "mass/volume";

const massOf = (input: unknown, path: string, of: "ai" | "ae"): Quantity<AcidMeasure, "ai" | "ae"> => {
  const unit = (input as { readonly unit?: unknown } | null | undefined)?.unit;
  if (typeof unit !== "string") return fail("missing", path, input, `a quantity of ${of}`);
  const given = input as { value: number; of?: string };
  const { dimension } = quantityOf(given.value, unit, given.of ?? "none", path);
  if (dimension !== "mass" && dimension !== "mass/area" && dimension !== "mass/volume") {
    return fail("unit/mismatch", path, input, "a mass, a mass per area or a mass per volume");
  }
  return expectQuantity(input, { dimension: dimension as AcidMeasure, of, bound: "non-negative" }, path);
};

const shareOfAcid = (input: unknown): number => {
  if (input === undefined || input === null)
    fail("missing", "share", input, "the acid in the active ingredient");
  const share = expectQuantity(input, { dimension: "mass/mass", of: "ae/ai", bound: "positive" }, "share");
  const percent = share.in("% w/w");
  return percent > 100 ? fail("range", "share", share, "100 % or less") : percent;
};
