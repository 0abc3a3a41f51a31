import fc from "fast-check";
import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { groundLength, planArea, planLength, slopeOf, surfaceArea } from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const grade = (slope: string): number => slopeOf(slope).grade.in("m/m");

test("what the trade writes is read", () => {
  close(grade("3:1"), 1 / 3);
  close(grade(" 3 : 1 h:v"), 1 / 3);
  close(grade("1:3 V:H"), 1 / 3);
  close(grade("1:3 rise:run"), 1 / 3);
  close(grade("1:3 H:V"), 3);
  close(grade("1 in 4"), 0.25);
  close(grade("2.5:1"), 0.4);
  close(grade("12 %"), 0.12);
  close(grade("12% grade"), 0.12);
  close(grade("45°"), 1);
  close(grade("45 deg"), 1);
  close(grade("1:1"), 1);
  expect(grade("level")).toBe(0);
  expect(slopeOf("level")).not.toHaveProperty("run");
});

test("a ratio that could be either is refused with the choice", () => {
  const [problem] = problemsOf(untyped(slopeOf, "1:3"));
  expect(problem).toMatchObject({ code: "unit/ambiguous", choices: ["1:3 V:H", "1:3 H:V"] });
  // each choice is read
  for (const choice of problem?.choices ?? []) slopeOf(choice);
});

test("grade, angle and run are one slope", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 50, noNaN: true }), (rise) => {
      const one = slopeOf(quantity(rise * 100, "% grade"));
      const other = slopeOf(one.angle);
      close(other.grade.in("m/m"), rise, 1e-11);
      close(one.run ?? 0, 1 / rise);
      close(one.stretch, 1 / Math.cos((one.angle.in("deg") * Math.PI) / 180), 1e-11);
    }),
  );
});

test("plan to ground and back", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 1e5, noNaN: true }),
      fc.double({ min: 0, max: 300, noNaN: true }),
      (value, percent) => {
        const slope = quantity(percent, "% grade");
        const ground = surfaceArea(quantity(value, "m2", "plan"), slope);
        const back = planArea(ground, slope);
        close(back.in("m2"), value);
        expect([ground.of, back.of]).toEqual(["none", "plan"]);
        close(planLength(groundLength(quantity(value, "m"), slope), slope).in("m"), value);
        // an area is a length along the slope times one across it
        close(ground.in("m2"), groundLength(quantity(value, "m"), slope).in("m"));
      },
    ),
  );
});

test("refusals", () => {
  for (const slope of ["", "steep", "3:", "3:0:1", "1e3 %", "-5 %", "x".repeat(1000)]) {
    expect(complaints(untyped(slopeOf, slope)), slope).toEqual(["text slope"]);
  }
  expect(complaints(untyped(slopeOf, "95 deg"))).toEqual(["range slope"]);
  expect(complaints(untyped(slopeOf, "0:3 H:V"))).toEqual(["range slope"]);
  expect(complaints(untyped(slopeOf, "1 in 0"))).toEqual(["range slope"]);
  expect(complaints(untyped(slopeOf, 12))).toEqual(["type slope"]);
  expect(complaints(untyped(slopeOf))).toEqual(["missing slope"]);
  expect(problemsOf(untyped(slopeOf, quantity(12, "%")))[0]?.expected).toContain('"12 %"');
  expect(complaints(untyped(planArea, quantity(3, "ft2", "plan"), "3:1"))).toEqual([
    "substance/mismatch area",
  ]);
  expect(complaints(untyped(groundLength, quantity(3, "ft2"), "steep"))).toEqual([
    "unit/mismatch planLength",
    "text slope",
  ]);
});
