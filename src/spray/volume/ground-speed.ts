import { expectTravelSpeed } from "../../numeric/house.js";
import { mean } from "../../numeric/index.js";
import { allOf, expectFields, expectOneOf, quantity, unitSystem } from "../../quantity/index.js";
import { inSystemOf, type Length, positive, readingsOf, type Speed, type Time } from "../inputs.js";

/** What is averaged over several runs of one course: the times, or the speeds of the runs. */
export type SpeedAverage = "times" | "speeds";

/** Times of runs, all above zero. */
export const runTimes = (input: readonly Time[], path: string): readonly Time[] =>
  readingsOf(input, path, 1, (each, at) => positive(each, at, "time"));

/**
 * Ground speed from the time over a measured course, `v = L / t`, for one run or the mean of several, such
 * as up and down a slope; in mi/h or km/h, as the course is given.
 *
 * Which mean makes a difference where the runs differ. `"times"`, the default, is course over mean time:
 * at a constant flow the spray that lands on the course goes with the time that the run takes, so this
 * speed gives the volume that both runs together put on. `"speeds"` is the mean of the speeds of the runs;
 * it is never the slower of the two, and so states too small a volume: for 4 and 6 mph on the two ways it
 * says 5 where 4.8 fits. Printed worksheets (a consortium's spray gun page, an operator manual) average
 * the times.
 *
 * Take it on ground like the site, with the tank half full, from a flying start.
 *
 * @param input - `course`; `times`, one for every run, all above zero; `average`
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`, by index of the time
 * Source: 0.682 x feet / seconds, University of Idaho Extension, band application; mean of three times,
 * Pesticide Environmental Stewardship, spray gun calibration.
 *
 * @example
 * ```ts
 * import { groundSpeed, quantity } from "ratewright";
 * const course = quantity(88, "ft");
 * groundSpeed({ course, times: [quantity(20, "s")] }).in("mi/h"); // => 3
 * const times = [quantity(15, "s"), quantity(10, "s")];
 * Number(groundSpeed({ course, times }).in("mi/h").toFixed(6)); // => 4.8
 * Number(groundSpeed({ course, times, average: "speeds" }).in("mi/h").toFixed(6)); // => 5
 * ```
 */
export const groundSpeed = (input: {
  readonly course: Length;
  readonly times: readonly Time[];
  readonly average?: SpeedAverage;
}): Speed => {
  expectFields(input, ["course", "times", "average"]);
  const { average = "times" } = input;
  const { course, times } = allOf({
    average: () => expectOneOf(average, ["times", "speeds"], "average"),
    course: () => positive(input.course, "course", "length"),
    times: () => runTimes(input.times, "times"),
  });
  const unit = unitSystem(course.unit) === "metric" ? "m/s" : "ft/s";
  const length = unit === "m/s" ? course.in("m") : course.in("ft");
  const seconds = times.map((time) => time.in("s"));
  const speed = average === "times" ? length / mean(seconds) : mean(seconds.map((s) => length / s));
  return inSystemOf(quantity(speed, unit), course);
};

/**
 * How long a course takes at a speed, `t = L / v`, in seconds: to set the pace by a stop-watch.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`
 * Source: Alberta Agriculture, Agdex 606-1, chart for 800 m (8 km/h takes 6:00).
 *
 * @example
 * ```ts
 * import { courseTime, quantity } from "ratewright";
 * Number(courseTime({ course: quantity(800, "m"), speed: quantity(8, "km/h") }).in("s").toFixed(6)); // => 360
 * ```
 */
export const courseTime = (input: { readonly course: Length; readonly speed: Speed }): Time => {
  expectFields(input, ["course", "speed"]);
  const { course, speed } = allOf({
    course: () => positive(input.course, "course", "length"),
    speed: () => expectTravelSpeed(positive(input.speed, "speed", "length/time"), "speed"),
  });
  return quantity(course.per(speed).in("s"), "s");
};
