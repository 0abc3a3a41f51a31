// The page of a formula: its equation, its form, where people go wrong, the published figures, the sources.
import { unitSymbol } from "../../src/quantity/index.js";
import { tankCautions } from "../../src/tank/index.js";
import {
  type CatalogueEntry,
  type CatalogueVariable,
  equationMathML,
  equationText,
} from "../../src/teach/index.js";
import type { PublishedCheck } from "../../tests/published/check.js";
import { formOf, symbolMath } from "./catalogue-form.js";
import { escaped } from "./html.js";
import { labelRules, type Page } from "./layout.js";

/** What a page of a formula shows beside its entry. */
export interface Around {
  /** The question that the page of the room puts, in the words of the trade. */
  readonly questions: readonly string[];
  readonly checks: readonly PublishedCheck[];
  /** The page of the evidence, from the root of the site, where its function has published checks. */
  readonly evidence?: string;
  /** Other formulas of the same function. */
  readonly siblings: readonly CatalogueEntry[];
  /** Pages that say more: the room, and cases that use the function. */
  readonly more: readonly { readonly title: string; readonly path: string }[];
}

const variableRow = ({ symbol, label, equationUnits }: CatalogueVariable): string => {
  const written = (unit: string): string =>
    unit === "1" || unit === "count" ? "number" : escaped(unitSymbol(unit));
  const { US, metric } = equationUnits;
  return `<tr><td>${symbolMath(symbol)}</td><td>${escaped(label)}</td><td>${written(US)}</td><td>${written(metric)}</td></tr>`;
};

const nomenclature = ({ output, inputs }: CatalogueEntry): string => `<section>
<h2 id="symbols">Symbols</h2>
<p>The equation holds in the units of either column. The form takes any unit and crosses it.</p>
<div class="table" tabindex="0" role="group" aria-label="Symbols"><table><thead><tr><th>symbol</th><th>what it is</th><th>US customary</th><th>metric</th></tr></thead>
<tbody>${[output, ...inputs].map(variableRow).join("\n")}</tbody></table></div>
</section>`;

const sourceText = ({ title, publisher, year, where, url }: CatalogueEntry["sources"][number]): string => {
  const name =
    url === undefined ? escaped(title) : `<a href="${escaped(url)}" rel="noopener">${escaped(title)}</a>`;
  const who = `${escaped(publisher)}${year === undefined ? "" : ` ${year}`}`;
  return `${who}: ${name}${where === undefined ? "" : `, ${escaped(where)}`}`;
};

const list = (items: readonly string[]): string =>
  `<ul>${items.map((item) => `<li>${item}</li>`).join("")}</ul>`;

/** Cautions of the work that the formula belongs to; what is mixed is also poured and filled. */
const cautionsOf = ({ room }: CatalogueEntry): string =>
  room === "tank" || room === "spray"
    ? list(
        tankCautions.filter(({ when }) => when !== "water-soluble packet").map(({ text }) => escaped(text)),
      )
    : "";

const evidenceOf = (entry: CatalogueEntry, { checks, evidence }: Around): string => {
  const figures = checks.reduce((sum, { answers }) => sum + answers.length, 0);
  if (evidence === undefined || figures === 0)
    return `<p>No published figure was found yet for <code>${entry.name}</code> itself.</p>`;
  const read = checks
    .filter(({ reached }) => reached === "read")
    .reduce((sum, { answers }) => sum + answers.length, 0);
  return `<p><a href="../${evidence}">${figures} published figures</a>, ${read} of them read in their source, are computed again
by <code>${entry.name}</code> in every test run.</p>`;
};

/** The page of a formula. */
export const formulaPage = (entry: CatalogueEntry, around: Around): Page => {
  const { id, name, room, title, equation, traps, sources } = entry;
  const also = [
    ...around.siblings.map((other) => `<a href="${other.id}.html">${escaped(other.title)}</a>`),
    ...around.more.map((page) => `<a href="../${page.path}">${escaped(page.title)}</a>`),
  ];
  const asked = around.questions.map((question) => `<p class="question">${escaped(question)}</p>`).join("\n");
  return {
    path: `formulas/${id}.html`,
    title,
    part: "Formulas",
    kind: "formula",
    description: `${title}: ${equationText(equation)}. With a form, worked steps and sources.`,
    scripts: ["form.js"],
    body: `<p class="trail"><a href="index.html#${room}">${escaped(room)}</a> / <code>${escaped(name)}</code></p>
<h1>${escaped(title)}</h1>
${asked}
<div class="equation" tabindex="0" role="group" aria-label="Equation: ${escaped(equationText(equation))}">${equationMathML(equation)}</div>
${formOf(entry)}
<section class="caution">
<h2 id="cautions">Before you apply anything</h2>
<p>${labelRules}</p>
${cautionsOf(entry)}
</section>
<section>
<h2 id="traps">Where people go wrong</h2>
${list(traps.map(escaped))}
</section>
${nomenclature(entry)}
<section>
<h2 id="sources">Sources</h2>
<p>What the equation rests on: ${escaped(entry.basis)}.</p>
${sources.length === 0 ? "" : list(sources.map(sourceText))}
${evidenceOf(entry, around)}
</section>
${also.length === 0 ? "" : `<section>\n<h2 id="more">More</h2>\n${list(also)}\n</section>`}`,
  };
};
