import { type Checks, checks, expectFields, fail, outOfRange, shown } from "../../quantity/index.js";
import { expectId, idKey, otherId } from "../entry/entry-id.js";
import { type Labels, noLabels } from "../entry/entry-row.js";
import type { Ledger, LedgerEntry } from "../entry/ledger-entry.js";
import { readEntry } from "../entry/read-entry.js";
import { ownCopies } from "./own-copy.js";
import { addIds, frozenLedger, isOwnLedger, keepIds, type LedgerIds, takeIds } from "./own-ledger.js";

/**
 * Tells what is wrong with the ids of entries and with what they correct; what is wrong goes to `problems`. What comes out of a
 * store may correct an entry that is not there, as where a line of a table could not be read: nothing counts twice by it.
 */
export const readCorrections = (
  entries: readonly LedgerEntry[],
  path: string,
  problems: Checks,
  from: "caller" | "store" = "caller",
): void => {
  const seen = new Map<string, string>();
  const replaced = new Map<string, string>();
  entries.forEach((entry, i) => {
    const { id, corrects } = entry;
    const key = idKey(id);
    const alike = seen.get(key);
    if (alike !== undefined) {
      const expected = otherId(id, alike, "entry");
      problems.add({ code: "duplicate", path: `${path}[${i}].id`, got: shown(id), expected });
    }
    if (from === "caller" && corrects !== undefined && seen.get(idKey(corrects)) !== corrects) {
      const near = seen.get(idKey(corrects));
      problems.add({
        code: "missing",
        path: `${path}[${i}].corrects`,
        got: shown(corrects),
        expected: "the id of an earlier entry",
        ...(near === undefined ? {} : { suggestion: near }),
      });
    }
    const by = corrects === undefined ? undefined : replaced.get(corrects);
    if (by !== undefined && corrects !== undefined) {
      const expected = `the latest correction: ${shown(corrects)} was already corrected`;
      problems.add({
        code: "conflict",
        path: `${path}[${i}].corrects`,
        got: shown(corrects),
        expected,
        suggestion: by,
      });
    }
    if (corrects !== undefined) replaced.set(corrects, id);
    if (alike === undefined) seen.set(key, id);
  });
};

/**
 * A ledger of applications: plain JSON, to which entries are only ever added. It holds copies of the entries, and is frozen:
 * what a caller changes afterwards changes no ledger.
 *
 * @param entries - in the order in which they were written down; none where it is left out
 * @throws RatewrightError with every problem, each with its path such as `entries[3].area`: `missing`, `type`,
 *   `date`, `range`, `unit/mismatch`, `substance/mismatch`, `duplicate`, `conflict`, `text`
 *
 * @example
 * ```ts
 * import { ledger } from "ratewright";
 * const season = ledger([
 *   {
 *     id: "2026-001",
 *     date: "2026-04-20",
 *     parts: ["north pitch"],
 *     area: { value: 59400, unit: "ft2" },
 *     product: "feed-a",
 *     analysis: "24-0-11",
 *     amount: { value: 222.75, unit: "lb" },
 *   },
 * ]);
 * season.entries.length; // => 1
 * ledger([{ id: "2026-001", date: "2026-02-30" }]); // => throws date
 * ```
 */
export const ledger = (entries: readonly LedgerEntry[] = []): Ledger => {
  if (!Array.isArray(entries)) fail("type", "entries", entries, "a list of entries");
  expectEnd(entries, "entries");
  const problems = checks();
  const { own, whole } = readEntries(entries, "entries", problems);
  problems.done();
  return frozenLedger(own, whole);
};

/** More entries than a large company writes down in its life. */
const mostEntries = 1_000_000;

/** Refuses a list that claims more entries than there can be, before it is walked. */
const expectEnd = (entries: readonly unknown[], path: string): void => {
  if (entries.length > mostEntries) outOfRange(path, entries, { max: mostEntries, count: "entries" });
};

/** Takes copies of entries and reads the copies, so that what was read is what is kept; what is wrong goes to `problems`. */
const readEntries = (
  entries: readonly unknown[],
  path: string,
  problems: Checks,
  from: "caller" | "store" = "caller",
): { readonly own: readonly LedgerEntry[]; readonly whole: boolean } => {
  const labels: Labels = noLabels();
  const copies = ownCopies();
  const own: LedgerEntry[] = [];
  for (let i = 0; i < entries.length; i++) {
    const copy = copies.of(entries[i]);
    const before = problems.count();
    // Its place in the ledger is spelt out only where something is wrong.
    const told = checks();
    readEntry(copy, "", told, labels);
    if (told.count() > 0) readEntry(copy, `${path}[${i}]`, problems, noLabels());
    if (problems.count() === before) own.push(copy as LedgerEntry);
  }
  if (problems.count() === 0) readCorrections(own, path, problems, from);
  return { own, whole: copies.whole() };
};

/** Takes a ledger that may come from JSON, or throws: its form only, the entries are read when they are needed. */
export const expectLedger = (input: unknown, path: string): Ledger => {
  const { type, version, entries } = Object(input) as Partial<Ledger>;
  if (type !== "ledger") return fail("type", path, input, "a ledger");
  if (version !== 1) fail("type", `${path}.version`, version, "1");
  expectFields(input, ["type", "version", "entries"], path);
  if (!Array.isArray(entries)) return fail("type", `${path}.entries`, entries, "a list");
  if (isOwnLedger(input as Ledger)) return input as Ledger;
  expectEnd(entries, `${path}.entries`);
  return { type, version: 1, entries: Array.from(entries) };
};

