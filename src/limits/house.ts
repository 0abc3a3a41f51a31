// What the floors above this room use beside its index: no part of the public API.
export { plainWord } from "./limit/limit-condition.js";
export { readFacts } from "./limit/read-condition.js";
export { type ReadLimit, readLimits } from "./limit/read-limit.js";
export { earliestWithin, limitsOn, type ReadProposal, readProposal } from "./weigh/check-limits.js";
export { periodText } from "./weigh/limit-findings.js";
