// Buffers whose round ends meet, in closed form: two strips with half circles, less the lens that both cover.
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { bufferArea } from "../../../src/site/index.js";
import { close } from "../helpers.js";

type Point = readonly [number, number];
const m = (value: number) => quantity(value, "m");

/** What two circles have in common, by their two segments. */
const lens = (r: number, s: number, apart: number): number => {
  const a = (apart * apart + r * r - s * s) / (2 * apart);
  const segment = (radius: number, height: number): number =>
    radius * radius * Math.acos(height / radius) - height * Math.sqrt(radius * radius - height * height);
  return segment(r, a) + segment(s, apart - a);
};

const turned =
  (degrees: number) =>
  ([x, y]: Point): Point => {
    const turn = (degrees * Math.PI) / 180;
    return [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
  };

const far = 500;
const land: readonly Point[] = [
  [-far, -far],
  [far, -far],
  [far, far],
  [-far, far],
];
/** A ditch of 20 m by 1 m whose edge 0 runs from x to x + 20 on the first axis. */
const ditch = (x: number): readonly Point[] => [
  [x, 0],
  [x + 20, 0],
  [x + 20, -1],
  [x, -1],
];
/** Around one edge of 20 m: two strips and two half circles, less the ditch that lies within. */
const around = (d: number): number => 2 * 20 * d + Math.PI * d * d - 20;

describe("two ditches in a line", () => {
  const taken = (apart: number, d: number, e: number, degrees: number): number => {
    const holes = [ditch(-20), ditch(apart)].map((ring) => ring.map(turned(degrees)));
    const edges = [
      { hole: 0, edge: 0, distance: m(d) },
      { hole: 1, edge: 0, distance: m(e) },
    ];
    return bufferArea({ points: land, unit: "m", holes, edges }).buffer.in("m2");
  };

  test.each([0, 30, 45, 90, 123, 180, 260])("round ends that overlap, turned by %i degrees", (degrees) => {
    // 30 m apart, with 20 m and 15 m: the ends meet between them, and reach no ditch of the other.
    close(taken(30, 20, 15, degrees), around(20) + around(15) - lens(20, 15, 30), 1e-10);
    close(taken(30, 15, 20, degrees), around(20) + around(15) - lens(20, 15, 30), 1e-10);
    close(taken(30, 18, 18, degrees), around(18) + around(18) - lens(18, 18, 30), 1e-10);
  });

  test.each([0, 30, 90])("ends that touch, or stay apart, turned by %i degrees", (degrees) => {
    close(taken(35, 20, 15, degrees), around(20) + around(15), 1e-10);
    close(taken(50, 20, 15, degrees), around(20) + around(15), 1e-10);
  });

  test.each([0, 30, 90, 210])(
    "a small buffer within a wide one takes nothing more, turned by %i degrees",
    (degrees) => {
      // The second ditch and its 3 m lie wholly within 40 m of the first: only its own 20 m2 are no ground.
      close(taken(5, 40, 3, degrees), around(40) - 20, 1e-10);
    },
  );
});

test("an edge of the outline and the edge of a hole with the same number are two edges", () => {
  const box: readonly Point[] = [
    [0, 0],
    [100, 0],
    [100, 60],
    [0, 60],
  ];
  const pond: readonly Point[] = [
    [40, 30],
    [60, 30],
    [60, 50],
    [40, 50],
  ];
  const found = bufferArea({
    points: box,
    unit: "m",
    holes: [pond],
    edges: [
      { edge: 0, distance: m(5) },
      { hole: 0, edge: 0, distance: m(4) },
    ],
  });
  // 100 by 5 along the outline; along the pond 20 by 4, and half a circle of 4 around either end.
  close(found.buffer.in("m2"), 100 * 5 + 20 * 4 + Math.PI * 4 ** 2, 1e-12);
  expect(found.edges.map(({ edge, hole }) => [edge, hole])).toEqual([
    [0, undefined],
    [0, 0],
  ]);
});
