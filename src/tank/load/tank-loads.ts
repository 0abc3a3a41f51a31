import {
  allOf,
  expectQuantity,
  expectRecord,
  fail,
  type NeutralSubstance,
  type Quantity,
} from "../../quantity/index.js";
import { numberIn, sprayOf, sprayRateOf } from "../inputs.js";
import { areaOf } from "../rate/amount-for.js";
import { areaPerTank } from "./area-per-tank.js";
import { type LoadSplit, loadVolumes, parts } from "./load-volumes.js";

/** One filling of the tank. */
export interface TankLoad {
  /** 1 for the first. */
  readonly number: number;
  /** What is mixed for this load; a later filling goes on top of what the pump left in the tank. */
  readonly volume: Quantity<"volume", "spray">;
  /** What this load treats. */
  readonly area: Quantity<"area", NeutralSubstance>;
  /** The area for which the products of this load are measured out: `volume / sprayRate`. */
  readonly mixedFor: Quantity<"area", NeutralSubstance>;
  /** Whether the tank is filled to its capacity. */
  readonly full: boolean;
}

/** The loads that a job takes; volumes and areas, added in their order, give the totals to the last digit. */
export interface TankLoads {
  readonly type: "tank-loads";
  readonly version: 1;
  readonly count: number;
  readonly split: LoadSplit;
  /** Finished spray that is mixed in all loads. */
  readonly volume: Quantity<"volume", "spray">;
  readonly area: Quantity<"area", NeutralSubstance>;
  /** The area for which all products are measured out: more than `area` by what is left over. */
  readonly mixedFor: Quantity<"area", NeutralSubstance>;
  readonly sprayRate: Quantity<"volume/area", "spray">;
  readonly capacity: Quantity<"volume", "spray">;
  /** Area that one full tank covers. */
  readonly areaPerTank: Quantity<"area", NeutralSubstance>;
  /** The smallest mix that finishes the job: the spray for the area, and what tank and hoses keep. */
  readonly smallestMix: Quantity<"volume", "spray">;
  /** Spray that is left when the area is done. */
  readonly leftOver: {
    readonly volume: Quantity<"volume", "spray">;
    /** Of it: what tank and hoses keep. */
    readonly held: Quantity<"volume", "spray">;
  };
  readonly loads: readonly TankLoad[];
}

/**
 * The tank loads that an area takes.
 *
 * - `wanted = sprayRate * area + deadVolume + hoseVolume`, the smallest mix that finishes the job
 * - `areaPerTank = capacity / sprayRate`
 * - `count = ceil(wanted / capacity)`, where a quotient that is whole to one part in 10^12 is whole; with
 *   a dead volume a later filling adds at most `capacity - deadVolume`
 * - last load: what is left; with `split: "even"` every load has `wanted / count`; with `"fixed size"`
 *   every load is `loadSize`, `count = ceil(wanted / loadSize)`, and what is too much is left over
 * - `mixedFor = volume / sprayRate` of each load: what the pump cannot draw and the hoses keep is spray
 *   as strong as the rest, and takes product too
 *
 * The last load is mixed for what is left, never as a share of a full recipe judged by eye.
 *
 * @param input - `area`, `sprayRate` (volume of spray per area) and `capacity` (what the tank is filled
 *   to), all more than zero; `split`, `"full then partial"` where left out; `loadSize` with `"fixed size"`;
 *   `deadVolume` (what the pump leaves in the tank) and `hoseVolume` (what hoses and boom keep), zero or more
 * @throws RatewrightError with every problem of the input: `range`, `unit/mismatch`, `substance/mismatch`,
 *   `type`, `missing`, `conflict` (`loadSize` with another split than `"fixed size"`); `range` on `capacity`,
 *   `deadVolume` or `loadSize` where the job would take more than 10 000 loads, on `deadVolume` and
 *   `hoseVolume` where they leave nothing of a tank
 *
 * Source: University of Missouri Extension method (G1272), acres per tank = tank / GPA; Agrochemical and
 * Pesticide Safety handbook, p. 128, example 4 (the part-filled last tank). Dead and hose volume: volumes
 * added up, no source.
 *
 * @example
 * ```ts
 * import { quantity, tankLoads } from "ratewright";
 * const job = {
 *   area: quantity(3.5, "acre"),
 *   sprayRate: quantity(15, "gal/acre", "spray"),
 *   capacity: quantity(30, "gal", "spray"),
 * };
 * const plan = tankLoads(job);
 * plan.volume.in("gal"); // => 52.5
 * plan.loads.map((load) => load.volume.in("gal")); // => [30, 22.5]
 * plan.loads.map((load) => load.area.in("acre")); // => [2, 1.5]
 * const batches = tankLoads({ ...job, split: "fixed size", loadSize: quantity(20, "gal", "spray") });
 * batches.loads.map((load) => load.volume.in("gal")); // => [20, 20, 20]
 * batches.leftOver.volume.in("gal"); // => 7.5
 * batches.smallestMix.in("gal"); // => 52.5
 * ```
 */
