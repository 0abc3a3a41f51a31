import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { tryWorkOrder, workOrder, workOrderText } from "../../src/index.js";

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
  JSON.parse(readFileSync(new URL("../../examples/park-visit/job.json", import.meta.url), "utf8"));
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
    expect(problems).toEqual(["date missing", "treatments[0].target infeasible"]);
  });

  test("a density is asked for where it belongs, and a circle of labels is told in the same breath", () => {
    const problems = problemsOf((job) => {
      Object.assign(job.treatments[1].mix[0], { rate: { value: 5, unit: "oz/acre", of: "product" } });
      Object.assign(job.products[1], { labelBefore: ["wetter"] });
      Object.assign(job.products[3], { labelBefore: ["regulator-a"] });
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

  test("the sheet refuses a width that it cannot keep", () => {
    const order = workOrder(park() as never);
    expect(() => workOrderText(order, { width: 40 })).toThrow("60 or more");
    expect(workOrderText(order, { width: 60 }).split("\n").length).toBeGreaterThan(50);
  });
});
