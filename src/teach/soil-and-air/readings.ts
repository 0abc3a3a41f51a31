import { fieldImpact, impactQuotient, leachingScore, treatmentFrequency } from "../../indicator/index.js";
import { coefficientOfVariation, interpolate, mean, standardDeviation } from "../../numeric/index.js";
import { christiansenUniformity, distributionUniformity } from "../../water/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  carolinaChristiansen,
  carolinaUniformity,
  cornellQuotient,
  dutchVariation,
  gustafsonScore,
  handoutInterpolation,
  kovachQuotient,
  milkeyFrequency,
  pesticideScore,
  stewardshipMean,
} from "../works/soil-and-air-works.js";

const pure = ["1", "1"] as const;
const share = ["%", "%"] as const;
const reading = <const N extends string, const S extends string>(name: N, symbol: S, label: string) =>
  [name, symbol, label, "none", pure, [5, 60]] as const;
const a = reading("first", "a", "first reading");
const b = reading("second", "b", "second reading");
const c = reading("third", "c", "third reading");
const can = <const N extends string>(name: N, symbol: string) =>
  [name, symbol, `catch of the ${name} can`, "water", ["mL", "mL"], [15, 60]] as const;
const cans = [can("first", "a"), can("second", "b"), can("third", "c"), can("fourth", "d")] as const;
const divisor = "Dividing by the number of readings for a sample: it is one less.";

export const coefficientOfVariationOfTwoFormula: FormulaSpec = formula({
  id: "coefficient-of-variation-of-two",
  name: "coefficientOfVariation",
  title: "Coefficient of variation of two readings",
  inputs: [
    ["first", "a", "smaller reading", "none", pure, [5, 20]],
    ["second", "b", "larger reading", "none", pure, [25, 60]],
  ],
  output: ["v", "coefficient of variation", "none", share],
  equation: "v = 100 * sqrt((a - (a + b) / 2) ^ 2 + (b - (a + b) / 2) ^ 2) / ((a + b) / 2)",
  run: ({ first, second }) => coefficientOfVariation([first.in("1"), second.in("1")], { divisor: "n-1" }),
  traps: [divisor, "Using it for temperatures: their zero is not a true one."],
  basis: "definition",
  sources: [dutchVariation],
});

/** Figures of several readings. */
export const readings: readonly FormulaSpec[] = [
  formula({
    id: "mean-of-three",
    name: "mean",
    title: "Mean of three readings",
    inputs: [a, b, c],
    output: ["m", "mean", "none", pure],
    equation: "m = (a + b + c) / 3",
    run: ({ first, second, third }) => mean([first.in("1"), second.in("1"), third.in("1")]),
    traps: ["Averaging speeds: the times are averaged, because the slow run takes longer."],
    basis: "definition",
    sources: [stewardshipMean],
  }),
  formula({
    id: "standard-deviation-of-three",
    name: "standardDeviation",
    title: "Standard deviation of a sample of three readings",
    inputs: [a, b, c],
    output: ["s", "standard deviation", "none", pure],
    equation:
      "s = sqrt(((a - (a + b + c) / 3) ^ 2 + (b - (a + b + c) / 3) ^ 2 + (c - (a + b + c) / 3) ^ 2) / 2)",
    run: ({ first, second, third }) =>
      standardDeviation([first.in("1"), second.in("1"), third.in("1")], { divisor: "n-1" }),
    traps: [divisor],
    basis: "definition",
    sources: [dutchVariation],
  }),
  coefficientOfVariationOfTwoFormula,
  formula({
    id: "interpolation",
    name: "interpolate",
    title: "Value between two points of a table",
    inputs: [
      ["x", "x", "where the value is wanted", "none", pure, [21, 39]],
      ["low", "x_1", "lower point", "none", pure, [10, 20]],
      ["high", "x_2", "upper point", "none", pure, [40, 50]],
      ["atLow", "y_1", "value at the lower point", "none", pure, [1, 5]],
      ["atHigh", "y_2", "value at the upper point", "none", pure, [6, 12]],
    ],
    output: ["y", "value", "none", pure],
    equation: "y = y_1 + (y_2 - y_1) * (x - x_1) / (x_2 - x_1)",
    run: ({ x, low, high, atLow, atHigh }) =>
      interpolate({ xs: [low.in("1"), high.in("1")], ys: [atLow.in("1"), atHigh.in("1")], x: x.in("1") }),
    traps: ["Going on beyond the table: nobody measured there."],
    basis: "geometry",
    sources: [handoutInterpolation],
  }),
];

/** Figures of catch cans. */
export const catchCans: readonly FormulaSpec[] = [
  formula({
    id: "distribution-uniformity-of-four",
    name: "distributionUniformity",
    title: "Distribution uniformity of four cans, lower quarter",
    inputs: cans,
    output: ["DU", "distribution uniformity", "none", share],
    equation: "DU = 100 * min(a, b, c, d) / ((a + b + c + d) / 4)",
    run: ({ first, second, third, fourth }) =>
      distributionUniformity({ catches: [first, second, third, fourth] }),
    traps: [
      "Dividing the driest by the wettest: it is divided by the mean of all.",
      "Judging a zone by four cans: take twenty or more.",
    ],
    basis: "definition",
    sources: [carolinaUniformity],
  }),
  formula({
    id: "christiansen-uniformity-of-four",
    name: "christiansenUniformity",
    title: "Christiansen's uniformity of four cans",
    inputs: cans,
    output: ["CU", "coefficient of uniformity", "none", share],
    equation:
      "CU = 100 * (1 - (abs(a - (a + b + c + d) / 4) + abs(b - (a + b + c + d) / 4) + abs(c - (a + b + c + d) / 4) + abs(d - (a + b + c + d) / 4)) / (a + b + c + d))",
    run: ({ first, second, third, fourth }) =>
      christiansenUniformity({ catches: [first, second, third, fourth] }),
    traps: ["Adding the differences with their signs: they come to zero."],
    basis: "published",
    sources: [carolinaChristiansen],
  }),
];

