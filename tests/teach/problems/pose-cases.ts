// How a problem is chosen, by topics that are made up: which mistakes stand beside one another, which of them are told
// together, and which figures are drawn again.

import type { QuizProblem } from "../../../src/teach/problems/index.js";
import { seededDraw } from "../../../src/teach/problems/seeded-draw.js";
import type { NameOfMistake } from "../../../src/teach/topics/mistakes.js";
import { posedProblem } from "../../../src/teach/topics/pose.js";
import type { Ask, Level, Posed } from "../../../src/teach/topics/topic.js";

const names: readonly NameOfMistake[] = [
  "forgot the density",
  "density upside down",
  "forgot the price",
  "price upside down",
  "forgot the width",
  "forgot the length",
];

interface Made {
  readonly answer: number;
  readonly values: readonly number[];
  readonly decimals?: number;
  readonly noun?: Ask["noun"];
  readonly within?: Posed["within"];
}

const posed = ({ answer, values, decimals = 0, noun, within }: Made): Posed => ({
  text: "A case.",
  ask: { question: "How much?", unit: noun ? "count" : "lb", of: "none", decimals, ...(noun && { noun }) },
  answer,
  working: [],
  mistakes: values.map((value, i) => ({ mistake: names[i] as NameOfMistake, value })),
  ...(within && { within }),
});

/** The problem of a made-up topic, and how often it drew. */
const made = (
  each: (turn: number) => Made,
  level: Level = 2,
): { readonly asked: QuizProblem; readonly turns: number } => {
  let turns = 0;
  const topic = {
    id: "made/up",
    title: "Made up",
    levels: [1, 2, 3],
    pose: () => {
      turns += 1;
      return posed(each(turns));
    },
  } as const;
  const asked = posedProblem({ topic, draw: seededDraw(1), level, seed: 1, units: "US" });
  return { asked, turns };
};

const far = [2000, 3000, 4000];
/** The values that stay, in order, where the first three are far from everything. */
const kept = (answer: number, values: readonly number[], more: Partial<Made> = {}): string =>
  made(() => ({ answer, values: [...far, ...values], ...more }))
    .asked.mistakes.map(({ value }) => value)
    .filter((value) => !far.includes(value))
    .sort((a, b) => a - b)
    .join(" ");

const bags: Partial<Made> = { noun: ["bag", "bags"] };
const answers: readonly (readonly [
  what: string,
  here: () => string | number | undefined,
  expected: string | number,
])[] = [
  // Two of the last place
  ["two places from the answer", () => kept(100, [102]), "102"],
  ["hardly two places from the answer", () => kept(100, [101.9999]), ""],
  ["two places below", () => kept(100, [98]), "98"],
  ["two places of a decimal", () => kept(10, [10.2], { decimals: 1 }), "10.2"],
  ["hardly two places of a decimal", () => kept(10, [10.199_99], { decimals: 1 }), ""],
  ["two places from another", () => kept(100, [50, 52]), "50 52"],
  ["hardly two places from another", () => kept(100, [50, 51.9999]), "50"],
  // 1.5 percent where that is more, of the one that is there already
  ["1.5 percent from the answer", () => kept(1000, [1015]), "1015"],
  ["hardly 1.5 percent", () => kept(1000, [1014.9999]), ""],
  ["1.5 percent from another", () => kept(100, [1000, 1015.000_001]), "1000 1015.000001"],
  ["hardly 1.5 percent from another", () => kept(100, [1000, 1014.9999]), "1000"],
  // Whole things: one more is another
  ["one more", () => kept(6, [7], bags), "7"],
  ["nearly one more", () => kept(6, [6.999_95], bags), ""],
  // No answer
  ["nothing", () => kept(100, [0]), ""],
  ["less than nothing", () => kept(100, [-5]), ""],
  ["rounded to nothing", () => kept(100, [0.4]), ""],
  ["rounded up", () => kept(100, [0.5]), "0.5"],
  ["no number", () => kept(100, [Number.NaN, Number.POSITIVE_INFINITY]), ""],
];

/** What is told where mistakes lead to one answer: the first, and with it what gives the same as the question asks for it. */
const together = (values: readonly number[]): string => {
  const { asked } = made(() => ({ answer: 100, values: [...far, ...values] }));
  return asked.mistakes
    .filter(({ value }) => !far.includes(value))
    .map(({ mistake, also = [], says }) => `${[mistake, ...also].join(" + ")}: ${says.split(" Or: ").length}`)
    .sort()
    .reverse()
    .join("; ");
};
const told: typeof answers = [
  ["one alone", () => together([50]), "price upside down: 1"],
  ["two that give the same", () => together([50, 50]), "price upside down + forgot the width: 2"],
  [
    "three that round alike",
    () => together([50, 50.3, 49.6]),
    "price upside down + forgot the width + forgot the length: 3",
  ],
  ["one beside it is left out", () => together([50, 51]), "price upside down: 1"],
  ["an answer of its own", () => together([50, 60]), "price upside down: 1; forgot the width: 1"],
];

const good: Made = { answer: 100, values: far };
/** What is drawn again, and how often. */
const drawn = (bad: Made, level: Level = 2): number => made((turn) => (turn > 3 ? good : bad), level).turns;
const again: typeof answers = [
  ["a good problem", () => drawn(good), 1],
  ["two wrong answers only", () => drawn({ answer: 100, values: [2000, 3000] }), 4],
  ["an answer of one digit", () => drawn({ answer: 9.9999, values: far }), 4],
  ["an answer of two digits", () => drawn({ answer: 10, values: far }), 1],
  ["an answer of one digit behind the point", () => drawn({ answer: 0.999_95, values: far, decimals: 1 }), 4],
  ["an answer of two digits behind the point", () => drawn({ answer: 1, values: far, decimals: 1 }), 1],
  ["few things are few", () => drawn({ answer: 2, values: far, ...bags }), 1],
  ["nothing", () => drawn({ answer: 0, values: far, ...bags }), 4],
  ["no number", () => drawn({ answer: Number.NaN, values: far }), 4],
  ["below what is usual", () => drawn({ ...good, within: [101, 200] }), 4],
  ["at the least that is usual", () => drawn({ ...good, within: [100, 200] }), 1],
  ["at the most that is usual", () => drawn({ ...good, within: [50, 100] }), 1],
  ["above what is usual", () => drawn({ ...good, within: [50, 99] }), 4],
  ["at level 1 an answer that does not come out", () => drawn({ answer: 100.3, values: far }, 1), 4],
  ["at level 2 it may be rounded", () => drawn({ answer: 100.3, values: far }), 1],
  [
    "at level 1 none that comes out: the first of them, after 41",
    () => made(() => ({ answer: 100.3, values: far }), 1).turns,
    41,
  ],
  [
    "at level 1 none that comes out: its answer",
    () => made((turn) => ({ answer: 100.3 + turn, values: far }), 1).asked.answer.value,
    101.3,
  ],
  [
    "nothing that reads well, after 400 and a last one",
    () => made(() => ({ answer: 1, values: [] }), 2).turns,
    401,
  ],
];

export const poseFaults = (): readonly string[] =>
  [...answers, ...told, ...again].flatMap(([what, here, expected]) => {
    const found = here();
    return found === expected ? [] : [`${what}: ${found}, not ${expected}`];
  });
