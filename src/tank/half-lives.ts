import type { Citation } from "../quantity/index.js";

/** A published half-life in water of a stated pH. */
export interface HalfLife {
  /** ISO common name. */
  readonly active: string;
  readonly pH: number;
  /** The printed half-life, shortest and longest where a range is printed. */
  readonly shortest: { readonly value: number; readonly unit: "min" | "h" | "d" };
  readonly longest: { readonly value: number; readonly unit: "min" | "h" | "d" };
  readonly source: Citation;
}

const ontario: Citation = {
  title: "Sprayer loading and the jar test",
  publisher: "Ontario Ministry of Agriculture (sprayers101)",
  where: "The carrier",
};
const hawaii: Citation = {
  title: "Pesticides leftover (garden column)",
  publisher: "Hawaii horticulture column",
  year: 2016,
};

type Unit = "min" | "h" | "d";

const row = (
  active: string,
  pH: number,
  [shortest, longest, unit]: readonly [number, number, Unit],
  source: Citation,
): HalfLife => ({
  active,
  pH,
  shortest: { value: shortest, unit },
  longest: { value: longest, unit },
  source,
});

/**
 * Half-lives in water that were read in a source. Temperature and what else is dissolved move them
 * several-fold. Tables with more rows are reprinted widely; what was not read is not here.
 */
export const halfLives: readonly HalfLife[] = [
  row("captan", 5, [32, 32, "h"], ontario),
  row("captan", 7, [8, 8, "h"], hawaii),
  row("captan", 8, [10, 10, "min"], ontario),
  row("captan", 9, [2, 2, "min"], hawaii),
  row("malathion", 6, [8, 8, "d"], hawaii),
  row("malathion", 8, [19, 19, "h"], hawaii),
  row("carbaryl", 6, [100, 150, "d"], hawaii),
  row("carbaryl", 7, [24, 30, "d"], hawaii),
  row("carbaryl", 9, [1, 3, "d"], hawaii),
];
