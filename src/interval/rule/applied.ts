import { type CivilDate, civilDate, compareDates } from "../../calendar/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectText,
  fail,
  outOfRange,
  type QuantityJson,
} from "../../quantity/index.js";
import { expectPerArea, type PerArea } from "./interval-rule.js";

/** An application that was made: its date alone, or with what went down per area, and on which area. */
export type AppliedInput =
  | CivilDate
  | {
      readonly date: CivilDate;
      /** Mass or volume per area; a `Quantity` fits. */
      readonly amount?: QuantityJson;
      readonly area?: string;
    };

/** An application with its place in the list that was given. */
export interface Applied {
  readonly date: CivilDate;
  readonly amount?: PerArea;
  readonly path: string;
}

/** The most applications of one list. */
const mostApplied = 100_000;

const readOne = (input: unknown, path: string): Applied & { readonly area?: string } => {
  if (typeof input !== "object" || input === null || !("date" in input)) {
    return { date: civilDate(input as CivilDate, path), path };
  }
  const { date, amount, area } = expectFields(input, ["date", "amount", "area"], path);
  const read = allOf({
    date: () => civilDate(date as CivilDate, `${path}.date`),
    amount: () => (amount === undefined ? {} : { amount: expectPerArea(amount, `${path}.amount`) }),
    area: () => (area === undefined ? {} : { area: expectText(area, `${path}.area`, "the name of an area") }),
  });
  return { date: read.date, path, ...read.amount, ...read.area };
};

/** Takes the applications on an area, in the order of their dates; one without an area is on all of them. */
export const readApplied = (input: unknown, area: string | undefined): Applied[] => {
  if (!Array.isArray(input)) return fail("type", "applied", input, "a list of dates");
  if (input.length > mostApplied)
    return outOfRange("applied", input, { max: mostApplied, count: "applications" });
  const problems = checks();
  const read = Array.from(input as readonly unknown[], (one, i) =>
    problems.run(() => readOne(one, `applied[${i}]`)),
  );
  problems.done();
  return read
    .flatMap((one) => one ?? [])
    .filter((one) => area === undefined || one.area === undefined || one.area === area)
    .sort((a, b) => compareDates(a.date, b.date));
};
