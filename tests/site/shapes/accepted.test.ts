// What formulas take beside the plainest input: treated areas, every length, every field of a shape.
import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  areaOfShape,
  circleDiameter,
  layerMaterial,
  polygonArea,
  rectangleLength,
  squareSide,
  tankDepth,
} from "../../../src/site/index.js";
import { complaints } from "../../errors.js";
import { close } from "../helpers.js";

const ft = (value: number) => quantity(value, "ft");

test("a treated area is an area: 14,400 sq ft are 120 ft square, pi / 4 a round of 1 m", () => {
  close(squareSide(quantity(14_400, "ft2", "treated")).in("ft"), 120);
  close(circleDiameter(quantity(Math.PI / 4, "m2", "treated")).in("m"), 1);
  const treated = { area: quantity(1000, "ft2", "treated"), depth: quantity(0.25, "in") };
  close(layerMaterial(treated).volume.in("ft3"), 1000 / 48);
});

test("the other side in the measure of the one that is given: nautical miles give feet", () => {
  const side = (width: Parameters<typeof rectangleLength>[0]["width"]) =>
    rectangleLength({ area: quantity(1852, "m2"), width });
  expect(side(quantity(1, "nmi")).unit).toBe("ft");
  close(side(quantity(1, "nmi")).in("m"), 1);
  expect(side(quantity(2, "km")).unit).toBe("m");
  expect(side(quantity(2, "yd")).unit).toBe("yd");
});

test("a quadrilateral by its diagonal and both heights: 10 x (3 + 5) / 2", () => {
  const shape = { shape: "quadrilateral", diagonal: ft(10), height1: ft(3), height2: ft(5) } as const;
  close(areaOfShape(shape).in("ft2"), 40);
});

test("an outline is taken for degrees only where all of it lies away from zero", () => {
  const at = (x: number, y: number) =>
    complaints(() =>
      polygonArea(
        [
          [x, y],
          [x + 0.02, y],
          [x + 0.02, y + 0.02],
        ],
        "ft",
      ),
    );
  expect(at(1.1, 50)).toEqual(["range points"]);
  expect(at(-1.2, 50)).toEqual(["range points"]);
  expect(at(0.99, 50)).toEqual([]);
  expect(at(50, 0.99)).toEqual([]);
  expect(at(-1.01, 50)).toEqual([]);
  expect(at(180, 50)).toEqual([]);
});

test("a hole within a hole is refused, whichever comes first and wherever it lies", () => {
  const box = (x: number, y: number, side: number) =>
    [
      [x, y],
      [x + side, y],
      [x + side, y + side],
      [x, y + side],
    ] as const;
  const field = box(0, 0, 100);
  for (const small of [box(12, 12, 4), box(60, 70, 4), box(30, 30, 4)])
    for (const holes of [
      [box(10, 10, 70), small],
      [small, box(10, 10, 70)],
    ])
      expect(complaints(() => polygonArea(field, "ft", { holes }))).toEqual(["conflict holes[1]"]);
});

test("a tank that is full is full to its height, to the last digit", () => {
  for (const height of [0.1, 1, 3.3, 48]) {
    const tank = { shape: "upright cylinder", diameter: ft(3), height: ft(height) } as never;
    const depth = tankDepth(tank, quantity(Math.PI * 2.25 * height, "ft3"));
    close(depth.in("ft"), height, 1e-15);
  }
});
