import {
  allOf,
  expectFields,
  expectFlag,
  expectOneOf,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { runLength } from "../../spread/index.js";
import { type Area, type Length, positive } from "../inputs.js";

/** Which measure of the catch reads as which volume per area. */
export type CatchReading = "fl oz as gal/acre" | "mL as L/ha";

/** A course over which the catch of a nozzle, in the small measure, is the volume per area in the large one. */
export interface CatchCourse {
  readonly type: "catch-course";
  readonly version: 1;
  readonly course: Length;
  readonly area: Area;
  readonly reading: CatchReading;
  /** By what the catch is divided to read it: 1, or 10 on a tenfold course. */
  readonly divideBy: 1 | 10;
}

const areas = (): Readonly<Record<CatchReading, Area>> => ({
  // What a fluid ounce is to a gallon, the plot is to the acre: 1/128.
  "fl oz as gal/acre": areaFor(quantity(1, "fl oz"), quantity(1, "gal/acre"), "ft2"),
  "mL as L/ha": areaFor(quantity(1, "mL"), quantity(1, "L/ha"), "m2"),
});

const areaFor = (
  small: Quantity<"volume", "none">,
  rate: Quantity<"volume/area", "none">,
  unit: "ft2" | "m2",
): Area => quantity(small.per(rate).in(unit), unit);

/**
 * The course of the 1/128-acre method: over it, what one width of nozzles puts out in fluid ounces is the
 * application volume in gallons per acre, `L = (43 560 ft2 / 128) / w`. Time the run over the course, catch
 * every nozzle that sprays the width `w` for as long, and read the ounces. In metric units the plot is
 * 10 m2, and milliliters read as L/ha.
 *
 * - `w` nozzle spacing for broadcast, row spacing for directed spraying, band width for bands
 *
 * The exact plot is 340.3125 ft2. Printed tables take 340 (Louisiana, Ohio) or 340.3 (Georgia), round to
 * whole feet, and are one foot short at 14, 22 and 32 in. For a wide boomless swath the course gets too
 * short to time: `tenfold` makes it ten times as long, and the catch is divided by 10 (Georgia SB16).
 *
 * @param input - `width`; `reading`, `"fl oz as gal/acre"` where left out; `tenfold`, no where left out
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: Ohio State University Extension FABE-520, table 1; LSU AgCenter, Ounces equal gallons.
 *
 * @example
 * ```ts
 * import { catchCourse, quantity } from "ratewright";
 * catchCourse({ width: quantity(20, "in") }).course.in("ft"); // => 204.1875
 * catchCourse({ width: quantity(50, "cm"), reading: "mL as L/ha" }).course.in("m"); // => 20
 * const boomless = catchCourse({ width: quantity(30, "ft"), tenfold: true });
 * boomless.course.in("ft"); // => 113.4375
 * boomless.divideBy; // => 10
 * ```
 */
export const catchCourse = (input: {
  readonly width: Length;
  readonly reading?: CatchReading;
  readonly tenfold?: boolean;
}): CatchCourse => {
  expectFields(input, ["width", "reading", "tenfold"]);
  const { reading = "fl oz as gal/acre", tenfold = false } = input;
  const { width } = allOf({
    reading: () => expectOneOf(reading, ["fl oz as gal/acre", "mL as L/ha"], "reading"),
    tenfold: () => expectFlag(tenfold, "tenfold"),
    width: () => positive(input.width, "width", "length"),
  });
  const divideBy = tenfold ? 10 : 1;
  const area = areas()[reading].times(divideBy);
  return {
    type: "catch-course",
    version: 1,
    course: runLength({ area, swath: width }),
    area,
    reading,
    divideBy,
  };
};
