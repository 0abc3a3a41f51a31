import { type Citation, quantity } from "../../quantity/index.js";
import type { Share } from "../inputs.js";

/** A limit for nozzles, and who says so. */
export interface NozzleLimit {
  readonly against: "rated" | "mean";
  readonly limit: Share;
  readonly does: string;
  readonly source: Citation;
}

/**
 * What sources say of the limits of a nozzle check; they differ, so that {@link nozzleCheck} takes them as
 * parameters.
 *
 * @example
 * ```ts
 * import { nozzleLimits } from "ratewright";
 * nozzleLimits().map(({ against, limit }) => `${limit.in("%")} % of ${against}`); // => ["10 % of rated", "5 % of rated", "5 % of mean", "10 % of mean"]
 * ```
 */
export const nozzleLimits = (): readonly NozzleLimit[] => [
  {
    against: "rated",
    limit: quantity(10, "%"),
    does: "replace a tip that puts out more than this above a new one",
    source: {
      title: "Sprayer preparation and calibration",
      publisher: "Ohio State University Extension (Wayne County)",
      year: 2019,
      where: "tune-up list",
      url: "https://wayne.osu.edu/news/sprayer-preparation-and-calibration",
    },
  },
  {
    against: "rated",
    limit: quantity(5, "%"),
    does: "replace worn tips on fine turf",
    source: { title: "Turf advisory page on nozzle wear", publisher: "UK turf advisory service" },
  },
  {
    against: "mean",
    limit: quantity(5, "%"),
    does: "replace what is more above the mean; clean what is more below it and check again",
    source: {
      title: "Crop protection (Agdex 606-1)",
      publisher: "Alberta Agriculture",
      where: "sprayer calibration example, steps 4-5",
    },
  },
  {
    against: "mean",
    limit: quantity(10, "%"),
    does: "clean or replace what differs more from the mean",
    source: { title: "Special Bulletin 16", publisher: "University of Georgia Extension" },
  },
];