/** Takes a ledger that may come from JSON with all of its entries, or throws all that is wrong with them. */
const readLedger = (input: unknown, path: string): Ledger => {
  const given = expectLedger(input, path);
  if (isOwnLedger(given)) return given;
  const problems = checks();
  const { own, whole } = readEntries(given.entries, `${path}.entries`, problems, "store");
  problems.done();
  return frozenLedger(own, whole);
};

/**
 * A ledger with one entry more; the ledger that was given stays as it is. One that `ledger`, `ledgerWith` or
 * `ledgerFromCsv` made is known, and only the new entry is read; one that came from JSON is read in full, once.
 *
 * To correct an entry, add one with `corrects`: it takes the place of the other in every total, and both
 * stay on record. With `voids` nothing takes its place.
 *
 * @throws RatewrightError as `ledger`, with paths that begin with `entry`, and with `ledger` for what cannot be read there
 *
 * @example
 * ```ts
 * import { ledger, ledgerWith, standingEntries } from "ratewright";
 * const first = ledger([{ id: "a", date: "2026-04-20", note: "9 bags" }]);
 * const second = ledgerWith(first, { id: "b", date: "2026-04-20", corrects: "a", note: "8 bags" });
 * second.entries.map(({ id }) => id); // => ["a", "b"]
 * standingEntries(second).map(({ note }) => note); // => ["8 bags"]
 * ```
 */
export const ledgerWith = (ledger: Ledger, entry: LedgerEntry): Ledger => {
  const read = readLedger(ledger, "ledger");
  const problems = checks();
  const copies = ownCopies();
  const added = copies.of(entry) as LedgerEntry;
  readEntry(added, "entry", problems, noLabels());
  problems.done();
  const ids = takeIds(read);
  try {
    expectNewId(added, ids);
  } catch (error) {
    keepIds(read, ids);
    throw error;
  }
  addIds(ids, added);
  return frozenLedger([...read.entries, added], isOwnLedger(read) && copies.whole(), ids);
};

/** Throws where an entry has the id of another, or corrects what is not there or was corrected already. */
const expectNewId = ({ id, corrects }: LedgerEntry, { byKey, replacedBy }: LedgerIds): void => {
  const alike = byKey.get(idKey(id));
  if (alike !== undefined) fail("duplicate", "entry.id", id, otherId(id, alike, "entry"));
  if (corrects === undefined) return;
  const by = replacedBy.get(corrects);
  if (by !== undefined) {
    const expected = `the latest correction: ${shown(corrects)} was already corrected`;
    fail("conflict", "entry.corrects", corrects, expected, { suggestion: by });
  }
  if (byKey.get(idKey(corrects)) !== corrects)
    fail("missing", "entry.corrects", corrects, "the id of an entry of the ledger");
};

/** The entries that stand, neither replaced nor void, by their places, and the days of all entries as they are stated. */
export interface Standing {
  readonly places: readonly number[];
  readonly dates: readonly unknown[];
}

/**
 * The entries of a ledger that stand. Of a ledger that was not made here, the ids and what they correct are read again: an
 * entry that stands there twice would count twice. A large ledger does not fit near the processor, so it is walked once.
 */
export const standing = (ledger: Ledger, path: string): Standing => {
  const { entries } = ledger;
  const own = isOwnLedger(ledger);
  const places: number[] = [];
  const dates: unknown[] = [];
  const replaced = new Set<string>();
  let [corrections, rising, before] = [0, true, ""];
  for (let i = 0; i < entries.length; i++) {
    const entry = entries[i];
    if (typeof entry !== "object" || entry === null)
      return fail("type", `${path}.entries[${i}]`, entry, "an entry");
    const { id, corrects, voids, date } = entry as Partial<LedgerEntry>;
    dates.push(date);
    if (voids !== true) places.push(i);
    if (!own) {
      const key = idKey(typeof id === "string" ? id : (expectId(id, `${path}.entries[${i}].id`) as string));
      rising &&= key.length > before.length || (key.length === before.length && key > before);
      before = key;
    }
    if (corrects === undefined) continue;
    corrections++;
    replaced.add(
      typeof corrects === "string"
        ? corrects
        : (expectId(corrects, `${path}.entries[${i}].corrects`) as string),
    );
  }
  // Most ledgers number their entries: where each id comes after the one before, no two are alike.
  const alone = rising || new Set(entries.map(({ id }) => idKey(id))).size === entries.length;
  if (!alone || (!own && replaced.size < corrections)) {
    const problems = checks();
    readCorrections(entries, `${path}.entries`, problems, "store");
    problems.done();
  }
  if (corrections === 0) return { places, dates };
  return { places: places.filter((i) => !replaced.has((entries[i] as LedgerEntry).id)), dates };
};

/**
 * The entries of a ledger that count: without those that another entry corrects, and without those that
 * only say that another never happened.
 *
 * @throws RatewrightError `type`, `missing`; what `ledger` throws for the entries
 *
 * @example
 * ```ts
 * import { ledger, standingEntries } from "ratewright";
 * const season = ledger([
 *   { id: "a", date: "2026-04-20" },
 *   { id: "b", date: "2026-05-04" },
 *   { id: "c", date: "2026-05-04", corrects: "b", voids: true },
 * ]);
 * standingEntries(season).map(({ id }) => id); // => ["a"]
 * ```
 */
export const standingEntries = (ledger: Ledger): readonly LedgerEntry[] => {
  const read = readLedger(ledger, "ledger");
  return standing(read, "ledger").places.map((i) => read.entries[i] as LedgerEntry);
};
