import { describe, expect, test } from "vitest";
import {
  overlapDeposits,
  passRates,
  quantity,
  spreadPattern,
  swathSearch,
  swathUniformity,
} from "../../../src/index.js";
import { problemsOf } from "../../errors.js";

const pattern = spreadPattern({
  catches: [1, 2, 3, 2, 1],
  unit: "g",
  pans: { spacing: quantity(1, "ft"), left: 2 },
});
const oneFoot = { swath: quantity(1, "ft"), driving: "one direction", positions: "pans" } as const;

describe("a swath of one position", () => {
  test("has no spread by the divisor n: all passes fall on it, 1 + 2 + 3 + 2 + 1 g", () => {
    const found = swathUniformity(pattern, { ...oneFoot, divisor: "n" });
    expect([found.positions, found.cv.in("%")]).toEqual([1, 0]);
    expect(overlapDeposits(pattern, oneFoot).deposits.map((one) => Number(one))).toEqual([9]);
  });

  test("is refused by the divisor n-1, which would divide by zero", () => {
    const [problem] = problemsOf(() => swathUniformity(pattern, { ...oneFoot, divisor: "n-1" }));
    expect(problem).toMatchObject({
      code: "range",
      path: "swath",
      expected: "two positions or more for the divisor n-1",
    });
  });
});

test("a search that begins at one position is refused by the divisor n-1, and runs by n", () => {
  const from = (divisor: "n" | "n-1", feet: number) =>
    swathSearch(pattern, {
      driving: "one direction",
      positions: "pans",
      divisor,
      limit: quantity(25, "%"),
      from: quantity(feet, "ft"),
    });
  const [problem] = problemsOf(() => from("n-1", 1));
  expect([problem?.code, problem?.path]).toEqual(["range", "from"]);
  expect(from("n", 1).rows[0]?.cv.in("%")).toBe(0);
  // Two positions, 1 + 3 + 1 g and 2 + 2 g: 5 and 4, half a gram off their mean of 4.5.
  expect(from("n-1", 2).rows[0]?.cv.in("%")).toBeCloseTo((100 * Math.SQRT1_2) / 4.5, 9);
});

test("a pattern stored with one catch is no pattern", () => {
  const stored = JSON.parse(JSON.stringify(pattern));
  const [problem] = problemsOf(() =>
    swathUniformity({ ...stored, catches: [3], offsets: [0], runs: [[3]] }, { ...oneFoot, divisor: "n" }),
  );
  expect([problem?.code, problem?.path]).toEqual(["conflict", "pattern.offsets"]);
});

describe("passes", () => {
  const rate = quantity(1, "lb/1000 ft2", "N");
  test("name the limit that their sum was held against", () => {
    const limit = quantity(0.9, "lb/1000 ft2", "N");
    const { checked, notChecked } = passRates({ rate, limit, passes: 3 });
    expect(checked).toEqual([`the sum of 3 passes against the stated limit of ${limit}`]);
    expect(checked[0]).toContain("0.9");
    expect(notChecked).toEqual([]);
  });

  test("say that no limit was stated", () => {
    expect(passRates({ rate })).toMatchObject({
      checked: [],
      notChecked: ["the sum of the passes against a limit: none was stated"],
    });
  });
});
