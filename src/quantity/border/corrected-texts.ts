import { fail, type Problem } from "../errors/errors.js";
import { cleanText, textLimit } from "../text/clean-text.js";
import { readParts } from "./read.js";
import { checkExpected, type ExpectedQuantity } from "./record.js";

/** How many slips of one text are put right, one after the other. */
const mostSlips = 3;
/** A message shows no more of a text: what is longer may be cut. */
const shownWhole = 60;

/** What a message has in quotes. */
const unquoted = (got: string): string => (/^".*"$/.test(got) ? JSON.parse(got) : got);

/** The text with each of the corrections that a problem names in the place of what it is about. */
const corrections = (text: string, { code, got, suggestion, choices }: Problem): readonly string[] => {
  const part = unquoted(got);
  const instead = suggestion === undefined ? (choices ?? []) : [suggestion];
  if (part === text) return instead;
  // a number stands in front, a unit behind
  const found = (one: string): number =>
    one.length < shownWhole ? text[code === "text" ? "indexOf" : "lastIndexOf"](one) : -1;
  // `measures: "imperial"` reads "2 cups" as imp cups
  const typed = found(part) < 0 ? part.replace(/\bimp /g, "") : part;
  const at = found(typed);
  if (at < 0) return [];
  // 5 a may be 5 x 100 m2; 5 100 m2 are 5100
  const counted = (one: string): string => (code !== "text" && /^\d/.test(one) ? `x ${one}` : one);
  const after = text.slice(at + typed.length);
  // "3 x 100 m2" for the number of 3 100 m2 has its unit with it
  return instead.map((one) =>
    code === "text" && /[a-z]/i.test(one) ? one : text.slice(0, at) + counted(one) + after,
  );
};

const readable = (text: string, wanted: ExpectedQuantity, slips: number): readonly string[] => {
  const [problem, ...others] = readParts(text, wanted).problems;
  if (problem === undefined) return [text];
  // in "50 ft x 30 m" a word for the unit alone would lose what else was not understood
  const loses = others.some(({ got }) => unquoted(problem.got).includes(unquoted(got)));
  return slips === 0 || loses
    ? []
    : corrections(text, problem).flatMap((one) => readable(one, wanted, slips - 1));
};

/**
 * The texts that a typed text most likely stands for, each of which `readQuantity` reads: for a button beside the field.
 * They have the suggestion or the choices of each problem in the place of what was not understood. Empty where the text
 * reads as it is, where it is blank, and where no correction is near.
 *
 * @param text - what was typed
 * @param expected - as {@link readQuantity} takes it
 * @throws RatewrightError `type`, `missing` for anything but a text; `type`, `substance/unknown` where `expected` is wrong
 *
 * @example
 * ```ts
 * import { correctedTexts } from "ratewright";
 * correctedTexts("6 oz/1000", { dimension: "volume/area", of: "product" }); // => ["6 fl oz/1000 ft2"]
 * correctedTexts("0,75 lb/M", { dimension: "mass/area", of: "N" }); // => ["0.75 lb/M"]
 * correctedTexts("2 ton", { dimension: "mass" }); // => ["2 US ton", "2 tonne"]
 * correctedTexts("2 lb", { dimension: "mass" }); // => []
 * ```
 */
export const correctedTexts = (text: string, expected: ExpectedQuantity): string[] => {
  checkExpected(expected);
  if (typeof text !== "string") return fail("type", "text", text, "a text, as it was typed");
  if (text.length > textLimit) return [];
  const clean = cleanText(text);
  const found = readable(clean, expected, mostSlips);
  return [...new Set(found)].filter((one) => one !== clean);
};
