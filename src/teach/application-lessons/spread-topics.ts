import { quantity } from "../../quantity/index.js";
import { spreadRateFormula, targetCatchFormula, testAreaFormula } from "../application/spread.js";
import { passesForSideFormula, passRateFormula } from "../application/spread-passes.js";
import { productForAreaFormula } from "../application/tank-amounts.js";
import { countDown, countUp } from "../expression/expression.js";
import { amount, amountOf, slip } from "../topics/figures.js";
import { openGround } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

/** The figures that the levels share. */
const calibrationFigures = ({ draw, us, level }: PoseInput) => {
  const swath = us ? draw.pick([5, 6, 8, 10, 12]) : draw.pick([2, 2.5, 3, 4]);
  const distance = us ? draw.step(50, 200, 10) : draw.step(20, 80, 5);
  const mass = us ? draw.step(1.5, 9, 0.25) : draw.step(0.6, 4, 0.1);
  const target = us ? draw.step(2.5, 6, 0.25) : draw.step(120, 300, 10);
  const overlap = us ? draw.pick([1, 2, 3]) : draw.pick([0.5, 1]);
  const passes = level === 2 ? 2 : 1;
  const length = us ? "ft" : "m";
  const unit = us ? "lb" : "kg";
  const rateUnit = us ? "lb/1000 ft2" : "kg/ha";
  const per = us ? 1000 : 10_000;
  const spot = openGround(draw);
  const strip = use(testAreaFormula, {
    distance: quantity(distance, length),
    swath: quantity(swath, length),
  });
  return {
    swath,
    distance,
    mass,
    target,
    overlap,
    passes,
    length,
    unit,
    rateUnit,
    per,
    spot,
    strip,
  } as const;
};

const catchTargetProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { swath, distance, target, overlap, length, unit, rateUnit, spot, strip } = calibrationFigures(input);
  return worked({
    text:
      `A spreader for ${spot} has to be set to ${amountOf(target, rateUnit, "product")}. It throws ${amount(swath + overlap, length)} wide; ` +
      `neighboring passes overlap, and the effective swath is ${amount(swath, length)}. The test run is ${amount(distance, length)} long.`,
    ask: {
      question: "How much product must the hopper lose on the test run?",
      unit,
      of: "product",
      decimals: 2,
    },
    working: [
      strip,
      use(targetCatchFormula, {
        rate: quantity(target, rateUnit, "product"),
        area: fromStep(1),
        passes: quantity(1, "count"),
      }),
    ],
    mistakes: (answer) => [
      slip("width without overlap", (answer * (swath + overlap)) / swath),
      slip("overlap added", (answer * (swath + 2 * overlap)) / swath),
      slip("one unit of area only", target),
      slip("forgot the width", answer / swath),
      ...(us ? [slip("acre for 1,000 sq ft", answer / 43.56)] : []),
    ],
  });
};

const spreadRateProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { swath, distance, mass, passes, length, unit, rateUnit, per, spot, strip } =
    calibrationFigures(input);
  return worked({
    text:
      `A spreader covers a test strip on ${spot}, ${amount(distance, length)} long, with an effective swath of ${amount(swath, length)}` +
      `${passes === 2 ? ", and runs over the strip twice" : ""}. The hopper is ${amount(mass, unit)} lighter afterward.`,
    ask: {
      question: passes === 2 ? "What is the rate of one pass?" : "What is the rate of product?",
      unit: rateUnit,
      of: "product",
      decimals: us ? 2 : 0,
    },
    working: [
      strip,
      use(spreadRateFormula, {
        amount: quantity(mass, unit, "product"),
        area: fromStep(1),
        passes: quantity(passes, "count"),
      }),
    ],
    mistakes: (answer) => [
      ...(passes === 2 ? [slip("forgot passes", answer * 2), slip("halved twice", answer / 2)] : []),
      slip("perimeter for area", (mass * per) / (2 * (swath + distance)) / passes),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? answer * 43.56 : answer / 100),
      slip("forgot the length", answer * distance),
      slip("forgot the width", answer * swath),
    ],
    within: us ? [1, 10] : [50, 500],
  });
};

