import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { patternBalance, spreadPattern } from "../../../src/spread/index.js";

test("the center of a balanced pattern is zero, and not what floating point leaves of it", () => {
  const pattern = spreadPattern({
    catches: [0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0],
    unit: "g",
    pans: { spacing: quantity(1, "ft"), left: 6 },
  });
  expect(patternBalance(pattern).center.value).toBe(0);
});
