// What an entry puts down per area, by hand: 45 lb on 12,000 sq ft are 3.75 lb per 1,000 sq ft.
import { describe, expect, test } from "vitest";
import { entryRates, entryRow, labelOf, noLabels } from "../../../src/ledger/entry/entry-row.js";
import type { LedgerEntry } from "../../../src/ledger/index.js";

type Entry = Omit<LedgerEntry, "id">;
const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
const fed: Entry = {
  date: "2026-05-04",
  product: "feed-a",
  analysis: "24-0-11",
  amount: { value: 45, unit: "lb" },
  area: { value: 12, unit: "1000 ft2" },
};
const of = (more: Partial<Entry> = {}, asked?: Parameters<typeof entryRates>[2]) =>
  entryRates({ ...fed, ...more }, noLabels(), asked);
const without = (...fields: readonly (keyof Entry)[]): Entry =>
  Object.fromEntries(
    Object.entries(fed).filter(([name]) => !fields.includes(name as keyof Entry)),
  ) as unknown as Entry;
const figures = (rates: ReturnType<typeof entryRates>["rates"]) =>
  Object.fromEntries(
    Object.entries(rates ?? {}).map(([name, q]) => [name, Number(q.in("lb/1000 ft2").toFixed(6))]),
  );

describe("by an analysis", () => {
  test("24-0-11 at 3.75: 0.9 lb of N, all of it quick, 0.4125 of K2O", () => {
    const { rates, completed, productRates, content, unweighed } = of();
    expect(figures(rates)).toMatchObject({ N: 0.9, "N:quick": 0.9, "N:slow": 0, K2O: 0.4125, P2O5: 0 });
    expect(completed).toEqual(["no slow stated"]);
    expect(productRates.map(({ value, unit, of: what }) => [value, unit, what])).toEqual([
      [3.75, "lb/1000 ft2", "product:feed-a"],
    ]);
    expect([content("N"), content("P2O5")]).toEqual([
      { percent: 24, all: true },
      { percent: 0, all: true },
    ]);
    expect(unweighed).toBeUndefined();
  });

  test("slow nitrogen is told, and is no completion; nor is it where there is no nitrogen", () => {
    const slow = of({ slowNitrogen: { value: 12, unit: "% w/w", of: "N:slow/product" } });
    expect(figures(slow.rates)).toMatchObject({ N: 0.9, "N:quick": 0.45, "N:slow": 0.45 });
    expect(slow.completed).toEqual([]);
    expect(of({ analysis: "0-0-50" }).completed).toEqual([]);
  });

  test("by a rate, for an entry without a product of a name, and only what is asked for", () => {
    const rated = entryRates(
      { ...without("amount", "area", "product"), rate: lb(3.75, "product") },
      noLabels(),
    );
    expect(figures(rated.rates).N).toBe(0.9);
    expect(rated.productRates.map((q) => q.of)).toEqual(["product"]);
    const asked = { substances: new Set(["N"]), telling: new Set(["N"]), products: false };
    const some = of({}, asked);
    expect(some.productRates).toEqual([]);
    expect(Object.keys(some.rates ?? {})).toEqual(["N"]);
    expect(of({}, { ...asked, products: true }).productRates).toHaveLength(1);
  });

  test("a liquid by volume is weighed through its density: 3 fl oz of 10 lb/gal with 6 % N", () => {
    const liquid: Entry = {
      ...without("amount", "area"),
      analysis: "6-0-0",
      form: "liquid",
      rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" },
    };
    const known = entryRates({ ...liquid, density: { value: 10, unit: "lb/gal" } }, noLabels());
    expect(known.rates?.N?.in("lb/1000 ft2")).toBeCloseTo((3 / 128) * 10 * 0.06, 12);
    expect(known.productRates.map(({ dimension }) => dimension)).toEqual(["mass/area", "volume/area"]);
    const unknown = entryRates(liquid, noLabels());
    expect([unknown.rates, unknown.completed, unknown.unweighed]).toEqual([{}, [], ["N", "N:quick"]]);
  });

  test("nothing is known of an entry that states neither", () => {
    const bare = entryRates(without("analysis", "amount", "area"), noLabels());
    expect([bare.rates, bare.productRates, bare.content("N"), bare.unweighed]).toEqual([
      undefined,
      [],
      undefined,
      undefined,
    ]);
  });
});

describe("by what is supplied", () => {
  test("as it is stated, completed; an amount of product stands beside it", () => {
    const supplies = [lb(0.5, "N"), lb(0.2, "P2O5")];
    const { rates, completed, productRates, content } = entryRates(
      { ...without("analysis"), supplies },
      noLabels(),
    );
    expect(figures(rates)).toMatchObject({
      N: 0.5,
      "N:quick": 0.5,
      "N:slow": 0,
      P2O5: 0.2,
      P: Number(((0.2 * 2 * 30.974) / (2 * 30.974 + 5 * 15.999)).toFixed(6)),
    });
    expect(completed).toEqual(["no slow stated"]);
    expect(productRates.map(({ value }) => value)).toEqual([3.75]);
    expect(content("N")).toBeUndefined();
  });
});

