import { type CivilDate, compareDates, isCivilDate } from "../../calendar/index.js";
import { checks, fail } from "../../quantity/index.js";
import { type Asked, entryRow, type Labels, noLabels } from "../entry/entry-row.js";
import { type History, type HistoryRow, historyOf } from "../entry/history.js";
import type { LedgerEntry } from "../entry/ledger-entry.js";
import { readEntry } from "../entry/read-entry.js";
import { expectLedger, standing } from "./ledger.js";

/** A history of a ledger: sorted by date, each entry read when it is first asked for. */
export interface LedgerHistory extends History {
  /** Every part that an entry names. */
  readonly parts: () => readonly string[];
  readonly dates: readonly CivilDate[];
  readonly entry: (i: number) => LedgerEntry;
  readonly partsOf: (i: number) => readonly string[];
  readonly row: (i: number) => HistoryRow;
}

/** The places of the entries that stand and their dates, in the order of the dates. */
const standingByDay = (
  entries: readonly LedgerEntry[],
  path: string,
): { readonly places: readonly number[]; readonly dates: readonly CivilDate[] } => {
  // Entries share their days: sorting the days once is cheaper than sorting the entries.
  const byDay = new Map<CivilDate, number[]>();
  for (const i of standing(entries, path)) {
    const day = (entries[i] as LedgerEntry).date;
    const same = byDay.get(day);
    if (same !== undefined) same.push(i);
    else if (isCivilDate(day)) byDay.set(day, [i]);
    else fail("date", `${path}.entries[${i}].date`, day, "a calendar date written YYYY-MM-DD");
  }
  const places: number[] = [];
  const dates: CivilDate[] = [];
  for (const day of [...byDay.keys()].sort()) {
    for (const i of byDay.get(day) as number[]) {
      places.push(i);
      dates.push(day);
    }
  }
  return { places, dates };
};

/**
 * Sorts a ledger by date, and keeps what it has read: for one call, or for many of one schedule. Where it is
 * said what is asked for, a row holds no more than that.
 */
export const ledgerHistory = (input: unknown, path: string, asked?: Asked): LedgerHistory => {
  const { entries } = expectLedger(input, path);
  const at = (i: number): string => `${path}.entries[${i}]`;
  const { places, dates } = standingByDay(entries, path);
  // A large ledger is read anew each time: holding all that was read would cost more than reading it.
  const rows: (HistoryRow | undefined)[] | undefined = places.length > 10_000 ? undefined : [];
  const labels: Labels = noLabels();
  const door = checks();
  const entryAt = (i: number): LedgerEntry => entries[places[i] as number] as LedgerEntry;
  const partsAt = (i: number): readonly string[] => {
    const { parts } = entryAt(i);
    if (parts === undefined) return none;
    return Array.isArray(parts)
      ? parts
      : fail("type", `${at(places[i] as number)}.parts`, parts, "a list of names of parts");
  };
  const row = (i: number): HistoryRow => {
    const known = rows?.[i];
    if (known !== undefined) return known;
    const entry = entryAt(i);
    // Its place in the ledger is spelt out only where something is wrong.
    const seen = readEntry(entry, "", door, labels) as LedgerEntry;
    if (door.count() > 0) {
      const told = checks();
      readEntry(entry, at(places[i] as number), told, labels);
      told.done();
    }
    const made = entryRow(seen, seen.id, labels, asked);
    if (rows !== undefined) rows[i] = made;
    return made;
  };
  return {
    ...historyOf({ dates, parts: partsAt, row }),
    parts: () => {
      const parts = new Set<string>();
      for (let i = 0; i < places.length; i++) for (const part of partsAt(i)) parts.add(part);
      return [...parts].sort();
    },
    dates,
    entry: entryAt,
    partsOf: partsAt,
    row,
  };
};

const none: readonly string[] = [];

/** Two histories as one, in the order of the dates. */
export const joinedHistory = (one: History, more: readonly HistoryRow[]): History => {
  const sorted = [...more].sort((a, b) => compareDates(a.date, b.date));
  return {
    visit: (part, from, see) => {
      const extra = sorted.filter(
        (row) => row.date >= from && (row.parts.length === 0 || row.parts.includes(part)),
      );
      let next = 0;
      one.visit(part, from, (row) => {
        for (; next < extra.length && (extra[next] as HistoryRow).date < row.date; next++)
          see(extra[next] as HistoryRow);
        see(row);
      });
      for (; next < extra.length; next++) see(extra[next] as HistoryRow);
    },
  };
};
