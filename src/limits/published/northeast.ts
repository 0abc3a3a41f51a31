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

const notLawn = { place: ["golf course", "farm"] } as const;
const targeted = ["drop spreader", "rotary spreader with deflector", "targeted spray"] as const;

/** Connecticut: phosphate on lawns; the winter and the distance to water bind new lawns too. */
export const connecticutLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-ct",
  name: "Connecticut, lawns",
  source: {
    title: "Connecticut General Statutes 22-111yy",
    publisher: "State of Connecticut (Public Act 12-155, section 2)",
    year: 2013,
    where:
      "(a) to (f), (j), in force since 1 January 2013; read whole, in a public collection of state statutes",
    url: "https://law.justia.com/codes/connecticut/title-22/chapter-427b/section-22-111yy/",
  },
  readOn: "2026-11-28",
  limits: {
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0.67,
      scope: { turf: ["established"] },
      exemptIf: [{ soilTest: { months: 24, shortOf: "P" } }, notLawn],
    },
    "blackout-dates": {
      kind: "blackout dates",
      of: ["P"],
      blackout: { from: "12-01", to: "03-15" },
      exemptIf: [notLawn],
    },
    setback: {
      kind: "setback",
      of: ["P"],
      atLeast: ft(20),
      exemptIf: [notLawn, { equipment: targeted }],
    },
    "setback-targeted": {
      kind: "setback",
      of: ["P"],
      atLeast: ft(15),
      scope: { equipment: targeted },
      exemptIf: [notLawn],
    },
  },
  notHeld: [
    "What holds 0.67 % of phosphate or less is free of all of it, subsection (j); here winter and distance bind any phosphorus.",
    "A lawn of exactly 20 ft from the water is still too near, subsection (e); here 20 ft are far enough. Exactly 15 ft are far enough in both.",
    "The soil test has to be done within the previous two years, by a method that the Commissioner of Agriculture approves.",
    "A lawn counts as established after two growing seasons. Soil amendments and compost with phosphate are bound as fertilizers are. Nothing on hard surfaces.",
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
