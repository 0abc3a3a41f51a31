import { describe, expect, test } from "vitest";
import {
  type Ledger,
  type LedgerReading,
  ledger,
  ledgerCsv,
  ledgerFromCsv,
} from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";
import { fed, full, stated } from "../helpers.js";

/** A reading that has the whole ledger. */
const whole = (season: Ledger): LedgerReading => ({
  type: "ledger-reading",
  version: 1,
  ledger: season,
  unread: [],
  problems: [],
  findings: [],
});

describe("ledgerFromCsv", () => {
  test("goes out and comes back, quotes, newlines and all units", () => {
    const season = ledger([
      fed,
      stated,
      full,
      { id: "fix", date: "2026-04-20", corrects: fed.id, voids: true },
    ]);
    const text = ledgerCsv(season);
    expect(text.split("\r\n")[0]).toContain("area [m2],area [ft2]");
    expect(text).toContain("supplies [lb/1000 ft2 of N:slow]");
    expect(text).toContain('"regulator ""A"", 120 g/L EC"');
    const read = ledgerFromCsv(text);
    expect(read).toEqual(whole(season));
    // The same through a spreadsheet that writes LF and a byte order mark.
    expect(ledgerFromCsv(`\uFEFF${text.replace(/\r\n/g, "\n")}`)).toEqual(read);
  });

  test("a damaged line is told with its number, and nothing else is lost", () => {
    const lines = [
      "id,date,area [ft2],note",
      'a,2026-05-01,1000,"two',
      'lines"',
      "b,2026-05-02,1000", // a cell short
      'c,2026-05-03,1000,"never closed',
      "d,2026-05-04,1 000,x", // not a number
      'e,2026-05-05,1000,"closed" and more',
      "f,2026-05-06,1000,",
      "a,2026-05-07,1000,again", // an id twice
      "g,2026-05-08,-5,x",
      'h,2026-05-09,1000,a 6" pipe', // a bare quote
      "i,2026-05-10,1000,last",
    ];
    const read = ledgerFromCsv(lines.join("\r\n"));
    expect(read.ledger.entries.map(({ id }) => id)).toEqual(["a", "f", "i"]);
    expect(read.ledger.entries[0]?.note).toBe("two\r\nlines");
    expect(read.unread.map(({ line, problems: [p] }) => `${line} ${p?.code} ${p?.path}`)).toEqual([
      "4 text line 4",
      "5 text line 5",
      "6 text line 6.area",
      "7 text line 7",
      "9 duplicate line 9.id",
      "10 range line 10.area",
      "11 text line 11",
    ]);
    expect(read.unread[2]?.text).toBe("d,2026-05-04,1 000,x");
  });

  test("a stray quote that another line seems to close costs one line", () => {
    const read = ledgerFromCsv(
      'id,date,note\r\na,2026-05-01,"stray\r\nb,2026-05-02,"good"\r\nc,2026-05-03,x\r\n',
    );
    expect(read.ledger.entries.map(({ id }) => id)).toEqual(["b", "c"]);
    expect(read.unread.map(({ line }) => line)).toEqual([2]);
  });

  test("a correction whose original is lost stays and is told", () => {
    const read = ledgerFromCsv("id,date,corrects\r\na,2026-05-99,\r\nb,2026-05-01,a\r\n");
    expect(read.ledger.entries.map(({ id }) => id)).toEqual(["b"]);
    expect(read.problems.map(({ code, path }) => `${code} ${path}`)).toEqual(["missing entries[0].corrects"]);
  });

  test("a head without units or with unknown columns is refused as a whole", () => {
    expect(complaints(() => ledgerFromCsv("id,date,area,colour,amount [lbs]\r\n"))).toEqual([
      'missing head "area"',
      'type head "colour"',
      'unit/unknown head "amount [lbs]"',
    ]);
    expect(complaints(() => ledgerFromCsv("date\r\n"))).toEqual(["missing head"]);
    expect(complaints(() => ledgerFromCsv(""))).toEqual(["missing text"]);
  });

  test("one figure in two units on one line is refused", () => {
    const read = ledgerFromCsv("id,date,area [ft2],area [m2]\r\na,2026-05-01,1000,93\r\n");
    expect(read.unread[0]?.problems[0]?.code).toBe("conflict");
  });
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
  expect(() => ledgerFromCsv(`id,date,${"x".repeat(1_000_000)}\r\n`)).toThrow(/600 characters/);
  expect(() => ledgerFromCsv(`id,date${",note".repeat(20_000)}\r\n`)).toThrow(/500 columns/);
});

