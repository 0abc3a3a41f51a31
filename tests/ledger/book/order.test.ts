import { describe, expect, test } from "vitest";
import { type HistoryRow, historyOf, joinedHistory, ledgerHistory } from "../../../src/ledger/house.js";
import { type LedgerEntry, ledger, ledgerTotals, standingEntries } from "../../../src/ledger/index.js";

const row = (date: HistoryRow["date"], from: string): HistoryRow => ({
  date,
  from,
  parts: [],
  products: [],
  productRates: [],
  rates: undefined,
});

describe("two histories as one", () => {
  test("are seen in the order of their dates; on one day, what is written down comes first", () => {
    const written = [row("2026-05-02", "a"), row("2026-05-04", "b"), row("2026-05-06", "c")];
    const one = historyOf({
      dates: written.map(({ date }) => date),
      parts: () => [],
      row: (i) => written[i] as HistoryRow,
    });
    const seen = (from: HistoryRow["date"], more: readonly HistoryRow[]) => {
      const list: string[] = [];
      joinedHistory(one, more).visit("north", from, ({ from: name }) => list.push(name));
      return list.join("");
    };
    const planned = [
      row("2026-05-05", "y"),
      row("2026-05-01", "w"),
      row("2026-05-04", "x"),
      row("2026-05-07", "z"),
    ];
    expect(seen("2026-05-01", planned)).toBe("wabxycz");
    expect(seen("2026-05-02", planned)).toBe("abxycz");
    expect(seen("2026-05-04", planned)).toBe("bxycz");
    expect(seen("2026-05-07", planned)).toBe("z");
    expect(seen("2026-05-01", [])).toBe("abc");
  });
});

describe("entries that are not written down in the order of their dates", () => {
  const out = (id: string, date: string, more: object = {}): LedgerEntry => ({
    id,
    date: date as LedgerEntry["date"],
    ...more,
  });
  const entries = [
    out("c", "2026-07-01", { parts: ["south"] }),
    out("a", "2026-05-01"),
    out("b", "2026-06-01", { parts: ["north", "south"] }),
    out("b2", "2026-06-01"),
  ];

  test("are seen by date, those of one day as they stand", () => {
    const history = ledgerHistory(ledger(entries), "ledger");
    const seen: string[] = [];
    history.visit("south", "2026-01-01", ({ from }) => seen.push(from));
    expect(seen).toEqual(["a", "b", "b2", "c"]);
    expect(history.dates).toEqual(["2026-05-01", "2026-06-01", "2026-06-01", "2026-07-01"]);
    expect(history.parts()).toEqual(["north", "south"]);
    expect([history.entry(0).id, history.partsOf(1), history.row(3).from]).toEqual([
      "a",
      ["north", "south"],
      "c",
    ]);
  });

  test("are told by date where they are not counted", () => {
    const totals = (part?: string) =>
      ledgerTotals({ ledger: ledger(entries), from: "2026-01-01", to: "2026-12-31", ...(part && { part }) });
    expect(totals()).toMatchObject({
      part: "whole site",
      applications: 2,
      notCounted: ["a", "b", "b2", "c"],
    });
    expect(totals("north")).toMatchObject({ part: "north", applications: 3, notCounted: ["a", "b", "b2"] });
    expect(totals("east")).toMatchObject({ applications: 2, notCounted: ["a", "b2"] });
  });

  test("come back from a store as they were", () => {
    const stored = JSON.parse(JSON.stringify(ledger(entries))) as ReturnType<typeof ledger>;
    expect(standingEntries(stored)).toEqual(entries);
    expect(
      ledgerTotals({ ledger: stored, from: "2026-06-01", to: "2026-06-30", part: "north" }).applications,
    ).toBe(2);
  });
});

describe("copies", () => {
  test("of what a caller hands in are deep, frozen, and of plain data", () => {
    const parts = ["north"];
    const area = { value: -0 + 3, unit: "acre" };
    const weather = { wind: { value: 5, unit: "mi/h" } };
    const season = ledger([{ id: "a", date: "2026-05-01", parts, area, weather }]);
    parts.push("south");
    area.value = 9;
    weather.wind.value = 50;
    expect(season.entries[0]).toEqual({
      id: "a",
      date: "2026-05-01",
      parts: ["north"],
      area: { value: 3, unit: "acre" },
      weather: { wind: { value: 5, unit: "mi/h" } },
    });
    for (const one of [
      season,
      season.entries,
      season.entries[0],
      season.entries[0]?.parts,
      season.entries[0]?.weather?.wind,
    ])
      expect(Object.isFrozen(one)).toBe(true);
  });

  test("of a record without a prototype are records like any other, and a zero is not below zero", () => {
    const bare = Object.assign(Object.create(null), {
      id: "a",
      date: "2026-05-01",
      reEntryHours: -0,
    }) as LedgerEntry;
    const [entry] = ledger([bare]).entries;
    expect(entry).toEqual({ id: "a", date: "2026-05-01", reEntryHours: 0 });
    expect(Object.is(entry?.reEntryHours, 0)).toBe(true);
  });
});
