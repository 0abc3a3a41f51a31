import { expect, test } from "vitest";
import { patternBalance, spreadPattern } from "../../../src/spread/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { m, row } from "../helpers.js";

// A pattern at its least, and what a person reads who leaves a part of one out.

test("a pattern that was stored is taken with two pans", () => {
  // Two pans one meter left and right of the line, alike: the middle of the mass lies on it.
  const stored = { ...row([0, 1, 0]), offsets: [-1, 1], catches: [1, 1], runs: [[1, 1]], spacing: 2 };
  expect(patternBalance(stored).center.in("m")).toBe(0);
  expect(complaints(() => patternBalance({ ...stored, offsets: [0], catches: [1], runs: [[1]] }))).toEqual([
    "conflict pattern.offsets",
  ]);
});

test("a stored pattern without catches is told how many there are at least", () => {
  const [problem] = problemsOf(() =>
    patternBalance({ ...row([0, 1, 0]), catches: [], offsets: [], runs: [] }),
  );
  expect([problem?.code, problem?.path, problem?.expected]).toEqual([
    "missing",
    "pattern.catches",
    "at least two catches",
  ]);
});

test("what is left out of a pattern is missing", () => {
  const pans = { spacing: m(1), left: 1 };
  const of = (input: object) => complaints(() => spreadPattern(input as never));
  expect(of({ unit: "g", pans })).toEqual(["missing catches"]);
  expect(of({ unit: "g", pans, catches: 7 })).toEqual(["type catches"]);
  expect(of({ pans, catches: [1, 2, 1] })).toEqual(["missing unit"]);
  expect(of({ unit: 7, pans, catches: [1, 2, 1] })).toEqual(["unit/unknown unit"]);
  expect(of({ unit: "g", pans: { offsets: [] } })).toEqual(["missing catches", "missing pans.offsets"]);
});

test("the line of travel is at 0, not at -0, of whichever pan", () => {
  const { offsets } = spreadPattern({ catches: [1, 2, 1], unit: "g", pans: { spacing: m(0.1), left: 1 } });
  expect(Object.is(offsets[1], 0)).toBe(true);
});