const calibrationProblem = (input: PoseInput): Posed =>
  input.level === 3 ? catchTargetProblem(input) : spreadRateProblem(input);

/** The figures that the levels share. */
const passFigures = ({ draw, us }: PoseInput) => {
  const length = us ? "ft" : "m";
  const side = us ? draw.int(90, 260) : draw.int(28, 80);
  const swath = us ? draw.pick([6, 8, 10, 12]) : draw.pick([2, 3, 4]);
  const overlap = us ? draw.pick([1, 2]) : draw.pick([0.5, 1]);
  const rate = us ? draw.step(3, 6, 0.25) : draw.step(140, 300, 20);
  const area = us ? draw.step(4000, 24_000, 500) : draw.step(400, 2400, 50);
  const spot = openGround(draw);
  return { length, side, swath, overlap, rate, area, spot } as const;
};

const halfRateProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { rate, area, spot } = passFigures(input);
  const rateUnit = us ? "lb/1000 ft2" : "kg/ha";
  const unit = us ? "lb" : "kg";
  return worked({
    text: `${spot.replace("the", "The")} covers ${amount(area, us ? "ft2" : "m2")} and gets ${amountOf(rate, rateUnit, "fertilizer")} in two passes at right angles, half the rate each time.`,
    ask: {
      question: "How much fertilizer goes into the hopper for one pass?",
      unit,
      of: "product",
      decimals: 1,
    },
    working: [
      use(passRateFormula, { rate: quantity(rate, rateUnit, "product"), passes: quantity(2, "count") }),
      use(productForAreaFormula, { rate: fromStep(1), area: quantity(area, us ? "ft2" : "m2") }),
    ],
    mistakes: (answer) => [
      slip("whole rate on each pass", answer * 2),
      slip("halved twice", answer / 2),
      slip("one unit of area only", rate / 2),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? answer / 43.56 : answer * 100),
    ],
  });
};

const passCountProblem = (input: PoseInput): Posed => {
  const { level } = input;
  const { length, side, swath, overlap, spot } = passFigures(input);
  const effective = level === 1 ? swath : swath - overlap;
  const thrown =
    level === 1
      ? `covers an effective swath of ${amount(swath, length)}`
      : `throws ${amount(swath, length)} wide, of which ${amount(overlap, length)} overlaps the pass before`;
  const narrower = total({
    title: "Effective swath",
    equation: "w = t - o",
    parts: { t: ["width thrown", swath, length], o: ["overlap", overlap, length] },
    unit: length,
  });
  const count = use(passesForSideFormula, {
    side: quantity(side, length),
    swath: level === 1 ? quantity(swath, length) : fromStep(1),
  });
  return worked({
    text: `${spot.replace("the", "The")} is ${amount(side, length)} wide. The spreader ${thrown}.`,
    ask: {
      question: "How many passes cover the whole width?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["pass", "passes"],
    },
    working: level === 1 ? [count] : [narrower, count],
    mistakes: (answer) => [
      slip("last strip left out", countDown(side / effective)),
      slip("one pass too many", answer + 1),
      ...(level === 2
        ? [
            slip("width without overlap", countUp(side / swath)),
            slip("overlap added", countUp(side / (swath + overlap))),
          ]
        : [slip("half the swath", countUp((2 * side) / swath)), slip("forgot the swath", side)]),
    ],
  });
};

const passProblem = (input: PoseInput): Posed =>
  input.level === 3 ? halfRateProblem(input) : passCountProblem(input);

/** What a spreader puts down, and in how many passes. */
export const spreadTopics: readonly Topic[] = [
  { id: "spread/calibration", title: "Spreader calibration", levels: [1, 2, 3], pose: calibrationProblem },
  { id: "spread/passes", title: "Passes and half rates", levels: [1, 2, 3], pose: passProblem },
];
