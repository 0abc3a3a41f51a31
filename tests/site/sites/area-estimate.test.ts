import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { areaEstimate, areaOfShape, type SiteShape, siteAreaEstimate } from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const m = (value: number) => quantity(value, "m");
const size = fc.double({ min: 1, max: 500, noNaN: true });
const reading = { reading: quantity(1, "cm"), meaning: "standard error" } as const;

describe("by hand", () => {
  test("rectangle, triangle, circle, ellipse", () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        const u = 0.01;
        const error = (shape: SiteShape) => areaEstimate(shape, reading).standardError.in("m2");
        close(error({ shape: "rectangle", length: m(a), width: m(b) }), u * Math.hypot(a, b), 1e-6);
        close(error({ shape: "square", side: m(a) }), u * 2 * a, 1e-6);
        close(error({ shape: "triangle", base: m(a), height: m(b) }), (u * Math.hypot(a, b)) / 2, 1e-6);
        close(error({ shape: "circle", diameter: m(a) }), (u * Math.PI * a) / 2, 1e-6);
        close(error({ shape: "circle", circumference: m(a) }), (u * a) / (2 * Math.PI), 1e-6);
        close(
          error({ shape: "ellipse", length: m(a), width: m(b) }),
          (u * Math.PI * Math.hypot(a, b)) / 4,
          1e-6,
        );
      }),
    );
  });

  test("offsets: the widths and the one spacing, also widths of zero", () => {
    const widths = [0, 4, 6, 0].map(m);
    const estimate = areaEstimate({ shape: "offsets", spacing: m(10), widths }, reading);
    // A = d (w0/2 + w1 + w2 + w3/2)
    close(estimate.standardError.in("m2"), 0.01 * Math.hypot(5, 10, 10, 5, 10), 1e-6);
  });

  test("mean radius: each radius has its share", () => {
    const radii = [5, 6, 7, 6].map(m);
    const { standardError } = areaEstimate({ shape: "average radius", radii }, reading);
    close(standardError.in("m2"), (0.01 * 2 * Math.PI * 6) / Math.sqrt(4), 1e-6);
  });

  test("a polygon of two coordinates a corner, the same by changing each", () => {
    const points = [
      [0, 0],
      [60, 0],
      [60, 30],
      [20, 50],
    ] as const;
    const exact = areaEstimate({ shape: "polygon", points, unit: "ft" }, reading).standardError.in("ft2");
    let squares = 0;
    const area = (shape: readonly (readonly [number, number])[]) =>
      areaOfShape({ shape: "polygon", points: shape, unit: "ft" }).in("ft2");
    points.forEach((_, i) => {
      for (const axis of [0, 1] as const) {
        const moved = points.map(([x, y], j): readonly [number, number] =>
          i === j ? (axis === 0 ? [x + 1e-3, y] : [x, y + 1e-3]) : [x, y],
        );
        squares += ((area(moved) - area(points)) / 1e-3) ** 2;
      }
    });
    close(exact, (0.01 / 0.3048) * Math.sqrt(squares), 1e-9);
  });
});

describe("a polygon with a hole", () => {
  const square = (x: number, y: number, side: number) =>
    [
      [x, y],
      [x + side, y],
      [x + side, y + side],
      [x, y + side],
    ] as const;
  const lawn = square(0, 0, 10);
  const pond = square(3, 2, 4);
  // A corner of a square moves the area by half of the other diagonal: side^2 / 2 as a square, four times.
  const squares = 4 * (10 ** 2 / 2) + 4 * (4 ** 2 / 2);

  test.each([
    ["counterclockwise", pond],
    ["clockwise", [...pond].reverse()],
  ])("10 m by 10 m less 4 m by 4 m, the hole %s: every corner counts, whichever ring it is of", (_, hole) => {
    const { value, standardError } = areaEstimate(
      { shape: "polygon", points: lawn, unit: "m", holes: [hole] },
      reading,
    );
    close(value.in("m2"), 84);
    close(standardError.in("m2"), 0.01 * Math.sqrt(squares));
  });

  test("in feet, with a tape read to a centimeter", () => {
    const { standardError } = areaEstimate(
      { shape: "polygon", points: lawn, unit: "ft", holes: [pond] },
      reading,
    );
    close(standardError.in("ft2"), (0.01 / 0.3048) * Math.sqrt(squares));
  });

  test("on a slope of 75 % the ground is 5 to 4 of the plan, and so is the error", () => {
    const { value, standardError } = areaEstimate(
      { shape: "polygon", points: lawn, unit: "m", holes: [pond], slope: "75 %", measured: "plan" },
      reading,
    );
    close(value.in("m2"), 1.25 * 84);
    close(standardError.in("m2"), 1.25 * 0.01 * Math.sqrt(squares));
  });

  test("two holes: the error of the tape is twice its share of what is left", () => {
    const holes = [pond, square(8, 8, 1)];
    const scale = { scale: quantity(1, "%"), meaning: "standard error" } as const;
    const { standardError } = areaEstimate({ shape: "polygon", points: lawn, unit: "m", holes }, scale);
    close(standardError.in("m2"), 0.02 * (100 - 16 - 1));
  });
});

