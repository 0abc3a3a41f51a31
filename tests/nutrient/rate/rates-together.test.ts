import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  fertilizer,
  highestProductRate,
  highestProductRatesKgPerHa,
  nutrientsSupplied,
  nutrientsSuppliedKg,
  percentOf,
  productRate,
  productRates,
  productRatesKgPerHa,
  ratesBySource,
  remainingNitrogen,
  slowShareNeeded,
  slowShareRates,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const product = (id: string, grade: string, slow?: number) =>
  fertilizer({
    id,
    analysis: grade,
    ...(slow === undefined ? {} : { slowNitrogen: quantity(slow, "% w/w", "N:slow/product") }),
  });
const figure = fc.integer({ min: 1, max: 300 }).map((n) => n / 10);

describe("rates for several nutrients", () => {
  test("supplied sums what products state in other forms: calcium as Ca and as CaO", () => {
    const { supplied } = productRates({
      steps: [
        { target: quantity(1, "kg/ha", "Fe"), product: product("iron", "0-0-0-1Fe-10Ca") },
        { target: quantity(20, "kg/ha", "N"), product: product("nitrate", "20-0-0-14CaO") },
      ],
    });
    // 100 kg/ha of each: 10 kg Ca and 14 kg CaO; Ca is 40.078 / 56.077 of CaO.
    expect(supplied.Ca?.in("kg/ha")).toBeCloseTo(10 + (14 * 40.078) / 56.077, 9);
    expect(supplied.CaO?.in("kg/ha")).toBeCloseTo(14 + (10 * 56.077) / 40.078, 9);
  });

  const steps = (n: number, p: number, k: number, potash = "0-0-50") => [
    { target: quantity(n, "kg/ha", "N"), product: product("urea", "46-0-0") },
    { target: quantity(k, "kg/ha", "K2O"), product: product("potash", potash) },
    { target: quantity(p, "kg/ha", "P2O5"), product: product("dap", "18-46-0") },
  ];

  test("meet every target, never fall below zero, and supply no more than they say", () => {
    fc.assert(
      fc.property(
        figure,
        figure,
        figure,
        fc.constantFrom("0-0-50", "13-0-44", "5-10-20"),
        (n, p, k, potash) => {
          const found = productRates({ steps: steps(n, p, k, potash) });
          expect(found.steps.map(({ nutrient }) => nutrient)).toEqual(["P2O5", "K2O", "N"]);
          for (const { rate } of found.steps) expect(rate.value).toBeGreaterThanOrEqual(0);
          for (const { target, supplied, over } of found.balance) {
            expect(supplied.value).toBeGreaterThanOrEqual(target.value * (1 - 1e-9));
            expect(supplied.value - over.value).toBeLessThanOrEqual(target.value * (1 + 2e-9));
          }
          expect(found.findings.length).toBe(found.balance.filter(({ over }) => over.value > 0).length);
          // What is supplied in all is what each product supplies by itself.
          const nitrogen = found.steps.reduce((sum, { rate, product: id }) => {
            const grade = { urea: 46, potash: percentOf(product("x", potash).analysis, "N"), dap: 18 }[
              id
            ] as number;
            return sum + (rate.in("kg/ha") * grade) / 100;
          }, 0);
          expect(found.supplied.N?.in("kg/ha")).toBeCloseTo(nitrogen, 8);
        },
      ),
    );
  });

  test("are exact where products share nutrients and rates of zero or more meet every target", () => {
    // 10-10-10 and 20-5-10 at 20/3 lb each: 2/3 + 4/3 lb N, 2/3 + 1/3 lb P2O5.
    const pair = [
      { target: quantity(2, "lb/1000 ft2", "N"), product: product("a", "20-5-10") },
      { target: quantity(1, "lb/1000 ft2", "P2O5"), product: product("b", "10-10-10") },
    ];
    const found = productRates({ steps: pair });
    expect(found.method).toBe("exact");
    for (const { rate } of found.steps) expect(rate.in("lb/1000 ft2")).toBeCloseTo(20 / 3, 12);
    expect(found.findings).toEqual([]);
    const hand = productRates({ steps: pair, order: "phosphorus, potassium, nitrogen" });
    expect(hand.method).toBe("in turn");
    expect(hand.steps.map(({ rate }) => rate.in("lb/1000 ft2"))).toEqual([10, 5]);
    expect(hand.findings).toMatchObject([{ code: "nutrient/over-supplied", params: { nutrient: "P2O5" } }]);
  });

  test("are exact for whatever rates the targets were made of", () => {
    const grades = ["20-5-10", "10-10-10", "5-2-30"] as const;
    const percents = [
      [20, 5, 10],
      [10, 10, 10],
      [5, 2, 30],
    ];
    fc.assert(
      fc.property(figure, figure, figure, (...made) => {
        const sum = (nutrient: number) =>
          percents.reduce((all, row, j) => all + ((row[nutrient] as number) * (made[j] as number)) / 100, 0);
        const found = productRates({
          steps: [
            { target: quantity(sum(0), "kg/ha", "N"), product: product("p0", grades[0]) },
            { target: quantity(sum(1), "kg/ha", "P2O5"), product: product("p1", grades[1]) },
            { target: quantity(sum(2), "kg/ha", "K2O"), product: product("p2", grades[2]) },
          ],
        });
        expect(found.method).toBe("exact");
        for (const { product: id, rate } of found.steps) {
          expect(rate.value).toBeCloseTo(made[Number(id.slice(1))] as number, 7);
        }
        for (const { target, supplied } of found.balance) expect(supplied.value).toBeCloseTo(target.value, 9);
      }),
    );
  });

  test("fall back on the trade's order where an exact answer would need less than nothing", () => {
    const found = productRates({ steps: steps(5, 46, 10) });
    expect(found.method).toBe("in turn");
    for (const { rate } of found.steps) expect(rate.value).toBeGreaterThanOrEqual(0);
  });

  test("scale with the targets", () => {
    const once = productRates({ steps: steps(100, 20, 30) }).steps;
    const thrice = productRates({ steps: steps(300, 60, 90) }).steps;
    once.forEach(({ rate }, i) => {
      expect(thrice[i]?.rate.in("kg/ha")).toBeCloseTo(3 * rate.in("kg/ha"), 9);
    });
  });

  test("report nitrogen over its target where phosphorus brings too much, with nothing of the last source", () => {
    const found = productRates({ steps: steps(5, 46, 10) });
    expect(found.steps[2]?.rate.value).toBe(0);
    expect(found.steps[2]?.remaining.value).toBe(0);
    expect(found.balance.find(({ nutrient }) => nutrient === "N")?.over.in("kg/ha")).toBeCloseTo(13, 9);
    expect(found.findings).toMatchObject([{ code: "nutrient/over-supplied", params: { nutrient: "N" } }]);
  });

  test("credit phosphorus in whichever form it is targeted", () => {
    const both = productRates({
      order: "as given",
      steps: [
        { target: quantity(46, "kg/ha", "N"), product: product("mix", "18-46-0") },
        { target: quantity(10, "kg/ha", "P"), product: product("tsp", "0-46-0") },
      ],
    });
    // 46 kg N bring 117.6 kg P2O5, 51.3 kg P: more than 10.
    expect(both.steps[1]?.rate.value).toBe(0);
    expect(both.steps[1]?.credited.in("kg/ha")).toBeCloseTo(117.5556 * 0.43643, 2);
  });

  test("mix units of the targets", () => {
    const found = productRates({
      steps: [
        { target: quantity(1, "lb/1000 ft2", "N"), product: product("urea", "46-0-0") },
        { target: quantity(20, "kg/ha", "P2O5"), product: product("dap", "18-46-0") },
      ],
    });
    expect(found.supplied.N?.in("lb/1000 ft2")).toBeCloseTo(1, 12);
  });

  test("refuse, with the path of every problem", () => {
    expect(
      complaints(() =>
        productRates({
          steps: [
            { target: quantity(-1, "kg/ha", "N"), product: product("a", "46-0-0") },
            { target: quantity(5, "kg/ha", "P2O5"), product: product("b", "0-0-50") },
            { target: quantity(5, "kg/ha", "P"), product: product("c", "0-20-0") },
            { target: quantity(5, "kg/ha", "N:slow") as never, product: product("d", "0-20-0") },
            { target: quantity(5, "kg/ha", "S"), product: undefined as never },
          ],
        }),
      ),
    ).toEqual([
      "range steps[0].target",
      "infeasible steps[1].product.analysis",
      "duplicate steps[2].target",
      "substance/mismatch steps[3].target",
      "missing steps[4].product",
    ]);
    expect(complaints(() => productRates({ steps: [] }))).toEqual(["missing steps"]);
    expect(complaints(() => productRates({ steps: steps(1, 1, 1), order: "any" as never }))).toEqual([
      "type order",
    ]);
  });
});

