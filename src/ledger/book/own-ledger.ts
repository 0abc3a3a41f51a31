import { idKey } from "../entry/entry-id.js";
import type { Ledger, LedgerEntry } from "../entry/ledger-entry.js";

/** The ids of a ledger: what tells a new entry from those that are there. */
export interface LedgerIds {
  /** The id by what it reads as. */
  readonly byKey: Map<string, string>;
  /** The entry that takes the place of another, by the id of the other. */
  readonly replacedBy: Map<string, string>;
}

/**
 * Ledgers that were made here, read in full, and frozen: they need not be read again. The ids stand with the one to which
 * an entry was added last; a ledger that came from JSON or from another copy of the package is none of these.
 */
const own: WeakMap<object, LedgerIds | undefined> = /* @__PURE__ */ new WeakMap();

/** Whether a ledger was made here, so that its entries were read and cannot have changed. */
export const isOwnLedger = (ledger: object): boolean => own.has(ledger);

/** A ledger of entries that were read; where all of them are frozen copies it is known from now on. */
export const frozenLedger = (entries: readonly LedgerEntry[], known: boolean, ids?: LedgerIds): Ledger => {
  const made: Ledger = Object.freeze({ type: "ledger", version: 1, entries: Object.freeze(entries) });
  if (known) own.set(made, ids);
  return made;
};

const idsIn = (entries: readonly LedgerEntry[]): LedgerIds => {
  const ids: LedgerIds = { byKey: new Map(), replacedBy: new Map() };
  for (const entry of entries) addIds(ids, entry);
  return ids;
};

/** Adds an entry to the ids. */
export const addIds = ({ byKey, replacedBy }: LedgerIds, { id, corrects }: LedgerEntry): void => {
  byKey.set(idKey(id), id);
  if (corrects !== undefined) replacedBy.set(corrects, id);
};

/** The ids of a ledger that was read. They are its own to give away: with {@link keepIds} they come back, or go to its successor. */
export const takeIds = (ledger: Ledger): LedgerIds => {
  const ids = own.get(ledger);
  if (ids !== undefined) own.set(ledger, undefined);
  return ids ?? idsIn(ledger.entries);
};

/** Gives ids back to the ledger that they are of. */
export const keepIds = (ledger: Ledger, ids: LedgerIds): void => {
  if (own.has(ledger)) own.set(ledger, ids);
};
