import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { offsetArea, polygonArea } from "../../../src/site/index.js";
import { complaints } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const m = (value: number) => quantity(value, "m");
const all = (values: readonly number[]) => values.map(m);
const width = fc.double({ min: 0.1, max: 100, noNaN: true });
const spacing = fc.double({ min: 0.1, max: 50, noNaN: true });
const rules = ["trapezoidal", "simpson", "average ordinate"] as const;

describe("laws", () => {
  test.each(rules)("%s: a strip of one width is a rectangle", (rule) => {
    fc.assert(
      fc.property(width, spacing, fc.integer({ min: 3, max: 20 }), (w, d, n) => {
        const area = offsetArea({ spacing: m(d), widths: all(Array(n).fill(w)), rule });
        close(area.in("m2"), w * d * (n - 1));
      }),
    );
  });

  test("Simpson is exact for cubics, over an even number of strips", () => {
    const coefficient = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(coefficient, coefficient, coefficient, fc.double({ min: 0.1, max: 2, noNaN: true })),
        spacing,
        fc.integer({ min: 1, max: 8 }),
        ([a, b, c, e], d, pairs) => {
          const cubic = (x: number): number => a * x ** 3 + b * x ** 2 + c * x + e;
          const end = 2 * pairs * d;
          const integral = (a * end ** 4) / 4 + (b * end ** 3) / 3 + (c * end ** 2) / 2 + e * end;
          const widths = all(Array.from({ length: 2 * pairs + 1 }, (_, i) => cubic(i * d)));
          close(offsetArea({ spacing: m(d), widths, rule: "simpson" }).in("m2"), integral, 1e-11);
        },
      ),
    );
  });

  test("Simpson over an odd number of strips: the last is a trapezoid", () => {
    // x^2 from 0 to 2 is 8/3; the strip from 2 to 3 as a trapezoid is (4 + 9) / 2
    const area = offsetArea({ spacing: m(1), widths: all([0, 1, 4, 9]), rule: "simpson" });
    close(area.in("m2"), 8 / 3 + 6.5);
  });

  test("trapezoidal is exact for straight edges: the polygon of the same corners", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(width, spacing), { minLength: 3, maxLength: 12 }), (pairs) => {
        const widths = pairs.map(([w]) => w);
        const gaps = pairs.slice(1).map(([, d]) => d);
        const along = [0];
        for (const d of gaps) along.push((along[along.length - 1] as number) + d);
        const top = along.map((x, i) => [x, widths[i] as number] as const).reverse();
        const outline = polygonArea([[0, 0], [along[along.length - 1] as number, 0], ...top], "m");
        close(offsetArea({ spacing: all(gaps), widths: all(widths) }).in("m2"), outline.in("m2"), 1e-10);
      }),
    );
  });

  test("equal spacings in a list are one spacing", () => {
    for (const rule of rules) {
      const widths = all([1, 5, 4, 2, 0]);
      expect(offsetArea({ spacing: all([3, 3, 3, 3]), widths, rule }).toJSON()).toEqual(
        offsetArea({ spacing: m(3), widths, rule }).toJSON(),
      );
    }
  });

  test.each(rules)("%s: left and right are added", (rule) => {
    fc.assert(
      fc.property(fc.array(fc.tuple(width, width), { minLength: 3, maxLength: 12 }), spacing, (pairs, d) => {
        const [left, right] = [all(pairs.map(([w]) => w)), all(pairs.map(([, w]) => w))];
        const both = offsetArea({ spacing: m(d), left, right, rule }).in("m2");
        const one = offsetArea({ spacing: m(d), widths: left, rule }).in("m2");
        const other = offsetArea({ spacing: m(d), widths: right, rule }).in("m2");
        close(both, one + other, 1e-11);
      }),
    );
  });

  test.each(rules)("%s: scale, and feet against metres", (rule) => {
    fc.assert(
      fc.property(fc.array(width, { minLength: 3, maxLength: 12 }), spacing, spacing, (widths, d, k) => {
        const area = offsetArea({ spacing: m(d), widths: all(widths), rule }).in("m2");
        close(
          offsetArea({ spacing: m(k * d), widths: all(widths.map((w) => k * w)), rule }).in("m2"),
          k * k * area,
          1e-11,
        );
        const feet = widths.map((w) => quantity(w / 0.3048, "ft"));
        close(offsetArea({ spacing: quantity(d / 0.3048, "ft"), widths: feet, rule }).in("m2"), area, 1e-11);
      }),
    );
  });
});

