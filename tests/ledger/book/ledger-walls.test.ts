import { expect, test } from "vitest";
import { ledger, ledgerCsv } from "../../../src/ledger/index.js";

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
