import { describe, expect, test } from "vitest";
import { fertilizer, type Job, productRate, quantity, workOrder } from "../../../src/index.js";

// Shares of one written as a grade: 0.05-0.1-0.05 for 5-10-5.

const findingsOf = (analysis: string) => fertilizer({ id: "feed", analysis }).findings;

describe("a grade of figures under 1", () => {
  test("is read as percent, and told with what it may have been", () => {
    const feed = fertilizer({ id: "feed", analysis: "0.05-0.1-0.05" }, "bag");
    expect(feed.analysis.percent).toEqual({ N: 0.05, P2O5: 0.1, K2O: 0.05 });
    expect(feed.findings).toEqual([
      {
        code: "analysis/under-one-percent",
        severity: "caution",
        path: "bag.analysis",
        params: { stated: ["N", "P2O5", "K2O"], percents: ["0.05", "0.1", "0.05"] },
        text: "The analysis is read as 0.05 % N, 0.1 % P2O5, 0.05 % K2O. If these are fractions of one, the label says 5 % N, 10 % P2O5, 5 % K2O, and 100 times too much product would go down. Check the label.",
        source: "common practice, no source",
      },
    ]);
    // 1 lb of N from 0.05 % is 2000 lb, and the record that JSON gives back is read again.
    const back = JSON.parse(JSON.stringify(feed)) as typeof feed;
    expect(productRate(quantity(1, "lb/1000 ft2", "N"), back).in("lb/1000 ft2")).toBeCloseTo(2000, 9);
  });

  test("names what is stated only: 0.24-0-0.11 may be 24-0-11", () => {
    expect(findingsOf("0.24-0-0.11")?.[0]?.text).toContain("24 % N, 11 % K2O");
  });

  test("is none where one figure alone is stated, where one is 1 or more, or where the shares are over the whole", () => {
    for (const grade of ["0-0-0.5", "0.46-0-0", "0.5-0.2-1", "1-0.5-0.2", "24-0-11", "0.5-0.3-0.21", "0-0-0"])
      expect([grade, findingsOf(grade)]).toEqual([grade, undefined]);
    // 50, 30 and 20 are the whole bag.
    expect(findingsOf("0.5-0.3-0.2")).toHaveLength(1);
  });

  test("stands in the work order once, however often the product is used", () => {
    const rate = { value: 3, unit: "lb/1000 ft2", of: "product" } as const;
    const job = (analysis: string): Job => ({
      type: "job",
      version: 1,
      title: "First feed",
      date: "2026-05-04",
      site: { name: "Bowling lawn", parts: [{ shape: "measured", area: { value: 1000, unit: "ft2" } }] },
      products: [
        { id: "feed", form: "dry", analysis },
        { id: "other", form: "dry", analysis: "0.1-0.1-0.1" },
      ],
      treatments: [
        { id: "one", method: "spread", product: "feed", rate },
        { id: "two", method: "spread", product: "feed", rate },
      ],
    });
    const told = (analysis: string) =>
      workOrder(job(analysis)).findings.flatMap(({ code, path }) =>
        code.startsWith("analysis/") ? [`${code} ${path}`] : [],
      );
    expect(told("0.05-0.1-0.05")).toEqual(["analysis/under-one-percent products[0].analysis"]);
    expect(told("5-10-5")).toEqual([]);
    // What fertilizer found goes along with its record.
    const { findings = [] } = fertilizer({ id: "feed", analysis: "0.05-0.1-0.05" });
    const given = job("0.05-0.1-0.05");
    const again = { ...given, products: given.products.map((one) => ({ ...one, findings })) };
    expect(workOrder(again).findings).toEqual(workOrder(given).findings);
  });
});
