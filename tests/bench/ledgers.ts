// The large ledger of the benches, with what is put to it. By its types alone: who measures brings the library.
import type { Ledger, LedgerEntry, Limit } from "ratewright";

const dayAfter = (first: string, days: number): LedgerEntry["date"] =>
  new Date(Date.parse(first) + days * 86_400_000).toISOString().slice(0, 10) as LedgerEntry["date"];

const entry = (i: number, part: string, date: LedgerEntry["date"]): LedgerEntry => {
  const base = { id: `e${i}`, date, parts: [part] };
  return i % 2 === 0
    ? { ...base, supplies: [{ value: 0.001, unit: "lb/1000 ft2", of: "N" }] }
    : {
        ...base,
        product: "feed-a",
        analysis: "24-0-11",
        amount: { value: 0.2, unit: "lb" },
        area: { value: 59_400, unit: "ft2" },
      };
};
const parts = ["north pitch", "south pitch", "bowling green", "meadow"];

/** Entries of seven years on four parts; or all in one year on one, the worst case, in which every entry counts. */
const largeLedger = (size: number, crowded: boolean): Ledger => ({
  type: "ledger",
  version: 1,
  entries: Array.from({ length: size }, (_, i) =>
    crowded
      ? entry(i, "meadow", dayAfter("2026-01-01", i % 365))
      : entry(i, parts[i % 4] as string, dayAfter("2020-01-01", (i * 7) % 2555)),
  ),
});

/** A large ledger as it comes out of a store, read from its JSON. */
export const storedLedger = (size: number, crowded: boolean): Ledger =>
  JSON.parse(JSON.stringify(largeLedger(size, crowded))) as Ledger;

export const ledgerLimits: readonly Limit[] = [
  { amount: { value: 4, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "bench" },
  { amount: { value: 0.7, unit: "lb/1000 ft2", of: "N:quick" }, per: { days: 30 }, source: "bench" },
  { amount: { value: 0.5, unit: "lb/1000 ft2", of: "P2O5" }, per: { months: 12 }, source: "bench" },
  { kind: "count", of: "N", atMost: 8, per: "calendar year", source: "bench" },
  { kind: "interval", of: "N", atLeastDays: 14, source: "bench" },
];

export const ledgerProposal = {
  date: "2026-06-08",
  parts: ["meadow"],
  supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }],
} as const;
