import { quantity } from "../../quantity/index.js";
import { calibrationByRefillFormula, calibrationByRefillLawnFormula } from "../application/spray-nozzle.js";
import {
  applicationVolumeFormula,
  courseTimeFormula,
  groundSpeedFormula,
  groundSpeedTwoRunsFormula,
  nozzleFlowFormula,
} from "../application/spray-volume.js";
import { rectangleAreaFormula } from "../ground/site-shapes.js";
import { amount, slip } from "../topics/figures.js";
import { openGround, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";
import { activeProblem, pressureProblem } from "./spray-nozzle-topics.js";

const speedUnit = (us: boolean): "mi/h" | "km/h" => (us ? "mi/h" : "km/h");
const volumeRate = (us: boolean): "gal/acre" | "L/ha" => (us ? "gal/acre" : "L/ha");
const flowUnit = (us: boolean): "gal/min" | "L/min" => (us ? "gal/min" : "L/min");

/** The figures that the levels share. */
const volumeFigures = ({ draw, us }: PoseInput) => {
  const flow = us ? draw.step(0.2, 0.8, 0.05) : draw.step(0.8, 2.4, 0.1);
  const speed = us ? draw.step(3, 5, 0.5) : draw.step(5, 8, 0.5);
  const spacing = us ? draw.pick([15, 20, 30]) : draw.pick([40, 50, 75]);
  const nozzles = draw.int(6, 14);
  const wanted = us ? draw.step(20, 60, 5) : draw.step(200, 500, 20);
  const length = us ? "in" : "cm";
  const run = { speed: quantity(speed, speedUnit(us)), width: quantity(spacing, length) };
  const boom = `A boom sprayer on ${place(draw)} has ${nozzles} nozzles, ${amount(spacing, length)} apart, and runs at ${amount(speed, speedUnit(us))}.`;
  return { flow, speed, spacing, nozzles, wanted, boom, run } as const;
};

const boomVolumeProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { flow, speed, nozzles, boom, run } = volumeFigures(input);
  return worked({
    text: `${boom} Each nozzle puts out ${amount(flow, flowUnit(us))}.`,
    ask: {
      question: "What is the application volume?",
      unit: volumeRate(us),
      of: "spray",
      decimals: us ? 1 : 0,
    },
    working: [use(applicationVolumeFormula, { flow: quantity(flow, flowUnit(us), "spray"), ...run })],
    mistakes: (answer) => [
      slip("counted every nozzle", answer * nozzles),
      slip("spacing for swath", answer / nozzles),
      slip(us ? "feet for inches" : "meters for centimeters", us ? answer / 12 : answer / 100),
      slip("speed the wrong way", answer * speed * speed),
    ],
    within: us ? [10, 120] : [100, 1200],
  });
};

const boomFlowProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { speed, nozzles, wanted, boom, run } = volumeFigures(input);
  const both = level === 3;
  const each = use(nozzleFlowFormula, {
    applicationVolume: quantity(wanted, volumeRate(us), "spray"),
    ...run,
  });
  const whole = total({
    title: "Flow of the whole boom",
    equation: "Q = n * q",
    parts: { n: ["nozzles", nozzles, "count"], q: ["flow of one nozzle", fromStep(1), flowUnit(us)] },
    unit: flowUnit(us),
  });
  return worked({
    text: `${boom} The crew wants to apply ${amount(wanted, volumeRate(us))}.`,
    ask: {
      question: both ? "What flow must the whole boom put out?" : "What flow must each nozzle put out?",
      unit: flowUnit(us),
      of: "spray",
      decimals: both ? 1 : 2,
    },
    working: both ? [each, whole] : [each],
    mistakes: (answer) => [
      both
        ? slip("forgot the number of nozzles", answer / nozzles)
        : slip("spacing for swath", answer * nozzles),
      slip("divided by the number of nozzles", both ? answer / nozzles / nozzles : answer / nozzles),
      slip(us ? "feet for inches" : "meters for centimeters", us ? answer * 12 : answer * 100),
      slip("seconds for minutes", answer / 60),
      slip("speed the wrong way", answer / speed / speed),
    ],
  });
};

const volumeProblem = (input: PoseInput): Posed =>
  input.level === 1 ? boomVolumeProblem(input) : boomFlowProblem(input);

/** The figures that the levels share. */
const speedFigures = ({ draw, us }: PoseInput) => {
  const course = us ? draw.pick([88, 100, 132, 150, 176, 200]) : draw.pick([25, 30, 40, 50, 60]);
  const seconds = us
    ? draw.int(Math.ceil(course / 7.3), Math.floor(course / 4.4))
    : draw.int(Math.ceil(course / 2.2), Math.floor(course / 1.3));
  const slow = draw.int(Math.round(seconds * 1.3), Math.round(seconds * 1.9));
  const length = us ? "ft" : "m";
  /** Feet a second as miles an hour, or meters a second as kilometers an hour. */
  const factor = us ? 60 / 88 : 3.6;
  const unit = speedUnit(us);
  return { course, seconds, slow, length, ground: openGround(draw), factor, unit } as const;
};

const runSpeedProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { course, seconds, length, ground, factor, unit } = speedFigures(input);
  return worked({
    text: `A sprayer runs over a marked course of ${amount(course, length)} on ${ground} in ${amount(seconds, "s")}.`,
    ask: { question: "What is its speed?", unit, of: "none", decimals: 1 },
    working: [use(groundSpeedFormula, { course: quantity(course, length), time: quantity(seconds, "s") })],
    mistakes: (answer) => [
      slip("forgot to convert", course / seconds),
      slip("time upside down", 1 / answer),
      slip("units upside down", course / seconds / factor),
      ...(us ? [slip("yards for feet", answer * 3)] : []),
    ],
  });
};

