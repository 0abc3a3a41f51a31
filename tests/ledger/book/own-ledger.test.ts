import { describe, expect, test } from "vitest";
import {
  type Ledger,
  type LedgerEntry,
  ledger,
  ledgerCsv,
  ledgerFromCsv,
  ledgerTotals,
  ledgerWith,
  standingEntries,
} from "../../../src/ledger/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { fed, full, stated } from "../helpers.js";

const year = { from: "2026-01-01", to: "2026-12-31" } as const;
const nitrogen = (book: Ledger): number | undefined =>
  ledgerTotals({ ledger: book, ...year }).supplies.N?.in("lb/1000 ft2");
const half = { value: 0.5, unit: "lb/1000 ft2", of: "N" } as const;
const stored = (...entries: readonly unknown[]): Ledger =>
  ({ type: "ledger", version: 1, entries }) as unknown as Ledger;

const isDeeplyFrozen = (value: unknown): boolean =>
  typeof value !== "object" ||
  value === null ||
  (Object.isFrozen(value) && Object.values(value).every(isDeeplyFrozen));

describe("a ledger that was made here is frozen, and is not read again", () => {
  test.each([
    ["ledger", () => ledger([full, fed, stated])],
    ["ledgerWith", () => ledgerWith(ledger([full, fed]), stated)],
    [
      "ledgerWith, from a store",
      () => ledgerWith(JSON.parse(JSON.stringify(ledger([full, fed]))) as Ledger, stated),
    ],
    ["ledgerFromCsv", () => ledgerFromCsv(ledgerCsv(ledger([full, fed, stated]))).ledger],
  ])("%s: down to the last list", (_, make) => {
    const book = make();
    expect(isDeeplyFrozen(book)).toBe(true);
    expect(() => {
      (book.entries as LedgerEntry[]).push(stated);
    }).toThrow(TypeError);
    expect(JSON.parse(JSON.stringify(book))).toEqual(JSON.parse(JSON.stringify(ledger([full, fed, stated]))));
  });

  test("it says the same as what JSON keeps of it", () => {
    const book = ledger([full, fed, stated]);
    const again = JSON.parse(JSON.stringify(book)) as Ledger;
    for (const part of ["north pitch", "bowling green"])
      expect(ledgerTotals({ ledger: book, ...year, part })).toEqual(
        ledgerTotals({ ledger: again, ...year, part }),
      );
    expect(standingEntries(book)).toEqual(standingEntries(again));
  });

  test("a quantity in an entry is copied too: written over, it changes nothing", () => {
    const amount = quantity(10, "lb", "product");
    const book = ledger([
      { id: "a", date: "2026-04-20", analysis: "24-0-11", amount, area: { value: 1000, unit: "ft2" } },
    ]);
    const before = nitrogen(book);
    (amount as { value: number }).value = Number.NaN;
    expect(nitrogen(book)).toBe(before);
    expect(before).toBeCloseTo(2.4, 12);
  });

  test("each value is read once: a getter that gives something else the second time is not believed", () => {
    let times = 0;
    const entry = {
      id: "a",
      date: "2026-04-20",
      supplies: [
        {
          unit: "lb/1000 ft2",
          of: "N",
          get value() {
            times += 1;
            return times === 1 ? 0.5 : Number.NaN;
          },
        },
      ],
    } as const;
    expect(nitrogen(ledger([entry]))).toBe(0.5);
    expect(times).toBe(1);
  });

  test("what a class gives by its prototype is kept", () => {
    class Applied {
      id = "a";
      get date() {
        return "2026-04-20" as const;
      }
      get supplies() {
        return [half];
      }
    }
    const book = ledger([new Applied()]);
    expect(JSON.parse(JSON.stringify(book.entries))).toEqual([
      { id: "a", date: "2026-04-20", supplies: [half] },
    ]);
    expect(nitrogen(book)).toBe(0.5);
  });

  test("a field more in a quantity is refused, not lost", () => {
    for (const place of ["area", "amount", "rate", "density", "carrierVolume"] as const)
      expect(
        complaints(() =>
          ledger([{ id: "a", date: "2026-04-20", [place]: { value: 1, unit: "lb", per: "acre" } }]),
        ),
      ).toContain(`type entries[0].${place}.per`);
    const wind = { value: 5, unit: "mi/h", gusts: 9 };
    expect(complaints(() => ledger([{ id: "a", date: "2026-04-20", weather: { wind } }]))).toEqual([
      "type entries[0].weather.wind.gusts",
    ]);
  });

  test("nothing hides behind __proto__", () => {
    const entry = JSON.parse('{"__proto__":{"id":"a"},"date":"2026-04-20"}') as LedgerEntry;
    expect(complaints(() => ledger([entry]))).toContain("type entries[0].__proto__");
    expect(complaints(() => ledgerWith(ledger(), entry))).toContain("type entry.__proto__");
  });
});

