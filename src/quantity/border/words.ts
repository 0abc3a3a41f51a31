import { shown } from "../errors/errors.js";
import { unitsIn } from "../text/aliases.js";
import { cleanText, textLimit } from "../text/clean-text.js";
import { suggestSubstance, suggestUnit } from "../text/suggest.js";
import { formsOf } from "../text/two-forms.js";
import { readRest } from "../text/unit-reading.js";
import type { Dimension } from "../unit/dimensions.js";
import { type PartProblem, problem, type Words } from "./parts.js";

/** A text in the field of a unit that is none: the choices and suggestions are those of a typed text. */
const unknownUnit = (unit: string, dimension: Dimension | undefined, expected: string): PartProblem => {
  const near = suggestUnit(unit, dimension);
  if (near !== undefined || unit.length > textLimit)
    return problem("unit/unknown", "unit", shown(unit), expected, near);
  const read = readRest(cleanText(unit), dimension);
  if (read.unit !== undefined && read.divisor !== 1) {
    const sum =
      read.divisor < 1
        ? `multiply the value by ${Math.round(1 / read.divisor)}`
        : `divide the value by ${read.divisor}`;
    const how = `${sum} and give ${read.unit}, or read the text as a whole with parseQuantity`;
    return {
      ...problem("unit/unknown", "unit", shown(unit), `${expected}; ${how}`),
      params: { unit: read.unit, divisor: read.divisor },
    };
  }
  const found = read.problems.find(({ code }) => code === "unit/ambiguous");
  if (found === undefined) {
    const period = read.problems.find(({ expected }) => /period/.test(expected))?.expected ?? expected;
    return problem("unit/unknown", "unit", shown(unit), period);
  }
  const written = found.choices as readonly string[];
  const choices = unitsIn(written);
  if (choices.length === 0) {
    const names = `${written.join(" or ")}, which parseQuantity reads in a text`;
    return problem("unit/unknown", "unit", shown(unit), `${found.expected}: ${names}`);
  }
  return { ...problem("unit/ambiguous", "unit", shown(unit), found.expected), choices };
};

/** The words of a record `{ value, unit, of }`, read as those of a typed text. */
export const words: Words = { unit: unknownUnit, substance: suggestSubstance, substances: formsOf };