describe("forms of a nutrient", () => {
  const only = (...supplies: readonly ReturnType<typeof lb>[]) =>
    entryRates({ date: "2026-05-04", supplies }, noLabels());
  test("each form is filled from the other: P and P2O5, K and K2O", () => {
    expect(figures(only(lb(0.1, "P")).rates)).toEqual({
      P: 0.1,
      P2O5: Number(((0.1 * 141.943) / 61.948).toFixed(6)),
    });
    expect(figures(only(lb(0.1, "K")).rates)).toEqual({
      K: 0.1,
      K2O: Number(((0.1 * 94.195) / 78.196).toFixed(6)),
    });
    expect(figures(only(lb(0.1, "Fe")).rates)).toEqual({ Fe: 0.1 });
  });
  test("nitrogen that is stated in parts alone: the total is their sum", () => {
    const parts = { N: 0.5, "N:quick": 0.5, "N:slow": 0 };
    expect(figures(only(lb(0.5, "NO3-N")).rates)).toEqual({ "NO3-N": 0.5, ...parts });
    expect(figures(only(lb(0.5, "NH4-N")).rates)).toEqual({ "NH4-N": 0.5, ...parts });
    expect(figures(only(lb(0.5, "N:quick")).rates)).toEqual(parts);
    expect(figures(only(lb(0.5, "N:slow")).rates)).toEqual({ N: 0.5, "N:quick": 0, "N:slow": 0.5 });
    // 14.007 g of N in 62.004 g of nitrate.
    const ion = only(lb(1, "NO3"));
    expect(figures(ion.rates).N).toBeCloseTo(14.007 / 62.004, 5);
    expect(ion.completed).toEqual(["no total stated"]);
    expect(figures(only(lb(0.3, "NO3-N"), lb(0.2, "NH4-N"), lb(0.1, "N:slow")).rates)).toMatchObject({
      N: 0.6,
      "N:quick": 0.5,
    });
  });
  test("what is stated as neither quick nor slow counts as quick, and it is told", () => {
    const { rates, completed } = only(lb(1, "N"), lb(0.3, "N:quick"), lb(0.4, "N:slow"));
    expect(figures(rates)).toEqual({ N: 1, "N:quick": 0.6, "N:slow": 0.4 });
    expect(completed).toEqual(["rest not stated"]);
    expect(only(lb(1, "N"), lb(0.6, "N:quick"), lb(0.4, "N:slow")).completed).toEqual([]);
    expect(figures(only(lb(1, "N"), lb(0.6, "N:quick")).rates)["N:slow"]).toBe(0.4);
  });
});

describe("active ingredients that are named in words", () => {
  const named = (activeIngredient: string | undefined, more: Partial<Entry> = {}) =>
    entryRates(
      { date: "2026-05-04", ...(activeIngredient !== undefined && { activeIngredient }), ...more },
      noLabels(),
    ).unweighed;
  const supplies = [{ value: 0.1, unit: "lb/acre", of: "ai:Propiconazole" }];
  test("went down in an amount that nobody knows, unless it is stated", () => {
    expect(named("azoxystrobin + Propiconazole")).toEqual(["ai:azoxystrobin", "ai:propiconazole"]);
    expect(named("azoxystrobin + Propiconazole", { supplies })).toEqual(["ai:azoxystrobin"]);
    expect(named("propiconazole", { supplies })).toBeUndefined();
    expect(named(undefined, { supplies })).toBeUndefined();
  });
  test("also as an acid equivalent, and of the contents of a label", () => {
    const rate = { value: 1, unit: "pt/acre", of: "product" };
    const contents = [{ value: 4, unit: "lb/gal", of: "ae:2,4-D/product" }];
    expect(named("2,4-D", { rate, contents })).toBeUndefined();
    expect(named("2,4-D; dicamba", { rate, contents })).toEqual(["ai:dicamba"]);
    // By weight, and the rate is by volume: it could not be weighed.
    const byWeight = [{ value: 40, unit: "% w/w", of: "ai:x/product" }];
    expect(named("dicamba", { rate, contents: byWeight })).toEqual(["ai:x", "ai:dicamba"]);
  });
});

describe("labels and rows", () => {
  test("a label is read once for all entries that state the same, dry and liquid apart", () => {
    const labels = noLabels();
    const one = labelOf(fed, labels);
    expect(labelOf({ ...fed, date: "2026-06-01" }, labels)).toBe(one);
    expect(labelOf({ ...fed, form: "liquid" }, labels)).not.toBe(one);
    const slow = { ...fed, slowNitrogen: { value: 12, unit: "% w/w", of: "N:slow/product" } };
    expect(labelOf(slow, labels)).not.toBe(one);
    expect(labelOf({ ...slow }, labels)).toBe(labelOf(slow, labels));
    const other = { ...slow, slowNitrogen: { ...slow.slowNitrogen, value: 6 } };
    expect(labelOf(other, labels)?.slowNitrogen?.value).toBe(6);
    expect(labelOf(without("analysis"), labels)).toBeUndefined();
    const percents = { ...fed, analysis: { basis: "oxide", percent: { N: 24 } } } as const;
    expect(labelOf(percents, labels)?.analysis.percent.N).toBe(24);
    expect(
      labelOf({ ...fed, analysis: { basis: "oxide", percent: { N: 10 } } }, labels)?.analysis.percent.N,
    ).toBe(10);
  });

  test("a row has the day, the place and the parts", () => {
    const row = entryRow({ ...fed, parts: ["lawn"] }, "entry 1", noLabels());
    expect([row.date, row.from, row.parts, row.products, Object.keys(row).includes("unweighed")]).toEqual([
      "2026-05-04",
      "entry 1",
      ["lawn"],
      ["feed-a"],
      false,
    ]);
    expect(row.productRates).toHaveLength(1);
    const bare = entryRow({ date: "2026-05-04", activeIngredient: "x" }, "entry 2", noLabels());
    expect([bare.parts, bare.products, bare.rates, bare.unweighed]).toEqual([[], [], undefined, ["ai:x"]]);
  });
});
