// What is told of rain and irrigation after the work, word by word, and each line of the sheet about water.
import { describe, expect, test } from "vitest";
import type { Job } from "../../../src/plan/index.js";
import { soundOrder } from "../helpers.js";
import { calm, hours, inch, label, paper, tank, told, water, wet } from "./watering-job.js";

describe("findings", () => {
  test("one wants water, the other a dry leaf", () => {
    expect(told(tank(wet, label({ notBefore: hours(6) })))).toEqual([
      [
        "caution wet-and-dry",
        "treatments[0]",
        { wet: "a", dry: "b", timeLeft: 1 },
        "A has to be watered in within 24 h, and B must stay dry on the leaf for 6 h, in one tank. Water only after 6 h, and check both labels: washing it off may stop B from working.",
      ],
    ]);
    expect(told(tank(label({ least: inch(0.25) }), label({ notBefore: hours(6) })))).toEqual([
      [
        "warning wet-and-dry",
        "treatments[0]",
        { wet: "a", dry: "b", timeLeft: 0 },
        "A has to be watered in, and B must stay dry on the leaf for 6 h, in one tank. One watering cannot do both: apply them separately.",
      ],
    ]);
    const [finding] = soundOrder(tank(wet, label({ notBefore: hours(6) }))).findings.filter(({ code }) =>
      code.startsWith("watering-in/"),
    );
    expect(finding?.source).toBe("label (invented); label (invented)");
  });
  test("a product that stays dry first and is watered in then does not contradict itself", () => {
    const both = label({ least: inch(0.25), within: hours(24), notBefore: hours(6) });
    expect(told(tank(both, calm))).toEqual([]);
  });
  test("in how long water is wanted, and how much of it is forecast, is told by those that want it", () => {
    const order = soundOrder(
      tank(wet, label({ most: inch(5), within: hours(2) }), water(["05T20:00", 0.3, "rain", "forecast"])),
    );
    expect(order.sprays[0]?.watering.within?.in("h")).toBe(24);
    // 35 hours after the work: too late for the one that wants it within 24
    expect(order.sprays[0]?.watering.forecast?.value).toBe(0);
    expect(order.sprays[0]?.watering.remaining?.in("in")).toBeCloseTo(0.25, 12);
    const late = tank(wet, calm, water(["05T20:00", 0.3, "rain", "forecast"]));
    expect(soundOrder(late).sprays[0]?.watering.forecast?.value).toBe(0);
    expect(paper(late)).not.toContain("Rain forecast");
    expect(paper(tank(wet, calm, water(["04T20:00", 0.1, "rain", "forecast"])))).toContain(
      "Rain forecast 0.1 in",
    );
  });
  test("one wants more than the other takes", () => {
    expect(told(tank(label({ least: inch(0.6) }), label({ most: inch(0.5) })))).toEqual([
      [
        "warning amounts",
        "treatments[0]",
        { wet: "a", dry: "b", least: "0.6 in", most: "0.5 in" },
        "A needs at least 0.6 in of water, and B at most 0.5 in. One watering cannot do both: apply them separately.",
      ],
    ]);
  });
  test("rain before the leaf may get wet, to the minute", () => {
    const dry = label({ notBefore: hours(6) });
    expect(told(tank(dry, calm, water(["04T14:59", 0.1, "rain", "forecast"])))).toEqual([
      [
        "warning too-soon",
        "treatments[0]",
        {
          treatment: "s",
          product: "a",
          early: expect.closeTo(0.1, 9),
          unit: "in",
          dryUntil: "2026-05-04T15:00-05:00",
        },
        "A: 0.1 in of water is expected before 2026-05-04 15:00, but the label wants the leaf dry. Postpone the irrigation or the application.",
      ],
    ]);
    expect(told(tank(dry, calm, water(["04T15:00", 0.1, "rain", "forecast"])))).toEqual([]);
  });
  test("more than the label states at most, and not just as much", () => {
    const most = label({ most: inch(0.5), within: hours(24) });
    expect(told(tank(most, calm, water(["04T15:00", 0.5, "irrigation", "planned"])))).toEqual([]);
    expect(told(tank(most, calm, water(["04T15:00", 0.6, "irrigation", "planned"])))).toEqual([
      [
        "warning too-much",
        "treatments[0]",
        { treatment: "s", product: "a", over: expect.closeTo(0.1, 9), unit: "in", most: "0.5 in" },
        "A: 0.1 in more water is expected than the label maximum of 0.5 in: product may leach or run off.",
      ],
    ]);
  });
  test("water that is missing, or that only a forecast brings", () => {
    expect(told(tank(wet, calm, water(["04T15:00", 0.1, "irrigation", "planned"])))).toEqual([
      [
        "caution not-planned",
        "treatments[0]",
        {
          treatment: "s",
          product: "a",
          by: "2026-05-05T09:00-05:00",
          missing: expect.closeTo(0.15, 9),
          unit: "in",
        },
        "A: irrigation and rain are 0.15 in short of the 0.25 in that the label wants by 2026-05-05 09:00: plan irrigation.",
      ],
    ]);
    expect(told(tank(wet, calm, water(["04T15:00", 0.3, "rain", "forecast"])))).toEqual([
      [
        "caution by-forecast-only",
        "treatments[0]",
        { treatment: "s", product: "a", by: "2026-05-05T09:00-05:00", missing: 0.25, unit: "in" },
        "A: the 0.25 in of water that the label wants by 2026-05-05 09:00 depends on forecast rain. If it stays dry, water 0.25 in.",
      ],
    ]);
    expect(told(tank(wet, calm, water(["04T15:00", 0.25, "irrigation", "planned"])))).toEqual([]);
    expect(told(tank(wet, calm, water(["04T15:00", 0.25, "rain", "observed"])))).toEqual([]);
  });
  test("what could not be compared, and why", () => {
    const not = (more: object, treatment: object = {}): readonly string[] =>
      soundOrder(tank(wet, calm, more, treatment)).notChecked.filter((text) => text.startsWith("s: rain"));
    expect(not({})).toEqual([
      "s: rain and irrigation against the labels, because the job states no rain and no irrigation.",
    ]);
    expect(not(water(), { end: undefined })).toEqual([
      "s: rain and irrigation against the labels, because the job does not state when the application ends.",
    ]);
    const early = { water: { until: "2026-05-04T08:59-05:00", events: [] } };
    expect(not(early)).toEqual([
      "s: rain and irrigation against the labels, because its list of water ends before the application does.",
    ]);
    const justToTheEnd = { water: { until: "2026-05-04T09:00-05:00", events: [] } };
    expect(not(justToTheEnd)).toEqual([]);
    // Nothing has come yet, and all of it is still to be watered.
    expect(soundOrder(tank(wet, calm, justToTheEnd)).sprays[0]?.watering.remaining?.in("in")).toBe(0.25);
  });
});

