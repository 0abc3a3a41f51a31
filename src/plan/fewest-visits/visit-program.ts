import type { IntegerProgram, SparseRow } from "./integer-program.js";
import type { VisitDays } from "./visit-days.js";

/** A row in the words of the plan: treatments by their place in the list, days from the first of the season. */
export interface PlanRow {
  readonly terms: readonly { readonly treatment: number; readonly day: number; readonly times: number }[];
  readonly atMost: number;
}

const row = (
  columns: readonly number[],
  coefficients: readonly number[],
  lower: number,
  upper: number,
): SparseRow => ({
  columns,
  coefficients,
  lower,
  upper,
});
const ones = (columns: readonly number[], lower: number, upper: number): SparseRow =>
  row(columns, Array<number>(columns.length).fill(1), lower, upper);

/** The columns of a program: one for each open day of each treatment, and one for each day of a visit. */
export interface Columns {
  readonly application: readonly ReadonlyMap<number, number>[];
  readonly visit: ReadonlyMap<number, number>;
  readonly count: number;
}

/** Numbers the columns. */
export const columnsOf = (all: readonly VisitDays[]): Columns => {
  let count = 0;
  const numbered = (days: readonly number[]): ReadonlyMap<number, number> =>
    new Map(days.map((day) => [day, count++]));
  const application = all.map(({ open }) => numbered(open));
  const visit = numbered([...new Set(all.flatMap(({ open }) => open))].sort((a, b) => a - b));
  return { application, visit, count };
};

/** The rows of one treatment. */
const rowsOf = (one: VisitDays, i: number, columns: Columns): readonly SparseRow[] => {
  const own = columns.application[i] as ReadonlyMap<number, number>;
  const between = (from: number, to: number): readonly number[] =>
    one.open.filter((day) => day >= from && day <= to).map((day) => own.get(day) as number);
  /** An application is followed in time: always, or where the number is set, unless none follows at all. */
  const followed = (day: number, keepUp: number, column: number): SparseRow => {
    const inTime = between(day + 1, keepUp);
    if (one.set) {
      const late = between(keepUp + 1, Number.POSITIVE_INFINITY);
      const coefficients = [...late.map(() => 1), one.most, ...inTime.map(() => -one.most)];
      return row([...late, column, ...inTime], coefficients, Number.NEGATIVE_INFINITY, one.most);
    }
    // Whatever lies last before this day, the next comes no later: a stronger row than one for this application alone.
    if (day >= one.firstBy) return ones(inTime, 1, Number.POSITIVE_INFINITY);
    return row([...inTime, column], [...inTime.map(() => 1), -1], 0, Number.POSITIVE_INFINITY);
  };
  const rows: SparseRow[] = [ones([...own.values()], one.least, one.most)];
  for (const [day, column] of own) {
    rows.push(row([column, columns.visit.get(day) as number], [1, -1], Number.NEGATIVE_INFINITY, 0));
    const near = between(day, (one.next.get(day) as number) - 1);
    if (near.length > 1) rows.push(ones(near, Number.NEGATIVE_INFINITY, 1));
    const keepUp = one.keepUp.get(day);
    if (keepUp !== undefined) rows.push(followed(day, keepUp, column));
  }
  if (one.least > 0) rows.push(ones(between(0, one.firstBy), 1, Number.POSITIVE_INFINITY));
  for (const { days, left } of one.counted) {
    rows.push(
      ones(
        days.map((day) => own.get(day) as number),
        Number.NEGATIVE_INFINITY,
        left,
      ),
    );
  }
  return rows;
};

/**
 * The program of the fewest visits. Every row of a treatment by itself spans days in a row, so that only the days of
 * the visits need to be whole: `free` leaves the applications to come out whole by themselves.
 */
export const visitProgram = (
  all: readonly VisitDays[],
  columns: Columns,
  cuts: readonly PlanRow[],
  search: { readonly nodes: number; readonly free: boolean },
): IntegerProgram => {
  const cost = Array<number>(columns.count).fill(0);
  const whole = Array<boolean>(columns.count).fill(true);
  for (const column of columns.visit.values()) cost[column] = 1;
  if (search.free) {
    for (const map of columns.application) for (const column of map.values()) whole[column] = false;
  }
  const cutRows = cuts.map(({ terms, atMost }): SparseRow => {
    const known = new Map<number, number>();
    for (const { treatment, day, times } of terms) {
      const column = columns.application[treatment]?.get(day);
      if (column !== undefined) known.set(column, (known.get(column) ?? 0) + times);
    }
    return row([...known.keys()], [...known.values()], Number.NEGATIVE_INFINITY, atMost);
  });
  return {
    cost,
    whole,
    rows: [...all.flatMap((one, i) => rowsOf(one, i, columns)), ...cutRows],
    nodes: search.nodes,
  };
};
