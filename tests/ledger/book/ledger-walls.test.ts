import { expect, test } from "vitest";
import { ledger, ledgerCsv, ledgerFromCsv } from "../../../src/ledger/index.js";

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

test("heads that differ by blanks alone are doubles", () => {
  expect(() => ledgerFromCsv("id,date,note, note\r\na,2026-04-20,x,y\r\n")).toThrow(/each column once/);
});

test("an empty column at the end costs nothing; what stands in it is told", () => {
  const read = ledgerFromCsv("id,date,\r\na,2026-04-20,\r\nb,2026-04-21,x\r\n");
  expect(read.ledger.entries.map(({ id }) => id)).toEqual(["a"]);
  expect(read.unread.map(({ line }) => line)).toEqual([3]);
});

test("a head of a megabyte and 20,000 columns are refused at once", () => {
  expect(() => ledgerFromCsv(`id,date,${"x".repeat(1_000_000)}\r\n`)).toThrow(/300 characters/);
  expect(() => ledgerFromCsv(`id,date${",note".repeat(20_000)}\r\n`)).toThrow(/500 columns/);
});
