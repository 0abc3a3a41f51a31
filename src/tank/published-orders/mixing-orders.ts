import { frozen } from "../../quantity/index.js";
import type { Formulation } from "../formulation/formulation.js";
import { type MixingOrder, stepIn } from "./mixing-order.js";

/**
 * The published loading orders that were read in full or as a full list, one record per source. They
 * are facts about what each source prints, codes as the source means them. Several descend from one
 * acronym, so a count of mixing orders is no weight of evidence.
 */
export const mixingOrders: readonly MixingOrder[] = /* @__PURE__ */ frozen([
  {
    id: "manitoba-2013",
    name: "Manitoba",
    source: {
      title: "Guide to Crop Protection, general rules for mixing, relayed by the Canola Council of Canada",
      publisher: "Manitoba Agriculture",
      year: 2013,
      where: "list 1-10 and its exception",
    },
    reached: "second-hand",
    waterFirst: [0.25, 0.75],
    steps: [
      ["water-soluble packet"],
      ["liquid fertilizer", "conditioner"],
      ["WP", "WG", "SC"],
      ["SL"],
      ["EC"],
      ["surfactant", "oil adjuvant"],
    ],
    between: [
      { afterStep: 2, action: "wait", text: "Agitate a few minutes." },
      { afterStep: 2, action: "shake", text: "Shake the containers of liquid products thoroughly." },
    ],
    how: {
      WP: "slowly",
      WG: "slowly",
      "water-soluble packet": "straight after the water, and fully dissolved before the next",
    },
    readings: [
      "SN (amine and salt solutions) read as SL",
      "FL read as SC",
      "pH adjuster read as conditioner",
    ],
  },
  {
    id: "south-dakota-state",
    name: "South Dakota State",
    source: {
      title: "Preparing Spray Solutions: Mixing Order",
      publisher: "South Dakota State University Extension",
      where: "Mixing Order Recommendation",
    },
    reached: "read",
    waterFirst: [1 / 3, 1 / 3],
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
    between: [
      {
        afterStep: 3,
        action: "fill",
        fraction: 0.8,
        text: "Once the dry products are dispersed, fill with clean water to 80 % of the load, with agitation.",
      },
    ],
    how: {
      WP: "as a slurry with water, 2 to 1 (the source does not say which is the 2)",
      WG: "as a slurry with water, 2 to 1 (the source does not say which is the 2)",
      "water-soluble packet": "soaked in a little water first",
    },
    readings: ["'liquids' read as SL", "packets are soaked first, then go in with the dry products"],
  },
  {
    id: "oklahoma-state",
    name: "Oklahoma State",
    source: {
      title: "Herbicide Mixing Order, PSS-2789",
      publisher: "Oklahoma State University Extension",
      where: "acronym list",
    },
    reached: "read",
    waterFirst: [0.5, 0.75],
    steps: [
      ["compatibility agent", "defoamer"],
      ["conditioner"],
      ["WP", "WG"],
      ["CS", "SC"],
      ["SL"],
      ["EC"],
      ["surfactant", "oil adjuvant"],
      ["conditioner with surfactant"],
    ],
    between: [
      { afterStep: 2, action: "wait", text: "Agitate a few minutes until the dry products are in solution." },
    ],
    how: { WP: "as a slurry, slowly", WG: "as a slurry, slowly" },
    readings: [
      "ME, named as microcapsule, read as CS",
      "a premix of ammonium sulfate and surfactant typically goes last",
    ],
  },
  {
    id: "missouri-dot",
    name: "Missouri DOT",
    source: {
      title: "Engineering Policy Guide 821.12, Mixing and Handling Guidelines",
      publisher: "Missouri Department of Transportation",
      where: "item C",
    },
    reached: "read",
    waterFirst: [0.5, 0.5],
    steps: [["conditioner"], ["WP"], ["SC"], ["WG"], ["EC"], ["SL"], ["surfactant", "oil adjuvant"]],
    readings: ["'other dry' read as WG", "'adjuvant' read as oil adjuvant"],
  },
  {
    id: "iowa-state-2021",
    name: "Iowa State authors",
    source: {
      title: "Tank Mixing Procedures",
      publisher: "SportsField Management, by Iowa State University authors",
      year: 2021,
      where: "May, p. 21",
    },
    reached: "read",
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
    afterEach: "Wait a few minutes for it to dissolve or disperse.",
    readings: ["defoamer goes in with the last water"],
  },
  {
    id: "utah-state-2012",
    name: "Utah State",
    source: {
      title: "Using a Jar Test, Utah Pests News",
      publisher: "Utah State University Extension",
      year: 2012,
      where: "winter, list 1-9 (order in the jar)",
    },
    reached: "read",
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
      ["liquid fertilizer", "dry fertilizer"],
    ],
    readings: [
      "'surfactant, adjuvant' read as surfactant: the source does not say that its adjuvant is an oil",
      "'fertilizer' read as either form",
    ],
  },
  {
    id: "grain-sa-2018",
    name: "Grain SA",
    source: {
      title: "Grain Guide: tank mixtures",
      publisher: "Grain SA, South Africa",
      year: 2018,
      where: "p. 86, sequence 1-12",
    },
    reached: "read",
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
    how: { SG: "dissolved in a little water first", WP: "stirred into a little water first" },
    readings: ["liquid foliar nutrient read as liquid fertilizer"],
  },
  {
    id: "north-dakota-state-2021",
    name: "North Dakota State",
    source: {
      title: "Weed Control Guide, A.P.P.L.E.S., quoted by a trade page",
      publisher: "North Dakota State University Extension",
      year: 2021,
      where: "acronym list",
    },
    reached: "second-hand",
    steps: [
      ["SG", "SP", "dry fertilizer", "conditioner"],
      ["WG", "WP"],
      ["SC", "CS", "SE"],
      ["EC", "EW", "OD", "oil adjuvant"],
      ["SL", "surfactant"],
    ],
    afterEach: "Agitate until it is evenly mixed; a soluble powder until it is completely dissolved.",
    readings: ["ME, listed with the flowables, read as CS"],
  },
  {
    id: "ontario-wales",
    name: "Ontario (W.A.L.E.S.)",
    source: {
      title: "Pest Patrol: order for tank mixing",
      publisher: "Country Guide",
      where: "acronym list; its last letter from a second report",
    },
    reached: "second-hand",
    waterFirst: [0.5, 0.75],
    steps: [["WP", "WG"], ["SC"], ["EC"], ["SL", "surfactant"]],
    between: [
      { afterStep: 0, action: "wait", text: "Agitate, and add nothing until the powder is dispersed." },
    ],
    readings: ["'all dry' read as WP and WG"],
  },
  {
    id: "portugal-handout",
    name: "Portuguese hand-out",
    source: {
      title: "Ordem de mistura de produtos",
      publisher: "unsigned hand-out, Portugal",
      where: "list 1-9",
    },
    reached: "read",
    steps: [["WG"], ["SP"], ["WP"], ["SC"], ["EW"], ["EO"], ["EC"], ["SL"], ["surfactant", "oil adjuvant"]],
  },
  {
    id: "us-core-manual",
    name: "US national core manual",
    source: {
      title: "National Pesticide Applicator Certification Core Manual, ch. 10, from a study sheet",
      publisher: "NASDA Research Foundation",
      where: "tank mix order",
    },
    reached: "second-hand",
    steps: [["compatibility agent"], ["WP", "WG"], ["SC"], ["SL"], ["surfactant", "oil adjuvant"], ["EC"]],
    how: { WP: "stirred to a paste with a little water", WG: "stirred to a paste with a little water" },
    readings: [
      "dry suspensions read as WP and WG",
      "emulsions read as EC",
      "'adjuvant' read as oil adjuvant",
    ],
  },
  {
    id: "croplife-latin-america-2024",
    name: "CropLife Latin America",
    source: {
      title: "What to know about mixing plant-protection products",
      publisher: "CropLife Latin America",
      year: 2024,
      where: "order",
    },
    reached: "read",
    steps: [["conditioner"], ["SL", "SG", "SP"], ["WP", "WG", "SC", "EC"]],
    readings: [
      "'everything that needs dispersing or emulsifying' read as WP, WG, SC and EC, its common kinds; the source names none",
    ],
  },
]);

const byId: ReadonlyMap<string, MixingOrder> = /* @__PURE__ */ new Map(
  mixingOrders.map((mixingOrder) => [mixingOrder.id, mixingOrder]),
);

const naming: Map<Formulation, readonly MixingOrder[]> = /* @__PURE__ */ new Map();

/** The mixing orders that name a kind, or one that it is like; found when a kind is first asked for. */
export const ordersNaming = (kind: Formulation): readonly MixingOrder[] => {
  const known = naming.get(kind);
  if (known !== undefined) return known;
  const found = mixingOrders.filter((mixingOrder) => stepIn(mixingOrder, kind) !== undefined);
  naming.set(kind, found);
  return found;
};

/** The mixing order with an id. */
export const mixingOrderOf = (id: string): MixingOrder | undefined => byId.get(id);
