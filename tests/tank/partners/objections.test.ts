import { describe, expect, test } from "vitest";
import {
  type Formulation,
  incompatibilities,
  type MixProduct,
  mixRuleSources,
} from "../../../src/tank/index.js";

// What is told of products that do not go together, word for word, and of what nobody knows.

const found = (...products: readonly MixProduct[]) => incompatibilities({ products }).findings;
const having = (
  id: string,
  formulation: Formulation,
  ...contains: NonNullable<MixProduct["contains"]>
): MixProduct => ({
  id,
  formulation,
  contains,
});

describe("what published experience has against a mix", () => {
  const amine = having("amine", "SL", "amine phenoxy");
  const sulfate = having("sulfate", "conditioner", "ammonium sulfate");
  const thiosulfate = having("feed", "liquid fertilizer", "ammonium thiosulfate");
  const bag = having("bag", "water-soluble packet");
  const plain = having("plain", "SC");

  const texts: readonly (readonly [
    what: string,
    products: readonly MixProduct[],
    code: string,
    severity: string,
    text: string,
    params: object,
  ])[] = [
    [
      "iron sulfate with an amine",
      [having("iron", "SP", "iron sulfate"), amine],
      "mix/iron-and-amine",
      "warning",
      "iron (iron sulfate) and amine (amine phenoxy): in a published trial iron sulfate weakened 2,4-D amine, and its authors advise against mixing the two.",
      { first: "iron", second: "amine" },
    ],
    [
      "ammonium sulfate before an amine",
      [sulfate, amine],
      "mix/undissolved-sulfate-and-amine",
      "caution",
      "sulfate (ammonium sulfate) must be fully dissolved before amine (amine phenoxy) goes in: undissolved, the two form a precipitate that does not redissolve.",
      { first: "sulfate", second: "amine", late: "no" },
    ],
    [
      "ammonium sulfate after an amine",
      [amine, sulfate],
      "mix/undissolved-sulfate-and-amine",
      "warning",
      "sulfate (ammonium sulfate) must be fully dissolved before amine (amine phenoxy) goes in, but comes after it here: undissolved, the two form a precipitate that does not redissolve.",
      { first: "sulfate", second: "amine", late: "yes" },
    ],
    [
      "thiosulfate last",
      [plain, thiosulfate],
      "mix/thiosulfate-last",
      "caution",
      "feed (ammonium thiosulfate) goes in last, once the rest is thoroughly mixed. As the sole carrier it never mixed well in published tests.",
      { product: "feed", before: [] },
    ],
    [
      "thiosulfate before another product",
      [thiosulfate, plain],
      "mix/thiosulfate-last",
      "warning",
      "feed (ammonium thiosulfate) goes in last, once the rest is thoroughly mixed, but comes before plain here.",
      { product: "feed", before: ["plain"] },
    ],
    [
      "a packet with what keeps its film from dissolving, behind it",
      [bag, sulfate],
      "mix/film-hindered",
      "caution",
      "The packets of bag must be fully dissolved before sulfate: chlorine and sulfur ions and some solvents keep the film from dissolving.",
      { product: "bag", others: ["sulfate"], early: [] },
    ],
    [
      "a packet with what keeps its film from dissolving, before it",
      [sulfate, bag],
      "mix/film-hindered",
      "warning",
      "sulfate comes before the packets of bag: chlorine and sulfur ions and some solvents keep the film from dissolving.",
      { product: "bag", others: ["sulfate"], early: ["sulfate"] },
    ],
    [
      "a compatibility agent",
      [having("agent", "compatibility agent"), plain],
      "mix/compatibility-agent",
      "note",
      "Some herbicides cannot be mixed with a compatibility agent such as agent: see their labels.",
      { product: "agent" },
    ],
    [
      "micronutrients",
      [having("micro", "SL", "micronutrients"), plain],
      "mix/micronutrient-fines",
      "note",
      "micro contains micronutrients, which can raise the share of fine droplets that drift.",
      { product: "micro" },
    ],
  ];

  test.each(texts)("%s", (_, products, code, severity, text, params) => {
    const here = found(...products).filter((one) => one.code === code);
    expect(here).toHaveLength(1);
    expect(here[0]).toEqual({
      code,
      severity,
      text,
      params,
      source: mixRuleSources[code as keyof typeof mixRuleSources],
    });
  });

  test("thiosulfate before a helper only is last all the same", () => {
    expect(found(thiosulfate, having("wetter", "surfactant"))[0]?.severity).toBe("caution");
  });

  test("each thing that hinders a film, by what it is or by what it holds, and nothing else", () => {
    for (const other of [
      having("x", "dry fertilizer"),
      having("x", "liquid fertilizer"),
      having("x", "SL", "ammonium sulfate"),
      having("x", "SL", "ammonium thiosulfate"),
      having("x", "SL", "chloride or sulfur fertilizer"),
      having("x", "EC", "organic solvent"),
    ])
      expect(found(bag, other).map(({ code }) => code)).toContain("mix/film-hindered");
    for (const other of [having("x", "SL", "amine phenoxy"), having("x", "SL", "iron sulfate"), plain])
      expect(found(bag, other).map(({ code }) => code)).not.toContain("mix/film-hindered");
  });

  test("a packet that holds such a thing itself is not held against itself", () => {
    expect(found(having("bag", "water-soluble packet", "ammonium sulfate"), plain)).toEqual([]);
  });

  test("one product that holds both is not held against itself", () => {
    expect(found(having("both", "SL", "ammonium sulfate", "amine phenoxy", "iron sulfate"))).toEqual([]);
  });

  test("two agents are told once, and a product of micronutrients by its kind", () => {
    const agents = [having("one", "compatibility agent"), having("two", "compatibility agent")];
    expect(found(...agents).map(({ params }) => params.product)).toEqual(["one"]);
    expect(found(having("m", "micronutrient")).map(({ code }) => code)).toEqual(["mix/micronutrient-fines"]);
  });
});

