import { fixedApart, roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { checks, expectList, type Finding, fail, inUnit, outOfRange } from "../../quantity/index.js";
import {
  depth,
  depthOrNone,
  type Length,
  made,
  number,
  optional,
  percent,
  type Rate,
  rate,
  readRecord,
  type Share,
  type Time,
  time,
  word,
} from "../read.js";
import { minutesFor } from "./run-time.js";

/** ISO 8601 weekday: 1 is Monday, 7 is Sunday. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** What a zone gets on one day of the week. */
export interface WateringDay {
  readonly weekday: Weekday;
  /** Days until the next watering day, this one counted. */
  readonly covers: number;
  /** What the roots are to get. */
  readonly net: Length;
  /** What the heads put down. */
  readonly gross: Length;
  readonly runTime: Time;
}

/** The week of a zone, day by day. */
export interface WateringWeek {
  readonly type: "watering-week";
  readonly version: 1;
  /** What is left of the need after the rain. */
  readonly net: Length;
  readonly days: readonly WateringDay[];
  readonly findings: readonly Finding[];
}

const weekdays = (input: unknown, path: string): readonly Weekday[] => {
  const list = expectList(input, path, "watering day, from 1 for Monday to 7 for Sunday");
  if (list.length > 7) outOfRange(path, list, { max: 7, count: "days of a week" }, "{}, each once");
  const problems = checks();
  list.forEach((day, i) => {
    if (!([1, 2, 3, 4, 5, 6, 7] as readonly unknown[]).includes(day)) {
      problems.run(() =>
        outOfRange(`${path}[${i}]`, day, { step: 1, min: 1, max: 7 }, "{}: 1 for Monday, 7 for Sunday"),
      );
    } else if (list.indexOf(day) < i) {
      problems.run(() => fail("duplicate", `${path}[${i}]`, day, "each day once"));
    }
  });
  problems.done();
  return [...(list as readonly Weekday[])].sort((a, b) => a - b);
};

/**
 * Spreads the need of a week over the watering days: the days on which the utility lets a zone be watered.
 *
 * `net = need - rain`, zero at least; by day `gross = net * 100 / E` and `t = gross m / PR`
 *
 * - `need` the depth that the turf uses in the week, such as seven days of {@link turfUse}; `rain` the effective rain of
 *   the week, none where left out
 * - `split`: `"equal"`, the default, gives each watering day the same; `"by days"` gives each the share of the days until
 *   the next one, so that Monday, Wednesday, Saturday get 2, 3 and 2 sevenths
 * - `efficiency` 100 % and `multiplier` 1 where left out
 * - `window` the longest that the zone may run in a day, `holds` what the root zone holds between refills: what goes
 *   beyond either is a finding
 *
 * Depths are in the unit of the need, times in minutes. Restrictions of the utility on hours or addresses are not known
 * here.
 *
 * @throws RatewrightError `missing`, `duplicate`, `range`, `unit/mismatch`, `type`, all that are found
 *
 * Source: the arithmetic of run time charts: minutes a day by seven, over the watering days; common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity, wateringWeek } from "ratewright";
 * const week = wateringWeek({
 *   need: quantity(1.4, "in"), rain: quantity(0.2, "in"), days: [1, 4], rate: quantity(0.8, "in/h"),
 * });
 * week.net.in("in").toFixed(1); // => "1.2"
 * week.days.map((day) => Math.round(day.runTime.in("min"))); // => [45, 45]
 * ```
 */
export const wateringWeek = (input: {
  readonly need: Length;
  readonly rain?: Length;
  readonly days: readonly Weekday[];
  readonly rate: Rate;
  readonly split?: "equal" | "by days";
  readonly efficiency?: Share;
  readonly multiplier?: number;
  readonly window?: Time;
  readonly holds?: Length;
}): WateringWeek => {
  const q = readRecord(
    input,
    {
      need: depthOrNone,
      rain: optional(depthOrNone),
      days: weekdays,
      rate,
      split: word(["equal", "by days"], "equal"),
      efficiency: optional(percent({ above: 0, max: 100 }, 1)),
      multiplier: optional(number({ min: 1, max: 100 })),
      window: optional(time),
      holds: optional(depth),
    },
    "a record with need, days and rate",
  );
  const { unit } = q.need;
  const rain = q.rain?.in(unit as "mm") ?? 0;
  const net = exceeds(q.need.value, rain) ? q.need.value - rain : 0;
  const days = q.days.map((weekday, i): WateringDay => {
    const next = q.days[(i + 1) % q.days.length] as number;
    const covers = ((next - weekday + 6) % 7) + 1;
    const part = q.split === "equal" ? net / q.days.length : (net * covers) / 7;
    const own = made(part, unit, "length");
    const gross = made((part * 100) / (q.efficiency ?? 100), unit, "length");
    return {
      weekday,
      covers,
      net: own,
      gross,
      runTime: made(minutesFor(gross, q.rate, q.multiplier ?? 1), "min", "time"),
    };
  });
  return {
    type: "watering-week",
    version: 1,
    net: made(net, unit, "length"),
    days,
    findings: days.flatMap((day) => [...tooLong(day, q.window), ...tooDeep(day, q.holds)]),
  };
};

const names = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

const tooLong = (day: WateringDay, window: Time | undefined): readonly Finding[] => {
  if (window === undefined) return [];
  const [needed, most] = [day.runTime.in("min"), window.in("min")];
  if (!exceeds(needed, most)) return [];
  const told = fixedApart(needed, most, 0);
  return [
    {
      code: "water/window-too-short",
      severity: "warning",
      path: "window",
      params: { weekday: day.weekday, minutes: needed, window: most },
      text: `${names[day.weekday - 1]} needs ${told(needed)} min, and the window is ${told(most)} min.`,
    },
  ];
};

const tooDeep = (day: WateringDay, holds: Length | undefined): readonly Finding[] => {
  if (holds === undefined || !exceeds(day.net.in("mm"), holds.in("mm"))) return [];
  const { unit } = day.net;
  const most = inUnit(holds, unit).value;
  const told = roundedApart(day.net.value, most, 3);
  return [
    {
      code: "water/below-the-roots",
      severity: "caution",
      path: "holds",
      params: { weekday: day.weekday, millimeters: day.net.in("mm"), holds: holds.in("mm") },
      text: `${names[day.weekday - 1]} puts ${told(day.net.value)} ${unit} in the root zone, which holds ${told(most)} ${unit}: the rest drains below the roots.`,
    },
  ];
};
