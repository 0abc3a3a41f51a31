import { type CivilDate, civilDate } from "../calendar/index.js";
import { fail } from "../quantity/index.js";

/** A date in a record: text, or an object whose text is one. */
export const civilDateAt = (input: unknown, path: string): CivilDate => {
  if (input === undefined) return fail("missing", path, input, "a date, YYYY-MM-DD");
  try {
    return civilDate(input as string, path);
  } catch (error) {
    // An object that cannot be turned into text is no date either.
    if (error instanceof TypeError) return fail("date", path, input, "a calendar date written YYYY-MM-DD");
    throw error;
  }
};
