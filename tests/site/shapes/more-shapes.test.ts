import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  annulusArea,
  annulusWidth,
  circleArea,
  circleDiameter,
  ellipseArea,
  ellipseLength,
  parallelogramArea,
  polygonArea,
  quadrilateralArea,
  rectangleArea,
  rectangleLength,
  sectorArea,
  segmentArea,
  squareArea,
  squareSide,
  stadiumArea,
  trapezoidArea,
  triangleArea,
  triangleAreaFromSides,
  triangleHeight,
} from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const m = (value: number) => quantity(value, "m");
const ft = (value: number) => quantity(value, "ft");
const deg = (value: number) => quantity(value, "deg");
const m2 = (value: number) => quantity(value, "m2");
const size = fc.double({ min: 0.01, max: 1000, noNaN: true });

describe("ring", () => {
  test("the four ways to measure one ring agree", () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.01, max: 100, noNaN: true }), (inner, width) => {
        const area = annulusArea({ outerRadius: m(inner + width), innerRadius: m(inner) }).in("m2");
        const [d, D] = [m(2 * inner), m(2 * (inner + width))];
        close(annulusArea({ outerDiameter: D, innerDiameter: d }).in("m2"), area, 1e-9);
        close(annulusArea({ innerDiameter: d, width: m(width) }).in("m2"), area, 1e-9);
        close(annulusArea({ outerDiameter: D, width: m(width) }).in("m2"), area, 1e-9);
        close(annulusWidth({ area: m2(area), innerDiameter: d }).in("m"), width, 1e-8);
      }),
    );
  });

  test("refusals say what is missing beside what is there", () => {
    expect(complaints(untyped(annulusArea, { outerDiameter: m(3) }))).toEqual(["missing innerDiameter"]);
    expect(complaints(untyped(annulusArea, { width: m(3) }))).toEqual(["missing outerDiameter"]);
    expect(complaints(untyped(annulusArea, {}))).toEqual(["missing outerRadius"]);
    expect(complaints(untyped(annulusArea, { outerRadius: m(3), width: m(1) }))).toEqual([
      "conflict outerRadius",
    ]);
    expect(complaints(() => annulusArea({ outerDiameter: m(3), innerDiameter: m(4) }))).toEqual([
      "range innerDiameter",
    ]);
    expect(complaints(() => annulusArea({ outerDiameter: m(3), width: m(1.5) }))).toEqual(["range width"]);
    expect(problemsOf(untyped(annulusArea, { outerRadius: m(3), innerRadus: m(1) }))).toMatchObject([
      { code: "type", path: "innerRadus", suggestion: "innerRadius" },
      { code: "missing", path: "innerRadius" },
    ]);
  });
});

describe("segment and stadium", () => {
  test("a half circle, and a segment with its counterpart", () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.5, max: 359.5, noNaN: true }), (r, angle) => {
        const whole = circleArea({ radius: m(r) }).in("m2");
        close(segmentArea({ chord: m(2 * r), height: m(r) }).in("m2"), whole / 2, 1e-12);
        const one = segmentArea({ radius: m(r), angle: deg(angle) }).in("m2");
        const other = segmentArea({ radius: m(r), angle: deg(360 - angle) }).in("m2");
        close(one + other, whole, 1e-12);
        // chord and height of that arc, also of more than half a circle
        const half = (angle * Math.PI) / 360;
        const chord = 2 * r * Math.sin(half);
        close(segmentArea({ chord: m(chord), height: m(r * (1 - Math.cos(half))) }).in("m2"), one, 1e-8);
      }),
    );
  });

  test("a segment is a sector less a triangle", () => {
    const [r, angle] = [40, 73];
    const triangle = (r * r * Math.sin((angle * Math.PI) / 180)) / 2;
    close(
      segmentArea({ radius: m(r), angle: deg(angle) }).in("m2"),
      sectorArea({ radius: m(r), angle: deg(angle) }).in("m2") - triangle,
    );
  });

  test("a flat arc keeps its digits: 2/3 of chord and height", () => {
    // the next term is (8/15) h^3 / c, beyond the digits
    close(segmentArea({ chord: m(1000), height: m(1e-6) }).in("m2"), (2 / 3) * 1000 * 1e-6, 1e-13);
  });

  test("a stadium is a rectangle and a circle", () => {
    fc.assert(
      fc.property(size, size, (straight, width) => {
        const area = stadiumArea({ straight: m(straight), width: m(width) }).in("m2");
        const sum =
          rectangleArea({ length: m(straight), width: m(width) }).in("m2") +
          circleArea({ diameter: m(width) }).in("m2");
        close(area, sum);
        close(stadiumArea({ length: m(straight + width), width: m(width) }).in("m2"), area, 1e-9);
      }),
    );
  });

  test("refusals", () => {
    expect(complaints(untyped(segmentArea, {}))).toEqual(["missing chord"]);
    expect(complaints(untyped(segmentArea, { chord: m(1) }))).toEqual(["missing height"]);
    expect(complaints(untyped(segmentArea, { chord: m(1), height: m(1), radius: m(1) }))).toEqual([
      "conflict chord",
    ]);
    expect(complaints(() => segmentArea({ radius: m(1), angle: deg(360) }))).toEqual(["range angle"]);
    expect(complaints(() => stadiumArea({ length: m(5), width: m(5) }))).toEqual(["range length"]);
    expect(complaints(untyped(stadiumArea, { length: m(5), width: m(2), straight: m(3) }))).toEqual([
      "conflict length",
    ]);
    expect(complaints(untyped(stadiumArea, { width: m(2) }))).toEqual(["missing length"]);
  });
});

