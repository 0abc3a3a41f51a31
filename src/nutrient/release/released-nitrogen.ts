import { type CivilDate, civilDate, type DailyTemperatures } from "../../calendar/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";
import { expectShortText } from "../label/expect-source.js";
import { eachOf, listOf } from "../label/under-path.js";
import { beyondObserved, modelEnds } from "./release-ends.js";
import { checkedPlacement, type Placement, type ReleaseModel, releaseModel } from "./release-model.js";
import { type MeanTemperature, releaseWeather } from "./release-weather.js";

/** Nitrogen of an application: all of it, or its soluble or slow part. */
export type NitrogenRate =
  | Quantity<"mass/area", "N">
  | Quantity<"mass/area", "N:soluble">
  | Quantity<"mass/area", "N:slow">;

/** A part of the nitrogen that goes down, with the model by which it comes out. */
export interface NitrogenPortion {
  readonly name: string;
  readonly nitrogen: NitrogenRate;
  readonly model: ReleaseModel;
}

/** Low end, middle and high end, one number for each day. */
export interface DailyEstimate {
  readonly low: readonly number[];
  readonly mid: readonly number[];
  readonly high: readonly number[];
}

/** What one portion has given off. */
export interface PortionRelease {
  readonly name: string;
  /** The applied nitrogen, in the unit of the record. */
  readonly applied: number;
  /** By the end of each day. */
  readonly cumulative: DailyEstimate;
  /** On each day, by the middle estimate. */
  readonly perDay: readonly number[];
  readonly model: ReleaseModel;
}

