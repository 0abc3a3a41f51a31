import { expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import { accumulatedDegreeDays, degreeDayModel } from "../../../src/interval/index.js";
import { complaints } from "../../errors.js";

test("a line over a gap that crosses what was measured fills nothing", () => {
  const crossed = (high: number) =>
    complaints(() =>
      accumulatedDegreeDays({
        series: dailyTemperatures({
          start: "2026-04-01",
          unit: "°C",
          sensor: "air",
          source: "station at the depot",
          min: [20, null, 20],
          max: [25, high, 25],
        }),
        model: degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" }),
        from: "2026-04-01",
        to: "2026-04-03",
        missing: { interpolateUpToDays: 1 },
      }),
    );
  // The line gives 20 for the lowest of the second day.
  expect([crossed(15), crossed(20), crossed(21)]).toEqual([["missing series.2026-04-02"], [], []]);
});
