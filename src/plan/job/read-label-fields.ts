import {
  type Checks,
  expectOneOf,
  expectRecord,
  expectText,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import { mixIngredients } from "../../tank/index.js";
import { readUse } from "../grow-in/read-turf.js";
import type { JobProduct } from "./job.js";

const boundedText = (input: unknown, path: string, most: number): void => {
  const text = expectText(input, path, "text");
  if (text.length > most) outOfRange(path, text, { max: most, count: "characters" });
};

const textFields = ["name", "labelNote", "registrationNumber", "lot"] as const;
const idFields = ["addBefore", "addAfter", "groups", "labelProhibits"] as const;

/** Checks the fields that are taken as they stand. */
export const readLabelFields = (product: JobProduct, at: string, problems: Checks): void => {
  for (const name of textFields) {
    if (product[name] !== undefined)
      problems.run(() => boundedText(product[name], `${at}.${name}`, name === "labelNote" ? 1000 : 200));
  }
  for (const name of idFields) {
    const ids: unknown = product[name];
    if (ids === undefined) continue;
    problems.run(() => {
      if (!Array.isArray(ids)) fail("type", `${at}.${name}`, ids, "a list of names");
      for (const [i, id] of (ids as unknown[]).entries())
        expectText(id, `${at}.${name}[${i}]`, "a name, such as the id of a product");
    });
  }
  const { lowRate, slowNitrogen, nitrogen, basis, contains } = product;
  if (product.use !== undefined) readUse(product.use, `${at}.use`, problems);
  if (contains !== undefined)
    problems.run(() => {
      // An empty list says that it contains none of them.
      if (!Array.isArray(contains)) fail("type", `${at}.contains`, contains, "a list of ingredients");
      for (const [i, item] of (contains as unknown[]).entries())
        expectOneOf(item, mixIngredients, `${at}.contains[${i}]`);
    });
  if (lowRate !== undefined && typeof lowRate !== "boolean")
    problems.run(() => fail("type", `${at}.lowRate`, lowRate, "true or false"));
  if (slowNitrogen !== undefined)
    problems.run(() =>
      expectRecord(slowNitrogen, `${at}.slowNitrogen`, "percent of product, of N:slow/product"),
    );
  if (nitrogen !== undefined)
    problems.run(() => expectRecord(nitrogen, `${at}.nitrogen`, "the label's breakdown of nitrogen"));
  if (basis !== undefined) problems.run(() => expectOneOf(basis, ["oxide", "element"], `${at}.basis`));
};
