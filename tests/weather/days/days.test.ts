import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addDays,
  type CivilDate,
  dailyMeans,
  dailySeries,
  dailyTemperatures,
  dayRuns,
  firstRun,
  frostChance,
  frostDates,
  joinedDays,
  quantity,
  runningMean,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const series = (values: readonly (number | null)[], start: CivilDate = "2026-04-01", unit = "°F") =>
  dailySeries({ start, unit, what: "soil at 1 in", source: "probe", values });
const figures = fc.array(fc.option(fc.integer({ min: 30, max: 90 })), { minLength: 1, maxLength: 60 });
const f = (value: number) => quantity(value, "°F");

describe("runningMean", () => {
  it("is the mean of the window, worked afresh", () => {
    fc.assert(
      fc.property(figures, fc.integer({ min: 1, max: 9 }), (values, days) => {
        const means = runningMean({ series: series(values), days }).values;
        values.forEach((_, i) => {
          const window = values.slice(Math.max(0, i - days + 1), i + 1);
          const whole = window.length === days && window.every((value) => value !== null);
          const mean = (window as number[]).reduce((sum, value) => sum + value, 0) / days;
          if (whole) expect(means[i]).toBeCloseTo(mean, 9);
          else expect(means[i]).toBeNull();
        });
      }),
    );
  });

  it("stays within its window, and one day's mean is the day", () => {
    fc.assert(
      fc.property(figures, fc.integer({ min: 2, max: 6 }), (values, days) => {
        expect(runningMean({ series: series(values), days: 1 }).values).toEqual(values);
        const means = runningMean({ series: series(values), days, missing: days - 1 }).values;
        means.forEach((mean, i) => {
          if (mean === null) return;
          const there = values.slice(i - days + 1, i + 1).filter((value) => value !== null);
          expect(mean).toBeGreaterThanOrEqual(Math.min(...there) - 1e-9);
          expect(mean).toBeLessThanOrEqual(Math.max(...there) + 1e-9);
        });
      }),
    );
  });

  it("refuses a window that may be empty, and a part of a day", () => {
    expect(complaints(() => runningMean({ series: series([50]), days: 3, missing: 3 }))).toEqual([
      "conflict missing",
    ]);
    expect(complaints(() => runningMean({ series: series([50]), days: 2.5 }))).toEqual(["range days"]);
    expect(
      complaints(() => runningMean({ series: { type: "daily-temperatures" }, days: 2 } as never)),
    ).toEqual(["type series"]);
    expect(
      complaints(() => runningMean({ series: { ...series([50]), values: ["x"] }, days: 2 } as never)),
    ).toEqual(["not-finite series.values[0]"]);
  });
});

describe("dailyMeans", () => {
  it("needs both ends of a day", () => {
    const days = dailyTemperatures({
      start: "2026-04-01",
      unit: "°C",
      sensor: "soil at 5 cm",
      source: "probe",
      min: [4, null, 6],
      max: [10, 12, null],
    });
    expect(dailyMeans(days)).toMatchObject({ unit: "°C", values: [7, null, null] });
    expect(complaints(() => dailyMeans({ ...days, type: "daily-series" } as never))).toEqual([
      "type temperatures",
    ]);
    expect(complaints(() => dailyMeans(series([1]) as never))).toEqual([
      "type temperatures.what",
      "type temperatures.values",
    ]);
  });
});

describe("joinedDays", () => {
  it("takes each day from the best of the three, in the unit of the first", () => {
    const joined = joinedDays({
      observed: series([50, null, 54]),
      forecast: series([10, 12], "2026-04-03", "°C"),
      normal: series([45, 46, 47, 48, 49, 51]),
      what: "soil at 1 in",
    });
    expect(joined.series.values.map((value) => value && Number(value.toFixed(6)))).toEqual([
      50, 46, 54, 53.6, 49, 51,
    ]);
    expect(joined.basis).toEqual(["observed", "normal", "observed", "forecast", "normal", "normal"]);
  });

  it("needs one of them, of one dimension", () => {
    expect(complaints(() => joinedDays({ what: "x" }))).toEqual(["missing observed"]);
    expect(
      complaints(() =>
        joinedDays({ observed: series([1]), normal: series([1], "2026-04-01", "mm"), what: "x" }),
      ),
    ).toEqual(["unit/mismatch normal.unit"]);
    expect(
      complaints(() => joinedDays({ observed: series([1]), normal: series([1], "1900-01-01"), what: "x" })),
    ).toEqual(["range observed"]);
  });
});

