import { expectLiquidDensity, expectLooseDensity } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  expectQuantity,
  fail,
  isUnit,
  type NeutralSubstance,
  numberIn,
  outOfRange,
  perOf,
  type Quantity,
  quantityOf,
  timesOf,
} from "../../quantity/index.js";
import type { ProductForm } from "../formulation/formulation.js";

import { expectRate, type RateOf, type RateSubstance, type ReadRate } from "./rate.js";

/** The product of a rate: `product:a` of `product:a/spray`. */
export type ProductOf<S extends string> = S extends `${infer T}/spray` ? T : S;

/** An amount of product, in the measure of its form. */
export type Amount<F extends ProductForm, S extends string> = F extends "dry"
  ? Quantity<"mass", S>
  : Quantity<"volume", S>;

/** What {@link amountFor} takes. */
export interface AmountInput<F extends ProductForm, S extends string, A extends NeutralSubstance> {
  /** Rate of product per area, or per volume of finished spray. */
  readonly rate: RateOf<S>;
  /** Weighed or poured. */
  readonly form: F;
  /** The area; needed for a rate per area. */
  readonly area?: Quantity<"area", A> | undefined;
  /** The volume of finished spray; needed for a rate per volume. */
  readonly sprayVolume?: Quantity<"volume", "spray"> | undefined;
  /** Mass of the product per its volume; needed where the rate is not in the measure of the form. */
  readonly density?: Quantity<"mass/volume", "none"> | undefined;
}

/**
 * How much product goes into an area or a volume of spray: `amount = rate * area` for a rate per area,
 * `amount = rate * volume of finished spray` for a rate per volume.
 *
 * A dry product comes out as a mass, a liquid as a volume. A rate in the other measure (2 lb/acre of a
 * liquid, 1 tsp/gal of a powder) needs a `density`: a level tablespoon of dry products weighs from 1/6
 * to 1/2 oz, so no density is assumed. More than 100 % of the spray by volume, and more than 1 kg of dry product per
 * liter of it, cannot be: a recipe per 100 gal was read per gal.
 *
 * @param input - `rate` (zero or more), `form`, and what the rate needs: `area`, `sprayVolume`, `density`
 * @throws RatewrightError with every problem: `missing` (area, sprayVolume, density), `range`,
 *   `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: University of Missouri Extension method (G1272), product = rate x acres per tank; New England
 * Vegetable Management Guide, dilution tables (2 to 6 tablespoons to the ounce of dry product).
 *
 * @example
 * ```ts
 * import { amountFor, perVolume, quantity } from "ratewright";
 * const area = quantity(3.5, "acre");
 * amountFor({ rate: quantity(3, "lb/acre", "product:a"), form: "dry", area }).in("lb"); // => 10.5
 * const wetter = perVolume(quantity(2, "pt", "product:b"), quantity(100, "gal", "spray"));
 * amountFor({ rate: wetter, form: "liquid", sprayVolume: quantity(300, "gal", "spray") }).in("pt"); // => 6
 * ```
 */
export const amountFor = <
  const F extends ProductForm,
  const S extends RateSubstance,
  A extends NeutralSubstance = "none",
>(
  input: AmountInput<F, S, A>,
): Amount<F, ProductOf<S>> => {
  const read: AnyAmountInput = expectFields(input, ["rate", "form", "area", "sprayVolume", "density"]);
  // What it is of and measured in follows from `rate` and `form`, which the compiler reads from the call.
  return amountAt(read, "") as unknown as Amount<F, ProductOf<S>>;
};

/** The input of {@link amountFor} before it is read. */
export type AnyAmountInput = { readonly [K in keyof AmountInput<"dry", "product", "none">]?: unknown };

/** {@link amountFor} for a record that stands at `at` (`products[1].`) of a larger one. */
export const amountAt = (
  input: AnyAmountInput,
  at: string,
  areaPath: string = "area",
): Quantity<"mass", string> | Quantity<"volume", string> => {
  return amountOver(readRated(input, at), input, at, areaPath);
};

/** {@link amountAt} for many areas and volumes: the rate is read once. */
export const amountsAt = (
  input: AnyAmountInput,
  at: string,
): ((area: unknown, sprayVolume: unknown) => ReturnType<typeof amountAt>) => {
  const rated = readRated(input, at);
  const { density } = input;
  return (area, sprayVolume) => amountOver(rated, { density, area, sprayVolume }, at, "area");
};

