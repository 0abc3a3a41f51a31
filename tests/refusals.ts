import { expect } from "vitest";
import { problemsOf } from "./errors.js";

/** A call that is refused: with which code, at which path, and words of what would have been right. */
export type Refusal = readonly [call: () => unknown, code: string, path: string, expected: RegExp];

/** Holds if each call is refused so; whatever else is wrong with it may be told beside it. */
export const expectRefusals = (rows: readonly Refusal[]): void => {
  for (const [call, code, path, expected] of rows) {
    const problems = problemsOf(call);
    const told = problems.filter((problem) => problem.code === code && problem.path === path);
    expect(told, `${code} ${path} among ${JSON.stringify(problems)}`).not.toEqual([]);
    expect(
      told.map((problem) => `${problem.expected} ${JSON.stringify(problem.params ?? "")}`).join("\n"),
    ).toMatch(expected);
  }
};
