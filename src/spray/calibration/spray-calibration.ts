import {
  type Estimate,
  type EstimateFactor,
  estimateOfProduct,
  mean,
  meanEstimate,
} from "../../numeric/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectQuantity,
  expectRecord,
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
  type Time,
  wholeNumber,
} from "../inputs.js";
import { runTimes } from "../volume/ground-speed.js";
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

const groundOf = (input: {
  readonly area?: unknown;
  readonly course?: unknown;
  readonly width?: unknown;
}): Area => {
  if (input.area === undefined) {
    if (isCatchCourse(input.course)) {
      if (input.width !== undefined)
        fail("conflict", "width", input.width, "no width, because the course of catchCourse has its area");
      return ground(input.course.area, "course.area");
    }
    const { course, width } = allOf({
      course: () => positive(input.course, "course", "length"),
      width: () => positive(input.width, "width", "length"),
    });
    return testArea({ distance: course, swath: width });
  }
  if (input.course !== undefined || input.width !== undefined) {
    fail("conflict", "area", input.area, "an area, or a course and a width, but not both");
  }
  return ground(input.area, "area");
};

/** Volumes of one carrier, all above zero. */
const volumesOf = <S extends Carrier>(
  input: readonly Quantity<"volume", S>[],
  path: string,
): readonly Quantity<"volume", S>[] => readingsOf(input, path, 1, (each, at) => carried(each, at, "volume"));

const names = { volume: "the volumes", area: "the area", time: "the times" } as const;
type Kind = keyof typeof names;

/** The stated errors of these kinds. A misspelt one is no error of 0: it is refused, as is one that has no place here. */
const errorsOf = (input: unknown, kinds: readonly Kind[]): StatedErrors => {
  if (input === undefined) return {};
  const errors = expectRecord(input, "errors");
  const door = checks();
  const found: Partial<Record<Kind, Share>> = {};
  for (const [key, error] of Object.entries(errors)) {
    const kind = kinds.find((one) => one === key);
    if (error === undefined) continue;
    const path = `errors.${key}`;
    door.run(() => {
      if (kind === undefined) return fail("type", path, key, kinds.join(", "));
      found[kind] = expectQuantity(error, { dimension: "1", of: "none", bound: "non-negative" }, path);
    });
  }
  door.done();
  return found;
};

