import { describe, expect, test } from "vitest";
import {
  analysisOfMix,
  fertilizer,
  highestProductRate,
  highestProductRatesKgPerHa,
  liquidFertilizer,
  type Nutrient,
  nutrientsSupplied,
  nutrientsSuppliedKg,
  percentOf,
  productRates,
  ratesBySource,
  slowShareRates,
} from "../../../src/nutrient/index.js";
import { Quantity, quantity } from "../../../src/quantity/index.js";

// What rates come to exactly at their limits, and of nutrients in their other forms. Figures are reckoned by hand.

const product = (id: string, analysis: string, slow?: number) =>
  fertilizer({
    id,
    analysis,
    ...(slow === undefined ? {} : { slowNitrogen: quantity(slow, "% w/w", "N:slow/product") }),
  });
const kg = <S extends Nutrient | "N:quick" | "N:slow">(value: number, of: S) =>
  new Quantity<"mass/area", S>(value, "kg/ha", of, "mass/area");

describe("rates that meet several targets at once", () => {
  test("credit each nutrient with what the other products bring of it", () => {
    // 20-5-10 and 10-10-10 at 20/3 lb each: the first brings 4/3 lb N and 1/3 lb P2O5, the second 2/3 of each.
    const { steps } = productRates({
      steps: [
        { target: quantity(2, "lb/1000 ft2", "N"), product: product("a", "20-5-10") },
        { target: quantity(1, "lb/1000 ft2", "P2O5"), product: product("b", "10-10-10") },
      ],
    });
    const found = Object.fromEntries(
      steps.map(({ product: id, credited, remaining }) => [id, [credited.value, remaining.value]]),
    );
    expect(found.a?.[0]).toBeCloseTo(2 / 3, 12);
    expect(found.a?.[1]).toBeCloseTo(4 / 3, 12);
    expect(found.b?.[0]).toBeCloseTo(1 / 3, 12);
    expect(found.b?.[1]).toBeCloseTo(2 / 3, 12);
  });

  test("a product that is not needed goes down at no rate at all, and no noise of rounding is left of it", () => {
    for (const made of [0.7, 1.1, 2.3, 3.7, 5.3, 7.9, 13.1, 29.7]) {
      // All of it from 20-5-10 and 5-2-30 at one rate; 10-10-10 is one product too many.
      const sum = (a: number, b: number): number => (a * made + b * made) / 100;
      const found = productRates({
        steps: [
          { target: kg(sum(20, 5), "N"), product: product("a", "20-5-10") },
          { target: kg(sum(5, 2), "P2O5"), product: product("none", "10-10-10") },
          { target: kg(sum(10, 30), "K2O"), product: product("b", "5-2-30") },
        ],
      });
      expect(found.method).toBe("exact");
      const rates = Object.fromEntries(found.steps.map(({ product: id, rate }) => [id, rate.value]));
      expect(rates.none).toBe(0);
      expect(rates.a).toBeCloseTo(made, 9);
      expect(rates.b).toBeCloseTo(made, 9);
    }
  });

  test("two products of one proportion meet no two targets of another", () => {
    const found = productRates({
      steps: [
        { target: kg(2, "N"), product: product("a", "20-10-0") },
        { target: kg(2, "P2O5"), product: product("b", "10-5-0") },
      ],
    });
    // Phosphate first: 2 * 100 / 5 = 40 kg, which bring 4 kg of nitrogen.
    expect(found.method).toBe("in turn");
    expect(found.steps.map(({ product: id, rate }) => [id, rate.value])).toEqual([
      ["b", 40],
      ["a", 0],
    ]);
    expect(found.balance.map(({ over }) => over.value)).toEqual([2, 0]);
  });

  test("nor where their percents have no end as numbers", () => {
    const steps = (a: string, b: string) => [
      { target: kg(2, "N"), product: product("a", a) },
      { target: kg(1.7, "P2O5"), product: product("b", b) },
    ];
    for (const [a, b] of [
      ["0.3-0.1-0", "0.9-0.3-0"],
      ["6.9-2.3-0", "2.1-0.7-0"],
      ["12.3-4.1-0", "3.3-1.1-0"],
    ] as const)
      expect(productRates({ steps: steps(a, b) }).method).toBe("in turn");
  });
});

