import { isSensor, type MonthDay, monthDay, type TemperatureSensor } from "../../calendar/index.js";
import {
  expectFields,
  expectNumber,
  fail,
  outOfRange,
  type Problem,
  plainCopy,
  quantity,
  RatewrightError,
  rangeProblem,
  shown,
} from "../../quantity/index.js";
import { type DegreeDayId, degreeDayId } from "./degree-day-id.js";
import type { DegreeDayMethod, HeatRule, UpperCutoff } from "./degree-day-method.js";

/** A base temperature, as its source prints it. */
export interface BaseTemperature {
  readonly value: number;
  readonly unit: "°C" | "°F";
}

/** What a degree-day model is made of. */
export interface DegreeDayModelInput {
  readonly method: DegreeDayMethod;
  /** The temperature below which nothing is counted: -40 to 50 °C, at most three decimals. */
  readonly base: BaseTemperature;
  /** The temperature above which development does not speed up any more. The clamped average needs one. */
  readonly upper?: BaseTemperature;
  /** What happens above `upper`, for every method but the clamped average, which holds both temperatures at it. */
  readonly cutoff?: UpperCutoff;
  readonly sensor: TemperatureSensor;
  /** The day of the year from which the source counts, where it names one. A regulator has none: it counts from the application. */
  readonly start?: MonthDay;
  /** Who found the figures that go with the model. */
  readonly source?: string;
}

/**
 * A degree-day model, plain JSON. Degree-days are degree-days of a model: the `id` says which, and
 * sums of different ids neither add nor compare.
 */
export interface DegreeDayModel<Id extends string = string> extends DegreeDayModelInput {
  readonly type: "degree-day-model";
  readonly version: 1;
  readonly id: Id;
}

/** The substance of a degree-day quantity: the model that it is counted by. */
export type DegreeDaysOf<Id extends string> = `degree-days:${Id}`;

const methods: readonly DegreeDayMethod[] = [
  "simple average",
  "substitution",
  "clamped average",
  "single sine",
  "double sine",
  "single triangle",
  "double triangle",
  "met office cases",
];
const cutoffs: readonly UpperCutoff[] = ["horizontal", "intermediate", "intermediate floored", "vertical"];
const withoutUpper: readonly string[] = ["substitution", "met office cases"];

/** What does not fit between a method, an upper threshold and a cutoff. */
const thresholdProblems = (
  { method, upper, cutoff }: { method: unknown; upper: unknown; cutoff: unknown },
  at: { method: string; upper: string; cutoff: string },
): Problem[] => {
  if (!methods.includes(method as DegreeDayMethod)) {
    const expected = "a method of counting degree-days";
    return [{ code: "type", path: at.method, got: shown(method), expected, choices: methods }];
  }
  const clamped = method === "clamped average";
  if (upper === undefined) {
    const missing = { code: "missing", path: at.upper, got: "nothing" } as const;
    if (clamped) return [{ ...missing, expected: "the temperature to which both extremes are lowered" }];
    return cutoff === undefined ? [] : [{ ...missing, expected: "the threshold at which the cutoff begins" }];
  }
  if (withoutUpper.includes(method as string)) {
    const expected = `no upper threshold with ${method}`;
    const suggestion = method === "substitution" ? "the method clamped average" : undefined;
    const problem: Problem = { code: "conflict", path: at.upper, got: shown(upper), expected };
    return [suggestion === undefined ? problem : { ...problem, suggestion }];
  }
  const problem = { path: at.cutoff, got: shown(cutoff) } as const;
  if (clamped) {
    return cutoff === undefined
      ? []
      : [{ ...problem, code: "conflict", expected: "none: both extremes are held at the threshold" }];
  }
  if (method === "simple average") {
    // Only the mean is known: what share of the day lay above the threshold is not.
    return cutoff === "horizontal"
      ? []
      : [
          {
            ...problem,
            code: cutoff === undefined ? "missing" : "conflict",
            expected:
              'the cutoff "horizontal", the only one with a simple average: the mean is held at the threshold',
          },
        ];
  }
  return cutoffs.includes(cutoff as UpperCutoff)
    ? []
    : [
        {
          ...problem,
          code: cutoff === undefined ? "missing" : "type",
          expected: "what happens above the upper threshold",
          choices: cutoffs,
        },
      ];
};

/** Takes a method with its thresholds on one scale, or throws all that does not fit. */
export const checkedThresholds = (
  input: {
    readonly method: DegreeDayMethod;
    readonly base: number;
    readonly upper: number | undefined;
    readonly cutoff: UpperCutoff | undefined;
  },
  [baseAt, upperAt]: readonly [base: string, upper: string],
): HeatRule => {
  const { method, base, upper, cutoff } = input;
  const problems = thresholdProblems(input, { method: "method", upper: upperAt, cutoff: "cutoff" });
  if (problems.length > 0) throw new RatewrightError(problems);
  if (upper !== undefined && !Number.isFinite(upper)) fail("not-finite", upperAt, upper, "a finite number");
  if (upper !== undefined && upper <= base)
    outOfRange(upperAt, upper, { above: base }, `{}, which is ${baseAt}`);
  return { method, base, upper: upper ?? Number.POSITIVE_INFINITY, cutoff: cutoff ?? "horizontal" };
};

const scales = { "°C": [-40, 50], "°F": [-40, 122] } as const;

