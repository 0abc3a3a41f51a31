import { quantity } from "../../quantity/index.js";
import { flowAtPressureFormula, pressureForFlowFormula } from "../application/spray-nozzle.js";
import { liquidForAreaFormula } from "../application/tank.js";
import { dryProductForActiveFormula, liquidProductForActiveFormula } from "../application/tank-water.js";
import { amount, amountOf, slip } from "../topics/figures.js";
import { openGround } from "../topics/park.js";
import { fromStep, use } from "../topics/steps.js";
import type { Posed, PoseInput } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const flowUnit = (us: boolean): "gal/min" | "L/min" => (us ? "gal/min" : "L/min");

/** Flow and pressure of a tip. */
export const pressureProblem = ({ draw, us, level }: PoseInput): Posed => {
  const rated = us ? 40 : draw.pick([2, 3]);
  const flow = us ? draw.step(0.2, 0.8, 0.1) : draw.step(0.8, 2.4, 0.2);
  const other = us ? draw.pick([20, 25, 30, 50, 60]) : draw.pick([1, 1.5, 2.5, 4]);
  const bar = us ? "psi" : "bar";
  const unit = flowUnit(us);
  const tip = { flow: quantity(flow, unit, "spray"), rated: quantity(rated, bar) };
  const told = `A tip on the boom puts out ${amount(flow, unit)} at ${amount(rated, bar)}.`;
  if (level === 2) {
    return worked({
      text: `${told} The gauge now reads ${amount(other, bar)}.`,
      ask: { question: "What does the tip put out?", unit, of: "water", decimals: us ? 3 : 2 },
      working: [use(flowAtPressureFormula, { ...tip, pressure: quantity(other, bar) })],
      mistakes: () => [
        slip("pressure in proportion", (flow * other) / rated),
        slip("pressure upside down", flow * Math.sqrt(rated / other)),
        slip("pressure squared", flow * (other / rated) ** 2),
        slip("pressure the wrong way", (flow * rated) / other),
      ],
    });
  }
  const places = us ? 2 : 1;
  const wanted = Number((flow * draw.pick([0.75, 0.8, 0.85, 0.9, 1.1, 1.2, 1.25])).toFixed(places));
  return worked({
    text: `${told} The crew needs ${amount(wanted, unit)} from it.`,
    ask: {
      question: "At what pressure does the tip give that?",
      unit: bar,
      of: "none",
      decimals: us ? 1 : 2,
    },
    working: [use(pressureForFlowFormula, { ...tip, wanted: quantity(wanted, unit, "spray") })],
    mistakes: () => [
      slip("forgot the square", (rated * wanted) / flow),
      slip("square root for square", rated * Math.sqrt(wanted / flow)),
      slip("pressure upside down", rated * (flow / wanted) ** 2),
      slip("fraction upside down", (rated * flow) / wanted),
    ],
  });
};

/** The figures that the levels share. */
const activeFigures = ({ draw, us }: PoseInput) => {
  const liquid = us ? draw.pick([2, 3, 3.8, 4]) : draw.pick([240, 360, 400, 480]);
  const percent = draw.pick([25, 40, 50, 75, 80]);
  const target = us ? draw.step(0.5, 2, 0.25) : draw.step(0.4, 2, 0.2);
  const acres = us ? draw.step(0.5, 4, 0.5) : draw.step(0.2, 2, 0.2);
  const perArea = us ? "lb/acre" : "kg/ha";
  const land = us ? "acre" : "ha";
  const active = quantity(target, perArea, "ai");
  const spot = openGround(draw);
  const want = `A treatment of ${spot} takes ${amountOf(target, perArea, "active ingredient")}.`;
  return { liquid, percent, target, acres, perArea, land, active, want } as const;
};

const powderProblem = (input: PoseInput): Posed => {
  const { percent, target, perArea, active, want } = activeFigures(input);
  return worked({
    text: `${want} The product is a wettable powder with ${percent} % active ingredient.`,
    ask: { question: "What is the rate of product?", unit: perArea, of: "product", decimals: 2 },
    working: [use(dryProductForActiveFormula, { active, content: quantity(percent, "% w/w", "ai/product") })],
    mistakes: () => [
      slip("multiplied by the percentage", (target * percent) / 100),
      slip("product for nutrient", target),
      slip("percentage taken off", target * (1 + (100 - percent) / 100)),
      slip("decimal point one place off", (target * 10) / percent),
    ],
  });
};

const liquidActiveProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { liquid, target, acres, land, active, want } = activeFigures(input);
  const unit = us ? "fl oz" : "L";
  const strength = us ? "lb/gal" : "g/L";
  const perArea = us ? "fl oz/acre" : "L/ha";
  const each = (target / liquid) * (us ? 128 : 1000);
  const rate = use(
    liquidProductForActiveFormula,
    { active, content: quantity(liquid, strength, "ai/product") },
    perArea,
  );
  const whole = level === 3;
  const scale = whole ? acres : 1;
  const grams = us ? 1 : 1000;
  return worked({
    text:
      `${want} The product is a liquid with ${amountOf(liquid, strength, "active ingredient")}.` +
      (whole ? ` The area is ${amount(acres, land)}.` : ""),
    ask: {
      question: whole ? "How much product does the whole area take?" : "What is the rate of product?",
      unit: whole ? unit : perArea,
      of: "product",
      decimals: us ? 1 : 2,
    },
    working: whole
      ? [rate, use(liquidForAreaFormula, { rate: fromStep(1), area: quantity(acres, land) })]
      : [rate],
    mistakes: () => [
      ...(us
        ? [
            slip("ounce for fluid ounce", (target / liquid) * 16 * scale),
            slip("fluid ounces in a quart", (target / liquid) * 32 * scale),
          ]
        : [slip("product for nutrient", target * scale)]),
      slip(
        "multiplied by the strength",
        us ? target * liquid * 128 * scale : (target * liquid * scale) / grams,
      ),
      slip("fraction upside down", us ? (liquid / target) * 128 * scale : (liquid / target / grams) * scale),
      ...(whole ? [slip("one unit of area only", each), slip("divided by the area", each / acres)] : []),
    ],
  });
};

/** Product that brings so much active ingredient. */
export const activeProblem = (input: PoseInput): Posed =>
  input.level === 1 ? powderProblem(input) : liquidActiveProblem(input);
