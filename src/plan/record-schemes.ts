import type { FactSource } from "../quantity/index.js";
import { expectRecord } from "../quantity/index.js";
import type { LedgerEntry } from "./ledger-entry.js";

/** One thing that a record-keeping scheme asks for. */
export interface RecordItem {
  /** What it asks for, in words. */
  readonly what: string;
  /** The fields of an entry that hold it: each is a way to answer, and all fields of one way are needed. */
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

/** United States federal records of restricted-use pesticides, from memory. */
export const usRestrictedUseRecord: RecordScheme = {
  type: "record-scheme",
  version: 1,
  id: "us-7-cfr-110",
  name: "United States, restricted-use pesticides of private applicators (7 CFR 110)",
  source: "from memory of 7 CFR 110.3: not read, verify before use",
  reached: "from memory",
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
    "Spot applications of less than a tenth of an acre, for which less is asked.",
    "That the record is made within 14 days and kept for two years.",
  ],
};

/** United States application information for agricultural establishments such as sod farms, from memory. */
export const usWorkerProtectionRecord: RecordScheme = {
  type: "record-scheme",
  version: 1,
  id: "us-40-cfr-170",
  name: "United States, worker protection on agricultural establishments (40 CFR 170)",
  source: "from memory of 40 CFR 170.311: not read, verify before use",
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
  notHeld: ["The safety data sheet, and where both are displayed."],
};

/** Professional users in the European Union, from memory. */
export const euPlantProtectionRecord: RecordScheme = {
  type: "record-scheme",
  version: 1,
  id: "eu-1107-2009-67",
  name: "European Union, professional users of plant protection products (Regulation 1107/2009, article 67)",
  source: "from memory of Regulation (EC) No 1107/2009, article 67: not read, verify before use",
  reached: "from memory",
  appliesTo: "plant protection products in professional use",
  items: [
    product,
    { what: "time of the application", fields: [["date"]] },
    { what: "dose", fields: [["rate"], ["amount", "area"]] },
    { what: "area", fields: [["area"], ["parts"]] },
    { what: "crop", fields: [["site"]] },
  ],
  notHeld: [
    "The registration number and the electronic form that later rules of the Union ask for.",
    "That the record is kept for three years.",
  ],
};

/** What an entry lacks for a scheme. An empty list of gaps says nothing of what else the scheme asks. */
export interface RecordGaps {
  readonly scheme: string;
  readonly source: FactSource;
  readonly gaps: readonly { readonly what: string; readonly fields: readonly string[] }[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

const isThere = (entry: LedgerEntry, field: string): boolean => {
  const value: unknown = entry[field as keyof LedgerEntry];
  return Array.isArray(value) ? value.length > 0 : value !== undefined && value !== "";
};

/**
 * What an entry of a ledger lacks of what a record-keeping scheme asks for.
 *
 * @param entry - an entry of a ledger
 * @param scheme - one of those that the library ships, each marked as read or from memory, or the caller's own
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
 *     site: "bowling lawn", location: "Alder Bank Park",
 *   },
 *   usRestrictedUseRecord,
 * );
 * gaps.map(({ what }) => what); // => ["name of the certified applicator", "number of the certificate"]
 * ```
 */
export const missingForRecord = (entry: LedgerEntry, scheme: RecordScheme): RecordGaps => {
  expectRecord(entry, "entry", "an entry of a ledger");
  expectRecord(scheme, "scheme", "a scheme, such as usRestrictedUseRecord");
  return {
    scheme: scheme.id,
    source: scheme.source,
    gaps: scheme.items
      .filter(({ fields }) => !fields.some((way) => way.every((field) => isThere(entry, field))))
      .map(({ what, fields }) => ({ what, fields: [...new Set(fields.flat())] })),
    checked: scheme.items.map(({ what }) => what),
    notChecked: [`Whether the scheme applies: ${scheme.appliesTo}.`, ...scheme.notHeld],
  };
};
