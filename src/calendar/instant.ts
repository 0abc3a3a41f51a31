import { expectNumber, outOfRange, type Problem, RatewrightError, shown } from "../quantity/index.js";
import { type CivilDate, dateOfNumber, numberAt, readDate, soundFields, writtenText } from "./civil-date.js";
import { clockMeant } from "./clock-time.js";
import { dateMeant } from "./date-readings.js";
import { dayNumber, firstDay, lastDay } from "./day-number.js";

/**
 * A moment: a date, a time of day and the offset from UTC, as ISO 8601 writes it:
 * `"2026-05-01T14:30-05:00"`. The offset is part of it, so that hours can be counted without a clock or
 * a table of time zones. Plain text, so that it goes through JSON as it is.
 */
export type Instant = `${number}-${number}-${number}T${string}`;

/** A date object whose text is a moment with its offset, such as a `Temporal.ZonedDateTime`. A `Date` is none. */
export interface InstantLike {
  /** The moment as ISO 8601 writes it. */
  toString(): string;
}

/** A moment taken apart: milliseconds since 1970-01-01T00:00Z, and minutes that local time is ahead of UTC. */
export interface InstantParts {
  readonly epoch: number;
  readonly offset: number;
  readonly offsetText: string;
}

// The name of a zone in brackets, which some writers add, says nothing that the offset does not.
const pattern =
  /^(\d{4}-\d{2}-\d{2})T\d{2}:\d{2}(?::\d{2}(?:\.(\d{1,9}))?)?(Z|[+-]\d{2}:\d{2})?(?:\[[^\]]*\])*$/;
const wanted = "a moment with its offset, such as 2026-05-01T14:30-05:00";
const minute = 60_000;
const day = 1440 * minute;

/**
 * The parts of a moment to the minute with its offset in hours and minutes, as nearly all are written; `undefined` of all
 * others, which are looked at more closely.
 */
const plainParts = (text: string): InstantParts | undefined => {
  const sign = text[16];
  if (text.length !== 22 || text[10] !== "T" || text[13] !== ":" || text[19] !== ":") return undefined;
  if (sign !== "+" && sign !== "-") return undefined;
  const date = soundFields(text.slice(0, 10));
  const [h, m] = [numberAt(text, 11, 13), numberAt(text, 14, 16)];
  const [oh, om] = [numberAt(text, 17, 19), numberAt(text, 20, 22)];
  const ahead = oh * 60 + om;
  const known = h <= 23 && m <= 59 && om <= 59 && ahead <= 14 * 60 && (ahead > 0 || sign === "+");
  if (date === undefined || !known) return undefined;
  const offset = sign === "-" ? -ahead : ahead;
  const local = dayNumber(date) * day + (h * 60 + m) * minute;
  return { epoch: local - offset * minute, offset, offsetText: text.slice(16) };
};

/** What is wrong with a text or object as a moment, or its parts. */
export const readInstant = (input: unknown, path: string): InstantParts | Problem =>
  (typeof input === "string" ? plainParts(input) : undefined) ?? readClosely(input, path);

/** `2026-05-04 9:30 am` as ISO 8601 writes it, with its offset where it has one; nothing where the day may be several. */
const momentMeant = (input: string): string | undefined => {
  const [, before = "", behind = ""] =
    /^(.{6,40}?)(?:t(?=\d{4}|\d{1,2}:)|,? +(?:at )?(?=\d{1,2}(?:[:.h]| ?[ap]\.?m)))(\d.*)$/i.exec(
      input
        .slice(0, 90)
        .trim()
        .replace(/ ?\(.*\)$| uhr$/i, ""),
    ) ?? [];
  const [date, ...others] = dateMeant(before).meant;
  const clock = clockMeant(behind);
  if (date === undefined || others.length > 0 || clock === undefined) return undefined;
  return `${date}T${clock.time}${clock.seconds}${clock.offset}`;
};

const noOffset = (moment: string): string =>
  `an offset from UTC at the end, as in ${moment}-05:00: without it, it is another moment in every time zone`;