interface Rated {
  readonly form: ProductForm;
  readonly read: ReadRate;
}

const readRated = (input: AnyAmountInput, at: string): Rated =>
  allOf({
    form: () => expectOneOf(input.form, ["dry", "liquid"], `${at}form`),
    read: () => expectRate(input.rate, `${at}rate`),
  });

const amountOver = (
  { form, read: { rate, basis, product } }: Rated,
  input: Pick<AnyAmountInput, "density" | "area" | "sprayVolume">,
  at: string,
  areaPath: string,
): ReturnType<typeof amountAt> => {
  const top = rate.dimension.startsWith("mass") ? "mass" : "volume";
  const measure = form === "dry" ? "mass" : "volume";
  const { extent, density } = allOf({
    density: () => (top === measure ? undefined : densityOf(input.density, `${at}density`, top, form)),
    extent: () => (basis === "area" ? areaAt(input.area, areaPath) : sprayVolumeOf(input.sprayVolume)),
  });
  const total = timesOf(rate, extent);
  const turned =
    density === undefined ? total : measure === "mass" ? timesOf(total, density) : perOf(total, density);
  // The total in the unit that stands on top of the rate, where it is one: a jug of pints is asked for in pints.
  const slash = rate.unit.indexOf("/");
  const unit = slash < 0 ? rate.unit : rate.unit.slice(0, slash);
  const isTop = density === undefined && !unit.startsWith("%") && isUnit(unit, measure);
  const wanted = isTop ? unit : turned.unit;
  const amount = quantityOf(numberIn(turned, wanted), wanted, product, `${at}rate`);
  if (form === "dry" && basis === "spray volume") noSludge(rate, density, `${at}rate`);
  return amount.dimension === "mass"
    ? (amount as Quantity<"mass", string>)
    : (amount as Quantity<"volume", string>);
};

/** A liter of spray that holds a kilogram of powder or granules has next to no room for water. */
const noSludge = (rate: unknown, density: unknown, path: string): void => {
  const perLiter =
    density === undefined ? numberIn(rate, "kg/L") : numberIn(rate, "L/L") * numberIn(density, "kg/L");
  if (exceeds(perLiter, 1)) {
    outOfRange(
      path,
      rate,
      { max: 1, unit: "kg/L" },
      '{} (8.3 lb/gal) of dry product in the spray (a recipe per 100 gal is perVolume(amount, quantity(100, "gal", "spray")))',
    );
  }
};

const densityOf = (
  input: unknown,
  path: string,
  top: string,
  form: ProductForm,
): Quantity<"mass/volume", "none"> =>
  input === undefined
    ? fail("missing", path, undefined, `a density: the rate is a ${top} and the product is ${form}`)
    : (form === "dry" ? expectLooseDensity : expectLiquidDensity)(
        expectQuantity(input, { dimension: "mass/volume", of: "none", bound: "positive" }, path),
        path,
      );

const areaAt = (input: unknown, path: string): Quantity<"area", NeutralSubstance> =>
  input === undefined && path !== "area"
    ? fail("missing", path, undefined, "a volume of spray per area, because the rate is per area")
    : areaOf(input);

const neutral: readonly string[] = ["none", "treated", "gross", "plan"];

/** Takes an area, whatever its tag, or throws. */
export const areaOf = (
  input: unknown,
  bound: "positive" | "non-negative" = "non-negative",
  path: string = "area",
): Quantity<"area", NeutralSubstance> => {
  if (input === undefined) fail("missing", path, input, "an area, because the rate is per area");
  // Its tag is looked at next.
  const area = expectQuantity<"area", NeutralSubstance>(input, { dimension: "area", bound }, path);
  return neutral.includes(area.of)
    ? area
    : fail("substance/mismatch", path, area, "an area of none, treated, gross or plan");
};

const sprayVolumeOf = (input: unknown): Quantity<"volume", "spray"> => {
  if (input === undefined) {
    fail("missing", "sprayVolume", input, "a volume of spray, because the rate is per volume");
  }
  return expectQuantity(input, { dimension: "volume", of: "spray", bound: "non-negative" }, "sprayVolume");
};
