import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dailyNormals, dailyTemperatures, daysBetween, normalDay } from "../../../src/calendar/index.js";
import {
  calendarAgainstDegreeDays,
  dateReached,
  degreeDayAmount,
  degreeDayModel,
  degreeDaySchedule,
  regulatorInterval,
  regulatorIntervals,
  replacementDose,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";

const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
const interval = (value: number) => degreeDayAmount({ value, unit: "°C d", model });
const flat = (value: number) => Array<number>(366).fill(value);
/** A year between a mean of 0 °C in January and 22 °C in July. */
const season = Array.from({ length: 366 }, (_, i) => 11 - 11 * Math.cos(((i - 15) * 2 * Math.PI) / 366));
const normals = dailyNormals({
  unit: "°C",
  sensor: "air",
  source: "station at the depot, 1991-2020",
  min: season.map((t) => t - 5),
  max: season.map((t) => t + 5),
  spread: flat(2),
});
const days = (start: `${number}-${number}-${number}`, means: (number | null)[], unit: "°C" | "°F" = "°C") =>
  dailyTemperatures({
    start,
    unit,
    sensor: "air",
    source: "depot",
    min: means.map((t) => (t === null ? null : t - 5)),
    max: means.map((t) => (t === null ? null : t + 5)),
  });

describe("daily normals", () => {
  test("1 March is the same figure in every year, and 29 February has its own", () => {
    const numbered = dailyNormals({ ...normals, min: flat(-1), max: flat(0).map((_, i) => i / 10) });
    expect(normalDay(numbered, "2023-02-28").max).toBe(5.8);
    expect(normalDay(numbered, "2024-02-29").max).toBe(5.9);
    expect(normalDay(numbered, "2023-03-01").max).toBe(6);
    expect(normalDay(numbered, "2024-03-01").max).toBe(6);
    expect(normalDay(numbered, "2023-12-31").max).toBe(36.5);
    expect(normalDay(numbered, "2024-12-31").max).toBe(36.5);
  });
  test("refuses what is none, all at once", () => {
    expect(
      complaints(() =>
        dailyNormals({
          unit: "C" as never,
          sensor: "air",
          source: "",
          min: [1],
          max: flat(5),
          spread: flat(-1).map((x, i) => (i === 7 ? x : 0)),
        }),
      ),
    ).toEqual(["missing source", "unit/unknown unit", "range min", "range spread[7]"]);
    expect(complaints(() => dailyNormals({ ...normals, min: flat(30) })).slice(0, 1)).toEqual([
      "conflict min[0]",
    ]);
    // A hole is a day without a figure, and -999 or 999.9 a code for one.
    const holes = flat(5);
    delete holes[59];
    expect(complaints(() => dailyNormals({ ...normals, min: flat(0), max: holes }))).toEqual([
      "missing max[59]",
    ]);
    const coded = (at: number, code: number) => flat(5).map((t, i) => (i === at ? code : t));
    expect(complaints(() => dailyNormals({ ...normals, min: coded(3, -999), max: coded(4, 999.9) }))).toEqual(
      ["range min[3]", "range max[4]"],
    );
    const short = JSON.parse(JSON.stringify({ ...normals, max: flat(5).slice(0, 300) }));
    expect(complaints(() => normalDay(short, "2026-12-31"))).toEqual(["missing normals.max[365]"]);
  });
});

describe("degreeDaySchedule", () => {
  const of = (more: object) =>
    degreeDaySchedule({ model, from: "2026-06-01", interval: interval(200), normals, ...more });

  test("observed, then forecast, then normals; each named", () => {
    const observed = days("2026-06-02", [20, 20, 20]);
    const forecast = days("2026-06-04", [50, 25, 25]);
    const { visits } = of({
      observed,
      forecast,
      normals: dailyNormals({ ...normals, min: flat(10), max: flat(20), spread: flat(5) }),
    });
    // 60 observed, 50 forecast (4 June is observed), and 90 at 15 a day: six days more.
    expect(visits[0]).toMatchObject({
      date: "2026-06-12",
      days: { observed: 3, forecast: 2, normal: 6 },
      early: "2026-06-11",
      late: "2026-06-15",
      filled: [],
    });
    expect(visits[0]?.total.in("°C d")).toBe(200);
  });

  test("agrees with dateReached where all is observed, and then early and late are the same day", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 5, max: 30 }), { minLength: 40, maxLength: 60 }), (means) => {
        const series = days("2026-06-02", means);
        const when = dateReached({
          series,
          model,
          from: "2026-06-01",
          fromDay: "not counted",
          threshold: interval(150),
        });
        const visit = degreeDaySchedule({
          observed: series,
          model,
          from: "2026-06-01",
          interval: interval(150),
        }).visits[0];
        expect(visit?.date).toBe(when.reached ? when.date : null);
        expect([visit?.early, visit?.late]).toEqual([visit?.date, visit?.date]);
      }),
    );
  });

  test("each application sets it back: every interval but the last is whole, and dates rise", () => {
    const { visits } = of({ count: 8 });
    expect(visits).toHaveLength(8);
    visits.forEach(({ from, date, total }, i) => {
      if (i > 0) expect(from).toBe(visits[i - 1]?.date);
      expect(date !== null && daysBetween(from, date) > 0).toBe(true);
      expect(total.in("°C d")).toBeGreaterThanOrEqual(200);
      expect(total.in("°C d")).toBeLessThan(225);
    });
  });

  test("more heat is never later, and early <= date <= late", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 40 }), (tenths, spread) => {
        const make = (more: number) =>
          of({
            count: 3,
            normals: dailyNormals({
              ...normals,
              min: season.map((t) => t - 5 + more),
              max: season.map((t) => t + 5 + more),
              spread: flat(spread / 10),
            }),
          }).visits;
        const [cold, warm] = [make(0), make(tenths / 10)];
        cold.forEach(({ date, early, late }, i) => {
          expect((warm[i]?.date ?? "") <= (date ?? "")).toBe(true);
          expect((early ?? "") <= (date ?? "") && (date ?? "") <= (late ?? "9999")).toBe(true);
        });
      }),
      runs(25),
    );
  });

  test("other units come to the same dates", () => {
    const f = (t: number) => (t * 9) / 5 + 32;
    const inF = dailyNormals({
      ...normals,
      unit: "°F",
      min: normals.min.map(f),
      max: normals.max.map(f),
      spread: flat(3.6),
    });
    const dates = (more: object) =>
      of({ count: 4, ...more }).visits.map(({ date, early, late }) => [date, early, late]);
    expect(dates({ normals: inF })).toEqual(dates({}));
    expect(dates({ normals: inF, observed: days("2026-06-02", [20, 20]) })).toEqual(
      dates({ observed: days("2026-06-02", [20, 20]) }),
    );
  });

  test("a gap is refused with its date, or taken from the next source and named", () => {
    const observed = days("2026-06-02", [20, null, 20]);
    expect(complaints(() => of({ observed }))).toEqual(["missing observed.2026-06-03"]);
    expect(of({ observed, gaps: "next source" }).visits[0]).toMatchObject({
      filled: ["2026-06-03"],
      days: { observed: 2 },
    });
  });

  test("says where the temperatures end, and what it has no spread for", () => {
    const short = of({ normals: undefined, observed: days("2026-06-02", [20, 20]) });
    expect(short.visits).toMatchObject([{ date: null, early: null, late: null, days: { observed: 2 } }]);
    expect(short.visits[0]?.total.in("°C d")).toBe(40);
    expect(short.notChecked).toHaveLength(3);
    // No word of normals where none were needed.
    const known = of({ normals: undefined, observed: days("2026-06-02", Array(12).fill(20)) });
    expect(known.visits).toMatchObject([{ date: "2026-06-11", early: "2026-06-11", late: "2026-06-11" }]);
    expect(known.notChecked).toHaveLength(1);
    const { spread: _, ...without } = normals;
    expect(of({ normals: dailyNormals(without) }).visits[0]).toMatchObject({ early: null, late: null });
  });

  test("refuses another model, another sensor, no source", () => {
    const other = degreeDayModel({ method: "single sine", base: { value: 0, unit: "°C" }, sensor: "air" });
    expect(
      complaints(() => of({ interval: degreeDayAmount({ value: 200, unit: "°C d", model: other }) })),
    ).toEqual(["substance/mismatch interval"]);
    expect(complaints(() => of({ normals: { ...normals, sensor: "soil at 5 cm" } }))).toEqual([
      "conflict normals.sensor",
    ]);
    expect(complaints(() => of({ normals: undefined }))).toEqual(["missing observed"]);
    expect(complaints(() => of({ count: 0 }))).toEqual(["range count"]);
    expect(complaints(() => of({ observed: { ...days("2026-06-02", [20]), min: [59] } }))).toEqual([
      "conflict observed.min[0]",
    ]);
  });

  test("a double method looks at the next morning, also across sources", () => {
    const double = degreeDayModel({
      method: "double triangle",
      base: { value: 0, unit: "°C" },
      sensor: "air",
    });
    const { visits } = degreeDaySchedule({
      model: double,
      from: "2026-06-01",
      interval: degreeDayAmount({ value: 40, unit: "°C d", model: double }),
      observed: days("2026-06-02", [20, 20]),
      forecast: days("2026-06-04", [10, 10]),
    });
    const gap = {
      ...days("2026-06-02", [20, 20, 20]),
      min: [15, null, 15],
    } as const;
    // The day that lacks its figure is named, not the one before, which only looks at it.
    expect(
      complaints(() =>
        degreeDaySchedule({
          model: double,
          from: "2026-06-01",
          interval: degreeDayAmount({ value: 15, unit: "°C d", model: double }),
          observed: gap,
        }),
      ),
    ).toEqual(["missing observed.2026-06-03"]);
    // 20 on 2 June; on 3 June the mean of 20 and of 25 down to 5.
    expect(visits[0]).toMatchObject({ date: "2026-06-04" });
    expect(visits[0]?.total.in("°C d")).toBeCloseTo(20 + 17.5 + 10, 9);
  });
});

