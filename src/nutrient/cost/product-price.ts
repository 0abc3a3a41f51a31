import { expectQuantity, fail, perOf, type Quantity, quantityOf } from "../../quantity/index.js";
import type { Fertilizer } from "../label/fertilizer.js";

/** The price of a product: money per weight, or per volume for a liquid with a density. */
export type ProductPrice<C extends string> =
  | Quantity<`money:${C}/mass`, "none">
  | Quantity<`money:${C}/volume`, "none">;

/** A price as it was read. */
export type Priced = Quantity<`money:${string}/${"mass" | "volume"}`, "none">;

/** Takes a price per weight or volume, or throws with its path. */
export const priceOf = (price: unknown, path: string): Priced => {
  const { value, unit, of = "none" } = Object(price) as { value: number; unit: string; of?: string };
  const wanted = 'a price per weight or volume: money(28.5, "USD").per(quantity(50, "lb"))';
  if (typeof value !== "number" || typeof unit !== "string") return fail("type", path, price, wanted);
  const { dimension } = quantityOf(value, unit, of, path);
  if (!/^money:[A-Z]{3}\/(mass|volume)$/.test(dimension)) fail("unit/mismatch", path, price, wanted);
  return expectQuantity(
    price,
    { dimension: dimension as Priced["dimension"], of: "none", bound: "non-negative" },
    path,
  );
};

/** A price as money per mass of product, through the density where it is per volume. */
export const pricePerMass = <C extends string>(
  price: ProductPrice<C>,
  product: Fertilizer,
  path: string,
): Quantity<`money:${C}/mass`, "none"> => {
  const given = priceOf(price, path);
  const currency = given.dimension.split("/")[0] as `money:${C}`;
  const wanted = { dimension: `${currency}/mass`, of: "none" } as const;
  if (given.dimension.endsWith("/mass")) return expectQuantity(given, wanted, path);
  const at = path.replace(/price$/, "product.density");
  const why = "the density of the liquid, since the price is per volume";
  return expectQuantity(perOf(given, product.density ?? fail("missing", at, undefined, why)), wanted, path);
};
