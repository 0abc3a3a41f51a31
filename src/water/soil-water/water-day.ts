import {
  depth,
  depthOrNone,
  type Length,
  made,
  optional,
  percent,
  readRecord,
  type Share,
  useOf,
} from "../read.js";
import { expectDepletion, stressAt } from "./depletion.js";

/** What a day did to the water in the root zone, all in mm. */
export interface SeasonDay {
  /** Depletion at the end: what is missing to field capacity. */
  readonly depleted: number;
  /** What the turf used. */
  readonly used: number;
  /** What went below the roots. */
  readonly drained: number;
  /** The share of its full use that it managed, by the depletion after the water of the day came. */
  readonly stress: number;
}

/**
 * One day of the balance (85 to 88): water in first, then use, and what is above field capacity at the end drains.
 * `depleted + used + drained = before + water in`, turned round, to the last digit.
 */
export const dayOf = (day: {
  readonly total: number;
  readonly fraction: number;
  readonly before: number;
  readonly rain: number;
  readonly irrigation: number;
  readonly demand: number;
}): SeasonDay => {
  const { total, before, rain, irrigation, demand } = day;
  const water = rain + irrigation;
  const stress = stressAt(Math.max(0, before - water), total, day.fraction);
  // No more can be used than there is above the wilting point.
  const used = Math.min(stress * demand, total - before + water);
  const end = before - water + used;
  return { depleted: Math.max(0, end), used, drained: Math.max(0, -end), stress };
};

/** What a day did to the water in the root zone. */
export interface SoilWaterDay {
  readonly type: "soil-water-day";
  readonly version: 1;
  /** What is missing to field capacity at the end of the day. */
  readonly depleted: Length;
  /** What the turf used. */
  readonly used: Length;
  /** What went below the roots. */
  readonly drained: Length;
  /** The share of its full use that the turf managed. */
  readonly stress: Share;
}

/**
 * One day of the soil-water balance: `D = D0 - P - I + Ks ETc + DP`, where what is above field capacity at the end of the day
 * drains below the roots.
 *
 * - `available` `TAW` of the root zone; `depletion` `p` at which the turf begins to suffer, percent; `before` `D0`, zero to `TAW`
 * - `rain` `P`, the effective part; `irrigation` `I`, net; `use` `ETc` of the day at full use; zero where left out
 * - `Ks` by the depletion after the water of the day came, see {@link waterStress}; no more is used than is there
 *
 * Water in is water out and what is stored: `P + I = used + drained + D0 - D`. In the unit of the available water.
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equations 84 to 88, as a public program has them by number; without runoff and capillary rise.
 *
 * @example
 * ```ts
 * import { quantity, soilWaterDay } from "ratewright";
 * const mm = (value: number) => quantity(value, "mm");
 * const day = soilWaterDay({
 *   available: mm(60), depletion: quantity(50, "%"), before: mm(12), rain: mm(20), use: mm(4),
 * });
 * [day.depleted.in("mm"), day.used.in("mm"), day.drained.in("mm")]; // => [0, 4, 4]
 * ```
 */
export const soilWaterDay = (input: {
  readonly available: Length;
  readonly depletion: Share;
  readonly before: Length;
  readonly rain?: Length;
  readonly irrigation?: Length;
  readonly use?: Length;
}): SoilWaterDay => {
  const none = (value: unknown, path: string): Length | undefined =>
    value === undefined ? undefined : depthOrNone(value, path);
  const q = readRecord(
    input,
    {
      available: depth,
      depletion: percent({ min: 0, below: 100 }, 1),
      before: depthOrNone,
      rain: none,
      irrigation: none,
      use: optional(useOf(depthOrNone, "mm")),
    },
    "a record with available, depletion and before",
  );
  const unit = q.available.unit as "mm";
  const total = q.available.value;
  const before = expectDepletion(q.before.in(unit), total, "before");
  const day = dayOf({
    total,
    fraction: q.depletion / 100,
    before,
    rain: q.rain?.in(unit) ?? 0,
    irrigation: q.irrigation?.in(unit) ?? 0,
    demand: q.use?.in(unit) ?? 0,
  });
  const as = (value: number): Length => made(value, unit, "length");
  return {
    type: "soil-water-day",
    version: 1,
    depleted: as(day.depleted),
    used: as(day.used),
    drained: as(day.drained),
    stress: made(100 * day.stress, "%", "1"),
  };
};
