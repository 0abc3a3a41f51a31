import { describe, expect, it } from "vitest";
import { accumulateDegreeDaysC, intervalRule } from "../../src/interval/index.js";
import { ledger, ledgerCsv, ledgerTotals } from "../../src/ledger/index.js";
import { checkLimits, runoffPoints } from "../../src/limits/index.js";
import {
  accumulateEquivalentDaysC,
  fertilizer,
  highestProductRatesKgPerHa,
  nutrientsSupplied,
  releasedShares,
} from "../../src/nutrient/index.js";
import { schedule, tryWorkOrder, workOrder, workOrderSheet, workOrderText } from "../../src/plan/index.js";
import {
  expectAmount,
  expectFields,
  expectList,
  expectOneOf,
  nearName,
  quantity,
  quantityFrom,
  readQuantity,
} from "../../src/quantity/index.js";
import { groundLength, polygonArea, siteArea } from "../../src/site/index.js";
import { swathCvPercent } from "../../src/spread/index.js";
import { explainWorkOrder } from "../../src/teach/index.js";
import { referenceEvapotranspirationsMmPerD } from "../../src/water/index.js";
import { answerOf, complaints, errorOf, problemsOf } from "../errors.js";

// Holes that were found by hand, one test each, so that they stay closed.

/** A small job that holds. */
const job = {
  type: "job",
  version: 1,
  title: "First feed",
  date: "2026-05-04",
  site: { name: "Practice field", parts: [{ shape: "measured", area: { value: 12400, unit: "ft2" } }] },
  products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", package: { value: 50, unit: "lb" } }],
  treatments: [
    { id: "feed", method: "spread", product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
  ],
} as const;

const stored = (): { spreads: Record<string, unknown>[] } => JSON.parse(JSON.stringify(workOrder(job)));

describe("array kernels", () => {
  const never = (value: unknown): never => value as never;

  it("say how a typed array is made of a list, and of what JSON left of one", () => {
    const left = JSON.parse(JSON.stringify(Float64Array.of(20, 25))) as unknown;
    const calls: readonly (() => unknown)[] = [
      () => accumulateDegreeDaysC(never(left), Float64Array.of(1, 2), 10),
      () => referenceEvapotranspirationsMmPerD(never({ tMinC: left })),
      () => swathCvPercent(never({ depositsKgPerM2: left, swathsM: left })),
      () => releasedShares(never(left), { kind: "at once" }),
    ];
    for (const call of calls) {
      expect(errorOf(call).code).toBe("type");
      expect(errorOf(call).expected).toContain("Object.values(record)");
    }
    expect(Float64Array.from(Object.values(left as object))).toEqual(Float64Array.of(20, 25));
  });

  it("look at a list before they make room for as many results", () => {
    const claims = never({ length: 1e12 });
    const response = { kind: "Q10", q10: { low: 2, high: 2 }, referenceC: 25 } as const;
    expect(complaints(() => accumulateEquivalentDaysC(claims, claims, response))).toEqual(["type maxC"]);
    expect(complaints(() => accumulateDegreeDaysC(claims, claims, 10))).toEqual(["type maxC"]);
    expect(complaints(() => releasedShares(claims, { kind: "at once" }))).toEqual(["type equivalentDays"]);
  });
});

describe("work orders out of a store", () => {
  it("are read with as many passes as a job may have: no text says infinity", () => {
    const order = stored();
    for (const passes of [1e308, 9, 0, 1.5]) {
      order.spreads[0] = { ...order.spreads[0], passes };
      expect(complaints(() => workOrderText(order as never))).toEqual(["range order.spreads[0].passes"]);
      expect(complaints(() => workOrderSheet(order as never))).toEqual(["range order.spreads[0].passes"]);
    }
  });

  it("are explained only where every figure can be read", () => {
    for (const [field, value, complaint] of [
      ["packages", null, "type order.spreads[0].packages"],
      ["packages", { count: 1.5 }, "range order.spreads[0].packages.count"],
      ["supplies", { N: null }, "type order.spreads[0].supplies.N"],
      ["packageSize", 50, "type order.spreads[0].packageSize"],
    ] as const) {
      const order = stored();
      order.spreads[0] = { ...order.spreads[0], [field]: value };
      expect(complaints(() => explainWorkOrder(order as never))).toEqual([complaint]);
    }
  });
});

describe("lists and records without an end", () => {
  const endless = (): never => {
    const list: unknown[] = [];
    list.length = 1e9;
    return list as never;
  };
  const calls: Readonly<Record<string, () => unknown>> = {
    ledger: () => ledger(endless()),
    ledgerCsv: () => ledgerCsv({ type: "ledger", version: 1, entries: endless() }),
    ledgerTotals: () =>
      ledgerTotals({
        ledger: { type: "ledger", version: 1, entries: endless() },
        from: "2026-01-01",
        to: "2026-12-31",
      }),
    "job.products": () => workOrder({ ...job, products: endless() }),
    "job.treatments": () => workOrder({ ...job, treatments: endless() }),
    "job.log": () => workOrder({ ...job, log: endless() }),
    limits: () => checkLimits({ proposal: { date: "2026-04-20" }, limits: endless() }),
    blackout: () => intervalRule({ minimumDays: 7, blackout: endless(), source: "made up" }),
    caps: () => highestProductRatesKgPerHa(endless()),
    dimensions: () => expectAmount(quantity(3, "lb"), { dimensions: endless() }, "amount"),
    "known fields": () => expectFields({ rate: 3 }, endless()),
    words: () => expectOneOf("metric", endless(), "units"),
    "known names": () => nearName("rate", endless()),
    items: () => expectList(endless(), "readings", "reading"),
  };

  it.each(Object.entries(calls))("%s: refused before it is walked", (_, call) => {
    const start = performance.now();
    expect(complaints(call).length).toBeGreaterThan(0);
    expect(performance.now() - start).toBeLessThan(3000);
  });

  it("a text of JSON that is deeper than a program can walk", () => {
    const deep = (levels: number): never =>
      JSON.parse(`${'{"a":'.repeat(levels)}1${"}".repeat(levels)}`) as never;
    const lists = JSON.parse(`${"[".repeat(200_000)}${"]".repeat(200_000)}`) as never;
    for (const input of [deep(200_000), lists]) {
      expect(complaints(() => workOrder({ ...job, site: input })).length).toBeGreaterThan(0);
      expect(complaints(() => schedule(input)).length).toBeGreaterThan(0);
      expect(complaints(() => ledger([{ id: "a", date: "2026-04-20", analysis: input }]))[0]).toMatch(
        /^type entries\[0\]\.analysis/,
      );
      expect(complaints(() => readQuantity(input, { dimension: "mass" })).length).toBe(0);
      expect(complaints(() => quantityFrom(input)).length).toBeGreaterThan(0);
    }
  });

  it("a door ends with the ten thousandth problem", () => {
    const problems = problemsOf(() => ledger(Array.from({ length: 50_000 }, () => ({}) as never)));
    expect(problems).toHaveLength(10_000);
    expect(
      errorOf(() => ledger(Array.from({ length: 50_000 }, () => ({}) as never))).message.length,
    ).toBeLessThan(40_000);
  });

  it("a million readings are no endless list", () => {
    expect(expectList(new Array(1_000_000).fill(0), "readings", "reading")).toHaveLength(1_000_000);
    expect(complaints(() => expectList(new Array(1_000_001).fill(0), "readings", "reading"))).toEqual([
      "range readings",
    ]);
  });
});

describe("a whole record that cannot be read", () => {
  it("is named in the problem", () => {
    const bare = Object.create(null) as never;
    expect(complaints(() => workOrder(bare))).toEqual(["type job"]);
    expect(tryWorkOrder(bare).problems?.map(({ path }) => path)).toEqual(["job"]);
    expect(complaints(() => schedule(bare))).toEqual(["type plan"]);
  });
});

describe("a job at its edges", () => {
  it("a product that goes down at no rate needs no package, and its sheet is printed", () => {
    const mix = { product: "iron", rate: { value: 0, unit: "fl oz/1000 ft2", of: "product" } };
    const order = workOrder({
      ...job,
      products: [{ id: "iron", form: "liquid", formulation: "EC", package: { value: 1, unit: "gal" } }],
      sprayer: {
        tank: { value: 100, unit: "gal" },
        applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      },
      treatments: [{ id: "green", method: "spray", mix: [mix] }],
    } as never);
    expect(order.sprays[0]?.products[0]?.packages?.count).toBe(0);
    expect(workOrderText(JSON.parse(JSON.stringify(order)))).toContain("iron");
  });

  it("a package of more than a thousand tonnes is refused, in a job and in a stored order", () => {
    const huge = { value: 1e308, unit: "lb" } as const;
    const [feed] = job.products;
    expect(complaints(() => workOrder({ ...job, products: [{ ...feed, package: huge }] }))).toEqual([
      "range products[0].package",
    ]);
    const order = stored();
    order.spreads[0] = { ...order.spreads[0], packageSize: huge };
    expect(complaints(() => workOrderText(order as never))).toEqual(["range order.spreads[0].packageSize"]);
  });
});

describe("a season without an end", () => {
  it("is refused, not worked out day by day for eight thousand years", () => {
    const plan = { season: { from: "2026-03-01", to: "9999-12-31" }, treatments: [] };
    expect(complaints(() => schedule(plan as never))).toContain("range season.to");
  });
});

describe("a quantity that a program writes over", () => {
  it("is what was written, or is refused: never another amount", () => {
    const written = (field: "value" | "unit" | "of" | "dimension", value: unknown): never => {
      const rate = quantity(3, "lb/1000 ft2", "product");
      (rate as unknown as Record<string, unknown>)[field] = value;
      return rate as never;
    };
    const area = quantity(1000, "ft2");
    const feed = fertilizer({ id: "feed-a", analysis: "24-0-11" });
    const amountOf = (rate: ReturnType<typeof quantity<"lb/1000 ft2", "product">>): unknown =>
      rate.times(area).in("lb");
    expect(amountOf(written("value", 4))).toBe(4);
    expect(amountOf(written("unit", "oz/1000 ft2"))).toBe(0.1875);
    for (const unit of ["acre", "lbs", "", 3, null])
      expect(complaints(() => amountOf(written("unit", unit)))).toHaveLength(1);
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, "4", null])
      expect(complaints(() => nutrientsSupplied(written("value", value), feed))).toHaveLength(1);
    for (const of of ["no such stuff", 3, null])
      expect(complaints(() => nutrientsSupplied(written("of", of), feed))).toHaveLength(1);
    expect(complaints(() => nutrientsSupplied(written("dimension", "area"), feed))).toHaveLength(1);
  });
});

