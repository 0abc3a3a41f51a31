// Four years of real daily weather (Seattle, 2012 to 2015, from the open data of the package vega-datasets) through the
// weather, the diseases and the insects, beside plain loops over the same file.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  addDays,
  brownPatchOutlook,
  type CivilDate,
  dailyMeans,
  dailySeries,
  dailyTemperatures,
  dateReached,
  dollarSpotOutlook,
  frostChance,
  frostDates,
  humidityFromDewPoint,
  insectModel,
  insectTargets,
  quantity,
} from "../../../src/index.js";

interface Day {
  readonly date: CivilDate;
  readonly max: number;
  readonly min: number;
}

// The package exports no path to its data files.
const file = new URL("../../../node_modules/vega-datasets/data/seattle-weather.csv", import.meta.url);
const days: readonly Day[] = readFileSync(file, "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => {
    const [date, , max, min] = line.split(",");
    return { date: date as CivilDate, max: Number(max), min: Number(min) };
  });
const start = days[0]?.date as CivilDate;
const station = { start, source: "Seattle, daily record of an open dataset" } as const;
const series = dailyTemperatures({
  ...station,
  unit: "°C",
  sensor: "air",
  min: days.map(({ min }) => min),
  max: days.map(({ max }) => max),
});
const minima = dailySeries({ ...station, unit: "°C", what: "lowest air temperature", values: series.min });
const means = dailyMeans(series);
// The record has no humidity: the night is taken to cool to the dew point, as is usual where none is measured.
const humidity = dailySeries({
  ...station,
  unit: "%",
  what: "humidity of the mean temperature, from the lowest as dew point",
  values: days.map(({ min, max }) =>
    humidityFromDewPoint({ temperature: quantity((min + max) / 2, "°C"), dewPoint: quantity(min, "°C") }).in(
      "%",
    ),
  ),
});

describe("four years of a real record", () => {
  it("has every day of them", () => {
    expect(days).toHaveLength(1461);
    expect(days.every(({ date }, i) => date === addDays(start, i))).toBe(true);
  });

  it("gives a probability of dollar spot for every day but the first four, as a plain loop does", () => {
    const outlook = dollarSpotOutlook({ temperature: means, humidity });
    expect(outlook.unknownDays).toBe(4);
    outlook.days.slice(4).forEach(({ value }, at) => {
      const five = [0, 1, 2, 3, 4].map((i) => at + i);
      const mean = (list: readonly (number | null)[]) =>
        five.reduce((sum, i) => sum + (list[i] as number), 0) / 5;
      const line = -11.4041 + 0.0894 * mean(humidity.values) + 0.1932 * mean(means.values);
      expect(value).toBeCloseTo(100 / (1 + Math.exp(-line)), 9);
    });
    const summer = (month: string) =>
      outlook.days.filter(({ date, atOrAboveAction }) => date.slice(5, 7) === month && atOrAboveAction)
        .length;
    expect(summer("01")).toBe(0);
    expect(summer("08")).toBeGreaterThan(0);
  });

  it("gives a brown patch index for every day, highest in the warmest and moistest nights", () => {
    const outlook = brownPatchOutlook({ humidity, minimum: minima });
    outlook.days.forEach(({ value }, i) => {
      const { min } = days[i] as Day;
      expect(value).toBeCloseTo(
        -21.5 + 0.15 * (humidity.values[i] as number) + 1.4 * min - 0.033 * min * min,
        9,
      );
    });
  });

  it("gives the first and last frosts that a search of the file finds", () => {
    const dates = frostDates({ minima });
    for (const year of [2012, 2013, 2014]) {
      const winter = dates.winters.find(({ from }) => from === `${year}-07-24`);
      const frosty = days.filter(
        ({ date, min }) => date >= `${year}-07-24` && date < `${year + 1}-07-24` && min <= 0,
      );
      expect(winter?.firstFrost).toBe(frosty[0]?.date);
      expect(winter?.lastFrost).toBe(frosty.at(-1)?.date);
    }
    // The file begins in January and ends in December: five springs or falls are known on one side only.
    expect([dates.first.winters, dates.last.winters]).toEqual([4, 4]);
    expect(frostChance({ dates, date: "07-23", side: "after" }).in("%")).toBe(0);
    expect(dates.findings[0]?.params).toEqual({ winters: 4 });
  });

  it("reaches a target of an insect on the day that a plain sum reaches it, each year", () => {
    const target = insectTargets.find(({ id }) => id === "billbugs, 30 % of adults, Utah");
    if (target === undefined) throw new Error("the target is there");
    const { model, from } = insectModel({
      target,
      assume: { method: "simple average", upper: "none", sensor: "air" },
    });
    for (const year of [2012, 2013, 2014, 2015]) {
      const found = dateReached({ series, model, from: `${year}-01-13` as CivilDate, threshold: from });
      let sum = 0;
      const day = days.find(({ date, min, max }) => {
        if (date < `${year}-01-13`) return false;
        sum += Math.max(0, (min + max) / 2 - 5);
        return sum >= 459 - 1e-6;
      });
      expect(found.reached ? found.date : null).toBe(day?.date);
    }
  });
});
