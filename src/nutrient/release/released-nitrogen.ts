import { type CivilDate, civilDate, type DailyTemperatures } from "../../calendar/index.js";
import {
  checks,
  expectNumber,
  expectQuantity,
  type Finding,
  fail,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { modelEnds } from "./release-ends.js";
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
  if (typeof portion !== "object" || portion === null) return fail("type", "", portion, "a portion");
  const { name, nitrogen, model } = portion;
  const door = checks();
  door.run(() => {
    if (typeof name !== "string" || name === "") fail("missing", "name", name, "a name");
  });
  const rate = door.run(() => {
    const found = expectQuantity(nitrogen, { dimension: "mass/area", bound: "non-negative" }, "nitrogen");
    return ["N", "N:soluble", "N:slow"].includes(found.of)
      ? found
      : fail("substance/mismatch", "nitrogen", found, "a quantity of N, N:soluble or N:slow");
  });
  const known = door.run(() =>
    model === undefined ? fail("missing", "model", model, "a release model") : releaseModel(model),
  );
  door.done();
  const amount = (rate as Quantity<"mass/area", "N">).in((unit ?? rate?.unit) as "lb/1000 ft2");
  return { name, nitrogen: rate as unknown as NitrogenRate, model: known as ReleaseModel, amount };
};

/**
 * The nitrogen that each portion of an application gives off, day by day, and all of them together.
 *
 * Equation: `c_i = n F(e_i)`: nitrogen `n` of the portion, share `F` of its model's curve, equivalent days
 * `e_i` by its response to temperature ({@link releasedShares}, {@link accumulateEquivalentDaysC}). Day 0
 * is the day of the application. Released and remaining always add up to what was applied.
 *
 * How uncertain it is: very. No turf source prints weekly percentages by temperature. Each portion has a
 * low and a high end from the published ranges of its model; the truth can lie outside of them in dry,
 * frozen or waterlogged soil. Placement has no default: coated urea on the surface or in the thatch let
 * out 80 % or more within 35 days whatever its label said. So where a model of coated granules holds for
 * granules in the soil and the placement is the surface, the low end stays that of the model; for polymer
 * coatings the middle and the high end take that finding in; for sulfur coatings the middle stays and the high end is
 * all at once, as the same trial found them no slower than uncoated urea; a coating of both counts as sulfur. A
 * finding says so.
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
 *   temperature: { mean: quantity(20, "°C") },
 *   portions: [
 *     { name: "quick", nitrogen: quantity(0.4, "lb/1000 ft2", "N:soluble"), model: quickRelease },
 *     { name: "organic", nitrogen: quantity(0.5, "lb/1000 ft2", "N:slow"), model: naturalOrganic },
 *   ],
 * });
 * release.cumulative.mid[0]?.toFixed(3); // => "0.407"
 * release.cumulative.mid[69]?.toFixed(3); // => "0.700"
 * [release.cumulative.low[69]?.toFixed(2), release.cumulative.high[69]?.toFixed(2)]; // => ["0.50", "0.75"]
 * ```
 */
export const releasedNitrogen = (input: {
  readonly applied: CivilDate;
  readonly days: number;
  readonly placement: Placement;
  readonly temperature: DailyTemperatures | MeanTemperature;
  readonly portions: readonly NitrogenPortion[];
}): NitrogenRelease => {
  if (typeof input !== "object" || input === null) return fail("type", "input", input, "a record");
  const door = checks();
  const start = door.run(() => civilDate(input.applied, "applied"));
  const days = door.run(() => {
    const count = expectNumber(input.days, "days", { min: 1, max: longest });
    return Number.isInteger(count) ? count : fail("range", "days", count, "a whole number of days");
  });
  const placement = door.run(() => checkedPlacement(input.placement, "placement"));
  const read: ReadPortion[] = [];
  door.run(() => {
    if (!Array.isArray(input.portions)) fail("type", "portions", input.portions, "a list of portions");
    if (input.portions.length === 0) fail("missing", "portions", "an empty list", "at least one portion");
  });
  let unit: string | undefined;
  for (const [i, portion] of (Array.isArray(input.portions) ? input.portions : []).entries()) {
    const one = door.run(() => readPortion(portion, unit), `portions[${i}]`);
    if (one === undefined) continue;
    unit ??= one.nitrogen.unit;
    read.push(one);
  }
  door.done();
  const findings: Finding[] = [];
  const weather = releaseWeather(input.temperature, start as CivilDate, days as number, findings);
  const assumed = new Set([...weather.assumptions, ...read.flatMap(({ model }) => model.assumptions)]);
  const portions = read.map(({ name, amount, model }, i): PortionRelease => {
    const ends = modelEnds(model, placement as Placement, weather, `portions[${i}]`, findings);
    for (const assumption of ends.assumptions) assumed.add(assumption);
    const by = (share: Float64Array): number[] => Array.from(share, (part) => amount * part);
    const cumulative = { low: by(ends.low), mid: by(ends.mid), high: by(ends.high) };
    return { name, applied: amount, cumulative, perDay: steps(cumulative.mid), model };
  });
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
    start: start as CivilDate,
    unit: unit as string,
    placement: placement as Placement,
    applied,
    cumulative,
    perDay: steps(cumulative.mid),
    remaining: { low: left(cumulative.high), mid: left(cumulative.mid), high: left(cumulative.low) },
    portions,
    assumptions: [...assumed],
    findings,
    checked: ["placement against that of each model", "that every day has a temperature"],
    notChecked: [
      ...withoutResponse(read),
      "soil moisture, rain and irrigation",
      "broken coatings and particle size",
      "losses to air and water, and uptake: released is not taken up",
    ],
  };
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
  if (release?.type !== "nitrogen-release") return fail("type", "release", release, "a nitrogen release");
  const { cumulative, unit } = release;
  const count = Array.isArray(cumulative?.mid) ? cumulative.mid.length : 0;
  for (const end of ["low", "mid", "high"] as const) {
    const path = `release.cumulative.${end}`;
    const given: readonly number[] | undefined = cumulative?.[end];
    const list: readonly number[] =
      Array.isArray(given) && given.length > 0
        ? given
        : fail("type", path, given, "a list of what is out by the end of each day");
    if (list.length !== count) {
      fail("conflict", path, list.length, `as many days as the middle, which is ${count}`);
    }
    for (const [i, value] of list.entries()) expectNumber(value, `${path}[${i}]`);
  }
  const rate = (value: number): Quantity<"mass/area", "N"> =>
    quantityOf(value, unit, "N", "release") as unknown as Quantity<"mass/area", "N">;
  return Array.from({ length: Math.ceil(count / 7) }, (_, w) => {
    const last = Math.min(7 * w + 6, count - 1);
    const at = (list: readonly number[]): number => list[last] as number;
    const before = w === 0 ? 0 : (cumulative.mid[7 * w - 1] as number);
    return {
      week: w + 1,
      released: rate(at(cumulative.mid) - before),
      outByThen: {
        low: rate(at(cumulative.low)),
        mid: rate(at(cumulative.mid)),
        high: rate(at(cumulative.high)),
      },
    };
  });
};
