import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, type DailyTemperatures, dailyTemperatures } from "../../../src/calendar/index.js";
import {
  accumulateDegreeDaysC,
  accumulatedDegreeDays,
  type DateReached,
  dateReached,
  degreeDayAmount,
  degreeDayModel,
} from "../../../src/interval/index.js";
import { complaints } from "../../errors.js";

const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
const start = "2026-04-01";
const seriesOf = (min: (number | null)[], max: (number | null)[], more: Partial<DailyTemperatures> = {}) =>
  dailyTemperatures({ start, unit: "°C", sensor: "air", source: "station at the depot", min, max, ...more });
const constant = (mean: number, days: number) =>
  seriesOf(Array(days).fill(mean - 5), Array(days).fill(mean + 5));
const threshold = (value: number) => degreeDayAmount({ value, unit: "°C d", model });
const day = fc
  .tuple(fc.integer({ min: -80, max: 300 }), fc.integer({ min: 0, max: 150 }))
  .map(([low, range]) => ({ min: low / 10, max: (low + range) / 10 }));
const weather = fc.array(day, { minLength: 2, maxLength: 60 }).map((days) =>
  seriesOf(
    days.map(({ min }) => min),
    days.map(({ max }) => max),
  ),
);

describe("accumulatedDegreeDays", () => {
  test("is the kernel's total, to the last digit", () => {
    fc.assert(
      fc.property(weather, (series) => {
        const to = addDays(start, series.min.length - 1);
        const sum = accumulatedDegreeDays({ series, model, from: start, to });
        const totals = accumulateDegreeDaysC(
          Float64Array.from(series.max as number[]),
          Float64Array.from(series.min as number[]),
          0,
        );
        expect(sum.daily.map(({ total }) => total.value)).toEqual(Array.from(totals));
        expect(sum.total.value).toBe(totals[totals.length - 1]);
      }),
    );
  });

  test("parts add up to the whole", () => {
    fc.assert(
      fc.property(weather, fc.nat(), (series, at) => {
        const last = series.min.length - 1;
        const cut = at % last;
        const part = (a: number, b: number) =>
          accumulatedDegreeDays({ series, model, from: addDays(start, a), to: addDays(start, b) }).total;
        const whole = part(0, last);
        expect(
          part(0, cut)
            .plus(part(cut + 1, last))
            .in("°C d"),
        ).toBeCloseTo(whole.in("°C d"), 9);
      }),
    );
  });

  test("comes in the scale of the series", () => {
    const series = seriesOf([52, 60], [74, 70], { unit: "°F" });
    const sum = accumulatedDegreeDays({ series, model, from: start, to: "2026-04-02" });
    expect(sum.total.toJSON()).toEqual({
      value: 64,
      unit: "°F d",
      of: "degree-days:simple-average base 0C air",
    });
  });

  const gappy = seriesOf([8, null, 11, null, null, 14, null], [19, 21, 22, 20, null, 26, 25]);
  const of = (missing?: Parameters<typeof accumulatedDegreeDays>[0]["missing"], to = 5) =>
    accumulatedDegreeDays({
      series: gappy,
      model,
      from: start,
      to: addDays(start, to),
      ...(missing === undefined ? {} : { missing }),
    });

  test("a missing day is refused by default, each with its date", () => {
    expect(complaints(() => of())).toEqual([
      "missing series.2026-04-02",
      "missing series.2026-04-04",
      "missing series.2026-04-05",
    ]);
    expect(complaints(() => of(undefined, 0))).toEqual([]);
  });

  test("left out days count nothing and are named", () => {
    const sum = of("leave out");
    expect(sum.total.in("°C d")).toBe(13.5 + 16.5 + 20);
    expect(sum.leftOut).toEqual(["2026-04-02", "2026-04-04", "2026-04-05"]);
    expect(sum.filled).toEqual([]);
    expect(sum.daily.map(({ basis }) => basis)).toEqual([
      "measured",
      "left out",
      "measured",
      "left out",
      "left out",
      "measured",
    ]);
  });

  test("a day that is left out adds nothing below zero either", () => {
    const cold = degreeDayModel({ method: "simple average", base: { value: -5, unit: "°C" }, sensor: "air" });
    const sum = accumulatedDegreeDays({
      series: seriesOf([null, 1], [null, 3]),
      model: cold,
      from: start,
      to: "2026-04-02",
      missing: "leave out",
    });
    expect(sum.total.in("°C d")).toBe(7);
  });

  test("interpolated days lie on the line between their neighbours, and are named", () => {
    const sum = of({ interpolateUpToDays: 2 });
    expect(sum.filled).toEqual(["2026-04-02", "2026-04-04", "2026-04-05"]);
    // Day 2: min 9.5, max as measured, 21. Day 4: min 12, max 20. Day 5: min 13, max 23.
    const daily = [13.5, 15.25, 16.5, 16, 18, 20];
    sum.daily.forEach(({ degreeDays }, i) => {
      expect(degreeDays.in("°C d")).toBeCloseTo(daily[i] as number, 12);
    });
  });

  test("a gap longer than said, at an end, or outside the series is refused", () => {
    expect(complaints(() => of({ interpolateUpToDays: 1 }))).toEqual([
      "missing series.2026-04-04",
      "missing series.2026-04-05",
    ]);
    expect(complaints(() => of({ interpolateUpToDays: 9 }, 6))).toEqual(["missing series.2026-04-07"]);
    expect(complaints(() => of({ interpolateUpToDays: 9 }, 7))).toEqual([
      "missing series.2026-04-07",
      "missing series.2026-04-08",
    ]);
  });

  test("refuses a policy that is none", () => {
    expect(complaints(() => of("zero" as never))).toEqual(["type missing"]);
    expect(complaints(() => of({ interpolateUpToDays: 1.5 }))).toEqual(["range missing.interpolateUpToDays"]);
  });

  test("wants the sensor and the start of the model, and dates in order", () => {
    const series = constant(20, 3);
    const soil = degreeDayModel({
      method: "simple average",
      base: { value: 0, unit: "°C" },
      sensor: "soil at 5 cm",
    });
    const spring = degreeDayModel({
      method: "simple average",
      base: { value: 0, unit: "°C" },
      sensor: "air",
      start: "04-02",
    });
    const to = "2026-04-03";
    expect(complaints(() => accumulatedDegreeDays({ series, model: soil, from: start, to }))).toEqual([
      "conflict series.sensor",
    ]);
    expect(complaints(() => accumulatedDegreeDays({ series, model: spring, from: start, to }))).toEqual([
      "conflict from",
    ]);
    expect(accumulatedDegreeDays({ series, model: spring, from: "2026-04-02", to }).total.in("°C d")).toBe(
      40,
    );
    expect(complaints(() => accumulatedDegreeDays({ series, model, from: to, to: start }))).toEqual([
      "date to",
    ]);
    const broken = { ...series, min: [59, 59, 59] };
    expect(complaints(() => accumulatedDegreeDays({ series: broken, model, from: start, to }))[0]).toBe(
      "conflict series.min[0]",
    );
  });
});

