import {
  degreeDayModel,
  degreeDays,
  fewestApplications,
  growthPotential,
  halfLifeAt,
} from "../../interval/index.js";
import { firstOrderRate } from "../../nutrient/index.js";
import { dollarSpotProbability } from "../../pest/index.js";
import { quantity } from "../../quantity/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  dollarSpotEquation,
  growthPotentialCurve,
  halfLivesByHeat,
  ishibashiRelease,
  purdueDegreeDays,
  smithDollarSpot,
  warmGrowthPotential,
} from "../works/soil-and-air-works.js";

const pure = ["1", "1"] as const;
const share = ["%", "%"] as const;
const air = ["°F", "°C"] as const;
const celsius = ["°C", "°C"] as const;
const fahrenheit = "Leaving the temperature in degrees Fahrenheit: the equation is in degrees Celsius.";
const mean = ["mean", "t", "mean air temperature", "none", air, [40, 100], celsius] as const;

export const degreeDaysAboveBaseFormula: FormulaSpec = formula({
  id: "degree-days-above-base",
  name: "degreeDays",
  title: "Degree-days of a day above a base, by the simple average",
  inputs: [
    ["max", "T_max", "highest temperature", "none", air, [60, 95]],
    ["min", "T_min", "lowest temperature", "none", air, [30, 59]],
    ["base", "T_b", "base", "none", air, [32, 50]],
  ],
  output: ["D", "degree-days", "none", ["°F d", "°C d"]],
  equation: "D = max(0, (T_max + T_min) / 2 - T_b)",
  run: ({ max, min, base }) => {
    const model = degreeDayModel({
      method: "simple average",
      base: { value: base.in("°F"), unit: "°F" },
      sensor: "air",
    });
    return quantity(degreeDays({ max, min, model }).in("°F d"), "°F d");
  },
  traps: [
    "Taking a cold day off the sum: below the base a day counts zero.",
    "Taking the high of the day, or the range, for the mean of high and low.",
  ],
  basis: "published",
  sources: [purdueDegreeDays],
});

export const fewestApplicationsFormula: FormulaSpec = formula({
  id: "fewest-applications",
  name: "fewestApplications",
  title: "Fewest applications that bring a season's total",
  inputs: [
    ["total", "T", "total over the season", "N", ["lb/1000 ft2", "kg/ha"], [1, 6]],
    ["perApplication", "L", "the most at one time", "N", ["lb/1000 ft2", "kg/ha"], [0.3, 1]],
  ],
  output: ["n", "applications", "none", ["count", "count"]],
  equation: "n = ceil(T / L)",
  run: (given) => quantity(fewestApplications(given), "count"),
  traps: ["Rounding down: one of them would go over the most at one time."],
  basis: "definition",
  sources: [],
});

