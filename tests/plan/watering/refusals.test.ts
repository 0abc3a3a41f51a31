import { expect, test } from "vitest";
import { problemsOf, smallJob, soundOrder } from "../helpers.js";
import { inch, tank, wet } from "./watering-job.js";

test("problems are told by their place, all at once", () => {
  const job = tank(
    { least: inch(1), most: inch(0.5), source: "label" },
    { source: "label" },
    {
      water: {
        until: "tomorrow",
        events: [
          { at: "2026-05-04", depth: { value: 1, unit: "lb" }, by: "hail", known: "planned" },
          { at: "2026-05-04T20:00-05:00", depth: inch(1), by: "rain", known: "planned" },
          { at: "2026-05-04T20:00-05:00", depth: inch(-1), by: "rain", known: "observed", parts: ["moon"] },
          { at: "2026-05-04T20:00-05:00", depth: inch(1), by: "irrigation", known: "forecast" },
        ],
      } as never,
    },
  );
  expect(problemsOf(job)).toEqual(
    expect.arrayContaining([
      "conflict products[0].wateringIn.most",
      "missing products[1].wateringIn.least",
      "unit/mismatch water.events[0].depth",
      "type water.events[0].by",
      "conflict water.events[1].known",
      "range water.events[2].depth",
      "missing water.events[2].parts[0]",
      "conflict water.events[3].known",
      "date water.until",
    ]),
  );
  expect(problemsOf(tank(wet, wet, {}, { end: "2026-05-03T09:00-05:00" }))).toEqual([
    "conflict treatments[0].end",
  ]);
  expect(problemsOf(tank(wet, wet, {}, { end: 9, irrigationRate: inch(1) }))).toEqual([
    "type treatments[0].end",
    "unit/mismatch treatments[0].irrigationRate",
  ]);
});

test("an area that is tagged as treated is taken, another tag is refused with its next step", () => {
  const of = (tag: string) => ({
    treatments: [
      {
        id: "feed",
        method: "spread",
        product: "feed-a",
        target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
        area: { value: 10_000, unit: "ft2", of: tag },
      },
    ],
  });
  const order = soundOrder(smallJob(of("treated") as never));
  expect(order.spreads[0]?.area.of).toBe("none");
  expect(order.spreads[0]?.amount.in("lb")).toBeCloseTo(37.5, 9);
  expect(problemsOf(smallJob(of("gross") as never))).toEqual(["substance/mismatch treatments[0].area"]);
});
