import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  type Formulation,
  type LoadingOrderInput,
  loadingOrder,
  type MixProduct,
  mixingOrders,
} from "../../../src/tank/index.js";
import { errorOf, problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of an order of loading, and what a person reads of one, word for word.

const mix = (...list: readonly (readonly [string, Formulation])[]): MixProduct[] =>
  list.map(([id, formulation]) => ({ id, formulation }));
const order = (change: object) => () =>
  loadingOrder({ products: mix(["a", "SC"], ["b", "SL"]), ...change } as never);

const rows: readonly Refused[] = [
  [order({ mixingOrder: "ohio" }), "type", "mixingOrder", '"consensus" or the id of a published mixingOrder'],
  [order({ country: "US" }), "type", "country", '"UK", or none'],
  [order({ loadVolume: quantity(1, "gal") }), "substance/mismatch", "loadVolume", "spray"],
  [order({ loadVolume: quantity(0, "gal", "spray") }), "range", "loadVolume", "more than zero"],
  [order({ waterFirst: 0.5 }), "type", "waterFirst", "a fraction and its source"],
  [order({ waterFirst: { fraction: 0, source: "s" } }), "range", "waterFirst.fraction", "more than 0"],
  [order({ waterFirst: { fraction: 1, source: "s" } }), "range", "waterFirst.fraction", "less than 1"],
  [order({ waterFirst: { fraction: 0.5, source: "" } }), "missing", "waterFirst.source", "who says so"],
  [order({ waterFirst: { fraction: 0.5, source: "s", share: 1 } }), "type", "waterFirst.share", "fraction"],
  [order({ products: undefined }), "missing", "products", "product"],
  [order({ water: 1 }), "type", "input.water", "waterFirst"],
];

describeRefused("what is refused of an order of loading", rows);

describe("labels in a circle", () => {
  const circle = (...products: readonly MixProduct[]) => {
    const { code, path, got, expected } = errorOf(() => loadingOrder({ products }));
    return { code, path, got, expected };
  };
  const one = (id: string, more: Partial<MixProduct>): MixProduct => ({ id, formulation: "SC", ...more });
  const told = (words: string) => ({
    code: "conflict",
    path: "products",
    got: expect.stringContaining(`instructions that go around in a circle: ${words}`),
    expected: "label instructions that do not contradict one another",
  });

  test("of one, of two and of three are named from the first by id on", () => {
    expect(circle(one("a", { addBefore: ["a"] }))).toEqual(told("a before a"));
    expect(circle(one("b", { addBefore: ["a"] }), one("a", { addBefore: ["b"] }))).toEqual(
      told("a before b before a"),
    );
    expect(
      circle(one("c", { addBefore: ["a"] }), one("a", { addBefore: ["b"] }), one("b", { addBefore: ["c"] })),
    ).toEqual(told("a before b before c before a"));
  });

  test("where there are several the shortest is named, wherever it stands", () => {
    expect(
      circle(
        one("a", { addBefore: ["b"] }),
        one("b", { addBefore: ["c"] }),
        one("c", { addBefore: ["a"] }),
        one("x", { addBefore: ["y"] }),
        one("y", { addBefore: ["x"] }),
      ),
    ).toEqual(told("x before y before x"));
  });
});

describe("a kind that a mixing order does not name", () => {
  test("goes in after a step of which only one kind stands before it", () => {
    // Every step of several kinds that the consensus puts on both sides of a kind that the order does not name.
    for (const { id, steps } of mixingOrders) {
      const named = new Set<Formulation>(steps.flat());
      for (const kind of ["SE", "OD", "EO", "oil adjuvant", "EW", "CS"] as const) {
        if (named.has(kind)) continue;
        const alone = loadingOrder({ products: mix(["k", kind]), mixingOrder: id });
        if (!alone.findings.some(({ code }) => code === "order/not-in-mixing-order")) continue;
        for (const step of steps) {
          const orderOf = (other: Formulation) =>
            loadingOrder({ products: mix(["k", kind], ["o", other]) }).order[0] === "o";
          if (!step.some(orderOf) || step.every(orderOf)) continue;
          const early = step.find(orderOf) as Formulation;
          const here = loadingOrder({ products: mix(["k", kind], ["o", early]), mixingOrder: id }).order;
          expect(here, `${id}: ${kind} after ${early}`).toEqual(["o", "k"]);
        }
      }
    }
  });

  test("is told so, with the names of the order and of the product", () => {
    const { findings } = loadingOrder({
      products: [{ id: "c", name: "Capsule C", formulation: "CS" }],
      mixingOrder: "missouri-dot",
    });
    const found = findings.find(({ code }) => code === "order/not-in-mixing-order");
    expect(found?.text).toBe(
      "Missouri DOT does not list a capsule suspension (microencapsulated), as Capsule C is; its place comes from the consensus.",
    );
    expect(found?.params).toEqual({ product: "c", formulation: "CS", mixingOrder: "missouri-dot" });
  });
});

describe("what is told of a pair", () => {
  const pairOf = (first: Formulation, second: Formulation, more: Partial<LoadingOrderInput> = {}) =>
    loadingOrder({ products: mix(["a", first], ["b", second]), ...more }).findings;

  test("on which the sources disagree: who is for it, who against, and what decided", () => {
    const found = pairOf("EC", "SL").find(({ code }) => code === "order/open-pair");
    const namesWith = (test0: (ec: number, sl: number) => boolean): readonly string[] =>
      mixingOrders
        .filter(({ steps }) => {
          const at = (kind: Formulation): number => steps.findIndex((kinds) => kinds.includes(kind));
          return at("EC") >= 0 && at("SL") >= 0 && test0(at("EC"), at("SL"));
        })
        .map(({ name }) => name);
    const [forIt, against, same] = [
      namesWith((ec, sl) => ec < sl),
      namesWith((ec, sl) => ec > sl),
      namesWith((ec, sl) => ec === sl),
    ];
    expect([forIt.length, against.length, same.length]).toEqual([6, 5, 1]);
    expect(found?.text).toBe(
      `Sources disagree on a (emulsifiable concentrate) before b (soluble concentrate) (for: ${forIt.join(", ")}; against: ${against.join(", ")}; same step: ${same.join(", ")}). Here a goes in first: 6 of the 11 published orders that rank the two say so. The labels decide.`,
    );
    expect(found?.params).toEqual({
      first: "a",
      second: "b",
      resolvedBy: "majority",
      for: forIt,
      against,
      same,
    });
    expect(found?.severity).toBe("note");
  });

  test("that an order or a label decided says so", () => {
    const chosen = mixingOrders.find(({ steps }) => {
      const at = (kind: Formulation): number => steps.findIndex((kinds) => kinds.includes(kind));
      return at("EC") >= 0 && at("SL") > at("EC");
    });
    const byOrder = pairOf("EC", "SL", { mixingOrder: chosen?.id ?? "consensus" });
    expect(byOrder.find(({ code }) => code === "order/open-pair")?.text).toContain(
      "Here a goes in first: the mixing order that was chosen says so.",
    );
    const byLabel = loadingOrder({
      products: [
        { id: "a", formulation: "EC", addBefore: ["b"] },
        { id: "b", formulation: "SL" },
      ],
    }).findings;
    expect(byLabel.find(({ code }) => code === "order/open-pair")?.text).toContain(
      "Here a goes in first: a label says so.",
    );
  });

  test("a firm one that a label turned round says by how many", () => {
    const { findings } = loadingOrder({
      products: [
        { id: "p", name: "Powder P", formulation: "WP" },
        { id: "f", name: "Flow F", formulation: "SC", addBefore: ["p"] },
      ],
    });
    const found = findings.find(({ code }) => code === "order/firm-pair-overruled");
    expect(found?.severity).toBe("warning");
    expect(found?.text).toMatch(
      /^Flow F goes in before Powder P, because a label says so; \d+ published orders print the reverse \(.+, .+\)\.$/,
    );
    expect(found?.params).toMatchObject({ first: "f", second: "p", by: "label" });
  });

  test("few sources are named one by one, and none is called none", () => {
    for (const kind of ["defoamer", "micronutrient", "drift agent"] as const) {
      const names = mixingOrders.filter(({ steps }) => steps.flat().includes(kind)).map(({ name }) => name);
      const found = loadingOrder({ products: mix(["a", kind]) }).findings.find(
        ({ code }) => code === "order/few-sources",
      );
      expect(found?.text.endsWith(`, as a is: ${names.join(", ")}.`)).toBe(true);
      expect(found?.params).toEqual({ product: "a", formulation: kind, sources: names });
    }
  });
});

describe("the words of steps", () => {
  const steps = (product: Partial<MixProduct>, more: Partial<LoadingOrderInput> = {}) =>
    loadingOrder({ products: [{ id: "a", formulation: "SC", ...product }], ...more }).steps;
  const step = (action: string, product: Partial<MixProduct>, more: Partial<LoadingOrderInput> = {}) =>
    steps(product, more).find((one) => one.action === action);

  test("of a liquid with its amount, and with what its label says", () => {
    const amount = quantity(3, "pt", "product:a");
    expect(step("add", { amount })?.text).toBe("Add 3 pt of a.");
    expect(step("add", { amount, name: "Flow A", labelNote: "keep stirring" })?.text).toBe(
      "Add 3 pt of Flow A. Label: keep stirring",
    );
    expect(step("add", {})?.amount).toBeUndefined();
    expect(step("add", { amount })?.amount?.value).toBe(3);
  });

  test("of a kind that no order names, and of one of a low rate", () => {
    expect(step("add", { formulation: "ME" })?.reason).toContain(
      "published mixing orders list this product type",
    );
    expect(step("premix", { lowRate: true })?.reason).toBe(
      "Such a small amount would not spread through the tank on its own. Common practice, no source.",
    );
    expect(step("premix", { lowRate: true })?.productId).toBe("a");
    expect(step("premix", { lowRate: true })?.sources).toEqual([]);
  });

  test("a filling is told to three digits, the whole of the load to six", () => {
    const loadVolume = quantity(123.456, "gal", "spray");
    expect(step("fill", {}, { loadVolume })?.text).toBe(
      "Fill the tank with clean water to 50 % of the load (61.7 gal).",
    );
    expect(step("top up", {}, { loadVolume })?.text).toBe(
      "Rinse empty containers into the tank, then fill with clean water to the volume of the load (123.456 gal).",
    );
    expect(step("fill", {}, { loadVolume })?.volume?.[0].in("gal")).toBe(61.728);
    expect(step("add", {}, { loadVolume })).not.toHaveProperty("volume");
  });

  test("each step has words and a reason, and no step says what it is not", () => {
    for (const { id } of mixingOrders)
      for (const formulation of ["WP", "SP", "EC", "conditioner", "water-soluble packet"] as const)
        for (const one of steps({ formulation }, { mixingOrder: id })) {
          expect(one.text).toMatch(/\w.*[.\w]$/);
          expect(one.reason).toMatch(/\w.*\.$/);
        }
  });

  test("a packet: agitation stopped, whole packets, the wait", () => {
    const all = steps({ formulation: "water-soluble packet" });
    expect(all.map(({ action, text, reason }) => [action, text, reason]).slice(2, 5)).toEqual([
      [
        "stop agitation",
        "Stop filling and agitation. Take the basket strainer out.",
        "Keep packets off screens and away from the water jet.",
      ],
      [
        "add",
        "Add a, in whole packets, away from jets and returning spray.",
        expect.stringContaining("film has to dissolve"),
      ],
      [
        "wait",
        "Agitate from the bottom with the lid shut until the packets are fully dissolved: up to 5 minutes, longer in cold or hard water. Stop agitation before you open the lid to look. Packets gone: basket strainer back in.",
        "Undissolved film clogs screens, and the next product can stop the film from dissolving.",
      ],
    ]);
    expect(problemsOf(order({ products: mix(["a", "water-soluble packet"]) }))).toEqual([]);
  });

  test.each([
    [
      "conditioner",
      "Agitate until no grains are left.",
      "Undissolved ammonium sulfate can curdle amine salts for good.",
    ],
    ["SP", "Agitate until no grains are left.", "Let each product mix in fully before adding the next."],
    [
      "dry fertilizer",
      "Agitate until no grains are left.",
      "Let each product mix in fully before adding the next.",
    ],
    [
      "WP",
      "Agitate a few minutes until it is evenly dispersed.",
      "What goes in next would coat particles that are still dry.",
    ],
  ] as const)("the wait after a %s", (formulation, text, reason) => {
    const wait = step("wait", { formulation });
    expect([wait?.text, wait?.reason]).toEqual([text, reason]);
    expect(wait?.sources.length).toBeGreaterThan(0);
  });
});
