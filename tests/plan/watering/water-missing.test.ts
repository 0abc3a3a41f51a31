// How much water is missing: what is planned and observed counts, rain that is only forecast does not.
import { expect, test } from "vitest";
import { type Job, workOrderText } from "../../../src/plan/index.js";
import { found, smallJob, soundOrder } from "../helpers.js";

const inch = (value: number) => ({ value, unit: "in" });
const job = (events: NonNullable<Job["water"]>["events"]): Job =>
  smallJob({
    products: [
      {
        id: "feed-a",
        form: "dry",
        analysis: "24-0-11",
        wateringIn: { least: inch(0.25), within: { value: 24, unit: "h" }, source: "label" },
      },
    ],
    treatments: [
      {
        id: "feed",
        method: "spread",
        product: "feed-a",
        target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
        end: "2026-05-04T09:00-05:00",
        irrigationRate: { value: 0.5, unit: "in/h" },
      },
    ],
    water: { events, until: "2026-05-05T12:00-05:00" },
  });

test("0.25 in, 0.05 planned and 0.1 forecast: 0.2 in is missing, as the minutes to run have it", () => {
  const order = job([
    { at: "2026-05-04T15:00-05:00", depth: inch(0.05), by: "irrigation", known: "planned" },
    { at: "2026-05-04T20:00-05:00", depth: inch(0.1), by: "rain", known: "forecast" },
  ]);
  const [told] = found(order, "watering-in/not-planned");
  expect(told?.text).toBe(
    "feed-a: irrigation and rain are 0.2 in short of the 0.25 in that the label wants by 2026-05-05 09:00 (0.1 in if the forecast rain falls): plan irrigation.",
  );
  expect(told?.params.missing).toBeCloseTo(0.2, 12);
  // 0.2 in at 0.5 in/h
  const { watering } = soundOrder(order).spreads[0] ?? {};
  expect(watering?.runTime?.in("min")).toBeCloseTo(24, 9);
  expect(workOrderText(soundOrder(order)).replace(/\n +/g, " ")).toContain(
    "! feed-a: irrigation and rain are 0.2 in short of",
  );
});

test("no rain is forecast: nothing is said of it", () => {
  const [told] = found(job([]), "watering-in/not-planned");
  expect(told?.text).toBe(
    "feed-a: irrigation and rain are 0.25 in short of the 0.25 in that the label wants by 2026-05-05 09:00: plan irrigation.",
  );
});
