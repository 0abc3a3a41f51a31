// What a sheet writes of days and hours, held against days that everybody can look up.
import type { CivilDate, Instant } from "../../src/calendar/index.js";
import { newJerseySummaryLimits } from "../../src/limits/index.js";
import { dayText, momentText } from "../../src/plan/sheet/day-text.js";
import { saysOf } from "../limits/published/law.js";
import { type ConstantCheck, cells, edge } from "./check.js";

const written = (text: string, expected: string): number => (text === expected ? 1 : 0);
const day = (date: string, expected: string) =>
  [expected, 1, () => written(dayText(date as CivilDate, false), expected)] as const;
const moment = (at: string, expected: string) =>
  [expected, 1, () => written(momentText(at as Instant, false), expected)] as const;

/** Whether so much of a product with 46 % of nitrogen on 1000 ft2 is more than a homeowner in New Jersey may put down at once. */
const isOver = (pounds: number): boolean =>
  saysOf(newJerseySummaryLimits, "total-n-homeowner", {
    facts: { applicator: "homeowner" },
    analysis: "46-0-0",
    rate: { value: pounds, unit: "lb/1000 ft2" },
  }) === "over";

/** Figures of plan and ledger. */
export const planConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room: "plan",
      reached: "derived",
      source:
        "any calendar: 6 June 1944 was a Tuesday, 21 July 1969 a Monday, 1 January 2000 a Saturday; 12-hour clock",
    },
    [
      day("1944-06-06", "Tue Jun 6, 1944"),
      day("1969-07-21", "Mon Jul 21, 1969"),
      day("2000-01-01", "Sat Jan 1, 2000"),
      moment("2015-06-08T00:00-04:00", "Mon Jun 8, midnight"),
      moment("2015-06-08T12:00-04:00", "Mon Jun 8, noon"),
      moment("2015-06-08T12:05-04:00", "Mon Jun 8, 12:05 pm"),
      moment("2015-06-08T00:05-04:00", "Mon Jun 8, 12:05 am"),
      moment("2015-06-08T11:59-04:00", "Mon Jun 8, 11:59 am"),
      moment("2015-06-08T16:30-04:00", "Mon Jun 8, 4:30 pm"),
    ],
  ),
  ...cells(
    {
      room: "ledger",
      reached: "derived",
      within: 1e-7,
      source: "46 % of the rate is nitrogen: 0.9 lb in 0.9 / 0.46 lb",
    },
    [
      [
        "rate of 46-0-0 that holds 0.9 lb of nitrogen",
        0.9 / 0.46,
        () => edge((pounds) => !isOver(pounds), 1, 3),
      ],
    ],
  ),
];
