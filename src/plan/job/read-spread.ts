import { described } from "../../quantity/house.js";
import { type Checks, expectNumber, expectQuantity, fail, outOfRange, shown } from "../../quantity/index.js";
import type { JobSpread } from "./job.js";
import { namedProduct } from "./named-product.js";
import { shortText } from "./read-machines.js";
import type { ReadProduct } from "./read-products.js";
import { taggedRate } from "./tagged-rate.js";
import type { JobProducts, ReadSpread, TreatmentBase } from "./treatments.js";

/** Checks a target or a rate where its product is not known: what is wrong with it is told all the same. */
const expectStated = ({ target, rate }: JobSpread, path: string): undefined => {
  const [name, stated] = target === undefined ? ["rate", rate] : ["target", target];
  if (stated !== undefined)
    expectQuantity(stated, { dimension: "mass/area", bound: "positive" }, `${path}.${name}`);
};

const readWanted = (input: JobSpread, product: ReadProduct, path: string): ReadSpread["wanted"] => {
  const { target, rate } = input;
  if ((target === undefined) === (rate === undefined)) {
    return fail(
      target === undefined ? "missing" : "conflict",
      path,
      described(target === undefined ? "neither target nor rate" : "target and rate"),
      "a target of a nutrient, or a rate of product",
    );
  }
  if (rate !== undefined) {
    const of = `product:${product.id}` as const;
    const tagged = taggedRate(rate, product.id, `${path}.rate`);
    return {
      rate: expectQuantity(tagged, { dimension: "mass/area", of, bound: "positive" }, `${path}.rate`),
    };
  }
  // a text or a number is told as what it is, not as a record without its nutrient
  const written: unknown = target;
  if (typeof written === "object" && target?.of === undefined)
    fail("missing", `${path}.target.of`, undefined, "the nutrient, such as N");
  const wanted = expectQuantity(target, { dimension: "mass/area", bound: "positive" }, `${path}.target`);
  if (wanted.of.startsWith("product")) {
    fail("substance/mismatch", `${path}.target.of`, wanted.of, "a nutrient, such as N or P2O5", {
      suggestion: "rate",
    });
  }
  if (product.fertilizer === undefined) {
    fail("missing", `${path}.target`, target, `a product with an analysis; ${product.id} states none`);
  }
  return { target: wanted };
};

/** Passes of a spreader over the same ground: a whole number from 1 to 8. */
export const passesAt = (input: unknown, path: string): number => {
  const passes = expectNumber(input, path, { min: 1, max: 8 });
  return Number.isInteger(passes) ? passes : outOfRange(path, input, { step: 1, count: "passes" });
};

/** Reads what is stated of a treatment that is spread; what is wrong goes to `problems`. */
export const readSpread = (
  treatment: JobSpread,
  at: string,
  products: JobProducts,
  problems: Checks,
): Omit<ReadSpread, keyof TreatmentBase> | undefined => {
  const product = problems.run(() => namedProduct(products, treatment.product, `${at}.product`));
  if (product?.form === "liquid") {
    const expected = "a dry product: a liquid is not spread";
    problems.add({ code: "conflict", path: `${at}.product`, got: shown(product.id), expected });
  }
  const wanted =
    product === undefined
      ? problems.run(() => expectStated(treatment, at))
      : problems.run(() => readWanted(treatment, product, at));
  const passes = problems.run(() =>
    treatment.passes === undefined ? 1 : passesAt(treatment.passes, `${at}.passes`),
  );
  const setting =
    treatment.setting === undefined
      ? undefined
      : problems.run(() => shortText(treatment.setting, `${at}.setting`));
  return product === undefined || wanted === undefined || passes === undefined
    ? undefined
    : { method: "spread", product, wanted, passes, ...(setting !== undefined && { setting }) };
};
