// What the floors above use of this room, and the world does not.
export { eachOf, mostItems } from "./number/each-of.js";
export { expectWithin } from "./number/expect-within.js";
export { expectFloat64Array } from "./number/typed-array.js";
