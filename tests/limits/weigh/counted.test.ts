import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger } from "../../../src/ledger/index.js";
import { checkLimits, type Limit, type Proposal } from "../../../src/limits/index.js";

// What counts for a limit, and what could not be told; every sum by hand.

const source = "plan of the park (invented)";
const lb = (value: number, of: string, unit = "lb/acre") => ({ value, unit, of });
type Before = readonly (readonly [date: LedgerEntry["date"], more: Partial<LedgerEntry>])[];
const put = (rule: Limit | readonly Limit[], more: Partial<Proposal>, before: Before = []) =>
  checkLimits({
    ledger: ledger(before.map(([date, rest], i) => ({ id: `e${i}`, date, ...rest }))),
    limits: "source" in rule ? [rule] : rule,
    proposal: { date: "2026-06-08", ...more },
  });
const yearly = (of: string, value = 10, unit = "lb/acre"): Limit => ({
  amount: lb(value, of, unit),
  per: "calendar year",
  source,
});
const countOf = (of: string, atMost = 1): Limit => ({
  kind: "count",
  of,
  atMost,
  per: "calendar year",
  source,
});
const use = (rule: Limit, more: Partial<Proposal>, before: Before = []) => put(rule, more, before).uses[0];
const feed = { product: "feed-a", analysis: "20-10-5" } as const;
/** A liquid feed by volume, of no density that is stated: its nutrients cannot be weighed. */
const liquid = {
  product: "liq",
  form: "liquid",
  analysis: "12-4-0",
  rate: { value: 2, unit: "gal/acre" },
} as const;

describe("one day", () => {
  test("adds up what went down on it", () => {
    const before: Before = [
      ["2026-05-01", { supplies: [lb(3, "N")] }],
      ["2026-05-01", { supplies: [lb(2, "N")] }],
      ["2026-05-02", { supplies: [lb(1, "N")] }],
    ];
    expect(use(yearly("N"), { supplies: [lb(1, "N")] }, before)).toMatchObject({
      before: { value: 6 },
      adds: { value: 1 },
      after: { value: 7 },
      remainingUnderStatedLimits: { value: 3 },
      violated: false,
    });
    // Three applications, two of them on one day
    expect(use(countOf("N", 5), { supplies: [lb(1, "N")] }, before)).toMatchObject({
      before: { value: 3, unit: "count" },
      after: { value: 4 },
    });
  });
});

describe("a limit on a product", () => {
  const rule = yearly("product:feed-a", 300);
  const dry = { ...feed, rate: { value: 100, unit: "lb/acre" } } as const;

  test("counts the product that is named, whatever it holds", () => {
    expect(use(rule, dry, [["2026-05-01", dry]])).toMatchObject({
      before: { value: 100 },
      adds: { value: 100 },
    });
    expect(use(rule, dry, [["2026-05-01", { ...dry, product: "feed-b" }]])?.before.value).toBe(0);
    expect(use(rule, { ...dry, product: "feed-b" }, [["2026-05-01", dry]])?.adds.value).toBe(0);
  });

  test("cannot tell an entry that names none, nor one by volume against pounds", () => {
    const bare = { analysis: "20-10-5", rate: { value: 100, unit: "lb/acre" } } as const;
    // The same whether a nutrient is asked for beside it or not
    for (const beside of [[], [yearly("N", 300)]]) {
      const result = put([rule, ...beside], dry, [["2026-05-01", bare]]);
      expect(result.uses[0]).toMatchObject({ before: { value: 0 } });
      expect(result.notChecked.join("\n")).toMatch(
        /the product:feed-a applied on 2026-05-01 \(e0\): not stated/,
      );
      expect(
        put([{ kind: "interval", of: "product:feed-a", atLeastDays: 60, source }, ...beside], dry, [
          ["2026-05-01", bare],
        ]).tests[0]?.violated,
      ).toBeNull();
    }
    const poured = { product: "feed-a", form: "liquid", rate: { value: 2, unit: "gal/acre" } } as const;
    expect(use(rule, dry, [["2026-05-01", poured]])).toMatchObject({ before: { value: 0 }, violated: null });
    expect(use(yearly("product:feed-a", 5, "gal/acre"), poured, [["2026-05-01", poured]])).toMatchObject({
      before: { value: 2 },
      after: { value: 4 },
      violated: false,
    });
  });

  test("an entry that puts down nothing names none, and is no gap", () => {
    const none = { supplies: [lb(0, "N")] };
    expect(
      put(countOf("product:feed-a"), dry, [["2026-05-01", { analysis: "0-0-0", rate: dry.rate }]]).uses[0],
    ).toMatchObject({
      before: { value: 0 },
    });
    expect(use(countOf("N"), { supplies: [lb(1, "N")] }, [["2026-05-01", none]])?.before.value).toBe(0);
  });
});

