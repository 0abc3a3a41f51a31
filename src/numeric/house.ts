// What the floors above use of this room, and the world does not.
export { expectWithin } from "./number/expect-within.js";
export { expectFloat64Array } from "./number/typed-array.js";
