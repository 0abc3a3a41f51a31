import {
  fertilizer,
  nutrientsSupplied,
  oxideOf,
  packagesFor,
  productMass,
  productRate,
} from "../../nutrient/index.js";
import { quantity } from "../../quantity/index.js";
import { amount, num, slip, step } from "./figures.js";
import { areaOf, gradeWithNitrogen, nitrogenTarget, place } from "./park.js";
import type { Posed, PoseInput, Topic } from "./topic.js";

const rateUnit = (us: boolean): "lb/1000 ft2" | "kg/ha" => (us ? "lb/1000 ft2" : "kg/ha");
const massUnit = (us: boolean): "lb" | "kg" => (us ? "lb" : "kg");
const areaUnit = (us: boolean): "ft2" | "m2" => (us ? "ft2" : "m2");
/** How many units of the area of a rate, 1,000 sq ft or a hectare, an area has, as a sum shows it. */
const unitsOfArea = (area: number, us: boolean): string => `${num(area)} ÷ ${us ? "1,000" : "10,000"}`;
const perUnit = (us: boolean): number => (us ? 1000 : 10_000);

const targetProblem = (input: PoseInput): Posed => {
  const { draw, us, level } = input;
  const { n, k, text: grade } = gradeWithNitrogen(draw);
  const target = nitrogenTarget(draw, us);
  const area = areaOf(draw, us);
  const where = place(draw);
  const feed = fertilizer({ id: "feed", analysis: grade });
  const rate = productRate(quantity(target, rateUnit(us), "N"), feed);
  const perArea = rate.in(rateUnit(us));
  const rateStep = step("Product rate", `${num(target)} × 100 ÷ ${n}`, perArea, rateUnit(us));
  const lead = `A crew wants to put down ${amount(target, rateUnit(us))} of nitrogen on ${where}`;
  if (level === 1) {
    return {
      text: `${lead}. The fertilizer on hand is a ${grade}.`,
      ask: {
        question: "What is the rate of product?",
        unit: rateUnit(us),
        of: "product",
        decimals: us ? 2 : 1,
      },
      answer: perArea,
      steps: [rateStep],
      mistakes: [
        slip("multiplied by the percentage", (target * n) / 100),
        slip("product for nutrient", target),
        slip("wrong number of the grade", (target * 100) / k),
        slip("percentage as a whole number", (target * 10) / n),
      ],
    };
  }
  const total = rate.times(quantity(area, areaUnit(us))).in(massUnit(us));
  const parts = area / perUnit(us);
  return {
    text: `${lead}, which has ${amount(area, areaUnit(us))}. The fertilizer on hand is a ${grade}.`,
    ask: {
      question: "How much product does the whole area take?",
      unit: massUnit(us),
      of: "product",
      decimals: 1,
    },
    answer: total,
    steps: [
      rateStep,
      step("Whole area", `${num(target)} × 100 ÷ ${n} × ${unitsOfArea(area, us)}`, total, massUnit(us)),
    ],
    mistakes: [
      slip("product for nutrient", target * parts),
      slip("multiplied by the percentage", (target * parts * n) / 100),
      slip("one unit of area only", perArea),
      slip("wrong number of the grade", (target * parts * 100) / k),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? total / 43.56 : total * 100),
    ],
  };
};

const phosphateProblem = ({ draw, us, level }: PoseInput): Posed => {
  const p2o5 = draw.pick([10, 18, 20, 24, 25, 46]);
  const n = draw.pick([8, 10, 11, 12, 16]);
  const target = us ? draw.step(0.2, 0.6, 0.05) : draw.step(10, 30, 2);
  const area = areaOf(draw, us);
  const grade = `${n}-${p2o5}-0`;
  const feed = fertilizer({ id: "feed", analysis: grade });
  const phosphorus = quantity(target, rateUnit(us), "P");
  const oxide = oxideOf(phosphorus).in(rateUnit(us));
  const rate = productRate(phosphorus, feed);
  const perArea = rate.in(rateUnit(us));
  const parts = area / perUnit(us);
  const whole = level === 3;
  const scale = whole ? parts : 1;
  const total = rate.times(quantity(area, areaUnit(us))).in(massUnit(us));
  const convert = step("As phosphate (P2O5)", `${num(target)} × 2.29137`, oxide, rateUnit(us));
  const size = whole ? ` It has ${amount(area, areaUnit(us))}.` : "";
  return {
    text:
      `The soil report for ${place(draw)} asks for ${amount(target, rateUnit(us))} of phosphorus (P). ` +
      `The starter fertilizer is a ${grade}, and its label states phosphate (P2O5), of which 1 ${massUnit(us)} holds ` +
      `0.4364 ${massUnit(us)} of phosphorus.${size}`,
    ask: whole
      ? {
          question: "How much product does the whole area take?",
          unit: massUnit(us),
          of: "product",
          decimals: 1,
          slack: 3e-4,
        }
      : {
          question: "What is the rate of product?",
          unit: rateUnit(us),
          of: "product",
          decimals: us ? 2 : 0,
          slack: 3e-4,
        },
    answer: whole ? total : perArea,
    steps: [
      convert,
      step("Product rate", `${num(oxide)} × 100 ÷ ${p2o5}`, perArea, rateUnit(us)),
      ...(whole
        ? [step("Whole area", `${num(perArea)} × ${unitsOfArea(area, us)}`, total, massUnit(us))]
        : []),
    ],
    mistakes: [
      slip("P for P2O5", ((target * 100) / p2o5) * scale),
      slip("P2O5 for P the wrong way", ((target * 43.64) / p2o5) * scale),
      slip("wrong number of the grade", ((oxide * 100) / n) * scale),
      slip("product for nutrient", oxide * scale),
      ...(whole ? [slip("one unit of area only", perArea)] : []),
    ],
  };
};

