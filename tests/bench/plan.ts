// Checking a ledger of 100,000 entries, beside a loop written by hand over the same entries.

import { ledger as book, type Ledger, ledgerTotals, ledgerWith } from "../../src/ledger/index.js";
import { checkLimits } from "../../src/limits/index.js";
import { ledgerLimits as limits, ledgerProposal as proposal, storedLedger } from "./ledgers.js";

const size = 100_000;
const ledger = storedLedger(size, false);
const crowded = storedLedger(size, true);

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
