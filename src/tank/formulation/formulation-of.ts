import { hasOwn } from "../../quantity/house.js";
import { expectFields, fail, shown } from "../../quantity/index.js";
import { type CodeReading, codeReadings } from "./code-readings.js";
import { type Formulation, formulations, isFormulation } from "./formulation.js";
import { internationalCodes } from "./international-codes.js";
import { labelAbbreviations } from "./label-abbreviations.js";
import { kindByWord } from "./trade-words.js";

/** Which list of codes a label follows. */
export type CodeScheme = "international" | keyof typeof codeReadings;

/** What the codes that change their meaning from list to list are said to mean, and by whom. */
const meanings: Readonly<Record<string, readonly string[]>> = {
  SL: ["SL: soluble concentrate (international)", "slurry (New England)"],
  SC: [
    "SC: suspension concentrate (international)",
    "soluble or spray concentrate (New England, Washington)",
  ],
  ME: ["ME: micro-emulsion (international)", "CS: microencapsulated (US label)"],
  WG: ["WG: water dispersible granule (international)", "WG: wettable granule (New England)"],
  WSP: [
    "water-soluble packet (US label)",
    "SP: water-soluble powder (US label)",
    "WP: wettable powder (New England)",
  ],
  S: ["SL: solution (US label)", "SP: soluble powder (Washington)", "SL: soluble concentrate (New England)"],
  L: ["SL: water-soluble liquid (Washington)", "SC: flowable (US label)", "EC: some makers (Washington)"],
  LC: ["SL: water-soluble liquid (Washington)", "SC: flowable (US label)", "EC: some makers (Washington)"],
  SD: ["suspension for direct application, not mixed (international)", "no US meaning known"],
  GL: ["GL: emulsifiable gel (international)", "gel of either kind (US label)"],
  P: ["pellets, not mixed (US label)", "no international meaning"],
};

const internationalReading = (code: string): CodeReading | undefined => {
  const inBag = /^([A-Z]{2})[- ]?SB$/.exec(code)?.[1];
  if (inBag !== undefined && Object.keys(internationalCodes).includes(inBag)) return "water-soluble packet";
  if (code.length !== 2) return undefined;
  if (isFormulation(code)) return code;
  const meaning = Object.entries(internationalCodes).find(([key]) => key === code)?.[1];
  return meaning === undefined ? undefined : { notMixed: meaning };
};

const listed = (scheme: keyof typeof codeReadings, code: string): CodeReading | undefined => {
  const readings: Readonly<Record<string, CodeReading>> = codeReadings[scheme];
  return hasOwn(readings, code) ? readings[code] : undefined;
};

const settle = (code: string, reading: CodeReading): Formulation => {
  if (typeof reading === "string") return reading;
  if ("choices" in reading) {
    return fail("type", "code", code, "a code with one meaning", {
      choices: meanings[code] ?? reading.choices.map((choice) => `${choice}: ${formulations[choice].name}`),
    });
  }
  if ("unclear" in reading) {
    return fail(
      "type",
      "code",
      code,
      `a code that says which kind it is; here it says "${reading.unclear}"`,
      {
        choices: meanings[code] ?? ["SL", "SC", "EC"],
      },
    );
  }
  return fail(
    "infeasible",
    "code",
    code,
    `a product that is mixed into the tank; this is "${reading.notMixed}"`,
  );
};

/**
 * The kind of formulation that a code on a label stands for.
 *
 * The same letters mean different things in different lists: international SC is a suspension
 * concentrate, in New England it is a soluble or spray concentrate; international ME is a
 * micro-emulsion, on US labels it is microencapsulated. Such a code is refused with its choices unless
 * `scheme` says which list the label follows; WSP, S, L, LC and GL stay ambiguous on US labels, for US
 * sources disagree among themselves (`"New England"` and `"Washington"` name two of them).
 *
 * @param code - letters as printed, in either case; a name of {@link formulations} is taken as it is
 * @param options - `scheme`: which list the label follows
 * @throws RatewrightError `type` for an unknown or ambiguous code, `infeasible` for one that is not mixed
 *
 * Source: CropLife International, Technical Monograph No. 2 (2017); New England Cooperative Extension
 * and Washington State University, lists of abbreviations.
 *
 * @example
 * ```ts
 * import { formulationOf } from "ratewright/tank";
 * formulationOf("WP"); // => "WP"
 * formulationOf("ME", { scheme: "US label" }); // => "CS"
 * formulationOf("ME", { scheme: "international" }); // => "ME"
 * formulationOf("WG-SB", { scheme: "international" }); // => "water-soluble packet"
 * ```
 */
