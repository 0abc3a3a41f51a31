import { described } from "../../quantity/house.js";
import { checks, expectNumber, fail, outOfRange, quantity } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthIn, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";
import { insetOf, isConvex } from "./insets.js";
import { type Outline, type ReadOutline, readOutline } from "./outlines.js";

/** Passes around the edge of a site: how far, and what they cover. */
export interface PassesAround {
  readonly type: "passes-around";
  readonly version: 1;
  /** Length of each round, along its middle, the outermost first. */
  readonly passes: readonly Length[];
  /** All rounds together. */
  readonly distance: Length;
  readonly covered: Area;
  /** What is left inside for passes back and forth; 0 where nothing is. */
  readonly inside: Area;
}

const mostPasses = 1000;

/**
 * The rounds along the edge of a site at a swath: their length, what they cover, and what is left inside.
 *
 * Round `k` runs `(k - 1/2) * swath` inside of the edge. A straight edge that is moved in by `d` grows shorter by
 * `d * (tan(t1 / 2) + tan(t2 / 2))`, with `t1` and `t2` the turns at its ends; an edge that is used up is left out. A
 * circle has `2 pi (r - d)`. Corners are driven square, to the point.
 *
 * For outlines that bend one way only: square, rectangle, triangle, circle, stadium and convex polygons. Of a shape
 * with a dent, take the parts one by one. Header strips at the ends, and the passes between them, are
 * `headerStrips` of `ratewright/spread`.
 *
 * @throws RatewrightError `infeasible` for more rounds than fit; `range` for an outline with a dent, or rounds that are no
 * whole number of 1 or more; with every problem of the shape: `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { passesAround } from "ratewright/site";
 * const ft = (value: number) => quantity(value, "ft");
 * const plan = passesAround({
 *   outline: { shape: "rectangle", length: ft(200), width: ft(100) },
 *   swath: ft(10),
 *   passes: 2,
 * });
 * plan.passes.map((pass) => pass.in("ft")); // => [560, 480]
 * plan.covered.in("ft2"); // => 10400
 * plan.inside.in("ft2"); // => 9600
 * ```
 */
export const passesAround = (input: {
  readonly outline: Outline;
  readonly swath: Length;
  readonly passes: number;
}): PassesAround => {
  const problems = checks();
  const record = recordWith(input, ["outline", "swath", "passes"], problems, "input");
  const read = problems.run(() => convexOutline(record.outline));
  const swath = problems.run(() => lengthOf(record.swath, "swath"));
  const passes = problems.run(() => passesOf(record.passes));
  problems.done();
  const outline = read as ReadOutline;
  const { units } = outline;
  const [width, count] = [(swath as Length).in(units.length), passes as number];
  const lengths: number[] = [];
  for (let k = 0; k < count; k++) {
    const middle = insetOf(outline, (k + 0.5) * width);
    if (middle === undefined) {
      return fail(
        "infeasible",
        "passes",
        count,
        `at most ${k}: the middle of the next one is past the middle of the site`,
      );
    }
    lengths.push(middle.length);
  }
  const whole = insetOf(outline, 0)?.area ?? 0;
  const inside = insetOf(outline, count * width)?.area ?? 0;
  return {
    type: "passes-around",
    version: 1,
    passes: lengths.map((length) => lengthIn(length, units)),
    distance: lengthIn(
      lengths.reduce((sum, length) => sum + length, 0),
      units,
    ),
    covered: areaIn(whole - inside, units),
    inside: quantity(inside, units.area),
  };
};

const convexOutline = (input: unknown): ReadOutline => {
  const outline = readOutline(input);
  return outline.kind === "corners" && !isConvex(outline.corners)
    ? fail(
        "range",
        "outline.points",
        described("an outline with a dent"),
        "an outline that bends one way: take its parts one by one",
      )
    : outline;
};

const passesOf = (input: unknown): number => {
  if (input === undefined) return fail("missing", "passes", input, "a whole number of rounds, 1 or more");
  const passes = expectNumber(input, "passes", { min: 1, max: mostPasses });
  return Number.isInteger(passes) ? passes : outOfRange("passes", passes, { step: 1 });
};
