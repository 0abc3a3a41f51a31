import { nearName, suggestUnit } from "../../quantity/index.js";

/** A number that a machine wrote: `6e0`, `1.25e3`, `2.68E+01`. */
const scientific = /(^|[^\w.,])(\d{1,9}(?:\.\d{1,9})?)e([+-]?0{0,2}[0-6])(?![\w.,]*\d)/gi;

/** A text with its numbers as people write them: `6e0` is 6. */
export const withoutExponents = (text: string): string =>
  text.replace(
    scientific,
    (_, before: string, digits: string, power: string) => `${before}${Number(`${digits}e${power}`)}`,
  );

/** The word of a list that was meant where a key was missed: `bgs` for bags. Words of one or two letters are near to everything. */
export const wordMeant = (word: string, known: readonly string[]): string | undefined =>
  word.length < 3 ? undefined : nearName(word, known);

/** The unit that was meant where a key was missed, and no unit is written so: `punds`; a unit of anything else stays what it is. */
export const unitMissed = (text: string): string | undefined =>
  text.length < 3 ? undefined : suggestUnit(text);
