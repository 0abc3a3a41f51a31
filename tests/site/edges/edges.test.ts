import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  circleArea,
  passesAround,
  perimeter,
  polygonArea,
  rectangleArea,
  reducedBuffer,
} from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const m = (value: number) => quantity(value, "m");
const ft = (value: number) => quantity(value, "ft");
const percent = (value: number) => quantity(value, "%");
const size = fc.double({ min: 1, max: 500, noNaN: true });

describe("perimeter", () => {
  test("an ellipse by its integral", () => {
    fc.assert(
      fc.property(size, size, (length, width) => {
        const n = 2000;
        let sum = 0;
        for (let i = 0; i < n; i++) {
          const t = ((i + 0.5) * 2 * Math.PI) / n;
          sum += Math.hypot((length / 2) * Math.sin(t), (width / 2) * Math.cos(t)) * ((2 * Math.PI) / n);
        }
        // flat ellipses need more than 2000 steps
        fc.pre(Math.max(length, width) < 20 * Math.min(length, width));
        close(perimeter({ shape: "ellipse", length: m(length), width: m(width) }).in("m"), sum, 1e-9);
      }),
    );
    close(perimeter({ shape: "ellipse", length: m(4), width: m(4) }).in("m"), 4 * Math.PI);
  });

  test("shapes that are one another's", () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        const rectangle = perimeter({ shape: "rectangle", length: m(a), width: m(b) }).in("m");
        const points = [
          [0, 0],
          [a, 0],
          [a, b],
          [0, b],
        ] as const;
        close(perimeter({ shape: "polygon", points, unit: "m" }).in("m"), rectangle);
        close(perimeter({ shape: "square", side: m(a) }).in("m"), 4 * a);
        const sides = { a: m(a), b: m(b), c: m(Math.hypot(a, b)) };
        close(perimeter({ shape: "triangle from sides", ...sides }).in("m"), a + b + Math.hypot(a, b), 1e-9);
        const circle = perimeter({ shape: "circle", diameter: m(b) }).in("m");
        close(perimeter({ shape: "stadium", straight: m(a), width: m(b) }).in("m"), circle + 2 * a);
        const ring = perimeter({ shape: "annulus", innerDiameter: m(b), width: m(a) }).in("m");
        close(ring, circle + perimeter({ shape: "circle", diameter: m(b + 2 * a) }).in("m"));
        close(perimeter({ shape: "circle", circumference: m(a) }).in("m"), a);
      }),
    );
  });

  test("refusals", () => {
    expect(complaints(untyped(perimeter, { shape: "offsets" }))).toEqual(["type shape.shape"]);
    expect(problemsOf(untyped(perimeter, { shape: "offsets" }))[0]?.expected).toContain("polygon");
    expect(complaints(untyped(perimeter, { shape: "circle" }))).toEqual(["missing shape.radius"]);
    expect(complaints(untyped(perimeter, { shape: "polygon", points: [], unit: 3 }))).toEqual([
      "type shape.unit",
    ]);
    expect(complaints(untyped(perimeter))).toEqual(["missing shape"]);
  });
});

