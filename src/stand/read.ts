import { notShare } from "../numeric/house.js";
import { dimensionDue } from "../quantity/house.js";
import {
  type Area,
  allOf,
  expectFields,
  expectQuantity,
  fail,
  type Length,
  outOfRange,
  type Quantity,
  type Share,
} from "../quantity/index.js";

export type { Area, Length, Share } from "../quantity/index.js";

/** Takes a quantity that is there, or throws with its path. */
export const given = <const D extends string, const S extends string>(
  input: unknown,
  path: string,
  dimension: D,
  of: S,
  bound: "positive" | "non-negative" = "positive",
): Quantity<D, S> =>
  input === undefined
    ? dimensionDue("missing", path, input, dimension)
    : expectQuantity(input, { dimension, of, bound }, path);

export const lengthAt = (input: unknown, path: string, bound?: "positive" | "non-negative"): Length =>
  given(input, path, "length", "none", bound);

export const areaAt = (input: unknown, path: string): Area => given(input, path, "area", "none");

/** A bound of a share, in percent. */
interface Bounds {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
  readonly below?: number;
  /** At or below this a percent above zero is refused as a share, see `notShare`. */
  readonly share?: number;
}

/** Takes a share as a number of percent within bounds; from 0 to 100 % where none are said. */
export const percentAt = (
  input: unknown,
  path: string,
  bounds: Bounds = { min: 0, max: 100 },
  otherwise?: number,
): number => {
  if (input === undefined) return otherwise ?? fail("missing", path, input, "a share, such as 85 %");
  const share = expectQuantity(input, { dimension: "1", of: "none" }, path);
  const percent = share.in("%");
  const { share: least = 0, ...ends } = bounds;
  const { min = -Infinity, above = -Infinity, max = Infinity, below = Infinity } = ends;
  if (percent < min || percent <= above || percent > max || percent >= below) {
    outOfRange(path, share, { ...ends, unit: "%" });
  }
  return notShare(percent, path, { least, most: Math.min(max, below) });
};

/** Takes a whole number of things, at least one. */
export const wholeAt = (input: unknown, path: string, least = 1): number =>
  input === undefined
    ? fail("missing", path, input, "a whole number")
    : typeof input === "number" && Number.isSafeInteger(input) && input >= least
      ? input
      : typeof input === "number" && Number.isFinite(input)
        ? outOfRange(path, input, { step: 1, min: least })
        : fail("type", path, input, `a whole number, ${least} or more`);

/** Reads what may be left out. */
export const optional = <T>(input: unknown, read: (input: unknown) => T): T | undefined =>
  input === undefined ? undefined : read(input);

/** Takes the words that say who states a figure. */
export const sourceAt = (input: unknown, path: string): string =>
  typeof input === "string" && input.trim() !== "" && input.length <= 400
    ? input
    : fail(
        input === undefined || typeof input === "string" ? "missing" : "type",
        path,
        input,
        "who states it, in up to 400 letters",
      );

/** A figure that somebody states, with who states it. */
export interface StatedShare {
  readonly share: Share;
  /** Who says so: a trial, a supplier, the crew's own records. */
  readonly source: string;
}

/** Takes a share with its source; gives the percent and the source. */
export const statedShareAt = (
  input: unknown,
  path: string,
  bounds?: Bounds,
): { readonly percent: number; readonly source: string } => {
  const record = expectFields(input, ["share", "source"], path);
  return allOf({
    percent: () => percentAt(record.share, `${path}.share`, bounds),
    source: () => sourceAt(record.source, `${path}.source`),
  });
};

/** Whether an area or a length is in metric units, for the units of an answer. */
export const isMetric = (unit: string): boolean => /^(um|mm|cm|m|km|cm2|m2|100 m2|ha)$/.test(unit);
