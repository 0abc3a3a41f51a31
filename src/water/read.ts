import { expectWithin, notShare } from "../numeric/house.js";
import { dimensionNoun } from "../quantity/house.js";
import {
  type Area,
  type Bound,
  type Checks,
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  type Length,
  numberIn,
  outOfRange,
  type Pressure,
  type Problem,
  type Quantity,
  quantityOf,
  RatewrightError,
  type Time,
} from "../quantity/index.js";

export type { Area, Length, Pressure, Share, Temperature, Time } from "../quantity/index.js";

export type Volume = Quantity<"volume", "water">;
export type Flow = Quantity<"volume/time", "water">;
export type Rate = Quantity<"length/time", "none">;
export type Slope = Quantity<"length/length", "none">;
export type PerTime = Quantity<"1/time", "none">;
export type Angle = Quantity<"angle", "none">;
export type Irradiance = Quantity<"irradiance", "none">;

/** Reads one field, or throws with its path. */
export type Read<T> = (input: unknown, path: string) => T;

type Taken<R extends Readonly<Record<string, Read<unknown>>>> = {
  readonly [K in keyof R]: ReturnType<R[K]>;
};

/**
 * Takes the named fields of a record, each by its reader, and throws every problem there is: unknown fields,
 * missing ones, wrong ones. `at` is the place of the record inside another one.
 */
export const readRecord = <const R extends Readonly<Record<string, Read<unknown>>>>(
  input: unknown,
  readers: R,
  what: string,
  at = "",
): Taken<R> => {
  const record = expectRecord(input, at === "" ? "input" : at, what);
  const names = Object.keys(readers);
  // Nearly every record is sound: a list of problems is made with the first one.
  let refused: Checks | undefined;
  const refuse = (error: unknown): void => {
    refused ??= checks();
    refused.run(() => {
      throw error;
    });
  };
  try {
    expectFields(record, names, at, what);
  } catch (error) {
    refuse(error);
  }
  const found: Record<string, unknown> = {};
  for (const name of names) {
    try {
      found[name] = (readers[name] as Read<unknown>)(record[name], at === "" ? name : `${at}.${name}`);
    } catch (error) {
      refuse(error);
    }
  }
  refused?.done();
  // Each value comes from the reader of its name; where one threw, all of its problems were thrown above.
  return found as Taken<R>;
};

/** Another dimension is told with what would have been right. */
const suchAs = <T>(such: string, dimension: string, run: () => T): T => {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RatewrightError) || error.code !== "unit/mismatch") throw error;
    throw new RatewrightError({
      ...error.problems[0],
      expected: `${dimensionNoun(dimension)}, such as ${such}`,
    } as Problem);
  }
};

const dimensioned =
  <const D extends string, const S extends string>(
    dimension: D,
    of: S,
    bound: Bound,
    such: string,
  ): Read<Quantity<D, S>> =>
  (input, path) => {
    if (input === undefined || input === null) {
      return fail("missing", path, input, `${dimensionNoun(dimension)}, such as ${such}`);
    }
    const q = suchAs(such, dimension, () => expectQuantity(input, { dimension, bound }, path));
    if (q.of !== of) fail("substance/mismatch", path, q, `a quantity of ${of}, such as ${such}`);
    return expectQuantity(q, { dimension, of }, path);
  };

const inches = 'quantity(0.5, "in")';

/** A depth of water. A volume per area is one too, and is pointed to the function that makes a depth of it. */
const depthWith =
  (bound: Bound): Read<Length> =>
  (input, path) => {
    const unit: unknown = Object(input).unit;
    if (typeof unit === "string" && /^(gal|L|m3|acre-in|acre-ft|ft3|imp gal)\/[^/]+$/.test(unit)) {
      fail("unit/mismatch", path, input, "a depth: depthOf(volumePerArea) makes one of a volume per area");
    }
    if (typeof unit === "string" && /^(in|ft|mm|cm|m)\/(s|min|h|d|week)$/.test(unit)) {
      fail(
        "unit/mismatch",
        path,
        input,
        'a depth: a rate over a time is one, rate.times(quantity(1, "week"))',
      );
    }
    return dimensioned("length", "none", bound, inches)(input, path);
  };

export const depth: Read<Length> = depthWith("positive");
export const depthOrNone: Read<Length> = depthWith("non-negative");
export const length: Read<Length> = dimensioned("length", "none", "positive", 'quantity(30, "ft")');
export const anyLength: Read<Length> = dimensioned("length", "none", "any", 'quantity(10, "ft")');
export const time: Read<Time> = dimensioned("time", "none", "positive", 'quantity(20, "min")');
export const timeOrNone: Read<Time> = dimensioned("time", "none", "non-negative", 'quantity(20, "min")');
export const rate: Read<Rate> = dimensioned("length/time", "none", "positive", 'quantity(0.8, "in/h")');
export const rateOrNone: Read<Rate> = dimensioned(
  "length/time",
  "none",
  "non-negative",
  'quantity(4, "mm/d")',
);
/** What the sun outside the air, 118.08 MJ/m2/d (FAO 56, Gsc), evaporates at 2.45 MJ/kg, in mm: more than any grass uses. */
export const mostUse = 48.2;

