import { describe, expect, it } from "vitest";
import * as library from "../../src/index.js";
import { read } from "../house/sources.js";
import { type Compared, compared, shortcomings, ulpsBetween } from "./compare.js";
import { type RuntimeResults, runtimesPage } from "./page.js";
import { bitsOf, type SmokeFigure, smoke } from "./smoke.js";

const results = JSON.parse(read("tests/runtimes/results.json")) as RuntimeResults;

describe("docs/runtimes.md", () => {
  it("is what the last run says: npm run runtimes:page draws it again", () => {
    expect(read("docs/runtimes.md")).toBe(runtimesPage(results));
  });

  it("tells of runs in which nothing fell short, on more than one engine", () => {
    expect(results.ran.flatMap(shortcomings)).toEqual([]);
    expect(new Set(results.ran.map(({ engine }) => engine)).size).toBeGreaterThan(1);
  });
});

describe("the comparison of two runtimes", () => {
  const figures: readonly SmokeFigure[] = [
    { function: "mean", arguments: [[1, 2, 6]], at: [], printed: 3, tolerance: 0.5 },
  ];
  const here = smoke(library as never, figures);
  const who = { name: "other", version: "1", engine: "other" };
  const beside = (there: typeof here): Compared => compared(who, there, here, figures);

  it("counts the numbers between two, across zero too", () => {
    expect(ulpsBetween(bitsOf(1), bitsOf(1))).toBe(0);
    expect(ulpsBetween(bitsOf(1), bitsOf(1 + Number.EPSILON))).toBe(1);
    expect(ulpsBetween(bitsOf(-Number.MIN_VALUE), bitsOf(Number.MIN_VALUE))).toBe(2);
    expect(ulpsBetween(bitsOf(0), bitsOf(-0))).toBe(0);
  });

  it("finds nothing between a runtime and itself", () => {
    expect(beside(here)).toMatchObject({ figures: 1, equal: 1, farthest: 0, wrong: [] });
    expect(shortcomings(beside(here))).toEqual([]);
  });

  it("tells of a square root that is off by one, of a sine that is off by three, of a wrong figure", () => {
    const shifted = (bits: readonly string[], steps: bigint) => [
      (BigInt(`0x${bits[0]}`) + steps).toString(16).padStart(16, "0"),
      ...bits.slice(1),
    ];
    const { sqrt = [], sin = [] } = here.basics;
    const told = (basics: object, of = here.figures): string =>
      shortcomings(beside({ ...here, basics: { ...here.basics, ...basics }, figures: of })).join();
    expect(told({ sqrt: shifted(sqrt, 1n) })).toContain("sqrt lies 1");
    expect(told({ sin: shifted(sin, 2n) })).toBe("");
    expect(told({ sin: shifted(sin, 3n) })).toContain("sin lies 3");
    expect(told({}, [bitsOf(4)])).toContain("mean");
    expect(told({}, [bitsOf(3.0001)])).toContain("of itself off");
  });
});
