// Lines of a table by hand: what is read of them, and what of those that are damaged.
import { describe, expect, test } from "vitest";
import { readColumns } from "../../../src/ledger/csv/columns.js";
import { csvText, readCsv } from "../../../src/ledger/csv/csv-text.js";
import { ledger, ledgerCsv, ledgerFromCsv } from "../../../src/ledger/index.js";
import { problemsOf } from "../../errors.js";

describe("lines of cells", () => {
  const cells = (text: string) => readCsv(text).records.map(({ line, cells: found }) => [line, ...found]);
  const damaged = (text: string) =>
    readCsv(text).damaged.map(({ line, text: found, why }) => [line, found, why]);

  test("between commas, with any line end, quotes doubled within quotes, a mark of byte order left out", () => {
    expect(cells('\uFEFFa,b\r\n1,2\n3,4\r5,"6, ""7""\n8"\n')).toEqual([
      [1, "a", "b"],
      [2, "1", "2"],
      [3, "3", "4"],
      [4, "5", '6, "7"\n8'],
    ]);
    expect(cells("a\n\n1\n")).toEqual([
      [1, "a"],
      [3, "1"],
    ]);
    expect(cells("a,\n,\n")).toEqual([
      [1, "a", ""],
      [2, "", ""],
    ]);
    expect(cells('a,b\n"",""')).toEqual([
      [1, "a", "b"],
      [2, "", ""],
    ]);
  });

  test("a damaged line costs itself and no other", () => {
    expect(damaged('a,b\n"1,2\n3,4\n')).toEqual([[2, '"1,2', "a quote that is never closed"]]);
    expect(cells('a,b\n"1,2\n3,4\n')).toEqual([
      [1, "a", "b"],
      [3, "3", "4"],
    ]);
    expect(damaged('a,b\n"1"x,2\n')).toEqual([[2, '"1"x,2', "text behind a closing quote"]]);
    expect(damaged('a,b\n1",2\n')).toEqual([
      [2, '1",2', "a quote inside a cell that does not begin with one"],
    ]);
    // A stray quote that closes lines later has the wrong number of cells; over several lines with the right number is no damage.
    expect(damaged('a,b\n"1,2\n3",4,5\n6,7\n')[0]).toEqual([2, '"1,2', "a quote that is never closed"]);
    expect(damaged('a,b\n"1,2\n3",4\n6,7\n')).toEqual([]);
    expect(damaged('"a\nb",c\n1,2\n')).toEqual([]);
  });

  test("written with quotes only where they are needed, and read again", () => {
    const rows = [
      ["a", "b c"],
      ["1,2", 'say "no"'],
      [" x", "y "],
      ["two\nlines", ""],
    ];
    expect(csvText(rows)).toBe('a,b c\r\n"1,2","say ""no"""\r\n" x","y "\r\n"two\nlines",\r\n');
    expect(readCsv(csvText(rows)).records.map(({ cells: found }) => found)).toEqual(rows);
  });
});

describe("heads", () => {
  const told = (heads: readonly string[]): readonly string[] =>
    problemsOf(() => readColumns(heads)).map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
  test("the field, its unit and its substance, however they are spaced", () => {
    expect(readColumns(["id", " date ", "area [ft2]", "amount  [ lb of product ]", "guarded"])).toEqual([
      { field: "id" },
      { field: "date" },
      { field: "area", unit: "ft2" },
      { field: "amount", unit: "lb", of: "product" },
      { field: "guarded" },
    ]);
    expect(readColumns(["id", "date", "rate [lb/acre of none]"])[2]).toEqual({
      field: "rate",
      unit: "lb/acre",
    });
  });
  test("what is wrong with each", () => {
    const fields = problemsOf(() => readColumns(["id", "date", "colour"]))[0]?.expected;
    expect(fields).toMatch(/^one of the fields id, date, /);
    expect(told(["id", "date", "area", "note [ft2]", "area [ft2]", "area  [ft2]", "id"])).toEqual([
      'missing head "area": the unit in brackets, such as area [lb]',
      'type head "note [ft2]": a field without a unit',
      'duplicate head "area  [ft2]": each column once',
      'duplicate head "id": each column once',
    ]);
    expect(told(["note"])).toEqual(["missing head: a column id", "missing head: a column date"]);
    const save = "commas between the cells: save the table as CSV separated by commas";
    expect(told(["id;date;note"])).toEqual([`text head: ${save}`]);
    expect(problemsOf(() => readColumns(["id\tdate"]))[0]).toMatchObject({
      got: "tabs between the cells",
      expected: save,
    });
    expect(problemsOf(() => readColumns(["id;date"]))[0]?.got).toBe("semicolons between the cells");
    expect(told(["id;x", "date"])[0]).toMatch(/^type head "id;x": one of the fields/);
    expect(told(["id", "date", "colour", " colour"])).toContain('duplicate head "colour": each column once');
    // A semicolon within a head beside others is a field that is none.
    expect(told(["id", "date;note"])[0]).toMatch(/^type head "date;note": one of the fields/);
  });
});

describe("an entry as a line", () => {
  test("an analysis as a grade and as percents, lists, flags and figures, there and back", () => {
    const entries = [
      {
        id: "a",
        date: "2026-05-04",
        parts: ["north; pitch", "back\\slash"],
        analysis: { basis: "element", percent: { N: 24, P: 3 } },
        restrictedUse: true,
        reEntryHours: 12,
        weather: { wind: { value: 3, unit: "mi/h" }, windFrom: "NW" },
      },
      { id: "b", date: "2026-05-05", analysis: "24-0-11", form: "dry" },
    ] as const;
    const text = ledgerCsv(ledger(entries as never));
    expect(text.split("\r\n")[0]?.split(",")).toEqual([
      "id",
      "date",
      "parts",
      "form",
      "analysis",
      "restrictedUse",
      "reEntryHours",
      "weather.wind [mi/h]",
      "weather.windFrom",
    ]);
    expect(text).toContain("north\\; pitch; back\\\\slash");
    expect(text).toContain("24-0-11");
    const { ledger: read, unread } = ledgerFromCsv(text);
    expect(unread).toEqual([]);
    expect(JSON.parse(JSON.stringify(read.entries))).toEqual(entries);
  });

  test("a cell without a name at the end is passed over where it is empty, and told where it is not", () => {
    const told = (text: string) => {
      const { ledger: read, unread } = ledgerFromCsv(text);
      return [read.entries.length, unread.map(({ line }) => line)];
    };
    expect(told("id,date,\r\na,2026-05-04,\r\nb,2026-05-04, \r\n")).toEqual([2, []]);
    expect(told("id,date,\r\na,2026-05-04,x\r\nb,2026-05-04\r\n")).toEqual([1, [2]]);
    expect(told("id,date\r\na,2026-05-04,\r\n")).toEqual([0, [2]]);
    expect(told("id,date,\r\na,2026-05-04,,\r\n")).toEqual([0, [2]]);
  });
});
