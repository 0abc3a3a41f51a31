import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectRecord,
  expectText,
  fail,
  outOfRange,
  plainCopy,
} from "../../quantity/index.js";
import { printable } from "./printable.js";
import type { QuizAnswer, QuizProblem, Worksheet } from "./quiz-problem.js";

const problemFields = [
  "type",
  "version",
  "topic",
  "title",
  "level",
  "seed",
  "units",
  "text",
  "answer",
  "steps",
  "choices",
  "letter",
  "mistakes",
] as const;

const longest = 4000;
const mostMistakes = 20;
const mostSteps = 80;
const mostSeed = 2 ** 32 - 1;
const mostProblems = 200;

const textAt = (input: unknown, path: string): string => {
  const text = expectText(input, path, "a text");
  return text.length <= longest
    ? printable(text, path)
    : outOfRange(path, described(`${text.length} characters`), { max: longest, count: "characters" });
};

const unitSystems = ["US", "metric"] as const;
/** The letters of the choices. */
const letters = ["A", "B", "C", "D", "E", "F", "G", "H"] as const;

/** The name of a topic: it becomes part of the name of a file. */
const topicAt = (input: unknown, path: string): string => {
  const topic = textAt(input, path);
  return /^[A-Za-z0-9]+(?:[/-][A-Za-z0-9]+)*$/.test(topic)
    ? topic
    : fail("text", path, topic, "a topic of problemTopics, such as spray/speed");
};

const wholeAt = (
  input: unknown,
  path: string,
  bounds: { readonly min: number; readonly max: number },
): number => {
  const number = expectNumber(input, path, bounds);
  return Number.isInteger(number) ? number : outOfRange(path, input, { ...bounds, step: 1 });
};

const answerAt = (input: unknown, path: string): void => {
  const fields = expectFields(
    input,
    ["value", "unit", "of", "decimals", "tolerance", "text", "noun"],
    path,
    "the answer of a problem",
  ) as Partial<Record<keyof QuizAnswer, unknown>>;
  allOf({
    value: () => expectNumber(fields.value, `${path}.value`),
    unit: () => textAt(fields.unit, `${path}.unit`),
    of: () => textAt(fields.of, `${path}.of`),
    decimals: () => wholeAt(fields.decimals, `${path}.decimals`, { min: 0, max: 6 }),
    tolerance: () => expectNumber(fields.tolerance, `${path}.tolerance`, { min: 0 }),
    text: () => textAt(fields.text, `${path}.text`),
    noun: () =>
      fields.noun === undefined
        ? undefined
        : expectList(fields.noun, `${path}.noun`, "word").map((each, i) =>
            textAt(each, `${path}.noun[${i}]`),
          ),
  });
};

const choiceAt = (input: unknown, path: string): void => {
  const { letter, text } = expectFields(input, ["letter", "text", "mistake"], path, "a choice");
  allOf({
    letter: () => expectOneOf(letter, letters, `${path}.letter`),
    text: () => textAt(text, `${path}.text`),
  });
};

const mistakeAt = (input: unknown, path: string): void => {
  const { mistake, value, text, says, also } = expectFields(
    input,
    ["mistake", "value", "text", "says", "also"],
    path,
    "a mistake",
  );
  allOf({
    mistake: () => textAt(mistake, `${path}.mistake`),
    value: () => expectNumber(value, `${path}.value`),
    text: () => textAt(text, `${path}.text`),
    says: () => textAt(says, `${path}.says`),
    also: () => also === undefined || eachAt(also, `${path}.also`, mostMistakes, textAt),
  });
};

const eachAt = (
  input: unknown,
  path: string,
  most: number,
  read: (item: unknown, path: string) => unknown,
): void => {
  const list = Array.isArray(input) && input.length === 0 ? [] : expectList(input, path, "item");
  if (list.length > most) outOfRange(path, described(`${list.length} items`), { max: most });
  list.forEach((item, i) => void read(item, `${path}[${i}]`));
};

/** Whether the choices have a letter each, and the right letter is one of them. */
const lettersAt = ({ choices, letter }: QuizProblem, path: string): void => {
  const all = choices.map((each) => each.letter);
  all.forEach((each, i) => {
    if (all.indexOf(each) !== i) fail("duplicate", `${path}.choices[${i}].letter`, each, "each letter once");
  });
  if (all.length > 0 && !all.includes(letter))
    fail("text", `${path}.letter`, letter, `the letter of a choice: ${all.join(", ")}`);
};

/** A problem that `problem` made, which may have been through JSON. */
export const quizAt = (input: unknown, path: string): QuizProblem => readQuiz(plainCopy(input), path);

const readQuiz = (input: unknown, path: string): QuizProblem => {
  expectRecord(input, path, "a problem, as problem of ratewright/teach/problems makes it");
  const fields = expectFields(input, problemFields, path) as Partial<Record<keyof QuizProblem, unknown>>;
  allOf({
    type: () =>
      fields.type === "quiz-problem" || fail("type", `${path}.type`, fields.type, 'type "quiz-problem"'),
    version: () => fields.version === 1 || fail("type", `${path}.version`, fields.version, "1"),
    title: () => textAt(fields.title, `${path}.title`),
    text: () => textAt(fields.text, `${path}.text`),
    topic: () => topicAt(fields.topic, `${path}.topic`),
    level: () => wholeAt(fields.level, `${path}.level`, { min: 1, max: 3 }),
    seed: () => expectNumber(fields.seed, `${path}.seed`, { min: 0, max: mostSeed }),
    units: () => expectOneOf(fields.units, unitSystems, `${path}.units`),
    letter: () => expectOneOf(fields.letter, letters, `${path}.letter`),
    answer: () => answerAt(fields.answer, `${path}.answer`),
    steps: () => eachAt(fields.steps, `${path}.steps`, mostSteps, textAt),
    choices: () => eachAt(fields.choices, `${path}.choices`, letters.length, choiceAt),
    mistakes: () => eachAt(fields.mistakes, `${path}.mistakes`, mostMistakes, mistakeAt),
  });
  // Every field was read above; what it holds is what the type says.
  const problem = input as QuizProblem;
  lettersAt(problem, path);
  return problem;
};

/** A worksheet that `worksheet` made, which may have been through JSON. */
export const worksheetAt = (given: unknown, path: string): Worksheet => {
  const input = plainCopy(given);
  expectRecord(input, path, "a worksheet, as worksheet of ratewright/teach/problems makes it");
  const fields = expectFields(input, ["type", "version", "seed", "units", "problems"], path);
  allOf({
    type: () => fields.type === "worksheet" || fail("type", `${path}.type`, fields.type, 'type "worksheet"'),
    version: () => fields.version === 1 || fail("type", `${path}.version`, fields.version, "1"),
    seed: () => expectNumber(fields.seed, `${path}.seed`, { min: 0, max: mostSeed }),
    units: () => expectOneOf(fields.units, unitSystems, `${path}.units`),
    problems: () => eachAt(fields.problems, `${path}.problems`, mostProblems, readQuiz),
  });
  // Every field was read above; what it holds is what the type says.
  return input as Worksheet;
};