export const formulationOf = (code: string, options: { readonly scheme?: CodeScheme } = {}): Formulation => {
  if (typeof code !== "string") return fail("type", "code", code, "the letters on the label");
  const text = code.trim();
  const name = text.toLowerCase();
  if (name.length > 2 && isFormulation(name)) return name;
  const key = text.toUpperCase();
  const { scheme } = expectFields(options, ["scheme"], "options");
  const word = kindByWord(text.slice(0, 64));
  const unknown = (): never =>
    fail(
      "type",
      "code",
      code,
      `a formulation code, such as WP, WG, SC, EC or SL${/^\d/.test(key) ? "; jugCode reads one with a number, such as 75WDG" : ""}`,
      {
        ...(meanings[key] === undefined ? {} : { choices: meanings[key] }),
        ...(word === undefined ? {} : { suggestion: word }),
      },
    );
  if (scheme === "international") return settle(key, internationalReading(key) ?? unknown());
  if (scheme !== undefined) {
    const known = Object.keys(codeReadings).find((name) => name === scheme) as keyof typeof codeReadings;
    if (known !== undefined) return settle(key, listed(known, key) ?? unknown());
    return fail("type", "options.scheme", scheme, "a list of codes", {
      choices: ["international", ...Object.keys(codeReadings)],
    });
  }
  const choices = meanings[key];
  if (choices !== undefined) {
    return fail("type", "code", code, `a code with one meaning, ${byScheme(code)}`, {
      choices,
    });
  }
  const [abroad, home] = [internationalReading(key), listed("US label", key)];
  if (abroad !== undefined && home !== undefined && abroad !== home) {
    return fail("type", "code", code, `a code that all lists read alike, ${byScheme(code)}`, {
      choices: [`international: ${shown(abroad)}`, `US label: ${shown(home)}`],
    });
  }
  return settle(key, abroad ?? home ?? unknown());
};

/** How a code of several meanings is read. */
const byScheme = (code: string): string =>
  `or the list that the label follows: formulationOf(${shown(code)}, { scheme: "international" })`;

/** What one list says that a code means. */
export interface CodeMeaning {
  readonly scheme: string;
  readonly meaning: string;
}

/**
 * What a code means in every list that has it: the international one and those printed in the United
 * States. More than one line with different meanings is why {@link formulationOf} asks for the scheme.
 *
 * @param code - letters as printed, in either case
 * @throws RatewrightError `type`
 *
 * Source: `internationalCodes` and `labelAbbreviations`, each with its own.
 *
 * @example
 * ```ts
 * import { codeMeanings } from "ratewright/tank";
 * codeMeanings("SL").map(({ scheme, meaning }) => `${scheme}: ${meaning}`);
 * // => ["international: soluble concentrate", "New England: slurry"]
 * codeMeanings("QQ"); // => []
 * ```
 */
export const codeMeanings = (code: string): readonly CodeMeaning[] => {
  if (typeof code !== "string") return fail("type", "code", code, "the letters on the label");
  const key = code.trim().toUpperCase();
  const lists: readonly (readonly [string, Readonly<Record<string, string>>])[] = [
    ["international", internationalCodes],
    ...Object.entries(labelAbbreviations).map(([scheme, { meanings: list }]) => [scheme, list] as const),
  ];
  return lists.flatMap(([scheme, list]) => {
    const meaning = Object.entries(list).find(([letters]) => letters === key)?.[1];
    return meaning === undefined ? [] : [{ scheme, meaning }];
  });
};
