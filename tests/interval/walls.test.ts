import { describe, expect, it } from "vitest";
import * as interval from "../../src/interval/index.js";
import { frozen, quantity } from "../../src/quantity/index.js";
import { answerOf } from "../errors.js";

const label = "label";
const rule = interval.intervalRule({ minimumDays: 14, source: label });
const end = "2026-06-03T15:30-05:00" as const;
const model = interval.degreeDayModel({
  method: "simple average",
  base: { value: 0, unit: "°C" },
  sensor: "air",
});
const series = {
  type: "daily-temperatures",
  version: 1,
  start: "2026-05-01",
  unit: "°C",
  sensor: "air",
  source: "depot",
  min: [8, 9, 9],
  max: [19, 20, 21],
} as const;
const rate = (value: number) => quantity(value, "lb/acre", "ai");
const days = (value: number) => quantity(value, "d");

describe("a field that is not known is refused, with the near one", () => {
  const more = { strange: 1 };
  it.each([
    ["nextDates", () => interval.nextDates({ applied: ["2026-05-01"], rule, ...more })],
    ["intervalRule", () => interval.intervalRule({ minimumDays: 14, source: label, ...more })],
    [
      "applicationDates",
      () => interval.applicationDates({ first: "2026-05-01", intervalDays: 14, count: 2, ...more }),
    ],
    ["applicationsLeft", () => interval.applicationsLeft({ maximum: rate(2), rate: rate(1), ...more })],
    [
      "splitApplication",
      () =>
        interval.splitApplication({
          first: "2026-05-01",
          amount: rate(1),
          maximum: rate(2),
          afterDays: { min: 1, max: 2, ...more },
        }),
    ],
    [
      "earliestBySeedingIntervals",
      () => interval.earliestBySeedingIntervals({ rules: [], happened: [], next: "seeding", ...more }),
    ],
    [
      "restrictedEntryInterval",
      () => interval.restrictedEntryInterval({ end, products: [{ product: "a", ...more }] }),
    ],
    [
      "interimRestrictedEntryHours",
      () => interval.interimRestrictedEntryHours({ dermal: 3, eye: 3, skin: 3, ...more }),
    ],
    ["fractionRemaining", () => interval.fractionRemaining({ halfLife: days(3), elapsed: days(3), ...more })],
    ["dateReached", () => interval.dateReached({ series, model, from: "2026-05-01", ...more } as never)],
    ["accumulatedDegreeDays", () => interval.accumulatedDegreeDays({ series, model, ...more } as never)],
    [
      "growthPotential",
      () => interval.growthPotential({ mean: quantity(20, "°C"), season: "cool", ...more } as never),
    ],
    ["rainfastFrom", () => interval.rainfastFrom({ end, label: quantity(6, "h"), ...more })],
    [
      "sprayWindow",
      () =>
        interval.sprayWindow({
          weather: interval.hourlyWeather({
            start: end,
            source: "a",
            rain: { unit: "mm", values: [0] },
          }),
          rules: [{ rainfast: { hours: 2 }, source: label, ...more } as never],
        }),
    ],
  ] as const)("%s", (_, call) => {
    expect(answerOf(call)).toMatch(/^type .*strange$/);
  });
});