/** Nitrogen given off day by day: an estimate. All figures are of nitrogen, in `unit`. Plain JSON. */
export interface NitrogenRelease {
  readonly type: "nitrogen-release";
  readonly version: 1;
  /** The day of the application, which is the first day. */
  readonly start: CivilDate;
  readonly unit: string;
  readonly placement: Placement;
  readonly applied: number;
  readonly cumulative: DailyEstimate;
  readonly perDay: readonly number[];
  /**
   * What is still inside after the last day, `low` by the fast end: `low` with the last of `cumulative.high`, and
   * `high` with that of `cumulative.low`, add up to `applied`.
   */
  readonly remaining: { readonly low: number; readonly mid: number; readonly high: number };
  readonly portions: readonly PortionRelease[];
  readonly assumptions: readonly string[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

const longest = 3660;

/** A portion, checked, and its nitrogen in one unit for all. */
export interface ReadPortion extends NitrogenPortion {
  readonly amount: number;
}

/** Takes a portion that may come from JSON, or throws all that is wrong with it; its amount in `unit`, or in its own. */
export const readPortion = (portion: NitrogenPortion, unit?: string): ReadPortion => {
  expectFields(portion, ["name", "nitrogen", "model"], "", "a portion");
  const { name, nitrogen, model } = portion;
  const read = allOf({
    name: () => expectShortText(name, "name", "a name"),
    nitrogen: (): NitrogenRate => {
      const rate = expectQuantity(nitrogen, { dimension: "mass/area", bound: "non-negative" }, "nitrogen");
      if (!nitrogens.some((one) => one === rate.of))
        fail("substance/mismatch", "nitrogen", rate, "a quantity of N, N:soluble or N:slow");
      // A union of kinds is no kind of a union; which of the three it is was read above.
      return rate as unknown as NitrogenRate;
    },
    model: () =>
      model === undefined ? fail("missing", "model", model, "a release model") : releaseModel(model),
  });
  return { ...read, amount: numberIn(read.nitrogen, unit ?? read.nitrogen.unit) };
};

const nitrogens = ["N", "N:soluble", "N:slow"] as const;

/**
 * The nitrogen that each portion of an application gives off, day by day, and all of them together.
 *
 * Equation: `c_i = n F(e_i)`: nitrogen `n` of the portion, share `F` of its model's curve, equivalent days
 * `e_i` by its response to temperature ({@link releasedShares}, {@link accumulateEquivalentDaysC}). Day 0
 * is the day of the application. Released and remaining always add up to what was applied.
 *
 * How uncertain it is: very. No turf source prints weekly percentages by temperature. Each portion has a
 * low and a high end from the published ranges of its model; the truth can lie outside of them in dry,
 * frozen or waterlogged soil. Days beyond what was measured, and temperatures outside of it, carry a finding.
 *
 * Placement has no default: of coated urea on the surface or in the thatch one trial had 80 % or more out within 35 days
 * whatever its label said, another only half within a cool season. So where a model of coated granules holds for
 * granules in the soil and the placement is the surface, both ends take in {@link polymerCoatedOnSurface} or
 * {@link sulfurCoatedOnSurface}; the middle takes in the former, and stays that of the model for sulfur coatings. A coating of
 * both counts as sulfur. A finding says so.
 *
 * @param input.applied - date of the application
 * @param input.days - how many days, 1 to 3660
 * @param input.placement - where the granules lie
 * @param input.temperature - daily air or soil temperatures that cover these days, or one mean for all
 * @param input.portions - what goes down; for a product, its soluble and its slow nitrogen
 * @throws RatewrightError `missing` without placement or temperatures of a day; `conflict` where a model
 *   does not hold for the placement; `range`, `date`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: placement, Brigham Young University (Ransom, thesis), 2014, abstract; forms as in
 * {@link releasedShares}.
 *
 * @example
 * ```ts
 * import { naturalOrganic, quantity, quickRelease, releasedNitrogen } from "ratewright";
 * const release = releasedNitrogen({
 *   applied: "2026-05-01",
 *   days: 70,
 *   placement: "surface or thatch",
 *   temperature: { mean: quantity(25, "°C") },
 *   portions: [
 *     { name: "quick", nitrogen: quantity(0.4, "lb/1000 ft2", "N:soluble"), model: quickRelease },
 *     { name: "organic", nitrogen: quantity(0.5, "lb/1000 ft2", "N:slow"), model: naturalOrganic },
 *   ],
 * });
 * release.cumulative.mid[0]?.toFixed(3); // => "0.410"
 * release.cumulative.mid[69]?.toFixed(3); // => "0.700"
 * [release.cumulative.low[69]?.toFixed(2), release.cumulative.high[69]?.toFixed(2)]; // => ["0.50", "0.89"]
 * ```
 */
export const releasedNitrogen = (input: {
  readonly applied: CivilDate;
  readonly days: number;
  readonly placement: Placement;
  readonly temperature: DailyTemperatures | MeanTemperature;
  readonly portions: readonly NitrogenPortion[];
}): NitrogenRelease => {
  const { start, days, placement, portions: read } = readRelease(input);
  const weather = releaseWeather(input.temperature, start, days);
  const runs = read.map(({ name, amount, model }, i) => {
    const ends = modelEnds(model, placement, weather, `portions[${i}]`);
    const by = (share: Float64Array): number[] => Array.from(share, (part) => amount * part);
    const cumulative = { low: by(ends.low), mid: by(ends.mid), high: by(ends.high) };
    const portion: PortionRelease = {
      name,
      applied: amount,
      cumulative,
      perDay: steps(cumulative.mid),
      model,
    };
    return {
      ends,
      portion,
      findings: [...ends.findings, ...beyondObserved(model, weather, `portions[${i}]`)],
    };
  });
  const portions = runs.map(({ portion }) => portion);
  const cumulative = {
    low: summed(portions.map((p) => p.cumulative.low)),
    mid: summed(portions.map((p) => p.cumulative.mid)),
    high: summed(portions.map((p) => p.cumulative.high)),
  };
  const applied = portions.reduce((sum, p) => sum + p.applied, 0);
  if (!Number.isFinite(applied)) fail("range", "portions", applied, "nitrogen whose sum is a finite number");
  const left = (list: readonly number[]): number => Math.max(0, applied - (list.at(-1) as number));
  return {
    type: "nitrogen-release",
    version: 1,
    start,
    unit: read[0]?.nitrogen.unit as string,
    placement,
    applied,
    cumulative,
    perDay: steps(cumulative.mid),
    remaining: { low: left(cumulative.high), mid: left(cumulative.mid), high: left(cumulative.low) },
    portions,
    assumptions: [
      ...new Set([
        ...weather.assumptions,
        ...read.flatMap(({ model }) => model.assumptions),
        ...runs.flatMap(({ ends }) => ends.assumptions),
      ]),
    ],
    findings: [...weather.findings, ...runs.flatMap(({ findings }) => findings)],
    checked: [
      "placement against that of each model",
      "that every day has a temperature",
      "days and temperatures against what was measured, where a model states it",
    ],
    notChecked: [
      ...withoutResponse(read),
      "soil moisture, rain and irrigation",
      "broken coatings, and particle size but for isobutylidene diurea",
      "losses to air and water, and uptake: released is not taken up",
    ],
  };
};

const mostPortions = 100;

const readRelease = (input: {
  readonly applied: CivilDate;
  readonly days: number;
  readonly placement: Placement;
  readonly portions: readonly NitrogenPortion[];
}) => {
  expectFields(input, ["applied", "days", "placement", "temperature", "portions"], "input");
  return allOf({
    start: () => civilDate(input.applied, "applied"),
    days: () => {
      const count = expectNumber(input.days, "days", { min: 1, max: longest });
      return Number.isInteger(count) ? count : fail("range", "days", count, "a whole number of days");
    },
    placement: () => checkedPlacement(input.placement, "placement"),
    portions: () => {
      const list = listOf(input.portions, "portions", "portion", mostPortions) as readonly NitrogenPortion[];
      const read = eachOf(list, "portions", (portion) => readPortion(portion));
      const unit = read[0]?.nitrogen.unit as string;
      return read.map((portion) => ({ ...portion, amount: numberIn(portion.nitrogen, unit) }));
    },
  });
};

/** What was not checked of portions whose model gives no response to temperature, each name once. */
export const withoutResponse = (
  portions: readonly { readonly name: string; readonly model: ReleaseModel }[],
): readonly string[] => {
  const still = portions.filter(
    ({ model }) => model.temperature.kind === "none" && model.curve.kind !== "at once",
  );
  const names = [...new Set(still.map(({ name }) => name))];
  return names.map((name) => `temperature: the model of ${name} does not respond to it`);
};

const steps = (cumulative: readonly number[]): number[] =>
  cumulative.map((sum, i) => (i === 0 ? sum : sum - (cumulative[i - 1] as number)));

const summed = (lists: readonly (readonly number[])[]): number[] =>
  (lists[0] ?? []).map((_, i) => lists.reduce((sum, list) => sum + (list[i] as number), 0));

/** What came out in one week, and what is out by its end. */
export interface ReleaseWeek {
  /** From 1. */
  readonly week: number;
  readonly released: Quantity<"mass/area", "N">;
  readonly outByThen: {
    readonly low: Quantity<"mass/area", "N">;
    readonly mid: Quantity<"mass/area", "N">;
    readonly high: Quantity<"mass/area", "N">;
  };
}

/**
 * The release week by week: what comes out in each by the middle estimate, and what is out by its end
 * with low and high. The last week may be shorter than seven days.
 *
 * @param release - as {@link releasedNitrogen} gives it, or what JSON left of it
 * @throws RatewrightError `type`; `conflict` where the ends have other numbers of days; `not-finite`, `unit/unknown`
 *
 * @example
 * ```ts
 * import { quantity, quickRelease, releaseByWeek, releasedNitrogen } from "ratewright";
 * const release = releasedNitrogen({
 *   applied: "2026-05-01", days: 14, placement: "surface or thatch",
 *   temperature: { mean: quantity(68, "°F") },
 *   portions: [{ name: "urea", nitrogen: quantity(0.7, "lb/1000 ft2", "N"), model: quickRelease }],
 * });
 * releaseByWeek(release).map(({ released }) => released.in("lb/1000 ft2")); // => [0.7, 0]
 * ```
 */
export const releaseByWeek = (release: NitrogenRelease): ReleaseWeek[] => {
  if (Object(release).type !== "nitrogen-release") {
    return fail("type", "release", release, "a nitrogen release");
  }
  const { low, mid, high } = expectRecord(release.cumulative, "release.cumulative", "{ low, mid, high }");
  const list = (given: unknown, end: string): readonly number[] => {
    const path = `release.cumulative.${end}`;
    const days = listOf(given, path, "day", longest);
    return eachOf(days, path, (value) => expectNumber(value, ""));
  };
  const { unit, ends } = allOf({
    unit: () => expectShortText(release.unit, "release.unit", "a unit, such as lb/1000 ft2"),
    ends: () =>
      allOf({ low: () => list(low, "low"), mid: () => list(mid, "mid"), high: () => list(high, "high") }),
  });
  const count = ends.mid.length;
  for (const end of ["low", "high"] as const) {
    if (ends[end].length === count) continue;
    const text = `as many days as the middle, which is ${count}`;
    fail("conflict", `release.cumulative.${end}`, ends[end].length, text);
  }
  const rate = (value: number): Quantity<"mass/area", "N"> =>
    expectQuantity({ value, unit, of: "N" }, { dimension: "mass/area", of: "N" }, "release");
  return Array.from({ length: Math.ceil(count / 7) }, (_, w) => {
    const last = Math.min(7 * w + 6, count - 1);
    const at = (list: readonly number[]): number => list[last] as number;
    const before = w === 0 ? 0 : (ends.mid[7 * w - 1] as number);
    return {
      week: w + 1,
      released: rate(at(ends.mid) - before),
      outByThen: {
        low: rate(at(ends.low)),
        mid: rate(at(ends.mid)),
        high: rate(at(ends.high)),
      },
    };
  });
};
