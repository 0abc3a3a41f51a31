import { eachOf } from "../numeric/house.js";
import { expectReadings } from "../numeric/index.js";
import { dimensionDue } from "../quantity/house.js";
import {
  type Area,
  expectAmount,
  expectQuantity,
  fail,
  inUnit,
  outOfRange,
  type Quantity,
  quantityOf,
  type Share,
  unitSystem,
} from "../quantity/index.js";

export { eachOf, mostItems } from "../numeric/house.js";
export type { Area, Length, Pressure, Share, Speed, Time } from "../quantity/index.js";

/**
 * What comes out of the nozzles: finished spray, the water of a calibration, or a product that is put on undiluted.
 * They are told apart, because density sets the flow.
 */
export type Carrier = "spray" | "water" | "product" | `product:${string}`;

const isCarrier = (of: string): boolean => of === "spray" || of === "water" || /^product(:[^/]+)?$/.test(of);

/** Takes a quantity of a dimension that is above zero. */
export const positive = <const D extends string, const S extends string = "none">(
  input: unknown,
  path: string,
  dimension: D,
  of: S = "none" as S,
): Quantity<D, S> =>
  input === undefined || input === null
    ? dimensionDue("missing", path, input, dimension)
    : expectQuantity(input, { dimension, of, bound: "positive" }, path);

/** Takes a quantity of spray or water that is above zero. */
export const carried = <const D extends string, S extends Carrier>(
  input: Quantity<D, S>,
  path: string,
  dimension: D,
): Quantity<D, S> => {
  if (input === undefined || input === null) dimensionDue("missing", path, input, dimension);
  // Its carrier is that of the input, which the compiler knows from the call.
  const q = expectQuantity<D, S>(input, { dimension, bound: "positive" }, path);
  return isCarrier(q.of)
    ? q
    : fail("substance/mismatch", path, q, "a quantity of spray, of water, or of undiluted product");
};

/** Takes a flow or a volume per area of a carrier, above zero. */
export const carriedOf = (input: unknown, path: string): Quantity<"volume/time" | "volume/area", string> => {
  if (input === undefined || input === null) fail("missing", path, input, "a flow or a volume per area");
  const q = expectAmount(input, { dimensions: ["volume/time", "volume/area"], bound: "positive" }, path);
  return isCarrier(q.of)
    ? q
    : fail("substance/mismatch", path, q, "a quantity of spray, of water, or of undiluted product");
};

/** Takes a list of readings of one kind, each by `one`, or throws with every problem; in the unit of the first. */
export const readingsOf = <D extends string, S extends string>(
  input: readonly Quantity<D, S>[],
  path: string,
  least: number,
  one: (each: Quantity<D, S>, at: string) => Quantity<D, S>,
): readonly Quantity<D, S>[] => {
  let first: Quantity<D, S> | undefined;
  const list = eachOf(input, path, "reading", (each, at) => {
    const q = one(each as Quantity<D, S>, at);
    first ??= q;
    return q.of === first.of ? q : fail("substance/mismatch", at, q, `a quantity of ${first.of}`);
  });
  return expectReadings(list, path, least);
};

/** Takes a share above zero and, where it is said, no more than a whole. */
export const share = (input: unknown, path: string, most?: number): Share => {
  if (input === undefined || input === null) fail("missing", path, input, "a share, such as 60 %");
  const q = positive(input, path, "1");
  return most !== undefined && q.in("1") > most ? outOfRange(path, q, { max: most * 100, unit: "%" }) : q;
};

/** Takes an area that is above zero, whatever its tag. */
export const ground = (input: unknown, path: string): Area => {
  if (input === undefined || input === null) fail("missing", path, input, "an area");
  const q = expectQuantity(input, { dimension: "area", bound: "positive" }, path);
  return ["none", "treated", "gross", "plan"].includes(q.of)
    ? quantityOf<"area", "none">(q.value, q.unit, "none", path)
    : fail("substance/mismatch", path, q, "an area of none, treated, gross or plan");
};

/** A whole number of things, at least one. */
export const wholeNumber = (input: unknown, path: string): number =>
  typeof input === "number" && Number.isInteger(input) && input >= 1
    ? input
    : typeof input === "number"
      ? outOfRange(path, input, { step: 1, min: 1 })
      : fail("type", path, input, "a whole number, 1 or more");

const readable = {
  "volume/area": { US: "gal/acre", metric: "L/ha", imperial: "imp gal/acre", both: "gal/acre" },
  "volume/time": { US: "gal/min", metric: "L/min", imperial: "imp gal/min", both: "gal/min" },
  "length/time": { US: "mi/h", metric: "km/h", imperial: "mi/h", both: "mi/h" },
  "area/time": { US: "acre/h", metric: "ha/h", imperial: "acre/h", both: "acre/h" },
  length: { US: "in", metric: "cm", imperial: "in", both: "in" },
} as const;

/** A quantity in the unit that its reader uses, who gave `like`; the top of a quotient says it, for an acre is imperial too. */
export const inSystemOf = <D extends keyof typeof readable, S extends string>(
  q: Quantity<D, S>,
  like: { readonly unit: string },
): Quantity<D, S> => inUnit(q, readable[q.dimension][unitSystem(like.unit.split("/")[0] as string)]);
