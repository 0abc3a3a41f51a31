import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  type Formulation,
  type LoadingOrderInput,
  loadingOrder,
  type MixProduct,
  mixingOrders,
} from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";

// What a person at the tank reads: the words of each step, who stands behind it, and what can hurt there.

const mix = (...kinds: readonly Formulation[]): MixProduct[] =>
  kinds.map((formulation) => ({ id: formulation, formulation }));
const stepsOf = (input: LoadingOrderInput) => loadingOrder(input).steps;
const textsOf = (input: LoadingOrderInput, action: string): readonly string[] =>
  stepsOf(input).flatMap((step) => (step.action === action ? [step.text] : []));

describe("the first filling", () => {
  test("is half without any word, with no amount where no load is stated", () => {
    const [first] = stepsOf({ products: mix("SL") });
    expect(first?.text).toBe("Fill the tank with clean water to 50 % of the load.");
    expect(first?.reason).toBe("Half is what most of the sources print; they range from 25 % to 75 %.");
    const publishers = new Set(mixingOrders.map(({ source }) => source.publisher));
    expect(first?.sources).toHaveLength(4);
    for (const { publisher } of first?.sources ?? []) expect(publishers).toContain(publisher);
  });

  test("is as the label says, and names who says so", () => {
    const [first] = stepsOf({
      products: mix("SL"),
      waterFirst: { fraction: 0.6, source: "the label of SL" },
    });
    expect(first?.text).toBe("Fill the tank with clean water to 60 % of the load.");
    expect(first?.reason).toBe("As the label of SL says.");
    expect(first?.sources).toEqual([]);
  });

  test("is as the mixing order prints it, with that source alone", () => {
    const [first] = stepsOf({ products: mix("SL"), mixingOrder: "south-dakota-state" });
    expect(first?.reason).toBe("As South Dakota State prints it.");
    expect(first?.sources.map(({ publisher }) => publisher)).toEqual([
      "South Dakota State University Extension",
    ]);
  });

  test("a label's fraction wins over that of a mixing order", () => {
    const [first] = stepsOf({
      products: mix("SL"),
      mixingOrder: "south-dakota-state",
      waterFirst: { fraction: 0.25, source: "the label" },
    });
    expect([first?.fraction, first?.reason]).toEqual([[0.25, 0.25], "As the label says."]);
  });
});

describe("what is stirred or dissolved first", () => {
  test.each([
    ["WP", "Stir WP into a little clean water to a thin, even slurry."],
    ["SP", "Dissolve SP in a little clean water."],
  ] as const)("%s, without an amount", (kind, text) => {
    expect(textsOf({ products: mix(kind) }, "premix")).toEqual([text]);
  });

  test("with its amount", () => {
    const amount = quantity(3, "lb", "product:a");
    expect(textsOf({ products: [{ id: "a", formulation: "SG", amount }] }, "premix")).toEqual([
      "Dissolve 3 lb of a in a little clean water.",
    ]);
    const added = (input: LoadingOrderInput) => stepsOf(input).find(({ action }) => action === "add");
    expect(added({ products: [{ id: "a", formulation: "SG", amount }] })?.amount?.toString()).toBe(
      amount.toString(),
    );
    expect(Object.keys(added({ products: mix("SG") }) ?? {})).not.toContain("amount");
  });

  test("a product of a low rate, and neither a liquid of a usual rate nor a packet", () => {
    expect(textsOf({ products: [{ id: "a", formulation: "SC", lowRate: true }] }, "premix")).toEqual([
      "Stir a into a clean bucket of water.",
    ]);
    expect(textsOf({ products: [{ id: "a", formulation: "SC", lowRate: false }] }, "premix")).toEqual([]);
    expect(
      textsOf({ products: [{ id: "a", formulation: "water-soluble packet", lowRate: true }] }, "premix"),
    ).toEqual([]);
  });

  test("where no order asks for a slurry, that is said", () => {
    const reason = (kind: Formulation) =>
      stepsOf({ products: mix(kind) }).find(({ action }) => action === "premix")?.reason;
    expect(reason("WP")).toBe("Dry powder tipped straight in makes lumps.");
    expect(reason("WT")).toBe("Dry powder tipped straight in makes lumps. Common practice, no source.");
  });
});

