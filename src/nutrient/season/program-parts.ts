import { addDays, addMonths, type CivilDate, dateRange, type MonthDayWindow } from "../../calendar/index.js";
import { wholeUnitsFor } from "../../numeric/index.js";
import { type FactSource, fail, type Quantity } from "../../quantity/index.js";
import type { DatedNitrogen, NitrogenCaps } from "./nitrogen-caps.js";

/** How a season is split. */
export type ProgramPlan =
  | { readonly kind: "fewest applications" }
  | {
      readonly kind: "even split";
      /** One a month where it is left out. */
      readonly applications?: number;
    }
  | { readonly kind: "growth curve" };

/** A month of the season. */
export interface ProgramMonth {
  /** `YYYY-MM`. */
  readonly month: string;
  /** Its nitrogen, for a plan by monthly targets; a growth curve sets it itself. */
  readonly target?: Quantity<"mass/area", "N">;
  /** Its share of the growth, in any measure, for a growth curve. */
  readonly weight?: number;
}

/** A part of every year in which nothing goes down, and who says so. */
export interface ClosedSeason {
  readonly window: MonthDayWindow;
  readonly source: FactSource;
}

/** What {@link seasonProgram} is told. */
export interface SeasonProgramInput {
  /** The months of the season in order, with a target or a weight where the plan needs one. */
  readonly months: readonly ProgramMonth[];
  /** The nitrogen of the season; the sum of the targets where it is left out. */
  readonly total?: Quantity<"mass/area", "N">;
  readonly plan: ProgramPlan;
  /** What is left out is not checked; an empty record is a program without caps. */
  readonly caps: NitrogenCaps;
  readonly closed?: readonly ClosedSeason[];
  /** What has gone down, or is fixed, besides: it counts against the caps. */
  readonly applied?: readonly DatedNitrogen[];
}

/** A month with its target in the unit of the plan. */
export interface MonthTarget {
  readonly month: string;
  readonly target?: number;
}

/** An application as planned: from its date it may move up to the last day. */
export interface PlannedPart {
  readonly date: CivilDate;
  readonly last: CivilDate;
  readonly amount: number;
  readonly path: string;
}

const firstOf = (month: string): CivilDate => `${month}-01` as CivilDate;
const lastOf = (month: string): CivilDate => addDays(addMonths(firstOf(month), 1), -1);

/** The days of the season: those of its months, and none of a month that is not listed. */
export const seasonDays = (months: readonly MonthTarget[]): CivilDate[] =>
  months.flatMap(({ month }) => dateRange(firstOf(month), lastOf(month)));

/** Equal parts, evenly over the days from the first on. */
const even = (amount: number, count: number, days: readonly CivilDate[], path: string): PlannedPart[] => {
  // More than one a day is no plan: the caps then leave a shortfall.
  const parts = Math.min(count, days.length);
  return Array.from({ length: parts }, (_, i) => ({
    date: days[Math.floor((i * days.length) / parts)] as CivilDate,
    last: days.at(-1) as CivilDate,
    amount: amount / parts,
    path,
  }));
};

/** The applications before caps of 30 days and of the year, and closed seasons, move them. */
export const plannedParts = (input: {
  readonly months: readonly MonthTarget[];
  readonly plan: ProgramPlan;
  readonly total: number;
  readonly most: number | undefined;
}): PlannedPart[] => {
  const { months, plan, total, most } = input;
  const countOf = (amount: number): number =>
    most === undefined || most === 0 ? 1 : wholeUnitsFor(amount, most);
  const season = seasonDays(months);
  if (plan.kind === "even split") {
    const { applications: count } = plan;
    if (count !== undefined && count > season.length) {
      fail("range", "plan.applications", count, `at most one a day, which is ${season.length}`);
    }
    if (total === 0) return [];
    if (count !== undefined) return even(total, count, season, "plan");
    const last = season.at(-1) as CivilDate;
    const amount = total / months.length;
    return months.map(({ month }) => ({ date: firstOf(month), last, amount, path: "plan" }));
  }
  if (months.every(({ target }) => target === undefined)) {
    return total === 0 ? [] : even(total, countOf(total), season, "total");
  }
  return months.flatMap(({ month, target = 0 }, i) =>
    target === 0
      ? []
      : even(target, countOf(target), dateRange(firstOf(month), lastOf(month)), `months[${i}]`),
  );
};
