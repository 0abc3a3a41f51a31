import { expect } from "vitest";
import { type ErrorCode, type Problem, parseQuantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

/** What a person reads: the code, what is expected, what was got, and what to write instead, as `=> it` or `? one | other`. */
export type Row = readonly [text: string, code: ErrorCode, got: string, expected: string, options?: object];
export const told = ({ code, got, expected, suggestion, choices }: Problem): readonly string[] => [
  code,
  got,
  `${expected}${suggestion === undefined ? "" : ` => ${suggestion}`}${choices === undefined ? "" : ` ? ${choices.join(" | ")}`}`,
];
export const refused = (rows: readonly Row[]): void => {
  for (const [text, code, got, expected, options] of rows) {
    const problems = problemsOf(() => parseQuantity(text, options as never));
    expect([text, problems.map(({ path }) => path), ...problems.map(told)]).toEqual([
      text,
      ["text"],
      [code, JSON.stringify(got), expected],
    ]);
  }
};
