import { mean } from "../../numeric/index.js";
import { allOf, expectFields, fail, outOfRange, type Quantity, quantityOf } from "../../quantity/index.js";
import { type Carrier, positive, type Time, wholeNumber } from "../inputs.js";
import { runTimes } from "../volume/ground-speed.js";
import {
  calibrated,
  errorsOf,
  groundOf,
  rateOver,
  readingSet,
  type SprayCalibration,
  type SprayedGround,
  type StatedErrors,
  volumesOf,
} from "./spray-calibration.js";

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
 * @param input.catchTime - `tc`
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
  const sets = [readingSet("catches", catches, outOf), ...(timed ? [readingSet("runs", times)] : [])];
  return calibrated(
    "catch",
    rate,
    sets,
    errors,
    timed || errors.time !== undefined ? ["volume", "area", "time"] : ["volume", "area"],
  );
};

const timesOf = (times: readonly Time[] | undefined): readonly Time[] =>
  times === undefined ? fail("missing", "times", times, "the times of the runs") : runTimes(times, "times");

const boomOf = (outOf: unknown, catches: unknown): number | undefined => {
  if (outOf === undefined) return undefined;
  const all = wholeNumber(outOf, "outOf");
  const caught = Array.isArray(catches) ? catches.length : 0;
  return all < caught ? outOfRange("outOf", all, { min: caught }, "{}, which were caught") : all;
};
