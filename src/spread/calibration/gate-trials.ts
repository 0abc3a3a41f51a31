import type { Estimate } from "../../numeric/index.js";
import {
  checks,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  type Quantity,
} from "../../quantity/index.js";

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

/** Takes a rate above zero, or throws. */
export const rateAt = (input: unknown, path: string): Quantity<"mass/area", string> =>
  input === undefined || input === null
    ? fail("missing", path, input, "a rate")
    : expectQuantity(input, { dimension: "mass/area", bound: "positive" }, path);

/** Takes the trials, in the unit of the target; reports every one that is not right. */
export const pointsOf = (
  trials: unknown,
  target: Quantity<"mass/area", string> | undefined,
): readonly Point[] => {
  if (trials === undefined) return fail("missing", "trials", trials, "two trials or more");
  if (!Array.isArray(trials)) return fail("type", "trials", trials, "a list of trials");
  if (trials.length < 2) fail("missing", "trials", trials, "two trials or more: one does not show the slope");
  const door = checks();
  // Not map, which skips the holes of a list.
  const points = Array.from(trials as readonly unknown[], (trial, i) =>
    door.run(() => pointOf(trial, i, target), `trials[${i}]`),
  );
  door.done();
  return points as readonly Point[];
};

const pointOf = (trial: unknown, index: number, target: Quantity<"mass/area", string> | undefined): Point => {
  const { setting, rate } = expectRecord(trial, "", "a record with setting, rate");
  const door = checks();
  const at = door.run(() => expectNumber(setting, "setting"));
  const read = door.run(() => {
    const estimate = (rate as { readonly type?: unknown } | null | undefined)?.type === "estimate";
    const { value, standardError } = estimate
      ? (rate as { readonly value: unknown; readonly standardError: unknown })
      : { value: rate, standardError: undefined };
    const path = estimate ? "rate.value" : "rate";
    const q = rateAt(value, path);
    if (target !== undefined && q.of !== target.of) {
      fail("substance/mismatch", path, q, `a rate of ${target.of}, as the target`);
    }
    const unit = (target ?? q).unit as "lb/acre";
    const wanted = { dimension: "mass/area", of: q.of, bound: "non-negative" } as const;
    return {
      rate: q.in(unit),
      error: estimate ? expectQuantity(standardError, wanted, "rate.standardError").in(unit) : undefined,
    };
  });
  door.done();
  return { index, setting: at as number, ...(read as NonNullable<typeof read>) };
};

/** Refuses the first neighbours on the scale whose rates do not go the way of the scale. */
export const monotone = (points: readonly Point[], rising: boolean): void => {
  const door = checks();
  for (let i = 1; i < points.length; i++) {
    const [low, high] = [points[i - 1], points[i]] as [Point, Point];
    door.run(() => {
      if (low.setting === high.setting) {
        const later = low.index > high.index ? low : high;
        const first = later === low ? high : low;
        fail(
          "conflict",
          `trials[${later.index}].setting`,
          later.setting,
          `another setting than trials[${first.index}]; give repeated runs of one setting as their mean`,
        );
      }
      if (rising ? high.rate > low.rate : high.rate < low.rate) return;
      fail(
        "conflict",
        `trials[${high.index}].rate`,
        high.rate,
        `${rising ? "more" : "less"} than ${low.rate}, the rate of trials[${low.index}] at setting ${low.setting}, for its setting is ${high.setting}; repeat both runs`,
      );
    });
  }
  door.done();
};
