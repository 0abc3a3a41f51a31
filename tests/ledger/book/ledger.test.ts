import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  euPlantProtectionRecord,
  type LedgerEntry,
  ledger,
  ledgerCsv,
  ledgerFromCsv,
  ledgerTotals,
  ledgerWith,
  missingForRecord,
  standingEntries,
  usRestrictedUseRecord,
  usWorkerProtectionRecord,
} from "../../../src/ledger/index.js";
import type { RatewrightError } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";

const problems = (call: () => unknown): readonly string[] => {
  try {
    call();
  } catch (error) {
    return (error as RatewrightError).problems.map(({ code, path }) => `${code} ${path}`);
  }
  return [];
};

const full: LedgerEntry = {
  id: "2026-007",
  date: "2026-05-26",
  start: "07:30-05:00",
  end: "08:15-05:00",
  parts: ["bowling lawn", "green; upper \\ lower"],
  area: { value: 14_400, unit: "ft2" },
  product: "regulator-a",
  productName: 'regulator "A", 120 g/L EC',
  form: "liquid",
  density: { value: 1.02, unit: "kg/L" },
  contents: [{ value: 120, unit: "g/L", of: "ai:trinexapac-ethyl/product" }],
  amount: { value: 1.8, unit: "fl oz", of: "product" },
  treatment: "regulate the lawn",
  target: "clippings",
  method: "boom sprayer",
  site: "bowling lawn",
  location: "Alder Bank Park",
  registrationNumber: "0000-00",
  activeIngredient: "trinexapac-ethyl",
  restrictedUse: false,
  lot: "L-7",
  applicator: "A. Crew",
  certificate: "C-1",
  carrierVolume: { value: 14.4, unit: "gal", of: "spray" },
  reEntryHours: 12,
  weather: {
    wind: { value: 5.5, unit: "mi/h" },
    windFrom: "SW",
    temperature: { value: 68, unit: "°F" },
    humidity: { value: 55, unit: "%" },
    sky: "overcast",
  },
  note: "first line\nsecond line",
};
const fed: LedgerEntry = {
  id: "2026-001",
  date: "2026-04-20",
  parts: ["north pitch"],
  area: { value: 5518.44, unit: "m2" },
  product: "feed-a",
  analysis: "24-0-11",
  slowNitrogen: { value: 12, unit: "% w/w", of: "N:slow/product" },
  amount: { value: 101.1, unit: "kg" },
};
const stated: LedgerEntry = {
  id: "2026-002",
  date: "2026-04-21",
  supplies: [
    { value: 0.4, unit: "lb/1000 ft2", of: "N" },
    { value: 0.1, unit: "lb/1000 ft2", of: "N:slow" },
    { value: 0.1, unit: "lb/1000 ft2", of: "P2O5" },
  ],
};

describe("ledger", () => {
  test("tells everything that is wrong with its entries, with paths", () => {
    expect(
      problems(() =>
        ledger([
          full,
          { id: "", date: "2026-02-30", area: { value: 0, unit: "ft2" }, start: "25:00" },
          { id: "x", date: "2026-03-01", amount: { value: 3, unit: "lb" }, areas: 1 },
          { id: "y", date: "2026-03-01", contents: [{ value: 4, unit: "lb/gal", of: "N" }], voids: true },
          { id: "z", date: "2026-03-01", slowNitrogen: { value: 12, unit: "% w/w" }, weather: { wind: 3 } },
        ] as never),
      ),
    ).toEqual([
      "type entries[1].id",
      "date entries[1].date",
      "range entries[1].area",
      "date entries[1].start",
      "type entries[2].areas",
      "conflict entries[2].area",
      "substance/mismatch entries[3].contents[0].of",
      "conflict entries[3].voids",
      "type entries[4].weather.wind",
      "conflict entries[4].slowNitrogen",
    ]);
  });

  test("an amount needs its area, and counts once", () => {
    expect(
      problems(() => ledger([{ id: "x", date: "2026-03-01", amount: { value: 3, unit: "lb" } }])),
    ).toEqual(["conflict entries[0].area"]);
    expect(problems(() => ledger([{ ...fed, supplies: stated.supplies ?? [] }]))).toEqual([
      "conflict entries[0].supplies",
    ]);
  });

  test("corrections: the old entry stays on record and no longer counts", () => {
    const one = ledger([fed, stated]);
    const two = ledgerWith(one, { ...fed, id: "fix", corrects: fed.id, amount: { value: 90, unit: "kg" } });
    const three = ledgerWith(two, { id: "void", date: "2026-04-21", corrects: stated.id, voids: true });
    expect(one.entries).toHaveLength(2);
    expect(three.entries.map(({ id }) => id)).toEqual([fed.id, stated.id, "fix", "void"]);
    expect(standingEntries(three).map(({ id }) => id)).toEqual(["fix"]);
    // A correction of the correction counts; a second correction of the first entry does not.
    const four = ledgerWith(three, { ...fed, id: "fix 2", corrects: "fix" });
    expect(standingEntries(four).map(({ id }) => id)).toEqual(["fix 2"]);
    expect(problems(() => ledgerWith(four, { ...fed, id: "late", corrects: fed.id }))).toEqual([
      "conflict entry.corrects",
    ]);
    expect(problems(() => ledgerWith(four, { ...fed, id: "odd", corrects: "nobody" }))).toEqual([
      "missing entry.corrects",
    ]);
    expect(problems(() => ledgerWith(four, fed))).toEqual(["duplicate entry.id"]);
    expect(
      problems(() =>
        ledger([
          { ...fed, corrects: "later" },
          { ...stated, id: "later" },
        ]),
      ),
    ).toEqual(["missing entries[0].corrects"]);
  });

  test("is plain JSON that comes back", () => {
    const season = ledger([fed, stated, full]);
    expect(ledger(JSON.parse(JSON.stringify(season)).entries)).toEqual(season);
  });
});

