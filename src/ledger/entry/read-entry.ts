import { type Checks, shown } from "../../quantity/index.js";
import { airReaders, entryFields, entryReaders } from "./entry-readers.js";
import { type Labels, labelOf } from "./entry-row.js";
import type { LedgerEntry } from "./ledger-entry.js";
import { placeOf, readFields } from "./read-fields.js";
import { readSupplies } from "./read-supplies.js";

const idAndDate: readonly string[] = ["id", "date"];

/** What an entry states, field by field. */
export type SeenEntry = { -readonly [K in keyof LedgerEntry]?: LedgerEntry[K] | undefined };

/**
 * Every field, empty: records of one shape are read many times as fast as the entries of a caller, no two of
 * which need to have one.
 */
const nothingSeen = (): { [K in keyof Required<LedgerEntry>]: LedgerEntry[K] | undefined } => ({
  id: undefined,
  date: undefined,
  start: undefined,
  end: undefined,
  parts: undefined,
  area: undefined,
  product: undefined,
  productName: undefined,
  form: undefined,
  analysis: undefined,
  slowNitrogen: undefined,
  density: undefined,
  contents: undefined,
  amount: undefined,
  rate: undefined,
  supplies: undefined,
  treatment: undefined,
  target: undefined,
  method: undefined,
  site: undefined,
  location: undefined,
  registrationNumber: undefined,
  activeIngredient: undefined,
  restrictedUse: undefined,
  lot: undefined,
  applicator: undefined,
  certificate: undefined,
  carrierVolume: undefined,
  reEntryHours: undefined,
  weather: undefined,
  note: undefined,
  corrects: undefined,
  voids: undefined,
});

/** Reads an entry, or a proposal, which has no id; what is wrong goes to `problems`. */
export const readEntry = (
  input: unknown,
  path: string,
  problems: Checks,
  labels: Labels,
  needed: readonly string[] = idAndDate,
): SeenEntry | undefined => {
  const before = problems.count();
  const entry: SeenEntry = nothingSeen();
  const record = readFields(input, entryReaders, needed, path, problems, entry as Record<string, unknown>);
  if (record === undefined) return undefined;
  // What a class gives by its prototype was not enumerated.
  if (Object.getPrototypeOf(record) !== Object.prototype)
    for (const name of entryFields) (entry as Record<string, unknown>)[name] = record[name];
  const at = (name: string): string => placeOf(path, name);
  if (entry.weather !== undefined)
    readFields(entry.weather, airReaders, [], at("weather"), problems, undefined, "the weather");
  const conflict = (field: string, got: string, expected: string): void =>
    problems.add({ code: "conflict", path: at(field), got, expected });
  if (entry.analysis !== undefined) {
    if (problems.count() === before) problems.run(() => labelOf(entry as LedgerEntry, labels, path));
  } else if (entry.slowNitrogen !== undefined) {
    conflict("slowNitrogen", "no analysis", "the analysis that the slow nitrogen is part of");
  }
  if (entry.supplies !== undefined && (entry.analysis !== undefined || entry.contents !== undefined))
    conflict(
      "supplies",
      "supplies together with an analysis or contents",
      "only one of them: both would count twice",
    );
  const ownProduct = (name: "amount" | "rate", of: unknown): void => {
    if (typeof of !== "string" || !of.startsWith("product:") || of === `product:${entry.product}`) return;
    const expected = `product, or product:${entry.product ?? "... with the id in the field product"}`;
    problems.add({ code: "substance/mismatch", path: `${at(name)}.of`, got: shown(of), expected });
  };
  if (entry.amount !== undefined) ownProduct("amount", entry.amount?.of);
  if (entry.rate !== undefined) ownProduct("rate", entry.rate?.of);
  if (entry.amount !== undefined && entry.rate !== undefined)
    conflict("rate", "an amount and a rate", "one of them; the rate follows from amount and area");
  if (entry.amount !== undefined && entry.area === undefined)
    conflict("area", "an amount without an area", "the area over which the amount went");
  if (entry.voids === true && entry.corrects === undefined)
    conflict("voids", "no corrects", "the id of the entry that never happened, in corrects");
  if (Array.isArray(entry.supplies) && problems.count() === before)
    entry.supplies = readSupplies(entry.supplies, at("supplies"), problems);
  return entry;
};
