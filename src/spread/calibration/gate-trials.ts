import type { Estimate } from "../../numeric/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";
import { eachOf } from "../inputs.js";

/** A setting that was tried, and the rate that it gave. */
export interface GateTrial<S extends string = string> {
  /** The number on the scale of the spreader. */
  readonly setting: number;
  /** A rate, or a rate with its error, as `spreadRateEstimate` gives it. */
  readonly rate: Quantity<"mass/area", S> | Estimate<"mass/area", S>;
}

/** A trial as numbers, the rate in the unit of the target. */
export interface Point {
  readonly index: number;
  readonly setting: number;
  readonly rate: number;
  readonly error: number | undefined;
}

/** Takes a rate above zero, or throws. What it is of is known from the call, and is `S`. */
export const rateAt = <S extends string = string>(input: unknown, path: string): Quantity<"mass/area", S> =>
  input === undefined || input === null
    ? fail("missing", path, input, "a rate")
    : expectQuantity<"mass/area", S>(input, { dimension: "mass/area", bound: "positive" }, path);

/** A trial, read: the rate as it was given. */
export interface ReadTrial {
  readonly setting: number;
  readonly rate: Rate;
  readonly error: Rate | undefined;
  /** Where the rate stands: that of an estimate is its value. */
  readonly path: string;
}

type Rate = Quantity<"mass/area", string>;

/** Takes the trials; reports every one that is not right. */
export const trialsOf = (trials: unknown): readonly ReadTrial[] => {
  if (trials === undefined) return fail("missing", "trials", trials, "two trials or more");
  if (!Array.isArray(trials)) return fail("type", "trials", trials, "a list of trials");
  if (trials.length < 2) fail("missing", "trials", trials, "two trials or more: one does not show the slope");
  return eachOf(trials, "trials", (trial, i) => trialOf(trial, `trials[${i}]`));
};

const trialOf = (trial: unknown, at: string): ReadTrial => {
  const { setting, rate } = expectFields(trial, ["setting", "rate"], at, "a record with setting, rate");
  const read = allOf({
    setting: () => expectNumber(setting, `${at}.setting`),
    rate: () => trialRate(rate, `${at}.rate`),
  });
  return { setting: read.setting, ...read.rate };
};

const trialRate = (input: unknown, at: string): Omit<ReadTrial, "setting"> => {
  const estimate = input as {
    readonly type?: unknown;
    readonly value?: unknown;
    readonly standardError?: unknown;
  };
  if (estimate?.type !== "estimate") return { rate: rateAt(input, at), error: undefined, path: at };
  const path = `${at}.value`;
  const rate = rateAt(estimate.value, path);
  const error = expectQuantity(
    estimate.standardError,
    { dimension: "mass/area", of: rate.of, bound: "non-negative" },
    `${at}.standardError`,
  );
  return { rate, error, path };
};

/** The trials as numbers in the unit of the target, whose material they have to be of, by their setting. */
export const pointsOf = (
  trials: readonly ReadTrial[],
  { of, unit }: { readonly of: string; readonly unit: string },
): readonly Point[] =>
  eachOf(trials, "trials", (_, index) => {
    const { setting, rate, error, path } = trials[index] as ReadTrial;
    if (rate.of !== of) fail("substance/mismatch", path, rate, `a rate of ${of}, as the target`);
    return { index, setting, rate: numberIn(rate, unit), error: error && numberIn(error, unit) };
  })
    .slice()
    .sort((a, b) => a.setting - b.setting);

/** Refuses the first neighbours on the scale whose rates do not go the way of the scale. */
export const monotone = (points: readonly Point[], rising: boolean): void => {
  const problems = checks();
  for (let i = 1; i < points.length; i++) {
    const [low, high] = [points[i - 1], points[i]] as [Point, Point];
    problems.run(() => {
      if (low.setting === high.setting) {
        // Of one setting they stand as they were given.
        fail(
          "conflict",
          `trials[${high.index}].setting`,
          high.setting,
          `another setting than trials[${low.index}]; give repeated runs of one setting as their mean`,
        );
      }
      if (rising ? high.rate > low.rate : high.rate < low.rate) return;
      fail(
        "conflict",
        `trials[${high.index}].rate`,
        high.rate,
        `${rising ? "more" : "less"} than ${low.rate}, the rate of trials[${low.index}] at setting ${low.setting}, because its setting is ${high.setting}; repeat both runs`,
      );
    });
  }
  problems.done();
};