describe("entries that are added one by one", () => {
  const entry = (id: string, more: Partial<LedgerEntry> = {}): LedgerEntry => ({
    id,
    date: "2026-04-20",
    supplies: [half],
    ...more,
  });

  test("two ledgers that go on from one do not see each other's entries", () => {
    const base = ledger([entry("a")]);
    const left = ledgerWith(base, entry("b"));
    const right = ledgerWith(base, entry("b", { corrects: "a" }));
    const leftMore = ledgerWith(left, entry("c", { corrects: "a" }));
    expect(nitrogen(base)).toBe(0.5);
    expect(nitrogen(left)).toBe(1);
    expect(nitrogen(right)).toBe(0.5);
    expect(nitrogen(leftMore)).toBe(1);
    expect(complaints(() => ledgerWith(right, entry("c", { corrects: "a" })))).toEqual([
      "conflict entry.corrects",
    ]);
    expect(complaints(() => ledgerWith(left, entry("b")))).toEqual(["duplicate entry.id"]);
  });

  test("an entry that is refused leaves no trace", () => {
    const base = ledgerWith(ledger([entry("a")]), entry("b"));
    for (const refused of [entry("a"), entry("c", { corrects: "x" }), entry("c", { date: "2026-02-30" })])
      expect(complaints(() => ledgerWith(base, refused))).toHaveLength(1);
    expect(ledgerWith(base, entry("c", { corrects: "a" })).entries).toHaveLength(3);
  });

  test("ids that differ by blanks are one id, however the ledger came", () => {
    for (const base of [ledger([entry("a b")]), stored(entry("a b"))])
      expect(complaints(() => ledgerWith(base, entry("a  b")))).toEqual(["duplicate entry.id"]);
    expect(complaints(() => ledgerWith(ledger([entry("a b")]), entry("c", { corrects: "a  b" })))).toEqual([
      "missing entry.corrects",
    ]);
  });
});

describe("a stored ledger counts nothing twice", () => {
  const one = { id: "a", date: "2026-04-20", supplies: [half] } as const;

  test("an id that stands there twice is refused", () => {
    const book = stored(one, { ...one, date: "2026-05-04" });
    for (const call of [() => nitrogen(book), () => standingEntries(book), () => ledgerWith(book, stated)])
      expect(complaints(call)).toEqual(["duplicate ledger.entries[1].id"]);
  });

  test("so is an entry that is corrected twice", () => {
    const book = stored(one, { ...one, id: "b", corrects: "a" }, { ...one, id: "c", corrects: "a" });
    expect(complaints(() => nitrogen(book))).toEqual(["conflict ledger.entries[2].corrects"]);
  });

  test("a correction of an entry whose line is lost counts once", () => {
    const read = ledgerFromCsv(
      "id,date,corrects,supplies [lb/1000 ft2 of N]\r\na,2026-02-30,,0.5\r\nb,2026-04-20,a,0.5\r\n",
    );
    expect(read.problems.map(({ code }) => code)).toEqual(["missing"]);
    expect(nitrogen(read.ledger)).toBe(0.5);
    expect(nitrogen(JSON.parse(JSON.stringify(read.ledger)) as Ledger)).toBe(0.5);
  });

  test("ids and corrections that are no texts are refused with their place", () => {
    expect(complaints(() => nitrogen(stored({ ...one, id: 3 })))).toEqual(["type ledger.entries[0].id"]);
    expect(complaints(() => nitrogen(stored({ ...one, corrects: {} })))).toEqual([
      "type ledger.entries[0].corrects",
    ]);
  });
});
