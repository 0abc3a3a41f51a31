import type { QuizProblem, Worksheet } from "../topics/quiz-problem.js";
import { worksheetAt } from "../topics/read-quiz.js";
import { type SheetOptions, sheetOptions } from "./sheet-options.js";

/** Text in which nothing reads as Markdown. */
const escaped = (text: string): string => text.replace(/[\\\u0060*_{}[\]<>#|]/g, "\\$&");

const problemLines = ({ text, choices }: QuizProblem, i: number, withChoices: boolean): string[] => [
  `${i + 1}. ${escaped(text)}`,
  ...(withChoices
    ? ["", ...choices.map(({ letter, text: each }) => `   - ${letter}. ${escaped(each)}`)]
    : []),
  "",
];

const keyLines = ({ answer, letter, steps }: QuizProblem, i: number, withChoices: boolean): string[] => [
  `${i + 1}. **${escaped(answer.text)}**${withChoices ? ` (${letter})` : ""}`,
  "",
  ...steps.map((step) => `   - ${escaped(step)}`),
  "",
];

/**
 * A worksheet as Markdown: the problems, and below a line the key with the working.
 *
 * @param sheet - as `worksheet` of `ratewright/teach/problems` makes it, also after JSON
 * @param options - `title`; `choices`, none where left out; `key`, which is there where left out
 * @throws RatewrightError `type`, `missing`, `range`
 *
 * @example
 * ```ts
 * import { worksheetMarkdown } from "ratewright/teach";
 * import { worksheet } from "ratewright/teach/problems";
 * const sheet = worksheet({ topics: ["spray/speed"], count: 2, seed: 1, units: "US" });
 * worksheetMarkdown(sheet, { key: false }).split("\n")[0]; // => "# Turf math, sheet 1"
 * ```
 */
export const worksheetMarkdown = (sheet: Worksheet, options?: SheetOptions): string => {
  const { problems, seed } = worksheetAt(sheet, "sheet");
  const { title, choices, key } = sheetOptions(options, seed);
  const lines = [`# ${escaped(title)}`, "", ...problems.flatMap((each, i) => problemLines(each, i, choices))];
  if (key) lines.push("---", "", "## Key", "", ...problems.flatMap((each, i) => keyLines(each, i, choices)));
  return `${lines.join("\n").trimEnd()}\n`;
};
