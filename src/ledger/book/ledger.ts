import { type Checks, checks, fail, Quantity, shown } from "../../quantity/index.js";
import { idKey, otherId } from "../entry/entry-id.js";
import { type Labels, noLabels } from "../entry/entry-row.js";
import type { Ledger, LedgerEntry } from "../entry/ledger-entry.js";
import { readEntry } from "../entry/read-entry.js";

/** Tells what is wrong with the ids of entries and with what they correct; problems go to `door`. */
export const readCorrections = (entries: readonly LedgerEntry[], path: string, door: Checks): void => {
  const seen = new Map<string, string>();
  const replaced = new Map<string, string>();
  entries.forEach((entry, i) => {
    const { id, corrects } = entry;
    const key = idKey(id);
    const alike = seen.get(key);
    if (alike !== undefined) {
      const expected = otherId(id, alike, "entry");
      door.add({ code: "duplicate", path: `${path}[${i}].id`, got: shown(id), expected });
    }
    if (corrects !== undefined && seen.get(idKey(corrects)) !== corrects) {
      const near = seen.get(idKey(corrects));
      door.add({
        code: "missing",
        path: `${path}[${i}].corrects`,
        got: shown(corrects),
        expected: "the id of an entry that stands before this one",
        ...(near === undefined ? {} : { suggestion: near }),
      });
    }
    const by = corrects === undefined ? undefined : replaced.get(corrects);
    if (by !== undefined && corrects !== undefined) {
      const expected = `the latest entry of its line, for ${shown(corrects)} was corrected already`;
      door.add({
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
 * A ledger of applications: plain JSON, to which entries are only ever added.
 *
 * @param entries - in the order in which they were written down; none where it is left out
 * @throws RatewrightError with every problem, each with its path such as `entries[3].area`: `missing`,
 *   `type`, `date`, `range`, `unit/mismatch`, `substance/mismatch`, `duplicate`, `conflict`
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
  const door = checks();
  const labels: Labels = noLabels();
  for (let i = 0; i < entries.length; i++) readEntry(entries[i], `entries[${i}]`, door, labels);
  if (door.count() === 0) readCorrections(entries, "entries", door);
  door.done();
  return { type: "ledger", version: 1, entries: entries.map(copyOf) };
};

/** A copy of plain data, deep: what a caller changes afterwards changes no ledger. A quantity stays as it is. */
const copyOf = <T>(input: T): T => {
  if (typeof input !== "object" || input === null || input instanceof Quantity) return input;
  if (Array.isArray(input)) return input.map(copyOf) as T;
  return Object.fromEntries(Object.entries(input).map(([name, value]) => [name, copyOf(value)])) as T;
};

/** Takes a ledger that may come from JSON, or throws: its form only, the entries are read when they are needed. */
export const expectLedger = (input: unknown, path: string): Ledger => {
  const { type, version, entries } = Object(input) as Partial<Ledger>;
  if (type !== "ledger") return fail(input === undefined ? "missing" : "type", path, input, "a ledger");
  if (version !== 1) fail("type", `${path}.version`, version, "1");
  return Array.isArray(entries) ? (input as Ledger) : fail("type", `${path}.entries`, entries, "a list");
};

/** Takes a ledger that may come from JSON with all of its entries, or throws all that is wrong with them. */
const readLedger = (input: unknown, path: string): readonly LedgerEntry[] => {
  const { entries } = expectLedger(input, path);
  const door = checks();
  const labels: Labels = noLabels();
  for (let i = 0; i < entries.length; i++) {
    const before = door.count();
    readEntry(entries[i], "", door, labels);
    // Its place in the ledger is spelt out only where something is wrong.
    if (door.count() > before) return failWith(entries[i], `${path}.entries[${i}]`);
  }
  return entries;
};

const failWith = (entry: unknown, path: string): never => {
  const told = checks();
  readEntry(entry, path, told, noLabels());
  told.done();
  return fail("type", path, entry, "an entry");
};

/**
 * A ledger with one entry more. The ledger that was given stays as it is, and is read again: to add many entries,
 * give all of them to `ledger` at once.
 *
 * To correct an entry, add one with `corrects`: it takes the place of the other in every total, and both
 * stay on record. With `voids` nothing takes its place.
 *
 * @throws RatewrightError as `ledger`, with paths that begin with `entry`, and with `ledger` for the first entry
 *   there that cannot be read
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
  const entries = readLedger(ledger, "ledger");
  const door = checks();
  readEntry(entry, "entry", door, noLabels());
  if (door.count() === 0) {
    const { id, corrects } = entry;
    const key = idKey(id);
    const alike = entries.find((other) => idKey(other.id) === key);
    if (alike !== undefined) fail("duplicate", "entry.id", id, otherId(id, alike.id, "entry"));
    if (corrects !== undefined) {
      const by = entries.find((other) => other.corrects === corrects);
      if (by !== undefined) {
        const expected = `the latest entry of its line, for ${shown(corrects)} was corrected already`;
        fail("conflict", "entry.corrects", corrects, expected, { suggestion: by.id });
      }
      if (!entries.some((other) => other.id === corrects))
        fail("missing", "entry.corrects", corrects, "the id of an entry of the ledger");
    }
  }
  door.done();
  return { type: "ledger", version: 1, entries: [...entries, copyOf(entry)] };
};

/** The places of the entries that stand: neither replaced nor void. */
export const standing = (entries: readonly LedgerEntry[], path: string): number[] => {
  let replaced: Set<string> | undefined;
  for (let i = 0; i < entries.length; i++) {
    const entry: unknown = entries[i];
    if (typeof entry !== "object" || entry === null)
      return fail("type", `${path}.entries[${i}]`, entry, "an entry");
    const { corrects } = entry as LedgerEntry;
    if (corrects === undefined) continue;
    replaced ??= new Set();
    replaced.add(corrects);
  }
  const places: number[] = [];
  for (let i = 0; i < entries.length; i++) {
    const entry = entries[i] as LedgerEntry;
    if (entry.voids !== true && !replaced?.has(entry.id)) places.push(i);
  }
  return places;
};

/**
 * The entries of a ledger that count: without those that another entry corrects, and without those that
 * only say that another never happened.
 *
 * @throws RatewrightError `type`, `missing`
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
  const entries = readLedger(ledger, "ledger");
  return standing(entries, "ledger").map((i) => entries[i] as LedgerEntry);
};