test("heads that are one column in other blanks are doubles", () => {
  expect(
    complaints(() => ledgerFromCsv("id,date,area [ft2], area  [ ft2 ]\r\na,2026-04-20,1,2\r\n")),
  ).toEqual(['duplicate head "area  [ ft2 ]"']);
});

test("a table with semicolons is refused with what to do", () => {
  expect(() => ledgerFromCsv("id;date;note\r\na;2026-04-20;x\r\n")).toThrow(/separated by commas/);
});

describe("ids", () => {
  test.each([["a "], [" a"]])("that differ by blanks alone are one id: %j", (id) => {
    const read = ledgerFromCsv(`id,date\r\na,2026-04-20\r\n"${id}",2026-04-21\r\n`);
    expect(read.ledger.entries).toHaveLength(1);
    expect(read.unread.map(({ line, problems: [p] }) => `${line} ${p?.code} ${p?.path}`)).toEqual([
      "3 duplicate line 3.id",
    ]);
  });

  test.each([["a\u0000"], ["a\u200b"], ["a\nb"], ["a\tb"]])("with what nobody sees are refused: %j", (id) => {
    const read = ledgerFromCsv(`id,date\r\na,2026-04-20\r\n"${id}",2026-04-21\r\n`);
    expect(read.unread.map(({ problems: [p] }) => `${p?.code} ${p?.path}`)).toEqual(["type line 3.id"]);
  });
});

describe("a text in quotes over several lines", () => {
  test("that holds what looks like a row is read, and told", () => {
    // Two stray quotes: the note of a holds the whole of b.
    const read = ledgerFromCsv(
      'id,date,note\r\na,2026-05-01,"stray\r\nb,2026-05-02,good"\r\nc,2026-05-03,x\r\n',
    );
    expect(read.ledger.entries.map(({ id }) => id)).toEqual(["a", "c"]);
    expect(read.findings.map(({ code, path, params }) => [code, path, params.rows])).toEqual([
      ["ledger/row-within-text", "line 2", ["3"]],
    ]);
  });

  test("also where the stray quotes stand in the first cell", () => {
    const read = ledgerFromCsv('id,note,date\r\na,"x\r\nb,y",2026-05-02\r\n');
    expect(read.findings.map(({ params }) => params.line)).toEqual([2]);
  });

  test("that holds no row is a note like any other", () => {
    const read = ledgerFromCsv('id,date,note\r\na,2026-05-01,"two\r\nlines, both dry"\r\n');
    expect(read.findings).toEqual([]);
  });
});

test("lines that end with CR alone are lines, and a damaged one costs itself alone", () => {
  const read = ledgerFromCsv('id,date\ra,2026-05-01\rb,"2026-05-02\rc,2026-05-03\r');
  expect(read.ledger.entries.map(({ id }) => id)).toEqual(["a", "c"]);
  expect(read.unread.map(({ line, text }) => [line, text])).toEqual([[3, 'b,"2026-05-02']]);
});

test("a line of empty cells is no entry and no damage", () => {
  const read = ledgerFromCsv("id,date,note\r\n,,\r\na,2026-05-01,x\r\n");
  expect([read.ledger.entries.length, read.unread.length]).toEqual([1, 0]);
});

test("an unread line is told as it stands", () => {
  const read = ledgerFromCsv('id,date,note\r\na,"2026-05-99","x"\r\n');
  expect(read.unread[0]?.text).toBe('a,"2026-05-99","x"');
});
