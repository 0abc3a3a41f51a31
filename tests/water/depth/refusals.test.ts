import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { complaint } from "../../errors.js";
import { tellsEach } from "../../tells.js";
import { gpm, inch, inPerHour, min, mm, mmPerHour, percent } from "../helpers.js";

type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const deg = (value: number) => quantity(value, "deg");
const ft = (value: number) => quantity(value, "ft");

describe("what is no record is told with what it should be", () => {
  tellsEach(
    (
      [
        ["catchDepth", "volume and opening or diameter"],
        ["cycleAndSoak", "runTime, rate and intake"],
        ["grossDepth", "net and efficiency"],
        ["netDepth", "gross and efficiency"],
        ["irrigationTime", "flow, area and depth"],
        ["depthFromFlow", "flow, time and area"],
        ["flowForDepth", "area, depth and time"],
        ["areaForFlow", "flow, time and depth"],
        ["precipitationRate", "flow and area"],
        ["spacingPrecipitationRate", "flow, spacing and rowSpacing or pattern"],
        ["runTimeMultiplier", "method, and uniformity or coefficient"],
        ["runTime", "depth, rate and multiplier"],
        ["soilIntake", "soil and slope"],
        ["timeToRunoff", "rate, initial, basic, decay"],
        ["zonePrecipitation", "heads and area"],
        ["matchedPrecipitation", "heads"],
        ["waterVolume", "depth and area"],
        ["waterDepth", "volume and area"],
        ["wateringWeek", "need, days and rate"],
      ] as const
    ).map(([name, fields]) => [() => call[name](3), `type input: expected a record with ${fields}, got 3`]),
  );
});

describe("cans, cycles and runs", () => {
  const can = { volume: quantity(50, "mL", "water") };
  const run = { runTime: min(60), rate: mmPerHour(30), intake: mmPerHour(10) };
  tellsEach([
    [
      () => call.catchDepth(can),
      "missing opening: expected the opening of the can as an area, or its diameter where it is round, got undefined",
    ],
    [
      () => call.catchDepth({ ...can, opening: quantity(20, "cm2"), diameter: quantity(5, "cm") }),
      "conflict opening: expected either opening or diameter, not both, got 20 cm2",
    ],
    [
      () => call.cycleAndSoak(run),
      "missing timeToRunoff: expected the time to runoff as measured, or storage (soilIntake has both for a soil and slope): the rate is above the intake, got undefined",
    ],
    [
      () => call.cycleAndSoak({ ...run, storage: mm(0) }),
      "range storage: expected more than zero: the rate is above the intake, got 0 mm",
    ],
    [
      () => call.cycleAndSoak({ ...run, storage: mm(3), timeToRunoff: min(5) }),
      "conflict storage: expected either timeToRunoff or storage, not both, got 3 mm",
    ],
    [
      () => call.cycleAndSoak({ ...run, timeToRunoff: min(2.4) }),
      "infeasible runTime: expected a run of at most 24 cycles: put down less water a day, or use nozzles with a lower rate, got 60 min",
    ],
    [
      () => call.runTimeMultiplier({ method: "none", uniformity: percent(70) }),
      'conflict uniformity: expected nothing: "none" takes no uniformity, got 70 %',
    ],
    [
      () => call.runTimeMultiplier({ method: "distribution uniformity", uniformity: percent(0.5) }),
      "range uniformity: expected 1 or more, got 0.5",
    ],
    [
      () => call.runTimeMultiplier({ method: "scheduling coefficient", coefficient: 0.9 }),
      "range coefficient: expected 1 or more, got 0.9",
    ],
    [
      () => call.runTimeMultiplier({ method: "twice" }),
      'type method: expected one of "none", "distribution uniformity", "lower half from lower quarter", "scheduling coefficient", got "twice"',
    ],
    [
      () => call.runTime({ depth: mm(10), rate: mmPerHour(20), multiplier: 101 }),
      "range multiplier: expected 100 or less, got 101",
    ],
    [
      () => call.grossDepth({ net: mm(10), efficiency: percent(0) }),
      "range efficiency: expected more than 0, got 0",
    ],
  ]);

  it("a can with its opening in square centimeters is metric", () => {
    const depth = water.catchDepth({ ...can, opening: quantity(50, "cm2") });
    expect([depth.value, depth.unit]).toEqual([10, "mm"]);
    expect(water.catchDepth({ ...can, diameter: quantity(4, "in") }).unit).toBe("in");
  });

  it("24 cycles are a plan, and one cycle needs no soak", () => {
    expect(water.cycleAndSoak({ ...run, timeToRunoff: min(2.5) }).cycles).toBe(24);
    const one = water.cycleAndSoak({ ...run, timeToRunoff: min(60), soak: min(0) });
    expect([one.cycles, one.soak.value, one.elapsed.in("min")]).toEqual([1, 0, 60]);
    expect(one.findings).toEqual([]);
    // A stated soak is left out where one cycle is enough.
    expect(water.cycleAndSoak({ ...run, timeToRunoff: min(60), soak: min(30) }).soak.value).toBe(0);
  });

  it("a soak that is long enough makes no remark, and a short one says by how much", () => {
    // Two cycles of 30 min leave 10 mm, which 10 mm/h take in an hour.
    const two = (soak: number) =>
      water.cycleAndSoak({ ...run, timeToRunoff: min(30), soak: min(soak) }).findings;
    expect(two(60)).toEqual([]);
    expect(two(50)[0]).toMatchObject({
      path: "soak",
      params: { minutes: 50, needed: expect.closeTo(60, 9) },
      source: "from the rate and the intake given",
    });
  });

  it("a rate in feet is one of inches, and one in meters one of millimeters", () => {
    expect(water.runTime({ depth: inch(1), rate: quantity(1, "ft/h") }).in("min")).toBeCloseTo(5, 12);
    expect(water.runTime({ depth: mm(10), rate: quantity(0.02, "m/h") }).in("min")).toBeCloseTo(30, 12);
  });
});

