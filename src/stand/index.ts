export { growthBetweenMowings, leafRemoved, mowAtHeight } from "./mowing-height.js";
export { mowingInterval } from "./mowing-interval.js";