describe("the highest rate under caps", () => {
  const capsOf = (total: number, soluble: number, phosphate: number) => [
    { id: "total", limit: quantity(total, "lb/1000 ft2", "N") },
    { id: "soluble", limit: quantity(soluble, "lb/1000 ft2", "N:quick") },
    { id: "phosphate", limit: quantity(phosphate, "lb/1000 ft2", "P2O5") },
  ];
  const cap = fc.integer({ min: 1, max: 300 }).map((n) => n / 100);

  test("keeps to every cap and reaches one", () => {
    fc.assert(
      fc.property(
        cap,
        cap,
        cap,
        fc.integer({ min: 0, max: 24 }),
        fc.integer({ min: 0, max: 20 }),
        (t, s, p, slow, phosphate) => {
          const feed = product("feed", `24-${phosphate}-8`, slow);
          const caps = capsOf(t, s, p);
          const found = highestProductRate({ product: feed, caps });
          const at = { N: t, "N:quick": s, P2O5: p } as const;
          const used = Object.entries(at).map(
            ([of, limit]) => (found.supplied[of as "N"]?.in("lb/1000 ft2") ?? 0) / limit,
          );
          expect(Math.max(...used)).toBeCloseTo(1, 9);
          expect(found.binding.length).toBeGreaterThan(0);
          for (const { id, standing } of found.caps)
            expect(found.binding.includes(id)).toBe(standing === "binds");
        },
      ),
    );
  });

  test("never falls as a cap rises, and is the same whatever their order", () => {
    fc.assert(
      fc.property(cap, cap, cap, fc.integer({ min: 0, max: 2 }), cap, (t, s, p, which, more) => {
        const feed = product("feed", "24-6-8", 8);
        const rate = (caps: Parameters<typeof highestProductRate>[0]["caps"]): number =>
          highestProductRate({ product: feed, caps }).rate?.in("lb/1000 ft2") ?? Number.NaN;
        const raised = [t, s, p];
        raised[which] = (raised[which] as number) + more;
        const [t2, s2, p2] = raised as [number, number, number];
        expect(rate(capsOf(t2, s2, p2))).toBeGreaterThanOrEqual(rate(capsOf(t, s, p)));
        expect(rate([...capsOf(t, s, p)].reverse())).toBeCloseTo(rate(capsOf(t, s, p)), 12);
      }),
    );
  });

  test("0.9 total, 0.7 soluble and 20 % slow give 0.875; 2.0 at 65 % slow is exactly within", () => {
    const at = (slow: number, total: number) =>
      highestProductRate({ product: product("feed", "20-0-0", slow), caps: capsOf(total, 0.7, 1) });
    expect(at(4, 0.9).supplied.N?.in("lb/1000 ft2")).toBe(0.875);
    expect(at(4, 0.9).binding).toEqual(["soluble"]);
    expect(at(13, 2).supplied.N?.in("lb/1000 ft2")).toBeCloseTo(2, 12);
    expect(at(13, 2).binding).toEqual(["total", "soluble"]);
  });

  test("a cap on P binds a label in P2O5 by the element", () => {
    const found = highestProductRate({
      product: product("feed", "10-20-0"),
      caps: [{ limit: quantity(0.1, "lb/1000 ft2", "P") }],
    });
    expect(found.supplied.P?.in("lb/1000 ft2")).toBeCloseTo(0.1, 12);
    expect(found.supplied.P2O5?.in("lb/1000 ft2")).toBeCloseTo(0.22913, 4);
  });

  test("a cap for slow products leaves others to their own", () => {
    const caps = [
      {
        id: "slow product",
        limit: quantity(2, "lb/1000 ft2", "N"),
        fromSlowShare: quantity(65, "% w/w", "N:slow/N"),
      },
      {
        id: "quick product",
        limit: quantity(0.7, "lb/1000 ft2", "N"),
        belowSlowShare: quantity(65, "% w/w", "N:slow/N"),
      },
    ];
    const bindingOf = (slow: number) =>
      highestProductRate({ product: product("f", "20-0-0", slow), caps }).binding;
    expect(bindingOf(13)).toEqual(["slow product"]);
    expect(bindingOf(12.9)).toEqual(["quick product"]);
    const potash = highestProductRate({ product: product("k", "0-0-50"), caps });
    expect([potash.rate, potash.binding]).toEqual([undefined, []]);
    expect(potash.caps.map(({ standing }) => standing)).toEqual([
      "not for this product",
      "not for this product",
    ]);
  });

  test("too little slow nitrogen, where some is asked for, sets the rate to zero and says so", () => {
    const found = highestProductRate({
      product: product("f", "20-0-0", 3),
      caps: capsOf(1, 1, 1),
      leastSlowShare: quantity(20, "% w/w", "N:slow/N"),
    });
    expect([found.rate?.value, found.binding]).toEqual([0, ["slow share"]]);
  });

  test("without a bounding cap there is no rate, rather than an endless one", () => {
    const found = highestProductRate({
      product: product("k", "0-0-50"),
      caps: [{ limit: quantity(1, "lb/1000 ft2", "N") }],
    });
    expect(found.rate).toBeUndefined();
    expect(found.caps[0]?.standing).toBe("not bounded");
    expect(JSON.stringify(found)).not.toMatch(/null/);
  });

  test.each([-0.3, 0])(
    "a cap that is used up (%s lb left) means a rate of zero, and a finding says so",
    (left) => {
      const found = highestProductRate({
        product: product("f", "20-0-0"),
        caps: [
          { limit: quantity(left, "lb/1000 ft2", "N"), source: "state code" },
          { limit: quantity(0.7, "lb/1000 ft2", "N:quick") },
        ],
      });
      expect(found.rate?.value).toBe(0);
      expect(found.binding).toEqual(["N"]);
      expect(found.findings).toMatchObject([
        {
          code: "rate/cap-used-up",
          path: "caps[0].limit",
          params: { cap: "N", limit: left },
          source: "state code",
        },
      ]);
    },
  );

  test("what remains under stated limits goes in as a cap, also where they are exceeded", () => {
    const { remainingUnderStatedLimits: limit } = remainingNitrogen({
      on: "2026-06-01",
      applied: [{ date: "2026-05-20", nitrogen: quantity(1.5, "lb/1000 ft2", "N") }],
      caps: { per30Days: { amount: quantity(1.2, "lb/1000 ft2", "N"), source: "state code" } },
    });
    expect(highestProductRate({ product: product("f", "20-0-0"), caps: [{ limit }] }).rate?.value).toBe(0);
  });

  test("a cap that is used up is no bound for a product without its nutrient", () => {
    const found = highestProductRate({
      product: product("k", "0-0-50"),
      caps: [{ limit: quantity(-1, "lb/1000 ft2", "N") }, { limit: quantity(1, "lb/1000 ft2", "K2O") }],
    });
    expect(found.rate?.value).toBe(2);
    expect(found.findings).toEqual([]);
  });

  test("the array form gives zero for a limit that is used up", () => {
    expect(
      Array.from(highestProductRatesKgPerHa([{ limitKgPerHa: Float64Array.of(-3, 0, 10), percent: 20 }])),
    ).toEqual([0, 0, 50]);
  });

  test("caps that contradict, repeat or make no sense are refused by path", () => {
    const share = (percent: number) => quantity(percent, "% w/w", "N:slow/N");
    const n = quantity(1, "lb/1000 ft2", "N");
    expect(
      complaints(() =>
        highestProductRate({
          product: product("f", "20-0-0"),
          caps: [
            { id: "a", limit: n, fromSlowShare: share(65), belowSlowShare: share(50) },
            { id: "b", limit: quantity(1, "lb/1000 ft2", "N"), fromSlowShares: share(5) } as never,
            { id: "c", limit: n },
            { id: "c", limit: n },
            { id: "d", limit: quantity(1, "lb/1000 ft2", "product") as never },
            { id: "e", limit: n, fromSlowShare: share(101) },
            { id: "f", limit: n, fromSlowShare: quantity(20, "% w/w", "N:slow/product") as never },
          ],
        }),
      ),
    ).toEqual([
      "conflict caps[0].belowSlowShare",
      "type caps[1].fromSlowShares",
      "duplicate caps[3].id",
      "substance/mismatch caps[4].limit",
      "range caps[5].fromSlowShare",
      "substance/mismatch caps[6].fromSlowShare",
    ]);
    expect(complaints(() => highestProductRate({ product: product("f", "20-0-0"), caps: [] }))).toEqual([
      "missing caps",
    ]);
  });

  test("a zero cap gives a zero rate", () => {
    const found = highestProductRate({
      product: product("f", "20-5-0"),
      caps: [{ limit: quantity(0, "lb/1000 ft2", "P2O5") }],
    });
    expect([found.rate?.value, found.binding]).toEqual([0, ["P2O5"]]);
  });

  test.each([
    [9.2, 5.1, 5],
    [1.7, 1.1, 9.6],
    [5.3, 4.6, 1.4],
  ])(
    "a cap on quick-release nitrogen does not bound a product that has none: %s, %s and %s %% slow",
    (wi, co, ur) => {
      const total = Number((wi + co + ur).toFixed(1));
      const allSlow = fertilizer({
        id: "slow",
        analysis: `${total}-0-0`,
        nitrogen: { percent: { waterInsoluble: wi, coated: co, urea: ur }, slowWithin: { urea: ur } },
      });
      const found = highestProductRate({
        product: allSlow,
        caps: [{ limit: quantity(0.7, "lb/1000 ft2", "N:quick") }],
      });
      expect([found.rate, found.caps[0]?.standing]).toEqual([undefined, "not bounded"]);
      const supplied = nutrientsSupplied(quantity(100, "lb", "product:slow"), allSlow);
      expect(supplied["N:quick"]?.in("lb")).toBe(0);
    },
  );

  test("slow nitrogen stated in another unit is all of it but for noise", () => {
    const stated = fertilizer({
      id: "slow",
      analysis: "13.7-0-0",
      slowNitrogen: quantity(0.137, "lb/lb", "N:slow/product"),
    });
    const caps = [{ limit: quantity(0.7, "lb/1000 ft2", "N:quick") }];
    expect(highestProductRate({ product: stated, caps }).rate).toBeUndefined();
  });

  test("a cap of zero binds beside a slow share that is not met", () => {
    const found = highestProductRate({
      product: product("a", "20-5-0", 2),
      caps: [{ limit: quantity(0, "lb/1000 ft2", "P2O5") }, { limit: quantity(1, "lb/1000 ft2", "N") }],
      leastSlowShare: quantity(20, "% w/w", "N:slow/N"),
    });
    expect(found.binding).toEqual(["slow share", "P2O5"]);
    expect(found.caps.map(({ standing }) => standing)).toEqual(["binds", "slack"]);
  });

  test("the slow share that is needed is the one at which both caps bind", () => {
    fc.assert(
      fc.property(cap, cap, (t, s) => {
        const share = slowShareNeeded({
          total: quantity(t, "lb/1000 ft2", "N"),
          quickCap: quantity(s, "lb/1000 ft2", "N:quick"),
        }).in("% w/w");
        expect(share).toBeCloseTo(Math.max(0, 1 - s / t) * 100, 9);
        if (s < t * 0.999) {
          const { binding } = highestProductRate({
            product: product("f", "20-0-0", (20 * share) / 100),
            caps: capsOf(t, s, 1),
          });
          expect(binding).toEqual(["total", "soluble"]);
        }
      }),
    );
  });
});

