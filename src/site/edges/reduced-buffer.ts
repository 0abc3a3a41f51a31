import {
  checks,
  expectList,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  likeQuantity,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Length, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";

/** A buffer after the reductions that its label states. */
export interface ReducedBuffer {
  readonly type: "reduced-buffer";
  readonly version: 1;
  /** What is left of the distance, never less than the floor of the label. */
  readonly distance: Length;
  /** By how much the reductions shorten it together, 100 % at most. */
  readonly reduction: Quantity<"1", "none">;
  /** Whether the floor of the label holds the distance up. */
  readonly atFloor: boolean;
  readonly findings: readonly Finding[];
}

const mostReductions = 50;

/**
 * The distance of a no-spray buffer after the reductions that a label states, down to the label's floor.
 *
 * - `"sum"`: `d = distance * (1 - sum of reductions)`, the reading of the US mitigation menu: 50 % and 30 % are 80 %
 * - `"in turn"`: `d = distance * (1 - r1) * (1 - r2) ...`, where a label or a rule says that each is taken of the rest
 *
 * then `max(d, floor)`; where the sum is 100 % or more, nothing is left but the floor. Each reduction from 0 to 100 %.
 * Which measures count, how they add up, and the floor, are on the label and in what it refers to. Nothing here says
 * that a reduction applies.
 *
 * @throws RatewrightError `missing` for no rule; `type`, `unit/mismatch`, `not-finite`, `range`; everything that is not
 * right is reported
 *
 * Source: Pesticide Environmental Stewardship, "Drift and the ESA" (the measures are cumulative); Minnesota Department
 * of Agriculture, "Drift mitigation" (up to 100 %).
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { reducedBuffer } from "ratewright/site";
 * const percent = (value: number) => quantity(value, "%");
 * const left = reducedBuffer({
 *   distance: quantity(50, "ft"),
 *   reductions: [percent(50), percent(30)],
 *   rule: "sum",
 *   floor: quantity(15, "ft"),
 * });
 * left.distance.in("ft"); // => 15
 * left.atFloor; // => true
 * ```
 */
export const reducedBuffer = (input: {
  /** The buffer as the label states it, before any reduction. */
  readonly distance: Length;
  readonly reductions: readonly Quantity<"1", "none">[];
  readonly rule: "sum" | "in turn";
  /** The least that the label lets the buffer come down to; leave it out where the label states none. */
  readonly floor?: Length;
}): ReducedBuffer => {
  const problems = checks();
  const record = recordWith(input, ["distance", "reductions", "rule", "floor"], problems, "input");
  const distance = problems.run(() => lengthOf(record.distance, "distance"));
  const shares = problems.run(() => reductionsOf(record.reductions));
  const rule = problems.run(() => expectOneOf(record.rule, ["sum", "in turn"], "rule"));
  const floor =
    record.floor === undefined
      ? undefined
      : problems.run(() => lengthOf(record.floor, "floor", "non-negative"));
  problems.done();
  const [stated, list] = [distance as Length, shares as readonly number[]];
  const taken =
    rule === "sum"
      ? Math.min(
          1,
          list.reduce((sum, share) => sum + share, 0),
        )
      : 1 - list.reduce((rest, share) => rest * (1 - share), 1);
  const least = floor === undefined ? 0 : floor.in(stated.unit as "m");
  if (least > stated.value * (1 + 1e-9)) {
    outOfRange("floor", floor, { max: stated.value, unit: stated.unit }, "{}, the buffer itself");
  }
  const rest = nearly(stated.value * (1 - taken), stated.value);
  return {
    type: "reduced-buffer",
    version: 1,
    distance: likeQuantity(stated, Math.max(rest, least)),
    reduction: quantity(nearly(100 * taken, 100), "%"),
    atFloor: least > rest,
    findings: [labelFinding(floor === undefined)],
  };
};

/** What differs from 0 by the last digits of a sum is 0. */
const nearly = (value: number, size: number): number => (Math.abs(value) <= 1e-12 * size ? 0 : value);

const reductionsOf = (input: unknown): readonly number[] => {
  if (Array.isArray(input) && input.length === 0) return [];
  const list = expectList(input, "reductions", "reduction", mostReductions);
  const problems = checks();
  const shares = list.map((item, i) =>
    problems.run(() => {
      const at = `reductions[${i}]`;
      if (typeof item === "number") return fail("type", at, item, 'a share, such as quantity(50, "%")');
      const share = expectQuantity(item, { dimension: "1", of: "none", bound: "non-negative" }, at).in("1");
      return share <= 1 ? share : outOfRange(at, item, { max: 100, unit: "%" });
    }),
  );
  problems.done();
  return shares as readonly number[];
};

const labelFinding = (noFloor: boolean): Finding => ({
  code: "buffer-by-label",
  severity: "caution",
  params: { floor: noFloor ? "none stated" : "stated" },
  text: noFloor
    ? "No least distance was given. Read the label for one: the label decides which reductions count, how they add up, and how far the buffer comes down."
    : "The label decides which reductions count, how they add up, and how far the buffer comes down.",
  source: "common practice, no source",
});
