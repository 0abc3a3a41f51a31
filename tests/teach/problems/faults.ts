import { problem, type QuizProblem } from "../../../src/teach/problems/index.js";
import { arithmetic, sameComputed } from "../explain/printed-lines.js";
import { readAsk, readStory, withoutStuff } from "./read-text.js";
import { solvers } from "./solvers.js";

/** More than this of a unit, in a story or an answer, is no job in a park. */
const most: Readonly<Record<string, number>> = {
  lb: 1000,
  kg: 500,
  tons: 200,
  t: 120,
  bags: 40,
  jugs: 40,
  ft: 800,
  m: 250,
  inches: 60,
  mm: 250,
  cm: 120,
  "sq ft": 300_000,
  "m²": 40_000,
  acres: 20,
  ha: 10,
  mph: 8,
  "km/h": 12,
  psi: 100,
  bar: 8,
  "fl oz": 900,
  mL: 6000,
  "lb per 1,000 sq ft": 130,
  "kg per ha": 6000,
  "gal per acre": 125,
  "L per ha": 1250,
  "lb per acre": 280,
  "fl oz per acre": 200,
  "cu yd": 150,
};

/** The wind blows faster than a machine runs, and a layer of soil outweighs what is spread on it. */
const mostOf: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  "weather/wind": { mph: 20 },
  "soil/layer": { lb: 226_600, "lb per acre": 1_000, "kg per ha": 100_000, "lb per 1,000 sq ft": 80_000 },
};

/** Every amount of a text with the words of its unit. */
const amounts = (text: string): [number, string][] =>
  [
    ...text.matchAll(
      /(\d[\d,]*(?:\.\d+)?) ([a-zA-Z][a-zA-Z²³/]*(?: (?:ft|oz|yd|per 1,000 sq ft|per [a-z]+))?)/g,
    ),
  ].map(([, digits = "", unit = ""]) => [Number(digits.replaceAll(",", "")), unit]);

/** What is wrong with the key, for whoever reads the numbers of the text. */
const keyFaults = (p: QuizProblem): string[] => {
  const ask = readAsk(p.text);
  const solved = (solvers[p.topic]?.(readStory(p.text, p.level)) ?? Number.NaN) / ask.factor;
  const place = 0.5 * 10 ** -ask.decimals;
  const off = Math.abs(solved - p.answer.value);
  const near = Math.max(1e-9 * p.answer.value, p.answer.tolerance - place);
  return [
    ...(ask.decimals === p.answer.decimals ? [] : ["other decimals than the question asks for"]),
    ...(off <= near ? [] : [`the text gives ${solved}, the key has ${p.answer.value}`]),
  ];
};

const letters = "A B C D";

