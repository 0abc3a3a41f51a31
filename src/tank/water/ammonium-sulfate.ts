import {
  allOf,
  type Citation,
  expectFields,
  fail,
  frozen,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { textOf } from "../inputs.js";
import { carbonateOf } from "./hardness.js";
import { type InWater, inWater } from "./in-water.js";

/** The cations of the equation, each with its pounds of ammonium sulfate per 100 gal and ppm. */
export const sulfateCoefficients: {
  readonly K: 0.002;
  readonly Na: 0.005;
  readonly Ca: 0.009;
  readonly Mg: 0.014;
  readonly Fe: 0.042;
} = /* @__PURE__ */ frozen({ K: 0.002, Na: 0.005, Ca: 0.009, Mg: 0.014, Fe: 0.042 });

/** A cation that takes up sulfate. */
export type HardnessIon = keyof typeof sulfateCoefficients;

/** Cations of a water test; what is left out was not tested. */
export type WaterIons = { readonly [I in HardnessIon]?: InWater<I> };

/** Ammonium sulfate in the spray, as a product of a mix. */
export type AmmoniumSulfateRate<Id extends string = "ammonium-sulfate"> = Quantity<
  "mass/volume",
  `product:${Id}/spray`
>;

/** What the cation equation says. */
export interface AmmoniumSulfateMinimum<Id extends string = "ammonium-sulfate"> {
  readonly type: "ammonium-sulfate-minimum";
  readonly version: 1;
  /** The minimum by the equation. */
  readonly minimum: AmmoniumSulfateRate<Id>;
  /** The same as a product of a mix: it goes into the `products` of `loadAmounts` as it is. */
  readonly product: { readonly id: Id; readonly rate: AmmoniumSulfateRate<Id>; readonly form: "dry" };
  /** What each cation takes, in lb per 100 US gallons. */
  readonly poundsPer100Gallons: Readonly<Partial<Record<HardnessIon, number>>>;
  /** Cations that the test does not give: the minimum may be higher by what they take. */
  readonly notCounted: readonly HardnessIon[];
  readonly text: string;
  readonly source: Citation;
}

const names: readonly HardnessIon[] = ["K", "Na", "Ca", "Mg", "Fe"];

const source: Citation = /* @__PURE__ */ frozen({
  title: "Equation Used to Calculate Rate of AMS, Crop & Pest Report, 2 July 2015",
  publisher: "North Dakota State University Extension",
  year: 2015,
  url: "https://www.ag.ndsu.edu/cpr/weeds/equation-used-to-calculate-rate-of-ams-07-02-15",
});

const rate = <Id extends string>(poundsPer100Gallons: number, id: Id): AmmoniumSulfateRate<Id> =>
  quantityOf<"mass/volume", `product:${Id}/spray`>(
    poundsPer100Gallons / 100,
    "lb/gal",
    `product:${id}/spray`,
    "ions",
  );

/**
 * The least ammonium sulfate that overcomes the cations of a hard water, by the published equation:
 * `lb per 100 US gal = 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe`, each in ppm of the ion.
 *
 * It is a minimum by that equation, not the need: its authors advise 4 to 6 lb per 100 gal, for ammonium
 * also helps many herbicides, and labels ask for 8.5 to 17. The label wins. A cation that is left out is
 * listed in `notCounted`, not taken as zero in silence.
 *
 * @param ions - `K`, `Na`, `Ca`, `Mg`, `Fe` in the water, zero or more, as mg/L or ppm w/w; at least one. What
 *   `expectWaterTest` calls a water test may go in whole
 * @param options - `product`, the id that the ammonium sulfate has in the mix; `"ammonium-sulfate"` where left out
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
 * const named = ammoniumSulfateMinimum({ Ca: quantity(100, "mg/L", "Ca") }, { product: "ams" });
 * named.product.rate.of; // => "product:ams/spray"
 * ```
 */
export const ammoniumSulfateMinimum = <const Id extends string = "ammonium-sulfate">(
  ions: WaterIons,
  options: { readonly product?: Id } = {},
): AmmoniumSulfateMinimum<Id> => {
  const test = expectFields(ions, [...names, "pH", "hardness", "HCO3"], "ions", "cations of a water test");
  const given = expectFields(options, ["product"], "options");
  const { id, ...parts } = allOf({
    // Where it is left out, the type parameter is that of the default.
    id: () =>
      (given.product === undefined
        ? "ammonium-sulfate"
        : textOf(given.product, "options.product", "the id of the ammonium sulfate in the mix")) as Id,
    ...(Object.fromEntries(
      names.map((ion) => [
        ion,
        () => (test[ion] === undefined ? undefined : sulfateCoefficients[ion] * inWater(test[ion], ion, ion)),
      ]),
    ) as Readonly<Record<HardnessIon, () => number | undefined>>),
  });
  const notCounted = names.filter((ion) => parts[ion] === undefined);
  if (notCounted.length === names.length)
    fail("missing", "ions", ions, "at least one of K, Na, Ca, Mg and Fe");
  const pounds: Readonly<Partial<Record<HardnessIon, number>>> = Object.fromEntries(
    names.flatMap((ion) => (parts[ion] === undefined ? [] : [[ion, parts[ion]]])),
  );
  const total = names.reduce((sum, ion) => sum + (parts[ion] ?? 0), 0);
  const minimum = rate(total, id);
  return {
    type: "ammonium-sulfate-minimum",
    version: 1,
    minimum,
    product: { id, rate: minimum, form: "dry" },
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
  const [least, most] = [Math.min(...each), Math.max(...each)];
  return { min: rate(least, "ammonium-sulfate"), max: rate(most, "ammonium-sulfate") };
};
