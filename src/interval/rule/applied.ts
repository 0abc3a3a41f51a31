import { type CivilDate, civilDate, compareDates } from "../../calendar/index.js";
import { fail, type Quantity, type QuantityJson } from "../../quantity/index.js";
import { expectPerArea } from "./interval-rule.js";

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
  readonly amount?: Quantity<string, string>;
  readonly path: string;
}

/** Takes the applications on an area, in the order of their dates; one without an area is on all of them. */
export const readApplied = (input: readonly AppliedInput[], area: string | undefined): Applied[] => {
  if (!Array.isArray(input)) return fail("type", "applied", input, "a list of dates");
  return (input as readonly AppliedInput[])
    .map((one, i): Applied & { readonly area?: string } => {
      const path = `applied[${i}]`;
      if (typeof one !== "object" || one === null || !("date" in one)) {
        return { date: civilDate(one as CivilDate, path), path };
      }
      const date = civilDate(one.date, `${path}.date`);
      const amount = one.amount === undefined ? undefined : expectPerArea(one.amount, `${path}.amount`);
      return {
        date,
        path,
        ...(amount && { amount: amount as unknown as Quantity<string, string> }),
        ...(one.area === undefined ? {} : { area: one.area }),
      };
    })
    .filter((one) => area === undefined || one.area === undefined || one.area === area)
    .sort((a, b) => compareDates(a.date, b.date));
};