describe("waits", () => {
  test("a mixing order that wants one after each product has it after a liquid, with its words", () => {
    const asking = mixingOrders.filter(({ afterEach }) => afterEach !== undefined);
    expect(asking.length).toBeGreaterThan(0);
    for (const { id, name, afterEach, steps } of asking) {
      const kind = steps.flat().find((one) => one === "EC" || one === "SC" || one === "SL") as Formulation;
      const waits = stepsOf({ products: mix(kind), mixingOrder: id }).filter(
        ({ action }) => action === "wait",
      );
      expect(waits.map(({ text, reason }) => [text, reason])).toEqual([[afterEach, `As ${name} prints it.`]]);
    }
  });

  test("without such an order there is none after a liquid, and one after a powder, a packet or a conditioner", () => {
    const waits = (kind: Formulation) => textsOf({ products: mix(kind) }, "wait").length;
    expect(["EC", "SL", "SC", "surfactant"].map((kind) => waits(kind as Formulation))).toEqual([0, 0, 0, 0]);
    expect(
      ["WP", "SP", "conditioner", "water-soluble packet", "dry fertilizer"].map((kind) =>
        waits(kind as Formulation),
      ),
    ).toEqual([1, 1, 1, 1, 1]);
  });
});

describe("why a product stands where it stands", () => {
  const reason = (kind: Formulation): string =>
    stepsOf({ products: mix(kind) }).find(({ action }) => action === "add")?.reason ?? "";

  test("few orders are named one by one, four and more are counted", () => {
    for (const kind of [
      "defoamer",
      "drift agent",
      "micronutrient",
      "EW",
      "CS",
      "EC",
      "WP",
      "dry fertilizer",
    ] as const) {
      const listing = mixingOrders.filter(({ steps }) => steps.flat().includes(kind));
      if (listing.length >= 4)
        expect(reason(kind)).toContain(`${listing.length} published mixing orders list this product type;`);
      else if (listing.length > 0)
        expect(reason(kind)).toContain(`: ${listing.map(({ name }) => name).join(", ")}.`);
    }
  });

  test("a reason comes with the source of it and with every order that lists the kind", () => {
    const add = stepsOf({ products: mix("WP") }).find(({ action }) => action === "add");
    const listing = mixingOrders.filter(({ steps }) => steps.flat().includes("WP"));
    expect(add?.sources.length).toBeGreaterThanOrEqual(listing.length);
    for (const source of add?.sources ?? []) expect(source.publisher).toMatch(/\S/);
  });
});

describe("cautions at each step", () => {
  const codes = (
    kind: Formulation,
    action: string,
    mixingOrder: LoadingOrderInput["mixingOrder"] = "consensus",
  ) =>
    stepsOf({ products: mix(kind), mixingOrder: mixingOrder ?? "consensus" })
      .filter((step) => step.action === action)
      .map(({ cautions }) => cautions.map(({ code }) => code));

  test("filling, topping up and agitating", () => {
    expect(codes("SL", "fill")).toEqual([["caution/backflow", "caution/stay-at-fill", "caution/empty-tank"]]);
    expect(codes("SL", "top up")).toEqual([
      ["caution/backflow", "caution/stay-at-fill", "caution/container-rinse"],
    ]);
    expect(codes("SL", "agitate")).toEqual([["caution/closed-tank"], ["caution/closed-tank"]]);
  });

  test("pouring a liquid, a powder and a packet, and shaking a container", () => {
    expect(codes("SL", "add")).toEqual([["caution/protective-equipment"]]);
    expect(codes("WP", "add")).toEqual([["caution/protective-equipment", "caution/dry-powder"]]);
    expect(codes("water-soluble packet", "add")).toEqual([["caution/water-soluble-packet"]]);
    expect(codes("water-soluble packet", "stop agitation")).toEqual([["caution/closed-tank"]]);
    expect(codes("EC", "shake", "manitoba-2013")).toEqual([["caution/protective-equipment"]]);
    expect(codes("WP", "wait")).toEqual([[]]);
  });
});

