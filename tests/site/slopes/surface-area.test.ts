import fc from "fast-check";
import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { surfaceArea } from "../../../src/site/index.js";
import { complaints } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const plan = quantity(1000, "ft2", "plan");

test("9 degrees add 1.2 %, not the 2.3 % of a claim in print", () => {
  // cos 9 deg = 0.98769 in any table of cosines
  const more = surfaceArea(plan, quantity(9, "deg")).in("ft2") / 1000 - 1;
  expect(more).toBeCloseTo(1 / 0.98769 - 1, 5);
  expect(Math.abs(more - 0.023)).toBeGreaterThan(0.01);
});

test("angles with a known cosine, grades with a known hypotenuse", () => {
  close(surfaceArea(plan, quantity(60, "deg")).in("ft2"), 2000);
  close(surfaceArea(plan, quantity(Math.PI / 3, "rad")).in("ft2"), 2000);
  close(surfaceArea(plan, quantity(75, "% grade")).in("ft2"), 1250);
  close(surfaceArea(plan, quantity(9, "in/ft")).in("ft2"), 1250);
  expect(surfaceArea(plan, quantity(0, "deg")).toJSON()).toEqual({ value: 1000, unit: "ft2", of: "none" });
  expect(surfaceArea(quantity(2, "ha"), quantity(0, "% grade")).in("ha")).toBe(2);
});

test("a grade and its angle agree; the area grows with both", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 5, noNaN: true }), (grade) => {
      const byGrade = surfaceArea(plan, quantity(grade, "m/m")).in("ft2");
      const byAngle = surfaceArea(plan, quantity((Math.atan(grade) * 180) / Math.PI, "deg")).in("ft2");
      close(byGrade, byAngle, 1e-10);
      expect(surfaceArea(plan, quantity(grade + 0.01, "m/m")).in("ft2")).toBeGreaterThan(byGrade);
    }),
  );
});

test("refusals", () => {
  expect(complaints(() => surfaceArea(plan, quantity(90, "deg")))).toEqual(["range slope"]);
  expect(complaints(() => surfaceArea(plan, quantity(-1, "% grade")))).toEqual(["range slope"]);
  expect(complaints(untyped(surfaceArea, quantity(3, "ft2", "treated"), quantity(10, "%")))).toEqual([
    "substance/mismatch planArea",
    "unit/mismatch slope",
  ]);
  expect(complaints(untyped(surfaceArea))).toEqual(["missing planArea", "missing slope"]);
  expect(complaints(untyped(surfaceArea, quantity(0, "ft2"), 9))).toEqual(["range planArea", "type slope"]);
});