/** Takes a threshold as its source prints it. */
const checkThreshold = (input: unknown, at: string): number => {
  const given = input as Partial<BaseTemperature> | undefined | null;
  if (typeof given !== "object" || given === null) {
    return fail("type", at, given, "a temperature in °C or °F");
  }
  expectFields(given, ["value", "unit", "of", "dimension"], at);
  if (given.unit !== "°C" && given.unit !== "°F") {
    return fail("unit/unknown", `${at}.unit`, given.unit, "°C or °F");
  }
  const [min, max] = scales[given.unit];
  const value = expectNumber(given.value, `${at}.value`, { min, max });
  if (Math.abs(value * 1000 - Math.round(value * 1000)) > 1e-6) {
    fail("range", `${at}.value`, value, "at most three decimals", {
      suggestion: "the threshold in the unit in which its source prints it",
    });
  }
  return value;
};

/** What a model is told; what JSON left of one has its type, version and id, too. */
const modelFields = [
  "type",
  "version",
  "id",
  "method",
  "base",
  "upper",
  "cutoff",
  "sensor",
  "start",
  "source",
] as const;

const problemsOf = (input: DegreeDayModelInput, path: string): Problem[] => {
  const problems: Problem[] = [];
  const attempt = (check: () => void): void => {
    try {
      check();
    } catch (error) {
      if (!(error instanceof RatewrightError)) throw error;
      problems.push(...error.problems);
    }
  };
  problems.push(
    ...thresholdProblems(input as { method: unknown; upper: unknown; cutoff: unknown }, {
      method: `${path}.method`,
      upper: `${path}.upper`,
      cutoff: `${path}.cutoff`,
    }),
  );
  attempt(() => checkThreshold(input.base, `${path}.base`));
  if (input.upper !== undefined) attempt(() => checkThreshold(input.upper, `${path}.upper`));
  if (problems.length === 0 && input.upper !== undefined) {
    const upper = quantity(input.upper.value, input.upper.unit);
    if (upper.in("°C") <= quantity(input.base.value, input.base.unit).in("°C")) {
      const base = { above: input.base.value, unit: input.base.unit };
      problems.push(rangeProblem(`${path}.upper`, shown(upper), base, "{}, which is the base"));
    }
  }
  if (!isSensor(input.sensor)) {
    const expected = "air, or soil at a depth such as soil at 2.5 cm or soil at 4 in";
    problems.push({ code: "type", path: `${path}.sensor`, got: shown(input.sensor), expected });
  }
  if (input.start !== undefined) {
    attempt(() => {
      if (monthDay(input.start, `${path}.start`) === "02-29") {
        fail("date", `${path}.start`, input.start, "a day that every year has");
      }
    });
  }
  return problems;
};

/** Takes a model that may come from JSON, or throws all that is wrong with it. */
export const checkedModel = <Id extends string>(
  given: DegreeDayModel<Id>,
  path: string,
): DegreeDayModel<Id> => {
  const model = plainCopy(given);
  if (model?.type !== "degree-day-model") return fail("type", path, model, "a degree-day model");
  if (model.version !== 1) fail("type", `${path}.version`, model.version, "1");
  expectFields(model, modelFields, path);
  const problems = problemsOf(model, path);
  if (problems.length > 0) throw new RatewrightError(problems);
  const id = degreeDayId(model);
  if (model.id !== id)
    fail("conflict", `${path}.id`, model.id, `the id that belongs to the model, which is ${id}`);
  return model;
};

/**
 * Makes a degree-day model, with the id that names it: 32 °F and 0 °C as a base give the same id.
 * Reports everything that is wrong at once.
 *
 * An upper threshold goes with the sines, the triangles, the simple average (cutoff `"horizontal"`: the
 * mean is held at it; from memory) and the clamped average, which needs one. Method, base, upper
 * threshold, cutoff, sensor and start are the model: a constant is valid only with those it was found with.
 *
 * @throws RatewrightError `type`, `unit/unknown`, `range`, `not-finite`, `date`; `missing` and `conflict`
 * where method, upper threshold and cutoff do not go together
 *
 * @example
 * ```ts
 * import { degreeDayModel } from "ratewright";
 * degreeDayModel({ method: "simple average", base: { value: 32, unit: "°F" }, sensor: "air" })
 *   .id; // => "simple-average base 0C air"
 * degreeDayModel({
 *   method: "simple average", base: { value: 12, unit: "°C" }, sensor: "soil at 2.5 cm", start: "04-01",
 * }).id; // => "simple-average base 12C soil at 2.5 cm from 04-01"
 * degreeDayModel({
 *   method: "single sine", base: { value: 50, unit: "°F" }, upper: { value: 88, unit: "°F" },
 *   cutoff: "horizontal", sensor: "air", start: "01-01",
 * }).id; // => "single-sine base 10C to 88F horizontal air from 01-01"
 * ```
 */
export const degreeDayModel = <const M extends DegreeDayModelInput>(
  input: M,
): DegreeDayModel<DegreeDayId<M>> => {
  const given = plainCopy(input);
  if (typeof given !== "object" || given === null) return fail("type", "model", given, "a record");
  expectFields(given, modelFields, "model");
  const problems = problemsOf(given, "model");
  if (problems.length > 0) throw new RatewrightError(problems);
  const { method, base, upper, cutoff, sensor, start, source } = given;
  return {
    type: "degree-day-model",
    version: 1,
    id: degreeDayId(given) as DegreeDayId<M>,
    method,
    base: { value: base.value + 0, unit: base.unit },
    ...(upper === undefined ? {} : { upper: { value: upper.value + 0, unit: upper.unit } }),
    ...(cutoff === undefined ? {} : { cutoff }),
    sensor,
    ...(start === undefined ? {} : { start }),
    ...(source === undefined ? {} : { source }),
  };
};
