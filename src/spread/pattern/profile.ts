import { checks, expectNumber, expectRecord, fail, isUnit } from "../../quantity/index.js";
import { expectSum } from "../inputs.js";
import type { SpreadPattern } from "./spread-pattern.js";

const lists = ["offsets", "catches", "runs", "findings"] as const;

/** Takes a pattern, made here or come back from JSON, or throws. */
export const patternOf = <S extends string>(input: unknown): SpreadPattern<S> => {
  const expected = "a pattern, as spreadPattern makes it";
  const record = expectRecord(input, "pattern", expected);
  const { type, offsetUnit, unit, of } = record;
  if (type !== "spread-pattern") return fail("type", "pattern", input, expected);
  const door = checks();
  for (const key of lists) {
    if (!Array.isArray(record[key])) door.run(() => fail("type", `pattern.${key}`, record[key], "a list"));
  }
  if (typeof offsetUnit !== "string" || !isUnit(offsetUnit, "length")) {
    door.run(() => fail("unit/mismatch", "pattern.offsetUnit", offsetUnit, "a unit of length"));
  }
  if (typeof unit !== "string" || !isUnit(unit)) {
    door.run(() => fail("unit/unknown", "pattern.unit", unit, "a unit"));
  }
  if (typeof of !== "string") door.run(() => fail("substance/unknown", "pattern.of", of, "a substance"));
  door.done();
  const pattern = input as SpreadPattern<S>;
  for (const problem of [...rowOf(pattern.catches, pattern.offsets), ...runsOf(pattern)]) {
    door.run(problem);
  }
  door.done();
  return pattern;
};

/** What a row of numbers must be, as checks to run. */
const rowOf = (catches: readonly unknown[], offsets: readonly unknown[]): readonly (() => unknown)[] => [
  ...Array.from(catches, (one, i) => () => expectNumber(one, `pattern.catches[${i}]`, { min: 0 })),
  ...Array.from(offsets, (one, i) => () => {
    const bound = i === 0 ? {} : { above: offsets[i - 1] as number };
    return expectNumber(one, `pattern.offsets[${i}]`, bound);
  }),
  () =>
    catches.length === offsets.length && catches.length > 1
      ? undefined
      : fail("conflict", "pattern.offsets", offsets, `${catches.length}, one for each catch`),
  () => expectSum(catches as readonly number[], offsets as readonly number[], "pattern.catches"),
];

const runsOf = ({ runs, catches, offsets, spacing }: SpreadPattern): readonly (() => unknown)[] => [
  ...Array.from(runs, (run, i) => () => {
    const fits = Array.isArray(run) && run.length === catches.length;
    if (
      fits &&
      Array.from(run as readonly unknown[]).every((one) => Number.isFinite(one) && (one as number) >= 0)
    ) {
      return;
    }
    fail(
      "conflict",
      `pattern.runs[${i}]`,
      run,
      `a list of ${catches.length} numbers of 0 or more, as the catches`,
    );
  }),
  () => {
    if (spacing === undefined) return;
    const gap = expectNumber(spacing, "pattern.spacing", { above: 0 });
    const first = offsets[0] as number;
    if (!offsets.every((x, i) => Math.abs(x - first - i * gap) <= 1e-6 * gap)) {
      fail("conflict", "pattern.spacing", spacing, "the distance of the offsets");
    }
  },
];

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
