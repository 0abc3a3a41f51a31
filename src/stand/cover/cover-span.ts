import { addDays, type CivilDate, civilDate, daysBetween } from "../../calendar/index.js";
import { expectQuantity, fail, outOfRange } from "../../quantity/index.js";

/** The most days that a grow-in is followed. */
export const mostDays = 1100;

/** Takes a date, or throws with its path. */
export const dateAt = (input: unknown, path: string): CivilDate => {
  if (input === undefined) return fail("missing", path, input, "a date such as 2026-05-04");
  if (typeof input !== "string") return fail("type", path, input, "a date such as 2026-05-04");
  try {
    return civilDate(input);
  } catch {
    return fail("date", path, input, "a date such as 2026-05-04");
  }
};

/** Days from one date to a later one; at least one, at most {@link mostDays}. */
export const spanOf = (from: CivilDate, to: CivilDate, path: string): number => {
  const days = daysBetween(from, to);
  if (days < 1) fail("date", path, to, `a date after ${from}`);
  if (days > mostDays)
    outOfRange(path, to, { max: addDays(from, mostDays) }, `{}, ${mostDays} days after ${from}`);
  return days;
};

/** Whole days that plants take to root before they spread; none where left out. */
export const rootingDays = (input: unknown): number => {
  if (input === undefined) return 0;
  const time = expectQuantity(input, { dimension: "time", of: "none", bound: "non-negative" }, "rooting");
  const days = time.in("d");
  return Number.isInteger(days) && days <= 365
    ? days
    : outOfRange("rooting", input, { step: 1, min: 0, max: 365, count: "days" });
};

/** The date `days` after a date. */
export const after = (from: CivilDate, days: number): CivilDate => addDays(from, days);

/** What no forecast of cover by growing patches knows; it stands in every result. */
export const neverChecked: readonly string[] = [
  "plants that die, wash out or dry out before they root",
  "weeds, disease, insects, wear, mowing height and frost damage",
  "grass that spreads faster one way than another",
  "density: covered ground is not yet turf that can be played on",
  "edges: ground along a border has plants on one side only",
];

/** What stands in the result where no time to root is given. */
export const rootingUnknown = "time to root: none given, the spread counts from the day after planting";
