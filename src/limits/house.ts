// What the floors above this room use beside its index: no part of the public API.
export { holds, plainWord } from "./limit/limit-condition.js";
export { periodText } from "./limit/period-text.js";
export { readFacts } from "./limit/read-condition.js";
export { readLimits } from "./limit/read-limit.js";
export type { ReadLimit } from "./limit/read-types.js";
export { type BufferStrip, bufferStrip, edgesFor } from "./weigh/buffer-strips.js";
export { slowShareOfRow } from "./weigh/counted-days.js";
export { earliestWithin } from "./weigh/earliest-within.js";
export { limitsOn } from "./weigh/limits-on.js";
export { type ReadProposal, readProposal } from "./weigh/read-proposal.js";
export { isOfAny } from "./weigh/test-result.js";
