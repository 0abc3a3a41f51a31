import type { Estimate } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  type Finding,
  fail,
  likeQuantity,
  type NeutralSubstance,
  numberIn,
  perOf,
  type Quantity,
  timesOf,
} from "../../quantity/index.js";
import type { FinishedSpray } from "../../spray/index.js";
import { applicationVolumeOf, type SprayPerArea, sprayOf } from "../inputs.js";
import { areaOf } from "../rate/amount-for.js";
import { type LoadSplit, loadSplits, loadVolumes, parts } from "./load-volumes.js";

/** One filling of the tank. */
export interface TankLoad {
  /** 1 for the first. */
  readonly number: number;
  /** What is mixed for this load; a later filling goes on top of what the pump left in the tank. */
  readonly volume: Quantity<"volume", "spray">;
  /** What this load treats. */
  readonly area: Quantity<"area", NeutralSubstance>;
  /** The area for which the products of this load are measured out: `volume / applicationVolume`. */
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
  readonly applicationVolume: Quantity<"volume/area", "spray">;
  readonly capacity: Quantity<"volume", "spray">;
  /** Area that one full tank covers. */
  readonly areaPerTank: Quantity<"area", NeutralSubstance>;
  /** The smallest mix that finishes the job: the spray for the area, and what tank and hoses keep. */
  readonly smallestMix: Quantity<"volume", "spray">;
  /** Spray that is left when the area is done. */
  readonly leftOver: {
    readonly volume: Quantity<"volume", "spray">;
    /** Of it: what tank and hoses keep. */
    readonly residual: Quantity<"volume", "spray">;
  };
  readonly loads: readonly TankLoad[];
  /** What a tank covers and what the job takes with their standard errors, where the application volume came with one. */
  readonly estimates?: {
    readonly areaPerTank: Estimate<"area", NeutralSubstance>;
    readonly smallestMix: Estimate<"volume", "spray">;
  };
  readonly findings: readonly Finding[];
}

/**
 * The tank loads that an area takes.
 *
 * - `wanted = applicationVolume * area + residualVolume + plumbingVolume`, the smallest mix that finishes the job
 * - `areaPerTank = capacity / applicationVolume`
 * - `count = ceil(wanted / capacity)`, where a quotient that is whole to one part in 10^12 is whole; with
 *   a dead volume a later filling adds at most `capacity - residualVolume`
 * - last load: what is left; with `split: "even"` every load has `wanted / count`; with `"fixed size"`
 *   every load is `loadSize`, `count = ceil(wanted / loadSize)`, and what is too much is left over
 * - `mixedFor = volume / applicationVolume` of each load: what the pump cannot draw and the hoses keep is spray
 *   as strong as the rest, and takes product too
 *
 * The last load is mixed for what is left, never as a share of a full recipe judged by eye. A last load of less than a
 * tenth of the tank is a finding that gives the size of even loads; with `leastLoad` the load before it gives up as much as
 * it takes for both to hold that.
 *
 * A calibration with water may go in as it is: its rate, its estimate, or the whole record. The spray is then taken to be
 * as heavy as water, which a finding says, or by its `density`; the error of an estimate goes through to `estimates`.
 *
 * @param input - `area`, `applicationVolume` (volume of spray per area, or a calibration) and `capacity` (what the tank
 *   is filled to), all more than zero; `density` of the spray, for a calibration with water; `split`, `"full then
 *   partial"` where left out; `loadSize` with `"fixed size"`; `leastLoad`, the least that the tank can agitate;
 *   `residualVolume` (what the pump leaves in the tank) and `plumbingVolume` (what hoses and boom keep), zero or more
 * @throws RatewrightError with every problem of the input: `range`, `unit/mismatch`, `substance/mismatch`,
 *   `type`, `missing`, `conflict` (`loadSize` with another split than `"fixed size"`); `infeasible` on `leastLoad` where no such loads
 *   add up to the job; `range` on `capacity`, `residualVolume` or `loadSize` where the job would take more than 10 000 loads, on `residualVolume` and
 *   `plumbingVolume` where they leave nothing of a tank
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
 *   applicationVolume: quantity(15, "gal/acre", "spray"),
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
 * const held = tankLoads({ ...job, area: quantity(2.1, "acre"), leastLoad: quantity(10, "gal", "spray") });
 * held.loads.map((load) => load.volume.in("gal")); // => [21.5, 10]
 * ```
 */
