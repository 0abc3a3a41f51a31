import { describe, expect, test } from "vitest";
import { problemsOf } from "./errors.js";

// What a person reads who has given something wrong: tables of calls and of the words that have to come back.

/** Any function of the library, called as plain JavaScript does. */
// biome-ignore lint/complexity/noBannedTypes: any formula
type AnyFormula = Function;

/** A call that is refused, and each refusal in the order in which it is told. */
export type Refusal = readonly [
  what: string,
  formula: AnyFormula,
  given: readonly unknown[],
  said: readonly string[],
];

/** Each refusal of a call as `code path: what is expected [what was given]`, the nearest name behind it. */
export const told = (formula: AnyFormula, ...given: readonly unknown[]): readonly string[] =>
  problemsOf(() => formula(...given)).map(
    ({ code, path, expected, got, suggestion }) =>
      `${code} ${path}: ${expected} [${got}]${suggestion === undefined ? "" : ` ${suggestion}?`}`,
  );

/** A test for each refusal of a table. */
export const refusalsOf = (title: string, rows: readonly Refusal[]): void => {
  describe(title, () => {
    test.each(rows)("%s", (_, formula, given, said) => {
      expect(told(formula, ...given)).toEqual(said);
    });
  });
};
