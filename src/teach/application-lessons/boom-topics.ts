import { quantity } from "../../quantity/index.js";
import { boomWidthFormula } from "../application/spray-boom.js";
import { calibrationByRefillLawnFormula } from "../application/spray-nozzle.js";
import { applicationVolumeFormula, travelSpeedFormula } from "../application/spray-volume.js";
import { rectangleAreaFormula } from "../ground/site-shapes.js";
import { amount, slip } from "../topics/figures.js";
import { place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const volumeRate = (us: boolean): "gal/acre" | "L/ha" => (us ? "gal/acre" : "L/ha");
const flowUnit = (us: boolean): "gal/min" | "L/min" => (us ? "gal/min" : "L/min");
const speedUnit = (us: boolean): "mi/h" | "km/h" => (us ? "mi/h" : "km/h");
const asked = (us: boolean) =>
  ({
    question: "What is the application volume?",
    unit: volumeRate(us),
    of: "spray",
    decimals: us ? 1 : 0,
  }) as const;

/** One nozzle without a boom, beside a boom whose spacing has nothing to do with it. */
const boomlessProblem = ({ draw, us }: PoseInput): Posed => {
  const flow = us ? draw.step(2, 6, 0.25) : draw.step(8, 24, 1);
  const speed = us ? draw.step(3, 5, 0.5) : draw.step(5, 8, 0.5);
  const swath = us ? draw.step(12, 24, 1) : draw.step(4, 8, 0.5);
  const spacing = us ? draw.pick([15, 20, 30]) : draw.pick([40, 50, 75]);
  const length = us ? "ft" : "m";
  const small = us ? 12 : 100;
  return worked({
    text: `A boomless nozzle for ${place(draw)} puts out ${amount(flow, flowUnit(us))} and covers a swath of ${amount(swath, length)} at ${amount(speed, speedUnit(us))}. The nozzles of the boom that it replaces are ${amount(spacing, us ? "in" : "cm")} apart.`,
    ask: asked(us),
    working: [
      use(applicationVolumeFormula, {
        flow: quantity(flow, flowUnit(us), "spray"),
        speed: quantity(speed, speedUnit(us)),
        width: quantity(swath, length),
      }),
    ],
    mistakes: (answer) => [
      slip("swath for spacing", (answer * swath * small) / spacing),
      slip(us ? "feet for inches" : "meters for centimeters", us ? answer * 12 : answer * 100),
      slip("forgot the swath", answer * swath),
      slip("speed the wrong way", answer * speed * speed),
      slip("minutes for hours", answer / 60),
    ],
    within: us ? [10, 120] : [100, 1200],
  });
};

const wholeBoomProblem = ({ draw, us }: PoseInput): Posed => {
  const nozzles = draw.int(6, 14);
  const flow = us ? draw.step(2, 8, 0.2) : draw.step(8, 30, 0.5);
  const speed = us ? draw.step(3, 5, 0.5) : draw.step(5, 8, 0.5);
  const spacing = us ? draw.pick([15, 20, 30]) : draw.pick([40, 50, 75]);
  return worked({
    text: `The flow meter of a boom sprayer on ${place(draw)} shows ${amount(flow, flowUnit(us))} for all nozzles together. There are ${nozzles} nozzles, ${amount(spacing, us ? "in" : "cm")} apart, and the sprayer runs at ${amount(speed, speedUnit(us))}.`,
    ask: asked(us),
    working: [
      use(boomWidthFormula, {
        nozzles: quantity(nozzles, "count"),
        spacing: quantity(spacing, us ? "in" : "cm"),
      }),
      use(applicationVolumeFormula, {
        flow: quantity(flow, flowUnit(us), "spray"),
        speed: quantity(speed, speedUnit(us)),
        width: fromStep(1),
      }),
    ],
    mistakes: (answer) => [
      slip("swath for spacing", answer * nozzles),
      slip("divided by the number of nozzles", answer / nozzles),
      slip(us ? "feet for inches" : "meters for centimeters", us ? answer / 12 : answer / 100),
      slip("speed the wrong way", answer * speed * speed),
      slip("minutes for hours", answer / 60),
    ],
    within: us ? [10, 120] : [100, 1200],
  });
};

/** The figures that the levels share. */
const gunFigures = ({ draw, us }: PoseInput) => {
  const flow = us ? draw.step(1, 3, 0.1) : draw.step(4, 12, 0.5);
  const seconds = draw.step(45, 120, 5);
  const spray = total({
    title: "Spray put out",
    equation: "V = q * t",
    parts: { q: ["flow", flow, flowUnit(us)], t: ["time", seconds, "s", "min"] },
    unit: us ? "gal" : "L",
    of: "spray",
  });
  return { flow, seconds, spray } as const;
};

const timedProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { flow, seconds, spray } = gunFigures(input);
  return worked({
    text: `A hand gun puts out ${amount(flow, flowUnit(us))}. At a steady walk it takes ${amount(seconds, "s")} to spray ${us ? "1,000 sq ft" : "100 m²"} of ${place(draw)}.`,
    ask: {
      question: `How much spray does ${us ? "1,000 sq ft" : "100 m²"} get?`,
      unit: us ? "gal" : "L",
      of: "spray",
      decimals: 2,
    },
    working: [spray],
    mistakes: (answer) => [
      slip("seconds for minutes", answer * 60),
      slip("fraction upside down", (60 * flow) / seconds),
      slip("one minute only", flow),
      slip("minutes for hours", answer / 60),
      slip("decimal point one place off", answer * 10),
    ],
    within: us ? [0.75, 5] : [3, 20],
  });
};

const stripProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { flow, seconds, spray } = gunFigures(input);
  const length = us ? "ft" : "m";
  const long = us ? draw.step(30, 80, 5) : draw.step(10, 25, 1);
  const wide = us ? draw.step(15, 30, 5) : draw.step(5, 10, 1);
  const area = long * wide;
  const per = us ? 1000 : 100;
  return worked({
    text: `A hand gun puts out ${amount(flow, flowUnit(us))}. It takes ${amount(seconds, "s")} to spray a strip of ${place(draw)}, ${amount(long, length)} by ${amount(wide, length)}.`,
    ask: {
      question: "What is the application volume?",
      unit: us ? "gal/1000 ft2" : "L/100 m2",
      of: "spray",
      decimals: 2,
    },
    working: [
      spray,
      use(rectangleAreaFormula, { length: quantity(long, length), width: quantity(wide, length) }),
      use(calibrationByRefillLawnFormula, { refill: fromStep(1), area: fromStep(2) }),
    ],
    mistakes: (answer) => [
      slip("seconds for minutes", answer * 60),
      slip("forgot the width", answer * wide),
      slip("perimeter for area", (answer * area) / (2 * (long + wide))),
      slip("fraction upside down", area / per / ((answer * area) / per)),
      slip("forgot to divide by the unit of area", (answer * area) / per),
    ],
    within: us ? [0.5, 5] : [2, 20],
  });
};

/** The speed that the flow of the nozzles asks for. */
const speedProblem = ({ draw, us }: PoseInput): Posed => {
  const flow = us ? draw.step(0.2, 0.8, 0.05) : draw.step(0.8, 2.4, 0.1);
  const wanted = us ? draw.step(20, 60, 5) : draw.step(200, 500, 20);
  const spacing = us ? draw.pick([15, 20, 30]) : draw.pick([40, 50, 75]);
  const nozzles = draw.int(6, 14);
  return worked({
    text: `The nozzles of a boom put out ${amount(flow, flowUnit(us))} each. There are ${nozzles} nozzles, ${amount(spacing, us ? "in" : "cm")} apart. The crew wants to apply ${amount(wanted, volumeRate(us))} on ${place(draw)}.`,
    ask: { question: "At what speed does the sprayer run?", unit: speedUnit(us), of: "none", decimals: 1 },
    working: [
      use(travelSpeedFormula, {
        flow: quantity(flow, flowUnit(us), "spray"),
        applicationVolume: quantity(wanted, volumeRate(us), "spray"),
        width: quantity(spacing, us ? "in" : "cm"),
      }),
    ],
    mistakes: (answer) => [
      slip("counted every nozzle", answer * nozzles),
      slip("spacing for swath", answer / nozzles),
      slip(us ? "feet for inches" : "meters for centimeters", us ? answer / 12 : answer / 100),
      slip("fraction upside down", 1 / answer),
      slip("minutes for hours", answer / 60),
      slip("decimal point one place off", answer * 10),
    ],
    within: us ? [2, 7] : [3.5, 11],
  });
};

/** Booms as a whole, nozzles without one, and hand guns. */
export const boomTopics: readonly Topic[] = [
  {
    id: "spray/whole-boom",
    title: "Boomless nozzles and whole booms",
    levels: [1, 2],
    pose: (input) => (input.level === 1 ? boomlessProblem(input) : wholeBoomProblem(input)),
  },
  { id: "spray/speed-for-flow", title: "Speed for a flow", levels: [2], pose: speedProblem },
  {
    id: "spray/hand-gun",
    title: "Calibration of a hand gun",
    levels: [1, 2],
    pose: (input) => (input.level === 1 ? timedProblem(input) : stripProblem(input)),
  },
];
