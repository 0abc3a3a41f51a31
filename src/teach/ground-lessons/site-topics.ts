import { quantity } from "../../quantity/index.js";
import { netAreaFormula, offsetAreaOfSixFormula } from "../ground/site-lengths.js";
import { coverVolumeFormula } from "../ground/site-materials.js";
import {
  circleAreaFromDiameterFormula,
  offsetAreaFormula,
  rectangleAreaFormula,
  triangleAreaFormula,
} from "../ground/site-shapes.js";
import { amount, listed, num, slip } from "../topics/figures.js";
import { playedTurf } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";
import { pondProblem } from "./pond-topics.js";

/** The figures that the levels share. */
const areaFigures = ({ draw, us, level }: PoseInput) => {
  const length = us ? "ft" : "m";
  const unit = us ? "ft2" : "m2";
  const long = us ? draw.step(100, 240, 5) : draw.step(30, 80, 1);
  const wide = us ? draw.step(60, 160, 5) : draw.step(20, 50, 1);
  const across = Math.round((wide * draw.int(15, 40)) / 100);
  const ask = {
    question: "What is its area?",
    unit,
    of: "none",
    decimals: 0,
    slack: level === 1 ? 0 : 6e-4,
  } as const;
  const circle = use(circleAreaFromDiameterFormula, { diameter: quantity(across, length) });
  const round = (Math.PI * across * across) / 4;
  return { length, unit, long, wide, across, ask, circle, round } as const;
};

const triangleProblem = (input: PoseInput): Posed => {
  const { length, long, wide, ask } = areaFigures(input);
  return worked({
    text: `A corner of the meadow is a triangle with a base of ${amount(long, length)} and a height of ${amount(wide, length)}.`,
    ask,
    working: [use(triangleAreaFormula, { base: quantity(long, length), height: quantity(wide, length) })],
    mistakes: (answer) => [
      slip("rectangle for triangle", answer * 2),
      slip("halved twice", answer / 2),
      slip("perimeter for area", 2 * (long + wide)),
    ],
  });
};

const roundBedProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { length, across, ask, circle, round } = areaFigures(input);
  return worked({
    text: `A round bed beside the bowling green measures ${amount(across, length)} across.`,
    ask: { ...ask, decimals: us ? 0 : 1 },
    working: [circle],
    mistakes: () => [
      slip("diameter for radius", round * 4),
      slip("circumference for area", Math.PI * across),
      slip("forgot the square of the radius", (Math.PI * across) / 2),
      slip("square for circle", across * across),
    ],
  });
};

const treatedAreaProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { length, long, wide, across, ask, circle, round } = areaFigures(input);
  const all = long * wide;
  return worked({
    text: `The meadow is ${amount(long, length)} by ${amount(wide, length)}. A round planting bed in it, ${amount(across, length)} across, is not treated.`,
    ask: { ...ask, question: "What area is treated?" },
    working: [
      use(rectangleAreaFormula, { length: quantity(long, length), width: quantity(wide, length) }),
      circle,
      use(netAreaFormula, { whole: fromStep(1), cutOut: fromStep(2) }),
    ],
    mistakes: () => [
      slip("forgot to take the part out", all),
      slip("added the part", all + round),
      slip("diameter for radius", all - 4 * round),
      // on a lawn of feet the way around a bed is too short to be told from nothing
      ...(us ? [] : [slip("circumference for area", all - Math.PI * across)]),
      slip("perimeter for area", 2 * (long + wide)),
    ],
  });
};

const areaProblem = (input: PoseInput): Posed =>
  input.level === 1
    ? triangleProblem(input)
    : input.level === 2
      ? roundBedProblem(input)
      : treatedAreaProblem(input);

const sixWidths = ["first", "second", "third", "fourth", "fifth", "last"];

const offsetProblem = ({ draw, us, level }: PoseInput): Posed => {
  const length = us ? "ft" : "m";
  const unit = us ? "ft2" : "m2";
  const spacing = us ? draw.pick([10, 15, 20]) : draw.pick([3, 4, 5]);
  const count = level === 2 ? 4 : 6;
  const low = us ? 20 : 8;
  const high = us ? 80 : 26;
  const widths = Array.from({ length: count }, () => draw.int(low, high));
  const names = count === 4 ? ["first", "second", "third", "last"] : sixWidths;
  const all = widths.reduce((a, b) => a + b, 0);
  const ends = (widths[0] ?? 0) + (widths[count - 1] ?? 0);
  const measured = Object.fromEntries(names.map((name, i) => [name, quantity(widths[i] ?? 0, length)]));
  return worked({
    text: `The meadow has no straight edge. Its width is measured every ${amount(spacing, length)} along a line, both ends included: ${listed(widths.map((each) => amount(each, length)))}.`,
    ask: {
      question: "What is its area between the first and the last width, by the trapezoidal rule?",
      unit,
      of: "none",
      decimals: 0,
    },
    working: [
      use(count === 4 ? offsetAreaFormula : offsetAreaOfSixFormula, {
        spacing: quantity(spacing, length),
        ...measured,
      }),
    ],
    mistakes: () => [
      slip("ends counted in full", all * spacing),
      slip("ends left out", (all - ends) * spacing),
      slip("forgot the distance between widths", all),
      slip("wrong number of readings", (all / count) * spacing * (count + 1)),
    ],
  });
};

