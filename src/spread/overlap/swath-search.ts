import { expectWithin, notShare } from "../../numeric/house.js";
import { type Divisor, exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { fieldsOf, type Length } from "../inputs.js";
import { patternOf, profileOf } from "../pattern/profile.js";
import type { SpreadPattern } from "../pattern/spread-pattern.js";
import {
  equalSpacing,
  expectPositions,
  mirrorOfPattern,
  type Positions,
  stripDeposits,
} from "./overlap-deposits.js";
import {
  cvPercentOf,
  type Driving,
  expectDivisor,
  expectDriving,
  mostPans,
  overlapInto,
  pansPer,
  refuseOnePosition,
} from "./overlap-kernel.js";
import type { UniformityOptions } from "./swath-uniformity.js";

/** A swath, and the CV at it. */
export interface SwathCv {
  readonly swath: Length;
  readonly cv: Quantity<"1", "none">;
}

/** Swaths next to one another that all meet the limit. */
export interface SwathRange {
  readonly from: Length;
  readonly to: Length;
  /** The swath of the range with the lowest CV. */
  readonly lowest: SwathCv;
}

/** The CV at every swath that was tried, and which of them meet a limit. */
export interface SwathSearch {
  readonly type: "swath-search";
  readonly version: 1;
  readonly driving: Driving;
  readonly positions: Positions;
  readonly divisor: Divisor;
  readonly limit: Quantity<"1", "none">;
  /** The distance from one swath tried to the next: a range may end anywhere within one step past its ends. */
  readonly step: Length;
  readonly rows: readonly SwathCv[];
  /** Every stretch of swaths that meet the limit, from narrow to wide; several for M- and W-shaped patterns. */
  readonly ranges: readonly SwathRange[];
  /** The widest swath that meets the limit; left out where none does. */
  readonly widest?: SwathCv;
  readonly findings: readonly Finding[];
}

const mostSwaths = 10_000;

/**
 * The CV at every swath, the ranges of swath that meet a limit, and the widest swath that does.
 *
 * Every swath from `from` on is tried, a `step` apart, up to `to`, with the CV of `swathUniformity`. The CV does
 * not rise steadily with the swath: 5 to 19 m and 31 to 34 m may pass where 25 m fails, so neither a bisection
 * nor a search that stops at the first failure finds all of it.
 *
 * The widest swath may lie close to where the limit is passed; `lowest` of its range is the forgiving choice.
 * The limit comes from the caller: `uniformityLimit` has those that were printed.
 *
 * @param options.from - where left out: two pans with `positions: "pans"`, else one `step`
 * @param options.to - where left out: the width from end to end of the pattern, past which ground is bare
 * @param options.step - where left out: the spacing of the pans; with `positions: "pans"` it is a whole
 * multiple of the spacing
 * @throws RatewrightError as `swathUniformity`; `missing` where the spacing is unequal and no `step` is given;
 * `range` for a limit of zero, for more than 10 000 swaths and for a swath of more than a million pans;
 * `conflict` for a `to` below `from` and, with `positions: "pans"`, for a `step` or `from` that is no multiple of
 * their spacing
 *
 * Source: Fertilizer Australia, "What do the Australian test-scheme graphs mean?" (several ranges).
 *
 * @example
 * ```ts
 * import { quantity, spreadPattern, swathSearch } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [1, 3, 5, 4, 3, 2, 3, 4, 5, 3, 1], unit: "g", pans: { spacing: quantity(1, "m"), left: 5 },
 * });
 * const found = swathSearch(pattern, {
 *   driving: "one direction", positions: "pans", divisor: "n", limit: quantity(25, "%"),
 * });
 * found.ranges.map(({ from, to }) => [from.in("m"), to.in("m")]); // => [[2, 4], [9, 9]]
 * found.widest?.swath.in("m"); // => 9
 * ```
 */
export const swathSearch = (
  pattern: SpreadPattern,
  options: UniformityOptions & {
    readonly limit: Quantity<"1", "none">;
    readonly from?: Length;
    readonly to?: Length;
    readonly step?: Length;
  },
): SwathSearch => {
  const row = patternOf(pattern);
  const record = expectFields(
    options,
    ["driving", "positions", "divisor", "limit", "from", "to", "step"],
    "options",
    "a record with driving, positions, divisor, limit",
  );
  const length = { dimension: "length", optional: true } as const;
  const { driving, positions, divisor, limit, ends } = allOf({
    driving: () => expectDriving(record.driving),
    positions: () => expectPositions(record.positions),
    divisor: () => expectDivisor(record.divisor),
    limit: () =>
      record.limit === undefined
        ? fail("missing", "limit", undefined, "a CV, such as 15 %")
        : limitOf(record.limit),
    ends: () => fieldsOf(record, { from: length, to: length, step: length }),
  });
  const grid = gridOf(row, positions, ends);
  const unit = row.offsetUnit as "ft";
  const cvs = cvsOf(row, grid, { driving, positions, divisor });
  const rows = Array.from(cvs, (cv, i) => ({
    // Fifteen digits: three times 0.1 is shown as 0.3.
    swath: quantity(Number(swathAt(grid, i).toPrecision(15)), unit),
    cv: quantity(cv, "%"),
  }));
  const ranges = rangesOf(rows, limit.in("%"));
  const widest = rows.filter(({ cv }) => !exceeds(cv.in("%"), limit.in("%"))).pop();
  return {
    type: "swath-search",
    version: 1,
    driving,
    positions,
    divisor,
    limit,
    step: quantity(grid.step, unit),
    rows,
    ranges,
    ...(widest && { widest }),
    findings: row.findings,
  };
};

/** The swaths to try: `count` of them from `from` on, a `step` apart. */
interface Grid {
  readonly from: number;
  readonly step: number;
  readonly count: number;
}

const swathAt = ({ from, step }: Grid, i: number): number => from + i * step;

const gridOf = (
  row: SpreadPattern,
  positions: Positions,
  ends: {
    readonly from: Length | undefined;
    readonly to: Length | undefined;
    readonly step: Length | undefined;
  },
): Grid => {
  const unit = row.offsetUnit as "ft";
  const pans = positions === "pans" ? equalSpacing(row) : undefined;
  const step =
    ends.step?.in(unit) ??
    row.spacing ??
    fail(
      "missing",
      "step",
      undefined,
      "the distance of the swaths to try, because the pans are not evenly spaced",
    );
  const { x } = profileOf(row);
  const thrown = (x[x.length - 1] as number) - (x[0] as number);
  const from = ends.from?.in(unit) ?? (pans === undefined ? step : 2 * pans);
  const to = ends.to?.in(unit) ?? thrown;
  if (pans !== undefined) {
    allOf({ step: () => pansPer(step, pans, "step"), from: () => pansPer(from, pans, "from") });
  }
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  if (count < 1) fail("conflict", "to", ends.to ?? to, `a swath of ${from} ${unit} or more`);
  if (count > mostSwaths) outOfRange("step", ends.step ?? step, { max: mostSwaths, count: "swaths" });
  if (pans !== undefined && Math.round(to / pans) > mostPans) {
    outOfRange(
      "to",
      ends.to ?? to,
      { max: mostPans * pans, unit },
      `{}, ${mostPans} times the distance of the pans`,
    );
  }
  return { from, step, count };
};

const cvsOf = (row: SpreadPattern, grid: Grid, options: UniformityOptions): Float64Array => {
  const { driving, positions, divisor } = options;
  const profile = profileOf(row);
  const cvs = new Float64Array(grid.count);
  if (positions !== "pans") {
    for (let i = 0; i < cvs.length; i++) {
      const swath = swathAt(grid, i);
      const strips = stripDeposits(profile, swath, positions, driving);
      cvs[i] = cvPercentOf(strips, positions, profile.total / swath, divisor);
    }
    return cvs;
  }
  const spacing = equalSpacing(row);
  const mirror = mirrorOfPattern(row, driving);
  const catches = Float64Array.from(row.catches);
  const [first, times] = [Math.round(grid.from / spacing), Math.round(grid.step / spacing)];
  const bins = new Float64Array(2 * (first + (grid.count - 1) * times));
  for (let i = 0; i < cvs.length; i++) {
    const k = first + i * times;
    const count = overlapInto(bins, catches, k, mirror);
    if (count < 2 && divisor === "n-1") {
      refuseOnePosition("from", k * spacing, spacing);
    }
    cvs[i] = cvPercentOf(bins, count, profile.total / (k * spacing), divisor);
  }
  return cvs;
};

const rangesOf = (rows: readonly SwathCv[], limitPercent: number): readonly SwathRange[] => {
  const ranges: SwathRange[] = [];
  let open: SwathCv[] = [];
  const close = (): void => {
    const [one] = open;
    if (one === undefined) return;
    const lowest = open.reduce((best, next) => (next.cv.in("%") < best.cv.in("%") ? next : best));
    ranges.push({ from: one.swath, to: (open[open.length - 1] as SwathCv).swath, lowest });
    open = [];
  };
  for (const one of rows) {
    if (exceeds(one.cv.in("%"), limitPercent)) close();
    else open.push(one);
  }
  close();
  return ranges;
};

/** Takes a CV: 0.25 % is a share for 25 %, and no pattern is that even; beyond 100 % any swath would do. */
const limitOf = (input: unknown): Quantity<"1", "none"> => {
  const limit = expectQuantity(input, { dimension: "1", of: "none", bound: "positive" }, "limit");
  notShare(limit.in("%"), "limit");
  return expectWithin(limit, limit.in("%"), "limit", { max: 100, unit: "%" });
};