describe("heads", () => {
  const head = { flow: gpm(2), radius: ft(15), arc: deg(90) };
  const spaced = { flow: gpm(2), spacing: ft(15) };
  tellsEach([
    [
      () => call.spacingPrecipitationRate(spaced),
      'missing rowSpacing: expected the distance between the rows, or pattern: "square" or "triangular", got undefined',
    ],
    [
      () => call.spacingPrecipitationRate({ ...spaced, rowSpacing: ft(13), pattern: "square" }),
      "conflict rowSpacing: expected either rowSpacing or pattern, not both, got 13 ft",
    ],
    [
      () => call.spacingPrecipitationRate({ ...spaced, pattern: "square", arc: deg(0) }),
      "range arc: expected an arc of more than 0 deg and at most 360 deg, got 0 deg",
    ],
    [
      () => call.spacingPrecipitationRate({ ...spaced, pattern: "square", arc: deg(361) }),
      "range arc: expected an arc of more than 0 deg and at most 360 deg, got 361 deg",
    ],
    [
      () => call.zonePrecipitation({ area: quantity(1000, "ft2") }),
      "missing heads: expected a list with at least one head, got undefined",
    ],
    [
      () => call.zonePrecipitation({ heads: [{ count: 0, flow: gpm(2) }], area: quantity(1000, "ft2") }),
      "range heads[0].count: expected 1 or more, got 0",
    ],
    [
      () => call.zonePrecipitation({ heads: [{ count: 1.5, flow: gpm(2) }], area: quantity(1000, "ft2") }),
      "range heads[0].count: expected a whole number, got 1.5",
    ],
    [
      () => call.matchedPrecipitation({ heads: Array(1001).fill(head) }),
      "range heads: expected at most 1000 items, got a list of 1001",
    ],
    [
      () =>
        call.matchedPrecipitation({
          heads: [
            { ...head, flow: gpm(1e300) },
            { ...head, flow: gpm(1e-300) },
          ],
        }),
      "range heads: expected heads whose rates have a finite ratio, got infinity",
    ],
  ]);

  it("a thousand kinds of heads, a full turn, and a tenth of difference are taken", () => {
    expect(complaint(() => call.matchedPrecipitation({ heads: Array(1000).fill(head) }))).toBe(
      "nothing thrown",
    );
    expect(
      water.spacingPrecipitationRate({ ...spaced, pattern: "square", arc: deg(360) }).in("in/h"),
    ).toBeCloseTo((2 * 96.25) / 225, 12);
    const unlike = (flow: number) =>
      water.matchedPrecipitation({ heads: [head, { ...head, flow: gpm(flow) }] }).findings;
    expect(unlike(2.19)).toEqual([]);
    expect(unlike(3)[0]).toMatchObject({
      path: "heads",
      params: { ratio: expect.closeTo(1.5, 9) },
      source: "common practice, no source",
    });
  });

  it("liters a minute on square meters are millimeters", () => {
    const rate = water.precipitationRate({ flow: quantity(10, "L/min", "water"), area: quantity(50, "m2") });
    // 600 L in an hour on 50 m2
    expect([rate.value, rate.unit]).toEqual([expect.closeTo(12, 12), "mm/h"]);
  });
});

