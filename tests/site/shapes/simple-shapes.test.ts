import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  annulusArea,
  circleArea,
  ellipseArea,
  rectangleArea,
  sectorArea,
  trapezoidArea,
  triangleArea,
  triangleAreaFromSides,
} from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const ft = (value: number) => quantity(value, "ft");
const m = (value: number) => quantity(value, "m");
const size = fc.double({ min: 0.01, max: 10_000, noNaN: true });

describe("units of the result", () => {
  test("the square of the unit of the first length", () => {
    expect(rectangleArea({ length: ft(90), width: ft(50) }).toJSON()).toEqual({
      value: 4500,
      unit: "ft2",
      of: "none",
    });
    expect(rectangleArea({ length: m(30), width: m(20) }).unit).toBe("m2");
    expect(rectangleArea({ length: quantity(3, "yd"), width: ft(9) }).toJSON()).toEqual({
      value: 9,
      unit: "yd2",
      of: "none",
    });
    expect(rectangleArea({ length: quantity(10, "in"), width: quantity(20, "in") }).unit).toBe("in2");
    expect(rectangleArea({ length: quantity(10, "cm"), width: quantity(20, "cm") }).unit).toBe("cm2");
  });

  test("a unit without a square goes to one that has it", () => {
    // 1 mi2 is 640 acres, 1 km2 is 100 ha
    const mile = rectangleArea({ length: quantity(1, "mi"), width: quantity(1, "mi") });
    expect([mile.unit, mile.in("acre")]).toEqual(["ft2", 640]);
    const km = rectangleArea({ length: quantity(1, "km"), width: quantity(1, "km") });
    expect([km.unit, km.in("ha")]).toEqual(["m2", 100]);
    expect(rectangleArea({ length: quantity(500, "mm"), width: quantity(500, "mm") }).toJSON()).toEqual({
      value: 0.25,
      unit: "m2",
      of: "none",
    });
  });

  test("feet and metres agree", () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        const metric = rectangleArea({ length: m(a * 0.3048), width: m(b * 0.3048) });
        close(rectangleArea({ length: ft(a), width: ft(b) }).in("m2"), metric.in("m2"));
        close(circleArea({ radius: ft(a) }).in("m2"), circleArea({ radius: m(a * 0.3048) }).in("m2"));
      }),
    );
  });
});

describe("scale: twice the lengths give four times the area", () => {
  test.each<[string, (k: number, a: number, b: number) => number]>([
    ["rectangle", (k, a, b) => rectangleArea({ length: m(k * a), width: m(k * b) }).in("m2")],
    ["triangle", (k, a, b) => triangleArea({ base: m(k * a), height: m(k * b) }).in("m2")],
    ["trapezoid", (k, a, b) => trapezoidArea({ a: m(k * a), b: m(k * b), height: m(k * a) }).in("m2")],
    ["ellipse", (k, a, b) => ellipseArea({ length: m(k * a), width: m(k * b) }).in("m2")],
    ["circumference", (k, a) => circleArea({ circumference: m(k * a) }).in("m2")],
    ["sector", (k, a) => sectorArea({ radius: m(k * a), angle: quantity(77, "deg") }).in("m2")],
    ["ring", (k, a, b) => annulusArea({ outerRadius: m(k * (a + b)), innerRadius: m(k * a) }).in("m2")],
  ])("%s", (_name, area) => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.1, max: 50, noNaN: true }), (a, b, k) => {
        // the ring takes a difference of two rounded lengths: digits go where it is thin
        fc.pre(b > a / 1000);
        close(area(k, a, b), k * k * area(1, a, b), 1e-11);
      }),
    );
  });
});

describe("shapes that are one another's limits", () => {
  test("a triangle is half a rectangle, a trapezoid a rectangle and a triangle", () => {
    fc.assert(
      fc.property(size, size, size, (a, extra, height) => {
        const rectangle = rectangleArea({ length: m(a), width: m(height) }).in("m2");
        const triangle = triangleArea({ base: m(extra), height: m(height) }).in("m2");
        close(triangleArea({ base: m(a), height: m(height) }).in("m2"), rectangle / 2);
        close(trapezoidArea({ a: m(a), b: m(a + extra), height: m(height) }).in("m2"), rectangle + triangle);
      }),
    );
  });

  test("radius, diameter, circumference, a round ellipse and a full sector give one area", () => {
    fc.assert(
      fc.property(size, (r) => {
        const area = circleArea({ radius: m(r) }).in("m2");
        close(circleArea({ diameter: m(2 * r) }).in("m2"), area);
        close(circleArea({ circumference: m(2 * Math.PI * r) }).in("m2"), area);
        close(ellipseArea({ length: m(2 * r), width: m(2 * r) }).in("m2"), area);
        close(sectorArea({ radius: m(r), angle: quantity(360, "deg") }).in("m2"), area);
        close(sectorArea({ radius: m(r), angle: quantity(2 * Math.PI, "rad") }).in("m2"), area);
      }),
    );
  });

  test("a ring and the circle inside it make the outer circle; sectors add up", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 1, max: 359, noNaN: true }), (inner, more, angle) => {
        const outer = inner + more;
        const ring = annulusArea({ outerRadius: m(outer), innerRadius: m(inner) }).in("m2");
        const whole = circleArea({ radius: m(outer) }).in("m2");
        close(ring + circleArea({ radius: m(inner) }).in("m2"), whole, 1e-11);
        const one = sectorArea({ radius: m(outer), angle: quantity(angle, "deg") }).in("m2");
        const rest = sectorArea({ radius: m(outer), angle: quantity(360 - angle, "deg") }).in("m2");
        close(one + rest, whole);
      }),
    );
  });
});

