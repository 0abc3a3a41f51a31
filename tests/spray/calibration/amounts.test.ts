import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  asFinishedSpray,
  calibrationByCatch,
  calibrationByRefill,
  catchCourse,
  rateControllerCheck,
  timeToFill,
  usedBySightGauge,
  weighedCatch,
} from "../../../src/spray/index.js";
import { complaints } from "../../errors.js";
import { gpm, inches, ounces, percent } from "../helpers.js";

describe("a catch by weight", () => {
  test("a gram of water is a milliliter, less the jug", () => {
    expect(
      weighedCatch({ full: quantity(600, "g", "water"), tare: quantity(100, "g") }).in("mL"),
    ).toBeCloseTo(500, 9);
  });

  test("spray needs its density", () => {
    expect(complaints(() => weighedCatch({ full: quantity(600, "g", "spray") }))).toEqual([
      "missing density",
    ]);
    const caught = weighedCatch({ full: quantity(600, "g", "spray"), density: quantity(1.2, "kg/L") });
    expect(caught.in("mL")).toBeCloseTo(500, 9);
  });

  test("a jug that weighs as much empty as full is refused", () => {
    expect(
      complaints(() => weighedCatch({ full: quantity(1, "lb", "water"), tare: quantity(16, "oz") })),
    ).toEqual(["range full"]);
  });
});

describe("the time to fill a jug", () => {
  test("goes with the volume and against the flow", () => {
    expect(timeToFill({ volume: quantity(1, "gal", "spray"), flow: gpm(0.5) }).in("min")).toBeCloseTo(2, 12);
  });

  test("of water at a flow of spray is refused", () => {
    const volume = quantity(1, "gal", "water");
    expect(complaints(() => timeToFill({ volume, flow: gpm(0.5) as never }))).toEqual([
      "substance/mismatch flow",
    ]);
  });
});

describe("a sight gauge", () => {
  test("what was used goes into a calibration by refill", () => {
    const used = usedBySightGauge({
      before: quantity(60, "gal", "water"),
      after: quantity(56, "gal", "water"),
    });
    const measured = calibrationByRefill({ refills: [used], area: quantity(0.1, "acre") });
    expect(measured.rate.in("gal/acre")).toBeCloseTo(40, 9);
  });

  test("two readings the wrong way round are refused", () => {
    const readings = { before: quantity(50, "gal", "water"), after: quantity(60, "gal", "water") };
    expect(complaints(() => usedBySightGauge(readings))).toEqual(["conflict after"]);
  });
});

describe("a course of the 1/128-acre method", () => {
  const course = catchCourse({ width: inches(20) });

  test("goes into the calibration as it is", () => {
    expect(calibrationByCatch({ catches: [ounces(32)], course }).rate.in("gal/acre")).toBeCloseTo(32, 9);
  });

  test("has its own width", () => {
    const input = { catches: [ounces(32)], course, width: inches(20) } as never;
    expect(complaints(() => calibrationByCatch(input))).toEqual(["conflict width"]);
  });

  test("gives loads in one more call, as spray", () => {
    const measured = calibrationByCatch({ catches: [ounces(31), ounces(33)], course });
    const spray = asFinishedSpray(measured);
    expect([spray.value.of, spray.carriedOver, spray.measuredWith]).toEqual([
      "spray",
      "as heavy as water",
      "water",
    ]);
    expect(spray.estimate?.standardError.value).toBe(measured.estimate?.standardError.value);
  });
});

describe("as finished spray", () => {
  test("a density beside a measurement with spray is refused", () => {
    const rate = quantity(20, "gal/acre", "spray");
    expect(complaints(() => asFinishedSpray(rate, { density: quantity(9, "lb/gal") }))).toEqual([
      "conflict density",
    ]);
  });

  test("an estimate that was changed in a store is read again", () => {
    const estimate = {
      type: "estimate",
      version: 1,
      value: { value: 20, unit: "gal/acre", of: "water" },
      standardError: { value: -1, unit: "gal/acre", of: "water" },
    } as never;
    expect(complaints(() => asFinishedSpray(estimate))).toEqual(["range measured.standardError"]);
  });

  test("product is no spray", () => {
    expect(complaints(() => asFinishedSpray(quantity(20, "gal/acre", "product") as never))).toEqual([
      "substance/mismatch measured",
    ]);
  });
});

describe("a rate controller", () => {
  const run = { displayed: quantity(110, "gal", "water"), measured: quantity(100, "gal", "water") };

  test("beyond the tolerance is a finding that says which way", () => {
    const check = rateControllerCheck(run);
    expect([check.withinTolerance, check.findings.map(({ code }) => code)]).toEqual([
      false,
      ["controller/off"],
    ]);
    expect(check.findings[0]?.text).toContain("puts on less");
  });

  test("on the tolerance is within", () => {
    expect(rateControllerCheck({ ...run, tolerance: percent(10) }).withinTolerance).toBe(true);
  });

  test("the corrected meter shows what was measured", () => {
    const { meterNumber = 0 } = rateControllerCheck({ ...run, meterNumber: 500 });
    // 500 pulses a gallon and 110 gallons shown are 55,000 pulses, for 100 gallons.
    expect(meterNumber).toBeCloseTo(55_000 / 100, 9);
  });
});
