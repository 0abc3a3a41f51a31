import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  bulkSeed,
  expectedSeedlings,
  pricePerPureLiveSeed,
  pureLiveSeed,
  pureLiveSeedIn,
  seedCounts,
  seedingRate,
  seedLabel,
  seedMixture,
  seedMixtureByCount,
  seedOrder,
  seedsPerArea,
} from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

const percent = (value: number) => quantity(value, "%");
const shares = fc.double({ min: 1.01, max: 100, noNaN: true });
const lotOf = (purity: number, germination: number) => ({
  purity: percent(purity),
  germination: percent(germination),
});

describe("pure live seed", () => {
  test("bulk seed and pure live seed lead to one another, and bulk is never less", () => {
    fc.assert(
      fc.property(shares, shares, fc.double({ min: 0.01, max: 1e4, noNaN: true }), (p, g, rate) => {
        const lot = lotOf(p, g);
        const live = quantity(rate, "lb/acre", "pure live seed");
        const seed = bulkSeed({ pureLiveSeed: live, lot });
        expect(seed.in("lb/acre")).toBeGreaterThanOrEqual(rate * (1 - 1e-12));
        expect(pureLiveSeedIn({ seed, lot }).in("lb/acre") / rate).toBeCloseTo(1, 10);
        expect(pureLiveSeedIn({ seed, lot: pureLiveSeed(lot) }).in("lb/acre") / rate).toBeCloseTo(1, 10);
      }),
    );
  });
  test("what a lot costs is the same, paid by the bag or by its pure live seed", () => {
    fc.assert(
      fc.property(shares, shares, fc.double({ min: 0.1, max: 90, noNaN: true }), (p, g, price) => {
        const lot = lotOf(p, g);
        const live = pricePerPureLiveSeed({ price: quantity(price, "money:EUR/kg", "none/seed"), lot });
        const held = pureLiveSeedIn({ seed: quantity(25, "kg", "seed"), lot });
        expect(live.in("money:EUR/kg") * held.in("kg")).toBeCloseTo(25 * price, 8);
      }),
    );
  });
  test("hard seed counts as living; a tetrazolium test stands for both", () => {
    const tag = { purity: percent(98), germination: percent(92), hard: percent(5) };
    expect(pureLiveSeed(tag).in("% w/w")).toBeCloseTo(95.06, 12);
    expect(pureLiveSeed({ purity: percent(98), viable: percent(97) }).in("% w/w")).toBeCloseTo(95.06, 12);
  });
  test("refuses what no tag can say", () => {
    expect(complaints(() => pureLiveSeed({ purity: percent(98) }))).toEqual(["missing germination"]);
    expect(complaints(() => pureLiveSeed({ ...lotOf(98, 90), viable: percent(90) }))).toEqual([
      "conflict viable",
    ]);
    expect(complaints(() => pureLiveSeed({ ...lotOf(98, 90), hard: percent(11) }))).toEqual([
      "conflict hard",
    ]);
    expect(complaints(() => pureLiveSeed(lotOf(101, 0)))).toEqual(["range purity", "range germination"]);
    expect(complaints(() => pureLiveSeed({ ...lotOf(98, 90), pure: 1 } as never))).toEqual(["type pure"]);
    const rate = quantity(2, "lb/acre", "seed") as never;
    expect(complaints(() => bulkSeed({ pureLiveSeed: rate, lot: lotOf(98, 90) }))).toEqual([
      "substance/mismatch pureLiveSeed",
    ]);
    const price = quantity(2, "money:USD/lb") as never;
    expect(complaints(() => pricePerPureLiveSeed({ price, lot: lotOf(98, 0) }))).toEqual([
      "substance/mismatch price",
      "range lot.germination",
    ]);
  });
});

describe("seeds and seedlings", () => {
  test("a number of seeds and a rate lead to one another, in either system", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.integer({ min: 1e4, max: 1e7 }),
        (rate, each) => {
          const seedsPerMass = quantity(each, "count/lb");
          const live = seedsPerArea({ rate: quantity(rate, "lb/1000 ft2", "pure live seed"), seedsPerMass });
          expect(seedingRate({ liveSeeds: live, seedsPerMass }).in("lb/1000 ft2")).toBeCloseTo(rate, 9);
          const metric = quantity(quantity(rate, "lb/1000 ft2").in("g/m2"), "g/m2", "pure live seed");
          const same = seedsPerArea({ rate: metric, seedsPerMass });
          expect(same.unit).toBe("count/m2");
          expect(same.in("count/ft2") / live.in("count/ft2")).toBeCloseTo(1, 10);
        },
      ),
    );
  });
  test("seedlings are live seeds times what comes up", () => {
    const seedsPerMass = quantity(1000, "count/g");
    const emergence = { share: percent(40), source: "made up for the test" };
    const byLot = expectedSeedlings({
      rate: quantity(10, "g/m2", "seed"),
      lot: lotOf(50, 80),
      seedsPerMass,
      emergence,
    });
    expect(byLot.liveSeeds.in("count/m2")).toBe(4000);
    expect(byLot.seedlings.in("count/m2")).toBe(1600);
    const rate = quantity(10, "g/m2", "seed");
    expect(complaints(() => expectedSeedlings({ rate, seedsPerMass, emergence }))).toEqual(["missing lot"]);
    const live = quantity(4, "g/m2", "pure live seed");
    expect(
      complaints(() => expectedSeedlings({ rate: live, lot: lotOf(50, 80), seedsPerMass, emergence })),
    ).toEqual(["conflict lot"]);
    const unsaid = { share: percent(0), source: "" };
    expect(complaints(() => expectedSeedlings({ rate: live, seedsPerMass, emergence: unsaid }))).toEqual([
      "range emergence.share",
      "missing emergence.source",
    ]);
  });
});

