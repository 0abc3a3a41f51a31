import { quantity } from "../../quantity/index.js";
import { bandFieldRateFormula, waterEquivalentFormula } from "../application/spray-boom.js";
import { calibrationByCatchFormula } from "../application/spray-nozzle.js";
import { effectiveFieldCapacityFormula } from "../application/spread-passes.js";
import { rinseResidueFormula } from "../application/tank.js";
import { amount, slip } from "../topics/figures.js";
import { openGround, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const perArea = (us: boolean): "gal/acre" | "L/ha" => (us ? "gal/acre" : "L/ha");

const courseProblem = ({ draw, us }: PoseInput): Posed => {
  const spacing = us ? draw.int(12, 40) : draw.pick([40, 45, 50, 60, 70, 75, 80, 90, 100]);
  const spots = openGround(draw);
  return worked({
    text: `A boom for ${spots} has its nozzles ${amount(spacing, us ? "in" : "cm")} apart. ${us ? "One nozzle is to spray 1/128 acre: 43,560 sq ft ÷ 128 is 340.3 sq ft." : "One nozzle is to spray 1/128 acre, which is 31.616 m²."}`,
    ask: {
      question: "How long must the course be?",
      unit: us ? "ft" : "m",
      of: "none",
      decimals: 1,
      slack: us ? 1e-4 : 5e-6,
    },
    working: [
      total({
        title: "Course that one nozzle needs for 1/128 acre",
        equation: "L = A / w",
        parts: {
          A: ["1/128 acre", quantity(1 / 128, "acre").in(us ? "ft2" : "m2"), us ? "ft2" : "m2"],
          w: ["nozzle spacing", spacing, us ? "in" : "cm", us ? "ft" : "m"],
        },
        unit: us ? "ft" : "m",
      }),
    ],
    mistakes: (answer) => [
      slip(us ? "feet for inches" : "meters for centimeters", answer / (us ? 12 : 100)),
      ...(us ? [slip("yards for feet", answer / 3)] : []),
      slip("decimal point one place off", answer * 10),
      slip("half the swath", answer * 2),
    ],
  });
};

const catchProblem = ({ draw, us, level }: PoseInput): Posed => {
  if (level === 1) return courseProblem({ draw, us, level, units: us ? "US" : "metric" });
  const spacing = us ? draw.pick([15, 18, 20, 24, 30]) : draw.pick([40, 50, 60, 75]);
  const course = us ? draw.step(100, 300, 10) : draw.step(40, 100, 5);
  const caught = us ? draw.int(10, 60) : draw.step(400, 1800, 50);
  const nozzles = draw.int(6, 14);
  const small = us ? "fl oz" : "mL";
  const length = us ? "ft" : "m";
  return worked({
    text: `A boom sprayer with ${nozzles} nozzles, ${amount(spacing, us ? "in" : "cm")} apart, drives a course of ${amount(course, length)} on ${openGround(draw)}. In that time, one nozzle fills a jug with ${amount(caught, small)}.`,
    ask: {
      question: "What is the application volume?",
      unit: perArea(us),
      of: "spray",
      decimals: us ? 1 : 0,
    },
    working: [
      use(calibrationByCatchFormula, {
        caught: quantity(caught, small, "spray"),
        course: quantity(course, length),
        width: quantity(spacing, us ? "in" : "cm"),
      }),
    ],
    mistakes: (answer) => [
      slip("spacing for swath", answer / nozzles),
      slip("counted every nozzle", answer * nozzles),
      ...(us
        ? [slip("ounce for fluid ounce", answer * 8), slip("fluid ounces in a quart", answer * 4)]
        : [slip("meters for centimeters", answer / 100)]),
      slip(us ? "feet for inches" : "decimal point one place off", us ? answer / 12 : answer * 10),
    ],
    within: us ? [10, 120] : [100, 1200],
  });
};

const bandProblem = ({ draw, us }: PoseInput): Posed => {
  const band = us ? draw.int(6, 14) : draw.pick([15, 20, 25, 30]);
  const row = us ? draw.pick([24, 30, 36, 40]) : draw.pick([50, 60, 75, 90]);
  const rate = us ? draw.step(15, 50, 5) : draw.step(150, 400, 50);
  const unit = us ? "in" : "cm";
  return worked({
    text: `Rows of young trees beside the meadow are sprayed in bands ${amount(band, unit)} wide; the rows are ${amount(row, unit)} apart. The label rate on the treated band is ${amount(rate, perArea(us))}.`,
    ask: {
      question: `How much spray does ${us ? "an acre" : "a hectare"} of the whole field take?`,
      unit: perArea(us),
      of: "spray",
      decimals: 1,
    },
    working: [
      use(bandFieldRateFormula, {
        rate: quantity(rate, perArea(us), "spray"),
        band: quantity(band, unit),
        row: quantity(row, unit),
      }),
    ],
    mistakes: (answer) => [
      slip("width upside down", (rate * row) / band),
      slip("whole row for the band", rate),
      slip("the part that stays untreated", (rate * (row - band)) / row),
      slip("decimal point one place off", answer / 10),
    ],
  });
};

const heavyProblem = ({ draw, us }: PoseInput): Posed => {
  const wanted = us ? draw.step(15, 60, 5) : draw.step(150, 500, 25);
  const heavy = us ? draw.step(9.5, 11.5, 0.1) : draw.step(1.1, 1.4, 0.02);
  const water = us ? 8.34 : 1;
  const strength = us ? "lb/gal" : "kg/L";
  return worked({
    text: `${amount(wanted, perArea(us))} of a liquid fertilizer that weighs ${amount(heavy, strength)} is to be sprayed on ${place(draw)}. The tip chart is made for water, which weighs ${amount(water, strength)}.`,
    ask: {
      question: "For what volume of water do you look up the tip?",
      unit: perArea(us),
      of: "water",
      decimals: us ? 1 : 0,
    },
    working: [
      use(waterEquivalentFormula, {
        wanted: quantity(wanted, perArea(us), "spray"),
        density: quantity(heavy, strength),
        water: quantity(water, strength),
      }),
    ],
    mistakes: () => [
      slip("ratio without the root", (wanted * heavy) / water),
      slip("density the wrong way", wanted / Math.sqrt(heavy / water)),
      slip("forgot the density", wanted),
      slip("density upside down", (wanted * water) / heavy),
    ],
  });
};

const capacityProblem = ({ draw, us, level }: PoseInput): Posed => {
  const swath = us ? draw.step(6, 20, 1) : draw.step(2, 6, 0.5);
  const speed = us ? draw.step(3, 5, 0.5) : draw.step(5, 8, 0.5);
  const efficiency = draw.pick([60, 65, 70, 75, 80]);
  const area = us ? draw.step(4, 18, 1) : draw.step(1.5, 8, 0.5);
  const land = us ? "acre" : "ha";
  const told = `A machine with an effective swath of ${amount(swath, us ? "ft" : "m")} runs at ${amount(speed, us ? "mi/h" : "km/h")}. With turns and fills its field efficiency is ${efficiency} %.`;
  const perHour = us ? (swath * speed * 5280) / 43_560 : (swath * speed) / 10;
  const real = (perHour * efficiency) / 100;
  const hours = level === 2;
  return worked({
    text: hours ? `${told} The job is ${amount(area, land)}.` : told,
    ask: hours
      ? { question: "How many hours does it take?", unit: "h", of: "none", decimals: 1 }
      : { question: "What area does it cover in an hour?", unit: `${land}/h`, of: "none", decimals: 2 },
    working: [
      use(effectiveFieldCapacityFormula, {
        swath: quantity(swath, us ? "ft" : "m"),
        speed: quantity(speed, us ? "mi/h" : "km/h"),
        efficiency: quantity(efficiency, "%"),
      }),
      ...(hours
        ? [
            total({
              title: "Hours",
              equation: "T = A / C",
              parts: { A: ["area of the job", area, land], C: ["area in an hour", fromStep(1), `${land}/h`] },
              unit: "h",
            }),
          ]
        : []),
    ],
    mistakes: (answer) => [
      slip("speed and width alone", hours ? area / perHour : perHour),
      slip(
        "efficiency taken off",
        hours ? area / (perHour * (1 - efficiency / 100)) : perHour * (1 - efficiency / 100),
      ),
      slip(
        "divided by the percentage",
        hours ? (area / perHour) * (efficiency / 100) : (perHour * 100) / efficiency,
      ),
      ...(hours ? [slip("hours upside down", real / area)] : []),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const rinseProblem = ({ draw, us, level }: PoseInput): Posed => {
  const heel = us ? draw.pick([0.25, 0.5, 1, 1.5]) : draw.pick([1, 2, 3, 4, 5]);
  // with one rinse a share that comes out: 1 gal and 4 gal leave 20 %
  const water =
    level === 1
      ? draw.pick(us ? [1, 1.5, 2, 2.5, 3, 4, 4.5, 6, 9] : [4, 6, 8, 9, 12, 15, 16, 18, 20, 27, 36])
      : draw.pick(us ? [3, 4, 5, 6] : [10, 15, 20, 25]);
  const rinses = level === 1 ? 1 : draw.pick([2, 3]);
  const big = us ? "gal" : "L";
  const share = heel / (heel + water);
  return worked({
    text: `After spraying, ${amount(heel, big)} of spray is left in the tank and the hoses. The crew rinses ${level === 1 ? "once" : `${rinses} times, each time`} with ${amount(water, big)} of water${level === 1 ? "" : ", and drains the tank after each rinse"}.`,
    ask: {
      question: "What percent of the original strength is left?",
      unit: "%",
      of: "none",
      decimals: level === 1 ? 1 : 2,
    },
    working: [
      use(rinseResidueFormula, {
        heel: quantity(heel, big),
        rinse: quantity(water, big),
        rinses: quantity(rinses, "count"),
      }),
    ],
    mistakes: (answer) => [
      slip("one part to the other", (100 * heel) / water),
      slip("share that is gone", 100 - answer),
      ...(rinses > 1
        ? [
            slip("one rinse only", 100 * share),
            slip("all water at once", (100 * heel) / (heel + rinses * water)),
            slip("divided by the number of rinses", (100 * share) / rinses),
          ]
        : [
            slip("one rinse too many", 100 * share * share),
            slip("decimal point one place off", answer / 10),
          ]),
    ],
  });
};

/** Calibration by a catch, bands, heavy liquids, hours, rinsing. */
export const calibrationTopics: readonly Topic[] = [
  { id: "spray/catch", title: "Calibration by a nozzle's catch", levels: [1, 2], pose: catchProblem },
  { id: "spray/bands", title: "Bands and rows", levels: [2], pose: bandProblem },
  { id: "spray/heavy-liquids", title: "Liquids heavier than water", levels: [2], pose: heavyProblem },
  { id: "spread/capacity", title: "Hours that a job takes", levels: [1, 2], pose: capacityProblem },
  { id: "tank/rinsing", title: "What is left after rinsing", levels: [1, 2], pose: rinseProblem },
];
