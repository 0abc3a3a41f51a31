import { addDays, type CivilDate, compareDates, type DateSpan, daysBetween } from "../../calendar/index.js";
import { type IntervalRule, intervalRule } from "../../interval/index.js";
import { civilDateAt } from "../../ledger/house.js";
import {
  type ReadLimit,
  type ReadProposal,
  readFacts,
  readLimits,
  readProposal,
} from "../../limits/house.js";
import type { ApplicationFacts } from "../../limits/index.js";
import {
  type Checks,
  checks,
  expectFields,
  expectList,
  expectName,
  expectNumber,
  expectRecord,
  expectText,
  fail,
  outOfRange,
  toldAt,
  unreadable,
} from "../../quantity/index.js";
import { readTurf, readTurfLabel, readUse } from "../grow-in/read-turf.js";
import { readDegreeDays } from "../job/read-degree-days.js";
import type { ReadDegreeDays } from "../job/treatments.js";
import type { SeasonPlan, SeasonTreatment } from "./schedule-types.js";

/** A treatment of a season, read and checked. */
export interface ReadSeasonTreatment {
  readonly input: SeasonTreatment;
  readonly path: string;
  readonly id: string;
  readonly parts: readonly string[];
  readonly rule?: IntervalRule;
  readonly degreeDays?: ReadDegreeDays;
  readonly within: DateSpan;
  readonly count: number;
  readonly applied: readonly CivilDate[];
  readonly proposal?: ReadProposal;
}

/** A season, read and checked. */
export interface ReadSeason {
  readonly season: DateSpan;
  readonly treatments: readonly ReadSeasonTreatment[];
  readonly limits: readonly ReadLimit[];
  readonly facts: ApplicationFacts;
  readonly shareWithinDays: number;
}

const planFields = [
  "season",
  "treatments",
  "avoid",
  "shareWithinDays",
  "limits",
  "ledger",
  "facts",
  "turf",
  "observed",
  "forecast",
  "normals",
  "gaps",
];
const treatmentFields = [
  "id",
  "parts",
  "interval",
  "within",
  "count",
  "degreeDays",
  "applied",
  "puts",
  "use",
  "activeIngredient",
  "label",
];

/** Ten years, in days: a schedule is worked out day by day. */
const longestSeason = 3653;

const readSpan = (input: unknown, path: string): DateSpan => {
  const { from, to } = expectFields(input, ["from", "to"], path, "dates from and to");
  const span = { from: civilDateAt(from, `${path}.from`), to: civilDateAt(to, `${path}.to`) };
  if (compareDates(span.from, span.to) > 0)
    fail("date", `${path}.to`, span.to, `a date not earlier than ${span.from}`);
  return daysBetween(span.from, span.to) > longestSeason
    ? outOfRange(
        `${path}.to`,
        span.to,
        { max: addDays(span.from, longestSeason) },
        "{}: at most ten years; plan a longer time in parts",
      )
    : span;
};

/** A whole number within bounds, or what it counts. */
const wholeNumber = (
  input: unknown,
  path: string,
  bounds: { readonly min: number; readonly max: number },
  what: string,
): number => {
  const n = expectNumber(input, path, bounds);
  return Number.isInteger(n) ? n : outOfRange(path, n, { step: 1, ...bounds, count: what });
};

/** What a reader gives for a field that is there; `undefined` for one that is left out. */
const where = <T>(input: unknown, read: () => T): T | undefined => (input === undefined ? undefined : read());

/** A span that lies within the season. */
const withinSeason = (span: DateSpan, season: DateSpan): DateSpan => ({
  from: compareDates(span.from, season.from) > 0 ? span.from : season.from,
  to: compareDates(span.to, season.to) < 0 ? span.to : season.to,
});

/** What the treatments of a season are read beside. */
interface SeasonAround {
  readonly span: DateSpan | undefined;
  readonly facts: ApplicationFacts;
  readonly ids: Set<string>;
}

const readParts = (input: unknown, path: string): readonly string[] =>
  expectList(input, path, "name of a part").map((part, k) =>
    expectName(part, `${path}[${k}]`, "the name of a part"),
  );

const readApplied = (input: unknown, path: string): readonly CivilDate[] =>
  Array.isArray(input)
    ? input.map((date: unknown, k) => civilDateAt(date, `${path}[${k}]`))
    : fail("type", path, input, "a list of dates");

