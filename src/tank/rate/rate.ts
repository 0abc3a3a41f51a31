import { exceeds } from "../../numeric/index.js";
import {
  expectQuantity,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";

/** The product that a rate or an amount is of. */
export type ProductSubstance = "product" | `product:${string}`;

/** What a rate of product may be measured in: per area of ground, or per volume of finished spray. */
export type RateDimension = "mass/area" | "volume/area" | "mass/volume" | "volume/volume";

/** What a rate of product is of: the product per area, the product in the spray per volume. */
export type RateSubstance = ProductSubstance | `${ProductSubstance}/spray`;

/**
 * A rate of product: a quantity per area of `product:id`, or a quantity per volume of spray of
 * `product:id/spray`. Its dimension says which of the two it is. A `Quantity` fits, and what JSON left
 * of one, and a {@link Recipe}.
 */
export type RateOf<S extends string = RateSubstance> =
  | {
      readonly value: number;
      readonly unit: string;
      readonly of: S;
      readonly dimension?: RateDimension;
    }
  | Recipe<S>;

/** A rate as labels print it, such as 2 pt per 100 gal of spray: an amount of `product:id` and a volume. */
export interface Recipe<S extends string = ProductSubstance> {
  readonly value: number;
  readonly unit: string;
  readonly of: S;
  readonly per: { readonly value: number; readonly unit: string };
}

/** What a rate is counted on. */
export type RateBasis = "area" | "spray volume";

/** A rate at run time: the quantity, its basis, and the product without `/spray`. */
export interface ReadRate {
  readonly rate: Quantity<RateDimension, string>;
  readonly basis: RateBasis;
  readonly product: ProductSubstance;
}

const product = /^product(:[^/]+)?$/;

/** A recipe as a quantity per volume of spray; all else as it is. A quantity has a method `per`. */
const unwritten = (input: object, path: string): unknown => {
  const { per } = input as { readonly per?: unknown };
  if (per === undefined || typeof per === "function") return input;
  const volume = expectQuantity(per, { dimension: "volume", bound: "positive" }, `${path}.per`);
  if (volume.of !== "none" && volume.of !== "spray")
    fail("substance/mismatch", `${path}.per`, volume, "a volume of finished spray");
  const { value, unit, of } = input as Recipe<string>;
  const amount = quantityOf(value, unit, of ?? "none", path);
  if (amount.dimension !== "mass" && amount.dimension !== "volume") {
    fail("unit/mismatch", path, amount, "an amount of product, per volume of spray");
  }
  if (!product.test(of))
    fail("substance/mismatch", path, amount, "an amount of product, such as product:feed-a");
  return quantityOf(value / volume.value, `${unit}/${volume.unit}`, `${of}/spray`, path);
};

/**
 * Takes a rate of product at the door of a formula, or throws with its path.
 *
 * @throws RatewrightError `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range` (also above 100 % v/v)
 */
export const expectRate = (input: unknown, path: string): ReadRate => {
  if (typeof input !== "object" || input === null) return fail("type", path, input, "a rate of product");
  const q = unwritten(input, path) as Quantity<string, string>;
  const dimension = expectQuantity(q, { dimension: dimensionOf(q, path), bound: "non-negative" }, path);
  const basis: RateBasis = dimension.dimension.endsWith("/area") ? "area" : "spray volume";
  const slash = dimension.of.indexOf("/");
  const top = slash < 0 ? dimension.of : dimension.of.slice(0, slash);
  const bottom = slash < 0 ? undefined : dimension.of.slice(slash + 1);
  const fits = product.test(top) && (basis === "area" ? bottom === undefined : bottom === "spray");
  if (!fits) {
    fail(
      "substance/mismatch",
      path,
      dimension,
      basis === "area"
        ? "a rate of product, such as product:feed-a"
        : "a rate of product in the spray, such as product:feed-a/spray",
    );
  }
  if (dimension.dimension === "volume/volume") noMoreThanTheSpray(dimension, path);
  return { rate: dimension, basis, product: top as ProductSubstance };
};

/** A share of the spray by volume is no more than all of it. */
const noMoreThanTheSpray = (rate: unknown, path: string): void => {
  if (exceeds(numberIn(rate, "% v/v"), 100)) {
    outOfRange(
      path,
      rate,
      { max: 100, unit: "%" },
      '{} of the spray (a recipe per 100 gal is perVolume(amount, quantity(100, "gal", "spray")))',
    );
  }
};

const dimensionOf = (input: Quantity<string, string>, path: string): RateDimension => {
  const { dimension } = quantityOf(input.value, input.unit, input.of, path);
  if (dimension === "mass/mass") {
    return fail(
      "unit/mismatch",
      path,
      input,
      "a rate per area or per volume of spray; by weight it needs a density",
    );
  }
  return dimension === "mass/area" ||
    dimension === "volume/area" ||
    dimension === "mass/volume" ||
    dimension === "volume/volume"
    ? dimension
    : fail("unit/mismatch", path, input, "a rate per area or per volume of spray");
};
