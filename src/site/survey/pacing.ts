import { type Estimate, mean, standardDeviation, statedEstimate } from "../../numeric/index.js";
import {
  checks,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  fail,
  likeQuantity,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Length, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";

/** A pace that was walked over a known course, with its error. */
export interface PaceCalibration {
  readonly type: "pace-calibration";
  readonly version: 1;
  /** The length of a pace with its standard error. */
  readonly pace: Estimate<"length", "none">;
  /** By how much one walk is off, as a share of its length: the standard deviation of the walks. */
  readonly walkError: Quantity<"1", "none">;
  /** Walks over the course. */
  readonly walks: number;
  /** Counts that the mean leaves out. */
  readonly dropped: readonly number[];
}

/** The least error of one count: it is whole paces, and may be off by half of one either way. */
const countError = 1 / Math.sqrt(12);

/**
 * The length of a pace from counts over a known course, with its standard error.
 *
 * `pace = course / (mean of the counts)`; the standard error is `pace * (s / mean) / sqrt(n)`, with `s` the
 * standard deviation of the `n` counts (by `n - 1`), but never less than 0.29 paces, what counting in whole paces
 * is off by. `drop: "high and low"` leaves the highest and the lowest count out of the mean, as one course does; the
 * error is still that of all walks.
 *
 * A pace is whatever is counted, one step or two; count the same thing later. Walk the course at least twice, better
 * three times or more, on ground like that of the site.
 *
 * Range: two counts or more, each above zero; with `drop` five or more.
 *
 * @throws RatewrightError `range` for too few counts or one that is not above zero; `missing`, `type`,
 * `unit/mismatch`, `not-finite`; every count that is not right is reported
 *
 * Source: surveying chapters of agricultural engineering texts (course over mean count); high and low dropped: college
 * course slides, "Field surveying"; the error: JCGM 100:2008 (GUM), 4.2.3 and F.2.2.1.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { paceCalibration } from "ratewright/site";
 * const mine = paceCalibration({ course: quantity(200, "ft"), counts: [62, 60, 64] });
 * Number(mine.pace.value.in("ft").toFixed(2)); // => 3.23
 * Number(mine.pace.standardError.in("ft").toFixed(2)); // => 0.06
 * Number(mine.walkError.in("%").toFixed(1)); // => 3.2
 * ```
 */
export const paceCalibration = (input: {
  readonly course: Length;
  readonly counts: readonly number[];
  readonly drop?: "high and low";
}): PaceCalibration => {
  const problems = checks();
  const record = recordWith(input, ["course", "counts", "drop"], problems, "input");
  const course = problems.run(() => lengthOf(record.course, "course"));
  const drop =
    record.drop === undefined
      ? undefined
      : problems.run(() => expectOneOf(record.drop, ["high and low"], "drop"));
  const counts = problems.run(() => countsOf(record.counts, "counts", drop === undefined ? 2 : 5));
  problems.done();
  const all = counts as readonly number[];
  const [high, low] = [Math.max(...all), Math.min(...all)];
  const dropped = drop === undefined ? [] : [low, high];
  const kept = [...all];
  for (const count of dropped) kept.splice(kept.indexOf(count), 1);
  const average = mean(kept);
  const share = Math.max(standardDeviation(all, { divisor: "n-1" }), countError) / average;
  const walked = course as Length;
  const pace = likeQuantity(walked, walked.value / average);
  return {
    type: "pace-calibration",
    version: 1,
    pace: {
      ...statedEstimate({
        value: pace,
        error: likeQuantity(pace, (pace.value * share) / Math.sqrt(all.length)),
        meaning: "standard error",
      }),
      degreesOfFreedom: all.length - 1,
    },
    walkError: quantity(100 * share, "%"),
    walks: all.length,
    dropped,
  };
};

/**
 * A distance that was paced, with its standard error.
 *
 * `distance = pace * (mean of the counts)`. Its relative error is `e * sqrt(1/n + 1/m)`, with `e` the error of one
 * walk as the calibration found it, `n` the walks of the calibration and `m` the walks over the distance: the walks
 * scatter on both. Slope, rough ground and tired legs are not in it; a pace counts along the ground.
 *
 * @param input.pace - what {@link paceCalibration} gave, also from a file
 * @param input.counts - the paces of one walk, or a list with one count for each walk
 * @throws RatewrightError `range` for a count that is not above zero; `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * Source: distance as pace times count: surveying chapters of agricultural engineering texts; the error: JCGM
 * 100:2008 (GUM), 5.1.6.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { pacedDistance, paceCalibration } from "ratewright/site";
 * const pace = paceCalibration({ course: quantity(200, "ft"), counts: [62, 60, 64] });
 * const fence = pacedDistance({ pace, counts: 375 });
 * Math.round(fence.value.in("ft")); // => 1210
 * Math.round(fence.standardError.in("ft")); // => 45
 * ```
 */
export const pacedDistance = (input: {
  readonly pace: PaceCalibration;
  readonly counts: number | readonly number[];
}): Estimate<"length", "none"> => {
  const problems = checks();
  const record = recordWith(input, ["pace", "counts"], problems, "input");
  const pace = problems.run(() => calibrationOf(record.pace));
  const counts = problems.run(() =>
    record.counts === undefined
      ? fail("missing", "counts", undefined, "a number of paces, or a list of them")
      : Array.isArray(record.counts)
        ? countsOf(record.counts, "counts", 1)
        : [expectNumber(record.counts, "counts", { above: 0 })],
  );
  problems.done();
  const { length, share, walks } = pace as NonNullable<typeof pace>;
  const list = counts as readonly number[];
  const distance = likeQuantity(length, length.value * mean(list));
  const error = distance.value * share * Math.sqrt(1 / walks + 1 / list.length);
  return {
    ...statedEstimate({ value: distance, error: likeQuantity(distance, error), meaning: "standard error" }),
    degreesOfFreedom: walks - 1,
  };
};

const mostWalks = 1000;

const countsOf = (input: unknown, path: string, least: number): readonly number[] => {
  const list = expectList(input, path, "count");
  if (list.length < least || list.length > mostWalks) {
    outOfRange(path, list, { min: least, max: mostWalks, count: "counts" }, "{}: walk it again");
  }
  const problems = checks();
  const counts = list.map((count, i) =>
    problems.run(() => expectNumber(count, `${path}[${i}]`, { above: 0 })),
  );
  problems.done();
  return counts as readonly number[];
};

/** What a distance needs of a calibration; read again, for it may come from a file. */
const calibrationOf = (
  input: unknown,
): { readonly length: Length; readonly share: number; readonly walks: number } => {
  const expected = "what paceCalibration gives; for a pace without its error, multiply: pace.times(375)";
  const known = ["type", "version", "pace", "walkError", "walks", "dropped"];
  const record = expectRecord(input, "pace", expected);
  if (record.type !== "pace-calibration") fail("type", "pace", input, expected);
  const { walks, walkError, pace } = expectFields(record, known, "pace") as Record<string, unknown>;
  const problems = checks();
  const length = problems.run(() =>
    lengthOf(expectRecord(pace, "pace.pace", "an estimate").value, "pace.pace.value"),
  );
  const share = problems.run(() =>
    expectQuantity(walkError, { dimension: "1", of: "none", bound: "positive" }, "pace.walkError").in("1"),
  );
  const n = problems.run(() => expectNumber(walks, "pace.walks", { min: 2 }));
  problems.done();
  return { length: length as Length, share: share as number, walks: n as number };
};
