import { expect } from "vitest";

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
