import type { CivilDate } from "../../calendar/index.js";
import type { HistoryRow } from "../../ledger/house.js";
import { isOf } from "./counted-days.js";

/** What a limit that does not add up gives for a proposal. */
export interface TestResult {
  readonly of: string;
  readonly states: string;
  readonly found: string | null;
  readonly violated: boolean | null;
  readonly earliestByStatedLimit: CivilDate | null;
}

/** What could not be told, because what it needs is not stated. */
export const notKnown = (of: string, states: string): TestResult => ({
  of,
  states,
  found: null,
  violated: null,
  earliestByStatedLimit: null,
});

/** What was told: kept on the day itself, or violated up to a later day, where there is one. */
export const judged =
  (date: CivilDate) =>
  (of: string, states: string, found: string, violated: boolean, later?: CivilDate): TestResult => ({
    of,
    states,
    found,
    violated,
    earliestByStatedLimit: violated ? (later ?? null) : date,
  });

/** Whether a row is an application of one of several substances; `undefined` where the row does not tell. */
export const isOfAny = (row: HistoryRow, of: "any" | readonly string[]): boolean | undefined => {
  if (of === "any") return true;
  const answers = of.map((one) => isOf(row, one));
  return answers.includes(true) ? true : answers.includes(undefined) ? undefined : false;
};

/** Substances as a sentence names them. */
export const ofText = (of: "any" | readonly string[]): string =>
  of === "any" ? "any product" : of.join(" or ");
