import { describe, expect, test } from "vitest";
import {
  areaCovered,
  costPerArea,
  elementOf,
  expectQuantity,
  fertilizer,
  highestProductRate,
  inForm,
  nutrientsSupplied,
  packagesFor,
  parseQuantity,
  productRate,
  quantity,
  quantityFrom,
  readQuantity,
  volumeOfLiquid,
  weightOfLiquid,
} from "../../src/index.js";

/** What a file leaves of a value: no class, no dimension. */
const json = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

const feed = fertilizer({
  id: "feed",
  analysis: "24-0-11",
  slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
  package: quantity(50, "lb"),
});
const uan = fertilizer({ id: "uan", form: "liquid", analysis: "28-0-0", density: quantity(10.6, "lb/gal") });

describe("formulas take what JSON left of a quantity and of a record", () => {
  test("amounts as well as rates", () => {
    const amount = nutrientsSupplied(json(quantity(50, "lb", "product:feed")), json(feed));
    expect(amount.N?.in("lb")).toBe(12);
    expect(amount["N:quick"]?.in("lb")).toBe(6);
    const rate = nutrientsSupplied(json(quantity(50, "lb/acre", "product:feed")), json(feed));
    expect(rate.N?.in("lb/acre")).toBe(12);
    expect(
      areaCovered(json(quantity(2, "gal", "product")), json(quantity(4, "gal/acre", "product"))).in("acre"),
    ).toBe(0.5);
    expect(
      areaCovered(json(quantity(45, "lb", "product")), json(quantity(3.75, "lb/1000 ft2", "product"))).in(
        "ft2",
      ),
    ).toBe(12_000);
  });

  test("forms of a nutrient, packages, liquids, cost", () => {
    expect(inForm(json(quantity(1, "lb/acre", "P2O5")), "P").in("lb/acre")).toBeCloseTo(0.43643, 5);
    expect(elementOf(json(quantity(1, "kg", "K2O"))).in("kg")).toBeCloseTo(0.83015, 5);
    expect(productRate(json(quantity(0.9, "lb/1000 ft2", "N")), json(feed)).in("lb/1000 ft2")).toBe(3.75);
    expect(packagesFor(json(quantity(120, "lb", "product:feed")), json(feed)).count).toBe(3);
    expect(weightOfLiquid(json(quantity(2, "gal", "product:uan")), json(uan)).in("lb")).toBe(21.2);
    expect(volumeOfLiquid(json(quantity(21.2, "lb", "product:uan")), json(uan)).in("gal")).toBe(2);
    const cost = costPerArea({
      product: json(uan),
      rate: json(quantity(10, "gal/acre", "product:uan")),
      price: quantity(2, "money:USD/gal"),
    });
    expect(cost.in("money:USD/acre")).toBeCloseTo(20, 9);
  });

  test("a record that no label can print is refused, not trimmed", () => {
    const forged = { ...feed, slowNitrogen: quantity(30, "% w/w", "N:slow/product") };
    expect(() => nutrientsSupplied(quantity(50, "lb", "product:feed"), forged)).toThrow("at most the 24 % N");
  });
});

describe("the name of quick-release nitrogen before", () => {
  test("is still read out of stores, tables and texts, and comes back as N:quick", () => {
    const stored = JSON.parse('{"value":0.7,"unit":"lb/1000 ft2","of":"N:soluble"}');
    const wanted = { dimension: "mass/area", of: "N:quick" } as const;
    expect(expectQuantity(stored, wanted, "limit").of).toBe("N:quick");
    expect(quantityFrom(stored).of).toBe("N:quick");
    expect(readQuantity(stored, wanted)).toMatchObject({ value: { of: "N:quick" } });
    expect(parseQuantity("0.7 lb/1000 ft2 of N:soluble").of).toBe("N:quick");
    const feed = fertilizer({ id: "a", analysis: "24-0-11" });
    const found = highestProductRate({ product: feed, caps: [{ limit: stored }] });
    expect(found.rate?.in("lb/1000 ft2")).toBeCloseTo(70 / 24, 12);
  });
});
