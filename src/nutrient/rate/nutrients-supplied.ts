import { expectAmount, fail, numberIn, Quantity, quantityOf, timesOf } from "../../quantity/index.js";
import { type Nutrient, percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import {
  expectLiquidFertilizer,
  isLiquidFertilizer,
  type LiquidFertilizer,
  statedPerVolume,
} from "../label/liquid-fertilizer.js";
import { productNitrogen } from "../label/nitrogen-breakdown.js";
import { elementShareForms } from "../label/supplied-forms.js";

/** Phosphorus and potassium are supplied in both forms, whichever the label states. */
type SuppliedForms<S extends Nutrient> =
  | S
  | (S extends "P" | "P2O5" ? "P" | "P2O5" : never)
  | (S extends "K" | "K2O" ? "K" | "K2O" : never);

/**
 * What an amount of product brings, nutrient by nutrient, in oxides and elements, and quick and slow nitrogen. `Stated` are
 * the nutrients that the type of the label is known to state, as of a grade written out: they are there.
 */
export type NutrientsSupplied<D extends string, Stated extends Nutrient = never> = {
  readonly [S in Nutrient | "N:quick" | "N:slow"]?: Quantity<D, S>;
} & { readonly [S in SuppliedForms<Stated>]: Quantity<D, S> };

/** The dimensions in which an amount of product is told. */
export type ProductDimension = "mass" | "mass/area" | "volume" | "volume/area";

/** Nutrients are weighed: what a volume brings is a mass. */
export type WeighedDimension<D extends string> = D extends "volume"
  ? "mass"
  : D extends "volume/area"
    ? "mass/area"
    : D;

/**
 * The nutrients in an amount of product, or in a rate of it per area: every nutrient that the label
 * states, phosphate and potash also as elements, and nitrogen also split into quick- and slow-release. A liquid is taken by
 * volume too, through its density or its label by volume.
 *
 * Equation: `n = R * a / 100`; slow nitrogen `R * s / 100`; quick-release nitrogen the rest of the total.
 *
 * - `R` product, mass or mass per area, zero or more
 * - `a` percent of the nutrient in the product, by weight
 * - `s` percent of slow-release nitrogen in the PRODUCT, as labels print it; where the label states
 *   none, all nitrogen is quick-release
 *
 * Of a volume `V` it is `R = V * d`, with the density `d` of the product; of a label by volume `n = V * c`, with `c` the
 * nutrient per volume.
 *
 * @param amount - of this very product: its substance carries the product's id
 * @throws RatewrightError `substance/mismatch` where the amount is of another product, or of none, as the package of
 *   a record is; `missing` for a volume of a product without a density; `unit/mismatch`, `range`; what `fertilizer`
 *   throws for the record of a product
 *
 * Source: university worksheets print the same rule; 1250 lb of 5-10-20 hold 62.5 lb N, 125 lb P2O5 and
 * 250 lb K2O (Turfgrass mathematics review, Virginia certified turfgrass professional program).
 *
 * @example
 * ```ts
 * import { fertilizer, nutrientsSupplied, quantity } from "ratewright";
 * const feed = fertilizer({
 *   id: "feed-a",
 *   analysis: "24-0-11",
 *   slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
 * });
 * const supplied = nutrientsSupplied(quantity(50, "lb", "product:feed-a"), feed);
 * supplied.N.in("lb"); // => 12
 * supplied["N:slow"]?.in("lb"); // => 6
 * supplied["N:quick"]?.in("lb"); // => 6
 * supplied.K2O.in("lb"); // => 5.5
 * ```
 */
export const nutrientsSupplied = <
  D extends ProductDimension,
  Id extends string,
  Stated extends Nutrient = never,
>(
  amount: Quantity<D, `product:${Id}`>,
  product: Fertilizer<Id, Stated> | LiquidFertilizer<Id, Stated>,
): NutrientsSupplied<WeighedDimension<D>, Stated> => {
  const supplied = isLiquidFertilizer<Id, Stated>(product)
    ? fromVolume(amount, expectLiquidFertilizer(product, "product"))
    : fromWeight(amount, expectFertilizer(product, "product"));
  // Which nutrients are there follows from the label, which is known only as the program runs.
  return supplied as unknown as NutrientsSupplied<WeighedDimension<D>, Stated>;
};

type Supplies = Readonly<Record<string, Quantity<string, string>>>;

const volumes = ["volume", "volume/area"] as const;
const weights = ["mass", "mass/area"] as const;

/** An amount of this very product, zero or more. */
const amountOf = (
  input: unknown,
  id: string,
  dimensions: readonly ProductDimension[],
): Quantity<ProductDimension, string> => {
  const given = expectAmount(input, { dimensions, bound: "non-negative" }, "amount");
  const of = `product:${id}`;
  if (given.of === of) return given;
  const way = given.of === "none" ? "; packageContents(product) is one of its package" : "";
  return fail("substance/mismatch", "amount", given, `a quantity of ${of}${way}`);
};

/** By the percent by weight of a label; a volume is weighed by the density first. */
const fromWeight = (amount: unknown, label: Fertilizer): Supplies => {
  const given = amountOf(amount, label.id, [...weights, ...volumes]);
  const weight = given.dimension.startsWith("volume") ? timesOf(given, densityFor(label)) : given;
  const supplied: Record<string, Quantity<string, string>> = {};
  const put = (of: string, percent: number): void => {
    supplied[of] = quantityOf((weight.value * percent) / 100, weight.unit, of, "amount");
  };
  for (const nutrient of elementShareForms(Object.keys(label.analysis.percent)))
    put(nutrient, percentOf(label.analysis, nutrient));
  if (percentOf(label.analysis, "N") > 0) {
    const { slow, quick } = productNitrogen(label);
    put("N:slow", slow.in("% w/w"));
    put("N:quick", quick.in("% w/w"));
  }
  return supplied;
};

/** By the mass per volume of a label. */
const fromVolume = (amount: unknown, label: LiquidFertilizer): Supplies => {
  const given = amountOf(amount, label.id, volumes);
  const supplied: Record<string, Quantity<string, string>> = {};
  for (const nutrient of elementShareForms(Object.keys(label.perVolume))) {
    const stated = statedPerVolume(label, nutrient);
    if (stated !== undefined) supplied[nutrient] = massIn(given, stated);
  }
  const nitrogen = label.perVolume.N;
  if (nitrogen !== undefined && nitrogen.value > 0) {
    const all = massIn(given, nitrogen);
    const slow = label.slowNitrogen === undefined ? 0 : numberIn(massIn(given, label.slowNitrogen), all.unit);
    // Equal but for noise is all slow.
    const part = slow < all.value * (1 - 1e-9) ? slow : all.value;
    const ofAll = (value: number, of: string): Quantity<string, string> =>
      new Quantity(value, all.unit, of, all.dimension);
    supplied["N:slow"] = ofAll(part, "N:slow");
    supplied["N:quick"] = ofAll(all.value - part, "N:quick");
  }
  return supplied;
};

/** The mass of a nutrient in a volume of product: the label is per volume of this very product. */
const massIn = (
  { value, unit, dimension }: Quantity<ProductDimension, string>,
  stated: unknown,
): Quantity<string, string> =>
  timesOf(new Quantity<ProductDimension, "none">(value, unit, "none", dimension), stated);

const densityFor = ({ density }: Fertilizer): Quantity<"mass/volume", "none"> =>
  density ??
  fail(
    "missing",
    "product.density",
    undefined,
    "the density of a product that is measured by volume, or its label by volume as liquidFertilizer({ id, perVolume }) takes it",
  );
