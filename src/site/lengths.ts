import { checks, expectQuantity, expectRecord, fail, type Quantity, quantity } from "../quantity/index.js";

/** A length, as the shapes take it. */
export type Length = Quantity<"length", "none">;

/** An area, as the shapes give it. */
export type Area = Quantity<"area", "none">;

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
  Object.hasOwn(units, unit) ? units[unit as keyof typeof units] : unit === "mi" ? units.ft : units.m;

/** Takes a length that is there, or throws. */
export const lengthOf = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative" | "any" = "positive",
): Length =>
  input === undefined
    ? fail("missing", path, input, "a length")
    : expectQuantity(input, { dimension: "length", of: "none", bound }, path);

/** Takes an area that is there, or throws. */
export const areaOf = (input: unknown, path: string): Area =>
  input === undefined
    ? fail("missing", path, input, "an area")
    : expectQuantity(input, { dimension: "area", of: "none", bound: "positive" }, path);

/** Takes a list of lengths with at least `least` items; reports every item that is not right. */
export const lengthList = (
  input: unknown,
  path: string,
  least: number,
  bound: "positive" | "non-negative" = "non-negative",
): readonly Length[] => {
  if (input === undefined) return fail("missing", path, input, "a list of lengths");
  if (!Array.isArray(input)) return fail("type", path, input, "a list of lengths");
  if (input.length < least) return fail("range", path, input, `a list of ${least} lengths or more`);
  const door = checks();
  const lengths: Length[] = [];
  // not map: a hole in a list would be skipped
  for (let i = 0; i < input.length; i++) {
    const length = door.run(() => lengthOf(input[i], `${path}[${i}]`, bound));
    if (length !== undefined) lengths.push(length);
  }
  door.done();
  return lengths;
};

/** The lengths of a record as numbers of one unit, that of the first; reports every one that is not right. */
export const lengthsOf = <const K extends string>(
  input: unknown,
  keys: readonly K[],
): { readonly of: Readonly<Record<K, number>>; readonly units: UnitSet } => {
  const record = expectRecord(input, "shape", `a record with ${keys.join(", ")}`);
  const door = checks();
  const lengths = keys.map((key) => door.run(() => lengthOf(record[key], key)));
  door.done();
  const set = unitSet((lengths[0] as Length).unit);
  const of = {} as Record<K, number>;
  keys.forEach((key, i) => {
    of[key] = (lengths[i] as Length).in(set.length);
  });
  return { of, units: set };
};

/** A computed area; one too small or too large for a number is an error, not a zero. */
export const areaIn = (value: number, set: UnitSet): Area =>
  value > 0 || !Number.isFinite(value)
    ? quantity(value, set.area)
    : fail("range", "shape", value, "an area above zero");
