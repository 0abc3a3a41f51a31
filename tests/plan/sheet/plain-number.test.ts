import { expect, test } from "vitest";
import { plainNumber } from "../../../src/plan/sheet/sheet-units.js";

test.each<readonly [value: number, decimals: number, fixed: boolean, text: string]>([
  [0, 0, false, "0"],
  [999, 0, false, "999"],
  [1000, 0, false, "1,000"],
  [120_825, 0, false, "120,825"],
  [1_234_567, 0, false, "1,234,567"],
  [1_234_567.25, 2, false, "1,234,567.25"],
  [-1_234.5, 1, false, "-1,234.5"],
  [0.125, 3, false, "0.125"],
  [2.5, 3, false, "2.5"],
  [2.5, 3, true, "2.500"],
  [2, 1, true, "2.0"],
  [-0.004, 2, false, "0"],
  [-0.004, 2, true, "0.00"],
])("%f with at most %i decimals (kept: %s) is %s", (value, decimals, fixed, text) => {
  expect(plainNumber(value, decimals, fixed)).toBe(text);
});
