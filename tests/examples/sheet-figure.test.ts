import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { figurePath, sheetFigure } from "../../examples/park-visit/figure.js";

test("the picture of the sheet is what the demo prints; tsx examples/park-visit/figure.ts draws it again", () => {
  expect(readFileSync(figurePath, "utf8")).toBe(sheetFigure());
});