describe("ledgerTotals", () => {
  const season = ledger([fed, stated, full]);
  const year = { ledger: season, from: "2026-01-01", to: "2026-12-31" } as const;

  test("by hand: 101.1 kg of 24 % on 5518.44 m2 is 4.397 g/m2 of N, half of it slow", () => {
    const { supplies, applications } = ledgerTotals({ ...year, part: "north pitch" });
    const of = (name: string) => supplies[name]?.in("kg/ha") ?? Number.NaN;
    // 101.1 * 0.24 / 0.551844 = 43.969 kg/ha; the entry without parts adds 0.4 lb/1000 ft2 = 19.530 kg/ha.
    expect(of("N")).toBeCloseTo(43.969 + 19.53, 2);
    expect(of("N:slow")).toBeCloseTo(21.984 + 4.882, 2);
    expect(of("N:soluble")).toBeCloseTo(21.984 + 14.647, 2);
    expect(of("P2O5")).toBeCloseTo(4.882, 2);
    expect(of("P")).toBeCloseTo(4.882 * 0.4364, 2);
    expect(applications).toBe(2);
  });

  test("active ingredient: 1.8 fl oz at 120 g/L on 14 400 ft2", () => {
    const { supplies } = ledgerTotals({ ...year, part: "bowling lawn" });
    // 1.8 * 29.5735 mL * 0.120 g/mL = 6.388 g on 1337.8 m2 = 0.04775 kg/ha.
    expect(supplies["ai:trinexapac-ethyl"]?.in("kg/ha")).toBeCloseTo(0.04775, 4);
  });

  test("both ends of the stretch count, and the days beyond do not", () => {
    const count = (from: string, to: string) =>
      ledgerTotals({ ledger: season, from: from as "2026-01-01", to: to as "2026-01-01" }).applications;
    expect([
      count("2026-04-21", "2026-04-21"),
      count("2026-04-22", "2026-12-31"),
      count("2026-01-01", "2026-04-20"),
    ]).toEqual([1, 0, 0]);
    expect(problems(() => ledgerTotals({ ledger: season, from: "2026-05-01", to: "2026-04-01" }))).toEqual([
      "date to",
    ]);
  });

  test("what states nothing is not counted, by its id", () => {
    const bare = ledger([{ id: "bare", date: "2026-05-01" }, stated]);
    expect(ledgerTotals({ ...year, ledger: bare }).notCounted).toEqual(["bare"]);
  });

  test("totals add up whatever the order of the entries", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { maxLength: 12 }), (rates) => {
        const entries = rates.map(
          (value, i): LedgerEntry => ({
            id: `e${i}`,
            date: `2026-0${1 + (i % 9)}-01` as "2026-01-01",
            supplies: [{ value, unit: "kg/ha", of: "N" }],
          }),
        );
        const total = (list: readonly LedgerEntry[]) =>
          ledgerTotals({ ...year, ledger: ledger(list) }).supplies.N?.value ?? 0;
        const sum = rates.reduce((a, b) => a + b, 0);
        expect(total(entries)).toBeCloseTo(sum, 9);
        expect(total([...entries].reverse())).toBeCloseTo(sum, 9);
      }),
    );
  });
});

