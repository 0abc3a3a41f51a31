import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectOneOf,
  expectRecord,
  expectText,
  type FactSource,
  fail,
  frozen,
} from "../../quantity/index.js";
import { entryPlaces } from "../entry/entry-readers.js";
import type { LedgerEntry, LedgerWeather } from "../entry/ledger-entry.js";
import { readStatedFields } from "../entry/read-fields.js";
import { expectSource } from "../expect-source.js";

/** One thing that a record-keeping scheme asks for. */
export interface RecordItem {
  /** What it asks for, in words. */
  readonly what: string;
  /**
   * The fields of an entry that hold it, of its weather as `weather.wind`: each list is a way to answer, and
   * all fields of one way are needed.
   */
  readonly fields: readonly (readonly string[])[];
}

/** What a scheme asks to be written down of one application. */
export interface RecordScheme {
  readonly type: "record-scheme";
  readonly version: 1;
  readonly id: string;
  readonly name: string;
  readonly source: FactSource;
  readonly reached: "read" | "from memory" | "stated by the caller";
  /** To what it applies, in words: whether it does is for the caller to say. */
  readonly appliesTo: string;
  readonly items: readonly RecordItem[];
  readonly notHeld: readonly string[];
}

const product = { what: "name of the product", fields: [["productName"]] } as const;
const registration = { what: "registration number", fields: [["registrationNumber"]] } as const;
const site = { what: "crop, commodity or site", fields: [["site"]] } as const;
const location = { what: "location of the application", fields: [["location"]] } as const;
const area = { what: "size of the area treated", fields: [["area"]] } as const;

/** United States federal records of restricted-use pesticides. */
export const usRestrictedUseRecord: RecordScheme = /* @__PURE__ */ frozen({
  type: "record-scheme",
  version: 1,
  id: "us-7-cfr-110",
  name: "United States, restricted-use pesticides of private applicators (7 CFR 110)",
  source: {
    title: "7 CFR 110.3 Records, retention, and access to records",
    publisher: "U.S. Code of Federal Regulations",
    year: 2006,
    where: "(a)(1) to (5)",
    url: "http://edocket.access.gpo.gov/cfr_2006/janqtr/7cfr110.3.htm",
  },
  reached: "read",
  appliesTo:
    "restricted-use pesticides that a certified private applicator applies; states ask more of commercial applicators",
  items: [
    product,
    registration,
    { what: "total amount applied", fields: [["amount"], ["rate", "area"]] },
    area,
    site,
    location,
    { what: "month, day and year", fields: [["date"]] },
    { what: "name of the certified applicator", fields: [["applicator"]] },
    { what: "number of the certificate", fields: [["certificate"]] },
  ],
  notHeld: [
    "Spot applications of less than a tenth of an acre in one day, for which less is recorded.",
    "The deadlines: recorded within 14 days and kept for two years (Iowa State University Extension on the amendment of 1995).",
  ],
});

/**
 * United States application information for agricultural establishments such as sod farms: as the standard was
 * before its revision, with what that adds from memory.
 */
export const usWorkerProtectionRecord: RecordScheme = /* @__PURE__ */ frozen({
  type: "record-scheme",
  version: 1,
  id: "us-40-cfr-170",
  name: "United States, worker protection on agricultural establishments (40 CFR 170)",
  source:
    "40 CFR 170.122(c), read, the section before the revision: place, product, registration number, active ingredient, date and time, interval. The site, and that the time is told by start and end, from memory of 40 CFR 170.311: verify before use",
  reached: "from memory",
  appliesTo: "pesticides on agricultural establishments, sod farms among them; not lawns or parks",
  items: [
    product,
    registration,
    { what: "active ingredient", fields: [["activeIngredient"], ["contents"]] },
    site,
    { what: "location and description of the area", fields: [["location"], ["parts"]] },
    { what: "date, and time of start and end", fields: [["date", "start", "end"]] },
    { what: "restricted-entry interval", fields: [["reEntryHours"]] },
  ],
  notHeld: [
    "The safety data sheet, and where both are displayed.",
    "The time on display: within 24 hours of the application, and until 30 days after the restricted-entry interval (Penn State Extension).",
  ],
});

/** Professional users in the European Union. */
export const euPlantProtectionRecord: RecordScheme = /* @__PURE__ */ frozen({
  type: "record-scheme",
  version: 1,
  id: "eu-1107-2009-67",
  name: "European Union, professional users of plant protection products (Regulation 1107/2009, article 67)",
  source: {
    title: "Commission Implementing Regulation (EU) 2023/564",
    publisher: "European Commission",
    year: 2023,
    where:
      "recital 1, which restates article 67(1); the registration number, for applications from 2026 on, from a summary of the regulation",
    url: "http://data.europa.eu/eli/reg_impl/2023/564/oj",
  },
  reached: "read",
  appliesTo: "plant protection products in professional use",
  items: [
    product,
    registration,
    { what: "time of the application", fields: [["date"]] },
    { what: "dose", fields: [["rate"], ["amount", "area"]] },
    { what: "area", fields: [["area"], ["parts"]] },
    { what: "crop", fields: [["site"]] },
  ],
  notHeld: [
    "What Regulation (EU) 2023/564 also asks for from 2026 on: an electronic form that machines read, the code of the crop, the area by its coordinates or number, and the growth stage and the hour where the authorisation turns on them. Member states may have put it off, Germany to 2027.",
    "How long the record is kept: three years (from memory).",
  ],
});

