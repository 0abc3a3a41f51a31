import { quantity } from "../../quantity/index.js";
import { amount, amountOf, slip } from "../topics/figures.js";
import { convert } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const perArea = ({ draw, us }: PoseInput): Posed => {
  const rate = us ? draw.step(20, 120, 2) : draw.step(120, 400, 5);
  const from = us ? quantity(rate, "gal/acre", "spray") : quantity(rate, "kg/ha", "product");
  const size = us ? 43.56 : 100;
  return worked({
    text: us
      ? `The park's sprayer applies ${amount(rate, "gal/acre")}.`
      : `The park's spreader is set to ${amountOf(rate, "kg/ha", "fertilizer")}.`,
    ask: us
      ? { question: "What is that per 1,000 sq ft?", unit: "gal/1000 ft2", of: "spray", decimals: 2 }
      : { question: "What is that per 100 m²?", unit: "kg/100 m2", of: "product", decimals: 2 },
    working: [convert("Rate", from, us ? "gal/1000 ft2" : "kg/100 m2")],
    mistakes: (answer) => [
      slip("units upside down", rate * size),
      slip("forgot to convert", rate),
      slip("decimal point one place off", answer * 10),
      ...(us
        ? [slip("acre as 1,000 sq ft times 10", rate / 10)]
        : [slip("decimal point one place off", answer / 10)]),
    ],
  });
};

const perSmallArea = ({ draw, us }: PoseInput): Posed => {
  const rate = us ? draw.step(1, 6, 0.25) : draw.step(0.5, 6, 0.25);
  const from = us ? quantity(rate, "pt/acre", "product") : quantity(rate, "L/ha", "product");
  const unit = us ? "fl oz/1000 ft2" : "mL/100 m2";
  return worked({
    text: `The label of a liquid product states ${amount(rate, us ? "pt/acre" : "L/ha")}.${us ? " A pint is 16 fl oz." : ""}`,
    ask: {
      question: `What is that per ${us ? "1,000 sq ft" : "100 m²"}?`,
      unit,
      of: "product",
      decimals: us ? 2 : 1,
    },
    working: [convert("Rate", from, unit)],
    mistakes: (answer) =>
      us
        ? [
            slip("acre for 1,000 sq ft", rate * 16),
            slip("forgot to convert", rate / 43.56),
            slip("fluid ounces in a quart", (rate * 32) / 43.56),
            slip("acre as 1,000 sq ft times 10", (rate * 16) / 10),
          ]
        : [
            slip("hectare for 100 m²", rate * 1000),
            slip("decimal point one place off", answer * 10),
            slip("forgot to convert", rate),
            slip("units upside down", rate / 10),
          ],
  });
};

const perLargeArea = ({ draw, us }: PoseInput): Posed => {
  const rate = us ? draw.step(2, 6, 0.25) : draw.step(1.5, 4, 0.1);
  const from = quantity(rate, us ? "lb/1000 ft2" : "kg/100 m2", "product");
  const unit = us ? "lb/acre" : "kg/ha";
  return worked({
    text: `The park's spreader chart is made for ${amountOf(rate, us ? "lb/1000 ft2" : "kg/100 m2", "fertilizer")}. The order sheet asks for ${us ? "pounds per acre" : "kilograms per hectare"}.`,
    ask: { question: "What is the rate there?", unit, of: "product", decimals: us ? 2 : 0 },
    working: [convert("Rate", from, unit)],
    mistakes: (answer) => [
      slip("forgot to convert", rate),
      slip("decimal point one place off", answer / 10),
      ...(us
        ? [slip("units upside down", rate / 43.56), slip("acre as 1,000 sq ft times 10", rate * 10)]
        : []),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

/** Rates from one unit of area to another. */
export const rateUnitTopics: readonly Topic[] = [
  {
    id: "quantity/rates",
    title: "Rates in another unit",
    levels: [1, 2],
    pose: (input) => (input.level === 1 ? perArea(input) : perSmallArea(input)),
  },
  {
    id: "quantity/rates-per-acre",
    title: "Rates for a larger area",
    levels: [1],
    pose: perLargeArea,
  },
];