/** The record: the rate, and its error where the readings have a spread. */
const calibrated = <S extends Carrier>(
  method: SprayCalibration<S>["method"],
  rate: Quantity<"volume/area", S>,
  lists: readonly {
    readonly name: string;
    readonly readings: readonly Quantity<string, string>[];
    readonly outOf?: number;
  }[],
  errors: StatedErrors,
  kinds: readonly Kind[],
): SprayCalibration<S> => {
  const checked: string[] = [];
  const notChecked: string[] = [];
  const factors: EstimateFactor[] = [];
  for (const { name, readings, outOf } of lists) {
    if (readings.length > 1) {
      factors.push({ estimate: meanEstimate(readings, outOf === undefined ? {} : { outOf }) });
      checked.push(`the spread of ${readings.length} ${name}`);
    } else {
      notChecked.push(`the spread of the ${name}: there is one`);
    }
  }
  const spread = (lists[0]?.readings.length ?? 0) > 1;
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

/**
 * Calibration by catching: what nozzles put out in a time, and the time that the run over the ground takes.
 * It covers the timed catch, the 1/128-acre method (`catchCourse` gives the course), the hand gun and the
 * backpack.
 *
 * `V = n c / A * (t / tc)`
 *
 * - `c` mean of the catches, `n` nozzles that together treat the width
 * - `A` the ground, `area` or `course * width`
 * - `V` in gal/acre, L/ha or imp gal/acre, as the first catch is given
 * - `t` mean time of the runs over it, `tc` time of each catch; where both are left out, each catch lasted
 *   as long as the run
 *
 * With two catches or more the result carries its standard error: the spread of the catches and of the
 * times and the stated errors, added as squares. A stated error of the time counts also where each catch lasted
 * as long as the run: somebody started and stopped it. Where every nozzle of a boom was caught, or some of them,
 * `outOf` says how many there are, so that the differences between nozzles do not count as ignorance.
 *
 * @param input.catches - one for every nozzle caught or every repeat, of spray or of water, above zero
 * @throws RatewrightError with every problem: `missing` (a catch that is not there is not skipped),
 * `range`, `conflict`, `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`
 * Source: Ohio State University Extension Bulletin 817 and FABE-520; LSU AgCenter (two nozzles a row);
 * Pesticide Environmental Stewardship, spray gun calibration; JCGM 100:2008 (GUM), 5.1.6.
 *
 * @example
 * ```ts
 * import { calibrationByCatch, catchCourse, quantity } from "ratewright";
 * const measured = calibrationByCatch({
 *   catches: [39, 41, 40].map((value) => quantity(value, "fl oz", "water")),
 *   catchTime: quantity(30, "s"),
 *   times: [quantity(31, "s"), quantity(29, "s")],
 *   course: quantity(204.1875, "ft"),
 *   width: quantity(20, "in"),
 *   errors: { area: quantity(1, "%") },
 * });
 * Number(measured.rate.in("gal/acre").toFixed(6)); // => 40
 * Number(measured.estimate?.standardError.in("gal/acre").toFixed(2)); // => 1.51
 * measured.notChecked; // => ["the error of the volumes: not stated", "the error of the times: not stated"]
 * const course = catchCourse({ width: quantity(20, "in") });
 * const read = calibrationByCatch({ catches: [quantity(40, "fl oz", "water")], course });
 * Number(read.rate.in("gal/acre").toFixed(6)); // => 40
 * ```
 */
export const calibrationByCatch = <S extends Carrier>(
  input: SprayedGround & {
    readonly catches: readonly Quantity<"volume", S>[];
    readonly nozzles?: number;
    readonly outOf?: number;
    readonly catchTime?: Time;
    readonly times?: readonly Time[];
    readonly errors?: StatedErrors;
  },
): SprayCalibration<S> => {
  expectFields(input, [
    "area",
    "course",
    "width",
    "catches",
    "nozzles",
    "outOf",
    "catchTime",
    "times",
    "errors",
  ]);
  const timed = input.catchTime !== undefined || input.times !== undefined;
  const { catches, area, nozzles, outOf, catchTime, times, errors } = allOf({
    catches: () => volumesOf(input.catches, "catches"),
    area: () => groundOf(input),
    nozzles: () => (input.nozzles === undefined ? 1 : wholeNumber(input.nozzles, "nozzles")),
    outOf: () => boomOf(input.outOf, input.catches),
    catchTime: () => (timed ? positive(input.catchTime, "catchTime", "time") : undefined),
    times: () => (timed ? timesOf(input.times) : []),
    errors: () => errorsOf(input.errors, ["volume", "area", "time"]),
  });
  const first = catches[0] as Quantity<"volume", S>;
  const seconds = times.map((time) => time.in("s"));
  const share = catchTime === undefined ? 1 : mean(seconds) / catchTime.in("s");
  const caught = mean(catches.map((each) => each.value)) * nozzles * share;
  const total = quantityOf<"volume", S>(caught, first.unit, first.of, "catches");
  const rate = rateOver(total, area);
  const lists = [
    { name: "catches", readings: catches as never, ...(outOf === undefined ? {} : { outOf }) },
    ...(timed ? [{ name: "runs", readings: times as never }] : []),
  ];
  return calibrated(
    "catch",
    rate,
    lists,
    errors,
    timed || errors.time !== undefined ? ["volume", "area", "time"] : ["volume", "area"],
  );
};

/**
 * Calibration by refilling: the volume that it takes to fill the tank up again after a known area, on the
 * same level spot. `V = u / A`, with `u` the mean of the refills and `A` the ground of each run.
 *
 * A course of 660 ft makes it `gal * 66 / swath in ft`; that constant is 43 560 / 660, and follows from the
 * units. For a hand gun or a backpack the area is the plot that was sprayed, such as 1000 ft2 or 250 ft2.
 *
 * @param input.refills - one for every run, above zero
 * @throws RatewrightError with every problem: `missing`, `range`, `conflict`, `unit/mismatch`,
 * `substance/mismatch`, `type`, `not-finite`
 * Source: Mesa County Weed and Pest, refill method (4 gal on 1/10 acre is 40 gal/acre).
 *
 * @example
 * ```ts
 * import { calibrationByRefill, quantity } from "ratewright";
 * const measured = calibrationByRefill({
 *   refills: [quantity(7.5, "gal", "water")],
 *   course: quantity(690, "ft"),
 *   width: quantity(30, "ft"),
 * });
 * Number(measured.rate.in("gal/acre").toFixed(2)); // => 15.78
 * measured.notChecked[0]; // => "the spread of the refills: there is one"
 * ```
 */
export const calibrationByRefill = <S extends Carrier>(
  input: SprayedGround & {
    readonly refills: readonly Quantity<"volume", S>[];
    readonly errors?: Omit<StatedErrors, "time">;
  },
): SprayCalibration<S> => {
  expectFields(input, ["area", "course", "width", "refills", "errors"]);
  const { refills, area, errors } = allOf({
    refills: () => volumesOf(input.refills, "refills"),
    area: () => groundOf(input),
    errors: () => errorsOf(input.errors, ["volume", "area"]),
  });
  const first = refills[0] as Quantity<"volume", S>;
  const used = quantityOf(mean(refills.map((each) => each.value)), first.unit, first.of, "refills");
  const rate = rateOver(used as unknown as Quantity<"volume", S>, area);
  const lists = [{ name: "refills", readings: refills as never }];
  return calibrated("refill", rate, lists, errors, ["volume", "area"]);
};

const timesOf = (times: readonly Time[] | undefined): readonly Time[] =>
  times === undefined ? fail("missing", "times", times, "the times of the runs") : runTimes(times, "times");

const boomOf = (outOf: unknown, catches: unknown): number | undefined => {
  if (outOf === undefined) return undefined;
  const all = wholeNumber(outOf, "outOf");
  const caught = Array.isArray(catches) ? catches.length : 0;
  return all < caught ? fail("range", "outOf", all, `at least the ${caught} that were caught`) : all;
};

const rateOver = <S extends Carrier>(used: Quantity<"volume", S>, area: Area): Quantity<"volume/area", S> => {
  const square = quantityOf(numberIn(used, "L") / area.in("m2"), "L/m2", used.of, "rate");
  return inSystemOf(square as unknown as Quantity<"volume/area", S>, used);
};
