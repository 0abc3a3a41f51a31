import { described } from "../../quantity/house.js";
import { fail, outOfRange } from "../../quantity/index.js";

/** A list of numbers, or a typed array of them. */
export type Numbers = readonly number[] | Float64Array;

/** Takes a list of at least `least` finite numbers, or throws with the index of the first that is none. */
export const expectNumbers = (input: unknown, path: string, least: number): Numbers => {
  if (!Array.isArray(input) && !(input instanceof Float64Array)) {
    return fail("type", path, input, "a list of numbers");
  }
  if (input.length < least) {
    const expected = least === 1 ? "at least one number" : `at least ${least} numbers`;
    fail("missing", path, described(`a list of ${input.length}`), expected);
  }
  for (let i = 0; i < input.length; i++) {
    const value: unknown = input[i];
    if (Number.isFinite(value)) continue;
    const unit = (Object(value) as { readonly unit?: unknown }).unit;
    const expected =
      typeof unit === "string"
        ? "a bare number; quantities go into meanEstimate, which gives their mean and its error, or into sum"
        : "a finite number";
    fail("not-finite", `${path}[${i}]`, value, expected);
  }
  return input;
};

/** The most items of a list of readings or factors. */
const mostItems = 1_000_000;

/** Takes a list whose items a reader looks at one by one, or throws; a hole is an item that is not there. */
export const expectItems = (input: unknown, path: string, least: number, of: string): readonly unknown[] => {
  const expected = least === 1 ? `at least one ${of}` : `at least ${least} ${of}s`;
  if (!Array.isArray(input)) return fail("type", path, input, `a list with ${expected}`);
  if (input.length < least) return fail("missing", path, described(`a list of ${input.length}`), expected);
  return input.length > mostItems ? outOfRange(path, input, { max: mostItems }) : Array.from(input);
};

/** Takes a result, or throws where it has left the range of numbers. */
export const finite = (value: number, path: string, got: unknown): number =>
  Number.isFinite(value) ? value + 0 : fail("range", path, got, "numbers whose result is a finite number");
