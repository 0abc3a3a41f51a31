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
    /** Where the points were read. */
    readonly where: string;
  })[];
  readonly caution: string;
  readonly notHeld: readonly string[];
}

const row = (measure: string, points: number, where: string): RunoffMenu["measures"][number] => ({
  measure,
  points,
  where,
});

const illinois =
  "field guide of the Illinois Soybean Association to the runoff points, counties by reduced runoff vulnerability";
const georgia = "University of Georgia, 2025 cotton weed control update, slide 39";
const stewardship = "Pesticide Environmental Stewardship, runoff and the ESA: the example of 6 points";

/**
 * Points of measures against runoff and erosion: the mitigation menu of the US Environmental Protection Agency, in its
 * edition of 30 April 2025, as far as it bears on turf and as far as a text repeats its figures. What is not here, such as a
 * filter strip, is taken with the points that the caller reads in the current menu.
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
    row("county of high runoff vulnerability", 0, illinois),
    row("county of medium runoff vulnerability", 2, illinois),
    row("county of low runoff vulnerability", 3, illinois),
    row("advice of a runoff and erosion specialist", 1, georgia),
    row("conservation program", 2, georgia),
    row("record of the measures", 1, stewardship),
    row("measures of more than one category", 1, georgia),
  ],
  caution:
    "The menu changes, and each measure has terms of its own that are not held here: the current menu, the label and its bulletin win. Points that the site has do not authorize an application.",
  notHeld: [
    "The points of a county of very low runoff vulnerability, of level ground, of sandy soils and of filter strips: the tables of the menu could not be read. State them from the current menu.",
    "The terms of each measure, which measures exclude each other, and the measures for row crops, orchards and basins.",
    "When no points are asked for, such as on less than 1,000 sq ft or a tenth of an acre, or beside managed ground of 1,000 ft down the slope.",
    "No label asks for more than 9 points (Pesticide Environmental Stewardship).",
  ],
});
