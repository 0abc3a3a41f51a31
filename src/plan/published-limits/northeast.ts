import type { LimitSet } from "../limit.js";
import { ft, limitSet } from "./common.js";

const guarded = ["rotary spreader with deflector", "drop spreader"] as const;
const buffer = { bufferAtLeast: ft(10) } as const;

/** New York: phosphorus, dates and distance. Its closed dates are meant for any fertilizer, potash included. */
export const newYorkLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-ny",
  name: "New York, lawn and non-agricultural turf",
  source: {
    title: "Environmental Conservation Law 17-2103",
    publisher: "New York Consolidated Laws",
    where: "1, 3",
  },
  limits: {
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0.67,
      unless: [{ soilTest: { months: 1200, shortOf: "P" } }, { growingSeasonAtMost: 1 }],
    },
    "closed-dates": { kind: "closed dates", of: "any", closed: { from: "12-01", to: "04-01" } },
    setback: {
      kind: "setback",
      of: "any",
      atLeast: ft(20),
      unless: [buffer, { equipment: guarded }, { growingSeasonAtMost: 1 }],
    },
    "setback-with-guard": {
      kind: "setback",
      of: "any",
      atLeast: ft(3),
      scope: { equipment: guarded },
      unless: [buffer, { growingSeasonAtMost: 1 }],
    },
  },
  notHeld: [
    "Whether the first of December and of April are themselves closed: between can be read either way, and here they are.",
    "How old the soil test may be. The share of 0.67 % phosphate comes from a regional summary.",
  ],
});

/** Vermont: the definitions that make a product a nitrogen or phosphorus fertilizer. */
export const vermontLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-vt",
  name: "Vermont, turf",
  source: { title: "10 V.S.A. 1266b", publisher: "Vermont Statutes", year: 2012, where: "(a)" },
  limits: {
    "slow-share": {
      kind: "slow share",
      atLeastPercentOfN: 15,
      unless: [{ place: ["golf course"] }],
    },
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0.67,
      unless: [{ place: ["golf course"] }, { soilTest: { months: 18, shortOf: "P" } }],
    },
  },
  notHeld: ["The age of the soil test, under 18 months, comes from a regional summary."],
});

/** Connecticut: phosphate on established turf. */
export const connecticutLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-ct",
  name: "Connecticut, established turf",
  source: {
    title: "Summary of northeastern state laws on turf fertilizers 1990-2012",
    publisher: "regional summary table",
    year: 2012,
    where: "Connecticut column, PA 12-155",
  },
  limits: {
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0.67,
      scope: { turf: ["established"] },
      unless: [{ soilTest: { months: 24, shortOf: "P" } }],
    },
  },
  notHeld: ["The soil test has to be less than two years old; one of exactly two years is taken here."],
});

/** Manitoba: phosphorus on urban turf. */
export const manitobaLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "ca-mb",
  name: "Manitoba, urban turf",
  source: {
    title: "Nutrient Management Regulation",
    publisher: "Province of Manitoba",
    year: 2009,
    where: "Zone N5",
    url: "https://www.manitoba.ca/sd/water/lakes-beaches-rivers/nutrient_management/",
  },
  limits: {
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 1,
      unless: [{ growingSeasonAtMost: 2 }],
    },
  },
  notHeld: [],
});
