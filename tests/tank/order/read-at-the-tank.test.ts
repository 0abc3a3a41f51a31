import { describe, expect, test } from "vitest";
import { type Citation, quantity } from "../../../src/quantity/index.js";
import {
  type Formulation,
  type LoadingOrderInput,
  loadingOrder,
  type MixProduct,
  mixingOrders,
} from "../../../src/tank/index.js";

// Each step as a person reads it, with who stands behind it, written down from the sources apart from
// the code.

const mix = (...kinds: readonly Formulation[]): MixProduct[] =>
  kinds.map((formulation) => ({ id: formulation, formulation }));
const chosen = (mixingOrder: string): Partial<LoadingOrderInput> =>
  ({ mixingOrder }) as Partial<LoadingOrderInput>;

type Made = ReturnType<typeof loadingOrder>;
const stepsOf = (products: readonly MixProduct[], more: Partial<LoadingOrderInput> = {}): Made["steps"] =>
  loadingOrder({ products, ...more }).steps;
const stepOf = (products: readonly MixProduct[], action: string, more: Partial<LoadingOrderInput> = {}) =>
  stepsOf(products, more).find((step) => step.action === action);
const publishers = (sources: readonly Citation[] | undefined): readonly string[] =>
  (sources ?? []).map(({ publisher }) => publisher);

const manitoba = "Manitoba Agriculture";
const oklahoma = "Oklahoma State University Extension";
const dakota = "South Dakota State University Extension";
const michigan = "Michigan State University Extension";
const navy = "US Navy, NAVFAC";
const aapresid = "Aapresid, Argentina";

describe("the steps of filling", () => {
  test("are numbered from 1, each with who prints it", () => {
    const steps = stepsOf(mix("SL"));
    expect(steps.map(({ number, action }) => [number, action])).toEqual([
      [1, "fill"],
      [2, "agitate"],
      [3, "add"],
      [4, "top up"],
      [5, "agitate"],
    ]);
    expect(steps.filter(({ action }) => action !== "add").map(({ sources }) => publishers(sources))).toEqual([
      ["Missouri Department of Transportation", oklahoma, "Country Guide", manitoba],
      [dakota, manitoba],
      ["SportsField Management, by Iowa State University authors"],
      [dakota, "unsigned hand-out, Portugal"],
    ]);
  });

  test("an order that says nothing of the water is not given as the source of half a tank", () => {
    const fill = stepOf(mix("SL"), "fill", chosen("iowa-state-2021"));
    expect(fill?.reason).toBe("Half is what most of the sources print; they range from 25 % to 75 %.");
    expect(publishers(fill?.sources)).toHaveLength(4);
  });

  test("the filling between the products is told with its volume, its order and its source, also at the end", () => {
    const steps = stepsOf(mix("WP"), {
      ...chosen("south-dakota-state"),
      loadVolume: quantity(30, "gal", "spray"),
    });
    const fill = steps.filter(({ action }) => action === "fill").at(-1);
    expect(fill?.text).toBe(
      "Once the dry products are dispersed, fill with clean water to 80 % of the load, with agitation (24 gal).",
    );
    expect(fill?.reason).toBe("As South Dakota State prints it.");
    expect(publishers(fill?.sources)).toEqual([dakota]);
    expect(steps.slice(-3).map(({ action }) => action)).toEqual(["fill", "top up", "agitate"]);
    const without = stepsOf(mix("WP"), chosen("south-dakota-state"))
      .filter(({ action }) => action === "fill")
      .at(-1);
    expect(without?.text).toBe(
      "Once the dry products are dispersed, fill with clean water to 80 % of the load, with agitation.",
    );
  });

  test("a wait after the powders is printed for powders, a shaking for liquids that follow", () => {
    const actions = (mixingOrder: string, ...kinds: readonly Formulation[]): readonly string[] =>
      stepsOf(mix(...kinds), chosen(mixingOrder)).map(({ action }) => action);
    const around = (...between: readonly string[]): readonly string[] => [
      "fill",
      "agitate",
      ...between,
      "top up",
      "agitate",
    ];
    expect(actions("oklahoma-state", "SC", "EC")).toEqual(around("add", "add"));
    expect(actions("manitoba-2013", "SL")).toEqual(around("shake", "add"));
    expect(actions("manitoba-2013", "WP")).toEqual(around("premix", "add", "wait"));
    expect(actions("manitoba-2013", "WP", "EC")).toEqual(around("premix", "add", "wait", "shake", "add"));
  });
});

