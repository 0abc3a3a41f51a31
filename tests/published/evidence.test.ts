import { describe, expect, test } from "vitest";
import { coverage } from "./coverage.js";
import { eligible } from "./eligible.js";
import { exportedFunctions } from "./evidence.js";
import { allChecks, allLeftOut } from "./index.js";

const checks = Object.values(allChecks).flat();

describe("the functions of the checks", () => {
  test("of every check are exported", () => {
    const names = new Set([...exportedFunctions().values()].flat());
    const unknown = checks.flatMap(({ entry, formulas }) =>
      formulas.filter((name) => !names.has(name)).map((name) => `${entry}: ${name}`),
    );
    expect(unknown).toEqual([]);
    expect(checks.filter(({ formulas }) => formulas.length === 0)).toEqual([]);
  });
});

describe("the list of eligible examples", () => {
  test("names each example once in a room", () => {
    for (const entries of Object.values(eligible)) {
      expect(entries).toEqual([...new Set(entries)]);
      expect(entries.filter((entry) => !/^[a-z]+-\d{3}$/.test(entry))).toEqual([]);
    }
  });

  test("every reason for leaving one out is a sentence about one example", () => {
    for (const list of Object.values(allLeftOut)) {
      expect(new Set(list.map(({ entry }) => entry)).size).toBe(list.length);
      expect(list.filter(({ reason }) => reason.length < 10)).toEqual([]);
    }
  });

  test("each is covered, left out or open, and nothing else", () => {
    const whole = [...new Set(Object.values(eligible).flat())];
    const { covered, leftOut, open } = coverage(whole);
    expect(covered.length).toBeGreaterThan(0);
    expect([...covered, ...leftOut.map(({ entry }) => entry), ...open].sort()).toEqual(whole.sort());
  });
});
