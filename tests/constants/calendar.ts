// The calendar beside that of the language, which is written by others (ECMA-262, time values).
import {
  addDays,
  addMonths,
  type CivilDate,
  dailyTemperatures,
  dayOfYear,
  daysBetween,
  firstDateWithin,
  hoursBetween,
  type Instant,
  isWithinWindow,
  type MonthDay,
  weekday,
  windowAround,
} from "../../src/calendar/index.js";
import { RatewrightError } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes, same } from "./check.js";

const room = "calendar";
const dayLength = 86_400_000;
/** A date as the language writes it, from its own count of days. */
const written = (days: number): CivilDate => {
  const date = new Date(0);
  date.setTime(days * dayLength);
  return date.toISOString().slice(0, 10) as CivilDate;
};
const first = -719_162;
const start = "0001-01-01" as CivilDate;
/** Days from the first one, every 47th over 400 years and the ends of all. */
const spread = Array.from({ length: 3_110 }, (_, n) => n * 47);
const lastOffset = daysFrom("9999-12-31") - first;
function daysFrom(text: string): number {
  return Date.parse(`${text}T00:00:00Z`) / dayLength;
}
const late = [lastOffset - 400, lastOffset - 59, lastOffset - 1, lastOffset];

const monthDays = ["01-01", "02-28", "03-01", "06-30", "07-04", "11-15", "12-31"] as MonthDay[];
/** Whether a day of 2023 or 2024 lies between two month-days, by the texts alone. */
const between = (date: string, from: string, to: string): boolean => {
  const at = date.slice(5);
  return from <= to ? from <= at && at <= to : from <= at || at <= to;
};
const twoYears = Array.from({ length: 731 }, (_, n) => written(daysFrom("2023-01-01") + n));

const instants = [
  "2026-05-01T00:00:00Z",
  "2026-05-01T23:59:59.999Z",
  "2024-02-29T12:34:56.789-07:00",
  "1969-12-31T23:00:00+05:45",
  "2026-11-01T01:30:00-14:00",
  "2026-11-01T01:30:00+14:00",
  "0001-03-01T00:00:00+00:30",
] as Instant[];

const temperatures = (unit: "°C" | "°F", low: number, high: number) =>
  dailyTemperatures({
    start: "2026-05-01" as CivilDate,
    unit,
    sensor: "air",
    source: "invented",
    min: [low],
    max: [high],
  });

const whole: readonly Cell[] = [
  [
    "days of 400 years, forwards",
    1,
    () =>
      same(
        [...spread, ...late].map((n) => addDays(start, n)),
        [...spread, ...late].map((n) => written(first + n)),
      ),
  ],
  [
    "days of 400 years, backwards",
    1,
    () =>
      same(
        [...spread, ...late].map((n) => daysBetween(start, written(first + n))),
        [...spread, ...late],
      ),
  ],
  [
    "days of the week",
    1,
    () =>
      same(
        spread.slice(0, 900).map((n) => weekday(written(first + n))),
        spread.slice(0, 900).map((n) => new Date((first + n) * dayLength).getUTCDay() || 7),
      ),
  ],
  [
    "days of the year",
    1,
    () =>
      same(
        twoYears.map(dayOfYear),
        twoYears.map((date) => daysFrom(date) - daysFrom(`${date.slice(0, 4)}-01-01`) + 1),
      ),
  ],
  [
    "the last day there is",
    daysFrom("9999-12-31") - first,
    () =>
      [...late].reverse().find((n) => goes(() => addDays(start, n)) && !goes(() => addDays(start, n + 1))) ??
      Number.NaN,
  ],
  [
    "the first day there is",
    1,
    () => (goes(() => addDays(start, 0)) && !goes(() => addDays(start, -1)) ? 1 : 0),
  ],
  [
    "days in windows of the year",
    1,
    () =>
      same(
        monthDays.flatMap((from) =>
          monthDays.flatMap((to) => twoYears.map((date) => isWithinWindow(date, { from, to }))),
        ),
        monthDays.flatMap((from) =>
          monthDays.flatMap((to) => twoYears.map((date) => between(date, from, to))),
        ),
      ),
  ],
  [
    "the ends of a window around a date",
    1,
    () => {
      const around = (date: string, from: string, to: string) => {
        const found = windowAround(date as CivilDate, { from: from as MonthDay, to: to as MonthDay });
        return `${found?.from} ${found?.to}`;
      };
      return same(
        [
          around("2026-01-10", "11-15", "03-01"),
          around("2026-12-10", "11-15", "03-01"),
          around("2026-06-10", "05-31", "09-30"),
          around("2025-02-10", "02-01", "02-29"),
        ],
        ["2025-11-15 2026-03-01", "2026-11-15 2027-03-01", "2026-05-31 2026-09-30", "2025-02-01 2025-02-28"],
      );
    },
  ],
  [
    "the next day of a window",
    1,
    () =>
      same(
        [
          firstDateWithin("2026-12-24" as CivilDate, { from: "03-01" as MonthDay, to: "11-15" as MonthDay }),
          firstDateWithin("1896-03-01" as CivilDate, { from: "02-29" as MonthDay, to: "02-29" as MonthDay }),
        ],
        ["2027-03-01", "1904-02-29"],
      ),
  ],
  [
    "hours between moments",
    1,
    () =>
      same(
        instants.flatMap((one) => instants.map((other) => hoursBetween(one, other))),
        instants.flatMap((one) => instants.map((other) => (Date.parse(other) - Date.parse(one)) / 3_600_000)),
      ),
  ],
];

/** The least or the most that a refused number of months could have been. */
const months = (side: "min" | "max") => (): number => {
  try {
    addMonths("2026-01-31", 1e6);
  } catch (error) {
    if (error instanceof RatewrightError) return Number(error.problems[0]?.params?.[side]);
  }
  return Number.NaN;
};

/** Dates, windows and moments beside the language's own. */
export const calendarConstants: readonly ConstantCheck[] = [
  ...cells(
    { room, reached: "derived", source: "ECMA-262, Date: the same days counted by the JavaScript engine" },
    whole,
  ),
  ...cells(
    {
      room,
      reached: "derived",
      source: "from January 2026 to January 0001 and to December 9999, 12 months a year",
    },
    [
      ["most months back", -12 * 2025, months("min")],
      ["most months on", 12 * (9999 - 2026) + 11, months("max")],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "the coldest air, -89.2 °C at Vostok, and the hottest, 56.7 °C in Death Valley, to the next ten in °C",
    },
    [
      ["coldest, °C", -90, () => edge((t) => goes(() => temperatures("°C", t, 20)), 0, -300)],
      ["hottest, °C", 60, () => edge((t) => goes(() => temperatures("°C", 0, t)), 20, 150)],
      ["coldest, °F", -130, () => edge((t) => goes(() => temperatures("°F", t, 20)), 0, -500)],
      ["hottest, °F", 140, () => edge((t) => goes(() => temperatures("°F", 0, t)), 20, 300)],
    ],
  ),
];
