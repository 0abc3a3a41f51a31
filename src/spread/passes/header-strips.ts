import { checks, expectFields, expectNumber, fail, outOfRange, quantity } from "../../quantity/index.js";
import { type Area, fieldsOf, isMetric, type Length } from "../inputs.js";
import { passesFor } from "./passes-for.js";

/** A rectangle with its header strips. */
export interface HeaderStrips {
  readonly type: "header-strips";
  readonly version: 1;
  /** What is left inside of the strips, for the back and forth passes; of zero length where nothing is. */
  readonly inner: { readonly length: Length; readonly width: Length; readonly area: Area };
  readonly headerArea: Area;
  /** Passes along the length over the inner area. */
  readonly innerPasses: number;
  /** How far the spreader goes with the gate open, strips and passes together. */
  readonly distance: Length;
}

/**
 * The header strips of a rectangle, and what is left for the back and forth passes between them.
 *
 * - `"perimeter"`: `h` rounds along the edge leave `(a - 2 h w) (b - 2 h w)`; round `k` runs `(k - 1/2) w`
 *   inside of the edge
 * - `"ends"`: `h` strips across each end leave `(a - 2 h w) b`
 *
 * with `a` the length, along which the inner passes run, `b` the width, `w` the swath, `h` the number of
 * `strips`. Lengths in ft or m, as the swath. The gate is shut at the strips.
 *
 * Range: the strips fit into the rectangle; `strips` zero or more.
 *
 * @throws RatewrightError `infeasible` where the strips are wider than the rectangle; with every problem:
 * `missing`, `range`, `unit/mismatch`, `type`, `not-finite`
 *
 * Source: consumer guides (two strips at each end, or one round, then back and forth); the areas are plane
 * geometry.
 *
 * @example
 * ```ts
 * import { headerStrips, quantity } from "ratewright";
 * const plan = headerStrips({
 *   length: quantity(200, "ft"), width: quantity(100, "ft"), swath: quantity(10, "ft"),
 *   strips: 1, along: "perimeter",
 * });
 * plan.inner.length.in("ft"); // => 180
 * plan.innerPasses; // => 8
 * plan.headerArea.in("ft2"); // => 5600
 * ```
 */
export const headerStrips = (input: {
  readonly length: Length;
  readonly width: Length;
  readonly swath: Length;
  /** Rounds along the edge, or strips across each end. */
  readonly strips: number;
  readonly along: "perimeter" | "ends";
}): HeaderStrips => {
  const record = expectFields(
    input,
    ["length", "width", "swath", "strips", "along"],
    "input",
    "a record with length, width, swath, strips, along",
  );
  const problems = checks();
  const found = problems.run(() =>
    fieldsOf(record, {
      length: { dimension: "length" },
      width: { dimension: "length" },
      swath: { dimension: "length" },
    }),
  );
  const strips = problems.run(() => stripsOf(record.strips)) as number;
  const { along } = record;
  if (along !== "perimeter" && along !== "ends") {
    problems.run(() => fail("type", "along", along, "perimeter or ends"));
  }
  problems.done();
  const { length, width, swath } = found as NonNullable<typeof found>;
  const [unit, squared] = isMetric(swath.unit) ? (["m", "m2"] as const) : (["ft", "ft2"] as const);
  const [a, b, w] = [length.in(unit), width.in(unit), swath.in(unit)];
  const taken = 2 * strips * w;
  const round = along === "perimeter";
  const guard = 1e-12 * Math.max(a, b);
  const left = (side: number, name: string): number => {
    const rest = side - taken;
    if (rest < -guard) fail("infeasible", "strips", strips, `fewer strips: they are wider than the ${name}`);
    return rest <= guard ? 0 : rest;
  };
  const [inside, across] = [left(a, "length"), round ? left(b, "width") : b];
  const area = inside * across;
  const innerPasses = area > 0 ? passesFor({ side: quantity(across, unit), swath }).count : 0;
  const header = round
    ? // h rounds at (k - 1/2) w from the edge, each two lengths and two widths less its corners
      2 * strips * (a + b) - 4 * strips * strips * w
    : 2 * strips * b;
  return {
    type: "header-strips",
    version: 1,
    inner: { length: quantity(inside, unit), width: quantity(across, unit), area: quantity(area, squared) },
    headerArea: quantity(Math.max(0, a * b - area), squared),
    innerPasses,
    distance: quantity(header + innerPasses * inside, unit),
  };
};

const stripsOf = (input: unknown): number => {
  if (input === undefined || input === null)
    return fail("missing", "strips", input, "a whole number, 0 or more");
  const strips = expectNumber(input, "strips", { min: 0 });
  return Number.isInteger(strips) ? strips : outOfRange("strips", strips, { step: 1 });
};
