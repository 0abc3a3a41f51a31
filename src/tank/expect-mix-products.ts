import { expectQuantity, type Problem, RatewrightError, shown } from "../quantity/index.js";
import { isFormulation } from "./formulation.js";
import type { MixProduct } from "./loading-order-types.js";
import { mixIngredients } from "./mix-rules.js";

const amountProblem = (amount: unknown, path: string): Problem | undefined => {
  for (const dimension of ["mass", "volume"]) {
    try {
      expectQuantity(amount, { dimension, bound: "non-negative" }, path);
      return undefined;
    } catch (error) {
      if (!(error instanceof RatewrightError)) throw error;
      if (error.code !== "unit/mismatch") return error.problems[0];
    }
  }
  return { code: "unit/mismatch", path, got: shown(amount), expected: "a mass or a volume of product" };
};

/** Every problem of a list of products to mix. */
const problemsOf = (products: readonly MixProduct[]): Problem[] => {
  const problems: Problem[] = [];
  const ids = new Set<unknown>();
  products.forEach((product: MixProduct | null | undefined, i) => {
    const at = `products[${i}]`;
    if (typeof product !== "object" || product === null) {
      problems.push({ code: "type", path: at, got: shown(product), expected: "a product" });
      return;
    }
    const { id, formulation, amount } = product;
    if (typeof id !== "string" || id === "") {
      problems.push({ code: "missing", path: `${at}.id`, got: shown(id), expected: "an id of the product" });
    } else if (ids.has(id)) {
      const expected = "an id that no other product has";
      problems.push({ code: "duplicate", path: `${at}.id`, got: shown(id), expected });
    }
    ids.add(id);
    if (!isFormulation(formulation)) {
      const expected = "a kind of formulation, such as WP, SC or surfactant; formulationOf reads codes";
      problems.push({ code: "type", path: `${at}.formulation`, got: shown(formulation), expected });
    }
    const wrong = amount === undefined ? undefined : amountProblem(amount, `${at}.amount`);
    if (wrong !== undefined) problems.push(wrong);
  });
  products.forEach((product: MixProduct | null | undefined, i) => {
    for (const name of ["contains", "groups", "labelRefuses"] as const) {
      const list: unknown = product?.[name];
      if (list === undefined) continue;
      const words: readonly string[] = mixIngredients;
      const fits = (word: unknown): boolean =>
        typeof word === "string" && (name !== "contains" || words.includes(word));
      if (Array.isArray(list) && list.every(fits)) continue;
      problems.push({
        code: "type",
        path: `products[${i}].${name}`,
        got: shown(Array.isArray(list) ? list.find((word) => !fits(word)) : list),
        expected: name === "contains" ? `a list of: ${words.join(", ")}` : "a list of names",
      });
    }
    for (const name of ["labelBefore", "labelAfter", "labelNames"] as const) {
      const list = product?.[name];
      if (list === undefined) continue;
      const at = `products[${i}].${name}`;
      if (!Array.isArray(list)) {
        problems.push({ code: "type", path: at, got: shown(list), expected: "a list of product ids" });
        continue;
      }
      list.forEach((other: unknown, k) => {
        if (ids.has(other)) return;
        problems.push({
          code: "missing",
          path: `${at}[${k}]`,
          got: shown(other),
          expected: "the id of a product of this mix",
        });
      });
    }
  });
  return problems;
};

/** Takes a list of products to mix, or throws with all that is wrong with it. */
export const expectMixProducts = (input: unknown): readonly MixProduct[] => {
  if (!Array.isArray(input) || input.length === 0) {
    throw new RatewrightError({
      code: "missing",
      path: "products",
      got: shown(input),
      expected: "at least one product",
    });
  }
  const problems = problemsOf(input);
  if (problems.length > 0) throw new RatewrightError(problems);
  return input;
};
