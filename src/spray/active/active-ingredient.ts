import {
  allOf,
  expectAmount,
  expectFields,
  fail,
  numberIn,
  ofKind,
  outOfRange,
  perOf,
  type Quantity,
  timesOf,
} from "../../quantity/index.js";

/** An active ingredient, or the acid that a salt or an ester of it stands for. The two are never mixed. */
export type ActiveSubstance = "ai" | "ae" | `ai:${string}` | `ae:${string}`;

/** A product, with its id where it has one. */
export type ProductName = "product" | `product:${string}`;

/** What a strength of a product may be measured in. */
export type ActiveContent = "mass/mass" | "mass/volume";

/** How product is measured out for an amount or a rate of active ingredient. */
export type ProductMeasure<D extends "mass" | "mass/area", C extends ActiveContent> = C extends "mass/mass"
  ? D
  : D extends "mass"
    ? "volume"
    : "volume/area";

/**
 * The product that brings an amount, or a rate per area, of active ingredient or acid equivalent,
 * `product = active / content`:
 *
 * - liquid of `lb ai/gal` or `g/L`: a volume; pints per acre are `8 * lb ai / (lb ai/gal)`
 * - wettable powder, granule or dust of a percentage: a weight, `lb ai * 100 / %`
 *
 * Amount and content have to be on the same basis: both active ingredient or both acid equivalent.
 *
 * @param input - `active`, zero or more, of `ai` or `ae`; `content` of the product, `ai/product` or
 * `ae/product`, more than zero
 * @throws RatewrightError `substance/mismatch` for ai against ae; `missing`, `range`, `unit/mismatch`, `type`
 * Source: Agrochemical and Pesticide Safety handbook, example 5 (2 lb ai of an 80 % powder is 2.5 lb);
 * Pacific Northwest Weed Management Handbook, pints per acre.
 *
 * @example
 * ```ts
 * import { productForActive, quantity } from "ratewright";
 * const liquid = quantity(4, "lb/gal", "ai/product:a");
 * productForActive({ active: quantity(1.5, "lb/acre", "ai"), content: liquid }).in("pt/acre"); // => 3
 * const powder = quantity(80, "% w/w", "ai/product:b");
 * productForActive({ active: quantity(2, "lb/acre", "ai"), content: powder }).in("lb/acre"); // => 2.5
 * ```
 */
export const productForActive = <
  D extends "mass" | "mass/area",
  A extends ActiveSubstance,
  const P extends ProductName,
  C extends ActiveContent,
>(input: {
  readonly active: Quantity<D, A>;
  readonly content: Quantity<C, `${NoInfer<A>}/${P}`>;
}): Quantity<ProductMeasure<D, C>, P> => {
  const given = expectFields(input, ["active", "content"]);
  const { active, content } = allOf({
    content: () => contentOf(given.content),
    active: () =>
      measured(given.active, "active", ["mass", "mass/area"], "a mass of active ingredient, or a rate of it"),
  });
  sameBasis(active, content.top, "active");
  return ofKind<ProductMeasure<D, C>, P>(perOf(active, content.q));
};

/**
 * The active ingredient, or acid equivalent, in an amount or a rate per area of product,
 * `active = product * content`: {@link productForActive} the other way round.
 *
 * @param input - `product`, zero or more: a weight for a content in percent by weight, a volume for a
 * content per volume; `content` of the product
 * @throws RatewrightError `substance/mismatch` for another product; `missing`, `range`, `unit/mismatch`
 * Source: as {@link productForActive}.
 *
 * @example
 * ```ts
 * import { activeInProduct, quantity } from "ratewright";
 * activeInProduct({
 *   product: quantity(3, "pt/acre", "product:a"),
 *   content: quantity(4, "lb/gal", "ai/product:a"),
 * }).in("lb/acre"); // => 1.5
 * ```
 */
export const activeInProduct = <
  M extends "mass" | "mass/area" | "volume" | "volume/area",
  const A extends ActiveSubstance,
  P extends ProductName,
>(input: {
  readonly product: Quantity<M, P>;
  readonly content: Quantity<
    M extends "mass" | "mass/area" ? "mass/mass" : "mass/volume",
    `${A}/${NoInfer<P>}`
  >;
}): Quantity<M extends "mass" | "volume" ? "mass" : "mass/area", A> => {
  const { product, content } = expectFields(input, ["product", "content"]);
  return ofKind<M extends "mass" | "volume" ? "mass" : "mass/area", A>(activeIn(product, content));
};

/** {@link activeInProduct} of arguments that were not read yet. */
export const activeIn = (productInput: unknown, contentInput: unknown): Quantity<string, string> => {
  const { product, content } = allOf({
    content: () => contentOf(contentInput),
    product: () => measured(productInput, "product", measures, "an amount of product, or a rate of it"),
  });
  const byWeight = content.q.dimension === "mass/mass";
  if (byWeight !== product.dimension.startsWith("mass"))
    fail(
      "unit/mismatch",
      "product",
      product,
      byWeight
        ? "a mass of product, because its content is by weight"
        : "a volume of product, because its content is per volume",
    );
  if (product.of !== content.bottom) {
    fail("substance/mismatch", "product", product, `a quantity of ${content.bottom}`);
  }
  return timesOf(product, content.q);
};

const measures = ["mass", "mass/area", "volume", "volume/area"] as const;

interface Content {
  readonly q: Quantity<ActiveContent, string>;
  readonly top: string;
  readonly bottom: string;
}

const contentOf = (input: unknown): Content => {
  const q = measured(
    input,
    "content",
    ["mass/mass", "mass/volume"],
    "a content: % w/w, or a weight per volume",
  );
  if (q.value === 0) outOfRange("content", q, { above: 0 });
  const [top = "", bottom = ""] = q.of.split("/");
  if (!/^a[ie](:[^/]+)?$/.test(top) || !/^product(:[^/]+)?$/.test(bottom)) {
    fail("substance/mismatch", "content", q, "ai/product or ae/product");
  }
  if (q.dimension === "mass/mass" && numberIn(q, "% w/w") > 100 * (1 + 1e-9)) {
    outOfRange("content", q, { max: 100, unit: "%" });
  }
  return { q, top, bottom };
};

const sameBasis = (active: { readonly of: string }, top: string, path: string): void => {
  if (active.of === top) return;
  const crossed = `${active.of.split(":")[0]} ${top.split(":")[0]}`;
  const suggestion = {
    "ai ae": "acidEquivalentOf, which turns active ingredient into acid equivalent",
    "ae ai": "activeOfAcid, which turns acid equivalent into active ingredient",
  }[crossed];
  fail(
    "substance/mismatch",
    path,
    active,
    `a quantity of ${top}`,
    suggestion === undefined ? {} : { suggestion },
  );
};

const measured = <const D extends string>(
  input: unknown,
  path: string,
  dimensions: readonly D[],
  expected: string,
): Quantity<D, string> =>
  input === undefined || input === null
    ? fail("missing", path, input, expected)
    : expectAmount(input, { dimensions, bound: "non-negative" }, path);
