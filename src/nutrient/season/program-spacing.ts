import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  type FactSource,
  frozen,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectSource } from "../label/expect-source.js";

/** The fewest days from one application to the next, and who says so. 14 means: not before two weeks are over. */
export interface ApplicationInterval {
  readonly days: number;
  readonly source: FactSource;
}

/** The least nitrogen that somebody would spread at once, and who says so. */
export interface LeastApplication {
  readonly amount: Quantity<"mass/area", "N">;
  readonly source: FactSource;
}

/** The name of a practice of {@link intervalPractices}. */
export type IntervalPractice = "two weeks" | "thirty days";

/** Named practices for the time between two applications of nitrogen. */
export const intervalPractices: Readonly<Record<IntervalPractice, ApplicationInterval>> =
  /* @__PURE__ */ frozen({
    "two weeks": { days: 14, source: "common practice, no source" },
    "thirty days": {
      days: 30,
      source: {
        title:
          "Nutrient Management Standards and Criteria, revised 2005, pages 92 and 94: 1 lb N within 30 days",
        publisher: "Virginia Department of Conservation and Recreation, as a comment on the draft repeats it",
        year: 2005,
        url: "https://townhall.virginia.gov/L/viewcomments.cfm?commentid=154",
      },
    },
  });

const practices: readonly IntervalPractice[] = ["two weeks", "thirty days"];

/** Takes an interval, stated or by the name of a practice; two weeks where it is left out. */
export const readInterval = (input: unknown, path: string): ApplicationInterval => {
  if (input === undefined) return intervalPractices["two weeks"];
  if (typeof input === "string") return intervalPractices[expectOneOf(input, practices, path)];
  const { days, source } = expectFields(
    input,
    ["days", "source"],
    path,
    `{ days, source }, or the name of a practice: ${practices.join(", ")}`,
  );
  return allOf({
    days: () => {
      const count = expectNumber(days, `${path}.days`, { min: 0, max: 366 });
      return Number.isInteger(count) ? count : outOfRange(`${path}.days`, count, { step: 1, count: "days" });
    },
    source: () => expectSource(source, `${path}.source`),
  });
};

/** Takes the least amount, in the unit of the plan; 0.1 lb N per 1000 ft2 where it is left out. */
export const readLeastAmount = (input: unknown, unit: string, path: string): number => {
  // Common practice, no source: what spoon feeding puts down at least.
  if (input === undefined) return numberIn(quantity(0.1, "lb/1000 ft2", "N"), unit);
  const { amount, source } = expectFields(input, ["amount", "source"], path, "{ amount, source }");
  const [kind, at] = [{ dimension: "mass/area", of: "N", bound: "non-negative" }, `${path}.amount`] as const;
  const read = allOf({
    amount: () => expectQuantity(amount, kind, at),
    source: () => expectSource(source, `${path}.source`),
  });
  return numberIn(read.amount, unit);
};
