import type { LimitSet } from "../limit/limit.js";
import { ft, lb, limitSet } from "./common.js";

const perAcre = (value: number, of: string) => ({ value, unit: "lb/acre", of });

/**
 * New Jersey amounts that no text which was read states, from memory: not read in the statute. A newspaper of 1 January 2013
 * prints the 0.7 lb for fertilizers that consumers buy, after the state's experiment station.
 */
export const newJerseyRememberedLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "memory-us-nj",
  name: "New Jersey, amounts (from memory)",
  source: "from memory of New Jersey statutes, P.L. 2010 c.112: not read, verify before use",
  reached: "from memory",
  limits: {
    "soluble-n": { amount: lb(0.7, "N:quick"), per: "application" },
    "total-n-professional": {
      amount: lb(1, "N"),
      per: "application",
      scope: { applicator: ["professional"] },
    },
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

const notLawn = { place: ["golf course", "farm"] } as const;
const targeted = ["drop spreader", "rotary spreader with deflector", "targeted spray"] as const;

/** Connecticut's winter and distance to water, from memory: these subsections of the act were not read. */
export const connecticutRememberedLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "memory-us-ct",
  name: "Connecticut, winter and distance to water (from memory)",
  source: "from memory of Connecticut Public Act 12-155, section 2 (d) and (e): not read, verify before use",
  reached: "from memory",
  limits: {
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
    "Both bind from 0.67 % of phosphate on, by the legislature's summary; here they bind any phosphorus.",
  ],
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
  notHeld: [
    "The lower limits of EPA's decision of January 2025, 6.2 lb/acre a year on vulnerable soils and 45.2 on greens, as the Golf Course Superintendents Association of America reports them: labels take them over.",
  ],
});
