import { describe, expect, test } from "vitest";
import {
  euPlantProtectionRecord,
  type LedgerEntry,
  missingForRecord,
  type RecordScheme,
  usRestrictedUseRecord,
  usWorkerProtectionRecord,
} from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";
import { full } from "../helpers.js";

/** What each scheme asks for, from its text, and which fields of an entry answer it: by one list or by the other. */
const asked: readonly (readonly [RecordScheme, readonly (readonly [string, ...(readonly string[])[]])[]])[] =
  [
    [
      // 7 CFR 110.3(a)(1) to (5)
      usRestrictedUseRecord,
      [
        ["name of the product", ["productName"]],
        ["registration number", ["registrationNumber"]],
        ["total amount applied", ["amount"], ["rate", "area"]],
        ["size of the area treated", ["area"]],
        ["crop, commodity or site", ["site"]],
        ["location of the application", ["location"]],
        ["month, day and year", ["date"]],
        ["name of the certified applicator", ["applicator"]],
        ["number of the certificate", ["certificate"]],
      ],
    ],
    [
      // 40 CFR 170.122(c), and from memory 170.311
      usWorkerProtectionRecord,
      [
        ["name of the product", ["productName"]],
        ["registration number", ["registrationNumber"]],
        ["active ingredient", ["activeIngredient"], ["contents"]],
        ["crop, commodity or site", ["site"]],
        ["location and description of the area", ["location"], ["parts"]],
        ["date, and time of start and end", ["date", "start", "end"]],
        ["restricted-entry interval", ["reEntryHours"]],
      ],
    ],
    [
      // Regulation (EC) 1107/2009, article 67(1), as Regulation (EU) 2023/564 restates it
      euPlantProtectionRecord,
      [
        ["name of the product", ["productName"]],
        ["registration number", ["registrationNumber"]],
        ["time of the application", ["date"]],
        ["dose", ["rate"], ["amount", "area"]],
        ["area", ["area"], ["parts"]],
        ["crop", ["site"]],
      ],
    ],
  ];

describe.each(asked.map(([scheme, items]) => [scheme.id, scheme, items] as const))(
  "%s",
  (_, scheme, items) => {
    const gaps = (entry: object) => missingForRecord(entry as LedgerEntry, scheme).gaps;

    test("asks for what its text names", () => {
      expect(scheme.items.map(({ what, fields }) => [what, ...fields])).toEqual(items);
      expect(missingForRecord(full, scheme).checked).toEqual(items.map(([what]) => what));
    });

    test.each(items.map((item) => [item[0], item] as const))(
      "%s: each way answers, and no part of one does",
      (_, [what, ...ways]) => {
        const pick = (names: readonly string[]) =>
          Object.fromEntries(
            Object.entries({ ...full, rate: { value: 3, unit: "pt/acre" } }).filter(([name]) =>
              names.includes(name),
            ),
          );
        for (const way of ways) {
          expect(gaps(pick(way)).filter((gap) => gap.what === what)).toEqual([]);
          for (const name of way) {
            const part = way.filter((other) => other !== name);
            if (!ways.some((other) => other.every((field) => part.includes(field))))
              expect(gaps(pick(part)).find((gap) => gap.what === what)?.fields).toEqual([
                ...new Set(ways.flat()),
              ]);
          }
        }
      },
    );

    test("says where it stands, to what it applies, and what it does not hold", () => {
      const found = missingForRecord(full, scheme);
      expect([found.scheme, found.source, found.notChecked]).toEqual([
        scheme.id,
        scheme.source,
        [`Whether the scheme applies: ${scheme.appliesTo}.`, ...scheme.notHeld],
      ]);
    });
  },
);

test("how each scheme was reached, and the terms that no field answers", () => {
  expect(asked.map(([{ reached }]) => reached)).toEqual(["read", "from memory", "read"]);
  expect(usRestrictedUseRecord.appliesTo).toMatch(/certified private applicator/);
  expect(usRestrictedUseRecord.notHeld.join("\n")).toMatch(/within 14 days and kept for two years/);
  expect(usRestrictedUseRecord.source).toMatchObject({
    title: expect.stringMatching(/^7 CFR 110\.3/),
    year: 2006,
    where: "(a)(1) to (5)",
  });
  expect(usWorkerProtectionRecord.appliesTo).toMatch(/not lawns or parks/);
  expect(usWorkerProtectionRecord.source).toMatch(/verify before use/);
  expect(usWorkerProtectionRecord.notHeld.join("\n")).toMatch(/within 24 hours .* until 30 days/);
  expect(euPlantProtectionRecord.appliesTo).toMatch(/professional use/);
  expect(euPlantProtectionRecord.notHeld.join("\n")).toMatch(/three years \(from memory\)/);
  expect(euPlantProtectionRecord.source).toMatchObject({
    title: expect.stringMatching(/2023\/564/),
    year: 2023,
  });
  for (const [{ name }] of asked) expect(name).toMatch(/^(United States|European Union), /);
});