describe("the order by hand", () => {
  const order = "phosphorus, potassium, nitrogen";
  const sources = {
    N: product("urea", "46-0-0"),
    S: product("sulfur", "0-0-0-90S"),
    K: product("potash", "0-0-60"),
    P: product("phosphate", "0-46-0"),
    K2O: product("potash", "0-0-60"),
    P2O5: product("phosphate", "0-46-0"),
  } as const;
  test.each([
    [["N", "S", "K", "P"]],
    [["K", "N", "P", "S"]],
    [["N", "S", "K2O", "P2O5"]],
    [["S", "N", "K2O", "P2O5"]],
  ] as const)("phosphorus, potassium, others, nitrogen, in whatever form: %j", (given) => {
    const found = productRates({
      order,
      steps: given.map((of) => ({
        target: kg<Nutrient>(10, of) as ReturnType<typeof kg<"N">>,
        product: sources[of],
      })),
    });
    expect(found.steps.map(({ nutrient }) => nutrient[0])).toEqual(["P", "K", "S", "N"]);
  });

  test("an oxide is credited from the element that a label states", () => {
    // 100 kg of 20-0-0 with 16.03 % S bring 16.03 kg S = 16.03 * 80.057 / 32.06 = 40.03 kg SO3.
    const found = productRates({
      order: "as given",
      steps: [
        { target: kg(20, "N"), product: product("sulfate", "20-0-0-16.03S") },
        { target: kg(50, "SO3"), product: product("gypsum", "0-0-0-40SO3") },
      ],
    });
    expect(found.steps[1]?.credited.value).toBeCloseTo((16.03 * 80.057) / 32.06, 9);
  });
});

describe("the analysis of a mix", () => {
  const mixed = (...labels: readonly string[]) =>
    analysisOfMix({
      parts: labels.map((label, i) => ({
        product: product(`p${i}`, label),
        amount: quantity(50, "kg"),
      })),
    }).percent;

  test("keeps an oxide, or an ion, that stands alone", () => {
    expect(mixed("0-0-0-14CaO", "10-0-0")).toEqual({ N: 5, P2O5: 0, K2O: 0, CaO: 7 });
    expect(mixed("0-0-0-6MgO", "10-0-0")).toEqual({ N: 5, P2O5: 0, K2O: 0, MgO: 3 });
  });

  // The molecular weight over that of the element: 40.304 / 24.305, 80.057 / 32.06, 96.056 / 32.06, 60.083 / 28.085.
  test.each([
    ["Mg", "MgO", 40.304 / 24.305],
    ["S", "SO3", 80.057 / 32.06],
    ["S", "SO4", 96.056 / 32.06],
    ["Si", "SiO2", 60.083 / 28.085],
  ] as const)("%s of one label and %s of another are one nutrient, told once", (element, other, factor) => {
    for (const labels of [
      [`10-0-0-5${element}`, `10-0-0-8${other}`],
      [`10-0-0-8${other}`, `10-0-0-5${element}`],
    ]) {
      const percent = mixed(...labels);
      expect(Object.keys(percent)).toEqual(["N", "P2O5", "K2O", element]);
      expect(percent.N).toBe(10);
      expect(percent[element]).toBeCloseTo((5 + 8 / factor) / 2, 9);
    }
  });
});

describe("under caps", () => {
  test("a cap on quick or slow nitrogen does not bound a product without nitrogen", () => {
    const { caps, rate } = highestProductRate({
      product: product("potash", "0-0-50"),
      caps: [{ limit: kg(35, "N:quick") }, { limit: kg(35, "N:slow") }, { limit: kg(40, "K2O") }],
    });
    expect(caps.map(({ standing }) => standing)).toEqual(["not bounded", "not bounded", "binds"]);
    expect(rate?.in("kg/ha")).toBe(80);
  });

  test("a cap below a slow share is not for a product of that share, but for noise", () => {
    const of = (slow: number) =>
      highestProductRate({
        product: product("feed", "20-0-0", slow),
        caps: [{ limit: kg(40, "N"), belowSlowShare: quantity(35, "% w/w", "N:slow/N") }],
      }).caps[0]?.standing;
    // 7 of 20 are 35 %.
    expect([6.9, 7 - 1e-10, 7, 7.1].map(of)).toEqual([
      "binds",
      "not for this product",
      "not for this product",
      "not for this product",
    ]);
  });

  test("an area of nothing is supplied with nothing, and the first of two equal caps bounds", () => {
    const [none, rate] = [Float64Array.of(0), Float64Array.of(200)];
    expect([...nutrientsSuppliedKg({ rateKgPerHa: rate, areaM2: none, percent: 20 })]).toEqual([0]);
    const cap = { limitKgPerHa: Float64Array.of(40), percent: 20 };
    expect([...highestProductRatesKgPerHa([cap, cap, { ...cap, percent: 0 }])]).toEqual([200]);
  });
});

