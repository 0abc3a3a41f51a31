import {
  analysisByWeight,
  blendSaltIndex,
  densityAt,
  partialSaltIndex,
  saltIndex,
  scaledSaltIndex,
} from "../../nutrient/index.js";
import { quantity } from "../../quantity/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { dealerSaltIndex, newMexicoSaltIndex, oregonSaltIndex, ukLiquid } from "../works/nutrient-works.js";
import { virginiaDensities } from "../works/soil-and-air-works.js";

const pure = ["1", "1"] as const;
const density = ["lb/gal", "kg/L"] as const;
const scales = "Mixing the two scales: by weight against sodium nitrate, and for each unit of nutrient.";

const perUnit = (value: number) => saltIndex({ value, scale: "per unit", basis: "N", source: "stated" });

/** Salt index, and liquids by weight and by volume. */
export const saltAndLiquids: readonly FormulaSpec[] = [
  formula({
    id: "partial-salt-index",
    name: "partialSaltIndex",
    title: "Partial salt index, per unit of nutrient",
    inputs: [
      ["byWeight", "s", "salt index by weight", "none", pure, [20, 130]],
      ["percent", "u", "percent of nutrient", "none", pure, [10, 60]],
    ],
    output: ["p", "partial salt index", "none", pure],
    equation: "p = s / u",
    run: ({ byWeight, percent }) =>
      partialSaltIndex(saltIndex({ value: byWeight.in("1"), scale: "by weight", source: "stated" }), {
        percent: percent.in("1"),
        basis: "N",
      }).value,
    traps: ["Comparing salt indexes by weight: a strong product is used in smaller amounts."],
    basis: "published",
    sources: [oregonSaltIndex],
  }),
  formula({
    id: "scaled-salt-index",
    name: "scaledSaltIndex",
    title: "Partial salt index on the scale of sodium nitrate",
    inputs: [["partial", "p", "partial salt index", "none", pure, [0.3, 6]]],
    output: ["x", "salt index on that scale", "none", pure],
    equation: "x = 16.5 * p",
    run: ({ partial }) => scaledSaltIndex(perUnit(partial.in("1"))).value,
    traps: [scales],
    basis: "published",
    sources: [newMexicoSaltIndex],
  }),
  formula({
    id: "blend-salt-index",
    name: "blendSaltIndex",
    title: "Salt index of a blend of two materials",
    inputs: [
      ["firstUnits", "u_1", "units of nutrient from the first", "none", pure, [5, 40]],
      ["firstPartial", "p_1", "partial salt index of the first", "none", pure, [0.3, 3]],
      ["secondUnits", "u_2", "units of nutrient from the second", "none", pure, [5, 40]],
      ["secondPartial", "p_2", "partial salt index of the second", "none", pure, [0.3, 3]],
    ],
    output: ["s", "salt index by weight", "none", pure],
    equation: "s = u_1 * p_1 + u_2 * p_2",
    run: ({ firstUnits, firstPartial, secondUnits, secondPartial }) =>
      blendSaltIndex([
        { units: firstUnits.in("1"), partial: perUnit(firstPartial.in("1")) },
        { units: secondUnits.in("1"), partial: perUnit(secondPartial.in("1")) },
      ]).value,
    traps: [scales],
    basis: "published",
    sources: [dealerSaltIndex],
  }),
  formula({
    id: "analysis-by-weight",
    name: "analysisByWeight",
    title: "Percent nitrogen by weight of a liquid whose label states percent by volume",
    inputs: [
      ["stated", "c", "nitrogen in a volume of the product", "N", ["% w/v", "% w/v"], [5, 35], density],
      ["density", "d", "density of the product", "none", density, [8.5, 12]],
    ],
    output: ["a", "nitrogen by weight", "N/product", ["% w/w", "% w/w"]],
    equation: "a = 100 * c / d",
    run: ({ stated, density: heavy }) =>
      quantity(
        analysisByWeight({ perVolume: { N: stated }, density: heavy }).percent.N ?? Number.NaN,
        "% w/w",
      ),
    traps: ["Reading percent weight by volume as percent by weight: they differ by the density."],
    basis: "definition",
    sources: [ukLiquid],
  }),
  formula({
    id: "density-at-temperature",
    name: "densityAt",
    title: "Density of a liquid at another temperature",
    inputs: [
      ["density", "d_0", "density that is known", "none", density, [9, 12]],
      [
        "measuredAt",
        "T_0",
        "temperature at which it was measured",
        "none",
        ["°F", "°C"],
        [55, 75],
        ["°F", "°F"],
      ],
      [
        "slopePerFahrenheit",
        "k",
        "change for each degree Fahrenheit",
        "none",
        density,
        [-0.005, -0.001],
        density,
        "°F",
      ],
      ["temperature", "T", "temperature of the liquid", "none", ["°F", "°C"], [30, 90], ["°F", "°F"]],
    ],
    output: ["d", "density", "none", density],
    equation: "d = d_0 + k * (T - T_0)",
    run: densityAt,
    traps: ["Forgetting the minus sign: a liquid gets lighter as it warms."],
    basis: "published",
    sources: [virginiaDensities],
  }),
];
