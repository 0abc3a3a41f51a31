import { hasOwn } from "../quantity/house.js";
import {
  checks,
  expectList,
  expectQuantity,
  fail,
  type Length,
  outOfRange,
  quantity,
} from "../quantity/index.js";
import { recordWith } from "./records.js";

export type { Length } from "../quantity/index.js";

/** A length, as the shapes take it. */

/** The units in which a shape is worked out: the unit of its first length where that has a square. */
const units = {
  m: { length: "m", area: "m2", volume: "m3" },
  cm: { length: "cm", area: "cm2", volume: "mL" },
  in: { length: "in", area: "in2", volume: "in3" },
  ft: { length: "ft", area: "ft2", volume: "ft3" },
  yd: { length: "yd", area: "yd2", volume: "yd3" },
} as const;

/** Units of length, area and volume that belong together. */
export type UnitSet = (typeof units)[keyof typeof units];

/** The set for a unit of length; a mile goes to feet, a millimetre or a kilometre to metres. */
export const unitSet = (unit: string): UnitSet =>
  hasOwn(units, unit) ? units[unit as keyof typeof units] : unit === "mi" ? units.ft : units.m;

/** How a length is written, for a refusal. */
const aLength = 'a length, such as quantity(40, "ft")';

/** Takes a length that is there, or throws. */
export const lengthOf = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative" | "any" = "positive",
): Length => {
  if (input === undefined) return fail("missing", path, input, aLength);
  if (typeof input === "number") return fail("type", path, input, `${aLength}: a number has no unit`);
  return expectQuantity(input, { dimension: "length", of: "none", bound }, path);
};

/** As many readings as one shape may have: more is a mistake, or a file that should be thinned out. */
const mostReadings = 10_000;

/** Takes a list of lengths with at least `least` items; reports every item that is not right. */
export const lengthList = (
  input: unknown,
  path: string,
  least: number,
  bound: "positive" | "non-negative" = "non-negative",
): readonly Length[] => {
  if (Array.isArray(input) && (input.length < least || input.length > mostReadings)) {
    return outOfRange(path, input, { min: least, max: mostReadings, count: "lengths" }, "a list of {}");
  }
  const list = expectList(input, path, "length");
  const problems = checks();
  const lengths: Length[] = [];
  list.forEach((item, i) => {
    const length = problems.run(() => lengthOf(item, `${path}[${i}]`, bound));
    if (length !== undefined) lengths.push(length);
  });
  problems.done();
  return lengths;
};

/** The lengths of a record as numbers of one unit, that of the first; reports every one that is not right. */
export const lengthsOf = <const K extends string>(
  input: unknown,
  keys: readonly K[],
): { readonly of: Readonly<Record<K, number>>; readonly units: UnitSet } => {
  const problems = checks();
  const record = recordWith(input, keys, problems);
  const lengths = keys.map((key) => problems.run(() => lengthOf(record[key], key)));
  problems.done();
  const set = unitSet((lengths[0] as Length).unit);
  const of = {} as Record<K, number>;
  keys.forEach((key, i) => {
    of[key] = (lengths[i] as Length).in(set.length);
  });
  return { of, units: set };
};

/** A computed length; one too small or too large for a number is an error, not a zero. */
export const lengthIn = (value: number, set: UnitSet): Length =>
  value > 0 || !Number.isFinite(value)
    ? quantity(value, set.length)
    : outOfRange("shape", value, { above: 0 }, "a length of {}");
