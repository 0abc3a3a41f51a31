import type { LimitSet } from "../limit/limit.js";
import { ft, lb, limitSet } from "./common.js";

const efficientN = { productKind: ["enhanced-efficiency nitrogen"] } as const;
const organic = { productKind: ["organic"] } as const;
const efficientPOrOrganic = { productKind: ["enhanced-efficiency phosphorus", "organic"] } as const;
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
    url: "https://lexace.ai/us/statute/maryland/AG-6-224",
  },
  limits: {
    "soluble-n": { amount: lb(0.7, "N:quick"), per: "application", exemptIf: [efficientN] },
    "total-n": { amount: lb(0.9, "N"), per: "application", exemptIf: [efficientN] },
    "slow-share": { kind: "slow share", atLeastPercentOfN: 20, exemptIf: [efficientN] },
    "eef-per-year": { amount: lb(2.5, "N"), per: "calendar year", scope: efficientN },
    p: {
      amount: lb(0, "P"),
      per: "application",
      exemptIf: [test(36), newTurf, { ...organic, applicator: ["professional"] }],
    },
  },
  notHeld: [
    "Enhanced-efficiency products, (b): a single application of at most 80 % of the annual rate that the University of Maryland recommends, and a release of at most 0.7 lb N/1000 ft2 a month.",
    "Rates that the state recommends where vegetation is established for the first time, (a)(2)(ii).",
    "Phosphorus by a soil test, for new or for repaired turf: the fertilizer has to be labeled for that purpose. Here the test and the state of the turf decide.",
    "Subsection (a), phosphorus with it, begins with an exception for (b), enhanced-efficiency products: it is not assumed here that this frees them from the limit on phosphorus.",
  ],
});

/** Maryland: dates, distance and ground. The caps on nitrogen and phosphorus are in {@link marylandProductLimits}. */
export const marylandUseLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-md-use",
  name: "Maryland, use on turf",
  source: {
    title: "Agriculture Article 8-803.5",
    publisher: "Maryland statutes",
    where: "(b) to (d); the professional extension from the department's notice, a copy of 2020",
    url: "https://instalawyer.io/laws/maryland-statutes/section-8-8035-application-of",
  },
  limits: {
    "blackout-dates": {
      kind: "blackout dates",
      of: ["N", "P"],
      blackout: { from: "11-16", to: "02-29" },
      exemptIf: [{ applicator: ["professional"] }],
    },
    "blackout-dates-professional": {
      kind: "blackout dates",
      of: ["N", "P"],
      blackout: { from: "12-02", to: "02-29" },
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
      exemptIf: [{ equipment: ["drop spreader", "rotary spreader with deflector", "targeted spray"] }],
    },
    "setback-with-guard": {
      kind: "setback",
      of: ["N", "P"],
      atLeast: ft(10),
      scope: { equipment: ["drop spreader", "rotary spreader with deflector", "targeted spray"] },
    },
    ground: { kind: "ground", of: ["N", "P"], not: ["frozen"] },
  },
  notHeld: [
    "Nothing on hard surfaces. Commercial farms are excepted, (b)(2).",
    "The rates that the University of Maryland recommends for turf, by grass and year, which professionals are trained in, (8-803.6, 8-803.7): 8-803.4 was not read.",
    "Phosphorus needs a soil test of the last three years, new or repaired turf, (e): see the limits on products.",
    "By 8-801 a professional is certified; owners, managers and public employees who apply within their work count as professionals.",
  ],
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
    "blackout-dates": {
      kind: "blackout dates",
      of: ["N", "P"],
      blackout: { from: "11-16", to: "02-29" },
      exemptIf: [{ applicator: ["professional"] }],
    },
    "blackout-dates-professional": {
      kind: "blackout dates",
      of: ["N", "P"],
      blackout: { from: "12-02", to: "02-29" },
      scope: { applicator: ["professional"] },
    },
    "ground-frozen": { kind: "ground", of: ["N", "P"], not: ["frozen"] },
    "ground-saturated": { kind: "ground", of: "any", not: ["saturated"] },
  },
  notHeld: [
    "Distance to water, amounts of nitrogen, slow nitrogen and phosphorus: they are in other sections, which were not read. See the set from summaries.",
    "Heavy rainfall, which the state climatologist defines.",
    "Golf courses and commercial farms, which a trade magazine calls exempt from the law: the section that says so was not read, and here it binds them.",
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
    publisher: "Jersey-Yards, a program for homeowners",
    where:
      "What homeowners need to know; the age of the soil test from the Warren County Soil Conservation District; the amounts of a year and of a professional from a magazine of the landscape trade; soluble nitrogen from section 11 a of the act, as an applicator quotes it",
    url: "http://www.jerseyyards.org/threats-to-bays-rivers/new-jerseys-fertilizer-law/",
  },
  limits: {
    "soluble-n": { amount: lb(0.7, "N:quick"), per: "application" },
    "total-n-homeowner": { amount: lb(0.9, "N"), per: "application", scope: { applicator: ["homeowner"] } },
    "total-n-professional": {
      amount: lb(1, "N"),
      per: "application",
      scope: { applicator: ["professional"] },
    },
    "n-per-year-homeowner": {
      amount: lb(3.2, "N"),
      per: "calendar year",
      scope: { applicator: ["homeowner"] },
    },
    "n-per-year-professional": {
      amount: lb(4.25, "N"),
      per: "calendar year",
      scope: { applicator: ["professional"] },
    },
    "slow-share-homeowner": {
      kind: "slow share",
      atLeastPercentOfN: 20,
      scope: { applicator: ["homeowner"] },
    },
    p: {
      amount: lb(0, "P"),
      per: "application",
      exemptIf: [test(36), newTurf],
    },
    setback: { kind: "setback", of: "any", atLeast: ft(25), exemptIf: [{ equipment: njGuarded }] },
    "setback-with-guard": { kind: "setback", of: "any", atLeast: ft(10), scope: { equipment: njGuarded } },
  },
  notHeld: [
    "Exceptions for phosphorus below the surface and in manipulated manure, which were read in a newspaper only: here any phosphorus without a test is over the limit.",
    "Soluble nitrogen is stated of what is sold to consumers, the distances of homeowners; here both are meant for everybody.",
  ],
});

