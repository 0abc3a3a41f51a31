import fc from "fast-check";
import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  circleArea,
  coverVolume,
  cuboidVolume,
  cylinderVolume,
  rectangleArea,
} from "../../../src/site/index.js";
import { complaints } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const ft = (value: number) => quantity(value, "ft");
const size = fc.double({ min: 0.01, max: 1000, noNaN: true });

test("the unit is the cube of the unit of length", () => {
  const box = (unit: "ft" | "yd" | "m" | "cm" | "in") =>
    cuboidVolume({ length: quantity(2, unit), width: quantity(3, unit), depth: quantity(4, unit) });
  for (const [unit, cube] of [
    ["ft", "ft3"],
    ["yd", "yd3"],
    ["m", "m3"],
    ["cm", "mL"],
    ["in", "in3"],
  ] as const) {
    expect(box(unit).toJSON()).toEqual({ value: 24, unit: cube, of: "none" });
  }
  // 1 ft3 is 1728 in3, a gallon 231 of them
  close(cuboidVolume({ length: ft(1), width: ft(1), depth: ft(1) }).in("gal"), 1728 / 231);
});

test("a layer is a box, a round tank a circle times its depth", () => {
  fc.assert(
    fc.property(size, size, size, (length, width, depth) => {
      const area = rectangleArea({ length: ft(length), width: ft(width) });
      const layer = coverVolume({ area, depth: ft(depth) });
      close(
        layer.in("ft3"),
        cuboidVolume({ length: ft(length), width: ft(width), depth: ft(depth) }).in("ft3"),
      );
      const round = cylinderVolume({ diameter: ft(length), depth: ft(depth) });
      close(round.in("ft3"), circleArea({ diameter: ft(length) }).in("ft2") * depth);
    }),
  );
});

test("cover: yards for customary areas, cubic metres for metric ones", () => {
  expect(coverVolume({ area: quantity(1000, "ft2"), depth: quantity(0.25, "in") }).unit).toBe("yd3");
  // an acre to a foot is an acre-foot
  close(coverVolume({ area: quantity(1, "acre"), depth: ft(1) }).in("acre-ft"), 1);
  expect(coverVolume({ area: quantity(1, "100 m2"), depth: quantity(1, "cm") }).toJSON()).toEqual({
    value: 1,
    unit: "m3",
    of: "none",
  });
  for (const unit of ["ft2", "in2", "yd2", "1000 ft2", "acre"] as const) {
    expect(coverVolume({ area: quantity(1, unit), depth: quantity(1, "mm") }).unit).toBe("yd3");
  }
  for (const unit of ["m2", "cm2", "100 m2", "ha"] as const) {
    expect(coverVolume({ area: quantity(1, unit), depth: quantity(1, "in") }).unit).toBe("m3");
  }
});

test("refusals", () => {
  expect(complaints(untyped(cuboidVolume, { length: ft(1), depth: ft(0) }))).toEqual([
    "missing width",
    "range depth",
  ]);
  expect(complaints(untyped(cylinderVolume, { diameter: quantity(1, "gal"), depth: ft(1) }))).toEqual([
    "unit/mismatch diameter",
  ]);
  expect(complaints(untyped(coverVolume, { area: ft(1) }))).toEqual(["unit/mismatch area", "missing depth"]);
});