describe("a nutrient in its forms", () => {
  test("phosphate counts for phosphorus, and none of it for nothing", () => {
    expect(use(countOf("P"), { supplies: [lb(1, "P2O5")] })).toMatchObject({ adds: { value: 1 } });
    expect(use(countOf("P"), { supplies: [lb(1, "N")] })).toMatchObject({ adds: { value: 0 } });
    expect(use(countOf("P"), { supplies: [lb(0, "P2O5")] })).toMatchObject({ adds: { value: 0 } });
    expect(use(countOf("MgO"), { supplies: [lb(1, "Mg")] })).toMatchObject({ adds: { value: 1 } });
    expect(use(countOf("Mg"), { supplies: [lb(0, "MgO")] })).toMatchObject({ adds: { value: 0 } });
    expect(use(countOf("Ca"), { supplies: [lb(1, "Mg")] })).toMatchObject({ adds: { value: 0 } });
  });

  test("that could not be weighed went down all the same: its amount is open, and it counts as an application", () => {
    expect(use(yearly("N"), liquid)).toMatchObject({ adds: { value: 0 }, violated: null });
    expect(use(yearly("P"), liquid)).toMatchObject({ violated: null });
    expect(use(yearly("K2O"), liquid)).toMatchObject({ violated: false });
    expect(use(countOf("N"), liquid, [["2026-05-01", liquid]])).toMatchObject({
      before: { value: 1 },
      after: { value: 2 },
      violated: true,
    });
    expect(use(countOf("P"), liquid, [["2026-05-01", liquid]])).toMatchObject({ after: { value: 2 } });
    expect(use(countOf("K2O"), liquid, [["2026-05-01", liquid]])).toMatchObject({ after: { value: 0 } });
    const result = put(yearly("N"), { supplies: [lb(1, "N")] }, [["2026-05-01", liquid]]);
    expect(result.uses[0]).toMatchObject({ violated: null, earliestByStatedLimit: null });
    expect(result.notChecked[0]).toBe(
      "whole site: the N applied on 2026-05-01 (e0): not stated, or it cannot be weighed.",
    );
  });

  test("its slow share is open then, and so is what depends on it", () => {
    const slow: Limit = { kind: "slow share", atLeastPercentOfN: 20, source };
    expect(put(slow, liquid).tests[0]?.violated).toBeNull();
    expect(put({ ...yearly("N"), scope: { slowShareAtLeast: 20 } }, liquid).uses[0]?.appliesIf).toHaveLength(
      1,
    );
  });
});

describe("a mode of action", () => {
  const once: Limit = {
    kind: "rotation",
    group: "FRAC 11",
    of: ["ai:azoxystrobin"],
    atMostInARow: 1,
    source,
  };
  const spray = (name: string) => ({ supplies: [lb(0.3, `ai:${name}`)] });
  const run = (...rows: readonly Partial<LedgerEntry>[]) =>
    put(once, spray("azoxystrobin"), [
      ["2026-05-01", spray("azoxystrobin")],
      ...rows.map((row, i) => [`2026-05-1${i}` as LedgerEntry["date"], row] as const),
    ]).tests[0]?.violated;

  test("a run is ended by another active ingredient, weighed or named, and by nothing else", () => {
    expect(run()).toBe(true);
    expect(run(spray("chlorothalonil"))).toBe(false);
    expect(run({ supplies: [lb(0.3, "ae:2,4-D")] })).toBe(false);
    expect(
      run({ analysis: "20-0-0", activeIngredient: "chlorothalonil", rate: { value: 3, unit: "lb/acre" } }),
    ).toBe(false);
    // Fertilizer between two sprays is no spray, nor is one of nothing
    expect(run({ supplies: [lb(20, "N")] })).toBe(true);
    expect(run({ supplies: [lb(0, "ai:chlorothalonil")] })).toBe(true);
    expect(run({ supplies: [lb(20, "N"), lb(0.3, "ai:chlorothalonil")] })).toBe(false);
  });

  test("what tells nothing leaves the run open, and a day that holds another group as well is told by it", () => {
    expect(run({ productName: "unknown" })).toBeNull();
    const same = (rows: readonly Partial<LedgerEntry>[]) =>
      put(once, spray("azoxystrobin"), [
        ["2026-05-01", spray("azoxystrobin")],
        ...rows.map((row) => ["2026-05-10", row] as const),
      ]).tests[0]?.violated;
    // It may have been the group itself, whatever else went down that day
    expect(same([{ productName: "unknown" }, spray("chlorothalonil")])).toBeNull();
    expect(same([spray("chlorothalonil"), { productName: "unknown" }])).toBeNull();
    expect(same([{ productName: "unknown" }, { productName: "unknown" }])).toBeNull();
    expect(same([spray("azoxystrobin"), { productName: "unknown" }])).toBe(true);
    expect(put(once, { productName: "unknown" }).tests[0]?.violated).toBeNull();
  });

  test("an ingredient of the group that is named in words is of the group", () => {
    const named = {
      ...feed,
      activeIngredient: "Azoxystrobin 0.3 %",
      rate: { value: 100, unit: "lb/acre" },
    } as const;
    expect(put(once, named, [["2026-05-01", named]]).tests[0]?.violated).toBe(true);
    expect(
      put(once, named, [["2026-05-01", { ...named, activeIngredient: "prodiamine" }]]).tests[0]?.violated,
    ).toBe(false);
  });
});

