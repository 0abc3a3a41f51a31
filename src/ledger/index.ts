// What was done: entries, totals, tables, and the records that schemes ask for.

export type { Stated } from "./stated.js";

// rates: what applications supply per area, substance by substance.
export type { NutrientRates } from "./rates/nutrient-rates.js";

// entry: one application: its fields, its reading, and how limits see it.
export type { Ledger, LedgerEntry, LedgerWeather } from "./entry/ledger-entry.js";

// book: the ledger: corrections, totals and record schemes.
export { ledger, ledgerWith, standingEntries } from "./book/ledger.js";
export { type LedgerTotals, ledgerTotals } from "./book/ledger-totals.js";
export {
  euPlantProtectionRecord,
  missingForRecord,
  type RecordGaps,
  type RecordItem,
  type RecordScheme,
  usRestrictedUseRecord,
  usWorkerProtectionRecord,
} from "./book/record-schemes.js";

// csv: a ledger as a table that other programs open, and back.
export { ledgerCsv } from "./csv/ledger-csv.js";
export { type LedgerReading, ledgerFromCsv, type UnreadLine } from "./csv/ledger-from-csv.js";

// rotation: how a season rotates modes of action, by group.
export type { PlannedActives } from "./rotation/applied-actives.js";
export { type ResistanceCodeList, resistanceCodeLists } from "./rotation/resistance-codes.js";
export {
  type GroupUse,
  type ResistanceRotation,
  resistanceRotation,
} from "./rotation/resistance-rotation.js";
