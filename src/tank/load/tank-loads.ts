import { type Estimate, exceeds } from "../../numeric/index.js";
import {
  type Finding,
  likeQuantity,
  type NeutralSubstance,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";
import type { FinishedSpray } from "../../spray/index.js";
import type { SprayPerArea } from "../inputs.js";
import { loadAreas, sprayNeeded } from "./load-areas.js";
import { expectLoadInput, heldBack, loadSizeIn } from "./load-input.js";
import { type LoadSplit, loadVolumes } from "./load-volumes.js";

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
  readonly loadSplit: LoadSplit;
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
 *   a residual volume a later filling adds at most `capacity - residualVolume`
 * - last load: what is left; with `loadSplit: "even"` every load has `wanted / count`; with `"fixed size"`
 *   every load is `loadSize`, `count = ceil(wanted / loadSize)`, and what is too much is left over
 * - `mixedFor = volume / applicationVolume` of each load: what the pump cannot draw and the hoses keep is spray
 *   as strong as the rest, and takes product too
 *
 * The last load is mixed for what is left, never as a share of a full recipe judged by eye. A last load of less than a
 * tenth of the tank is a finding that gives the size of even loads, and so is a whole job of less; what loads of a fixed
 * size mix beyond the job is a finding too; with `leastLoad` the load before it gives up as much as
 * it takes for both to hold that.
 *
 * A calibration with water may go in as it is: its rate, its estimate, or the whole record. The spray is then taken to be
 * as heavy as water, which a finding says, or by its `density`; the error of an estimate goes through to `estimates`.
 *
 * @param input - `area`, `applicationVolume` (volume of spray per area, or a calibration) and `capacity` (what the tank
 *   is filled to), all more than zero; `density` of the spray, for a calibration with water; `loadSplit`, `"full then
 *   partial"` where left out; `loadSize` with `"fixed size"`; `leastLoad`, the least that the tank can agitate;
 *   `residualVolume` (what the pump leaves in the tank) and `plumbingVolume` (what hoses and boom keep), zero or more
 * @throws RatewrightError with every problem of the input: `range`, `unit/mismatch`, `substance/mismatch`,
 *   `type`, `missing`, `conflict` (`loadSize` with another loadSplit than `"fixed size"`); `infeasible` on `leastLoad` where no such loads
 *   add up to the job; `range` on `capacity`, `residualVolume` or `loadSize` where the job would take more than 10 000 loads, on `residualVolume` and
 *   `plumbingVolume` where they leave nothing of a tank
 *
 * Source: University of Missouri Extension method (G1272), acres per tank = tank / GPA; Agrochemical and
 * Pesticide Safety handbook, p. 128, example 4 (the part-filled last tank). Residual and plumbing volume: volumes
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
 * const batches = tankLoads({ ...job, loadSplit: "fixed size", loadSize: quantity(20, "gal", "spray") });
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
  readonly loadSplit?: LoadSplit;
  readonly loadSize?: Quantity<"volume", "spray">;
  readonly leastLoad?: Quantity<"volume", "spray">;
  readonly residualVolume?: Quantity<"volume", "spray">;
  readonly plumbingVolume?: Quantity<"volume", "spray">;
}): TankLoads => {
  const read = expectLoadInput(input);
  const { area, spray, capacity, loadSplit, leastLoad } = read;
  const { dead, held } = heldBack(read);
  const need = sprayNeeded(read);
  const volumes = loadVolumes({
    wanted: need + held,
    capacity: capacity.value,
    refill: capacity.value - dead,
    loadSplit,
    size: loadSizeIn(read, dead),
    least: leastLoad === undefined ? 0 : numberIn(leastLoad, capacity.unit),
    unit: capacity.unit,
  });
  const sums = loadAreas(read, volumes, held);
  const areaPerTank = likeQuantity(area, sums.perTank);
  const smallestMix = likeQuantity(capacity, sums.smallestMix);
  return {
    type: "tank-loads",
    version: 1,
    count: volumes.length,
    loadSplit,
    volume: likeQuantity(capacity, sums.total),
    area,
    mixedFor: likeQuantity(area, sums.mixedFor),
    applicationVolume: spray.value,
    capacity,
    areaPerTank,
    smallestMix,
    leftOver: {
      volume: likeQuantity(capacity, sums.leftOver),
      residual: likeQuantity(capacity, held),
    },
    loads: volumes.map((value, i) => ({
      number: i + 1,
      volume: likeQuantity(capacity, value),
      area: likeQuantity(area, sums.areas[i] as number),
      mixedFor: likeQuantity(area, sums.mixed[i] as number),
      full: isFull(value, i === 0 ? capacity.value : capacity.value - dead),
    })),
    ...estimated(spray, areaPerTank, smallestMix, need),
    findings: [
      ...spray.findings,
      ...smallLoad(volumes, loadSplit, capacity),
      ...mixedOver(sums.leftOver, held, capacity),
    ],
  };
};

type Spray = Quantity<"volume", "spray">;

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

const figure = (value: number): number => Number(value.toPrecision(4));

/** A load of less than a tenth of the tank, which few tanks agitate: the last of several, or the only one. */
const smallLoad = (volumes: readonly number[], loadSplit: LoadSplit, capacity: Spray): readonly Finding[] => {
  const last = volumes[volumes.length - 1] as number;
  if (last >= capacity.value / 10) return [];
  const { unit } = capacity;
  const source = "common practice, no source";
  if (volumes.length === 1)
    return [
      {
        code: "load/small",
        severity: "caution",
        params: { volume: last, capacity: capacity.value, unit },
        text: `The whole job takes ${figure(last)} ${unit}, less than a tenth of the tank: few tanks can agitate that little, and it is hard to measure for. Use a smaller sprayer.`,
        source,
      },
    ];
  if (loadSplit !== "full then partial") return [];
  const even = volumes.reduce((sum, volume) => sum + volume, 0) / volumes.length;
  return [
    {
      code: "load/small-last",
      severity: "caution",
      params: { load: volumes.length, volume: last, even, unit },
      text: `Load ${volumes.length} is only ${figure(last)} ${unit}, less than a tenth of the tank: few tanks can agitate that little, and it is hard to measure for. Even loads are ${figure(even)} ${unit} each.`,
      source,
    },
  ];
};

/** Loads of a fixed size mix more than the job takes. */
const mixedOver = (leftOver: number, held: number, { unit }: Spray): readonly Finding[] => {
  const over = leftOver - held;
  if (!(over > 1e-9 * leftOver)) return [];
  return [
    {
      code: "load/mixed-over",
      severity: "caution",
      params: { over, unit },
      text: `Loads of a fixed size mix ${figure(over)} ${unit} more than the job takes. Apply it to a labeled site, at or below the label rate, or mix the last load smaller.`,
    },
  ];
};

/** Within the guard of the count of loads a load is full: the last of several is what is left, with its noise. */
const isFull = (volume: number, most: number): boolean => !exceeds(most, volume);