/** What the sand of the second step weighs. */
const weightOfSand = (ton: number, us: boolean) =>
  total({
    title: "Weight of the sand",
    equation: "W = V * w",
    parts: {
      V: ["sand", fromStep(2), us ? "yd3" : "m3"],
      w: ["weight of a unit of volume", ton, us ? "US ton/yd3" : "t/m3"],
    },
    unit: us ? "US ton" : "t",
  });

const coverProblem = ({ draw, us, level }: PoseInput): Posed => {
  const depth = us ? draw.pick([0.125, 0.25, 0.375, 0.5]) : draw.pick([2, 3, 4, 5, 6, 8, 10]);
  const area = us ? draw.step(4000, 14_000, 500) : draw.step(400, 1400, 50);
  const width = us ? draw.step(60, 120, 5) : draw.step(20, 40, 1);
  const long = us ? draw.step(80, 130, 5) : draw.step(30, 40, 1);
  const ton = us ? draw.pick([1.25, 1.3, 1.35, 1.4]) : draw.pick([1.4, 1.5, 1.6]);
  const thick = us ? "in" : "mm";
  const unit = us ? "yd3" : "m3";
  const spot = playedTurf(draw);
  const ground = level === 1 ? area : width * long;
  const volume = us ? (ground * depth) / 12 / 27 : (ground * depth) / 1000;
  const length = us ? "ft" : "m";
  const deep = quantity(depth, thick);
  const size =
    level === 1
      ? `covers ${amount(area, us ? "ft2" : "m2")}`
      : `measures ${amount(long, length)} by ${amount(width, length)}`;
  const weighed = level === 3;
  const scale = weighed ? ton : 1;
  const tons = us ? "US ton" : "t";
  const rectangle = use(rectangleAreaFormula, {
    length: quantity(long, length),
    width: quantity(width, length),
  });
  return worked({
    text:
      `${spot.replace("the", "The")} ${size} and is topdressed with sand, ${us ? fraction(depth) : amount(depth, thick)} deep.` +
      (weighed ? ` The sand weighs ${num(ton)} ${us ? "tons per cu yd" : "t per m³"}.` : ""),
    ask: weighed
      ? { question: "What does the sand weigh?", unit: tons, of: "none", decimals: 1 }
      : { question: "How much sand does it take?", unit, of: "none", decimals: 1 },
    working:
      level === 1
        ? [use(coverVolumeFormula, { area: quantity(area, us ? "ft2" : "m2"), depth: deep })]
        : [
            rectangle,
            use(coverVolumeFormula, { area: fromStep(1), depth: deep }),
            ...(weighed ? [weightOfSand(ton, us)] : []),
          ],
    mistakes: () => [
      ...(us
        ? [
            slip("27 for 9", volume * 3 * scale),
            slip("feet for inches", volume * 12 * scale),
            slip("cubic feet for cubic yards", volume * 27 * scale),
          ]
        : [
            slip("depth in the wrong unit", volume * 10 * scale),
            slip("depth in the wrong unit", (volume / 10) * scale),
            level === 1
              ? slip("forgot the depth", ground)
              : slip("perimeter for area", ((2 * (long + width) * depth) / 1000) * scale),
          ]),
      ...(weighed ? [slip("density upside down", volume / ton), slip("forgot the density", volume)] : []),
    ],
  });
};

/** A depth as the trade says it: `1/4 inch`. */
const fraction = (depth: number): string => {
  const parts: Readonly<Record<string, string>> = {
    "0.125": "1/8 inch",
    "0.25": "1/4 inch",
    "0.375": "3/8 inch",
    "0.5": "1/2 inch",
  };
  return parts[String(depth)] ?? amount(depth, "in");
};

/** How large, how deep, how much. */
export const siteTopics: readonly Topic[] = [
  { id: "site/area", title: "Areas of plain shapes", levels: [1, 2, 3], pose: areaProblem },
  { id: "site/offsets", title: "Area of an irregular shape", levels: [2, 3], pose: offsetProblem },
  { id: "site/topdressing", title: "Material for a depth", levels: [1, 2, 3], pose: coverProblem },
  { id: "site/pond", title: "Water in a pond, and its dose", levels: [1, 2, 3], pose: pondProblem },
];