describe("dayRuns", () => {
  it("finds first what firstRun finds", () => {
    fc.assert(
      fc.property(
        figures,
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 35, max: 85 }),
        (values, days, limit) => {
          const given = { series: series(values), threshold: f(limit), days };
          expect(dayRuns(given).runs[0]?.complete ?? null).toBe(firstRun(given));
        },
      ),
    );
  });

  it("holds only days on its side, and no run could be longer", () => {
    fc.assert(
      fc.property(
        figures,
        fc.integer({ min: 1, max: 4 }),
        fc.constantFrom("at or above", "at or below"),
        (values, days, side) => {
          const { runs, unknownDays } = dayRuns({ series: series(values), threshold: f(60), days, side });
          const fits = (value: number | null | undefined) =>
            typeof value === "number" && (side === "at or above" ? value >= 60 : value <= 60);
          const at = (date: string) => values.findIndex((_, i) => addDays("2026-04-01", i) === date);
          for (const run of runs) {
            const [first, last] = [at(run.from), at(run.to)];
            expect(last - first + 1).toBe(run.days);
            expect(run.days).toBeGreaterThanOrEqual(days);
            expect(values.slice(first, last + 1).every(fits)).toBe(true);
            expect(fits(values[first - 1]) || fits(values[last + 1])).toBe(false);
            expect(run.open).toBe(last === values.length - 1);
          }
          expect(unknownDays).toBe(values.filter((value) => value === null).length);
        },
      ),
    );
  });

  it("says on what a run rests", () => {
    const joined = joinedDays({
      observed: series([55, 56]),
      forecast: series([57], "2026-04-03"),
      normal: series([58, 58, 58, 58, 58]),
      what: "soil",
    });
    const basis = (days: number) => dayRuns({ series: joined, threshold: f(54), days }).runs[0]?.basis;
    expect([basis(2), basis(3), basis(4)]).toEqual(["observed", "forecast", "normal"]);
    expect(dayRuns({ series: series([60]), threshold: f(54), days: 1 }).runs[0]?.basis).toBeNull();
  });

  it("refuses a threshold of another dimension, and joined days that do not fit", () => {
    expect(
      complaints(() => dayRuns({ series: series([60]), threshold: quantity(3, "mm"), days: 1 })),
    ).toEqual(["unit/mismatch threshold"]);
    const bad = { type: "joined-days", version: 1, series: series([60]), basis: [] };
    expect(complaints(() => dayRuns({ series: bad as never, threshold: f(3), days: 1 }))).toEqual([
      "conflict series.basis",
    ]);
  });
});