describe("a label by volume", () => {
  const jug = (slow: Parameters<typeof liquidFertilizer>[0]["slowNitrogen"]) =>
    liquidFertilizer({
      id: "jug",
      perVolume: { N: quantity(3, "lb/gal", "N") },
      ...(slow ? { slowNitrogen: slow } : {}),
    });

  test("whose nitrogen is all slow, in whatever units, has no quick nitrogen left over", () => {
    for (const unit of ["g/L", "kg/m3", "oz/gal", "lb/qt", "% w/v"] as const) {
      const slow = quantity(
        quantity(3, "lb/gal", "N:slow").in(unit as never) * (1 - 1e-12),
        unit as "g/L",
        "N:slow",
      );
      const supplied = nutrientsSupplied(quantity(10, "gal", "product:jug"), jug(slow));
      expect(supplied["N:slow"]?.value).toBe(30);
      expect(supplied["N:quick"]?.value).toBe(0);
    }
    const most = nutrientsSupplied(
      quantity(10, "gal", "product:jug"),
      jug(quantity(3 * (1 - 1e-8), "lb/gal", "N:slow")),
    );
    expect(most["N:quick"]?.value).toBeCloseTo(3e-7, 12);
  });

  test("that states no nitrogen, or none of it, supplies no part of it", () => {
    const bare = liquidFertilizer({
      id: "jug",
      perVolume: { N: quantity(0, "lb/gal", "N"), K2O: quantity(2, "lb/gal", "K2O") },
    });
    const supplied = nutrientsSupplied(quantity(10, "gal", "product:jug"), bare);
    expect(Object.keys(supplied)).toEqual(["N", "K2O", "K"]);
    expect(supplied.N?.value).toBe(0);
    expect(supplied.K2O?.value).toBe(20);
  });
});

describe("shares at the limit", () => {
  const target = quantity(1, "lb/1000 ft2", "N");
  const share = (percent: number) => quantity(percent, "% w/w", "N:slow/N");
  const parts = (percent: number, first: string, slow: number, second: string, other: number) =>
    slowShareRates({
      target,
      slowShare: share(percent),
      products: [product("a", first, slow), product("b", second, other)],
    }).map(({ part }) => part.value);

  test("a wanted slow share that is one of the two but for noise takes that product alone", () => {
    // 4.4 of 8 are 55 %, 2.45 of 7 are 35 %: with an end as decimals, with none as numbers.
    expect(parts(55, "46-0-0", 0, "8-0-0", 4.4)).toEqual([0, 1]);
    expect(parts(35, "46-0-0", 0, "7-0-0", 2.45)).toEqual([0, 1]);
    expect(parts(55 * (1 - 1e-14), "46-0-0", 0, "8-0-0", 4.4)).toEqual([0, 1]);
    // Beyond either by a few parts in 10^10 is noise: 20 and 50 % here.
    expect(parts(20 - 1e-8, "20-0-0", 4, "20-0-0", 10)).toEqual([1, 0]);
    expect(parts(50 + 1e-8, "20-0-0", 4, "20-0-0", 10)).toEqual([0, 1]);
  });

  test("and one between takes both", () => {
    expect(parts(35, "20-0-0", 4, "20-0-0", 10)).toEqual([0.5, 0.5]);
  });

  test("shares of a target that add up but for noise are taken as they are", () => {
    const rates = ratesBySource({
      target,
      parts: [
        { product: product("a", "50-0-0"), share: quantity(33.3333333333, "%") },
        { product: product("b", "25-0-0"), share: quantity(66.6666666667, "%") },
      ],
    });
    expect(rates[0]?.rate.value).toBeCloseTo(2 / 3, 11);
    expect(rates[1]?.rate.value).toBeCloseTo(8 / 3, 11);
  });
});

test("a mass of phosphorus in a mix of elements is told as phosphate", () => {
  const element = fertilizer({ id: "e", analysis: "10-2-8", basis: "element" });
  const mix = analysisOfMix({ parts: [{ product: element, amount: quantity(1, "kg") }] });
  expect(mix.basis).toBe("oxide");
  expect(percentOf(mix, "P")).toBeCloseTo(2, 12);
  expect(percentOf(mix, "K")).toBeCloseTo(8, 12);
});
