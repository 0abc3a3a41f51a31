import { describe, expect, test } from "vitest";
import { type Ledger, ledger, ledgerCsv, ledgerFromCsv } from "../../../src/ledger/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const table = (head: string, ...lines: readonly string[]) => ledgerFromCsv([head, ...lines, ""].join("\r\n"));
const refused = (head: string) => () => table(head, "a,2026-05-01");
/** The one problem of the one line below a head. */
const line = (head: string, cells: string) => {
  const { unread } = table(head, cells);
  const [problem] = unread[0]?.problems ?? [];
  return [problem?.code, problem?.path, problem?.got, problem?.expected];
};

test("a text without a head, and heads that name no column", () => {
  expectRefusals([
    [() => ledgerFromCsv(3 as never), "type", "text", /^text/],
    [() => ledgerFromCsv(""), "missing", "text", /^a head with the names of the columns/],
    [() => ledgerFromCsv("\r\nid,date\r\n"), "missing", "text", /^a head with the names of the columns/],
    [refused("id"), "missing", "head", /^a column date/],
    [refused("date"), "missing", "head", /^a column id/],
    [
      refused("id,date,colour"),
      "type",
      'head "colour"',
      /^one of the fields id, date, start.*weather\.wind.*note/,
    ],
    [refused("id,date,area"), "missing", 'head "area"', /^the unit in brackets, such as area \[lb\]/],
    [refused("id,date,note [lb]"), "type", 'head "note [lb]"', /^a field without a unit/],
    [refused("id,date,guarded [lb]"), "type", 'head "guarded [lb]"', /^one of the fields/],
    [refused("id,date,area [lbs]"), "unit/unknown", 'head "area [lbs]"', /./],
    [
      refused("id,date,supplies [lb/acre of x y]"),
      "substance/unknown",
      'head "supplies [lb/acre of x y]"',
      /./,
    ],
    [refused("id,date,note,note "), "duplicate", 'head "note"', /^each column once/],
    [
      refused("id;date"),
      "text",
      "head",
      /^commas between the cells: save the table as CSV separated by commas/,
    ],
    [refused("id\tdate"), "text", "head", /^commas between the cells/],
  ]);
  expect(problemsOf(refused("id;date"))[0]?.got).toBe("semicolons between the cells");
  expect(problemsOf(refused("id\tdate"))[0]?.got).toBe("tabs between the cells");
  expect(problemsOf(refused("id"))[0]?.got).toBe("no such column");
  expect(complaints(refused("colour,size"))).toEqual([
    'type head "colour"',
    'type head "size"',
    "missing head",
    "missing head",
  ]);
});

test("heads up to 600 characters and 500 columns", () => {
  const blanks = " ".repeat(600 - "note".length);
  expect(table(`id,date,note${blanks}`, "a,2026-05-01,x").ledger.entries).toHaveLength(1);
  expectRefusals([
    [refused(`id,date,note ${blanks}`), "range", "head", /"max":600,"count":"characters"/],
    [refused(`id,date${",note".repeat(499)}`), "range", "head", /"max":500,"count":"columns"/],
  ]);
  expect(problemsOf(refused(`id,date,note ${blanks}`))[0]?.got).toMatch(/a column head of 601 characters/);
  expect(problemsOf(refused(`id,date${",note".repeat(499)}`))[0]?.got).toMatch(/501 columns/);
  // 500 are read: what is wrong with them is that they are doubles
  expect(complaints(refused(`id,date${",note".repeat(498)}`))[0]).toBe('duplicate head "note"');
  // A long head is told by its beginning
  const long = `x${"y".repeat(99)}`;
  expect(complaints(refused(`id,date,${long}`))).toEqual([`type head "${long.slice(0, 60)}"`]);
});

