import { expect, test } from "vitest";
import { tryWorkOrder } from "../../src/plan/index.js";
import { smallJob } from "./helpers.js";

/** The suggestions for a small job with this target, by place. */
const suggestions = (target: unknown): Readonly<Record<string, string | undefined>> =>
  Object.fromEntries(
    tryWorkOrder(
      smallJob({ treatments: [{ id: "feed", method: "spread", product: "feed-a", target }] } as never),
    ).problems.map(({ path, suggestion }) => [path, suggestion]),
  );

test.each([
  [{ value: 0.8, unit: "lbs/acre", of: "N" }, "lb/acre"],
  [{ value: 0.8, unit: "lb/M", of: "N" }, "lb/1000 ft2"],
  [{ value: 0.8, unit: "lb/acre", of: "nitrogen" }, "N"],
  [{ value: 0.8, unit: "lb/acre", of: "phosphate" }, "P2O5"],
  [{ value: 0.8, unit: "stone/acre", of: "N" }, undefined],
])("a job with %o is told what was likely meant: %s", (target, expected) => {
  const told = suggestions(target);
  expect(Object.keys(told).length).toBe(1);
  expect(Object.values(told)).toEqual([expected]);
});
