import { fail, isQuantityLike } from "./errors.js";
import { hasOwn } from "./has-own.js";

const isFiniteNumber = (input: unknown): input is number => Number.isFinite(input);

/** Whether something has named fields: a list and nothing have none. */
export const isRecord = (input: unknown): input is Readonly<Record<string, unknown>> =>
  typeof input === "object" && input !== null && !Array.isArray(input);

/**
 * Takes an argument as a finite number within bounds, or throws with its path.
 *
 * @param bounds - `min` and `max`, which count as within; `above` and `below`, which do not
 * @throws RatewrightError `missing`, `type`, `not-finite`, `range`
 *
 * @example
 * ```ts
 * import { expectNumber } from "ratewright";
 * expectNumber(0.8, "efficiency", { above: 0, max: 1 }); // => 0.8
 * expectNumber(80, "efficiency", { above: 0, max: 1 }); // => throws range
 * ```
 */
export const expectNumber = (
  input: unknown,
  path: string,
  bounds?: {
    readonly min?: number;
    readonly max?: number;
    readonly above?: number;
    readonly below?: number;
  },
): number => {
  if (!isFiniteNumber(input)) {
    return fail(
      "not-finite",
      path,
      input,
      isQuantityLike(input)
        ? 'a bare number here: amount.in("...") gives it in the unit that the field is in'
        : "a finite number",
    );
  }
  if (bounds === undefined) return input + 0;
  if (typeof bounds !== "object") fail("type", "bounds", bounds, "a record with min, max, above or below");
  const given = Object(bounds) as typeof bounds;
  for (const name in given) {
    if (!hasOwn(given, name)) continue;
    const bound = given[name as keyof typeof given];
    const known = name === "min" || name === "max" || name === "above" || name === "below";
    if (!known || (bound !== undefined && !Number.isFinite(bound)))
      fail("type", `bounds.${name}`, bound, "finite numbers alone, as min, max, above or below");
  }
  // A comparison with a bound that is not there is false.
  const { min, max, above, below } = given as Required<typeof given>;
  if (input < min) outside(path, input, bounds, `${min} or more`);
  if (input > max) outside(path, input, bounds, `${max} or less`);
  if (input <= above) outside(path, input, bounds, `more than ${above}`);
  if (input >= below) outside(path, input, bounds, `less than ${below}`);
  return input + 0;
};

const outside = (path: string, input: number, bounds: object, expected: string): never =>
  fail("range", path, input, expected, { params: { ...bounds } as Record<string, number> });

/**
 * Takes an argument as a record of named fields, or throws with its path.
 *
 * @param expected - what a message asks for
 * @throws RatewrightError `missing`, `type`
 *
 * @example
 * ```ts
 * import { expectRecord } from "ratewright";
 * expectRecord({ rate: 3 }, "input").rate; // => 3
 * expectRecord(null, "input"); // => throws type
 * ```
 */
export const expectRecord = (
  input: unknown,
  path = "input",
  expected = "a record of named arguments",
): Readonly<Record<string, unknown>> => (isRecord(input) ? input : fail("type", path, input, expected));
