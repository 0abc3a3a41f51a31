import { describe, expect, test } from "vitest";
import {
  ledger,
  ledgerCsv,
  ledgerTotals,
  ledgerWith,
  missingForRecord,
  standingEntries,
  usRestrictedUseRecord,
} from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";

test("a ledger keeps copies of its own", () => {
  const entry = { id: "a", date: "2026-04-20" as const, area: { value: 10, unit: "ft2" }, parts: ["north"] };
  const book = ledger([entry]);
  entry.area.value = 99;
  entry.parts.push("south");
  expect(book.entries[0]).toEqual({
    id: "a",
    date: "2026-04-20",
    area: { value: 10, unit: "ft2" },
    parts: ["north"],
  });
});

test("a ledger of a store with a figure that is none is refused, not written", () => {
  const entries = [{ id: "a", date: "2026-04-20", area: { value: Number.NaN, unit: "ft2" } }];
  expect(() => ledgerCsv({ type: "ledger", version: 1, entries } as never)).toThrow(/entries\[0\]\.area/);
});

describe("a ledger of a store is read, not believed", () => {
  const stored = (entry: unknown) => ({ type: "ledger", version: 1, entries: [entry] }) as never;
  const year = { from: "2026-01-01", to: "2026-12-31", part: "lawn" } as const;

  test.each([
    ["standingEntries", (book: never) => standingEntries(book)],
    ["ledgerWith", (book: never) => ledgerWith(book, { id: "b", date: "2026-04-20" })],
  ])("%s", (_, call) => {
    expect(complaints(() => call(stored(null)))).toEqual(["type ledger.entries[0]"]);
    expect(complaints(() => call(stored({ id: "a", date: "2026-04-20", note: Number.NaN })))).toEqual([
      "type ledger.entries[0].note",
    ]);
  });

  test("ledgerTotals: parts that are no list", () => {
    const book = stored({ id: "a", date: "2026-04-20", parts: 3 });
    expect(complaints(() => ledgerTotals({ ...year, ledger: book }))).toEqual([
      "type ledger.entries[0].parts",
    ]);
  });

  test("missingForRecord: the entry, and the source of the scheme", () => {
    const scheme = { ...usRestrictedUseRecord, source: { title: "x", publisher: "y", year: Number.NaN } };
    const entry = { id: "a", date: "2026-04-20", reEntryHours: Number.NaN } as const;
    expect(complaints(() => missingForRecord(entry, scheme))).toEqual([
      "not-finite entry.reEntryHours",
      "not-finite scheme.source.year",
    ]);
  });
});
