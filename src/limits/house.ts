// What the floors above this room use beside its index: no part of the public API.
export { type Answer, holds, plainWord } from "./limit/limit-condition.js";
export { periodText } from "./limit/period-text.js";
export { readFacts } from "./limit/read-condition.js";
export { readLimits } from "./limit/read-limit.js";
export type { ReadLimit } from "./limit/read-types.js";
export { type BufferStrip, bufferStrip, edgesFor } from "./weigh/buffer-strips.js";
export { earliestWithin, limitsOn, type ReadProposal, readProposal } from "./weigh/check-limits.js";
export { slowShareOfRow } from "./weigh/counted-days.js";
export { isOfAny } from "./weigh/tested.js";
