import { amount, fixed, num, unitWords } from "./figures.js";
import { mistakes, type NameOfMistake } from "./mistakes.js";
import type { QuizAnswer, QuizChoice, QuizMistake, QuizProblem } from "./quiz-problem.js";
import type { Ask, Draw, Level, Posed, PosedMistake, ProblemUnits, Topic } from "./topic.js";
import { workingLines } from "./worked.js";

const letters = ["A", "B", "C", "D"];

const substanceWords: Readonly<Record<string, string>> = {
  product: "product",
  N: "nitrogen",
  ai: "active ingredient",
  "pure live seed": "pure live seed",
  K: "potassium",
  P: "phosphorus",
  K2O: "potash",
  P2O5: "phosphate",
};

/** An answer as the key and the choices print it. */
const answerText = (value: number, { unit, decimals, noun }: Ask): string => {
  if (noun !== undefined) return `${fixed(value, decimals)} ${noun[value === 1 ? 0 : 1]}`;
  if (unit.startsWith("money:")) return amount(value, unit);
  const figure = fixed(value, decimals);
  if (isBare(unit)) return figure;
  return `${figure} ${unitWords(unit, Number(figure))}`;
};

const isBare = (unit: string): boolean => unit === "1" || unit.startsWith("count/");

const places = ["a whole number", "one decimal", "two decimals", "three decimals"];

/** How the answer is to be written: it sets the tolerance. */
const instruction = ({ unit, of, decimals, noun }: Ask): string => {
  if (noun !== undefined) return `Answer in whole ${noun[1]}.`;
  if (unit.startsWith("money:")) {
    const [, below] = unit.split("/");
    const whole = unit.startsWith("money:USD") ? "dollars" : "euros";
    return `Answer in ${whole}${below === undefined ? "" : ` per ${unitWords(below, 1)}`}, to the cent.`;
  }
  if (isBare(unit)) return `Answer with the number, to ${places[decimals]}.`;
  const stuff = substanceWords[of];
  const words = unit === "%" ? "percent" : unitWords(unit);
  const [top = "", below] = words.split(" per ");
  const named =
    stuff === undefined ? words : `${top} of ${stuff}${below === undefined ? "" : ` per ${below}`}`;
  return `Answer in ${named}, to ${places[decimals]}.`;
};

const round = (value: number, decimals: number): number => Number(fixed(value, decimals).replace(/,/g, ""));

/** How far apart two answers have to be to tell them apart: two of the last place and 1.5 percent; of whole things one. */
const apart = (a: number, b: number, { decimals, noun }: Ask): boolean => {
  const least = noun === undefined ? Math.max(2 * 10 ** -decimals, 0.015 * Math.abs(b)) : 1;
  // 10.2 less 10 is two tenths, whatever floating point makes of it
  return Math.abs(a - b) >= least * (1 - 1e-9);
};

/** A mistake with an answer of its own, and those that lead to the same answer. */
interface DistinctMistake extends PosedMistake {
  readonly also: readonly NameOfMistake[];
}

/**
 * The mistakes that give an answer of their own: none near the right one, none near another. One that gives what another
 * gives, as the question asks for it, is told with it; one that only comes near to it is left out.
 */
const distinct = ({ answer, ask, mistakes: slips }: Posed): readonly DistinctMistake[] => {
  const kept: (PosedMistake & { readonly also: NameOfMistake[] })[] = [];
  for (const { mistake, value } of slips) {
    const asked = round(value, ask.decimals);
    if (!Number.isFinite(value) || asked <= 0 || !apart(value, answer, ask)) continue;
    const near = kept.filter((other) => !apart(value, other.value, ask));
    if (near.length === 0) kept.push({ mistake, value, also: [] });
    const same = near.find((other) => round(other.value, ask.decimals) === asked);
    if (same !== undefined && ![same.mistake, ...same.also].includes(mistake)) same.also.push(mistake);
  }
  return kept;
};

