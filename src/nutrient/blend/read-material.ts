import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { readMaterials } from "../label/materials.js";
import { eachOf, listOf } from "../label/under-path.js";

/** A material as it was read. */
export interface ReadMaterial {
  readonly product: Fertilizer;
  readonly price: Quantity<string, "none">;
  readonly least: Quantity<"mass", "none"> | undefined;
  readonly most: Quantity<"mass", "none"> | undefined;
  readonly saltIndex: number | undefined;
  /** % w/w of CaCO3 equivalent. */
  readonly acidity: number | undefined;
}

/** The currency of a price that may be none. */
export const currencyOf = (price: unknown): string | undefined => {
  const unit: unknown = Object(price).unit;
  return typeof unit === "string" ? /^(money:[A-Z]{3})\//.exec(unit)?.[1] : undefined;
};

/** Takes a price per weight in the currency of all, or throws with its path. */
export const readPrice = (
  price: unknown,
  currency: string | undefined,
  path: string,
): Quantity<string, "none"> => {
  const own = currencyOf(price);
  if (own === undefined) return fail("unit/mismatch", path, price, "a price per weight");
  return expectQuantity(
    price,
    { dimension: `${currency ?? own}/mass` as string, of: "none", bound: "non-negative" },
    path,
  );
};

const saltScale = ["by weight"] as const;

/** Takes a salt index that adds up by weight, or throws with its path. */
export const readSaltIndex = (index: unknown, path: string): number => {
  const given = expectFields(
    index,
    ["type", "version", "scale", "value", "basis", "source", "doubtful"],
    path,
    'a salt index on the scale "by weight"',
  );
  if (given.scale !== saltScale[0]) {
    const expected = 'a salt index on the scale "by weight", which adds up by weight';
    if (typeof given.scale === "string") fail("conflict", path, given.scale, expected);
    expectOneOf(given.scale, saltScale, `${path}.scale`);
  }
  return expectNumber(given.value, path, { min: 0, max: 1000 });
};

const mass = { dimension: "mass", of: "none", bound: "non-negative" } as const;
const acid = { dimension: "mass/mass", of: "CaCO3 equivalent/product" } as const;
const fields = ["product", "price", "most", "least", "saltIndex", "acidity"] as const;

/** The materials on offer. */
export const readBlendMaterials = (input: unknown, currency: string | undefined): readonly ReadMaterial[] => {
  const list = listOf(input, "materials", "{ product, price }", 200);
  const products = readMaterials(list, (item) => Object(item).product, "materials", "product");
  return eachOf(list, "materials", (item, i) => {
    const given = expectFields(item, fields, "", "{ product, price }");
    const optional = <T>(value: unknown, read: (value: unknown) => T): T | undefined =>
      value === undefined ? undefined : read(value);
    return {
      product: products[i] as Fertilizer,
      ...allOf({
        price: () => readPrice(given.price, currency, "price"),
        least: () => optional(given.least, (q) => expectQuantity(q, mass, "least")),
        most: () => optional(given.most, (q) => expectQuantity(q, mass, "most")),
        saltIndex: () => optional(given.saltIndex, (index) => readSaltIndex(index, "saltIndex")),
        acidity: () => optional(given.acidity, (q) => expectQuantity(q, acid, "acidity").in("% w/w")),
      }),
    };
  });
};
