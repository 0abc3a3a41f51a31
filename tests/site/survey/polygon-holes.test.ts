import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { polygonArea, radialArea } from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

type Point = readonly [number, number];

const box = (x: number, y: number, w: number, h: number): readonly Point[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const field = box(0, 0, 100, 50);

describe("cut-outs of an outline", () => {
  test("the outline less the holes, whichever way round", () => {
    const holes = [box(10, 10, 20, 10), [...box(50, 20, 5, 5)].reverse()];
    expect(polygonArea(field, "ft", { holes }).in("ft2")).toBe(5000 - 200 - 25);
    const at = ([x, y]: Point) => ({ x: quantity(x, "ft"), y: quantity(y, "ft") });
    expect(polygonArea(field.map(at), { holes: holes.map((hole) => hole.map(at)) }).in("ft2")).toBe(4775);
  });

  test("holes may touch the edge and one another", () => {
    const holes = [box(0, 10, 10, 10), box(10, 10, 10, 10)];
    expect(polygonArea(field, "ft", { holes }).in("ft2")).toBe(4800);
  });

  test("outside, across the edge, over one another: refused with the place", () => {
    const complain = (...holes: readonly (readonly Point[])[]) =>
      complaints(() => polygonArea(field, "ft", { holes }));
    expect(complain(box(200, 10, 5, 5))).toEqual(["conflict holes[0][0]"]);
    expect(complain(box(10, 10, 5, 5), box(95, 10, 10, 5))).toEqual(["conflict holes[1][1]"]);
    expect(complain(box(10, 10, 20, 20), box(20, 20, 20, 20))).toEqual(["conflict holes[1]"]);
    // two bars that cross: no corner of one lies in the other
    expect(complain(box(10, 20, 60, 5), box(30, 5, 5, 40))).toEqual(["conflict holes[1]"]);
    // one inside of the other, and one on top of the other
    expect(complain(box(10, 10, 20, 20), box(12, 12, 4, 4))).toEqual(["conflict holes[1]"]);
    expect(complain(box(10, 10, 20, 20), box(10, 10, 20, 20))).toEqual(["conflict holes[1]"]);
    expect(complain([...box(10, 10, 20, 20).slice(0, 2)])).toEqual(["range holes[0]"]);
    // every corner inside, an edge across the dent of the outline
    const dented: readonly Point[] = [
      [0, 0],
      [100, 0],
      [100, 50],
      [50, 5],
      [0, 50],
    ];
    const bar: readonly Point[] = [
      [2, 30],
      [98, 30],
      [98, 32],
      [2, 32],
    ];
    expect(complaints(() => polygonArea(dented, "ft", { holes: [bar] }))).toEqual(["conflict holes[0]"]);
  });

  test("unknown options", () => {
    expect(problemsOf(untyped(polygonArea, field, "ft", { hole: [] }))).toMatchObject([
      { code: "type", path: "options.hole", suggestion: "holes" },
    ]);
    expect(complaints(untyped(polygonArea, field, "ft", { holes: 3 }))).toEqual(["type holes"]);
    expect(complaints(untyped(polygonArea, field, 3))).toEqual([...field.map((_, i) => `type points[${i}]`)]);
  });
});

describe("degrees that are passed as lengths", () => {
  const around = (x: number, y: number): readonly Point[] => box(x, y, 0.0011, 0.0009);

  test("are refused, and the function that takes them is named", () => {
    for (const [x, y] of [
      [-97.13, 32.73],
      [11.57, 48.13],
      [151.2, -33.86],
      [48.13, 11.57],
    ] as const) {
      const [problem] = problemsOf(() => polygonArea(around(x, y), "m"));
      expect(problem).toMatchObject({ code: "range", path: "points" });
      expect(problem?.expected).toContain("ratewright/site/geodesic");
    }
  });

  test("a small plot near zero, or in a small unit, is no degrees", () => {
    expect(polygonArea(box(0, 0, 0.01, 0.02), "m").in("cm2")).toBeCloseTo(2, 9);
    expect(polygonArea(box(30, 40, 0.01, 0.02), "cm").unit).toBe("cm2");
  });
});

test("thousands of corners are read at once", () => {
  const n = 12_000;
  const round = Array.from({ length: n }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / n;
    return [100 * Math.cos(angle), 100 * Math.sin(angle)];
  });
  // a regular polygon: n r^2 / 2 sin(2 pi / n)
  close(polygonArea(round, "m").in("m2"), (n * 1e4 * Math.sin((2 * Math.PI) / n)) / 2, 1e-9);
  expect(complaints(() => polygonArea([...round, ...round], "m"))).toEqual(["range points"]);
});

describe("by rays from a point", () => {
  test("the polygon of the corners, from inside and from outside", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -300, max: 300, noNaN: true }),
        fc.double({ min: -300, max: 300, noNaN: true }),
        (x, y) => {
          const rays = field.map(([u, v]) => ({
            angle: quantity((Math.atan2(v - y, u - x) * 180) / Math.PI, "deg"),
            distance: quantity(Math.hypot(u - x, v - y), "ft"),
          }));
          close(radialArea({ rays }).in("ft2"), 5000, 1e-8);
        },
      ),
    );
  });

  test("refusals", () => {
    expect(complaints(untyped(radialArea, {}))).toEqual(["missing rays"]);
    expect(
      complaints(
        untyped(radialArea, {
          rays: [{ angle: quantity(3, "ft"), distance: quantity(-1, "ft") }, { bearing: 3 }, 7],
        }),
      ),
    ).toEqual([
      "unit/mismatch rays[0].angle",
      "range rays[0].distance",
      "type rays[1].bearing",
      "type rays[2]",
    ]);
  });
});

describe("a cut-out whose corners lie on the edge", () => {
  // a square of 10 with a dent from the right to its middle
  const outline = [
    [0, 0],
    [10, 0],
    [5, 5],
    [10, 10],
    [0, 10],
  ] as const;
  const area = (...hole: readonly (readonly [number, number])[]) =>
    polygonArea(outline, "ft", { holes: [hole] }).in("ft2");
  test("may run along an edge, or from one edge to another inside", () => {
    expect(area([0, 0], [10, 0], [5, 5])).toBe(50);
    expect(area([0, 2], [7, 3], [0, 8])).toBe(75 - 21);
    // across the ground, from the tip of the dent to the far side
    expect(area([5, 5], [0, 9], [0, 1])).toBe(75 - 20);
  });
  test("may not run over the dent", () => {
    const refused = (...hole: readonly (readonly [number, number])[]) =>
      complaints(() => polygonArea(outline, "ft", { holes: [hole] }));
    expect(refused([9, 1], [9, 9], [1, 5])).toEqual(["conflict holes[0]"]);
    expect(refused([1, 5], [8, 8], [8, 2])).toEqual(["conflict holes[0]"]);
    // over a corner of the outline that lies on the line, out on one side of it
    const bay = [
      [0, 0],
      [12, 0],
      [12, 4],
      [8, 4],
      [8, 2],
      [6, 4],
      [4, 4],
      [0, 4],
    ] as const;
    expect(
      complaints(() =>
        polygonArea(bay, "ft", {
          holes: [
            [
              [4, 4],
              [12, 4],
              [6, 1],
            ],
          ],
        }),
      ),
    ).toEqual(["conflict holes[0]"]);
    expect(
      polygonArea(bay, "ft", {
        holes: [
          [
            [0, 4],
            [6, 4],
            [3, 1],
          ],
        ],
      }).in("ft2"),
    ).toBe(46 - 9);
  });
});
