import { quantity } from "../../quantity/index.js";
import {
  applicationVolume,
  calibrationByRefill,
  courseTime,
  groundSpeed,
  nozzleFlow,
} from "../../spray/index.js";
import { amount, num, slip, step } from "./figures.js";
import { place } from "./park.js";
import { activeProblem, pressureProblem } from "./spray-nozzle-topics.js";
import type { Posed, PoseInput, Topic } from "./topic.js";

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
  const constant = us ? 5940 : 60_000;
  const run = { speed: quantity(speed, speedUnit(us)), width: quantity(spacing, length) };
  const boom = `A boom sprayer on ${place(draw)} has ${nozzles} nozzles, ${amount(spacing, length)} apart, and runs at ${amount(speed, speedUnit(us))}.`;
  return { flow, speed, spacing, nozzles, wanted, constant, boom, run } as const;
};

const boomVolumeProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { flow, speed, spacing, nozzles, constant, boom, run } = volumeFigures(input);
  const volume = applicationVolume({ flow: quantity(flow, flowUnit(us), "spray"), ...run }).in(
    volumeRate(us),
  );
  return {
    text: `${boom} Each nozzle puts out ${amount(flow, flowUnit(us))}.`,
    ask: {
      question: "What is the application volume?",
      unit: volumeRate(us),
      of: "spray",
      decimals: us ? 1 : 0,
    },
    answer: volume,
    steps: [
      step(
        "Application volume",
        `${num(constant)} × ${num(flow)} ÷ (${num(speed)} × ${spacing})`,
        volume,
        volumeRate(us),
      ),
    ],
    mistakes: [
      slip("counted every nozzle", volume * nozzles),
      slip("spacing for swath", volume / nozzles),
      slip(us ? "feet for inches" : "meters for centimeters", us ? volume / 12 : volume / 100),
      slip("speed the wrong way", volume * speed * speed),
    ],
    within: us ? [10, 120] : [100, 1200],
  };
};

const boomFlowProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { speed, spacing, nozzles, wanted, constant, boom, run } = volumeFigures(input);
  const each = nozzleFlow({ applicationVolume: quantity(wanted, volumeRate(us), "spray"), ...run }).in(
    flowUnit(us),
  );
  const whole = each * nozzles;
  const both = level === 3;
  const answer = both ? whole : each;
  const eachStep = step(
    "Flow of one nozzle",
    `${num(wanted)} × ${num(speed)} × ${spacing} ÷ ${num(constant)}`,
    each,
    flowUnit(us),
  );
  return {
    text: `${boom} The crew wants to apply ${amount(wanted, volumeRate(us))}.`,
    ask: {
      question: both ? "What flow must the whole boom put out?" : "What flow must each nozzle put out?",
      unit: flowUnit(us),
      of: "spray",
      decimals: both ? 1 : 2,
    },
    answer,
    steps: both
      ? [
          eachStep,
          step(
            "Whole boom",
            `${num(wanted)} × ${num(speed)} × ${spacing} ÷ ${num(constant)} × ${nozzles}`,
            whole,
            flowUnit(us),
          ),
        ]
      : [eachStep],
    mistakes: [
      both ? slip("forgot the number of nozzles", each) : slip("spacing for swath", whole),
      slip("divided by the number of nozzles", each / nozzles),
      slip(us ? "feet for inches" : "meters for centimeters", us ? answer * 12 : answer / 100),
      slip("seconds for minutes", answer / 60),
      slip("speed the wrong way", answer / speed / speed),
    ],
  };
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
  const ground = place(draw);
  const factor = us ? "60 ÷ (88 × T)" : "3.6 ÷ T";
  const sum = (distance: number, time: number): string =>
    factor.replace("T", String(time)).replace(/^/, `${distance} × `);
  const c = quantity(course, length);
  const up = groundSpeed({ course: c, times: [quantity(slow, "s")] }).in(speedUnit(us));
  const down = groundSpeed({ course: c, times: [quantity(seconds, "s")] }).in(speedUnit(us));
  const unit = speedUnit(us);
  return { course, seconds, slow, length, ground, sum, c, up, down, unit } as const;
};

const runSpeedProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { course, seconds, length, ground, sum, down, unit } = speedFigures(input);
  return {
    text: `A sprayer runs over a marked course of ${amount(course, length)} on ${ground} in ${amount(seconds, "s")}.`,
    ask: { question: "What is its speed?", unit, of: "none", decimals: 1 },
    answer: down,
    steps: [step("Speed", sum(course, seconds), down, unit)],
    mistakes: [
      slip("forgot to convert", course / seconds),
      slip("time upside down", 1 / down),
      slip("units upside down", us ? ((course / seconds) * 88) / 60 : course / seconds / 3.6),
      slip(us ? "yards for feet" : "minutes for hours", us ? down * 3 : (down / 60) * 100),
    ],
  };
};

const twoRunsProblem = (input: PoseInput): Posed => {
  const { course, seconds, slow, length, ground, sum, c, up, down, unit } = speedFigures(input);
  const mean = groundSpeed({ course: c, times: [quantity(slow, "s"), quantity(seconds, "s")] }).in(unit);
  return {
    text: `A spreader runs over a marked course of ${amount(course, length)} on a slope of ${ground}: ${amount(slow, "s")} uphill, ${amount(seconds, "s")} back downhill.`,
    ask: { question: "What is its mean speed over both runs?", unit, of: "none", decimals: 2 },
    answer: mean,
    steps: [
      step("Distance of both runs", `2 × ${course}`, 2 * course, length),
      step("Time of both runs", `${slow} + ${seconds}`, slow + seconds, "s"),
      step("Mean speed", sum(2 * course, slow + seconds), mean, unit),
    ],
    mistakes: [
      slip("averaged speeds wrongly", (up + down) / 2),
      slip("one run only", up),
      slip("one run only", down),
      slip("distance of one run, time of both", mean / 2),
      slip("forgot to convert", (2 * course) / (slow + seconds)),
    ],
  };
};

const walkTimeProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { course, length, ground, c, unit } = speedFigures(input);
  const wanted = us ? draw.step(3, 5, 0.5) : draw.step(4, 8, 0.5);
  const time = courseTime({ course: c, speed: quantity(wanted, unit) }).in("s");
  return {
    text: `A walking operator has to keep to ${amount(wanted, unit)} on ${ground}. A course of ${amount(course, length)} is marked to set the pace with a stopwatch.`,
    ask: { question: "How long must the walk over the course take?", unit: "s", of: "none", decimals: 1 },
    answer: time,
    steps: [
      step(
        "Time",
        us ? `${course} × 60 ÷ (88 × ${num(wanted)})` : `${course} × 3.6 ÷ ${num(wanted)}`,
        time,
        "s",
      ),
    ],
    mistakes: [
      slip("forgot to convert", course / wanted),
      slip("units upside down", us ? (course * 88) / (60 * wanted) : course / (3.6 * wanted)),
      slip("speed the wrong way", us ? (course * wanted * 60) / 88 : course * wanted * 3.6),
    ],
  };
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
  const perThousand = us ? "gal/1000 ft2" : "L/100 m2";
  const rate = calibrationByRefill({
    refills: [quantity(refill, volume, "spray")],
    course: quantity(course * passes, length),
    width: quantity(width, length),
  }).rate;
  const unit = level === 1 ? perThousand : volumeRate(us);
  const answer = rate.in(unit);
  const area = course * width * passes;
  const areaStep = step(
    "Ground covered",
    passes > 1 ? `${course} × ${width} × ${passes}` : `${course} × ${width}`,
    area,
    us ? "ft2" : "m2",
  );
  const per = level === 1 ? (us ? 1000 : 100) : us ? 43_560 : 10_000;
  return {
    text:
      `A sprayer with a full tank of water covers a strip of ${place(draw)}, ${amount(course, length)} long and ${amount(width, length)} wide (its boom)` +
      `${passes > 1 ? `, and drives over it ${passes} times` : ""}. It takes ${amount(refill, volume)} to fill the tank up again.`,
    ask: {
      question: "What is the application volume of one pass?",
      unit,
      of: "spray",
      decimals: level === 1 ? 2 : us ? 1 : 0,
    },
    answer,
    steps: [
      areaStep,
      step("Application volume", `${num(refill)} × ${num(per)} ÷ ${num(area)}`, answer, unit),
    ],
    mistakes: [
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
  };
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