const twoRunsProblem = (input: PoseInput): Posed => {
  const { course, seconds, slow, length, ground, factor, unit } = speedFigures(input);
  const [up, down] = [(course / slow) * factor, (course / seconds) * factor];
  return worked({
    text: `A spreader runs over a marked course of ${amount(course, length)} on a slope beside ${ground}: ${amount(slow, "s")} uphill, ${amount(seconds, "s")} back downhill.`,
    ask: { question: "What is its average speed over both runs?", unit, of: "none", decimals: 2 },
    working: [
      use(groundSpeedTwoRunsFormula, {
        course: quantity(course, length),
        there: quantity(slow, "s"),
        back: quantity(seconds, "s"),
      }),
    ],
    mistakes: (answer) => [
      slip("averaged speeds wrongly", (up + down) / 2),
      slip("one run only", up),
      slip("one run only", down),
      slip("distance of one run, time of both", answer / 2),
      slip("forgot to convert", (2 * course) / (slow + seconds)),
    ],
  });
};

const walkTimeProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { course, length, ground, factor, unit } = speedFigures(input);
  const wanted = us ? draw.step(2, 3.5, 0.25) : draw.step(3, 5.5, 0.5);
  return worked({
    text: `A walking operator has to keep to ${amount(wanted, unit)} on ${ground}. A course of ${amount(course, length)} is marked to set the pace with a stopwatch.`,
    ask: { question: "How long must it take to walk the course?", unit: "s", of: "none", decimals: 1 },
    working: [use(courseTimeFormula, { course: quantity(course, length), speed: quantity(wanted, unit) })],
    mistakes: () => [
      slip("forgot to convert", course / wanted),
      slip("units upside down", course / (factor * wanted)),
      slip("multiplied by the speed", course * wanted * factor),
    ],
  });
};

const speedProblem = (input: PoseInput): Posed =>
  input.level === 1
    ? runSpeedProblem(input)
    : input.level === 2
      ? twoRunsProblem(input)
      : walkTimeProblem(input);

const refillProblem = ({ draw, us, level }: PoseInput): Posed => {
  const width = us ? draw.pick([10, 12, 15, 18, 20]) : draw.pick([3, 4, 5, 6]);
  const course = us ? draw.step(200, 600, 20) : draw.step(60, 180, 10);
  const refill = us ? draw.step(2, 9, 0.5) : draw.step(6, 40, 1);
  const passes = level === 3 ? draw.pick([2, 3]) : 1;
  const length = us ? "ft" : "m";
  const volume = us ? "gal" : "L";
  const unit = level === 1 ? (us ? "gal/1000 ft2" : "L/100 m2") : volumeRate(us);
  const per = level === 1 ? (us ? 1000 : 100) : us ? 43_560 : 10_000;
  const driven = total({
    title: "Distance driven",
    equation: "a = n * c",
    parts: { n: ["times", passes, "count"], c: ["course", course, length] },
    unit: length,
  });
  const ground = use(rectangleAreaFormula, {
    length: passes > 1 ? fromStep(1) : quantity(course, length),
    width: quantity(width, length),
  });
  const rate = (step: number) =>
    use(level === 1 ? calibrationByRefillLawnFormula : calibrationByRefillFormula, {
      refill: quantity(refill, volume, "spray"),
      area: fromStep(step),
    });
  return worked({
    text:
      `A sprayer with a full tank of water covers a strip of ${openGround(draw)}, ${amount(course, length)} long and ${amount(width, length)} wide (the width of its boom)` +
      `${passes > 1 ? `, and goes over it ${passes} times` : ""}. It takes ${amount(refill, volume)} to fill the tank again.`,
    ask: {
      question: "What is the application volume of one pass?",
      unit,
      of: "spray",
      decimals: level === 1 ? 2 : us ? 1 : 0,
    },
    working: passes > 1 ? [driven, ground, rate(2)] : [ground, rate(1)],
    mistakes: (answer) => [
      ...(passes > 1
        ? [
            slip("forgot passes", answer * passes),
            slip("counted a pass twice", (answer * passes) / (passes + 1)),
          ]
        : []),
      slip(
        us ? "acre for 1,000 sq ft" : "hectare for 100 m²",
        level === 1 ? answer * (us ? 43.56 : 100) : answer / (us ? 43.56 : 100),
      ),
      slip("perimeter for area", (refill * per) / (2 * (course + width))),
      slip("forgot the width", (refill * per) / (course * passes)),
      slip("forgot the length", (refill * per) / (width * passes)),
    ],
    within: level === 1 ? (us ? [0.25, 3] : [1, 12]) : us ? [10, 120] : [100, 1200],
  });
};

/** What a sprayer puts down, and with which flow, speed and pressure. */
export const sprayTopics: readonly Topic[] = [
  {
    id: "spray/application-volume",
    title: "Application volume and nozzle flow",
    levels: [1, 2, 3],
    pose: volumeProblem,
  },
  { id: "spray/speed", title: "Ground speed", levels: [1, 2, 3], pose: speedProblem },
  { id: "spray/refill", title: "Calibration by refilling", levels: [1, 2, 3], pose: refillProblem },
  { id: "spray/pressure", title: "Pressure and flow", levels: [2, 3], pose: pressureProblem },
  {
    id: "spray/active-ingredient",
    title: "Product for active ingredient",
    levels: [1, 2, 3],
    pose: activeProblem,
  },
];
