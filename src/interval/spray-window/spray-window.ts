import { compareInstants, type Instant, instant } from "../../calendar/index.js";
import { allOf, checks, expectFields, fail, outOfRange, type Quantity } from "../../quantity/index.js";
import { type HourlyWeather, heightAt, hourlyWeather, hoursOf } from "./hourly-weather.js";
import { type SprayHour, sprayHour } from "./spray-hour.js";
import { checkedRules, ruleParts, type SprayRules, type SunTimes } from "./spray-rules.js";

/** Hours of a record against the stated rules. It does not authorize spraying: see `notChecked`. */
export interface SprayWindow {
  readonly type: "spray-window";
  readonly version: 1;
  readonly hours: readonly SprayHour[];
  /** Hours in a row to which no stated rule objects and of which all that is stated could be checked. */
  readonly runs: readonly { readonly from: Instant; readonly to: Instant; readonly hours: number }[];
  /** What the rules state, and so was looked at where the record has it. */
  readonly checked: readonly string[];
  /** What was assumed, such as the height that rules without one mean. */
  readonly assumed: readonly string[];
  /** What no rule states, or no record tells. */
  readonly notChecked: readonly string[];
}

/**
 * Which hours of a forecast the stated rules object to, and why: wind, gusts, signs of inversion, air
 * temperature, humidity, Delta T, rain within the rainfast time, soil moisture, frost and dormancy.
 *
 * A figure on a bound is within it. Delta T is compared with the band of its error: an hour whose band
 * reaches over a bound is named as not checked, neither objected to nor passed. Rain counts in the hour
 * itself and in the stated hours after it.
 *
 * Per hour the result says that a stated rule objects, that none does, or that none does but something
 * could not be checked. None of these authorizes spraying: the label and the person on the spot decide.
 *
 * A wind has a height. Forecasts state it mostly for 10 m, labels mean the boom or 2 m, and near the ground it blows
 * about half as fast. So the record states the height of its wind and a rule the height that it means; where they
 * differ, the wind is brought there by `windAtHeight` (FAO-56, equation 47). A rule whose height, or whose record's
 * height, is not stated is named in `notChecked`, with the reason; so are gusts at another height.
 *
 * @param input.weather - an hourly record, forecast or observed
 * @param input.rules - of labels, of law, of the caller; each with its source; see `publishedSprayRules`
 * @param input.sun - sunrise and sunset of the days, for rules that ask for them
 * @param input.windHeight - the height above the ground that rules on wind mean where they state none; told in `assumed`
 * @throws RatewrightError what `hourlyWeather` throws, with `weather` before the path; `type`, `missing`,
 * `unit/mismatch`, `range`, `date` for rules and sun
 *
 * Source: stands with each rule.
 *
 * @example
 * ```ts
 * import { hourlyWeather, sprayWindow } from "ratewright";
 * const weather = hourlyWeather({
 *   start: "2026-06-03T06:00-05:00", source: "forecast of the weather service",
 *   wind: { unit: "mi/h", height: { value: 10, unit: "m", of: "none" }, values: [2, 9, 20] },
 * });
 * const mph = (value: number) => ({ value, unit: "mi/h", of: "none" });
 * const found = sprayWindow({
 *   weather,
 *   rules: [{ wind: { min: mph(3), max: mph(8), height: { value: 20, unit: "in", of: "none" } }, source: "label" }],
 * });
 * found.hours.map(({ statement }) => statement);
 * // => ["a stated rule objects", "no stated rule objects", "a stated rule objects"]
 * found.hours[2]?.objections[0]?.text; // => "Wind of 10.35 mi/h at 20 in (20 mi/h at 10 m) is above the stated 8 mi/h."
 * ```
 */
export const sprayWindow = (input: {
  readonly weather: HourlyWeather;
  readonly rules: readonly SprayRules[];
  readonly sun?: readonly SunTimes[];
  readonly windHeight?: Quantity<"length", "none">;
}): SprayWindow => {
  const given = expectFields(input, ["weather", "rules", "sun", "windHeight"]);
  const { weather, rules, sun, windHeight } = allOf({
    weather: () => readWeather(given.weather),
    rules: () => checkedRules(given.rules, "rules"),
    sun: () => readSun(given.sun ?? []),
    windHeight: () => heightAt(given.windHeight, "windHeight"),
  });
  const context = { weather, sun, ...(windHeight && { windHeight }) };
  const hours = Array.from({ length: hoursOf(weather) }, (_, hour) => sprayHour(rules, context, hour));
  const stated = ruleParts.filter((part) => rules.some((one) => one[part] !== undefined));
  return {
    type: "spray-window",
    version: 1,
    hours,
    runs: runsOf(hours),
    checked: stated,
    assumed: windHeight
      ? [
          `Wind rules with no stated height are taken at ${windHeight.value} ${windHeight.unit} above the ground.`,
        ]
      : [],
    notChecked: [
      ...ruleParts.filter((part) => !stated.includes(part)).map((part) => `${part}: no rule states it.`),
      "Errors of the forecast, wind direction and what is downwind, nozzle and boom, water bodies, people and animals, and everything else on the label.",
    ],
  };
};

const readWeather = (input: unknown): HourlyWeather => {
  if ((Object(input) as { readonly type?: unknown }).type !== "hourly-weather") {
    return fail("type", "weather", input, "an hourly record, as hourlyWeather gives");
  }
  const problems = checks();
  const weather = problems.run(() => hourlyWeather(input as HourlyWeather), "weather");
  problems.done();
  return weather as HourlyWeather;
};

const readSun = (input: unknown): readonly SunTimes[] => {
  if (!Array.isArray(input)) return fail("type", "sun", input, "a list of days with sunrise and sunset");
  if (input.length > 40_000) return outOfRange("sun", input, { max: 40000, count: "days" });
  const problems = checks();
  const days = Array.from(input as readonly unknown[], (one, i) =>
    problems.run(() => {
      const day = expectFields(
        one,
        ["type", "version", "date", "state", "sunrise", "noon", "sunset", "dayLength"],
        `sun[${i}]`,
      );
      const read = allOf({
        sunrise: () => instant(day.sunrise as Instant, `sun[${i}].sunrise`),
        sunset: () => instant(day.sunset as Instant, `sun[${i}].sunset`),
      });
      if (compareInstants(read.sunrise, read.sunset) >= 0) {
        fail("date", `sun[${i}].sunset`, read.sunset, "a time after sunrise");
      }
      return read;
    }),
  );
  problems.done();
  return days.flatMap((day) => day ?? []);
};

const runsOf = (hours: readonly SprayHour[]): SprayWindow["runs"] => {
  const runs: { from: Instant; to: Instant; hours: number }[] = [];
  let open = false;
  for (const { from, to, statement } of hours) {
    const free = statement === "no stated rule objects";
    const last = runs[runs.length - 1];
    if (free && open && last !== undefined)
      runs[runs.length - 1] = { from: last.from, to, hours: last.hours + 1 };
    else if (free) runs.push({ from, to, hours: 1 });
    open = free;
  }
  return runs;
};
