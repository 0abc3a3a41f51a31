import { type Problem, shown } from "../errors/errors.js";

/** A word that is printed for an ion and for what is counted of it. */
interface TwoForms {
  readonly word: RegExp;
  /** What the word is read as where the caller wants just that. */
  readonly read: string;
  /** What it may mean, as it can be typed in its place. */
  readonly forms: readonly string[];
  readonly expected: string;
  /** The units with which it is in doubt; all but those of charge where left out. */
  readonly units?: RegExp;
}

/**
 * Laboratories report nitrate as NO3 and as nitrogen, sulfate as SO4 and as sulfur. In pounds and kilograms "phosphate" is
 * the P2O5 of a fertilizer guarantee; in milligrams and parts per million it may be the ion or the element as well.
 * "Potash" is K2O everywhere.
 *
 * Factors: by the formulas, NO3/N = 62.004/14.007, SO4/S = 96.06/32.06, PO4/P = 94.97/30.974 (atomic weights of
 * IUPAC/CIAAW; `tests/quantity/text/two-forms.test.ts` computes them).
 */
const table: readonly TwoForms[] = [
  {
    word: /\bnitrates?\b/i,
    read: "NO3",
    forms: ["NO3-N", "NO3"],
    expected: "nitrate as nitrogen (NO3-N) or as the ion (NO3): 1 of NO3-N is 4.43 of NO3",
  },
  {
    word: /\bsul(?:f|ph)ates?\b/i,
    read: "SO4",
    forms: ["S", "SO4"],
    expected: "sulfate as sulfur (S) or as the ion (SO4): 1 of S is 3.00 of SO4",
  },
  {
    word: /\b(?:ortho)?phosphates?\b/i,
    read: "P2O5",
    forms: ["P", "other:PO4", "P2O5"],
    expected: "phosphate as the element P, as the ion PO4 or as P2O5: 1 of P is 3.07 of PO4 and 2.29 of P2O5",
    units: /mg|ppm|million|meq|mmolc/i,
  },
];

/** A charge is one of ions, however they are weighed. */
const charge = /meq|molc/;

/** The substances that a word alone may mean; `undefined` where it means one or none. */
export const formsOf = (word: string): readonly string[] | undefined =>
  table.find((one) => one.units === undefined && one.word.exec(word)?.[0] === word.trim())?.forms;

/**
 * What is wrong with a word that means two things, in a text whose substance was read as `of`, where the caller does not
 * want just that substance. The choices stand in the place of the word.
 */
export const unclearForm = (
  text: string,
  unit: string | undefined,
  of: string,
  wanted: string | undefined,
): Omit<Problem, "path"> | undefined => {
  const sides = of.split("/");
  const found = table.find(
    ({ word, read, units }) =>
      sides.includes(read) &&
      wanted?.split("/").includes(read) !== true &&
      (units === undefined ? !charge.test(unit ?? text) : units.test(unit ?? text)) &&
      word.test(text) &&
      // the form was said: "nitrate as NO3", "sulfate ion", "available phosphate"
      !new RegExp(`\\b${read}\\b|\\bion\\b|\\bavailable\\b`, "i").test(text),
  );
  return found === undefined
    ? undefined
    : {
        code: "substance/ambiguous",
        got: shown(found.word.exec(text)?.[0]),
        expected: found.expected,
        choices: found.forms.map((form) =>
          text.replace(found.word, form).replace(/(?:\bof )?other:/, "of other:"),
        ),
      };
};