describe("bounds of sites", () => {
  const box = (x: number): readonly (readonly [number, number])[] => [
    [x, 1],
    [x + 0.5, 1],
    [x + 0.5, 2],
    [x, 2],
  ];
  const field = [
    [0, 0],
    [1000, 0],
    [1000, 3],
    [0, 3],
  ] as const;

  it("corners, cut-outs and shapes have a most", () => {
    const ring = (corners: number): readonly (readonly [number, number])[] =>
      Array.from({ length: corners }, (_, i) => {
        const angle = (2 * Math.PI * i) / corners;
        return [100 * Math.cos(angle), 100 * Math.sin(angle)];
      });
    expect(polygonArea(ring(20_000), "m").in("m2")).toBeCloseTo(Math.PI * 1e4, 0);
    expect(complaints(() => polygonArea(ring(20_001), "m"))).toEqual(["range points"]);
    const holes = (count: number) => ({ holes: Array.from({ length: count }, (_, i) => box(1 + i)) });
    expect(polygonArea(field, "m", holes(500)).in("m2")).toBeCloseTo(3000 - 250, 9);
    expect(complaints(() => polygonArea(field, "m", holes(501)))).toEqual(["range holes"]);
    const part = { shape: "measured", area: quantity(10, "m2") } as const;
    const parts = (count: number) => ({ parts: new Array<typeof part>(count).fill(part) });
    expect(siteArea(parts(10_000)).net.in("m2")).toBeCloseTo(100_000, 6);
    expect(complaints(() => siteArea(parts(10_001)))).toEqual(["range parts"]);
  });

  it("a grade of any steepness has a finite length, or is refused", () => {
    const long = quantity(40, "ft");
    expect(groundLength(long, quantity(75, "% grade")).in("ft")).toBe(50);
    for (const grade of [1e308, 1e200, -1, Number.MIN_VALUE]) {
      const found = answerOf(() => groundLength(long, quantity(grade, "% grade")).in("ft"));
      expect(
        typeof found === "number" ? Number.isFinite(found) : /^range |^not-finite /.test(String(found)),
      ).toBe(true);
    }
    expect(complaints(() => groundLength(long, quantity(90, "deg")))).toEqual(["range slope"]);
    expect(complaints(() => groundLength(long, "12" as never))).toHaveLength(1);
    expect(complaints(() => groundLength(long, 12 as never))).toEqual(["type slope"]);
  });
});

describe("a list without an end", () => {
  it("is refused as the measures of runoffPoints before it is walked", () => {
    const measures: never[] = [];
    measures.length = 1e9;
    expect(complaints(() => runoffPoints({ measures }))).toEqual(["range measures"]);
  });
});
