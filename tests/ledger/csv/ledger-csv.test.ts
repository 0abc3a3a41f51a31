import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Ledger,
  type LedgerEntry,
  ledger,
  ledgerCsv,
  ledgerFromCsv,
} from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";
import { full } from "../helpers.js";

const text = fc
  .string({
    minLength: 1,
    maxLength: 8,
    unit: fc.constantFrom(
      "a",
      '"',
      ",",
      "\n",
      "\r",
      "\t",
      ";",
      "\\",
      "[",
      "=",
      "+",
      "-",
      "@",
      "'",
      " ",
      "\uFF1D",
      "\u00e9",
    ),
  })
  .filter((t) => t.trim() !== "");
const ids = fc.string({
  minLength: 1,
  maxLength: 6,
  unit: fc.constantFrom("a", "b", "=", "'", "-", ",", '"', ";"),
});
const figure = (units: readonly string[], of?: string, most = 1e6) =>
  fc.record({
    value: fc.double({ min: 1e-6, max: most, noNaN: true }),
    unit: fc.constantFrom(...units),
    ...(of === undefined ? {} : { of: fc.constant(of) }),
  });
const names = [
  ...["productName", "treatment", "target", "method", "site", "location", "registrationNumber"],
  ...["activeIngredient", "lot", "applicator", "certificate", "note"],
] as const;
const texts = Object.fromEntries(names.map((name) => [name, text]));
const weather = fc
  .record(
    {
      wind: figure(["mi/h", "m/s"], undefined, 80),
      windFrom: text,
      temperature: fc.record({
        value: fc.double({ min: -40, max: 120, noNaN: true }).map((x) => x + 0),
        unit: fc.constantFrom("\u00b0F", "\u00b0C"),
      }),
      humidity: fc.record({ value: fc.integer({ min: 0, max: 100 }), unit: fc.constant("%") }),
      sky: text,
    },
    { requiredKeys: [] },
  )
  .filter((air) => Object.keys(air).length > 0);
const area = figure(["ft2", "m2", "acre"]);
/** What went down, in each of the ways in which it can be stated. */
const applied = fc.oneof(
  fc.record({ area, amount: figure(["lb", "fl oz"], "product"), form: fc.constantFrom("dry", "liquid") }),
  fc.record({
    rate: figure(["lb/acre", "gal/acre"]),
    product: fc.constantFrom("feed-a", "=feed"),
    contents: fc.tuple(figure(["% w/w", "g/L"], "ai:2,4-D/product"), figure(["lb/gal"], "ai:x [y]/product")),
  }),
  fc.record({ supplies: fc.tuple(figure(["lb/acre", "kg/ha"], "N"), figure(["kg/ha"], "Fe")) }),
  fc.record({
    analysis: fc.constantFrom("24-0-11", "10-10-10"),
    slowNitrogen: fc.record({
      value: fc.integer({ min: 0, max: 10 }),
      unit: fc.constant("% w/w"),
      of: fc.constant("N:slow/product"),
    }),
  }),
  fc.constant({}),
);
/** A name that is stored as it reads. */
const partName = text
  .map((part) => part.normalize("NFC").replace(/\s+/gu, " ").trim())
  .filter((part) => part !== "" && !/[\p{Cc}\p{Cf}]/u.test(part));
const entry = fc
  .tuple(
    fc.record(
      {
        ...texts,
        parts: fc.uniqueArray(partName, { minLength: 1, maxLength: 3 }),
        start: fc.constantFrom("07:30", "07:30-05:00", "12:00Z"),
        carrierVolume: figure(["gal", "L"]),
        restrictedUse: fc.boolean(),
        reEntryHours: fc.integer({ min: 0, max: 48 }),
        weather,
      },
      { requiredKeys: [] },
    ),
    applied,
  )
  // As a store gives it back: records with a prototype.
  .map(([more, what]) => JSON.parse(JSON.stringify({ ...more, ...what })) as Partial<LedgerEntry>);
