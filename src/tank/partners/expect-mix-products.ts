import { described, withoutUndefined } from "../../quantity/house.js";
import {
  allOf,
  expectAmount,
  expectFields,
  expectFlag,
  expectOneOf,
  expectRecord,
  fail,
  inUnit,
  outOfRange,
} from "../../quantity/index.js";
import { expectFormulation } from "../formulation/expect-formulation.js";
import { eachOf, expectSameProduct, newIdOf, textOf } from "../inputs.js";
import type { MixAmount, MixProduct } from "./mix-product.js";
import { type MixIngredient, mixIngredients } from "./mix-rules.js";

/** What is read of a product of a mix. */
export const mixProductFields: readonly (keyof MixProduct)[] = [
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
];

/** The longest note of a label that is taken. */
const longestNote = 2000;

/** What a field says, read; nothing where it says nothing. */
const optional = <T>(input: unknown, read: (input: unknown) => T): T | undefined =>
  input === undefined ? undefined : read(input);

/** A mass or a volume that goes in, of this product and no other: a quantity of its own. */
const amountOf = (input: unknown, id: unknown, path: string): MixAmount => {
  const q = expectAmount(input, { dimensions: ["mass", "volume"], bound: "non-negative" }, path);
  if (typeof id === "string" && id !== "") expectSameProduct(q.of, id, path, q);
  return inUnit(q, q.unit);
};

/** A list of words, which may be empty. */
const wordsOf = <T>(
  input: unknown,
  path: string,
  of: string,
  read: (word: unknown, at: string) => T,
): readonly T[] =>
  Array.isArray(input)
    ? input.length === 0
      ? []
      : eachOf(input, path, of, read)
    : fail("type", path, input, `a list of ${of}s`);

const ingredientIn = (word: unknown, at: string): MixIngredient => expectOneOf(word, mixIngredients, at);

const nameIn = (word: unknown, at: string): string => textOf(word, at, "a name");

/** One product of the mix; `seen` are the ids before it, `all` those of the whole mix. */
const productOf = (input: unknown, at: string, seen: Set<string>, all: ReadonlySet<unknown>): MixProduct => {
  const product: { readonly [K in keyof MixProduct]?: unknown } = expectRecord(input, at, "a product");
  const idIn = (word: unknown, path: string): string =>
    typeof word === "string" && all.has(word)
      ? word
      : fail("missing", path, word, "the id of a product of this mix");
  const idsOf = (field: "addBefore" | "addAfter" | "labelNames"): readonly string[] | undefined =>
    optional(product[field], (list) => wordsOf(list, `${at}.${field}`, "product id", idIn));
  const namesOf = (field: "groups" | "labelProhibits"): readonly string[] | undefined =>
    optional(product[field], (list) => wordsOf(list, `${at}.${field}`, "name", nameIn));
  const {
    known: _,
    id,
    formulation,
    ...rest
  } = allOf({
    known: () => expectFields(product, mixProductFields, at),
    id: () => newIdOf(product.id, `${at}.id`, seen),
    formulation: () => expectFormulation(product.formulation, `${at}.formulation`),
    name: () => optional(product.name, (text) => textOf(text, `${at}.name`, "a text")),
    amount: () => optional(product.amount, (amount) => amountOf(amount, product.id, `${at}.amount`)),
    addBefore: () => idsOf("addBefore"),
    addAfter: () => idsOf("addAfter"),
    labelNote: () =>
      optional(product.labelNote, (text) => textOf(text, `${at}.labelNote`, "a text", longestNote)),
    lowRate: () => optional(product.lowRate, (flag) => expectFlag(flag, `${at}.lowRate`)),
    contains: () =>
      optional(product.contains, (list) => wordsOf(list, `${at}.contains`, "ingredient", ingredientIn)),
    groups: () => namesOf("groups"),
    labelProhibits: () => namesOf("labelProhibits"),
    labelNames: () => idsOf("labelNames"),
  });
  return { id, formulation, ...withoutUndefined(rest) };
};

/** More products than this in one tank are taken for a slip: every two of them are held against each other. */
const mostProducts = 50;

/** Takes a list of products to mix as records of their own, or throws with all that is wrong with it. */
export const expectMixProducts = (input: unknown): readonly MixProduct[] => {
  if (Array.isArray(input) && input.length > mostProducts)
    outOfRange(
      "products",
      described(`${input.length} products`),
      { max: mostProducts, count: "products" },
      "{} in one tank",
    );
  const seen = new Set<string>();
  const all = new Set<unknown>(
    Array.isArray(input) ? input.map((product: { readonly id?: unknown } | null) => product?.id) : [],
  );
  return eachOf(input, "products", "product", (product, at) => productOf(product, at, seen, all));
};