/** What an entry lacks for a scheme. An empty list of gaps says nothing of what else the scheme asks. */
export interface RecordGaps {
  readonly type: "record-gaps";
  readonly version: 1;
  readonly scheme: string;
  readonly source: FactSource;
  readonly gaps: readonly { readonly what: string; readonly fields: readonly string[] }[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

const isThere = (entry: LedgerEntry, field: string): boolean => {
  const value: unknown = field.startsWith("weather.")
    ? entry.weather?.[field.slice(8) as keyof LedgerWeather]
    : entry[field as keyof LedgerEntry];
  return Array.isArray(value)
    ? value.length > 0
    : value !== undefined && value !== null && (typeof value !== "string" || value.trim() !== "");
};

const readItem = (input: unknown, path: string): RecordItem => {
  const { what, fields } = expectFields(input, ["what", "fields"], path, "an item it requires");
  const ways = expectList(fields, `${path}.fields`, "list of fields").map((way, k) =>
    expectList(way, `${path}.fields[${k}]`, "field").map((field, n) =>
      expectOneOf(field, entryPlaces, `${path}.fields[${k}][${n}]`),
    ),
  );
  return { what: expectText(what, `${path}.what`, "words"), fields: ways };
};

const sentences = (input: unknown, path: string): readonly string[] =>
  Array.isArray(input)
    ? Array.from(input, (text, i) => expectText(text, `${path}[${i}]`, "a sentence"))
    : fail("type", path, input, "a list of sentences");

/** Takes a scheme that may come from JSON, or throws all that is wrong with what is read of it. */
const expectScheme = (
  input: unknown,
): Pick<RecordScheme, "id" | "source" | "appliesTo" | "items" | "notHeld"> => {
  const scheme = expectRecord(input, "scheme", "a scheme, such as usRestrictedUseRecord");
  return allOf({
    id: () => expectText(scheme.id, "scheme.id", "a name"),
    source: () => expectSource(scheme.source, "scheme.source"),
    appliesTo: () => expectText(scheme.appliesTo, "scheme.appliesTo", "what it applies to, in words"),
    items: () => {
      const problems = checks();
      const items = expectList(scheme.items, "scheme.items", "item it requires").flatMap(
        (item, i) => problems.run(() => readItem(item, `scheme.items[${i}]`)) ?? [],
      );
      problems.done();
      return items;
    },
    notHeld: () => sentences(scheme.notHeld, "scheme.notHeld"),
  });
};

/** A record without the texts that hold nothing: an empty field of a form is no answer, and no mistake. */
const withoutBlanks = (input: unknown): unknown => {
  if (typeof input !== "object" || input === null || Array.isArray(input)) return input;
  const answers = Object.entries(input).filter(
    ([, value]) => typeof value !== "string" || value.trim() !== "",
  );
  return Object.fromEntries(
    answers.map(([name, value]) => [name, name === "weather" ? withoutBlanks(value) : value]),
  );
};

/**
 * What an entry of a ledger lacks of what a record-keeping scheme asks for.
 *
 * @param entry - an entry of a ledger
 * @param scheme - one of those that the library ships, each marked as read or from memory, or the caller's own
 * @throws RatewrightError what `ledger` throws for a field that cannot be read; `type`, `missing` for a scheme
 *
 * Source: stands with each scheme.
 *
 * @example
 * ```ts
 * import { missingForRecord, usRestrictedUseRecord } from "ratewright";
 * const { gaps } = missingForRecord(
 *   {
 *     id: "a", date: "2026-05-26", productName: "regulator 120 g/L EC", registrationNumber: "0000-00",
 *     area: { value: 14400, unit: "ft2" }, amount: { value: 1.8, unit: "fl oz" },
 *     site: "bowling green", location: "Alder Bank Park",
 *   },
 *   usRestrictedUseRecord,
 * );
 * gaps.map(({ what }) => what); // => ["name of the certified applicator", "number of the certificate"]
 * ```
 */
export const missingForRecord = (entry: LedgerEntry, scheme: RecordScheme): RecordGaps => {
  const problems = checks();
  readStatedFields(withoutBlanks(entry), "entry", problems);
  const read = problems.run(() => expectScheme(scheme));
  problems.done();
  const { id, source, appliesTo, items, notHeld } = read as NonNullable<typeof read>;
  return {
    type: "record-gaps",
    version: 1,
    scheme: id,
    source,
    gaps: items
      .filter(({ fields }) => !fields.some((way) => way.every((field) => isThere(entry, field))))
      .map(({ what, fields }) => ({ what, fields: [...new Set(fields.flat())] })),
    checked: items.map(({ what }) => what),
    notChecked: [`Whether the scheme applies: ${appliesTo}.`, ...notHeld],
  };
};
