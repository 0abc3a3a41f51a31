import { type Estimate, type EstimateFactor, estimateOfProduct, meanEstimate } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  numberIn,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { testArea } from "../../spread/index.js";
import {
  type Area,
  type Carrier,
  carried,
  ground,
  inSystemOf,
  type Length,
  positive,
  readingsOf,
  type Share,
} from "../inputs.js";
import type { CatchCourse } from "./catch-course.js";

/** The ground of a calibration: a known area, a course and the width that is sprayed on it, or what `catchCourse` gave. */
export type SprayedGround =
  | { readonly course: CatchCourse; readonly width?: undefined; readonly area?: undefined }
  | { readonly area: Area; readonly course?: undefined; readonly width?: undefined }
  | { readonly course: Length; readonly width: Length; readonly area?: undefined };

/** Relative standard errors that are stated and not seen in the spread of the readings. */
export interface StatedErrors {
  /** Of the jug, the sight gauge or the flow meter, where all readings share it. */
  readonly volume?: Share;
  /** Of the ground: course and width taken together. */
  readonly area?: Share;
  /** Of the stop-watch, start and stop. */
  readonly time?: Share;
}

/** What a sprayer puts down, as measured. */
export interface SprayCalibration<S extends string> {
  readonly type: "spray-calibration";
  readonly version: 1;
  readonly method: "catch" | "refill";
  readonly rate: Quantity<"volume/area", S>;
  /** The rate with its standard error; left out where a single reading shows no spread. */
  readonly estimate?: Estimate<"volume/area", S>;
  /** What the error was made of. */
  readonly checked: readonly string[];
  /** What is not in it. */
  readonly notChecked: readonly string[];
}

const isCatchCourse = (input: unknown): input is { readonly area: unknown } =>
  typeof input === "object" && input !== null && (input as { type?: unknown }).type === "catch-course";

/** The ground of a calibration: an area, a course and a width, or that of `catchCourse`. */
export const groundOf = (input: {
  readonly area?: unknown;
  readonly course?: unknown;
  readonly width?: unknown;
}): Area => {
  const given = { area: input.area, course: input.course, width: input.width };
  if (given.area === undefined) {
    if (isCatchCourse(given.course)) {
      if (given.width !== undefined)
        fail("conflict", "width", given.width, "no width, because the course of catchCourse has its area");
      return ground(given.course.area, "course.area");
    }
    if (given.course === undefined && given.width === undefined)
      fail("missing", "area", undefined, "an area, or a course and a width");
    const { course, width } = allOf({
      course: () => positive(given.course, "course", "length"),
      width: () => positive(given.width, "width", "length"),
    });
    return testArea({ distance: course, swath: width });
  }
  if (given.course !== undefined || given.width !== undefined) {
    fail("conflict", "area", given.area, "an area, or a course and a width, but not both");
  }
  return ground(given.area, "area");
};

/** Volumes of one carrier, all above zero. */
export const volumesOf = <S extends Carrier>(
  input: readonly Quantity<"volume", S>[],
  path: string,
): readonly Quantity<"volume", S>[] => readingsOf(input, path, 1, (each, at) => carried(each, at, "volume"));

const names = { volume: "the volumes", area: "the area", time: "the times" } as const;
export type ErrorKind = keyof typeof names;

/** The stated errors of these kinds. A misspelt one is no error of 0: it is refused, as is one that has no place here. */
export const errorsOf = (input: unknown, kinds: readonly ErrorKind[]): StatedErrors => {
  if (input === undefined) return {};
  const given = expectFields(input, kinds, "errors");
  const read = (kind: ErrorKind): Share | undefined =>
    given[kind] === undefined
      ? undefined
      : expectQuantity(given[kind], { dimension: "1", of: "none", bound: "non-negative" }, `errors.${kind}`);
  const { volume, area, time } = allOf({
    volume: () => read("volume"),
    area: () => read("area"),
    time: () => read("time"),
  });
  return { ...(volume && { volume }), ...(area && { area }), ...(time && { time }) };
};

/** Readings of one kind: how many there are, and their mean with its error where there are two or more. */
export interface ReadingSet {
  readonly name: string;
  readonly count: number;
  readonly spread: () => EstimateFactor;
}

/** Readings as {@link calibrated} takes them; `outOf` says how many things they were drawn from. */
export const readingSet = <D extends string, S extends string>(
  name: string,
  readings: readonly Quantity<D, S>[],
  outOf?: number,
): ReadingSet => ({
  name,
  count: readings.length,
  spread: () => ({ estimate: meanEstimate(readings, outOf === undefined ? {} : { outOf }) }),
});

/** The record: the rate, and its error where the readings have a spread. */
export const calibrated = <S extends Carrier>(
  method: SprayCalibration<S>["method"],
  rate: Quantity<"volume/area", S>,
  sets: readonly ReadingSet[],
  errors: StatedErrors,
  kinds: readonly ErrorKind[],
): SprayCalibration<S> => {
  const checked: string[] = [];
  const notChecked: string[] = [];
  const factors: EstimateFactor[] = [];
  for (const { name, count, spread } of sets) {
    if (count > 1) {
      factors.push(spread());
      checked.push(`the spread of ${count} ${name}`);
    } else {
      notChecked.push(`the spread of the ${name}: there is one`);
    }
  }
  const spread = (sets[0]?.count ?? 0) > 1;
  for (const kind of kinds) {
    const relativeError = errors[kind];
    if (relativeError === undefined) notChecked.push(`the error of ${names[kind]}: not stated`);
    else {
      factors.push({ relativeError });
      checked.push(`the stated error of ${names[kind]}`);
    }
  }
  return {
    type: "spray-calibration",
    version: 1,
    method,
    rate,
    ...(spread && { estimate: estimateOfProduct(rate, factors) }),
    checked: spread ? checked : [],
    notChecked,
  };
};

/** What was used over the ground, in the unit of whoever measured it. */
export const rateOver = <S extends Carrier>(
  used: Quantity<"volume", S>,
  area: Area,
): Quantity<"volume/area", S> => {
  const perSquare = numberIn(used, "L") / area.in("m2");
  return inSystemOf(quantityOf<"volume/area", S>(perSquare, "L/m2", used.of, "rate"), used);
};
