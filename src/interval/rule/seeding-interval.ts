import { addDays, type CivilDate, civilDate, compareDates } from "../../calendar/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectOneOf,
  type FactSource,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import { expectSource } from "../expect-source.js";

/** What happens on a turf that another thing has to keep its distance from. */
export type TurfEvent = "spray" | "seeding" | "sprigging" | "sodding" | "emergence" | "mowing" | "harvest";

/** A least number of days from one thing to another, as a source states it. Plain JSON. */
export interface SeedingInterval {
  readonly from: TurfEvent;
  readonly to: TurfEvent;
  /** 14: the day after which is counted is day 0, and day 14 is the first that keeps the rule. */
  readonly minimumDays: number;
  /** What it is about: an active ingredient, a species. */
  readonly about: string;
  readonly source: FactSource;
}

/** The first date that keeps every stated interval. */
export interface SeedingIntervalDate {
  readonly type: "seeding-interval-date";
  readonly version: 1;
  readonly earliestByStatedRules: CivilDate | null;
  /** Every rule that applied, latest date first: the first decides. */
  readonly reasons: readonly {
    readonly date: CivilDate;
    readonly rule: SeedingInterval;
    readonly since: CivilDate;
  }[];
  /** Rules to which no date was given. */
  readonly notChecked: readonly SeedingInterval[];
}

const events = [
  "spray",
  "seeding",
  "sprigging",
  "sodding",
  "emergence",
  "mowing",
  "harvest",
] as const satisfies readonly TurfEvent[];

const plainName = (text: string): string => text.trim().toLowerCase();

/** Reads every item of a list, which may be empty, and tells what is wrong with all of them. */
const readEach = <T>(
  input: unknown,
  path: string,
  read: (item: unknown, path: string) => T,
): readonly T[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list");
  if (input.length > 100_000) return outOfRange(path, input, { max: 100000 });
  const problems = checks();
  const list = Array.from(input as readonly unknown[], (item, i) =>
    problems.run(() => read(item, `${path}[${i}]`)),
  );
  problems.done();
  return list.flatMap((item) => item ?? []);
};

const aboutAt = (input: unknown, path: string): string =>
  typeof input === "string" && input.trim() !== ""
    ? input
    : fail("missing", path, input, "the name of an active ingredient or a species");

const readRule = (input: unknown, path: string): SeedingInterval => {
  const { from, to, minimumDays, about, source } = expectFields(
    input,
    ["from", "to", "minimumDays", "about", "source"],
    path,
    "a rule",
  );
  return allOf({
    from: () => expectOneOf(from, events, `${path}.from`),
    to: () => expectOneOf(to, events, `${path}.to`),
    minimumDays: () =>
      Number.isSafeInteger(minimumDays) && (minimumDays as number) >= 0
        ? (minimumDays as number) + 0
        : outOfRange(`${path}.minimumDays`, minimumDays, { step: 1, min: 0, count: "days" }),
    about: () => aboutAt(about, `${path}.about`),
    source: () => expectSource(source, `${path}.source`),
  });
};

const readHappened = (input: unknown, path: string) => {
  const { event, date, about } = expectFields(
    input,
    ["event", "date", "about"],
    path,
    "an event with its date",
  );
  return allOf({
    event: () => expectOneOf(event, events, `${path}.event`),
    date: () => civilDate(date as CivilDate, `${path}.date`),
    about: () => (about === undefined ? undefined : aboutAt(about, `${path}.about`)),
  });
};

/**
 * The earliest date of something by stated seeding, plant-back and pre-harvest intervals: from a spray to seeding
 * or harvest, from seeding or emergence to a spray. The day of the first thing is day 0; the last of several such days counts, and the
 * longest interval decides. `null` where no rule could be counted. A first thing without a name counts for
 * every rule; names are compared without regard to capitals.
 *
 * @param input.rules - as labels and other sources state them
 * @param input.happened - the days on which the first things were
 * @param input.next - what is to come
 * @throws RatewrightError `date`, `range`, `type`, `missing` for a rule without a name; all problems at once
 * Source of the count: a day is 24 hours from the end of the application on (3 California Code of
 * Regulations 6772 (a)(4), on entry): the day of the application is day 0, and the last day ends at the
 * hour of the application.
 *
 * @example
 * ```ts
 * import { earliestBySeedingIntervals } from "ratewright";
 * const found = earliestBySeedingIntervals({
 *   rules: [{ from: "spray", to: "seeding", minimumDays: 14, about: "flurprimidol", source: "label" }],
 *   happened: [{ event: "spray", date: "2026-08-20" }],
 *   next: "seeding",
 * });
 * found.earliestByStatedRules; // => "2026-09-03"
 * ```
 */
export const earliestBySeedingIntervals = (input: {
  readonly rules: readonly SeedingInterval[];
  readonly happened: readonly {
    readonly event: TurfEvent;
    readonly date: CivilDate;
    readonly about?: string;
  }[];
  readonly next: TurfEvent;
}): SeedingIntervalDate => {
  const given = expectFields(input, ["rules", "happened", "next"]);
  const { next, rules, happened } = allOf({
    next: () => expectOneOf(given.next, events, "next"),
    rules: () => readEach(given.rules, "rules", readRule),
    happened: () => readEach(given.happened, "happened", readHappened),
  });
  const reasons: SeedingIntervalDate["reasons"][number][] = [];
  const notChecked: SeedingInterval[] = [];
  for (const rule of rules.filter(({ to }) => to === next)) {
    const dates = happened
      .filter(
        ({ event, about }) =>
          event === rule.from && (about === undefined || plainName(about) === plainName(rule.about)),
      )
      .map(({ date }) => date)
      .sort(compareDates);
    const since = dates[dates.length - 1];
    if (since === undefined) notChecked.push(rule);
    else reasons.push({ date: addDays(since, rule.minimumDays), rule, since });
  }
  reasons.sort((a, b) => compareDates(b.date, a.date));
  return {
    type: "seeding-interval-date",
    version: 1,
    earliestByStatedRules: reasons[0]?.date ?? null,
    reasons,
    notChecked,
  };
};
