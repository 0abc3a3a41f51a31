import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  euPlantProtectionRecord,
  type LedgerEntry,
  ledger,
  ledgerTotals,
  ledgerWith,
  missingForRecord,
  standingEntries,
  usRestrictedUseRecord,
  usWorkerProtectionRecord,
} from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";
import { fed, full, stated } from "../helpers.js";

describe("ledger", () => {
  test("tells everything that is wrong with its entries, with paths", () => {
    expect(
      complaints(() =>
        ledger([
          full,
          { id: "", date: "2026-02-30", area: { value: 0, unit: "ft2" }, start: "25:00" },
          { id: "x", date: "2026-03-01", amount: { value: 3, unit: "lb" }, areas: 1 },
          { id: "y", date: "2026-03-01", contents: [{ value: 4, unit: "lb/gal", of: "N" }], voids: true },
          { id: "z", date: "2026-03-01", slowNitrogen: { value: 12, unit: "% w/w" }, weather: { wind: 3 } },
        ] as never),
      ),
    ).toEqual([
      "missing entries[1].id",
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
      complaints(() => ledger([{ id: "x", date: "2026-03-01", amount: { value: 3, unit: "lb" } }])),
    ).toEqual(["conflict entries[0].area"]);
    expect(complaints(() => ledger([{ ...fed, supplies: stated.supplies ?? [] }]))).toEqual([
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
    expect(complaints(() => ledgerWith(four, { ...fed, id: "late", corrects: fed.id }))).toEqual([
      "conflict entry.corrects",
    ]);
    expect(complaints(() => ledgerWith(four, { ...fed, id: "odd", corrects: "nobody" }))).toEqual([
      "missing entry.corrects",
    ]);
    expect(complaints(() => ledgerWith(four, fed))).toEqual(["duplicate entry.id"]);
    expect(
      complaints(() =>
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
    expect(of("N:quick")).toBeCloseTo(21.984 + 14.647, 2);
    expect(of("P2O5")).toBeCloseTo(4.882, 2);
    expect(of("P")).toBeCloseTo(4.882 * 0.4364, 2);
    expect(applications).toBe(2);
  });

  test("active ingredient: 1.8 fl oz at 120 g/L on 14 400 ft2", () => {
    const { supplies } = ledgerTotals({ ...year, part: "bowling green" });
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
    expect(complaints(() => ledgerTotals({ ledger: season, from: "2026-05-01", to: "2026-04-01" }))).toEqual([
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
    expect(complaints(() => missingForRecord(entry, scheme([["wind"]])))).toEqual([
      "type scheme.items[0].fields[0][0]",
    ]);
    expect(complaints(() => missingForRecord(entry, {} as never))).toEqual([
      "missing scheme.id",
      "missing scheme.source",
      "missing scheme.appliesTo",
      "missing scheme.items",
      "missing scheme.notHeld",
    ]);
  });
});
