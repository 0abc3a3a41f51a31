import {
  checks,
  expectFields,
  expectQuantity,
  fail,
  type Quantity,
  quantityOf,
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
  expectFields(input, ["active", "content"]);
  const door = checks();
  const found = door.run(() => contentOf(input.content));
  const given = door.run(() =>
    measured(input.active, "active", ["mass", "mass/area"], "a mass of active ingredient, or a rate of it"),
  );
  door.done();
  const [content, active] = [found as Content, given as Quantity<string, string>];
  sameBasis(active, content.top, "active");
  return active.per(content.q as never) as unknown as Quantity<ProductMeasure<D, C>, P>;
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
  expectFields(input, ["product", "content"]);
  const door = checks();
  const found = door.run(() => contentOf(input.content));
  const given = door.run(() => {
    if (found === undefined) {
      const any = ["mass", "mass/area", "volume", "volume/area"];
      return measured(input.product, "product", any, "an amount of product, or a rate of it");
    }
    const byWeight = found.q.dimension === "mass/mass";
    return measured(
      input.product,
      "product",
      byWeight ? ["mass", "mass/area"] : ["volume", "volume/area"],
      byWeight
        ? "a mass of product, because its content is by weight"
        : "a volume of product, because its content is per volume",
    );
  });
  door.done();
  const [content, product] = [found as Content, given as Quantity<string, string>];
  if (product.of !== content.bottom) {
    fail("substance/mismatch", "product", product, `a quantity of ${content.bottom}`);
  }
  return product.times(content.q as never) as never;
};

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
  if (q.value === 0) fail("range", "content", q, "more than zero");
  const [top = "", bottom = ""] = q.of.split("/");
  if (!/^a[ie](:[^/]+)?$/.test(top) || !/^product(:[^/]+)?$/.test(bottom)) {
    fail("substance/mismatch", "content", q, "ai/product or ae/product");
  }
  if (q.dimension === "mass/mass" && (q as Quantity<"mass/mass", string>).in("% w/w") > 100 * (1 + 1e-9)) {
    fail("range", "content", q, "100 % or less");
  }
  return { q: q as Content["q"], top, bottom };
};

const sameBasis = (active: Quantity<string, string>, top: string, path: string): void => {
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

const measured = (
  input: unknown,
  path: string,
  dimensions: readonly string[],
  expected: string,
): Quantity<string, string> => {
  if (input === undefined || input === null) return fail("missing", path, input, expected);
  const { value, unit, of } = input as { value: number; unit: string; of?: string };
  if (typeof unit !== "string") return fail("type", path, input, expected);
  const q = quantityOf(value, unit, of ?? "none", path);
  if (!dimensions.includes(q.dimension)) fail("unit/mismatch", path, q, expected);
  return expectQuantity(q, { dimension: q.dimension, bound: "non-negative" }, path);
};
