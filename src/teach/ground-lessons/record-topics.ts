import { addDays, type CivilDate, daysBetween } from "../../calendar/index.js";
import { quantity } from "../../quantity/index.js";
import { windAtHeight } from "../../weather/index.js";
import { pestDensityOfThreeFormula } from "../ground/stand-work.js";
import { fieldImpactFormula } from "../soil-and-air/readings.js";
import { lightFromRadiationFormula } from "../soil-and-air/sun-and-wind.js";
import { amount, num, slip } from "../topics/figures.js";
import { place } from "../topics/park.js";
import { fromStep, meanOf, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const windProblem = ({ draw, us, level }: PoseInput): Posed => {
  const wind = us ? draw.int(5, 15) : draw.step(2, 7, 0.5);
  const to = level === 1 ? 2 : draw.pick([1, 1.5]);
  const unit = us ? "mi/h" : "m/s";
  const station = { wind: quantity(1, "m/s"), from: quantity(10, "m") };
  const share = Number(
    windAtHeight({ ...station, to: quantity(to, "m") })
      .in("m/s")
      .toFixed(3),
  );
  return worked({
    text: `The weather station reports a wind of ${amount(wind, unit)} at 10 m. Over short grass the wind at ${to} m is ${share} times that at 10 m.`,
    ask: { question: `What is the wind at ${to} m?`, unit, of: "none", decimals: 1, slack: 1e-3 },
    working: [
      total({
        title: "Wind near the ground",
        equation: "v = u * f",
        parts: { u: ["wind at 10 m", wind, unit], f: [`share of it at ${to} m`, share, "1"] },
        unit,
      }),
    ],
    mistakes: () => [
      slip("wind at the station", wind),
      slip("heights the wrong way", wind / share),
      slip("heights in proportion", (wind * to) / 10),
      slip("share that is gone", wind * (1 - share)),
    ],
  });
};

const lightProblem = ({ draw }: PoseInput): Posed => {
  const radiation = draw.step(6, 28, 1);
  const share = draw.pick([45, 48, 50]);
  return worked({
    text: `The weather station at the park reports ${num(radiation)} MJ/m² of solar energy in a day. ${share} % of it is light that grass uses, and 1 MJ of that light is 4.6 mol.`,
    ask: { question: "How many moles of light fall on 1 m² in the day?", unit: "1", of: "none", decimals: 1 },
    working: [
      use(lightFromRadiationFormula, {
        radiation: quantity(radiation, "MJ/m2"),
        parShare: quantity(share, "%"),
        micromolPerJoule: quantity(4.6, "1"),
      }),
    ],
    mistakes: (answer) => [
      slip("all energy for light", radiation * 4.6),
      slip("fraction upside down", (radiation * share) / 100 / 4.6),
      slip("forgot to convert", (radiation * share) / 100),
      slip("decimal point one place off", answer / 10),
    ],
  });
};

const grubProblem = ({ draw, us, level }: PoseInput): Posed => {
  const counts = [draw.int(0, 4), draw.int(1, 4), draw.int(0, 4)];
  const diameter = us ? 4.25 : draw.pick([10, 11, 12]);
  const total = counts.reduce((a, b) => a + b, 0);
  const unit = us ? "ft2" : "m2";
  const radius = quantity(diameter / 2, us ? "in" : "cm").in(us ? "ft" : "m");
  const core = Math.PI * radius * radius;
  const [first = 0, second = 0, third = 0] = counts;
  const size = Number(core.toPrecision(4));
  return worked({
    text:
      `Three cores from ${place(draw)}, ${amount(diameter, us ? "in" : "cm")} across, hold ${first}, ${second} and ${third} white grubs.` +
      (level === 1 ? ` A core has an area of ${size} ${us ? "sq ft" : "m²"}.` : ""),
    ask: {
      question: `How many grubs is that per ${us ? "square foot" : "square meter"}?`,
      unit: `count/${unit}`,
      of: "none",
      decimals: us ? 1 : 0,
      slack: 6e-4,
    },
    working: [
      use(pestDensityOfThreeFormula, {
        first: quantity(first, "count"),
        second: quantity(second, "count"),
        third: quantity(third, "count"),
        diameter: quantity(diameter, us ? "in" : "cm"),
      }),
    ],
    mistakes: (answer) => [
      slip("forgot to divide by the cores", total / core),
      slip("forgot the area of a core", total / 3),
      slip("diameter for radius", answer / 4),
      ...(us ? [slip("fraction upside down", core / (total / 3))] : []),
    ],
  });
};

const impactProblem = ({ draw, us, level }: PoseInput): Posed => {
  const quotient = draw.step(14, 48, 0.5);
  const active = draw.step(0.25, 2.5, 0.05);
  const percent = draw.pick([25, 40, 50, 80]);
  const product = draw.step(0.5, 5, 0.25);
  const whole = level === 2;
  const activePart = total({
    title: "Active ingredient",
    equation: "a = P * s / 100",
    parts: {
      P: ["product", product, "lb/acre"],
      s: ["percent of active ingredient in it", percent, "1"],
    },
    unit: "lb/acre",
    of: "ai",
  });
  return worked({
    text: whole
      ? `An active ingredient has an impact quotient of ${num(quotient)}. The product has ${percent} % of it and is applied at ${amount(product, "lb/acre")}.`
      : `An active ingredient has an impact quotient of ${num(quotient)} and is applied at ${amount(active, "lb/acre")}.${us ? "" : " The quotient goes with lb per acre."}`,
    ask: {
      question: "What is the impact quotient in use, for lb per acre?",
      unit: "1",
      of: "none",
      decimals: 1,
    },
    working: [
      ...(whole ? [activePart] : []),
      use(fieldImpactFormula, {
        quotient: quantity(quotient, "1"),
        active: whole ? fromStep(1) : quantity(active, "lb/acre", "ai"),
      }),
    ],
    mistakes: (answer) => [
      slip("fraction upside down", quotient / (whole ? (product * percent) / 100 : active)),
      ...(whole
        ? [
            slip("forgot the percent active", quotient * product),
            slip("divided by the percentage", (quotient * product * 100) / percent),
          ]
        : [slip("added instead of multiplied", quotient + active)]),
      slip("decimal point one place off", answer / 10),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];
const monthOf = (date: CivilDate): string => months[Number(date.slice(5, 7)) - 1] ?? "";
const dateText = (date: CivilDate): string => `${monthOf(date)} ${Number(date.slice(8))}`;

/** The days by month, as a learner counts them: what is left of the first month, whole months, and the last one. */
const daysByMonth = (from: CivilDate, to: CivilDate): readonly (readonly [label: string, days: number])[] => {
  const parts: (readonly [string, number])[] = [];
  let at = from;
  while (at.slice(0, 7) !== to.slice(0, 7)) {
    const next = addDays(`${at.slice(0, 8)}28` as CivilDate, 4)
      .slice(0, 8)
      .concat("01") as CivilDate;
    const month = monthOf(at);
    parts.push(
      parts.length === 0
        ? [`left of ${month}`, daysBetween(at, next) - 1]
        : [`all of ${month}`, daysBetween(at, next)],
    );
    at = next;
  }
  const first = parts.length === 0 ? Number(from.slice(8)) : 0;
  return [...parts, [`in ${monthOf(to)}`, Number(to.slice(8)) - first]];
};

/** How many months the one date is later by, whatever their days. */
const monthsApart = (from: CivilDate, to: CivilDate): number =>
  Number(to.slice(5, 7)) - Number(from.slice(5, 7));

const dateProblem = ({ draw, level }: PoseInput): Posed => {
  const from = addDays("2026-03-20", draw.int(0, 90));
  const left = level === 2;
  const rest = draw.int(3, 12);
  const limit = draw.pick([21, 28, 30, 42, 45, 60, 90]);
  const gap = left ? limit - rest : draw.int(16, 45);
  const to = addDays(from, gap);
  const [ofMonth, apart] = [Number(to.slice(8)) - Number(from.slice(8)), monthsApart(from, to)];
  const passed = (days: number): number => (left ? limit - days : days);
  const parts = daysByMonth(from, to);
  const names = ["a", "b", "c", "d", "e", "f"].slice(0, parts.length);
  const days = total({
    title: "Days by month",
    equation: `n = ${names.join(" + ")}`,
    parts: Object.fromEntries(parts.map(([label, count], i) => [names[i], [label, count, "count"] as const])),
    unit: "count",
  });
  const wait = total({
    title: "Days left",
    equation: "r = w - n",
    parts: { w: ["days between", limit, "count"], n: ["days gone by", fromStep(1), "count"] },
    unit: "count",
  });
  return worked({
    text: left
      ? `A label asks for ${limit} days between applications. ${place(draw).replace("the", "The")} was treated on ${dateText(from)}, and today is ${dateText(to)} of the same year.`
      : `${place(draw).replace("the", "The")} was treated on ${dateText(from)} and again on ${dateText(to)} of the same year.`,
    ask: {
      question: left
        ? "How many more days does the crew have to wait?"
        : "How many days after the first application was the second?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["day", "days"],
    },
    working: left ? [days, wait] : [days],
    mistakes: () => [
      slip("last day counted twice", passed(gap + 1)),
      slip("both ends left out", passed(gap - 1)),
      slip("month of thirty days", passed(30 * apart + ofMonth)),
      slip("months left out", passed(Math.abs(ofMonth))),
      ...(left
        ? [slip("added instead of taken away", gap + limit), slip("forgot what is gone already", limit)]
        : []),
    ],
  });
};

const meanProblem = ({ draw, us, level }: PoseInput): Posed => {
  const unit = us ? "fl oz" : "mL";
  const usual = us ? draw.int(26, 44) : draw.step(400, 900, 10);
  const near = (): number => usual + (us ? draw.int(-4, 4) : draw.step(-60, 60, 10));
  const [a, b, c] = [near(), near(), near()];
  if (level === 1) {
    return worked({
      text: `Three nozzles of the boom put out ${amount(a, unit)}, ${amount(b, unit)} and ${amount(c, unit)} in the same time.`,
      ask: { question: "What is the mean catch?", unit, of: "none", decimals: us ? 1 : 0 },
      working: [meanOf("Mean catch", [a, b, c], unit)],
      mistakes: () => [
        slip("sum for mean", a + b + c),
        slip("wrong number of readings", (a + b + c) / 2),
        slip("one reading left out", (a + b) / 2),
        slip("decimal point one place off", (a + b + c) / 30),
      ],
    });
  }
  const tenths = draw.int(30, 80);
  const [low, high] = [tenths / 10, (tenths + draw.int(3, 20)) / 10];
  const mean = (low + high) / 2;
  return worked({
    text: `Two pans under a spreader catch ${amount(low, "g")} and ${amount(high, "g")}. The standard deviation of two readings is their difference divided by 1.41421.`,
    ask: {
      question: "What is the coefficient of variation?",
      unit: "%",
      of: "none",
      decimals: 1,
    },
    working: [
      meanOf("Mean of the two", [low, high], "g"),
      total({
        title: "Standard deviation",
        equation: "s = (b - a) / sqrt(2)",
        parts: { b: ["larger catch", high, "g"], a: ["smaller catch", low, "g"] },
        unit: "g",
      }),
      total({
        title: "Coefficient of variation",
        equation: "v = 100 * s / m",
        parts: { s: ["standard deviation", fromStep(2), "g"], m: ["mean", fromStep(1), "g"] },
        unit: "%",
      }),
    ],
    mistakes: () => [
      slip("deviation for variation", (high - low) / Math.SQRT2),
      slip("half of the range", (50 * (high - low)) / mean),
      slip("range for deviation", (100 * (high - low)) / mean),
      slip("fraction upside down", (100 * mean) / ((high - low) / Math.SQRT2)),
    ],
  });
};

/** Weather, pests, indicators, dates, readings. */
export const recordTopics: readonly Topic[] = [
  { id: "weather/wind", title: "Wind near the ground", levels: [1, 2], pose: windProblem },
  { id: "weather/light", title: "Light of a day", levels: [1], pose: lightProblem },
  { id: "pest/density", title: "Grubs in cores", levels: [1, 2], pose: grubProblem },
  { id: "indicator/impact", title: "Impact quotient in use", levels: [1, 2], pose: impactProblem },
  { id: "calendar/days", title: "Days between two dates", levels: [1, 2], pose: dateProblem },
  { id: "numeric/mean", title: "Mean and variation", levels: [1, 2], pose: meanProblem },
];
