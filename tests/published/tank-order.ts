import { quantity } from "../../src/quantity/index.js";
import {
  codeMeanings,
  type Formulation,
  incompatibilities,
  internationalCodes,
  labelAbbreviations,
  loadingOrder,
  type MixingOrderId,
  type MixProduct,
  mixingOrderTable,
  pairOrder,
} from "../../src/tank/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";

const products = (steps: readonly (readonly Formulation[])[]): MixProduct[] =>
  steps.flat().map((formulation) => ({ id: formulation, formulation }));

/** The number of the printed step at which the computed order adds a kind: those of which all kinds stand before it, and one. */
const stepsOf = (
  mixingOrder: MixingOrderId,
  steps: readonly (readonly Formulation[])[],
): readonly number[] => {
  const { order } = loadingOrder({ products: products(steps).reverse(), mixingOrder });
  return steps.flat().map((kind) => {
    const place = order.indexOf(kind);
    return 1 + steps.filter((kinds) => kinds.every((other) => order.indexOf(other) < place)).length;
  });
};

interface Printed {
  readonly entry: string;
  readonly mixingOrder: MixingOrderId;
  readonly source: Source;
  /** Products by printed step. */
  readonly steps: readonly (readonly Formulation[])[];
  /** How full of water first, as printed in percent. */
  readonly water?: readonly [number, number];
  readonly note?: string;
}

const orders: readonly Printed[] = [
  {
    entry: "mix-001",
    mixingOrder: "manitoba-2013",
    source: {
      title: "General rules for mixing pesticide (Manitoba Guide to Crop Protection)",
      publisher: "Canola Council of Canada",
      year: 2013,
      where: "list 1-10 and exception",
    },
    steps: [
      ["water-soluble packet"],
      ["liquid fertilizer", "conditioner"],
      ["WP", "WG", "SC"],
      ["SL"],
      ["EC"],
      ["surfactant", "oil adjuvant"],
    ],
    water: [25, 75],
  },
  {
    entry: "mix-002",
    mixingOrder: "south-dakota-state",
    source: {
      title: "Preparing Spray Solutions: Mixing Order",
      publisher: "South Dakota State University Extension",
    },
    steps: [
      ["conditioner"],
      ["compatibility agent"],
      ["defoamer"],
      ["WP", "WG", "water-soluble packet"],
      ["SL", "SC"],
      ["EC"],
      ["CS"],
      ["surfactant", "oil adjuvant", "drift agent"],
    ],
    note: "A third of the water first is printed as 1/3.",
  },
  {
    entry: "mix-003",
    mixingOrder: "oklahoma-state",
    source: { title: "Herbicide Mixing Order, PSS-2789", publisher: "Oklahoma State University Extension" },
    steps: [
      ["compatibility agent", "defoamer"],
      ["conditioner"],
      ["WP", "WG"],
      ["CS", "SC"],
      ["SL"],
      ["EC"],
      ["surfactant", "oil adjuvant"],
    ],
    water: [50, 75],
  },
  {
    entry: "mix-005",
    mixingOrder: "missouri-dot",
    source: {
      title: "Engineering Policy Guide 821.12, item C",
      publisher: "Missouri Department of Transportation",
    },
    steps: [["conditioner"], ["WP"], ["SC"], ["WG"], ["EC"], ["SL"], ["surfactant"]],
    water: [50, 50],
  },
  {
    entry: "mix-006",
    mixingOrder: "iowa-state-2021",
    source: {
      title: "Tank Mixing Procedures",
      publisher: "SportsField Management, by Iowa State University authors",
      year: 2021,
      where: "May, p. 21",
    },
    steps: [
      ["water-soluble packet"],
      ["SG", "WG", "WP"],
      ["conditioner", "dry drift agent", "compatibility agent"],
      ["CS", "EW", "SC", "SE"],
      ["drift agent"],
      ["EC", "OD", "SL"],
      ["oil adjuvant", "surfactant"],
      ["liquid fertilizer", "micronutrient"],
      ["defoamer"],
    ],
  },
  {
    entry: "mix-007",
    mixingOrder: "utah-state-2012",
    source: {
      title: "Using a Jar Test",
      publisher: "Utah State University Extension",
      year: 2012,
      where: "list 1-9",
    },
    steps: [
      ["conditioner"],
      ["water-soluble packet"],
      ["WP"],
      ["WG"],
      ["CS"],
      ["EC"],
      ["SL"],
      ["SP"],
      ["surfactant"],
      ["liquid fertilizer"],
    ],
    note: "The pH adjustment before the list counts as step 1.",
  },
  {
    entry: "mix-008",
    mixingOrder: "grain-sa-2018",
    source: { title: "Grain Guide 2018", publisher: "Grain SA", year: 2018, where: "p. 86" },
    steps: [
      ["conditioner"],
      ["water-soluble packet"],
      ["SG"],
      ["WP"],
      ["SC"],
      ["CS"],
      ["SE"],
      ["EW"],
      ["EC"],
      ["liquid fertilizer"],
      ["SL"],
      ["surfactant"],
    ],
  },
  {
    entry: "mix-009",
    mixingOrder: "north-dakota-state-2021",
    source: {
      title: "Proper Tank Mixing Order (A.P.P.L.E.S., North Dakota Weed Control Guide 2021)",
      publisher: "trade page quoting North Dakota State University Extension",
      year: 2021,
    },
    steps: [
      ["SG", "SP", "dry fertilizer", "conditioner"],
      ["WG", "WP"],
      ["SC", "CS", "SE"],
      ["EC", "EW", "OD", "oil adjuvant"],
      ["SL", "surfactant"],
    ],
  },
  {
    entry: "mix-010",
    mixingOrder: "ontario-wales",
    source: { title: "Pest Patrol: order for tank mixing", publisher: "Country Guide", where: "W.A.L.E.S." },
    steps: [["WP", "WG"], ["SC"], ["EC"], ["SL", "surfactant"]],
    water: [50, 75],
  },
  {
    entry: "mix-011",
    mixingOrder: "portugal-handout",
    source: {
      title: "Ordem de mistura de produtos",
      publisher: "unsigned hand-out, Portugal",
      where: "list 1-9",
    },
    steps: [["WG"], ["SP"], ["WP"], ["SC"], ["EW"], ["EO"], ["EC"], ["SL"], ["surfactant", "oil adjuvant"]],
  },
  {
    entry: "mix-012",
    mixingOrder: "us-core-manual",
    source: { title: "National core manual, ch. 10 (study sheet)", publisher: "NASDA Research Foundation" },
    steps: [["compatibility agent"], ["WP", "WG"], ["SC"], ["SL"], ["surfactant"], ["EC"]],
  },
  {
    entry: "mix-013",
    mixingOrder: "croplife-latin-america-2024",
    source: {
      title: "What to know about mixing plant-protection products",
      publisher: "CropLife Latin America",
      year: 2024,
    },
    steps: [["conditioner"], ["SL", "SG", "SP"], ["WP", "WG", "SC", "EC"]],
  },
];

