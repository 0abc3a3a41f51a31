import { quantity } from "../../quantity/index.js";
import { grossDepthFormula, waterVolumeFormula, zoneRunTimeFormula } from "../ground/water-depth.js";
import { irrigationIntervalFormula, readilyAvailableWaterFormula } from "../ground/water-use.js";
import { amount, listed, slip } from "../topics/figures.js";
import { areaOf, place } from "../topics/park.js";
import { fromStep, meanOf, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const depthUnit = (us: boolean): "in" | "mm" => (us ? "in" : "mm");

const volumeOfDepth = ({ draw, us }: PoseInput): Posed => {
  const depth = us ? draw.step(0.25, 1, 0.25) : draw.step(5, 25, 1);
  const area = areaOf(draw, us);
  const spot = place(draw);
  return worked({
    text: us
      ? `${amount(depth, "in")} of water is to go on ${spot}, which covers ${amount(area, "ft2")}. An inch of water on 1 sq ft is 0.6234 gal.`
      : `${amount(depth, "mm")} of water is to go on ${spot}, which covers ${amount(area, "m2")}.`,
    ask: {
      question: "How much water is that?",
      unit: us ? "gal" : "L",
      of: "water",
      decimals: 0,
      slack: us ? 8e-4 : 0,
    },
    working: [
      use(waterVolumeFormula, {
        depth: quantity(depth, depthUnit(us)),
        area: quantity(area, us ? "ft2" : "m2"),
      }),
    ],
    mistakes: (answer) =>
      us
        ? [
            slip("forgot 0.623", depth * area),
            slip("divided by 0.623", (depth * area) / 0.6234),
            slip("feet for inches", answer * 12),
            slip("forgot the depth", area * 0.6234),
          ]
        : [
            slip("depth in the wrong unit", answer / 10),
            slip("forgot to convert", answer / 1000),
            slip("forgot the depth", area),
            slip("divided by the depth", area / depth),
          ],
  });
};

const runTimeOfZone = ({ draw, us, level }: PoseInput): Posed => {
  const net = us ? draw.step(0.2, 0.75, 0.05) : draw.step(5, 18, 1);
  const rate = us ? draw.step(0.4, 1.6, 0.1) : draw.step(10, 40, 2);
  const efficiency = draw.pick([65, 70, 75, 80, 85]);
  const rateUnit = us ? "in/h" : "mm/h";
  const unit = depthUnit(us);
  const whole = level === 3;
  const depth = quantity(net, unit);
  const plain = (net / rate) * 60;
  const perHour = quantity(rate, rateUnit);
  return worked({
    text:
      `The turf of ${place(draw)} needs ${amount(net, unit)} of water. The sprinklers put down ${amount(rate, rateUnit)}` +
      (whole ? `, of which ${efficiency} % reaches the roots.` : "."),
    ask: { question: "How long does the zone run?", unit: "min", of: "none", decimals: 0 },
    working: whole
      ? [
          use(grossDepthFormula, { net: depth, efficiency: quantity(efficiency, "%") }),
          use(zoneRunTimeFormula, { depth: fromStep(1), rate: perHour }),
        ]
      : [use(zoneRunTimeFormula, { depth, rate: perHour })],
    mistakes: () => [
      ...(whole
        ? [slip("forgot efficiency", plain), slip("multiplied by efficiency", (plain * efficiency) / 100)]
        : [slip("decimal point one place off", plain * 10)]),
      slip("fraction upside down", (rate / net) * 60),
      slip("minutes for hours", (net / rate) * 100),
      slip("forgot the depth of water", 60 / rate),
      slip("multiplied by the rate", net * rate * 60),
    ],
  });
};

const waterProblem = (input: PoseInput): Posed =>
  input.level === 1 ? volumeOfDepth(input) : runTimeOfZone(input);

const uniformityProblem = ({ draw, us, level }: PoseInput): Posed => {
  const count = level === 2 ? 8 : 12;
  const unit = us ? "mL" : "mm";
  const cans = Array.from({ length: count }, () => (us ? draw.int(18, 48) : draw.int(6, 16)));
  const sorted = [...cans].sort((a, b) => a - b);
  const lowest = sorted.slice(0, count / 4);
  const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
  const mean = sum(cans) / count;
  const low = sum(lowest) / lowest.length;
  const half = sum(sorted.slice(0, count / 2)) / (count / 2);
  return worked({
    text: `${count} identical cans on ${place(draw)} caught ${listed(cans.map((each) => amount(each, unit)))} of water.`,
    ask: {
      question: "What is the distribution uniformity of the lower quarter?",
      unit: "%",
      of: "none",
      decimals: 0,
    },
    working: [
      meanOf("Mean of all cans", cans, unit),
      meanOf("Mean of the driest quarter", lowest, unit),
      total({
        title: "Distribution uniformity",
        equation: "DU = 100 * q / m",
        parts: {
          q: ["mean of the driest quarter", fromStep(2), unit],
          m: ["mean of all cans", fromStep(1), unit],
        },
        unit: "%",
      }),
    ],
    mistakes: () => [
      slip("driest can only", ((sorted[0] ?? 0) * 100) / mean),
      slip("all cans for the lowest quarter", (half * 100) / mean),
      slip("fraction upside down", (mean * 100) / low),
      slip("driest against wettest", (low * 100) / (sorted[count - 1] ?? 1)),
    ],
  });
};

const reserveProblem = ({ draw, us, level }: PoseInput): Posed => {
  const holds = us ? draw.step(0.6, 2.4, 0.2) : draw.step(15, 60, 5);
  const share = draw.pick([40, 50, 60]);
  const daily = us ? draw.step(0.1, 0.3, 0.02) : draw.step(2, 8, 0.5);
  const unit = depthUnit(us);
  const usable = (holds * share) / 100;
  const reserve = use(readilyAvailableWaterFormula, {
    available: quantity(holds, unit),
    depletion: quantity(share, "%"),
  });
  const spot = place(draw);
  const root = `The root zone of ${spot} holds ${amount(holds, unit)} of available water, of which ${share} % may be used up before the next watering.`;
  if (level === 1) {
    return worked({
      text: root,
      ask: { question: "How much water may be used up?", unit, of: "none", decimals: us ? 2 : 1 },
      working: [reserve],
      mistakes: (answer) => [
        slip("all water for the part used", holds),
        slip("divided by the percentage", (holds * 100) / share),
        slip("decimal point one place off", answer / 10),
        slip("decimal point one place off", answer * 10),
      ],
    });
  }
  return worked({
    text: `${root} The turf uses ${amount(daily, us ? "in/d" : "mm/d")}.`,
    ask: {
      question: "After how many days without rain is it used up?",
      unit: "d",
      of: "none",
      decimals: 1,
    },
    working: [
      reserve,
      use(irrigationIntervalFormula, { water: fromStep(1), use: quantity(daily, us ? "in/d" : "mm/d") }),
    ],
    mistakes: (answer) => [
      slip("all water for the part used", holds / daily),
      slip("divided by the percentage", (holds * 100) / share / daily),
      slip("multiplied by the rate", usable * daily),
      slip("the part that stays", (holds * (100 - share)) / 100 / daily),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

/** What water the turf gets, and how long it lasts. */
export const waterTopics: readonly Topic[] = [
  {
    id: "water/depth-and-time",
    title: "Water for a depth, and run time",
    levels: [1, 2, 3],
    pose: waterProblem,
  },
  { id: "water/uniformity", title: "Catch cans and uniformity", levels: [2, 3], pose: uniformityProblem },
  { id: "water/reserve", title: "Water in the root zone", levels: [1, 2], pose: reserveProblem },
];
