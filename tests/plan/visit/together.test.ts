import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { fertilizer, quantity, tryWorkOrder, workOrder, workOrderText } from "../../../src/index.js";

interface ParkJob {
  date?: string;
  readonly treatments: readonly [
    { readonly target: object },
    { readonly mix: readonly [object, ...object[]] },
  ];
  readonly products: readonly [object, object, object, object];
  readonly sprayer: Record<string, unknown>;
}
const park = (): ParkJob =>
  JSON.parse(readFileSync(new URL("../../../examples/park-visit/job.json", import.meta.url), "utf8"));
const problemsOf = (change: (job: ParkJob) => void): string[] => {
  const job = park();
  change(job);
  return tryWorkOrder(job).problems.map(({ path, code }) => `${path} ${code}`);
};

describe("what only the arithmetic can tell is told with the rest", () => {
  test("a nutrient that the product lacks, beside a missing date", () => {
    const problems = problemsOf((job) => {
      Object.assign(job.treatments[0].target, { of: "P2O5" });
      delete job.date;
    });
    expect(problems).toEqual(["date missing", "products[0].analysis infeasible"]);
  });

  test("an unknown product hides nothing that is wrong with its target", () => {
    const problems = problemsOf((job) => {
      Object.assign(job.treatments[0], { product: "nobody" });
      Object.assign(job.treatments[0].target, { value: 0 });
    });
    expect(problems).toEqual(["treatments[0].product missing", "treatments[0].target range"]);
  });

  test("a density is asked for where it belongs, and a circle of labels is told in the same breath", () => {
    const problems = problemsOf((job) => {
      Object.assign(job.treatments[1].mix[0], { rate: { value: 5, unit: "oz/acre", of: "product" } });
      Object.assign(job.products[1], { addBefore: ["wetter"] });
      Object.assign(job.products[3], { addBefore: ["regulator-a"] });
    });
    expect(problems).toEqual(["products[1].density missing", "treatments[1].mix conflict"]);
  });

  test("a tank too small for the job is a slip of units at the tank", () => {
    const job = park();
    job.sprayer.tank = { value: 0.001, unit: "gal" };
    delete job.sprayer.minimumLoad;
    const [problem] = tryWorkOrder(job).problems;
    expect(problem?.path).toBe("sprayer.tank");
    expect(problem?.got).toBe("0.001 gal");
  });

  test("the visit itself in the log is told, and what is not the visit is not", () => {
    const found = (entry: object): readonly (string | undefined)[] => {
      const job = park() as unknown as { log: object[] };
      job.log.push({ date: "2015-06-08", ...entry });
      return workOrder(job as never)
        .findings.filter(({ code }) => code === "log/day-of-visit")
        .map(({ path }) => path);
    };
    const rate = { value: 3.3, unit: "lb/1000 ft2", of: "product" };
    expect(found({ product: "feed-a", rate })).toEqual(["log[3]"]);
    expect(found({ product: "feed-a", rate, parts: ["south pitch"] })).toEqual(["log[3]"]);
    expect(found({ product: "feed-a", rate, parts: ["bowling green"] })).toEqual([]);
    expect(found({ product: "feed-a", rate, date: "2015-06-07" })).toEqual([]);
    const nutrients = [{ value: 0.1, unit: "lb/1000 ft2", of: "N" }];
    expect(found({ nutrients, treatment: "feed the pitches" })).toEqual(["log[3]"]);
    expect(found({ nutrients })).toEqual([]);
  });

  test("a record that fertilizer made stands in a job as it is, also from JSON", () => {
    const record = fertilizer({
      id: "feed-a",
      analysis: "24-0-11",
      slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
      package: quantity(50, "lb"),
    });
    const order = (product: object): unknown => {
      const job = park() as unknown as { products: { wateringIn?: object }[] };
      const { wateringIn } = job.products[0] ?? {};
      job.products[0] = { ...product, name: "feed 24-0-11", use: "fertilizer", wateringIn } as never;
      return JSON.parse(JSON.stringify(workOrder(job as never)));
    };
    const plain = JSON.parse(JSON.stringify(workOrder(park() as never)));
    expect(order(record)).toEqual(plain);
    expect(order(JSON.parse(JSON.stringify(record)))).toEqual(plain);
    expect(
      problemsOf((job) => {
        Object.assign(job.products[0], { type: "ledger", version: 2 });
      }),
    ).toEqual(["products[0].type type", "products[0].version type"]);
  });

  test("the sheet refuses a width that it cannot keep", () => {
    const order = workOrder(park() as never);
    expect(() => workOrderText(order, { width: 40 })).toThrow("60 or more");
    expect(workOrderText(order, { width: 60 }).split("\n").length).toBeGreaterThan(50);
  });
});
