import type { LimitSet } from "../limit/limit.js";
import { ft, lb, limitSet } from "./common.js";

const guarded = ["rotary spreader with deflector", "drop spreader"] as const;
const test = (months: number) => ({ soilTest: { months, shortOf: "P" } }) as const;

/** Minnesota: phosphorus on turf. */
export const minnesotaLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-mn",
  name: "Minnesota, turf",
  source: { title: "Minn. Stat. 18C.60", publisher: "Minnesota Statutes", where: "Subd. 2" },
  limits: {
    p: {
      amount: lb(0, "P"),
      per: "application",
      unless: [test(36), { growingSeasonAtMost: 1 }, { place: ["golf course", "sod farm"] }],
    },
  },
  notHeld: [
    "Golf courses: only under a person with the training that the statute asks for.",
    "The most even then: the rates of the University of Minnesota.",
  ],
});

/** Wisconsin: phosphorus and frozen ground. */
export const wisconsinLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-wi",
  name: "Wisconsin, turf",
  source: {
    title: "Wis. Stat. 94.643",
    publisher: "Wisconsin Statutes",
    year: 2010,
    where: "(2)",
    url: "https://docs-preview.legis.wisconsin.gov/document/statutes/94.645(4)(b)",
  },
  limits: {
    p: { kind: "content", of: "P2O5", atMostPercent: 0, unless: [test(36), { growingSeasonAtMost: 1 }] },
    ground: { kind: "ground", of: "any", not: ["frozen"] },
  },
  notHeld: [
    "Nothing on hard surfaces; what falls there is removed at once.",
    "Turf does not mean pasture, sod or other farm land.",
  ],
});

/** Michigan: phosphorus, distance and ground. */
export const michiganLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-mi",
  name: "Michigan, turf",
  source: {
    title: "Next to lake or stream (Act 451 of 1994 Part 85)",
    publisher: "Michigan State University soil test information",
    year: 2012,
    where: "For lawns; exceptions on phosphorus from summaries of Public Act 299 of 2010",
  },
  limits: {
    p: { amount: lb(0, "P"), per: "application", unless: [test(36), { turf: ["being established"] }] },
    setback: {
      kind: "setback",
      of: "any",
      atLeast: ft(15),
      unless: [{ bufferAtLeast: ft(10) }, { equipment: guarded }],
    },
    "setback-with-guard": {
      kind: "setback",
      of: "any",
      atLeast: ft(3),
      scope: { equipment: guarded },
      unless: [{ bufferAtLeast: ft(10) }],
    },
    ground: { kind: "ground", of: "any", not: ["frozen", "saturated"] },
  },
  notHeld: [
    "The buffer is natural vegetation.",
    "Phosphorus in finished sewage sludge and in organic or manipulated manure, up to 0.25 lb of phosphorus per 1000 ft2, and on golf courses whose staff is trained: here any phosphorus without a test breaks the limit.",
  ],
});

const illinoisScope = { applicator: ["for hire"] } as const;
const illinoisExempt = { place: ["farm", "golf course"] } as const;

/** Illinois: applicators for hire. */
export const illinoisLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-il",
  name: "Illinois, applicators for hire",
  source: { title: "415 ILCS 65/5a", publisher: "Illinois Compiled Statutes", where: "(a)" },
  limits: {
    p: {
      amount: lb(0, "P"),
      per: "application",
      scope: illinoisScope,
      unless: [test(36), { growingSeasonAtMost: 2 }, { turf: ["repair"] }, illinoisExempt],
    },
    setback: {
      kind: "setback",
      of: "any",
      atLeast: ft(15),
      scope: illinoisScope,
      unless: [{ equipment: [...guarded, "targeted spray", "broadcast spray"] }, illinoisExempt],
    },
    "setback-with-guard": {
      kind: "setback",
      of: "any",
      atLeast: ft(3),
      scope: { ...illinoisScope, equipment: [...guarded, "targeted spray", "broadcast spray"] },
      unless: [illinoisExempt],
    },
    ground: {
      kind: "ground",
      of: "any",
      not: ["frozen", "saturated"],
      scope: illinoisScope,
      unless: [illinoisExempt],
    },
  },
  notHeld: ["Frozen means where the roots are, typically 3 to 4 in down."],
});
