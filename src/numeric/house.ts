// What the floors above use of this room, and the world does not.
export { expectFloat64Array } from "./number/typed-array.js";
