import { elementOf } from "../../nutrient/index.js";
import { quantity } from "../../quantity/index.js";
import { phosphateRateForPhosphorusFormula } from "../application/nutrient-elements.js";
import {
  nutrientsSuppliedFormula,
  productRateFormula,
  productRatePhosphateFormula,
} from "../application/nutrient-rates.js";
import { packagesForNeedFormula, productForAreaFormula } from "../application/tank-amounts.js";
import { countDown, countUp } from "../expression/expression.js";
import { amount, amountOf, num, slip } from "../topics/figures.js";
import { aGrade, areaOf, gradeWithNitrogen, nitrogenTarget, openGround, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const rateUnit = (us: boolean): "lb/1000 ft2" | "kg/ha" => (us ? "lb/1000 ft2" : "kg/ha");
const massUnit = (us: boolean): "lb" | "kg" => (us ? "lb" : "kg");
const areaUnit = (us: boolean): "ft2" | "m2" => (us ? "ft2" : "m2");
/** The area of a rate, 1,000 sq ft or a hectare, in the unit of an area. */
const perUnit = (us: boolean): number => (us ? 1000 : 10_000);

const targetProblem = (input: PoseInput): Posed => {
  const { draw, us, level } = input;
  const { n, k, text: grade } = gradeWithNitrogen(draw);
  const target = nitrogenTarget(draw, us);
  const area = areaOf(draw, us);
  const where = place(draw);
  const perArea = (target * 100) / n;
  const rate = use(productRateFormula, {
    target: quantity(target, rateUnit(us), "N"),
    percent: quantity(n, "% w/w", "N/product"),
  });
  const lead = `A crew wants to put down ${amountOf(target, rateUnit(us), "nitrogen")} on ${where}`;
  if (level === 1) {
    return worked({
      text: `${lead}. The fertilizer on hand is ${aGrade(grade)}.`,
      ask: {
        question: "What is the rate of product?",
        unit: rateUnit(us),
        of: "product",
        decimals: us ? 2 : 1,
      },
      working: [rate],
      mistakes: () => [
        slip("multiplied by the percentage", (target * n) / 100),
        slip("product for nutrient", target),
        slip("wrong number of the grade", (target * 100) / k),
        slip("decimal point one place off", (target * 10) / n),
      ],
    });
  }
  const parts = area / perUnit(us);
  return worked({
    text: `${lead}, which covers ${amount(area, areaUnit(us))}. The fertilizer on hand is ${aGrade(grade)}.`,
    ask: {
      question: "How much product does the whole area take?",
      unit: massUnit(us),
      of: "product",
      decimals: 1,
    },
    working: [rate, use(productForAreaFormula, { rate: fromStep(1), area: quantity(area, areaUnit(us)) })],
    mistakes: (answer) => [
      slip("product for nutrient", target * parts),
      slip("multiplied by the percentage", (target * parts * n) / 100),
      slip("one unit of area only", perArea),
      slip("wrong number of the grade", (target * parts * 100) / k),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? answer / 43.56 : answer * 100),
    ],
  });
};

const phosphateProblem = ({ draw, us }: PoseInput): Posed => {
  const p2o5 = draw.pick([10, 18, 20, 24, 25, 46]);
  const n = draw.pick([8, 10, 11, 12, 16]);
  const target = us ? draw.step(0.2, 0.6, 0.05) : draw.step(10, 30, 2);
  const area = areaOf(draw, us);
  const scale = area / perUnit(us);
  /** Of phosphorus in phosphate, as the problem prints it. */
  const share = num(elementOf(quantity(1, "kg", "P2O5")).value, 4);
  return worked({
    text:
      `The soil report for ${place(draw)} asks for ${amountOf(target, rateUnit(us), "phosphorus (P)")}. ` +
      `The starter fertilizer is ${aGrade(`${n}-${p2o5}-0`)}, and its label states phosphate (P2O5), of which 1 ${massUnit(us)} holds ` +
      `${share} ${massUnit(us)} of phosphorus. The area is ${amount(area, areaUnit(us))}.`,
    ask: {
      question: "How much product does the whole area take?",
      unit: massUnit(us),
      of: "product",
      decimals: 1,
      slack: 3e-4,
    },
    working: [
      use(phosphateRateForPhosphorusFormula, { rate: quantity(target, rateUnit(us), "P") }),
      use(productRatePhosphateFormula, {
        target: fromStep(1),
        percent: quantity(p2o5, "% w/w", "P2O5/product"),
      }),
      use(productForAreaFormula, { rate: fromStep(2), area: quantity(area, areaUnit(us)) }),
    ],
    mistakes: (answer) => [
      slip("P for P2O5", ((target * 100) / p2o5) * scale),
      slip("P2O5 for P the wrong way", ((target * Number(share) * 100) / p2o5) * scale),
      slip("wrong number of the grade", (answer * p2o5) / n),
      slip("product for nutrient", (answer * p2o5) / 100),
      slip("one unit of area only", answer / scale),
    ],
  });
};

const productRateProblem = (input: PoseInput): Posed =>
  input.level === 3 ? phosphateProblem(input) : targetProblem(input);