const rating = <const N extends string>(name: N, symbol: string, label: string) =>
  [name, symbol, `${label}, rated 1 to 5`, "none", pure, [1, 5]] as const;
const perArea = ["lb/acre", "kg/ha"] as const;

export const fieldImpactFormula: FormulaSpec = formula({
  id: "field-impact",
  name: "fieldImpact",
  title: "Impact quotient in use, for rates in lb/acre",
  inputs: [
    ["quotient", "Q", "impact quotient", "none", pure, [7, 100]],
    ["active", "a", "active ingredient applied", "ai", perArea, [0.1, 5], ["lb/acre", "lb/acre"]],
  ],
  output: ["F", "impact in use", "none", pure],
  equation: "F = Q * a",
  run: ({ quotient, active }) => fieldImpact({ quotient: quotient.in("1"), active, per: "lb/acre" }).value,
  traps: ["Multiplying by the percent active again: a rate of active ingredient has it already."],
  basis: "published",
  sources: [kovachQuotient],
});

/** Indicators of pesticide use. */
export const indicators: readonly FormulaSpec[] = [
  formula({
    id: "leaching-score",
    name: "leachingScore",
    title: "Groundwater ubiquity score",
    inputs: [
      ["halfLife", "h", "half-life in soil", "none", ["d", "d"], [2, 200]],
      ["koc", "K", "sorption to organic carbon", "none", ["mL/g", "mL/g"], [2, 5000]],
    ],
    output: ["GUS", "groundwater ubiquity score", "none", pure],
    equation: "GUS = log10(h) * (4 - log10(K))",
    run: (given) => leachingScore(given).score,
    traps: ["Scoring one published half-life: they differ by a factor of ten."],
    basis: "published",
    sources: [gustafsonScore, pesticideScore],
  }),
  fieldImpactFormula,
  formula({
    id: "treatment-frequency",
    name: "treatmentFrequency",
    title: "Treatment frequency index of one treatment",
    inputs: [
      ["rate", "R", "rate that was used", "product", ["fl oz/acre", "L/ha"], [4, 30]],
      ["fullRate", "F", "full registered rate", "product", ["fl oz/acre", "L/ha"], [30, 40]],
      ["treated", "t", "area that was treated", "none", ["acre", "ha"], [1, 9]],
      ["area", "A", "whole area", "none", ["acre", "ha"], [10, 20]],
    ],
    output: ["I", "treatment frequency index", "none", pure],
    equation: "I = R / F * t / A",
    run: ({ area, ...treatment }) =>
      treatmentFrequency({ area, treatments: [{ name: "treatment", ...treatment }] }).index,
    traps: ["Comparing a rate of product with a full rate of active ingredient."],
    basis: "definition",
    sources: [milkeyFrequency],
  }),
  formula({
    id: "impact-quotient",
    name: "impactQuotient",
    title: "Environmental impact quotient of an active ingredient",
    inputs: [
      rating("chronic", "C", "chronic toxicity"),
      rating("dermal", "D_T", "dermal toxicity"),
      rating("bird", "D", "bird toxicity"),
      rating("fish", "F", "fish toxicity"),
      rating("bee", "Z", "bee toxicity"),
      rating("beneficial", "B", "toxicity to beneficial arthropods"),
      rating("soilHalfLife", "S", "half-life in soil"),
      rating("plantHalfLife", "P", "half-life on plants"),
      rating("systemicity", "S_Y", "systemicity"),
      rating("leaching", "L", "leaching"),
      rating("surfaceLoss", "R", "surface loss"),
    ],
    output: ["Q", "impact quotient", "none", pure],
    equation:
      "Q = (C * (5 * D_T + D_T * P) + C * (S + P) / 2 * S_Y + L + F * R + 3 * D * (S + P) / 2 + 3 * Z * P + 5 * B * P) / 3",
    run: (given) => {
      const number = (name: keyof typeof given): number => given[name].in("1");
      return impactQuotient({
        source: "stated",
        ratings: {
          chronic: number("chronic"),
          dermal: number("dermal"),
          bird: number("bird"),
          fish: number("fish"),
          bee: number("bee"),
          beneficial: number("beneficial"),
          soilHalfLife: number("soilHalfLife"),
          plantHalfLife: number("plantHalfLife"),
          systemicity: number("systemicity"),
          leaching: number("leaching"),
          surfaceLoss: number("surfaceLoss"),
        },
      }).quotient;
    },
    traps: ["Reading it as a measure of risk: published criticism advises not to use it."],
    basis: "published",
    sources: [kovachQuotient, cornellQuotient],
  }),
];