test("cells that cannot be read say what they should be", () => {
  const number = "a number with a point for the decimals";
  expect(line("id,date,area [ft2]", "a,2026-05-01,1 000")).toEqual([
    "text",
    "line 2.area",
    '"1 000"',
    number,
  ]);
  for (const cell of ['"1,5"', "1.5.2", "x1", "1x", ".", "1e", "--1"])
    expect(line("id,date,reEntryHours", `a,2026-05-01,${cell}`)).toEqual([
      "text",
      "line 2.reEntryHours",
      expect.any(String),
      number,
    ]);
  const hours = (cell: string) =>
    table("id,date,reEntryHours", `a,2026-05-01,${cell}`).ledger.entries[0]?.reEntryHours;
  expect(["12", " 12 ", "+12", "12.", ".5", "1.2e1", "1E+1", "1e-1"].map(hours)).toEqual([
    12, 12, 12, 12, 0.5, 12, 10, 0.1,
  ]);
  expect(Object.is(hours("-0"), 0)).toBe(true);
  expect(line("id,date,restrictedUse", "a,2026-05-01,yes")).toEqual([
    "type",
    "line 2.restrictedUse",
    '"yes"',
    "true or false",
  ]);
  const flag = (cell: string) =>
    table("id,date,restrictedUse", `a,2026-05-01,${cell}`).ledger.entries[0]?.restrictedUse;
  expect([flag("TRUE"), flag(" False "), flag("")]).toEqual([true, false, undefined]);
  expect(line("id,date,analysis", 'a,2026-05-01,"{24-0-11"')).toEqual([
    "text",
    "line 2.analysis",
    '"{24-0-11"',
    "a grade such as 24-0-11, or an analysis as JSON",
  ]);
  expect(line("id,date,area [ft2],area [m2]", "a,2026-05-01,1,2")).toEqual([
    "conflict",
    "line 2.area",
    '"2"',
    "one figure, not one in each of two units",
  ]);
  expect(line("id,date,note", "a,2026-05-01")).toEqual([
    "text",
    "line 2",
    "2 cells",
    "3 cells, as the head has",
  ]);
  expect(line("id,date,guarded", "a,2026-05-01,maybe")[3]).toBe("true or false");
});

test("every problem of a line is told, each at its cell", () => {
  const { unread } = table("id,date,area [ft2],reEntryHours,restrictedUse", "a,2026-05-01,x,y,z");
  expect(unread[0]?.problems.map(({ path }) => path)).toEqual([
    "line 2.area",
    "line 2.reEntryHours",
    "line 2.restrictedUse",
  ]);
});

test("a damaged line says why", () => {
  const why = (text: string) => {
    const { unread } = table("id,date,note", text, "z,2026-06-01,good");
    return unread.map(({ line: at, text: found, problems: [p] }) => [at, found, p?.got, p?.expected]);
  };
  const expected = "a line as RFC 4180 has it";
  expect(why('a,2026-05-01,"open')).toEqual([
    [2, 'a,2026-05-01,"open', "a quote that is never closed", expected],
  ]);
  expect(why('a,2026-05-01,"closed" x')).toEqual([
    [2, 'a,2026-05-01,"closed" x', "text behind a closing quote", expected],
  ]);
  expect(why('a,2026-05-01,6" pipe')).toEqual([
    [2, 'a,2026-05-01,6" pipe', "a quote inside a cell that does not begin with one", expected],
  ]);
});

describe("lists in one cell", () => {
  const parts = (cell: string) => table("id,date,parts", `a,2026-05-01,${cell}`).ledger.entries[0]?.parts;

  test("stand between semicolons, with or without blanks beside them, and a backslash before what is no separator", () => {
    expect(parts("north; south")).toEqual(["north", "south"]);
    expect(parts("north ;south")).toEqual(["north", "south"]);
    expect(parts("upper\\; lower; a\\\\b")).toEqual(["upper; lower", "a\\b"]);
    expect(parts("north\\")).toEqual(["north\\"]);
  });

  test("come back as they went out", () => {
    const season = ledger([{ id: "a", date: "2026-05-01", parts: ["a;b", "c\\d", "e"] }]);
    expect(ledgerCsv(season).split("\r\n")[1]).toBe("a,2026-05-01,a\\;b; c\\\\d; e");
    expect(ledgerFromCsv(ledgerCsv(season)).ledger).toEqual(season);
  });
});