test("not halving the ends gives too much, as in a published field", () => {
  // site-015: the sum of the widths times the spacing is 395.0, the area 378.0
  const widths = [2.5, 3.5, 5, 4.6, 3.2, 2.4, 5.6, 6.2, 3.8, 1.8, 0.9];
  expect(offsetArea({ spacing: m(10), widths: all(widths) }).in("m2")).toBeCloseTo(378, 10);
  expect(offsetArea({ spacing: m(10), widths: all([0, ...widths, 0]) }).in("m2")).toBeCloseTo(395, 10);
});

test("the default is trapezoidal, the unit that of the spacing", () => {
  expect(offsetArea({ spacing: quantity(10, "ft"), widths: all([0.3048, 0.3048]) }).toJSON()).toEqual({
    value: 10,
    unit: "ft2",
    of: "none",
  });
});

describe("refusals", () => {
  test("every width that is not right is named", () => {
    expect(
      complaints(
        untyped(offsetArea, { spacing: m(0), widths: [m(1), m(-2), quantity(3, "lb")], rule: "round" }),
      ),
    ).toEqual(["type rule", "range spacing", "range widths[1]", "unit/mismatch widths[2]"]);
    expect(complaints(untyped(offsetArea, {}))).toEqual(["missing spacing", "missing widths"]);
    expect(complaints(untyped(offsetArea, { spacing: m(1), widths: m(3) }))).toEqual(["type widths"]);
    const hole = [m(1), m(2), m(3)];
    delete hole[1];
    expect(complaints(untyped(offsetArea, { spacing: m(1), widths: hole }))).toEqual(["missing widths[1]"]);
    expect(complaints(untyped(offsetArea, { spacing: [m(1), m(-1)], widths: all([1, 2, 3]) }))).toEqual([
      "range spacing[1]",
    ]);
  });

  test("too few widths, or none above zero", () => {
    expect(complaints(() => offsetArea({ spacing: all([1, 0]), widths: all([1, 2, 3]) }))).toEqual([
      "range spacing[1]",
    ]);
    expect(complaints(() => offsetArea({ spacing: m(1), widths: all([1]) }))).toEqual(["range widths"]);
    expect(complaints(() => offsetArea({ spacing: m(1), widths: all([1, 2]), rule: "simpson" }))).toEqual([
      "range widths",
    ]);
    expect(complaints(() => offsetArea({ spacing: m(1), widths: all([0, 0, 0]) }))).toEqual(["range widths"]);
    expect(complaints(() => offsetArea({ spacing: m(1), left: all([0, 0]), right: all([0, 0]) }))).toEqual([
      "range left",
    ]);
  });

  test("lists of different length", () => {
    expect(complaints(() => offsetArea({ spacing: all([1, 1]), widths: all([1, 2]) }))).toEqual([
      "conflict spacing",
    ]);
    expect(complaints(() => offsetArea({ spacing: m(1), left: all([1, 2, 3]), right: all([1, 2]) }))).toEqual(
      ["conflict right"],
    );
    expect(complaints(untyped(offsetArea, { spacing: m(1), left: all([1, 2]) }))).toEqual(["missing right"]);
    expect(
      complaints(untyped(offsetArea, { spacing: m(1), widths: all([1, 2]), left: all([1, 2]) })),
    ).toEqual(["conflict widths"]);
  });

  test("unequal spacing with a rule that needs it equal", () => {
    for (const rule of ["simpson", "average ordinate"] as const) {
      expect(complaints(() => offsetArea({ spacing: all([1, 2]), widths: all([1, 2, 3]), rule }))).toEqual([
        "conflict spacing",
      ]);
    }
  });
});