describe("runoff", () => {
  const soil = { initial: mmPerHour(60), basic: mmPerHour(10), decay: quantity(4, "1/h") };
  tellsEach([
    [
      () => call.timeToRunoff({ ...soil, initial: mmPerHour(10), rate: mmPerHour(30) }),
      "range initial: expected more than 10 mm/h: an intake at the start above the basic one, got 10 mm/h",
    ],
    [
      () => call.timeToRunoff({ ...soil, rate: mmPerHour(10) }),
      "range rate: expected more than 10 mm/h, the basic intake: below it no water runs off, however long it runs, got 10 mm/h",
    ],
    [
      () => call.timeToRunoff({ ...soil, rate: mmPerHour(60) }),
      "range rate: expected less than 60 mm/h, the intake at the start: above it water runs off at once, got 60 mm/h",
    ],
    [
      () => call.soilIntake({ soil: "peat", slope: quantity(3, "% grade") }),
      'type soil: expected one of "clay", "silty clay", "clay loam", "loam", "sandy loam", "loamy sand", "sand", got "peat"',
    ],
  ]);
});

describe("a week", () => {
  const week = { need: inch(1), days: [1, 4], rate: inPerHour(0.5) };
  tellsEach([
    [
      () => call.wateringWeek({ ...week, days: undefined }),
      "missing days: expected a list with at least one watering day, from 1 for Monday to 7 for Sunday, got undefined",
    ],
    [
      () => call.wateringWeek({ ...week, days: [1, 2, 3, 4, 5, 6, 7, 1] }),
      "range days: expected 7 days of a week or fewer, each once, got a list of 8",
    ],
    [
      () => call.wateringWeek({ ...week, days: [0, 1, 1] }),
      "range days[0]: expected a whole number, 1 to 7: 1 for Monday, 7 for Sunday, got 0",
      "duplicate days[2]: expected each day once, got 1",
    ],
    [
      () => call.wateringWeek({ ...week, efficiency: percent(0), multiplier: 0.5 }),
      "range efficiency: expected more than 0, got 0",
      "range multiplier: expected 1 or more, got 0.5",
    ],
  ]);

  it("what rounding leaves of the need is nothing", () => {
    const net = (rain: number) =>
      water.wateringWeek({ ...week, days: [1, 4], rain: inch(rain) }).net.in("in");
    expect(net(1 - 1e-12)).toBe(0);
    expect(net(0.9)).toBeCloseTo(0.1, 12);
    expect(net(1.5)).toBe(0);
    const tiny = water.wateringWeek({ ...week, days: [1], need: mm(0.001), rain: mm(0.0005) });
    expect(tiny.net.in("mm")).toBeCloseTo(0.0005, 15);
  });

  it("says at which field a window or a root zone is too small, and by what figures", () => {
    const found = water.wateringWeek({ ...week, days: [1], window: min(60), holds: inch(0.5) }).findings;
    expect(found.map(({ path, params }) => [path, params])).toEqual([
      ["window", { weekday: 1, minutes: expect.closeTo(120, 9), window: 60 }],
      ["holds", { weekday: 1, millimeters: expect.closeTo(25.4, 9), holds: expect.closeTo(12.7, 9) }],
    ]);
  });
});
