import type { Formulation } from "./formulation.js";

/** What the trade says for a kind. */
const words: ReadonlyMap<string, Formulation> = /* @__PURE__ */ new Map<string, Formulation>([
  ["wetting agent", "surfactant"],
  ["wetter", "surfactant"],
  ["spreader", "surfactant"],
  ["nonionic surfactant", "surfactant"],
  ["antifoam", "defoamer"],
  ["crop oil concentrate", "oil adjuvant"],
  ["flowable", "SC"],
  ["dry flowable", "WG"],
  ["wettable powder", "WP"],
  ["emulsifiable concentrate", "EC"],
]);

/** The kind that a word of the trade stands for. */
export const kindByWord = (text: string): Formulation | undefined => words.get(text.trim().toLowerCase());
