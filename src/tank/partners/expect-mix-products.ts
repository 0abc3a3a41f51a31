import {
  expectAmount,
  expectFields,
  expectFlag,
  type Problem,
  RatewrightError,
  shown,
} from "../../quantity/index.js";
import { isFormulation } from "../formulation/formulation.js";
import { expectSameProduct } from "../inputs.js";
import type { MixProduct } from "./mix-product.js";
import { mixIngredients } from "./mix-rules.js";

/** The problems of an amount that goes in: a mass or a volume, of this product and no other. */
const amountProblems = (amount: unknown, id: unknown, path: string): readonly Problem[] =>
  problemsIn(() => {
    const q = expectAmount(amount, { dimensions: ["mass", "volume"], bound: "non-negative" }, path);
    if (typeof id === "string" && id !== "") expectSameProduct(q.of, id, path, q);
  });

/** What a check complains about; nothing where it went through. */
const problemsIn = (check: () => unknown): readonly Problem[] => {
  try {
    check();
    return [];
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    return error.problems;
  }
};

const fields = [
  "id",
  "name",
  "formulation",
  "amount",
  "addBefore",
  "addAfter",
  "labelNote",
  "lowRate",
  "contains",
  "groups",
  "labelProhibits",
  "labelNames",
] as const;

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
    problems.push(...problemsIn(() => expectFields(product, fields, at)));
    const { id, formulation, amount, lowRate } = product;
    if (lowRate !== undefined) problems.push(...problemsIn(() => expectFlag(lowRate, `${at}.lowRate`)));
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
    if (amount !== undefined) problems.push(...amountProblems(amount, id, `${at}.amount`));
    for (const [name, text] of Object.entries({ name: product.name, labelNote: product.labelNote })) {
      if (text === undefined || typeof text === "string") continue;
      problems.push({ code: "type", path: `${at}.${name}`, got: shown(text), expected: "a text" });
    }
  });
  products.forEach((product: MixProduct | null | undefined, i) => {
    for (const name of ["contains", "groups", "labelProhibits"] as const) {
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
    for (const name of ["addBefore", "addAfter", "labelNames"] as const) {
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
  // A copy: a hole in a list is a product that is not there, and forEach would pass it over.
  const products: readonly MixProduct[] = Array.from(input);
  const problems = problemsOf(products);
  if (problems.length > 0) throw new RatewrightError(problems);
  return products;
};
