import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  nozzleWear,
  outputAtPressure,
  pressureForOutput,
  pulseTips,
  pulseWidth,
  readTip,
} from "../../../src/spray/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { gpa, gpm, inches, mph, ounces, percent, psi, seconds } from "../helpers.js";

describe("the square-root rule without a range", () => {
  test("four times the pressure is twice the flow and twice the volume per area", () => {
    expect(
      outputAtPressure({ output: gpm(0.4), from: psi(20), to: psi(80) }).value.in("gal/min"),
    ).toBeCloseTo(0.8, 12);
    expect(
      outputAtPressure({ output: gpa(20), from: psi(20), to: psi(80) }).value.in("gal/acre"),
    ).toBeCloseTo(40, 12);
  });

  test("there and back is where it began", () => {
    const positive = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (output, from, to) => {
        const { value } = outputAtPressure({ output: gpa(output), from: psi(from), to: psi(to) });
        const back = pressureForOutput({ output: gpa(output), from: psi(from), wanted: value });
        expect(back.value.in("psi") / to).toBeCloseTo(1, 9);
      }),
    );
  });

  test("the result says that no range was checked", () => {
    const { notChecked } = outputAtPressure({ output: gpa(20), from: psi(40), to: psi(400) });
    expect(notChecked[0]).toContain("flowAtPressure");
  });

  test("an output of another kind or carrier is refused", () => {
    const run = { output: gpa(20), from: psi(40) };
    expect(complaints(() => pressureForOutput({ ...run, wanted: gpm(1) as never }))).toEqual([
      "unit/mismatch wanted",
    ]);
    const water = quantity(20, "gal/acre", "water") as never;
    expect(complaints(() => pressureForOutput({ ...run, wanted: water }))).toEqual([
      "substance/mismatch wanted",
    ]);
  });

  test("every problem is told at once", () => {
    const bad = { output: gpa(0), from: psi(-1), to: inches(1) };
    expect(complaints(() => outputAtPressure(bad as never))).toEqual([
      "range output",
      "range from",
      "unit/mismatch to",
    ]);
  });
});

describe("one nozzle against its rating", () => {
  const rated = quantity(100 / 128, "gal/min", "water");
  const verdict = (caught: number, more: object = {}) =>
    nozzleWear({ caught: ounces(caught), time: quantity(1, "min"), rated, ...more }).verdict;

  test.each([
    [110, "keep"],
    [111, "replace"],
    [90, "keep"],
    [89, "clean"],
  ] as const)("%s fl oz for a rated 100: %s", (caught, wanted) => {
    expect(verdict(caught)).toBe(wanted);
  });

  test("the limits can be set", () => {
    expect(verdict(106, { aboveRated: percent(5) })).toBe("replace");
    expect(verdict(94, { belowRated: percent(5) })).toBe("clean");
  });

  test("half a minute counts for half", () => {
    const half = nozzleWear({ caught: ounces(50), time: seconds(30), rated });
    expect(half.fromRated.in("%")).toBeCloseTo(0, 9);
  });

  test("spray against a rating of water is refused", () => {
    const caught = quantity(100, "fl oz", "spray") as never;
    expect(complaints(() => nozzleWear({ caught, time: seconds(60), rated: rated as never }))).toEqual([
      "substance/mismatch rated",
    ]);
  });
});

describe("what is stamped on a tip", () => {
  test.each([
    ["11004", 110, "04", 0.4, "red"],
    ["8004", 80, "04", 0.4, "red"],
    ["110-015", 110, "015", 0.15, "green"],
    ["800067", 80, "0067", 0.067, undefined],
    ["0067", undefined, "0067", 0.067, undefined],
    ["035", undefined, "035", 0.35, undefined],
    ["10", undefined, "10", 1, "light blue"],
    ["11010", 110, "10", 1, "light blue"],
    ["6501", 65, "01", 0.1, "orange"],
  ] as const)("%s", (stamp, angle, code, flow, color) => {
    const tip = readTip(stamp);
    expect([tip.angle?.in("deg"), tip.code, tip.flow.in("gal/min"), tip.color]).toEqual([
      angle,
      code,
      flow,
      color,
    ]);
    expect(tip.pressure.in("psi")).toBe(40);
  });

  test("a dash or a blank says where the angle ends", () => {
    const read = (stamp: string): unknown[] => [readTip(stamp).angle?.in("deg"), readTip(stamp).code];
    expect(read("15-015")).toEqual([15, "015"]);
    expect(read("150 15")).toEqual([150, "15"]);
    expect(read("80 - 015")).toEqual([80, "015"]);
  });

  test("digits with two readings, ten times apart, are refused with both", () => {
    const [problem] = problemsOf(() => readTip("15015"));
    expect([problem?.code, problem?.choices]).toEqual(["type", ["15-015", "150-15"]]);
    expect(problemsOf(() => readTip("15004"))[0]?.choices).toEqual(["15-004", "150-04"]);
    expect(complaints(() => readTip("11-004"))).toEqual(["type stamp"]);
    expect(complaints(() => readTip("110-0-4"))).toEqual(["type stamp"]);
  });

  test.each(["", "TX", "9904", "110", "00", "11000", "110040000", 7, null, "1".repeat(1e6)])(
    "refuses %s",
    (stamp) => {
      expect(complaints(() => readTip(stamp as never))).toEqual(["type stamp"]);
    },
  );
});

describe("pulse-width modulation", () => {
  // 15 gal/acre at 5 mph and 20 in: 15 x 5 x 20 / 5940 = 0.252525 gal/min.
  const job = { full: gpm(0.4), applicationVolume: gpa(15), speed: mph(5), width: inches(20) };

  test("the duty is the share of the full flow that the job takes", () => {
    expect(pulseWidth(job).duty.in("%")).toBeCloseTo((100 * 1500) / 5940 / 0.4, 9);
  });

  test("at the speeds of the limits the duty is the limit", () => {
    const { speeds } = pulseWidth({ ...job, duty: { least: percent(30), most: percent(90) } });
    expect(pulseWidth({ ...job, speed: speeds.slowest }).duty.in("%")).toBeCloseTo(30, 9);
    expect(pulseWidth({ ...job, speed: speeds.fastest }).duty.in("%")).toBeCloseTo(90, 9);
  });

  test.each([
    [0.2, "pulse/nozzle-too-small", false],
    [0.26, "pulse/outside-usual-duty", true],
    [0.36, undefined, true],
    [2, "pulse/nozzle-too-large", false],
  ] as const)("a nozzle of %s gal/min: %s", (full, code, within) => {
    const found = pulseWidth({ ...job, full: gpm(full) });
    expect([found.findings[0]?.code, found.withinDuty]).toEqual([code, within]);
  });

  test("limits the wrong way round are refused", () => {
    const duty = { least: percent(90), most: percent(30) };
    expect(complaints(() => pulseWidth({ ...job, duty }))).toEqual(["conflict duty.most"]);
  });

  test("sizes outside the limits are left out, and more pressure moves the choice", () => {
    const rest = { applicationVolume: gpa(15), speed: mph(5), width: inches(20) };
    const codes = (pressure: number) =>
      pulseTips({ sizes: ["8002", "8003", "8004"], pressure: psi(pressure), ...rest }).map(
        ({ code }) => code,
      );
    // At 40 psi 0.2 gal/min is too small: 126 %.
    expect(codes(40)).toEqual(["04", "03"]);
    // At 90 psi each gives half as much again: 0.3, 0.45 and 0.6 gal/min, 84.2, 56.1 and 42.1 %.
    expect(codes(90)).toEqual(["03", "02", "04"]);
  });
});
