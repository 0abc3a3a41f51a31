import { quantity } from "../../quantity/index.js";
import { amount, num, slip, step } from "./figures.js";
import type { Posed, PoseInput, Topic } from "./topic.js";

const perArea = ({ draw, us }: PoseInput): Posed => {
  const rate = us ? draw.step(20, 120, 2) : draw.step(120, 400, 5);
  const found = us
    ? quantity(rate, "gal/acre", "spray").in("gal/1000 ft2")
    : quantity(rate, "kg/ha", "product").in("kg/100 m2");
  const size = us ? 43.56 : 100;
  return {
    text: us
      ? `The sprayer of the park applies ${amount(rate, "gal/acre")}.`
      : `A spreader of the park is set to ${amount(rate, "kg/ha")} of fertilizer.`,
    ask: us
      ? { question: "What is that for 1,000 sq ft?", unit: "gal/1000 ft2", of: "spray", decimals: 2 }
      : { question: "What is that for 100 m²?", unit: "kg/100 m2", of: "product", decimals: 2 },
    answer: found,
    steps: [step("Rate", `${num(rate)} ÷ ${size}`, found, us ? "gal/1000 ft2" : "kg/100 m2")],
    mistakes: [
      slip("units upside down", rate * size),
      slip("forgot to convert", rate),
      slip("decimal point one place off", found * 10),
      ...(us
        ? [slip("acre as 1,000 sq ft times 10", rate / 10)]
        : [slip("decimal point one place off", found / 10)]),
    ],
  };
};

const perSmallArea = ({ draw, us }: PoseInput): Posed => {
  const rate = us ? draw.step(1, 6, 0.25) : draw.step(0.5, 6, 0.25);
  const found = us
    ? quantity(rate, "pt/acre", "product").in("fl oz/1000 ft2")
    : quantity(rate, "L/ha", "product").in("mL/100 m2");
  const unit = us ? "fl oz/1000 ft2" : "mL/100 m2";
  return {
    text: `The label of a liquid product states ${amount(rate, us ? "pt/acre" : "L/ha")}.${us ? " A pint is 16 fl oz." : ""}`,
    ask: {
      question: `What is that for ${us ? "1,000 sq ft" : "100 m²"}?`,
      unit,
      of: "product",
      decimals: us ? 2 : 1,
    },
    answer: found,
    steps: [step("Rate", us ? `${num(rate)} × 16 ÷ 43.56` : `${num(rate)} × 1,000 ÷ 100`, found, unit)],
    mistakes: us
      ? [
          slip("acre for 1,000 sq ft", rate * 16),
          slip("forgot to convert", rate / 43.56),
          slip("fluid ounces in a quart", (rate * 32) / 43.56),
          slip("ounce for fluid ounce", (rate * 128) / 43.56),
        ]
      : [
          slip("hectare for 100 m²", rate * 1000),
          slip("decimal point one place off", found * 10),
          slip("forgot to convert", rate),
          slip("units upside down", rate * 100),
        ],
  };
};

/** Rates from one unit of area to another. */
export const rateUnitTopics: readonly Topic[] = [
  {
    id: "quantity/rates",
    title: "Rates in another unit",
    levels: [1, 2],
    pose: (input) => (input.level === 1 ? perArea(input) : perSmallArea(input)),
  },
];
