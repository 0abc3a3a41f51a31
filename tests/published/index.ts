import type { LeftOut, PublishedCheck } from "./check.js";
import { intervalChecks, intervalLeftOut } from "./interval.js";
import { numericChecks } from "./numeric.js";
import { nutrientChecks, nutrientLeftOut } from "./nutrient.js";
import { siteChecks, siteLeftOut } from "./site.js";
import { tankChecks, tankLeftOut } from "./tank.js";

/** Every published check, by room. */
export const allChecks: Readonly<Record<string, readonly PublishedCheck[]>> = {
  numeric: numericChecks,
  interval: intervalChecks,
  nutrient: nutrientChecks,
  site: siteChecks,
  tank: tankChecks,
};

/** Every published example that is left out, by room. */
export const allLeftOut: Readonly<Record<string, readonly LeftOut[]>> = {
  interval: intervalLeftOut,
  nutrient: nutrientLeftOut,
  site: siteLeftOut,
  tank: tankLeftOut,
};
