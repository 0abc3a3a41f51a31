import { type Checks, expectFields, expectList, shown } from "../../quantity/index.js";
import { namedProduct, statedId } from "./named-product.js";
import { taggedRate } from "./tagged-rate.js";
import type { JobProducts, ReadSpray, TreatmentBase } from "./treatments.js";

/** Reads what is stated of a treatment that is sprayed; what is wrong goes to `problems`. */
export const readSpray = (
  stated: unknown,
  at: string,
  products: JobProducts,
  problems: Checks,
): Omit<ReadSpray, keyof TreatmentBase> | undefined => {
  const list = problems.run(() => expectList(stated, `${at}.mix`, "product")) ?? [];
  const mix = list.flatMap((item, i) => {
    const path = `${at}.mix[${i}]`;
    const fields = problems.run(() =>
      expectFields(item, ["product", "rate"], path, "a product with its rate"),
    );
    const product = fields && problems.run(() => namedProduct(products, fields.product, `${path}.product`));
    const id = statedId(products, fields?.product);
    const rate =
      id === undefined ? undefined : problems.run(() => taggedRate(fields?.rate, id, `${path}.rate`));
    if (product !== undefined && product.formulation === undefined) {
      const expected = `a formulation of ${product.id} in products, for the loading order`;
      problems.add({ code: "missing", path: `${path}.product`, got: "no formulation", expected });
    }
    const same = list.findIndex((other) => (other as { product?: unknown } | null)?.product === product?.id);
    if (product !== undefined && same !== i) {
      const expected = "each product once";
      problems.add({ code: "duplicate", path: `${path}.product`, got: shown(product.id), expected });
    }
    return product && rate ? [{ product, rate, path }] : [];
  });
  // A product that is itself at fault is told of where it stands, and leaves no mix to work out.
  return mix.length < list.length ? undefined : { method: "spray", mix };
};