describe("four sides", () => {
  test("heights, sides and coordinates give one area", () => {
    fc.assert(
      fc.property(size, size, size, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (d, up, down, at) => {
        fc.pre(Math.min(up, down) > d / 100 && Math.max(up, down) < d * 100);
        const area = quadrilateralArea({ diagonal: m(d), height1: m(up), height2: m(down) }).in("m2");
        const [x, y] = [at * d, (1 - at) * d];
        const sides = quadrilateralArea({
          diagonal: m(d),
          a: m(Math.hypot(x, up)),
          b: m(Math.hypot(y, up)),
          c: m(Math.hypot(x, down)),
          d: m(Math.hypot(y, down)),
        });
        close(sides.in("m2"), area, 1e-7);
        close(
          polygonArea(
            [
              [0, 0],
              [x, -down],
              [d, 0],
              [x, up],
            ],
            "m",
          ).in("m2"),
          area,
          1e-11,
        );
      }),
    );
  });

  test("a square is a rectangle; a parallelogram is one with the top pushed", () => {
    expect(squareArea({ side: ft(120) }).in("ft2")).toBe(14_400);
    close(
      parallelogramArea({ base: m(8), height: m(3) }).in("m2"),
      trapezoidArea({ a: m(8), b: m(8), height: m(3) }).in("m2"),
    );
  });

  test("refusals", () => {
    expect(complaints(untyped(quadrilateralArea, { diagonal: m(3) }))).toEqual(["missing height1"]);
    expect(complaints(untyped(quadrilateralArea, { diagonal: m(3), a: m(2), height1: m(2) }))).toEqual([
      "conflict height1",
      "missing height2",
    ]);
    expect(
      complaints(() => quadrilateralArea({ diagonal: m(30), a: m(2), b: m(3), c: m(1), d: m(1) })),
    ).toEqual(["infeasible diagonal", "infeasible diagonal"]);
  });
});

describe("the length that makes an area", () => {
  test("back to the area", () => {
    fc.assert(
      fc.property(size, size, (area, other) => {
        const a = m2(area);
        close(squareArea({ side: squareSide(a) }).in("m2"), area);
        close(circleArea({ diameter: circleDiameter(a) }).in("m2"), area);
        const length = rectangleLength({ area: a, width: m(other) });
        close(rectangleArea({ length, width: m(other) }).in("m2"), area);
        const height = triangleHeight({ area: a, base: m(other) });
        close(triangleArea({ base: m(other), height }).in("m2"), area);
        const axis = ellipseLength({ area: a, width: m(other) });
        close(ellipseArea({ length: axis, width: m(other) }).in("m2"), area);
      }),
    );
  });

  test("units: of the length given, or of the square", () => {
    expect(squareSide(quantity(1, "1000 ft2")).unit).toBe("ft");
    expect(squareSide(quantity(9, "yd2")).toJSON()).toEqual({ value: 3, unit: "yd", of: "none" });
    expect(squareSide(quantity(1, "ha")).toJSON()).toEqual({ value: 100, unit: "m", of: "none" });
    expect(rectangleLength({ area: quantity(1, "acre"), width: quantity(22, "yd") }).toJSON()).toEqual({
      value: 220,
      unit: "yd",
      of: "none",
    });
    expect(rectangleLength({ area: quantity(1000, "ft2", "treated"), width: ft(10) }).in("ft")).toBe(100);
  });

  test("refusals", () => {
    expect(complaints(untyped(squareSide, quantity(0, "ft2")))).toEqual(["range area"]);
    expect(complaints(untyped(squareSide, 400))).toEqual(["type area"]);
    expect(complaints(untyped(rectangleLength, { area: m(4), wdith: m(1) }))).toEqual([
      "type wdith",
      "unit/mismatch area",
      "missing width",
    ]);
    expect(problemsOf(untyped(squareSide, quantity(3, "ft2", "plan")))[0]?.expected).toContain("surfaceArea");
    expect(problemsOf(untyped(squareSide, quantity(3, "ft2", "gross")))[0]?.expected).toContain("netArea");
  });
});

test("a triangle that does not close says at which side, with its length", () => {
  expect(problemsOf(() => triangleAreaFromSides({ a: ft(1), b: ft(9), c: ft(2) }))).toMatchObject([
    { code: "infeasible", path: "b", got: "9 ft" },
  ]);
});
