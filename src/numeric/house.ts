// What the floors above use of this room, and the world does not.

export { expectLiquidDensity, expectLooseDensity } from "./number/densities.js";
export { eachOf, mostItems } from "./number/each-of.js";
export { expectTravelSpeed } from "./number/expect-travel-speed.js";
export { expectWithin } from "./number/expect-within.js";
export { figuresApart, fixedApart, roundedApart } from "./number/figures-apart.js";
export { notShare, notShares } from "./number/not-share.js";
export { expectFloat64Array } from "./number/typed-array.js";
