import { addDays, type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import {
  type DateReached,
  dateReached,
  type IntervalRemark,
  type NextDates,
  nextDates,
} from "../../interval/index.js";
import { type Finding, problemText, type Quantity, RatewrightError } from "../../quantity/index.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadHeat, ReadTreatment } from "../job/read-treatments.js";

/** An interval by heat: since when it is counted, and when it has run out. */
export interface HeatWindow {
  /** The application from which it is counted. */
  readonly from: CivilDate;
  readonly interval: Quantity<"degree-days", string>;
  /** What the daily temperatures add up to: up to the day on which the interval runs out, or to their end. */
  readonly total: Quantity<"degree-days", string>;
  /** The first day at whose end the interval has run out; `null` where the temperatures end before. */
  readonly runsOut: CivilDate | null;
  /** The last day of temperatures that was counted; `null` where there was none. */
  readonly countedTo: CivilDate | null;
  readonly source: string;
}

/** When a treatment comes round again. */
export interface RepeatPlan {
  readonly treatment: string;
  /** The days on which the log has it, up to the visit. */
  readonly applied: readonly CivilDate[];
  /** Once this visit is done; `null` where the job states no interval in days. */
  readonly calendar: NextDates | null;
  /** By heat since the last time, as a check on coming now; `null` where it is not known. */
  readonly heatBefore: HeatWindow | null;
  /** By heat from this visit on. */
  readonly heatAfter: HeatWindow | null;
  readonly reasons: readonly string[];
}

const appliedDates = (treatment: ReadTreatment, job: ReadJob): readonly CivilDate[] => {
  const ids =
    treatment.method === "spread" ? [treatment.product.id] : treatment.mix.map(({ product }) => product.id);
  const same = job.log.filter(({ treatment: named, product, parts }) => {
    const matches =
      named === undefined ? product !== undefined && ids.includes(product.id) : named === treatment.id;
    return (
      matches &&
      (parts === undefined ||
        treatment.parts === undefined ||
        parts.some((part) => treatment.parts?.includes(part)))
    );
  });
  return [...new Set(same.map(({ date }) => date))].sort(compareDates);
};

const heatWindow = (
  heat: ReadHeat,
  from: CivilDate,
  job: ReadJob,
  what: string,
  notChecked: string[],
): HeatWindow | null => {
  const series = job.temperatures;
  if (series === undefined) {
    notChecked.push(`${what}: the interval by heat, for the job has no daily temperatures.`);
    return null;
  }
  let when: DateReached;
  try {
    when = dateReached({ series, model: heat.model, from, fromDay: "not counted", threshold: heat.interval });
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    notChecked.push(`${what}: the interval by heat. ${error.problems.map(problemText).join("; ")}.`);
    return null;
  }
  return {
    from,
    interval: heat.interval as Quantity<"degree-days", string>,
    total: when.total as Quantity<"degree-days", string>,
    runsOut: when.reached ? when.date : null,
    countedTo: when.reached ? when.date : when.countedTo,
    source: heat.source,
  };
};

const remarkText = (remark: IntervalRemark): string => remark.text;

/** When each treatment comes round again; findings where this visit is early or late by what the job states. */
export const repeatPlan = (
  treatment: ReadTreatment,
  job: ReadJob,
  findings: Finding[],
  notChecked: string[],
): RepeatPlan => {
  const applied = appliedDates(treatment, job);
  const { interval: rule, heat, id, path } = treatment;
  // What the log has on the day of the visit is taken for the visit itself.
  const past = applied.filter((date) => date !== job.date);
  const last = past[past.length - 1];
  const reasons: string[] = [];
  let calendar: NextDates | null = null;
  if (rule !== undefined) {
    const now = nextDates({ applied: past, rule, from: job.date });
    if (compareDates(now.earliestByStatedRules, job.date) > 0) {
      findings.push({
        code: "interval/before-earliest",
        severity: "warning",
        path: `${path}.interval`,
        params: { treatment: id, visit: job.date, earliest: now.earliestByStatedRules },
        text: `${id}: ${job.date} is before ${now.earliestByStatedRules}, the earliest date by the stated rule. ${now.reasons.map(remarkText).join(" ")}`,
        source: rule.source,
      });
    }
    calendar = nextDates({ applied: [...past, job.date], rule });
    reasons.push(...calendar.reasons.map(remarkText));
    notChecked.push(...calendar.notChecked.map((remark) => `${id}: ${remark.text}`));
  } else notChecked.push(`${id}: how often it is repeated, for the job states no interval in days.`);
  if (heat === undefined)
    return { treatment: id, applied, calendar, heatBefore: null, heatAfter: null, reasons };
  const before = last === undefined ? null : heatWindow(heat, last, job, `${id}, since ${last}`, notChecked);
  if (before !== null) findings.push(...heatFindings(before, job.date, id, path));
  const after = heatWindow(heat, job.date, job, `${id}, after this visit`, notChecked);
  if (after !== null) reasons.push(heatText(after));
  return { treatment: id, applied, calendar, heatBefore: before, heatAfter: after, reasons };
};

const degreeDays = (q: Quantity<"degree-days", string>): string => `${Math.round(q.value)} ${q.unit}`;

/** An interval by heat in a sentence. */
export const heatText = (heat: HeatWindow): string =>
  heat.runsOut === null
    ? `By heat: ${degreeDays(heat.total)} of ${degreeDays(heat.interval)} since ${heat.from}, as far as the temperatures go${heat.countedTo === null ? "" : ` (${heat.countedTo})`}.`
    : `By heat: ${degreeDays(heat.interval)} since ${heat.from} are reached on ${heat.runsOut}, ${daysBetween(heat.from, heat.runsOut)} days.`;

const heatFindings = (heat: HeatWindow, visit: CivilDate, id: string, path: string): Finding[] => {
  const { runsOut, countedTo } = heat;
  const params = {
    treatment: id,
    from: heat.from,
    visit,
    interval: heat.interval.value,
    unit: heat.interval.unit,
  };
  if (runsOut !== null && compareDates(runsOut, visit) < 0) {
    const days = daysBetween(runsOut, visit);
    return [
      {
        code: "heat/ran-out-before",
        severity: "caution",
        path: `${path}.heat`,
        params: { ...params, ranOut: runsOut, days },
        text: `${id}: the interval by heat ran out on ${runsOut}, ${days} ${days === 1 ? "day" : "days"} before this visit.`,
        source: heat.source,
      },
    ];
  }
  const late = runsOut !== null && compareDates(runsOut, visit) > 0;
  const enough = countedTo !== null && compareDates(countedTo, addDays(visit, -1)) >= 0;
  if (!late && !(runsOut === null && enough)) return [];
  return [
    {
      code: "heat/not-run-out",
      severity: "note",
      path: `${path}.heat`,
      params: { ...params, ...(runsOut && { runsOut }) },
      text: `${id}: the interval by heat since ${heat.from} has not run out by this visit${runsOut === null ? "" : `; it does on ${runsOut}`}.`,
      source: heat.source,
    },
  ];
};
