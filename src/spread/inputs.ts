import { expectTravelSpeed } from "../numeric/house.js";
import { described, dimensionDue } from "../quantity/house.js";
import {
  type Area,
  allOf,
  checks,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../quantity/index.js";

export type { Area, Length, Speed, Time } from "../quantity/index.js";

/** Ground, whatever its tag: none, or how it was measured. */
export type AnyArea =
  | Area
  | Quantity<"area", "treated">
  | Quantity<"area", "gross">
  | Quantity<"area", "plan">;

type Bound = "positive" | "non-negative";

/** What a field must be: its dimension, and whether zero is taken. A length, an area or a time is of nothing. */
interface Need {
  readonly dimension: string;
  readonly bound?: Bound;
  readonly optional?: boolean;
}

const neutral: readonly string[] = ["none", "treated", "gross", "plan"];
const ofNothing: readonly string[] = ["length", "time", "length/time", "mass/volume"];

const taken = (input: unknown, path: string, need: Need): Quantity<string, string> | undefined => {
  if (input === undefined || input === null) {
    return need.optional ? undefined : dimensionDue("missing", path, input, need.dimension);
  }
  const q = expectQuantity(input, { dimension: need.dimension, bound: need.bound ?? "positive" }, path);
  if (ofNothing.includes(need.dimension) && q.of !== "none") {
    fail("substance/mismatch", path, q, `a ${need.dimension}, which is of none`);
  }
  if (need.dimension === "length/time") expectTravelSpeed(q, path);
  if (need.dimension === "area" && !neutral.includes(q.of)) {
    fail("substance/mismatch", path, q, "an area of none, treated, gross or plan");
  }
  return q;
};

type Taken<N extends Need> = N["optional"] extends true
  ? Quantity<N["dimension"], "none"> | undefined
  : Quantity<N["dimension"], "none">;

/**
 * Takes the named fields of a record as quantities, or throws every problem there is. The substances are
 * checked here and forgotten by the compiler: a formula that carries one on casts it back.
 */
export const fieldsOf = <const W extends Readonly<Record<string, Need>>>(
  record: Readonly<Record<string, unknown>>,
  needs: W,
  /** What a problem calls the field, where it has another name there. */
  path?: string,
): { readonly [K in keyof W]: Taken<W[K]> } => {
  const readers = Object.keys(needs).map((key) => [
    key,
    () => taken(record[key], path ?? key, needs[key] as Need),
  ]);
  return allOf(Object.fromEntries(readers)) as { readonly [K in keyof W]: Taken<W[K]> };
};

/**
 * Whether a length, an area or a volume is given in metric units; all others are answered in US customary ones.
 * A list of its own, for `unitSystem` brings the names of all units into the bundle of every formula; a test
 * holds the two together.
 */
export const isMetric = (unit: string): boolean => /^(um|mm|cm|m|km|cm2|m2|100 m2|ha|mL|L|m3)$/.test(unit);

/** A computed figure that has to lie above zero; one too small or too large for a number is an error. */
export const above = (value: number, path: string): number =>
  value > 0 && Number.isFinite(value)
    ? value
    : outOfRange(path, value, { above: 0 }, "inputs whose result is a number, {}");

/** Refuses catches whose sum over the row is nothing, or is no number any more. */
export const expectSum = (catches: readonly number[], offsets: readonly number[], path: string): void => {
  const reach = (offsets[offsets.length - 1] as number) - (offsets[0] as number);
  const sum = catches.reduce((a, b) => a + b, 0);
  if (sum > 1e-200 && sum * Math.max(1, reach) < 1e200) return;
  outOfRange(path, sum, { min: 1e-200, max: 1e200 }, "catches of {} in all");
};

/** More of anything than this in one list is taken for a slip. */
const mostItems = 100_000;

/** Takes a list that is not too long, as one of its own; a hole is an item that is not there. */
export const boundedList = (input: unknown, path: string): readonly unknown[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list");
  return input.length > mostItems
    ? outOfRange(path, described(`a list of ${input.length}`), { max: mostItems, count: "items" })
    : Array.from(input);
};

/** Reads every item of a list, also those that are not there, or throws the problems of all. */
export const eachOf = <T>(
  list: readonly unknown[],
  path: string,
  read: (item: unknown, i: number) => T,
): readonly T[] => {
  const problems = checks();
  const found = boundedList(list, path).map((item, i) => problems.run(() => read(item, i)));
  problems.done();
  return found as readonly T[];
};