describe("calendarAgainstDegreeDays", () => {
  test("a month on the calendar is a spring answer used in July", () => {
    const rows = calendarAgainstDegreeDays({
      normals,
      model,
      starts: ["2026-04-20", "2026-07-10"],
      intervalDays: 28,
      interval: interval(200),
    });
    const [spring, summer] = rows;
    expect(Math.abs(spring?.daysLate ?? 99)).toBeLessThan(14);
    expect(summer?.daysLate ?? 0).toBeGreaterThan(17);
    expect(summer?.intervalsAtCalendar ?? 0).toBeGreaterThan(3);
    expect(summer?.atCalendar?.in("°C d")).toBeGreaterThan(600);
  });
  test("a gap is refused with its date, as by the schedule", () => {
    const gap = (means: (number | null)[], more: object = {}) =>
      calendarAgainstDegreeDays({
        observed: days("2026-06-01", means),
        model,
        starts: ["2026-05-31"],
        intervalDays: 4,
        interval: interval(40),
        ...more,
      });
    expect(complaints(() => gap([20, null, 20, 20]))).toEqual(["missing observed.2026-06-02"]);
    // The interval by heat ends before the gap, the one of days does not.
    expect(complaints(() => gap([20, 20, null, 20]))).toEqual(["missing observed.2026-06-03"]);
    expect(gap([20, 20, null, 20], { gaps: "next source", normals })[0]?.byDegreeDays).toBe("2026-06-02");
  });
  test("does not guess beyond the temperatures", () => {
    const rows = calendarAgainstDegreeDays({
      observed: days("2026-06-01", Array(15).fill(20)),
      model,
      starts: ["2026-06-01"],
      intervalDays: 28,
      interval: interval(200),
    });
    expect(rows).toMatchObject([
      { byDegreeDays: "2026-06-11", daysLate: 18, atCalendar: null, intervalsAtCalendar: null },
    ]);
  });
});

