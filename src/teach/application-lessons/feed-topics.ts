import { quantity } from "../../quantity/index.js";
import {
  costPerAreaFormula,
  liquidProductRateFormula,
  nutrientCostFormula,
  nutrientPerVolumeFormula,
  weightOfLiquidFormula,
} from "../application/nutrient-liquids.js";
import { amount, amountOf, slip } from "../topics/figures.js";
import { areaOf, nitrogenTarget, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const massUnit = (us: boolean): "lb" | "kg" => (us ? "lb" : "kg");

const costProblem = ({ draw, us, level }: PoseInput): Posed => {
  const percent = draw.pick([16, 20, 24, 28, 32, 46]);
  const size = us ? draw.pick([40, 50]) : draw.pick([20, 25]);
  const each = us ? draw.step(0.4, 1.2, 0.05) : draw.step(0.8, 2.4, 0.1);
  const bag = us ? draw.step(18, 48, 2) : draw.step(18, 48, 3);
  const unit = massUnit(us);
  const per = `money:USD/${unit}` as const;
  const price = level === 1 ? each : bag / size;
  const stuff = { percent: quantity(percent, "% w/w", "N/product") };
  const perWeight = total({
    title: "Price of the product",
    equation: "c = b / m",
    parts: { b: ["a bag", bag, "money:USD"], m: ["in a bag", size, unit] },
    unit: per,
  });
  return worked({
    text:
      level === 1
        ? `A fertilizer with ${percent} % nitrogen costs ${amount(each, per)}.`
        : `A bag holds ${amount(size, unit)} of a fertilizer with ${percent} % nitrogen and costs ${amount(bag, "money:USD")}.`,
    ask: { question: `What does 1 ${unit} of nitrogen cost?`, unit: per, of: "none", decimals: 2 },
    working: [
      ...(level === 1 ? [] : [perWeight]),
      use(nutrientCostFormula, { price: level === 1 ? quantity(price, per) : fromStep(1), ...stuff }),
    ],
    mistakes: (answer) => [
      slip("price of the product for that of the nutrient", price),
      slip("multiplied by the percentage", (price * percent) / 100),
      ...(level === 1
        ? [slip("decimal point one place off", (price * 10) / percent)]
        : [
            slip("forgot the weight of the bag", (bag * 100) / percent),
            slip("price upside down", ((size / bag) * 100) / percent),
          ]),
      slip("percentage taken off", price * (1 + (100 - percent) / 100)),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

/** The figures that the levels share. */
const liquidFigures = ({ draw, us }: PoseInput) => {
  const percent = draw.pick([10, 12, 18, 20, 28, 32]);
  const heavy = us ? draw.step(9.5, 11.5, 0.1) : draw.step(1.1, 1.4, 0.02);
  const volume = us ? draw.step(5, 55, 5) : draw.step(20, 200, 10);
  const target = nitrogenTarget(draw, us);
  const big = us ? "gal" : "L";
  const unit = massUnit(us);
  const strength = us ? "lb/gal" : "kg/L";
  const density = quantity(heavy, strength);
  const stuff = { density, percent: quantity(percent, "% w/w", "N/product") };
  const weighs = `weighs ${amount(heavy, strength)}`;
  return { percent, heavy, volume, target, big, unit, strength, density, stuff, weighs } as const;
};

const liquidWeightProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { heavy, volume, big, unit, density, weighs } = liquidFigures(input);
  return worked({
    text: `A drum holds ${amount(volume, big)} of a liquid fertilizer that ${weighs}.`,
    ask: { question: "What does the fertilizer weigh?", unit, of: "product", decimals: us ? 0 : 1 },
    working: [use(weightOfLiquidFormula, { amount: quantity(volume, big, "product"), density })],
    mistakes: (answer) => [
      slip("density upside down", volume / heavy),
      slip("forgot the density", volume),
      ...(us ? [slip("water weight for the liquid", volume * 8.34)] : []),
      slip("decimal point one place off", answer / 10),
    ],
  });
};

const liquidNitrogenProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { percent, heavy, big, strength, stuff, weighs } = liquidFigures(input);
  return worked({
    text: `A liquid fertilizer has ${percent} % nitrogen by weight and ${weighs}.`,
    ask: {
      question: `How much nitrogen does 1 ${big} of it hold?`,
      unit: strength,
      of: "N",
      decimals: us ? 2 : 3,
    },
    working: [use(nutrientPerVolumeFormula, stuff)],
    mistakes: (answer) => [
      slip("forgot the density", percent / 100),
      slip("nutrient for product", heavy),
      slip("density upside down", percent / 100 / heavy),
      slip("decimal point one place off", answer * 10),
      slip("divided by the percentage", (heavy * 100) / percent),
    ],
  });
};

const liquidRateProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { percent, heavy, target, weighs, stuff } = liquidFigures(input);
  const each = (heavy * percent) / 100;
  const rate = us ? "lb/1000 ft2" : "kg/ha";
  return worked({
    text: `A crew wants to put down ${amountOf(target, rate, "nitrogen")} on ${place(draw)} from a liquid fertilizer that has ${percent} % nitrogen by weight and ${weighs}.`,
    ask: {
      question: "What is the rate of the liquid?",
      unit: us ? "gal/1000 ft2" : "L/ha",
      of: "product",
      decimals: us ? 3 : 0,
    },
    working: [use(liquidProductRateFormula, { target: quantity(target, rate, "N"), ...stuff })],
    mistakes: () => [
      slip("forgot the density", (target * 100) / percent),
      slip("product for nutrient", target / heavy),
      slip("density upside down", ((target * 100) / percent) * heavy),
      slip("multiplied by the percentage", target * each),
    ],
  });
};

const liquidProblem = (input: PoseInput): Posed =>
  input.level === 1
    ? liquidWeightProblem(input)
    : input.level === 2
      ? liquidNitrogenProblem(input)
      : liquidRateProblem(input);

const areaCostProblem = ({ draw, us, level }: PoseInput): Posed => {
  const rate = us ? draw.step(2.5, 6, 0.25) : draw.step(120, 300, 10);
  const each = us ? draw.step(0.4, 1.2, 0.05) : draw.step(0.8, 2.4, 0.1);
  const area = areaOf(draw, us);
  const unit = massUnit(us);
  const per = us ? 1000 : 10_000;
  const perArea = us ? "lb/1000 ft2" : "kg/ha";
  const whole = level === 2;
  const price = quantity(each, `money:USD/${unit}`);
  const cost = rate * each;
  const below = us ? "1000 ft2" : "ha";
  const scale = whole ? area / per : 1;
  const wholeArea = whole
    ? [
        total({
          title: "Whole area",
          equation: "K = k * A",
          parts: {
            k: ["cost of a unit of area", fromStep(1), `money:USD/${below}`],
            A: ["area", area, us ? "ft2" : "m2", below],
          },
          unit: "money:USD",
        }),
      ]
    : [];
  return worked({
    text: `${place(draw).replace("the", "The")} gets ${amount(rate, perArea)} of a fertilizer that costs ${amount(each, `money:USD/${unit}`)}.${whole ? ` It covers ${amount(area, us ? "ft2" : "m2")}.` : ""}`,
    ask: {
      question: whole
        ? "What does the fertilizer for it cost?"
        : `What does the fertilizer cost ${us ? "for 1,000 sq ft" : "per hectare"}?`,
      unit: whole ? "money:USD" : `money:USD/${below}`,
      of: "none",
      decimals: 2,
    },
    working: [use(costPerAreaFormula, { rate: quantity(rate, perArea, "product"), price }), ...wholeArea],
    mistakes: (answer) => [
      slip("divided by the price", (rate / each) * scale),
      slip("decimal point one place off", answer / 10),
      slip("decimal point one place off", answer * 10),
      slip("forgot the price", rate * scale),
      ...(whole ? [slip("one unit of area only", cost)] : []),
    ],
  });
};

/** Liquids, and what a nutrient costs. */
export const feedTopics: readonly Topic[] = [
  { id: "nutrient/cost", title: "Cost of a nutrient", levels: [1, 2], pose: costProblem },
  { id: "nutrient/liquids", title: "Density of a liquid fertilizer", levels: [1, 2, 3], pose: liquidProblem },
  { id: "price/per-area", title: "Cost for an area", levels: [1, 2], pose: areaCostProblem },
];
