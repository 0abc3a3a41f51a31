import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { coverOfPatches, diameterForCover, type PlantingGrid } from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

const mm = (value: number) => quantity(value, "mm");

/** A grid, with the two vectors between its points. */
interface Lattice {
  readonly name: string;
  readonly grid: (spacing: number) => PlantingGrid;
  readonly a: readonly [number, number];
  readonly b: readonly [number, number];
}

const lattices: readonly Lattice[] = [
  { name: "square", grid: (s) => ({ pattern: "square", spacing: mm(s) }), a: [1, 0], b: [0, 1] },
  {
    name: "triangular",
    grid: (s) => ({ pattern: "triangular", spacing: mm(s) }),
    a: [1, 0],
    b: [0.5, Math.sqrt(3) / 2],
  },
  {
    name: "rectangular, wide rows",
    grid: (s) => ({ pattern: "rectangular", spacing: mm(s), rowSpacing: mm(2.5 * s) }),
    a: [1, 0],
    b: [0, 2.5],
  },
  {
    name: "rectangular, narrow rows",
    grid: (s) => ({ pattern: "rectangular", spacing: mm(s), rowSpacing: mm(0.6 * s) }),
    a: [1, 0],
    b: [0, 0.6],
  },
];

/** From each point of a fine net over one cell to the nearest point of the grid, squared: nothing of the closed form in it. */
const netDistances = ({ a, b }: Lattice, n = 240): readonly number[] =>
  Array.from({ length: n * n }, (_, at) => {
    const [u, v] = [(Math.floor(at / n) + 0.5) / n, ((at % n) + 0.5) / n];
    const [x, y] = [u * a[0] + v * b[0], u * a[1] + v * b[1]];
    let least = Number.POSITIVE_INFINITY;
    // No nearest point lies further than a corner of the cell: 3 rows, where they are closest.
    for (let p = -3; p <= 3; p++) {
      for (let q = -3; q <= 3; q++) {
        const [dx, dy] = [x - p * a[0] - q * b[0], y - p * a[1] - q * b[1]];
        least = Math.min(least, dx * dx + dy * dy);
      }
    }
    return least;
  });

const cover = (lattice: Lattice, spacing: number, diameter: number): number =>
  coverOfPatches({ ...lattice.grid(spacing), diameter: mm(diameter) }).in("%");

describe.each(lattices)("cover of a $name pattern", (lattice) => {
  test("agrees with counting the ground, before, in and after the overlap", () => {
    const net = netDistances(lattice);
    for (const r of [0.2, 0.35, 0.45, 0.52, 0.56, 0.6, 0.68, 0.75, 1, 1.3, 1.4]) {
      const expected = (100 * net.filter((squared) => squared <= r * r).length) / net.length;
      expect(Math.abs(cover(lattice, 1000, 2000 * r) - expected), `r = ${r}`).toBeLessThan(0.35);
    }
  });

  test("grows with the patches, falls with the spacing, and only their ratio counts", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (spacing, x, more) => {
          const now = cover(lattice, spacing, x * spacing);
          expect(now).toBeGreaterThanOrEqual(0);
          expect(now).toBeLessThanOrEqual(100);
          expect(cover(lattice, spacing, x * spacing * more)).toBeGreaterThanOrEqual(now - 1e-10);
          expect(cover(lattice, spacing * more, x * spacing)).toBeLessThanOrEqual(now + 1e-10);
          expect(cover(lattice, spacing * 7, x * spacing * 7)).toBeCloseTo(now, 9);
        },
      ),
    );
  });

  test("leads back from the cover to the diameter", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 99.9, noNaN: true }), (percent) => {
        const wide = diameterForCover({ ...lattice.grid(300), cover: quantity(percent, "%") });
        expect(coverOfPatches({ ...lattice.grid(300), diameter: wide }).in("%")).toBeCloseTo(percent, 8);
      }),
    );
    const full = diameterForCover({ ...lattice.grid(300), cover: quantity(100, "%") }).in("mm");
    expect(cover(lattice, 300, full)).toBe(100);
    expect(cover(lattice, 300, full * 0.99)).toBeLessThan(100);
  });
});

describe("the closed forms in the doc comment", () => {
  test("are what is computed", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5001, max: 0.7, noNaN: true }), (x) => {
        const square = Math.PI * x * x - 4 * x * x * Math.acos(1 / (2 * x)) + Math.sqrt(4 * x * x - 1);
        expect(cover(lattices[0] as Lattice, 1000, 2000 * x)).toBeCloseTo(100 * square, 7);
      }),
    );
    fc.assert(
      fc.property(fc.double({ min: 0.5001, max: 0.5773, noNaN: true }), (x) => {
        const overlap = -6 * x * x * Math.acos(1 / (2 * x)) + 1.5 * Math.sqrt(4 * x * x - 1);
        const triangular = (Math.PI * x * x + overlap) / (Math.sqrt(3) / 2);
        expect(cover(lattices[1] as Lattice, 1000, 2000 * x)).toBeCloseTo(100 * triangular, 7);
      }),
    );
  });
  test("a rectangle with equal sides is a square", () => {
    const grid = { pattern: "rectangular", spacing: mm(300), rowSpacing: mm(300) } as const;
    expect(coverOfPatches({ ...grid, diameter: mm(370) }).in("%")).toBeCloseTo(
      coverOfPatches({ pattern: "square", spacing: mm(300), diameter: mm(370) }).in("%"),
      12,
    );
  });
});

describe("bad input", () => {
  test("is told with its path", () => {
    const grid = { pattern: "square", spacing: mm(300) } as const;
    expect(complaints(() => coverOfPatches({ ...grid, spacing: mm(0), diameter: mm(-1) }))).toEqual([
      "range spacing",
      "range diameter",
    ]);
    expect(complaints(() => coverOfPatches({ ...grid, rowSpacing: mm(200), diameter: mm(9) }))).toEqual([
      "conflict rowSpacing",
    ]);
    expect(complaints(() => diameterForCover({ ...grid, cover: quantity(101, "%") }))).toEqual([
      "range cover",
    ]);
    expect(complaints(() => diameterForCover({ ...grid, cover: quantity(0, "%") }))).toEqual(["range cover"]);
    expect(complaints(() => coverOfPatches({ pattern: "hexagonal" } as never))).toEqual([
      "type pattern",
      "missing spacing",
      "missing diameter",
    ]);
  });
});