const readClosely = (input: unknown, path: string): InstantParts | Problem => {
  const isDate = typeof input === "object" && Object.prototype.toString.call(input) === "[object Date]";
  const problem = (expected: string, suggestion?: string): Problem => ({
    code: "date",
    path,
    got: isDate ? "a Date" : shown(input),
    expected,
    ...(suggestion === undefined ? {} : { suggestion }),
  });
  if (isDate) return problem("a moment as text", "the text that its toISOString gives");
  const text = typeof input === "object" && input !== null ? writtenText(input) : input;
  if (typeof text !== "string") return problem(wanted);
  const found = pattern.exec(text);
  if (found === null) {
    if (text.trim() === "") return { ...problem(wanted), code: "missing" };
    const meant = momentMeant(text);
    if (meant === undefined) return problem(wanted);
    if (isInstant(meant)) return problem(wanted, meant);
    return problem(pattern.exec(meant)?.[3] === undefined ? noOffset(meant) : wanted);
  }
  const fraction = found[2] ?? "";
  const offset = found[3];
  if (offset === undefined) return problem(noOffset(text.replace(/\[.*/, "")));
  const read = readDate(found[1], path);
  if ("code" in read) return read;
  const [h, m, s] = [
    numberAt(text, 11, 13),
    numberAt(text, 14, 16),
    text[16] === ":" ? numberAt(text, 17, 19) : 0,
  ];
  if (h > 23 || m > 59 || s > 59) return problem("a time from 00:00 to 23:59:59");
  if (fraction.length > 3 && /[^0]/.test(fraction.slice(3))) return problem("a time to the millisecond");
  if (offset === "-00:00") return problem("an offset that is known: -00:00 says that it is not");
  const [oh, om] = offset === "Z" ? [0, 0] : [numberAt(offset, 1, 3), numberAt(offset, 4, 6)];
  const ahead = (offset.startsWith("-") ? -1 : 1) * (oh * 60 + om) + 0;
  if (om > 59 || Math.abs(ahead) > 14 * 60) return problem("an offset from -14:00 to +14:00");
  const thousandths = fraction === "" ? 0 : numberAt(fraction.slice(0, 3).padEnd(3, "0"), 0, 3);
  const local = dayNumber(read) * day + (h * 60 + m) * minute + s * 1000 + thousandths;
  return { epoch: local - ahead * minute, offset: ahead, offsetText: offset };
};

/** The parts of a moment, or throws `date` with the path. */
export const instantParts = (input: unknown, path: string): InstantParts => {
  const read = readInstant(input, path);
  if ("code" in read) throw new RatewrightError(read);
  return read;
};

const two = (n: number): string => String(n).padStart(2, "0");

const instantText = ({ epoch, offset, offsetText }: InstantParts, path: string): Instant => {
  const local = epoch + offset * minute;
  const date = dateOfNumber(Math.floor(local / day), path);
  const ms = local - Math.floor(local / day) * day;
  const [s, rest] = [Math.floor(ms / 1000) % 60, ms % 1000];
  const seconds = s === 0 && rest === 0 ? "" : `:${two(s)}`;
  const thousandths = rest === 0 ? "" : `.${String(rest).padStart(3, "0")}`;
  const minutes = Math.floor(ms / minute);
  return `${date}T${two(Math.floor(minutes / 60))}:${two(minutes % 60)}${seconds}${thousandths}${offsetText}` as Instant;
};

/**
 * Takes a text or a date object as a moment. A time of day without an offset is refused: it is another
 * moment in every time zone. Seconds may be left out; an hour of 24 and a leap second are refused.
 *
 * @param path - how an error names the argument
 * @throws RatewrightError `date`
 * Source of the notation: ISO 8601-1:2019, date and time of day with the difference from UTC.
 *
 * @example
 * ```ts
 * import { instant } from "ratewright";
 * instant("2026-05-01T14:30:00-05:00"); // => "2026-05-01T14:30-05:00"
 * instant("2026-05-01T14:30"); // => throws date
 * ```
 */
export const instant = (input: string | InstantLike, path = "instant"): Instant =>
  instantText(instantParts(input, path), path);

/**
 * Whether a value is a moment as text, with a day and a time that exist and an offset.
 *
 * @example
 * ```ts
 * import { isInstant } from "ratewright";
 * isInstant("2026-05-01T14:30Z"); // => true
 * isInstant("2026-05-01"); // => false
 * ```
 */
export const isInstant = (input: unknown): input is Instant =>
  typeof input === "string" && !("code" in readInstant(input, "instant"));

/**
 * The moment that lies a number of hours later, or earlier for a negative number, to the millisecond and
 * with the offset of the first. A change to or from summer time in between is not known here: the hours
 * that pass are right, and the offset that is written is the old one.
 *
 * @param hours - may be a part of an hour
 * @throws RatewrightError `date`, `not-finite`; `range` outside the years 0001 to 9999
 *
 * @example
 * ```ts
 * import { addHours } from "ratewright";
 * addHours("2026-05-01T14:30-05:00", 12); // => "2026-05-02T02:30-05:00"
 * addHours("2024-02-28T23:45Z", 0.5); // => "2024-02-29T00:15Z"
 * ```
 */
export const addHours = (from: Instant, hours: number): Instant => {
  const parts = instantParts(from, "from");
  const later = Math.round(expectNumber(hours, "hours") * 60 * minute);
  const local = Math.floor((parts.epoch + later + parts.offset * minute) / day);
  if (!(local >= firstDay && local <= lastDay)) {
    outOfRange("hours", hours, { min: "0001-01-01", max: "9999-12-31" }, "a number of hours that ends at {}");
  }
  return instantText({ ...parts, epoch: parts.epoch + later }, "hours");
};

/**
 * The hours from one moment to another: `b - a`, negative where `b` is the earlier one. Offsets may differ.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { hoursBetween } from "ratewright";
 * hoursBetween("2026-05-01T14:30-05:00", "2026-05-02T02:30-05:00"); // => 12
 * hoursBetween("2026-05-01T14:30-05:00", "2026-05-01T14:30-06:00"); // => 1
 * ```
 */
export const hoursBetween = (a: Instant, b: Instant): number =>
  (instantParts(b, "b").epoch - instantParts(a, "a").epoch) / (60 * minute) + 0;

/**
 * -1, 0 or 1 as `a` is earlier than, the same moment as or later than `b`; it fits `Array.prototype.sort`.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { compareInstants } from "ratewright";
 * compareInstants("2026-05-01T14:30-05:00", "2026-05-01T19:30Z"); // => 0
 * ```
 */
export const compareInstants = (a: Instant, b: Instant): -1 | 0 | 1 => {
  const hours = hoursBetween(a, b);
  return hours > 0 ? -1 : hours < 0 ? 1 : 0;
};

/**
 * The calendar date of a moment where its offset holds.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { dateOfInstant } from "ratewright";
 * dateOfInstant("2026-05-01T23:30-05:00"); // => "2026-05-01"
 * ```
 */
export const dateOfInstant = (moment: Instant): CivilDate => {
  const { epoch, offset } = instantParts(moment, "moment");
  return dateOfNumber(Math.floor((epoch + offset * minute) / day), "moment");
};