describe("the wait after a powder", () => {
  const waits = (mixingOrder: string, ...kinds: readonly Formulation[]) =>
    stepsOf(mix(...kinds), chosen(mixingOrder))
      .filter(({ action }) => action === "wait")
      .map(({ text, sources }) => [text, publishers(sources)]);
  const common = [
    "Agitate a few minutes until it is evenly dispersed.",
    [manitoba, oklahoma, "Country Guide"],
  ];

  test("is printed once, in the words of the order that is followed", () => {
    expect(waits("oklahoma-state", "WP", "EC")).toEqual([
      ["Agitate a few minutes until the dry products are in solution.", [oklahoma]],
    ]);
    expect(waits("manitoba-2013", "WP", "EC")).toEqual([["Agitate a few minutes.", [manitoba]]]);
  });

  test("is that of the others where the order prints none, or prints something else there", () => {
    expect(waits("consensus", "WP")).toEqual([common]);
    expect(waits("missouri-dot", "WP")).toEqual([common]);
    // South Dakota prints a filling after its powders, and no wait.
    expect(waits("south-dakota-state", "WP")).toEqual([common]);
  });

  test("of a packet, of ammonium sulfate and of what dissolves has its source", () => {
    expect(waits("consensus", "water-soluble packet").map(([, sources]) => sources)).toEqual([
      ["Ontario Pesticide Education Program", manitoba],
    ]);
    expect(stepOf(mix("conditioner"), "wait")?.sources).toEqual([
      { title: "Water quality before mixing", publisher: "WeedSmart, Australia", where: "ammonium sulfate" },
    ]);
    expect(waits("consensus", "SG").map(([, sources]) => sources)).toEqual([
      ["North Dakota State University Extension"],
    ]);
    expect(stepOf(mix("water-soluble packet"), "stop agitation")?.sources).toEqual([
      { title: "Water Soluble Packages", publisher: "Ontario Pesticide Education Program", year: 2017 },
    ]);
  });

  test("after each product stands with the order that wants it", () => {
    expect(waits("iowa-state-2021", "EC")).toEqual([
      [
        "Wait a few minutes for it to dissolve or disperse.",
        ["SportsField Management, by Iowa State University authors"],
      ],
    ]);
  });
});

describe("the pouring of a product", () => {
  const add = (kind: Formulation, more: Partial<LoadingOrderInput> = {}) => stepOf(mix(kind), "add", more);

  test("names how the order that is followed wants it, and its number there", () => {
    const step = add("WP", chosen("manitoba-2013"));
    expect(step?.text).toBe("Pour in WP, slowly. Rinse the bucket into the tank. Manitoba: slowly.");
    expect(step?.reason).toBe("Manitoba lists it as number 3 of 6.");
    expect(publishers(step?.sources)).toEqual([manitoba]);
    expect(add("SC", chosen("manitoba-2013"))?.text).toBe("Add SC.");
  });

  test("carries its amount, and none where none is stated", () => {
    const amount = quantity(3, "pt", "product:a");
    const step = (product: Partial<MixProduct>) =>
      stepOf([{ id: "a", formulation: "SC", ...product }], "add");
    expect(step({ amount })?.amount?.toString()).toBe("3 pt of product:a");
    expect(step({})).not.toHaveProperty("amount");
  });

  test("the bucket names its product", () => {
    for (const kind of ["WP", "SP"] as const) expect(stepOf(mix(kind), "premix")?.productId).toBe(kind);
  });

  const counted =
    " published mixing orders list this product type; this place keeps the most of their rankings.";
  test.each<readonly [Formulation, string, publisher: string]>([
    ["WP", "Add dry products before ECs. A powder added after an EC can form a floating putty.", michigan],
    ["WG", "Add dry products before ECs. A powder added after an EC can form a floating putty.", michigan],
    ["EC", "Add ECs after dry products. A powder added after an EC can form a floating putty.", michigan],
    ["SG", "Dissolve dry products before liquids go in.", navy],
    ["SP", "Dissolve dry products before liquids go in.", navy],
    ["SC", "Solids before liquids, suspensions before solutions.", aapresid],
    ["CS", "Solids before liquids, suspensions before solutions.", aapresid],
    [
      "conditioner",
      "Condition the water before any other product goes in.",
      "University of Wisconsin-Madison Division of Extension",
    ],
    ["surfactant", "Surfactants can foam while the tank is being filled, so they go in late.", dakota],
    [
      "water-soluble packet",
      "The film has to dissolve in clean water: chlorine and sulfur ions from fertilizers and some organic solvents slow it.",
      manitoba,
    ],
  ])(
    "%s stands where it stands for a reason that a source prints, and by a count",
    (kind, reason, publisher) => {
      const like = kind === "SG" || kind === "SP" ? ["SG", "SP"] : [kind];
      const listing = mixingOrders.filter(({ steps }) => steps.flat().some((one) => like.includes(one)));
      const step = add(kind);
      expect(step?.reason).toBe(`${reason} ${listing.length}${counted}`);
      expect(publishers(step?.sources)).toEqual([
        publisher,
        ...listing.map(({ source }) => source.publisher),
      ]);
    },
  );

  test("one without such a reason stands by the count alone, and a rare one by the names", () => {
    expect(add("EW")?.reason).toMatch(/^4 published mixing orders list/);
    const rare = add("conditioner with surfactant");
    expect(rare?.reason).toBe(
      "A premix of ammonium sulfate and surfactant typically goes in last. Few published mixing orders list this product type: Oklahoma State.",
    );
    expect(publishers(rare?.sources)).toEqual([oklahoma, oklahoma]);
  });

  test("the reasons cite where they were read", () => {
    expect(["WP", "SG", "conditioner", "SC"].map((kind) => add(kind as Formulation)?.sources[0])).toEqual([
      { title: "Tank mixing spray partners", publisher: michigan, where: "physical incompatibility" },
      { title: "MO-314, ch. 9-2, Mixing Procedures", publisher: navy },
      {
        title: "Understanding the chemistry behind herbicide applications (field-day report)",
        publisher: "University of Wisconsin-Madison Division of Extension",
        year: 2024,
        where: "tips",
      },
      {
        title: "Bases for good mixes of plant-protection products",
        publisher: aapresid,
        year: 2023,
        where: "2, mixing order",
      },
    ]);
  });
});
