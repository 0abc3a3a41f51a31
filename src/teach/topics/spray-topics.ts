import { quantity } from "../../quantity/index.js";
import {
  applicationVolume,
  calibrationByRefill,
  courseTime,
  flowAtPressure,
  groundSpeed,
  nozzleFlow,
  pressureForFlow,
  productForActive,
} from "../../spray/index.js";
import { amount, num, slip, step } from "./figures.js";
import { place } from "./park.js";
import type { Posed, PoseInput, Topic } from "./topic.js";

const speedUnit = (us: boolean): "mi/h" | "km/h" => (us ? "mi/h" : "km/h");
const volumeRate = (us: boolean): "gal/acre" | "L/ha" => (us ? "gal/acre" : "L/ha");
const flowUnit = (us: boolean): "gal/min" | "L/min" => (us ? "gal/min" : "L/min");

const volumeProblem = ({ draw, us, level }: PoseInput): Posed => {
  const flow = us ? draw.step(0.2, 0.8, 0.05) : draw.step(0.8, 2.4, 0.1);
  const speed = us ? draw.step(3, 5, 0.5) : draw.step(5, 8, 0.5);
  const spacing = us ? draw.pick([15, 20, 30]) : draw.pick([40, 50, 75]);
  const nozzles = draw.int(6, 14);
  const wanted = us ? draw.step(20, 60, 5) : draw.step(200, 500, 20);
  const length = us ? "in" : "cm";
  const constant = us ? 5940 : 60_000;
  const run = { speed: quantity(speed, speedUnit(us)), width: quantity(spacing, length) };
  const boom = `A boom sprayer on ${place(draw)} has ${nozzles} nozzles, ${amount(spacing, length)} apart, and runs at ${amount(speed, speedUnit(us))}.`;
  if (level === 1) {
    const volume = applicationVolume({ flow: quantity(flow, flowUnit(us), "spray"), ...run }).in(volumeRate(us));
    return {
      text: `${boom} Each nozzle puts out ${amount(flow, flowUnit(us))}.`,
      ask: { question: "What is the application volume?", unit: volumeRate(us), of: "spray", decimals: us ? 1 : 0 },
      answer: volume,
      steps: [step("Application volume", `${num(constant)} × ${num(flow)} ÷ (${num(speed)} × ${spacing})`, volume, volumeRate(us))],
      mistakes: [
        slip("swath for spacing", volume * nozzles),
        slip("spacing for swath", volume / nozzles),
        slip(us ? "feet for inches" : "meters for centimeters", us ? volume / 12 : volume / 100),
        slip("speed the wrong way", volume * speed * speed),
      ],
    };
  }
  const each = nozzleFlow({ applicationVolume: quantity(wanted, volumeRate(us), "spray"), ...run }).in(flowUnit(us));
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
    steps: both ? [eachStep, step("Whole boom", `${num(wanted)} × ${num(speed)} × ${spacing} ÷ ${num(constant)} × ${nozzles}`, whole, flowUnit(us))] : [eachStep],
    mistakes: [
      both ? slip("forgot the number of nozzles", each) : slip("spacing for swath", whole),
      slip("divided by the number of nozzles", each / nozzles),
      slip(us ? "feet for inches" : "meters for centimeters", us ? answer * 12 : answer / 100),
      slip("seconds for minutes", answer / 60),
      slip("speed the wrong way", answer / speed / speed),
    ],
  };
};

