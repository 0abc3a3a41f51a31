import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { loadAmounts, tankLoads } from "../../../src/tank/index.js";

test("a last load of a few drops does not hold a step: split evenly, or measure finer", () => {
  const area = quantity(20.0001, "acre");
  const applicationVolume = quantity(5, "gal/acre", "spray");
  const capacity = quantity(100, "gal", "spray");
  const rate = quantity(512, "fl oz/acre", "product:a"); // 80 % of the spray
  const given = (loads: ReturnType<typeof tankLoads>, step: number) => () =>
    loadAmounts({
      loads,
      products: [{ id: "a", rate, form: "liquid" }],
      increments: { liquid: { unit: "fl oz", step } },
    });
  const loads = tankLoads({ area, applicationVolume, capacity });
  // 0.0001 acre at 5 gal/acre: 0.0005 gal, 0.064 fl oz of spray
  expect(given(loads, 0.1)).toThrow(
    "products[0].rate: expected a load that holds the smallest measure of a: load 2 is only 0.0005 gal of spray; split the loads evenly, or measure in smaller steps, got 0.1 fl oz of product:a",
  );
  expect(given(loads, 0.01)().products[0]?.loads).toHaveLength(2);
  const even = tankLoads({ area, applicationVolume, capacity, loadSplit: "even" });
  expect(given(even, 0.1)().products[0]?.loads).toHaveLength(2);
});
