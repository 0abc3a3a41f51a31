import type { TemperatureSensor } from "../../calendar/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectText,
  fail,
  type Quantity,
  quantity,
  shown,
} from "../../quantity/index.js";
import type { DegreeDayMethod } from "../degree-days/degree-day-method.js";
import {
  type BaseTemperature,
  type DegreeDayModel,
  type DegreeDaysOf,
  degreeDayModel,
} from "../degree-days/degree-day-model.js";
import { degreeDayAmount } from "../degree-days/degree-days.js";
import { type RegulatorInterval, regulatorIntervals } from "./growth-regulators.js";

/**
 * The published intervals of an active ingredient, by its common name, on turf whose description contains
 * a word. Empty where none was read: that says nothing on how long it lasts.
 *
 * @throws RatewrightError `type`
 *
 * @example
 * ```ts
 * import { regulatorIntervalsFor } from "ratewright";
 * regulatorIntervalsFor("trinexapac-ethyl", "bentgrass").map(({ interval }) => interval);
 * // => [[200, 200], [230, 230]]
 * regulatorIntervalsFor("trinexapac-ethyl", "zoysiagrass"); // => []
 * ```
 */
export const regulatorIntervalsFor = (active: string, turf = ""): readonly RegulatorInterval[] => {
  if (typeof active !== "string")
    return fail("type", "active", active, "the common name of an active ingredient");
  if (typeof turf !== "string") return fail("type", "turf", turf, "a word of the description of the turf");
  return regulatorIntervals.filter(
    (one) => one.active === active.trim().toLowerCase() && one.turf.includes(turf.trim().toLowerCase()),
  );
};

/** An interval that can be counted: its model, and its two ends in degree-days of it. */
export interface CountableInterval {
  readonly model: DegreeDayModel;
  readonly from: Quantity<"degree-days", DegreeDaysOf<string>>;
  readonly to: Quantity<"degree-days", DegreeDaysOf<string>>;
  /** What the source does not state and the caller supplied. */
  readonly assumed: readonly ("method" | "base" | "sensor")[];
}

/**
 * A published interval as degree-days of a model. What the source does not state has to be supplied, and
 * is named in `assumed`; what it states cannot be replaced.
 *
 * @param record - one of `regulatorIntervals`, or a record of that form
 * @param supplied - method, base and sensor for what the source leaves open; the sensor is left open by all
 * @throws RatewrightError `missing` for what is neither stated nor supplied, and where the source gives no
 * interval; `conflict` where something stated is supplied otherwise; what `degreeDayModel` throws
 *
 * Source: that of the record.
 *
 * @example
 * ```ts
 * import { regulatorInterval, regulatorIntervalsFor } from "ratewright";
 * const [paclobutrazol] = regulatorIntervalsFor("paclobutrazol");
 * if (paclobutrazol) {
 *   const found = regulatorInterval(paclobutrazol, { method: "simple average", sensor: "air" });
 *   found.from.in("°C d"); // => 280
 *   found.model.id; // => "simple-average base 0C air"
 *   found.assumed; // => ["method", "sensor"]
 * }
 * ```
 */
