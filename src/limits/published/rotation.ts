import type { LimitSet } from "../limit/limit.js";
import { limitSet } from "./common.js";

const ai = (names: string): readonly string[] => names.split(" ").map((name) => `ai:${name}`);

const groups = {
  "1": ai("thiophanate-methyl"),
  "2": ai("iprodione vinclozolin"),
  "4": ai("mefenoxam metalaxyl metalaxyl-M"),
  "7": ai("boscalid fluopyram flutolanil fluxapyroxad isofetamid penthiopyrad pydiflumetofen"),
  "11": ai("azoxystrobin fluoxastrobin mandestrobin pyraclostrobin trifloxystrobin"),
  "21": ai("cyazofamid"),
} as const;

const notInARow = (group: keyof typeof groups) =>
  ({ kind: "rotation", group: `FRAC ${group}`, of: groups[group], atMostInARow: 1 }) as const;

/**
 * Fungicides on turf in Australia: no two sprays in a row of a group of medium to high risk. A strategy of the makers,
 * not a law; the label wins.
 */
export const australianTurfFungicideLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "au-turf-fungicides",
  name: "Australia, resistance strategy for fungicides on turf",
  source: {
    title: "Turf, various: resistance management strategy",
    publisher: "CropLife Australia",
    year: 2026,
    where:
      "guidelines, last updated 24 June 2026; that cyazofamid is of group 21, from memory of the FRAC code list",
    url: "https://croplife.org.au/resources/programs/resistance-management/turf-various-4/",
  },
  // The rule was read, in the editions of 2019 and 2026; the active ingredients of groups 4, 7 and 11 on pages of the Fungicide
  // Resistance Action Committee, those of 1 and 2 in lists of turf fungicides (tests/published/rotation.ts); cyazofamid in none.
  reached: "from memory",
  limits: {
    "1": notInARow("1"),
    "2": notInARow("2"),
    "4": notInARow("4"),
    "7": notInARow("7"),
    "11": notInARow("11"),
    "21": notInARow("21"),
  },
  notHeld: [
    "Two in a row are possible where the second is mixed with a fungicide of another group without known resistance.",
    "Nematicides of group N3, such as fluopyram, count as group 7, also where they are aimed at another pest.",
    "After sprays in a row of one of these groups, at least as many of other groups have to follow.",
    "Everything else in the strategy on single groups and on mixtures.",
  ],
});
