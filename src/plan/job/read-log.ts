import { type CivilDate, compareDates } from "../../calendar/index.js";
import { civilDateAt, type HistoryRow, ledgerHistory, readSupplies } from "../../ledger/house.js";
import { type Ledger, ledger } from "../../ledger/index.js";
import { described } from "../../quantity/house.js";
import {
  type Checks,
  expectFields,
  expectList,
  expectText,
  fail,
  type Problem,
  type Quantity,
  shown,
} from "../../quantity/index.js";
import type { RateOf } from "../../tank/index.js";
import type { Job, JobLogEntry } from "./job.js";
import { namedProduct, statedId } from "./named-product.js";
import type { ReadProduct } from "./read-products.js";
import { expectParts, type ReadSite } from "./read-site.js";
import { taggedRate } from "./tagged-rate.js";
import type { JobProducts, ReadTreatment } from "./treatments.js";

/** An entry of the log, read and checked. */
export interface ReadLogEntry {
  readonly date: CivilDate;
  readonly path: string;
  readonly treatment?: string;
  readonly parts?: readonly string[];
  readonly product?: ReadProduct;
  readonly rate?: RateOf;
  readonly nutrients?: readonly Quantity<string, string>[];
  /** Of an entry of the ledger: what it put down, read when it is asked for. */
  readonly row?: () => HistoryRow;
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

/** What an entry has to name beside its date, and what it may not name together. */
const entryConflicts = (entry: JobLogEntry, at: string): readonly Problem[] => {
  const { product, rate, nutrients, treatment } = entry;
  const found: Problem[] = [];
  const missing = (path: string, got: string, expected: string): void => {
    found.push({ code: "missing", path, got, expected });
  };
  if (product !== undefined && rate === undefined)
    missing(`${at}.rate`, "nothing", "the rate of the product");
  if (rate !== undefined && product === undefined)
    missing(`${at}.product`, "nothing", "the product of the rate");
  if (product !== undefined && nutrients !== undefined) {
    const expected = "only one of them: both would count twice";
    found.push({ code: "conflict", path: at, got: "product and nutrients", expected });
  }
  if ([product, rate, nutrients, treatment].every((field) => field === undefined))
    missing(at, "only a date", "a product with its rate, nutrients, or a treatment");
  return found;
};

/** What the log of a job is read beside. */
interface JobAround {
  readonly visit: CivilDate | undefined;
  readonly site: ReadSite | undefined;
  readonly products: JobProducts;
}

const readEntry = (
  input: unknown,
  at: string,
  { visit, site, products }: JobAround,
  problems: Checks,
): ReadLogEntry | undefined => {
  const before = problems.count();
  const record = problems.run(() => expectFields(input, logFields, at, "an entry of the log"));
  if (record === undefined) return undefined;
  const entry = record as JobLogEntry; // Each field is read below before it is used.
  const date = problems.run(() => civilDateAt(entry.date, `${at}.date`));
  if (date !== undefined && visit !== undefined && compareDates(date, visit) > 0) {
    const expected = `a date up to the visit of ${visit}`;
    problems.add({ code: "date", path: `${at}.date`, got: date, expected });
  }
  const parts =
    entry.parts === undefined ? undefined : problems.run(() => expectParts(entry.parts, site, `${at}.parts`));
  if (entry.treatment !== undefined)
    problems.run(() => expectText(entry.treatment, `${at}.treatment`, "the name of a treatment"));
  if (entry.note !== undefined) problems.run(() => expectText(entry.note, `${at}.note`, "text"));
  const product =
    entry.product === undefined
      ? undefined
      : problems.run(() => namedProduct(products, entry.product, `${at}.product`));
  const id = statedId(products, entry.product);
  const rate =
    id !== undefined && entry.rate !== undefined
      ? problems.run(() => taggedRate(entry.rate, id, `${at}.rate`))
      : undefined;
  for (const problem of entryConflicts(entry, at)) problems.add(problem);
  const stated =
    entry.nutrients === undefined
      ? undefined
      : problems.run(() => expectList(entry.nutrients, `${at}.nutrients`, "nutrient"));
  const nutrients = stated && readSupplies(stated, `${at}.nutrients`, problems);
  if (problems.count() > before || date === undefined || site === undefined) return undefined;
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

/** Reads the log of a job; what is wrong goes to `problems`. */
const readLog = (
  input: unknown,
  visit: CivilDate | undefined,
  site: ReadSite | undefined,
  products: JobProducts,
  problems: Checks,
): readonly ReadLogEntry[] => {
  if (input === undefined) return [];
  if (!Array.isArray(input)) {
    problems.add({
      code: "type",
      path: "log",
      got: shown(input),
      expected: "a list of earlier applications",
    });
    return [];
  }
  const around = { visit, site, products };
  return Array.from(input as readonly unknown[])
    .flatMap((item, i) => readEntry(item, `log[${i}]`, around, problems) ?? [])
    .sort((a, b) => compareDates(a.date, b.date));
};

/** A ledger as it comes from a store; what is wrong goes to `problems`. An empty one where there is none. */
export const ledgerOf = (input: unknown, at: string, problems: Checks): Ledger => {
  const none: Ledger = { type: "ledger", version: 1, entries: [] };
  if (input === undefined) return none;
  const read = problems.run(() => {
    const given = expectFields(input, ["type", "version", "entries"], at, "a ledger");
    if (given.type !== "ledger") fail("type", `${at}.type`, given.type, '"ledger"');
    if (given.version !== 1) fail("type", `${at}.version`, given.version, "1");
    return given.entries;
  });
  return read === undefined ? none : (problems.run(() => ledger(read as Ledger["entries"]), at) ?? none);
};

/** What the ledger of a job is read beside. */
interface BookAround {
  readonly visit: CivilDate | undefined;
  readonly products: ReadonlyMap<string, ReadProduct>;
  readonly treatments: readonly ReadTreatment[];
}

const putDownBy = (treatment: ReadTreatment): readonly string[] =>
  treatment.method === "spread" ? [treatment.product.id] : treatment.mix.map(({ product }) => product.id);

/** The ledger of a job as entries of its log, in the order of the dates; what is wrong goes to `problems`. */
const readBook = (
  input: unknown,
  { visit, products, treatments }: BookAround,
  problems: Checks,
): readonly ReadLogEntry[] => {
  const book = ledgerOf(input, "ledger", problems);
  const planned = new Set(
    treatments.flatMap((treatment) =>
      putDownBy(treatment).map((product) => `${visit} ${treatment.id} ${product}`),
    ),
  );
  for (const { id } of book.entries)
    if (planned.has(id))
      problems.add({
        code: "duplicate",
        path: "ledger",
        got: id,
        expected: "the ledger from before this visit: its own entries would count twice",
      });
  const named = new Set(treatments.map(({ id }) => id));
  const history = ledgerHistory(book, "ledger");
  return history.dates.map((date, i): ReadLogEntry => {
    const { treatment, product: id = "" } = history.entry(i);
    const parts = history.partsOf(i);
    const product = products.get(id);
    return {
      date,
      path: "ledger",
      // The treatment of another job had a name of its own: what it put down says which one of this job it was.
      ...(treatment !== undefined && (named.has(treatment) || product === undefined) && { treatment }),
      ...(parts.length > 0 && { parts }),
      ...(product && { product }),
      row: () => history.row(i),
    };
  });
};

/** What went down before the visit, by the log of a job or by its ledger; what is wrong goes to `problems`. */
export const readBefore = (
  job: Job,
  around: BookAround & { readonly site: ReadSite | undefined; readonly named: JobProducts },
  problems: Checks,
): readonly ReadLogEntry[] => {
  if (job.ledger === undefined) return readLog(job.log, around.visit, around.site, around.named, problems);
  if (job.log !== undefined)
    problems.run(() =>
      fail("conflict", "ledger", described("log and ledger"), "only one of them: both would count twice"),
    );
  return readBook(job.ledger, around, problems);
};
