import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { polygonArea, rectangleArea, triangleArea } from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

type Point = readonly [number, number];
const size = fc.double({ min: 0.1, max: 1000, noNaN: true });
const where = fc.double({ min: -1000, max: 1000, noNaN: true });

/** An outline that cannot cross itself: one corner in each direction from a point inside. */
const star = fc
  .array(
    fc.tuple(fc.double({ min: 0.05, max: 0.95, noNaN: true }), fc.double({ min: 5, max: 100, noNaN: true })),
    {
      minLength: 4,
      maxLength: 24,
    },
  )
  .map((spokes) =>
    spokes.map(([share, radius], i): Point => {
      const angle = ((i + share) / spokes.length) * 2 * Math.PI;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    }),
  );
const area = (points: readonly Point[]): number => polygonArea(points, "m").in("m2");

describe("laws", () => {
  test("a rectangle and a triangle are polygons", () => {
    fc.assert(
      fc.property(size, size, where, where, (a, b, x, y) => {
        const rectangle = rectangleArea({ length: quantity(a, "m"), width: quantity(b, "m") }).in("m2");
        close(
          area([
            [0, 0],
            [a, 0],
            [a, b],
            [0, b],
          ]),
          rectangle,
        );
        close(
          area([
            [x, y],
            [x + a, y],
            [x + a, y + b],
            [x, y + b],
          ]),
          rectangle,
          1e-9,
        );
        const triangle = triangleArea({ base: quantity(a, "m"), height: quantity(b, "m") }).in("m2");
        close(
          area([
            [0, 0],
            [a, 0],
            [a / 3, b],
          ]),
          triangle,
        );
      }),
    );
  });

  test("the same wherever it lies, however it is turned, mirrored or started", () => {
    fc.assert(
      fc.property(
        star,
        where,
        where,
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        (points, dx, dy, turn) => {
          const here = area(points);
          const [c, s] = [Math.cos(turn), Math.sin(turn)];
          close(area(points.map(([x, y]) => [x + dx, y + dy] as const)), here, 1e-9);
          close(area(points.map(([x, y]) => [c * x - s * y, s * x + c * y] as const)), here, 1e-9);
          close(area(points.map(([x, y]) => [y, x] as const)), here, 1e-12);
          close(area([...points].reverse()), here, 1e-12);
          close(area([...points.slice(2), ...points.slice(0, 2)]), here, 1e-9);
        },
      ),
    );
  });

  test("the sum of the triangles from a point inside", () => {
    fc.assert(
      fc.property(star, (points) => {
        const triangles = points.map(([x, y], i) => {
          const [u, v] = points[(i + 1) % points.length] as Point;
          return (x * v - u * y) / 2;
        });
        close(
          area(points),
          triangles.reduce((a, b) => a + b),
          1e-9,
        );
      }),
    );
  });

  test("scale, and feet against metres", () => {
    fc.assert(
      fc.property(star, fc.double({ min: 0.1, max: 50, noNaN: true }), (points, k) => {
        close(area(points.map(([x, y]) => [k * x, k * y] as const)), k * k * area(points), 1e-10);
        const feet = points.map(([x, y]) => [x / 0.3048, y / 0.3048] as const);
        close(polygonArea(feet, "ft").in("m2"), area(points), 1e-10);
      }),
    );
  });

  test("a grid far from zero costs no digits", () => {
    // the products of such numbers do not fit into a double
    const [x, y] = [500_000_001, 4_500_000_003];
    const site = polygonArea(
      [
        [x, y],
        [x + 101, y],
        [x + 101, y + 51],
        [x, y + 51],
      ],
      "in",
    );
    expect(site.in("in2")).toBe(101 * 51);
  });
});

