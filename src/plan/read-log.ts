import { type CivilDate, compareDates, monthDay } from "../calendar/index.js";
import { type Checks, expectNumber, expectQuantity, fail, type Quantity, shown } from "../quantity/index.js";
import type { RateOf } from "../tank/index.js";
import { expectFields, expectList, expectRecord, expectText } from "./fields.js";
import type { JobLimit, JobLogEntry, LimitPeriod } from "./job.js";
import { type ReadProduct, taggedRate } from "./read-products.js";
import { expectParts, type ReadSite } from "./read-site.js";
import { expectDate, isNutrientName } from "./read-treatments.js";

/** An entry of the log, read and checked. */
export interface ReadLogEntry {
  readonly date: CivilDate;
  readonly path: string;
  readonly treatment?: string;
  readonly parts?: readonly string[];
  readonly product?: ReadProduct;
  readonly rate?: RateOf;
  readonly nutrients?: readonly Quantity<"mass/area", string>[];
}

/** A limit, read and checked. */
export interface ReadLimit {
  readonly path: string;
  readonly amount: Quantity<"mass/area", string>;
  readonly per: LimitPeriod;
  readonly source: string;
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

const nutrientRate = (input: unknown, path: string): Quantity<"mass/area", string> => {
  const of = expectRecord(input, path, "a rate of a nutrient").of;
  if (of === undefined) fail("missing", `${path}.of`, of, "the nutrient, such as N or P2O5");
  const rate = expectQuantity(input, { dimension: "mass/area", bound: "non-negative" }, path);
  return isNutrientName(rate.of)
    ? rate
    : fail("substance/mismatch", `${path}.of`, rate.of, "a nutrient, such as N or P2O5");
};

const readEntry = (
  input: unknown,
  at: string,
  visit: CivilDate | undefined,
  site: ReadSite,
  products: ReadonlyMap<string, ReadProduct>,
  door: Checks,
): ReadLogEntry | undefined => {
  const before = door.count();
  const record = door.run(() => expectFields(input, logFields, at, "an entry of the log"));
  if (record === undefined) return undefined;
  const entry = record as unknown as JobLogEntry;
  const date = door.run(() => expectDate(entry.date, `${at}.date`));
  if (date !== undefined && visit !== undefined && compareDates(date, visit) > 0) {
    door.add({ code: "date", path: `${at}.date`, got: date, expected: `a date up to the visit of ${visit}` });
  }
  const parts =
    entry.parts === undefined ? undefined : door.run(() => expectParts(entry.parts, site, `${at}.parts`));
  const product =
    entry.product === undefined
      ? undefined
      : door.run(
          () =>
            products.get(entry.product as string) ??
            fail("missing", `${at}.product`, entry.product, "the id of a product of this job", {
              choices: [...products.keys()],
            }),
        );
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
  const nutrients =
    entry.nutrients === undefined
      ? undefined
      : door
          .run(() => expectList(entry.nutrients, `${at}.nutrients`, "nutrient"))
          ?.flatMap((item, i) => door.run(() => nutrientRate(item, `${at}.nutrients[${i}]`)) ?? []);
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
  products: ReadonlyMap<string, ReadProduct>,
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

const readPeriod = (input: unknown, path: string): LimitPeriod => {
  if (input === "application" || input === "calendar year") return input;
  const wanted = '"application", "calendar year", a season { from, to } or { days }';
  const period = expectRecord(input, path, wanted);
  if ("days" in period) {
    const days = expectNumber(period.days, `${path}.days`, { min: 1, max: 3660 });
    return Number.isInteger(days) ? { days } : fail("range", `${path}.days`, days, "a whole number of days");
  }
  if (!("from" in period && "to" in period)) return fail("type", path, input, wanted);
  return {
    from: monthDay(period.from as string, `${path}.from`),
    to: monthDay(period.to as string, `${path}.to`),
  };
};

/** Reads the limits of a job; problems go to `door`. */
export const readLimits = (input: unknown, door: Checks): readonly ReadLimit[] => {
  if (input === undefined) return [];
  if (!Array.isArray(input)) {
    door.add({ code: "type", path: "limits", got: shown(input), expected: "a list of limits" });
    return [];
  }
  return input.flatMap((item, i) => {
    const at = `limits[${i}]`;
    const record = door.run(() => expectFields(item, ["amount", "per", "source"], at, "a limit")) as
      | JobLimit
      | undefined;
    if (record === undefined) return [];
    const amount = door.run(() => nutrientRate(record.amount, `${at}.amount`));
    const per = door.run(() => readPeriod(record.per, `${at}.per`));
    const source = door.run(() => expectText(record.source, `${at}.source`, "where the limit is stated"));
    return amount && per && source ? [{ path: at, amount, per, source }] : [];
  });
};