describe("passes around", () => {
  test("a rectangle as its header strips: each round is 8 swaths shorter", () => {
    const plan = passesAround({
      outline: { shape: "rectangle", length: m(60), width: m(40) },
      swath: m(3),
      passes: 3,
    });
    plan.passes.forEach((pass, k) => {
      close(pass.in("m"), 2 * (60 + 40) - 8 * (k + 0.5) * 3);
    });
    close(plan.inside.in("m2"), (60 - 18) * (40 - 18));
  });

  test("covered and inside make the whole; what is driven times the swath is what is covered", () => {
    fc.assert(
      fc.property(size, size, fc.integer({ min: 1, max: 5 }), (a, b, passes) => {
        const swath = m(Math.min(a, b) / 12);
        const whole = rectangleArea({ length: m(a), width: m(b) }).in("m2");
        for (const outline of [
          { shape: "rectangle", length: m(a), width: m(b) },
          {
            shape: "polygon",
            points: [
              [0, 0],
              [a, 0],
              [a, b],
              [0, b],
            ],
            unit: "m",
          },
        ] as const) {
          const plan = passesAround({ outline, swath, passes });
          close(plan.covered.in("m2") + plan.inside.in("m2"), whole, 1e-9);
          // straight edges and square corners: the middle of a strip is the mean of its edges
          close(plan.distance.in("m") * swath.in("m"), plan.covered.in("m2"), 1e-9);
        }
        const round = passesAround({
          outline: { shape: "circle", diameter: m(a) },
          swath: m(a / 12),
          passes,
        });
        close(round.covered.in("m2") + round.inside.in("m2"), circleArea({ diameter: m(a) }).in("m2"), 1e-9);
        close(round.distance.in("m") * (a / 12), round.covered.in("m2"), 1e-9);
      }),
    );
  });

  test("edges that are used up are left out", () => {
    // a rectangle with a small bevel: after some rounds it is a plain rectangle
    const points = [
      [0, 0],
      [98, 0],
      [100, 2],
      [100, 60],
      [0, 60],
    ] as const;
    const plan = passesAround({ outline: { shape: "polygon", points, unit: "m" }, swath: m(10), passes: 2 });
    close(plan.inside.in("m2"), 60 * 20);
    close(plan.covered.in("m2"), polygonArea(points, "m").in("m2") - 1200, 1e-12);
    close(plan.passes[1]?.in("m") ?? 0, 2 * (70 + 30), 1e-12);
  });

  test("all of it covered leaves 0; one more round does not fit", () => {
    const outline = { shape: "square", side: m(40) } as const;
    const all = passesAround({ outline, swath: m(10), passes: 2 });
    expect(all.inside.value).toBe(0);
    expect(complaints(() => passesAround({ outline, swath: m(10), passes: 3 }))).toEqual([
      "infeasible passes",
    ]);
    expect(problemsOf(() => passesAround({ outline, swath: m(10), passes: 3 }))[0]?.expected).toContain(
      "at most 2",
    );
  });

  test("refusals", () => {
    const dented = [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 2],
      [0, 10],
    ] as const;
    expect(
      complaints(() =>
        passesAround({ outline: { shape: "polygon", points: dented, unit: "m" }, swath: m(1), passes: 1 }),
      ),
    ).toEqual(["range outline.points"]);
    expect(
      complaints(untyped(passesAround, { outline: { shape: "ellipse" }, swath: m(1), passes: 1.5 })),
    ).toEqual(["type outline.shape", "range passes"]);
  });
});

describe("a buffer after reductions", () => {
  const base = { distance: ft(100), rule: "sum" } as const;

  test("sum and in turn; the floor holds", () => {
    const reductions = [percent(50), percent(30)];
    close(reducedBuffer({ ...base, reductions }).distance.in("ft"), 20);
    close(reducedBuffer({ ...base, reductions, rule: "in turn" }).distance.in("ft"), 35);
    const held = reducedBuffer({ ...base, reductions, floor: quantity(10, "m") });
    close(held.distance.in("m"), 10);
    expect(held.atFloor).toBe(true);
    expect(reducedBuffer({ ...base, reductions: [] }).distance.in("ft")).toBe(100);
  });

  test("a sum of 100 % and more leaves nothing, never less", () => {
    const all = reducedBuffer({ ...base, reductions: [percent(70), percent(60)] });
    expect([all.distance.value, all.reduction.in("%"), all.atFloor]).toEqual([0, 100, false]);
    // 0.1 + 0.2 + 0.7 is not quite 1
    expect(reducedBuffer({ ...base, reductions: [10, 20, 70].map(percent) }).distance.value).toBe(0);
  });

  test("more reductions are never more distance", () => {
    const share = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(share, { maxLength: 5 }),
        share,
        fc.constantFrom("sum", "in turn"),
        (list, one, rule) => {
          const input = { distance: ft(100), rule: rule as "sum", floor: ft(5) };
          const less = reducedBuffer({ ...input, reductions: [...list, one].map(percent) }).distance.in("ft");
          const more = reducedBuffer({ ...input, reductions: list.map(percent) }).distance.in("ft");
          expect(less).toBeLessThanOrEqual(more + 1e-9);
          expect(less).toBeGreaterThanOrEqual(5);
        },
      ),
    );
  });

  test("the label is named; refusals", () => {
    expect(reducedBuffer({ ...base, reductions: [] }).findings[0]).toMatchObject({
      code: "buffer-by-label",
      params: { floor: "none stated" },
    });
    expect(
      complaints(untyped(reducedBuffer, { distance: ft(50), reductions: [50, percent(-1), percent(101)] })),
    ).toEqual(["type reductions[0]", "range reductions[1]", "range reductions[2]", "missing rule"]);
    expect(complaints(() => reducedBuffer({ ...base, reductions: [], floor: ft(101) }))).toEqual([
      "range floor",
    ]);
  });
});