describe("what is no text, date or number is refused as ours", () => {
  const bare = Object.create(null) as never;
  it.each([
    [
      "a least number of days",
      () => interval.intervalRule({ minimumDays: bare, source: label }),
      "range rule.minimumDays",
    ],
    [
      "the start of a blackout period",
      () => interval.intervalRule({ blackout: [{ from: bare, to: "06-01" }], source: label }),
      "date rule.blackout[0].from",
    ],
    [
      "why there is a blackout",
      () =>
        interval.intervalRule({
          blackout: [{ from: "05-01", to: "06-01", why: Number.NaN as never }],
          source: label,
        }),
      "type rule.blackout[0].why",
    ],
    ["an application", () => interval.nextDates({ applied: [bare], rule }), "date applied[0]"],
    [
      "the source of a seeding interval",
      () =>
        interval.earliestBySeedingIntervals({
          rules: [{ from: "spray", to: "seeding", minimumDays: 3, about: "a", source: Number.NaN as never }],
          happened: [],
          next: "seeding",
        }),
      "type rules[0].source",
    ],
    [
      "the source of a record",
      () =>
        interval.regulatorInterval({ ...interval.regulatorIntervals[0], source: undefined } as never, {
          sensor: "air",
        }),
      "missing record.source",
    ],
    [
      "a method",
      () =>
        interval.regulatorInterval(interval.regulatorIntervals[0] as never, {
          sensor: "air",
          method: 5n as never,
        }),
      "conflict supplied.method",
    ],
    [
      "the source of a rule",
      () => interval.hourlyWeather({ start: end, source: bare, rain: { unit: "mm", values: [0] } }),
      "type source",
    ],
  ] as const)("%s", (_, call, expected) => {
    expect(answerOf(call)).toBe(expected);
  });
});

describe("lists of a thousand million places do not run away", () => {
  const sparse = new Array(1e9) as never[];
  it.each([
    ["nextDates", () => interval.nextDates({ applied: sparse, rule })],
    [
      "earliestBySeedingIntervals",
      () => interval.earliestBySeedingIntervals({ rules: sparse, happened: [], next: "seeding" }),
    ],
    ["avoided times", () => interval.nextDates({ applied: ["2026-05-01"], rule, avoid: { times: sparse } })],
    [
      "avoided weekdays",
      () => interval.nextDates({ applied: ["2026-05-01"], rule, avoid: { weekdays: sparse } }),
    ],
    [
      "hourlyWeather",
      () => interval.hourlyWeather({ start: end, source: "a", rain: { unit: "mm", values: sparse } }),
    ],
    [
      "degree days",
      () =>
        interval.accumulatedDegreeDays({ series: { ...series, min: sparse, max: sparse }, model } as never),
    ],
  ] as const)("%s", (_, call) => {
    expect(answerOf(call)).toMatch(/^range /);
  });
});

it("an interval too small to count by is refused, where the multiple was no number", () => {
  const normals = {
    type: "daily-normals",
    version: 1,
    unit: "°C",
    sensor: "air",
    source: "depot",
    min: Array<number>(366).fill(10),
    max: Array<number>(366).fill(20),
  } as const;
  const tiny = { value: 5e-324, unit: "°C d", of: `degree-days:${model.id}` };
  const call = () =>
    interval.calendarAgainstDegreeDays({
      normals,
      model,
      starts: ["2026-05-01"],
      intervalDays: 28,
      interval: tiny as never,
    });
  expect(answerOf(call)).toBe("range interval");
});

describe("nothing shared can be changed", () => {
  const { eventWindows, publishedSprayRules, regulatorIntervals } = interval;
  const { replacementHalfLives, soilTemperatureThresholds, turfHalfLives } = interval;
  it.each(
    Object.entries({
      eventWindows,
      publishedSprayRules,
      regulatorIntervals,
      replacementHalfLives,
      soilTemperatureThresholds,
      turfHalfLives,
    }) as [string, readonly object[]][],
  )("%s is frozen with all that it holds", (_, table) => {
    expect(Object.isFrozen(table)).toBe(true);
    for (const row of table) {
      for (const part of [row, ...Object.values(row)]) expect(Object.isFrozen(part)).toBe(true);
    }
  });
  it("a rule keeps no list of the caller", () => {
    const blackout = [{ from: "06-15", to: "08-15" } as const];
    const made = interval.intervalRule({ blackout, source: label });
    blackout.pop();
    expect(made.blackout).toEqual([{ from: "06-15", to: "08-15" }]);
  });
  it("a frozen input goes in", () => {
    expect(interval.intervalRule(frozen({ minimumDays: 14, source: label }))).toEqual(rule);
  });
});
