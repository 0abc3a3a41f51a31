// What each mistake gives, reckoned from the figures that a problem prints: shapes, soil, weather, dates and the books.
import { area, down, len, mean, type Seen, type SlipsOf, some, sum, up } from "./slip-figures.js";

/** The days that a text tells of: months and days of the month, in order. */
const dates = (text: string): readonly [month: number, day: number][] =>
  [...text.matchAll(/(April|May|June|July|August|September|October|November|March) (\d+)/g)].map(
    ([, month, day]) => [new Date(`${month} 1, 2026 12:00 UTC`).getUTCMonth() + 1, Number(day)],
  );
const daysGone = ({ text, a, level }: Seen): number =>
  level === 1 ? a : Number(/asks for (\d+) days/.exec(text)?.[1]) - a;
/** What is left of the wait, or the days themselves. */
const passed = (seen: Seen, days: number): number =>
  seen.level === 1 ? days : daysGone(seen) + seen.a - days;

const percents = (text: string): readonly number[] =>
  [...text.matchAll(/an? (\d+)-\d+-\d+/g)].map(([, n]) => Number(n));
const leftOf = (seen: Seen, used: number): number => (seen.level === 2 ? seen.q(2) - used : used);

export const recordSlips: Readonly<Record<string, SlipsOf>> = {
  "site/rectangle": {
    "triangle for rectangle": ({ a }) => a / 2,
    "perimeter for area": ({ q, length }) => 2 * (q(0) + q(1)) * length,
    "acre for 1,000 sq ft": ({ a }) => a * 43.56,
    "hectare for 100 m²": ({ a }) => a * 100,
    "decimal point one place off": ({ a }) => [a * 10, a / 10],
  },
  "site/trapezoid": {
    "one side for both": ({ q }) => [q(0) * q(2), q(1) * q(2)],
    "sum of the sides": ({ q }) => (q(0) + q(1)) * q(2),
    "halved twice": ({ q }) => ((q(0) + q(1)) * q(2)) / 4,
    "decimal point one place off": ({ a }) => a * 10,
  },
  "water/precipitation-rate": {
    "fraction upside down": ({ a, u, q, us, level }) => {
      const depth = us ? len.in : 0.001;
      return level === 1 ? (u / a) * u : (q(0) / q(1) / (q(us ? 5 : 2) / depth) / (depth / 3600)) * 3600;
    },
    "minutes for hours": ({ a, level }) => (level === 1 ? a / 60 : (a / 60) * 100),
    "decimal point one place off": ({ a }) => a * 10,
    "flow over time": ({ q, us }) => q(0) / (us ? len.ft ** 2 : 1),
    "multiplied by the rate": ({ q, us }) => {
      const depth = us ? len.in : 0.001;
      return (q(0) / q(1) / (depth / 3600)) * (q(us ? 5 : 2) / depth) * 3600;
    },
    "forgot the depth of water": ({ q, us }) => (us ? len.in : 0.001) / (q(0) / q(1)),
  },
  "soil/layer": {
    "forgot the density": ({ a, b }) => a / b(0),
    "density upside down": ({ a, b }) => a / b(0) ** 2,
    "forgot the depth": ({ a, q, us }) => a / (q(0) / (us ? len.in : 0.01)),
    "decimal point one place off": ({ a, level }) => (level === 1 ? a / 10 : a * 10),
    "two times for any layer": ({ q, u }) => 2 * q(3) * u,
    "potash for potassium": ({ a }) => a * 1.2,
  },
  "soil/sodium": {
    "ratio without a root": ({ q }) => q(0) / ((q(1) + q(2)) / 2),
    "root of the sum": ({ q }) => q(0) / Math.sqrt(1000 * (q(1) + q(2))),
    "sum for mean": ({ q }) => q(0) / (q(1) + q(2)),
    "one ion left out": ({ q }) => q(0) / Math.sqrt(500 * q(1)),
  },
  "stand/clippings": {
    "nutrient for product": ({ q }) => (q(0) * q(1)) / 0.001,
    "divided by the percentage": ({ q, us }) => ((q(0) * q(1)) / 0.001 / q(us ? 4 : 2)) * 100,
    "density upside down": ({ q, us, u }) =>
      ((us ? q(0) / (len.qt / (1000 * len.ft ** 2)) : q(0) / 1e-6 / 1) / (q(1) / 0.001)) * u,
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "forgot to convert": ({ a, us }) => (us ? a / (len.qt * 1000) : a * 1000),
    "units upside down": ({ a }) => a / (len.qt * 1000) ** 2,
  },
  "stand/sod": {
    "forgot the extra": ({ q, level }) => (level === 1 ? q(0) : up(q(0) / q(2))),
    "percent taken off": ({ q, level }) =>
      level === 1 ? q(0) * (1 - q(1) / 100) : up((q(0) * (1 - q(1) / 100)) / q(2)),
    "percent alone": ({ q }) => (q(0) * q(1)) / 100,
    "decimal point one place off": ({ a }) => a * 10,
    "rounded packages down": ({ q }) => down((q(0) * (1 + q(1) / 100)) / q(2)),
    "one package too many": ({ a }) => a + 1,
    "counted without the package size": ({ q, us }) => up((q(0) * (1 + q(1) / 100)) / (us ? len.ft ** 2 : 1)),
  },
  "weather/wind": {
    "wind at the station": ({ q }) => q(0),
    "heights the wrong way": ({ q, b }) => q(0) / b(0),
    "heights in proportion": ({ q }) => (q(0) * q(2)) / q(1),
    "share that is gone": ({ q, b }) => q(0) * (1 - b(0)),
  },
  "weather/light": {
    "all energy for light": ({ b }) => b(0) * b(2),
    "fraction upside down": ({ q, b }) => (b(0) * q(0)) / 100 / b(2),
    "forgot to convert": ({ q, b }) => (b(0) * q(0)) / 100,
    "decimal point one place off": ({ a }) => a / 10,
  },
  "pest/density": {
    "forgot to divide by the cores": ({ a }) => a * 3,
    "forgot the area of a core": ({ b }) => (b(0) + b(1) + b(2)) / 3,
    "diameter for radius": ({ a }) => a / 4,
    "fraction upside down": ({ a }) => 1 / a,
  },
  "indicator/impact": {
    "fraction upside down": ({ a, b }) => b(0) ** 2 / a,
    "forgot the percent active": ({ a, q }) => (a / q(0)) * 100,
    "divided by the percentage": ({ a, q }) => (a / q(0) ** 2) * 10_000,
    "added instead of multiplied": ({ q, b }) => b(0) + q(0) / (len.lb / area.acre),
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
  },
  "calendar/days": {
    "last day counted twice": (seen) => passed(seen, daysGone(seen) + 1),
    "both ends left out": (seen) => passed(seen, daysGone(seen) - 1),
    "month of thirty days": (seen) => {
      const [[month = 0, day = 0] = [], [later = 0, last = 0] = []] = dates(seen.text);
      return passed(seen, 30 * (later - month) + last - day);
    },
    "months left out": (seen) => {
      const [[, day = 0] = [], [, last = 0] = []] = dates(seen.text);
      return passed(seen, Math.abs(last - day));
    },
    "added instead of taken away": (seen) => 2 * daysGone(seen) + seen.a,
    "forgot what is gone already": (seen) => daysGone(seen) + seen.a,
  },
  "numeric/mean": {
    "sum for mean": (seen) => sum(some(seen, 0, 3)),
    "wrong number of readings": (seen) => sum(some(seen, 0, 3)) / 2,
    "one reading left out": ({ q }) => (q(0) + q(1)) / 2,
    "decimal point one place off": ({ a }) => a / 10,
    "half of the range": (seen) => (100 * (seen.q(1) - seen.q(0))) / (seen.q(0) + seen.q(1)),
    "deviation for variation": ({ q }) => (1000 * (q(1) - q(0))) / Math.SQRT2,
    "range for deviation": ({ a }) => a * Math.SQRT2,
    "fraction upside down": ({ a }) => 10_000 / a,
  },
  "plan/reorder": {
    "use of the whole time": ({ q, whole, level }) => q(1) + (level === 2 ? whole(3) : 0),
    "fraction upside down": ({ q, whole, level }) => (q(1) * q(0)) / q(2) + (level === 2 ? whole(3) : 0),
    "lead time only": ({ q }) => (q(1) * q(2)) / q(0),
    "stock kept back only": ({ q }) => q(3),
    "decimal point one place off": ({ a }) => a / 10,
    "one day only": ({ q }) => (q(1) / q(0)) * 86_400,
  },
  "plan/route": {
    "rounded packages down": ({ q }) => down(((q(0) + q(1) + q(2)) * q(3)) / q(4)),
    "one package too many": ({ a }) => a + 1,
    "counted without the package size": ({ q, mass }) => up(((q(0) + q(1) + q(2)) * q(3)) / mass),
    "forgot an entry": ({ q }) => up(((q(0) + q(1)) * q(3)) / q(4)),
  },
  "ledger/season-total": {
    "product for season's total": (seen) => leftOf(seen, seen.q(0) + seen.q(1)),
    "one entry only": (seen) => leftOf(seen, (seen.q(0) * (percents(seen.text)[0] ?? 0)) / 100),
    "mean of the percentages": (seen) =>
      leftOf(seen, ((seen.q(0) + seen.q(1)) * mean(percents(seen.text))) / 100),
    "decimal point one place off": ({ a }) => [a * 10, a / 10],
    "what is used for what is left": ({ q, a }) => q(2) - a,
    "added instead of taken away": ({ q, a }) => 2 * q(2) - a,
  },
  "interval/half-life": {
    "one half-life too few": ({ a }) => a * 2,
    "one half-life too many": ({ a }) => a / 2,
    "share that is gone": ({ a }) => 100 - a,
    "linear decay": ({ q }) => 100 - (50 * q(1)) / q(0),
    "fraction upside down": ({ q }) => 100 * 2 ** -(q(0) / q(1)),
  },
  "interval/split": {
    "rounded applications down": ({ q }) => down(q(0) / q(1)),
    "one application too many": ({ a }) => a + 1,
    "half of the most at one time": ({ q }) => up(q(0) / (q(1) / 2)),
    "forgot the most at one time": ({ q, per, mass }) => up((q(0) * per) / mass),
  },
};
