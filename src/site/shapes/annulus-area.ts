import { described } from "../../quantity/house.js";
import { checks, fail, outOfRange } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthOf, type UnitSet, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";

/** A ring by two of its measures: two radii, two diameters, or one diameter and the width of the ring. */
export type Annulus =
  | { readonly outerRadius: Length; readonly innerRadius: Length }
  | { readonly outerDiameter: Length; readonly innerDiameter: Length }
  | { readonly outerDiameter: Length; readonly width: Length }
  | { readonly innerDiameter: Length; readonly width: Length };

const pairs = [
  ["outerRadius", "innerRadius"],
  ["outerDiameter", "innerDiameter"],
  ["outerDiameter", "width"],
  ["innerDiameter", "width"],
] as const;
const measures = ["outerRadius", "innerRadius", "outerDiameter", "innerDiameter", "width"] as const;
const choices =
  "outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring";

/**
 * The area of a ring: a circle without the smaller circle inside it, such as the collar of a green.
 *
 * `A = pi * (R^2 - r^2)`, worked out as `pi * (R - r) * (R + r)`, with `R` and `r` the outer and the inner
 * radius, in the square of the unit of the first measure. Exactly two measures: `outerRadius` and
 * `innerRadius`, `outerDiameter` and `innerDiameter`, or one diameter and the `width` of the ring, as people
 * measure it. All above zero, the inner circle smaller. The circles need not share their middle where two
 * radii or two diameters are given.
 *
 * @throws RatewrightError `range` where the inner circle is not the smaller one, or the width reaches the
 * middle; `missing` and `conflict` for fewer or other than two measures; `type`, `unit/mismatch`,
 * `not-finite`; every length that is not right is reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { annulusArea } from "ratewright/site";
 * const collar = annulusArea({ innerDiameter: quantity(80, "ft"), width: quantity(4, "ft") });
 * Math.round(collar.in("ft2")); // => 1056
 * Math.round(annulusArea({ outerRadius: quantity(44, "ft"), innerRadius: quantity(40, "ft") }).in("ft2")); // => 1056
 * ```
 */
export const annulusArea = (ring: Annulus): Area => {
  const { outer, inner, units } = annulusOf(ring);
  return areaIn(Math.PI * (outer - inner) * (outer + inner), units);
};

/** The radii of a ring that is told by two of its measures, as numbers of a unit. */
export const annulusOf = (
  input: unknown,
): { readonly outer: number; readonly inner: number; readonly units: UnitSet } => {
  const problems = checks();
  const record = recordWith(input, measures, problems);
  const given = measures.filter((key) => record[key] !== undefined);
  const pair = pairs.find((two) => given.length === 2 && two.every((key) => given.includes(key)));
  if (pair === undefined) {
    const missing = given.length === 1 ? pairs.find((two) => two.some((key) => key === given[0])) : undefined;
    const other = missing?.find((key) => key !== given[0]);
    problems.run(() =>
      given.length < 2
        ? fail("missing", other ?? "outerRadius", undefined, choices)
        : fail("conflict", given[0] as string, described(given.join(" and ")), choices),
    );
  }
  const lengths = given.map((key) => problems.run(() => lengthOf(record[key], key)));
  problems.done();
  const [first, second] = pair as (typeof pairs)[number];
  const one = lengths[given.indexOf(first)] as Length;
  const units = unitSet(one.unit);
  const [a, b] = [one.in(units.length), (lengths[given.indexOf(second)] as Length).in(units.length)];
  const half = first === "outerRadius" ? 1 : 2;
  if (second === "width") {
    const [outer, inner] = first === "outerDiameter" ? [a / 2, a / 2 - b] : [a / 2 + b, a / 2];
    return inner > 0
      ? { outer, inner, units }
      : outOfRange(
          "width",
          record.width,
          { below: a / 2, unit: units.length },
          "{}, which is half the diameter",
        );
  }
  return b < a
    ? { outer: a / half, inner: b / half, units }
    : outOfRange(second, record[second], { below: a, unit: units.length }, "{}, which is the outer one");
};