const orderCheck = ({ entry, mixingOrder, source, steps, water, note }: Printed): PublishedCheck => ({
  entry,
  kind: "transcription",
  formulas: ["loadingOrder"],
  source,
  reached: "read",
  given: "one product of each kind that the list names",
  answers: [
    ...steps.flatMap((kinds, i) => kinds.map((kind) => ({ of: `step of ${kind}`, printed: i + 1, to: 1 }))),
    ...(water ?? []).map((printed, i) => ({
      of: `% of water first, ${i === 0 ? "least" : "most"}`,
      printed,
      to: 1,
    })),
  ],
  compute: () => {
    const first = loadingOrder({ products: products(steps), mixingOrder }).steps[0]?.fraction ?? [];
    return [...stepsOf(mixingOrder, steps), ...(water === undefined ? [] : first.map((part) => part * 100))];
  },
  ...(note !== undefined && { note }),
});

/** 1 where it is so, 0 where it is not. */
const so = (value: boolean): number => (value ? 1 : 0);
const before = (
  list: readonly MixProduct[],
  first: string,
  second: string,
  mixingOrder?: MixingOrderId,
): number => {
  const { order } = loadingOrder({ products: list, ...(mixingOrder && { mixingOrder }) });
  return so(order.indexOf(first) < order.indexOf(second));
};

const kinds = (...list: readonly Formulation[]): MixProduct[] => products([list]);

