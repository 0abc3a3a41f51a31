import { type CivilDate, type DailySeries, dailySeries } from "../../calendar/index.js";
import { notShare, notShares } from "../../numeric/house.js";
import { described, dimensionNoun } from "../../quantity/house.js";
import {
  type Citation,
  checks,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  numberIn,
  outOfRange,
  quantityOf,
} from "../../quantity/index.js";

/** One day of an outlook. */
export interface DiseaseDay {
  readonly date: CivilDate;
  /** `null` where a figure of the weather is missing. */
  readonly value: number | null;
  readonly atOrAboveAction: boolean | null;
}

/** How much the weather favored a disease, day by day. Favorable weather is not a diagnosis. */
export interface DiseaseOutlook {
  readonly type: "disease-outlook";
  readonly version: 1;
  readonly disease: "dollar spot" | "brown patch";
  /** What `value` and `action` are. */
  readonly measure: "probability in percent" | "index";
  readonly action: number;
  readonly days: readonly DiseaseDay[];
  /** Days without a value: the weather of none of them is known to be unfavorable. */
  readonly unknownDays: number;
  readonly findings: readonly Finding[];
  readonly source: Citation;
}

/** What stands beside every figure of this shelf. */
export const noDiagnosis = (disease: string): Finding => ({
  code: "disease/no-diagnosis",
  severity: "caution",
  params: { disease },
  text: `Weather that favors ${disease} is not a diagnosis. Grass, history of the site, dew removal, nitrogen and earlier fungicides count as much. Scout the turf before you treat, and follow the label.`,
});

const seriesFields = ["start", "unit", "what", "source", "values", "type", "version"] as const;

/** What a daily series of weather must hold. */
export interface WeatherRule {
  readonly dimension: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

/** Mean daily air temperatures. */
export const airRule: WeatherRule = { dimension: "temperature", unit: "°C", min: -60, max: 60 };
/** Mean daily relative humidities. */
export const humidityRule: WeatherRule = { dimension: "1", unit: "%", min: 0, max: 100 };

/** Takes a daily series of weather and gives it in the unit of the rule; tells every day that cannot be. */
export const weatherSeries = (input: unknown, path: string, rule: WeatherRule): DailySeries => {
  if (input === undefined) return fail("missing", path, input, "a daily series, made by dailySeries");
  const fields = expectFields(input, seriesFields, path);
  if (fields.type !== "daily-series") return fail("type", path, input, "a daily series, made by dailySeries");
  const problems = checks();
  const series = problems.run(() => dailySeries(input as DailySeries), path);
  problems.done();
  const { unit, values, ...rest } = series ?? fail("type", path, input, "a daily series");
  if (quantityOf(0, unit, "none", `${path}.unit`).dimension !== rule.dimension) {
    return fail(
      "unit/mismatch",
      `${path}.unit`,
      unit,
      `a unit for ${dimensionNoun(rule.dimension)}, such as ${rule.unit}`,
    );
  }
  const same = values.map((value, i) => {
    if (value === null) return null;
    const found = numberIn(quantityOf(value, unit, "none", `${path}.values[${i}]`), rule.unit);
    problems.run(() => {
      if (found < rule.min - 1e-9 || found > rule.max + 1e-9) {
        outOfRange(`${path}.values[${i}]`, described(`${value} ${unit}`), {
          min: rule.min,
          max: rule.max,
          unit: rule.unit,
        });
      }
    });
    return found;
  });
  if (rule === humidityRule) problems.run(() => notShares(same, `${path}.values`));
  problems.done();
  return dailySeries({ ...rest, unit: rule.unit, values: same });
};

/** A share of 0 to 100 % as a number of percent. */
export const expectPercent = (input: unknown, path: string): number => {
  const share = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, path);
  return share.in("%") <= 100 + 1e-9
    ? notShare(share.in("%"), path)
    : outOfRange(path, share, { min: 0, max: 100, unit: "%" });
};
