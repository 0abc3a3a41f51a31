import { type Citation, frozen } from "../../quantity/index.js";
import { oregonTable } from "./oregon-salt-indexes.js";
import type { UnitBasis } from "./salt-index.js";
import { turfList } from "./turf-list-salt-indexes.js";

/** What a scheme calls a source. */
export type BurnClass = "low" | "moderate" | "high";

/** A published way to sort sources by their partial salt index. */
export interface BurnScheme {
  /** The bases of the indexes that it sorts. */
  readonly bases: readonly UnitBasis[];
  /**
   * The classes, from low to high, with the lowest and the highest index per unit that has each; what lies between two
   * of them has no class.
   */
  readonly classes: readonly { readonly name: BurnClass; readonly from: number; readonly to: number }[];
  readonly source: Citation;
  readonly note: string;
}

/** The name of a scheme of {@link burnSchemes}. */
export type BurnSchemeName = "Oregon State University" | "turf list";

/**
 * The schemes in print. They disagree about urea: one calls its 1.7 moderate, the other all above 1.5 high. Each is
 * applied to indexes of its own table, so that what a table prints of a source is what `burnRisk` says of it.
 */
export const burnSchemes: Readonly<Record<BurnSchemeName, BurnScheme>> = /* @__PURE__ */ frozen({
  "Oregon State University": {
    bases: ["N"],
    classes: [
      { name: "low", from: 0, to: 0.7 },
      { name: "moderate", from: 1.7, to: 1.7 },
      { name: "high", from: 3.2, to: Number.MAX_VALUE },
    ],
    source: oregonTable,
    note: "The table prints a class for each of eight sources and no bounds: these are the lowest and the highest index of each class. Between them there is no class.",
  },
  "turf list": {
    bases: ["N", "K2O", "N+P2O5"],
    classes: [
      { name: "low", from: 0, to: 1.5 },
      { name: "high", from: 1.5, to: Number.MAX_VALUE },
    ],
    source: turfList,
    note: "Above 1.5 it calls a source high; what is not is named low here. It rates potassium nitrate per unit of K2O (1.6), not of N (5.3) or of both (1.2).",
  },
});
