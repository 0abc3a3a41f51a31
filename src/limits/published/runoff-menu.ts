import { type Citation, frozen } from "../../quantity/index.js";
import type { RunoffMeasure } from "../limit/limit.js";
import { readOn } from "./common.js";

/** The points of measures against runoff, as one edition of a menu states them. */
export interface RunoffMenu {
  readonly type: "runoff-menu";
  readonly version: 1;
  readonly id: string;
  /** The edition that the figures are of. */
  readonly edition: string;
  readonly source: Citation;
  readonly readOn: string;
  readonly measures: readonly (RunoffMeasure & {
    /** Whether the points were read, and where, or come from memory. */
    readonly reached: "read" | "from memory";
    readonly where: string;
  })[];
  readonly caution: string;
  readonly notHeld: readonly string[];
}

const row = (
  measure: string,
  points: number,
  reached: "read" | "from memory",
  where: string,
): RunoffMenu["measures"][number] => ({ measure, points, reached, where });

const illinois =
  "field guide of the Illinois Soybean Association to the runoff points, counties by reduced runoff vulnerability";
const georgia = "University of Georgia, 2025 cotton weed control update, slide 39";
const stewardship = "Pesticide Environmental Stewardship, runoff and the ESA: the example of 6 points";
const memory = "from memory of the menu of 2025-04-30; its tables could not be opened: read them there";

/**
 * Points of measures against runoff and erosion: the mitigation menu of the US Environmental Protection Agency, in its
 * edition of 30 April 2025, as far as it bears on turf. A part of the figures comes from memory and says so.
 */
export const runoffMenu: RunoffMenu = /* @__PURE__ */ frozen({
  type: "runoff-menu",
  version: 1,
  id: "us-epa-runoff-menu",
  edition: "2025-04-30",
  source: {
    title: "Mitigation Menu",
    publisher: "US Environmental Protection Agency",
    year: 2025,
    where: "date of last update: April 30, 2025; runoff/erosion mitigation options",
    url: "https://www.epa.gov/pesticides/mitigation-menu",
  },
  readOn,
  measures: [
    row("county of high runoff vulnerability", 0, "read", illinois),
    row("county of medium runoff vulnerability", 2, "read", illinois),
    row("county of low runoff vulnerability", 3, "read", illinois),
    row("county of very low runoff vulnerability", 6, "from memory", memory),
    row("field slope of 3 % or less", 2, "from memory", memory),
    row("sandy soil, hydrologic group A", 3, "from memory", memory),
    row("sandy or loamy soil, hydrologic group B", 2, "from memory", memory),
    row("vegetative filter strip, 20 ft to less than 30 ft", 1, "from memory", memory),
    row("vegetative filter strip, 30 ft to less than 60 ft", 2, "from memory", memory),
    row("vegetative filter strip, 60 ft or more", 3, "from memory", memory),
    row("advice of a runoff and erosion specialist", 1, "read", georgia),
    row("conservation program", 2, "read", georgia),
    row("record of the measures", 1, "read", stewardship),
    row("measures of more than one category", 1, "read", georgia),
  ],
  caution:
    "The menu changes, and each measure has terms of its own that are not held here: the current menu, the label and its bulletin win. Points that the site has do not authorize an application.",
  notHeld: [
    "The terms of each measure, which measures exclude each other, and the measures for row crops, orchards and basins.",
    "When no points are asked for, such as on less than 1,000 sq ft or a tenth of an acre, or beside managed ground of 1,000 ft down the slope.",
    "No label asks for more than 9 points (Pesticide Environmental Stewardship).",
  ],
});
