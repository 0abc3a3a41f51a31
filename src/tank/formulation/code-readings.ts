import { frozen } from "../../quantity/index.js";
import type { Formulation } from "./formulation.js";

/** What a code says of the kind of product: one kind, one of several, none that is mixed, or not enough. */
export type CodeReading =
  | Formulation
  | { readonly choices: readonly Formulation[] }
  | { readonly notMixed: string }
  | { readonly unclear: string };

const dust: CodeReading = { notMixed: "dust" };
const granule: CodeReading = { notMixed: "granule" };
const liquid: CodeReading = { choices: ["SL", "SC", "EC"] };

/** Codes on US labels as loading orders and study lists of the United States use them today. */
const usLabel: Readonly<Record<string, CodeReading>> = {
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
  WSP: { choices: ["water-soluble packet", "SP", "WP"] },
  S: { choices: ["SL", "SP"] },
  L: liquid,
  LC: liquid,
  C: { unclear: "concentrate" },
  GL: { choices: ["GL", "GW"] },
  A: { notMixed: "aerosol" },
  B: { notMixed: "bait" },
  D: dust,
  G: granule,
  P: { notMixed: "pellets" },
  RTU: { notMixed: "ready to use" },
  ULV: { notMixed: "ultra-low volume" },
};

const newEngland: Readonly<Record<string, CodeReading>> = {
  AS: "SC",
  AF: "SC",
  D: dust,
  DF: "WG",
  E: "EC",
  EC: "EC",
  F: "SC",
  FL: "SC",
  FM: "CS",
  G: granule,
  L: liquid,
  LC: liquid,
  S: { unclear: "soluble or spray concentrate" },
  SC: { unclear: "soluble or spray concentrate" },
  SL: { unclear: "slurry" },
  SP: "SP",
  WDG: "WG",
  WG: "WG",
  W: "WP",
  WP: "WP",
  "W/SL": "SL",
  WSP: { choices: ["WP", "SP"] },
};

const washington: Readonly<Record<string, CodeReading>> = {
  WP: "WP",
  L: { choices: ["SL", "EC"] },
  LC: { choices: ["SL", "EC"] },
  EC: "EC",
  SC: { unclear: "spray concentrate" },
  DF: "WG",
  WDG: "WG",
  F: "SC",
  SP: "SP",
  S: "SP",
  D: dust,
  G: granule,
};

/** What each US list says of a code. */
export const codeReadings: Readonly<
  Record<"US label" | "New England" | "Washington", Readonly<Record<string, CodeReading>>>
> = /* @__PURE__ */ frozen({
  "US label": usLabel,
  "New England": newEngland,
  Washington: washington,
});
