import { counted, described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectRecord,
  type Finding,
  fail,
  isUnit,
  outOfRange,
  quantity,
  quantityOf,
  toldAt,
} from "../../quantity/index.js";
import { passesOf } from "../calibration/spread-rate.js";
import { type Area, boundedList, eachOf, expectSum, fieldsOf, type Length } from "../inputs.js";

/** What was caught in a row of pans under one pass, pan by pan from left to right. */
export interface SpreadPattern<S extends string = string> {
  readonly type: "spread-pattern";
  readonly version: 1;
  /** The unit of the offsets. */
  readonly offsetUnit: string;
  /** Where the pans stood, from the line of travel; left is negative. */
  readonly offsets: readonly number[];
  /** The distance from pan to pan, in the unit of the offsets; left out where it is not the same throughout. */
  readonly spacing?: number;
  /** The unit of the catches: of mass, of volume, of volume per area (off cards), or of the height in a tube. */
  readonly unit: string;
  readonly of: S;
  /** The mean catch of one pass, pan by pan. */
  readonly catches: readonly number[];
  /** The catch of one pass in each weighing that the mean is made of. */
  readonly runs: readonly (readonly number[])[];
  /** The area of the opening of one pan, where rates are wanted. */
  readonly panArea?: Area;
  readonly findings: readonly Finding[];
}

/** Where the pans stand. */
export type PanPlaces =
  | {
      readonly spacing: Length;
      /** How many pans stand left of the line of travel: 6 with the seventh on it, 5.5 with it half-way between two. */
      readonly left: number;
      readonly offsets?: never;
    }
  | {
      /** From the line of travel, left negative, in rising order. */
      readonly offsets: readonly Length[];
      readonly spacing?: never;
      readonly left?: never;
    };

/** What was weighed, measured or read in each pan, and where the pans stood. */
export interface PatternInput<S extends string = string> {
  /** From left to right, looking in the direction of travel; a list of lists for several weighings. */
  readonly catches: readonly number[] | readonly (readonly number[])[];
  readonly unit: string;
  /** What was caught; `"product"` where it is left out. */
  readonly of?: S;
  readonly pans: PanPlaces;
  /** Passes over the pans before each weighing, all in one direction; 1 where it is left out. */
  readonly passes?: number;
  readonly panArea?: Area;
}

const fewestPans = 3;

/**
 * A spread pattern from the catches of a row of pans, for one pass.
 *
 * The catch of a pan is the mean over the weighings, divided by the passes before each. Between pans the
 * pattern is taken as a straight line; past the outermost pan it falls to nothing within one more spacing, and
 * where that pan caught something a finding says that the row was too short.
 *
 * Range: three pans or more, all of one size; catches of zero or more, not all zero; every pan has its
 * figure. All passes in one direction, for alternating ones hide a skew. On hard ground granules bounce into
 * the pans and make pattern and rate look wider and higher.
 *
 * @throws RatewrightError `missing` for a catch that is not there, at `catches[2]` or `catches[1][2]`, and for
 * fewer than three pans; `not-finite`, `range`; `conflict` where catches and pans differ in number, pans
 * stand out of order, or all on one side of the line of travel; `unit/unknown`, `unit/mismatch`, `type`; every problem is reported
 *
 * Source: the method of Ohio State University Extension, bulletin 817 (three passes in one direction).
 *
 * @example
 * ```ts
 * import { quantity, spreadPattern } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [[0, 3, 6, 12, 6, 3, 0], [0, 3, 6, 12, 6, 3, 0]], unit: "g", passes: 3,
 *   pans: { spacing: quantity(2, "ft"), left: 3 }, panArea: quantity(1, "ft2"),
 * });
 * pattern.offsets; // => [-6, -4, -2, 0, 2, 4, 6]
 * pattern.catches; // => [0, 1, 2, 4, 2, 1, 0]
 * ```
 */
export const spreadPattern = <const S extends string = "product">(
  input: PatternInput<S>,
): SpreadPattern<S> => {
  const record = expectFields(
    input,
    ["catches", "unit", "of", "pans", "passes", "panArea"],
    "input",
    "a record with catches, unit, pans",
  );
  const of = record.of === undefined ? "product" : record.of;
  const { unit, passes, measured, found } = allOf({
    unit: () => catchUnit(record.unit, of),
    passes: () => passesOf(record.passes),
    measured: () => {
      let count: number | undefined;
      return allOf({
        lists: () => {
          const lists = weighings(record.catches);
          count = lists[0]?.length;
          return lists;
        },
        pans: () => places(record.pans, count),
      });
    },
    found: () => fieldsOf(record, { panArea: { dimension: "area", optional: true } }),
  });
  const { offsets, offsetUnit, spacing } = measured.pans;
  const runs = measured.lists.map((run) => run.map((each) => each / passes));
  const catches = offsets.map((_, i) => runs.reduce((sum, run) => sum + (run[i] as number), 0) / runs.length);
  expectSum(catches, offsets, "catches");
  const { panArea } = found;
  return {
    type: "spread-pattern",
    version: 1,
    offsetUnit,
    offsets,
    ...(spacing === undefined ? {} : { spacing }),
    unit,
    of: of as S,
    catches,
    runs,
    ...(panArea && { panArea }),
    findings: tooShort(catches),
  };
};

