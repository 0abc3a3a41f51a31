import type { QuizProblem } from "../../../src/teach/problems/index.js";

/** The sentences of a text. */
const sentences = (text: string): readonly string[] => text.split(/(?<=[.?!]) (?=[A-Z0-9$€(])/);

const isSentence = (text: string): boolean =>
  /^[A-Z0-9$€].*[.?]$/.test(text) && text.split(" ").length >= 3 && !/ {2}| [.,;?]|\(\)|^ | $|""/.test(text);

/** The figures of a text, as they are printed. */
const figures = (text: string): readonly string[] => text.match(/\d[\d,]*(?:\.\d+)?/g) ?? [];

const functions = /\b(?:sqrt|max|min|ln|log10|exp)\b/g;

/** The symbols of an equation that no line before it tells; the readings of a mean are figures of the text. */
const untold = (steps: readonly string[], i: number): readonly string[] => {
  const [left = "", right = ""] = (steps[i] ?? "").replace(/, rounded up$/, "").split(" = ");
  const isEquation =
    /^\S+$/.test(left) && right !== "" && steps[i + 1] !== undefined && !/ \(.*[a-z]{2}/.test(right);
  if (
    !isEquation ||
    !/^[^0-9]*[A-Za-zα-ωΑ-Ω]/.test(right.replace(functions, "")) ||
    /\d [A-Za-z]/.test(right)
  )
    return [];
  const symbols = right.replace(functions, "").match(/[A-Za-zα-ωΑ-Ω][A-Za-z0-9_,]*/g) ?? [];
  const told = (steps[i - 1] ?? "").split("; ").map((each) => each.split(" = ")[0] ?? "");
  return symbols.filter((symbol) => symbol !== "π" && !/^x_\d+$/.test(symbol) && !told.includes(symbol));
};

/** What a reader would stumble over: an empty sentence, a figure of the working that the text does not give, a key that says nothing. */
export const wordFaultsOf = (p: QuizProblem): string[] => {
  const faults: string[] = [];
  const all = sentences(p.text);
  for (const each of all) if (!isSentence(each)) faults.push(`no sentence: "${each}"`);
  if (!/^Answer (?:in|with) .*\.$/.test(all.at(-1) ?? "")) faults.push("no word on how to answer");
  if (!all.some((each) => each.endsWith("?"))) faults.push("no question");
  if (!/^[A-Z][A-Za-z0-9' ,()-]{4,}[^.?]$/.test(p.title)) faults.push(`no title: "${p.title}"`);
  const told = p.mistakes.map(({ says }) => says);
  for (const says of told)
    if (says.length < 20 || !sentences(says).every((each) => /^[A-Z0-9(].*[.?]$/.test(each)))
      faults.push(`no word on a mistake: "${says}"`);
  if (new Set(told).size < new Set(p.mistakes.map(({ mistake }) => mistake)).size)
    faults.push("two mistakes are told alike");
  if (p.choices.filter(({ mistake }) => mistake !== undefined).length !== 3)
    faults.push("not three wrong choices");
  for (const { mistake } of p.choices)
    if (mistake !== undefined && !p.mistakes.some((each) => each.mistake === mistake))
      faults.push(`nothing on ${mistake}`);
  const last = p.steps.at(-1) ?? "";
  const [digits = ""] = figures(p.answer.text);
  if (
    /^Rounded: /.test(last)
      ? last !== `Rounded: ${p.answer.text}`
      : !last.includes(digits.replace(/\.?0+$/, ""))
  )
    faults.push(`the key ends with "${last}"`);
  for (const step of p.steps) {
    if (!/^\S.*\S$/.test(step) || / {2}|\( ?\)|undefined|; ;|""|\)[A-Za-z]/.test(step))
      faults.push(`no line: "${step}"`);
    const symbols = untold(p.steps, p.steps.indexOf(step));
    if (symbols.length > 0) faults.push(`${symbols.join(" and ")} in "${step}" is told nowhere`);
    if (/^Step \d/.test(step) && !/^Step \d\. [A-Z0-9].{3,}$/.test(step))
      faults.push(`no heading: "${step}"`);
  }
  return faults.map((fault) => `${p.topic} ${p.level} ${p.units} seed ${p.seed}: ${fault}`);
};