/** Published loading orders and mixing rules, step by step, and what follows from them. */
export const tankOrderChecks: readonly PublishedCheck[] = [
  ...orders.map(orderCheck),
  {
    entry: "mix-015",
    kind: "transcription",
    formulas: ["loadingOrder"],
    source: { title: "Mixing Instructions for Liquid Herbicides, L-1839", publisher: "Texas A&M AgriLife" },
    reached: "read",
    given: "one water-soluble amine or salt",
    answers: [
      { of: "% of water first", printed: 50, to: 1 },
      { of: "the product before the rest of the water (1 = yes)", printed: 1, to: 1 },
    ],
    compute: () => {
      const { steps } = loadingOrder({ products: kinds("SL") });
      const place = (action: string): number => steps.findIndex((step) => step.action === action);
      return [(steps[0]?.fraction?.[0] ?? 0) * 100, so(place("add") < place("top up"))];
    },
  },
  {
    entry: "mix-016",
    kind: "transcription",
    formulas: ["loadingOrder"],
    source: { title: "MO-314, ch. 9-2, Mixing Procedures", publisher: "US Navy, NAVFAC" },
    reached: "read",
    given: "a soluble powder and a liquid",
    answers: [
      { of: "% of water first", printed: 50, to: 1 },
      { of: "the powder, dissolved, before the liquid (1 = yes)", printed: 1, to: 1 },
    ],
    compute: () => [
      (loadingOrder({ products: kinds("SL", "SP") }).steps[0]?.fraction?.[0] ?? 0) * 100,
      before(kinds("SL", "SP"), "SP", "SL"),
    ],
  },
  {
    entry: "mix-018",
    kind: "transcription",
    formulas: ["loadingOrder"],
    source: { title: "Water Soluble Packages", publisher: "Ontario Pesticide Education Program", year: 2017 },
    reached: "read",
    given: "packets and a flowable",
    answers: [
      { of: "minutes until dissolved, or longer", printed: 5, to: 1 },
      { of: "agitation stopped before they go in (1 = yes)", printed: 1, to: 1 },
      { of: "packets before the other product (1 = yes)", printed: 1, to: 1 },
    ],
    compute: () => {
      const { steps } = loadingOrder({ products: kinds("SC", "water-soluble packet") });
      const stop = steps.findIndex(({ action }) => action === "stop agitation");
      const minutes = steps.find((step) => step.minutes !== undefined)?.minutes ?? 0;
      return [
        minutes,
        so(steps[stop + 1]?.productId === "water-soluble packet"),
        before(kinds("SC", "water-soluble packet"), "water-soluble packet", "SC"),
      ];
    },
  },
  {
    entry: "mix-020",
    kind: "transcription",
    formulas: ["loadingOrder", "pairOrder"],
    source: { title: "Tank mixing spray partners", publisher: "Michigan State University Extension" },
    reached: "read",
    given: "an EC that its label puts before a WP",
    answers: [
      { of: "warnings of a putty-like mass", printed: 1, to: 1 },
      { of: "orders that print EC before WP", printed: 0, to: 1 },
    ],
    compute: () => {
      const [ec, wp] = kinds("EC", "WP") as [MixProduct, MixProduct];
      const { findings } = loadingOrder({ products: [{ ...ec, addBefore: ["WP"] }, wp] });
      return [
        findings.filter(({ code }) => code === "order/emulsion-before-powder").length,
        pairOrder("EC", "WP").for.length,
      ];
    },
  },
  {
    entry: "mix-021",
    kind: "transcription",
    formulas: ["incompatibilities"],
    source: { title: "Pest Patrol: jar test with fertilizers and herbicides", publisher: "Country Guide" },
    reached: "read",
    given: "ammonium thiosulfate before and after a herbicide",
    answers: [
      { of: "warnings where it goes first", printed: 1, to: 1 },
      { of: "warnings where it goes last", printed: 0, to: 1 },
    ],
    compute: () => {
      const ats: MixProduct = {
        id: "ats",
        formulation: "liquid fertilizer",
        contains: ["ammonium thiosulfate"],
      };
      const herbicide: MixProduct = { id: "h", formulation: "SL", contains: [] };
      return [
        [ats, herbicide],
        [herbicide, ats],
      ].map(
        (list) =>
          incompatibilities({ products: list }).findings.filter(({ severity }) => severity === "warning")
            .length,
      );
    },
  },
  {
    entry: "mix-022",
    kind: "transcription",
    formulas: ["loadingOrder"],
    source: {
      title: "Don't start mixing until the water quality is right",
      publisher: "WeedSmart, Australia",
    },
    reached: "read",
    given: "ammonium sulfate and 2,4-D amine",
    answers: [
      { of: "sulfate before the amine (1 = yes)", printed: 1, to: 1 },
      { of: "a wait until it is dissolved between the two (1 = yes)", printed: 1, to: 1 },
    ],
    compute: () => {
      const { steps } = loadingOrder({ products: kinds("SL", "conditioner") });
      const place = (id: string): number => steps.findIndex(({ productId }) => productId === id);
      const wait = steps.findIndex(({ action }) => action === "wait");
      return [
        before(kinds("SL", "conditioner"), "conditioner", "SL"),
        so(place("conditioner") < wait && wait < place("SL")),
      ];
    },
  },
  {
    entry: "mix-024",
    kind: "transcription",
    formulas: ["incompatibilities"],
    source: {
      title: "Tank-mix recommendations on pesticide product labels",
      publisher: "UK Health and Safety Executive",
    },
    reached: "read",
    given: "two anticholinesterase products; two ALS herbicides; one of each; two that a label names",
    answers: [1, 1, 0, 0].map((printed, i) => ({
      of: `objections, case ${i + 1}`,
      printed,
      to: 1,
    })),
    compute: () => {
      const one = (group: string): MixProduct => ({ id: "a", formulation: "SL", groups: [group] });
      const two = (group: string, more: object = {}): MixProduct => ({ ...one(group), id: "b", ...more });
      return [
        [one("anticholinesterase"), two("anticholinesterase")],
        [one("ALS"), two("ALS")],
        [one("ALS"), two("anticholinesterase")],
        [one("ALS"), two("ALS", { labelNames: ["a"] })],
      ].map(
        (list) =>
          incompatibilities({ products: list, country: "UK" }).findings.filter(
            ({ code }) => code === "mix/two-of-a-group",
          ).length,
      );
    },
  },
  {
    entry: "mix-029",
    kind: "transcription",
    formulas: ["codeMeanings"],
    source: {
      title: "Catalogue of pesticide formulation types and international coding system, 7th edition",
      publisher: "CropLife International",
      year: 2017,
    },
    reached: "read",
    given: "the codes of the list, each asked for by itself",
    answers: [{ of: "codes that have an international meaning", printed: 65, to: 1 }],
    compute: () => [
      Object.keys(internationalCodes).filter((code) =>
        codeMeanings(code).some(({ scheme }) => scheme === "international"),
      ).length,
    ],
  },
  {
    entry: "mix-031",
    kind: "transcription",
    formulas: ["codeMeanings"],
    source: labelAbbreviations["New England"].source,
    reached: "read",
    given: "SL, SC, WSP and SG in the New England list",
    answers: [1, 1, 1, 0].map((printed, i) => ({
      of: `meanings of ${["SL", "SC", "WSP", "SG"][i]}`,
      printed,
      to: 1,
    })),
    compute: () =>
      ["SL", "SC", "WSP", "SG"].map(
        (code) => codeMeanings(code).filter(({ scheme }) => scheme === "New England").length,
      ),
  },
  {
    entry: "mix-027",
    formulas: ["mixingOrderTable"],
    source: { title: "pairwise majority of twelve printed orders", publisher: "derived by hand" },
    reached: "derived",
    given: "the orders of mix-001 to mix-013, ties not counted",
    answers: [
      { of: "rankings kept by the best order", printed: 422, to: 1 },
      { of: "rankings in all", printed: 448, to: 1 },
    ],
    compute: () => {
      const { best, total } = mixingOrderTable();
      return [best, total];
    },
    note: "Utah State's 'adjuvant' is not read as an oil, and CropLife Latin America's third class as WP, WG, SC and EC.",
  },
  {
    entry: "mix-019",
    kind: "transcription",
    formulas: ["loadingOrder"],
    source: {
      title: "Understanding the chemistry behind herbicide applications (field-day report)",
      publisher: "University of Wisconsin-Madison Division of Extension",
      year: 2024,
    },
    reached: "read",
    given: "a water conditioner among five other kinds",
    answers: [{ of: "place of the conditioner", printed: 1, to: 1 }],
    compute: () => [
      loadingOrder({ products: kinds("WP", "SC", "EC", "SL", "surfactant", "conditioner") }).order.indexOf(
        "conditioner",
      ) + 1,
    ],
  },
  {
    entry: "mix-002",
    kind: "transcription",
    formulas: ["loadingOrder"],
    source: {
      title: "Preparing Spray Solutions: Mixing Order",
      publisher: "South Dakota State University Extension",
    },
    reached: "read",
    given: "a powder and an EC in a load of 90 gal",
    answers: [
      { of: "gal of water first", printed: 30, to: 1 },
      { of: "gal once the dry products are in (80 %)", printed: 72, to: 1 },
    ],
    compute: () =>
      loadingOrder({
        products: kinds("WP", "EC"),
        mixingOrder: "south-dakota-state",
        loadVolume: quantity(90, "gal", "spray"),
      })
        .steps.filter(({ action }) => action === "fill")
        .map(({ volume }) => volume?.[0].in("gal") ?? 0),
  },
];

/** Published orders and rules that these checks leave out, and why. */
export const tankOrderLeftOut: readonly LeftOut[] = [
  { entry: "mix-004", reason: "an opening of the same publication as mix-003, cut before its order begins" },
  { entry: "mix-014", reason: "a principle without steps: it stands among the reasons of loadingOrder" },
  { entry: "mix-028", reason: "from memory: not used" },
  { entry: "mix-030", reason: "from memory: not used" },
  { entry: "mix-032", reason: "a list of abbreviations, held as data: tests/tank reads every one of them" },
  { entry: "mix-033", reason: "a list of abbreviations, held as data: tests/tank reads every one of them" },
];