/** How often, when and since when: the fields of a treatment that make its dates. */
const readTiming = (
  treatment: SeasonTreatment,
  path: string,
  span: DateSpan | undefined,
  problems: Checks,
) => ({
  rule: problems.run(() =>
    where(treatment.interval, () =>
      toldAt(`${path}.interval`, "rule", () => intervalRule(treatment.interval as IntervalRule)),
    ),
  ),
  degreeDays: problems.run(() =>
    where(treatment.degreeDays, () => readDegreeDays(treatment.degreeDays, `${path}.degreeDays`)),
  ),
  within:
    treatment.within === undefined ? span : problems.run(() => readSpan(treatment.within, `${path}.within`)),
  applied: problems.run(() =>
    where(treatment.applied, () => readApplied(treatment.applied, `${path}.applied`)),
  ),
});

/** What the treatment is used as, and what its label says of the turf: checked here, read where it is asked. */
const checkUse = (
  { use, label, activeIngredient }: SeasonTreatment,
  path: string,
  problems: Checks,
): void => {
  if (use !== undefined) readUse(use, `${path}.use`, problems);
  if (label !== undefined) readTurfLabel(label, `${path}.label`, problems);
  if (activeIngredient !== undefined)
    problems.run(() => expectText(activeIngredient, `${path}.activeIngredient`, "a name"));
};

const readTreatment = (
  item: unknown,
  path: string,
  { span, facts, ids }: SeasonAround,
  problems: Checks,
): ReadSeasonTreatment[] => {
  const before = problems.count();
  const record = problems.run(() => expectFields(item, treatmentFields, path, "a treatment"));
  if (record === undefined) return [];
  const treatment = record as unknown as SeasonTreatment; // Each field is read below before it is used.
  const id = problems.run(() => expectText(treatment.id, `${path}.id`, "a name for this treatment")) ?? "";
  if (ids.has(id))
    problems.run(() => fail("duplicate", `${path}.id`, id, "an id that no other treatment has"));
  ids.add(id);
  const parts =
    treatment.parts === undefined ? [] : problems.run(() => readParts(treatment.parts, `${path}.parts`));
  const { rule, degreeDays, within, applied } = readTiming(treatment, path, span, problems);
  checkUse(treatment, path, problems);
  const repeats = rule?.maximumDays !== undefined || degreeDays !== undefined;
  const count = problems.run(() =>
    treatment.count === undefined
      ? repeats
        ? 366
        : 1
      : wholeNumber(treatment.count, `${path}.count`, { min: 1, max: 366 }, "applications"),
  );
  const proposal =
    treatment.puts === undefined || span === undefined
      ? undefined
      : problems.run(() => {
          const on = { date: span.from, ...(parts?.length ? { parts } : {}), facts };
          return readProposal({ ...(treatment.puts as object), ...on }, `${path}.puts`).proposal;
        });
  if (problems.count() > before || parts === undefined || within === undefined || span === undefined)
    return [];
  return [
    {
      input: treatment,
      path,
      id,
      parts,
      within: withinSeason(within, span),
      count: count as number,
      applied: applied ?? [],
      ...(rule && { rule }),
      ...(degreeDays && { degreeDays }),
      ...(proposal && { proposal }),
    },
  ];
};

/** Reads a season, or throws all that is wrong with it. */
export const readSeason = (input: SeasonPlan): ReadSeason => {
  const problems = checks();
  const plan = problems.run(() =>
    expectFields(expectRecord(input, "plan", "a season"), planFields, "", "a season"),
  ) as SeasonPlan | undefined;
  if (plan === undefined) problems.done();
  for (const problem of unreadable(plan, "")) problems.add({ ...problem, path: problem.path || "plan" });
  problems.done();
  const { season, treatments, limits, facts, shareWithinDays } = plan as SeasonPlan;
  const span = problems.run(() => readSpan(season, "season"));
  const share = problems.run(() =>
    wholeNumber(shareWithinDays ?? 0, "shareWithinDays", { min: 0, max: 366 }, "days"),
  );
  const before = problems.count();
  const read = readFacts(facts, "facts", problems);
  // What is wrong with them is told once, and not for each treatment.
  const known = problems.count() > before ? {} : read;
  if (plan?.turf !== undefined) readTurf(plan.turf, "turf", problems);
  const readLimit = readLimits(limits, problems);
  const list = problems.run(() => expectList(treatments, "treatments", "treatment")) ?? [];
  const around = { span, facts: known, ids: new Set<string>() };
  const sound = list.flatMap((item, i) => readTreatment(item, `treatments[${i}]`, around, problems));
  problems.done();
  return {
    season: span as DateSpan,
    treatments: sound,
    limits: readLimit,
    facts: known,
    shareWithinDays: share as number,
  };
};
