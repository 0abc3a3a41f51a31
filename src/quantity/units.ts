import { unitTable, zeroPoints } from "./base-units.js";
import { rateQuotients, simpleQuotients } from "./dimensions.js";
import { fail } from "./errors.js";

/** A unit, taken apart: what the arithmetic needs to know of it. */
export interface UnitParts {
  readonly unit: string;
  readonly dimension: string;
  /** Exact size in SI units. */
  readonly size: Fraction;
  /** Zero point of a temperature scale; 0 for all others. */
  readonly zero: number;
  /** The base units of a quotient, or the unit itself. */
  readonly names: readonly string[];
  readonly ratios: Map<string, Ratio>;
  readonly plans: Map<string, unknown>;
}

/** An exact fraction of two whole numbers. */
export type Fraction = readonly [bigint, bigint];

/** How to get from one unit to another: `(x - from) * top / bottom + to`. */
export interface Ratio {
  readonly top: number;
  readonly bottom: number;
  readonly from: number;
  readonly to: number;
}

/** A quotient of two fractions, in lowest terms. */
export const quotient = ([a, b]: Fraction, [c, d]: Fraction): Fraction => {
  const [top, bottom] = [a * d, b * c];
  let [p, q] = [top, bottom];
  while (q) [p, q] = [q, p % q];
  return [top / p, bottom / p];
};

const one: Fraction = /* @__PURE__ */ (() => [BigInt(1), BigInt(1)])() as Fraction;

/** Reads a size of the table, such as `1/16 lb`, `0.0254*0.0254` or `0.3048`. */
const sizeOf = (text: string): Fraction => {
  const [numbers = "", ...unit] = text.split(" ");
  let size = unit.length > 0 ? (unitParts(unit.join(" ")) as UnitParts).size : one;
  for (const [, over, number = ""] of numbers.matchAll(/(\/?)([\d.]+)/g)) {
    const [whole = "", part = ""] = number.split(".");
    const [n, d] = [BigInt(whole + part), BigInt(`1${part.replace(/./g, "0")}`)];
    size = quotient(size, over ? [n, d] : [d, n]);
  }
  return size;
};

const cache = /* @__PURE__ */ new Map<string, UnitParts>();

/** Takes a unit text apart; `undefined` where it is not a unit. Text longer than any unit is refused unread. */
export const unitParts = (unit: string): UnitParts | undefined => {
  const seen = cache.get(unit);
  if (seen !== undefined) return seen;
  if (typeof unit !== "string" || unit.length > 64) return undefined;
  const parts = read(unit);
  // The texts that are units are many, though finite: a cap keeps a stranger's list from filling memory.
  if (parts !== undefined && cache.size < 5000) cache.set(unit, parts);
  return parts;
};

/** The table of base units, by dimension. */
export const table: Readonly<Record<string, Readonly<Record<string, string>>>> = unitTable;

const make = (dimension: string, size: Fraction, names: readonly string[]): UnitParts => ({
  unit: names.join("/"),
  dimension,
  size,
  zero: zeroPoints[names.join()] ?? 0,
  names,
  ratios: new Map(),
  plans: new Map(),
});

/** Every dimension by name, but for plain money, which has no unit of its own. */
export const dimensionNames = (): readonly string[] => [
  ...Object.keys(table),
  ...simpleQuotients,
  ...rateQuotients,
];

const read = (unit: string): UnitParts | undefined => {
  for (const dimension in table) {
    const size = table[dimension]?.[unit];
    if (typeof size === "string") return make(dimension, sizeOf(size), [unit]);
  }
  if (/^money:[A-Z]{3}$/.test(unit)) return make(unit, one, [unit]);
  const names = unit.split("/");
  if (names.length > 3 || names.length < 2) return undefined;
  const parts = names.map((name) => unitParts(name));
  const dimension = parts.map((part) => part?.dimension).join("/");
  if (!dimensionNames().includes(dimension.replace(/^money:.../, "money"))) return undefined;
  const size = (parts as UnitParts[]).map((part) => part.size).reduce(quotient);
  return make(dimension, size, names);
};

/** Takes a unit text apart, or throws `unit/unknown`. */
export const knownUnit = (unit: string, path: string): UnitParts =>
  unitParts(unit) ?? fail("unit/unknown", path, unit, "a unit, such as lb or fl oz/acre");

/** How to get from one unit to another of the same dimension; throws where there is no way. */
export const ratioOf = (from: string, to: string, path: string): Ratio => {
  const source = knownUnit(from, path);
  const seen = source.ratios.get(to);
  if (seen !== undefined) return seen;
  const target = knownUnit(to, path);
  if (source.dimension !== target.dimension)
    fail("unit/mismatch", path, to, `a unit of ${source.dimension}, as ${from} is`);
  const [top, bottom] = quotient(source.size, target.size);
  const ratio = { top: Number(top), bottom: Number(bottom), from: source.zero, to: target.zero };
  source.ratios.set(to, ratio);
  return ratio;
};
