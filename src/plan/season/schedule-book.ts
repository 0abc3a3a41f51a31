import { type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import { ledgerHistory, touches } from "../../ledger/house.js";
import { limitsOn } from "../../limits/house.js";
import { counted } from "../../quantity/house.js";
import type { Finding } from "../../quantity/index.js";
import { turfConflicts } from "../grow-in/grow-in.js";
import { type ReadSeasonTreatment, readSeason } from "./read-season.js";
import { asked, type Book } from "./schedule-day.js";
import type { Due, State } from "./schedule-due.js";
import type { DateReason, NotPlaced, Schedule, SeasonPlan } from "./schedule-types.js";

/** A book with nothing placed yet, and how far each treatment has got by the ledger and the caller. */
export const openBook = (plan: SeasonPlan): { readonly book: Book; readonly states: readonly State[] } => {
  const season = readSeason(plan);
  const ledger = ledgerHistory(plan.ledger ?? { type: "ledger", version: 1, entries: [] }, "ledger");
  const states = season.treatments.map((treatment): State => {
    const logged = ledger.dates.filter((_, i) => isOn(treatment, ledger, i));
    return {
      applied: [...new Set([...treatment.applied, ...logged])].sort(compareDates),
      placed: 0,
      done: false,
    };
  });
  const findings = season.treatments.flatMap((treatment) => partsApart(treatment, ledger));
  return {
    book: { plan, season, ledger, rows: [], visits: new Map(), findings, notChecked: [] },
    states,
  };
};

type Entries = ReturnType<typeof ledgerHistory>;

/** Whether an entry is one of a treatment: what went down on other parts alone says nothing of these. */
const isOn = ({ id, parts }: ReadSeasonTreatment, ledger: Entries, i: number): boolean => {
  const on = ledger.partsOf(i);
  return (
    ledger.entry(i).treatment === id &&
    (parts.length === 0 || on.length === 0 || on.some((part) => parts.includes(part)))
  );
};

/** Tells of parts of one treatment that were not last treated on one day: its dates run from the latest. */
const partsApart = (treatment: ReadSeasonTreatment, ledger: Entries): readonly Finding[] => {
  const { id, path, applied } = treatment;
  const entries = ledger.dates.flatMap((date, i) =>
    isOn(treatment, ledger, i) ? [{ date, on: ledger.partsOf(i) }] : [],
  );
  const parts = treatment.parts.length > 0 ? treatment.parts : [...new Set(entries.flatMap(({ on }) => on))];
  const last = parts.map((part) => {
    const dates = entries.filter(({ on }) => touches(on, part)).map(({ date }) => date);
    return { part, date: [...applied, ...dates].sort(compareDates).pop() };
  });
  const days = new Set(last.map(({ date }) => date));
  if (days.size < 2) return [];
  const words = last.map(({ part, date }) => `${part} ${date ?? "never"}`).join(", ");
  return [
    {
      code: "schedule/parts-apart",
      severity: "note",
      path: `${path}.parts`,
      params: { treatment: id, last: last.map(({ date }) => date ?? "never"), parts },
      text: `${id}: its parts were not last treated on the same day (${words}). The dates run from the latest; a part that is due sooner needs a treatment of its own.`,
    },
  ];
};

/** Writes an application into the book, with what its limits and the turf say. */
export const place = (
  due: Due,
  date: CivilDate,
  why: readonly DateReason[],
  state: State,
  book: Book,
): void => {
  const { treatment, earliest, latest } = due;
  const { id, parts, proposal, input } = treatment;
  state.applied.push(date);
  state.applied.sort(compareDates);
  state.placed++;
  const number = state.placed;
  const applications = book.visits.get(date) ?? [];
  applications.push({
    treatment: id,
    number,
    parts,
    earliestByStatedRules: earliest,
    reapplyBy: latest,
    reasons: [...due.reasons, ...why],
  });
  book.visits.set(date, applications);
  if (latest !== null && compareDates(date, latest) > 0) {
    const days = daysBetween(latest, date);
    book.findings.push({
      code: "schedule/late",
      severity: "caution",
      path: treatment.path,
      params: { treatment: id, number, date, reapplyBy: latest, days },
      text: `${id}: ${date} is ${counted(days, "day")} after ${latest}, the reapply-by date.`,
    });
  }
  const limits = asked(book, treatment, date);
  if (limits !== undefined)
    book.notChecked.push(...limitsOn(limits).notChecked.map((text) => `${id}: ${text}`));
  if (proposal !== undefined) book.rows.push({ ...proposal.row, date, from: `${id} on ${date}`, parts });
  if (input.use !== undefined) {
    const { use, activeIngredient, label } = input;
    const conflicts = turfConflicts({
      date,
      treatment: { id, use, ...(activeIngredient && { activeIngredient }), ...(label && { label }) },
      turf: book.plan.turf ?? {},
    });
    book.findings.push(...conflicts.findings);
    book.notChecked.push(...conflicts.notChecked);
  }
};

/** The schedule that a book holds. */
export const scheduleOf = (
  { season, visits, findings, notChecked }: Book,
  notPlaced: readonly NotPlaced[],
): Schedule => {
  const dates = [...visits.keys()].sort(compareDates);
  return {
    type: "schedule",
    version: 1,
    season: season.season,
    visits: dates.map((date) => ({ date, applications: visits.get(date) ?? [] })),
    notPlaced,
    findings,
    checked: [
      "dates against the stated intervals",
      ...(season.limits.length > 0 ? ["amounts against the stated limits"] : []),
      ...(season.treatments.some(({ degreeDays }) => degreeDays)
        ? ["degree-days against the growing-degree-day intervals"]
        : []),
      ...(season.treatments.some(({ input }) => input.use)
        ? ["treatments against the turf, as far as it is known"]
        : []),
    ],
    notChecked: [
      ...new Set(notChecked),
      ...(season.limits.length === 0 ? ["Limits: none stated."] : []),
      ...season.treatments
        .filter(({ proposal }) => proposal === undefined && season.limits.length > 0)
        .map(({ id }) => `${id}: the limits, because its amounts are not stated.`),
      "Weather on the day, and everything else on the labels and in local codes.",
    ],
  };
};
