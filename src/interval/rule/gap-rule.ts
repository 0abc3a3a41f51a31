import { addDays, type CivilDate, civilDate, compareDates } from "../../calendar/index.js";
import { checks, expectRecord, type FactSource, fail } from "../../quantity/index.js";

/** What happens on a turf that another thing has to keep its distance from. */
export type TurfEvent = "spray" | "seeding" | "sprigging" | "sodding" | "emergence" | "mowing" | "harvest";

/** A least number of days from one thing to another, as a source states it. Plain JSON. */
export interface GapRule {
  readonly from: TurfEvent;
  readonly to: TurfEvent;
  /** 14: the day after which is counted is day 0, and day 14 is the first that keeps the rule. */
  readonly minimumDays: number;
  /** What it is about: an active ingredient, a species. */
  readonly about: string;
  readonly source: FactSource;
}

/** The first date that keeps every stated gap. */
export interface GapDate {
  readonly type: "gap-date";
  readonly version: 1;
  readonly earliestByStatedRules: CivilDate | null;
  /** Every rule that applied, latest date first: the first decides. */
  readonly reasons: readonly {
    readonly date: CivilDate;
    readonly rule: GapRule;
    readonly since: CivilDate;
  }[];
  /** Rules to which no date was given. */
  readonly notChecked: readonly GapRule[];
}

const events: readonly TurfEvent[] = [
  "spray",
  "seeding",
  "sprigging",
  "sodding",
  "emergence",
  "mowing",
  "harvest",
];

const plainName = (text: string): string => text.trim().toLowerCase();

/**
 * The earliest date of something by the stated gaps: from a spray to seeding or harvest, from seeding or
 * emergence to a spray. The day of the first thing is day 0; the last of several such days counts, and the
 * longest gap decides. `null` where no rule could be counted. A first thing without a name counts for
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
 * import { earliestByGaps } from "ratewright";
 * const found = earliestByGaps({
 *   rules: [{ from: "spray", to: "seeding", minimumDays: 14, about: "flurprimidol", source: "label" }],
 *   happened: [{ event: "spray", date: "2026-08-20" }],
 *   next: "seeding",
 * });
 * found.earliestByStatedRules; // => "2026-09-03"
 * ```
 */
export const earliestByGaps = (input: {
  readonly rules: readonly GapRule[];
  readonly happened: readonly {
    readonly event: TurfEvent;
    readonly date: CivilDate;
    readonly about?: string;
  }[];
  readonly next: TurfEvent;
}): GapDate => {
  expectRecord(input, "input");
  const { next } = input;
  if (!events.includes(next)) fail("type", "next", next, "a turf event", { choices: events });
  if (!Array.isArray(input.rules)) return fail("type", "rules", input.rules, "a list of rules");
  if (!Array.isArray(input.happened)) return fail("type", "happened", input.happened, "a list of events");
  const door = checks();
  const rules = input.rules as readonly GapRule[];
  const expectEvent = (event: unknown, path: string): void => {
    if (events.includes(event as TurfEvent)) return;
    door.run(() => fail("type", path, event, "a turf event", { choices: events }));
  };
  const expectText = (text: unknown, path: string): void => {
    if (typeof text === "string" && text.trim() !== "") return;
    door.run(() => fail("missing", path, text, "the name of an active ingredient or a species"));
  };
  for (const [i, rule] of rules.entries()) {
    const at = `rules[${i}]`;
    if (door.run(() => expectRecord(rule, at, "a rule")) === undefined) continue;
    const { from, to, minimumDays, about } = rule;
    expectEvent(from, `${at}.from`);
    expectEvent(to, `${at}.to`);
    if (!(Number.isSafeInteger(minimumDays) && minimumDays >= 0)) {
      door.run(() => fail("range", `${at}.minimumDays`, minimumDays, "a whole number of days, 0 or more"));
    }
    expectText(about, `${at}.about`);
  }
  const happened: readonly { event: TurfEvent; date: CivilDate; about?: string }[] = input.happened;
  for (const [i, one] of happened.entries()) {
    const at = `happened[${i}]`;
    if (door.run(() => expectRecord(one, at, "an event with its date")) === undefined) continue;
    expectEvent(one.event, `${at}.event`);
    door.run(() => civilDate(one.date, `${at}.date`));
    if (one.about !== undefined) expectText(one.about, `${at}.about`);
  }
  door.done();
  const reasons: { date: CivilDate; rule: GapRule; since: CivilDate }[] = [];
  const notChecked: GapRule[] = [];
  for (const rule of rules.filter(({ to }) => to === next)) {
    const dates = happened
      .filter(
        ({ event, about }) =>
          event === rule.from && (about === undefined || plainName(about) === plainName(rule.about)),
      )
      .map(({ date }) => civilDate(date))
      .sort(compareDates);
    const since = dates[dates.length - 1];
    if (since === undefined) notChecked.push(rule);
    else reasons.push({ date: addDays(since, rule.minimumDays), rule, since });
  }
  reasons.sort((a, b) => compareDates(b.date, a.date));
  return {
    type: "gap-date",
    version: 1,
    earliestByStatedRules: reasons[0]?.date ?? null,
    reasons,
    notChecked,
  };
};
