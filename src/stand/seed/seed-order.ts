import { wholeUnitsFor } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import { allOf, expectAmount, expectFields, fail, type Quantity, quantity } from "../../quantity/index.js";
import { type Area, areaAt, given, isMetric, optional } from "../read.js";
import { type LotOrShare, livePercentOf } from "./pure-live-seed.js";

/** Seed to buy for an area. */
export interface SeedOrder {
  readonly type: "seed-order";
  readonly version: 1;
  /** Bulk seed that goes down. */
  readonly seed: Quantity<"mass", "seed">;
  /** Whole bags; `null` where no bag was stated. */
  readonly bags: number | null;
  /** What is left in the last bag. */
  readonly leftOver: Quantity<"mass", "seed"> | null;
}

/**
 * The seed for an area, and the bags to buy: `B = A R`, for a rate of pure live seed `B = 100 A R / PLS`.
 *
 * @param input.area - `A`, more than zero
 * @param input.rate - `R`, of `seed` as it comes, or of `pure live seed` with the `lot`
 * @param input.lot - the tag of the lot, or what `pureLiveSeed` gives; for a rate of pure live seed
 * @param input.bag - what one bag holds; bags are rounded up
 * @returns seed in lb or kg
 * @throws RatewrightError `missing`, `conflict`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: LSU AgCenter, "Pure live seed calculation", steps 1 to 4.
 *
 * @example
 * ```ts
 * import { quantity, seedOrder } from "ratewright";
 * const order = seedOrder({
 *   area: quantity(12_000, "ft2"), rate: quantity(2, "lb/1000 ft2", "pure live seed"),
 *   lot: { purity: quantity(50, "%"), germination: quantity(80, "%") }, bag: quantity(25, "lb"),
 * });
 * order.seed.in("lb"); // => 60
 * order.bags; // => 3
 * order.leftOver?.in("lb"); // => 15
 * ```
 */
export const seedOrder = (input: {
  readonly area: Area;
  readonly rate: Quantity<"mass/area", "seed"> | Quantity<"mass/area", "pure live seed">;
  readonly lot?: LotOrShare;
  readonly bag?: Quantity<"mass", "none">;
}): SeedOrder => {
  const record = expectFields(input, ["area", "rate", "lot", "bag"]);
  const { area, rate, percent, bag } = allOf({
    area: () => areaAt(record.area, "area"),
    rate: () => rateAt(record.rate),
    percent: () => percentFor(record.rate, record.lot),
    bag: () => optional(record.bag, (mass) => given(mass, "bag", "mass", "none")),
  });
  const metric = isMetric(rate.unit.slice(rate.unit.indexOf("/") + 1));
  const unit = metric ? "kg" : "lb";
  const bulk = metric
    ? (area.in("m2") * rate.in("g/m2") * 100) / percent / 1000
    : (area.in("ft2") * rate.in("lb/1000 ft2") * 100) / percent / 1000;
  const held = bag?.in(unit);
  const bags = held === undefined ? null : wholeUnitsFor(bulk, held);
  return {
    type: "seed-order",
    version: 1,
    seed: quantity(bulk, unit, "seed"),
    bags,
    leftOver:
      bags === null || held === undefined ? null : quantity(Math.max(0, bags * held - bulk), unit, "seed"),
  };
};

const rateAt = (input: unknown): Quantity<"mass/area", string> => {
  if (input === undefined) return fail("missing", "rate", input, "a rate of seed or of pure live seed");
  const of = isLive(input) ? "pure live seed" : "seed";
  return expectAmount(input, { dimensions: ["mass/area"], of, bound: "positive" }, "rate");
};

const isLive = (rate: unknown): boolean =>
  (rate as { of?: unknown } | null | undefined)?.of === "pure live seed";

const percentFor = (rate: unknown, lot: unknown): number => {
  if (isLive(rate)) return livePercentOf(lot, "lot");
  return lot === undefined
    ? 100
    : fail("conflict", "lot", described("a lot with a rate of seed"), "no lot, or a rate of pure live seed");
};