describe("a target split between sources", () => {
  test("adds up to the target", () => {
    fc.assert(
      fc.property(figure, fc.integer({ min: 0, max: 100 }), (n, share) => {
        const parts = ratesBySource({
          target: quantity(n, "kg/ha", "N"),
          parts: [
            { product: product("a", "31-0-0"), share: quantity(share, "%") },
            { product: product("b", "46-0-0"), share: quantity(100 - share, "%") },
          ],
        });
        const total = parts.reduce((sum, { part }) => sum + part.in("kg/ha"), 0);
        expect(total).toBeCloseTo(n, 9);
      }),
    );
  });

  test.each([
    ["8-0-0", 4.4, 55],
    ["7-0-0", 2.45, 35],
  ])("a product of the wanted slow share goes down alone: %s", (grade, slow, share) => {
    const rates = slowShareRates({
      target: quantity(1, "lb/1000 ft2", "N"),
      slowShare: quantity(share, "% w/w", "N:slow/N"),
      products: [product("a", grade, slow), product("urea", "46-0-0")],
    });
    expect(rates.map(({ part }) => part.in("lb/1000 ft2"))).toEqual([1, 0]);
  });

  test("by slow share: the total and the slow nitrogen both come out", () => {
    fc.assert(
      fc.property(figure, fc.integer({ min: 10, max: 80 }), (n, share) => {
        const [coated, quick] = [product("c", "40-0-0", 32), product("q", "20-0-0", 2)];
        const rates = slowShareRates({
          target: quantity(n, "kg/ha", "N"),
          slowShare: quantity(share, "% w/w", "N:slow/N"),
          products: [quick, coated],
        });
        const [a, b] = rates;
        const first = nutrientsSupplied(a.rate as never, quick as never);
        const second = nutrientsSupplied(b.rate as never, coated as never);
        const sum = (of: "N" | "N:slow"): number =>
          (first[of]?.in("kg/ha") ?? 0) + (second[of]?.in("kg/ha") ?? 0);
        expect(sum("N")).toBeCloseTo(n, 8);
        expect(sum("N:slow")).toBeCloseTo((n * share) / 100, 8);
      }),
    );
  });

  test("refuses shares that do not add up, and slow shares out of reach", () => {
    const parts = (a: number, b: number) => [
      { product: product("a", "31-0-0"), share: quantity(a, "%") },
      { product: product("b", "46-0-0"), share: quantity(b, "%") },
    ];
    const target = quantity(50, "kg/ha", "N");
    expect(complaints(() => ratesBySource({ target, parts: parts(70, 20) }))).toEqual(["conflict parts"]);
    expect(complaints(() => ratesBySource({ target, parts: parts(120, -20) }))).toEqual([
      "range parts[1].share",
    ]);
    expect(complaints(() => ratesBySource({ target, parts: [] }))).toEqual(["missing parts"]);
    expect(complaints(() => ratesBySource({ target, parts: [undefined as never] }))).toEqual([
      "missing parts[0]",
    ]);
    expect(
      complaints(() =>
        slowShareRates({
          target,
          slowShare: quantity(90, "% w/w", "N:slow/N"),
          products: [product("c", "40-0-0", 32), product("q", "46-0-0")],
        }),
      ),
    ).toEqual(["infeasible slowShare"]);
  });
});

