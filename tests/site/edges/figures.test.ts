import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { bufferArea, passesAround, reducedBuffer } from "../../../src/site/index.js";

// Whole records, as they go on paper: what is told, by whose word, and the figures by hand.

const ft = (value: number) => quantity(value, "ft");
const percent = (value: number) => quantity(value, "%");
const plain = (record: unknown): unknown => JSON.parse(JSON.stringify(record));
const of = (value: number, unit: string, substance = "none") => ({ value, unit, of: substance });

describe("buffers", () => {
  test("half and half of 80 ft: nothing by the sum, a quarter in turn, never less than the floor", () => {
    const by = (rule: "sum" | "in turn", floor?: number) =>
      reducedBuffer({
        distance: ft(80),
        reductions: [percent(50), percent(50)],
        rule,
        ...(floor !== undefined && { floor: ft(floor) }),
      });
    const told = ({ distance, reduction, atFloor }: ReturnType<typeof by>) => [
      distance.in("ft"),
      reduction.in("%"),
      atFloor,
    ];
    expect(
      [by("sum"), by("in turn"), by("sum", 10), by("in turn", 20), by("in turn", 25), by("sum", 80)].map(
        told,
      ),
    ).toEqual([
      [0, 100, false],
      [20, 75, false],
      [10, 100, true],
      [20, 75, false],
      [25, 75, true],
      [80, 100, true],
    ]);
    expect(told(reducedBuffer({ distance: ft(80), reductions: [percent(100)], rule: "in turn" }))).toEqual([
      0,
      100,
      false,
    ]);
    expect(told(reducedBuffer({ distance: ft(80), reductions: [], rule: "sum" }))).toEqual([80, 0, false]);
  });
  test("the label decides, and is asked for its floor", () => {
    const label =
      "The label decides which reductions count, how they add up, and how far the buffer comes down.";
    const finding = { code: "buffer-by-label", severity: "caution", source: "common practice, no source" };
    const by = (floor?: number) =>
      reducedBuffer({
        distance: ft(80),
        reductions: [],
        rule: "sum",
        ...(floor !== undefined && { floor: ft(floor) }),
      });
    expect(by(0)).toMatchObject({ type: "reduced-buffer", version: 1 });
    expect(by(0).findings).toEqual([{ ...finding, params: { floor: "stated" }, text: label }]);
    expect(by().findings).toEqual([
      {
        ...finding,
        params: { floor: "none stated" },
        text: "No least distance was given. Read the label for one: the label decides which reductions count, how they add up, and how far the buffer comes down.",
      },
    ]);
  });
  test("an area with a buffer, edge by edge", () => {
    const points = [
      [0, 0],
      [100, 0],
      [100, 60],
      [0, 60],
    ] as const;
    const hole = [
      [40, 20],
      [60, 20],
      [60, 40],
      [40, 40],
    ] as const;
    const found = bufferArea({
      points,
      unit: "ft",
      holes: [hole],
      edges: [
        { edge: 0, distance: ft(10) },
        { hole: 0, edge: 2, distance: ft(0) },
      ],
    });
    expect(plain(found)).toEqual({
      type: "buffer-area",
      version: 1,
      gross: of(5600, "ft2"),
      buffer: of(1000, "ft2"),
      treated: of(4600, "ft2"),
      edges: [
        { edge: 0, length: of(100, "ft"), distance: of(10, "ft") },
        { edge: 2, hole: 0, length: of(20, "ft"), distance: of(0, "ft") },
      ],
    });
    const all = bufferArea({ points, unit: "ft", edges: [{ edge: 0, distance: ft(60) }] });
    expect([all.buffer, all.treated].map(String)).toEqual(["6000 ft2", "0 ft2"]);
  });
  test("rounds of 10 ft in 100 by 60", () => {
    const found = passesAround({
      outline: { shape: "rectangle", length: ft(100), width: ft(60) },
      swath: ft(10),
      passes: 3,
    });
    expect(plain(found)).toEqual({
      type: "passes-around",
      version: 1,
      passes: [280, 200, 120].map((value) => of(value, "ft")),
      distance: of(600, "ft"),
      covered: of(6000, "ft2"),
      inside: of(0, "ft2"),
    });
  });
});
