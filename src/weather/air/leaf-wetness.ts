import { exceeds } from "../../numeric/index.js";
import { counted, described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { dewPointC } from "./dew-point.js";
import { type AirColumn, columnRules, expectColumn, expectHumidity, type Humidity } from "./expect-air.js";

/** Estimated hours of wet leaves, hour by hour. An estimate from humid air is no sensor on a leaf. */
export interface LeafWetness {
  readonly type: "leaf-wetness";
  readonly version: 1;
  /** Hours that count as wet. */
  readonly wetHours: number;
  /** Hours without a figure: with any of them the count may be too low. */
  readonly unknownHours: number;
  /** The longest stretch of wet hours without a dry or an unknown one between. */
  readonly longestWetPeriod: number;
  /** Each hour: wet, dry, or `null` where it cannot be told. */
  readonly hours: readonly (boolean | null)[];
  readonly rule:
    | { readonly by: "humidity"; readonly atOrAbove: Humidity }
    | { readonly by: "dew point depression"; readonly atOrBelow: Quantity<"temperature difference", "none"> };
  readonly findings: readonly Finding[];
}

const estimate: Finding = /* @__PURE__ */ frozen({
  code: "leaf-wetness/estimated",
  severity: "note",
  params: {},
  text: "Leaf wetness is estimated from humid air. A threshold for your own site, found with a sensor on the turf, is better.",
  source: {
    title: "Suitability of relative humidity as an estimator of leaf wetness duration",
    publisher: "XVI Congresso Brasileiro de Agrometeorologia (Sentelhas et al.)",
    where: "abstract",
  },
});

const differenceOf = (input: unknown, path: string): Quantity<"temperature difference", "none"> =>
  expectQuantity(input, { dimension: "temperature difference", of: "none", bound: "non-negative" }, path);

const ruleOf = (atOrAbove: unknown, depression: unknown): LeafWetness["rule"] => {
  if (depression === undefined) {
    const bound =
      atOrAbove === undefined ? quantity(90, "%") : expectHumidity(atOrAbove, "humidityAtOrAbove");
    return { by: "humidity", atOrAbove: bound };
  }
  if (atOrAbove !== undefined) {
    return fail(
      "conflict",
      "depressionAtOrBelow",
      depression,
      "one of humidityAtOrAbove and depressionAtOrBelow",
    );
  }
  return { by: "dew point depression", atOrBelow: differenceOf(depression, "depressionAtOrBelow") };
};

/**
 * Hours of wet leaves from the humidity of the air. An hour counts as wet where the relative humidity is at or above
 * a bound, 90 % unless another is stated; or where air and dew point lie no further apart than a stated difference; or
 * where rain falls, if a column of rain is given.
 *
 * The bound of 90 % did best of three humidity rules over four regions, with 87 to 92 % of the hours right; a bound
 * found at the site did better, with a mean error from 1.2 hours a day. Watering by night wets leaves too: give it in the rain column.
 *
 * @param input.humidity - hour by hour; the column of an hourly record fits
 * @param input.rain - depth in each hour; any above zero counts as wet
 * @param input.humidityAtOrAbove - another bound than 90 %
 * @param input.depressionAtOrBelow - temperature less dew point, instead of a bound of humidity; asks for `temperature`.
 * No default: the source was not read for its figure
 * @throws RatewrightError `missing`, `conflict`, `range`, `unit/mismatch`, `not-finite` with paths such as `humidity.values[3]`
 * Source: P. C. Sentelhas et al., "Suitability of relative humidity as an estimator of leaf wetness duration", XVI
 * Congresso Brasileiro de Agrometeorologia, abstract.
 *
 * @example
 * ```ts
 * import { leafWetness } from "ratewright";
 * const night = leafWetness({ humidity: { unit: "%", values: [84, 90, 95, null, 96, 88] } });
 * night.wetHours; // => 3
 * night.unknownHours; // => 1
 * night.longestWetPeriod; // => 2
 * ```
 */
export const leafWetness = (input: {
  readonly humidity: AirColumn;
  readonly temperature?: AirColumn;
  readonly rain?: AirColumn;
  readonly humidityAtOrAbove?: Humidity;
  readonly depressionAtOrBelow?: Quantity<"temperature difference", "none">;
}): LeafWetness => {
  const fields = expectFields(input, [
    "humidity",
    "temperature",
    "rain",
    "humidityAtOrAbove",
    "depressionAtOrBelow",
  ]);
  const { humidity, temperature, rain, rule } = allOf({
    humidity: () => expectColumn(fields.humidity, "humidity", columnRules.humidity),
    temperature: () =>
      fields.temperature === undefined
        ? undefined
        : expectColumn(fields.temperature, "temperature", columnRules.temperature),
    rain: () => (fields.rain === undefined ? undefined : expectColumn(fields.rain, "rain", columnRules.rain)),
    rule: () => ruleOf(fields.humidityAtOrAbove, fields.depressionAtOrBelow),
  });
  for (const [path, column] of Object.entries({ temperature, rain })) {
    if (column !== undefined && column.length !== humidity.length) {
      fail(
        "conflict",
        `${path}.values`,
        described(counted(column.length, "hour")),
        `as many as humidity has, which is ${humidity.length}`,
      );
    }
  }
  if (rule.by === "dew point depression" && temperature === undefined) {
    fail("missing", "temperature", temperature, "air temperatures, from which the dew point is computed");
  }
  const hours = humidity.map((percent, i): boolean | null => {
    const depth = rain?.[i];
    if (typeof depth === "number" && depth > 0) return true;
    const humid = isHumid(rule, percent, temperature?.[i] ?? null);
    // No figure of rain leaves open whether a dry-looking hour was wet.
    return depth === null && humid !== true ? null : humid;
  });
  return {
    type: "leaf-wetness",
    version: 1,
    wetHours: hours.filter((wet) => wet === true).length,
    unknownHours: hours.filter((wet) => wet === null).length,
    longestWetPeriod: longestRun(hours),
    hours,
    rule,
    findings: [{ ...estimate, params: {} }],
  };
};

const isHumid = (
  rule: LeafWetness["rule"],
  percent: number | null,
  celsius: number | null,
): boolean | null => {
  if (percent === null) return null;
  if (rule.by === "humidity") return !exceeds(rule.atOrAbove.in("%"), percent);
  if (celsius === null) return null;
  // Air of 0 % has no dew point: what is not a number is no small difference either.
  return celsius - dewPointC(celsius, percent) <= rule.atOrBelow.in("°C diff") + 1e-9;
};

/** The longest run of `true`. */
export const longestRun = (list: readonly (boolean | null)[]): number => {
  let [longest, now] = [0, 0];
  for (const one of list) {
    now = one === true ? now + 1 : 0;
    longest = Math.max(longest, now);
  }
  return longest;
};