describe("the array forms", () => {
  test("give what the quantity forms give", () => {
    fc.assert(
      fc.property(fc.array(figure, { minLength: 1, maxLength: 20 }), figure, (targets, percent) => {
        const feed = product("f", `${percent}-0-0`);
        const rates = productRatesKgPerHa(Float64Array.from(targets), percent);
        targets.forEach((target, i) => {
          expect(rates[i]).toBe(productRate(quantity(target, "kg/ha", "N"), feed).in("kg/ha"));
        });
        const kilograms = nutrientsSuppliedKg({
          rateKgPerHa: rates,
          areaM2: new Float64Array(targets.length).fill(2500),
          percent,
        });
        targets.forEach((target, i) => {
          expect(kilograms[i]).toBeCloseTo(target / 4, 9);
        });
      }),
    );
    const feed = product("f", "20-4-0", 4);
    const limits = [
      [45, 35, 10],
      [40, 50, 2],
      [0, 35, 10],
    ];
    const rates = highestProductRatesKgPerHa([
      { limitKgPerHa: Float64Array.from(limits, (row) => row[0] as number), percent: 20 },
      { limitKgPerHa: Float64Array.from(limits, (row) => row[1] as number), percent: 16 },
      { limitKgPerHa: Float64Array.from(limits, (row) => row[2] as number), percent: 4 },
      { limitKgPerHa: new Float64Array(3), percent: 0 },
    ]);
    limits.forEach(([n, soluble, p], i) => {
      const { rate } = highestProductRate({
        product: feed,
        caps: [
          { limit: quantity(n as number, "kg/ha", "N") },
          { limit: quantity(soluble as number, "kg/ha", "N:quick") },
          { limit: quantity(p as number, "kg/ha", "P2O5") },
        ],
      });
      expect(rates[i]).toBeCloseTo(rate?.in("kg/ha") ?? Number.NaN, 12);
    });
  });

  test("refuse a bad number with its index", () => {
    const targets = Float64Array.of(1, Number.NaN);
    expect(complaints(() => productRatesKgPerHa(targets, 20))).toEqual(["not-finite targetKgPerHa[1]"]);
    expect(complaints(() => productRatesKgPerHa(Float64Array.of(1, -1), 20))).toEqual([
      "range targetKgPerHa[1]",
    ]);
    expect(complaints(() => productRatesKgPerHa(Float64Array.of(1), 0))).toEqual(["infeasible percent"]);
    expect(complaints(() => productRatesKgPerHa(Float64Array.of(1), 20, new Float64Array(2)))).toEqual([
      "conflict out",
    ]);
    expect(
      complaints(() =>
        nutrientsSuppliedKg({
          rateKgPerHa: Float64Array.of(1),
          areaM2: Float64Array.of(Infinity),
          percent: 5,
        }),
      ),
    ).toEqual(["not-finite areaM2[0]"]);
    expect(complaints(() => highestProductRatesKgPerHa([]))).toEqual(["missing caps"]);
    expect(
      complaints(() => highestProductRatesKgPerHa([{ limitKgPerHa: Float64Array.of(1), percent: 101 }])),
    ).toEqual(["range caps[0].percent"]);
  });
});

