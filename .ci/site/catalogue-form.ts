// The form of a formula, from its entry in the catalogue: a field for each input, the units to choose from, the result.
import { unitSymbol } from "../../src/quantity/index.js";
import { type CatalogueEntry, type CatalogueInput, equationMathML } from "../../src/teach/index.js";
import { exampleInputs } from "./example-inputs.js";
import { escaped } from "./html.js";
import { unitOptions } from "./unit-picker.js";

/** The symbol of a variable as MathML, as the equation has it. */
export const symbolMath = (symbol: string): string => {
  const [, mark] = /<mo>=<\/mo>(.*)<\/mrow><\/math>$/.exec(equationMathML(`x = ${symbol}`)) ?? [];
  return `<math>${mark ?? `<mi>${escaped(symbol)}</mi>`}</math>`;
};

/** `of nitrogen` and the like stand in the label; the substance is named as the library has it. */
const substanceNote = (of: string): string => (of === "none" ? "" : `Of <code>${escaped(of)}</code>. `);

const rangeNote = ({ sensible: { min, max, unit } }: CatalogueInput): string => {
  const written = (value: number): string => value.toLocaleString("en-US");
  const symbol = unit === "1" || unit === "count" ? "" : ` ${unitSymbol(unit)}`;
  return `Practice problems have ${written(min)} to ${written(max)}${escaped(symbol)}.`;
};

const field = (input: CatalogueInput): string => {
  const { name, symbol, label, of, dimension } = input;
  const units =
    dimension === "count"
      ? `<input type="hidden" name="${name}.unit" value="count">`
      : `<select name="${name}.unit" aria-label="Unit: ${escaped(label)}">${unitOptions(input)}</select>`;
  return `<div class="field" data-input="${name}">
<label for="input-${name}">${symbolMath(symbol)} ${escaped(label)}</label>
<div class="amount"><input id="input-${name}" name="${name}" type="text" inputmode="decimal" autocomplete="off" maxlength="60" aria-describedby="problem-${name} note-${name}">${units}</div>
<p class="problem" id="problem-${name}"></p>
<p class="note" id="note-${name}">${substanceNote(of)}${rangeNote(input)}</p>
</div>`;
};

const resultUnits = (entry: CatalogueEntry): string =>
  entry.output.dimension === "count"
    ? `<input type="hidden" name="result" value="count">`
    : `<label>Result in <select name="result">${unitOptions(entry.output)}</select></label>`;

/** What the script of the page needs, and the page does not show. */
const dataOf = (entry: CatalogueEntry): string => {
  const { inputs, output } = entry;
  return escaped(
    JSON.stringify({
      id: entry.id,
      inputs: inputs.map(({ name, label, dimension, of, usualUnits }) => ({
        name,
        label,
        dimension,
        of,
        usualUnits,
      })),
      usualResult: output.usualUnits,
      examples: { US: exampleInputs(entry, "US"), metric: exampleInputs(entry, "metric") },
    }),
  );
};

/** The form with its result and its working, which the script of the page fills in. */
export const formOf = (
  entry: CatalogueEntry,
): string => `<form class="works" id="form" novalidate data-formula="${dataOf(entry)}">
<div class="given">
<h2 id="given">Given</h2>
<fieldset class="system"><legend>Units of the working</legend>
<label><input type="radio" name="units" value="US" checked> US customary</label>
<label><input type="radio" name="units" value="metric"> metric</label>
</fieldset>
${entry.inputs.map(field).join("\n")}
<div class="problems" id="problems" role="alert"></div>
<p class="buttons"><button type="submit">Work it out</button>
<button type="button" data-do="example">Example figures</button>
<button type="button" data-do="clear">Clear</button></p>
</div>
<div class="found">
<h2 id="result">Result</h2>
<p class="choices">${resultUnits(entry)}
<label>Digits <select name="digits"><option>3</option><option>4</option><option>5</option><option>6</option></select></label></p>
<p class="answer"><output id="answer" aria-live="polite">Fill in what is given.</output></p>
<noscript><p>This page computes with a script, and scripts are off.</p></noscript>
<ol class="working" id="working" aria-label="Working"></ol>
<p class="buttons"><button type="button" data-do="copy">Copy a link to this case</button> <span id="copied" role="status"></span></p>
</div>
</form>`;
