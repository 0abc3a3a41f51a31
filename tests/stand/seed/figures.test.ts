import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  pricePerPureLiveSeed,
  pureLiveSeed,
  seedingRate,
  seedLabel,
  seedMixture,
  seedMixtureByCount,
  seedOrder,
  seedsPerArea,
} from "../../../src/stand/index.js";

// Worked by hand, in whole numbers; what lies just at a limit is within it.

const percent = (value: number) => quantity(value, "%");

describe("seed at its limits", () => {
  const kind = (name: string, share: number) => ({
    name,
    byWeight: percent(share),
    seedsPerMass: quantity(1000, "count/g"),
  });
  const count = (name: string, share: number) => ({
    name,
    byCount: percent(share),
    seedsPerMass: quantity(1000, "count/g"),
  });
  test("a lot that lives in full", () => {
    expect(
      pureLiveSeed({ purity: percent(98), germination: percent(90), hard: percent(10) }).in("% w/w"),
    ).toBe(98);
    const price = quantity(3, "money:USD/lb", "none/seed");
    expect(
      pricePerPureLiveSeed({ price, lot: quantity(100, "% w/w", "pure live seed/seed") }).toString(),
    ).toBe("3 money:USD/lb of none/pure live seed");
    expect(pricePerPureLiveSeed({ price, lot: quantity(50, "% w/w", "pure live seed/seed") }).value).toBe(6);
  });
  test("shares of a mixture come to 100, or to half a percent of it by count", () => {
    expect(
      seedMixture({ components: [kind("fescue", 60), kind("bent", 40)] }).components[0]?.byCount.in("%"),
    ).toBeCloseTo(60, 12);
    for (const rest of [39.5, 40.5])
      expect(
        seedMixtureByCount({ components: [count("fescue", 60), count("bent", rest)] }).components,
      ).toHaveLength(2);
  });
  test("a label may be off by half a percent, and is told beyond it", () => {
    const of = (inert: number) =>
      seedLabel({
        components: [{ name: "fescue", purity: percent(90), germination: percent(80) }],
        otherCrop: percent(0),
        inert: percent(inert),
        weeds: percent(0),
      });
    expect([of(9.5), of(10.5)].map(({ findings }) => findings)).toEqual([[], []]);
    expect(of(9).findings).toEqual([
      {
        code: "seed/label-sum",
        severity: "caution",
        path: "components",
        params: { sum: 99 },
        text: "The lines of the label come to 99 %, not 100 %. Read it again.",
      },
    ]);
    expect(of(10)).toMatchObject({ type: "seed-label", version: 1 });
    expect([of(10).sum, of(10).pureLiveSeed, of(10).components[0]?.purity].map(String)).toEqual([
      "100 %",
      "72 % w/w of pure live seed/seed",
      "90 %",
    ]);
    // a bag of nothing but seed
    const pure = seedLabel({
      components: [
        { name: "a", purity: percent(60), germination: percent(50) },
        { name: "b", purity: percent(40), germination: percent(50) },
      ],
    });
    expect(pure.pureLiveSeed.in("% w/w")).toBe(50);
  });
  test("seeds and rates in both systems", () => {
    const each = quantity(1000, "count/g");
    expect(seedsPerArea({ rate: quantity(2, "g/m2", "seed"), seedsPerMass: each }).toString()).toBe(
      "2000 count/m2 of seed",
    );
    expect(
      seedsPerArea({
        rate: quantity(2, "lb/1000 ft2", "seed"),
        seedsPerMass: quantity(500_000, "count/lb"),
      }).toString(),
    ).toBe("1000 count/ft2 of seed");
    expect(
      seedingRate({ liveSeeds: quantity(2000, "count/m2", "pure live seed"), seedsPerMass: each }).toString(),
    ).toBe("2 g/m2 of pure live seed");
    expect(
      seedingRate({
        liveSeeds: quantity(1000, "count/ft2", "pure live seed"),
        seedsPerMass: quantity(500_000, "count/lb"),
      }).toString(),
    ).toBe("2 lb/1000 ft2 of pure live seed");
  });
  test("bags in both systems", () => {
    const us = seedOrder({
      area: quantity(10_000, "ft2"),
      rate: quantity(6, "lb/1000 ft2", "seed"),
      bag: quantity(50, "lb"),
    });
    expect([us.type, us.version, us.seed, us.bags, us.leftOver].map(String)).toEqual([
      "seed-order",
      "1",
      "60 lb of seed",
      "2",
      "40 lb of seed",
    ]);
    const even = seedOrder({
      area: quantity(1, "ha"),
      rate: quantity(5, "g/m2", "seed"),
      bag: quantity(25, "kg"),
    });
    expect([even.bags, even.leftOver?.value]).toEqual([2, 0]);
    const live = seedOrder({
      area: quantity(1000, "m2"),
      rate: quantity(40, "kg/ha", "pure live seed"),
      lot: quantity(80, "% w/w", "pure live seed/seed"),
    });
    expect([live.seed.toString(), live.leftOver]).toEqual(["5 kg of seed", null]);
  });
});
