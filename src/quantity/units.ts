import { baseUnits, zeroPoints } from "./base-units.js";
import { rateQuotients, simpleQuotients } from "./dimensions.js";
import { fail } from "./errors.js";

/** A unit, taken apart: what the arithmetic needs to know of it. */
export interface UnitParts {
  readonly unit: string;
  readonly dimension: string;
  /** Exact size in SI units: `size[0] / size[1]`. */
  readonly size: Fraction;
  /** Zero point of a temperature scale; 0 for all others. */
  readonly zero: number;
  /** Numerator and denominator, where the unit is a quotient. */
  readonly top: string;
  readonly bottom: string;
  readonly ratios: Map<string, Ratio>;
  readonly products: Map<string, unknown>;
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

const reduced = (top: bigint, bottom: bigint): Fraction => {
  let a = top;
  let b = bottom;
  while (b > BigInt(0)) [a, b] = [b, a % b];
  return [top / a, bottom / a];
};

const decimal = (text: string): Fraction => {
  const [whole, part = ""] = text.split(".") as [string, string?];
  return [BigInt(whole + part), BigInt(`1${"0".repeat(part.length)}`)];
};

/** Reads a size such as `1/16 lb`, `0.0254*0.0254` or `0.3048`. */
const sizeOf = (text: string): Fraction => {
  const [, numbers = "", of = ""] = /^(\S+) ?(.*)$/.exec(text) as string[];
  let top = BigInt(1);
  let bottom = BigInt(1);
  for (const factor of numbers.split("*")) {
    const [a, b = "1"] = factor.split("/") as [string, string?];
    const [an, ad] = decimal(a);
    const [bn, bd] = decimal(b);
    top *= an * bd;
    bottom *= ad * bn;
  }
  const [un, ud] = of === "" ? [BigInt(1), BigInt(1)] : (unitParts(of) as UnitParts).size;
  return reduced(top * un, bottom * ud);
};

const cache = /* @__PURE__ */ new Map<string, UnitParts>();
const cacheLimit = 5000;

const currency = /^money:[A-Z]{3}$/;

/** Takes a unit text apart; `undefined` where it is not a unit. Text longer than any unit is refused unread. */
export const unitParts = (unit: string): UnitParts | undefined => {
  const seen = cache.get(unit);
  if (seen !== undefined) return seen;
  if (typeof unit !== "string" || unit.length > 64) return undefined;
  const parts = read(unit);
  if (parts !== undefined && cache.size < cacheLimit) cache.set(unit, parts);
  return parts;
};

const make = (unit: string, dimension: string, size: Fraction, top = "", bottom = ""): UnitParts => ({
  unit,
  dimension,
  size,
  zero: zeroPoints[unit] ?? 0,
  top,
  bottom,
  ratios: new Map(),
  products: new Map(),
});

const read = (unit: string): UnitParts | undefined => {
  if (Object.hasOwn(baseUnits, unit)) {
    const text: string = baseUnits[unit as keyof typeof baseUnits];
    const colon = text.indexOf(":");
    return make(unit, text.slice(0, colon), sizeOf(text.slice(colon + 1)));
  }
  if (currency.test(unit)) return make(unit, unit, [BigInt(1), BigInt(1)]);
  const names = unit.split("/");
  if (names.length < 2 || names.length > 3) return undefined;
  const parts = names.map((name) => (name.includes("/") ? undefined : unitParts(name)));
  const dimension = parts.map((part) => part?.dimension ?? "?").join("/");
  const plain = dimension.replace(/^money:[A-Z]{3}/, "money");
  const known: readonly string[] =
    names.length === 2 ? [...simpleQuotients, ...sameQuotients] : rateQuotients;
  if (!known.includes(plain)) return undefined;
  const sizes = (parts as UnitParts[]).map((part) => part.size);
  const [[n, d], ...below] = sizes as [Fraction, ...Fraction[]];
  const size = below.reduce<Fraction>(([a, b], [c, e]) => reduced(a * e, b * c), [n, d]);
  const last = unit.lastIndexOf("/");
  return make(unit, dimension, size, unit.slice(0, last), unit.slice(last + 1));
};

const sameQuotients = ["mass/mass", "volume/volume", "length/length"];

/** Takes a unit text apart, or throws `unit/unknown`. */
export const knownUnit = (unit: string, path: string): UnitParts =>
  unitParts(unit) ?? fail("unit/unknown", path, unit, "a unit, such as lb, fl oz/1000 ft2 or kg/ha");

/** The exact ratio of two units of one dimension, as a fraction. */
export const exactRatio = (from: UnitParts, to: UnitParts): Fraction =>
  reduced(from.size[0] * to.size[1], from.size[1] * to.size[0]);

/** How to get from one unit to another of the same dimension; throws where there is no way. */
export const ratioOf = (from: string, to: string, path: string): Ratio => {
  const source = knownUnit(from, path);
  const seen = source.ratios.get(to);
  if (seen !== undefined) return seen;
  const target = knownUnit(to, path);
  if (source.dimension !== target.dimension) {
    fail("unit/mismatch", path, to, `a unit of ${source.dimension}, which ${from} measures`);
  }
  const [top, bottom] = exactRatio(source, target);
  const ratio = { top: Number(top), bottom: Number(bottom), from: source.zero, to: target.zero };
  source.ratios.set(to, ratio);
  return ratio;
};
