import { exceeds, roundTo } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import { type GateTrial, monotone, type Point, pointsOf, rateAt, trialsOf } from "./gate-trials.js";

/** A setting, and the rate to expect of it. */
export interface SettingRate<S extends string = string> {
  readonly setting: number;
  readonly rate: Quantity<"mass/area", S>;
  /** What the errors of the trials make of it; left out where a trial came without. */
  readonly standardError?: Quantity<"mass/area", S>;
}

/** The next setting to try. */
export interface GateSetting<S extends string = string> {
  readonly type: "gate-setting";
  readonly version: 1;
  readonly target: Quantity<"mass/area", S>;
  /** On the line between the two trials, in the numbers of the scale. */
  readonly setting: number;
  /** What the errors of the trials make of the setting; left out where a trial came without. */
  readonly settingError?: number;
  /** The two trials between which the line runs, lower setting first. */
  readonly between: readonly [SettingRate<S>, SettingRate<S>];
  /** Whether the target lies outside of the trials; only where the call asked for it. */
  readonly extrapolated: boolean;
  /** The steps of the scale next to the setting, where `step` was given: those inside the trials. */
  readonly steps: readonly SettingRate<S>[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** The target, of whatever stuff. */
interface Wanted {
  readonly value: number;
  readonly unit: string;
}

/**
 * The next gate setting for a wanted rate, from two or more trials.
 *
 * `s = s0 + (s1 - s0) f`, `f = (R - R0) / (R1 - R0)`, on the straight line between the two trials whose rates
 * lie on either side of the target; `u(s) = |(s1 - s0) / (R1 - R0)| sqrt((1 - f)^2 u0^2 + f^2 u1^2)`
 *
 * - `s0`, `s1` settings of the two trials, `R0`, `R1` their rates, `u0`, `u1` the standard errors of those
 * - `R` the wanted rate, `target`
 *
 * The line is monotone: it hits every trial and stays between the two. Nothing is taken beyond the trials
 * unless `beyond` is `"extrapolate"`, and then a finding says so. Trials in which a larger setting does not
 * put out more are refused, with the pair named: something else has changed between them. Always check the
 * new setting with a run.
 *
 * Range: one material, one lot, one speed; the scale rises with the opening, or falls where `scale` says so.
 * A gate puts out more than in proportion as it opens (common practice, no source), so the line is the better the
 * closer the trials lie.
 *
 * @param input.step - the distance of the marks of the scale, where it can only be set to marks
 * @throws RatewrightError `missing` for fewer than two trials; `conflict` for two trials at one setting or
 * rates that do not rise with the setting, at the trial; `infeasible` for a target outside of the trials;
 * `range`, `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`; every bad trial is reported
 *
 * Source: the procedure of the handbooks (record the output at successive settings); the line between two
 * trials is ours, for no source prints a formula; the errors by JCGM 100:2008 (GUM), 5.1.2.
 *
 * @example
 * ```ts
 * import { gateSetting, quantity } from "ratewright";
 * const trials = [
 *   { setting: 3, rate: quantity(2, "lb/1000 ft2", "product") },
 *   { setting: 5, rate: quantity(5, "lb/1000 ft2", "product") },
 *   { setting: 4, rate: quantity(3, "lb/1000 ft2", "product") },
 * ];
 * const next = gateSetting({ target: quantity(3.5, "lb/1000 ft2", "product"), trials, step: 0.5 });
 * next.setting; // => 4.25
 * next.steps.map((one) => one.setting); // => [4, 4.5]
 * next.steps.map((one) => one.rate.in("lb/1000 ft2")); // => [3, 4]
 * gateSetting({ target: quantity(6, "lb/1000 ft2", "product"), trials }); // => throws infeasible
 * ```
 */
export const gateSetting = <S extends string>(input: {
  readonly target: Quantity<"mass/area", S>;
  readonly trials: readonly GateTrial<NoInfer<S>>[];
  readonly step?: number;
  readonly scale?: "higher opens" | "lower opens";
  readonly beyond?: "refuse" | "extrapolate";
}): GateSetting<S> => {
  const { goal, mark, points, rising, beyond } = readSetting<S>(input);
  monotone(points, rising);
  const [one, other] = pairFor(points, goal.value);
  const ends = [one.rate, other.rate] as const;
  const extrapolated = exceeds(goal.value, Math.max(...ends)) || exceeds(Math.min(...ends), goal.value);
  if (extrapolated && beyond === "refuse") refuse(points, goal, rising);
  const setting = settingAt(one, other, goal.value);
  const error = errorAt(one, other, (goal.value - one.rate) / (other.rate - one.rate));
  const rateOf = (at: number): SettingRate<S> => settingRate(points, at, goal);
  return {
    type: "gate-setting",
    version: 1,
    target: goal,
    setting,
    ...(error === undefined ? {} : { settingError: Math.abs(slopeOf(one, other)) * error }),
    between: [rateOf(one.setting), rateOf(other.setting)],
    extrapolated,
    steps: (mark === undefined ? [] : marksBeside(setting, mark)).filter(within(points)).map(rateOf),
    findings: findingsOf({ one, other, extrapolated, setting, goal }),
    checked: [
      `the rates of ${points.length} trials ${rising ? "rise" : "fall"} with the setting`,
      ...(error === undefined ? [] : ["whether the two trials differ by more than their errors"]),
    ],
    notChecked: [
      ...(error === undefined ? ["how uncertain the setting is: a trial came without its error"] : []),
      "the new setting itself: make a run with it",
    ],
  };
};

const readSetting = <S extends string>(
  input: unknown,
): {
  readonly goal: Quantity<"mass/area", S>;
  readonly mark: number | undefined;
  /** By their setting. */
  readonly points: readonly Point[];
  readonly rising: boolean;
  readonly beyond: "refuse" | "extrapolate";
} => {
  const { target, trials, step, scale, beyond } = expectFields(
    input,
    ["target", "trials", "step", "scale", "beyond"],
    "input",
    "a record with target, trials",
  );
  const read = allOf({
    target: () => rateAt<S>(target, "target"),
    scale: () =>
      scale === undefined ? "higher opens" : expectOneOf(scale, ["higher opens", "lower opens"], "scale"),
    beyond: () =>
      beyond === undefined ? "refuse" : expectOneOf(beyond, ["refuse", "extrapolate"], "beyond"),
    mark: () => (step === undefined ? undefined : expectNumber(step, "step", { above: 0 })),
    trials: () => trialsOf(trials),
  });
  return {
    goal: read.target,
    mark: read.mark,
    points: pointsOf(read.trials, read.target),
    rising: read.scale === "higher opens",
    beyond: read.beyond,
  };
};

const slopeOf = (one: Point, other: Point): number => (other.setting - one.setting) / (other.rate - one.rate);

/** On the line, from the nearer trial: a target equal to a trial gives its setting to the last digit. */
const settingAt = (one: Point, other: Point, goal: number): number => {
  const share = (goal - one.rate) / (other.rate - one.rate);
  const near = Math.abs(share) < 0.5 ? one : other;
  return expectNumber(near.setting + slopeOf(one, other) * (goal - near.rate), "trials");
};

/** The two neighbours around the target; beyond the trials the two nearest to it. */
const pairFor = (points: readonly Point[], goal: number): readonly [Point, Point] => {
  const last = points.length - 1;
  for (let i = 0; i < last; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    if ((goal - a.rate) * (goal - b.rate) <= 0) return [a, b];
  }
  const first = points[0] as Point;
  const end = points[last] as Point;
  return Math.abs(goal - first.rate) < Math.abs(goal - end.rate)
    ? [first, points[1] as Point]
    : [points[last - 1] as Point, end];
};

const refuse = (points: readonly Point[], goal: Wanted, rising: boolean): never => {
  const rates = points.map(({ rate }) => rate);
  const [low, high] = [Math.min(...rates), Math.max(...rates)];
  const more = goal.value > high;
  return fail(
    "infeasible",
    "target",
    goal,
    `a rate between the trials, ${low} to ${high} ${goal.unit}; make a trial at a ${more === rising ? "higher" : "lower"} setting`,
  );
};

/** The error of the rate on the line at a share of the way, which is also that of the target as read off it. */
const errorAt = (one: Point, other: Point, share: number): number | undefined =>
  one.error === undefined || other.error === undefined
    ? undefined
    : Math.hypot((1 - share) * one.error, share * other.error);

const settingRate = <S extends string>(
  points: readonly Point[],
  setting: number,
  like: Quantity<"mass/area", S>,
): SettingRate<S> => {
  const at = points.findIndex((point) => point.setting >= setting);
  const other = points[Math.max(1, at)] as Point;
  const one = points[Math.max(1, at) - 1] as Point;
  const share = (setting - one.setting) / (other.setting - one.setting);
  const error = errorAt(one, other, share);
  const rate = share === 1 ? other.rate : one.rate + (other.rate - one.rate) * share;
  const made = (value: number): Quantity<"mass/area", S> =>
    expectQuantity(
      { value, unit: like.unit, of: like.of },
      { dimension: "mass/area", of: like.of },
      "trials",
    );
  return { setting, rate: made(rate), ...(error === undefined ? {} : { standardError: made(error) }) };
};

const within =
  (points: readonly Point[]) =>
  (mark: number): boolean =>
    mark >= (points[0] as Point).setting && mark <= (points[points.length - 1] as Point).setting;

/** The marks of the scale below and above a setting; one where it lies on a mark. */
const marksBeside = (setting: number, step: number): readonly number[] => {
  const near = roundTo(setting, step);
  if (Math.abs(setting - near) <= 1e-9 * step) return [near];
  const beyond = roundTo(near + (near > setting ? -step : step), step);
  return [near, beyond].sort((a, b) => a - b);
};

const findingsOf = (found: {
  readonly one: Point;
  readonly other: Point;
  readonly extrapolated: boolean;
  readonly setting: number;
  readonly goal: Wanted;
}): readonly Finding[] => {
  const { one, other, extrapolated, setting, goal } = found;
  const pair = { first: one.setting, second: other.setting };
  const findings: Finding[] = [];
  if (extrapolated) {
    findings.push({
      code: "setting/extrapolated",
      severity: "warning",
      path: "target",
      params: { ...pair, setting },
      text: `The target of ${goal.value} ${goal.unit} is outside the trials: the line through settings ${one.setting} and ${other.setting} was extrapolated. Make a run with the setting before you use it.`,
    });
  }
  const noise = one.error === undefined || other.error === undefined ? 0 : Math.hypot(one.error, other.error);
  if (Math.abs(other.rate - one.rate) < 2 * noise) {
    findings.push({
      code: "trials/not-told-apart",
      severity: "warning",
      path: `trials[${other.index}]`,
      params: { ...pair, difference: Math.abs(other.rate - one.rate), standardError: noise },
      text: `The trials at settings ${one.setting} and ${other.setting} differ by less than twice the error of their difference: measure again, or try settings farther apart.`,
      source: "common practice, no source",
    });
  }
  return findings;
};
