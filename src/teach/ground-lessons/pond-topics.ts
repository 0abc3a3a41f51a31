import { quantity } from "../../quantity/index.js";
import { pondVolumeFormula, waterDoseFormula } from "../ground/site-ground.js";
import { amount, amountOf, slip } from "../topics/figures.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

/** The figures that the levels share. */
const pondFigures = ({ draw, us }: PoseInput) => {
  const surface = us ? draw.step(0.5, 4, 0.25) : draw.step(1500, 12_000, 500);
  const depth = us ? draw.step(3, 8, 0.5) : draw.step(1, 2.5, 0.1);
  const dose = draw.pick([0.5, 1, 1.5, 2, 3]);
  const percent = draw.pick([25, 40, 50, 80]);
  const volume = use(pondVolumeFormula, {
    area: quantity(surface, us ? "acre" : "m2"),
    meanDepth: quantity(depth, us ? "ft" : "m"),
  });
  const held = surface * depth;
  const pond = `The irrigation pond of the park has a surface of ${amount(surface, us ? "acre" : "m2")} and a mean depth of ${amount(depth, us ? "ft" : "m")}.`;
  return { surface, depth, dose, percent, held, pond, volume } as const;
};

const pondVolumeProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { depth, held, pond, volume } = pondFigures(input);
  return worked({
    text: `${pond}${us ? " An acre-foot is 325,851 gallons." : ""}`,
    ask: {
      question: "How much water does it hold?",
      unit: us ? "gal" : "L",
      of: "water",
      decimals: 0,
      // 325,851 gallons are 1.3 parts in a million less than an acre-foot: some gallons of a pond
      slack: us ? 2e-6 : 0,
    },
    working: [volume],
    mistakes: (answer) => [
      slip("forgot the depth", answer / depth),
      slip("divided by the depth", answer / depth / depth),
      slip(us ? "feet for inches" : "units upside down", us ? answer / 12 : held / 1000),
      slip(us ? "yards for feet" : "meters for centimeters", us ? answer / 3 : answer / 100),
    ],
  });
};

const pondDoseProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { depth, dose, percent, pond, volume, held } = pondFigures(input);
  const mass = us ? "lb" : "kg";
  const whole = level === 3;
  const scale = whole ? 100 / percent : 1;
  const product = total({
    title: "Product",
    equation: "P = m * 100 / s",
    parts: { m: ["active ingredient", fromStep(2), mass], s: ["percent of it in the product", percent, "1"] },
    unit: mass,
  });
  return worked({
    text:
      `${pond} It is to be dosed to ${amountOf(dose, "mg/L", "active ingredient")}. ` +
      (us ? "1 mg/L in 1 acre-foot is 2.719 lb." : "1 mg/L in 1 m³ is 1 g.") +
      (whole ? ` The product has ${percent} % active ingredient by weight.` : ""),
    ask: {
      question: whole ? "How much product does it take?" : "How much active ingredient does it take?",
      unit: mass,
      of: whole ? "product" : "ai",
      decimals: 1,
      slack: us ? 2e-4 : 0,
    },
    working: [
      volume,
      use(waterDoseFormula, { volume: fromStep(1), concentration: quantity(dose, "mg/L", "ai") }),
      ...(whole ? [product] : []),
    ],
    mistakes: (answer) => [
      slip("forgot the depth", answer / depth),
      slip("forgot the dose", answer / dose),
      ...(us
        ? [slip("forgot to convert", held * dose * scale)]
        : [slip("decimal point one place off", answer / 10)]),
      ...(whole
        ? [
            slip("forgot the percent active", answer / scale),
            slip("multiplied by the percentage", answer / scale / scale),
          ]
        : []),
      slip("divided by the depth", answer / depth / depth),
    ],
  });
};

/** Water in a pond, and what it takes to dose it. */
export const pondProblem = (input: PoseInput): Posed =>
  input.level === 1 ? pondVolumeProblem(input) : pondDoseProblem(input);
