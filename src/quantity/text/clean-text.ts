import { hasOwn } from "../errors/has-own.js";

/** The longest text that is read as a quantity; more is refused unread. */
export const textLimit = 200;

/** Fractions and signs that Unicode itself takes apart: `½`, `℃`, `％` and all that is as wide as a letter of the East, `㎡`. */
const composed = /[¼-¾⅐-⅞℃℉﹣！-～㌀-㏿]/;
const simple: Readonly<Record<string, string>> = {
  "⁄": "/",
  "∕": "/",
  "÷": "/",
  "×": "x",
  µ: "u",
  μ: "u",
  º: "°",
  "˚": "°",
  "″": '"',
  "”": '"',
  "′": "'",
  "’": "'",
  "−": "-",
  ℓ: "L",
};
const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const subscripts = "₀₁₂₃₄₅₆₇₈₉";
/** Printable ASCII with single spaces inside: nothing to write in another way. */
const alreadyClean = /^[!-~]+(?: [!-~]+)*$/;
const isDigit = (character: string | undefined): boolean => /\d/.test(`${character}`);

/**
 * Writes the signs that people and word processors use in one way: fractions as `1/2`, dashes as `-`,
 * every space as one space, a superscript as `^2`. One pass over the text.
 */
export const cleanText = (text: string): string => {
  if (alreadyClean.test(text)) return text;
  let out = "";
  let raised = false;
  const characters = [...text];
  for (const [i, character] of characters.entries()) {
    const power = superscripts.indexOf(character);
    if (power >= 0 || character === "⁻") {
      // "^" keeps 10² from being read as 102
      out += (raised ? "" : "^") + (power >= 0 ? power : "-");
      raised = true;
      continue;
    }
    raised = false;
    const last = out.slice(-1);
    const index = subscripts.indexOf(character);
    const plain = composed.test(character)
      ? character.normalize("NFKC").replace("⁄", "/")
      : hasOwn(simple, character) && simple[character];
    if (index >= 0 && !isDigit(last)) out += index;
    // between digits a dot may be a decimal sign, and a soft hyphen was a hyphen before it was copied
    else if (/[·⋅∙]/.test(character)) out += isDigit(last) && isDigit(characters[i + 1]) ? character : " ";
    else if (character === "\u00ad") out += isDigit(last) && /[\d.]/.test(`${characters[i + 1]}`) ? "-" : "";
    else if (plain) {
      out += plain[1] === "/" && isDigit(last) ? ` ${plain}` : plain;
    } else if (/[\u200b-\u200d\u2060\ufeff]/.test(character)) out += "";
    else if (/[\u2010-\u2015]/.test(character)) out += "-";
    else if (/\s/.test(character)) out += " ";
    else out += character;
  }
  return out.replace(/ {2,}/g, " ").trim();
};
