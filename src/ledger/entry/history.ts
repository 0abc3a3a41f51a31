import type { CivilDate } from "../../calendar/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { NutrientRates } from "../rates/nutrient-rates.js";

/** One application, as the limits see it. */
export interface HistoryRow {
  readonly date: CivilDate;
  /** Where it stands: an id, or a path such as `log[2]`. */
  readonly from: string;
  /** The parts of the site; an empty list for all of it. */
  readonly parts: readonly string[];
  /** Ids of the products. */
  readonly products: readonly string[];
  /** Product per area, by weight or by volume, where it is known. */
  readonly productRates: readonly Quantity<string, string>[];
  /** What it supplies per area; `undefined` where nothing is stated of what the products hold. */
  readonly rates: NutrientRates | undefined;
  /** What it holds by its label in an amount that could not be weighed. */
  readonly unweighed?: readonly string[];
  /** Which treatment it was: one application, though its products are written down one by one. */
  readonly treatment?: string | undefined;
  /** The applications that it adds up, where it is several. */
  readonly together?: readonly HistoryRow[];
}

/**
 * Counts applications, one by one in any order: rows of one day that name the same treatment are one, for each product of a
 * mix has a row of its own.
 */
export const applicationCounter = (): ((date: CivilDate, treatment: string | undefined) => boolean) => {
  const seen = new Map<string, Set<string>>();
  return (date, treatment) => {
    if (treatment === undefined) return true;
    const days = seen.get(treatment);
    if (days?.has(date)) return false;
    if (days === undefined) seen.set(treatment, new Set([date]));
    else days.add(date);
    return true;
  };
};

/** A row as a sentence names it: by its day, and where it stands. */
export const rowText = ({ date, from }: HistoryRow): string => `${date} (${from})`;

/** What has gone down, in the order of the dates. */
export interface History {
  /** Calls `see` for each application on a part of the site, from a date on. */
  readonly visit: (part: string, from: CivilDate, see: (row: HistoryRow) => void) => void;
  /**
   * The same applications in the order in which they were written down, where that is quicker: a large ledger lies in the
   * memory in that order. Those of one day come in the same order as in `visit`.
   */
  readonly visitAsWritten?: History["visit"];
}

/** The name that stands for a site without parts, or for what is not in one of its named parts. */
export const wholeSite = "whole site";

/** Whether an application touched a part of the site. */
export const touches = (parts: readonly string[], part: string): boolean =>
  parts.length === 0 || parts.includes(part);

/** A history of rows that are sorted by date; a row is asked for only when it is needed. */
export const historyOf = (input: {
  readonly dates: readonly CivilDate[];
  readonly parts: (i: number) => readonly string[];
  readonly row: (i: number) => HistoryRow;
}): History => {
  const { parts, row } = input;
  /** The places of the rows that touch a part, found once: every limit asks for the same. */
  const byPart = new Map<string, readonly number[]>();
  const placesOf = (part: string): readonly number[] => {
    const known = byPart.get(part);
    if (known !== undefined) return known;
    const places: number[] = [];
    const { dates } = input;
    for (let i = 0; i < dates.length; i++) if (touches(parts(i), part)) places.push(i);
    byPart.set(part, places);
    return places;
  };
  return {
    visit: (part, from, see) => {
      const places = placesOf(part);
      const { dates } = input;
      let [low, high] = [0, places.length];
      while (low < high) {
        const middle = (low + high) >> 1;
        if ((dates[places[middle] as number] as CivilDate) < from) low = middle + 1;
        else high = middle;
      }
      for (let k = low; k < places.length; k++) see(row(places[k] as number));
    },
  };
};