describe("mixtures", () => {
  const kinds = fc.uniqueArray(
    fc.record({
      name: fc.string({ minLength: 1 }).filter((name) => name.trim() !== ""),
      share: fc.integer({ min: 1, max: 100 }),
      each: fc.integer({ min: 1e4, max: 1e7 }),
    }),
    { minLength: 1, maxLength: 8, selector: ({ name }) => name },
  );
  test("by weight and by count lead to one another, and shares add up", () => {
    fc.assert(
      fc.property(kinds, (list) => {
        const sum = list.reduce((all, { share }) => all + share, 0);
        const byWeight = seedMixture({
          components: list.map(({ name, share, each }) => ({
            name,
            byWeight: percent((100 * share) / sum),
            seedsPerMass: quantity(each, "count/lb"),
          })),
        });
        const total = (key: "byWeight" | "byCount") =>
          byWeight.components.reduce((all, row) => all + row[key].in("%"), 0);
        expect(total("byWeight")).toBeCloseTo(100, 9);
        expect(total("byCount")).toBeCloseTo(100, 9);
        const back = seedMixtureByCount({
          components: byWeight.components.map(({ name, byCount, seedsPerMass }) => ({
            name,
            byCount,
            seedsPerMass,
          })),
        });
        back.components.forEach((row, i) => {
          expect(row.byWeight.in("%")).toBeCloseTo(byWeight.components[i]?.byWeight.in("%") as number, 8);
        });
        expect(back.seedsPerMass.value / byWeight.seedsPerMass.value).toBeCloseTo(1, 9);
      }),
    );
  });
  test("refuses shares that are no whole", () => {
    const one = (name: string, share: number) => ({
      name,
      byWeight: percent(share),
      seedsPerMass: quantity(1e6, "count/lb"),
    });
    expect(complaints(() => seedMixture({ components: [one("a", 70), one("b", 31)] }))).toEqual([
      "range components",
    ]);
    expect(complaints(() => seedMixture({ components: [one("a", 70), one("a", 30)] }))).toEqual([
      "duplicate components[1].name",
    ]);
    expect(complaints(() => seedMixture({ components: [one("", 0)] }))).toEqual([
      "missing components[0].name",
      "range components[0].byWeight",
    ]);
    const byCount = { name: "a", byCount: percent(90), seedsPerMass: quantity(1e6, "count/lb") };
    expect(complaints(() => seedMixtureByCount({ components: [byCount] }))).toEqual(["range components"]);
  });
  test("a label that does not come to 100 % is told", () => {
    const components = [{ name: "a", ...lotOf(90, 80) }];
    const whole = seedLabel({ components, otherCrop: percent(0), inert: percent(9.8), weeds: percent(0.2) });
    expect(whole.findings).toEqual([]);
    const short = seedLabel({ components, otherCrop: percent(0), inert: percent(5), weeds: percent(0.2) });
    expect(short.findings.map(({ code }) => code)).toEqual(["seed/label-sum"]);
    expect(seedLabel({ components }).sum).toBe(null);
    expect(complaints(() => seedLabel({ components: [...components, ...components] }))).toEqual([
      "range components",
    ]);
  });
});

describe("seed to buy", () => {
  test("whole bags, and what is left", () => {
    const rate = quantity(5, "g/m2", "seed");
    const order = seedOrder({ area: quantity(1, "ha"), rate, bag: quantity(20, "kg") });
    expect([order.seed.in("kg"), order.bags, order.leftOver?.in("kg")]).toEqual([50, 3, 10]);
    expect(seedOrder({ area: quantity(1, "ha"), rate }).bags).toBe(null);
    expect(complaints(() => seedOrder({ area: quantity(1, "ha"), rate, lot: lotOf(90, 90) }))).toEqual([
      "conflict lot",
    ]);
    const live = quantity(5, "g/m2", "pure live seed");
    expect(complaints(() => seedOrder({ area: quantity(0, "ha"), rate: live }))).toEqual([
      "range area",
      "missing lot",
    ]);
  });
  test("the table of seed counts cannot be changed", () => {
    expect(Object.isFrozen(seedCounts) && Object.isFrozen(seedCounts[0]?.low)).toBe(true);
    for (const { low, high } of seedCounts) expect(low.value).toBeLessThanOrEqual(high.value);
  });
});
