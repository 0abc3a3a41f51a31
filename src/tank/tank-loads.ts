import {
  expectQuantity,
  expectRecord,
  fail,
  type NeutralSubstance,
  type Quantity,
} from "../quantity/index.js";
import { areaOf } from "./amount-for.js";
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
 * - `count = ceil(wanted / capacity)`, where a quotient within 1e-12 of a whole number is that number; with
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
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`, `missing`; `range` on
 *   `capacity` or `loadSize` where the job would take more than 10 000 loads, on `deadVolume` and
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
  const area = areaOf(input.area, "positive");
  const sprayRate = expectQuantity(
    input.sprayRate,
    { dimension: "volume/area", of: "spray", bound: "positive" },
    "sprayRate",
  );
  const capacity = expectQuantity(
    input.capacity,
    { dimension: "volume", of: "spray", bound: "positive" },
    "capacity",
  );
  const { split = "full then partial" } = input;
  if (split !== "full then partial" && split !== "even" && split !== "fixed size") {
    fail("type", "split", split, '"full then partial", "even" or "fixed size"');
  }
  const tank = capacity.value;
  const dead = heldBack(input.deadVolume, "deadVolume", capacity);
  const held = dead + heldBack(input.hoseVolume, "hoseVolume", capacity);
  if (held >= tank) {
    const path = dead >= tank ? "deadVolume" : "hoseVolume";
    fail("range", path, input[path], "less than what the tank holds, with the dead volume");
  }
  const size = split === "fixed size" ? sizeOf(input.loadSize, capacity, dead) : tank;
  const exact = sprayRate.times(area as Quantity<"area", "none">);
  const need = inUnitOf(exact, capacity);
  const { volumes, whole } = loadVolumes({
    wanted: need + held,
    capacity: tank,
    refill: tank - dead,
    split,
    size,
    unit: capacity.unit,
  });
  const count = volumes.length;
  const each = inUnitOf(areaPerTank({ capacity, sprayRate }), area);
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
      full: value === (i === 0 ? tank : tank - dead),
    })),
  };
};

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
    const part = upTo - done;
    done = upTo;
    return part + 0;
  });
};

const heldBack = (input: unknown, path: string, capacity: Quantity<"volume", "spray">): number =>
  input === undefined
    ? 0
    : inUnitOf(
        expectQuantity(input, { dimension: "volume", of: "spray", bound: "non-negative" }, path),
        capacity,
      );

const sizeOf = (input: unknown, capacity: Quantity<"volume", "spray">, dead: number): number => {
  if (input === undefined)
    fail("missing", "loadSize", input, 'a volume of spray, for the split is "fixed size"');
  const q = expectQuantity(input, { dimension: "volume", of: "spray", bound: "positive" }, "loadSize");
  const size = inUnitOf(q, capacity);
  if (size > (capacity.value - dead) * (1 + 1e-12)) {
    fail("range", "loadSize", q, `${capacity.value - dead} ${capacity.unit} or less: the tank holds no more`);
  }
  return size;
};

const inUnitOf = (q: unknown, like: { readonly unit: string }): number =>
  (q as { in(unit: string): number }).in(like.unit);

const withValue = <D extends string, S extends string>(like: Quantity<D, S>, value: number): Quantity<D, S> =>
  expectQuantity({ value, unit: like.unit, of: like.of }, { dimension: like.dimension, of: like.of }, "area");
