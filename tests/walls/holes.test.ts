import { describe, expect, it } from "vitest";
import { accumulateDegreeDaysC } from "../../src/interval/index.js";
import { accumulateEquivalentDaysC, releasedShares } from "../../src/nutrient/index.js";
import { schedule, tryWorkOrder, workOrder, workOrderSheet, workOrderText } from "../../src/plan/index.js";
import { swathCvPercent } from "../../src/spread/index.js";
import { explainWorkOrder } from "../../src/teach/index.js";
import { referenceEvapotranspirationsMmPerD } from "../../src/water/index.js";
import { complaints, errorOf } from "../errors.js";

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

describe("a whole record that cannot be read", () => {
  it("is named in the problem", () => {
    const bare = Object.create(null) as never;
    expect(complaints(() => workOrder(bare))).toEqual(["type job"]);
    expect(tryWorkOrder(bare).problems?.map(({ path }) => path)).toEqual(["job"]);
    expect(complaints(() => schedule(bare))).toEqual(["type plan"]);
  });
});
