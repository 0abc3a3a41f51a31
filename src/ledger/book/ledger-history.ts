import { type CivilDate, compareDates, isCivilDate } from "../../calendar/index.js";
import { checks, expectList, expectName, fail, plainCopy } from "../../quantity/index.js";
import { civilDateAt } from "../civil-date-at.js";
import { type Asked, entryRow, type Labels, noLabels } from "../entry/entry-row.js";
import { type History, type HistoryRow, historyOf, touches } from "../entry/history.js";
import type { LedgerEntry } from "../entry/ledger-entry.js";
import { readEntry } from "../entry/read-entry.js";
import { expectLedger, standing } from "./ledger.js";
import { isOwnLedger } from "./own-ledger.js";

/** A history of a ledger: sorted by date, each entry read when it is first asked for. */
export interface LedgerHistory extends History {
  /** Every part that an entry names. */
  readonly parts: () => readonly string[];
  readonly dates: readonly CivilDate[];
  readonly entry: (i: number) => LedgerEntry;
  readonly partsOf: (i: number) => readonly string[];
  readonly row: (i: number) => HistoryRow;
}

/** The entries of a ledger that stand, each read when it is first asked for. */
export interface StandingReader {
  /** The places in the ledger, in its order. */
  readonly places: readonly number[];
  readonly entry: (place: number) => LedgerEntry;
  readonly date: (place: number) => CivilDate;
  readonly parts: (place: number) => readonly string[];
  /** The entry as the limits see it; where it is said what is asked for, no more than that. */
  readonly row: (place: number) => HistoryRow;
}

/** Reads the entries of a ledger that stand; those of a ledger that was made here were read, and are frozen. */
export const standingReader = (input: unknown, path: string, asked?: Asked): StandingReader => {
  const ledger = expectLedger(input, path);
  const { entries } = ledger;
  const { places, dates } = standing(ledger, path);
  const own = isOwnLedger(ledger);
  const at = (place: number): string => `${path}.entries[${place}]`;
  const labels: Labels = noLabels();
  const problems = checks();
  const days = new Set<unknown>();
  const names = new Set<string>();
  const entry = (place: number): LedgerEntry => entries[place] as LedgerEntry;
  const seen = (place: number): LedgerEntry => {
    if (own) return entry(place);
    // Its place in the ledger is spelt out only where something is wrong.
    const stored = entry(place);
    // What is read field by field is read once; the contents of a few entries are gone through again.
    const given = stored.contents === undefined ? stored : plainCopy(stored);
    const read = readEntry(given, "", problems, labels) as LedgerEntry;
    if (problems.count() > 0) {
      const told = checks();
      readEntry(given, at(place), told, labels);
      told.done();
      problems.done();
    }
    return read;
  };
  return {
    places,
    entry,
    // Entries share their days: a day is looked at once.
    date: (place) => {
      const date = dates[place];
      if (days.has(date)) return date as CivilDate;
      if (!isCivilDate(date)) {
        const path = `${at(place)}.date`;
        if (typeof date === "string") return civilDateAt(date, path);
        return fail("date", path, date, "a calendar date written YYYY-MM-DD");
      }
      days.add(date);
      return date;
    },
    parts: (place) => {
      const { parts } = entry(place);
      if (parts === undefined) return none;
      // Entries share the names of their parts, most name one alone, and a name is looked at once.
      if (own || (Array.isArray(parts) && parts.length === 1 && names.has(parts[0]))) return parts;
      const list = expectList(parts, `${at(place)}.parts`, "name of a part") as readonly string[];
      // A name that reads like another one is another part, and what went down there would not count.
      for (let i = 0; i < list.length; i++) {
        const part = list[i] as string;
        if (!names.has(part)) names.add(expectName(part, `${at(place)}.parts[${i}]`, "the name of a part"));
      }
      return list;
    },
    row: (place) => {
      const read = seen(place);
      return entryRow(read, read.id, labels, asked);
    },
  };
};

/** The places of the entries that stand and their dates, in the order of the dates. */
const byDate = ({
  places,
  date,
}: StandingReader): { readonly sorted: readonly number[]; readonly dates: readonly CivilDate[] } => {
  // Sorting the days once is cheaper than sorting the entries.
  const byDay = new Map<CivilDate, number[]>();
  for (const place of places) {
    const day = date(place);
    const same = byDay.get(day);
    if (same === undefined) byDay.set(day, [place]);
    else same.push(place);
  }
  const sorted: number[] = [];
  const dates: CivilDate[] = [];
  for (const day of [...byDay.keys()].sort()) {
    for (const place of byDay.get(day) as number[]) {
      sorted.push(place);
      dates.push(day);
    }
  }
  return { sorted, dates };
};

/**
 * Sorts a ledger by date, and keeps what it has read: for one call, or for many of one schedule. Where it is
 * said what is asked for, a row holds no more than that.
 */
export const ledgerHistory = (input: unknown, path: string, asked?: Asked): LedgerHistory => {
  const reader = standingReader(input, path, asked);
  // A day that is none is told whatever is asked for.
  for (const place of reader.places) reader.date(place);
  let sorted: ReturnType<typeof byDate> | undefined;
  const inOrder = (): ReturnType<typeof byDate> => {
    sorted ??= byDate(reader);
    return sorted;
  };
  // A large ledger is read anew each time: holding all that was read would cost more than reading it.
  const rows: (HistoryRow | undefined)[] | undefined = reader.places.length > 10_000 ? undefined : [];
  const placeAt = (i: number): number => inOrder().sorted[i] as number;
  const partsAt = (i: number): readonly string[] => reader.parts(placeAt(i));
  const row = (i: number): HistoryRow => {
    const made = rows?.[i] ?? reader.row(placeAt(i));
    if (rows !== undefined) rows[i] = made;
    return made;
  };
  const visitAsWritten: History["visit"] = (part, from, see) => {
    for (const place of reader.places)
      if (reader.date(place) >= from && touches(reader.parts(place), part)) see(reader.row(place));
  };
  const own = {
    get dates() {
      return inOrder().dates;
    },
    parts: partsAt,
    row,
  };
  return {
    ...historyOf(own),
    ...(rows === undefined && { visitAsWritten }),
    parts: () => {
      const parts = new Set<string>();
      for (const place of reader.places) for (const part of reader.parts(place)) parts.add(part);
      return [...parts].sort();
    },
    get dates() {
      return inOrder().dates;
    },
    entry: (i) => reader.entry(placeAt(i)),
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