const productRateProblem = (input: PoseInput): Posed =>
  input.level === 3 ? phosphateProblem(input) : targetProblem(input);

const suppliedProblem = ({ draw, us, level }: PoseInput): Posed => {
  const { n, k, text: grade } = gradeWithNitrogen(draw);
  const feed = fertilizer({ id: "feed", analysis: grade });
  const rate = us ? draw.step(2, 6, 0.25) : draw.step(100, 300, 10);
  const acres = us ? draw.step(0.5, 3, 0.25) : draw.step(0.2, 1.5, 0.1);
  const area = level === 3 ? acres : areaOf(draw, us);
  const where = place(draw);
  const supplied = nutrientsSupplied(quantity(rate, rateUnit(us), "product:feed"), feed).N;
  if (supplied === undefined) throw new TypeError("a grade with nitrogen supplies some");
  const perArea = supplied.in(rateUnit(us));
  const rateStep = step("Nitrogen rate", `${num(rate)} × ${n} ÷ 100`, perArea, rateUnit(us));
  const lead = `A spreader put ${amount(rate, rateUnit(us))} of a ${grade} fertilizer on ${where}`;
  if (level === 1) {
    return {
      text: `${lead}.`,
      ask: { question: "How much nitrogen is that?", unit: rateUnit(us), of: "N", decimals: us ? 2 : 1 },
      answer: perArea,
      steps: [rateStep],
      mistakes: [
        slip("divided by the percentage", (rate * 100) / n),
        slip("nutrient for product", rate),
        slip("wrong number of the grade", (rate * k) / 100),
        slip("percentage as a whole number", (rate * n) / 10),
      ],
    };
  }
  const bigUnit = level === 3 ? (us ? "acre" : "ha") : areaUnit(us);
  const total = supplied.times(quantity(area, bigUnit)).in(massUnit(us));
  const parts = level === 3 ? (us ? `${num(area)} × 43.56` : num(area)) : unitsOfArea(area, us);
  const times = level === 3 ? (us ? area * 43.56 : area) : area / perUnit(us);
  return {
    text: `${lead}, which has ${amount(area, bigUnit)}.`,
    ask: {
      question: "How much nitrogen went down on the whole area?",
      unit: massUnit(us),
      of: "N",
      decimals: 1,
    },
    answer: total,
    steps: [rateStep, step("Whole area", `${num(rate)} × ${n} ÷ 100 × ${parts}`, total, massUnit(us))],
    mistakes: [
      slip("nutrient for product", rate * times),
      slip("divided by the percentage", ((rate * 100) / n) * times),
      slip("wrong number of the grade", ((rate * k) / 100) * times),
      slip("one unit of area only", perArea),
      ...(us ? [slip("acre for 1,000 sq ft", level === 3 ? perArea * area : total / 43.56)] : []),
    ],
  };
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
    1: `${sentence(where)} ${where.startsWith("the two") ? "take" : "takes"} ${need} of fertilizer.`,
    2: `A crew puts ${rate} of fertilizer on ${size} of ${where}.`,
    3: `A crew wants to put down ${target} of nitrogen on ${where}, ${size} together, from a ${grade} fertilizer.`,
  })[level];

const bagProblem = ({ draw, us, level }: PoseInput): Posed => {
  const { n, text: grade } = gradeWithNitrogen(draw);
  const bag = us ? draw.pick([40, 50]) : draw.pick([20, 25]);
  const need = us ? draw.step(90, 420, 5) : draw.step(45, 240, 5);
  const target = nitrogenTarget(draw, us);
  const rate = us ? draw.step(3, 6, 0.25) : draw.step(150, 300, 10);
  const area = us ? draw.step(20_000, 90_000, 1000) : draw.step(2000, 9000, 100);
  const feed = fertilizer({ id: "feed", analysis: grade, package: quantity(bag, massUnit(us)) });
  const where = level === 3 ? "the two practice pitches" : place(draw);
  const nitrogen = quantity(target, rateUnit(us), "N").times(quantity(area, areaUnit(us)));
  const mass =
    level === 1
      ? quantity(need, massUnit(us), "product:feed")
      : level === 2
        ? quantity(rate, rateUnit(us), "product:feed").times(quantity(area, areaUnit(us)))
        : productMass(nitrogen, feed);
  const pounds = mass.in(massUnit(us));
  const nitrogenTotal = (target * area) / perUnit(us);
  const exact = pounds / bag;
  return {
    text: `${bagStory(level, { where, need: amount(need, massUnit(us)), rate: amount(rate, rateUnit(us)), size: amount(area, areaUnit(us)), target: amount(target, rateUnit(us)), grade })} A bag holds ${amount(bag, massUnit(us))}.`,
    ask: {
      question: "How many bags must be brought?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["bag", "bags"],
    },
    answer: packagesFor(mass, feed).count,
    steps: [
      ...(level === 1
        ? []
        : [
            step(
              "Product",
              level === 2
                ? `${num(rate)} × ${unitsOfArea(area, us)}`
                : `${num(target)} × 100 ÷ ${n} × ${unitsOfArea(area, us)}`,
              pounds,
              massUnit(us),
            ),
          ]),
      step("Bags before rounding up", `${num(pounds)} ÷ ${bag}`, exact, "count"),
    ],
    mistakes: [
      slip("rounded packages down", Math.floor(exact)),
      slip("one package too many", Math.ceil(exact) + 1),
      slip("counted without the package size", Math.ceil(pounds)),
      ...(level === 3
        ? [
            slip("product for nutrient", Math.ceil(nitrogenTotal / bag)),
            slip("multiplied by the percentage", Math.ceil((nitrogenTotal * n) / 100 / bag)),
          ]
        : []),
    ],
  };
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