const season = fc
  .tuple(fc.array(entry, { minLength: 1, maxLength: 4 }), fc.uniqueArray(ids, { minLength: 4, maxLength: 4 }))
  .map(([list, names]) =>
    ledger(list.map((more, i) => ({ ...more, id: names[i] as string, date: "2026-05-01" as const }))),
  );

/** The supplies and contents of an entry stand in the order of the columns: each substance once, so by its name. */
const bySubstance = (book: Ledger) =>
  book.entries.map(({ supplies, contents, ...rest }) => ({
    ...rest,
    supplies: [...(supplies ?? [])].sort((a, b) => ((a.of ?? "") < (b.of ?? "") ? -1 : 1)),
    contents: [...(contents ?? [])].sort((a, b) => ((a.of ?? "") < (b.of ?? "") ? -1 : 1)),
  }));

describe("any ledger goes out and comes back equal", () => {
  test.each([[false], [true]])("guardFormulas: %s", (guardFormulas) => {
    fc.assert(
      fc.property(season, (book) => {
        const { ledger: back, unread, problems } = ledgerFromCsv(ledgerCsv(book, { guardFormulas }));
        expect({ unread, problems }).toEqual({ unread: [], problems: [] });
        expect(bySubstance(back)).toEqual(bySubstance(book));
      }),
      runs(200),
    );
  });
});

describe("guardFormulas", () => {
  const note = (value: string, guardFormulas = true) =>
    ledgerCsv(ledger([{ id: "a", date: "2026-05-01", note: value }]), { guardFormulas });

  test.each([
    ["=1+1", "'=1+1"],
    ["+49 30", "'+49 30"],
    ["-5 of them", "'-5 of them"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["'quoted", "''quoted"],
    ["\uFF1D1", "'\uFF1D1"],
    ["x;=1", "x;'=1"],
    ["dry - calm", "dry - calm"],
  ])("%j stands as %j", (value, cell) => {
    expect(note(value)).toBe(`id,date,note,guarded\r\na,2026-05-01,${cell},true\r\n`);
  });

  test("no cell of any ledger begins as a formula, in quotes or not, but a figure below zero", () => {
    fc.assert(
      fc.property(season, (book) => {
        const rows = ledgerCsv(book, { guardFormulas: true }).split("\r\n").slice(1);
        for (const row of rows) expect(row).not.toMatch(/(^|,)"?\s*[=+@\uFF1D]/);
      }),
      runs(100),
    );
  });

  test("figures stay figures", () => {
    const cold = { temperature: { value: -5, unit: "\u00b0C" } };
    const csv = ledgerCsv(ledger([{ id: "a", date: "2026-05-01", weather: cold }]), { guardFormulas: true });
    expect(csv).toContain("a,2026-05-01,-5,true");
  });

  test("without it, an apostrophe is an apostrophe", () => {
    expect(ledgerFromCsv(note("'=1", false)).ledger.entries[0]?.note).toBe("'=1");
  });

  test("lines of two tables in one: each line says of itself whether it is guarded", () => {
    const read = ledgerFromCsv("id,date,note,guarded\r\na,2026-05-01,'=1,TRUE\r\nb,2026-05-01,'=1,\r\n");
    expect(read.ledger.entries.map((one) => one.note)).toEqual(["=1", "'=1"]);
  });

  test("an option that nobody knows is refused", () => {
    expect(complaints(() => ledgerCsv(ledger([full]), { guard: true } as never))).toEqual([
      "type options.guard",
    ]);
  });
});

test("more columns than can be read are not written", () => {
  const supplies = Array.from({ length: 501 }, (_, i) => ({ value: 1, unit: "lb/acre", of: `other:s${i}` }));
  expect(complaints(() => ledgerCsv(ledger([{ id: "a", date: "2026-05-01", supplies }])))).toEqual([
    "range ledger",
  ]);
});

test("a field that nobody knows inside a quantity is refused, not lost", () => {
  const area = { value: 10, unit: "ft2", by: "tape" };
  expect(
    complaints(() =>
      ledger([{ id: "a", date: "2026-05-01", area, supplies: [{ ...area, of: "N" }] }] as never),
    ),
  ).toEqual(["type entries[0].area.by", "type entries[0].supplies[0].by"]);
});