const catchUnit = (unit: unknown, of: unknown): string => {
  if (unit === undefined) return fail("missing", "unit", unit, "the unit of the catches");
  if (typeof unit !== "string" || !isUnit(unit))
    return fail("unit/unknown", "unit", unit, "a unit, such as g");
  const q = quantityOf(1, unit, of as string, "of");
  return /^(mass|volume|volume\/area|length)$/.test(q.dimension)
    ? unit
    : fail(
        "unit/mismatch",
        "unit",
        unit,
        "a unit for a weight, a volume, a volume over an area, or a height in a tube",
      );
};

const weighings = (catches: unknown): readonly (readonly number[])[] => {
  if (catches === undefined) return fail("missing", "catches", catches, "a list of catches");
  if (!Array.isArray(catches)) return fail("type", "catches", catches, "a list of catches");
  const list = boundedList(catches, "catches");
  const nested = list.some((one) => Array.isArray(one));
  const lists = nested ? list : [list];
  const runs = eachOf(lists, "catches", (list, i) => catchesOf(list, nested ? `catches[${i}]` : "catches"));
  const first = runs[0]?.length;
  runs.forEach((run, i) => {
    const count = run.length;
    if (count !== first)
      fail(
        "conflict",
        `catches[${i}]`,
        described(`${count} ${count === 1 ? "catch" : "catches"}`),
        `${first}, as in catches[0]`,
      );
  });
  return runs;
};

const catchesOf = (list: unknown, path: string): readonly number[] => {
  if (!Array.isArray(list)) return fail("type", path, list, "a list of catches");
  if (list.length < fewestPans) {
    fail(
      "missing",
      path,
      described(`${list.length} ${list.length === 1 ? "catch" : "catches"}`),
      `${fewestPans} pans or more: fewer show no pattern`,
    );
  }
  return eachOf(list, path, (one, i) =>
    one === undefined || one === null
      ? fail("missing", `${path}[${i}]`, one, "a catch; 0 for a pan that stayed empty")
      : expectNumber(one, `${path}[${i}]`, { min: 0 }),
  );
};

interface Places {
  readonly offsets: readonly number[];
  readonly offsetUnit: string;
  readonly spacing: number | undefined;
}

const places = (input: unknown, count: number | undefined): Places => {
  const pans = expectFields(
    input,
    ["spacing", "left", "offsets"],
    "pans",
    "a record with spacing and left, or with offsets",
  );
  if (pans.offsets !== undefined) {
    if (pans.spacing !== undefined)
      fail("conflict", "pans.spacing", pans.spacing, "offsets or spacing, not both");
    return listed(pans.offsets, count);
  }
  const { found, left } = allOf({
    found: () => toldAt("pans", "", () => fieldsOf(pans, { spacing: { dimension: "length" } })),
    left: () =>
      pans.left === undefined
        ? fail("missing", "pans.left", undefined, "how many pans are left of the line")
        : expectNumber(pans.left, "pans.left", { min: 0 }),
  });
  const { value: spacing, unit } = found.spacing;
  if (count !== undefined && left > count - 1) {
    outOfRange("pans.left", left, { below: count }, "{}, the number of pans");
  }
  const offsets = Array.from({ length: count ?? 0 }, (_, i) =>
    // Fifteen digits: three times 0.1 is shown as 0.3.
    Number(((i - left) * spacing).toPrecision(15)),
  );
  return { offsets, offsetUnit: unit, spacing };
};

const listed = (input: unknown, count: number | undefined): Places => {
  if (!Array.isArray(input)) return fail("type", "pans.offsets", input, "a list of lengths");
  if (count !== undefined && input.length !== count) {
    fail(
      "conflict",
      "pans.offsets",
      described(counted(input.length, "offset")),
      `${count}, one for each catch`,
    );
  }
  const lengths = eachOf(input, "pans.offsets", (one, i) => anyLength(one, `pans.offsets[${i}]`));
  const offsetUnit = lengths[0]?.unit ?? fail("missing", "pans.offsets", input, "a list of lengths");
  const offsets = lengths.map((one) => one.in(offsetUnit as "ft"));
  for (let i = 1; i < offsets.length; i++) {
    const [before, here] = [offsets[i - 1], offsets[i]] as [number, number];
    if (!(here > before))
      fail("conflict", `pans.offsets[${i}]`, here, `more than ${before}: from left to right`);
  }
  const [first, last] = [offsets[0] as number, offsets[offsets.length - 1] as number];
  if (first > 0 || last < 0) {
    fail("conflict", "pans.offsets", input, "pans on both sides of the line of travel, which is at 0");
  }
  const gap = (last - first) / (offsets.length - 1);
  const equal = offsets.every((x, i) => Math.abs(x - first - i * gap) <= 1e-9 * gap);
  return { offsets, offsetUnit, spacing: equal ? gap : undefined };
};

const anyLength = (input: unknown, path: string): Length => {
  if (input === undefined || input === null) return fail("missing", path, input, "a length");
  const { value, unit } = expectRecord(input, path, "a length") as { value: number; unit: string };
  const q = quantityOf(value, unit, "none", path);
  return q.dimension === "length"
    ? quantity(q.value, q.unit as "ft")
    : fail("unit/mismatch", path, q, "a length");
};

/** A pan at the end of the row that caught something: more may have fallen past it. */
export const tooShort = (catches: readonly number[]): readonly Finding[] => {
  const ends = [["left", 0] as const, ["right", catches.length - 1] as const];
  return ends
    .filter(([, i]) => (catches[i] as number) > 0)
    .map(([side, i]) => ({
      code: "pattern/row-too-short",
      severity: "warning" as const,
      path: `catches[${i}]`,
      params: { side, caught: catches[i] as number },
      text: `The outermost pan on the ${side} caught something: what fell past it is not in the pattern. Set more pans.`,
    }));
};
