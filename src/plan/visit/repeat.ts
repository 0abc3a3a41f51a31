import { addDays, type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import {
  type DateReached,
  dateReached,
  type IntervalRemark,
  type NextDates,
  nextDates,
} from "../../interval/index.js";
import { counted } from "../../quantity/house.js";
import {
  expectQuantity,
  type Finding,
  problemText,
  type Quantity,
  RatewrightError,
} from "../../quantity/index.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadDegreeDays, ReadTreatment } from "../job/treatments.js";
import type { WithFindings } from "./with-findings.js";

/** A growing-degree-day interval: since when it is counted, and when it has run out. */
export interface DegreeDayInterval {
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
  /** By growing degree days since the last time, as a check on coming now; `null` where it is not known. */
  readonly degreeDaysBefore: DegreeDayInterval | null;
  /** By growing degree days from this visit on. */
  readonly degreeDaysAfter: DegreeDayInterval | null;
  readonly reasons: readonly string[];
}

const appliedDates = (treatment: ReadTreatment, job: ReadJob): readonly CivilDate[] => {
  const ids =
    treatment.method === "spread" ? [treatment.product.id] : treatment.mix.map(({ product }) => product.id);
  const same = job.log.filter(({ date, treatment: named, product, parts }) => {
    if (compareDates(date, job.date) > 0) return false;
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

/** An interval in degree-days from one application on; `null`, with the reason, where it cannot be told. */
const degreeDayInterval = (
  degreeDays: ReadDegreeDays,
  from: CivilDate,
  job: ReadJob,
  what: string,
): Omit<WithFindings<DegreeDayInterval | null>, "findings"> => {
  const series = job.temperatures;
  if (series === undefined)
    return {
      value: null,
      notChecked: [`${what}: the degree-day interval, because the job has no daily temperatures.`],
    };
  let when: DateReached;
  try {
    when = dateReached({
      series,
      model: degreeDays.model,
      from,
      fromDay: "not counted",
      threshold: degreeDays.interval,
    });
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    return {
      value: null,
      notChecked: [`${what}: the degree-day interval. ${error.problems.map(problemText).join("; ")}.`],
    };
  }
  return {
    value: {
      from,
      interval: anyDegreeDays(degreeDays.interval),
      total: anyDegreeDays(when.total),
      runsOut: when.reached ? when.date : null,
      countedTo: when.reached ? when.date : when.countedTo,
      source: degreeDays.source,
    },
    notChecked: [],
  };
};

/** Degree-days whose model is no longer told to the compiler; it stays in the substance. */
const anyDegreeDays = <S extends string>(q: Quantity<"degree-days", S>): Quantity<"degree-days", string> =>
  expectQuantity(q, { dimension: "degree-days" }, "degreeDays");

/** Whether it is a reason for a person: the day of the visit, from which the date is sought, is none. */
const isStated = ({ code }: IntervalRemark): boolean => code !== "interval/from";

const remarkText = (remark: IntervalRemark): string => remark.text;

/** The dates in days: this visit against the rule, and what comes after it. */
const calendarOf = (
  { interval: rule, id, path }: ReadTreatment,
  past: readonly CivilDate[],
  visit: CivilDate,
): WithFindings<NextDates | null> => {
  if (rule === undefined)
    return {
      value: null,
      findings: [],
      notChecked: [`${id}: how often it is repeated, because the job states no interval in days.`],
    };
  const now = nextDates({ applied: past, rule, from: visit });
  const early = compareDates(now.earliestByStatedRules, visit) > 0;
  const calendar = nextDates({ applied: [...past, visit], rule });
  return {
    value: calendar,
    findings: early
      ? [
          {
            code: "interval/before-earliest",
            severity: "warning",
            path: `${path}.interval`,
            params: { treatment: id, visit, earliest: now.earliestByStatedRules },
            text: `${id}: ${visit} is before ${now.earliestByStatedRules}, the earliest date by the stated rule. ${now.reasons.filter(isStated).map(remarkText).join(" ")}`,
            source: rule.source,
          },
        ]
      : [],
    notChecked: calendar.notChecked.map((remark) => `${id}: ${remark.text}`),
  };
};

/** When each treatment comes round again; findings where this visit is early or late by what the job states. */
export const repeatPlan = (treatment: ReadTreatment, job: ReadJob): WithFindings<RepeatPlan> => {
  const applied = appliedDates(treatment, job);
  const { degreeDays, id, path } = treatment;
  // What the log has on the day of the visit is taken for the visit itself.
  const past = applied.filter((date) => date !== job.date);
  const last = past[past.length - 1];
  const calendar = calendarOf(treatment, past, job.date);
  const reasons = calendar.value?.reasons.map(remarkText) ?? [];
  const none = { value: null, notChecked: [] };
  const before =
    degreeDays === undefined || last === undefined
      ? none
      : degreeDayInterval(degreeDays, last, job, `${id}, since ${last}`);
  const after =
    degreeDays === undefined ? none : degreeDayInterval(degreeDays, job.date, job, `${id}, after this visit`);
  return {
    value: {
      treatment: id,
      applied,
      calendar: calendar.value,
      degreeDaysBefore: before.value,
      degreeDaysAfter: after.value,
      reasons: after.value === null ? reasons : [...reasons, degreeDayText(after.value)],
    },
    findings: [
      ...calendar.findings,
      ...(before.value === null ? [] : degreeDayFindings(before.value, job.date, id, path)),
    ],
    notChecked: [...calendar.notChecked, ...before.notChecked, ...after.notChecked],
  };
};

const degreeDayWords = (q: Quantity<"degree-days", string>): string =>
  `${Math.round(q.value)} growing degree days (${q.unit.replace(" d", "")})`;

/** An interval in growing degree days in a sentence. */
export const degreeDayText = (degreeDays: DegreeDayInterval): string =>
  degreeDays.runsOut === null
    ? `${Math.round(degreeDays.total.value)} of ${degreeDayWords(degreeDays.interval)} since ${degreeDays.from}, as far as the temperatures go${degreeDays.countedTo === null ? "" : ` (${degreeDays.countedTo})`}.`
    : `${degreeDayWords(degreeDays.interval)} expected ${degreeDays.runsOut}, ${counted(daysBetween(degreeDays.from, degreeDays.runsOut), "day")} after ${degreeDays.from}.`;

const degreeDayFindings = (
  degreeDays: DegreeDayInterval,
  visit: CivilDate,
  id: string,
  path: string,
): Finding[] => {
  const { runsOut, countedTo } = degreeDays;
  const params = {
    treatment: id,
    from: degreeDays.from,
    visit,
    interval: degreeDays.interval.value,
    unit: degreeDays.interval.unit,
  };
  if (runsOut !== null && compareDates(runsOut, visit) < 0) {
    const days = daysBetween(runsOut, visit);
    return [
      {
        code: "degree-days/expired-before",
        severity: "caution",
        path: `${path}.degreeDays`,
        params: { ...params, ranOut: runsOut, days },
        text: `${id}: the growing-degree-day interval expired ${runsOut}, ${counted(days, "day")} before this visit.`,
        source: degreeDays.source,
      },
    ];
  }
  const late = runsOut !== null && compareDates(runsOut, visit) > 0;
  const enough = countedTo !== null && compareDates(countedTo, addDays(visit, -1)) >= 0;
  if (!late && !(runsOut === null && enough)) return [];
  return [
    {
      code: "degree-days/not-expired",
      severity: "note",
      path: `${path}.degreeDays`,
      params: { ...params, ...(runsOut && { runsOut }) },
      text: `${id}: the growing-degree-day interval since ${degreeDays.from} has not expired by this visit${runsOut === null ? "" : `; it does on ${runsOut}`}.`,
      source: degreeDays.source,
    },
  ];
};
