import {
  allOf,
  expectFields,
  expectNumber,
  fail,
  isSubstance,
  isUnit,
  toldAt,
} from "../../quantity/index.js";
import { boundedList, eachOf, expectSum, fieldsOf } from "../inputs.js";
import { type SpreadPattern, tooShort } from "./spread-pattern.js";

const fields = [
  "type",
  "version",
  "offsetUnit",
  "offsets",
  "spacing",
  "unit",
  "of",
  "catches",
  "runs",
  "panArea",
  "findings",
] as const;

/**
 * Takes a pattern, made here or come back from JSON, or throws. What is returned holds lists of its own, and findings
 * that follow from the catches, whatever the record says.
 */
export const patternOf = <S extends string>(input: unknown): SpreadPattern<S> => {
  const expected = "a pattern, as spreadPattern makes it";
  const record = expectFields(input, fields, "pattern", expected);
  if (record.type !== "spread-pattern") return fail("type", "pattern", input, expected);
  const list = (key: "offsets" | "catches" | "runs"): readonly unknown[] => {
    const found = record[key];
    return boundedList(found, `pattern.${key}`);
  };
  const { offsetUnit, unit, of, offsets, catches, runs } = allOf({
    offsets: () => list("offsets"),
    catches: () => {
      const found = list("catches");
      return found.length > 0 ? found : fail("missing", "pattern.catches", found, "at least two catches");
    },
    runs: () => list("runs"),
    offsetUnit: () =>
      typeof record.offsetUnit === "string" && isUnit(record.offsetUnit, "length")
        ? record.offsetUnit
        : fail("unit/mismatch", "pattern.offsetUnit", record.offsetUnit, "a unit for a length"),
    unit: () =>
      typeof record.unit === "string" && isUnit(record.unit)
        ? record.unit
        : fail("unit/unknown", "pattern.unit", record.unit, "a unit"),
    of: () =>
      isSubstance(record.of) ? record.of : fail("substance/unknown", "pattern.of", record.of, "a substance"),
  });
  const { row, weighed, spacing, panArea } = allOf({
    row: () => rowOf(catches, offsets),
    weighed: () => eachOf(runs, "pattern.runs", (run, i) => runOf(run, i, catches.length)),
    spacing: () =>
      record.spacing === undefined
        ? undefined
        : expectNumber(record.spacing, "pattern.spacing", { above: 0 }),
    panArea: () =>
      toldAt("pattern", "", () => fieldsOf(record, { panArea: { dimension: "area", optional: true } }))
        .panArea,
  });
  expectSpacing(spacing, row.offsets);
  return {
    type: "spread-pattern",
    version: 1,
    offsetUnit,
    ...row,
    ...(spacing === undefined ? {} : { spacing }),
    unit,
    of: of as S,
    runs: weighed,
    ...(panArea && { panArea }),
    findings: tooShort(row.catches),
  };
};

/** A row of numbers, as many catches as offsets, from left to right. */
const rowOf = (
  catches: readonly unknown[],
  offsets: readonly unknown[],
): Pick<SpreadPattern, "catches" | "offsets"> => {
  const row = allOf({
    catches: () =>
      eachOf(catches, "pattern.catches", (one, i) => expectNumber(one, `pattern.catches[${i}]`, { min: 0 })),
    offsets: () =>
      eachOf(offsets, "pattern.offsets", (one, i) => {
        const before = offsets[i - 1];
        return expectNumber(
          one,
          `pattern.offsets[${i}]`,
          Number.isFinite(before) ? { above: before as number } : {},
        );
      }),
  });
  if (row.catches.length !== row.offsets.length || row.catches.length < 2) {
    fail("conflict", "pattern.offsets", offsets, `${catches.length}, one for each catch`);
  }
  expectSum(row.catches, row.offsets, "pattern.catches");
  return row;
};

const runOf = (run: unknown, i: number, count: number): readonly number[] =>
  Array.isArray(run) && run.length === count
    ? eachOf(run, `pattern.runs[${i}]`, (one, j) => expectNumber(one, `pattern.runs[${i}][${j}]`, { min: 0 }))
    : fail("conflict", `pattern.runs[${i}]`, run, `a list of ${count} numbers of 0 or more, as the catches`);

const expectSpacing = (spacing: number | undefined, offsets: readonly number[]): void => {
  if (spacing === undefined) return;
  const first = offsets[0] as number;
  if (!offsets.every((x, i) => Math.abs(x - first - i * spacing) <= 1e-6 * spacing)) {
    fail("conflict", "pattern.spacing", spacing, "the distance of the offsets");
  }
};

/** A pattern as straight lines that begin and end at nothing, with the running sum of what lies below them. */
export interface Profile {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** What lies left of each point: catch times length. */
  readonly sum: readonly number[];
  readonly total: number;
}

/** Past an outermost pan that caught something the pattern falls to nothing within one more spacing. */
export const profileOf = ({ offsets, catches }: SpreadPattern): Profile => {
  const x = [...offsets];
  const y = [...catches];
  const last = x.length - 1;
  const [first, second] = [x[0], x[1]] as [number, number];
  const [end, before] = [x[last], x[last - 1]] as [number, number];
  if ((y[last] as number) > 0) {
    x.push(2 * end - before);
    y.push(0);
  }
  if ((y[0] as number) > 0) {
    x.unshift(2 * first - second);
    y.unshift(0);
  }
  const sum = [0];
  for (let i = 1; i < x.length; i++) {
    const gap = (x[i] as number) - (x[i - 1] as number);
    sum.push((sum[i - 1] as number) + (gap * ((y[i] as number) + (y[i - 1] as number))) / 2);
  }
  return { x, y, sum, total: sum[sum.length - 1] as number };
};

/** What lies left of a place. */
export const sumLeftOf = ({ x, y, sum, total }: Profile, at: number): number => {
  const last = x.length - 1;
  if (at <= (x[0] as number)) return 0;
  if (at >= (x[last] as number)) return total;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((x[middle] as number) <= at) low = middle;
    else high = middle;
  }
  const [x0, x1, y0, y1] = [x[low], x[high], y[low], y[high]] as [number, number, number, number];
  const run = at - x0;
  const slope = (y1 - y0) / (x1 - x0);
  return (sum[low] as number) + run * (y0 + (slope * run) / 2);
};