export const tankLoads = <A extends NeutralSubstance>(input: {
  readonly area: Quantity<"area", A>;
  readonly applicationVolume: SprayPerArea;
  readonly capacity: Quantity<"volume", "spray">;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly split?: LoadSplit;
  readonly loadSize?: Quantity<"volume", "spray">;
  readonly leastLoad?: Quantity<"volume", "spray">;
  readonly residualVolume?: Quantity<"volume", "spray">;
  readonly plumbingVolume?: Quantity<"volume", "spray">;
}): TankLoads => {
  const read = readInput(input);
  const { area, spray, capacity, split } = read;
  const tank = capacity.value;
  const { dead, held } = heldBack(read);
  const size = read.loadSize === undefined ? tank : fitting(read.loadSize, capacity, dead);
  const need = numberIn(timesOf(spray.value, area), capacity.unit);
  const { volumes, whole } = loadVolumes({
    wanted: need + held,
    capacity: tank,
    refill: tank - dead,
    split,
    size,
    least: read.leastLoad === undefined ? 0 : numberIn(read.leastLoad, capacity.unit),
    unit: capacity.unit,
  });
  const count = volumes.length;
  const each = numberIn(perOf(capacity, spray.value), area.unit);
  const total = volumes.reduce((sum, volume) => sum + volume, 0);
  const plain = held === 0 && split !== "fixed size";
  const sized = plain && (whole || split === "even" || read.leastLoad === undefined);
  const perVolume = each / tank;
  const areas = sized
    ? parts(area.value, whole || split === "even" ? area.value / count : each, count)
    : treated(volumes, held, perVolume, area.value);
  const mixed = plain ? areas : volumes.map((volume) => volume * perVolume);
  const smallest = plain ? total : need + held;
  return {
    type: "tank-loads",
    version: 1,
    count,
    split,
    volume: likeQuantity(capacity, total),
    area,
    mixedFor: plain
      ? area
      : likeQuantity(
          area,
          mixed.reduce((sum, part) => sum + part, 0),
        ),
    applicationVolume: spray.value,
    capacity,
    areaPerTank: likeQuantity(area, each),
    smallestMix: likeQuantity(capacity, smallest),
    leftOver: {
      volume: likeQuantity(capacity, plain ? 0 : total - need),
      residual: likeQuantity(capacity, held),
    },
    loads: volumes.map((value, i) => ({
      number: i + 1,
      volume: likeQuantity(capacity, value),
      area: likeQuantity(area, areas[i] as number),
      mixedFor: likeQuantity(area, mixed[i] as number),
      full: isFull(value, i === 0 ? tank : tank - dead),
    })),
    ...estimated(spray, likeQuantity(area, each), likeQuantity(capacity, smallest), need),
    findings: [...spray.findings, ...smallLast(volumes, split, capacity)],
  };
};

const fields = [
  "area",
  "applicationVolume",
  "capacity",
  "density",
  "split",
  "loadSize",
  "leastLoad",
  "residualVolume",
  "plumbingVolume",
] as const;

type Spray = Quantity<"volume", "spray">;

const readInput = (input: unknown) => {
  const given = expectFields(input, fields);
  const volume = (path: "leastLoad" | "residualVolume" | "plumbingVolume"): Spray | undefined =>
    given[path] === undefined ? undefined : sprayOf(given[path], path, "non-negative");
  return allOf({
    area: () => areaOf(given.area, "positive"),
    spray: () => applicationVolumeOf(given.applicationVolume, given.density),
    capacity: () => sprayOf(given.capacity, "capacity"),
    split: () =>
      given.split === undefined ? "full then partial" : expectOneOf(given.split, loadSplits, "split"),
    leastLoad: () => volume("leastLoad"),
    residualVolume: () => volume("residualVolume"),
    plumbingVolume: () => volume("plumbingVolume"),
    loadSize: () => loadSizeOf(given.loadSize, given.split),
  });
};

/** What the tank keeps, and what tank and hoses keep together, in the unit of the tank. */
const heldBack = ({
  capacity,
  residualVolume,
  plumbingVolume,
}: {
  readonly capacity: Spray;
  readonly residualVolume: Spray | undefined;
  readonly plumbingVolume: Spray | undefined;
}): { readonly dead: number; readonly held: number } => {
  const read = (volume: Spray | undefined): number =>
    volume === undefined ? 0 : numberIn(volume, capacity.unit);
  const dead = read(residualVolume);
  const held = dead + read(plumbingVolume);
  if (held >= capacity.value) {
    const [path, volume] =
      dead >= capacity.value
        ? (["residualVolume", residualVolume] as const)
        : (["plumbingVolume", plumbingVolume] as const);
    fail("range", path, volume, "less than what the tank holds, with the residual volume");
  }
  return { dead, held };
};

/** The standard errors that an error of the application volume makes. */
const estimated = (
  { value, estimate }: FinishedSpray<"volume/area">,
  areaPerTank: Quantity<"area", NeutralSubstance>,
  smallestMix: Spray,
  need: number,
): Pick<TankLoads, "estimates"> => {
  if (estimate === undefined) return {};
  const { standardError, degreesOfFreedom } = estimate;
  const relative = standardError.value / value.value;
  const more = degreesOfFreedom === undefined ? {} : { degreesOfFreedom };
  const of = <D extends string, S extends string>(q: Quantity<D, S>, error: number): Estimate<D, S> => ({
    type: "estimate",
    version: 1,
    value: q,
    standardError: likeQuantity(q, error),
    ...more,
  });
  return {
    estimates: {
      areaPerTank: of(areaPerTank, areaPerTank.value * relative),
      smallestMix: of(smallestMix, need * relative),
    },
  };
};

/** A last load of less than a tenth of the tank, which few tanks agitate. */
const smallLast = (volumes: readonly number[], split: LoadSplit, capacity: Spray): readonly Finding[] => {
  const last = volumes[volumes.length - 1] as number;
  if (split !== "full then partial" || volumes.length < 2 || last >= capacity.value / 10) return [];
  const even = volumes.reduce((sum, volume) => sum + volume, 0) / volumes.length;
  const digits = (value: number): number => Number(value.toPrecision(4));
  return [
    {
      code: "load/small-last",
      severity: "caution",
      params: { load: volumes.length, volume: last, even, unit: capacity.unit },
      text: `Load ${volumes.length} is only ${digits(last)} ${capacity.unit}, less than a tenth of the tank: few tanks agitate so little, and it is hard to measure for. Even loads (split: "even") are ${digits(even)} ${capacity.unit} each; leastLoad holds the last one up.`,
      source: "common practice, no source",
    },
  ];
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

const loadSizeOf = (input: unknown, split: unknown): Quantity<"volume", "spray"> | undefined => {
  if (split !== "fixed size") {
    if (input === undefined) return undefined;
    return fail("conflict", "loadSize", input, 'no size of the loads, or the split "fixed size"');
  }
  if (input === undefined)
    fail("missing", "loadSize", input, 'a volume of spray, because the split is "fixed size"');
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
