import type { PublishedCheck } from "./check.js";
import { intervalChecks } from "./interval.js";
import { numericChecks } from "./numeric.js";
import { nutrientChecks } from "./nutrient.js";
import { siteChecks } from "./site.js";
import { tankChecks } from "./tank.js";

/** Every published check, by room. */
export const allChecks: Readonly<Record<string, readonly PublishedCheck[]>> = {
  numeric: numericChecks,
  interval: intervalChecks,
  nutrient: nutrientChecks,
  site: siteChecks,
  tank: tankChecks,
};