const speedProblem = ({ draw, us, level }: PoseInput): Posed => {
  const course = us ? draw.pick([88, 100, 132, 150, 176, 200]) : draw.pick([25, 30, 40, 50, 60]);
  const seconds = us ? draw.int(Math.ceil(course / 7.3), Math.floor(course / 4.4)) : draw.int(Math.ceil(course / 2.2), Math.floor(course / 1.3));
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
  if (level === 1) {
    return {
      text: `A sprayer runs over a marked course of ${amount(course, length)} on ${ground} in ${amount(seconds, "s")}.`,
      ask: { question: "What is its speed?", unit, of: "none", decimals: 1 },
      answer: down,
      steps: [step("Speed", sum(course, seconds), down, unit)],
      mistakes: [
        slip("forgot to convert", course / seconds),
        slip("time upside down", 1 / down),
        slip("units upside down", us ? ((course / seconds) * 88) / 60 : course / seconds / 3.6),
        slip(us ? "yards for feet" : "minutes for hours", us ? down * 3 : down / 60 * 100),
      ],
    };
  }
  if (level === 2) {
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
  }
  const wanted = us ? draw.step(3, 5, 0.5) : draw.step(4, 8, 0.5);
  const time = courseTime({ course: c, speed: quantity(wanted, unit) }).in("s");
  return {
    text: `A walking operator has to keep to ${amount(wanted, unit)} on ${ground}. A course of ${amount(course, length)} is marked to set the pace with a stopwatch.`,
    ask: { question: "How long must the walk over the course take?", unit: "s", of: "none", decimals: 1 },
    answer: time,
    steps: [step("Time", us ? `${course} × 60 ÷ (88 × ${num(wanted)})` : `${course} × 3.6 ÷ ${num(wanted)}`, time, "s")],
    mistakes: [
      slip("forgot to convert", course / wanted),
      slip("units upside down", us ? (course * 88) / (60 * wanted) : course / (3.6 * wanted)),
      slip("speed the wrong way", us ? (course * wanted * 60) / 88 : course * wanted * 3.6),
    ],
  };
};

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
    ask: { question: "What is the application volume of one pass?", unit, of: "spray", decimals: level === 1 ? 2 : us ? 1 : 0 },
    answer,
    steps: [areaStep, step("Application volume", `${num(refill)} × ${num(per)} ÷ ${num(area)}`, answer, unit)],
    mistakes: [
      ...(passes > 1 ? [slip("forgot passes", answer * passes), slip("counted a pass twice", (answer * passes) / (passes + 1))] : []),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", level === 1 ? answer * (us ? 43.56 : 100) : answer / (us ? 43.56 : 100)),
      slip("perimeter for area", (refill * per) / (2 * (course + width))),
      slip("forgot the width", (refill * per) / (course * passes)),
      slip("forgot the length", (refill * per) / (width * passes)),
    ],
  };
};

const pressureProblem = ({ draw, us, level }: PoseInput): Posed => {
  const rated = us ? 40 : draw.pick([2, 3]);
  const flow = us ? draw.step(0.2, 0.8, 0.1) : draw.step(0.8, 2.4, 0.2);
  const other = us ? draw.pick([20, 25, 30, 50, 60]) : draw.pick([1, 1.5, 2.5, 4]);
  const bar = us ? "psi" : "bar";
  const unit = flowUnit(us);
  const tip = {
    flow: quantity(flow, unit, "water"),
    pressure: quantity(rated, bar),
    lowest: quantity(us ? 15 : 1, bar),
    highest: quantity(us ? 90 : 6, bar),
  };
  const told = `A tip on the boom puts out ${amount(flow, unit)} at ${amount(rated, bar)}.`;
  const found = flowAtPressure(tip, quantity(other, bar)).in(unit);
  if (level === 2) {
    return {
      text: `${told} The gauge now reads ${amount(other, bar)}.`,
      ask: { question: "What does the tip put out?", unit, of: "water", decimals: us ? 3 : 2 },
      answer: found,
      steps: [step("Flow", `${num(flow)} × sqrt(${num(other)} ÷ ${num(rated)})`, found, unit)],
      mistakes: [
        slip("pressure in proportion", (flow * other) / rated),
        slip("pressure upside down", flow * Math.sqrt(rated / other)),
        slip("pressure squared", flow * (other / rated) ** 2),
        slip("pressure the wrong way", (flow * rated) / other),
      ],
    };
  }
  const places = us ? 2 : 1;
  const wanted = Number((flow * draw.pick([0.75, 0.8, 0.85, 0.9, 1.1, 1.2, 1.25])).toFixed(places));
  const needed = pressureForFlow(tip, quantity(wanted, unit, "water")).in(bar);
  return {
    text: `${told} The crew needs ${amount(wanted, unit)} from it.`,
    ask: { question: "At which pressure does the tip give that?", unit: bar, of: "none", decimals: us ? 1 : 2 },
    answer: needed,
    steps: [step("Pressure", `${num(rated)} × (${num(wanted)} ÷ ${num(flow)}) × (${num(wanted)} ÷ ${num(flow)})`, needed, bar)],
    mistakes: [
      slip("forgot the square", (rated * wanted) / flow),
      slip("square root for square", rated * Math.sqrt(wanted / flow)),
      slip("pressure upside down", rated * (flow / wanted) ** 2),
      slip("fraction upside down", (rated * flow) / wanted),
    ],
  };
};

