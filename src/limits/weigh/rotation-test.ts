import { addMonths, type CivilDate } from "../../calendar/index.js";
import type { HistoryRow } from "../../ledger/house.js";
import { periodText } from "../limit/period-text.js";
import type { ReadLimit } from "../limit/read-types.js";
import type { Proposed } from "./counted-days.js";
import { fitsFrom, reachBack, usedBeside } from "./period-use.js";
import { isOfAny, judged, notKnown, type TestResult } from "./test-result.js";

type RotationLimit = Extract<ReadLimit, { kind: "rotation" }>;

/** How far back a run is followed. */
const monthsBack = 24;

/** A day with applications: whether it holds the group, and whether it counts between those that do. */
interface Day {
  readonly date: CivilDate;
  /** `undefined` where it is not stated. */
  readonly held: boolean | undefined;
  readonly among: boolean | undefined;
}

const holdsActive = ({ rates, unweighed = [] }: HistoryRow): boolean | undefined => {
  const isActive = (of: string): boolean => /^a[ie]:/.test(of);
  if (unweighed.some(isActive)) return true;
  return rates === undefined
    ? undefined
    : Object.entries(rates).some(([of, rate]) => isActive(of) && rate.value > 0);
};

const either = (one: boolean | undefined, other: boolean | undefined): boolean | undefined =>
  one === true || other === true ? true : one === undefined || other === undefined ? undefined : false;

const daysOf = (limit: RotationLimit, { date, part, history }: Proposed): readonly Day[] => {
  const back = addMonths(date, -monthsBack);
  const first = limit.per === undefined ? back : reachBack(date, limit.per);
  const days = new Map<CivilDate, Day>();
  history.visit(part, [first, back].sort()[0] as CivilDate, (row) => {
    const held = isOfAny(row, limit.of);
    const among = either(held, limit.among === undefined ? holdsActive(row) : isOfAny(row, limit.among));
    const same = days.get(row.date);
    days.set(row.date, {
      date: row.date,
      held: same === undefined ? held : either(same.held, held),
      among: same === undefined ? among : either(same.among, among),
    });
  });
  // A history is visited in the order of its dates.
  return [...days.values()];
};

/** How many of the days, from the nearest on, hold the group without another between; and whether that is sure. */
const runOf = (days: readonly Day[]): { readonly run: number; readonly sure: boolean } => {
  let run = 0;
  for (const { held, among } of days) {
    if (held === true) run++;
    else if (held === undefined || among === undefined) return { run, sure: false };
    else if (among) return { run, sure: true };
  }
  return { run, sure: true };
};

const statesOf = ({ atMost, per, atMostInARow, group }: RotationLimit): string => {
  const counts = [
    ...(atMost === undefined || per === undefined ? [] : [`at most ${atMost} ${periodText(per)}`]),
    ...(atMostInARow === undefined ? [] : [`at most ${atMostInARow} in a row`]),
  ];
  return `${counts.join(", and ")} of group ${group}`;
};

/** Puts a limit on a mode of action to a proposal. */
export const rotationTest = (limit: RotationLimit, proposed: Proposed): TestResult => {
  const { date, row } = proposed;
  const { group, atMost, per, atMostInARow } = limit;
  const states = statesOf(limit);
  const judge = judged(date);
  const mine = isOfAny(row, limit.of);
  if (mine === undefined) return notKnown(group, states);
  if (!mine) return judge(group, states, `nothing of group ${group}`, false);
  const days = daysOf(limit, proposed).filter((day) => day.date !== date);
  const found: string[] = [];
  let [violated, sure, waits] = [false, true, true];
  let later: CivilDate | undefined;
  if (atMost !== undefined && per !== undefined) {
    const held = days.filter((day) => day.held === true).map((day) => day.date);
    const counted = { dates: held, amounts: held.map(() => 1) };
    const beside = usedBeside(date, per, counted);
    const used = (beside?.used ?? 0) + 1;
    const over = beside !== undefined && used > atMost;
    sure = !days.some(
      (day) =>
        day.held === undefined &&
        beside !== undefined &&
        day.date >= beside.span.from &&
        day.date <= beside.span.to,
    );
    if (over) later = fitsFrom(date, per, counted, (there) => there + 1 <= atMost) ?? undefined;
    violated = over;
    waits = !over || later !== undefined;
    found.push(`${used} ${periodText(per)}`);
  }
  if (atMostInARow !== undefined) {
    const before = runOf(days.filter((day) => day.date < date).reverse());
    const after = runOf(days.filter((day) => day.date > date));
    const run = before.run + 1 + after.run;
    sure &&= before.sure && after.sure;
    // No day alone ends a run: another group has to come first.
    if (run > atMostInARow) [violated, waits] = [true, false];
    found.push(`${run} in a row`);
  }
  if (!violated && !sure) return notKnown(group, states);
  return judge(
    group,
    states,
    `with this one ${found.join(", ")}`,
    violated,
    waits && sure ? later : undefined,
  );
};
