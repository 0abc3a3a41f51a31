import { quantity } from "../../quantity/index.js";
import {
  circleArea,
  coverVolume,
  netArea,
  offsetArea,
  rectangleArea,
  triangleArea,
} from "../../site/index.js";
import { amount, listed, num, slip, step } from "./figures.js";
import { place } from "./park.js";
import { pondProblem } from "./pond-topics.js";
import type { Posed, PoseInput, Topic } from "./topic.js";

/** The figures that the levels share. */
const areaFigures = ({ draw, us, level }: PoseInput) => {
  const length = us ? "ft" : "m";
  const unit = us ? "ft2" : "m2";
  const long = us ? draw.step(100, 240, 5) : draw.step(30, 80, 1);
  const wide = us ? draw.step(60, 160, 5) : draw.step(20, 50, 1);
  const across = Math.round((wide * draw.int(20, 60)) / 100);
  const ask = {
    question: "What is its area?",
    unit,
    of: "none",
    decimals: 0,
    slack: level === 1 ? 0 : 6e-4,
  } as const;
  const circle = circleArea({ diameter: quantity(across, length) });
  const round = circle.in(unit);
  return { length, unit, long, wide, across, ask, circle, round } as const;
};

const triangleProblem = (input: PoseInput): Posed => {
  const { length, unit, long, wide, ask } = areaFigures(input);
  const area = triangleArea({ base: quantity(long, length), height: quantity(wide, length) }).in(unit);
  return {
    text: `A corner of the meadow is a triangle with a base of ${amount(long, length)} and a height of ${amount(wide, length)}.`,
    ask,
    answer: area,
    steps: [step("Area", `${long} × ${wide} ÷ 2`, area, unit)],
    mistakes: [
      slip("rectangle for triangle", area * 2),
      slip("halved twice", area / 2),
      slip("perimeter for area", 2 * (long + wide)),
    ],
  };
};

const roundBedProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { length, unit, across, ask, round } = areaFigures(input);
  return {
    text: `A round bed beside the bowling lawn measures ${amount(across, length)} across.`,
    ask: { ...ask, decimals: us ? 0 : 1 },
    answer: round,
    steps: [
      step("Radius", `${across} ÷ 2`, across / 2, length),
      step("Area", `3.14159 × ${num(across / 2)} × ${num(across / 2)}`, round, unit),
    ],
    mistakes: [
      slip("diameter for radius", round * 4),
      slip("circumference for area", Math.PI * across),
      slip("forgot the square of the radius", (Math.PI * across) / 2),
      slip("square for circle", across * across),
    ],
  };
};

const treatedAreaProblem = (input: PoseInput): Posed => {
  const { length, unit, long, wide, across, ask, circle, round } = areaFigures(input);
  const whole = rectangleArea({ length: quantity(long, length), width: quantity(wide, length) });
  const net = netArea({
    parts: [{ name: "pitch", area: whole }],
    cutOuts: [{ name: "bed", area: circle }],
  }).net.in(unit);
  const all = whole.in(unit);
  return {
    text: `A practice pitch is ${amount(long, length)} by ${amount(wide, length)}. A round planting bed in it, ${amount(across, length)} across, is not treated.`,
    ask: { ...ask, question: "What area is treated?" },
    answer: net,
    steps: [
      step("Pitch", `${long} × ${wide}`, all, unit),
      step("Bed", `3.14159 × ${num(across / 2)} × ${num(across / 2)}`, round, unit),
      step("Treated", `${num(all)} - ${num(round)}`, net, unit),
    ],
    mistakes: [
      slip("forgot to take the part out", all),
      slip("added the part", all + round),
      slip("diameter for radius", all - 4 * round),
      slip("circumference for area", all - Math.PI * across),
      slip("perimeter for area", 2 * (long + wide)),
    ],
  };
};

const areaProblem = (input: PoseInput): Posed =>
  input.level === 1
    ? triangleProblem(input)
    : input.level === 2
      ? roundBedProblem(input)
      : treatedAreaProblem(input);

