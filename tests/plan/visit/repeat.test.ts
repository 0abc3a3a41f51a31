// When a treatment comes round again: what is told of a visit that is early or late, and of what is cut out of the site.
import { describe, expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import type { Job, JobTreatment } from "../../../src/plan/index.js";
import { codes, found, parkJob, soundOrder } from "../helpers.js";

const of = "product";
const lb = "lb/1000 ft2";

describe("the days of a repeat", () => {
  const done = (date: string, more: object = {}): Job => {
    const job = parkJob();
    const [feed, spray] = job.treatments;
    return { ...job, treatments: [feed, { ...spray, ...more }], log: [{ ...job.log?.[2], date }] } as Job;
  };
  test("7 days after the last time it is in time, after 6 it is not", () => {
    expect(codes(done("2015-06-01"), "interval/")).toEqual([]);
    expect(found(done("2015-06-02"), "interval/")).toEqual([
      {
        code: "interval/before-earliest",
        severity: "warning",
        path: "treatments[1].interval",
        params: { treatment: "regulate the bowling green", visit: "2015-06-08", earliest: "2015-06-09" },
        text: expect.stringMatching(
          /^regulate the bowling green: 2015-06-08 is before 2015-06-09, the earliest date by the stated rule\. 7 days or more after the application of 2015-06-02\. /,
        ),
      },
    ]);
  });
  test("what the log has on the day of the visit is the visit itself, and is told once", () => {
    expect(codes(done("2015-06-08"), "interval/")).toEqual([]);
    expect(found(done("2015-06-08"), "log/")).toEqual([
      {
        code: "log/day-of-visit",
        severity: "caution",
        path: "log[0]",
        params: { treatment: "regulate the bowling green", date: "2015-06-08" },
        text: "The log has trinexapac-ethyl 120 g/L EC on 2015-06-08, the day of this visit: limits count it and regulate the bowling green. If it is the same application, take it out of the log.",
      },
    ]);
    expect(codes(done("2015-06-07"), "log/")).toEqual([]);
    // On another part it is another application.
    const elsewhere = {
      ...done("2015-06-08"),
      log: [{ ...done("2015-06-08").log?.[0], parts: ["south pitch"] }],
    };
    expect(codes(elsewhere, "log/")).toEqual([]);
    const named = { date: "2015-06-08", treatment: "feed the pitches" };
    expect(found({ ...parkJob(), log: [named] }, "log/")[0]?.text).toMatch(
      /^The log has "feed the pitches" on 2015-06-08/,
    );
    expect(codes({ ...parkJob(), log: [{ ...named, treatment: "another" }] }, "log/")).toEqual([]);
  });
  test("only what the log has of this treatment and its ground counts as the last time", () => {
    const applied = (entry: object) =>
      soundOrder({ ...parkJob(), log: [{ date: "2015-05-01", ...entry }] }).repeats.map(
        ({ applied: days }) => days.length,
      );
    expect(applied({ treatment: "regulate the bowling green" })).toEqual([0, 1]);
    expect(applied({ treatment: "feed the pitches" })).toEqual([1, 0]);
    expect(applied({ treatment: "another" })).toEqual([0, 0]);
    expect(applied({ treatment: "feed the pitches", parts: ["south pitch"] })).toEqual([1, 0]);
    expect(applied({ treatment: "feed the pitches", parts: ["bowling green"] })).toEqual([0, 0]);
    expect(applied({ product: "urea", rate: { value: 0.1, unit: lb, of } })).toEqual([0, 1]);
    expect(applied({ treatment: "another", product: "urea", rate: { value: 0.1, unit: lb, of } })).toEqual([
      0, 0,
    ]);
  });

  /** 15 degree-days a day, for 200 of them: 13 days do not do, 14 do. */
  const warm = (start: `${number}-${number}-${number}`, days: number, last: string): Job => ({
    ...done(last),
    temperatures: dailyTemperatures({
      start,
      unit: "°C",
      sensor: "air",
      source: "flat",
      min: Array<number>(days).fill(10),
      max: Array<number>(days).fill(20),
    }),
  });
  const heat = (last: string, days = 90) => found(warm("2015-04-01", days, last), "degree-days/");
  test("growing degree days: run out before the visit, on it, or not yet", () => {
    // From 25 May: 14 days, at the end of the day of the visit itself.
    expect(heat("2015-05-25")).toEqual([]);
    expect(heat("2015-05-24")).toEqual([
      {
        code: "degree-days/expired-before",
        severity: "caution",
        path: "treatments[1].degreeDays",
        params: {
          treatment: "regulate the bowling green",
          from: "2015-05-24",
          visit: "2015-06-08",
          interval: 200,
          unit: "°C d",
          ranOut: "2015-06-07",
          days: 1,
        },
        text: "regulate the bowling green: the growing-degree-day interval expired 2015-06-07, 1 day before this visit.",
      },
    ]);
    expect(heat("2015-05-20")[0]?.text).toMatch(/expired 2015-06-03, 5 days before this visit\.$/);
    expect(heat("2015-05-26")).toMatchObject([
      {
        code: "degree-days/not-expired",
        severity: "note",
        params: { runsOut: "2015-06-09" },
        text: "regulate the bowling green: the growing-degree-day interval since 2015-05-26 has not expired by this visit; it does on 2015-06-09.",
      },
    ]);
  });
  test("temperatures that end the day before the visit tell that it has not run out; those that end earlier tell nothing", () => {
    // April has 30, May 31 days: 67 days from 1 April end on 6 June, 68 on 7 June.
    expect(heat("2015-06-01", 68)).toMatchObject([
      {
        code: "degree-days/not-expired",
        text: "regulate the bowling green: the growing-degree-day interval since 2015-06-01 has not expired by this visit.",
      },
    ]);
    expect(heat("2015-06-01", 67)).toEqual([]);
  });
  test("the sentence of what is left of it", () => {
    const reasons = (days: number) =>
      soundOrder(warm("2015-04-01", days, "2015-05-25")).repeats[1]?.reasons.at(-1);
    expect(reasons(90)).toBe("200 growing degree days (°C) expected 2015-06-22, 14 days after 2015-06-08.");
    // 75 days end on 14 June: 6 days of 15.
    expect(reasons(75)).toMatch(
      /^90 of 200 growing degree days \(°C\) since 2015-06-08, as far as the temperatures go \(2015-06-14\)/,
    );
    const none = soundOrder(done("2015-05-25")).notChecked;
    expect(none).toContain(
      "regulate the bowling green, after this visit: the degree-day interval, because the job has no daily temperatures.",
    );
    expect(none).toContain(
      "regulate the bowling green, since 2015-05-25: the degree-day interval, because the job has no daily temperatures.",
    );
  });
});

describe("what is cut out", () => {
  const cut = (more: object): Job => {
    const [part, ...rest] = parkJob().site.parts;
    return {
      ...parkJob(),
      site: {
        name: "Park",
        parts: [part, ...rest],
        cutOuts: [{ shape: "measured", area: { value: 400, unit: "ft2" } }],
      },
      ...more,
    } as Job;
  };
  test("is told where named parts are treated whole, and taken off where the whole site is", () => {
    expect(found(cut({}), "site/")).toEqual([
      {
        code: "site/cut-outs-not-taken-off",
        severity: "caution",
        path: "site.cutOuts",
        params: {},
        text: "A treatment of named parts covers each part in full: cutouts of the site are not subtracted. State the area of such a treatment.",
      },
    ]);
    const whole = cut({
      treatments: [
        { id: "f", method: "spread", product: "feed-a", rate: { value: 3, unit: lb, of } },
      ] as JobTreatment[],
    });
    expect(found(whole, "site/")).toEqual([]);
    expect(soundOrder(whole).spreads[0]?.area.in("ft2")).toBeCloseTo(120_825 - 400, 6);
    expect(soundOrder(whole).spreads[0]?.byPart).toEqual([]);
    expect(found(parkJob(), "site/")).toEqual([]);
  });
});
