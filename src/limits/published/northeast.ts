import type { LimitSet } from "../limit/limit.js";
import { ft, limitSet } from "./common.js";

const guarded = ["rotary spreader with deflector", "drop spreader"] as const;
const buffer = { bufferAtLeast: ft(10) } as const;

const turfFarm = { place: ["sod farm", "farm"] } as const;

/** New York: phosphorus, dates and distance. Its blackout dates are meant for any fertilizer, potash included. */
export const newYorkLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-ny",
  name: "New York, lawn and non-agricultural turf",
  source: {
    title: "Environmental Conservation Law 17-2101, 17-2103",
    publisher: "New York Consolidated Laws",
    where: "17-2101 3 and 4; 17-2103 1 and 3",
    url: "https://newyork.public.law/laws/n.y._environmental_conservation_law_section_17-2101",
  },
  limits: {
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0.67,
      exemptIf: [{ soilTest: { months: 1200, shortOf: "P" } }, { growingSeasonAtMost: 1 }, turfFarm],
    },
    "blackout-dates": {
      kind: "blackout dates",
      of: "any",
      blackout: { from: "12-01", to: "04-01" },
      exemptIf: [turfFarm],
    },
    setback: {
      kind: "setback",
      of: "any",
      atLeast: ft(20),
      exemptIf: [buffer, { equipment: guarded }, { growingSeasonAtMost: 1 }, turfFarm],
    },
    "setback-with-guard": {
      kind: "setback",
      of: "any",
      atLeast: ft(3),
      scope: { equipment: guarded },
      exemptIf: [buffer, { growingSeasonAtMost: 1 }, turfFarm],
    },
  },
  notHeld: [
    'Whether December 1 and April 1 are blackout days themselves: "between" can be read either way, and here they are.',
    "The statute states no age for the soil test; one of any age is taken here.",
    "Compost is not a phosphorus fertilizer. Nothing on hard surfaces.",
  ],
});

const notTurf = { place: ["golf course", "sod farm", "farm"] } as const;

/** Vermont: phosphorus and slow nitrogen by the definitions of its statute, dates and distance. */
export const vermontLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-vt",
  name: "Vermont, turf",
  source: {
    title: "10 V.S.A. 1266b",
    publisher: "Vermont Statutes",
    year: 2012,
    where:
      "(a); what is prohibited, dates, distance and first season from the summary of Act 37 by the Vermont Agency of Agriculture",
    url: "http://agriculture.vermont.gov/node/122",
  },
  limits: {
    "slow-share": { kind: "slow share", atLeastPercentOfN: 15, exemptIf: [notTurf] },
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0.67,
      exemptIf: [notTurf, { soilTest: { months: 18, shortOf: "P" } }, { growingSeasonAtMost: 1 }],
    },
    "blackout-dates": {
      kind: "blackout dates",
      of: "any",
      blackout: { from: "10-16", to: "03-31" },
      exemptIf: [notTurf],
    },
    setback: { kind: "setback", of: "any", atLeast: ft(25), exemptIf: [notTurf] },
  },
  notHeld: [
    "The age of the soil test, 18 months, comes from a regional summary; the subsection that may state it was not read.",
    "The label of the first season's fertilizer, which has to call it a starter; compost and manipulated manure do not count as phosphorus fertilizer.",
    "Nothing on hard surfaces; whether frozen ground is named was not read.",
  ],
});

/** Connecticut: phosphate on established turf. Its winter and its distance to water were not read; see the set from memory. */
export const connecticutLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-ct",
  name: "Connecticut, established turf",
  source: {
    title: "Summary of northeastern state laws on turf fertilizers 1990-2012",
    publisher: "regional summary table",
    year: 2012,
    where:
      "Connecticut column, PA 12-155; golf courses, farms and the two seasons from the legislature's summary and the definitions of the act",
    url: "https://cga.ct.gov/2012/SUM/2012SUM00155-R02SB-00440-SUM.htm",
  },
  limits: {
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0.67,
      scope: { turf: ["established"] },
      exemptIf: [{ soilTest: { months: 24, shortOf: "P" } }, { place: ["golf course", "farm"] }],
    },
  },
  notHeld: [
    "The soil test has to be less than two years old; one of exactly two years is taken here.",
    "Winter, in which no phosphate goes on a lawn, and the distance to water: the legislature's summary says that the act has both, and states neither. The set from memory holds them. A newspaper printed December through February and 20 ft, which is shorter than what is remembered of the act.",
    "A lawn counts as established after two growing seasons. Nothing on hard surfaces.",
  ],
});

/** Manitoba: phosphorus on urban turf, and winter. */
export const manitobaLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "ca-mb",
  name: "Manitoba, urban turf",
  source: {
    title: "Nutrient Management Regulation",
    publisher: "Province of Manitoba",
    year: 2009,
    where: "Zone N5; winter dates from notices of the province, as a trade body prints them",
    url: "https://www.manitoba.ca/sd/water/lakes-beaches-rivers/nutrient_management/",
  },
  limits: {
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 1,
      exemptIf: [{ growingSeasonAtMost: 2 }],
    },
    "blackout-dates": { kind: "blackout dates", of: ["N", "P"], blackout: { from: "11-10", to: "04-10" } },
  },
  notHeld: [
    "A soil test that shows a lack of phosphorus, which also lifts the limit on it.",
    "The province may move the winter dates from year to year; whether they bind every kind of turf was not read.",
    "Distances to water.",
  ],
});
