import type { QuizProblem, Worksheet } from "../topics/quiz-problem.js";
import { worksheetAt } from "../topics/read-quiz.js";

const columns = [
  "number",
  "topic",
  "level",
  "seed",
  "units",
  "problem",
  "answer",
  "value",
  "unit",
  "tolerance",
  "A",
  "B",
  "C",
  "D",
  "letter",
  "working",
] as const;

/** A cell by RFC 4180. A text that a table would run as a formula gets an apostrophe. */
const cell = (value: string | number): string => {
  const text = typeof value === "string" && /^[=+\-@\t]/.test(value) ? `'${value}` : String(value);
  return /[",\r\n]/.test(text) ? `"${text.split('"').join('""')}"` : text;
};

const row = (each: QuizProblem, i: number): string =>
  [
    i + 1,
    each.topic,
    each.level,
    each.seed,
    each.units,
    each.text,
    each.answer.text,
    each.answer.value,
    each.answer.unit,
    each.answer.tolerance,
    ...["A", "B", "C", "D"].map((letter) => each.choices.find((one) => one.letter === letter)?.text ?? ""),
    each.letter,
    each.steps.join("; "),
  ]
    .map(cell)
    .join(",");

/**
 * A worksheet as CSV (RFC 4180), a row for each problem with its key, for a table or a learning platform.
 *
 * @param sheet - as `worksheet` of `ratewright/teach/problems` makes it, also after JSON
 * @throws RatewrightError `type`, `missing`, `range`
 *
 * @example
 * ```ts
 * import { worksheetCsv } from "ratewright/teach";
 * import { worksheet } from "ratewright/teach/problems";
 * const sheet = worksheet({ topics: ["spray/speed"], count: 2, seed: 1, units: "US" });
 * worksheetCsv(sheet).split("\r\n")[0]?.split(",").slice(0, 4); // => ["number", "topic", "level", "seed"]
 * ```
 */
export const worksheetCsv = (sheet: Worksheet): string => {
  const { problems } = worksheetAt(sheet, "sheet");
  return `${[columns.join(","), ...problems.map(row)].join("\r\n")}\r\n`;
};