const offsetProblem = ({ draw, us, level }: PoseInput): Posed => {
  const length = us ? "ft" : "m";
  const unit = us ? "ft2" : "m2";
  const spacing = us ? draw.pick([10, 15, 20]) : draw.pick([3, 4, 5]);
  const count = level === 2 ? 4 : 6;
  const low = us ? 20 : 8;
  const high = us ? 80 : 26;
  const widths = Array.from({ length: count }, () => draw.int(low, high));
  const area = offsetArea({
    spacing: quantity(spacing, length),
    widths: widths.map((each) => quantity(each, length)),
  }).in(unit);
  const all = widths.reduce((a, b) => a + b, 0);
  const ends = (widths[0] ?? 0) + (widths[count - 1] ?? 0);
  const inner = widths.slice(1, -1);
  return {
    text: `The meadow has no straight edge. Its width is measured every ${amount(spacing, length)} along a line, both ends included: ${listed(widths.map((each) => amount(each, length)))}.`,
    ask: {
      question: "What is its area between the first and the last width, by the trapezoidal rule?",
      unit,
      of: "none",
      decimals: 0,
    },
    answer: area,
    steps: [
      step("Half of the ends", `(${widths[0]} + ${widths[count - 1]}) ÷ 2`, ends / 2, length),
      step(
        "Area",
        `${spacing} × ((${widths[0]} + ${widths[count - 1]}) ÷ 2 + ${inner.join(" + ")})`,
        area,
        unit,
      ),
    ],
    mistakes: [
      slip("ends counted in full", all * spacing),
      slip("ends left out", (all - ends) * spacing),
      slip("forgot the distance between widths", all),
      slip("wrong number of readings", (all / count) * spacing * (count + 1)),
    ],
  };
};

const coverProblem = ({ draw, us, level }: PoseInput): Posed => {
  const depth = us ? draw.pick([0.125, 0.25, 0.375, 0.5]) : draw.pick([2, 3, 4, 5, 6, 8, 10]);
  const area = us ? draw.step(3000, 18_000, 500) : draw.step(300, 2000, 50);
  const width = us ? draw.step(60, 120, 5) : draw.step(20, 40, 1);
  const long = us ? draw.step(80, 160, 5) : draw.step(30, 60, 1);
  const ton = us ? draw.pick([1.25, 1.3, 1.35, 1.4]) : draw.pick([1.4, 1.5, 1.6]);
  const thick = us ? "in" : "mm";
  const unit = us ? "yd3" : "m3";
  const spot = place(draw);
  const ground = level === 1 ? area : width * long;
  const volume = coverVolume({ area: quantity(ground, us ? "ft2" : "m2"), depth: quantity(depth, thick) }).in(
    unit,
  );
  const size =
    level === 1
      ? `has ${amount(area, us ? "ft2" : "m2")}`
      : `measures ${amount(long, us ? "ft" : "m")} by ${amount(width, us ? "ft" : "m")}`;
  const sum = `${level === 1 ? num(area) : `${long} × ${width}`} × ${num(depth)} ÷ ${us ? "12 ÷ 27" : "1,000"}`;
  const weighed = level === 3;
  const scale = weighed ? ton : 1;
  const tons = us ? "US ton" : "t";
  return {
    text:
      `${spot.replace("the", "The")} ${size} and is topdressed with sand, ${us ? fraction(depth) : amount(depth, thick)} deep.` +
      (weighed ? ` The sand weighs ${num(ton)} ${us ? "tons per cu yd" : "t per m³"}.` : ""),
    ask: weighed
      ? { question: "What does the sand weigh?", unit: tons, of: "none", decimals: 1 }
      : { question: "How much sand does it take?", unit, of: "none", decimals: 1 },
    answer: volume * scale,
    steps: [
      step("Sand", sum, volume, unit),
      ...(weighed ? [step("Weight", `${sum} × ${num(ton)}`, volume * ton, tons)] : []),
    ],
    mistakes: [
      ...(us
        ? [
            slip("27 for 9", volume * 3 * scale),
            slip("feet for inches", volume * 12 * scale),
            slip("cubic feet for cubic yards", volume * 27 * scale),
          ]
        : [
            slip("meters for centimeters", volume * 10 * scale),
            slip("depth in the wrong unit", (volume / 10) * scale),
            slip(
              "perimeter for area",
              level === 1 ? volume / 100 : ((2 * (long + width) * depth) / 1000) * scale,
            ),
          ]),
      ...(weighed ? [slip("density upside down", volume / ton), slip("forgot the density", volume)] : []),
    ],
  };
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
