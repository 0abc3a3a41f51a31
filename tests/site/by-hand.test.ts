// Shapes, edges and bounds of a site, each worked out on paper.
import { describe, expect, test } from "vitest";
import { quantity } from "../../src/quantity/index.js";
import { geodesicArea } from "../../src/site/geodesic/index.js";
import {
  areaEstimate,
  bufferArea,
  polygonArea,
  siteArea,
  siteAreaEstimate,
  waterDose,
} from "../../src/site/index.js";
import { problemsOf, rejections } from "../errors.js";

const m = (value: number) => quantity(value, "m");
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
type Points = readonly (readonly [number, number])[];
const areaOf = (...points: Points) => polygonArea(points, "m");

describe("the parts of a site by the name of their shape", () => {
  const net = (shape: object) => siteArea({ parts: [shape as never] }).net.in("m2");
  test("a quadrilateral by four sides and the diagonal: 3 by 4 with a diagonal of 5 is 12", () => {
    const sides = { a: m(3), b: m(4), c: m(3), d: m(4) };
    expect(net({ shape: "quadrilateral", ...sides, diagonal: m(5) })).toBeCloseTo(12, 9);
  });
  test("a segment of half a turn is half a circle", () => {
    expect(net({ shape: "segment", radius: m(1), angle: quantity(180, "deg") })).toBeCloseTo(Math.PI / 2, 9);
  });
  test("a ring 4 m across with 2 m inside is 3 pi", () => {
    expect(net({ shape: "annulus", outerDiameter: m(4), innerDiameter: m(2) })).toBeCloseTo(3 * Math.PI, 9);
  });
  test("a trapezoid of 2 and 4 m, 3 m high, is 9", () => {
    expect(net({ shape: "trapezoid", a: m(2), b: m(4), height: m(3) })).toBeCloseTo(9, 12);
  });
});

describe("a triangle and a parallelogram", () => {
  test("4 m wide and 3 m high are 6 and 12", () => {
    const area = (shape: string) =>
      siteArea({ parts: [{ shape, base: m(4), height: m(3) } as never] }).net.in("m2");
    expect([area("triangle"), area("parallelogram")]).toEqual([6, 12]);
  });
});

describe("the estimate of a site", () => {
  test("tells a cut-out by its place", () => {
    const square = { shape: "square", side: m(10) } as const;
    const tape = { reading: quantity(1, "cm"), meaning: "standard error" } as const;
    const wrong = { parts: [square], cutOuts: [{ shape: "square", side: m(-1) }] };
    expect(told(() => siteAreaEstimate(wrong as never, tape as never))[0]).toMatch(
      /^range cutOuts\[0\]\.side/,
    );
  });
});

describe("what is cut out", () => {
  const cut = (square: number) =>
    siteArea({
      parts: [{ shape: "measured", area: quantity(1000, "m2") }],
      cutOuts: [{ shape: "measured", area: quantity(square, "m2") }],
    });
  test("leaves nothing where it is the whole, but for the last digits, and is refused beyond", () => {
    expect(cut(1000).net.value).toBe(0);
    // a billionth of 1000 m2 is 1e-6 m2
    expect(cut(1000 + 5e-7).net.value).toBe(0);
    expect(cut(1000 - 5e-7).net.value).toBe(0);
    expect(cut(1000 - 5e-6).net.value).toBeGreaterThan(0);
    expect(told(() => cut(1000 + 5e-6))[0]).toMatch(/^range cutOuts: .*which is what the parts are/);
  });
});

describe("the scale of a tape", () => {
  const estimate = (percent: number) =>
    areaEstimate({ shape: "square", side: m(10) }, {
      scale: quantity(percent, "%"),
      meaning: "standard error",
    } as never);
  test("is off by 20 % at most: a square then by 40 %", () => {
    expect(estimate(20).standardError.in("m2")).toBeCloseTo(40, 9);
    expect(told(() => estimate(20.1))[0]).toMatch(/^range tape\.scale: .*the errors have to be small/);
  });
});

