import { unitDimension } from "../unit/unit-facts.js";

const stuff: readonly string[] = ["mass", "volume", "count"];

/** Whether a unit measures an amount of something, so that what stands below a slash may be of a substance of its own. */
export const isOfStuff = (unit: string): boolean => stuff.includes(`${unitDimension(unit)}`);
