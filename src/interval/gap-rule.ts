import { addDays, type CivilDate, civilDate, compareDates } from "../calendar/index.js";
import { checks, expectRecord, type FactSource, fail } from "../quantity/index.js";

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

/**
 * The earliest date of something by the stated gaps: from a spray to seeding or harvest, from seeding or
 * emergence to a spray. The day of the first thing is day 0; the last of several such days counts, and the
 * longest gap decides. `null` where no rule could be counted.
 *
 * @param input.rules - as labels and other sources state them
 * @param input.happened - the days on which the first things were
 * @param input.next - what is to come
 * @throws RatewrightError `date`, `range`, `type`
 * Source of the count: day 0 is the day of the application (from memory).
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
  rules.forEach(({ from, to, minimumDays }, i) => {
    const at = `rules[${i}]`;
    door.run(() => {
      if (!events.includes(from)) fail("type", `${at}.from`, from, "a turf event", { choices: events });
      if (!events.includes(to)) fail("type", `${at}.to`, to, "a turf event", { choices: events });
      if (!(Number.isSafeInteger(minimumDays) && minimumDays >= 0)) {
        fail("range", `${at}.minimumDays`, minimumDays, "a whole number of days, 0 or more");
      }
    });
  });
  const happened = (input.happened as readonly { event: TurfEvent; date: CivilDate; about?: string }[]).map(
    (one, i) => ({
      ...one,
      date: door.run(() => civilDate(one.date, `happened[${i}].date`)) ?? one.date,
    }),
  );
  door.done();
  const reasons: { date: CivilDate; rule: GapRule; since: CivilDate }[] = [];
  const notChecked: GapRule[] = [];
  for (const rule of rules.filter(({ to }) => to === next)) {
    const dates = happened
      .filter(({ event, about }) => event === rule.from && (about === undefined || about === rule.about))
      .map(({ date }) => date)
      .sort(compareDates);
    const since = dates[dates.length - 1];
    if (since === undefined) notChecked.push(rule);
    else reasons.push({ date: addDays(since, rule.minimumDays), rule, since });
  }
  reasons.sort((a, b) => compareDates(b.date, a.date));
  return { earliestByStatedRules: reasons[0]?.date ?? null, reasons, notChecked };
};