describe("an outline", () => {
  test("whose edges run from right to left is refused where two cross", () => {
    // The edge from (41, 30) to (0, 8) is at 17.3 where y = x.
    const points = [
      [0, 0],
      [20, 20],
      [25, 30],
      [40, 30],
      [41, 30],
      [0, 8],
    ] as const;
    expect(told(() => areaOf(...points))).toEqual([expect.stringMatching(/points/)]);
  });

  test("that runs back over itself is refused, upright and level", () => {
    expect(told(() => areaOf([0, 0], [4, 0], [4, 10], [4, 3], [0, 3]))).not.toEqual([]);
    expect(told(() => areaOf([0, 0], [0, 4], [10, 4], [3, 4], [3, 0]))).not.toEqual([]);
    // 4 by 3, with a corner in the middle of a side
    expect(areaOf([0, 0], [4, 0], [4, 1.5], [4, 3], [0, 3]).in("m2")).toBe(12);
  });

  test("a hundredth across is one of degrees up to 180 on either axis, and a small place beyond", () => {
    const at = (x: number, y: number) => () =>
      areaOf([x, y], [x + 0.01, y], [x + 0.01, y + 0.01], [x, y + 0.01]);
    expect(told(at(8, 50))[0]).toMatch(/^range points: .*geodesicArea/);
    expect(told(at(-97.5, 35))[0]).toMatch(/^range points: .*geodesicArea/);
    for (const [x, y] of [
      [-200, 50],
      [8, -200],
      [200, 50],
      [8, 200],
    ] as const)
      expect(at(x, y)().in("m2")).toBeCloseTo(1e-4, 9);
  });

  test("two cut-outs of one outline are one over the other", () => {
    const hole = [
      [20, 20],
      [60, 32],
      [50, 75],
      [10, 51],
    ] as const;
    const field: Points = [
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ];
    expect(told(() => polygonArea(field, "m", { holes: [hole, hole] }))).toEqual([
      "conflict holes[1]: cut-outs apart",
    ]);
  });
});

describe("buffers", () => {
  test("of more pairs of an edge and a buffer than can be gone through are refused: twice 400 times 400", () => {
    const points = Array.from({ length: 400 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 400;
      return [1000 * Math.cos(angle), 1000 * Math.sin(angle)] as const;
    });
    const edges = points.map((_, edge) => ({ edge, distance: m(1) }));
    expect(told(() => bufferArea({ points, unit: "m", edges }))).toEqual([
      expect.stringMatching(/^range edges: fewer edges: 200,?000/),
    ]);
  });
});

describe("water", () => {
  test("by the treated surface of a pond: an acre a foot deep is 43,560 ft3", () => {
    const dose = waterDose({
      surface: quantity(1, "acre", "treated"),
      depth: quantity(1, "ft"),
      concentration: quantity(1, "mg/L", "ai"),
    } as never);
    expect(dose.volume.in("ft3")).toBeCloseTo(43_560, 6);
  });
  test("of a depth alone lacks its surface, of a surface alone its depth, of neither its volume", () => {
    const lack = (more: object) =>
      told(() => waterDose({ concentration: quantity(1, "mg/L", "ai"), ...more } as never)).map(
        (text) => text.split(":")[0],
      );
    expect(lack({ depth: quantity(1, "ft") })).toEqual(["missing surface"]);
    expect(lack({ surface: quantity(1, "acre") })).toEqual(["missing depth"]);
    expect(lack({})).toEqual(["missing volume"]);
  });
});

describe("positions on the earth", () => {
  const polygon = (...positions: readonly unknown[]) =>
    geodesicArea({ type: "Polygon", coordinates: [positions] } as never);
  test("a northing is no latitude: the whole position is told, with the way on", async () => {
    expect(
      await rejections(polygon([5, 4_000_000], [6, 4_000_000], [6, 4_000_001], [5, 4_000_000])),
    ).toContain("range coordinates[0][0]");
    expect(await rejections(polygon([5, 95], [6, 50], [6, 51], [5, 95]))).toContain(
      "range coordinates[0][0][1]",
    );
  });
  test("degrees as text are no degrees", async () => {
    expect(await rejections(polygon(["5", 50], [6, 50], [6, 51], ["5", 50]))).toContain(
      "not-finite coordinates[0][0][0]",
    );
  });
});
