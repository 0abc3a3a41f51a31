import { checks, expectNumber, fail } from "../quantity/index.js";
import { recordOf } from "./inputs.js";
import type { SpreadPattern } from "./spread-pattern.js";

/** Takes a pattern, made here or come back from JSON, or throws. */
export const patternOf = <S extends string>(input: unknown): SpreadPattern<S> => {
  const record = recordOf(input, "pattern", "a pattern, as spreadPattern makes it");
  const { type, offsets, catches, spacing } = record;
  if (type !== "spread-pattern" || !Array.isArray(offsets) || !Array.isArray(catches)) {
    return fail("type", "pattern", input, "a pattern, as spreadPattern makes it");
  }
  const door = checks();
  catches.forEach((one, i) => {
    door.run(() => expectNumber(one, `pattern.catches[${i}]`, { min: 0 }));
    door.run(() => expectNumber(offsets[i], `pattern.offsets[${i}]`));
  });
  if (spacing !== undefined) door.run(() => expectNumber(spacing, "pattern.spacing", { above: 0 }));
  door.done();
  return input as SpreadPattern<S>;
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
