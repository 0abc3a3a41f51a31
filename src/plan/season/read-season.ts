import { type CivilDate, compareDates, type DateSpan } from "../../calendar/index.js";
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
  checks,
  expectFields,
  expectList,
  expectNumber,
  expectRecord,
  expectText,
  fail,
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

const readSpan = (input: unknown, path: string): DateSpan => {
  const { from, to } = expectRecord(input, path, "dates from and to");
  const span = { from: civilDateAt(from, `${path}.from`), to: civilDateAt(to, `${path}.to`) };
  return compareDates(span.from, span.to) > 0
    ? fail("date", `${path}.to`, span.to, `a date not earlier than ${span.from}`)
    : span;
};

/** Reads a season, or throws all that is wrong with it. */
export const readSeason = (input: SeasonPlan): ReadSeason => {
  const door = checks();
  const plan = door.run(() =>
    expectFields(expectRecord(input, "plan", "a season"), planFields, "", "a season"),
  ) as SeasonPlan | undefined;
  if (plan === undefined) door.done();
  for (const problem of unreadable(plan, "")) door.add({ ...problem, path: problem.path || "plan" });
  door.done();
  const { season, treatments, limits, facts, shareWithinDays } = plan as SeasonPlan;
  const span = door.run(() => readSpan(season, "season"));
  const share = door.run(() => {
    const days = expectNumber(shareWithinDays ?? 0, "shareWithinDays", { min: 0, max: 366 });
    return Number.isInteger(days) ? days : fail("range", "shareWithinDays", days, "a whole number of days");
  });
  const known = readFacts(facts, "facts", door);
  if (plan?.turf !== undefined) readTurf(plan.turf, "turf", door);
  const readLimit = readLimits(limits, door);
  const list = door.run(() => expectList(treatments, "treatments", "treatment")) ?? [];
  const ids = new Set<string>();
  const read = list.flatMap((item, i): ReadSeasonTreatment[] => {
    const path = `treatments[${i}]`;
    const before = door.count();
    const record = door.run(() => expectFields(item, treatmentFields, path, "a treatment"));
    if (record === undefined) return [];
    const treatment = record as unknown as SeasonTreatment;
    const id = door.run(() => expectText(treatment.id, `${path}.id`, "a name for this treatment")) ?? "";
    if (ids.has(id)) door.run(() => fail("duplicate", `${path}.id`, id, "an id that no other treatment has"));
    ids.add(id);
    const parts =
      treatment.parts === undefined
        ? []
        : door.run(() =>
            expectList(treatment.parts, `${path}.parts`, "name of a part").map((part, k) =>
              expectText(part, `${path}.parts[${k}]`, "the name of a part"),
            ),
          );
    const rule =
      treatment.interval === undefined
        ? undefined
        : door.run(() =>
            toldAt(`${path}.interval`, "rule", () => intervalRule(treatment.interval as IntervalRule)),
          );
    const degreeDays =
      treatment.degreeDays === undefined
        ? undefined
        : door.run(() => readDegreeDays(treatment.degreeDays, `${path}.degreeDays`));
    const within =
      treatment.within === undefined ? span : door.run(() => readSpan(treatment.within, `${path}.within`));
    const applied =
      treatment.applied === undefined
        ? []
        : door.run(() => {
            if (!Array.isArray(treatment.applied))
              return fail("type", `${path}.applied`, treatment.applied, "a list of dates");
            return (treatment.applied as unknown[]).map((date, k) =>
              civilDateAt(date, `${path}.applied[${k}]`),
            );
          });
    if (treatment.use !== undefined) readUse(treatment.use, `${path}.use`, door);
    if (treatment.label !== undefined) readTurfLabel(treatment.label, `${path}.label`, door);
    if (treatment.activeIngredient !== undefined)
      door.run(() => expectText(treatment.activeIngredient, `${path}.activeIngredient`, "a name"));
    const repeats = rule?.maximumDays !== undefined || degreeDays !== undefined;
    const count = door.run(() => {
      if (treatment.count === undefined) return repeats ? 366 : 1;
      const n = expectNumber(treatment.count, `${path}.count`, { min: 1, max: 366 });
      return Number.isInteger(n) ? n : fail("range", `${path}.count`, n, "a whole number of applications");
    });
    const proposal =
      treatment.puts === undefined || span === undefined
        ? undefined
        : door.run(
            () =>
              readProposal(
                {
                  ...(treatment.puts as object),
                  date: span.from,
                  ...(parts?.length ? { parts } : {}),
                  facts: known,
                },
                `${path}.puts`,
              ).proposal,
          );
    if (door.count() > before || parts === undefined || within === undefined || span === undefined) return [];
    return [
      {
        input: treatment,
        path,
        id,
        parts,
        within: {
          from: compareDates(within.from, span.from) > 0 ? within.from : span.from,
          to: compareDates(within.to, span.to) < 0 ? within.to : span.to,
        },
        count: count as number,
        applied: applied ?? [],
        ...(rule && { rule }),
        ...(degreeDays && { degreeDays }),
        ...(proposal && { proposal }),
      },
    ];
  });
  door.done();
  return {
    season: span as DateSpan,
    treatments: read,
    limits: readLimit,
    facts: known,
    shareWithinDays: share as number,
  };
};