/** What grows, and what is to be done again. */
export const growth: readonly FormulaSpec[] = [
  formula({
    id: "degree-days-simple-average",
    name: "degreeDays",
    title: "Degree-days of a day by the simple average, above 32 °F (0 °C)",
    inputs: [
      ["max", "T_max", "highest temperature", "none", air, [45, 95], celsius],
      ["min", "T_min", "lowest temperature", "none", air, [20, 44], celsius],
    ],
    output: ["D", "degree-days", "none", ["°F d", "°C d"], ["°C d", "°C d"]],
    equation: "D = max(0, (T_max + T_min) / 2)",
    run: ({ max, min }) => {
      const model = degreeDayModel({
        method: "simple average",
        base: { value: 0, unit: "°C" },
        sensor: "air",
      });
      return quantity(degreeDays({ max, min, model }).in("°C d"), "°C d");
    },
    traps: [
      "Taking a cold day off the sum: below the base a day counts zero.",
      "Adding degree-days of another base or another method.",
    ],
    basis: "published",
    sources: [purdueDegreeDays],
  }),
  degreeDaysAboveBaseFormula,
  formula({
    id: "growth-potential-cool",
    name: "growthPotential",
    title: "Growth potential of cool-season grass",
    inputs: [mean],
    output: ["g", "growth potential", "none", share, pure],
    equation: "g = exp(-((t - 20) / 5.5) ^ 2 / 2)",
    run: ({ mean: found }) => growthPotential({ mean: found, season: "cool-season" }),
    traps: [fahrenheit, "Taking it for the growth itself: it knows no light, water or wear."],
    basis: "published",
    sources: [growthPotentialCurve],
  }),
  formula({
    id: "growth-potential-warm",
    name: "growthPotential",
    title: "Growth potential of warm-season grass, full above its optimum",
    inputs: [mean],
    output: ["g", "growth potential", "none", share, pure],
    equation: "g = exp(-(min(0, t - 31) / 7) ^ 2 / 2)",
    run: ({ mean: found }) => growthPotential({ mean: found, season: "warm-season" }),
    traps: [fahrenheit, "Using the older curve, which falls in the heat, with limits made for this one."],
    basis: "published",
    sources: [warmGrowthPotential],
  }),
  formula({
    id: "half-life-at-temperature",
    name: "halfLifeAt",
    title: "Half-life between two temperatures at which it is stated",
    inputs: [
      ["first", "h_1", "half-life at the lower temperature", "none", ["d", "d"], [5, 12]],
      ["coolest", "T_1", "lower temperature", "none", air, [55, 65], celsius],
      ["second", "h_2", "half-life at the higher temperature", "none", ["d", "d"], [2, 4]],
      ["warmest", "T_2", "higher temperature", "none", air, [80, 90], celsius],
      ["temperature", "T", "temperature of the day", "none", air, [66, 79], celsius],
    ],
    output: ["h", "half-life", "none", ["d", "d"]],
    equation: "h = h_1 * (h_2 / h_1) ^ ((T - T_1) / (T_2 - T_1))",
    run: ({ first, coolest, second, warmest, temperature }) =>
      halfLifeAt({
        stated: [
          { temperature: coolest, halfLife: first },
          { temperature: warmest, halfLife: second },
        ],
        temperature,
      }),
    traps: ["Going beyond the two temperatures: nothing is known there."],
    basis: "derived",
    sources: [halfLivesByHeat],
  }),
  fewestApplicationsFormula,
];

/** Release of coated nitrogen. */
export const release: readonly FormulaSpec[] = [
  formula({
    id: "first-order-release-rate",
    name: "firstOrderRate",
    title: "Release rate from one published share and day",
    inputs: [
      ["percent", "F", "percent released", "none", pure, [20, 95]],
      ["days", "t", "days since the application", "none", pure, [14, 120]],
    ],
    output: ["k", "release rate", "none", ["1/d", "1/d"]],
    equation: "k = -ln(1 - F / 100) / t",
    run: ({ percent, days }) =>
      quantity(firstOrderRate({ percent: percent.in("1"), days: days.in("1") }), "1/d"),
    traps: ["Dividing the percent by the days: release slows as less is left."],
    basis: "derived",
    sources: [ishibashiRelease],
  }),
];

/** Weather and disease. */
export const diseaseWeather: readonly FormulaSpec[] = [
  formula({
    id: "dollar-spot-probability",
    name: "dollarSpotProbability",
    title: "Probability of dollar spot by the weather of five days",
    inputs: [
      ["meanHumidity", "H", "mean relative humidity of five days", "none", share, [50, 98]],
      ["meanTemperature", "T", "mean air temperature of five days", "none", air, [50, 90], celsius],
    ],
    output: ["p", "probability", "none", share, pure],
    equation: "p = 1 / (1 + exp(-(-11.4041 + 0.0894 * H + 0.1932 * T)))",
    run: dollarSpotProbability,
    traps: [
      fahrenheit,
      "Taking favorable weather for a diagnosis.",
      "Using the weather of one day: it takes five.",
    ],
    basis: "published",
    sources: [smithDollarSpot, dollarSpotEquation],
  }),
];
