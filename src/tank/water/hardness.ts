import { atomicWeights, formulaWeight } from "../../nutrient/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  fail,
  frozen,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type InWater, inWater } from "./in-water.js";

/** Milligrams of calcium carbonate that one milligram of an ion stands for. */
export const carbonateOf = (ion: "Ca" | "Mg"): number =>
  formulaWeight({ Ca: 1, C: 1, O: 3 }) / atomicWeights[ion];

/**
 * The hardness of water from its calcium and magnesium: `hardness = 2.497 Ca + 4.118 Mg`, mg/L as CaCO3
 * from mg/L of the ions. The factors are molar masses, `M(CaCO3) / M(Ca)` and `M(CaCO3) / M(Mg)`; other ions
 * (iron, manganese) are left out, as is usual.
 *
 * Hardness as a quantity reads in any unit: a grain per US gallon is 17.118 mg/L, a grain per imperial
 * gallon (`grain/imp gal`) 14.254 mg/L. Say which gallon a test means.
 *
 * @param ions - `Ca` and `Mg` in the water, zero or more, as `mg/L`, `grain/gal` or `ppm w/w`; both are
 *   needed, for a missing one is not zero
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: definition; atomic weights of IUPAC (2021). The factors are printed as 2.497 and 4.115 to 4.118.
 *
 * @example
 * ```ts
 * import { hardnessFromIons, quantity } from "ratewright";
 * const hardness = hardnessFromIons({ Ca: quantity(80, "mg/L", "Ca"), Mg: quantity(20, "mg/L", "Mg") });
 * Number(hardness.in("mg/L").toFixed(1)); // => 282.1
 * Number(hardness.in("grain/gal").toFixed(2)); // => 16.48
 * ```
 */
export const hardnessFromIons = (ions: {
  readonly Ca: InWater<"Ca">;
  readonly Mg: InWater<"Mg">;
}): Quantity<"mass/volume", "hardness as CaCO3"> => {
  expectFields(ions, ["Ca", "Mg"], "ions");
  const read = (ion: "Ca" | "Mg"): number => {
    const given = ions[ion];
    if (given === undefined) fail("missing", ion, given, `an amount of ${ion} in water`);
    return inWater(given, ion, ion) * carbonateOf(ion);
  };
  const { Ca, Mg } = allOf({ Ca: () => read("Ca"), Mg: () => read("Mg") });
  return quantity(Ca + Mg, "mg/L", "hardness as CaCO3");
};

/** A list of hardness classes, by who prints it. */
export interface HardnessScheme {
  readonly source: Citation;
  /** Classes from soft to hard, with the highest whole mg/L as CaCO3 of each; the last has no limit. */
  readonly classes: readonly { readonly name: string; readonly upTo?: number }[];
}

/** Published classes of hardness. They do not agree: 150 mg/L is hard in one and moderately hard in the other. */
export const hardnessSchemes: Readonly<Record<"USGS" | "Vermont", HardnessScheme>> = /* @__PURE__ */ frozen({
  USGS: {
    source: {
      title: "Do you have information about water hardness in the United States?",
      publisher: "US Geological Survey",
      url: "https://usgs.gov/faqs/do-you-have-information-about-water-hardness-united-states?qt-news_science_products=3",
    },
    classes: [
      { name: "soft", upTo: 60 },
      { name: "moderately hard", upTo: 120 },
      { name: "hard", upTo: 180 },
      { name: "very hard" },
    ],
  },
  Vermont: {
    source: {
      title: "Water hardness (classes below 75, 76-150, 151-300, above 300)",
      publisher: "Vermont Department of Health",
    },
    classes: [
      { name: "soft", upTo: 75 },
      { name: "moderately hard", upTo: 150 },
      { name: "hard", upTo: 300 },
      { name: "very hard" },
    ],
  },
});

/** Whose classes of hardness. */
export type HardnessSchemeId = keyof typeof hardnessSchemes;

/**
 * The class of hardness of a water, by a named list. The lists print whole mg/L as CaCO3 with a gap of one
 * between classes (0-60, 61-120), so a hardness is rounded to whole mg/L first.
 *
 * @param hardness - as CaCO3, zero or more
 * @param scheme - whose classes: the same water is classed differently
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: US Geological Survey; Vermont Department of Health.
 *
 * @example
 * ```ts
 * import { hardnessClass, quantity } from "ratewright";
 * const water = quantity(150, "mg/L", "hardness as CaCO3");
 * hardnessClass(water, "USGS"); // => "hard"
 * hardnessClass(water, "Vermont"); // => "moderately hard"
 * ```
 */
export const hardnessClass = (hardness: InWater<"hardness as CaCO3">, scheme: HardnessSchemeId): string => {
  const whole = Math.round(inWater(hardness, "hardness as CaCO3", "hardness"));
  const list: HardnessScheme | undefined = Object.entries(hardnessSchemes).find(([id]) => id === scheme)?.[1];
  if (list === undefined) {
    return fail("type", "scheme", scheme, "whose classes", { choices: Object.keys(hardnessSchemes) });
  }
  return list.classes.find(({ upTo = Number.POSITIVE_INFINITY }) => whole <= upTo)?.name as string;
};
