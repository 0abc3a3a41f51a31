import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  analysisByWeight,
  cheapestSource,
  costPerArea,
  densityAt,
  densitySlopeOfUan,
  fertilizer,
  inventoryShrink,
  type LiquidMaterialId,
  liquidDensity,
  liquidMaterials,
  liquidProductRate,
  nutrientCost,
  nutrientPerVolume,
  nutrientsSupplied,
  productRate,
  saltOutFindings,
  volumeOfLiquid,
  weightOfLiquid,
} from "../../src/nutrient/index.js";
import { money, quantity } from "../../src/quantity/index.js";
import { complaints } from "../errors.js";

const liquid = (grade: string, density = 10.67) =>
  fertilizer({ id: "l", form: "liquid", analysis: grade, density: quantity(density, "lb/gal") });
const usd = (amount: number) => money(amount, "USD");
const positive = fc.integer({ min: 1, max: 5000 }).map((n) => n / 100);
/** What a gallon of a liquid weighs. */
const inLiquids = fc.integer({ min: 420, max: 2500 }).map((n) => n / 100);

describe("liquids", () => {
  test("a rate by volume brings its target back", () => {
    fc.assert(
      fc.property(positive, inLiquids, fc.integer({ min: 1, max: 60 }), (target, density, percent) => {
        const product = liquid(`${percent}-0-0`, density);
        const rate = liquidProductRate(quantity(target, "lb/acre", "N"), product);
        expect(nutrientsSupplied(weightOfLiquid(rate, product), product).N?.in("lb/acre")).toBeCloseTo(
          target,
          8,
        );
        const perGallon = nutrientPerVolume(product, "N").in("lb/gal");
        expect(rate.in("gal/acre") * perGallon).toBeCloseTo(target, 8);
        expect(volumeOfLiquid(weightOfLiquid(rate, product), product).in("gal/acre")).toBeCloseTo(
          rate.in("gal/acre"),
          9,
        );
      }),
    );
  });

  test("percent by weight and weight by volume differ by the density", () => {
    const density = quantity(1.28, "kg/L");
    const byWeight = analysisByWeight({ perVolume: { N: quantity(35.84, "% w/v", "N") }, density });
    expect(byWeight.percent.N).toBeCloseTo(28, 12);
    expect(
      complaints(() =>
        analysisByWeight({ perVolume: { N: quantity(28, "% w/w", "N/product") as never }, density }),
      ),
    ).toEqual(["unit/mismatch perVolume.N"]);
    expect(
      complaints(() =>
        analysisByWeight({ perVolume: { N: quantity(90, "% w/v", "P2O5") as never }, density }),
      ),
    ).toEqual(["substance/mismatch perVolume.N"]);
    expect(
      complaints(() => analysisByWeight({ perVolume: { N: quantity(150, "% w/v", "N") }, density })),
    ).toEqual(["range perVolume.N"]);
  });

  test("a liquid without a density, or a nutrient that is not in it, is refused", () => {
    const bare = fertilizer({ id: "l", form: "liquid", analysis: "28-0-0" });
    const target = quantity(1, "lb/acre", "N");
    expect(complaints(() => liquidProductRate(target, bare))).toEqual(["missing product.density"]);
    expect(complaints(() => nutrientPerVolume(bare, "N"))).toEqual(["missing product.density"]);
    expect(complaints(() => liquidProductRate(quantity(1, "lb/acre", "K2O"), liquid("28-0-0")))).toEqual([
      "infeasible product.analysis",
    ]);
    expect(
      complaints(() => weightOfLiquid(quantity(1, "gal", "product:x") as never, liquid("28-0-0"))),
    ).toEqual(["substance/mismatch amount"]);
  });

  test("densities fall as it warms, and the printed slope runs through the printed table", () => {
    for (const material of ["UAN 28", "UAN 30"] as const) {
      const { fahrenheit, lbPerGal } = liquidMaterials[material];
      fahrenheit.forEach((temperature, i) => {
        const line = densityAt({
          density: quantity(lbPerGal[2] as number, "lb/gal"),
          measuredAt: quantity(60, "°F"),
          slopePerFahrenheit: densitySlopeOfUan,
          temperature: quantity(temperature, "°F"),
        });
        expect(line.in("lb/gal")).toBeCloseTo(lbPerGal[i] as number, 9);
      });
    }
    for (const { fahrenheit, lbPerGal } of Object.values(liquidMaterials)) {
      expect(fahrenheit.length).toBe(lbPerGal.length);
      for (let i = 1; i < fahrenheit.length; i++) {
        expect(fahrenheit[i]).toBeGreaterThan(fahrenheit[i - 1] as number);
        expect(lbPerGal[i]).toBeLessThan(lbPerGal[i - 1] as number);
      }
    }
  });

  test("reads Celsius as well, and refuses what was not measured", () => {
    expect(liquidDensity("UAN 28", quantity(10, "°C")).in("lb/gal")).toBeCloseTo(10.7, 12);
    expect(liquidDensity("7-21-7", quantity(140 / 9, "°C")).in("lb/gal")).toBe(11.2);
    expect(complaints(() => liquidDensity("7-21-7", quantity(70, "°F")))).toEqual(["range temperature"]);
    expect(complaints(() => liquidDensity("UAN 28", quantity(91, "°F")))).toEqual(["range temperature"]);
    expect(complaints(() => liquidDensity("constructor" as LiquidMaterialId, quantity(60, "°F")))).toEqual([
      "type material",
    ]);
  });

  test("shrinks as it cools and grows as it warms, by the same mass", () => {
    const [warm, cold] = [quantity(10.6, "lb/gal"), quantity(10.74, "lb/gal")];
    const lost = inventoryShrink(warm, cold).in("% v/v") / 100;
    const gained = inventoryShrink(cold, warm).in("% v/v") / 100;
    expect(lost).toBeGreaterThan(0);
    expect((1 - lost) * (1 - gained)).toBeCloseTo(1, 12);
    expect(complaints(() => inventoryShrink(quantity(0, "lb/gal"), cold))).toEqual(["range before"]);
  });

  test("salts out at and below the printed temperature, by each source", () => {
    const count = (fahrenheit: number): number =>
      saltOutFindings("UAN 32", quantity(fahrenheit, "°F")).length;
    expect([count(33), count(32), count(29), count(28), count(0)]).toEqual([0, 1, 1, 2, 2]);
  });
});

