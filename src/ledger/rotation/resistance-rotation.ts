import { type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import {
  allOf,
  expectFields,
  expectName,
  type FactSource,
  fail,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { standingEntries } from "../book/ledger.js";
import { civilDateAt } from "../civil-date-at.js";
import { touches, wholeSite } from "../entry/history.js";
import type { Ledger, LedgerEntry } from "../entry/ledger-entry.js";
import { activesOf, type PlannedActives, plannedOn, tellsNoActive } from "./applied-actives.js";
import { plainName, type ResistanceCode, readCodes } from "./read-codes.js";
import type { ResistanceCodeList } from "./resistance-codes.js";

/** How often one group of a mode of action was used, and how close together. */
export interface GroupUse {
  readonly scheme: string;
  readonly group: string;
  /** The active ingredients of the group that were used. */
  readonly actives: readonly string[];
  /** Days with the group. What goes down on one day on one part is one application. */
  readonly applications: number;
  readonly dates: readonly CivilDate[];
  /** Of them, those without another group of the scheme. */
  readonly alone: number;
  /** Of all days with a group of the scheme. Mixtures count in each of their groups: shares can add up to more than 100 %. */
  readonly share: Quantity<"1", "none">;
  /** The most applications of the scheme in a row that all hold the group. */
  readonly longestRun: { readonly applications: number; readonly from: CivilDate; readonly to: CivilDate };
  /** Days from the last application up to `on`; `null` where all lie after it. */
  readonly daysSince: number | null;
  readonly source: FactSource;
  readonly reached: ResistanceCodeList["reached"];
}

/** The groups of a season. It counts, and says nothing of what a label or a committee asks for. */
export interface ResistanceRotation {
  readonly type: "resistance-rotation";
  readonly version: 1;
  readonly part: string;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly on: CivilDate;
  /** Groups that work at one site, by scheme, the most used first. */
  readonly groups: readonly GroupUse[];
  /** Groups that work at many sites, apart. */
  readonly multiSite: readonly GroupUse[];
  /** Active ingredients that are in none of the lists. */
  readonly withoutCode: readonly string[];
  /**
   * Ids of entries that state no active ingredient, and no analysis that would say what they are; where no `part` is asked
   * for, also of those that name parts: ask for each part.
   */
  readonly notCounted: readonly string[];
}

/** One day with applications: the codes of what went down, and the names. */
interface Day {
  readonly date: CivilDate;
  readonly codes: readonly (ResistanceCode & { readonly active: string })[];
}

const daysOf = (
  applied: readonly { readonly date: CivilDate; readonly actives: readonly string[] }[],
  codes: ReadonlyMap<string, readonly ResistanceCode[]>,
): { readonly days: readonly Day[]; readonly withoutCode: readonly string[] } => {
  const byDate = new Map<CivilDate, Set<string>>();
  const unknown = new Set<string>();
  for (const { date, actives } of applied) {
    const names = byDate.get(date) ?? new Set();
    byDate.set(date, names);
    for (const name of actives.map(plainName)) {
      names.add(name);
      if (!codes.has(name)) unknown.add(name);
    }
  }
  const days = [...byDate].map(([date, names]) => ({
    date,
    codes: [...names].flatMap((active) => (codes.get(active) ?? []).map((code) => ({ ...code, active }))),
  }));
  return { days: days.sort((a, b) => compareDates(a.date, b.date)), withoutCode: [...unknown].sort() };
};

/** The longest run of days that hold a group, among the days of its scheme. */
const longestRun = (days: readonly Day[], holds: (day: Day) => boolean): GroupUse["longestRun"] => {
  let [best, bestFrom, run] = [0, 0, 0];
  days.forEach((day, i) => {
    run = holds(day) ? run + 1 : 0;
    if (run > best) [best, bestFrom] = [run, i + 1 - run];
  });
  const [first, last] = [days[bestFrom], days[bestFrom + best - 1]] as [Day, Day];
  return { applications: best, from: first.date, to: last.date };
};

const useOf = (code: ResistanceCode, days: readonly Day[], on: CivilDate): GroupUse => {
  const { scheme, group, list } = code;
  const ofScheme = days.filter((day) => day.codes.some((one) => one.scheme === scheme));
  const isIt = (one: ResistanceCode): boolean => one.scheme === scheme && one.group === group;
  const holds = (day: Day): boolean => day.codes.some(isIt);
  const held = ofScheme.filter(holds);
  const dates = held.map(({ date }) => date);
  const before = dates.filter((date) => date <= on);
  const last = before[before.length - 1];
  return {
    scheme,
    group,
    actives: [...new Set(held.flatMap((day) => day.codes.filter(isIt).map(({ active }) => active)))].sort(),
    applications: held.length,
    dates,
    alone: held.filter((day) => day.codes.every((one) => one.scheme !== scheme || isIt(one))).length,
    share: quantity((held.length * 100) / ofScheme.length, "%"),
    longestRun: longestRun(ofScheme, holds),
    daysSince: last === undefined ? null : daysBetween(last, on),
    source: list.source,
    reached: list.reached,
  };
};

const groupsOf = (days: readonly Day[], on: CivilDate): readonly (GroupUse & { multi: boolean })[] => {
  const found = new Map<string, ResistanceCode>();
  for (const { codes } of days)
    for (const code of codes) {
      const key = JSON.stringify([code.scheme, code.group]);
      // A group of several lists shows the weakest of them.
      if (found.get(key)?.list.reached !== "from memory") found.set(key, code);
    }
  return [...found.values()]
    .map((code) => ({ ...useOf(code, days, on), multi: code.multiSite }))
    .sort(
      (a, b) =>
        (a.scheme < b.scheme ? -1 : a.scheme > b.scheme ? 1 : 0) ||
        b.applications - a.applications ||
        (a.group < b.group ? -1 : 1),
    );
};

/**
 * How a season rotates modes of action on one part of the site: for each group of the code lists, the applications,
 * those of it alone, the longest run in a row, the share, and the days since the last one. Entries of the ledger
 * that stand and planned applications count alike.
 *
 * - An application is a day on which something of the scheme went down; a mixture counts in each of its groups.
 * - A run is counted among the applications of the same scheme: an insecticide between two fungicides ends no run of
 *   fungicides. Groups of many sites (`M05`) end a run like any other.
 * - `share = 100 * applications of the group / applications of the scheme`.
 *
 * What an entry holds is read from its `contents` and `supplies` (`ai:azoxystrobin/product`), and from its
 * `activeIngredient` for what they do not name. Which number of applications, or in a row, is too many is on the label: put it as a limit of the
 * kind `"rotation"` to `checkLimits`.
 *
 * @param input.codeLists - lists of the caller; they win over {@link resistanceCodeLists}
 * @param input.on - the day up to which `daysSince` counts; `to` where it is left out
 * @param input.part - a part of the site; where it is left out, only what went on the whole site counts
 * @throws RatewrightError `missing`, `date`, `type`, `range`; what `ledger` throws for an entry that cannot be read
 *
 * Source: counting; the groups with their lists.
 *
 * @example
 * ```ts
 * import { ledger, resistanceRotation } from "ratewright";
 * const season = ledger([
 *   { id: "a", date: "2026-05-04", activeIngredient: "propiconazole" },
 *   { id: "b", date: "2026-05-18", activeIngredient: "azoxystrobin + propiconazole" },
 *   { id: "c", date: "2026-06-01", activeIngredient: "chlorothalonil" },
 * ]);
 * const { groups, multiSite } = resistanceRotation({
 *   ledger: season, planned: [{ date: "2026-06-15", actives: ["tebuconazole"] }],
 *   from: "2026-01-01", to: "2026-12-31", on: "2026-06-20",
 * });
 * groups.map(({ group, applications, longestRun }) => [group, applications, longestRun.applications]);
 * // => [["3", 3, 2], ["11", 1, 1]]
 * groups[0]?.share.value; // => 75
 * groups[0]?.daysSince; // => 5
 * multiSite.map(({ group }) => group); // => ["M05"]
 * ```
 */
export const resistanceRotation = (input: {
  readonly ledger?: Ledger;
  readonly planned?: readonly PlannedActives[];
  readonly codeLists?: readonly ResistanceCodeList[];
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly on?: CivilDate;
  readonly part?: string;
}): ResistanceRotation => {
  const given = expectFields(input, ["ledger", "planned", "codeLists", "from", "to", "on", "part"]);
  const read = allOf({
    from: () => civilDateAt(given.from, "from"),
    to: () => civilDateAt(given.to, "to"),
    on: () => (given.on === undefined ? undefined : civilDateAt(given.on, "on")),
    part: () => (given.part === undefined ? wholeSite : expectName(given.part, "part", "the name of a part")),
    codes: () => readCodes(given.codeLists),
    entries: () => (given.ledger === undefined ? [] : standingEntries(given.ledger as Ledger)),
  });
  const { from, to, part, codes } = read;
  const on = read.on ?? to;
  if (compareDates(from, to) > 0) fail("date", "to", to, `a date not earlier than ${from}`);
  const within = ({ date }: { readonly date: CivilDate }): boolean => date >= from && date <= to;
  const entries: readonly LedgerEntry[] = read.entries.filter(
    (entry) => within(entry) && touches(entry.parts ?? [], part),
  );
  // An entry of one part says nothing of the whole site: it is named, not passed over.
  const elsewhere =
    given.part === undefined
      ? read.entries.filter((entry) => within(entry) && !touches(entry.parts ?? [], part))
      : [];
  const planned = plannedOn(given.planned, part).filter(within);
  const applied = [...entries.map((entry) => ({ date: entry.date, actives: activesOf(entry) })), ...planned];
  const { days, withoutCode } = daysOf(applied, codes);
  const uses = groupsOf(days, on);
  const only = (multi: boolean): readonly GroupUse[] =>
    uses.filter((use) => use.multi === multi).map(({ multi: _, ...use }) => use);
  return {
    type: "resistance-rotation",
    version: 1,
    part,
    from,
    to,
    on,
    groups: only(false),
    multiSite: only(true),
    withoutCode,
    notCounted: [...entries.filter(tellsNoActive), ...elsewhere].map(({ id }) => id),
  };
};
