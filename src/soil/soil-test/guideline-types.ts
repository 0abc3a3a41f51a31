import type { Citation } from "../../quantity/index.js";

/** What dissolved the nutrient in the laboratory. A figure by one extractant is no figure by another. */
export type Extractant =
  | "Mehlich 3"
  | "Mehlich 1"
  | "ammonium acetate"
  | "Bray P1"
  | "Olsen"
  | "Morgan"
  | "modified Morgan";

/** Every extractant by name. */
export const extractants: readonly Extractant[] = [
  "Mehlich 3",
  "Mehlich 1",
  "ammonium acetate",
  "Bray P1",
  "Olsen",
  "Morgan",
  "modified Morgan",
];

/** A nutrient of a soil test, as the element. */
export type TestedNutrient = "P" | "K" | "Ca" | "Mg" | "S";

/** Every nutrient that a guideline may have. */
export const testedNutrients: readonly TestedNutrient[] = ["P", "K", "Ca", "Mg", "S"];

/** One line of a guideline, ppm of dry soil. */
export interface GuidelineRow {
  readonly nutrient: TestedNutrient;
  /** The soil or the turf that it is for; `"any"` where the source makes no difference. */
  readonly soil: string;
  /** What to stay at or above. */
  readonly from: number;
  /** Above this the source calls it high; `null` where it names no upper end. */
  readonly to: number | null;
}

/** A guideline of one source for one extractant. */
export interface SoilGuideline {
  readonly extractant: Extractant;
  /** What its figures mean. */
  readonly meaning: string;
  readonly rows: readonly GuidelineRow[];
  readonly source: Citation;
}
