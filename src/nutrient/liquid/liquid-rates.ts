import { expectLiquidDensity } from "../../numeric/house.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectAmount,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  perOf,
  Quantity,
  quantityOf,
  timesOf,
} from "../../quantity/index.js";
import { type Analysis, analysis, percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import {
  expectLiquidFertilizer,
  isLiquidFertilizer,
  type LiquidFertilizer,
  statedPerVolume,
} from "../label/liquid-fertilizer.js";
import { isNutrient, labelByVolume, type Nutrient } from "../label/nutrient.js";
import { type NutrientsPerVolume, readPerVolume } from "../label/per-volume.js";
import { statesNone } from "../label/states-none.js";
import { eachOf } from "../label/under-path.js";
import { expectTarget } from "../rate/rate-target.js";

/** The density of a liquid product, or an error with its path. */
const densityOf = ({ density }: Fertilizer): Quantity<"mass/volume", "none"> =>
  density ??
  fail(
    "missing",
    "product.density",
    density,
    `the density of the liquid at the temperature at which it is measured out; ${labelByVolume}`,
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
 * @throws RatewrightError `missing` where the product has no density; `type` for a nutrient that is none; what
 *   `fertilizer` throws for the record of a product
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
  product: Fertilizer | LiquidFertilizer,
  nutrient: S,
): Quantity<"mass/volume", S> => {
  const { label } = allOf({
    label: () => expectLabel(product),
    nutrient: () =>
      isNutrient(nutrient) || fail("type", "nutrient", nutrient, "a nutrient, such as N or P2O5"),
  });
  if (label.type === "liquid-fertilizer") {
    return statedPerVolume(label, nutrient) ?? new Quantity(0, labelUnit(label), nutrient, "mass/volume");
  }
  const density = densityOf(label);
  const value = (density.value * percentOf(label.analysis, nutrient)) / 100;
  return new Quantity(value, density.unit, nutrient, "mass/volume");
};

/** A label by weight or by volume. */
const expectLabel = <Id extends string>(
  product: Fertilizer<Id> | LiquidFertilizer<Id>,
): Fertilizer<Id> | LiquidFertilizer<Id> =>
  isLiquidFertilizer<Id, never>(product)
    ? expectLiquidFertilizer(product, "product")
    : expectFertilizer(product, "product");

/** The unit in which a label by volume is written: it states one nutrient or more. */
const labelUnit = ({ perVolume }: LiquidFertilizer): string =>
  (Object.values(perVolume)[0] as Quantity<"mass/volume", Nutrient>).unit;

/**
 * The volume of a liquid fertilizer per area for a target rate of one nutrient.
 *
 * Equation: `V = T * 100 / (a * d)`
 *
 * - `V` product, volume per area
 * - `T` target of the nutrient, mass per area, zero or more
 * - `a` percent of the nutrient in the product by weight; `d` its density, mass per volume; of a label by volume
 *   `a * d / 100` is what it states
 *
 * @throws RatewrightError `infeasible` where the product contains none of the nutrient; `missing` where it has no
 *   density; `range`, `unit/mismatch`, `substance/mismatch`; what `fertilizer` throws for the record of a product
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
  product: Fertilizer<Id> | LiquidFertilizer<Id>,
): Quantity<"volume/area", `product:${Id}`> => {
  const { wanted, label } = allOf({
    wanted: () => expectTarget(target, "target"),
    label: () => expectLabel(product),
  });
  const of = `product:${label.id}` as const;
  const rate = (
    amount: number,
    divisor: { readonly value: number; readonly unit: string },
  ): Quantity<"volume/area", typeof of> => {
    const weight = quantityOf(amount, wanted.unit, "none", "target");
    const { value, unit } = perOf(weight, new Quantity(divisor.value, divisor.unit, "none", "mass/volume"));
    return new Quantity(value, unit, of, "volume/area");
  };
  if (label.type === "liquid-fertilizer") {
    const stated = statedPerVolume(label, wanted.of);
    return stated !== undefined && stated.value > 0
      ? rate(wanted.value, stated)
      : fail(
          "infeasible",
          "product.perVolume",
          described(Object.values(label.perVolume).join(", ")),
          `some ${wanted.of}, of which ${label.id} states none`,
        );
  }
  const density = densityOf(label);
  const percent = percentOf(label.analysis, wanted.of);
  return percent > 0 ? rate((wanted.value * 100) / percent, density) : statesNone(label, wanted.of);
};

/**
 * The weight of a volume of a liquid product, or its rate by weight for a rate by volume.
 *
 * Equation: `m = V * d`, `d` the density of the product, mass per volume.
 *
 * With it `nutrientsSupplied` says what so many gallons brought.
 *
 * @throws RatewrightError `missing` where the product has no density; `substance/mismatch` where the amount is of
 *   another product; `range`, `unit/mismatch`; what `fertilizer` throws for the record of a product
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
      expectLiquidDensity(
        expectQuantity(input.density, { dimension: "mass/volume", of: "none", bound: "positive" }, "density"),
        "density",
      ),
    perVolume: () => readPerVolume(input.perVolume),
  });
  const percents = eachOf(
    perVolume,
    ([nutrient]) => `perVolume.${nutrient}`,
    ([nutrient, stated]) => {
      const share = (stated.in("g/L") * 100) / density.in("g/L");
      return share > 100
        ? outOfRange(
            "",
            stated,
            { max: density.in("g/L"), unit: "g/L" },
            "{}, which is what the product weighs",
          )
        : ([nutrient, share] as const);
    },
  );
  const percent: Partial<Record<Nutrient, number>> = Object.fromEntries(percents);
  const element = percent.P !== undefined || percent.K !== undefined;
  return analysis({ basis: element ? "element" : "oxide", percent }, undefined, "perVolume");
};
