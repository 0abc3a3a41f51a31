import { type Finding, fail } from "../../quantity/index.js";
import { releasedShares } from "./release-curve.js";
import type { Placement, ReleaseModel } from "./release-model.js";
import { polymerCoatedOnSurface } from "./release-models.js";
import type { Bound3 } from "./release-range.js";
import { accumulateEquivalentDaysC } from "./release-temperature.js";
import type { ReleaseWeather } from "./release-weather.js";

/** Shares of the nitrogen that are out by each day, and what was assumed besides the model's own assumptions. */
export interface ModelEnds extends Readonly<Record<Bound3, Float64Array>> {
  readonly assumptions: readonly string[];
}

const sharesOf = (model: ReleaseModel, weather: ReleaseWeather, bound: Bound3): Float64Array => {
  const days = accumulateEquivalentDaysC(weather.maxC, weather.minC, model.temperature, bound);
  const shares = releasedShares(days, model.curve, bound);
  const error = (model.fitErrorPercent ?? 0) / 100;
  if (error === 0 || bound === "mid") return shares;
  return shares.map((share) => (bound === "low" ? Math.max(0, share - error) : Math.min(1, share + error)));
};

/** The low end, the middle and the high end of a model under the weather and in the placement that are given. */
export const modelEnds = (
  model: ReleaseModel,
  placement: Placement,
  weather: ReleaseWeather,
  path: string,
  findings: Finding[],
): ModelEnds => {
  const low = sharesOf(model, weather, "low");
  const mid = sharesOf(model, weather, "mid");
  const high = sharesOf(model, weather, "high");
  if (model.placement === "either" || model.placement === placement)
    return { low, mid, high, assumptions: [] };
  const { coating } = model;
  if (placement === "incorporated" || coating === undefined) {
    return fail("conflict", `${path}.model.placement`, model.placement, `a model for ${placement}`);
  }
  const surface = polymerCoatedOnSurface;
  findings.push({
    code: "release/placement",
    severity: "caution",
    path: `${path}.model`,
    params: { model: model.name, placement, coating },
    text:
      coating === "polymer"
        ? "The model is for granules in the soil. Polymer-coated urea on the surface or in thatch let out 80 % or more by day 35, whatever its label said: the middle and the high end take that in."
        : "The model is for granules in the soil. On the surface or in thatch the sulfur-coated ureas of one trial were no slower than uncoated urea: the high end is all at once.",
    source: surface.source,
  });
  if (coating !== "polymer") return { low, mid, high: high.map(() => 1), assumptions: [] };
  const [middle, fast] = [sharesOf(surface, weather, "mid"), sharesOf(surface, weather, "high")];
  return {
    low,
    mid: mid.map((share, i) => Math.max(share, middle[i] as number)),
    high: high.map((share, i) => Math.max(share, fast[i] as number)),
    assumptions: surface.assumptions.map((assumption) => `on the surface: ${assumption}`),
  };
};
