import { isSensor, type MonthDay, monthDay, type TemperatureSensor } from "../calendar/index.js";
import { expectNumber, fail, type Problem, RatewrightError, shown } from "../quantity/index.js";
import { type DegreeDayId, degreeDayId } from "./degree-day-id.js";

/**
 * How the heat of a day is estimated from its highest and lowest temperature.
 *
 * `"simple average"`: the mean of the two less the base, and 0 where that is negative. The floor is on
 * the mean ("Method 1" of McMaster and Wilhelm 1997, Agricultural and Forest Meteorology 87, 291-300);
 * a figure found with another method does not fit it.
 */
export type DegreeDayMethod = "simple average";

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
  if (input.method !== "simple average") {
    const expected = 'the method "simple average"';
    problems.push({ code: "type", path: `${path}.method`, got: shown(input.method), expected });
  }
  attempt(() => {
    const at = `${path}.base`;
    const base = input.base as Partial<BaseTemperature> | undefined;
    if (typeof base !== "object" || base === null) fail("type", at, base, "a temperature in °C or °F");
    if (base?.unit !== "°C" && base?.unit !== "°F")
      fail("unit/unknown", `${at}.unit`, base?.unit, "°C or °F");
    const [min, max] = base?.unit === "°F" ? [-40, 122] : [-40, 50];
    const value = expectNumber(base?.value, `${at}.value`, { min, max });
    if (Math.abs(value * 1000 - Math.round(value * 1000)) > 1e-6) {
      fail("range", `${at}.value`, value, "at most three decimals", {
        suggestion: "the base in the unit in which its source prints it",
      });
    }
  });
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
  model: DegreeDayModel<Id>,
  path: string,
): DegreeDayModel<Id> => {
  if (model?.type !== "degree-day-model") return fail("type", path, model, "a degree-day model");
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
 * @throws RatewrightError `type`, `unit/unknown`, `range`, `not-finite`, `date`
 *
 * @example
 * ```ts
 * import { degreeDayModel } from "ratewright";
 * degreeDayModel({ method: "simple average", base: { value: 32, unit: "°F" }, sensor: "air" })
 *   .id; // => "simple-average base 0C air"
 * degreeDayModel({
 *   method: "simple average", base: { value: 12, unit: "°C" }, sensor: "soil at 2.5 cm", start: "04-01",
 * }).id; // => "simple-average base 12C soil at 2.5 cm from 04-01"
 * ```
 */
export const degreeDayModel = <const M extends DegreeDayModelInput>(
  input: M,
): DegreeDayModel<DegreeDayId<M>> => {
  if (typeof input !== "object" || input === null) return fail("type", "model", input, "a record");
  const problems = problemsOf(input, "model");
  if (problems.length > 0) throw new RatewrightError(problems);
  const { method, base, sensor, start, source } = input;
  return {
    type: "degree-day-model",
    version: 1,
    id: degreeDayId(input) as DegreeDayId<M>,
    method,
    base: { value: base.value + 0, unit: base.unit },
    sensor,
    ...(start === undefined ? {} : { start }),
    ...(source === undefined ? {} : { source }),
  };
};