describe("triangle from sides", () => {
  test("whole triangles with whole areas, whatever the order", () => {
    // Heronian triangles: number theory, no source needed
    for (const [a, b, c, area] of [
      [3, 4, 5, 6],
      [5, 5, 6, 12],
      [13, 14, 15, 84],
      [9, 10, 17, 36],
      [4, 51, 53, 90],
    ] as const) {
      for (const [p, q, r] of [
        [a, b, c],
        [b, c, a],
        [c, a, b],
        [c, b, a],
      ] as const) {
        expect(triangleAreaFromSides({ a: m(p), b: m(q), c: m(r) }).in("m2")).toBe(area);
      }
    }
  });

  test("agrees with base and height", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (base, height, foot) => {
        fc.pre(height > base / 1000 && base > height / 1000);
        const left = Math.hypot(base * foot, height);
        const right = Math.hypot(base * (1 - foot), height);
        const sides = triangleAreaFromSides({ a: m(base), b: m(left), c: m(right) });
        close(sides.in("m2"), triangleArea({ base: m(base), height: m(height) }).in("m2"), 1e-8);
      }),
    );
  });

  test("a needle keeps its digits", () => {
    // two sides of 100 000, one of 1e-5: half the base times the height, which is 100 000 to 21 digits
    close(triangleAreaFromSides({ a: m(1e5), b: m(1e5), c: m(1e-5) }).in("m2"), 0.5, 1e-15);
  });

  test("sides that do not close are infeasible, at the longest", () => {
    // 0.1 + 0.2 is more than 0.3 by the last digit only
    expect(complaints(() => triangleAreaFromSides({ a: m(0.1), b: m(0.2), c: m(0.3) }))).toEqual([
      "infeasible c",
    ]);
    expect(complaints(() => triangleAreaFromSides({ a: ft(10), b: ft(40), c: ft(20) }))).toEqual([
      "infeasible b",
    ]);
    expect(complaints(() => triangleAreaFromSides({ a: ft(30), b: ft(10), c: ft(20) }))).toEqual([
      "infeasible a",
    ]);
    expect(
      problemsOf(() => triangleAreaFromSides({ a: ft(10), b: ft(40), c: ft(20) }))[0]?.expected,
    ).toContain("30 ft");
  });
});

describe("refusals", () => {
  test("every side that is not right is named", () => {
    expect(complaints(untyped(rectangleArea, { length: quantity(3, "lb"), width: ft(-2) }))).toEqual([
      "unit/mismatch length",
      "range width",
    ]);
    expect(complaints(untyped(trapezoidArea, { a: ft(0), height: "30 ft" }))).toEqual([
      "range a",
      "missing b",
      "type height",
    ]);
    expect(
      complaints(untyped(ellipseArea, { length: { value: Number.NaN, unit: "ft" }, width: ft(3) })),
    ).toEqual(["not-finite length"]);
    expect(complaints(untyped(triangleArea, undefined))).toEqual(["missing shape"]);
    expect(
      complaints(untyped(rectangleArea, { length: quantity(3, "ft", "N" as "none"), width: ft(2) })),
    ).toEqual(["substance/mismatch length"]);
  });

  test("a circle takes exactly one measure", () => {
    expect(complaints(untyped(circleArea, {}))).toEqual(["missing radius"]);
    expect(complaints(untyped(circleArea, { radius: ft(3), diameter: ft(6) }))).toEqual(["conflict radius"]);
    expect(complaints(untyped(circleArea, { diameter: ft(3), circumference: null }))).toEqual([
      "conflict diameter",
    ]);
    expect(complaints(() => circleArea({ circumference: ft(0) }))).toEqual(["range circumference"]);
  });

  test("a sector of more than a turn, a ring inside out", () => {
    expect(complaints(() => sectorArea({ radius: ft(3), angle: quantity(361, "deg") }))).toEqual([
      "range angle",
    ]);
    expect(complaints(untyped(sectorArea, { radius: ft(-3), angle: quantity(0, "deg") }))).toEqual([
      "range radius",
      "range angle",
    ]);
    expect(complaints(untyped(sectorArea, { radius: ft(3) }))).toEqual(["missing angle"]);
    expect(complaints(() => annulusArea({ outerRadius: ft(3), innerRadius: ft(3) }))).toEqual([
      "range innerRadius",
    ]);
  });

  test("no area out of the range of numbers", () => {
    expect(complaints(() => rectangleArea({ length: m(1e200), width: m(1e200) }))).toEqual([
      "not-finite value",
    ]);
    expect(complaints(() => rectangleArea({ length: m(1e-200), width: m(1e-200) }))).toEqual(["range shape"]);
  });
});
