import { type CivilDate, daysBetween, type MonthDay } from "../../calendar/index.js";
import type { Finding, Quantity } from "../../quantity/index.js";

/** One winter, from the middle of one summer to the next. */
export interface FrostWinter {
  /** The first day that belongs to it. */
  readonly from: CivilDate;
  /** `null` where it had none, or where the record lacks too many days before it to tell. */
  readonly firstFrost: CivilDate | null;
  readonly lastFrost: CivilDate | null;
  readonly firstState: FrostState;
  readonly lastState: FrostState;
}

/** Whether a date counts: there was a frost, there was none in a whole record, or too many days are missing to tell. */
export type FrostState = "frost" | "no frost" | "not known";

/** A date with a stated chance. */
export interface FrostOdds {
  readonly percent: number;
  /** `null` where so few winters had a frost that no date has this chance. */
  readonly date: MonthDay | null;
}

/** First and last frosts of a record of years, with the dates for stated chances. */
export interface FrostDates {
  readonly type: "frost-dates";
  readonly version: 1;
  readonly threshold: Quantity<"temperature", "none">;
  readonly winters: readonly FrostWinter[];
  /** Chance of a frost on a later date: spring. */
  readonly last: FrostSide;
  /** Chance of a frost on an earlier date: fall. */
  readonly first: FrostSide;
  readonly findings: readonly Finding[];
}

/** One side of the winter. */
export interface FrostSide {
  /** Winters that can be told, those without a frost counted. */
  readonly winters: number;
  readonly withoutFrost: number;
  readonly odds: readonly FrostOdds[];
}

/** The winters that can be told, with the days from the dividing day to their frost. */
export type Known = readonly { readonly winter: FrostWinter; readonly day: number | null }[];

/** Those of one side. */
export const knownOf = (winters: readonly FrostWinter[], side: "first" | "last"): Known =>
  winters
    .filter((winter) => winter[`${side}State`] !== "not known")
    .map((winter) => {
      const date = winter[`${side}Frost`];
      return { winter, day: date === null ? null : daysBetween(winter.from, date) };
    });
