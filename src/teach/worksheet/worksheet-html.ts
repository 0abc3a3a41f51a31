import type { QuizProblem, Worksheet } from "../topics/quiz-problem.js";
import { worksheetAt } from "../topics/read-quiz.js";
import { type SheetOptions, sheetOptions } from "./sheet-options.js";

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => entities[sign] as string);

/** A text in which no line ends between a number and its unit. */
const kept = (text: string): string => escaped(text).replace(/(\d) (?=[%°A-Za-zµ$])/g, "$1\u00a0");

/** For paper: black on white, a line to write on, no problem cut by the end of a page. */
const style = `
@page { margin: 18mm 16mm; }
body { font: 11pt/1.45 Georgia, "Times New Roman", serif; color: #000; max-width: 42em; margin: 0 auto; padding: 1em; }
h1 { font-size: 17pt; margin: 0 0 .4em; }
h2 { font-size: 14pt; margin: 0 0 .6em; }
.who { display: flex; gap: 2em; margin: 0 0 1.6em; }
.who span { flex: 1; border-bottom: 1px solid #000; padding-bottom: .2em; }
ol.problems, ol.key { padding-left: 2em; margin: 0; }
ol.problems > li { break-inside: avoid; margin-bottom: 1.1em; }
ol.key > li { break-inside: avoid; margin-bottom: .7em; }
.choices { list-style: none; display: grid; grid-template-columns: 1fr 1fr; gap: .3em 1.5em; padding: .4em 0 0; margin: 0; }
.work { height: 4.4em; }
.answer { display: flex; gap: .5em; align-items: flex-end; }
.answer span { flex: 0 0 14em; border-bottom: 1px solid #000; }
.steps { list-style: none; padding: 0; margin: .1em 0 0; font-size: 10pt; }
.steps .part { font-style: italic; margin-top: .2em; }
section.sheet-key { break-before: page; }
@media screen { section.sheet-key { border-top: 2px solid #000; margin-top: 2em; padding-top: 1.2em; } }
`.trim();

const problemHtml = ({ text, choices }: QuizProblem, withChoices: boolean): string => {
  const list = withChoices
    ? `<ul class="choices">${choices.map((each) => `<li>${each.letter}. ${kept(each.text)}</li>`).join("")}</ul>`
    : "";
  return `<li>${kept(text)}${list}<div class="work"></div><div class="answer">Answer: <span></span></div></li>`;
};

const keyHtml = ({ answer, letter, steps }: QuizProblem, withChoices: boolean): string => {
  const working = steps
    .map((step) => `<li${/^Step \d/.test(step) ? ' class="part"' : ""}>${escaped(step)}</li>`)
    .join("");
  return `<li><strong>${escaped(answer.text)}</strong>${withChoices ? ` (${letter})` : ""}<ul class="steps">${working}</ul></li>`;
};

/**
 * A worksheet as one HTML page to print and hand out: name and date, the problems with room for the working, and the key
 * on pages of its own. It loads nothing and runs no script.
 *
 * @param sheet - as `worksheet` of `ratewright/teach/problems` makes it, also after JSON
 * @param options - `title`; `choices`, none where left out; `key`, which is there where left out
 * @throws RatewrightError `type`, `missing`, `range`
 *
 * @example
 * ```ts
 * import { worksheetHtml } from "ratewright/teach";
 * import { worksheet } from "ratewright/teach/problems";
 * const sheet = worksheet({ topics: ["spray/speed"], count: 2, seed: 1, units: "US" });
 * worksheetHtml(sheet, { title: "Winter training" }).includes("<h1>Winter training</h1>"); // => true
 * ```
 */
export const worksheetHtml = (sheet: Worksheet, options?: SheetOptions): string => {
  const { problems, seed } = worksheetAt(sheet, "sheet");
  const { title, choices, key } = sheetOptions(options, seed);
  const list = problems.map((each) => problemHtml(each, choices)).join("\n");
  const answers = problems.map((each) => keyHtml(each, choices)).join("\n");
  const keyPart = key
    ? `\n<section class="sheet-key">\n<h2>${escaped(title)}: key</h2>\n<ol class="key">\n${answers}\n</ol>\n</section>`
    : "";
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>
${style}
</style>
</head>
<body>
<h1>${escaped(title)}</h1>
<div class="who"><span>Name:</span><span>Date:</span></div>
<ol class="problems">
${list}
</ol>${keyPart}
</body>
</html>
`;
};
