import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  cuboidVolume,
  cylinderVolume,
  dipTable,
  dipTableText,
  type Tank,
  tankCapacity,
  tankContents,
  tankDepth,
} from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const m = (value: number) => quantity(value, "m");
const size = fc.double({ min: 0.2, max: 20, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Width times length of the water at each height, as an independent reading of the shapes. */
const shapes: readonly (readonly [
  string,
  (a: number, b: number, c: number) => { tank: Tank; height: number; surface: (h: number) => number },
])[] = [
  [
    "box",
    (a, b, c) => ({
      tank: { shape: "box", length: m(a), width: m(b), height: m(c) },
      height: c,
      surface: () => a * b,
    }),
  ],
  [
    "upright cylinder",
    (a, b) => ({
      tank: { shape: "upright cylinder", diameter: m(a), height: m(b) },
      height: b,
      surface: () => (Math.PI * a * a) / 4,
    }),
  ],
  [
    "lying cylinder",
    (a, b) => ({
      tank: { shape: "lying cylinder", diameter: m(a), length: m(b) },
      height: a,
      surface: (h) => 2 * Math.sqrt(Math.max(0, h * (a - h))) * b,
    }),
  ],
  [
    "lying ellipse",
    (a, b, c) => ({
      tank: { shape: "lying ellipse", width: m(a), height: m(b), length: m(c) },
      height: b,
      surface: (h) => (a / b) * 2 * Math.sqrt(Math.max(0, h * (b - h))) * c,
    }),
  ],
  [
    "cone bottom",
    (a, b, c) => ({
      tank: { shape: "cone bottom", diameter: m(a), coneHeight: m(b), height: m(c), outlet: m(a / 10) },
      height: b + c,
      surface: (h) => (Math.PI / 4) * (a * Math.min(1, 0.1 + (0.9 * h) / b)) ** 2,
    }),
  ],
];

/** Integral from 0 to `to`, with the ends stretched: the sides of a lying tank are upright there. */
const integral = (f: (h: number) => number, to: number, top: number): number => {
  const n = 4000;
  let sum = 0;
  const end = Math.acos(1 - (2 * to) / top);
  for (let i = 0; i < n; i++) {
    const t = ((i + 0.5) * end) / n;
    sum += f((top * (1 - Math.cos(t))) / 2) * (top / 2) * Math.sin(t) * (end / n);
  }
  return sum;
};

describe.each(shapes)("%s", (_name, make) => {
  test("contents are the integral of the water surface", () => {
    fc.assert(
      fc.property(size, size, size, share, (a, b, c, at) => {
        const { tank, height, surface } = make(a, b, c);
        const wet = tankContents(tank, m(at * height)).in("m3");
        const whole = tankCapacity(tank).in("m3");
        expect(Math.abs(wet - integral(surface, at * height, height))).toBeLessThan(1e-5 * whole);
      }),
      { numRuns: 40 },
    );
  });

  test("empty is 0, full the capacity; more depth is never less volume; depth and volume invert", () => {
    fc.assert(
      fc.property(size, size, size, share, share, (a, b, c, x, y) => {
        const { tank, height } = make(a, b, c);
        const full = tankCapacity(tank).in("L");
        expect(tankContents(tank, m(0)).value).toBe(0);
        close(tankContents(tank, m(height)).in("L"), full, 1e-12);
        const [low, high] = [Math.min(x, y) * height, Math.max(x, y) * height];
        const [less, more] = [tankContents(tank, m(low)), tankContents(tank, m(high))];
        expect(less.value).toBeLessThanOrEqual(more.value);
        const back = tankContents(tank, tankDepth(tank, more)).in("L");
        expect(Math.abs(back - more.in("L"))).toBeLessThanOrEqual(1e-9 * full);
      }),
    );
  });

  test("the dip table is monotone, ends full, and each row is the contents", () => {
    const { tank, height } = make(2, 1.5, 3);
    const table = dipTable({ tank, step: quantity(7, "cm") });
    const volumes = table.rows.map(({ volume }) => volume.value);
    expect([...volumes].sort((one, other) => one - other)).toEqual(volumes);
    expect(volumes[0]).toBe(0);
    expect(volumes[volumes.length - 1]).toBe(table.capacity.value);
    close(table.rows[table.rows.length - 1]?.depth.in("m") ?? 0, height, 1e-12);
    for (const { depth, volume } of table.rows) {
      close(tankContents(tank, depth).in("L"), volume.in("L"), 1e-9);
    }
  });
});

test("known limits: half a lying tank is half full, a round ellipse is a cylinder", () => {
  const tank = { shape: "lying cylinder", diameter: m(2), length: m(5) } as const;
  close(tankContents(tank, m(1)).in("m3"), (Math.PI * 5) / 2);
  const ellipse = { shape: "lying ellipse", width: m(2), height: m(2), length: m(5) } as const;
  close(tankContents(ellipse, m(0.3)).in("m3"), tankContents(tank, m(0.3)).in("m3"));
  // the depth and the rest of it make a full tank
  const sum = tankContents(tank, m(0.3)).in("m3") + tankContents(tank, m(1.7)).in("m3");
  close(sum, tankCapacity(tank).in("m3"));
  close(
    tankCapacity({ shape: "box", length: m(3), width: m(2), height: m(1) }).in("m3"),
    cuboidVolume({ length: m(3), width: m(2), depth: m(1) }).in("m3"),
  );
  close(
    tankCapacity({ shape: "upright cylinder", diameter: m(3), height: m(2) }).in("m3"),
    cylinderVolume({ diameter: m(3), depth: m(2) }).in("m3"),
  );
  // a cone is a third of its cylinder
  const cone = { shape: "cone bottom", diameter: m(3), coneHeight: m(2), height: m(2) } as const;
  close(tankContents(cone, m(2)).in("m3"), cylinderVolume({ diameter: m(3), depth: m(2) }).in("m3") / 3);
});

test("a depth of next to nothing keeps its digits", () => {
  const tank = { shape: "lying cylinder", diameter: m(2), length: m(1) } as const;
  // a flat segment: 2/3 chord * height, chord 2 sqrt(2 r h)
  const h = 1e-9;
  close(tankContents(tank, m(h)).in("m3"), (2 / 3) * 2 * Math.sqrt(2 * h) * h, 1e-7);
});

describe("units and text", () => {
  const drum = {
    shape: "upright cylinder",
    diameter: quantity(2, "ft"),
    height: quantity(35, "in"),
  } as const;

  test("gallons for feet and inches, litres for metres, or as asked", () => {
    expect(tankCapacity(drum).unit).toBe("gal");
    expect(tankCapacity({ shape: "upright cylinder", diameter: m(1), height: m(1) }).unit).toBe("L");
    const table = dipTable({ tank: drum, step: quantity(10, "in"), unit: "imp gal" });
    expect(table.capacity.unit).toBe("imp gal");
    // 35 in are three steps and a half
    expect(table.rows.map(({ depth }) => depth.value)).toEqual([0, 10, 20, 30, 35]);
  });

  test("text of a table from a file", () => {
    const table = dipTable({ tank: drum, step: quantity(35, "in") });
    expect(dipTableText(JSON.parse(JSON.stringify(table)))).toBe(dipTableText(table));
    // A third of a meter is not 0.33 m: in a square meter it holds 333 L, and 0.33 m 330 L.
    const cube = {
      shape: "box",
      length: quantity(1, "m"),
      width: quantity(1, "m"),
      height: quantity(1, "m"),
    } as const;
    expect(
      dipTableText(dipTable({ tank: cube, step: quantity(0.333, "m") }))
        .split("\n")
        .slice(2, 6),
    ).toEqual(["0.333 m\t333 L", "0.666 m\t666 L", "0.999 m\t999 L", "1 m\t1000 L"]);
    expect(dipTableText(table).split("\n")).toEqual([
      "Depth\tVolume",
      "0 in\t0 gal",
      "35 in\t68.5 gal",
      "Full: 68.5 gal",
    ]);
    expect(complaints(untyped(dipTableText, { ...table, rows: [{ depth: 3 }] }))).toEqual([
      "type table.rows[0].depth",
    ]);
    expect(complaints(untyped(dipTableText, {}))).toEqual(["missing table.capacity", "missing table.rows"]);
  });
});

test("refusals", () => {
  const tank = { shape: "lying cylinder", diameter: m(2), length: m(5) } as const;
  expect(complaints(() => tankContents(tank, m(2.1)))).toEqual(["range depth"]);
  expect(complaints(() => tankContents(tank, m(-1)))).toEqual(["range depth"]);
  expect(complaints(() => tankDepth(tank, quantity(20, "m3")))).toEqual(["range volume"]);
  expect(tankDepth(tank, quantity(0, "m3")).value).toBe(0);
  expect(complaints(untyped(tankCapacity, { shape: "lying cylnder", diameter: m(2) }))).toEqual([
    "type tank.shape",
  ]);
  expect(problemsOf(untyped(tankCapacity, { shape: "lying cylnder" }))[0]?.suggestion).toBe("lying cylinder");
  expect(complaints(untyped(tankCapacity, { shape: "box", length: m(1), widht: m(1), height: 3 }))).toEqual([
    "type tank.widht",
    "missing tank.width",
    "type tank.height",
  ]);
  expect(
    complaints(
      untyped(tankCapacity, {
        shape: "cone bottom",
        diameter: m(1),
        coneHeight: m(1),
        height: m(1),
        outlet: m(1),
      }),
    ),
  ).toEqual(["range tank.outlet"]);
  expect(complaints(() => dipTable({ tank, step: m(3) }))).toEqual(["range step"]);
  expect(complaints(() => dipTable({ tank, step: quantity(0.1, "mm") }))).toEqual(["range step"]);
  expect(complaints(untyped(dipTable, { tank, step: m(1), unit: "barrel" }))).toEqual(["unit/unknown unit"]);
});
