import { wholeUnitsFor } from "../../numeric/index.js";
import { expectFields, outOfRange, quantity } from "../../quantity/index.js";
import { above, fieldsOf, isMetric, type Length } from "../inputs.js";

/** How many passes cover a side, and how they fit. */
export interface PassCount {
  readonly type: "pass-count";
  readonly version: 1;
  readonly count: number;
  /** The side over the swath, before it is taken up to a whole number. */
  readonly exact: number;
  /** What the last pass still has to cover, and what one pass fewer leaves bare; the swath where they come out even. */
  readonly lastWidth: Length;
  /** The distance from pass to pass that would spread the passes evenly: the swath or less. */
  readonly evenSpacing: Length;
}

/** More passes than this are taken for a slip of units. */
const mostPasses = 1e6;

/**
 * How many passes cover the side of an area.
 *
 * `n = ceil(b / w)`, where a quotient that is a whole number to one part in 10^12 is that number
 *
 * - `b` the side square to the passes, `w` the swath; lengths of the result in ft or in m, as the swath
 *
 * The last pass covers `b - (n - 1) w` of new ground. Driven a full swath apart it throws the rest over the
 * edge; driven `b / n` apart all passes overlap more, and the rate rises by `w n / b`.
 *
 * Sources disagree on quotients a little above a whole number: 209 ft in swaths of 13 ft are 16.08 passes,
 * which some count as 16: `lastWidth` says what that leaves bare.
 *
 * Range: both above zero; more than a million passes are taken for a slip of units.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: University of Florida aquatic plants center (209 ft in 35 ft swaths: 6 trips).
 *
 * @example
 * ```ts
 * import { passesFor, quantity } from "ratewright";
 * passesFor({ side: quantity(209, "ft"), swath: quantity(35, "ft") }).count; // => 6
 * const narrow = passesFor({ side: quantity(209, "ft"), swath: quantity(13, "ft") });
 * narrow.count; // => 17
 * narrow.lastWidth.in("ft"); // => 1
 * ```
 */
export const passesFor = (input: { readonly side: Length; readonly swath: Length }): PassCount => {
  const { side, swath } = fieldsOf(
    expectFields(input, ["side", "swath"], "input", "a record with side, swath"),
    {
      side: { dimension: "length" },
      swath: { dimension: "length" },
    },
  );
  const unit = isMetric(swath.unit) ? "m" : "ft";
  const [b, w] = [side.in(unit), swath.in(unit)];
  if (!(b / w <= mostPasses))
    outOfRange(
      "swath",
      swath,
      { min: b / mostPasses, unit },
      `{}, a swath of which ${mostPasses} passes cover the side`,
    );
  const count = wholeUnitsFor(b, w);
  const rest = b - (count - 1) * w;
  // Within the guard of the ceiling the passes come out even.
  const last = Math.abs(rest - w) <= 1e-12 * b ? w : rest;
  return {
    type: "pass-count",
    version: 1,
    count,
    exact: above(b / w, "side"),
    lastWidth: quantity(last, unit),
    evenSpacing: quantity(b / count, unit),
  };
};
