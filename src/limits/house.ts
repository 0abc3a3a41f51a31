// What the floors above this room use beside its index: no part of the public API.
export { plainWord } from "./limit/limit-condition.js";
export { periodText } from "./limit/period-text.js";
export { readFacts } from "./limit/read-condition.js";
export { readLimits } from "./limit/read-limit.js";
export type { ReadLimit } from "./limit/read-types.js";
export { earliestWithin, limitsOn, type ReadProposal, readProposal } from "./weigh/check-limits.js";
