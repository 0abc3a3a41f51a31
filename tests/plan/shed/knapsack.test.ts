// Many small loads on a large area, and a bag in pounds on a metric sheet whose scale reads ounces.
import { expect, test } from "vitest";
import { workOrder, workOrderSheet } from "../../../src/plan/index.js";
import { lawn, liquid, product, sprayJob } from "./short-jobs.js";

/** 12,300 m2 (1.23 ha) at 1,000 L/ha out of 15 L: 82 loads of 150 m2. */
const knapsack = sprayJob(1, [liquid()], [{ value: 0.5, unit: "% v/v", of: "product/spray" }], {
  tank: { value: 15, unit: "L" },
  applicationVolume: { value: 1000, unit: "L/ha", of: "spray" },
});
const sheetOf = (tank: number, units: "metric" | "US customary") =>
  workOrderSheet(
    workOrder({
      ...knapsack,
      units,
      site: { name: "Lawn", parts: [{ shape: "measured", area: { value: 1.23, unit: "ha" } }] },
      sprayer: { ...knapsack.sprayer, tank: { value: tank, unit: "L" } } as NonNullable<
        typeof knapsack.sprayer
      >,
    }),
  ).front.find(({ id }) => id === "spray");
const coversOf = (tank: number, units: "metric" | "US customary" = "metric") =>
  sheetOf(tank, units)?.blocks.flatMap((block) => (block.kind === "table" ? [block.rows[0]?.cells[1]] : []));

test("what a load of a knapsack covers is told in what can be paced", () => {
  expect(coversOf(15)).toEqual(["150 m²"]);
  // 100 L at 1,000 L/ha cover a tenth of a hectare, 99 L cover 990 m2.
  expect(coversOf(100)).toEqual(["0.1 ha"]);
  expect(coversOf(99)?.[0]).toBe("990 m²");
});

test("a bag of 5 lb on a metric sheet is told in the ounces of the scale too", () => {
  const job = sprayJob(
    20_000,
    [{ id: "grains", form: "dry", formulation: "WDG", package: { value: 5, unit: "lb" } }],
    [product(0.5, "oz/1000 ft2")],
    { increments: { dry: { unit: "oz", step: 0.1 } } },
  );
  const store = workOrderSheet(workOrder({ ...job, site: lawn(20_000), units: "metric" })).front.find(
    ({ id }) => id === "store",
  );
  const [table] = store?.blocks ?? [];
  // 5 lb is 2.268 kg; 20 x 0.5 oz = 10 oz; 80 - 10 = 70 oz = 4 lb 6 oz.
  expect(table?.kind === "table" && table.rows[0]?.cells.slice(0, 4)).toEqual([
    "grains",
    "1 x 2.27 kg = 5 lb",
    "10.0 oz wt",
    "4 lb 6.0 oz",
  ]);
});

test("a bag of 1 kg on a US sheet is told in the ounces that what is used and what goes back add up to", () => {
  const job = sprayJob(
    20_000,
    [{ id: "grains", form: "dry", formulation: "WDG", package: { value: 1, unit: "kg" } }],
    [product(0.5, "oz/1000 ft2")],
    { increments: { dry: { unit: "oz", step: 0.1 } } },
  );
  const store = workOrderSheet(workOrder({ ...job, units: "US customary" })).front.find(
    ({ id }) => id === "store",
  );
  const [table] = store?.blocks ?? [];
  // 1000 g / 28.349523125 g = 35.274 oz = 2 lb 3.3 oz; less 10 oz 25.3 oz = 1 lb 9.3 oz.
  expect(table?.kind === "table" && table.rows[0]?.cells.slice(0, 4)).toEqual([
    "grains",
    "1 x 2.2 lb = 2 lb 3.3 oz",
    "10.0 oz wt",
    "1 lb 9.3 oz",
  ]);
});
