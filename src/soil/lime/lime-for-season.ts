import { type AcidifyingNitrogen, limeForNitrogen } from "../../nutrient/index.js";
import { type Finding, fail, Quantity } from "../../quantity/index.js";
import type { LimeSubstance } from "./found-requirement.js";
import type { LimeRequirement } from "./lime-requirement.js";

/**
 * The lime that a season's nitrogen calls for, as a requirement that `limeProductRate` takes: `limeForNitrogen`, with
 * the name of its method.
 *
 * It is what the nitrogen adds, not what the soil needs. Where bases outweigh, the rate is zero and a finding says how
 * much base the season brings.
 *
 * @throws RatewrightError what `limeForNitrogen` throws
 *
 * Source: see `limeForNitrogen`.
 *
 * @example
 * ```ts
 * import { potentialAcidityOfSource, quantity } from "ratewright";
 * import { limeForSeason } from "ratewright/soil";
 * const lime = limeForSeason([
 *   {
 *     nitrogen: quantity(3, "lb/1000 ft2", "N"),
 *     acidity: potentialAcidityOfSource({ source: "ammonium sulfate", convention: "half nitrogen credit" }),
 *   },
 * ]);
 * Number(lime.rate.in("lb/1000 ft2").toFixed(1)); // => 16.1
 * ```
 */
export const limeForSeason = (season: readonly AcidifyingNitrogen[]): LimeRequirement => {
  if (!Array.isArray(season)) return fail("type", "season", season, "a list of nitrogen with its acidity");
  const lime = limeForNitrogen(season);
  const base = lime.value < 0 ? -lime.value : 0;
  const findings: Finding[] =
    base === 0
      ? []
      : [
          {
            code: "lime/season-is-basic",
            severity: "note",
            path: "season",
            params: { base, unit: lime.unit },
            text: `The nitrogen of the season leaves base, as much as ${Number(base.toPrecision(3))} ${lime.unit} of CaCO3: it calls for no lime.`,
          },
        ];
  return {
    type: "lime-requirement",
    version: 1,
    method: "potential acidity of nitrogen",
    rate: new Quantity<"mass/area", LimeSubstance>(
      Math.max(0, lime.value),
      lime.unit,
      "CaCO3 equivalent",
      "mass/area",
    ),
    measure: "effective",
    depth: null,
    targetPH: null,
    source: "potential acidity by the convention of each source of nitrogen",
    findings,
  };
};
