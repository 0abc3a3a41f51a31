import { notShare } from "../../numeric/house.js";
import {
  allOf,
  expectAmount,
  expectFields,
  expectRecord,
  fail,
  outOfRange,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { percentAt, type Share } from "../read.js";

/** The share of a seed lot that is pure and can grow. */
export type PureLiveShare = Quantity<"mass/mass", "pure live seed/seed">;

/** What the tag of a seed lot says. */
export interface SeedLot {
  /** Share by weight that is seed of the kind. A coating is inert matter and is no part of it. */
  readonly purity: Share;
  /** Share that germinated in the test. */
  readonly germination?: Share;
  /** Hard or dormant seed, where the tag counts it as living beside what germinated. */
  readonly hard?: Share;
  /** Share found alive in a tetrazolium test, in place of germination and hard seed. */
  readonly viable?: Share;
}

const lotFields = ["purity", "germination", "hard", "viable"] as const;

/** No seed is sold of which 1 % is pure or grows: 0.98 % is a share, 0.98 for 98 %, and would buy a hundred times the seed. */
const percentOfLot = (input: unknown, path: string): number =>
  notShare(percentAt(input, path, { above: 0, max: 100 }), path);

/** Percent of a lot, by weight, that is pure live seed. */
export const livePercent = (input: unknown, path: string): number => {
  const record = expectFields(input, lotFields, path);
  const at = (name: string): string => (path === "" ? name : `${path}.${name}`);
  const { germination, hard, viable } = record;
  const aliveOf = (): number => {
    if (viable === undefined) {
      return germination === undefined
        ? fail("missing", at("germination"), germination, "germination, or viable from a tetrazolium test")
        : percentOfLot(germination, at("germination"));
    }
    return (germination ?? hard) === undefined
      ? percentOfLot(viable, at("viable"))
      : fail("conflict", at("viable"), viable, "either viable, or germination with hard seed");
  };
  const read = allOf({
    purity: () => percentOfLot(record.purity, at("purity")),
    alive: aliveOf,
    hard: () => percentAt(hard, at("hard"), { min: 0, max: 100 }, 0),
  });
  const living = read.alive + read.hard;
  if (living > 100 * (1 + 1e-12)) {
    fail("conflict", at("hard"), hard, `no more than what did not germinate, ${100 - read.alive} %`);
  }
  return (read.purity * Math.min(100, living)) / 100;
};

/**
 * Pure live seed: the share of a lot, by weight, that is pure and can grow. `PLS = p (g + h) / 100`.
 *
 * - `p` purity, percent by weight, above 1 to 100
 * - `g` germination, percent, above 1 to 100; `viable` of a tetrazolium test stands for `g + h`
 * - `h` hard or dormant seed, percent; none where it is left out. `g + h` is 100 % at most
 *
 * Do not round it before it is used: 38.4 % taken as 38 % buys 1.1 % too much seed.
 *
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `type`; all that are found
 * Source: Texas Department of Transportation, "Pure live seed"; LSU AgCenter, "Pure live seed calculation".
 *
 * @example
 * ```ts
 * import { pureLiveSeed, quantity } from "ratewright";
 * const lot = { purity: quantity(85, "%"), germination: quantity(75, "%") };
 * pureLiveSeed(lot).in("% w/w"); // => 63.75
 * ```
 */
export const pureLiveSeed = (lot: SeedLot): PureLiveShare => {
  expectRecord(lot, "lot", "a seed lot, with purity and germination or viable seed");
  return quantity(livePercent(lot, ""), "% w/w", "pure live seed/seed");
};

/** Percent of pure live seed of a lot, or of a share that is known already. */
export const livePercentOf = (input: unknown, path: string): number => {
  if (input === undefined) return fail("missing", path, input, "a seed lot, or its pure live seed");
  if (typeof input !== "object" || input === null || !("unit" in input)) return livePercent(input, path);
  const share = expectAmount(
    input,
    { dimensions: ["mass/mass"], of: "pure live seed/seed", bound: "positive" },
    path,
  ).in("% w/w");
  return share <= 100 ? share : outOfRange(path, input, { max: 100, unit: "%" });
};

/** A lot by its tag, or by its pure live seed. */
export type LotOrShare = SeedLot | PureLiveShare;

/**
 * The bulk seed that holds an amount of pure live seed: `B = 100 P / PLS`, for a mass or a rate. The extra
 * to buy is `100 / PLS - 1`, not `1 - PLS / 100`: at 80.75 % it is 23.8 %, not 19 %.
 *
 * @param input.pureLiveSeed - `P`, mass or mass per area of pure live seed, zero or more
 * @param input.lot - the tag of the lot, or what {@link pureLiveSeed} gives
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: LSU AgCenter, "Pure live seed calculation", step 4.
 *
 * @example
 * ```ts
 * import { bulkSeed, quantity } from "ratewright";
 * const lot = { purity: quantity(50, "%"), germination: quantity(80, "%") };
 * bulkSeed({ pureLiveSeed: quantity(20, "lb", "pure live seed"), lot }).toString(); // => "50 lb of seed"
 * ```
 */
export const bulkSeed = <D extends "mass" | "mass/area">(input: {
  readonly pureLiveSeed: Quantity<D, "pure live seed">;
  readonly lot: LotOrShare;
}): Quantity<D, "seed"> => {
  const record = expectFields(input, ["pureLiveSeed", "lot"]);
  const { live, percent } = allOf({
    live: () => seedAmount(record.pureLiveSeed, "pureLiveSeed", "pure live seed"),
    percent: () => livePercentOf(record.lot, "lot"),
  });
  return ofSeed<D, "seed">(live, (live.value * 100) / percent, "seed", "pureLiveSeed");
};

/**
 * The pure live seed in an amount of bulk seed: `P = B PLS / 100`. The way back from {@link bulkSeed}.
 *
 * @param input.seed - `B`, mass or mass per area of seed as it comes out of the bag, zero or more
 * @param input.lot - the tag of the lot, or what {@link pureLiveSeed} gives
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: as {@link pureLiveSeed}.
 *
 * @example
 * ```ts
 * import { pureLiveSeedIn, quantity } from "ratewright";
 * const lot = { purity: quantity(50, "%"), germination: quantity(80, "%") };
 * pureLiveSeedIn({ seed: quantity(5, "lb/1000 ft2", "seed"), lot }).in("lb/1000 ft2"); // => 2
 * ```
 */
export const pureLiveSeedIn = <D extends "mass" | "mass/area">(input: {
  readonly seed: Quantity<D, "seed">;
  readonly lot: LotOrShare;
}): Quantity<D, "pure live seed"> => {
  const record = expectFields(input, ["seed", "lot"]);
  const { seed, percent } = allOf({
    seed: () => seedAmount(record.seed, "seed", "seed"),
    percent: () => livePercentOf(record.lot, "lot"),
  });
  return ofSeed<D, "pure live seed">(seed, (seed.value * percent) / 100, "pure live seed", "seed");
};

const seedAmount = (input: unknown, path: string, of: string): Quantity<"mass" | "mass/area", string> =>
  input === undefined
    ? fail("missing", path, input, `a mass, or a mass per area, of ${of}`)
    : expectAmount(input, { dimensions: ["mass", "mass/area"], of, bound: "non-negative" }, path);

// The dimension is that of the argument, which was read as one of the two.
const ofSeed = <D extends string, S extends "seed" | "pure live seed">(
  like: { readonly unit: string },
  value: number,
  of: S,
  path: string,
): Quantity<D, S> => quantityOf<D, S>(value, like.unit, of, path);

/**
 * The price of a pound (or kilogram) of pure live seed: `price * 100 / PLS`. It tells which of two lots is
 * the bargain.
 *
 * @param input.price - price per mass of bulk seed, of `none/seed`: `quantity(2.5, "money:USD/lb", "none/seed")`
 * @param input.lot - the tag of the lot, or what {@link pureLiveSeed} gives
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: Penn State, "Calculating the price of pure live seed", which rounds the shares on the way.
 *
 * @example
 * ```ts
 * import { pricePerPureLiveSeed, quantity } from "ratewright";
 * const lot = { purity: quantity(85, "%"), germination: quantity(60, "%") };
 * const price = quantity(2.04, "money:USD/lb", "none/seed");
 * pricePerPureLiveSeed({ price, lot }).in("money:USD/lb"); // => 4
 * ```
 */
export const pricePerPureLiveSeed = <C extends string>(input: {
  readonly price: Quantity<`money:${C}/mass`, "none/seed">;
  readonly lot: LotOrShare;
}): Quantity<`money:${C}/mass`, "none/pure live seed"> => {
  const record = expectFields(input, ["price", "lot"]);
  const { price, percent } = allOf({
    price: () => priceAt(record.price),
    percent: () => livePercentOf(record.lot, "lot"),
  });
  const value = (price.value * 100) / percent;
  const of = "none/pure live seed";
  return quantityOf<`money:${C}/mass`, typeof of>(value, price.unit, of, "price");
};

const priceAt = (input: unknown): { readonly value: number; readonly unit: string } => {
  if (input === undefined) return fail("missing", "price", input, "a price per mass of seed");
  const unit = (input as { unit?: unknown } | null)?.unit;
  const currency = typeof unit === "string" ? /^money:([A-Z]{3})\//.exec(unit)?.[1] : undefined;
  return expectAmount(
    input,
    { dimensions: [`money:${currency ?? "USD"}/mass`], of: "none/seed", bound: "non-negative" },
    "price",
  );
};
