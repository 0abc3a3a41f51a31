import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { cellsToCover, coverOverTime } from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

/** Every cell against every covered cell. */
const byPairs = (covered: readonly number[], columns: number): number[] =>
  covered.map((_, i) => {
    let least = Infinity;
    covered.forEach((one, j) => {
      if (one !== 1) return;
      const dx = (i % columns) - (j % columns);
      const dy = Math.floor(i / columns) - Math.floor(j / columns);
      least = Math.min(least, Math.hypot(dx, dy));
    });
    return least;
  });

describe("cellsToCover", () => {
  test("is the distance to the nearest covered cell, for any map", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 14 }),
        fc.integer({ min: 1, max: 14 }),
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (columns, rows, dice, share) => {
          const covered = Array.from({ length: columns * rows }, () =>
            (dice.next().value as number) < share * share ? 1 : 0,
          );
          // One cell is covered at least: where nothing is, there is no distance.
          covered[Math.floor((dice.next().value as number) * covered.length) % covered.length] = 1;
          const found = [...cellsToCover(covered, columns)];
          byPairs(covered, columns).forEach((distance, i) => {
            expect(found[i]).toBeCloseTo(distance, 10);
          });
        },
      ),
    );
  });
  test("takes a typed array, and leaves it as it is", () => {
    const covered = Uint8Array.from([0, 1, 0]);
    expect([...cellsToCover(covered, 3)]).toEqual([1, 0, 1]);
    expect([...covered]).toEqual([0, 1, 0]);
  });
  test("refuses what is no map", () => {
    expect(complaints(() => cellsToCover([1, 0, 2], 3))).toEqual(["range covered[2]"]);
    expect(complaints(() => cellsToCover([1, 0, Number.NaN], 3))).toEqual(["range covered[2]"]);
    expect(complaints(() => cellsToCover([1, 0, 0], 2))).toEqual(["range columns"]);
    expect(complaints(() => cellsToCover([], 1))).toEqual(["range covered"]);
    expect(complaints(() => cellsToCover("110" as never, 1))).toEqual(["type covered"]);
    expect(complaints(() => cellsToCover([1], 0))).toEqual(["range columns"]);
    expect(complaints(() => cellsToCover([0, 0], 2))).toEqual(["range covered"]);
  });
});

const spread = {
  low: quantity(7, "mm/d"),
  mid: quantity(10, "mm/d"),
  high: quantity(13, "mm/d"),
  source: "made up for the test",
};
const growth = { potential: quantity(100, "%"), source: "made up for the test" };

describe("a map of patches", () => {
  test("plugs drawn on a map cover what plugs in a pattern do", () => {
    // 5 by 5 plugs of 60 mm at 300 mm, in cells of 5 mm; the map ends half a spacing beyond the last plug
    const [size, cell, spacing] = [1500, 5, 300];
    const columns = size / cell;
    const covered = Array.from({ length: columns * columns }, (_, i) => {
      const near = (at: number): number => {
        const x = ((at + 0.5) * cell) % spacing;
        return Math.abs(x - spacing / 2);
      };
      return Math.hypot(near(i % columns), near(Math.floor(i / columns))) <= 30 ? 1 : 0;
    });
    const map = coverOverTime({
      start: { patches: { covered, columns, cell: quantity(cell, "mm") } },
      from: "2026-06-01",
      to: "2026-06-25",
      spread,
      growth,
    });
    const grid = coverOverTime({
      start: {
        plug: { diameter: quantity(60, "mm") },
        pattern: "square",
        spacing: quantity(spacing, "mm"),
      },
      from: "2026-06-01",
      to: "2026-06-25",
      spread,
      growth,
    });
    map.days.forEach((day, i) => {
      expect(Math.abs(day.mid.in("%") - (grid.days[i]?.mid.in("%") as number)), day.date).toBeLessThan(3.5);
    });
    expect(map.days.at(-1)?.mid.in("%")).toBe(100);
  });
  test("without a patch nothing can spread", () => {
    const start = { patches: { covered: [0, 0], columns: 2, cell: quantity(1, "ft") } };
    expect(
      complaints(() => coverOverTime({ start, from: "2026-06-01", to: "2026-06-25", spread, growth })),
    ).toEqual(["range start.patches.covered"]);
  });
});
