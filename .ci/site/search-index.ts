// The index of words, built with the site.
import MiniSearch from "minisearch";
import { unitName } from "../../src/quantity/index.js";
import { type CatalogueEntry, equationText } from "../../src/teach/index.js";
import { type Indexed, indexOptions } from "./client/search-options.js";
import { tradeWords } from "./trade-words.js";

/** A formula as it is looked up: by its question, the words of the trade, its units and what goes in. */
export const indexedFormula = (entry: CatalogueEntry, questions: readonly string[]): Indexed => {
  const { id, name, room, title, inputs, output, traps, equation } = entry;
  const units = Object.values(output.usualUnits).flatMap((unit) => [unit, unitName(unit)]);
  return {
    id: `formulas/${id}.html`,
    title,
    kind: "formula",
    line: questions[0] ?? equationText(equation),
    said: tradeWords[id] ?? "",
    words: [...questions, ...units, name, name.replace(/([A-Z])/g, " $1")].join(" "),
    text: [room, output.label, ...inputs.map(({ label }) => label), ...traps].join(" "),
  };
};

/** The index as a script that the search page runs first. */
export const searchScript = (documents: readonly Indexed[]): string => {
  const index = new MiniSearch<Indexed>(indexOptions);
  index.addAll(documents);
  return `globalThis.searchIndex = ${JSON.stringify(JSON.stringify(index))};\n`;
};