/** Pennsylvania: its phosphorus figures are elemental P. */
export const pennsylvaniaLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-pa",
  name: "Pennsylvania, turf",
  source: {
    title: "3 Pa.C.S. 6813 Application of fertilizer to turf",
    publisher: "Pennsylvania Consolidated Statutes (amended 2023)",
    year: 2023,
    where: "(a), (b)",
    url: "https://casetext.com/statute/pennsylvania-statutes/consolidated-statutes/title-3-pacs-agriculture/part-vii-quality-and-labeling/chapter-68-fertilizer/section-6813-application-of-fertilizer-to-turf",
  },
  limits: {
    "soluble-n": { amount: lb(0.7, "N:quick"), per: "application" },
    "total-n": { amount: lb(0.9, "N"), per: "application", exemptIf: [efficientN] },
    p: { amount: lb(0, "P"), per: "application", exemptIf: [newTurf, efficientPOrOrganic] },
    "p-excepted-per-application": {
      amount: lb(0.25, "P"),
      per: "application",
      scope: efficientPOrOrganic,
      exemptIf: [newTurf],
    },
    "p-excepted-per-year": {
      amount: lb(0.5, "P"),
      per: "calendar year",
      scope: efficientPOrOrganic,
      exemptIf: [newTurf],
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
    "Enhanced-efficiency nitrogen, which the 0.9 lb do not bind: at most 0.7 lb N/1000 ft2 released at any given time.",
    "Phosphorus for new or repaired turf: the fertilizer has to be labeled for that purpose. Here the state of the turf decides.",
    "Nothing on hard surfaces; what falls there is removed at once.",
    "The top of a bank, with targeted equipment, where a buffer along the stream is established or kept up: the setback does not bind there.",
    "Frozen means to a depth of 2 in; the setback was read in texts on the act, not in this section.",
    "Rates of the department and site-specific plans, (c) and (d), which can replace these figures. Summaries, one of Penn State Extension among them, say that no N and P go down at all after December 15 and before March 1.",
  ],
});