const choiceFaults = (p: QuizProblem): string[] => {
  const place = p.answer.tolerance;
  const faults: string[] = [];
  if (p.choices.map(({ letter }) => letter).join(" ") !== letters) faults.push("the letters");
  const right = p.choices.find(({ letter }) => letter === p.letter);
  if (right?.text !== p.answer.text || right.mistake !== undefined) faults.push("the right choice");
  if (new Set(p.choices.map(({ text }) => text)).size !== 4) faults.push("two choices read alike");
  if (/NaN|Infinity|undefined|null|\[object/.test(JSON.stringify(p))) faults.push("no number");
  const values = [p.answer.value, ...p.mistakes.map(({ value }) => value)];
  values.forEach((value, i) => {
    if (!(value > 0)) faults.push(`${value}`);
    for (const other of values.slice(0, i))
      if (Math.abs(value - other) <= 2 * place) faults.push(`${value} and ${other} are the same`);
  });
  for (const [value, unit] of amounts(withoutStuff(`${p.text} ${p.answer.text}`)))
    if (value > (mostOf[p.topic]?.[unit] ?? most[unit] ?? Number.POSITIVE_INFINITY))
      faults.push(`${value} ${unit} is no job in a park`);
  return faults;
};

/** A line that starts with a figure and says what it is in another unit, or an equation with its figures put in. */
const isCrossing = (line: string): boolean => /^[−(]?[$€]?[\d.(]/.test(line) && line.includes(" = ");
const firstNumber = (text: string): number =>
  Number(/^-?[\d,.]*\d/.exec(text.trim())?.[0].replaceAll(",", ""));

const namedFunctions = {
  sqrt: Math.sqrt,
  max: Math.max,
  min: Math.min,
  ln: Math.log,
  log10: Math.log10,
  exp: Math.exp,
};
const names = Object.keys(namedFunctions);
const values = Object.values(namedFunctions);

/** What a printed sum comes to. The tests of the working read it with a library; here it has to be quick. */
const evaluated = (sum: string): number => {
  if (/^ *-?\d+(?:\.\d+)? *$/.test(sum)) return Number(sum);
  if (!/^(?:[\d.\s()*+/,^-]|pi|sqrt|max|min|ln|log10|exp)+$/.test(sum)) return Number.NaN;
  const script = sum.replaceAll("^", "**").replace(/\bpi\b/g, `${Math.PI}`);
  return Function(...names, `return ${script}`)(...values) as number;
};

/** Whether two printed figures are one and the same, as far as their digits go. */
const agrees = (left: string, right: string): boolean => {
  const [a, b] = [evaluated(left), evaluated(right)];
  return Math.abs(a - b) <= 2e-5 * Math.abs(b) || sameComputed(left, right);
};

const isGiven = (line: string): boolean => /\([a-zA-Z][^()]*\)(?:;|$)/.test(line);

/** What the printed lines of a working come to, and where one does not give the next. */
const workingFaults = (p: QuizProblem): string[] => {
  const faults: string[] = [];
  let sums = 0;
  let last = Number.NaN;
  p.steps.forEach((line, i) => {
    const next = p.steps[i + 1] ?? "";
    const printed = arithmetic(line);
    const [left = "", right = ""] = printed.split(" = ");
    if (/^(Step|Rounded)/.test(line) || isGiven(line)) return;
    if (isCrossing(line)) {
      if (!agrees(left, right)) faults.push(line);
      last = firstNumber(right);
      sums += 1;
      return;
    }
    const symbol = `${line.split(" = ")[0]} = `;
    const isPutIn =
      next.startsWith(symbol) && !/[A-Za-z_]/.test(right.replace(/sqrt|max|min|log10|ln|exp|pi/g, ""));
    if (!isPutIn) return;
    const result = arithmetic(next).split(" = ")[1] ?? "";
    const [before = "", whole] = result.split(/, rounded up to [a-z ]+: /);
    if (!agrees(right, before)) faults.push(`${line} gives ${next}`);
    if (whole !== undefined && Math.ceil(firstNumber(before)) !== firstNumber(whole)) faults.push(next);
    last = firstNumber(whole ?? before);
    sums += 1;
  });
  if (sums === 0) faults.push("no sum");
  if (Math.abs(last - p.answer.value) > 1e-5 * p.answer.value)
    faults.push(`the working ends at ${last}, the key has ${p.answer.value}`);
  if (p.steps.length > 40) faults.push(`${p.steps.length} lines`);
  return faults;
};

/** All that is wrong with a problem. */
export const faultsOf = (p: QuizProblem): string[] =>
  [...keyFaults(p), ...choiceFaults(p), ...workingFaults(p)].map(
    (fault) => `${p.topic} ${p.level} ${p.units} seed ${p.seed}: ${fault}`,
  );

/** What is wrong with the problems of a topic, and how often each letter is the right one. */
export const huntTopic = (input: {
  readonly topic: string;
  readonly levels: readonly (1 | 2 | 3)[];
  readonly seeds: number;
  readonly first: number;
}): { readonly posed: number; readonly faults: readonly string[]; readonly places: readonly number[] } => {
  const { topic, levels, seeds, first } = input;
  const share = Math.ceil(seeds / (2 * levels.length));
  const places = [0, 0, 0, 0];
  const faults: string[] = [];
  let posed = 0;
  levels.forEach((level, nth) => {
    (["US", "metric"] as const).forEach((units, half) => {
      // seeds of their own: the same seed puts the answer in the same place at every level
      const from = first + (2 * nth + half) * share;
      for (let i = 0; i < share; i++) {
        const p = problem({ topic, level, seed: from + i, units });
        posed += 1;
        places["ABCD".indexOf(p.letter)] = (places["ABCD".indexOf(p.letter)] ?? 0) + 1;
        if (faults.length < 20) faults.push(...faultsOf(p));
      }
    });
  });
  return { posed, faults, places };
};

/** Chi-square of four places that should be as frequent, three degrees of freedom. */
export const chiSquare = (places: readonly number[]): number => {
  const expected = places.reduce((a, b) => a + b, 0) / places.length;
  return places.reduce((sum, each) => sum + (each - expected) ** 2 / expected, 0);
};

/** What chi-square of three degrees of freedom passes by chance once in ten thousand times. */
export const onceInTenThousand = 21.108;