describe("rates of many areas", () => {
  const huge = Float64Array.of(1, 1e307);

  test("give no infinity and no negative zero", () => {
    expect(complaints(() => productRatesKgPerHa(huge, 1))).toEqual(["range targetKgPerHa[1]"]);
    expect(complaints(() => highestProductRatesKgPerHa([{ limitKgPerHa: huge, percent: 1 }]))).toEqual([
      "range caps[0].limitKgPerHa[1]",
    ]);
    const both = { rateKgPerHa: huge, areaM2: huge, percent: 1 };
    expect(complaints(() => nutrientsSuppliedKg(both))).toEqual(["range areaM2[1]"]);
    const none = Float64Array.of(-0);
    expect(productRatesKgPerHa(none, 24)[0]).toBe(0);
    expect(highestProductRatesKgPerHa([{ limitKgPerHa: none, percent: 24 }])[0]).toBe(0);
    expect(nutrientsSuppliedKg({ rateKgPerHa: none, areaM2: Float64Array.of(1), percent: 24 })[0]).toBe(0);
  });

  test("name the first bad figure, and what is no array of numbers", () => {
    const at = (value: number) => Float64Array.of(1, value);
    expect(complaints(() => productRatesKgPerHa(at(Number.NaN), 24))).toEqual([
      "not-finite targetKgPerHa[1]",
    ]);
    expect(complaints(() => productRatesKgPerHa(at(-1), 24))).toEqual(["range targetKgPerHa[1]"]);
    const one = Float64Array.of(1, 1);
    expect(
      complaints(() =>
        nutrientsSuppliedKg({ rateKgPerHa: at(0), areaM2: at(Number.POSITIVE_INFINITY), percent: 5 }),
      ),
    ).toEqual(["not-finite areaM2[1]"]);
    expect(complaints(() => nutrientsSuppliedKg({ rateKgPerHa: at(-1), areaM2: one, percent: 5 }))).toEqual([
      "range rateKgPerHa[1]",
    ]);
    for (const wrong of [undefined, [1, 2], "24"]) {
      const code = wrong === undefined ? "missing" : "type";
      const given = wrong as never;
      expect(complaints(() => productRatesKgPerHa(given, 24))).toEqual([`${code} targetKgPerHa`]);
      expect(complaints(() => nutrientsSuppliedKg({ rateKgPerHa: one, areaM2: given, percent: 5 }))).toEqual([
        `${code} areaM2`,
      ]);
      expect(complaints(() => highestProductRatesKgPerHa([{ limitKgPerHa: given, percent: 5 }]))).toEqual([
        `${code} caps[0].limitKgPerHa`,
      ]);
    }
    expect(complaints(() => productRatesKgPerHa(one, 24, [1, 2] as never))).toEqual(["type out"]);
  });
});

