import { expect, test } from "vitest";
import { problemReason } from "../src/quantity/index.js";
import { problemsOf } from "./errors.js";

// What a person reads who is wrong: the place, what was due, and what came instead.

/** A call that is refused, and what it says of each problem: code, place, what was expected, what came. */
export type Refused = readonly [call: () => unknown, ...says: string[]];

/** All that a refused call says. */
export const said = (call: () => unknown): readonly string[] =>
  problemsOf(call).map((problem) => `${problem.code} ${problem.path}: ${problemReason(problem)}`);

/** One test for each call that is refused. */
export const tellsEach = (rows: readonly Refused[]): void => {
  test.each(rows.map(([call, ...says]) => [says.join(" | "), call, says] as const))(
    "%s",
    (_name, call, says) => {
      expect(said(call)).toEqual(says);
    },
  );
};
