import { counted, described } from "../../quantity/house.js";
import { checks, expectOneOf, fail, outOfRange } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthList, lengthOf, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";

/** How the widths are joined to an area, see {@link offsetArea}. */
export type OffsetRule = "trapezoidal" | "simpson" | "average ordinate";

/** Widths measured square to a line, at known distances along it. */
export type Offsets = {
  /** Distance from one width to the next: one for all, or a list with one for each strip. */
  readonly spacing: Length | readonly Length[];
  /** Default `"trapezoidal"`. */
  readonly rule?: OffsetRule;
} & (
  | {
      /** Widths right across the shape, with both ends: 0 where it runs to a point. */
      readonly widths: readonly Length[];
      readonly left?: never;
      readonly right?: never;
    }
  | {
      /** Widths on the left of the line, both ends included. */
      readonly left: readonly Length[];
      /** Widths on the right of the line, as many as on the left. */
      readonly right: readonly Length[];
      readonly widths?: never;
    }
);

const rules = ["trapezoidal", "simpson", "average ordinate"] as const;

/**
 * The area of an irregular shape from widths (offsets, ordinates) measured along a line.
 *
 * With n strips between the widths `w[0]` to `w[n]`, `d` apart:
 * - `"trapezoidal"` (default): `A = d * ((w[0] + w[n]) / 2 + sum of the others)`; with unequal spacing the
 *   sum of `(w[i] + w[i+1]) / 2 * d[i]`. Exact for straight edges.
 * - `"simpson"`: `A = d / 3 * (w[0] + w[n] + 4 * sum of the odd ones + 2 * sum of the even ones between)`.
 *   Closer for smooth curves. Needs an even number of strips; where it is odd, the last strip is taken as
 *   a trapezoid.
 * - `"average ordinate"`: `A = (mean of all widths) * n * d`. Crude: it gives the ends too much weight.
 *
 * In the square of the unit of the first spacing. Widths are zero or more, not all zero; spacings above zero.
 * Simpson and the average ordinate need equal spacing. At least 2 widths, for Simpson 3.
 *
 * The widths include both ends. The field method "add the widths and multiply by the spacing" leaves out
 * ends of zero width; give those as 0. Where the ends are not zero that short cut gives too much.
 *
 * @throws RatewrightError `conflict` for unequal spacing with Simpson or the average ordinate, for a list of
 * spacings or a right side of the wrong length, and for `widths` beside `left` and `right`; `type` for an
 * unknown rule; `missing`, `range`, `unit/mismatch`, `not-finite`; every width that is not right is reported
 *
 * Source: "Calculation of areas from offsets to a base line", open surveying course notes; the short cut:
 * Grounds Maintenance, "Calculate areas".
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { offsetArea } from "ratewright/site";
 * const widths = [0, 32, 50, 45, 17, 0].map((feet) => quantity(feet, "ft"));
 * offsetArea({ spacing: quantity(10, "ft"), widths }).in("ft2"); // => 1440
 * ```
 */
export const offsetArea = (offsets: Offsets): Area => {
  const problems = checks();
  const record = recordWith(offsets, ["spacing", "widths", "left", "right", "rule"], problems);
  const { rule = "trapezoidal" } = record;
  problems.run(() => expectOneOf(rule, rules, "rule"));
  const spacing = problems.run(() =>
    Array.isArray(record.spacing)
      ? lengthList(record.spacing, "spacing", 1, "positive")
      : [lengthOf(record.spacing, "spacing")],
  );
  const least = rule === "simpson" ? 3 : 2;
  const sides = problems.run(() => sidesOf(record, least));
  problems.done();

  const gaps = spacing as readonly Length[];
  const units = unitSet((gaps[0] as Length).unit);
  const [one, other] = (sides as readonly (readonly Length[])[]).map((side) =>
    side.map((width) => width.in(units.length)),
  ) as [number[], number[]?];
  const widths = one.map((width, i) => width + (other?.[i] ?? 0));
  const strips = widths.length - 1;
  if (widths.every((width) => width === 0)) {
    outOfRange(
      sides?.length === 1 ? "widths" : "left",
      described("widths that are all zero"),
      { above: 0 },
      "a width of {}",
    );
  }
  const listed = gaps.map((gap) => gap.in(units.length));
  if (Array.isArray(record.spacing) && listed.length !== strips) {
    fail(
      "conflict",
      "spacing",
      described(`${counted(listed.length, "spacing")} for ${counted(widths.length, "width")}`),
      `${strips}, one for each strip`,
    );
  }
  const d = listed[0] as number;
  const equal = listed.every((gap) => Math.abs(gap - d) <= 1e-9 * d);
  if (rule !== "trapezoidal" && !equal) {
    fail(
      "conflict",
      "spacing",
      described("unequal spacings"),
      `equal spacing for the rule ${rule}; or the rule trapezoidal`,
    );
  }
  if (rule === "average ordinate") {
    return areaIn((widths.reduce((a, b) => a + b) / widths.length) * strips * d, units);
  }
  if (rule === "simpson") return areaIn(simpson(widths, d), units);
  return areaIn(equal ? trapezoids(widths, d) : strip(widths, listed), units);
};

const sidesOf = (
  record: Readonly<Record<string, unknown>>,
  least: number,
): readonly (readonly Length[])[] => {
  const { widths, left, right } = record;
  if (left === undefined && right === undefined) return [lengthList(widths, "widths", least)];
  if (widths !== undefined) return fail("conflict", "widths", widths, "widths, or left and right, not both");
  const problems = checks();
  const one = problems.run(() => lengthList(left, "left", least));
  const other = problems.run(() => lengthList(right, "right", least));
  if (one !== undefined && other !== undefined && one.length !== other.length) {
    problems.run(() => fail("conflict", "right", right, `a list of ${one.length}, as many as on the left`));
  }
  problems.done();
  return [one as readonly Length[], other as readonly Length[]];
};

/** One spacing is multiplied in once, so that whole numbers stay whole. */
const trapezoids = (widths: readonly number[], d: number): number => {
  const n = widths.length - 1;
  const ends = ((widths[0] as number) + (widths[n] as number)) / 2;
  return d * widths.slice(1, n).reduce((total, width) => total + width, ends);
};

const strip = (widths: readonly number[], gaps: readonly number[]): number =>
  gaps.reduce((total, gap, i) => total + (((widths[i] as number) + (widths[i + 1] as number)) / 2) * gap, 0);

const simpson = (widths: readonly number[], d: number): number => {
  const n = widths.length - 1;
  const even = n - (n % 2);
  let weighted = 0;
  for (let i = 0; i <= even; i++) {
    weighted += (widths[i] as number) * (i === 0 || i === even ? 1 : i % 2 === 1 ? 4 : 2);
  }
  const rest = even === n ? 0 : (d * ((widths[even] as number) + (widths[n] as number))) / 2;
  return (d * weighted) / 3 + rest;
};
