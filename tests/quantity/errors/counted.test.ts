import { expect, test } from "vitest";
import { counted } from "../../../src/quantity/house.js";

test("a count with its noun has an s unless it is one", () => {
  expect([0, 1, 2, 1.5, -1].map((count) => counted(count, "day"))).toEqual([
    "0 days",
    "1 day",
    "2 days",
    "1.5 days",
    "-1 days",
  ]);
});
