import { type Citation, checks, fail, type Quantity, quantity } from "../../quantity/index.js";
import { carbonateOf } from "./hardness.js";
import { type InWater, inWater } from "./in-water.js";

/** The cations of the equation, each with its pounds of ammonium sulfate per 100 gal and ppm. */
export const sulfateCoefficients = { K: 0.002, Na: 0.005, Ca: 0.009, Mg: 0.014, Fe: 0.042 } as const;

/** A cation that takes up sulfate. */
export type HardnessIon = keyof typeof sulfateCoefficients;

/** Cations of a water test; what is left out was not tested. */
export type WaterIons = { readonly [I in HardnessIon]?: InWater<I> };

/** Ammonium sulfate in the spray. */
export type AmmoniumSulfateRate = Quantity<"mass/volume", "product:ammonium-sulfate/spray">;

/** What the cation equation says. */
export interface AmmoniumSulfateMinimum {
  readonly type: "ammonium-sulfate-minimum";
  readonly version: 1;
  /** The minimum by the equation; it goes into `amountFor` or `loadAmounts` as a rate per volume. */
  readonly minimum: AmmoniumSulfateRate;
  /** What each cation takes, in lb per 100 US gallons. */
  readonly poundsPer100Gallons: Readonly<Partial<Record<HardnessIon, number>>>;
  /** Cations that the test does not give: the minimum may be higher by what they take. */
  readonly notCounted: readonly HardnessIon[];
  readonly text: string;
  readonly source: Citation;
}

const source: Citation = {
  title:
    "Equation Used to Calculate Rate of AMS, Crop & Pest Report, 2 July 2015 (equation of Nalewaja and Matysiak, 1993)",
  publisher: "North Dakota State University Extension",
  year: 2015,
  url: "https://www.ag.ndsu.edu/cpr/weeds/equation-used-to-calculate-rate-of-ams-07-02-15",
};

const rate = (poundsPer100Gallons: number): AmmoniumSulfateRate =>
  quantity(poundsPer100Gallons / 100, "lb/gal", "product:ammonium-sulfate/spray");

/**
 * The least ammonium sulfate that overcomes the cations of a hard water, by the published equation:
 * `lb per 100 US gal = 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe`, each in ppm of the ion.
 *
 * It is a minimum by that equation, not the need: its authors advise 4 to 6 lb per 100 gal, for ammonium
 * also helps many herbicides, and labels ask for 8.5 to 17. The label wins. A cation that is left out is
 * listed in `notCounted`, not taken as zero in silence.
 *
 * @param ions - `K`, `Na`, `Ca`, `Mg`, `Fe` in the water, zero or more, as mg/L or ppm w/w; at least one
 * @throws RatewrightError for every cation: `missing` (none at all), `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: North Dakota State University Extension, Crop & Pest Report (2015), after Nalewaja and Matysiak
 * (1993); Purdue University prints the same.
 *
 * @example
 * ```ts
 * import { ammoniumSulfateMinimum, quantity } from "ratewright";
 * const need = ammoniumSulfateMinimum({
 *   Ca: quantity(100, "mg/L", "Ca"),
 *   Mg: quantity(40, "mg/L", "Mg"),
 *   Na: quantity(50, "mg/L", "Na"),
 *   K: quantity(10, "mg/L", "K"),
 * });
 * Number((need.minimum.in("lb/gal") * 100).toFixed(4)); // => 1.73
 * need.notCounted; // => ["Fe"]
 * ```
 */
export const ammoniumSulfateMinimum = (ions: WaterIons): AmmoniumSulfateMinimum => {
  if (typeof ions !== "object" || ions === null) return fail("type", "ions", ions, "cations of a water test");
  const pounds: Partial<Record<HardnessIon, number>> = {};
  const notCounted: HardnessIon[] = [];
  let total = 0;
  const door = checks();
  for (const [name, coefficient] of Object.entries(sulfateCoefficients)) {
    const ion = name as HardnessIon;
    const given = ions[ion];
    if (given === undefined) {
      notCounted.push(ion);
      continue;
    }
    const part = coefficient * (door.run(() => inWater(given, ion, ion)) ?? 0);
    pounds[ion] = part;
    total += part;
  }
  door.done();
  if (notCounted.length === 5) fail("missing", "ions", ions, "at least one of K, Na, Ca, Mg and Fe");
  const minimum = rate(total);
  return {
    type: "ammonium-sulfate-minimum",
    version: 1,
    minimum,
    poundsPer100Gallons: pounds,
    notCounted,
    text: `By the published equation at least ${Number(total.toPrecision(3))} lb of ammonium sulfate per 100 gal (${Number((minimum.in("g/L") * 100).toPrecision(3))} g per 100 L) for the cations tested${notCounted.length > 0 ? `; ${notCounted.join(", ")} not tested` : ""}. That is a minimum by the equation, not the need: its authors advise 4 to 6 lb, labels ask for more.`,
    source,
  };
};

/**
 * The least ammonium sulfate by the cation equation where only the hardness is known: a range, from all of
 * it magnesium (`0.014 / 4.118` lb per 100 gal and mg/L) to all of it calcium (`0.009 / 2.497`). Sodium,
 * potassium and iron are not in a hardness, and come on top.
 *
 * @param hardness - as CaCO3, zero or more
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: derived from the equation in {@link ammoniumSulfateMinimum} and molar masses.
 *
 * @example
 * ```ts
 * import { ammoniumSulfateFromHardness, quantity } from "ratewright";
 * const { min, max } = ammoniumSulfateFromHardness(quantity(300, "mg/L", "hardness as CaCO3"));
 * [min, max].map((each) => Number((each.in("lb/gal") * 100).toFixed(2))); // => [1.02, 1.08]
 * ```
 */
export const ammoniumSulfateFromHardness = (
  hardness: InWater<"hardness as CaCO3">,
): { readonly min: AmmoniumSulfateRate; readonly max: AmmoniumSulfateRate } => {
  const total = inWater(hardness, "hardness as CaCO3", "hardness");
  const each = (["Ca", "Mg"] as const).map((ion) => (total / carbonateOf(ion)) * sulfateCoefficients[ion]);
  return { min: rate(Math.min(...each)), max: rate(Math.max(...each)) };
};
