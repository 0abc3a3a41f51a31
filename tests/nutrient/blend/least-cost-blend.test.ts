import fc from "fast-check";
import oracleModule from "javascript-lp-solver";
import { describe, expect, test } from "vitest";
import { leastCostBlend } from "../../../src/nutrient/blend/index.js";
import { fertilizer, percentOf } from "../../../src/nutrient/index.js";
import { money, quantity, RatewrightError } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";

// Its types describe another module format than the one that is loaded.
const oracle = oracleModule as unknown as {
  Solve(model: unknown): { readonly feasible: boolean; readonly result: number };
};
const perTon = (amount: number) => money(amount, "USD").per(quantity(1, "US ton"));
const materials = [
  { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460), salt: 74.4, acid: 84 },
  { product: fertilizer({ id: "sulfate", analysis: "21-0-0-24S" }), price: perTon(300), salt: 69, acid: 110 },
  {
    product: fertilizer({ id: "coated", analysis: "39-0-0", nitrogen: { percent: { urea: 4, coated: 35 } } }),
    price: perTon(900),
    salt: 27,
    acid: 71,
  },
  { product: fertilizer({ id: "dap", analysis: "18-46-0" }), price: perTon(620), salt: 29.2, acid: 70 },
  { product: fertilizer({ id: "muriate", analysis: "0-0-60" }), price: perTon(480), salt: 116.2, acid: 0 },
  { product: fertilizer({ id: "sop", analysis: "0-0-50-17S" }), price: perTon(700), salt: 42.6, acid: 0 },
  { product: fertilizer({ id: "lime", analysis: "0-0-0-36Ca" }), price: perTon(45), salt: 1, acid: -95 },
].map(({ salt, acid, ...rest }) => ({
  ...rest,
  saltIndex: { scale: "by weight", value: salt } as const,
  acidity: quantity(acid, "% w/w", "CaCO3 equivalent/product"),
}));
const fillerPrice = 40;

interface Wanted {
  readonly n: number;
  readonly p: number;
  readonly k: number;
  readonly slow: number;
  readonly salt: number;
  readonly acid: number;
}

const blendOf = (wanted: Wanted, change: Partial<Record<string, number>> = {}) => {
  const w = { ...wanted, ...change };
  return leastCostBlend({
    batch: quantity(2000, "lb"),
    materials,
    filler: perTon(fillerPrice),
    limits: {
      nutrients: [
        { least: quantity(w.n, "% w/w", "N/product") },
        { least: quantity(w.p, "% w/w", "P2O5/product") },
        { least: quantity(w.k, "% w/w", "K2O/product") },
      ],
      leastSlowShare: quantity(w.slow, "% w/w", "N:slow/N"),
      mostSaltIndex: { scale: "by weight", value: w.salt },
      mostAcidity: quantity(w.acid, "% w/w", "CaCO3 equivalent/product"),
    },
  });
};

/** The same problem for the other solver: what the cheapest ton costs, or nothing. */
const oracleCost = (w: Wanted): number | undefined => {
  const variables: Record<string, Record<string, number>> = {
    filler: { cost: fillerPrice, all: 1, n: 0, p: 0, k: 0, slow: 0, salt: 0, acid: 0 },
  };
  for (const { product, price, saltIndex, acidity } of materials) {
    const n = percentOf(product.analysis, "N");
    variables[product.id] = {
      cost: price.in("money:USD/US ton"),
      all: 1,
      n,
      p: percentOf(product.analysis, "P2O5"),
      k: percentOf(product.analysis, "K2O"),
      slow: (product.slowNitrogen?.in("% w/w") ?? 0) - (n * w.slow) / 100,
      salt: saltIndex.value,
      acid: acidity.in("% w/w"),
    };
  }
  const found = oracle.Solve({
    optimize: "cost",
    opType: "min",
    constraints: {
      all: { equal: 1 },
      n: { min: w.n },
      p: { min: w.p },
      k: { min: w.k },
      slow: { min: 0 },
      salt: { max: w.salt },
      acid: { max: w.acid },
    },
    variables,
  });
  return found.feasible ? found.result : undefined;
};

const usual: Wanted = { n: 20, p: 4, k: 10, slow: 30, salt: 45, acid: 30 };

