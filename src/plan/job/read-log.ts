import { type CivilDate, compareDates } from "../../calendar/index.js";
import { civilDateAt, readSupplies } from "../../ledger/house.js";
import {
  type Checks,
  expectFields,
  expectList,
  expectText,
  type Quantity,
  shown,
} from "../../quantity/index.js";
import type { RateOf } from "../../tank/index.js";
import type { JobLogEntry } from "./job.js";
import { namedProduct } from "./named-product.js";
import type { ReadProduct } from "./read-products.js";
import { expectParts, type ReadSite } from "./read-site.js";
import { taggedRate } from "./tagged-rate.js";
import type { JobProducts } from "./treatments.js";

/** An entry of the log, read and checked. */
export interface ReadLogEntry {
  readonly date: CivilDate;
  readonly path: string;
  readonly treatment?: string;
  readonly parts?: readonly string[];
  readonly product?: ReadProduct;
  readonly rate?: RateOf;
  readonly nutrients?: readonly Quantity<string, string>[];
}

const logFields = [
  "date",
  "treatment",
  "parts",
  "product",
  "rate",
  "nutrients",
  "note",
] as const satisfies readonly (keyof JobLogEntry)[];

const readEntry = (
  input: unknown,
  at: string,
  visit: CivilDate | undefined,
  site: ReadSite,
  products: JobProducts,
  door: Checks,
): ReadLogEntry | undefined => {
  const before = door.count();
  const record = door.run(() => expectFields(input, logFields, at, "an entry of the log"));
  if (record === undefined) return undefined;
  const entry = record as unknown as JobLogEntry;
  const date = door.run(() => civilDateAt(entry.date, `${at}.date`));
  if (date !== undefined && visit !== undefined && compareDates(date, visit) > 0) {
    door.add({ code: "date", path: `${at}.date`, got: date, expected: `a date up to the visit of ${visit}` });
  }
  const parts =
    entry.parts === undefined ? undefined : door.run(() => expectParts(entry.parts, site, `${at}.parts`));
  if (entry.treatment !== undefined)
    door.run(() => expectText(entry.treatment, `${at}.treatment`, "the name of a treatment"));
  if (entry.note !== undefined) door.run(() => expectText(entry.note, `${at}.note`, "text"));
  const product =
    entry.product === undefined
      ? undefined
      : door.run(() => namedProduct(products, entry.product, `${at}.product`));
  const rate =
    product && entry.rate !== undefined
      ? door.run(() => taggedRate(entry.rate, product.id, `${at}.rate`))
      : undefined;
  if (entry.product !== undefined && entry.rate === undefined) {
    door.add({ code: "missing", path: `${at}.rate`, got: "nothing", expected: "the rate of the product" });
  }
  if (entry.rate !== undefined && entry.product === undefined) {
    door.add({ code: "missing", path: `${at}.product`, got: "nothing", expected: "the product of the rate" });
  }
  if (entry.product !== undefined && entry.nutrients !== undefined) {
    door.add({
      code: "conflict",
      path: at,
      got: "product and nutrients",
      expected: "one of them, or they count twice",
    });
  }
  if (entry.product === undefined && entry.nutrients === undefined && entry.treatment === undefined) {
    door.add({
      code: "missing",
      path: at,
      got: "only a date",
      expected: "a product with its rate, nutrients, or a treatment",
    });
  }
  const stated =
    entry.nutrients === undefined
      ? undefined
      : door.run(() => expectList(entry.nutrients, `${at}.nutrients`, "nutrient"));
  const nutrients = stated && readSupplies(stated, `${at}.nutrients`, door);
  if (door.count() > before || date === undefined) return undefined;
  return {
    date,
    path: at,
    ...(entry.treatment === undefined ? {} : { treatment: entry.treatment }),
    ...(parts && { parts }),
    ...(product && { product }),
    ...(rate && { rate }),
    ...(nutrients && { nutrients }),
  };
};

/** Reads the log of a job; problems go to `door`. */
export const readLog = (
  input: unknown,
  visit: CivilDate | undefined,
  site: ReadSite | undefined,
  products: JobProducts,
  door: Checks,
): readonly ReadLogEntry[] => {
  if (input === undefined || site === undefined) return [];
  if (!Array.isArray(input)) {
    door.add({ code: "type", path: "log", got: shown(input), expected: "a list of what went down before" });
    return [];
  }
  return input
    .flatMap((item, i) => readEntry(item, `log[${i}]`, visit, site, products, door) ?? [])
    .sort((a, b) => compareDates(a.date, b.date));
};
