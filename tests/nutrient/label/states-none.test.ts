// A product that states none of a nutrient: the refusal points at its analysis and tells what it does state.
import { describe, expect, it, test } from "vitest";
import {
  cheapestSource,
  fertilizer,
  liquidFertilizer,
  liquidProductRate,
  money,
  nutrientCost,
  productForConcentration,
  productMass,
  productRate,
  productRates,
  quantity,
  RatewrightError,
  slowShareRates,
} from "../../../src/index.js";

const feed = fertilizer({ id: "feed-a", analysis: "24-0-11" });
const sulfate = fertilizer({ id: "sulfate", analysis: "0-0-50-17S" });
const wet = fertilizer({ id: "wet", form: "liquid", analysis: "28-0-0", density: quantity(10.6, "lb/gal") });
const byVolume = liquidFertilizer({ id: "by-volume", perVolume: { N: quantity(3, "lb/gal", "N") } });
const phosphate = quantity(0.5, "lb/1000 ft2", "P2O5");

const told = (work: () => unknown): readonly unknown[] => {
  try {
    work();
  } catch (error) {
    if (error instanceof RatewrightError)
      return error.problems.map(({ code, path, got, expected }) => [code, path, got, expected]);
    throw error;
  }
  return [];
};

const none = "some P2O5, of which feed-a states none";
const label = "24 % N, 0 % P2O5, 11 % K2O";

describe("a nutrient of which the label states 0 %", () => {
  const calls: readonly (readonly [name: string, path: string, call: () => unknown])[] = [
    ["productRate", "product.analysis", () => productRate(phosphate, feed)],
    ["productMass", "product.analysis", () => productMass(quantity(5, "lb", "P2O5"), feed)],
    [
      "productForConcentration",
      "product.analysis",
      () => productForConcentration(quantity(20, "mg/L", "P2O5"), feed),
    ],
    [
      "nutrientCost",
      "product.analysis",
      () => nutrientCost({ product: feed, price: money(1, "USD").per(quantity(1, "lb")), nutrient: "P2O5" }),
    ],
    [
      "productRates",
      "steps[0].product.analysis",
      () => productRates({ steps: [{ target: phosphate, product: feed }] }),
    ],
  ];
  test.each(calls)("%s points at %s", (_, path, call) => {
    expect(told(call)).toEqual([["infeasible", path, label, none]]);
  });
});

describe("a nutrient of which the label says nothing", () => {
  it("is told with what the label says, of a dry product and of a liquid", () => {
    expect(told(() => productRate(quantity(0.1, "lb/1000 ft2", "Fe"), sulfate))).toEqual([
      [
        "infeasible",
        "product.analysis",
        "0 % N, 0 % P2O5, 50 % K2O, 17 % S",
        "some Fe, of which sulfate states none",
      ],
    ]);
    expect(told(() => liquidProductRate(phosphate, wet))).toEqual([
      ["infeasible", "product.analysis", "28 % N, 0 % P2O5, 0 % K2O", "some P2O5, of which wet states none"],
    ]);
    expect(told(() => liquidProductRate(phosphate, byVolume))).toEqual([
      ["infeasible", "product.perVolume", "3 lb/gal of N", "some P2O5, of which by-volume states none"],
    ]);
  });

  it("is told of the one of two products that has no nitrogen", () => {
    const urea = fertilizer({ id: "urea", analysis: "46-0-0" });
    const rates = () =>
      slowShareRates({
        target: quantity(1, "lb/1000 ft2", "N"),
        slowShare: quantity(60, "% w/w", "N:slow/N"),
        products: [urea, sulfate],
      });
    expect(told(rates)).toEqual([
      [
        "infeasible",
        "products[1].analysis",
        "0 % N, 0 % P2O5, 50 % K2O, 17 % S",
        "some N, of which sulfate states none",
      ],
    ]);
  });

  it("is told where none of several sources has it", () => {
    const price = money(1, "USD").per(quantity(1, "lb"));
    const sources = [
      { product: feed, price },
      { product: sulfate, price },
    ];
    expect(told(() => cheapestSource({ target: phosphate, sources }))).toEqual([
      ["infeasible", "sources", '"feed-a, sulfate"', "a product that states P2O5: none of these does"],
    ]);
  });
});

describe("another form of a nutrient that the label states", () => {
  it("counts: P where P2O5 is stated, and K2O where K is", () => {
    const starter = fertilizer({ id: "starter", analysis: "10-20-5" });
    // 20 % P2O5 hold 20 * 61.948 / 141.943 = 8.728 % P.
    const rate = productRate(quantity(0.5, "lb/1000 ft2", "P"), starter);
    expect(rate.in("lb/1000 ft2")).toBeCloseTo(0.5 / 0.087285, 3);
    const element = fertilizer({ id: "element", analysis: "10-0-10", basis: "element" });
    expect(productRate(quantity(1, "lb/1000 ft2", "K2O"), element).in("lb/1000 ft2")).toBeCloseTo(
      1 / (0.1 * 1.20459),
      3,
    );
  });

  it("and a target that is no nutrient is told at the target", () => {
    const nitrate = quantity(1, "lb/1000 ft2", "NO3-N" as "N");
    expect(told(() => productRate(nitrate as never, feed))).toMatchObject([
      ["infeasible", "target", "1 lb/1000 ft2 of NO3-N", expect.stringContaining("nitrogenOf(amount)")],
    ]);
    expect(told(() => productRate(quantity(1, "lb/1000 ft2") as never, feed))).toMatchObject([
      ["substance/mismatch", "target", "1 lb/1000 ft2", "a rate of a nutrient, such as N or P2O5"],
    ]);
  });
});
