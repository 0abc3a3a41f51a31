import { counted } from "../../quantity/house.js";
import { type Finding, fail } from "../../quantity/index.js";
import { polymerCoatedOnSurface, sulfurCoatedOnSurface } from "./coated-urea.js";
import { releasedShares } from "./release-curve.js";
import type { Placement, ReleaseModel } from "./release-model.js";
import type { Bound3 } from "./release-range.js";
import { accumulateEquivalentDaysC } from "./release-temperature.js";
import type { ReleaseWeather } from "./release-weather.js";

/** Shares of the nitrogen that are out by each day, what was assumed besides the model's own assumptions, and what was found. */
export interface ModelEnds extends Readonly<Record<Bound3, Float64Array>> {
  readonly assumptions: readonly string[];
  readonly findings: readonly Finding[];
}

const sharesOf = (model: ReleaseModel, weather: ReleaseWeather, bound: Bound3): Float64Array => {
  const days = accumulateEquivalentDaysC(weather.maxC, weather.minC, model.temperature, bound);
  const shares = releasedShares(days, model.curve, bound);
  const error = (model.fitErrorPercent ?? 0) / 100;
  if (error === 0 || bound === "mid") return shares;
  return shares.map((share) => (bound === "low" ? Math.max(0, share - error) : Math.min(1, share + error)));
};

const least = (a: Float64Array, b: Float64Array): Float64Array =>
  a.map((x, i) => Math.min(x, b[i] as number));
const most = (a: Float64Array, b: Float64Array): Float64Array => a.map((x, i) => Math.max(x, b[i] as number));

/** The low end, the middle and the high end of a model under the weather and in the placement that are given. */
export const modelEnds = (
  model: ReleaseModel,
  placement: Placement,
  weather: ReleaseWeather,
  path: string,
): ModelEnds => {
  const low = sharesOf(model, weather, "low");
  const mid = sharesOf(model, weather, "mid");
  const high = sharesOf(model, weather, "high");
  if (model.placement === "either" || model.placement === placement)
    return { low, mid, high, assumptions: [], findings: [] };
  const { coating } = model;
  if (placement === "incorporated" || coating === undefined) {
    return fail("conflict", `${path}.model.placement`, model.placement, `a model for ${placement}`);
  }
  const polymer = coating === "polymer";
  const surface = polymer ? polymerCoatedOnSurface : sulfurCoatedOnSurface;
  const finding: Finding = {
    code: "release/placement",
    severity: "caution",
    path: `${path}.model`,
    params: { model: model.name, placement, coating },
    text: polymer
      ? "The model is for granules in the soil. On the surface or in thatch one trial found 80 % or more out by day 35 whatever the label said, another only half within a cool season: the range covers both, the middle follows the first."
      : "The model is for granules in the soil. On the surface or in thatch the sulfur-coated ureas of one trial were no slower than uncoated urea, and wax-sealed granules of another waited 25 days: the range runs from one to the other.",
    source: surface.source,
  };
  const middle = polymer ? most(mid, sharesOf(surface, weather, "mid")) : mid;
  return {
    low: least(low, sharesOf(surface, weather, "low")),
    mid: middle,
    high: polymer ? most(high, sharesOf(surface, weather, "high")) : high.map(() => 1),
    assumptions: surface.assumptions.map((assumption) => `on the surface: ${assumption}`),
    findings: [finding],
  };
};

/** What a result says where it goes beyond the days or the temperatures that were measured. */
export const beyondObserved = (model: ReleaseModel, weather: ReleaseWeather, path: string): Finding[] => {
  const { days, fromC, toC } = model.observed ?? {};
  const { name, source } = model;
  const asked = weather.maxC.length;
  const base = { severity: "caution", path: `${path}.model`, source } as const;
  const findings: Finding[] = [];
  if (days !== undefined && asked > days) {
    findings.push({
      ...base,
      code: "release/beyond-observed-days",
      params: { model: name, observedDays: days, days: asked },
      text: `The figures for ${name} end on day ${days}; from there to day ${asked} it is extrapolated.`,
    });
  }
  const mean = (i: number): number => ((weather.maxC[i] as number) + (weather.minC[i] as number)) / 2;
  const outside = weather.maxC.reduce(
    (count, _, i) => (mean(i) < (fromC ?? -100) - 1e-9 || mean(i) > (toC ?? 200) + 1e-9 ? count + 1 : count),
    0,
  );
  if (outside > 0) {
    const range = fromC === toC ? `at ${fromC} °C` : `from ${fromC ?? "any"} to ${toC ?? "any"} °C`;
    const rests = model.temperature.kind === "none" ? undefined : model.temperature.restsBelowC;
    findings.push({
      ...base,
      code: "release/beyond-observed-temperature",
      params: {
        model: name,
        days: outside,
        ...(fromC === undefined ? {} : { fromC }),
        ...(toC === undefined ? {} : { toC }),
      },
      text:
        `${outside} of ${counted(asked, "day")} ${outside === 1 ? "lies" : "lie"} outside the temperatures at which ${name} was measured, ${range}` +
        (rests === undefined ? "." : `; below ${rests} °C the low end takes no release.`),
    });
  }
  return findings;
};