export const tankLoads = <A extends NeutralSubstance>(input: {
  readonly area: Quantity<"area", A>;
  readonly sprayRate: Quantity<"volume/area", "spray">;
  readonly capacity: Quantity<"volume", "spray">;
  readonly split?: LoadSplit;
  readonly loadSize?: Quantity<"volume", "spray">;
  readonly deadVolume?: Quantity<"volume", "spray">;
  readonly hoseVolume?: Quantity<"volume", "spray">;
}): TankLoads => {
  expectRecord(input, "input");
  const { area, sprayRate, capacity, split, deadVolume, hoseVolume, loadSize } = allOf({
    area: () => areaOf(input.area, "positive"),
    sprayRate: () => sprayRateOf(input.sprayRate),
    capacity: () => sprayOf(input.capacity, "capacity"),
    split: () => splitOf(input.split),
    deadVolume: () => heldBack(input.deadVolume, "deadVolume"),
    hoseVolume: () => heldBack(input.hoseVolume, "hoseVolume"),
    loadSize: () => loadSizeOf(input.loadSize, input.split),
  });
  const tank = capacity.value;
  const dead = deadVolume === undefined ? 0 : numberIn(deadVolume, capacity.unit);
  const held = dead + (hoseVolume === undefined ? 0 : numberIn(hoseVolume, capacity.unit));
  if (held >= tank) {
    const path = dead >= tank ? "deadVolume" : "hoseVolume";
    fail("range", path, input[path], "less than what the tank holds, with the dead volume");
  }
  const size = loadSize === undefined ? tank : fitting(loadSize, capacity, dead);
  const exact = sprayRate.times(area as Quantity<"area", "none">);
  const need = numberIn(exact, capacity.unit);
  const { volumes, whole } = loadVolumes({
    wanted: need + held,
    capacity: tank,
    refill: tank - dead,
    split,
    size,
    unit: capacity.unit,
  });
  const count = volumes.length;
  const each = numberIn(areaPerTank({ capacity, sprayRate }), area.unit);
  const total = volumes.reduce((sum, volume) => sum + volume, 0);
  const plain = held === 0 && split !== "fixed size";
  const spray = (value: number): Quantity<"volume", "spray"> => withValue(capacity, value);
  const ground = (value: number): Quantity<"area", NeutralSubstance> => withValue(area, value);
  const perVolume = each / tank;
  const areas = plain
    ? parts(area.value, whole || split === "even" ? area.value / count : each, count)
    : treated(volumes, held, perVolume, area.value);
  const mixed = plain ? areas : volumes.map((volume) => volume * perVolume);
  return {
    type: "tank-loads",
    version: 1,
    count,
    split,
    volume: spray(total),
    area,
    mixedFor: plain ? area : ground(mixed.reduce((sum, part) => sum + part, 0)),
    sprayRate,
    capacity,
    areaPerTank: ground(each),
    smallestMix: plain ? spray(total) : spray(need + held),
    leftOver: { volume: spray(plain ? 0 : total - need), held: spray(held) },
    loads: volumes.map((value, i) => ({
      number: i + 1,
      volume: spray(value),
      area: ground(areas[i] as number),
      mixedFor: ground(mixed[i] as number),
      full: isFull(value, i === 0 ? tank : tank - dead),
    })),
  };
};

/** Within the guard of the count of loads a load is full: the last of several is what is left, with its noise. */
const isFull = (volume: number, most: number): boolean => volume >= most * (1 - 1e-9);

/** What each load treats: the first fills the hoses and leaves the dead volume, the last stops at the edge. */
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
    return part + 0;
  });
};

const splitOf = (input: unknown): LoadSplit => {
  const split = input === undefined ? "full then partial" : input;
  return split === "full then partial" || split === "even" || split === "fixed size"
    ? split
    : fail("type", "split", split, '"full then partial", "even" or "fixed size"');
};

const heldBack = (input: unknown, path: string): Quantity<"volume", "spray"> | undefined =>
  input === undefined ? undefined : sprayOf(input, path, "non-negative");

const loadSizeOf = (input: unknown, split: unknown): Quantity<"volume", "spray"> | undefined => {
  if (split !== "fixed size") {
    if (input === undefined) return undefined;
    return fail("conflict", "loadSize", input, 'no size of the loads, or the split "fixed size"');
  }
  if (input === undefined)
    fail("missing", "loadSize", input, 'a volume of spray, for the split is "fixed size"');
  return sprayOf(input, "loadSize");
};

/** The size of the loads in the unit of the tank, where a tank with its dead volume takes it. */
const fitting = (
  loadSize: Quantity<"volume", "spray">,
  capacity: Quantity<"volume", "spray">,
  dead: number,
): number => {
  const size = numberIn(loadSize, capacity.unit);
  if (size > (capacity.value - dead) * (1 + 1e-12)) {
    const most = `${capacity.value - dead} ${capacity.unit} or less: the tank holds no more`;
    fail("range", "loadSize", loadSize, most);
  }
  return size;
};

const withValue = <D extends string, S extends string>(like: Quantity<D, S>, value: number): Quantity<D, S> =>
  expectQuantity({ value, unit: like.unit, of: like.of }, { dimension: like.dimension, of: like.of }, "area");
