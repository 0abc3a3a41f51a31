import { fail, isSubstance } from "../../quantity/index.js";
import type { ReadProduct } from "./read-products.js";
import type { JobProducts } from "./treatments.js";

/** The product of an id; nothing where the job has one of that id which is itself at fault. */
export const namedProduct = (products: JobProducts, id: unknown, path: string): ReadProduct | undefined =>
  products.sound.get(id as string) ??
  (products.ids.has(id)
    ? undefined
    : fail("missing", path, id, "the id of a product of this job", { choices: [...products.sound.keys()] }));

/** The id of a product that the job has, sound or itself at fault: its rates are checked in either case. */
export const statedId = (products: JobProducts, id: unknown): string | undefined =>
  typeof id === "string" && products.ids.has(id) && isSubstance(`product:${id}`) ? id : undefined;
