import {
  allOf,
  expectAmount,
  expectFields,
  expectQuantity,
  fail,
  perOf,
  Quantity,
  timesOf,
} from "../../quantity/index.js";
import { type Analysis, analysis, percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { isNutrient, type Nutrient, nutrients } from "../label/nutrient.js";
import { eachOf } from "../label/under-path.js";
import { expectTarget } from "../rate/rate-target.js";

/** The density of a liquid product, or an error with its path. */
const densityOf = ({ density }: Fertilizer): Quantity<"mass/volume", "none"> =>
  density ??
  fail(
    "missing",
    "product.density",
    density,
    "the density of the liquid at the temperature at which it is measured out",
  );

/**
 * How much of a nutrient a volume of a liquid fertilizer holds.
 *
 * Equation: `c = d * a / 100`
 *
 * - `c` nutrient, mass per volume
 * - `d` density of the product, mass per volume, at the temperature at which it is measured out
 * - `a` percent of the nutrient in the product BY WEIGHT, as United States labels print it
 *
 * A label in percent weight by volume needs no density: its figure is already a mass per volume
 * (`quantity(18, "% w/v")`), and {@link analysisByWeight} turns it into percent by weight.
 *
 * @throws RatewrightError `missing` where the product has no density; `type` for a nutrient that is none
 *
 * Source: 28 % N at 10.6 lb/gal is 2.97 lb N per gallon (Purdue Extension, "Basic calculations for nitrogen
 * fertilizers").
 *
 * @example
 * ```ts
 * import { fertilizer, nutrientPerVolume, quantity } from "ratewright";
 * const uan = fertilizer({
 *   id: "uan",
 *   form: "liquid",
 *   analysis: "28-0-0",
 *   density: quantity(10.6, "lb/gal"),
 * });
 * nutrientPerVolume(uan, "N").in("lb/gal"); // => 2.968
 * ```
 */
export const nutrientPerVolume = <S extends Nutrient>(
  product: Fertilizer,
  nutrient: S,
): Quantity<"mass/volume", S> => {
  const { label } = allOf({
    label: () => expectFertilizer(product, "product"),
    nutrient: () =>
      isNutrient(nutrient) || fail("type", "nutrient", nutrient, "a nutrient, such as N or P2O5"),
  });
  const density = densityOf(label);
  const value = (density.value * percentOf(label.analysis, nutrient)) / 100;
  return new Quantity(value, density.unit, nutrient, "mass/volume");
};

/**
 * The volume of a liquid fertilizer per area for a target rate of one nutrient.
 *
 * Equation: `V = T * 100 / (a * d)`
 *
 * - `V` product, volume per area
 * - `T` target of the nutrient, mass per area, zero or more
 * - `a` percent of the nutrient in the product by weight; `d` its density, mass per volume
 *
 * @throws RatewrightError `infeasible` where the product contains none of the nutrient; `missing` where it has no
 *   density; `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: 15 lb N per acre from 10-10-10 at 10.69 lb/gal take 14.03 gal per acre ("Liquid fertilizer
 * calculations", vineyard growers' association).
 *
 * @example
 * ```ts
 * import { fertilizer, liquidProductRate, quantity } from "ratewright";
 * const feed = fertilizer({
 *   id: "clear",
 *   form: "liquid",
 *   analysis: "10-10-10",
 *   density: quantity(10.69, "lb/gal"),
 * });
 * const rate = liquidProductRate(quantity(15, "lb/acre", "N"), feed);
 * Number(rate.in("gal/acre").toFixed(2)); // => 14.03
 * ```
 */
export const liquidProductRate = <S extends Nutrient, Id extends string>(
  target: Quantity<"mass/area", S>,
  product: Fertilizer<Id>,
): Quantity<"volume/area", `product:${Id}`> => {
  const { wanted, label } = allOf({
    wanted: () => expectTarget(target, "target"),
    label: () => expectFertilizer(product, "product"),
  });
  const density = densityOf(label);
  const percent = percentOf(label.analysis, wanted.of);
  if (!(percent > 0)) {
    fail("infeasible", "target", target, `a nutrient of ${label.id}, which states 0 % ${wanted.of}`);
  }
  const of = `product:${label.id}` as const;
  const weight = new Quantity((wanted.value * 100) / percent, wanted.unit, of, "mass/area");
  return expectQuantity(perOf(weight, density), { dimension: "volume/area", of }, "rate");
};

/**
 * The weight of a volume of a liquid product, or its rate by weight for a rate by volume.
 *
 * Equation: `m = V * d`, `d` the density of the product, mass per volume.
 *
 * With it `nutrientsSupplied` says what so many gallons brought.
 *
 * @throws RatewrightError `missing` where the product has no density; `substance/mismatch` where the
 *   amount is of another product; `range`, `unit/mismatch`
 *
 * Source: definition of density.
 *
 * @example
 * ```ts
 * import { fertilizer, nutrientsSupplied, quantity, weightOfLiquid } from "ratewright";
 * const uan = fertilizer({
 *   id: "uan",
 *   form: "liquid",
 *   analysis: "28-0-0",
 *   density: quantity(10.6, "lb/gal"),
 * });
 * const weight = weightOfLiquid(quantity(20, "gal/acre", "product:uan"), uan);
 * nutrientsSupplied(weight, uan).N?.in("lb/acre"); // => 59.36
 * ```
 */
export const weightOfLiquid = <D extends "volume" | "volume/area", Id extends string>(
  amount: Quantity<D, `product:${Id}`>,
  product: Fertilizer<Id>,
): Quantity<D extends "volume" ? "mass" : "mass/area", `product:${Id}`> => {
  const label = expectFertilizer(product, "product");
  const given = expectAmount(
    amount,
    { dimensions: ["volume", "volume/area"], of: `product:${label.id}`, bound: "non-negative" },
    "amount",
  );
  // The kind of the result follows from that of the amount, which is known only as the program runs.
  return timesOf(given, densityOf(label)) as never;
};

/**
 * The volume of a weight of a liquid product, or its rate by volume for a rate by weight:
 * `V = m / d`, the inverse of {@link weightOfLiquid}.
 *
 * @throws RatewrightError as {@link weightOfLiquid}
 *
 * Source: definition of density.
 *
 * @example
 * ```ts
 * import { fertilizer, quantity, volumeOfLiquid } from "ratewright";
 * const uan = fertilizer({
 *   id: "uan",
 *   form: "liquid",
 *   analysis: "32-0-0",
 *   density: quantity(11.06, "lb/gal"),
 * });
 * volumeOfLiquid(quantity(1106, "lb", "product:uan"), uan).in("gal"); // => 100
 * ```
 */
export const volumeOfLiquid = <D extends "mass" | "mass/area", Id extends string>(
  amount: Quantity<D, `product:${Id}`>,
  product: Fertilizer<Id>,
): Quantity<D extends "mass" ? "volume" : "volume/area", `product:${Id}`> => {
  const label = expectFertilizer(product, "product");
  const given = expectAmount(
    amount,
    { dimensions: ["mass", "mass/area"], of: `product:${label.id}`, bound: "non-negative" },
    "amount",
  );
  // As in weightOfLiquid.
  return perOf(given, densityOf(label)) as never;
};

/** Nutrients of a label in percent weight by volume: mass of nutrient per volume of product. */
export type NutrientsPerVolume = { readonly [S in Nutrient]?: Quantity<"mass/volume", S> };

/**
 * The analysis by weight of a liquid whose label states percent weight by volume.
 *
 * Equation: `a = c / d * 100`
 *
 * - `a` percent of product by weight
 * - `c` what the label states, mass of nutrient per volume: 18 % w/v is 18 g per 100 mL
 * - `d` density of the product, mass per volume
 *
 * The two kinds of percent differ by the density: at 1.28 kg/L, 28 % by weight is 35.8 % weight by volume.
 *
 * @throws RatewrightError `range` where the nutrients outweigh the product; `unit/mismatch`,
 *   `substance/mismatch`, `missing`
 *
 * Source: definition of density; a UK technical page states 18-9-9 % w/v at 40 L/ha as 7.2-3.6-3.6 kg/ha.
 *
 * @example
 * ```ts
 * import { analysisByWeight, quantity } from "ratewright";
 * const found = analysisByWeight({
 *   perVolume: { N: quantity(18, "% w/v", "N"), P2O5: quantity(9, "% w/v", "P2O5") },
 *   density: quantity(1.2, "kg/L"),
 * });
 * found.percent; // => { N: 15, P2O5: 7.5 }
 * ```
 */
export const analysisByWeight = (input: {
  readonly perVolume: NutrientsPerVolume;
  readonly density: Quantity<"mass/volume", "none">;
}): Analysis => {
  expectFields(input, ["perVolume", "density"], "input");
  const { density, perVolume } = allOf({
    density: () =>
      expectQuantity(input.density, { dimension: "mass/volume", of: "none", bound: "positive" }, "density"),
    perVolume: () => readPerVolume(input.perVolume),
  });
  const percents = eachOf(
    perVolume,
    "perVolume",
    ([nutrient, stated]) => {
      const share = (stated.in("g/L") * 100) / density.in("g/L");
      return share > 100
        ? fail("range", "", stated, "no more of it than the product weighs")
        : ([nutrient, share] as const);
    },
    ([nutrient]) => `perVolume.${nutrient}`,
  );
  const percent: Partial<Record<Nutrient, number>> = Object.fromEntries(percents);
  const element = percent.P !== undefined || percent.K !== undefined;
  return analysis({ basis: element ? "element" : "oxide", percent }, undefined, "perVolume");
};

/** The nutrients of a label in percent weight by volume. */
const readPerVolume = (
  input: unknown,
): readonly (readonly [Nutrient, Quantity<"mass/volume", Nutrient>])[] => {
  const given = expectFields(input, nutrients, "perVolume", "nutrients, each in mass per volume");
  const stated = nutrients.filter((nutrient) => given[nutrient] !== undefined);
  if (stated.length === 0) fail("missing", "perVolume", input, "at least one nutrient");
  return eachOf(
    stated,
    "perVolume",
    (of) =>
      [of, expectQuantity(given[of], { dimension: "mass/volume", of, bound: "non-negative" }, "")] as const,
    (of) => `perVolume.${of}`,
  );
};
