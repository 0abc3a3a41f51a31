import { exceeds, wholeUnitsFor } from "../../numeric/index.js";
import { fail, frozen, outOfRange } from "../../quantity/index.js";

/** How an area is cut into loads: full tanks and a part of one, loads of one size each, or a recipe of fixed size. */
export type LoadSplit = "full then partial" | "even" | "fixed size";

/** Every {@link LoadSplit}. */
export const loadSplits: readonly LoadSplit[] = /* @__PURE__ */ frozen([
  "full then partial",
  "even",
  "fixed size",
]);

/** More loads than this are taken for a slip of units. */
export const mostLoads = 10_000;

/** Cuts a total into `count` parts of one size, the last of which takes what is left. */
export const parts = (total: number, each: number, count: number): number[] => {
  const list: number[] = [];
  let used = 0;
  for (let i = 1; i < count; i++) {
    list.push(each);
    used += each;
  }
  // The rest is at most half of the total, so the subtraction is exact and the sum comes out to the last digit.
  list.push(total - used);
  return list;
};

/** All in one unit of volume. */
export interface LoadVolumesInput {
  /** Spray for the area, and what tank and hoses keep. */
  readonly wanted: number;
  readonly capacity: number;
  /** What a later filling adds at most: the capacity less what the pump leaves. */
  readonly refill: number;
  readonly loadSplit: LoadSplit;
  /** Of a load, with `"fixed size"`. */
  readonly size: number;
  /** The least that a load may be; zero where none was asked for. */
  readonly least: number;
  /** The unit of them all, for messages. */
  readonly unit: string;
}

/** What is mixed for each load, none below the least. */
export const loadVolumes = (input: LoadVolumesInput): readonly number[] => {
  const volumes = uneven(input);
  const { least, unit } = input;
  const last = volumes[volumes.length - 1] as number;
  if (!exceeds(least, last)) return volumes;
  const before = volumes[volumes.length - 2] ?? 0;
  if (before + last < 2 * least) {
    const even = input.wanted / volumes.length;
    fail(
      "infeasible",
      "leastLoad",
      { value: least, unit },
      even < least
        ? `${Number(even.toPrecision(4))} ${unit} or less, the job in even loads; the loadSplit "fixed size" mixes more and leaves some over`
        : `less than the last two loads hold together; even loads (loadSplit "even") are ${Number(even.toPrecision(4))} ${unit} each`,
    );
  }
  // Both halves come off one sum, so that the volumes still add up to the last digit.
  const pair = before + last;
  return [...volumes.slice(0, -2), pair - least, pair - (pair - least)];
};

const uneven = (input: LoadVolumesInput): readonly number[] => {
  const { wanted, capacity, refill, loadSplit, size } = input;
  const smallest = loadSplit === "fixed size" ? size : refill;
  if (wanted / smallest > mostLoads) {
    // Where the tank itself would do, it is the residual volume that leaves too little of it.
    const tank = wanted / capacity > mostLoads ? "capacity" : "residualVolume";
    outOfRange(
      loadSplit === "fixed size" ? "loadSize" : tank,
      { value: smallest, unit: input.unit },
      { min: wanted / mostLoads, unit: input.unit },
      `{}: with less per load the job takes more than ${mostLoads} loads`,
    );
  }
  if (loadSplit === "fixed size") {
    const count = wholeUnitsFor(wanted, size);
    return Array.from({ length: count }, () => size);
  }
  if (refill === capacity) {
    const count = wholeUnitsFor(wanted, capacity);
    // Within the guard of wholeUnitsFor every tank is full, and the noise is dropped.
    const whole = Math.abs(wanted - count * capacity) <= 1e-12 * wanted;
    return whole
      ? Array.from({ length: count }, () => capacity)
      : parts(wanted, loadSplit === "even" ? wanted / count : capacity, count);
  }
  const rest = wanted - capacity;
  if (rest <= 1e-12 * wanted) return [wanted];
  if (loadSplit === "even") {
    const count = Math.max(2, wholeUnitsFor(wanted, refill));
    return parts(wanted, wanted / count, count);
  }
  const more = wholeUnitsFor(rest, refill);
  return [capacity, ...parts(rest, refill, more)];
};
