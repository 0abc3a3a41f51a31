import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  type Formulation,
  formulations,
  loadingOrder,
  type MixProduct,
  mixingOrders,
  pairOrder,
} from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

const kinds = Object.keys(formulations) as Formulation[];
const mix = (...list: readonly (readonly [string, Formulation])[]): MixProduct[] =>
  list.map(([id, formulation]) => ({ id, formulation }));

describe("loadingOrder", () => {
  test.each(mixingOrders.map((mixingOrder) => [mixingOrder.id, mixingOrder] as const))(
    "follows %s as printed",
    (id, mixingOrder) => {
      const products = mixingOrder.steps.flatMap((step, i) =>
        step.map((formulation) => ({ id: `${formulation}`, formulation, step: i })),
      );
      const asked = products.map(({ id: name, formulation }) => ({ id: name, formulation })).reverse();
      const result = loadingOrder({ products: asked, mixingOrder: id });
      const steps = result.order.map(
        (name) => products.find((product) => product.id === name)?.step as number,
      );
      expect(steps).toEqual([...steps].sort((a, b) => a - b));
      const first = result.steps[0];
      expect(first?.fraction).toEqual(mixingOrder.waterFirst ?? [0.5, 0.5]);
      expect(result.findings.some(({ code }) => code === "order/not-in-mixing-order")).toBe(false);
    },
  );

  test("SG and SP share a place, and a kind that no order lists stands with its like", () => {
    const order = (...list: readonly (readonly [string, Formulation])[]) =>
      loadingOrder({ products: mix(...list) }).order;
    expect(order(["b", "SP"], ["a", "SG"])).toEqual(["a", "b"]);
    expect(order(["b", "SG"], ["a", "SP"])).toEqual(["a", "b"]);
    // All that another kind may be like goes in behind a conditioner and ahead of a surfactant.
    for (const kind of ["ST", "WT", "EG", "EP", "ZC", "ZE", "ZW", "ME", "DC", "GL", "GW"] as const)
      expect(order(["a", "surfactant"], ["b", kind], ["c", "conditioner"]), kind).toEqual(["c", "b", "a"]);
  });

  test("the consensus on the common kinds", () => {
    const result = loadingOrder({
      products: mix(
        ["k", "surfactant"],
        ["j", "SL"],
        ["i", "EC"],
        ["h", "EW"],
        ["g", "CS"],
        ["f", "SC"],
        ["e", "WG"],
        ["d", "WP"],
        ["c", "SP"],
        ["b", "water-soluble packet"],
        ["a", "conditioner"],
      ),
    });
    expect(result.order).toEqual(["a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k"]);
    expect(result.open.map(({ first, second }) => `${first}${second}`)).toContain("ij");
    const question = result.open.find(({ first, second }) => first === "i" && second === "j");
    expect(question?.says.against).toContain("Oklahoma State");
    expect(question?.says.for).toContain("North Dakota State");
    expect(question?.says.same).toEqual(["Iowa State authors"]);
    expect(question?.resolvedBy).toBe("majority");
    expect(result.findings[0]?.code).toBe("jar-test");
    // Nine products besides the conditioner and the surfactant are more than a published guide advises.
    expect(result.findings[0]?.params.publishedObjection).toBe("yes");
    expect(result.findings.find(({ code }) => code === "mix/many-partners")?.params.partners).toBe(9);
    const two = loadingOrder({ products: mix(["a", "SC"], ["b", "SL"]) });
    expect(two.findings[0]?.params.publishedObjection).toBe("none known");
    expect(two.findings[0]?.text).toMatch(/^No published objection is known\. That does not mean they mix\./);
  });

  test("a label beats the consensus, moves only its product, and says what it overruled", () => {
    const products: MixProduct[] = [
      { id: "powder", formulation: "WP" },
      { id: "flowable", formulation: "SC" },
      { id: "ester", formulation: "EC", addBefore: ["powder"], labelNote: "add to clear water" },
      { id: "amine", formulation: "SL" },
    ];
    const result = loadingOrder({ products });
    expect(result.order).toEqual(["ester", "powder", "flowable", "amine"]);
    const overruled = result.findings.filter(({ code }) => code === "order/firm-pair-overruled");
    expect(overruled.map(({ params }) => [params.first, params.second, params.by])).toEqual([
      ["ester", "powder", "label"],
      ["ester", "flowable", "label"],
    ]);
    const putty = result.findings.filter(({ code }) => code === "order/emulsion-before-powder");
    expect(putty.map(({ params }) => [params.first, params.second])).toEqual([["ester", "powder"]]);
    // Packets before WP by four orders, and none the other way.
    const early = loadingOrder({
      products: [
        { id: "bag", formulation: "water-soluble packet" },
        { id: "powder", formulation: "WP", addBefore: ["bag"] },
      ],
    });
    expect(early.findings.filter(({ code }) => code === "order/firm-pair-overruled")).toHaveLength(1);
    expect(result.findings[0]?.params.publishedObjection).toBe("yes");
    expect(result.steps.find(({ productId }) => productId === "ester")?.text).toContain("add to clear water");
    const after = loadingOrder({
      products: [
        { id: "powder", formulation: "WP", addAfter: ["amine"] },
        { id: "amine", formulation: "SL" },
        { id: "wetter", formulation: "surfactant" },
      ],
    });
    expect(after.order).toEqual(["amine", "powder", "wetter"]);
  });

  test("label instructions in a circle are a conflict that names the circle", () => {
    const error = errorOf(() =>
      loadingOrder({
        products: [
          { id: "a", formulation: "WP", addBefore: ["b"] },
          { id: "b", formulation: "SC", addBefore: ["c"] },
          { id: "c", formulation: "EC", addBefore: ["a"] },
          { id: "d", formulation: "SL", addAfter: ["a"] },
        ],
      }),
    );
    expect(error.code).toBe("conflict");
    expect(error.got).toContain("a before b before c before a");
    expect(
      errorOf(() => loadingOrder({ products: [{ id: "a", formulation: "WP", addBefore: ["a"] }] })).code,
    ).toBe("conflict");
  });

  const mixes = fc
    .uniqueArray(fc.constantFrom("a", "b", "c", "d", "e", "f", "g"), { minLength: 1 })
    .chain((ids) =>
      fc.tuple(
        ...ids.map((id) =>
          fc.record({
            id: fc.constant(id),
            formulation: fc.constantFrom(...kinds),
            addBefore: fc.subarray(ids, { maxLength: 1 }),
            addAfter: fc.subarray(ids, { maxLength: 1 }),
          }),
        ),
      ),
    );

  const reaches = (products: readonly MixProduct[], from: string, to: string): boolean => {
    const seen = new Set<string>();
    const walk = (id: string): boolean =>
      products
        .filter(
          (product) =>
            products.find((other) => other.id === id)?.addBefore?.includes(product.id) ||
            product.addAfter?.includes(id),
        )
        .some(({ id: next }) => {
          if (next === to) return true;
          if (seen.has(next)) return false;
          seen.add(next);
          return walk(next);
        });
    return walk(from);
  };

  test("keeps every label instruction, or reports a circle exactly where there is one", () => {
    fc.assert(
      fc.property(
        mixes,
        fc.constantFrom("consensus", ...mixingOrders.map(({ id }) => id)),
        (products, mixingOrder) => {
          const circle = products.some(({ id }) => reaches(products, id, id));
          if (circle) {
            expect(errorOf(() => loadingOrder({ products, mixingOrder })).code).toBe("conflict");
            return;
          }
          const { order, firm, open, unopposed, unsaid, steps } = loadingOrder({ products, mixingOrder });
          expect([...order].sort()).toEqual(products.map(({ id }) => id).sort());
          for (const { id, addBefore, addAfter } of products) {
            for (const other of addBefore) expect(order.indexOf(id)).toBeLessThan(order.indexOf(other));
            for (const other of addAfter) expect(order.indexOf(other)).toBeLessThan(order.indexOf(id));
          }
          expect(firm.length + open.length + unopposed.length + unsaid.length).toBe(
            (order.length * (order.length - 1)) / 2,
          );
          expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
          expect(steps.filter(({ action }) => action === "add").map(({ productId }) => productId)).toEqual(
            order,
          );
        },
      ),
    );
  });

  test("beside its like, too, a product goes right ahead of the one that its label names, or right behind", () => {
    const orderOf = (products: readonly MixProduct[]): readonly string[] => loadingOrder({ products }).order;
    // Both granules are of one place: b goes before g by its id, and stays there.
    const granules = mix(["b", "WG"], ["g", "WG"]);
    expect(orderOf([...granules, { id: "s", formulation: "SC", addBefore: ["b"] }])).toEqual(["s", "b", "g"]);
    expect(orderOf([...granules, { id: "a", formulation: "WP", addAfter: ["b"] }])).toEqual(["b", "a", "g"]);
  });

  test("the order of the input does not matter", () => {
    fc.assert(
      fc.property(
        mixes.chain((products) =>
          fc.tuple(
            fc.constant(products),
            fc.shuffledSubarray(products, { minLength: products.length, maxLength: products.length }),
          ),
        ),
        ([one, other]) => {
          fc.pre(!one.some(({ id }) => reaches(one, id, id)));
          expect(loadingOrder({ products: other })).toEqual(loadingOrder({ products: one }));
        },
      ),
    );
  });

  test("without labels, no firm pair stands against its votes", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...kinds), { minLength: 1, maxLength: 12 }), (some) => {
        const { firm } = loadingOrder({
          products: some.map((formulation) => ({ id: formulation, formulation })),
        });
        for (const pair of firm)
          expect(pair.counts.for, `${pair.first} ${pair.second}`).toBeGreaterThan(pair.counts.against);
      }),
    );
  });

  test("steps: water first, packets with agitation stopped, waits after dry products, top up last", () => {
    const result = loadingOrder({
      products: [
        { id: "bag", formulation: "water-soluble packet" },
        { id: "powder", name: "Powder P", formulation: "WP", amount: quantity(2, "lb", "product:powder") },
        { id: "tiny", formulation: "SC", lowRate: true },
      ],
      waterFirst: { fraction: 0.4, source: "the label" },
    });
    expect(result.steps.map(({ action }) => action)).toEqual([
      "fill",
      "agitate",
      "stop agitation",
      "add",
      "wait",
      "premix",
      "add",
      "wait",
      "premix",
      "add",
      "top up",
      "agitate",
    ]);
    expect(result.steps[0]?.fraction).toEqual([0.4, 0.4]);
    expect(result.steps[3]?.text).toContain("away from jets");
    expect(result.steps[4]?.minutes).toBe(5);
    expect(result.steps[5]?.text).toBe(
      "Stir 2 lb of Powder P into a little clean water to a thin, even slurry.",
    );
    expect(result.steps[6]?.text).toContain("Pour in Powder P, slowly. Rinse the bucket");
    expect(result.steps[6]?.reason).toContain("Add dry products before ECs");
    expect(result.steps[9]?.text).toContain("Rinse the bucket");
    const codes = (step: number) => result.steps[step]?.cautions.map(({ code }) => code);
    expect(codes(0)).toEqual(["caution/backflow", "caution/stay-at-fill", "caution/empty-tank"]);
    expect(codes(1)).toEqual(["caution/closed-tank"]);
    expect(codes(3)).toEqual(["caution/water-soluble-packet"]);
    expect(codes(5)).toEqual(["caution/protective-equipment", "caution/dry-powder"]);
    expect(codes(9)).toEqual(["caution/protective-equipment"]);
    expect(codes(10)).toContain("caution/container-rinse");
    expect(result.cautions.map(({ code }) => code)).toEqual(
      expect.arrayContaining([
        "caution/label-first",
        "caution/backflow",
        "caution/stay-at-fill",
        "caution/protective-equipment",
        "caution/water-soluble-packet",
        "caution/dry-powder",
        "caution/no-food-containers",
      ]),
    );
    const wet = loadingOrder({ products: mix(["a", "SL"]) });
    expect(wet.cautions.map(({ code }) => code)).not.toContain("caution/water-soluble-packet");
    expect(wet.findings.map(({ code }) => code)).not.toContain("jar-test");
    expect(wet.notChecked.length).toBeGreaterThan(0);
  });

  test("the volume of the load is said beside the shares", () => {
    const { steps } = loadingOrder({
      products: mix(["a", "SL"]),
      mixingOrder: "oklahoma-state",
      loadVolume: quantity(30, "gal", "spray"),
    });
    expect(steps[0]?.text).toBe(
      "Fill the tank with clean water to 50 % to 75 % of the load (15 to 22.5 gal).",
    );
    expect(steps[0]?.volume?.map((volume) => volume.in("gal"))).toEqual([15, 22.5]);
    expect(steps.find(({ action }) => action === "top up")?.text).toMatch(/volume of the load \(30 gal\)\.$/);
    // The whole of the load is told to the liter and beyond: 1337.5 L are not 1340.
    const large = loadingOrder({
      products: mix(["a", "SL"]),
      loadVolume: quantity(1337.5, "L", "spray"),
    }).steps;
    expect(large.find(({ action }) => action === "top up")?.text).toContain("(1337.5 L)");
    const wrong = { value: 30, unit: "gal", of: "water" } as never;
    expect(errorOf(() => loadingOrder({ products: mix(["a", "SL"]), loadVolume: wrong })).path).toBe(
      "loadVolume",
    );
  });

  test("South Dakota State fills to 80 % once the dry products are in", () => {
    const result = loadingOrder({
      products: mix(["a", "WP"], ["b", "EC"]),
      mixingOrder: "south-dakota-state",
    });
    const fills = result.steps.filter(({ action }) => action === "fill" || action === "add");
    expect(fills.map(({ action, productId, fraction }) => productId ?? [action, fraction?.[1]])).toEqual([
      ["fill", 1 / 3],
      "a",
      ["fill", 0.8],
      "b",
    ]);
  });

  test("says whether the mixing order or the consensus put a pair in its order", () => {
    const result = loadingOrder({
      products: mix(["a", "WP"], ["b", "WG"], ["c", "EC"]),
      mixingOrder: "oklahoma-state",
    });
    const pairs = [...result.firm, ...result.open, ...result.unopposed, ...result.unsaid];
    const by = Object.fromEntries(pairs.map(({ first, second, resolvedBy }) => [first + second, resolvedBy]));
    // WP and WG share a step there.
    expect(by).toEqual({ ab: "majority", ac: "chosen order", bc: "chosen order" });
  });

  test("no filling to less than is in the tank", () => {
    const fills = (fraction: number) =>
      loadingOrder({
        products: mix(["a", "WP"], ["b", "EC"]),
        mixingOrder: "south-dakota-state",
        waterFirst: { fraction, source: "the label" },
      }).steps.flatMap(({ action, fraction: full }) => (action === "fill" ? [full?.[1]] : []));
    expect(fills(0.5)).toEqual([0.5, 0.8]);
    expect(fills(0.9)).toEqual([0.9]);
    expect(fills(0.8)).toEqual([0.8]);
  });

  test("a slurry is cited from those who print one, and from nobody else", () => {
    const publishers = (kind: Formulation, mixingOrder: "consensus" | "manitoba-2013" | "grain-sa-2018") => {
      const { steps } = loadingOrder({ products: mix(["a", kind]), mixingOrder });
      const premix = steps.find(({ action }) => action === "premix");
      return [premix?.sources.map(({ publisher }) => publisher), premix?.reason.includes("no source")];
    };
    const slurries = [
      "South Dakota State University Extension",
      "Oklahoma State University Extension",
      "NASDA Research Foundation",
    ];
    // Grain SA stirs WP into a little water and says nothing of WG; Manitoba only says "slowly".
    expect(publishers("WG", "consensus")).toEqual([slurries, false]);
    expect(publishers("WG", "manitoba-2013")).toEqual([slurries, false]);
    expect(publishers("WP", "grain-sa-2018")).toEqual([["Grain SA, South Africa"], false]);
    expect(publishers("SG", "consensus")).toEqual([["Grain SA, South Africa"], false]);
    expect(publishers("WT", "consensus")).toEqual([[], true]);
  });

  test("thin ground is said: by analogy, few sources, not in the mixing order", () => {
    const codes = (mixingOrder: "consensus" | "missouri-dot") =>
      loadingOrder({
        products: mix(["a", "ME"], ["b", "micronutrient"], ["c", "WP"]),
        mixingOrder,
      }).findings.map(({ code, params }) => [code, params.product]);
    expect(codes("consensus")).toEqual(
      expect.arrayContaining([
        ["order/by-analogy", "a"],
        ["order/few-sources", "b"],
      ]),
    );
    expect(codes("missouri-dot")).toEqual(
      expect.arrayContaining([
        ["order/not-in-mixing-order", "a"],
        ["order/not-in-mixing-order", "b"],
      ]),
    );
    // A defoamer stands in three orders (South Dakota, Oklahoma, Iowa), EW in four.
    const few = loadingOrder({ products: mix(["d", "defoamer"], ["e", "EW"]) }).findings;
    expect(
      few.filter(({ code }) => code === "order/few-sources").map(({ params }) => params.product),
    ).toEqual(["d"]);
    expect(codes("missouri-dot")).not.toContainEqual(["order/not-in-mixing-order", "c"]);
  });
});

