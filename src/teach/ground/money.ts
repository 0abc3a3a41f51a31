import { reorderPoint } from "../../plan/index.js";
import {
  capitalRecovery,
  crewWage,
  fuelUse,
  lifetimeHourCost,
  loadedWage,
  marginOfMarkup,
  markupOfMargin,
  overtimeShare,
  priceAtMargin,
  priceAtMarkup,
  workRate,
} from "../../price/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { reorderTextbook } from "../works/nutrient-works.js";
import {
  iowaCapitalRecovery,
  iowaEstimatingMachinery,
  lawnBepsBucket,
  lawnBottomLine,
  lawnPricingLawn,
  westernTimeMotion,
} from "../works/season-works.js";

const dollars = ["money:USD", "money:USD"] as const;
const perHour = ["money:USD/h", "money:USD/h"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const marginTrap = "Adding the margin to the cost: that is a markup, and earns less.";
const cost = ["cost", "C", "cost", "none", dollars, [50, 5000]] as const;
const margin = ["margin", "m", "margin, of the price", "none", share, [5, 50], pure] as const;
const markup = ["markup", "u", "markup, of the cost", "none", share, [5, 80], pure] as const;

export const priceAtMarginFormula: FormulaSpec = formula({
  id: "price-at-margin",
  name: "priceAtMargin",
  title: "Price that leaves a margin",
  inputs: [cost, margin],
  output: ["P", "price", "none", dollars],
  equation: "P = C / (1 - m)",
  run: priceAtMargin,
  traps: [marginTrap],
  basis: "definition",
  sources: [lawnBottomLine],
});

export const priceAtMarkupFormula: FormulaSpec = formula({
  id: "price-at-markup",
  name: "priceAtMarkup",
  title: "Price with a markup",
  inputs: [cost, markup],
  output: ["P", "price", "none", dollars],
  equation: "P = C * (1 + u)",
  run: priceAtMarkup,
  traps: ["Taking the markup for the margin that is left."],
  basis: "definition",
  sources: [],
});

/** Labor, machines and prices; a dollar stands for any currency. */
export const money: readonly FormulaSpec[] = [
  priceAtMarginFormula,
  priceAtMarkupFormula,
  formula({
    id: "markup-of-margin",
    name: "markupOfMargin",
    title: "Markup that gives the price of a margin",
    inputs: [margin],
    output: ["u", "markup", "none", share, pure],
    equation: "u = m / (1 - m)",
    run: ({ margin: m }) => markupOfMargin(m),
    traps: [marginTrap],
    basis: "definition",
    sources: [lawnPricingLawn],
  }),
  formula({
    id: "margin-of-markup",
    name: "marginOfMarkup",
    title: "Margin that a markup leaves",
    inputs: [markup],
    output: ["m", "margin", "none", share, pure],
    equation: "m = u / (1 + u)",
    run: ({ markup: u }) => marginOfMarkup(u),
    traps: ["Taking the markup for the margin that is left."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "overtime-share",
    name: "overtimeShare",
    title: "What overtime adds to the wage, over all hours",
    inputs: [
      ["hours", "H", "hours paid in the week", "none", ["h", "h"], [41, 60]],
      ["regular", "R", "hours at the plain wage", "none", ["h", "h"], [35, 40]],
      ["factor", "f", "overtime factor", "none", pure, [1.25, 2]],
    ],
    output: ["x", "addition", "none", share, pure],
    equation: "x = (f - 1) * (H - R) / H",
    run: ({ factor, ...hours }) => overtimeShare({ ...hours, factor: factor.in("1") }),
    traps: ["Adding half of the wage to every hour: the plain hours stay plain."],
    basis: "definition",
    sources: [lawnBottomLine],
  }),
  formula({
    id: "loaded-wage",
    name: "loadedWage",
    title: "What an hour of labor costs",
    inputs: [
      ["wage", "w", "wage", "none", perHour, [12, 40]],
      ["overtime", "o", "overtime", "none", share, [0.5, 12], pure],
      ["risk", "r", "risk", "none", share, [1, 12], pure],
      ["burden", "b", "labor burden", "none", share, [10, 40], pure],
    ],
    output: ["C", "cost of an hour", "none", perHour],
    equation: "C = w * (1 + o + r) * (1 + b)",
    run: (given) => loadedWage(given).cost,
    traps: ["Pricing a job by the bare wage."],
    basis: "published",
    sources: [lawnBepsBucket],
  }),
  formula({
    id: "work-rate",
    name: "workRate",
    title: "Ground covered in a time, with standing and turning",
    inputs: [
      ["swath", "w", "swath", "none", ["ft", "m"], [3, 20]],
      ["speed", "v", "speed", "none", ["mi/h", "km/h"], [2, 8], ["ft/h", "m/h"]],
      ["standing", "s", "share of the time that it is stopped", "none", share, [2, 30], pure],
      ["turning", "t", "share of the driving that goes to turns", "none", share, [2, 30], pure],
    ],
    output: ["R", "work rate", "none", ["acre/h", "ha/h"], ["ft2/h", "m2/h"]],
    equation: "R = w * v * (1 - s) * (1 - t)",
    run: workRate,
    traps: ["Adding the two shares: the turns are a share of the driving only."],
    basis: "definition",
    sources: [westernTimeMotion],
  }),
  formula({
    id: "lifetime-hour-cost",
    name: "lifetimeHourCost",
    title: "What an hour of a machine costs over its life",
    inputs: [
      ["replacement", "P", "price of a new one", "none", dollars, [2000, 60000]],
      ["upkeep", "U", "upkeep of all years", "none", dollars, [500, 30000]],
      ["hours", "H", "hours of its life", "none", ["h", "h"], [500, 5000]],
    ],
    output: ["C", "cost of an hour", "none", perHour],
    equation: "C = (P + U) / H",
    run: lifetimeHourCost,
    traps: ["Leaving out the fuel and what the machine still sells for without saying so."],
    basis: "definition",
    sources: [lawnBepsBucket],
  }),
  formula({
    id: "capital-recovery",
    name: "capitalRecovery",
    title: "What a machine costs a year to own",
    inputs: [
      ["price", "P", "price", "none", dollars, [20000, 60000]],
      ["remaining", "S", "what it will sell for", "none", dollars, [1000, 15000]],
      ["years", "n", "years", "none", ["count", "count"], [3, 15]],
      ["interest", "i", "interest a year", "none", share, [2, 10], pure],
    ],
    output: ["C", "cost a year", "none", dollars],
    equation: "C = (P - S) * i / (1 - (1 + i) ^ (-n)) + S * i",
    run: ({ years, ...rest }) => capitalRecovery({ ...rest, years: Math.round(years.in("count")) }),
    traps: ["Dividing the price by the years: that leaves out the interest."],
    basis: "published",
    sources: [iowaCapitalRecovery],
  }),
  formula({
    id: "diesel-use",
    name: "fuelUse",
    title: "Diesel that a machine burns on average",
    inputs: [["horsepower", "h", "horsepower at the power take-off", "none", pure, [20, 120]]],
    output: ["q", "fuel", "none", ["gal/h", "L/h"], ["gal/h", "gal/h"]],
    equation: "q = 0.044 * h",
    run: ({ horsepower }) => fuelUse({ horsepower: horsepower.in("1"), fuel: "diesel" }),
    traps: ["Taking an average for a mower under full load."],
    basis: "published",
    sources: [iowaEstimatingMachinery],
  }),
  formula({
    id: "crew-wage-of-two",
    name: "crewWage",
    title: "Average wage of two people by their hours",
    inputs: [
      ["firstWage", "w_1", "wage of the first", "none", perHour, [18, 35]],
      ["firstHours", "t_1", "hours of the first", "none", ["h", "h"], [2, 10]],
      ["secondWage", "w_2", "wage of the second", "none", perHour, [14, 25]],
      ["secondHours", "t_2", "hours of the second", "none", ["h", "h"], [2, 10]],
    ],
    output: ["w", "average wage", "none", perHour],
    equation: "w = (w_1 * t_1 + w_2 * t_2) / (t_1 + t_2)",
    run: ({ firstWage, firstHours, secondWage, secondHours }) =>
      crewWage([
        { wage: firstWage, hours: firstHours },
        { wage: secondWage, hours: secondHours },
      ]),
    traps: ["Averaging the two wages where one of them works longer."],
    basis: "definition",
    sources: [lawnBottomLine],
  }),
];

export const reorderPointFormula: FormulaSpec = formula({
  id: "reorder-point",
  name: "reorderPoint",
  title: "Stock at which to order again",
  inputs: [
    ["use", "u", "use in a stretch of time", "product", ["lb", "kg"], [100, 900]],
    ["during", "T", "that time", "none", ["d", "d"], [30, 120]],
    ["leadTime", "t", "time until a delivery comes", "none", ["d", "d"], [3, 21]],
    ["safetyStock", "s", "stock that is kept back", "product", ["lb", "kg"], [10, 100]],
  ],
  output: ["r", "stock at which to order", "product", ["lb", "kg"]],
  equation: "r = u / T * t + s",
  run: (given) => reorderPoint(given).orderAt,
  traps: ["Spreading the use over the whole year: take the weeks in which the product is used."],
  basis: "published",
  sources: [reorderTextbook],
});

/** Stock. */
export const stock: readonly FormulaSpec[] = [reorderPointFormula];
