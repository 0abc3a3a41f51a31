import { described } from "../../quantity/house.js";
import { allOf, expectFields, expectNumber, type Finding, fail, outOfRange } from "../../quantity/index.js";
import { fieldsOf, type Length } from "../inputs.js";
import { type Profile, patternOf, profileOf, sumLeftOf } from "../pattern/profile.js";
import type { SpreadPattern } from "../pattern/spread-pattern.js";
import { type Driving, expectDriving, overlapInto, pansPer } from "./overlap-kernel.js";

/**
 * At how many positions the overlapped deposit is taken. `"pans"`: at the pans, which needs equal spacing and
 * a swath that is a whole multiple of it: `w / dx` positions for one direction, `2 w / dx` for back and forth,
 * where the deposit comes back only after two swaths. A number `n`, 2 to 1000: the mean over each of `n` strips
 * side by side across one swath, for any swath and any spacing.
 */
export type Positions = "pans" | number;

/** What the ground gets after overlap, across a swath. */
export interface OverlapDeposits {
  readonly type: "overlap-deposits";
  readonly version: 1;
  readonly driving: Driving;
  readonly swath: Length;
  /** Places from the line of travel of one pass, in `offsetUnit`: pans, or the middles of strips. */
  readonly offsets: readonly number[];
  readonly offsetUnit: string;
  /** The deposit at each place, in the unit of the catches. */
  readonly deposits: readonly number[];
  readonly unit: string;
  /** The mean by mass balance, in the unit of the catches: that of the deposits, too. */
  readonly mean: number;
  readonly findings: readonly Finding[];
}

export const expectPositions = (input: unknown): Positions => {
  if (input === "pans") return input;
  if (input === undefined) return fail("missing", "positions", input, "pans, or a number of strips");
  const n = expectNumber(input, "positions", { min: 2, max: 1000 });
  return Number.isInteger(n) ? n : outOfRange("positions", n, { step: 1 });
};

/** The spacing of a pattern with equal spacing, or throws. */
export const equalSpacing = (pattern: SpreadPattern): number =>
  pattern.spacing ??
  fail(
    "conflict",
    "positions",
    described("pans"),
    "a number of strips, because the pans are not evenly spaced",
  );

/** Twice the place of the first pan, in pans, for driving back and forth. */
export const mirrorOfPattern = (pattern: SpreadPattern, driving: Driving): number | undefined => {
  if (driving === "one direction") return undefined;
  const twice = (2 * (pattern.offsets[0] as number)) / equalSpacing(pattern);
  const whole = Math.round(twice);
  return Math.abs(twice - whole) <= 1e-6
    ? whole
    : fail(
        "conflict",
        "positions",
        described("pans"),
        "a number of strips, because the line of travel runs neither through a pan nor half-way between two",
      );
};

/** More overlap than this is taken for a slip of units. */
const mostPasses = 20_000;

/** What falls on `n` strips side by side from half a swath left of a pass to half a swath right of it. */
export const stripDeposits = (profile: Profile, swath: number, n: number, driving: Driving): Float64Array => {
  const left = profile.x[0] as number;
  const right = profile.x[profile.x.length - 1] as number;
  // Passes whose throw reaches over the swath around pass 0, mirrored or not.
  const reach = Math.max(-left, right, 0);
  const passes = Math.ceil(reach / swath - 0.5);
  if (passes > mostPasses)
    outOfRange(
      "swath",
      swath,
      { min: reach / (mostPasses + 0.5) },
      `{}, a swath that ${mostPasses} passes overlap`,
    );
  const out = new Float64Array(n);
  const width = swath / n;
  for (let pass = -passes; pass <= passes; pass++) {
    const mirrored = driving === "back and forth" && pass % 2 !== 0;
    const at = pass * swath;
    let before = 0;
    for (let edge = 0; edge <= n; edge++) {
      const x = (edge / n - 0.5) * swath - at;
      const here = mirrored ? profile.total - sumLeftOf(profile, -x) : sumLeftOf(profile, x);
      // Never below zero by rounding: what lies left of a place does not fall.
      if (edge > 0) out[edge - 1] = (out[edge - 1] as number) + Math.max(0, here - before) / width;
      before = here;
    }
  }
  return out;
};

