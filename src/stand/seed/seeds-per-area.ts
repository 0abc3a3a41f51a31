import { described } from "../../quantity/house.js";
import {
  allOf,
  expectAmount,
  expectFields,
  fail,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { given, isMetric, type StatedShare, statedShareAt } from "../read.js";
import { type LotOrShare, livePercentOf } from "./pure-live-seed.js";

type SeedSubstance = "seed" | "pure live seed";
type PerMass = Quantity<"count/mass", "none">;

const rateAt = (input: unknown, path: string): Quantity<"mass/area", SeedSubstance> => {
  if (input === undefined) return fail("missing", path, input, "a rate of seed or of pure live seed");
  const of = (input as { of?: unknown } | null)?.of === "pure live seed" ? "pure live seed" : "seed";
  const wanted = { dimensions: ["mass/area"], of, bound: "non-negative" } as const;
  return expectAmount(input, wanted, path) as Quantity<"mass/area", SeedSubstance>;
};

const perMassAt = (input: unknown): PerMass => given(input, "seedsPerMass", "count/mass", "none");

/**
 * Seeds per area at a rate: `n = R c`. Live seeds where the rate is of pure live seed, all of them where it
 * is of seed as it comes. In seeds per ft2 or m2, as the rate.
 *
 * 1 lb/1000 ft2 of a seed that has 1.5 million to the pound is 10.4 seeds/in2. Recommendations aim at
 * 1000 to 2000 live seeds/ft2 (Grounds Maintenance, "Calculate pure-live seed").
 *
 * @param input.rate - `R`, mass per area of `seed` or `pure live seed`, zero or more
 * @param input.seedsPerMass - `c`, seeds per pound or gram, as `seedCounts` or the supplier says
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: Grounds Maintenance (trade magazine), "How to: calculate pure-live seed", for the aim; the rest
 * is arithmetic.
 *
 * @example
 * ```ts
 * import { quantity, seedsPerArea } from "ratewright";
 * seedsPerArea({
 *   rate: quantity(2, "lb/1000 ft2", "pure live seed"), seedsPerMass: quantity(600_000, "count/lb"),
 * }).in("count/ft2"); // => 1200
 * ```
 */
export const seedsPerArea = <S extends SeedSubstance>(input: {
  readonly rate: Quantity<"mass/area", S>;
  readonly seedsPerMass: PerMass;
}): Quantity<"count/area", S> => {
  const record = expectFields(input, ["rate", "seedsPerMass"]);
  const { rate, perMass } = allOf({
    rate: () => rateAt(record.rate, "rate"),
    perMass: () => perMassAt(record.seedsPerMass),
  });
  const count = seedsIn(rate, perMass);
  return quantityOf<"count/area", S>(count.value, count.unit, rate.of, "rate");
};

const seedsIn = (
  rate: Quantity<"mass/area", SeedSubstance>,
  perMass: PerMass,
): { readonly value: number; readonly unit: "count/m2" | "count/ft2" } =>
  metricRate(rate.unit)
    ? { value: rate.in("g/m2") * perMass.in("count/g"), unit: "count/m2" }
    : { value: (rate.in("lb/1000 ft2") * perMass.in("count/lb")) / 1000, unit: "count/ft2" };

const metricRate = (unit: string): boolean => isMetric(unit.slice(unit.indexOf("/") + 1));

/**
 * The rate of pure live seed that puts a number of live seeds on an area: `R = n / c`. The way back from
 * {@link seedsPerArea}; {@link bulkSeed} makes bulk seed of it.
 *
 * @param input.liveSeeds - `n`, live seeds per area, of `pure live seed`, more than zero
 * @param input.seedsPerMass - `c`, seeds per pound or gram
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: as {@link seedsPerArea}.
 *
 * @example
 * ```ts
 * import { quantity, seedingRate } from "ratewright";
 * seedingRate({
 *   liveSeeds: quantity(1200, "count/ft2", "pure live seed"), seedsPerMass: quantity(600_000, "count/lb"),
 * }).in("lb/1000 ft2"); // => 2
 * ```
 */
export const seedingRate = (input: {
  readonly liveSeeds: Quantity<"count/area", "pure live seed">;
  readonly seedsPerMass: PerMass;
}): Quantity<"mass/area", "pure live seed"> => {
  const record = expectFields(input, ["liveSeeds", "seedsPerMass"]);
  const { live, perMass } = allOf({
    live: () => given(record.liveSeeds, "liveSeeds", "count/area", "pure live seed"),
    perMass: () => perMassAt(record.seedsPerMass),
  });
  return metricRate(live.unit)
    ? quantity(live.in("count/m2") / perMass.in("count/g"), "g/m2", "pure live seed")
    : quantity(live.in("count/1000 ft2") / perMass.in("count/lb"), "lb/1000 ft2", "pure live seed");
};

/** What comes up of a seeding. */
export interface ExpectedSeedlings {
  readonly type: "expected-seedlings";
  readonly version: 1;
  readonly liveSeeds: Quantity<"count/area", "pure live seed">;
  readonly seedlings: Quantity<"count/area", "none">;
  /** Who states the share that comes up. */
  readonly source: string;
}

/**
 * Seedlings to expect: live seeds times the share of them that comes up in the field, `n = R PLS c e`.
 * The share is the caller's, with its source: a germination test in a laboratory is no emergence in the
 * field, and nothing is assumed.
 *
 * @param input.rate - `R`, of `seed` with its `lot`, or of `pure live seed` without one
 * @param input.lot - the tag of the lot, or what `pureLiveSeed` gives
 * @param input.seedsPerMass - `c`, seeds per pound or gram
 * @param input.emergence - `e`, share of live seeds that comes up, above 0 to 100 %, and who states it
 * @throws RatewrightError `missing`, `conflict`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { expectedSeedlings, quantity } from "ratewright";
 * const stand = expectedSeedlings({
 *   rate: quantity(2, "lb/1000 ft2", "pure live seed"), seedsPerMass: quantity(600_000, "count/lb"),
 *   emergence: { share: quantity(50, "%"), source: "counts on the park's own meadow, 2025" },
 * });
 * stand.seedlings.in("count/ft2"); // => 600
 * ```
 */
export const expectedSeedlings = (input: {
  readonly rate: Quantity<"mass/area", "seed"> | Quantity<"mass/area", "pure live seed">;
  readonly lot?: LotOrShare;
  readonly seedsPerMass: PerMass;
  readonly emergence: StatedShare;
}): ExpectedSeedlings => {
  const record = expectFields(input, ["rate", "lot", "seedsPerMass", "emergence"]);
  const { rate, percent, perMass, emergence } = allOf({
    rate: () => rateAt(record.rate, "rate"),
    percent: () => lotPercent(record.rate, record.lot),
    perMass: () => perMassAt(record.seedsPerMass),
    emergence: () => statedShareAt(record.emergence, "emergence", { above: 0, max: 100, share: 1 }),
  });
  const seeds = seedsIn(rate, perMass);
  const live = (seeds.value * percent) / 100;
  return {
    type: "expected-seedlings",
    version: 1,
    liveSeeds: quantity(live, seeds.unit, "pure live seed"),
    seedlings: quantity((live * emergence.percent) / 100, seeds.unit),
    source: emergence.source,
  };
};

/** 100 for a rate of pure live seed; the share of the lot for a rate of seed. */
const lotPercent = (rate: unknown, lot: unknown): number => {
  const live = (rate as { of?: unknown } | null | undefined)?.of === "pure live seed";
  if (!live) return livePercentOf(lot, "lot");
  return lot === undefined
    ? 100
    : fail("conflict", "lot", described("a lot with a rate of pure live seed"), "no lot, or a rate of seed");
};
