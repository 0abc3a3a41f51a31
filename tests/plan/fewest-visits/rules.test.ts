// The rows of the program beside what they mean, for every choice of days; and the days that a rule leaves.
import { describe, expect, it } from "vitest";
import type { VisitDays } from "../../../src/plan/fewest-visits/visit-days.js";
import { columnsOf, visitProgram } from "../../../src/plan/fewest-visits/visit-program.js";
import { found as foundVisits } from "./found.js";

const source = "label (invented)";

interface Rule {
  readonly open: readonly number[];
  readonly gap: number;
  /** So many days after an application the next has to lie. */
  readonly last?: number;
  readonly firstBy: number;
  readonly least: number;
  readonly most: number;
  readonly counted?: VisitDays["counted"];
}
const end = 7;
const daysOf = ({ open, gap, last, firstBy, least, most, counted = [] }: Rule): VisitDays => ({
  treatment: {} as VisitDays["treatment"], // no row reads it
  open,
  next: new Map(open.map((day) => [day, day + gap])),
  keepUp: new Map(
    open.flatMap((day) => (last !== undefined && day + last <= end ? [[day, day + last] as const] : [])),
  ),
  firstBy,
  set: least === most,
  least,
  most,
  counted,
});
/** What the rule says, in words of its own. */
const keeps = (chosen: readonly number[], rule: Rule): boolean => {
  const { gap, last, firstBy, least, most, counted = [] } = rule;
  if (chosen.length < least || chosen.length > most) return false;
  if (least > 0 && !chosen.some((day) => day <= firstBy)) return false;
  if (chosen.some((day, i) => i > 0 && day - (chosen[i - 1] as number) < gap)) return false;
  if (counted.some(({ days, left }) => chosen.filter((day) => days.includes(day)).length > left))
    return false;
  return chosen.every((day, i) => {
    if (last === undefined || day + last > end) return true;
    const next = chosen[i + 1];
    // One that is done a stated number of times has an end: nothing has to follow its last application.
    if (next === undefined) return least === most;
    return next <= day + last;
  });
};
const choices = (open: readonly number[]): readonly (readonly number[])[] =>
  Array.from({ length: 2 ** open.length }, (_, set) => open.filter((_day, i) => (set >> i) % 2 === 1));

const all = Array.from({ length: end + 1 }, (_, day) => day);
const rules: readonly (readonly [string, Rule])[] = [
  ["once, on any day", { open: all, gap: 1, firstBy: end, least: 1, most: 1 }],
  ["once, by day 3", { open: all, gap: 1, firstBy: 3, least: 1, most: 1 }],
  ["twice, three days apart", { open: all, gap: 3, firstBy: end, least: 2, most: 2 }],
  [
    "twice, two to four days apart, also long after the first day",
    { open: all, gap: 2, last: 4, firstBy: end, least: 2, most: 2 },
  ],
  ["three times, one to three days apart", { open: all, gap: 1, last: 3, firstBy: 4, least: 3, most: 3 }],
  [
    "as long as the season lasts, two to three days apart",
    { open: all, gap: 2, last: 3, firstBy: 1, least: 1, most: 4 },
  ],
  ["the same on some days only", { open: [0, 1, 3, 4, 6], gap: 2, last: 3, firstBy: 1, least: 1, most: 4 }],
  [
    "at most one up to day 3, and two behind",
    {
      open: all,
      gap: 1,
      firstBy: 4,
      least: 1,
      most: 5,
      counted: [
        { days: [0, 1, 2, 3], left: 1 },
        { days: [4, 5, 6, 7], left: 2 },
      ],
    },
  ],
  ["not at all", { open: all, gap: 1, firstBy: end, least: 0, most: 2 }],
];

describe("the rows of one treatment", () => {
  it.each(rules)("%s: they leave the choices that the rule leaves", (_, rule) => {
    const days = [daysOf(rule)];
    const columns = columnsOf(days);
    const { rows, cost, whole } = visitProgram(days, columns, [], { nodes: 1, free: false });
    expect(columns.count).toBe(2 * rule.open.length);
    expect(whole).toEqual(whole.map(() => true));
    for (const chosen of choices(rule.open)) {
      const x = Array<number>(columns.count).fill(0);
      for (const day of chosen) {
        x[columns.application[0]?.get(day) as number] = 1;
        x[columns.visit.get(day) as number] = 1;
      }
      const sum = (columnsOfRow: readonly number[], by: readonly number[]): number =>
        columnsOfRow.reduce((total, column, k) => total + (by[k] as number) * (x[column] as number), 0);
      const met = rows.every(({ columns: c, coefficients, lower, upper }) => {
        const total = sum(c, coefficients);
        return total >= lower && total <= upper;
      });
      expect([chosen, met]).toEqual([chosen, keeps(chosen, rule)]);
      // Each day on which somebody comes costs one.
      expect(cost.reduce((total, one, k) => total + one * (x[k] as number), 0)).toBe(chosen.length);
    }
  });

  it("no application lies on a day without a visit, and two share one", () => {
    const days = [daysOf(rules[0]?.[1] as Rule), daysOf(rules[1]?.[1] as Rule)];
    const columns = columnsOf(days);
    expect(columns.count).toBe(3 * 8);
    const { rows, whole } = visitProgram(days, columns, [], { nodes: 1, free: true });
    // Days of visits are whole; the applications come out whole by themselves.
    expect(whole.filter((is) => is)).toHaveLength(8);
    expect([...columns.visit.values()].every((column) => whole[column])).toBe(true);
    for (const map of columns.application)
      for (const [day, column] of map)
        expect(rows).toContainEqual({
          columns: [column, columns.visit.get(day)],
          coefficients: [1, -1],
          lower: Number.NEGATIVE_INFINITY,
          upper: 0,
        });
  });

  it("a row of the limits: by treatment and day, days that are not open left out, one day named twice added up", () => {
    const days = [daysOf({ ...(rules[0]?.[1] as Rule), open: [2, 5] })];
    const columns = columnsOf(days);
    const terms = [2, 3, 5, 5].map((day) => ({ treatment: 0, day, times: day }));
    const { rows } = visitProgram(days, columns, [{ terms, atMost: 6 }], { nodes: 1, free: false });
    expect(rows.at(-1)).toEqual({
      columns: [2, 5].map((day) => columns.application[0]?.get(day)),
      coefficients: [2, 10],
      lower: Number.NEGATIVE_INFINITY,
      upper: 6,
    });
  });
});

it("a pair that may begin late shares the visit that comes late: no row of the first day stands against it", async () => {
  const found = await foundVisits({
    season: { from: "2026-05-01", to: "2026-06-30" },
    shareWithinDays: 30,
    treatments: [
      { id: "a", count: 2, interval: { minimumDays: 5, maximumDays: 10, source } },
      { id: "b", within: { from: "2026-05-26", to: "2026-05-26" } },
    ],
  });
  // 26 May, and another within five to ten days of it.
  expect([found.visits, found.proven, found.visitsOfPlainSchedule]).toEqual([2, true, 3]);
});
