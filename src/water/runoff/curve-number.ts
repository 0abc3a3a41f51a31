import { type Citation, frozen } from "../../quantity/index.js";
import { number, type Read, readRecord, word } from "../read.js";

/**
 * A cover with its hydrologic condition. Open space is lawns, parks, golf courses and cemeteries: good above 75 % of grass
 * cover, fair from 50 to 75 %, poor below 50 %.
 */
export type RunoffCover =
  | "open space, good"
  | "open space, fair"
  | "open space, poor"
  | "meadow"
  | "brush, good"
  | "brush, fair"
  | "brush, poor"
  | "woods, good"
  | "woods, fair"
  | "woods, poor"
  | "bare, newly graded"
  | "gravel road"
  | "dirt road"
  | "paved";

/** Hydrologic soil group of the soil survey: A takes in the most water, D the least. */
export type HydrologicSoilGroup = "A" | "B" | "C" | "D";

const groups: readonly HydrologicSoilGroup[] = ["A", "B", "C", "D"];

const bySoilGroup: Readonly<Record<RunoffCover, readonly number[]>> = /* @__PURE__ */ frozen({
  "open space, good": [39, 61, 74, 80],
  "open space, fair": [49, 69, 79, 84],
  "open space, poor": [68, 79, 86, 89],
  meadow: [30, 58, 71, 78],
  "brush, good": [30, 48, 65, 73],
  "brush, fair": [35, 56, 70, 77],
  "brush, poor": [48, 67, 77, 83],
  "woods, good": [30, 55, 70, 77],
  "woods, fair": [36, 60, 73, 79],
  "woods, poor": [45, 66, 77, 83],
  "bare, newly graded": [77, 86, 91, 94],
  "gravel road": [76, 85, 89, 91],
  "dirt road": [72, 82, 87, 89],
  paved: [98, 98, 98, 98],
});

/** The runoff curve number of a cover on a soil. */
export interface CurveNumber {
  readonly type: "curve-number";
  readonly version: 1;
  readonly cover: RunoffCover;
  readonly soilGroup: HydrologicSoilGroup;
  readonly value: number;
  readonly source: Citation;
}

const source: Citation = /* @__PURE__ */ frozen({
  title: "Urban Hydrology for Small Watersheds (TR-55)",
  publisher: "US Soil Conservation Service",
  year: 1986,
  where:
    "tables 2-2a and 2-2c, average runoff condition, as a manual of stormwater and a textbook repeat them",
});

const covers = Object.keys(bySoilGroup) as readonly RunoffCover[];

/**
 * The runoff curve number of a cover on a soil, `CN`, for an average runoff condition: ground neither dry nor soaked, and not
 * frozen.
 *
 * - `cover` with its hydrologic condition; the grass cover counts, not the use. Compacted ground after construction is worse
 *   than its soil group
 * - `soilGroup` A to D, from the soil survey of the site
 *
 * @throws RatewrightError `type` with the covers or the groups, `missing`
 *
 * Source: TR-55 (1986), tables 2-2a and 2-2c, as the Michigan manual of low impact development and a textbook repeat them;
 * a curve number below 30 is printed there as 30.
 *
 * @example
 * ```ts
 * import { curveNumber } from "ratewright";
 * curveNumber({ cover: "open space, good", soilGroup: "C" }).value; // => 74
 * curveNumber({ cover: "open space, poor", soilGroup: "C" }).value; // => 86
 * ```
 */
export const curveNumber = (input: {
  readonly cover: RunoffCover;
  readonly soilGroup: HydrologicSoilGroup;
}): CurveNumber => {
  const q = readRecord(
    input,
    { cover: word(covers), soilGroup: word(groups) },
    "a record with cover and soilGroup",
  );
  return {
    type: "curve-number",
    version: 1,
    cover: q.cover,
    soilGroup: q.soilGroup,
    value: bySoilGroup[q.cover][groups.indexOf(q.soilGroup)] as number,
    source,
  };
};

/** Takes a curve number, or the record of one: 30 to 100. */
export const readCurveNumber: Read<number> = (input, path) => {
  const found = Object(input) as { readonly type?: unknown; readonly value?: unknown };
  const record = found.type === "curve-number" || found.type === "weighted-curve-number";
  return number({ min: 30, max: 100 })(record ? found.value : input, record ? `${path}.value` : path);
};
