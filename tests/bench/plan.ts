// Checking a ledger of 100,000 entries, beside a loop written by hand over the same entries.

import {
  ledger as book,
  type Ledger,
  type LedgerEntry,
  ledgerTotals,
  ledgerWith,
} from "../../src/ledger/index.js";
import { checkLimits, type Limit } from "../../src/limits/index.js";

const size = 100_000;
const parts = ["north pitch", "south pitch", "bowling lawn", "meadow"];
const day = (i: number): LedgerEntry["date"] =>
  new Date(Date.UTC(2020, 0, 1) + (i % 2555) * 86_400_000).toISOString().slice(0, 10) as LedgerEntry["date"];

const entries = Array.from({ length: size }, (_, i): LedgerEntry => {
  const base = { id: `e${i}`, date: day(i * 7), parts: [parts[i % 4] as string] };
  return i % 2 === 0
    ? { ...base, supplies: [{ value: 0.001, unit: "lb/1000 ft2", of: "N" }] }
    : {
        ...base,
        product: "feed-a",
        analysis: "24-0-11",
        amount: { value: 0.2, unit: "lb" },
        area: { value: 59_400, unit: "ft2" },
      };
});
const ledger: Ledger = { type: "ledger", version: 1, entries };
/** All of it on one part and in one year: the worst case, in which every entry counts. */
const crowded: Ledger = {
  type: "ledger",
  version: 1,
  entries: entries.map((entry, i) => ({
    ...entry,
    parts: ["meadow"],
    date: day(366 + (i % 365)).replace(/^\d{4}/, "2026") as "2026-01-01",
  })),
};
const limits: readonly Limit[] = [
  { amount: { value: 4, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "bench" },
  { amount: { value: 0.7, unit: "lb/1000 ft2", of: "N:quick" }, per: { days: 30 }, source: "bench" },
  { amount: { value: 0.5, unit: "lb/1000 ft2", of: "P2O5" }, per: { months: 12 }, source: "bench" },
  { kind: "count", of: "N", atMost: 8, per: "calendar year", source: "bench" },
  { kind: "interval", of: "N", atLeastDays: 14, source: "bench" },
];
const proposal = {
  date: "2026-06-08",
  parts: ["meadow"],
  supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }],
} as const;

const byHand = (from: Ledger): number => {
  let total = 0;
  const corrected = new Set<string>();
  for (const entry of from.entries) if (entry.corrects !== undefined) corrected.add(entry.corrects);
  for (const entry of from.entries) {
    const { date, parts: on, id } = entry;
    if (!/^\d{4}-\d{2}-\d{2}$/.test(date)) throw new Error(id);
    if (corrected.has(id) || !date.startsWith("2026") || !on?.includes("meadow")) continue;
    if (entry.supplies !== undefined) {
      const { value, of, unit } = entry.supplies[0] as { value: number; of: string; unit: string };
      if (!Number.isFinite(value) || of !== "N" || unit !== "lb/1000 ft2") throw new Error(id);
      total += value;
    } else {
      const { amount, area, analysis } = entry;
      if (amount === undefined || area === undefined || analysis !== "24-0-11") throw new Error(id);
      total += ((amount.value * 24) / 100 / area.value) * 1000;
    }
  }
  return total;
};

/** The best of a few runs, in milliseconds of processor time: other work on the machine does not count. */
const measured = (run: () => unknown): string => {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 5; round++) {
    const start = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1000);
  }
  return best.toFixed(0).padStart(6);
};

console.log(`${size} entries, 5 limits, ms`);
console.log(`seven years, four parts   by hand, one limit ${measured(() => byHand(ledger))}`);
console.log(
  `                          checkLimits        ${measured(() => checkLimits({ ledger, proposal, limits }))}`,
);
console.log(`one year, one part        by hand, one limit ${measured(() => byHand(crowded))}`);
console.log(
  `                          checkLimits        ${measured(() => checkLimits({ ledger: crowded, proposal, limits }))}`,
);
console.log(
  `                          ledgerTotals       ${measured(() => ledgerTotals({ ledger: crowded, from: "2026-01-01", to: "2026-12-31", part: "meadow" }))}`,
);

// The same entries in a ledger that was made here: they were read once, and are frozen.
const own = book(crowded.entries);
console.log(
  `  made by ledger          ledgerTotals       ${measured(() => ledgerTotals({ ledger: own, from: "2026-01-01", to: "2026-12-31", part: "meadow" }))}`,
);
console.log(
  `                          checkLimits        ${measured(() => checkLimits({ ledger: own, proposal, limits }))}`,
);
console.log(`making it                 ledger             ${measured(() => book(crowded.entries))}`);
const hundredMore = (): Ledger => {
  let more = own;
  for (let i = 0; i < 100; i++) more = ledgerWith(more, { id: `more ${i}`, date: "2026-06-08" });
  return more;
};
console.log(`100 entries more          ledgerWith         ${measured(hundredMore)}`);
console.log(
  `one more, out of JSON     ledgerWith         ${measured(() => ledgerWith(crowded, { id: "more", date: "2026-06-08" }))}`,
);
