import { fail } from "../../quantity/index.js";
import { type Formulation, isFormulation } from "./formulation.js";
import { formulationOf } from "./formulation-of.js";
import { kindByWord } from "./trade-words.js";

/** The kind that a code or a word most likely means. */
const meant = (text: string): Formulation | undefined => {
  const known = kindByWord(text);
  if (known !== undefined) return known;
  try {
    return formulationOf(text);
  } catch {
    return undefined;
  }
};

/** Takes an argument as a kind of formulation, or throws with its path and with the kind that a code stands for. */
export const expectFormulation = (input: unknown, path: string): Formulation => {
  if (isFormulation(input)) return input;
  const near = typeof input === "string" && input.length <= 64 ? meant(input) : undefined;
  return fail(
    "type",
    path,
    input,
    "a kind of formulation, such as WP, SC or surfactant; formulationOf reads codes",
    near === undefined ? {} : { suggestion: near },
  );
};
