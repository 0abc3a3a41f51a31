import { frozen } from "../../quantity/index.js";

const internationalCodesTable = {
  AE: "aerosol dispenser",
  AL: "any other liquid, applied undiluted",
  AP: "any other powder (product), applied undiluted",
  BR: "briquette",
  CB: "bait concentrate",
  CP: "contact powder",
  CS: "capsule suspension",
  DC: "dispersible concentrate",
  DP: "dustable powder",
  DS: "powder for dry seed treatment",
  DT: "tablet for direct application",
  EC: "emulsifiable concentrate",
  EG: "emulsifiable granule",
  EO: "emulsion, water in oil",
  EP: "emulsifiable powder",
  ES: "emulsion for seed treatment",
  EW: "emulsion, oil in water",
  FS: "flowable concentrate for seed treatment",
  FU: "smoke generator",
  GA: "gas",
  GD: "gel for direct application",
  GE: "gas generating product",
  GL: "emulsifiable gel",
  GR: "granule",
  GS: "grease",
  GW: "water soluble gel",
  HN: "hot fogging concentrate",
  KK: "combi-pack solid/liquid",
  KL: "combi-pack liquid/liquid",
  KN: "cold fogging concentrate",
  LB: "long-lasting storage bag",
  LN: "long-lasting insecticidal net",
  LS: "solution for seed treatment",
  MC: "mosquito coil",
  ME: "micro-emulsion",
  MR: "matrix release",
  OD: "oil dispersion",
  OF: "oil miscible flowable concentrate",
  OL: "oil miscible liquid",
  OP: "oil dispersible powder",
  PA: "paste",
  PR: "plant rodlet",
  RB: "bait, ready for use",
  SC: "suspension concentrate (flowable concentrate)",
  SD: "suspension concentrate for direct application",
  SE: "suspo-emulsion",
  SG: "water soluble granule",
  SL: "soluble concentrate",
  SO: "spreading oil",
  SP: "water soluble powder",
  ST: "water soluble tablet",
  SU: "ultra-low volume suspension",
  TB: "tablet",
  TC: "technical material",
  TK: "technical concentrate",
  UL: "ultra-low volume liquid",
  VP: "vapour releasing product",
  WG: "water dispersible granule",
  WP: "wettable powder",
  WS: "water dispersible powder for slurry seed treatment",
  WT: "water dispersible tablet",
  XX: "other",
  ZC: "mixed formulation of CS and SC",
  ZE: "mixed formulation of CS and SE",
  ZW: "mixed formulation of CS and EW",
} as const;

/**
 * The international two-letter codes for formulation types and what they stand for.
 *
 * Source: CropLife International, Technical Monograph No. 2, "Catalogue of pesticide formulation types
 * and international coding system", 7th edition, March 2017 (read in a transcription of its list).
 */
export const internationalCodes: typeof internationalCodesTable =
  /* @__PURE__ */ frozen(internationalCodesTable);

/** A code of the list. */
export type InternationalCode = keyof typeof internationalCodes;
