import { describe, expect, test } from "vitest";
import { dailySeries } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { wateringInState } from "../../../src/water/index.js";
import { complaints } from "../../errors.js";

describe("watering-in by a daily series of rain", () => {
  test("a day without a figure counts as dry and is named; rain of the day itself does not count", () => {
    const rain = dailySeries({
      start: "2026-03-01",
      unit: "in",
      what: "rain",
      source: "gauge",
      values: [2, 0.1, null, 0.15],
    });
    const state = wateringInState({ applied: "2026-03-01", depth: quantity(0.5, "in"), withinDays: 4, rain });
    expect(state.remaining.in("in")).toBeCloseTo(0.25, 12);
    expect(state).toMatchObject({ by: "2026-03-05", notCounted: ["2026-03-03", "2026-03-05"] });
    const degrees = dailySeries({
      start: "2026-03-01",
      unit: "°C",
      what: "t",
      source: "probe",
      values: [2, 3],
    });
    expect(
      complaints(() =>
        wateringInState({ applied: "2026-03-01", depth: quantity(0.5, "in"), withinDays: 1, rain: degrees }),
      ),
    ).toEqual(["unit/mismatch rain.unit"]);
  });
  test("what rounding leaves over of the depth is nothing, and a broken record is refused", () => {
    const rain = dailySeries({
      start: "2026-03-02",
      unit: "mm",
      what: "rain",
      source: "gauge",
      values: [0.1, 0.2],
    });
    const of = (series: typeof rain, depth = 0.3) =>
      wateringInState({ applied: "2026-03-01", depth: quantity(depth, "mm"), withinDays: 2, rain: series });
    // 0.7 + 0.1 falls a rounding short of 0.8.
    expect(of({ ...rain, values: [0.7, 0.1] }, 0.8).remaining.value).toBe(0);
    expect(of(rain).remaining.value).toBe(0);
    expect(of(rain, 0.4).remaining.value).toBeCloseTo(0.1, 12);
    expect(complaints(() => of({ ...rain, values: undefined as never }))).toEqual(["missing rain.values"]);
    expect(complaints(() => of({ ...rain, start: "x" as never, values: [] }))).toEqual([
      "date rain.start",
      "missing rain.values",
    ]);
  });
  test("reports every problem at once", () => {
    expect(
      complaints(() =>
        wateringInState({
          applied: "2026-13-01" as never,
          depth: quantity(0, "in"),
          withinDays: 1.5,
          rain: { type: "daily-series" } as never,
        }),
      ),
    ).toEqual(expect.arrayContaining(["date applied", "range depth", "range withinDays"]));
  });
});