describe("cost", () => {
  test("of one nutrient, times what a product holds of it, is its price", () => {
    fc.assert(
      fc.property(positive, fc.integer({ min: 1, max: 90 }), (price, percent) => {
        const product = fertilizer({ id: "p", analysis: `${percent}-0-0` });
        const cost = nutrientCost({ product, price: usd(price).per(quantity(1, "lb")), nutrient: "N" });
        expect((cost.in("money:USD/lb") * percent) / 100).toBeCloseTo(price, 9);
      }),
    );
  });

  test("by subtraction: the worth of all nutrients together is the price", () => {
    fc.assert(
      fc.property(positive, fc.integer({ min: 0, max: 100 }), (price, share) => {
        const product = fertilizer({ id: "p", analysis: "18-46-0" });
        const worth = ((price * share) / 100) * (100 / 18);
        const phosphate = nutrientCost({
          product,
          price: usd(price).per(quantity(1, "lb")),
          nutrient: "P2O5",
          worth: { N: usd(worth).per(quantity(1, "lb", "N")) },
        }).in("money:USD/lb");
        expect((phosphate * 46 + worth * 18) / 100).toBeCloseTo(price, 8);
        expect(phosphate).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("worth in P is not taken for worth in P2O5", () => {
    const product = fertilizer({ id: "p", analysis: "18-46-0" });
    const price = usd(0.4).per(quantity(1, "lb"));
    const asElement = nutrientCost({
      product,
      price,
      nutrient: "N",
      worth: { P: usd(0.5).per(quantity(1, "lb", "P")) },
    });
    const expected = (0.4 - (0.5 * 46 * 0.43643) / 100) / 0.18;
    expect(asElement.in("money:USD/lb")).toBeCloseTo(expected, 4);
    expect(
      complaints(() =>
        nutrientCost({
          product,
          price,
          nutrient: "P2O5",
          worth: { P: usd(0.5).per(quantity(1, "lb", "P")) },
        }),
      ),
    ).toEqual(["conflict worth.P"]);
  });

  test("per gallon needs the density, and then is the cost per weight", () => {
    const perGallon = usd(3).per(quantity(1, "gal"));
    const cost = nutrientCost({ product: liquid("28-0-0", 10), price: perGallon, nutrient: "N" });
    expect(cost.in("money:USD/lb")).toBeCloseTo(3 / 2.8, 12);
    const bare = fertilizer({ id: "l", form: "liquid", analysis: "28-0-0" });
    expect(complaints(() => nutrientCost({ product: bare, price: perGallon, nutrient: "N" }))).toEqual([
      "missing product.density",
    ]);
  });

  test("per area is the same by weight and by volume", () => {
    const product = liquid("28-0-0", 10);
    const byVolume = costPerArea({
      product,
      rate: quantity(20, "gal/acre", "product:l"),
      price: usd(3).per(quantity(1, "gal")),
    });
    const byWeight = costPerArea({
      product,
      rate: quantity(200, "lb/acre", "product:l"),
      price: usd(600).per(quantity(1, "US ton")),
    });
    expect(byVolume.in("money:USD/acre")).toBeCloseTo(60, 9);
    expect(byWeight.in("money:USD/acre")).toBeCloseTo(60, 9);
  });

  test("per area needs a density only where weight and volume meet", () => {
    const bare = fertilizer({ id: "bare", form: "liquid", analysis: "28-0-0" });
    const [perGallon, perPound] = [usd(3).per(quantity(1, "gal")), usd(0.3).per(quantity(1, "lb"))];
    const [gallons, pounds] = [
      quantity(20, "gal/acre", "product:bare"),
      quantity(200, "lb/acre", "product:bare"),
    ];
    const cost = (rate: unknown, price: unknown) =>
      costPerArea({ product: bare, rate, price } as never).in("money:USD/acre" as never);
    expect(cost(gallons, perGallon)).toBeCloseTo(60, 12);
    expect(cost(pounds, perPound)).toBeCloseTo(60, 12);
    expect(complaints(() => cost(gallons, perPound))).toEqual(["missing product.density"]);
    expect(complaints(() => cost(pounds, perGallon))).toEqual(["missing product.density"]);
    const heavy = liquid("28-0-0", 10);
    const at = (rate: unknown, price: unknown) =>
      costPerArea({ product: heavy, rate, price } as never).in("money:USD/acre" as never);
    expect(at(quantity(20, "gal/acre", "product:l"), perPound)).toBeCloseTo(60, 10);
    expect(at(quantity(200, "lb/acre", "product:l"), perGallon)).toBeCloseTo(60, 10);
  });

  test("the cheapest source is the one with the cheapest nutrient, whatever its grade", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 80 }), positive), { minLength: 1, maxLength: 8 }),
        (offers) => {
          const sources = offers.map(([percent, price], i) => ({
            product: fertilizer({ id: `p${i}`, analysis: `${percent}-0-0` }),
            price: usd(price).per(quantity(1, "lb")),
          }));
          const { cheapest, sources: ranked } = cheapestSource({
            target: quantity(1, "lb/1000 ft2", "N"),
            sources,
          });
          const best = Math.min(...offers.map(([percent, price]) => price / percent));
          expect(cheapest.cost.in("money:USD/1000 ft2")).toBeCloseTo(best * 100, 7);
          expect(ranked.length).toBe(offers.length);
        },
      ),
    );
  });

  test("sources of one cost stay in the order given, in whatever unit each price is stated", () => {
    const target = quantity(0.7, "lb/1000 ft2", "N");
    for (let cents = 1; cents <= 500; cents++) {
      const byPound = usd(cents / 100).per(quantity(1, "lb"));
      const byTon = usd(cents * 20).per(quantity(1, "US ton"));
      for (const prices of [
        [byPound, byTon],
        [byTon, byPound],
      ] as const) {
        const sources = prices.map((price, i) => ({
          product: fertilizer({ id: `p${i}`, analysis: "21-0-0" }),
          price,
        }));
        const { sources: ranked } = cheapestSource({ target, sources });
        expect(ranked.map(({ product }) => product)).toEqual(["p0", "p1"]);
      }
    }
  });

  test("two products under one id are refused, one product from two sellers is not", () => {
    const target = quantity(1, "lb/1000 ft2", "N");
    const offer = (analysis: string, price: number) => ({
      product: fertilizer({ id: "p", analysis }),
      price: usd(price).per(quantity(1, "US ton")),
    });
    expect(
      complaints(() => cheapestSource({ target, sources: [offer("46-0-0", 400), offer("21-0-0", 300)] })),
    ).toEqual(["duplicate sources[1].product.id"]);
    const stored = { ...offer("46-0-0", 300) };
    const { N = 0, P2O5 = 0, K2O = 0 } = stored.product.analysis.percent;
    const reordered = { ...stored.product, analysis: { percent: { K2O, P2O5, N }, basis: "oxide" as const } };
    expect(
      cheapestSource({ target, sources: [offer("46-0-0", 460), { ...stored, product: reordered }] }).sources
        .length,
    ).toBe(2);
    const { cheapest } = cheapestSource({ target, sources: [offer("46-0-0", 460), offer("46-0-0", 400)] });
    // 1 / 0.46 lb at 0.20 USD.
    expect(cheapest.cost.in("money:USD/1000 ft2")).toBeCloseTo(0.2 / 0.46, 9);
  });

  test("two currencies never add, and a price is no weight", () => {
    const product = fertilizer({ id: "p", analysis: "46-0-0" });
    const target = quantity(1, "lb/1000 ft2", "N");
    const price = usd(1).per(quantity(1, "lb"));
    const euro = money(1, "EUR").per(quantity(1, "kg"));
    expect(
      complaints(() =>
        cheapestSource({
          target,
          sources: [
            { product, price },
            { product: fertilizer({ id: "q", analysis: "21-0-0" }), price: euro as never },
          ],
        }),
      ),
    ).toEqual(["unit/mismatch sources[1].price"]);
    const mixed = fertilizer({ id: "m", analysis: "18-46-0" });
    expect(
      complaints(() =>
        nutrientCost({
          product: mixed,
          price,
          nutrient: "N",
          worth: { P2O5: money(1, "EUR").per(quantity(1, "lb", "P2O5")) as never },
        }),
      ),
    ).toEqual(["unit/mismatch worth.P2O5"]);
    expect(complaints(() => nutrientCost({ product, price: usd(5) as never, nutrient: "N" }))).toEqual([
      "unit/mismatch price",
    ]);
    expect(complaints(() => nutrientCost({ product, price: 5 as never, nutrient: "N" }))).toEqual([
      "type price",
    ]);
    expect(
      complaints(() => nutrientCost({ product, price: usd(-5).per(quantity(1, "lb")), nutrient: "N" })),
    ).toEqual(["range price"]);
    expect(complaints(() => nutrientCost({ product, price, nutrient: "K2O" }))).toEqual([
      "infeasible product.analysis",
    ]);
  });

  test("others worth more than the price are a conflict", () => {
    expect(
      complaints(() =>
        nutrientCost({
          product: fertilizer({ id: "p", analysis: "18-46-0" }),
          price: usd(0.1).per(quantity(1, "lb")),
          nutrient: "P2O5",
          worth: { N: usd(1).per(quantity(1, "lb", "N")) },
        }),
      ),
    ).toEqual(["conflict worth"]);
  });

  test("a product that no fertilizer() made is refused by its path", () => {
    const price = usd(1).per(quantity(1, "lb"));
    const target = quantity(1, "lb/acre", "N");
    const none = undefined as never;
    expect(complaints(() => nutrientCost({ product: none, price, nutrient: "N" }))).toEqual([
      "missing product",
    ]);
    expect(complaints(() => cheapestSource({ target, sources: [none] }))).toEqual(["missing sources[0]"]);
    expect(complaints(() => costPerArea({ product: none, rate: none, price }))).toEqual([
      "missing product",
      "missing rate",
    ]);
    expect(complaints(() => liquidProductRate(target, none))).toEqual(["missing product"]);
    expect(complaints(() => nutrientPerVolume({} as never, "N"))).toEqual(["type product"]);
  });

  test("tells all problems together, each with the path of the call", () => {
    const product = fertilizer({ id: "p", analysis: "18-46-0" });
    const price = usd(1).per(quantity(1, "lb"));
    const bare = fertilizer({ id: "bare", form: "liquid", analysis: "28-0-0" });
    const perGallon = usd(1).per(quantity(1, "gal"));
    const never = (input: unknown) => input as never;
    expect(complaints(() => nutrientCost(never({ product: null, price: 4, nutrient: "Z" })))).toEqual([
      "type product",
      "type nutrient",
      "type price",
    ]);
    // A worth that is no nutrient of an analysis would be left out in silence.
    const slow = { "N:slow": usd(1).per(quantity(1, "lb", "N:slow")), K20: price, N: price };
    expect(complaints(() => nutrientCost(never({ product, price, nutrient: "P2O5", worth: slow })))).toEqual([
      "type worth.N:slow",
      "type worth.K20",
    ]);
    expect(complaints(() => nutrientCost(never({ product, price, nutrient: "P2O5", worth: 5 })))).toEqual([
      "type worth",
    ]);
    expect(
      complaints(() =>
        costPerArea(never({ product, rate: quantity(-1, "lb/acre", "product:p"), price: quantity(1, "lb") })),
      ),
    ).toEqual(["range rate", "unit/mismatch price"]);
    const target = quantity(-1, "lb/acre", "N");
    const sources = [null, { product, price: 3 }, { product: bare, price: perGallon }];
    expect(complaints(() => cheapestSource(never({ target, sources })))).toEqual([
      "range target",
      "type sources[0]",
      "type sources[1].price",
      "missing sources[2].product.density",
    ]);
    expect(complaints(() => cheapestSource(never({ target, sources: [] })))).toEqual([
      "range target",
      "missing sources",
    ]);
  });

  test("prices and rates come back from JSON", () => {
    const product = fertilizer({ id: "p", analysis: "46-0-0" });
    const price = JSON.parse(JSON.stringify(usd(0.46).per(quantity(1, "lb"))));
    expect(nutrientCost({ product, price, nutrient: "N" }).in("money:USD/lb" as never)).toBeCloseTo(1, 12);
    const rate = JSON.parse(JSON.stringify(productRate(quantity(46, "lb/acre", "N"), product)));
    expect(costPerArea({ product, rate, price }).in("money:USD/acre" as never)).toBeCloseTo(46, 9);
  });
});
