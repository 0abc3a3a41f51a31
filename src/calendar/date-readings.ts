// What people write for a day in another notation: only ever offered, never read in silence.
import { type DateFields, dayNumber, daysOfMonth } from "./day-number.js";

type DateText = `${number}-${number}-${number}`;

const two = (n: number): string => String(n).padStart(2, "0");

/** Writes a date. */
export const dateText = ({ year, month, day }: DateFields): DateText =>
  `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}` as DateText;

export const dateExists = ({ year, month, day }: DateFields): boolean =>
  year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysOfMonth(year, month);

export const dateOf = (year: string, month: string, day: string): DateFields => ({
  year: Number(year),
  month: Number(month),
  day: Number(day),
});

const monthNames =
  /* @__PURE__ */ "january february march april may june july august september october november december".split(
    " ",
  );
const dayNames = /* @__PURE__ */ "Monday Tuesday Wednesday Thursday Friday Saturday Sunday".split(" ");
/** A time of day without a time zone, as tables export it behind the day. */
const timeOfDay = /[t ]\d{1,2}:\d{2}(:\d{2}(\.\d{1,9})?)?(?: ?[ap]\.?m\.?)?$/;
const ofWeek = /^(mon|tue|wed|thu|fri|sat|sun)[a-z]*[., ]+/;
/** What makes a 4th of 4, and the 4th of May of 4 May. */
const besideDay = /(\d)(?:st|nd|rd|th)\b(?: of\b)?/g;
const between = /[\s,./\u2010-\u2014-]+/;
const moment = /^\d{4}-\d{2}-\d{2}t\d{2}:\d{2}.*(?:z|[+-]\d{2}:?\d{2})$/;
const ofYear = (text: string): boolean => /^\d{4}$/.test(text);
const ofDay = (text: string): boolean => /^\d{1,2}$/.test(text);

/** The month of a name or of its first three letters or more; 0 for none. */
const monthNamed = (text: string): number =>
  text.length < 3 ? 0 : 1 + monthNames.findIndex((name) => name.startsWith(text));

/** Every reading as year, month and day of a text in small letters, be it a date or none. */
const orders = (text: string): readonly DateFields[] => {
  const [, ...digits] = /^(\d{4})(\d{2})(\d{2})$/.exec(text) ?? [];
  const [a = "", b = "", c = "", ...more] = digits.length > 0 ? digits : text.split(between);
  if (more.length > 0) return [];
  const found: DateFields[] = [];
  if (ofYear(a) && ofDay(b) && ofDay(c)) found.push(dateOf(a, b, c));
  if (ofYear(c)) {
    if (ofDay(a) && ofDay(b)) found.push(dateOf(c, a, b), dateOf(c, b, a));
    if (ofDay(b) && monthNamed(a) > 0) found.push({ ...dateOf(c, "0", b), month: monthNamed(a) });
    if (ofDay(a) && monthNamed(b) > 0) found.push({ ...dateOf(c, "0", a), month: monthNamed(b) });
  }
  return found;
};

/** What the writer may have meant, and what else to tell of the text where it is no other notation of one day. */
export interface DateMeant {
  readonly meant: readonly DateText[];
  readonly expected?: string;
}

const wholeYear = "a calendar date with the four digits of its year, written YYYY-MM-DD";
const plain = (input: string): string => input.trim().toLowerCase().replace(besideDay, "$1");

/** What the writer of another notation may have meant: every reading that is a date. */
export const dateMeant = (input: string): DateMeant => {
  if (input.length > 60) return { meant: [] };
  const told = plain(input);
  const weekday = ofWeek.exec(told)?.[1];
  const text = told.replace(ofWeek, "").replace(timeOfDay, "");
  const read = orders(text);
  const meant = [...new Set(read.filter(dateExists).map(dateText))];
  if (meant.length === 0) {
    if (moment.test(told))
      return { meant, expected: "a calendar date: the day of a moment depends on the time zone" };
    if (read.length > 0) return { meant, expected: "a day that exists, written YYYY-MM-DD" };
    const withYear = [`${text} 2024`, text.replace(/['’]?(\d\d)$/, "20$1")];
    return withYear.some((one) => orders(one).some(dateExists)) ? { meant, expected: wholeYear } : { meant };
  }
  const nameOf = (date: DateText): string => {
    const [year = "", month = "", day = ""] = date.split("-");
    // 1970-01-01 was a Thursday
    return dayNames[(((dayNumber(dateOf(year, month, day)) + 3) % 7) + 7) % 7] as string;
  };
  const fitting = meant.filter((date) =>
    nameOf(date)
      .toLowerCase()
      .startsWith(weekday ?? ""),
  );
  const [first] = meant;
  return fitting.length > 0 || first === undefined
    ? { meant: fitting }
    : { meant: [], expected: `the day of the week that fits the date: ${first} is a ${nameOf(first)}` };
};

/** The days of the year, `MM-DD`, that a text may mean: `6/15`, `June 15`, `2026-06-15`. */
export const monthDaysMeant = (input: string): readonly string[] => {
  if (input.length > 60) return [];
  const text = plain(input);
  // 2024 has a 29 February
  const found = [...orders(text), ...orders(`${text} 2024`)].filter(dateExists);
  return [...new Set(found.map((date) => dateText(date).slice(5)))];
};
