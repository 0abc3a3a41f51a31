import { expectFields, expectNumber, fail } from "../../quantity/index.js";

/** A figure with the range in which it lies; where `mid` is left out it is the middle of the range. */
export interface ReleaseRange {
  readonly low: number;
  readonly mid?: number;
  readonly high: number;
}

/** The two ends of an estimate, and its middle, which is no better founded than the ends. */
export type Bound3 = "low" | "mid" | "high";

/** Takes a range, all three figures filled in, or throws with its path. */
export const checkedRange = (
  input: ReleaseRange,
  path: string,
  bounds: { readonly min?: number; readonly above?: number; readonly max?: number },
): Required<ReleaseRange> => {
  expectFields(input, ["low", "mid", "high"], path, "a range { low, high }");
  const low = expectNumber(input.low, `${path}.low`, bounds);
  const high = expectNumber(input.high, `${path}.high`, bounds);
  if (low > high) fail("conflict", `${path}.low`, low, `not more than the high end, which is ${high}`);
  const mid = input.mid === undefined ? (low + high) / 2 : expectNumber(input.mid, `${path}.mid`);
  if (mid < low || mid > high) fail("conflict", `${path}.mid`, mid, `a figure from ${low} to ${high}`);
  return { low, mid, high };
};
