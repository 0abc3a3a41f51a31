import { frozen } from "../../quantity/index.js";

const formulationsTable = {
  WP: { name: "wettable powder", form: "dry" },
  WG: { name: "water dispersible granule (dry flowable)", form: "dry" },
  WT: { name: "water dispersible tablet", form: "dry" },
  SG: { name: "water soluble granule", form: "dry" },
  SP: { name: "water soluble powder", form: "dry" },
  ST: { name: "water soluble tablet", form: "dry" },
  EG: { name: "emulsifiable granule", form: "dry" },
  EP: { name: "emulsifiable powder", form: "dry" },
  SC: { name: "suspension concentrate (flowable)", form: "liquid" },
  CS: { name: "capsule suspension (microencapsulated)", form: "liquid" },
  SE: { name: "suspo-emulsion", form: "liquid" },
  ZC: { name: "mixed formulation of CS and SC", form: "liquid" },
  ZE: { name: "mixed formulation of CS and SE", form: "liquid" },
  ZW: { name: "mixed formulation of CS and EW", form: "liquid" },
  EW: { name: "emulsion, oil in water", form: "liquid" },
  EO: { name: "emulsion, water in oil", form: "liquid" },
  ME: { name: "micro-emulsion", form: "liquid" },
  EC: { name: "emulsifiable concentrate", form: "liquid" },
  DC: { name: "dispersible concentrate", form: "liquid" },
  GL: { name: "emulsifiable gel", form: "liquid" },
  OD: { name: "oil dispersion", form: "liquid" },
  SL: { name: "soluble concentrate", form: "liquid" },
  GW: { name: "water soluble gel", form: "liquid" },
  "water-soluble packet": { name: "water-soluble packet", form: "dry" },
  conditioner: { name: "water conditioner (ammonium sulfate, pH adjuster, buffer)", form: "dry" },
  "conditioner with surfactant": { name: "premix of ammonium sulfate and surfactant", form: "liquid" },
  "compatibility agent": { name: "compatibility agent", form: "liquid" },
  defoamer: { name: "defoamer", form: "liquid" },
  "dry drift agent": { name: "dry drift agent", form: "dry" },
  "drift agent": { name: "liquid drift agent", form: "liquid" },
  surfactant: { name: "surfactant, spreader or wetting agent", form: "liquid" },
  "oil adjuvant": { name: "oil adjuvant (crop oil concentrate, methylated seed oil)", form: "liquid" },
  "dry fertilizer": { name: "soluble dry fertilizer", form: "dry" },
  "liquid fertilizer": { name: "liquid fertilizer", form: "liquid" },
  micronutrient: { name: "liquid micronutrient", form: "liquid" },
} as const;

/**
 * What a product is, as far as mixing goes. Kinds that have an international two-letter code are named
 * after it; the rest are groups of the trade that have no code.
 *
 * `form` says whether it is weighed or poured. Codes and meanings: CropLife International, Technical
 * Monograph No. 2, 7th edition (2017).
 */
export const formulations: typeof formulationsTable = /* @__PURE__ */ frozen(formulationsTable);

/** Weighed or poured. */
export type ProductForm = "dry" | "liquid";

/** A kind of product, as far as mixing goes: a key of {@link formulations}. */
export type Formulation = keyof typeof formulations;

/**
 * Whether a text is a {@link Formulation}.
 *
 * @example
 * ```ts
 * import { isFormulation } from "ratewright/tank";
 * isFormulation("SC"); // => true
 * isFormulation("GR"); // => false
 * ```
 */
export const isFormulation = (text: unknown): text is Formulation =>
  typeof text === "string" && Object.keys(formulations).includes(text);

/**
 * As what a kind is looked up in a published mixing order that does not name it, in order of preference.
 * `analogy` marks those for which the likeness rests on the physical form alone: common practice, no
 * source. Soluble granule and soluble powder differ only in grain.
 */
export const likenesses: Readonly<
  Partial<Record<Formulation, { readonly as: readonly Formulation[]; readonly analogy: boolean }>>
> = /* @__PURE__ */ frozen({
  SG: { as: ["SP"], analogy: false },
  SP: { as: ["SG"], analogy: false },
  ST: { as: ["SP", "SG"], analogy: true },
  WT: { as: ["WG"], analogy: true },
  EG: { as: ["WG"], analogy: true },
  EP: { as: ["WP"], analogy: true },
  ZC: { as: ["CS"], analogy: true },
  ZE: { as: ["SE"], analogy: true },
  ZW: { as: ["EW"], analogy: true },
  ME: { as: ["EW"], analogy: true },
  DC: { as: ["EC"], analogy: true },
  GL: { as: ["EC"], analogy: true },
  GW: { as: ["SL"], analogy: true },
});
