import { expect, test } from "vitest";
import { ledger } from "../../../src/ledger/index.js";
import { checkAgainstTarget } from "../../../src/numeric/index.js";
import { quantity, RatewrightError } from "../../../src/quantity/index.js";

const told = (work: () => unknown): readonly string[] => {
  try {
    work();
  } catch (error) {
    if (error instanceof RatewrightError)
      return error.problems.map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
    throw error;
  }
  return [];
};

test("an id in voids is told where it belongs", () => {
  const wrong = { id: "v", date: "2026-05-05", voids: "a" } as never;
  expect(told(() => ledger([{ id: "a", date: "2026-05-04" }, wrong]))).toEqual([
    "type entries[1].voids: true, and in corrects the id of the entry that never happened",
  ]);
});

test("an entry or a proposal that adds nothing is told how to say so", () => {
  expect(told(() => ledger([{ id: "a", date: "2026-05-04", supplies: [] }]))).toEqual([
    'missing entries[0].supplies: at least one nutrient or active ingredient; what adds none says so: { value: 0, unit: "lb/1000 ft2", of: "N" }',
  ]);
});

test("a catch of product against a target of a named product: both ways on", () => {
  const measured = quantity(4, "lb/1000 ft2", "product");
  const target = quantity(4, "lb/1000 ft2", "product:feed-a") as never;
  const call = () => checkAgainstTarget({ measured, target, tolerance: quantity(5, "%") });
  expect(told(call)).toEqual([
    'substance/mismatch target: a target of product, as measured; or the catch stated as "product:feed-a"',
  ]);
});
