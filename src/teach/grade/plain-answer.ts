import type { QuizProblem } from "../topics/quiz-problem.js";
import { inDigits } from "./number-words.js";
import { withoutExponents } from "./slips.js";

const fillers =
  /\b(?:about|approximately|approx\.?|roughly|around|circa|ca\.|nearly|exactly|just|only|the answer is|my answer is|answer|it is|it's|it takes|that is|that's|i get|i got|i think|we need|you need|i need|they need|needs?|takes?|in total|total|altogether|equals|comes to|is|would be)\b[:.]?|[~≈=]/gi;

/** What is said beside a count, of how large each is: `6 bags (50 lb)`, `6 50-lb bags`. */
const withoutSizes = (text: string): string =>
  text
    .replace(/\([^()]*\)/g, " ")
    .replace(/ of \d+(?:\.\d+)?[ -]?(?:lbs?|pounds?|kg|gal(?:lons?)?|L|liters?)\b(?: each)?/gi, " ")
    .replace(/(\d\s+)\d+(?:\.\d+)?[ -](?:lbs?|pounds?|kg|gal(?:lons?)?|L|liters?)\b/gi, "$1 ");

/**
 * An answer without the marks about it: `"26.8 lb"`, `(26.8)`, `**26.8 lb**`. 5" is five inches, and has one mark only.
 */
export const unwrapped = (text: string): string =>
  /^(["'“”„«]+)(.*[^"'“”«»])(["'”“»]+)$/s.exec(text)?.[2]?.trim() ??
  /^[([*_`]+([^()[\]*_`]+)[)\]*_`]+[.!]?$/.exec(text)?.[1]?.trim() ??
  text;

/** `5 dollars and 75 cents` as one amount of money. */
const inOneAmount = (text: string): string =>
  text.replace(
    /(\d+) ?(dollars?|euros?),?(?: and)? (\d{1,2})(?: ?cents?)?$/i,
    (_, whole: string, name: string, part: string) => `${whole}.${part.padStart(2, "0")} ${name}`,
  );

/** An answer in plain digits, with its hours and minutes apart and without words that say nothing. */
export const plainAnswer = (text: string, { answer }: QuizProblem): string => {
  const counted = answer.noun === undefined ? text.replace(/[()[\]]/g, " ") : withoutSizes(text);
  const plain = withoutExponents(inDigits(counted))
    .replace(/\^(?=[23])/g, "")
    .replace(/[０-９]/g, (sign) => String("０１２３４５６７８９".indexOf(sign)))
    .replace(/[₀-₉]/g, (sign) => String("₀₁₂₃₄₅₆₇₈₉".indexOf(sign)))
    .replace(/(\d+(?:\.\d+)?) thousand\b(?! ?(?:sq|ft))/gi, (_, digits) => String(Number(digits) * 1000))
    // m.p.h., g.p.a.
    .replace(/\b([a-z])\.([a-z])\.([a-z])\b\.?/gi, "$1$2$3")
    // hours and minutes
    .replace(/\b(\d{1,2}):([0-5]\d)(?= ?h)/gi, "$1 h $2 min")
    .replace(/(\d) ?h(?:(?:ou)?rs?)? ?([0-5]?\d)(?: ?m(?:in)?)?$/i, "$1 h $2 min")
    .replace(/( min) ?h(?:(?:ou)?rs?)?\b/gi, "$1")
    .replace(fillers, " ")
    .replace(/\s+/g, " ")
    .trim();
  return answer.unit.startsWith("money:") ? inOneAmount(plain) : plain;
};
