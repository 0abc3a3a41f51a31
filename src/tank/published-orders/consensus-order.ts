import { frozen } from "../../quantity/index.js";
import { type Formulation, likenesses } from "../formulation/formulation.js";

/**
 * The order in which the published mixing orders, counted pair by pair, agree best. It is published by
 * nobody: it is derived from {@link mixingOrders}, and for the kinds of which the mixing orders say enough it is
 * the linear order that keeps the most pairwise rankings (a test searches all orders). The places of
 * defoamer, drift agents, fertilizers and micronutrients rest on one to three mixing orders each.
 */
export const consensusOrder: readonly Formulation[] = /* @__PURE__ */ frozen([
  "compatibility agent",
  "defoamer",
  "conditioner",
  "dry drift agent",
  "water-soluble packet",
  "SG",
  "SP",
  "dry fertilizer",
  "WP",
  "WG",
  "SC",
  "CS",
  "SE",
  "EW",
  "EO",
  "EC",
  "OD",
  "SL",
  "oil adjuvant",
  "surfactant",
  "conditioner with surfactant",
  "drift agent",
  "liquid fertilizer",
  "micronutrient",
]);

/** The place of a kind in {@link consensusOrder}; SG and SP share one, and a kind that is not listed takes that of its like. */
export const consensusPlace = (kind: Formulation): number => {
  const name = kind === "SP" ? "SG" : kind;
  const place = consensusOrder.indexOf(name);
  return place >= 0 ? place : consensusOrder.indexOf(likenesses[kind]?.as[0] ?? name);
};
