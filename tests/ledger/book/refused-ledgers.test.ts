import { expect, test } from "vitest";
import {
  type LedgerEntry,
  ledger,
  ledgerTotals,
  ledgerWith,
  standingEntries,
} from "../../../src/ledger/index.js";
import { problemsOf } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const _put = (change: object) => () =>
  ledger([{ id: "a", date: "2026-04-20" }, { id: "b", date: "2026-05-01", ...change } as LedgerEntry]);
const _at = (place: string): string => `entries[1].${place}`;

test("a ledger that comes back", () => {
  const season = ledger([{ id: "a", date: "2026-04-20" }]);
  const stored = (change: object): never => ({ type: "ledger", version: 1, entries: [], ...change }) as never;
  const next = { id: "b", date: "2026-05-01" } as const;
  const fixed = ledgerWith(season, { ...next, corrects: "a" });
  expectRefusals([
    [() => standingEntries(undefined as never), "missing", "ledger", /^a ledger/],
    [() => standingEntries(3 as never), "type", "ledger", /^a ledger/],
    [() => standingEntries(stored({ version: 2 })), "type", "ledger.version", /^1/],
    [() => standingEntries(stored({ entries: {} })), "type", "ledger.entries", /^a list/],
    [() => standingEntries(stored({ more: 1 })), "type", "ledger.more", /./],
    [() => standingEntries(stored({ entries: Array(1_000_001) })), "range", "ledger.entries", /1000000/],
    [
      () => standingEntries(stored({ entries: [{ id: "a", date: "x" }] })),
      "date",
      "ledger.entries[0].date",
      /./,
    ],
    [() => ledgerWith(season, 3 as never), "type", "entry", /^an application/],
    [
      () => ledgerWith(season, { ...next, id: "a" }),
      "duplicate",
      "entry.id",
      /^an id that no other entry has/,
    ],
    [
      () => ledgerWith(season, { ...next, corrects: "c" }),
      "missing",
      "entry.corrects",
      /^the id of an entry of the ledger/,
    ],
    [
      () => ledgerWith(fixed, { ...next, id: "c", corrects: "a" }),
      "conflict",
      "entry.corrects",
      /^the latest correction: "a" was already corrected/,
    ],
  ]);
  expect(problemsOf(() => ledgerWith(fixed, { ...next, id: "c", corrects: "a" }))[0]?.suggestion).toBe("b");
});

test("what was corrected already", () => {
  const next = { id: "b", date: "2026-05-01" } as const;
  const twice = [
    { id: "a", date: "2026-04-20" },
    { id: "b", date: "2026-04-21", corrects: "a" },
    { id: "c", date: "2026-04-22", corrects: "a" },
  ] as const;
  expect(problemsOf(() => ledger(twice))[0]).toMatchObject({
    code: "conflict",
    path: "entries[2].corrects",
    expected: 'the latest correction: "a" was already corrected',
    suggestion: "b",
  });
  expect(
    problemsOf(() =>
      ledger([
        { id: "a 1", date: "2026-04-20" },
        { ...next, corrects: "a  1" },
      ]),
    )[0],
  ).toMatchObject({
    code: "missing",
    suggestion: "a 1",
  });
});

test("totals", () => {
  const season = ledger([{ id: "a", date: "2026-04-20" }]);
  const year = { ledger: season, from: "2026-01-01", to: "2026-12-31" } as const;
  const totals = (change: object) => () => ledgerTotals({ ...year, ...change } as never);
  expectRefusals([
    [totals({ ledger: undefined }), "missing", "ledger", /^a ledger/],
    [totals({ from: undefined }), "missing", "from", /^a date, YYYY-MM-DD/],
    [totals({ to: "2026-13-01" }), "date", "to", /./],
    [totals({ to: {} }), "date", "to", /./],
    [totals({ to: Object.create(null) }), "date", "to", /^a calendar date written YYYY-MM-DD/],
    [totals({ to: "2025-12-31" }), "date", "to", /^a date not earlier than 2026-01-01/],
    [totals({ part: "" }), "missing", "part", /^the name of a part of the site/],
  ]);
  expect(totals({ to: "2026-01-01" })().applications).toBe(0);
});
