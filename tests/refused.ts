import { describe, expect, test } from "vitest";
import { problemsOf } from "./errors.js";

/** A call that is refused: its code, where the refusal points, and words of what would have been right. */
export type Refused = readonly [
  call: () => unknown,
  code: string,
  path: string,
  words: string,
  /** What it says that it got, where that is more than the value handed in. */
  got?: string,
];

/** Tests that each call is refused at its place, with its code and these words. */
export const describeRefused = (what: string, rows: readonly Refused[]): void => {
  describe(what, () => {
    rows.forEach(([call, code, path, words, got], n) => {
      test(`${n}: ${code} at ${path}: ${words}`, () => {
        const problems = problemsOf(call);
        const found = problems.find((problem) => problem.path === path);
        expect(found?.code ?? problems.map((problem) => `${problem.code} ${problem.path}`)).toBe(code);
        expect(found?.expected).toContain(words);
        if (got !== undefined) expect(found?.got).toBe(got);
      });
    });
  });
};
