import { expect } from "vitest";
import { type Problem, RatewrightError } from "../../src/quantity/index.js";

/** The problems that a call complains about, as `code path`; fails where it does not throw. */
export const complaints = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path }) => `${code} ${path}`);

/** The problems that a call complains about; fails where it does not throw. */
export const problemsOf = (call: () => unknown): readonly Problem[] => {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(RatewrightError);
    return (error as RatewrightError).problems;
  }
  return expect.fail("it did not throw");
};

/** Calls as a plain-JavaScript caller would: no types in the way. */
// biome-ignore lint/complexity/noBannedTypes: any formula
export const untyped = (formula: Function, ...args: readonly unknown[]): (() => unknown) => {
  return () => formula(...args);
};

/** Equal but for the last digits. */
export const close = (computed: number, expected: number, relative = 1e-12): void => {
  expect(Math.abs(computed - expected), `${computed} is not ${expected}`).toBeLessThanOrEqual(
    relative * Math.max(Math.abs(expected), Number.MIN_VALUE),
  );
};
