import { fail, shown } from "../quantity/index.js";
import { type Formulation, formulations, isFormulation } from "./formulation.js";
import { internationalCodes } from "./international-codes.js";

/** Which list of codes a label follows. */
export type CodeScheme = "international" | "US label";

type Reading = Formulation | { readonly choices: readonly Formulation[] } | { readonly notMixed: string };

/**
 * Abbreviations on US labels and in US extension texts. Where the US sources themselves disagree, the
 * code stays open and the choices are listed.
 *
 * Sources: New England Vegetable Management Guide, abbreviations; Washington State University, crop
 * protection guide, formulations; North Dakota State, Oklahoma State and Iowa State loading orders.
 */
const usCodes: Readonly<Record<string, Reading>> = {
  W: "WP",
  WP: "WP",
  WG: "WG",
  WDG: "WG",
  DG: "WG",
  DF: "WG",
  SG: "SG",
  SP: "SP",
  F: "SC",
  FL: "SC",
  AF: "SC",
  AS: "SC",
  ASC: "SC",
  SC: "SC",
  CS: "CS",
  FM: "CS",
  M: "CS",
  ME: "CS",
  SE: "SE",
  EW: "EW",
  E: "EC",
  EC: "EC",
  OD: "OD",
  SL: "SL",
  "W/SL": "SL",
  AMS: "conditioner",
  NIS: "surfactant",
  COC: "oil adjuvant",
  MSO: "oil adjuvant",
  WSP: { choices: ["packet", "SP", "WP"] },
  S: { choices: ["SL", "SP"] },
  L: { choices: ["SL", "SC", "EC"] },
  LC: { choices: ["SL", "SC", "EC"] },
  GL: { choices: ["GL", "GW"] },
  A: { notMixed: "aerosol" },
  B: { notMixed: "bait" },
  D: { notMixed: "dust" },
  G: { notMixed: "granule" },
  P: { notMixed: "pellets" },
  RTU: { notMixed: "ready to use" },
  ULV: { notMixed: "ultra-low volume" },
};

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
    "packet: water-soluble packet (US label)",
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

const internationalReading = (code: string): Reading | undefined => {
  if (/^[A-Z]{2}[- ]?SB$/.test(code)) return "packet";
  if (code.length !== 2) return undefined;
  if (isFormulation(code)) return code;
  const meaning = Object.entries(internationalCodes).find(([key]) => key === code)?.[1];
  return meaning === undefined ? undefined : { notMixed: meaning };
};

const usReading = (code: string): Reading | undefined =>
  Object.entries(usCodes).find(([key]) => key === code)?.[1];

const settle = (code: string, reading: Reading): Formulation => {
  if (typeof reading === "string") return reading;
  if ("choices" in reading) {
    return fail("type", "code", code, "a code with one meaning", {
      choices: meanings[code] ?? reading.choices.map((choice) => `${choice}: ${formulations[choice].name}`),
    });
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
 * sources disagree among themselves.
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
 * formulationOf("WG-SB", { scheme: "international" }); // => "packet"
 * ```
 */
export const formulationOf = (code: string, options: { readonly scheme?: CodeScheme } = {}): Formulation => {
  if (typeof code !== "string") return fail("type", "code", code, "the letters on the label");
  const text = code.trim();
  if (text.length > 2 && isFormulation(text)) return text;
  const key = text.toUpperCase();
  const { scheme } = options;
  const unknown = (): never =>
    fail("type", "code", code, "a formulation code, such as WP, WG, SC, EC or SL", {
      ...(meanings[key] === undefined ? {} : { choices: meanings[key] }),
    });
  if (scheme === "international") return settle(key, internationalReading(key) ?? unknown());
  if (scheme === "US label") return settle(key, usReading(key) ?? unknown());
  if (scheme !== undefined) {
    return fail("type", "options.scheme", scheme, '"international" or "US label"');
  }
  const choices = meanings[key];
  if (choices !== undefined) {
    return fail("type", "code", code, "a code with one meaning, or the scheme that the label follows", {
      choices,
    });
  }
  const [abroad, home] = [internationalReading(key), usReading(key)];
  if (abroad !== undefined && home !== undefined && abroad !== home) {
    return fail("type", "code", code, "the scheme that the label follows", {
      choices: [`international: ${shown(abroad)}`, `US label: ${shown(home)}`],
    });
  }
  return settle(key, abroad ?? home ?? unknown());
};
