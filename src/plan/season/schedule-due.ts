import { addDays, type CivilDate, compareDates } from "../../calendar/index.js";
import { degreeDaySchedule, nextDates } from "../../interval/index.js";
import { problemText, RatewrightError } from "../../quantity/index.js";
import type { ReadSeasonTreatment } from "./read-season.js";
import type { DateReason, SeasonPlan } from "./schedule-types.js";

/** When the next application of a treatment is due. */
export interface Due {
  readonly treatment: ReadSeasonTreatment;
  readonly earliest: CivilDate;
  readonly latest: CivilDate | null;
  /** The day that is aimed at: the last useful one of a repeat, the earliest of a first application. */
  readonly target: CivilDate;
  readonly reasons: readonly DateReason[];
  /** The days on which it was done. */
  readonly applied: readonly CivilDate[];
}

/** How far a treatment has got. */
export interface State {
  readonly applied: CivilDate[];
  placed: number;
  done: boolean;
}

const later = (a: CivilDate, b: CivilDate): CivilDate => (compareDates(a, b) >= 0 ? a : b);
/** The earlier of two dates. */
export const earlier = (a: CivilDate, b: CivilDate): CivilDate => (compareDates(a, b) <= 0 ? a : b);

const degreeDayEnd = (
  treatment: ReadSeasonTreatment,
  last: CivilDate,
  plan: SeasonPlan,
  notChecked: string[],
) => {
  const { degreeDays, id } = treatment;
  if (degreeDays === undefined) return undefined;
  try {
    const { observed, forecast, normals, gaps } = plan;
    const [visit] = degreeDaySchedule({
      model: degreeDays.model,
      interval: degreeDays.interval,
      from: last,
      ...(observed && { observed }),
      ...(forecast && { forecast }),
      ...(normals && { normals }),
      ...(gaps && { gaps }),
    }).visits;
    if (visit?.date) return { date: visit.date, source: degreeDays.source };
    notChecked.push(
      `${id}: the growing-degree-day interval since ${last}, because the temperatures end before it does.`,
    );
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    notChecked.push(
      `${id}: the growing-degree-day interval since ${last}. ${error.problems.map(problemText).join("; ")}.`,
    );
  }
  return undefined;
};

/** When the next application of a treatment is due, by its rule and by growing degree days. */
export const dueNext = (
  treatment: ReadSeasonTreatment,
  state: State,
  plan: SeasonPlan,
  notChecked: string[],
): Due => {
  const { rule, within, id } = treatment;
  const last = state.applied[state.applied.length - 1];
  const reasons: DateReason[] = [];
  // Without a least interval, too, no treatment comes twice on one day.
  const from = last !== undefined && !rule?.minimumDays ? later(within.from, addDays(last, 1)) : within.from;
  let earliest = from;
  let latest: CivilDate | null = null;
  if (rule !== undefined) {
    const next = nextDates({
      applied: state.applied,
      rule,
      from,
      ...(plan.avoid && { avoid: plan.avoid }),
    });
    earliest = next.earliestByStatedRules;
    latest = next.reapplyBy;
    reasons.push(...next.reasons.map(({ code, text, source }) => ({ code, text, source })));
    notChecked.push(...next.notChecked.map(({ text }) => `${id}: ${text}`));
  }
  if (last === undefined || rule === undefined)
    reasons.unshift({ code: "schedule/within", text: `Wanted from ${within.from} to ${within.to}.` });
  if (last !== undefined) {
    const degreeDays = degreeDayEnd(treatment, last, plan, notChecked);
    if (degreeDays !== undefined) {
      latest = latest === null ? degreeDays.date : earlier(latest, degreeDays.date);
      reasons.push({
        code: "schedule/degree-days",
        text: `By growing degree days, the application of ${last} lasts until ${degreeDays.date}.`,
        source: degreeDays.source,
      });
    }
  }
  const repeat = last !== undefined && latest !== null;
  return {
    treatment,
    earliest,
    latest: last === undefined ? null : latest,
    target: repeat ? later(earliest, latest as CivilDate) : earliest,
    reasons,
    applied: state.applied,
  };
};
