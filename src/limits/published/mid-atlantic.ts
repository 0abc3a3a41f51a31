import type { LimitSet } from "../limit/limit.js";
import { ft, lb, limitSet } from "./common.js";

const eef = { productKind: ["enhanced efficiency"] } as const;
const organic = { productKind: ["organic"] } as const;
const eefOrOrganic = { productKind: ["enhanced efficiency", "organic"] } as const;
const newTurf = { turf: ["being established", "repair"] } as const;
const test = (months: number) => ({ soilTest: { months, shortOf: "P" } }) as const;

/** Maryland: what one application of a turf fertilizer may hold. All three bind together. */
export const marylandProductLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-md-product",
  name: "Maryland, turf fertilizer products",
  source: {
    title: "Agriculture Article 6-224",
    publisher: "Maryland statutes",
    where: "subsections (a), (b)",
  },
  limits: {
    "soluble-n": { amount: lb(0.7, "N:soluble"), per: "application", unless: [eef] },
    "total-n": { amount: lb(0.9, "N"), per: "application", unless: [eef] },
    "slow-share": { kind: "slow share", atLeastPercentOfN: 20, unless: [eef] },
    "eef-per-year": { amount: lb(2.5, "N"), per: "calendar year", scope: eef },
    p: {
      amount: lb(0, "P"),
      per: "application",
      unless: [test(36), newTurf, { ...organic, applicator: ["professional"] }],
    },
  },
  notHeld: [
    "Enhanced-efficiency products: a single application of at most 80 % of the annual recommended rate, and a release of at most 0.7 lb N/1000 ft2 a month.",
  ],
});

/** Maryland: dates, distance and ground. */
export const marylandUseLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-md-use",
  name: "Maryland, use on turf",
  source: {
    title: "Agriculture Article 8-803.5",
    publisher: "Maryland statutes",
    where: "(c), (d); the professional extension from the department's notice, a copy of 2020",
  },
  limits: {
    "closed-dates": {
      kind: "closed dates",
      of: ["N", "P"],
      closed: { from: "11-16", to: "02-29" },
      unless: [{ applicator: ["professional"] }],
    },
    "closed-dates-professional": {
      kind: "closed dates",
      of: ["N", "P"],
      closed: { from: "12-02", to: "02-29" },
      scope: { applicator: ["professional"] },
    },
    "late-n-professional": {
      amount: lb(0.5, "N"),
      per: "application",
      scope: { applicator: ["professional"], season: { from: "11-16", to: "12-01" } },
    },
    setback: {
      kind: "setback",
      of: ["N", "P"],
      atLeast: ft(15),
      unless: [{ equipment: ["drop spreader", "rotary spreader with deflector", "targeted spray"] }],
    },
    "setback-with-guard": {
      kind: "setback",
      of: ["N", "P"],
      atLeast: ft(10),
      scope: { equipment: ["drop spreader", "rotary spreader with deflector", "targeted spray"] },
    },
    ground: { kind: "ground", of: ["N", "P"], not: ["frozen"] },
  },
  notHeld: ["Nothing on hard surfaces."],
});

/** New Jersey: dates and ground. */
export const newJerseyLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-nj",
  name: "New Jersey, use on turf",
  source: {
    title: "N.J.S.A. 58:10A-62",
    publisher: "New Jersey statutes (P.L. 2010 c.112)",
    year: 2011,
    where: "a(1), a(3), b",
  },
  limits: {
    "closed-dates": {
      kind: "closed dates",
      of: ["N", "P"],
      closed: { from: "11-16", to: "02-29" },
      unless: [{ applicator: ["professional"] }],
    },
    "closed-dates-professional": {
      kind: "closed dates",
      of: ["N", "P"],
      closed: { from: "12-02", to: "02-29" },
      scope: { applicator: ["professional"] },
    },
    "ground-frozen": { kind: "ground", of: ["N", "P"], not: ["frozen"] },
    "ground-saturated": { kind: "ground", of: "any", not: ["saturated"] },
  },
  notHeld: [
    "Distance to water, amounts of nitrogen, slow nitrogen and phosphorus: they stand in other sections, which were not read. See the set from summaries, and the one from memory.",
    "Heavy rainfall, which the state climatologist defines.",
    "Sweeping or blowing back what falls on hard surfaces.",
  ],
});

