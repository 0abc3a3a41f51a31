import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { interpolate } from "../../../src/numeric/index.js";
import { complaint } from "../../errors.js";

const tables = fc
  .uniqueArray(fc.double({ min: -1e6, max: 1e6, noNaN: true }), {
    minLength: 2,
    maxLength: 12,
    comparator: "SameValueZero",
  })
  .chain((xs) =>
    fc.record({
      xs: fc.constant([...xs].sort((a, b) => a - b)),
      ys: fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), {
        minLength: xs.length,
        maxLength: xs.length,
      }),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
  );

describe("interpolate", () => {
  test("hits every point of the table exactly", () => {
    fc.assert(
      fc.property(tables, ({ xs, ys }) => {
        for (const [i, x] of xs.entries()) expect(interpolate({ xs, ys, x })).toBe((ys[i] as number) + 0);
      }),
    );
  });

  test("never leaves the two values between which it lies", () => {
    fc.assert(
      fc.property(tables, ({ xs, ys, share }) => {
        const [x0, x1, y0, y1] = [xs[0], xs[1], ys[0], ys[1]] as [number, number, number, number];
        const y = interpolate({ xs, ys, x: Math.min(x1, x0 + share * (x1 - x0)) });
        expect(y >= Math.min(y0, y1) && y <= Math.max(y0, y1)).toBe(true);
      }),
    );
  });

  test("rises where the table rises", () => {
    fc.assert(
      fc.property(tables, fc.double({ min: 0, max: 1, noNaN: true }), ({ xs, ys, share }, other) => {
        const rising = [...ys].sort((a, b) => a - b);
        const [low, high] = [xs[0] as number, xs[xs.length - 1] as number];
        const at = (s: number): number => Math.min(high, low + s * (high - low));
        const [a, b] = [Math.min(share, other), Math.max(share, other)];
        expect(interpolate({ xs, ys: rising, x: at(a) })).toBeLessThanOrEqual(
          interpolate({ xs, ys: rising, x: at(b) }),
        );
      }),
    );
  });

  test("does not go beyond the table unless told to", () => {
    const table = { xs: [1, 2], ys: [10, 20] };
    expect(complaint(() => interpolate({ ...table, x: 2.0001 }))).toBe("range x");
    expect(complaint(() => interpolate({ ...table, x: 0.9999 }))).toBe("range x");
    expect(interpolate({ ...table, x: 3, outside: "hold" })).toBe(20);
    expect(interpolate({ ...table, x: 0, outside: "hold" })).toBe(10);
    expect(complaint(() => interpolate({ ...table, x: 3, outside: "yes" as never }))).toBe("type outside");
  });

  test("refuses a table that is none", () => {
    expect(complaint(() => interpolate({ xs: [1, 1], ys: [1, 2], x: 1 }))).toBe("conflict xs[1]");
    expect(complaint(() => interpolate({ xs: [1, 2], ys: [1], x: 1 }))).toBe("conflict ys");
    expect(complaint(() => interpolate({ xs: [], ys: [], x: 1 }))).toBe("missing xs");
    expect(complaint(() => interpolate({ xs: [1], ys: [Number.NaN], x: 1 }))).toBe("not-finite ys[0]");
  });
});

test("differences too large to be a number are taken in parts", () => {
  const far = 1.5e308;
  expect(interpolate({ xs: [-far, far], ys: [0, 1], x: far / 2 })).toBe(0.75);
  expect(interpolate({ xs: [0, 1], ys: [-far, far], x: 0.75 })).toBe(far / 2);
  expect(interpolate({ xs: [0, 1], ys: [far, -far], x: 0.75 })).toBe(-far / 2);
});
