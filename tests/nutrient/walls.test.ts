import { describe, expect, test } from "vitest";
import { leastCostBlend } from "../../src/nutrient/blend/index.js";
import * as nutrient from "../../src/nutrient/index.js";
import { money, quantity, RatewrightError } from "../../src/quantity/index.js";
import { complaints } from "../errors.js";

const {
  analysis,
  blendSaltIndex,
  burnRisk,
  cheapestSource,
  costPerArea,
  fertilizer,
  firstOrderRate,
  formulaWeight,
  highestProductRate,
  liquidProductRate,
  nutrientCost,
  nutrientsSupplied,
  packagesFor,
  percentOf,
  productForConcentration,
  productNitrogen,
  productRate,
  productRates,
  releasedNitrogen,
  releaseModel,
  saltIndex,
  seasonProgram,
  ratesBySource,
  stockTank,
  injector,
  weightOfLiquid,
} = nutrient;

const label = { type: "fertilizer", version: 1, id: "a", form: "dry" } as const;
/** A product made by hand, as a file or a form may hold it. */
const byHand = (percent: unknown, more: object = {}) =>
  ({ ...label, analysis: { basis: "oxide", percent }, ...more }) as never;
const n = quantity(1, "lb/1000 ft2", "N");
const perTon = money(500, "USD").per(quantity(1, "US ton"));

describe("a percentage made by hand is read like that of a label", () => {
  const uses: Readonly<Record<string, (product: never) => unknown>> = {
    productRate: (product) => productRate(n, product),
    productRates: (product) => productRates({ steps: [{ target: n, product }] }),
    highestProductRate: (product) => highestProductRate({ product, caps: [{ limit: n }] }),
    nutrientsSupplied: (product) => nutrientsSupplied(quantity(50, "lb", "product:a"), product),
    ratesBySource: (product) => ratesBySource({ target: n, parts: [{ product, share: quantity(100, "%") }] }),
    nutrientCost: (product) => nutrientCost({ product, price: perTon, nutrient: "N" }),
    cheapestSource: (product) => cheapestSource({ target: n, sources: [{ product, price: perTon }] }),
    costPerArea: (product) =>
      costPerArea({ product, price: perTon, rate: quantity(1, "lb/acre", "product:a") }),
    productNitrogen: (product) => productNitrogen(product),
    productForConcentration: (product) => productForConcentration(quantity(100, "mg/L", "N"), product),
  };
  const bad: readonly (readonly [string, unknown])[] = [
    ["true", true],
    ["text", "10"],
    ["more than all", 500],
    ["below zero", -3],
    ["NaN", Number.NaN],
    ["a list", [10]],
    ["a record", {}],
    ["a bigint", 10n],
    ["an object without a prototype", Object.create(null)],
  ];
  describe.each(Object.entries(uses))("%s", (name, use) => {
    test.each(bad)("refuses %s", (_name, percent) => {
      expect(() => use(byHand({ N: percent }))).toThrow(RatewrightError);
    });
    test.runIf(name !== "productNitrogen")("refuses an id that is no name", () => {
      for (const id of [{ a: 1 }, Number.NaN, 7, null]) {
        expect(() => use(byHand({ N: 10 }, { id }))).toThrow(RatewrightError);
      }
    });
  });
});

describe("no number that is none comes out", () => {
  test("of percentOf where a percentage is not there", () => {
    expect(() => percentOf({ basis: "oxide", percent: { P2O5: undefined } } as never, "P")).toThrow(
      RatewrightError,
    );
    expect(() => percentOf({ basis: "oxide", percent: { N: 1 } }, Symbol("N") as never)).toThrow(
      RatewrightError,
    );
    expect(() => percentOf({ basis: "oxide", percent: { N: 1 } }, "constructor" as never)).toThrow(
      RatewrightError,
    );
  });

  test("of firstOrderRate in next to no time", () => {
    expect(complaints(() => firstOrderRate({ percent: 50, days: 5e-324 }))).toEqual(["range days"]);
  });

  test.each([{ Ca: 1e308, C: 1 }, { Ca: -3 }, { O: 0 }, {}, { Ca: Number.POSITIVE_INFINITY }])(
    "of formulaWeight of %o",
    (formula) => {
      expect(() => formulaWeight(formula)).toThrow(RatewrightError);
    },
  );
});

describe("nothing shared can be changed", () => {
  const frozenThrough = (value: unknown): boolean =>
    typeof value !== "object" ||
    value === null ||
    (Object.isFrozen(value) && Object.values(value).every(frozenThrough));
  const tables = Object.entries(nutrient).filter(([, value]) => typeof value !== "function");

  test.each(tables)("%s is frozen with all that it holds", (_, table) => {
    expect(frozenThrough(table)).toBe(true);
  });

  test("a fertilizer keeps no record of its caller and cannot be changed", () => {
    const percent = { N: 24 };
    const slow = quantity(12, "% w/w", "N:slow/product");
    const feed = fertilizer({ id: "a", analysis: { basis: "oxide", percent }, slowNitrogen: slow });
    percent.N = 99;
    (slow as { value: number }).value = 99;
    expect(feed.analysis.percent.N).toBe(24);
    expect(feed.slowNitrogen?.value).toBe(12);
    expect(() => {
      (feed.analysis.percent as { N: number }).N = 99;
    }).toThrow(TypeError);
  });

  test("a release model keeps no list of its caller", () => {
    const assumptions = ["moist soil"];
    const model = releaseModel({
      name: "m",
      placement: "either",
      curve: { kind: "at once" },
      temperature: { kind: "none" },
      assumptions,
      source: "made up",
    });
    assumptions.push("changed");
    expect(model.assumptions).toEqual(["moist soil"]);
  });
});