describe("what decided a pair is said", () => {
  const deciding = (first: Formulation, second: Formulation) => {
    const { findings, open, firm, unopposed, unsaid } = loadingOrder({
      products: mix(["a", first], ["b", second]),
    });
    const [pair] = [...open, ...firm, ...unopposed, ...unsaid];
    return { pair, text: findings.find(({ code }) => code === "order/open-pair")?.text ?? "" };
  };

  test("a majority of the orders that rank the two, with its count", () => {
    const { pair, text } = deciding("EC", "SL");
    expect([pair?.resolvedBy, pair?.counts.for, pair?.counts.against]).toEqual(["majority", 6, 5]);
    expect(text).toContain("6 of the 11 published orders that rank the two say so");
    expect(text).not.toContain("all published orders");
  });

  test("a tie is called a tie", () => {
    const tied = Object.keys(formulations).flatMap((first) =>
      Object.keys(formulations).flatMap((second) => {
        const found = pairOrder(first as Formulation, second as Formulation);
        return found.for.length > 0 && found.for.length === found.against.length ? [[first, second]] : [];
      }),
    ) as [Formulation, Formulation][];
    expect(tied.length).toBeGreaterThan(0);
    for (const [first, second] of tied) {
      const { pair, text } = deciding(first, second);
      if (pair?.resolvedBy === "id") continue;
      expect(pair?.resolvedBy, `${first} ${second}`).toBe("consensus");
      expect(text).toContain("tie on these two");
    }
  });
});

test("the cautions name bees and other pollinators, with a source", () => {
  const { cautions } = loadingOrder({ products: mix(["a", "EC"]) });
  const bees = cautions.find(({ code }) => code === "caution/pollinators");
  expect(bees?.text).toContain("in flower");
  expect(bees?.source).toMatchObject({ publisher: "University of Illinois Extension" });
});

test("an amount in ounces is printed as ounces by weight", () => {
  const amount = quantity(35.2, "oz", "product:a");
  const { steps } = loadingOrder({ products: [{ id: "a", formulation: "WP", amount }] });
  expect(steps.find(({ action }) => action === "premix")?.text).toContain("35.2 oz by weight of a");
});

test.each(["labelBefore", "addbefore", "formulations"])(
  "a product with the unknown field %s is refused",
  (name) => {
    const product = { id: "a", formulation: "EC", [name]: ["b"] } as never;
    const error = errorOf(() => loadingOrder({ products: [product] }));
    expect(error.path).toBe(`products[0].${name}`);
  },
);
