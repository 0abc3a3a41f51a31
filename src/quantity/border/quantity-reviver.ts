import { fail, RatewrightError } from "../errors/errors.js";
import { problem, readOf, readUnit, told } from "./parts.js";
import { made, placed } from "./record.js";

/**
 * For `JSON.parse`: makes a quantity again of every `{ value, unit, of }` that JSON left of one, or
 * `structuredClone` with its `dimension`, wherever it stands in a record. All else stays as it is, a record with other or more fields too.
 *
 * @param key - the name of the field, as `JSON.parse` gives it; it names the place in problems
 * @param value - what stands there
 * @throws RatewrightError `unit/unknown`, `substance/unknown`; `not-finite` for a number too large to hold
 *
 * @example
 * ```ts
 * import { quantity, quantityReviver } from "ratewright";
 * const text = JSON.stringify({ lawn: "north", need: quantity(46.5, "lb", "product:feed-a") });
 * const visit = JSON.parse(text, quantityReviver);
 * visit.lawn; // => "north"
 * visit.need.in("oz"); // => 744
 * ```
 */
export const quantityReviver = (key: string, value: unknown): unknown => {
  const path = typeof key === "string" && key !== "" ? key : "value";
  if (typeof value !== "object" || value === null) {
    // `1e999` is JSON, and JSON.parse makes infinity of it.
    const lost = typeof value === "number" && !Number.isFinite(value);
    return lost ? fail("not-finite", path, value, "a number that is not too large") : value;
  }
  const { value: number, unit, of, dimension = unit, ...more } = value as Readonly<Record<string, unknown>>;
  return typeof number === "number" &&
    [unit, of, dimension].every((text) => typeof text === "string") &&
    Object.keys(more).length === 0
    ? revived(number, unit, of, path)
    : value;
};

/** What a program stored has exact names, and its number is one: nothing here reads words or digits. */
const revived = (number: number, unit: unknown, of: unknown, path: string): unknown => {
  const value = Number.isFinite(number)
    ? number
    : problem("not-finite", "value", told(number), "a finite number");
  const parts = [value, readUnit(unit, undefined, undefined), readOf(of, undefined, undefined)] as const;
  const wrong = parts.flatMap((part) => (typeof part === "object" ? part : []));
  if (wrong.length > 0) throw new RatewrightError(placed(wrong, path));
  const [, exact, known] = parts as readonly [number, string, string];
  return made(number, exact, known).value;
};