const njGuarded = ["drop spreader", "rotary spreader with deflector", "targeted spray"] as const;

/** New Jersey: amounts and distance as public summaries of the law state them; its text was not read for these. */
export const newJerseySummaryLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-nj-summary",
  name: "New Jersey, amounts and distance from summaries",
  source: {
    title: "New Jersey's fertilizer law",
    publisher: "Jersey-Yards, a programme for homeowners",
    where:
      "What homeowners need to know; on phosphorus and on what the slow share is meant for a fact sheet of Rutgers Cooperative Extension, as the Cape May County Herald reports it in 2011",
    url: "http://www.jerseyyards.org/threats-to-bays-rivers/new-jerseys-fertilizer-law/",
  },
  limits: {
    "total-n-homeowner": { amount: lb(0.9, "N"), per: "application", scope: { applicator: ["homeowner"] } },
    "slow-share-homeowner": {
      kind: "slow share",
      atLeastPercentOfN: 20,
      scope: { applicator: ["homeowner"] },
    },
    p: {
      amount: lb(0, "P"),
      per: "application",
      unless: [test(36), newTurf],
    },
    setback: { kind: "setback", of: "any", atLeast: ft(25), unless: [{ equipment: njGuarded }] },
    "setback-with-guard": { kind: "setback", of: "any", atLeast: ft(10), scope: { equipment: njGuarded } },
  },
  notHeld: [
    "Phosphorus below the surface, and in manipulated animal or vegetable manure, which the law also excepts: here any phosphorus without a test breaks the limit.",
    "The amounts of a professional, soluble nitrogen and nitrogen per year: see the set from memory.",
    "The summary states the distances for homeowners; here they are meant for everybody.",
  ],
});

/** Pennsylvania: its phosphorus figures are elemental P. */
export const pennsylvaniaLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-pa",
  name: "Pennsylvania, turf",
  source: {
    title: "3 Pa.C.S. 6813 Application of fertilizer to turf",
    publisher: "Pennsylvania Consolidated Statutes (Act 83 of 2022, amended 2023)",
    year: 2023,
    where: "(a), (b)",
  },
  limits: {
    "soluble-n": { amount: lb(0.7, "N:soluble"), per: "application" },
    "total-n": { amount: lb(0.9, "N"), per: "application", unless: [eef] },
    p: { amount: lb(0, "P"), per: "application", unless: [newTurf, eef, organic] },
    "p-organic-per-application": {
      amount: lb(0.25, "P"),
      per: "application",
      scope: eefOrOrganic,
      unless: [newTurf],
    },
    "p-organic-per-year": {
      amount: lb(0.5, "P"),
      per: "calendar year",
      scope: eefOrOrganic,
      unless: [newTurf],
    },
    "winter-n": {
      amount: lb(0.5, "N"),
      per: "application",
      scope: { season: { from: "12-16", to: "02-29" } },
    },
    ground: { kind: "ground", of: ["N", "P"], not: ["frozen", "snow-covered"] },
    setback: { kind: "setback", of: "any", atLeast: ft(15) },
  },
  notHeld: [
    "Readily available nitrogen is held as soluble nitrogen: of a product with inhibitors less may count.",
    "Enhanced-efficiency products: a release of at most 0.7 lb N/1000 ft2.",
    "The top of a bank, with targeted equipment, where a buffer along the stream is established or kept up: the setback does not bind there.",
    "Frozen means to a depth of 2 in; the setback was read in texts on the act, not in this section.",
    "Site-specific plans, which can replace these figures. Summaries, one of Penn State Extension among them, say that no N and P go down at all after December 15 and before March 1.",
  ],
});