describe("input", () => {
  test("quantities of mixed units, and a repeated last corner", () => {
    const at = (x: number, y: number) => ({ x: quantity(x, "yd"), y: quantity(y, "ft") });
    const site = polygonArea([at(0, 0), at(20, 0), at(20, 60), at(0, 60), at(0, 0)]);
    expect(site.toJSON()).toEqual({ value: 400, unit: "yd2", of: "none" });
    expect(
      polygonArea(
        [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
          [0, 0],
        ],
        "mi",
      ).in("acre"),
    ).toBe(640);
  });

  test("every corner that is not right is named", () => {
    expect(complaints(untyped(polygonArea, [[0, 0], [1, Number.NaN], [1], [0, "1"]], "ft"))).toEqual([
      "not-finite points[1][1]",
      "type points[2]",
      "not-finite points[3][1]",
    ]);
    expect(
      complaints(untyped(polygonArea, [{ x: quantity(1, "ft") }, [1, 2], { x: 1, y: quantity(1, "lb") }])),
    ).toEqual(["missing points[0].y", "type points[1]", "type points[2].x", "unit/mismatch points[2].y"]);
    expect(
      complaints(
        untyped(
          polygonArea,
          [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
          "acre",
        ),
      ),
    ).toEqual(["unit/mismatch unit"]);
    expect(
      complaints(
        untyped(
          polygonArea,
          [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
          "foot",
        ),
      ),
    ).toEqual(["unit/unknown unit"]);
    expect(complaints(untyped(polygonArea))).toEqual(["missing points"]);
    expect(complaints(untyped(polygonArea, "0,0 1,0 1,1", "ft"))).toEqual(["type points"]);
  });

  test("fewer than 3 corners", () => {
    expect(complaints(() => polygonArea([], "ft"))).toEqual(["range points"]);
    expect(
      complaints(() =>
        polygonArea(
          [
            [0, 0],
            [1, 0],
          ],
          "ft",
        ),
      ),
    ).toEqual(["range points"]);
    expect(
      complaints(() =>
        polygonArea(
          [
            [0, 0],
            [1, 0],
            [0, 0],
          ],
          "ft",
        ),
      ),
    ).toEqual(["range points"]);
  });

  test("a corner that occurs twice", () => {
    const eight: readonly Point[] = [
      [0, 0],
      [2, 2],
      [4, 0],
      [4, 4],
      [2, 2],
      [0, 4],
    ];
    expect(complaints(() => polygonArea(eight, "ft"))).toEqual(["duplicate points[4]"]);
    expect(
      complaints(() =>
        polygonArea(
          [
            [0, 0],
            [1, 0],
            [1, 0],
            [1, 1],
          ],
          "ft",
        ),
      ),
    ).toEqual(["duplicate points[2]"]);
    expect(
      complaints(() =>
        polygonArea(
          [
            [0, 0],
            [1, 0],
            [1, 1],
            [-0, 0],
            [0, 1],
          ],
          "ft",
        ),
      ),
    ).toEqual(["duplicate points[3]"]);
  });
});

describe("an outline that crosses itself", () => {
  const got = (points: readonly Point[]): string | undefined =>
    problemsOf(() => polygonArea(points, "ft")).find(
      ({ code, path }) => code === "conflict" && path === "points",
    )?.got;

  test("the edges are named", () => {
    expect(
      got([
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ]),
    ).toBe("edge 0-1 meets edge 2-3");
    expect(
      got([
        [0, 0],
        [10, 0],
        [0, 10],
        [10, 10],
      ]),
    ).toBe("edge 1-2 meets edge 3-0");
  });

  test("the loop of a published traverse, with instrument points among its corners", () => {
    // site-018: six points in the order measured; the parcel has only four of them
    const loop: readonly Point[] = [
      [600.0, 1000.0],
      [569.612, 1293.788],
      [254.542, 1209.288],
      [463.631, 766.846],
      [470.303, 397.969],
      [97.543, 566.876],
    ];
    expect(got(loop)).toBe("edge 2-3 meets edge 5-0");
  });

  test("edges that touch or double back", () => {
    // a corner on another edge, an edge over another, and a spike
    expect(
      got([
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ]),
    ).toContain("edge 0-1 meets edge 2-3");
    expect(
      got([
        [0, 0],
        [10, 0],
        [10, 5],
        [8, 0],
        [2, 0],
        [0, 5],
      ]),
    ).toContain("edge 0-1 meets edge 3-4");
    expect(
      got([
        [0, 0],
        [10, 0],
        [5, 0],
        [5, 5],
      ]),
    ).toContain("edge 0-1 meets edge 1-2");
    expect(
      got([
        [0, 0],
        [5, 0],
        [10, 0],
      ]),
    ).toContain("edge 2-0");
  });

  test("a corner in the middle of a straight edge is no fault", () => {
    expect(
      area([
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ]),
    ).toBe(100);
  });

  test("small coordinates are no cover", () => {
    expect(
      got([
        [0, 0],
        [1e-100, 1e-100],
        [1e-100, 0],
        [0, 1e-100],
      ]),
    ).toContain("edge 0-1 meets edge 2-3");
  });

  test("two corners of an outline changed about are found", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 30 }), fc.nat(), (n, at) => {
        const ring = Array.from({ length: n }, (_, i): Point => {
          const angle = (2 * Math.PI * i) / n;
          return [Math.cos(angle), Math.sin(angle)];
        });
        const i = at % (n - 1);
        [ring[i], ring[i + 1]] = [ring[i + 1] as Point, ring[i] as Point];
        expect(got(ring)).toContain("meets edge");
      }),
    );
  });

  test("a scrambled outline names a few and counts the rest", () => {
    const scrambled = Array.from({ length: 15 }, (_, i): Point => {
      const angle = (2 * Math.PI * i * 7) / 15;
      return [Math.cos(angle), Math.sin(angle)];
    });
    // the star 15/7: every edge crosses 12 others, 15 * 12 / 2 = 90
    expect(got(scrambled)).toMatch(/and 85 more$/);
    expect(got(scrambled)?.match(/meets/g)).toHaveLength(5);
  });
});