describe("dateReached", () => {
  const reach = (series: DailyTemperatures, value: number, more: object = {}): DateReached<typeof model.id> =>
    dateReached({ series, model, from: start, threshold: threshold(value), ...more });

  test("by hand: 20 degrees a day", () => {
    const series = constant(20, 30);
    // 200 is met at the end of day 10: 1 to 10 April with the first day, 2 to 11 April without it.
    expect(reach(series, 200)).toMatchObject({ reached: true, date: "2026-04-10", days: 9 });
    expect(reach(series, 200, { fromDay: "not counted" })).toMatchObject({
      reached: true,
      date: "2026-04-11",
      days: 10,
    });
    expect(reach(series, 200.1)).toMatchObject({ date: "2026-04-11" });
    expect(reach(series, 600.1)).toMatchObject({ reached: false, countedTo: "2026-04-30" });
  });

  test("float noise does not put it off by a day", () => {
    // Seven days of 0.1 add up to 0.7 less a hair.
    expect(reach(seriesOf(Array(9).fill(0.1), Array(9).fill(0.1)), 0.7)).toMatchObject({
      date: "2026-04-07",
    });
  });

  test("says how far it is where it is not reached", () => {
    const found = reach(constant(20, 5), 200);
    expect(found.total.in("°C d")).toBe(100);
    expect(found.reached ? 0 : found.remaining.in("°C d")).toBe(100);
    const none = reach(constant(20, 1), 200, { fromDay: "not counted" });
    expect(none).toMatchObject({ reached: false, countedTo: null });
  });

  test("is the first day on which the total is there, looked for in the list of totals", () => {
    fc.assert(
      fc.property(weather, fc.integer({ min: 1, max: 6000 }), (series, tenths) => {
        const to = addDays(start, series.min.length - 1);
        const { daily } = accumulatedDegreeDays({ series, model, from: start, to });
        const first = daily.find(({ total }) => total.in("°C d") >= tenths / 10 - 1e-9);
        const found = reach(series, tenths / 10);
        expect(found.reached ? found.date : undefined).toBe(first?.date);
      }),
    );
  });

  test("more heat is never later", () => {
    fc.assert(
      fc.property(
        weather,
        fc.array(fc.integer({ min: 0, max: 80 }), { minLength: 60, maxLength: 60 }),
        (series, more) => {
          const warmer = seriesOf(
            series.min.map((t, i) => (t as number) + (more[i] as number) / 10),
            series.max.map((t, i) => (t as number) + (more[i] as number) / 10),
          );
          const [cold, warm] = [reach(series, 150), reach(warmer, 150)];
          if (cold.reached) expect(warm.reached && warm.date <= cold.date).toBe(true);
          else expect(warm.total.in("°C d")).toBeGreaterThanOrEqual(cold.total.in("°C d"));
        },
      ),
    );
  });

  test("reset: from one to the next, each day's heat is in one interval", () => {
    const series = constant(20, 61);
    const dates: string[] = [];
    let from: DailyTemperatures["start"] = start;
    for (;;) {
      const found = reach(series, 200, { from, fromDay: "not counted" });
      if (!found.reached) break;
      dates.push(found.date);
      from = found.date;
    }
    expect(dates).toEqual([
      "2026-04-11",
      "2026-04-21",
      "2026-05-01",
      "2026-05-11",
      "2026-05-21",
      "2026-05-31",
    ]);
  });

  test("a gap behind the day that is found does no harm, one before it does", () => {
    const late = seriesOf([15, 15, null], [25, 25, 25]);
    expect(reach(late, 40)).toMatchObject({ reached: true, date: "2026-04-02" });
    expect(complaints(() => reach(late, 41))).toEqual(["missing series.2026-04-03"]);
    const early = seriesOf([15, null, 15, 15], [25, 25, 25, 25]);
    expect(complaints(() => reach(early, 40))).toEqual(["missing series.2026-04-02"]);
    expect(reach(early, 40, { missing: "leave out" })).toMatchObject({
      date: "2026-04-03",
      leftOut: ["2026-04-02"],
    });
    expect(reach(early, 40, { missing: { interpolateUpToDays: 1 } })).toMatchObject({
      date: "2026-04-02",
      filled: ["2026-04-02"],
    });
    expect(complaints(() => reach(early, 40, { from: "2026-03-31" }))).toContain("missing series.2026-03-31");
  });

  test("a threshold of another model, or none, is refused", () => {
    const base10 = degreeDayModel({
      method: "simple average",
      base: { value: 10, unit: "°C" },
      sensor: "air",
    });
    const other = degreeDayAmount({ value: 200, unit: "°C d", model: base10 });
    const series = constant(20, 30);
    expect(complaints(() => dateReached({ series, model, from: start, threshold: other as never }))).toEqual([
      "substance/mismatch threshold",
    ]);
    expect(complaints(() => reach(series, 0))).toEqual(["range threshold"]);
    expect(complaints(() => reach(series, 1, { fromDay: "maybe" }))).toEqual(["type fromDay"]);
  });

  test("a degF series against a threshold in degC-days: 360 degF-days are 200 degC-days", () => {
    // 68 degF is 20 degC; a reading of 200 as degF-days would end on day 6.
    const series = seriesOf(Array(20).fill(60), Array(20).fill(76), { unit: "°F" });
    expect(reach(series, 200)).toMatchObject({ date: "2026-04-10" });
  });
});
