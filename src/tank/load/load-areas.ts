import { numberIn, perOf, timesOf } from "../../quantity/index.js";
import type { LoadInput } from "./load-input.js";
import { parts } from "./load-volumes.js";

/** The areas of the loads, in the unit of the area, and the volumes that go with them, in that of the tank. */
export interface LoadAreas {
  /** What one full tank covers. */
  readonly perTank: number;
  /** What each load treats. */
  readonly areas: readonly number[];
  /** What the products of each load are measured out for. */
  readonly mixed: readonly number[];
  readonly mixedFor: number;
  /** Spray that is mixed in all loads. */
  readonly total: number;
  readonly smallestMix: number;
  readonly leftOver: number;
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Spray for the area alone, in the unit of the tank. */
export const sprayNeeded = ({ spray, area, capacity }: LoadInput): number =>
  numberIn(timesOf(spray.value, area, "area"), capacity.unit, "area");

/**
 * What each load treats and is mixed for. Where nothing is held back or mixed over, the area is cut as the spray is, and
 * both are the same; else the volumes say how far each load goes.
 */
export const loadAreas = (read: LoadInput, volumes: readonly number[], held: number): LoadAreas => {
  const { area, spray, capacity, loadSplit, leastLoad } = read;
  const perTank = numberIn(perOf(capacity, spray.value), area.unit);
  const perVolume = perTank / capacity.value;
  const need = sprayNeeded(read);
  const total = sumOf(volumes);
  const even = loadSplit === "even" || volumes.every((volume) => volume === capacity.value);
  const plain = held === 0 && loadSplit !== "fixed size";
  const areas =
    plain && (even || leastLoad === undefined)
      ? parts(area.value, even ? area.value / volumes.length : perTank, volumes.length)
      : treated(volumes, held, perVolume, area.value);
  if (plain)
    return { perTank, areas, mixed: areas, mixedFor: area.value, total, smallestMix: total, leftOver: 0 };
  const mixed = volumes.map((volume) => volume * perVolume);
  return {
    perTank,
    areas,
    mixed,
    mixedFor: sumOf(mixed),
    total,
    smallestMix: need + held,
    leftOver: total - need,
  };
};

/** What each load treats: the first fills the hoses and leaves the residual volume, the last stops at the edge. */
const treated = (
  volumes: readonly number[],
  held: number,
  perVolume: number,
  area: number,
): readonly number[] => {
  let mixed = 0;
  let done = 0;
  return volumes.map((volume, i) => {
    mixed += volume;
    const upTo = i === volumes.length - 1 ? area : Math.min(area, Math.max(0, (mixed - held) * perVolume));
    // In steps of the last digit of the area all sums and differences are exact, and the parts add up to it.
    const stepped = upTo + area - area;
    const part = stepped - done;
    done = stepped;
    return part;
  });
};
