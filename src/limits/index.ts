// Limits as dated, cited data, and what weighs an application against them.

// limit: a limit as data: its conditions and its reading.
export type {
  AmountLimit,
  BlackoutLimit,
  BufferLimit,
  BufferReduction,
  ContentLimit,
  CountLimit,
  GroundLimit,
  IntervalLimit,
  Limit,
  LimitBase,
  LimitPeriod,
  LimitSet,
  RotationLimit,
  RunoffMeasure,
  RunoffPointsLimit,
  SetbackLimit,
  SlowShareLimit,
} from "./limit/limit.js";
export type { EdgeFact, RunoffFact } from "./limit/edge-facts.js";
export type { ApplicationFacts, LimitCondition } from "./limit/limit-condition.js";
export { limit } from "./limit/read-limit.js";

// weigh: what has counted, what is left, and the first date that fits.
export { checkLimits, type LimitCheck } from "./weigh/check-limits.js";
export type { LimitTest } from "./weigh/limit-test.js";
export type { LimitUse } from "./weigh/limit-use.js";
export type { Proposal } from "./weigh/read-proposal.js";
export type { BufferStrip } from "./weigh/buffer-strips.js";
export { type RunoffPoints, runoffPoints } from "./weigh/runoff-points.js";

// published: published sets of limits, by state and province.
export { publishedLimits, rememberedLimits } from "./published/all.js";
export { illinoisLimits, michiganLimits, minnesotaLimits, wisconsinLimits } from "./published/great-lakes.js";
export {
  marylandProductLimits,
  marylandUseLimits,
  newJerseyLimits,
  newJerseySummaryLimits,
  pennsylvaniaLimits,
} from "./published/mid-atlantic.js";
export { australianTurfFungicideLimits } from "./published/rotation.js";
export { connecticutLimits, manitobaLimits, newYorkLimits, vermontLimits } from "./published/northeast.js";
export { type RunoffMenu, runoffMenu } from "./published/runoff-menu.js";
export { floridaLimits, marionCountyLimits } from "./published/southeast.js";