describe("growth regulators", () => {
  test("what a source does not state has to be supplied, and what it states stays", () => {
    const [first] = regulatorIntervals;
    if (first === undefined) throw new Error("no records");
    expect(regulatorInterval(first, { sensor: "air" }).assumed).toEqual(["sensor"]);
    expect(
      complaints(() => regulatorInterval(first, { sensor: "air", base: { value: 10, unit: "°C" } })),
    ).toEqual(["conflict supplied.base"]);
    // 32 °F is 0 °C: nothing else is supplied than what is stated.
    for (const base of [{ unit: "°C", value: 0 } as const, { value: 32, unit: "°F" } as const]) {
      expect(regulatorInterval(first, { sensor: "air", base }).assumed).toEqual(["sensor"]);
    }
    const auburn = regulatorIntervals.find(({ id }) => id.includes("Auburn")) ?? first;
    expect(complaints(() => regulatorInterval(auburn, { sensor: "air" }))).toEqual([
      "missing supplied.method",
    ]);
    const fairway = regulatorIntervals.find(({ id }) => id.includes("fairway")) ?? first;
    expect(complaints(() => regulatorInterval(fairway, { sensor: "air" }))).toEqual([
      "missing record.interval",
    ]);
  });
  test("every record has a source, an id of its own, and ranges in order", () => {
    expect(new Set(regulatorIntervals.map(({ id }) => id)).size).toBe(regulatorIntervals.length);
    for (const {
      interval: i,
      peak,
      rebound,
      duration,
      suppressionPercent,
      source,
      note,
    } of regulatorIntervals) {
      expect(source.title).not.toBe("");
      expect(note).not.toBe("");
      for (const range of [i, peak, rebound, duration, suppressionPercent]) {
        if (range !== null) expect(range[0]).toBeLessThanOrEqual(range[1]);
      }
    }
  });
  test("a replacement dose is nothing at once, half after a half-life, and never more than full", () => {
    const full = quantity(16, "fl oz/acre", "product");
    const dose = (g: number) =>
      replacementDose({ full, elapsed: interval(g), halfLife: interval(160) }).in("fl oz/acre");
    expect(dose(0)).toBe(0);
    const json = JSON.parse(JSON.stringify({ full, elapsed: interval(160), halfLife: interval(160) }));
    expect(replacementDose(json).in("fl oz/acre" as never)).toBe(8);
    expect(dose(160)).toBe(8);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 1000, noNaN: true }),
        (g, more) => {
          expect(dose(g + more)).toBeGreaterThanOrEqual(dose(g));
          expect(dose(g)).toBeLessThanOrEqual(16);
        },
      ),
    );
    const other = degreeDayModel({
      method: "simple average",
      base: { value: 10, unit: "°C" },
      sensor: "air",
    });
    expect(
      complaints(() =>
        replacementDose({
          full,
          elapsed: interval(9),
          halfLife: degreeDayAmount({ value: 9, unit: "°C d", model: other }) as never,
        }),
      ),
    ).toEqual(["substance/mismatch halfLife"]);
  });
});

test("without a spread, early and late are known until a normal day is counted", () => {
  const { spread: _, ...bare } = normals;
  // 20 °C d a day: 60 are full after three days, so on 4 and 7 June, where the observed days end.
  const { visits } = degreeDaySchedule({
    observed: days("2026-06-02", Array(6).fill(20)),
    normals: bare as typeof normals,
    model,
    from: "2026-06-01",
    interval: interval(60),
    count: 3,
  });
  expect(visits.map(({ date, early, late }) => [date, early, late]).slice(0, 2)).toEqual([
    ["2026-06-04", "2026-06-04", "2026-06-04"],
    ["2026-06-07", "2026-06-07", "2026-06-07"],
  ]);
  expect([visits[2]?.early, visits[2]?.late, visits[2]?.days.normal === 0]).toEqual([null, null, false]);
});
