import fc from "fast-check";
import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { averageRadiusArea, circleArea, ellipseArea } from "../../../src/site/index.js";
import { complaints } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const m = (value: number) => quantity(value, "m");
const radius = fc.double({ min: 0.1, max: 100, noNaN: true });
const rules = ["mean radius", "mean square"] as const;

test.each(rules)("%s: a circle from its middle is exact", (rule) => {
  fc.assert(
    fc.property(radius, fc.integer({ min: 3, max: 36 }), (r, n) => {
      const area = averageRadiusArea({ radii: Array(n).fill(m(r)), rule });
      close(area.in("m2"), circleArea({ radius: m(r) }).in("m2"));
    }),
  );
});

test("the mean square is never less than the mean radius", () => {
  fc.assert(
    fc.property(fc.array(radius, { minLength: 3, maxLength: 36 }), (values) => {
      const radii = values.map(m);
      const [low, high] = rules.map((rule) => averageRadiusArea({ radii, rule }).in("m2")) as [
        number,
        number,
      ];
      expect(high).toBeGreaterThanOrEqual(low * (1 - 1e-12));
    }),
  );
});

test("an ellipse twice as long as wide: the mean square comes near, the mean radius falls short", () => {
  const [a, b] = [30, 15];
  const radii = Array.from({ length: 36 }, (_, i) => {
    const angle = (i * 10 * Math.PI) / 180;
    return m((a * b) / Math.hypot(b * Math.cos(angle), a * Math.sin(angle)));
  });
  const exact = ellipseArea({ length: m(2 * a), width: m(2 * b) }).in("m2");
  close(averageRadiusArea({ radii, rule: "mean square" }).in("m2"), exact, 1e-4);
  expect(averageRadiusArea({ radii }).in("m2")).toBeLessThan(0.97 * exact);
});

test.each(rules)("%s: scale, and feet against metres", (rule) => {
  fc.assert(
    fc.property(fc.array(radius, { minLength: 3, maxLength: 16 }), radius, (values, k) => {
      const area = averageRadiusArea({ radii: values.map(m), rule }).in("m2");
      close(averageRadiusArea({ radii: values.map((r) => m(k * r)), rule }).in("m2"), k * k * area, 1e-11);
      const feet = values.map((r) => quantity(r / 0.3048, "ft"));
      close(averageRadiusArea({ radii: feet, rule }).in("m2"), area, 1e-11);
    }),
  );
});

test("refusals", () => {
  expect(complaints(() => averageRadiusArea({ radii: [m(1), m(2)] }))).toEqual(["range radii"]);
  expect(complaints(untyped(averageRadiusArea, { radii: [m(1), m(0), undefined], rule: "median" }))).toEqual([
    "type rule",
    "range radii[1]",
    "missing radii[2]",
  ]);
  expect(complaints(untyped(averageRadiusArea, {}))).toEqual(["missing radii"]);
});