describe("frostDates", () => {
  it("warns where the dividing day lies in winter", () => {
    // Six years of a southern park: frosts from June to August.
    const start = "2018-01-24";
    const values = Array.from({ length: 6 * 365 }, (_, i) => (/-0[678]-/.test(addDays(start, i)) ? -1 : 12));
    const minima = dailySeries({
      start,
      unit: "°C",
      what: "lowest air temperature",
      source: "invented",
      values,
    });
    const codes = (divide?: "01-24") =>
      frostDates({ minima, ...(divide === undefined ? {} : { divide }) }).findings.map(({ code }) => code);
    expect(codes()).toContain("frost/near-dividing-day");
    expect(codes("01-24")).not.toContain("frost/near-dividing-day");
  });
  const winters = (lasts: readonly (number | null)[]) => {
    // Winters of 365 or 366 days from 24 July 2000 on, each with one frost, some days after the dividing day.
    let day = "2000-07-24" as `${number}-${number}-${number}`;
    const values: number[] = [];
    for (const last of lasts) {
      const next = `${Number(day.slice(0, 4)) + 1}-07-24` as typeof day;
      for (let i = 0; addDays(day, i) !== next; i++) values.push(i === last ? -1 : 10);
      day = next;
    }
    return dailySeries({ start: "2000-07-24", unit: "°C", what: "lowest", source: "invented", values });
  };
  const lasts = fc.array(fc.option(fc.integer({ min: 100, max: 300 }), { freq: 5 }), {
    minLength: 1,
    maxLength: 12,
  });

  it("gives dates that as many winters pass as was asked for, and no earlier ones", () => {
    fc.assert(
      fc.property(lasts, fc.integer({ min: 1, max: 99 }), (list, percent) => {
        const dates = frostDates({ minima: winters(list), percents: [percent] });
        expect(dates.last.winters).toBe(list.length);
        expect(dates.last.withoutFrost).toBe(list.filter((one) => one === null).length);
        const found = dates.last.odds[0]?.date ?? null;
        if (found === null) {
          expect((100 * list.filter((one) => one !== null).length) / list.length).toBeLessThanOrEqual(
            percent + 1e-9,
          );
          return;
        }
        // A day of slack: a leap year moves the same day of the year by one.
        const later = dates.winters.filter(
          ({ lastFrost }) => lastFrost !== null && monthOrder(lastFrost) > monthOrder(`2001-${found}`) + 1,
        );
        expect((100 * later.length) / list.length).toBeLessThanOrEqual(percent + 1e-9);
      }),
    );
  });

  it("falls with the date, from every frost to none", () => {
    fc.assert(
      fc.property(lasts, (list) => {
        const dates = frostDates({ minima: winters(list) });
        const chances = ["07-25", "12-01", "02-01", "04-01", "06-01", "07-23"].map((date) =>
          frostChance({ dates, date: date as `${number}-${number}`, side: "after" }).in("%"),
        );
        expect(chances[0]).toBeCloseTo((100 * list.filter((one) => one !== null).length) / list.length, 9);
        expect(chances.at(-1)).toBe(0);
        expect([...chances].sort((a, b) => b - a)).toEqual(chances);
      }),
    );
  });

  it("does not count a side of a winter that the record cannot tell", () => {
    const record = winters([120, 250]);
    const cut = dailySeries({ ...record, start: "2000-11-01", values: record.values.slice(100) });
    const dates = frostDates({ minima: cut });
    const first = dates.winters.find(({ from }) => from === "2000-07-24");
    expect(first).toMatchObject({
      firstState: "not known",
      firstFrost: null,
      lastState: "frost",
      lastFrost: "2000-11-21",
    });
    expect([dates.first.winters, dates.last.winters]).toEqual([1, 2]);
    expect(dates.findings[0]?.code).toBe("frost/few-winters");
  });

  it("takes equal as frost, 28 °F as another threshold, and the southern year", () => {
    const minima = series([40, 32, 28, 35], "2026-05-01");
    const last = (threshold?: number) =>
      frostDates({
        minima,
        divide: "01-24",
        missingDays: 100,
        ...(threshold === undefined ? {} : { threshold: f(threshold) }),
      }).winters.at(-1)?.firstFrost;
    expect(last()).toBe("2026-05-02");
    expect(last(28)).toBe("2026-05-03");
  });

  it("names what does not fit", () => {
    expect(complaints(() => frostDates({ minima: series([1], "2026-04-01", "mm") }))).toEqual([
      "unit/mismatch minima.unit",
    ]);
    expect(
      complaints(() => frostDates({ minima: series([1]), percents: [0], divide: "2-2" as never })),
    ).toEqual(["range percents[0]", "date divide"]);
    const dates = frostDates({ minima: series([1]) });
    const broken = { ...dates, winters: [{ from: "2000-07-24", lastFrost: "soon", lastState: "frost" }] };
    expect(complaints(() => frostChance({ dates: broken as never, date: "04-01", side: "after" }))).toEqual([
      "date dates.winters[0].lastFrost",
    ]);
    expect(
      complaints(() =>
        frostChance({ dates: { ...dates, winters: [null] } as never, date: "04-01", side: "after" }),
      ),
    ).toEqual(["type dates.winters[0]"]);
    expect(complaints(() => frostChance({ dates, date: "04-01", side: "after" }))).toEqual([
      "missing dates.winters",
    ]);
  });
});

/** The place of a date in a winter that begins on 24 July. */
const monthOrder = (date: string): number => {
  const [, month, day] = date.split("-").map(Number) as [number, number, number];
  return ((month + 4) % 12) * 31 + day;
};