describe("two products under one id", () => {
  const [one, two] = [product("p", "0-46-0"), product("p", "46-0-0", 10)];
  const target = quantity(10, "kg/ha", "N");

  test("are refused, and one product twice is not", () => {
    const steps = [
      { target: quantity(10, "kg/ha", "P2O5"), product: one },
      { target, product: two },
    ];
    expect(complaints(() => productRates({ steps }))).toEqual(["duplicate steps[1].product.id"]);
    const half = quantity(50, "%");
    const slower = product("p", "46-0-0", 20);
    const parts = [
      { product: two, share: half },
      { product: slower, share: half },
    ];
    expect(complaints(() => ratesBySource({ target, parts }))).toEqual(["duplicate parts[1].product.id"]);
    const slowShare = quantity(30, "% w/w", "N:slow/N");
    expect(complaints(() => slowShareRates({ target, slowShare, products: [two, slower] }))).toEqual([
      "duplicate products[1].id",
    ]);
    const again = JSON.parse(JSON.stringify(two));
    const both = ratesBySource({
      target,
      parts: [
        { product: two, share: half },
        { product: again, share: half },
      ],
    });
    // Half of 10 kg of nitrogen from 46 %, twice: 10.87 kg each.
    expect(both.map(({ rate }) => Number(rate.in("kg/ha").toFixed(2)))).toEqual([10.87, 10.87]);
  });
});