test("the tape itself: 1 % of length is 2 % of area, in every shape", () => {
  const tape = { scale: quantity(1, "%"), meaning: "standard error" } as const;
  for (const shape of [
    { shape: "rectangle", length: m(30), width: m(20) },
    { shape: "sector", radius: m(30), angle: quantity(70, "deg") },
    { shape: "segment", chord: m(30), height: m(5) },
    {
      shape: "polygon",
      points: [
        [0, 0],
        [9, 0],
        [0, 9],
      ],
      unit: "m",
    },
  ] as const) {
    const { value, standardError } = areaEstimate(shape, tape);
    close(standardError.in("m2"), 0.02 * value.in("m2"), 1e-12);
  }
  // limits are divided by the root of 3
  const limits = areaEstimate(
    { shape: "square", side: m(10) },
    { scale: quantity(1, "%"), meaning: "limits" },
  );
  close(limits.standardError.in("m2"), 2 / Math.sqrt(3));
});

test("on a slope the error grows with the area", () => {
  const flat = { shape: "rectangle", length: m(30), width: m(20) } as const;
  const points = [
    [0, 0],
    [30, 0],
    [30, 20],
    [0, 20],
  ] as const;
  const slope = { slope: "75 %", measured: "plan" } as const;
  const level = areaEstimate(flat, reading).standardError.in("m2");
  close(areaEstimate({ ...flat, ...slope }, reading).standardError.in("m2"), 1.25 * level, 1e-6);
  const polygon = areaEstimate({ shape: "polygon", points, unit: "m" }, reading).standardError.in("m2");
  const steep = areaEstimate({ shape: "polygon", points, unit: "m", ...slope }, reading).standardError.in(
    "m2",
  );
  close(steep, 1.25 * polygon);
});

describe("a whole site", () => {
  const lawn: SiteShape = { shape: "rectangle", length: m(60), width: m(20) };
  const bed: SiteShape = { shape: "circle", diameter: quantity(10, "yd") };

  test("readings add as squares over parts of any unit, the tape counts for the net area", () => {
    const one = areaEstimate(lawn, reading).standardError.in("m2");
    const other = areaEstimate(bed, reading).standardError.in("m2");
    const both = siteAreaEstimate({ parts: [lawn], cutOuts: [bed] }, reading);
    close(both.standardError.in("m2"), Math.hypot(one, other), 1e-9);
    const scale = { scale: quantity(1, "%"), meaning: "standard error" } as const;
    const net = siteAreaEstimate({ parts: [lawn], cutOuts: [bed] }, scale);
    close(net.standardError.in("m2"), 0.02 * net.value.in("m2"));
  });

  test("refusals", () => {
    const known: SiteShape = { shape: "measured", area: { value: 3, unit: "acre" } };
    expect(problemsOf(() => areaEstimate(known, reading))[0]?.expected).toContain("statedEstimate");
    expect(complaints(() => siteAreaEstimate({ parts: [lawn, known] }, reading))).toEqual(["range parts[1]"]);
    expect(complaints(untyped(areaEstimate, lawn, { meaning: "limits" }))).toEqual(["missing tape.reading"]);
    expect(complaints(untyped(areaEstimate, lawn, { reading: m(1), scale: quantity(30, "%") }))).toEqual([
      "missing tape.meaning",
      "range tape.scale",
    ]);
    expect(complaints(untyped(areaEstimate, { shape: "rectangle", length: m(1) }, { readng: m(1) }))).toEqual(
      ["type tape.readng", "missing shape.width"],
    );
  });
});