describe("the lines of the sheet", () => {
  test.each<readonly [string, Job, string]>([
    [
      "dry",
      tank(label({ notBefore: hours(6) }), calm),
      "NO WATER for 6 h from the end (until Mon May 4, 3:00 pm): irrigation off.",
    ],
    [
      "dry, no end",
      tank(label({ notBefore: hours(6) }), calm, {}, { end: undefined }),
      "NO WATER for 6 h from the end (until ____): irrigation off.",
    ],
    [
      "wet",
      tank(wet, calm),
      "WATER IN with 0.25 to 5 in of water within 24 h of the end (by Tue May 5, 9:00 am).",
    ],
    ["wet, no end", tank(wet, calm, {}, { end: undefined }), "within 24 h of the end (by ____)."],
    ["wet, no limit", tank(wet, wet), "WATER IN with 0.25 in or more of water within 24 h"],
    ["wet, no window", tank(label({ least: inch(0.25) }), calm), "WATER IN with 0.25 to 5 in of water."],
    [
      "two units",
      tank(label({ least: { value: 6, unit: "mm" } }), label({ most: inch(1) })),
      "WATER IN with 0.236 to 1 in of water.",
    ],
    [
      "run time",
      tank(wet, calm, {}, { irrigationRate: { value: 0.4, unit: "in/h" } }),
      "9:00 am): run the irrigation 38 min.",
    ],
    [
      "run time, whole",
      tank(wet, calm, {}, { irrigationRate: { value: 0.5, unit: "in/h" } }),
      "9:00 am): run the irrigation 30 min.",
    ],
    [
      "planned",
      tank(wet, calm, water(["04T15:00", 0.25, "irrigation", "planned"])),
      "9:00 am): what is planned is enough. Check that it ran.",
    ],
    [
      "part planned",
      tank(wet, calm, water(["04T15:00", 0.1, "irrigation", "planned"]), {
        irrigationRate: { value: 0.5, unit: "in/h" },
      }),
      "9:00 am). On top of what is planned, water 0.15 in: run the irrigation 18 min.",
    ],
    [
      "forecast",
      tank(wet, calm, water(["04T15:00", 0.1, "rain", "forecast"])),
      "9:00 am). Rain forecast 0.1 in: water that much less once it is in the gauge.",
    ],
    [
      "at most",
      tank(label({ most: inch(0.5), within: hours(24) }), label({ most: inch(1) })),
      "NO MORE THAN 0.5 in of rain and irrigation within 24 h of the end.",
    ],
    ["at most, ever", tank(label({ most: inch(0.5) }), calm), "NO MORE THAN 0.5 in of rain and irrigation."],
    [
      "conflict",
      tank(label({ least: inch(0.25) }), label({ notBefore: hours(6) })),
      "WATER: the labels of these products conflict (see the top). Ask before you water.",
    ],
  ])("%s", (_, job, line) => expect(paper(job)).toContain(line));
  test("metric: millimeters, and the clock of 24 hours", () => {
    expect(paper(tank(wet, calm), { units: "metric" })).toContain(
      "WATER IN with 6.35 to 127 mm of water within 24 h of the end (by Tue 5 May, 09:00).",
    );
  });
});
