import { fail } from "../errors/errors.js";
import { unitSizes, zeroPoints } from "./base-units.js";
import { dimensionNoun } from "./dimension-words.js";
import { quotientsOfThree, quotientsOfTwo } from "./dimensions.js";

/** A unit, taken apart: what the arithmetic needs to know of it. */
export interface UnitParts {
  readonly unit: string;
  readonly dimension: string;
  /** Exact size in SI units. */
  readonly size: Fraction;
  /** The base units of a quotient, or the unit itself. */
  readonly names: readonly string[];
  readonly ratios: Map<string, Ratio>;
  readonly plans: Map<string, unknown>;
}

/** An exact fraction of two whole numbers. */
export type Fraction = readonly [bigint, bigint];

/** How to get from one unit to another: `(x - from) * top / bottom + to`. */
export interface Ratio {
  readonly units: readonly [from: string, to: string];
  readonly top: number;
  readonly bottom: number;
  readonly from: number;
  readonly to: number;
}

/** A product of two fractions, not reduced. */
export const product = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * c, b * d];

/** A quotient of two fractions, not reduced. */
export const quotient = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d, b * c];

/** A quotient as two floating-point numbers in lowest terms, to multiply by one and divide by the other. */
export const factorOf = (a: Fraction, b: Fraction): { readonly top: number; readonly bottom: number } => {
  const [top, bottom] = quotient(a, b);
  let [p, q] = [top, bottom];
  while (q) [p, q] = [q, p % q];
  return { top: Number(top / p), bottom: Number(bottom / p) };
};

/** Reads a size of the table, such as `1/16 lb`, `0.0254*0.0254` or `0.3048`: numbers and units, in turn. */
const sizeOf = (text: string): Fraction => {
  let size: Fraction = [BigInt(1), BigInt(1)];
  for (const [, over, whole, part = "", unit] of text.matchAll(/(\/?)(?:(\d+)\.?(\d*)|([a-z].+))/g)) {
    const factor: Fraction = unit
      ? (unitParts(unit) as UnitParts).size
      : [BigInt(whole + part), BigInt(10 ** part.length)];
    size = (over ? quotient : product)(size, factor);
  }
  return size;
};

const cache = /* @__PURE__ */ new Map<string, UnitParts>();

/** Takes a unit text apart; `undefined` where it is not a unit. Text longer than any unit is refused unread. */
export const unitParts = (unit: string): UnitParts | undefined => {
  const seen = cache.get(unit);
  if (seen) return seen;
  if (typeof unit !== "string" || unit.length > 64) return undefined;
  const parts = read(unit);
  // The texts that are units are many, though finite: a cap keeps a stranger's list from filling memory.
  if (parts && cache.size < 5000) cache.set(unit, parts);
  return parts;
};

/** The table of base units, by dimension. */
export const table: Readonly<Record<string, Readonly<Record<string, string>>>> = unitSizes;

/** Every dimension by name, but for plain money, which has no unit of its own. */
export const dimensionNames = (): readonly string[] => [
  ...Object.keys(table),
  ...quotientsOfTwo,
  ...quotientsOfThree,
];

/** Looks up a text with its currency left out, and puts the currency into what is found. */
export const currencyAside = (
  text: string,
  find: (plain: string) => string | undefined,
): string | undefined => {
  const tag = /money:.../.exec(text)?.[0] ?? "money";
  return find(text.replace(tag, "money"))?.replace("money", tag);
};

const read = (unit: string): UnitParts | undefined => {
  const parts = (dimension: string, size: Fraction, names: readonly string[] = [unit]): UnitParts => ({
    unit,
    dimension,
    size,
    names,
    ratios: new Map(),
    plans: new Map(),
  });
  for (const dimension in table) {
    const size = table[dimension]?.[unit];
    if (typeof size === "string") return parts(dimension, sizeOf(size));
  }
  if (/^money:[A-Z]{3}$/.test(unit)) return parts(unit, sizeOf("1"));
  const names = unit.split("/");
  if (!names[1]) return undefined;
  const each = names.map((name) => unitParts(name));
  const joined = each.map((part) => part?.dimension).join("/");
  // The name out of the list, not the text put together: comparing the very same string costs nothing.
  const dimension = currencyAside(joined, (plain) => dimensionNames().find((name) => name === plain));
  return dimension
    ? parts(dimension, (each as UnitParts[]).map((part) => part.size).reduce(quotient), names)
    : undefined;
};

/** Takes a unit text apart, or throws `unit/unknown`. */
export const knownUnit = (unit: string, path: string): UnitParts =>
  unitParts(unit) ??
  fail(
    "unit/unknown",
    path,
    unit,
    unit === "ppm"
      ? "ppm w/w, ppm v/v or mg/L: ppm alone does not say of what"
      : "a unit, such as lb/acre (suggestUnit names the nearest)",
  );

/** The last ratio: a list is converted from one unit to one other, and two comparisons spare two look-ups. */
let last: Ratio | undefined;

/** How to get from one unit to another of the same dimension; throws where there is no way. */
export const ratioOf = (from: string, to: string, path: string): Ratio => {
  if (last !== undefined && last.units[0] === from && last.units[1] === to) return last;
  last = ratioBetween(from, to, path);
  return last;
};

const ratioBetween = (from: string, to: string, path: string): Ratio => {
  const source = knownUnit(from, path);
  const seen = source.ratios.get(to);
  if (seen) return seen;
  const target = knownUnit(to, path);
  if (source.dimension !== target.dimension)
    fail("unit/mismatch", path, to, `a unit for ${dimensionNoun(source.dimension)}, as ${from} is`);
  const ratio: Ratio = {
    units: [from, to],
    ...factorOf(source.size, target.size),
    from: zeroPoints[from] ?? 0,
    to: zeroPoints[to] ?? 0,
  };
  source.ratios.set(to, ratio);
  return ratio;
};
