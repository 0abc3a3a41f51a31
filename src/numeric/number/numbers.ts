import { fail } from "../../quantity/index.js";

/** A list of numbers, or a typed array of them. */
export type Numbers = readonly number[] | Float64Array;

/** Takes a list of at least `least` finite numbers, or throws with the index of the first that is none. */
export const expectNumbers = (input: Numbers, path: string, least: number): Numbers => {
  if (!Array.isArray(input) && !(input instanceof Float64Array)) {
    return fail("type", path, input, "a list of numbers");
  }
  if (input.length < least) {
    const expected = least === 1 ? "at least one number" : `at least ${least} numbers`;
    fail("missing", path, `a list of ${input.length}`, expected);
  }
  for (let i = 0; i < input.length; i++) {
    if (!Number.isFinite(input[i])) fail("not-finite", `${path}[${i}]`, input[i], "a finite number");
  }
  return input;
};

/** Takes a result, or throws where it has left the range of numbers. */
export const finite = (value: number, path: string, got: unknown): number =>
  Number.isFinite(value) ? value + 0 : fail("range", path, got, "numbers whose result is a finite number");