describe("the cheapest blend", { timeout: 60_000 }, () => {
  test("costs what another solver says, and is missing where that finds none", async () => {
    const seen = { solved: 0, missed: 0 };
    await fc.assert(
      fc.asyncProperty(
        fc.record({
          n: fc.integer({ min: 0, max: 32 }),
          p: fc.integer({ min: 0, max: 15 }),
          k: fc.integer({ min: 0, max: 25 }),
          slow: fc.integer({ min: 0, max: 80 }),
          salt: fc.integer({ min: 15, max: 90 }),
          acid: fc.integer({ min: -10, max: 90 }),
        }),
        async (wanted) => {
          const expected = oracleCost(wanted);
          const found = await blendOf(wanted).catch((error: unknown) => error);
          seen[expected === undefined ? "missed" : "solved"]++;
          if (expected === undefined) {
            expect(found).toBeInstanceOf(RatewrightError);
            expect((found as RatewrightError).code).toBe("infeasible");
          } else {
            const { cost } = found as Awaited<ReturnType<typeof blendOf>>;
            // The other solver rounds to about 1e-8 of its figures.
            expect(Math.abs(cost.in("money:USD") - expected)).toBeLessThan(1e-5 * Math.max(1, expected));
          }
        },
      ),
      runs(100),
    );
    expect(Math.min(seen.solved, seen.missed)).toBeGreaterThan(10);
  });

  test("keeps to its limits, adds up to the batch, and its parts add up to its nutrients and its cost", async () => {
    const blend = await blendOf(usual);
    const weights = blend.parts.map(({ amount }) => amount.in("lb"));
    const total = weights.reduce((sum, weight) => sum + weight, blend.filler.in("lb"));
    expect(total).toBeCloseTo(2000, 6);
    expect(Math.min(...weights)).toBeGreaterThanOrEqual(0);
    const nitrogen = weights.reduce(
      (sum, weight, i) =>
        sum + (weight * percentOf((materials[i] as (typeof materials)[0]).product.analysis, "N")) / 100,
      0,
    );
    expect(blend.supplied.N?.in("lb")).toBeCloseTo(nitrogen, 9);
    expect(nitrogen).toBeGreaterThanOrEqual(400 - 1e-6);
    const slow = blend.supplied["N:slow"]?.in("lb") ?? 0;
    expect((slow * 100) / nitrogen).toBeGreaterThanOrEqual(30 - 1e-6);
    // Salt index and acidity by weight, beside the filler that counts nothing.
    const mean = (of: (one: (typeof materials)[0]) => number): number =>
      weights.reduce(
        (sum, weight, i) => sum + (weight * of(materials[i] as (typeof materials)[0])) / 2000,
        0,
      );
    const at = (id: string) => blend.limits.find((limit) => limit.id === id)?.at;
    expect(at("salt index most")?.in("1" as never)).toBeCloseTo(
      mean((one) => one.saltIndex.value),
      7,
    );
    expect(at("acidity most")?.in("% w/w" as never)).toBeCloseTo(
      mean((one) => one.acidity.in("% w/w")),
      7,
    );
    const costs = blend.parts.reduce((sum, { cost }) => sum + cost.in("money:USD"), 0);
    expect(blend.cost.in("money:USD")).toBeCloseTo(costs + blend.filler.in("US ton") * fillerPrice, 9);
    for (const { id, at, bound } of blend.limits) {
      const over = (at?.value ?? Number.NaN) - bound.value;
      expect(id.endsWith("least") ? over : -over, id).toBeGreaterThan(-1e-6);
    }
  });

  test("a shadow price is what relaxing its limit alone saves", async () => {
    const base = await blendOf(usual);
    const keys = { "N least": "n", "P2O5 least": "p", "K2O least": "k", "slow share least": "slow" } as const;
    let priced = 0;
    for (const limit of base.limits) {
      const key = { ...keys, "salt index most": "salt", "acidity most": "acid" }[limit.id] as keyof Wanted;
      const step = 0.01;
      const relaxed = await blendOf(usual, {
        [key]: usual[key] + (limit.id.endsWith("least") ? -step : step),
      });
      const saved = (base.cost.in("money:USD") - relaxed.cost.in("money:USD")) / step;
      // The slow share is no straight line in its bound; a step of 0.01 leaves a few parts in ten thousand.
      expect(limit.shadowPrice.in("money:USD"), limit.id).toBeCloseTo(saved, key === "slow" ? 1 : 4);
      if (limit.binds && saved > 0) priced++;
      if (!limit.binds) expect(limit.shadowPrice.value).toBe(0);
    }
    expect(priced).toBeGreaterThanOrEqual(3);
  });

  test("a limit that is stated twice is worth nothing alone, and says that its price was found in steps", async () => {
    const twice = await leastCostBlend({
      batch: quantity(100, "kg"),
      materials: [{ product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460) }],
      filler: perTon(40),
      limits: {
        nutrients: [
          { least: quantity(23, "% w/w", "N/product") },
          { least: quantity(23, "% w/w", "N/product") },
        ],
      },
    });
    for (const { shadowPrice } of twice.limits) expect(shadowPrice.value).toBeCloseTo(0, 6);
    expect(twice.limits.some(({ priced }) => priced === "stepwise")).toBe(true);
  });

  test("a most binds with a price too, and a grade that is met exactly with one on the side that costs", async () => {
    const exact = await leastCostBlend({
      batch: quantity(2000, "lb"),
      materials: [
        { product: fertilizer({ id: "dap", analysis: "18-46-0" }), price: perTon(620) },
        { product: fertilizer({ id: "sulfate", analysis: "21-0-0" }), price: perTon(300) },
      ],
      filler: perTon(40),
      limits: {
        nutrients: [
          { least: quantity(15, "% w/w", "N/product") },
          { least: quantity(5, "% w/w", "P2O5/product"), most: quantity(5, "% w/w", "P2O5/product") },
        ],
      },
    });
    const prices = Object.fromEntries(
      exact.limits.map(({ id, shadowPrice }) => [id, shadowPrice.in("money:USD")]),
    );
    // 1 % of nitrogen is 20 lb: 95.24 lb of sulfate in place of filler, at 0.13 USD.
    expect(prices["N least"]).toBeCloseTo((20 / 0.21) * 0.13, 9);
    // 1 % of phosphate less: 43.48 lb of DAP at 0.29 out, its 7.826 lb of nitrogen from sulfate in.
    expect(prices["P2O5 least"]).toBeCloseTo((20 / 0.46) * 0.29 - ((20 / 0.46) * 0.18 * 0.13) / 0.21, 9);
    expect(prices["P2O5 most"]).toBe(0);
    const capped = await leastCostBlend({
      batch: quantity(2000, "lb"),
      materials: [
        { product: fertilizer({ id: "sulfate", analysis: "21-0-0-24S" }), price: perTon(300) },
        { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(900) },
      ],
      filler: perTon(40),
      limits: {
        nutrients: [
          { least: quantity(15, "% w/w", "N/product") },
          { most: quantity(6, "% w/w", "S/product") },
        ],
      },
    });
    const sulfur = capped.limits.find(({ id }) => id === "S most");
    // 1 % of sulfur more: 83.3 lb of sulfate in at 0.13, its 17.5 lb of nitrogen spare urea at 0.43.
    expect(sulfur?.shadowPrice.in("money:USD")).toBeCloseTo((20 / 0.24) * ((0.21 * 0.43) / 0.46 - 0.13), 9);
    // Relaxed upwards by a little it saves as much for each step: the solver's price is confirmed.
    expect(sulfur?.priced).toBe("exact");
    expect(capped.limits.find(({ id }) => id === "N least")?.priced).toBe("exact");
  });

  test("stock and least amounts bind with a price for each pound", async () => {
    const scarce = await leastCostBlend({
      batch: quantity(2000, "lb"),
      materials: [
        {
          product: fertilizer({ id: "urea", analysis: "46-0-0" }),
          price: perTon(460),
          most: quantity(500, "lb"),
        },
        { product: fertilizer({ id: "sulfate", analysis: "21-0-0" }), price: perTon(300) },
      ],
      filler: perTon(40),
      limits: { nutrients: [{ least: quantity(20, "% w/w", "N/product") }] },
    });
    const stock = scarce.limits.find(({ id }) => id === "urea most");
    expect(stock?.binds).toBe(true);
    // A pound of urea more (0.21 USD more than filler) spares 46/21 lb of sulfate at 0.13 USD more than filler.
    expect(stock?.shadowPrice.in("money:USD")).toBeCloseTo((0.13 * 46) / 21 - 0.21, 9);
    expect(stock?.priced).toBe("exact");
    expect(scarce.parts.map(({ product }) => product)).toEqual(["urea", "sulfate"]);
  });

  test("a material that stays out says at what price it would come in", async () => {
    const sulfateAt = (price: number) =>
      leastCostBlend({
        batch: quantity(2000, "lb"),
        materials: [
          { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460) },
          { product: fertilizer({ id: "sulfate", analysis: "21-0-0" }), price: perTon(price) },
        ],
        filler: perTon(40),
        limits: { nutrients: [{ least: quantity(20, "% w/w", "N/product") }] },
      });
    const edge = (await sulfateAt(300)).parts[1]?.entersBelow?.in("money:USD/US ton") as number;
    expect(edge).toBeCloseTo(40 + (420 * 21) / 46, 6);
    expect((await sulfateAt(edge - 0.1)).parts[1]?.amount.value).toBeGreaterThan(100);
    expect((await sulfateAt(edge + 0.1)).parts[1]?.amount.value).toBe(0);
  });

  test("a material that the limits keep out is promised no price, also where several limits meet", async () => {
    // 18 % N and 46 % phosphate in all of the batch: only the diammonium phosphate itself does it.
    const dapOnly = (urea: number, triple: number) =>
      leastCostBlend({
        batch: quantity(2000, "lb"),
        materials: [
          { product: fertilizer({ id: "dap", analysis: "18-46-0" }), price: perTon(620) },
          { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(urea) },
          { product: fertilizer({ id: "triple", analysis: "0-46-0" }), price: perTon(triple) },
        ],
        filler: perTon(40),
        limits: {
          nutrients: [
            { least: quantity(18, "% w/w", "N/product") },
            { least: quantity(46, "% w/w", "P2O5/product") },
          ],
        },
      });
    for (const [urea, triple] of [
      [460, 500],
      [0, 0],
    ] as const) {
      const { parts } = await dapOnly(urea, triple);
      expect(parts.map(({ amount }) => amount.in("lb"))).toEqual([2000, 0, 0]);
      expect(parts.map(({ entersBelow }) => entersBelow)).toEqual([undefined, undefined, undefined]);
    }
  });

  test("the price at which a material comes in is right on both sides, whatever the limits", async () => {
    const at = (prices: readonly number[], limit: readonly number[]) => {
      const [n = 0, p = 0, k = 0] = limit;
      return leastCostBlend({
        batch: quantity(1, "US ton"),
        materials: materials.map((one, i) => ({ ...one, price: perTon(prices[i] as number) })),
        filler: perTon(fillerPrice),
        limits: {
          nutrients: [
            { least: quantity(n, "% w/w", "N/product") },
            { least: quantity(p, "% w/w", "P2O5/product") },
            { least: quantity(k, "% w/w", "K2O/product") },
          ],
        },
      });
    };
    const usd = materials.map(({ price }) => price.in("money:USD/US ton"));
    let [tried, kept] = [0, 0];
    // Among these 18-46-0 met exactly, a corner where several limits meet.
    for (const limit of [
      [20, 4, 10],
      [18, 46, 0],
      [9, 23, 0],
      [0, 0, 30],
      [27, 0, 20],
      [0, 0, 0],
    ]) {
      const { parts, cost } = await at(usd, limit);
      for (const [i, { amount, entersBelow }] of parts.entries()) {
        if (amount.value > 0) continue;
        const edge = entersBelow?.in("money:USD/US ton");
        const tryAt = async (price: number) =>
          at(
            usd.map((one, k) => (k === i ? price : one)),
            limit,
          );
        if (edge === undefined) {
          expect((await tryAt(0)).cost.value).toBeCloseTo(cost.value, 6);
          kept++;
          continue;
        }
        expect((await tryAt(edge - 0.5)).cost.value).toBeLessThan(cost.value);
        expect((await tryAt(edge + 0.5)).cost.value).toBeCloseTo(cost.value, 6);
        tried++;
      }
    }
    expect([tried > 10, kept > 2]).toEqual([true, true]);
  });

  test("stock beyond the batch does not bind, and stock that is used up does", async () => {
    const dap = { product: fertilizer({ id: "dap", analysis: "18-46-0" }), price: perTon(620) };
    const limits = { nutrients: [{ least: quantity(10, "% w/w", "N/product") }] };
    const of = async (most: number) => {
      const { limits: standings } = await leastCostBlend(
        JSON.parse(
          JSON.stringify({
            batch: quantity(100, "lb"),
            materials: [{ ...dap, most: quantity(most, "lb") }],
            limits,
          }),
        ),
      );
      return standings.find(({ id }) => id === "dap most");
    };
    expect(await of(150)).toMatchObject({ binds: false });
    expect((await of(150))?.bound.in("lb" as never)).toBe(150);
    expect(await of(100)).toMatchObject({ binds: true });
  });

  test("a batch without nitrogen has no slow share", async () => {
    const { limits } = await leastCostBlend({
      batch: quantity(100, "lb"),
      materials: [{ product: fertilizer({ id: "muriate", analysis: "0-0-60" }), price: perTon(480) }],
      filler: perTon(40),
      limits: {
        nutrients: [{ least: quantity(20, "% w/w", "K2O/product") }],
        leastSlowShare: quantity(30, "% w/w", "N:slow/N"),
      },
    });
    const slow = limits.find(({ id }) => id === "slow share least");
    expect([slow?.at, slow?.binds, slow?.shadowPrice.value]).toEqual([undefined, false, 0]);
  });

  test("says which limit is missed, and by how much", async () => {
    const error = await leastCostBlend({
      batch: quantity(2000, "lb"),
      materials: [{ product: fertilizer({ id: "sulfate", analysis: "21-0-0" }), price: perTon(300) }],
      filler: perTon(40),
      limits: { nutrients: [{ least: quantity(30, "% w/w", "N/product") }] },
    }).catch((e: unknown) => e as RatewrightError);
    expect(error).toMatchObject({ code: "infeasible", path: "limits.nutrients[0].least" });
    expect((error as RatewrightError).got).toMatch(/^21 % w\/w N\/product .* 9 too little$/);
  });

  test("says of every kind of limit by how much the nearest batch misses it", async () => {
    const miss = async (limits: object): Promise<readonly [string, string, string]> => {
      const error = (await leastCostBlend({
        batch: quantity(2000, "lb"),
        // Nothing but this one material, so that the batch is known: 21 % N, salt index 69, acidity 110 %.
        materials: materials.filter(({ product }) => product.id === "sulfate"),
        limits,
      } as never).catch((e: unknown) => e)) as RatewrightError;
      return [error.path, error.got, error.expected];
    };
    expect(await miss({ nutrients: [{ most: quantity(20, "% w/w", "N/product") }] })).toEqual([
      "limits.nutrients[0].most",
      "21 % w/w N/product in the batch that comes nearest, 1 too much",
      "at most 20 % w/w N/product",
    ]);
    expect(await miss({ mostSaltIndex: { scale: "by weight", value: 60 } })).toEqual([
      "limits.mostSaltIndex",
      "69 salt index by weight in the batch that comes nearest, 9 too much",
      "at most 60 salt index by weight",
    ]);
    const acidity = (value: number) => quantity(value, "% w/w", "CaCO3 equivalent/product");
    expect((await miss({ mostAcidity: acidity(100) }))[1]).toMatch(/^110 .* 10 too much$/);
    expect((await miss({ leastAcidity: acidity(120) }))[1]).toMatch(/^110 .* 10 too little$/);
    // A third of 21 % is 7 % of the batch.
    expect((await miss({ leastSlowShare: quantity(100 / 3, "% w/w", "N:slow/N") }))[1]).toBe(
      "7 % of the batch too little in slow nitrogen",
    );
  });

  test("says what the batch has of a slow share that does not bind", async () => {
    const { limits } = await leastCostBlend({
      batch: quantity(100, "lb"),
      materials: materials.filter(({ product }) => product.id === "coated"),
      filler: perTon(fillerPrice),
      limits: {
        nutrients: [{ least: quantity(10, "% w/w", "N/product") }],
        leastSlowShare: quantity(30, "% w/w", "N:slow/N"),
      },
    });
    const slow = limits.find(({ id }) => id === "slow share least");
    expect([slow?.at?.value, slow?.binds]).toEqual([expect.closeTo((35 * 100) / 39, 6), false]);
  });

  test("refuses least amounts that do not fit into the batch", async () => {
    const [one, other] = materials.slice(0, 2).map((each) => ({ ...each, least: quantity(60, "lb") }));
    const error = (await leastCostBlend({
      batch: quantity(100, "lb"),
      materials: [one, other],
      limits: { nutrients: [{ least: quantity(1, "% w/w", "N/product") }] },
    } as never).catch((e: unknown) => e)) as RatewrightError;
    expect([error.code, error.path, error.got]).toEqual(["infeasible", "materials", "120 lb"]);
  });

  test("is the same in other units and scales with the batch", async () => {
    const pounds = await blendOf(usual);
    const kilograms = await leastCostBlend({
      batch: quantity(2, "t"),
      materials: materials.map((one) => ({
        ...one,
        price: money(one.price.in("money:USD/kg"), "USD").per(quantity(1, "kg")),
      })),
      filler: perTon(fillerPrice),
      limits: {
        nutrients: [
          { least: quantity(usual.n, "% w/w", "N/product") },
          { least: quantity(usual.p, "% w/w", "P2O5/product") },
          { least: quantity(usual.k, "% w/w", "K2O/product") },
        ],
        leastSlowShare: quantity(usual.slow, "% w/w", "N:slow/N"),
        mostSaltIndex: { scale: "by weight", value: usual.salt },
        mostAcidity: quantity(usual.acid, "% w/w", "CaCO3 equivalent/product"),
      },
    });
    const factor = 2000 / 907.18474;
    expect(kilograms.cost.in("money:USD")).toBeCloseTo(pounds.cost.in("money:USD") * factor, 6);
  });
});
