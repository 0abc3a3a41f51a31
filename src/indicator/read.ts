import { described } from "../quantity/house.js";
import {
  expectAmount,
  expectList,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../quantity/index.js";

/** A figure that came out, or a refusal at the argument that made it too large or no number. */
export const finiteFigure = (value: number, path: string, input: unknown, expected: string): number =>
  Number.isFinite(value) ? value : fail(Number.isNaN(value) ? "not-finite" : "range", path, input, expected);

/** Takes a list that is not empty and holds `most` items or fewer. */
export const expectItems = (input: unknown, path: string, of: string, most: number): readonly unknown[] => {
  const items = expectList(input, path, of);
  return items.length <= most
    ? items
    : outOfRange(path, described(`${items.length} of them`), { max: most, count: "items" });
};

/** Takes the whole area of a site or of a kind of turf. */
export const expectWholeArea = (input: unknown, path: string): Quantity<"area", string> =>
  input === undefined
    ? fail("missing", path, undefined, "the whole area")
    : expectQuantity(input, { dimension: "area", bound: "positive" }, path);

/** Takes an amount or a rate of active ingredient or acid equivalent, zero or more. */
export const expectActive = <const D extends string>(
  input: unknown,
  path: string,
  dimensions: readonly D[],
  what: string,
): Quantity<D, string> => {
  if (input === undefined) return fail("missing", path, undefined, what);
  const q = expectAmount(input, { dimensions, bound: "non-negative" }, path);
  return /^a[ie](:|$)/.test(q.of)
    ? q
    : fail(
        "substance/mismatch",
        path,
        q,
        "a quantity of ai or ae, not of product: activeRate of the product gives it",
      );
};