describe("an unknown field is refused", () => {
  const feed = fertilizer({ id: "a", analysis: "24-0-11" });
  const model = nutrient.quickRelease;
  const calls: Readonly<Record<string, () => unknown>> = {
    fertilizer: () => fertilizer({ id: "a", analysis: "24-0-11", slowNitrgen: 1 } as never),
    "a breakdown": () => nutrient.nitrogenBreakdown({ percent: { ureaa: 24 } } as never, 24),
    highestProductRate: () =>
      highestProductRate({ product: feed, caps: [{ limit: n }], leastSlowShar: 1 } as never),
    "a cap": () => highestProductRate({ product: feed, caps: [{ limit: n, belowSlowShar: 1 } as never] }),
    productRates: () => productRates({ steps: [], oder: "as given" } as never),
    nutrientCost: () => nutrientCost({ product: feed, price: perTon, nutrient: "N", wort: {} } as never),
    releasedNitrogen: () => releasedNitrogen({ dayss: 3 } as never),
    "a portion": () =>
      releasedNitrogen({
        applied: "2026-05-01",
        days: 3,
        placement: "incorporated",
        temperature: { mean: quantity(20, "°C") },
        portions: [{ name: "x", nitrogen: n, model, modl: model } as never],
      }),
    seasonProgram: () => seasonProgram({ leastIntervl: 3 } as never),
    "a salt index": () =>
      saltIndex({ value: 1, scale: "per unit", basis: "N", source: "x", bais: "N" } as never),
    "a part of a blend": () => blendSaltIndex([{ unit: 3 } as never]),
    burnRisk: () =>
      burnRisk(saltIndex({ value: 1, scale: "per unit", basis: "N", source: "x" }), { shceme: "x" } as never),
    stockTank: () => stockTank({ injektor: injector("1:100") } as never),
    foliarBurnRisk: () => nutrient.foliarBurnRisk({ volum: 1 } as never),
    potentialAcidity: () => nutrient.potentialAcidity({ percents: {} } as never),
    analysis: () => analysis({ basis: "oxide", percent: { N: 1 }, perzent: {} } as never),
  };
  test.each(Object.entries(calls))("by %s", (_, call) => {
    expect(call).toThrow(/a field "/);
  });

  test("by leastCostBlend", async () => {
    await expect(leastCostBlend({ batsch: 1 } as never)).rejects.toThrow(/a field "batsch"/);
  });
});

describe("texts and lists are bounded", () => {
  const long = "x".repeat(1_000_000);
  const quick = (work: () => unknown): RatewrightError => {
    const start = performance.now();
    try {
      work();
    } catch (error) {
      expect(performance.now() - start).toBeLessThan(500);
      expect((error as Error).message.length).toBeLessThan(20_000);
      expect(error).toBeInstanceOf(RatewrightError);
      return error as RatewrightError;
    }
    throw new Error("nothing was thrown");
  };
  const calls: Readonly<Record<string, () => unknown>> = {
    analysis: () => analysis(long),
    "an id": () => fertilizer({ id: long, analysis: "24-0-11" }),
    "a text for a record of percentages": () => percentOf({ basis: "oxide", percent: long } as never, "P"),
    "nutrients by volume": () =>
      nutrient.analysisByWeight({ perVolume: long as never, density: quantity(1, "kg/L") }),
    "a name": () =>
      releaseModel({
        name: long,
        placement: "either",
        curve: { kind: "at once" },
        temperature: { kind: "none" },
        assumptions: [],
        source: "x",
      }),
    "a list of caps": () => {
      const caps: unknown[] = [];
      caps.length = 1e9;
      highestProductRate({ product: fertilizer({ id: "a", analysis: "24-0-11" }), caps: caps as never });
    },
    "an unknown material": () => nutrient.tabulatedSaltIndex(nutrient.oregonSaltIndexes, long),
  };
  test.each(Object.entries(calls))("%s", (_, call) => {
    quick(call);
  });
});

describe("a liquid and a package made by hand", () => {
  const jug = { ...label, form: "liquid", analysis: { basis: "oxide", percent: { N: 28 } } } as const;

  test("are read, density and all", () => {
    const density = { value: 10.6, unit: "lb/gal", of: "none" };
    expect(
      liquidProductRate(quantity(2.968, "lb/acre", "N"), { ...jug, density } as never).value,
    ).toBeCloseTo(1, 9);
    expect(
      complaints(() => liquidProductRate(n, { ...jug, density: { ...density, value: -1 } } as never)),
    ).toEqual(["range product.density"]);
    expect(
      complaints(() => weightOfLiquid(quantity(1, "gal", "product:a"), { ...jug, density: "10" } as never)),
    ).toEqual(["type product.density"]);
  });

  test("without an id that is a name are refused", () => {
    for (const id of [{ a: 1 }, 7, "", "a/b", undefined]) {
      expect(() =>
        packagesFor(quantity(1, "lb", "product:a"), { id, package: quantity(50, "lb") } as never),
      ).toThrow(RatewrightError);
    }
  });
});
