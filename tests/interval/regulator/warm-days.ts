import { degreeDayAmount, degreeDayModel } from "../../../src/interval/index.js";

export const model = () =>
  degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
export const sum = (value: number) => degreeDayAmount({ value, unit: "°C d", model: model() });
/** Ten days of 20 degrees each, from 1 May on. */
export const observed = (days = 10) => ({
  type: "daily-temperatures",
  version: 1,
  start: "2026-05-01",
  unit: "°C",
  sensor: "air",
  source: "depot",
  min: Array(days).fill(15),
  max: Array(days).fill(25),
});