test("a scheme of one's own says what is wrong with it", () => {
  const own = { ...usRestrictedUseRecord, items: [{ what: "wind", fields: [["weather.wind"]] }] };
  const put = (change: object) => () => missingForRecord(full, { ...own, ...change } as never);
  const items = (item: unknown) => put({ items: [...own.items, item] });
  expectRefusals([
    [() => missingForRecord(full, 3 as never), "type", "scheme", /^a scheme, such as usRestrictedUseRecord/],
    [() => missingForRecord(full, undefined as never), "missing", "scheme", /^a scheme/],
    [() => missingForRecord(3 as never, own as never), "type", "entry", /^an application/],
    [put({ id: "" }), "missing", "scheme.id", /^a name/],
    [put({ source: 3 }), "type", "scheme.source", /^where it is stated, and when that was read/],
    [put({ source: { title: "a" } }), "missing", "scheme.source.publisher", /^a publisher/],
    [put({ source: { publisher: "a" } }), "missing", "scheme.source.title", /^a title/],
    [
      put({ source: { title: "a", publisher: "b", year: 0 } }),
      "range",
      "scheme.source.year",
      /"min":1,"max":9999/,
    ],
    [put({ source: { title: "a", publisher: "b", year: 10_000 } }), "range", "scheme.source.year", /9999/],
    [
      put({ source: { title: "a", publisher: "b", where: 3 } }),
      "type",
      "scheme.source.where",
      /^the place in it/,
    ],
    [put({ source: { title: "a", publisher: "b", url: "" } }), "missing", "scheme.source.url", /^an address/],
    [put({ source: { title: "a", publisher: "b", page: 3 } }), "type", "scheme.source.page", /./],
    [put({ appliesTo: "" }), "missing", "scheme.appliesTo", /^what it applies to, in words/],
    [put({ items: [] }), "missing", "scheme.items", /item it requires/],
    [items(3), "type", "scheme.items[1]", /^an item it requires/],
    [items({ what: "", fields: [["note"]] }), "missing", "scheme.items[1].what", /^words/],
    [items({ what: "a", fields: [] }), "missing", "scheme.items[1].fields", /list of fields/],
    [items({ what: "a", fields: [["note"], []] }), "missing", "scheme.items[1].fields[1]", /field/],
    [
      items({ what: "a", fields: [["note", "wind"]] }),
      "type",
      "scheme.items[1].fields[0][1]",
      /weather\.wind/,
    ],
    [put({ notHeld: "a" }), "type", "scheme.notHeld", /^a list of sentences/],
    [put({ notHeld: ["a", ""] }), "missing", "scheme.notHeld[1]", /^a sentence/],
  ]);
  const cited = { title: "a", publisher: "b", year: 9999, where: "p. 3", url: "https://example.org" };
  expect(put({ source: cited, notHeld: [] })().source).toEqual(cited);
  expect(put({ source: "the park" })().source).toBe("the park");
  expect(
    complaints(() => missingForRecord({ ...full, area: 3 } as never, { ...own, id: "" } as never)),
  ).toEqual(["type entry.area", "missing scheme.id"]);
});

test("a field of blanks is no answer and no mistake, in the weather too; an empty list is none", () => {
  const own = {
    ...usRestrictedUseRecord,
    items: [{ what: "it", fields: [["note"], ["weather.sky"], ["parts"]] }],
  } as const;
  const gaps = (entry: object) =>
    missingForRecord({ id: "a", date: "2026-05-01", ...entry } as never, own).gaps.length;
  expect(gaps({ note: " ", weather: { sky: "" } })).toBe(1);
  expect(gaps({ weather: { sky: "clear" } })).toBe(0);
  expect(gaps({ note: "x" })).toBe(0);
  expect(gaps({ parts: ["north"] })).toBe(0);
});
