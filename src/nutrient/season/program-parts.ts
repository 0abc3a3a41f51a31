import { addDays, addMonths, type CivilDate, dateRange, type MonthDayWindow } from "../../calendar/index.js";
import { wholeUnitsFor } from "../../numeric/index.js";
import { type FactSource, outOfRange, type Quantity } from "../../quantity/index.js";
import type { DatedNitrogen, NitrogenCaps } from "./nitrogen-caps.js";
import type { ApplicationInterval, IntervalPractice, LeastApplication } from "./program-spacing.js";

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
  /** What has gone down, or is fixed, besides: it counts against the caps, and the interval is kept from it. */
  readonly applied?: readonly DatedNitrogen[];
  /**
   * The fewest days from one application to the next: stated, or a practice of {@link intervalPractices}. Two weeks where
   * it is left out; `{ days: 0, source }` for none.
   */
  readonly leastInterval?: ApplicationInterval | IntervalPractice;
  /** The least that goes down at once where an application has to be split; 0.1 lb N per 1000 ft2 where it is left out. */
  readonly leastAmount?: LeastApplication;
}

/** A month with its target in the unit of the plan. */
export interface MonthTarget {
  readonly month: string;
  /** Of every month or of none, but where a season is split evenly. */
  readonly target: number | undefined;
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
    last: days[days.length - 1] as CivilDate,
    amount: amount / parts,
    path,
  }));
};

/** The applications before caps, and the interval between two of them, move them: evenly over the open days. */
export const plannedParts = (input: {
  readonly months: readonly MonthTarget[];
  readonly plan: ProgramPlan;
  readonly total: number;
  readonly most: number | undefined;
  readonly open: readonly CivilDate[];
}): PlannedPart[] => {
  const { months, plan, total, most, open } = input;
  const countOf = (amount: number): number =>
    most === undefined || most === 0 ? 1 : wholeUnitsFor(amount, most);
  const season = seasonDays(months);
  // Where every day is closed the parts stand on the days of the season, and find no room.
  const days = open.length > 0 ? open : season;
  if (plan.kind === "even split") {
    const { applications: count } = plan;
    if ((count ?? 0) > season.length) {
      outOfRange("plan.applications", count, { max: season.length }, "{}: one a day");
    }
    if (total === 0) return [];
    const firsts = months.map(({ month }) => open.find((date) => date.startsWith(month)));
    if (count !== undefined || firsts.includes(undefined)) {
      return even(total, count ?? months.length, days, "plan");
    }
    const last = season[season.length - 1] as CivilDate;
    const amount = total / months.length;
    return firsts.map((date) => ({ date: date as CivilDate, last, amount, path: "plan" }));
  }
  if (months[0]?.target === undefined) {
    return total === 0 ? [] : even(total, countOf(total), days, "total");
  }
  return months.flatMap(({ month, target = 0 }, i) => {
    if (target === 0) return [];
    const own = open.filter((date) => date.startsWith(month));
    const dates = own.length > 0 ? own : dateRange(firstOf(month), lastOf(month));
    return even(target, countOf(target), dates, `months[${i}]`);
  });
};
