import {
  addDays,
  type CivilDate,
  dayOfYear,
  daysBetween,
  isLeapYear,
  monthOf,
  weekday,
} from "../../src/index.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const table: Source = {
  title: "Day of year: the sequential number of a day, normal years",
  publisher: "reprint of a table of a data centre",
  where: "rows 1, 15 and 28",
  url: "https://piersonforcongress.com/what-day-is-in-the-middle-of-the-year/",
};
const rows: readonly (readonly [day: number, ...numbers: number[]])[] = [
  [1, 1, 32, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335],
  [15, 15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349],
  [28, 28, 59, 87, 118, 148, 179, 209, 240, 271, 301, 332, 362],
];
const date = (year: number, month: number, day: number): CivilDate =>
  `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}` as CivilDate;

const shell: Source = {
  title: "Table 1: days of the year",
  publisher: "magazine for system administrators, volume 3, issue 3",
  where: "table and notes",
  url: "https://seann.herdejurgen.com/samag.com/html/v03/i03/a4_t1.htm",
};
const monthOffsets = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
const asMonthDay = (when: CivilDate): readonly number[] => [monthOf(when), Number(when.slice(8))];

/** Printed days of the week, with the number that ISO 8601 gives them. */
const printedDays: readonly (readonly [CivilDate, number, string])[] = [
  ["1992-08-21", 5, "Friday"],
  ["1995-05-03", 3, "Wednesday"],
];

/** Published tables and dates of the calendar. */
export const calendarChecks: readonly PublishedCheck[] = [
  ...rows.map(
    ([day, ...numbers]): PublishedCheck => ({
      entry: "calendar-001",
      formulas: ["dayOfYear"],
      source: table,
      reached: "read",
      given: `day ${day} of every month of 2026`,
      answers: numbers.map((printed, i): Answer => ({ of: `month ${i + 1}`, printed, to: 1 })),
      compute: () => numbers.map((_, i) => dayOfYear(date(2026, i + 1, day))),
    }),
  ),
  {
    entry: "calendar-001",
    formulas: ["isLeapYear"],
    source: { ...table, where: "text above the table" },
    reached: "read",
    given: "days in 1900, 2000, 2024 and 2026, from the rule: by 4, centuries only by 400",
    answers: [365, 366, 366, 365].map((printed): Answer => ({ of: "d", printed, to: 1 })),
    compute: () => [1900, 2000, 2024, 2026].map((year) => (isLeapYear(year) ? 366 : 365)),
  },
  {
    entry: "calendar-002",
    formulas: ["dayOfYear", "daysBetween"],
    source: shell,
    reached: "read",
    given:
      "what is added to the day of the month, in a normal year and one more from March on in a leap year",
    answers: [...monthOffsets, ...monthOffsets.map((n, i) => n + (i > 1 ? 1 : 0))].map(
      (printed, i): Answer => ({ of: `d, month ${(i % 12) + 1}`, printed, to: 1 }),
    ),
    compute: () => [
      ...monthOffsets.map((_, i) => dayOfYear(date(2025, i + 1, 7)) - 7),
      ...monthOffsets.map((_, i) => daysBetween("2024-01-01", date(2024, i + 1, 1))),
    ],
  },
  {
    entry: "calendar-002",
    formulas: ["dayOfYear", "addDays", "monthOf"],
    source: shell,
    reached: "read",
    given: "1 January, 31 December, 12 April and 30 October; and back, the days 116 and 117",
    answers: [1, 365, 102, 303]
      .map((printed): Answer => ({ of: "day of the year", printed, to: 1 }))
      .concat([
        { of: "month of day 116", printed: 4, to: 1 },
        { of: "day of the month of day 116", printed: 26, to: 1 },
        { of: "month of day 117", printed: 4, to: 1 },
        { of: "day of the month of day 117", printed: 27, to: 1 },
      ]),
    compute: () => [
      ...(["2026-01-01", "2026-12-31", "2026-04-12", "2026-10-30"] as const).map(dayOfYear),
      ...asMonthDay(addDays("2026-01-01", 115)),
      ...asMonthDay(addDays("2026-01-01", 116)),
    ],
  },
  {
    entry: "calendar-003",
    formulas: ["weekday"],
    source: {
      title: "Worker Protection Standard, final rule, and exception to its early entry restrictions",
      publisher: "Federal Register 57 FR 38102 and 60 FR 21955",
      where: "headings",
      url: "https://www.govinfo.gov/content/pkg/FR-1995-05-03/html/95-10875.htm",
    },
    reached: "read",
    given: "Friday, 21 August 1992 and Wednesday, 3 May 1995, numbered from Monday",
    answers: printedDays.map(
      ([, printed, name]): Answer => ({ of: `day of the week, ${name}`, printed, to: 1 }),
    ),
    compute: () => printedDays.map(([when]) => weekday(when)),
  },
];
