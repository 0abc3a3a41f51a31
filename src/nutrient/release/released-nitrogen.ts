import { type CivilDate, civilDate, type DailyTemperatures } from "../../calendar/index.js";
import { allOf, expectFields, expectNumber, fail, numberIn, outOfRange } from "../../quantity/index.js";
import { eachOf, listOf } from "../label/under-path.js";
import { type NitrogenPortion, type ReadPortion, readPortion } from "./nitrogen-portion.js";
import { longestRelease, type NitrogenRelease, type PortionRelease } from "./nitrogen-release.js";
import { beyondObserved, modelEnds } from "./release-ends.js";
import { checkedPlacement, type Placement, type ReleaseModel } from "./release-model.js";
import { type MeanTemperature, type ReleaseWeather, releaseWeather } from "./release-weather.js";

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
 * @param input.portions - what goes down; for a product, its quick- and its slow-release nitrogen
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
 *     { name: "quick", nitrogen: quantity(0.4, "lb/1000 ft2", "N:quick"), model: quickRelease },
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
  const runs = read.map((portion, i) => runOf(portion, placement, weather, `portions[${i}]`));
  const portions = runs.map(({ portion }) => portion);
  const cumulative = {
    low: summed(portions.map((p) => p.cumulative.low)),
    mid: summed(portions.map((p) => p.cumulative.mid)),
    high: summed(portions.map((p) => p.cumulative.high)),
  };
  const applied = portions.reduce((sum, p) => sum + p.applied, 0);
  if (!Number.isFinite(applied)) fail("range", "portions", applied, "nitrogen whose sum is a finite number");
  const left = (list: readonly number[]): number => Math.max(0, applied - (list[list.length - 1] as number));
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
      "broken coatings, and particle size except for isobutylidene diurea",
      "losses to air and water, and uptake: released is not taken up",
    ],
  };
};

/** What one portion gives off, and what is to be said of it. */
const runOf = (
  { name, amount, model }: ReadPortion,
  placement: Placement,
  weather: ReleaseWeather,
  path: string,
) => {
  const ends = modelEnds(model, placement, weather, path);
  const by = (share: Float64Array): number[] => Array.from(share, (part) => amount * part);
  const cumulative = { low: by(ends.low), mid: by(ends.mid), high: by(ends.high) };
  const portion: PortionRelease = { name, applied: amount, cumulative, perDay: steps(cumulative.mid), model };
  return { ends, portion, findings: [...ends.findings, ...beyondObserved(model, weather, path)] };
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
      const count = expectNumber(input.days, "days", { min: 1, max: longestRelease });
      return Number.isInteger(count) ? count : outOfRange("days", count, { step: 1, count: "days" });
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
