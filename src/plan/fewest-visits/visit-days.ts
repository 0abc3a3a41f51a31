import { addDays, type CivilDate, compareDates, daysBetween, windowAround } from "../../calendar/index.js";
import { limitsOn } from "../../limits/house.js";
import type { ReadSeasonTreatment } from "../season/read-season.js";
import { asked, type Book, openFrom } from "../season/schedule-day.js";
import { dueNext, type State } from "../season/schedule-due.js";
import { enders } from "./run-enders.js";

/** The days of one treatment, counted from the first of the season. */
export interface VisitDays {
  readonly treatment: ReadSeasonTreatment;
  /** The days on which neither its rule, nor the caller, nor a limit by itself rules it out, whatever else is done. */
  readonly open: readonly number[];
  /** The first day after one of them on which the next may follow. */
  readonly next: ReadonlyMap<number, number>;
  /** The last day on which the next keeps up; nothing where none is stated, or where it comes after the season. */
  readonly keepUp: ReadonlyMap<number, number>;
  /** The last day of the first application. */
  readonly firstBy: number;
  /** Whether the number is set, by the plan or by what the plain schedule left out: then none has to follow the last. */
  readonly set: boolean;
  /** How many, at the least and at the most. */
  readonly least: number;
  readonly most: number;
  /** Days of one counting period of the rule, and how many applications are left in it. */
  readonly counted: readonly { readonly days: readonly number[]; readonly left: number }[];
}

/** What the plain schedule made of a treatment. */
export interface PlainDays {
  readonly first: CivilDate | undefined;
  readonly placed: number;
  /** Whether it found no day for a further one. */
  readonly leftOut: boolean;
}

/** A state with further applications behind it. */
export const stateWith = (state: State, dates: readonly CivilDate[]): State => ({
  applied: [...state.applied, ...dates].sort(compareDates),
  placed: dates.length,
  done: false,
});

const countedDays = (
  { rule }: ReadSeasonTreatment,
  state: State,
  open: readonly number[],
  dateOf: (day: number) => CivilDate,
): VisitDays["counted"] => {
  const stated = rule?.maximumApplications;
  const limits = stated === undefined ? [] : [stated].flat();
  return limits.flatMap(({ count, per }) => {
    const keyOf = (date: CivilDate): string | undefined =>
      per === "calendar year"
        ? date.slice(0, 4)
        : per === "12 rolling months"
          ? undefined
          : windowAround(date, per)?.from;
    const keys = new Set(open.flatMap((day) => keyOf(dateOf(day)) ?? []));
    return [...keys].map((key) => ({
      days: open.filter((day) => keyOf(dateOf(day)) === key),
      left: Math.max(0, count - state.applied.filter((date) => keyOf(date) === key).length),
    }));
  });
};

/** On which days a treatment may lie, and how its applications follow each other. */
export const visitDays = (
  book: Book,
  treatment: ReadSeasonTreatment,
  state: State,
  plain: PlainDays,
): VisitDays => {
  const { plan, season } = book;
  const { from, to } = season.season;
  const dateOf = (day: number): CivilDate => addDays(from, day);
  const dayOf = (date: CivilDate): number => daysBetween(from, date);
  const due = dueNext(treatment, state, plan, []);
  const lastDay = dayOf(treatment.within.to);
  /** Too many of one mode of action in a row: another one, on a day before, ends the run. */
  const mayChange = (path: string): boolean => {
    const limit = season.limits.find((one) => one.path === path);
    return limit?.kind === "rotation" && enders(limit, season.treatments).length > 0;
  };
  const isOpen = (date: CivilDate): boolean => {
    if (openFrom(date, due, plan.avoid).date !== date) return false;
    const input = asked(book, treatment, date);
    if (input === undefined) return true;
    const { uses, tests } = limitsOn(input);
    return [...uses, ...tests].every(({ violated, path }) => violated !== true || mayChange(path));
  };
  const open: number[] = [];
  for (let day = Math.max(0, dayOf(due.earliest)); day <= Math.min(lastDay, dayOf(to)); day++) {
    if (isOpen(dateOf(day))) open.push(day);
  }
  const next = new Map<number, number>();
  const keepUp = new Map<number, number>();
  for (const day of open) {
    const after = dueNext(treatment, stateWith(state, [dateOf(day)]), plan, []);
    next.set(day, Math.max(day + 1, dayOf(after.earliest)));
    const latest = after.latest === null ? undefined : dayOf(after.latest);
    if (latest !== undefined && latest <= lastDay) keepUp.set(day, latest);
  }
  const repeats = treatment.rule?.maximumDays !== undefined || treatment.degreeDays !== undefined;
  const set = treatment.input.count !== undefined || !repeats || plain.leftOut;
  const earliest = open[0] ?? 0;
  // A repeat keeps up with what went before; what begins anew begins about its first day.
  const goal =
    due.latest !== null
      ? Math.max(earliest, dayOf(due.latest))
      : repeats
        ? earliest + season.shareWithinDays
        : lastDay;
  return {
    treatment,
    open,
    next,
    keepUp,
    firstBy: Math.max(goal, plain.first === undefined ? 0 : dayOf(plain.first)),
    set,
    least: set ? plain.placed : Math.min(1, plain.placed),
    most: plain.placed,
    counted: countedDays(treatment, state, open, dateOf),
  };
};
