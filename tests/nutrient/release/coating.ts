import { quickRelease, releasedNitrogen } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";

/** A model of release that is right in all, to be spoilt in one place. */
export const right = {
  name: "a coating",
  placement: "either",
  curve: { kind: "first order", ratePerDay: { low: 0.01, high: 0.02 } },
  temperature: { kind: "none" },
  assumptions: [],
  source: "a bulletin",
} as const;
/** Three days of a pound of quick nitrogen. */
export const job = {
  applied: "2026-05-01",
  days: 3,
  placement: "surface or thatch",
  temperature: { mean: quantity(20, "°C") },
  portions: [{ name: "quick", nitrogen: quantity(1, "lb/1000 ft2", "N"), model: quickRelease }],
} as const;
export const released = (change: object) => () => releasedNitrogen({ ...job, ...change } as never);
