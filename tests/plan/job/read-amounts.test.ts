import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import { type Job, tryWorkOrder } from "../../../src/plan/index.js";
import { complaints } from "../../errors.js";
import { problemsOf, smallJob, soundOrder } from "../helpers.js";

const feed = (more: object): Job =>
  smallJob({ products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", ...more }] });

describe("a label's breakdown of nitrogen in a job", () => {
  // By hand: 2 % water-insoluble and 6 % coated of 24 % are a third of the nitrogen, 0.3 of 0.9 lb.
  test("gives the slow nitrogen", () => {
    const job = feed({ nitrogen: { percent: { urea: 16, waterInsoluble: 2, coated: 6 } } });
    const order = soundOrder(job);
    const supplies = order.spreads[0]?.supplies;
    expect(supplies?.["N:slow"]?.in("lb/1000 ft2")).toBeCloseTo(0.3, 12);
    expect(supplies?.["N:quick"]?.in("lb/1000 ft2")).toBeCloseTo(0.6, 12);
    expect(order.findings.map(({ code }) => code)).not.toContain("nitrogen/no-slow-stated");
    expect(soundOrder(JSON.parse(JSON.stringify(job))).spreads[0]?.supplies).toEqual(supplies);
  });

  test("a footnote within a line: 12 of 24 % is a half", () => {
    const order = soundOrder(feed({ nitrogen: { percent: { urea: 24 }, slowWithin: { urea: 12 } } }));
    expect(order.spreads[0]?.supplies?.["N:slow"]?.in("lb/1000 ft2")).toBeCloseTo(0.45, 12);
  });

  test.each<readonly [string, object, readonly string[]]>([
    ["lines that do not add up", { percent: { urea: 16 } }, ["conflict products[0].nitrogen.percent"]],
    ["a line that is none", { percent: { ureas: 24 } }, ["type products[0].nitrogen.percent.ureas"]],
    ["text", { percent: { urea: "24" } }, ["not-finite products[0].nitrogen.percent.urea"]],
    [
      "a footnote over its line",
      { percent: { urea: 24 }, slowWithin: { urea: 25 } },
      ["conflict products[0].nitrogen.slowWithin.urea"],
    ],
    ["no record", [24], ["type products[0].nitrogen"]],
  ])("%s", (_, nitrogen, problems) => {
    expect(problemsOf(feed({ nitrogen }))).toEqual(problems);
  });

  test("needs an analysis, with nitrogen in it, and agrees with the slow nitrogen", () => {
    const nitrogen = { percent: { urea: 16, coated: 8 } };
    expect(problemsOf(feed({ nitrogen, analysis: undefined }))).toContain("missing products[0].analysis");
    expect(problemsOf(feed({ nitrogen, analysis: "0-0-50" }))).toEqual(["conflict products[0].nitrogen"]);
    const slowNitrogen = { value: 9, unit: "% w/w", of: "N:slow/product" };
    expect(problemsOf(feed({ nitrogen, slowNitrogen }))).toEqual(["conflict products[0].slowNitrogen"]);
    expect(problemsOf(feed({ nitrogen, slowNitrogen: { ...slowNitrogen, value: 8 } }))).toEqual([]);
  });

  test("is told with everything else that is wrong with the product", () => {
    expect(problemsOf(feed({ nitrogen: { percent: { urea: 16 } }, lowRate: 1, name: "" }))).toEqual([
      "missing products[0].name",
      "type products[0].lowRate",
      "conflict products[0].nitrogen.percent",
    ]);
  });
});

describe("rates of product in a job", () => {
  const logged = (rate: object): Job =>
    smallJob({
      products: [
        { id: "feed-a", form: "dry", analysis: "24-0-11" },
        { id: "killer", form: "liquid", contents: [{ value: 4, unit: "lb/gal", of: "ai:x/product" }] },
      ],
      log: [{ date: "2026-04-20", product: "killer", rate: rate as never }],
    });
  test.each<readonly [string, object, string]>([
    ["below zero", { value: -3, unit: "pt/acre" }, "range log[0].rate.value"],
    ["per no spray", { value: 2, unit: "pt", per: { value: 0, unit: "gal" } }, "range log[0].rate.per"],
    [
      "per an area",
      { value: 2, unit: "pt", per: { value: 1, unit: "acre" } },
      "unit/mismatch log[0].rate.per",
    ],
    [
      "a rate per spray",
      { value: 2, unit: "pt/acre", per: { value: 1, unit: "gal" } },
      "unit/mismatch log[0].rate.unit",
    ],
    [
      "per water",
      { value: 2, unit: "pt", per: { value: 1, unit: "gal", of: "water" } },
      "substance/mismatch log[0].rate.per.of",
    ],
  ])("%s is refused where it stands", (_, rate, problem) => {
    expect(problemsOf(logged({ of: "product", ...rate }))).toEqual([problem]);
  });

  test("what a rate is per is a volume of spray, in words", () => {
    for (const [per, path] of [
      [[], "log[0].rate.per"],
      [{ value: 1, unit: "gal", of: "water" }, "log[0].rate.per.of"],
    ] as const) {
      const { problems } = tryWorkOrder(logged({ of: "product", value: 2, unit: "pt", per }));
      expect(problems.map((one) => [one.path, one.expected.slice(0, 17)])).toEqual([
        [path, "a volume of spray"],
      ]);
    }
  });

  test("a label rate upside down is told at its end", () => {
    const end = (value: number) => ({ value, unit: "lb/1000 ft2", of: "product" });
    expect(problemsOf(feed({ labelRate: { min: end(5), max: end(3) } }))).toEqual([
      "conflict products[0].labelRate.max",
    ]);
  });
});
const entry = (more: object): LedgerEntry => ({ id: "a", date: "2026-04-20", ...more });

describe("entries that would count wrongly", () => {
  test("the same content by weight and per volume counts twice, and is refused", () => {
    const contents = [
      { value: 4, unit: "lb/gal", of: "ai:x/product" },
      { value: 40.7, unit: "% w/w", of: "ai:x/product" },
    ];
    expect(complaints(() => ledger([entry({ contents })]))).toEqual(["duplicate entries[0].contents[1].of"]);
    const products = [{ id: "feed-a", form: "dry", analysis: "24-0-11", contents }] as Job["products"];
    expect(problemsOf(smallJob({ products }))).toEqual(["duplicate products[0].contents[1].of"]);
  });

  test("an amount of another product", () => {
    const rate = { value: 3, unit: "lb/1000 ft2", of: "product:feed-b" };
    expect(complaints(() => ledger([entry({ product: "feed-a", rate })]))).toEqual([
      "substance/mismatch entries[0].rate.of",
    ]);
    expect(complaints(() => ledger([entry({ product: "feed-b", rate })]))).toEqual([]);
  });

  test("one part twice", () => {
    expect(complaints(() => ledger([entry({ parts: ["green", "green"] })]))).toEqual([
      "duplicate entries[0].parts[1]",
    ]);
  });

  test("nitrogen that is stated as nitrate and ammonium counts as nitrogen, all of it soluble", () => {
    const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
    const limits = ["N", "N:quick"].map((of) => ({
      amount: lb(1, of),
      per: "application" as const,
      source: "test",
    }));
    const added = (supplies: readonly { value: number; unit: string; of: string }[]): readonly number[] =>
      checkLimits({ proposal: { date: "2026-06-08", supplies }, limits }).uses.map(({ adds }) => adds.value);
    expect(added([lb(0.3, "NO3-N"), lb(0.4, "NH4-N")])).toEqual([0.7, 0.7]);
    // 14.007 g of N in 62.004 g of nitrate.
    const [total, soluble] = added([lb(1, "NO3")]) as [number, number];
    expect([total.toFixed(4), soluble.toFixed(4)]).toEqual(["0.2259", "0.2259"]);
    // The soluble nitrogen holds the nitrate; the slow nitrogen comes on top.
    expect(added([lb(0.3, "NO3-N"), lb(0.5, "N:quick"), lb(0.2, "N:slow")])).toEqual([0.7, 0.5]);
    expect(complaints(() => added([lb(1, "NO3"), lb(1, "NO3-N")]))).toEqual(["conflict proposal.supplies"]);
    expect(complaints(() => added([lb(0.5, "N"), lb(0.6, "NO3-N")]))).toEqual(["conflict proposal.supplies"]);
    expect(complaints(() => added([lb(1, "CaO"), lb(1, "Ca")]))).toEqual(["conflict proposal.supplies"]);
  });

  test("what was taken as read is said: no total nitrogen", () => {
    const { findings } = checkLimits({
      proposal: { date: "2026-06-08", supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N:quick" }] },
      limits: [],
    });
    expect(findings.map(({ code }) => code)).toEqual(["nitrogen/no-total-stated"]);
  });
});
