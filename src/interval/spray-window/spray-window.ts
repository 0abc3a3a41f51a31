import { compareInstants, type Instant, instant } from "../../calendar/index.js";
import { checks, expectRecord, fail } from "../../quantity/index.js";
import { type HourlyWeather, hourlyWeather, hoursOf } from "./hourly-weather.js";
import { type SprayHour, sprayHour } from "./spray-hour.js";
import { checkedRules, ruleParts, type SprayRules, type SunTimes } from "./spray-rules.js";

/** Hours of a record against the stated rules. It is no leave to spray: see `notChecked`. */
export interface SprayWindow {
  readonly type: "spray-window";
  readonly version: 1;
  readonly hours: readonly SprayHour[];
  /** Hours in a row to which no stated rule objects and of which all that is stated could be checked. */
  readonly runs: readonly { readonly from: Instant; readonly to: Instant; readonly hours: number }[];
  /** What the rules state, and so was looked at where the record has it. */
  readonly checked: readonly string[];
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
 * could not be checked. None of these is leave to spray: the label and the person on the spot decide.
 *
 * @param input.weather - an hourly record, forecast or observed
 * @param input.rules - of labels, of law, of the caller; each with its source; see `publishedSprayRules`
 * @param input.sun - sunrise and sunset of the days, for rules that ask for them
 * @throws RatewrightError what `hourlyWeather` throws, with `weather` before the path; `type`, `missing`,
 * `unit/mismatch`, `range`, `date` for rules and sun
 *
 * @example
 * ```ts
 * import { hourlyWeather, sprayWindow } from "ratewright";
 * const weather = hourlyWeather({
 *   start: "2026-06-03T06:00-05:00", source: "forecast of the weather service",
 *   wind: { unit: "mi/h", values: [2, 5, 9] },
 * });
 * const mph = (value: number) => ({ value, unit: "mi/h", of: "none" });
 * const found = sprayWindow({
 *   weather, rules: [{ wind: { min: mph(3), max: mph(8) }, source: "label" }],
 * });
 * found.hours.map(({ statement }) => statement);
 * // => ["a stated rule objects", "no stated rule objects", "a stated rule objects"]
 * found.hours[2]?.objections[0]?.text; // => "Wind of 9 mi/h is above the stated 8 mi/h."
 * ```
 */
export const sprayWindow = (input: {
  readonly weather: HourlyWeather;
  readonly rules: readonly SprayRules[];
  readonly sun?: readonly SunTimes[];
}): SprayWindow => {
  expectRecord(input, "input");
  if (input.weather?.type !== "hourly-weather") fail("type", "weather", input.weather, "an hourly record");
  const door = checks();
  const weather = door.run(() => hourlyWeather(input.weather), "weather") ?? input.weather;
  const rules = door.run(() => checkedRules(input.rules, "rules")) ?? [];
  const sun = input.sun ?? [];
  if (!Array.isArray(sun)) fail("type", "sun", sun, "a list of days with sunrise and sunset");
  for (const [i, day] of sun.entries()) {
    door.run(() => {
      const [rise, set] = [
        instant(day?.sunrise, `sun[${i}].sunrise`),
        instant(day?.sunset, `sun[${i}].sunset`),
      ];
      if (compareInstants(rise, set) >= 0) fail("date", `sun[${i}].sunset`, set, "a time after sunrise");
    });
  }
  door.done();
  const hours = Array.from({ length: hoursOf(weather) }, (_, hour) => sprayHour(weather, rules, sun, hour));
  const stated = ruleParts.filter((part) => rules.some((one) => one[part] !== undefined));
  return {
    type: "spray-window",
    version: 1,
    hours,
    runs: runsOf(hours),
    checked: stated,
    notChecked: [
      ...ruleParts.filter((part) => !stated.includes(part)).map((part) => `${part}: no rule states it.`),
      "Errors of the forecast, wind direction and what lies downwind, nozzle and boom, water bodies, people and animals, and all else that the label says.",
    ],
  };
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