/** Whether an answer has enough digits to be told from another: two, or a whole number of things; and whether it is a figure of the trade. */
const readable = ({ answer, ask, within: [low, high] = [0, Number.POSITIVE_INFINITY] }: Posed): boolean =>
  Number.isFinite(answer) &&
  answer > 0 &&
  answer >= low &&
  answer <= high &&
  (ask.noun !== undefined || answer >= 10 * 10 ** -ask.decimals);

/** Whether nothing is lost by rounding as the question asks. */
const comesOut = ({ answer, ask }: Posed): boolean =>
  Math.abs(answer - round(answer, ask.decimals)) <= 1e-9 * Math.abs(answer);

const fewest = 3;
const tries = 400;
const triesForEven = 40;

/** Draws until a problem reads well: three wrong answers of their own, and at level 1 an answer that comes out. */
const readablePose = (topic: Topic, draw: Draw, level: Level, units: ProblemUnits): Posed => {
  let uneven: Posed | undefined;
  for (let i = 0; i < tries; i++) {
    const posed = topic.pose({ draw, level, units, us: units === "US" });
    if (!readable(posed) || distinct(posed).length < fewest) continue;
    if (level > 1 || comesOut(posed)) return posed;
    uneven ??= posed;
    if (i >= triesForEven) break;
  }
  // a topic that cannot be posed is a defect of the topic, which the tests look for over thousands of seeds
  return uneven ?? topic.pose({ draw, level, units, us: units === "US" });
};

/** A shuffled copy, each order as likely as the next (Fisher and Yates). */
export const shuffled = <T>(list: readonly T[], draw: Draw): T[] => {
  const out = [...list];
  for (let i = out.length - 1; i > 0; i--) {
    const j = draw.int(0, i);
    [out[i], out[j]] = [out[j] as T, out[i] as T];
  }
  return out;
};

/** The working; what is rounded up is told with its name, and at the end the line that rounds where that changes the figure. */
const stepsOf = (posed: Posed, text: string, units: ProblemUnits): readonly string[] => {
  const { answer, ask } = posed;
  const lines = workingLines(posed, units).map((line) =>
    ask.noun === undefined ? line : line.replace("to a whole number", `to whole ${ask.noun[1]}`),
  );
  return num(answer) === num(round(answer, ask.decimals)) ? lines : [...lines, `Rounded: ${text}`];
};

/** A problem of a topic, with the figures that a draw gives. */
export const posedProblem = (input: {
  readonly topic: Topic;
  readonly draw: Draw;
  readonly level: Level;
  readonly seed: number;
  readonly units: ProblemUnits;
}): QuizProblem => {
  const { topic, draw, level, seed, units } = input;
  const posed = readablePose(topic, draw, level, units);
  const { ask } = posed;
  const slips = shuffled(distinct(posed), draw);
  const text = answerText(posed.answer, ask);
  const wrong = slips.map(
    ({ mistake, value, also }): QuizMistake => ({
      mistake,
      value,
      text: answerText(value, ask),
      says: [mistake, ...also].map((name) => mistakes[name]).join(" Or: "),
      ...(also.length > 0 && { also }),
    }),
  );
  const order = shuffled<QuizMistake | undefined>([undefined, ...wrong.slice(0, letters.length - 1)], draw);
  const choices = order.map((slip, i): QuizChoice => {
    const letter = letters[i] as string;
    return slip === undefined ? { letter, text } : { letter, text: slip.text, mistake: slip.mistake };
  });
  const answer: QuizAnswer = {
    value: posed.answer,
    unit: ask.unit,
    of: ask.of,
    decimals: ask.decimals,
    tolerance: ask.noun === undefined ? 0.5 * 10 ** -ask.decimals + (ask.slack ?? 0) * posed.answer : 0,
    text,
    ...(ask.noun !== undefined && { noun: ask.noun }),
  };
  return {
    type: "quiz-problem",
    version: 1,
    topic: topic.id,
    title: topic.title,
    level,
    seed,
    units,
    text: `${posed.text} ${ask.question} ${instruction(ask)}`,
    answer,
    steps: stepsOf(posed, text, units),
    choices,
    letter: letters[order.indexOf(undefined)] as string,
    mistakes: wrong,
  };
};
