/** A time of day that a text may mean: the hour and minute, the seconds, and the offset from UTC, each as ISO 8601 writes it. */
export interface ClockMeant {
  readonly time: string;
  /** `:15`, or nothing. */
  readonly seconds: string;
  /** `-05:00`, `Z`, or nothing. */
  readonly offset: string;
}

const inWords: Readonly<Record<string, string>> = { noon: "12:00", midnight: "00:00" };
const said =
  /^(\d{1,2})(?:[:.h]? ?(\d{2})(:\d{2})?(?:\.\d+)?)?(?: ?([ap])\.?(?:m\.?)?| ?(?:h(?:(?:ou)?rs)?|uhr)\.?)? ?(z|(?:gmt|utc)?[+-]\d{1,2}(?::?\d{2})?)?$/;
const two = (text: string | number): string => String(text).padStart(2, "0");

const offsetOf = (text: string): string => {
  if (text === "" || text === "z") return text.toUpperCase();
  const [, sign = "", hours = "", minutes = "00"] = /([+-])(\d{1,2}):?(\d{2})?$/.exec(text) ?? [];
  return `${sign}${two(hours)}:${minutes}`;
};

/** `7:30`, `7.30 am`, `0730`, `7 pm`, `19h05`, `noon` as the time of day that they say; offered, never read in silence. */
export const clockMeant = (input: string): ClockMeant | undefined => {
  const text = input
    .slice(0, 60)
    .trim()
    .toLowerCase()
    .replace(/[\u2010-\u2015−]/g, "-");
  const found = said.exec(inWords[text] ?? text);
  if (found === null) return undefined;
  const [all, hour = "", minute, seconds = "", half, offset = ""] = found;
  // a bare 7 may be a number of hours, and 07-30 a day
  if (minute === undefined && (half === undefined ? !/h/.test(all) : false)) return undefined;
  if (minute === undefined && offset !== "") return undefined;
  const at = Number(hour);
  if (half !== undefined && (at < 1 || at > 12)) return undefined;
  const hours = half === undefined ? at : (at % 12) + (half === "p" ? 12 : 0);
  if (hours > 23 || Number(minute ?? 0) > 59 || Number(seconds.slice(1)) > 59) return undefined;
  return {
    time: `${two(hours)}:${minute ?? "00"}`,
    seconds: seconds === ":00" ? "" : seconds,
    offset: offsetOf(offset),
  };
};