describe("how many partners", () => {
  const kinds = (...list: readonly Formulation[]) =>
    found(...list.map((formulation, i) => having(`p${i}`, formulation))).filter(
      ({ code }) => code === "mix/many-partners",
    );

  test("three are as advised, four are told", () => {
    expect(kinds("SC", "SL", "EC")).toEqual([]);
    const [told] = kinds("SC", "SL", "EC", "WP");
    expect(told).toMatchObject({ severity: "caution", params: { partners: 4, most: 3 } });
    expect(told?.text).toBe(
      "4 products besides adjuvants and conditioners: a published guide advises 3 at most, because their formulation ingredients interfere with each other.",
    );
  });

  test.each([
    "conditioner",
    "conditioner with surfactant",
    "compatibility agent",
    "defoamer",
    "dry drift agent",
    "drift agent",
    "surfactant",
    "oil adjuvant",
  ] as const)("a %s is no partner", (kind) => {
    expect(kinds("SC", "SL", "EC", kind)).toEqual([]);
  });

  test("fertilizers and packets are partners", () => {
    for (const kind of [
      "dry fertilizer",
      "liquid fertilizer",
      "micronutrient",
      "water-soluble packet",
    ] as const)
      expect(kinds("SC", "SL", "EC", kind)).toHaveLength(1);
  });
});

describe("what is not known of a mix", () => {
  const notChecked = (products: readonly MixProduct[], country?: "UK") =>
    incompatibilities({ products, ...(country && { country }) }).notChecked;

  test("names the products of which the contents or the groups are not stated", () => {
    const silent: MixProduct[] = [
      { id: "a", name: "Alpha", formulation: "SC" },
      { id: "b", formulation: "SL", contains: [], groups: [] },
      { id: "c", formulation: "SL" },
    ];
    expect(notChecked(silent)).toContain('rules about ingredients, for Alpha, c: "contains" is not stated');
    expect(notChecked(silent)).toContain("rules of a country on groups of active ingredients: none is named");
    const uk = notChecked(silent, "UK");
    expect(uk).toContain('rules on groups of active ingredients, for Alpha, c: "groups" is not stated');
    expect(uk.join("; ")).not.toContain("none is named");
    const stated = notChecked([silent[1] as MixProduct], "UK");
    expect(stated.join("; ")).not.toContain("is not stated");
    expect(stated).toContain("what the labels say beyond what is stated here");
    expect(stated.join("; ")).toContain("jar-test them");
  });

  test("the answer is of what stands against it: notes do not, warnings do", () => {
    const answer = (...products: readonly MixProduct[]) => incompatibilities({ products }).answer;
    expect(answer(having("micro", "micronutrient"))).toBe("no published objection known; jar-test it");
    expect(answer(having("s", "conditioner", "ammonium sulfate"), having("a", "SL", "amine phenoxy"))).toBe(
      "published objections stand; see the findings",
    );
  });

  test("what was checked is said, with the country where one is named", () => {
    const { checked } = incompatibilities({ products: [having("a", "SC")] });
    expect(checked).toEqual([
      "what the labels prohibit, as far as stated",
      "published experience with the ingredients that are stated",
      "the number of partners against published advice (3 at most)",
    ]);
    expect(incompatibilities({ products: [having("a", "SC")], country: "UK" }).checked[3]).toBe(
      "rules of the UK on groups of active ingredients",
    );
  });
});

describe("two of a group", () => {
  const pair = (first: object, second: object) =>
    incompatibilities({
      products: [
        { id: "a", formulation: "SC", groups: ["ALS"], contains: [], ...first },
        { id: "b", formulation: "SL", groups: ["ALS"], contains: [], ...second },
      ],
      country: "UK",
    }).findings;

  test("are told where the country rules on the group", () => {
    const [told] = pair({}, {});
    expect(told).toMatchObject({
      code: "mix/two-of-a-group",
      severity: "warning",
      params: { first: "a", second: "b", group: "ALS", country: "UK" },
      text: "a and b are both ALS: in the UK an ALS herbicide is not mixed with, or followed by, another one unless the label says so.",
    });
    expect(told?.source).toMatchObject({ publisher: "UK Health and Safety Executive" });
    const both = pair({ groups: ["anticholinesterase"] }, { groups: ["anticholinesterase"] });
    expect(both[0]?.text).toContain("two or more anticholinesterase products are not mixed unless");
    expect(pair({ groups: ["SDHI"] }, { groups: ["SDHI"] })).toEqual([]);
    expect(pair({ groups: ["anticholinesterase"] }, {})).toEqual([]);
  });

  test("are not, where either label names the other", () => {
    expect(pair({ labelNames: ["b"] }, {})).toEqual([]);
    expect(pair({}, { labelNames: ["a"] })).toEqual([]);
    expect(pair({ labelNames: [] }, { labelNames: [] })).toHaveLength(1);
  });
});

test("what a label says against another product is told with both, and the label is its source", () => {
  const { findings } = incompatibilities({
    products: [
      { id: "a", name: "Alpha", formulation: "SC", labelProhibits: ["copper"] },
      { id: "b", formulation: "SL", groups: ["copper"] },
    ],
  });
  expect(findings.filter(({ code }) => code === "mix/label-prohibits")).toEqual([
    {
      code: "mix/label-prohibits",
      severity: "warning",
      params: { product: "a", other: "b", prohibits: ["copper"] },
      text: "The label of Alpha says not to mix it with b (copper). The label wins.",
      source: "the label of Alpha",
    },
  ]);
});