const activeProblem = ({ draw, us, level }: PoseInput): Posed => {
  const liquid = us ? draw.pick([2, 3, 3.8, 4]) : draw.pick([240, 360, 400, 480]);
  const percent = draw.pick([25, 40, 50, 75, 80]);
  const target = us ? draw.step(0.5, 2, 0.25) : draw.step(0.4, 2, 0.2);
  const acres = us ? draw.step(0.5, 4, 0.5) : draw.step(0.2, 2, 0.2);
  const perArea = us ? "lb/acre" : "kg/ha";
  const land = us ? "acre" : "ha";
  const active = quantity(target, perArea, "ai");
  const spot = place(draw);
  const want = `A treatment of ${spot} takes ${amount(target, perArea)} of active ingredient.`;
  if (level === 1) {
    const content = quantity(percent, "% w/w", "ai/product:a");
    const rate = productForActive({ active, content }).in(perArea);
    return {
      text: `${want} The product is a wettable powder with ${percent} % active ingredient.`,
      ask: { question: "What is the rate of product?", unit: perArea, of: "product", decimals: 2 },
      answer: rate,
      steps: [step("Product rate", `${num(target)} × 100 ÷ ${percent}`, rate, perArea)],
      mistakes: [
        slip("multiplied by the percentage", (target * percent) / 100),
        slip("product for nutrient", target),
        slip("percentage taken off", target * (1 + (100 - percent) / 100)),
        slip("percentage as a whole number", (target * 10) / percent),
      ],
    };
  }
  const unit = us ? "fl oz" : "L";
  const strength = us ? "lb/gal" : "g/L";
  const content = quantity(liquid, strength, "ai/product:a");
  const rate = productForActive({ active, content });
  const each = us ? rate.in("fl oz/acre") : rate.in("L/ha");
  const total = rate.times(quantity(acres, land)).in(unit);
  const sum = us ? `${num(target)} ÷ ${num(liquid)} × 128` : `${num(target)} × 1,000 ÷ ${num(liquid)}`;
  const whole = level === 3;
  const scale = whole ? acres : 1;
  const grams = us ? 1 : 1000;
  return {
    text:
      `${want} The product is a liquid with ${amount(liquid, strength)} of active ingredient.` +
      (whole ? ` The area has ${amount(acres, land)}.` : ""),
    ask: {
      question: whole ? "How much product does the whole area take?" : "What is the rate of product?",
      unit: whole ? unit : `${unit}/${land}`,
      of: "product",
      decimals: us ? 1 : 2,
    },
    answer: whole ? total : each,
    steps: [
      step("Product rate", sum, each, `${unit}/${land}`),
      ...(whole ? [step("Whole area", `${sum} × ${num(acres)}`, total, unit)] : []),
    ],
    mistakes: [
      ...(us
        ? [
            slip("ounce for fluid ounce", (target / liquid) * 16 * scale),
            slip("fluid ounces in a quart", (target / liquid) * 32 * scale),
          ]
        : [slip("product for nutrient", target * scale)]),
      slip("density upside down", us ? target * liquid * 128 * scale : (target * liquid * scale) / grams),
      slip("fraction upside down", us ? (liquid / target) * 128 * scale : (liquid / target / grams) * scale),
      ...(whole ? [slip("one unit of area only", each), slip("divided by the area", each / acres)] : []),
    ],
  };
};

/** What a sprayer puts down, and with which flow, speed and pressure. */
export const sprayTopics: readonly Topic[] = [
  { id: "spray/application-volume", title: "Application volume and nozzle flow", levels: [1, 2, 3], pose: volumeProblem },
  { id: "spray/speed", title: "Ground speed", levels: [1, 2, 3], pose: speedProblem },
  { id: "spray/refill", title: "Calibration by refilling", levels: [1, 2, 3], pose: refillProblem },
  { id: "spray/pressure", title: "Pressure and flow", levels: [2, 3], pose: pressureProblem },
  { id: "spray/active-ingredient", title: "Product for active ingredient", levels: [1, 2, 3], pose: activeProblem },
];
