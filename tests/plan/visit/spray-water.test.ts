import { describe, expect, test } from "vitest";
import { tryWorkOrder, workOrder } from "../../../src/plan/index.js";

const job = (sprayer: object = {}, product: object = {}): unknown => ({
  type: "job",
  version: 1,
  title: "Spray the bowling green",
  date: "2026-05-04",
  site: { name: "Bowling lawn", parts: [{ shape: "measured", area: { value: 20, unit: "1000 ft2" } }] },
  products: [
    {
      id: "f",
      name: "fungicide",
      form: "dry",
      formulation: "WP",
      contents: [{ value: 50, unit: "% w/w", of: "ai:captan/product" }],
      ...product,
    },
    { id: "w", name: "wetter", form: "liquid", formulation: "surfactant", contains: [] },
  ],
  sprayer: {
    tank: { value: 15, unit: "gal" },
    applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    ...sprayer,
  },
  treatments: [
    {
      id: "spray",
      method: "spray",
      mix: [
        { product: "f", rate: { value: 4, unit: "oz/1000 ft2", of: "product" } },
        { product: "w", rate: { value: 0.25, unit: "% v/v", of: "product/spray" } },
      ],
    },
  ],
});

const problemsOf = (input: unknown) => tryWorkOrder(input).problems.map(({ code, path }) => [code, path]);

describe("the water and the tank of a job", () => {
  test("a water test comes back in the findings", () => {
    const order = workOrder(
      job({
        water: { pH: 8, hardness: { value: 25, unit: "grain/gal", of: "hardness as CaCO3" } },
        timeToEmpty: { value: 20, unit: "min", of: "none" },
      }) as never,
    );
    const found = order.findings.filter(({ path }) => path === "sprayer.water").map(({ code }) => code);
    expect(found).toEqual(["water/hardness", "water/sulfate-range", "water/pH-alkaline", "water/hydrolysis"]);
    // A half-life of 10 min at pH 8: two of them are 75 %, told to one digit.
    expect(order.sprays[0]?.water?.hydrolysis[0]?.atEnd.map((share) => share.in("%"))).toEqual([70, 80]);
    const without = workOrder(job() as never);
    expect(without.sprays[0]?.water).toBeUndefined();
    expect(without.notChecked.join()).toContain("no water test given");
  });

  test("what tank and hoses keep is mixed too", () => {
    const order = workOrder(
      job({
        residualVolume: { value: 0.5, unit: "gal" },
        plumbingVolume: { value: 1.5, unit: "gal" },
      }) as never,
    );
    const spray = order.sprays[0];
    expect(spray?.tank.smallestMix.in("gal")).toBe(22);
    const amount: unknown = spray?.products[0]?.amount;
    expect((amount as { in(unit: string): number }).in("oz")).toBeCloseTo(88, 9);
  });

  test("what a label refuses", () => {
    const order = workOrder(job({}, { labelProhibits: ["w"] }) as never);
    expect(order.findings.map(({ code }) => code)).toContain("mix/label-prohibits");
  });

  test("problems carry the path of the job", () => {
    const problems = problemsOf(
      job(
        {
          water: { ph: 8, hardness: { value: -1, unit: "mg/L", of: "hardness as CaCO3" } },
          residualVolume: { value: 15, unit: "gal" },
          timeToEmpty: { value: 1, unit: "gal", of: "none" },
        },
        { contains: ["boron"], groups: "ALS" },
      ),
    );
    expect(problems).toEqual(
      expect.arrayContaining([
        ["conflict", "sprayer.residualVolume"],
        ["range", "sprayer.water.hardness"],
        ["type", "products[0].contains[0]"],
        ["type", "products[0].groups"],
        ["type", "sprayer.water.ph"],
        ["unit/mismatch", "sprayer.timeToEmpty"],
      ]),
    );
  });
});