describe("buffers along several edges", () => {
  const rule: Limit = {
    kind: "buffer",
    of: "any",
    from: "water",
    atLeast: { value: 50, unit: "ft" },
    id: "label/creek",
    source,
  };
  const edges = (...list: readonly object[]) => ({
    supplies: [lb(1, "N")],
    facts: { edges: list.map((edge) => ({ from: "water", ...edge })) as never },
  });
  const ft = (value: number) => ({ value, unit: "ft" });

  test("those that are short are told, and all of them where none is", () => {
    const of = (...list: readonly object[]) => put(rule, edges(...list)).tests[0]?.found;
    expect(of({ away: ft(10) }, { away: ft(60) }, { away: ft(20), untreated: ft(5) })).toBe(
      "10 ft; 20 ft away and a strip of 5 ft",
    );
    expect(of({ away: ft(70) }, { away: ft(60) })).toBe("70 ft; 60 ft");
    expect(of({ away: ft(10), measures: ["windbreak", "hood"] })).toBe(
      "10 ft; not listed, and no reduction: windbreak, hood",
    );
  });

  test("of one part count on it alone, and on the whole site", () => {
    const north = edges({ away: ft(10), part: "north" });
    expect(put(rule, { ...north, parts: ["north"] }).tests[0]?.violated).toBe(true);
    expect(put(rule, { ...north, parts: ["south"] }).tests[0]?.violated).toBeNull();
    expect(put(rule, north).tests[0]?.violated).toBe(true);
  });

  test("a finding names its limit, part, measure and source", () => {
    const { findings } = put(rule, edges({ away: ft(10) }));
    expect(findings[0]).toMatchObject({
      code: "limit/buffer",
      severity: "warning",
      path: "limits[0]",
      source,
      params: {
        part: "whole site",
        of: "any product",
        limitId: "label/creek",
        states: "at least 50 ft from water",
        found: "10 ft",
      },
    });
    const bare = put(yearly("N", 1), { supplies: [lb(2, "N")] }, [
      ["2026-05-01", { supplies: [lb(0.5, "N")] }],
    ]).findings[0];
    expect(bare?.params).toEqual({
      part: "whole site",
      of: "N",
      earliest: undefined,
      limit: 1,
      before: 0.5,
      adds: 2,
      after: 2.5,
      remaining: -1.5,
      unit: "lb/acre",
    });
    const counted = put(countOf("N"), { supplies: [lb(2, "N")] }, [
      ["2026-05-01", { supplies: [lb(0.5, "N")] }],
    ]).findings[0];
    expect(counted?.params).toMatchObject({ unit: "applications", earliest: "2027-01-01" });
    expect(counted?.text).toBe(
      "whole site: 2 applications of N in a calendar year are over the stated limit of 1 (1 before, 1 now). By the stated applications, the first day within this limit is 2027-01-01.",
    );
  });

  test("what is not stated is no finding, and stands in what was not checked", () => {
    const open = put([rule, { kind: "setback", of: "any", atLeast: ft(15), source }], {
      supplies: [lb(1, "N")],
    });
    expect(open.findings.map(({ code }) => code)).toEqual(["nitrogen/no-slow-stated"]);
    expect(open.notChecked.slice(0, 2)).toEqual([
      "whole site: label/creek (at least 50 ft from water), because what it needs is not stated.",
      "whole site: limits[1] (at least 15 ft from water), because what it needs is not stated.",
    ]);
    expect(open.findings[0]?.text).toMatch(/^The application states no slow-release nitrogen/);
    expect(put(rule, edges({ away: ft(60) })).notChecked).toHaveLength(1);
    expect(open.checked).toEqual(["label/creek", "limits[1]"]);
  });
});
