import { addDays } from "../../calendar/index.js";
import { elementOf, oxideOf, remainingNitrogen } from "../../nutrient/index.js";
import type { Quantity } from "../../quantity/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  atomicWeights,
  cornellNutrientManagement,
  virginiaTurfgrassMathematics,
} from "../works/nutrient-works.js";

const rate = ["lb/1000 ft2", "kg/ha"] as const;
const mass = ["lb", "kg"] as const;

/** What a yearly cap leaves after applications of one season. */
const nitrogenLeft = (
  most: Quantity<"mass/area", "N">,
  put: readonly Quantity<"mass/area", "N">[],
): Quantity<"mass/area", "N"> =>
  remainingNitrogen({
    on: "2026-10-01",
    applied: put.map((nitrogen, i) => ({ date: addDays("2026-04-10", 30 * i), nitrogen })),
    caps: { perYear: { amount: most, source: "stated" } },
  }).remainingUnderStatedLimits;

const cap = ["cap", "C", "limit for the year", "N", rate, [2.5, 5]] as const;
const applied = <const Name extends string>(
  name: Name,
  symbol: string,
  label: string,
): readonly [Name, string, string, "N", typeof rate, readonly [number, number]] => [
  name,
  symbol,
  label,
  "N",
  rate,
  [0.3, 0.9],
];

export const phosphateRateForPhosphorusFormula: FormulaSpec = formula({
  id: "phosphate-rate-for-phosphorus",
  name: "oxideOf",
  title: "Rate of phosphate for a rate of elemental phosphorus",
  inputs: [["rate", "P", "phosphorus", "P", rate, [0.1, 1]]],
  output: ["X", "phosphate", "P2O5", rate],
  equation: "X = P * (2 * 30.974 + 5 * 15.999) / (2 * 30.974)",
  run: ({ rate: phosphorus }) => oxideOf(phosphorus),
  traps: ["Dividing by the middle number of the bag before converting the phosphorus to phosphate, P2O5."],
  basis: "published",
  sources: [atomicWeights, cornellNutrientManagement],
});

export const nitrogenLeftOfTwoFormula: FormulaSpec = formula({
  id: "nitrogen-left-of-two",
  name: "remainingNitrogen",
  title: "Nitrogen left under a yearly limit after two applications",
  inputs: [cap, applied("first", "a", "first application"), applied("second", "b", "second application")],
  output: ["L", "nitrogen left under the limit", "N", rate],
  equation: "L = C - (a + b)",
  run: ({ cap: most, first, second }) => nitrogenLeft(most, [first, second]),
  traps: ["Taking what went down for what is left.", "Leaving out an application of another product."],
  basis: "definition",
  sources: [],
});

export const nitrogenLeftOfThreeFormula: FormulaSpec = formula({
  id: "nitrogen-left-of-three",
  name: "remainingNitrogen",
  title: "Nitrogen left under a yearly limit after three applications",
  inputs: [
    cap,
    applied("first", "a", "first application"),
    applied("second", "b", "second application"),
    applied("third", "c", "third application"),
  ],
  output: ["L", "nitrogen left under the limit", "N", rate],
  equation: "L = C - (a + b + c)",
  run: ({ cap: most, first, second, third }) => nitrogenLeft(most, [first, second, third]),
  traps: ["Taking what went down for what is left.", "Leaving out an application of another product."],
  basis: "definition",
  sources: [],
});

export const phosphorusOfPhosphateFormula: FormulaSpec = formula({
  id: "phosphorus-of-phosphate",
  name: "elementOf",
  title: "Elemental phosphorus in phosphate",
  inputs: [["amount", "X", "phosphate", "P2O5", mass, [1, 100]]],
  output: ["P", "phosphorus", "P", mass],
  equation: "P = X * 2 * 30.974 / (2 * 30.974 + 5 * 15.999)",
  run: ({ amount }) => elementOf(amount),
  traps: ["Multiplying by 2.29: that goes from P to P2O5."],
  basis: "published",
  sources: [atomicWeights, cornellNutrientManagement],
});

export const potassiumOfPotashFormula: FormulaSpec = formula({
  id: "potassium-of-potash",
  name: "elementOf",
  title: "Elemental potassium in potash",
  inputs: [["amount", "X", "potash", "K2O", mass, [1, 100]]],
  output: ["K", "potassium", "K", mass],
  equation: "K = X * 2 * 39.098 / (2 * 39.098 + 15.999)",
  run: ({ amount }) => elementOf(amount),
  traps: ["Reading the last number of the bag as potassium: it is potash, K2O."],
  basis: "published",
  sources: [atomicWeights, virginiaTurfgrassMathematics],
});

/** Elements and oxides, and what a limit leaves. */
export const nutrientElements: readonly FormulaSpec[] = [
  formula({
    id: "phosphate-of-phosphorus",
    name: "oxideOf",
    title: "Phosphate for elemental phosphorus",
    inputs: [["amount", "P", "phosphorus", "P", mass, [1, 100]]],
    output: ["X", "phosphate", "P2O5", mass],
    equation: "X = P * (2 * 30.974 + 5 * 15.999) / (2 * 30.974)",
    run: ({ amount }) => oxideOf(amount),
    traps: ["Reading the middle number of the bag as phosphorus: it is phosphate, P2O5."],
    basis: "published",
    sources: [atomicWeights, cornellNutrientManagement],
  }),
  phosphorusOfPhosphateFormula,
  potassiumOfPotashFormula,
  phosphateRateForPhosphorusFormula,
  nitrogenLeftOfTwoFormula,
  nitrogenLeftOfThreeFormula,
];
