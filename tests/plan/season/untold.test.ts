// Where the temperatures end, nobody knows when a growing-degree-day interval does: nothing is placed by it.
import { expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import { type SeasonPlan, type SeasonTreatment, schedule } from "../../../src/plan/index.js";

const source = "label (invented)";
// Forty days of 15 °C, up to 9 June: 200 °C d are reached on the fourteenth day, 14 x 15 = 210.
const observed = dailyTemperatures({
  start: "2026-05-01",
  unit: "°C",
  sensor: "air",
  source: "station at the depot",
  min: Array<number>(40).fill(10),
  max: Array<number>(40).fill(20),
});
const regulator: SeasonTreatment = {
  id: "regulator",
  degreeDays: {
    method: "simple average",
    base: { value: 0, unit: "°C" },
    interval: { value: 200, unit: "°C d" },
    source,
  },
};
const laidOut = (more: Partial<SeasonTreatment> = {}) => {
  const plan: SeasonPlan = {
    season: { from: "2026-05-01", to: "2026-06-30" },
    observed,
    treatments: [{ ...regulator, ...more }],
  };
  return schedule(plan);
};
const made = (more: Partial<SeasonTreatment> = {}) => {
  const { visits, notPlaced } = laidOut(more);
  return [
    visits.map(({ date }) => date),
    notPlaced.map(({ number, reasons }) => [number, reasons.at(-1)?.code]),
  ];
};

test.each([
  ["by degree days alone", {}],
  ["with a least interval beside", { interval: { minimumDays: 7, source } }],
  ["with a stated number of times", { count: 5 }],
])("%s: up to where the temperatures reach, and not day after day from there on", (_, more) => {
  // 1 May, and each fourteenth day after; from 29 May on only eleven days are known.
  expect(made(more)).toEqual([["2026-05-01", "2026-05-15", "2026-05-29"], [[4, "schedule/not-known"]]]);
});

test("says what would tell the day", () => {
  const [none] = laidOut().notPlaced;
  expect(none?.reasons.at(-1)?.text).toContain("State temperatures or normals that reach further.");
});

test("done on 29 May before the season was laid out: the next is not placed on the day after", () => {
  expect(made({ applied: ["2026-05-29"] })).toEqual([[], [[1, "schedule/not-known"]]]);
});

test("a longest interval in days tells by itself", () => {
  const [dates] = made({ interval: { maximumDays: 28, source } });
  expect(dates).toEqual(["2026-05-01", "2026-05-15", "2026-05-29", "2026-06-26"]);
});