describe("what a mix is warned of", () => {
  test("a firm pair is told as turned round only where it is", () => {
    const found = (addBefore: readonly string[]) =>
      loadingOrder({
        products: [
          { id: "powder", formulation: "WP" },
          { id: "flowable", formulation: "SC", addBefore },
        ],
      }).findings.map(({ code }) => code);
    expect(found([])).not.toContain("order/firm-pair-overruled");
    expect(found(["powder"])).toContain("order/firm-pair-overruled");
  });

  test("a pair that is turned round but not firm is not told as firm", () => {
    // EC before SL is printed by six and the other way by five.
    const { findings, open } = loadingOrder({
      products: [
        { id: "ester", formulation: "EC" },
        { id: "amine", formulation: "SL", addBefore: ["ester"] },
      ],
    });
    expect(open).toHaveLength(1);
    expect(open[0]?.counts.against).toBeGreaterThan(open[0]?.counts.for as number);
    expect(findings.map(({ code }) => code)).not.toContain("order/firm-pair-overruled");
  });

  test("the jar test says that no objection is known where there are notes only", () => {
    const objection = (products: readonly MixProduct[]) =>
      loadingOrder({ products }).findings.find(({ code }) => code === "jar-test")?.params.publishedObjection;
    // An open pair is a note; a powder behind an emulsion is a warning.
    expect(objection(mix("EC", "SL"))).toBe("none known");
    expect(
      objection([
        { id: "e", formulation: "EC", addBefore: ["p"] },
        { id: "p", formulation: "WP" },
      ]),
    ).toBe("yes");
  });

  test("a label's word against a group names the group, one against a product the product", () => {
    const text = (labelProhibits: readonly string[]) =>
      loadingOrder({
        products: [
          { id: "a", formulation: "SC", labelProhibits },
          { id: "b", formulation: "SL", groups: ["ALS", "copper"] },
        ],
      }).findings.find(({ code }) => code === "mix/label-prohibits")?.text;
    expect(text(["ALS", "copper"])).toBe(
      "The label of a says not to mix it with b (ALS, copper). The label wins.",
    );
    expect(text(["b"])).toBe("The label of a says not to mix it with b. The label wins.");
    expect(text(["c"])).toBeUndefined();
  });

  test("a product is not held against itself", () => {
    const { findings } = loadingOrder({
      products: [
        { id: "a", formulation: "SC", groups: ["ALS"], labelProhibits: ["ALS"] },
        { id: "b", formulation: "SL" },
      ],
    });
    expect(findings.map(({ code }) => code)).not.toContain("mix/label-prohibits");
  });
});

describe("refusals of the input", () => {
  test("each says what would have been right, and the unknown order names the known ones", () => {
    const [order] = problemsOf(() => loadingOrder({ products: mix("SL"), mixingOrder: "x" as never }));
    expect(order).toMatchObject({
      code: "type",
      path: "mixingOrder",
      expected: '"consensus" or the id of a published mixingOrder',
    });
    expect(order?.choices).toEqual(mixingOrders.map(({ id }) => id));
    const [record] = problemsOf(() => loadingOrder({ products: mix("SL"), waterFirst: 7 as never }));
    expect([record?.code, record?.path]).toEqual(["type", "waterFirst"]);
    for (const source of ["", 7, undefined]) {
      const [who] = problemsOf(() =>
        loadingOrder({ products: mix("SL"), waterFirst: { fraction: 0.5, source } as never }),
      );
      expect(who).toMatchObject({ code: "missing", path: "waterFirst.source", expected: "who says so" });
    }
  });
});
