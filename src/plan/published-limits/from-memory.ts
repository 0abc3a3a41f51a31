import type { LimitSet } from "../limit.js";
import { ft, lb, limitSet } from "./common.js";

const perAcre = (value: number, of: string) => ({ value, unit: "lb/acre", of });

const guarded = ["drop spreader", "rotary spreader with deflector", "targeted spray"] as const;

/** New Jersey amounts, phosphorus and distance, from memory: not read in the statute. */
export const newJerseyRememberedLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "memory-us-nj",
  name: "New Jersey, amounts and distance (from memory)",
  source:
    "from memory of New Jersey statutes, P.L. 2010 c.112: not read, verify before use. A public summary (Jersey-Yards, What homeowners need to know) has the same total of a homeowner, slow share and distances",
  reached: "from memory",
  limits: {
    "soluble-n": { amount: lb(0.7, "N:soluble"), per: "application" },
    "total-n-professional": {
      amount: lb(1, "N"),
      per: "application",
      scope: { applicator: ["professional"] },
    },
    "total-n-homeowner": { amount: lb(0.9, "N"), per: "application", scope: { applicator: ["homeowner"] } },
    "slow-share-homeowner": {
      kind: "slow share",
      atLeastPercentOfN: 20,
      scope: { applicator: ["homeowner"] },
    },
    p: {
      amount: lb(0, "P"),
      per: "application",
      unless: [{ soilTest: { months: 36, shortOf: "P" } }, { turf: ["being established", "repair"] }],
    },
    setback: { kind: "setback", of: "any", atLeast: ft(25), unless: [{ equipment: guarded }] },
    "setback-with-guard": { kind: "setback", of: "any", atLeast: ft(10), scope: { equipment: guarded } },
    "n-per-year-professional": {
      amount: lb(4.25, "N"),
      per: "calendar year",
      scope: { applicator: ["professional"] },
    },
    "n-per-year-homeowner": {
      amount: lb(3.2, "N"),
      per: "calendar year",
      scope: { applicator: ["homeowner"] },
    },
  },
  notHeld: [],
});

/** 2,4-D on ornamental turf in the United States, from memory: the current label wins. */
export const twoFourDRememberedLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "memory-2,4-D",
  name: "2,4-D, broadcast on ornamental turf (from memory)",
  source: "from memory of the US EPA reregistration decision of 2005: not read, verify on the current label",
  reached: "from memory",
  limits: {
    "per-application": { amount: perAcre(1.5, "ae:2,4-D"), per: "application" },
    "per-year": { amount: perAcre(3, "ae:2,4-D"), per: "calendar year" },
    count: { kind: "count", of: "ae:2,4-D", atMost: 2, per: "calendar year" },
    interval: { kind: "interval", of: "ae:2,4-D", atLeastDays: 21 },
  },
  notHeld: [],
});

const golf = (place: string, pounds: number) =>
  ({
    amount: perAcre(pounds, "ai:chlorothalonil"),
    per: "calendar year",
    scope: { place: [place] },
  }) as const;

/** Chlorothalonil on golf courses in the United States, from memory: the current label wins. */
export const chlorothalonilRememberedLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "memory-chlorothalonil",
  name: "Chlorothalonil on golf courses (from memory)",
  source: "from memory of US label language: not read, verify on the current label",
  reached: "from memory",
  limits: {
    greens: golf("golf green", 73),
    tees: golf("golf tee", 52),
    fairways: golf("golf fairway", 26),
  },
  notHeld: [],
});