describe("CSV", () => {
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
    expect(read).toEqual({ ledger: season, unread: [], problems: [] });
    // The same through a spreadsheet that writes LF and a byte order mark.
    expect(ledgerFromCsv(`\uFEFF${text.replace(/\r\n/g, "\n")}`)).toEqual(read);
  });

  test("any entry that a ledger takes", () => {
    const text = fc
      .string({ minLength: 1, unit: fc.constantFrom("a", '"', ",", "\n", ";", "\\", "[", "=", "é") })
      .filter((t) => t.trim() !== "");
    const stat = (units: readonly string[]) =>
      fc.record({ value: fc.double({ min: 1e-6, max: 1e6, noNaN: true }), unit: fc.constantFrom(...units) });
    fc.assert(
      fc.property(
        fc.array(
          fc.record(
            {
              parts: fc.uniqueArray(text, { minLength: 1, maxLength: 3 }),
              note: text,
              area: stat(["ft2", "m2", "acre"]),
              carrierVolume: stat(["gal", "L"]),
              restrictedUse: fc.boolean(),
            },
            { requiredKeys: [] },
          ),
          { minLength: 1, maxLength: 4 },
        ),
        (list) => {
          const season = ledger(
            list.map((more, i) => ({ ...more, id: `e${i}`, date: "2026-05-01" as const })),
          );
          expect(ledgerFromCsv(ledgerCsv(season))).toEqual({ ledger: season, unread: [], problems: [] });
        },
      ),
      runs(200),
    );
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
    expect(problems(() => ledgerFromCsv("id,date,area,colour,amount [lbs]\r\n"))).toEqual([
      'missing head "area"',
      'type head "colour"',
      'unit/unknown head "amount [lbs]"',
    ]);
    expect(problems(() => ledgerFromCsv("date\r\n"))).toEqual(["missing head"]);
    expect(problems(() => ledgerFromCsv(""))).toEqual(["missing text"]);
  });

  test("one figure in two units on one line is refused", () => {
    const read = ledgerFromCsv("id,date,area [ft2],area [m2]\r\na,2026-05-01,1000,93\r\n");
    expect(read.unread[0]?.problems[0]?.code).toBe("conflict");
  });
});

describe("missingForRecord", () => {
  test("a full entry lacks nothing that the schemes name, and the result says what it did not look at", () => {
    for (const scheme of [usRestrictedUseRecord, usWorkerProtectionRecord, euPlantProtectionRecord]) {
      const { gaps, notChecked, checked } = missingForRecord(full, scheme);
      expect(gaps).toEqual([]);
      expect(checked.length).toBeGreaterThan(5);
      expect(notChecked[0]).toMatch(/^Whether the scheme applies/);
    }
  });

  test("a bare entry lacks all but its date", () => {
    const { gaps } = missingForRecord({ id: "x", date: "2026-05-01" }, usRestrictedUseRecord);
    expect(gaps.map(({ what }) => what)).toEqual([
      "name of the product",
      "registration number",
      "total amount applied",
      "size of the area treated",
      "crop, commodity or site",
      "location of the application",
      "name of the certified applicator",
      "number of the certificate",
    ]);
  });

  test("from 2026 on the European Union asks for the registration number", () => {
    const { registrationNumber: _, ...without } = full;
    expect(missingForRecord(without, euPlantProtectionRecord).gaps.map(({ what }) => what)).toEqual([
      "registration number",
    ]);
  });

  test("a rate over an area answers for the amount", () => {
    const entry: LedgerEntry = { id: "x", date: "2026-05-01", rate: { value: 3, unit: "pt/acre" } };
    const amount = (e: LedgerEntry) =>
      missingForRecord(e, usRestrictedUseRecord).gaps.some(({ what }) => what === "total amount applied");
    expect([amount(entry), amount({ ...entry, area: { value: 1, unit: "acre" } })]).toEqual([true, false]);
  });

  test("blanks are no answer, the weather can be asked for, and a scheme is read before it is used", () => {
    const entry: LedgerEntry = {
      id: "x",
      date: "2026-05-01",
      location: "  ",
      weather: { wind: { value: 5, unit: "mi/h" } },
    };
    const scheme = (fields: readonly (readonly string[])[]) => ({
      ...usRestrictedUseRecord,
      items: [{ what: "it", fields }],
    });
    expect(missingForRecord(entry, scheme([["location"]])).gaps).toHaveLength(1);
    expect(missingForRecord(entry, scheme([["weather.wind"]])).gaps).toHaveLength(0);
    expect(missingForRecord(entry, scheme([["weather.temperature"]])).gaps).toHaveLength(1);
    expect(problems(() => missingForRecord(entry, scheme([["wind"]])))).toEqual([
      "type scheme.items[0].fields[0][0]",
    ]);
    expect(problems(() => missingForRecord(entry, {} as never))).toEqual([
      "missing scheme.id",
      "missing scheme.appliesTo",
      "missing scheme.items",
      "type scheme.notHeld",
    ]);
  });
});