describe("writing", () => {
  const csv = (entries: Parameters<typeof ledger>[0], options?: object) =>
    ledgerCsv(ledger(entries), options);

  test("says what it needs", () => {
    const season = ledger([]);
    const many = Array.from({ length: 500 }, (_, n) => ({ value: n + 1, unit: "lb/acre", of: `ai:a${n}` }));
    expectRefusals([
      [() => ledgerCsv(3 as never), "type", "ledger", /^a ledger/],
      [
        () => ledgerCsv(season, { guardFormulas: "yes" as never }),
        "type",
        "options.guardFormulas",
        /true or false/,
      ],
      [() => ledgerCsv(season, { guard: true } as never), "type", "options.guard", /./],
      [
        () => ledgerCsv({ type: "ledger", version: 1, entries: [{ id: "a" }] } as unknown as Ledger),
        "missing",
        "ledger.entries[0].date",
        /./,
      ],
      [
        () => csv([{ id: "a", date: "2026-05-01", supplies: many }]),
        "range",
        "ledger",
        /"max":500,"count":"columns"/,
      ],
    ]);
    expect(ledgerCsv(season)).toBe("id,date\r\n");
  });

  test("quotes what would not come back otherwise, and nothing else", () => {
    const note = (text: string) =>
      csv([{ id: "a", date: "2026-05-01", note: text }]).split("id,date,note\r\n")[1];
    expect(note("plain text")).toBe("a,2026-05-01,plain text\r\n");
    expect(note('6" pipe')).toBe('a,2026-05-01,"6"" pipe"\r\n');
    expect(note("a,b")).toBe('a,2026-05-01,"a,b"\r\n');
    expect(note("a\nb")).toBe('a,2026-05-01,"a\nb"\r\n');
    expect(note("a\rb")).toBe('a,2026-05-01,"a\rb"\r\n');
  });

  test("keeps the order of the fields; units and substances stand in the head", () => {
    const head = csv([
      {
        id: "a",
        date: "2026-05-01",
        note: "x",
        voids: false,
        weather: { sky: "clear", wind: { value: 3, unit: "mi/h" } },
        supplies: [
          { value: 1, unit: "lb/acre", of: "P2O5" },
          { value: 2, unit: "lb/acre", of: "N" },
        ],
        area: { value: 3, unit: "acre", of: "none" },
      },
    ]).split("\r\n")[0];
    expect(head).toBe(
      "id,date,area [acre],supplies [lb/acre of P2O5],supplies [lb/acre of N],weather.wind [mi/h],weather.sky,note,voids",
    );
  });

  test("guards what a spreadsheet would run, and takes the guard off again", () => {
    const cell = (text: string) => {
      const season = ledger([{ id: "a", date: "2026-05-01", note: text }]);
      const guarded = ledgerCsv(season, { guardFormulas: true });
      expect(ledgerFromCsv(guarded).ledger.entries[0]?.note).toBe(text);
      return /^a,2026-05-01,([\s\S]*),true\r\n$/.exec(guarded.split("note,guarded\r\n")[1] ?? "")?.[1];
    };
    for (const start of ["=1+1", "+1", "-1", "@a", "\uFF1D1", "\uFF0B1", "\uFF0D1", "\uFF201", "'quoted"])
      expect(cell(start)).toBe(`'${start}`);
    expect(cell("plain")).toBe("plain");
    expect(cell("a=b")).toBe("a=b");
    expect(cell("a;=b")).toBe("a;'=b");
    expect(cell("a, -b")).toBe('"a, \'-b"');
    expect(cell("a;'b")).toBe("a;''b");
    // Without the column nothing comes off
    expect(table("id,date,note", "a,2026-05-01,'x").ledger.entries[0]?.note).toBe("'x");
    expect(table("id,date,note,guarded", "a,2026-05-01,'x,false").ledger.entries[0]?.note).toBe("'x");
    expect(table("id,date,note,guarded", "a,2026-05-01,'x,").ledger.entries[0]?.note).toBe("'x");
  });
});

describe("rows that a text swallows", () => {
  const found = (rows: number) => {
    const inner = Array.from({ length: rows }, (_, n) => `b${n},2026-05-0${n + 2},x`).join("\r\n");
    return table("id,date,note", `a,2026-05-01,"stray\r\n${inner}"`, "z,2026-06-01,y").findings[0];
  };

  test("are told by their lines, one or several, three of many", () => {
    expect(found(1)).toEqual({
      code: "ledger/row-within-text",
      severity: "caution",
      path: "line 2",
      params: { line: 2, rows: ["3"] },
      text: "Line 2 has a text in quotes that runs over line 3, which looks like a row of its own: it was read as part of that text. Look for stray quotes.",
    });
    expect(found(3)?.text).toBe(
      "Line 2 has a text in quotes that runs over lines 3, 4, 5, which look like rows of their own: it was read as part of that text. Look for stray quotes.",
    );
    expect(found(4)?.text).toMatch(/over lines 3, 4, 5, \.\.\., which look like rows/);
    expect(found(4)?.params.rows).toEqual(["3", "4", "5", "6"]);
    // blanks around the date, as some programs put them
    const spaced = table("id,date,note", 'a,2026-05-01,"stray\r\nb, 2026-05-02 ,x"');
    expect(spaced.findings[0]?.params.rows).toEqual(["3"]);
  });
});

test("what is corrected twice in a table is read and told", () => {
  const read = table(
    "id,date,corrects",
    "a,2026-05-01,",
    "b,2026-05-02,a",
    "c,2026-05-03,a",
    "d,2026-05-04,lost",
  );
  expect(read.ledger.entries).toHaveLength(4);
  expect(read.problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
    "conflict entries[2].corrects",
    "missing entries[3].corrects",
  ]);
  // It is told wherever it is counted
  expect(complaints(() => ledgerCsv(read.ledger))).toEqual([]);
});