/** What turf uses in a day; 5.6 in/d is a figure in mm/d. */
export const useOf =
  <Q extends { readonly value: number; readonly unit: string }>(
    read: Read<Q>,
    unit: "mm" | "mm/d",
  ): Read<Q> =>
  (input, path) => {
    const use = read(input, path);
    return expectWithin(
      use,
      numberIn(use, unit),
      path,
      { max: mostUse, unit },
      "a use of {}: no sun evaporates more in a day",
    );
  };

export const flow: Read<Flow> = dimensioned(
  "volume/time",
  "water",
  "positive",
  'quantity(8, "gal/min", "water")',
);
export const volume: Read<Volume> = dimensioned(
  "volume",
  "water",
  "positive",
  'quantity(500, "gal", "water")',
);
export const volumeOrNone: Read<Volume> = dimensioned(
  "volume",
  "water",
  "non-negative",
  'quantity(52, "mL", "water")',
);
export const pressure: Read<Pressure> = dimensioned("pressure", "none", "positive", 'quantity(45, "psi")');
export const slope: Read<Slope> = dimensioned(
  "length/length",
  "none",
  "non-negative",
  'quantity(5, "% grade")',
);
export const perTime: Read<PerTime> = dimensioned("1/time", "none", "positive", 'quantity(2, "1/h")');
export const angle: Read<Angle> = dimensioned("angle", "none", "any", 'quantity(180, "deg")');

/** An area, also one that is said to be treated, gross or plan: those words are neutral here. */
export const area: Read<Area> = (input, path) => {
  const such = 'quantity(12400, "ft2")';
  if (input === undefined || input === null) return fail("missing", path, input, `an area, such as ${such}`);
  const q = expectQuantity(input, { dimension: "area", bound: "positive" }, path);
  if (!["none", "treated", "gross", "plan"].includes(q.of)) {
    fail("substance/mismatch", path, q, `an area of nothing, such as ${such}`);
  }
  return made(q.value, q.unit, "area");
};

interface Bounds {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
}

/**
 * A share in percent; a bare number is refused, for 0.7 and 70 are both written. At `least` or below a percent above zero is
 * refused too: 0.7 % for 70 %.
 */
export const percent =
  (bounds: Bounds, least = 0): Read<number> =>
  (input, path) => {
    if (typeof input === "number") {
      return fail("type", path, input, 'a share, such as quantity(40, "%") or quantity(0.4, "1")');
    }
    const q = dimensioned("1", "none", "any", 'quantity(70, "%")')(input, path);
    return notShare(expectNumber(q.in("%"), path, bounds), path, { least });
  };

/** A pure number within bounds. */
export const number =
  (bounds: Bounds = {}): Read<number> =>
  (input, path) =>
    input === undefined ? fail("missing", path, input, "a number") : expectNumber(input, path, bounds);

/** A whole number within bounds. */
export const whole =
  (bounds: Bounds = {}): Read<number> =>
  (input, path) => {
    const n = number(bounds)(input, path);
    return Number.isInteger(n) ? n : outOfRange(path, n, { step: 1 });
  };

/** A field that may be left out. */
export const optional =
  <T>(read: Read<T>): Read<T | undefined> =>
  (input, path) =>
    input === undefined ? undefined : read(input, path);

/** One of a few words; the first of them where it is left out and there is a default. */
export const word =
  <const T extends string>(words: readonly T[], otherwise?: T): Read<T> =>
  (input, path) =>
    (input === undefined ? otherwise : words.find((one) => one === input)) ??
    fail("type", path, input, `one of ${words.map((one) => `"${one}"`).join(", ")}`);

/**
 * Whether a unit is metric, by its top; all others are answered in US customary ones. A pattern of its own, for
 * `unitSystem` brings the names of all units into the bundle of every formula; a test holds the two together.
 */
export const isMetric = (unit: string): boolean =>
  /^(um|mm|cm|m|km|cm2|m2|100 m2|ha|mL|L|m3|kPa|Pa|bar|°C)(\/|$)/.test(unit);

/** A computed quantity; one that is no number any more is refused with what would have been right. */
export const made = <const D extends string, const S extends string = "none">(
  value: number,
  unit: string,
  dimension: D,
  of: S = "none" as S,
): Quantity<D, S> => {
  if (!Number.isFinite(value)) fail("range", "input", value, "figures whose result is a finite number");
  return expectQuantity(quantityOf(value, unit, of, "result"), { dimension, of }, "result");
};