/** Deposits and their offsets for one swath, as numbers in the units of the pattern. */
const depositsAt = (
  pattern: SpreadPattern,
  swath: number,
  driving: Driving,
  positions: Positions,
): { readonly deposits: readonly number[]; readonly offsets: readonly number[] } => {
  if (positions !== "pans") {
    const deposits = Array.from(stripDeposits(profileOf(pattern), swath, positions, driving));
    const offsets = deposits.map((_, i) => ((i + 0.5) / positions - 0.5) * swath);
    return { deposits, offsets };
  }
  const spacing = equalSpacing(pattern);
  const mirror = mirrorOfPattern(pattern, driving);
  const k = pansPer(swath, spacing, "swath");
  const bins = new Float64Array(2 * k);
  const count = overlapInto(bins, Float64Array.from(pattern.catches), k, mirror);
  // The list begins at the line of travel, or at the first place right of it.
  const first = pattern.offsets[0] as number;
  const start = Math.ceil(-first / spacing - 1e-9);
  const deposits = Array.from({ length: count }, (_, i) => bins[(start + i) % count] as number);
  return { deposits, offsets: deposits.map((_, i) => first + (start + i) * spacing) };
};

/**
 * What the ground gets once neighboring passes overlap.
 *
 * `D(x) = sum over passes j of p(x - j w)`; driving back and forth every other pass lies mirrored,
 * `p(j w - x)`
 *
 * - `p` catch of one pass at a place, from the pattern; `w` the swath, from pass to pass
 * - `D` deposit, in the unit of the catches
 *
 * The mean follows from the mass balance, whatever the pattern and the driving: `m = sum(p) dx / w`, for
 * unequal spacing the area below the pattern over `w`. The deposits have just this mean.
 *
 * Range: passes without end on both sides, all alike; the edges of the area are not in it.
 *
 * @param options.positions - see {@link Positions}
 * @throws RatewrightError `conflict` where `"pans"` cannot be used: unequal spacing, a swath that is no
 * multiple of it, or a line of travel off the grid of the pans; `missing`, `type`, `range`, `unit/mismatch`
 *
 * Source: the naming of the modes: Fertilizer Australia, test-scheme graphs; the mass balance is derived.
 *
 * @example
 * ```ts
 * import { overlapDeposits, quantity, spreadPattern } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [0, 1, 2, 3, 4, 5, 6, 4, 2, 0], unit: "g", pans: { spacing: quantity(1, "m"), left: 6 },
 * });
 * const swath = quantity(4, "m");
 * const round = overlapDeposits(pattern, { swath, driving: "one direction", positions: "pans" });
 * round.deposits; // => [8, 7, 6, 6]
 * round.mean; // => 6.75
 * const back = overlapDeposits(pattern, { swath, driving: "back and forth", positions: "pans" });
 * back.deposits; // => [8, 5, 4, 5, 8, 8, 8, 8]
 * ```
 */
export const overlapDeposits = (
  pattern: SpreadPattern,
  options: { readonly swath: Length; readonly driving: Driving; readonly positions: Positions },
): OverlapDeposits => {
  const row = patternOf(pattern);
  const record = expectFields(
    options,
    ["swath", "driving", "positions"],
    "options",
    "a record with swath, driving, positions",
  );
  const { found, driving, positions } = allOf({
    found: () => fieldsOf(record, { swath: { dimension: "length" } }),
    driving: () => expectDriving(record.driving),
    positions: () => expectPositions(record.positions),
  });
  const { swath } = found;
  const w = swath.in(row.offsetUnit as "ft");
  return {
    type: "overlap-deposits",
    version: 1,
    driving,
    swath,
    ...depositsAt(row, w, driving, positions),
    offsetUnit: row.offsetUnit,
    unit: row.unit,
    mean: profileOf(row).total / w,
    findings: row.findings,
  };
};