describe("the order and the credits of several nutrients", () => {
  test("put sulfur after potassium and credit it from another form", () => {
    const found = productRates({
      steps: [
        { target: quantity(20, "kg/ha", "S"), product: product("sulfur", "0-0-0-90S") },
        { target: quantity(10, "kg/ha", "N"), product: product("urea", "46-0-0") },
        { target: quantity(50, "kg/ha", "K2O"), product: product("sop", "0-0-50-45SO3") },
        { target: quantity(10, "kg/ha", "P2O5"), product: product("tsp", "0-46-0") },
      ],
    });
    expect(found.steps.map(({ nutrient }) => nutrient)).toEqual(["P2O5", "K2O", "S", "N"]);
    // 100 kg of 0-0-50 with 45 % SO3 bring 45 kg SO3, which is 45 * 32.06 / 80.057 = 18.02 kg S.
    expect(found.steps[2]?.credited.in("kg/ha")).toBeCloseTo(18.02, 2);
    expect(found.steps[2]?.rate.in("kg/ha")).toBeCloseTo(((20 - (45 * 32.06) / 80.057) * 100) / 90, 9);
  });

  test("ask for shares that add up to all of the target", () => {
    const run = (share: number) =>
      complaints(() =>
        ratesBySource({
          target: quantity(1, "kg/ha", "N"),
          parts: [
            { product: product("a", "46-0-0"), share: quantity(50, "%") },
            { product: product("b", "31-0-0"), share: quantity(share, "%") },
          ],
        }),
      );
    expect([49.5, 50.5, 49.999].map(run)).toEqual([
      ["conflict parts"],
      ["conflict parts"],
      ["conflict parts"],
    ]);
    expect(run(50 + 1e-9)).toEqual([]);
  });
});
