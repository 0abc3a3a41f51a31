// What was done: entries, totals, tables, and the records that schemes ask for.

export type { Stated } from "./stated.js";

// rates: what applications supply per area, substance by substance.
export type { NutrientRates } from "./rates/nutrient-rates.js";

// entry: one application: its fields, its reading, and how limits see it.
export type { Ledger, LedgerEntry, LedgerWeather } from "./entry/ledger-entry.js";

// book: the ledger: corrections, totals, CSV and record schemes.
export { ledger, ledgerWith, standingEntries } from "./book/ledger.js";
export { type LedgerReading, ledgerCsv, ledgerFromCsv, type UnreadLine } from "./book/ledger-csv.js";
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