const suppliedProblem = ({ draw, us, level }: PoseInput): Posed => {
  const { n, k, text: grade } = gradeWithNitrogen(draw);
  const rate = us ? draw.step(2, 6, 0.25) : draw.step(100, 300, 10);
  const acres = us ? draw.step(0.5, 3, 0.25) : draw.step(0.2, 1.5, 0.1);
  const area = level === 3 ? acres : areaOf(draw, us);
  const where = level === 3 ? openGround(draw) : place(draw);
  const perArea = (rate * n) / 100;
  // more nitrogen than that at one time is no job for a park
  const within = perArea <= (us ? 1.25 : 60) ? {} : ({ within: [1, 0] } as const);
  const supplied = use(nutrientsSuppliedFormula, {
    rate: quantity(rate, rateUnit(us), "product"),
    percent: quantity(n, "% w/w", "N/product"),
  });
  const nitrogenFor = (size: number, unit: string) =>
    total({
      title: "Whole area",
      equation: "m = n * A",
      parts: {
        n: ["nitrogen rate", fromStep(1), rateUnit(us)],
        A: ["area", size, unit, us ? "1000 ft2" : "ha"],
      },
      unit: massUnit(us),
    });
  const lead = `A spreader put ${amount(rate, rateUnit(us))} of ${aGrade(grade)} fertilizer on ${where}`;
  if (level === 1) {
    return worked({
      text: `${lead}.`,
      ask: { question: "How much nitrogen is that?", unit: rateUnit(us), of: "N", decimals: us ? 2 : 1 },
      working: [supplied],
      mistakes: () => [
        slip("divided by the percentage", (rate * 100) / n),
        slip("nutrient for product", rate),
        slip("wrong number of the grade", (rate * k) / 100),
        slip("decimal point one place off", (rate * n) / 10),
      ],
      ...within,
    });
  }
  const bigUnit = level === 3 ? (us ? "acre" : "ha") : areaUnit(us);
  const times = level === 3 ? (us ? area * 43.56 : area) : area / perUnit(us);
  return worked({
    text: `${lead}, which covers ${amount(area, bigUnit)}.`,
    ask: {
      question: "How much nitrogen went down on the whole area?",
      unit: massUnit(us),
      of: "N",
      decimals: 1,
    },
    working: [supplied, nitrogenFor(area, bigUnit)],
    mistakes: (answer) => [
      slip("nutrient for product", rate * times),
      slip("divided by the percentage", ((rate * 100) / n) * times),
      slip("wrong number of the grade", ((rate * k) / 100) * times),
      slip("one unit of area only", perArea),
      ...(us ? [slip("acre for 1,000 sq ft", answer / 43.56)] : []),
    ],
    ...within,
  });
};

interface BagStory {
  readonly where: string;
  readonly need: string;
  readonly rate: string;
  readonly size: string;
  readonly target: string;
  readonly grade: string;
}

const bagStory = (level: 1 | 2 | 3, { where, need, rate, size, target, grade }: BagStory): string =>
  ({
    1: `${sentence(where)} takes ${need} of fertilizer.`,
    2: `A crew puts ${rate} on ${size} of ${where}.`,
    3: `A crew wants to put down ${target} on ${where}, ${size} together, from ${aGrade(grade)} fertilizer.`,
  })[level];

const bagProblem = ({ draw, us, level }: PoseInput): Posed => {
  const { n, text: grade } = gradeWithNitrogen(draw);
  const bag = us ? draw.pick([40, 50]) : draw.pick([20, 25]);
  const need = us ? draw.step(90, 420, 5) : draw.step(45, 240, 5);
  const target = nitrogenTarget(draw, us);
  const rate = us ? draw.step(3, 6, 0.25) : draw.step(150, 300, 10);
  const area = us ? draw.step(20_000, 90_000, 1000) : draw.step(2000, 9000, 100);
  const where = level === 3 ? "the two practice pitches" : openGround(draw);
  const parts = area / perUnit(us);
  const mass = level === 1 ? need : level === 2 ? rate * parts : (target * parts * 100) / n;
  const contents = quantity(bag, massUnit(us));
  const land = quantity(area, areaUnit(us));
  const byTarget = use(productRateFormula, {
    target: quantity(target, rateUnit(us), "N"),
    percent: quantity(n, "% w/w", "N/product"),
  });
  const working = [
    [use(packagesForNeedFormula, { need: quantity(need, massUnit(us), "product"), contents })],
    [
      use(productForAreaFormula, { rate: quantity(rate, rateUnit(us), "product"), area: land }),
      use(packagesForNeedFormula, { need: fromStep(1), contents }),
    ],
    [
      byTarget,
      use(productForAreaFormula, { rate: fromStep(1), area: land }),
      use(packagesForNeedFormula, { need: fromStep(2), contents }),
    ],
  ][level - 1];
  return worked({
    text: `${bagStory(level, { where, need: amount(need, massUnit(us)), rate: amountOf(rate, rateUnit(us), "fertilizer"), size: amount(area, areaUnit(us)), target: amountOf(target, rateUnit(us), "nitrogen"), grade })} A bag holds ${amount(bag, massUnit(us))}.`,
    ask: {
      question: "How many bags must be brought?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["bag", "bags"],
    },
    working: working ?? [],
    mistakes: (answer) => [
      slip("rounded packages down", countDown(mass / bag)),
      slip("one package too many", answer + 1),
      slip("counted without the package size", countUp(mass)),
      ...(level === 3
        ? [
            slip("product for nutrient", countUp((target * parts) / bag)),
            slip("multiplied by the percentage", countUp((target * parts * n) / 100 / bag)),
          ]
        : []),
    ],
  });
};

const sentence = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** What a label on a bag comes to. */
export const nutrientTopics: readonly Topic[] = [
  {
    id: "nutrient/product-rate",
    title: "Product for a nutrient target",
    levels: [1, 2, 3],
    pose: productRateProblem,
  },
  {
    id: "nutrient/nutrient-supplied",
    title: "Nutrient in a product rate",
    levels: [1, 2, 3],
    pose: suppliedProblem,
  },
  { id: "nutrient/bags", title: "Bags to bring", levels: [1, 2, 3], pose: bagProblem },
];
