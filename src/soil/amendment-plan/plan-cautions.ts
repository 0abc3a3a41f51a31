import { type Caution, frozen } from "../../quantity/index.js";

const practice = "common practice, no source";

/** What goes with every plan. */
export const planCautions: readonly Caution[] = /* @__PURE__ */ frozen([
  {
    code: "caution/label-and-laboratory",
    text: "The label is the law and overrides every figure here, as do local rules and the advice of the laboratory that wrote the report. This plan is arithmetic; it does not authorize an application.",
    source: practice,
  },
  {
    code: "caution/amendment-dust",
    text: "Lime, gypsum and sulfur are dust: wear eye protection and a dust mask, and do not spread in wind. Sulfur dust can burn: keep it from sparks and flame.",
    source: practice,
  },
  {
    code: "caution/keep-off-water",
    text: "Keep amendments off walks, drains and water, and within the setback that labels and local rules require.",
    source: practice,
  },
]);

/** What goes with lime. */
export const limeCaution: Caution = /* @__PURE__ */ frozen({
  code: "caution/lime-on-leaves",
  text: "Spread lime on dry leaves and water it in. Do not put burnt or hydrated lime on turf: it burns skin and grass. Keep lime and ammonium fertilizer weeks apart.",
  source: practice,
});

/** What goes with gypsum and salty water. */
export const sodiumCaution: Caution = /* @__PURE__ */ frozen({
  code: "caution/sodium-hazard",
  text: "Sodium leaves a soil only with water that drains. Check the drainage before gypsum goes down, and test again after leaching.",
  source: practice,
});

/** What goes with iron. */
export const ironCaution: Caution = /* @__PURE__ */ frozen({
  code: "caution/iron-stains",
  text: "Iron stains stone, concrete and clothing: blow granules off hard surfaces before water reaches them.",
  source: practice,
});
