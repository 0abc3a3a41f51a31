// How words are indexed and looked up; the build and the page have to agree.
import type { Options, SearchOptions } from "minisearch";

/** What a search finds. */
export interface Found {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  /** What it is, in a line. */
  readonly line: string;
}

/** What is indexed of it. */
export interface Indexed extends Found {
  /** What people call it in the trade. */
  readonly said: string;
  /** Other words of its own: questions, units, headings. */
  readonly words: string;
  readonly text: string;
}

const idle = new Set(
  "a an and are at by can do does for from how i if in into is it its many me my need of on one or per should so take takes that the then there this to use was we what when where which will with you your".split(
    " ",
  ),
);

/** A word without its plural, so that bags find a bag; a word that says nothing is left out. */
const stem = (word: string): string | null => {
  const lower = word.toLowerCase();
  if (idle.has(lower)) return null;
  if (/^(gallons?|gals?)$/.test(lower)) return "gallon";
  return lower.length > 3 ? lower.replace(/ies$/, "y").replace(/([^su])s$/, "$1") : lower;
};

export const indexOptions: Options<Indexed> = {
  fields: ["title", "said", "words", "text"],
  storeFields: ["title", "kind", "line"],
  processTerm: stem,
};

export const searchOptions: SearchOptions = {
  boost: { title: 3, said: 6, words: 2 },
  prefix: (term) => term.length > 2,
  fuzzy: (term) => (term.length > 4 ? 0.2 : false),
  weights: { prefix: 0.5, fuzzy: 0.2 },
  boostDocument: (_id, _term, stored) =>
    stored?.kind === "formula" ? 1.4 : stored?.kind === "reference" ? 0.4 : 1,
};