export const regulatorInterval = (
  record: RegulatorInterval,
  supplied: {
    readonly method?: DegreeDayMethod;
    readonly base?: BaseTemperature;
    readonly sensor: TemperatureSensor;
  },
): CountableInterval => {
  expectFields(record, regulatorFields, "record", "a row of regulatorIntervals");
  expectFields(supplied, ["method", "base", "sensor"], "supplied");
  const { interval } = record;
  const source = expectFields(record.source, ["title", "publisher", "year", "where", "url"], "record.source");
  const { title: printed, publisher } = allOf({
    title: () => expectText(source.title, "record.source.title", "a title"),
    publisher: () => expectText(source.publisher, "record.source.publisher", "a publisher"),
  });
  if (interval === null || interval === undefined) {
    return fail("missing", "record.interval", interval, "an interval; the source gives none");
  }
  if (!Array.isArray(interval) || interval.length !== 2)
    return fail("type", "record.interval", interval, "two ends in °C d, such as [200, 230]");
  const ends = allOf({
    method: () =>
      record.method === null
        ? null
        : expectText(record.method, "record.method", "a method, or null where the source states none"),
    from: () => expectNumber(interval[0], "record.interval[0]", { min: 0 }),
    to: () => expectNumber(interval[1], "record.interval[1]", { min: 0 }),
  });
  const assumed: ("method" | "base" | "sensor")[] = [];
  const take = <T>(
    field: "method" | "base",
    stated: T | null,
    given: T | undefined,
    same: (a: T, b: T) => boolean,
  ): T => {
    if (stated === null && given === undefined) {
      return fail("missing", `supplied.${field}`, given, `the ${field}, which the source does not state`);
    }
    if (stated === null) {
      assumed.push(field);
      return given as T;
    }
    if (given !== undefined && !same(given, stated)) {
      return fail("conflict", `supplied.${field}`, given, `nothing: the source states ${shown(stated)}`);
    }
    return stated;
  };
  const celsius = ({ value, unit }: BaseTemperature): number => quantity(value, unit).in("°C");
  const sameBase = (a: BaseTemperature, b: BaseTemperature): boolean =>
    Math.abs(celsius(a) - celsius(b)) < 1e-9;
  const method = take<DegreeDayMethod>("method", record.method, supplied.method, (a, b) => a === b);
  const base = take<BaseTemperature>("base", record.base, supplied.base, sameBase);
  assumed.push("sensor");
  const title = `${printed}, ${publisher}`;
  const model: DegreeDayModel = degreeDayModel({ method, base, sensor: supplied.sensor, source: title });
  const amount = (value: number): Quantity<"degree-days", DegreeDaysOf<string>> =>
    degreeDayAmount({ value, unit: "°C d", model });
  return { model, from: amount(ends.from), to: amount(ends.to), assumed };
};

/**
 * Whether a rule of the form "longer than `interval`, and more than `perDay` on the mean of ten days" is
 * met: the condition under which rebound was seen with prohexadione-calcium on fairways (350 and 21.0).
 * Both have to be exceeded.
 *
 * @param input.sinceApplication - degree-days since the last application, a number of the source's own count
 * @param input.tenDayMean - degree-days a day on the mean of ten days in a row
 * @throws RatewrightError `range`, `not-finite`
 * Source: Plant growth regulation and the rebound effect ..., journal abstract, University of Guelph.
 *
 * @example
 * ```ts
 * import { meetsReboundCondition } from "ratewright";
 * meetsReboundCondition({ sinceApplication: 360, tenDayMean: 22 }); // => true
 * meetsReboundCondition({ sinceApplication: 360, tenDayMean: 21 }); // => false
 * ```
 */
export const meetsReboundCondition = (input: {
  readonly sinceApplication: number;
  readonly tenDayMean: number;
  readonly rule?: { readonly interval: number; readonly perDay: number };
}): boolean => {
  expectFields(input, ["sinceApplication", "tenDayMean", "rule"]);
  const { interval, perDay } = expectFields(
    input.rule ?? { interval: 350, perDay: 21 },
    ["interval", "perDay"],
    "rule",
  );
  const since = expectNumber(input.sinceApplication, "sinceApplication", { min: 0 });
  const mean = expectNumber(input.tenDayMean, "tenDayMean");
  return (
    since > expectNumber(interval, "rule.interval", { min: 0 }) &&
    mean > expectNumber(perDay, "rule.perDay", { min: 0 })
  );
};

const regulatorFields = [
  "id",
  "active",
  "turf",
  "rate",
  "method",
  "base",
  "interval",
  "peak",
  "rebound",
  "duration",
  "suppressionPercent",
  "note",
  "source",
] as const;
