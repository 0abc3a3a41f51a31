import {
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectTemperature } from "../expect-temperature.js";

/** The constants of the model: optimum and width, in °C as one author prints them and in °F as older tables do. */
const constants = {
  "cool-season": { "°C": { optimum: 20, width: 5.5 }, "°F": { optimum: 68, width: 10 } },
  "warm-season": { "°C": { optimum: 31, width: 7 }, "°F": { optimum: 88, width: 12 } },
} as const;

/** Cool-season (C3) or warm-season (C4) grass. */
export type GrassSeason = keyof typeof constants;

/**
 * Growth potential by temperature, from 0 to 100 %: `GP = exp(-((t - o) / w)² / 2)`, with `t` the mean air
 * temperature, `o` the optimum and `w` the width of the curve.
 *
 * | | `"°C"` | `"°F"` |
 * | --- | --- | --- |
 * | cool-season | 20, 5.5 °C | 68, 10 °F |
 * | warm-season | 31, 7 °C | 88, 12 °F |
 *
 * The two sets differ: 7 °C are 12.6 °F. The °C set was read in its source and is the default; of the
 * °F set the optima were read and the widths are from memory. A warm-season grass is held at 100 % above
 * its optimum in the revised model, the default; `"falling"` is the older curve. A cool-season grass falls
 * in both. Temperature alone: no light, water or wear.
 *
 * @param input.mean - mean air temperature of the day or month
 * @param input.optimum - another optimum: 18 °C is given for annual bluegrass
 * @param input.aboveOptimum - what a warm-season grass does above its optimum: `"held"`, the default, or
 *   `"falling"`
 * @throws RatewrightError `type`, `unit/mismatch`, `range` below -90 °C or above 75 °C
 * Source: W. Gelernter and L. Stowell 2005, in "On day length, growth potential, and fertilizer
 * estimates", 2014 (°C constants); "Modified warm season growth potential model" (held at 100 %).
 *
 * @example
 * ```ts
 * import { growthPotential, quantity } from "ratewright";
 * growthPotential({ mean: quantity(20, "°C"), season: "cool-season" }).in("%"); // => 100
 * const mean = quantity(60, "°F");
 * Number(growthPotential({ mean, season: "cool-season", constants: "°F" }).in("%").toFixed(1)); // => 72.6
 * growthPotential({ mean: quantity(95, "°F"), season: "warm-season" }).in("%"); // => 100
 * ```
 */
export const growthPotential = (input: {
  readonly mean: Quantity<"temperature", "none">;
  readonly season: GrassSeason;
  readonly constants?: "°C" | "°F";
  readonly aboveOptimum?: "held" | "falling";
  readonly optimum?: Quantity<"temperature", "none">;
}): Quantity<"1", "none"> => {
  expectFields(input, ["mean", "season", "constants", "aboveOptimum", "optimum"]);
  const { season, constants: scale = "°C", aboveOptimum = "held" } = input;
  if (season !== "cool-season" && season !== "warm-season") {
    return fail("type", "season", season, '"cool-season" or "warm-season"');
  }
  if (scale !== "°C" && scale !== "°F") return fail("type", "constants", scale, '"°C" or "°F"');
  if (aboveOptimum !== "held" && aboveOptimum !== "falling") {
    return fail("type", "aboveOptimum", aboveOptimum, '"held" or "falling"');
  }
  const mean = expectTemperature(input.mean, "mean");
  const { optimum: usual, width } = constants[season][scale];
  const optimum = input.optimum === undefined ? usual : expectTemperature(input.optimum, "optimum").in(scale);
  const away = mean.in(scale) - optimum;
  if (away > 0 && season === "warm-season" && aboveOptimum === "held") return quantity(100, "%");
  return quantity(100 * Math.exp(-0.5 * (away / width) ** 2), "%");
};

/**
 * What a growth potential says in words: `"good"` from 50 %, `"extremely limited"` at 10 % or less,
 * `"stressed"` between.
 *
 * @throws RatewrightError `range`, `unit/mismatch`, `type`
 * Source: "Turf growth potentials: a tool with many uses", turfgrass information center.
 *
 * @example
 * ```ts
 * import { growthClass, quantity } from "ratewright";
 * growthClass(quantity(72.6, "%")); // => "good"
 * ```
 */
export const growthClass = (potential: Quantity<"1", "none">): "good" | "stressed" | "extremely limited" => {
  const percent = percentOf(potential, "potential");
  return percent >= 50 ? "good" : percent <= 10 ? "extremely limited" : "stressed";
};

const percentOf = (input: unknown, path: string): number => {
  const percent = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, path);
  if (percent.in("%") > 100) outOfRange(path, percent, { max: 100, unit: "%" });
  return percent.in("%");
};

/**
 * The nitrogen that follows a growth potential, `N = Nmax GP`: `Nmax` is what the grass would use in the
 * period at its optimum. The source of the model says that it is an estimate on the high side, and not to
 * direct the applications at a site.
 *
 * @param input.maximum - `Nmax`, for the same period as the potential; 1 lb/1000 ft2 a month is printed
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: "Turfgrass nitrogen demand", turfgrass information center.
 *
 * @example
 * ```ts
 * import { nitrogenForGrowth, quantity } from "ratewright";
 * nitrogenForGrowth({ maximum: quantity(1, "lb/1000 ft2", "N"), potential: quantity(72.5, "%") })
 *   .in("lb/1000 ft2"); // => 0.725
 * ```
 */
export const nitrogenForGrowth = (input: {
  readonly maximum: Quantity<"mass/area", "N">;
  readonly potential: Quantity<"1", "none">;
}): Quantity<"mass/area", "N"> => {
  expectFields(input, ["maximum", "potential"]);
  const wanted = { dimension: "mass/area", of: "N", bound: "non-negative" } as const;
  const maximum = expectQuantity(input.maximum, wanted, "maximum");
  return quantity(
    (maximum.value * percentOf(input.potential, "potential")) / 100,
    maximum.unit as "kg/ha",
    "N",
  );
};
