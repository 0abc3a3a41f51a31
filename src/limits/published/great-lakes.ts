import type { LimitSet } from "../limit/limit.js";
import { ft, lb, limitSet } from "./common.js";

const guarded = ["rotary spreader with deflector", "drop spreader"] as const;
/** A person with the training on phosphorus that a state asks for on golf courses. */
const trainedGolf = { place: ["golf course"], applicator: ["trained golf course staff"] } as const;
const test = (months: number) => ({ soilTest: { months, shortOf: "P" } }) as const;
const farmland = { place: ["sod farm", "farm"] } as const;

/** Minnesota: phosphorus on turf. */
export const minnesotaLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-mn",
  name: "Minnesota, turf",
  source: { title: "Minn. Stat. 18C.60", publisher: "Minnesota Statutes", where: "Subd. 1 and 2" },
  limits: {
    p: {
      amount: lb(0, "P"),
      per: "application",
      exemptIf: [test(36), { growingSeasonAtMost: 1 }, trainedGolf, farmland],
    },
  },
  notHeld: [
    'Golf courses: the training is one that the commissioner approves. Here `applicator: "trained golf course staff"` states it.',
    "The upper limit even then: the rates of the University of Minnesota.",
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
    p: {
      kind: "content",
      of: "P2O5",
      atMostPercent: 0,
      exemptIf: [test(36), { growingSeasonAtMost: 1 }, farmland],
    },
    ground: { kind: "ground", of: "any", not: ["frozen"], exemptIf: [farmland] },
  },
  notHeld: [
    "Nothing on hard surfaces; what falls there is removed at once.",
    "The growing season in which the grass is established begins with it; a second sowing of the same ground was not read.",
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
    where:
      "For lawns; exceptions on phosphorus from the summary of Public Act 299 of 2010 by the department's feed and fertilizer section, and from a leaflet of the university's extension",
  },
  limits: {
    p: {
      amount: lb(0, "P"),
      per: "application",
      exemptIf: [test(36), { turf: ["being established"] }, trainedGolf, farmland],
    },
    setback: {
      kind: "setback",
      of: "any",
      atLeast: ft(15),
      exemptIf: [{ bufferAtLeast: ft(10) }, { equipment: guarded }],
    },
    "setback-with-guard": {
      kind: "setback",
      of: "any",
      atLeast: ft(3),
      scope: { equipment: guarded },
      exemptIf: [{ bufferAtLeast: ft(10) }],
    },
    ground: { kind: "ground", of: "any", not: ["frozen", "saturated"] },
  },
  notHeld: [
    "The buffer is natural vegetation.",
    "Phosphorus in finished sewage sludge, in organic or manipulated manure and, since Public Act 151 of 2013, in natural fertilizer, up to 0.25 lb of phosphorus per 1000 ft2 at any one time: here it is over the limit without a test.",
    "Farms: a leaflet of Michigan State University Extension says that phosphorus in agriculture is not included. Whether distance and ground bind there was not read; here they do.",
    'By a soil test no more than what corrects the lack. Golf courses: the training is one that the department approves; here `applicator: "trained golf course staff"` states it.',
  ],
});

const illinoisScope = { applicator: ["for hire"] } as const;
const illinoisExempt = { place: ["farm", "golf course"] } as const;

/** Illinois: applicators for hire. */
export const illinoisLimits: LimitSet = /* @__PURE__ */ limitSet({
  id: "us-il",
  name: "Illinois, applicators for hire",
  source: {
    title: "415 ILCS 65/5a",
    publisher: "Illinois Compiled Statutes",
    where: "(a) to (c)",
    url: "http://www.ilga.gov/legislation/ilcs/documents/041500650K5a.htm",
  },
  limits: {
    p: {
      amount: lb(0, "P"),
      per: "application",
      scope: illinoisScope,
      exemptIf: [test(36), { growingSeasonAtMost: 2 }, { turf: ["repair"] }, illinoisExempt],
    },
    setback: {
      kind: "setback",
      of: "any",
      atLeast: ft(15),
      scope: illinoisScope,
      exemptIf: [{ equipment: [...guarded, "targeted spray", "broadcast spray"] }, illinoisExempt],
    },
    "setback-with-guard": {
      kind: "setback",
      of: "any",
      atLeast: ft(3),
      scope: { ...illinoisScope, equipment: [...guarded, "targeted spray", "broadcast spray"] },
      exemptIf: [illinoisExempt],
    },
    ground: {
      kind: "ground",
      of: "any",
      not: ["frozen", "saturated"],
      scope: illinoisScope,
      exemptIf: [illinoisExempt],
    },
  },
  notHeld: [
    "Frozen means where the roots are, typically 3 to 4 in down.",
    "Lawn repair products are excepted from all of it, (c): here turf under repair is, and from the limit on phosphorus alone.",
    "A further exception from the limit on phosphorus, (d), was not read. Nothing on hard surfaces.",
  ],
});
