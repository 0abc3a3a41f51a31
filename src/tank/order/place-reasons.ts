import { type Citation, frozen } from "../../quantity/index.js";
import type { Formulation } from "../formulation/formulation.js";
import { mixingOrderOf } from "../published-orders/mixing-orders.js";

/** Why a kind stands where it does, where a source says so. */
export interface PlaceReason {
  readonly text: string;
  readonly source: Citation;
}

const michigan: Citation = /* @__PURE__ */ frozen({
  title: "Tank mixing spray partners",
  publisher: "Michigan State University Extension",
  where: "physical incompatibility",
});
const navy: Citation = /* @__PURE__ */ frozen({
  title: "MO-314, ch. 9-2, Mixing Procedures",
  publisher: "US Navy, NAVFAC",
});
const wisconsin: Citation = /* @__PURE__ */ frozen({
  title: "Understanding the chemistry behind herbicide applications (field-day report)",
  publisher: "University of Wisconsin-Madison Division of Extension",
  year: 2024,
  where: "tips",
});
const aapresid: Citation = /* @__PURE__ */ frozen({
  title: "Bases for good mixes of plant-protection products",
  publisher: "Aapresid, Argentina",
  year: 2023,
  where: "2, mixing order",
});

const of = (id: string): Citation => mixingOrderOf(id)?.source as Citation;

const powder: PlaceReason = {
  text: "Add dry products before ECs. A powder added after an EC can form a floating putty.",
  source: michigan,
};
const soluble: PlaceReason = {
  text: "Dissolve dry products before liquids go in.",
  source: navy,
};
const suspended: PlaceReason = {
  text: "Solids before liquids, suspensions before solutions.",
  source: aapresid,
};

/** Why each kind stands where it does; a kind without an entry stands there by the rankings alone. */
export const placeReasons: () => Readonly<Partial<Record<Formulation, PlaceReason>>> = () => ({
  "water-soluble packet": {
    text: "The film has to dissolve in clean water: chlorine and sulfur ions from fertilizers and some organic solvents slow it.",
    source: of("manitoba-2013"),
  },
  conditioner: {
    text: "Condition the water before any other product goes in.",
    source: wisconsin,
  },
  WP: powder,
  EP: powder,
  WG: powder,
  WT: powder,
  EG: powder,
  SG: soluble,
  SP: soluble,
  ST: soluble,
  "dry fertilizer": soluble,
  SC: suspended,
  CS: suspended,
  SE: suspended,
  ZC: suspended,
  ZE: suspended,
  EC: {
    text: "Add ECs after dry products. A powder added after an EC can form a floating putty.",
    source: michigan,
  },
  surfactant: {
    text: "Surfactants can foam while the tank is being filled, so they go in late.",
    source: of("south-dakota-state"),
  },
  "conditioner with surfactant": {
    text: "A premix of ammonium sulfate and surfactant typically goes in last.",
    source: of("oklahoma-state"),
  },
});
