import { expect, test } from "vitest";
import { workOrderText } from "../../../src/plan/index.js";
import { soundOrder } from "../helpers.js";
import { calm, tank } from "../watering/watering-job.js";

test("a rate in the other system is told in fluid ounces: 3 L/ha are 101.442 fl oz on 107.639 thousand sq ft", () => {
  const job = tank(calm, calm);
  const [treatment] = job.treatments;
  const mix = ["a", "b"].map((product) => ({ product, rate: { value: 3, unit: "L/ha", of: "product" } }));
  const order = soundOrder({ ...job, treatments: [{ ...treatment, mix }] });
  const text = workOrderText(order, { units: "US customary", copy: "office", width: 400 });
  expect(text).toContain("A: 0.942 fl oz per 1,000 sq ft, label rate not given: not checked");
});
