import { wholeUnitsFor } from "../numeric/index.js";
import { expectQuantity, fail, type NeutralSubstance, type Quantity } from "../quantity/index.js";
import { areaOf } from "./amount-for.js";

/** How an area is cut into loads: full tanks and a part of one, or loads of one size. */
export type LoadSplit = "full then partial" | "even";

/** One filling of the tank. */
export interface TankLoad {
  /** 1 for the first. */
  readonly number: number;
  readonly volume: Quantity<"volume", "spray">;
  readonly area: Quantity<"area", NeutralSubstance>;
  /** Whether the tank is filled to its capacity. */
  readonly full: boolean;
}

/** The loads that a job takes; volumes and areas, added in their order, give the totals to the last digit. */
export interface TankLoads {
  readonly type: "tank-loads";
  readonly version: 1;
  readonly count: number;
  readonly split: LoadSplit;
  /** Finished spray for the whole area. */
  readonly volume: Quantity<"volume", "spray">;
  readonly area: Quantity<"area", NeutralSubstance>;
  readonly sprayRate: Quantity<"volume/area", "spray">;
  readonly capacity: Quantity<"volume", "spray">;
  /** Area that one full tank covers. */
  readonly areaPerTank: Quantity<"area", NeutralSubstance>;
  readonly loads: readonly TankLoad[];
}

/** More loads than this are taken for a slip of units. */
const mostLoads = 10_000;

const parts = (total: number, each: number, count: number): number[] => {
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

/**
 * The tank loads that an area takes.
 *
 * - `volume = sprayRate * area`
 * - `areaPerTank = capacity / sprayRate`
 * - `count = ceil(volume / capacity)`, where a quotient within 1e-12 of a whole number is that number
 * - last load: what is left of volume and area; with `split: "even"` every load has `volume / count`
 *
 * The last load is mixed for the area that is left, never as a share of a full recipe judged by eye.
 *
 * @param input - `area` and `sprayRate` (volume of spray per area) and `capacity` (what the tank is
 *   filled to), all more than zero; `split` is `"full then partial"` where left out
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`, `missing`; `range` on
 *   `capacity` where the job would take more than 10 000 loads
 *
 * Source: University of Missouri Extension method (G1272), acres per tank = tank / GPA; Agrochemical and
 * Pesticide Safety handbook, p. 128, example 4 (the part-filled last tank).
 *
 * @example
 * ```ts
 * import { quantity, tankLoads } from "ratewright";
 * const plan = tankLoads({
 *   area: quantity(3.5, "acre"),
 *   sprayRate: quantity(15, "gal/acre", "spray"),
 *   capacity: quantity(30, "gal", "spray"),
 * });
 * plan.volume.in("gal"); // => 52.5
 * plan.count; // => 2
 * plan.loads.map((load) => load.volume.in("gal")); // => [30, 22.5]
 * plan.loads.map((load) => load.area.in("acre")); // => [2, 1.5]
 * ```
 */
export const tankLoads = <A extends NeutralSubstance>(input: {
  readonly area: Quantity<"area", A>;
  readonly sprayRate: Quantity<"volume/area", "spray">;
  readonly capacity: Quantity<"volume", "spray">;
  readonly split?: LoadSplit;
}): TankLoads => {
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
  if (split !== "full then partial" && split !== "even") {
    fail("type", "split", split, '"full then partial" or "even"');
  }
  const exact = sprayRate.times(area as Quantity<"area", "none">);
  const size = capacity.value;
  const wanted = inUnitOf(exact, capacity);
  const areaPerTank = capacity.per(sprayRate) as unknown as Quantity<"area", "none">;
  const each = inUnitOf(areaPerTank, area);
  if (wanted / size > mostLoads) {
    fail("range", "capacity", capacity, `a tank of which the job takes ${mostLoads} loads or fewer`);
  }
  const count = wholeUnitsFor(wanted, size);
  // Within the guard of wholeUnitsFor every tank is full, and the noise is dropped.
  const whole = Math.abs(wanted - count * size) <= 1e-12 * wanted;
  const volumes = whole
    ? Array.from({ length: count }, () => size)
    : parts(wanted, split === "even" ? wanted / count : size, count);
  const total = volumes.reduce((sum, each) => sum + each, 0);
  const areas = parts(area.value, whole || split === "even" ? area.value / count : each, count);
  const volume = expectQuantity(
    { value: total, unit: capacity.unit, of: "spray" },
    { dimension: "volume", of: "spray" },
    "sprayRate",
  );
  return {
    type: "tank-loads",
    version: 1,
    count,
    split,
    volume,
    area,
    sprayRate,
    capacity,
    areaPerTank: withValue(area, each),
    loads: volumes.map((value, i) => ({
      number: i + 1,
      volume: withValue(volume, value),
      area: withValue(area, areas[i] as number),
      full: value === size,
    })),
  };
};

const inUnitOf = (q: unknown, like: { readonly unit: string }): number =>
  (q as { in(unit: string): number }).in(like.unit);

const withValue = <D extends string, S extends string>(like: Quantity<D, S>, value: number): Quantity<D, S> =>
  expectQuantity({ value, unit: like.unit, of: like.of }, { dimension: like.dimension, of: like.of }, "area");
