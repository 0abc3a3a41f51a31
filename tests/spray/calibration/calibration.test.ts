import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkAgainstTarget, confidenceInterval } from "../../../src/numeric/index.js";
import { quantity } from "../../../src/quantity/index.js";
import {
  calibrationByCatch,
  calibrationByRefill,
  nozzleCheck,
  nozzleLimits,
  sprayTime,
} from "../../../src/spray/index.js";
import { complaints } from "../../errors.js";
import { gpa, mph, ounces, percent, seconds } from "../helpers.js";

const course = quantity(204.1875, "ft");
const width = quantity(20, "in");
const catches = [38, 40, 42].map(ounces);

describe("calibrationByCatch", () => {
  test("is the same by course and width, by area, and in metric units", () => {
    const byCourse = calibrationByCatch({ catches, course, width });
    const byArea = calibrationByCatch({ catches, area: quantity(43_560 / 128, "ft2") });
    expect(byCourse.rate.in("gal/acre")).toBeCloseTo(40, 10);
    expect(byArea.rate.in("gal/acre")).toBeCloseTo(40, 10);
    const metric = calibrationByCatch({
      catches: catches.map((each) => quantity(each.in("mL"), "mL", "water")),
      course: quantity(course.in("m"), "m"),
      width: quantity(width.in("cm"), "cm"),
    });
    expect(metric.rate.unit).toBe("L/ha");
    expect(metric.rate.in("gal/acre")).toBeCloseTo(40, 9);
    expect(metric.estimate?.standardError.in("gal/acre")).toBeCloseTo(
      byCourse.estimate?.standardError.in("gal/acre") ?? Number.NaN,
      9,
    );
  });

  test("adds the spread of catches and times and the stated errors as squares", () => {
    const times = [29, 30, 31].map(seconds);
    const { estimate } = calibrationByCatch({
      catches,
      catchTime: seconds(30),
      times,
      course,
      width,
      errors: { area: percent(1), volume: percent(2), time: percent(0.5) },
    });
    // s / mean / sqrt(3): 2/40 and 1/30.
    const relative = Math.sqrt((0.05 ** 2 + (1 / 30) ** 2) / 3 + 0.01 ** 2 + 0.02 ** 2 + 0.005 ** 2);
    expect(estimate?.standardError.in("gal/acre")).toBeCloseTo(40 * relative, 9);
    expect(estimate?.degreesOfFreedom).toBeGreaterThan(4);
  });

  test("has no sampling error where every nozzle was caught, but keeps the stated ones", () => {
    const all = calibrationByCatch({ catches, outOf: 3, course, width, errors: { volume: percent(2) } });
    expect(all.estimate?.standardError.in("gal/acre")).toBeCloseTo(0.8, 10);
    expect(all.estimate).not.toHaveProperty("degreesOfFreedom");
    const some = calibrationByCatch({ catches, outOf: 12, course, width });
    const open = calibrationByCatch({ catches, course, width });
    expect(some.estimate?.standardError.in("gal/acre")).toBeLessThan(
      open.estimate?.standardError.in("gal/acre") ?? 0,
    );
  });

  test("takes a catch that was shorter or longer than the run, by hand", () => {
    // 20 fl oz in 30 s is 40 in the 60 s of the run, on the plot where ounces read as gal/acre.
    const run = { times: [seconds(55), seconds(65)], course, width };
    const short = calibrationByCatch({ catches: [ounces(20)], catchTime: seconds(30), ...run });
    expect(short.rate.in("gal/acre")).toBeCloseTo(40, 10);
    const long = calibrationByCatch({ catches: [ounces(80)], catchTime: quantity(2, "min"), ...run });
    expect(long.rate.in("gal/acre")).toBeCloseTo(40, 10);
    // Two nozzles to the row: 1.5 L each in 60 s, run of 50 s over 100 m by 2.5 m: 2.5 L on 250 m2.
    const row = calibrationByCatch({
      catches: [quantity(1.5, "L", "spray")],
      nozzles: 2,
      catchTime: seconds(60),
      times: [seconds(50)],
      course: quantity(100, "m"),
      width: quantity(2.5, "m"),
    });
    expect(row.rate.in("L/ha")).toBeCloseTo(100, 10);
  });

  test("counts a stated error of the time also where the catch lasted as long as the run", () => {
    const timed = calibrationByCatch({ catches, outOf: 3, course, width, errors: { time: percent(3) } });
    expect(timed.estimate?.standardError.in("gal/acre")).toBeCloseTo(1.2, 10);
    expect(timed.checked).toContain("the stated error of the times");
  });

  test("gives a rate but no error from a single catch, and says why", () => {
    const one = calibrationByCatch({ catches: [ounces(40)], course, width });
    expect(one).not.toHaveProperty("estimate");
    expect(one.checked).toEqual([]);
    expect(one.notChecked).toContain("the spread of the catches: there is one");
  });

  test("goes on into an interval and a check against the target", () => {
    const { estimate } = calibrationByCatch({ catches: [40, 40.2, 39.9, 40.1].map(ounces), course, width });
    if (estimate === undefined) throw new Error("no estimate");
    const target = quantity(40, "gal/acre", "water");
    expect(checkAgainstTarget({ measured: estimate, target, tolerance: percent(5) }).verdict).toBe(
      "within tolerance",
    );
    expect(confidenceInterval(estimate).low.in("gal/acre")).toBeLessThan(40);
  });

  test("scales: twice the catch is twice the rate and the same relative error", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 99, noNaN: true }), { minLength: 2, maxLength: 6 }),
        (list) => {
          const one = calibrationByCatch({ catches: list.map(ounces), course, width });
          const two = calibrationByCatch({ catches: list.map((v) => ounces(2 * v)), course, width });
          expect(two.rate.in("gal/acre") / one.rate.in("gal/acre")).toBeCloseTo(2, 9);
          const ratio = (c: typeof one): number => (c.estimate?.standardError.value ?? 0) / c.rate.value;
          expect(ratio(two)).toBeCloseTo(ratio(one), 9);
        },
      ),
    );
  });

  test("refuses bad readings by their index, half a timing and two kinds of ground", () => {
    const bad = [ounces(40), undefined, ounces(0), quantity(1, "lb", "water"), quantity(1, "fl oz", "spray")];
    expect(complaints(() => calibrationByCatch({ catches: bad as never, course, width }))).toEqual([
      "missing catches[1]",
      "range catches[2]",
      "unit/mismatch catches[3]",
      "substance/mismatch catches[4]",
    ]);
    expect(complaints(() => calibrationByCatch({ catches: [ounces(40), ounces(0)], course, width }))).toEqual(
      ["range catches[1]"],
    );
    const rest = { catches, course, width };
    expect(complaints(() => calibrationByCatch({ ...rest, times: [seconds(3)] }))).toEqual([
      "missing catchTime",
    ]);
    expect(complaints(() => calibrationByCatch({ ...rest, catchTime: seconds(3) }))).toEqual([
      "missing times",
    ]);
    expect(complaints(() => calibrationByCatch({ ...rest, catchTime: seconds(0), times: [] }))).toEqual([
      "range catchTime",
      "missing times",
    ]);
    expect(
      complaints(() => calibrationByCatch({ catches, area: quantity(1, "acre"), course, width } as never)),
    ).toEqual(["conflict area"]);
    expect(complaints(() => calibrationByCatch({ catches } as never))).toEqual(["missing area"]);
    expect(complaints(() => calibrationByCatch({ catches, course: quantity(0, "ft"), width }))).toEqual([
      "range course",
    ]);
    expect(complaints(() => calibrationByCatch({ ...rest, outOf: 2 }))).toEqual(["range outOf"]);
    expect(complaints(() => calibrationByCatch({ ...rest, errors: { area: percent(-1) } }))).toEqual([
      "range errors.area",
    ]);
    expect(complaints(() => calibrationByCatch({ ...rest, errors: { arae: percent(1) } } as never))).toEqual([
      "type errors.arae",
    ]);
    const wrong = { volume: percent(-1), area: quantity(1, "%", "N"), time: 3 };
    expect(complaints(() => calibrationByCatch({ ...rest, errors: wrong } as never))).toEqual([
      "range errors.volume",
      "substance/mismatch errors.area",
      "type errors.time",
    ]);
    expect(complaints(() => calibrationByCatch(undefined as never))).toEqual(["missing input"]);
    expect(complaints(() => calibrationByCatch({ ...rest, nozzles: 0 }))).toEqual(["range nozzles"]);
    expect(complaints(() => calibrationByCatch({ catches: [], course, width }))).toEqual(["missing catches"]);
  });
});

describe("calibrationByRefill", () => {
  test("takes the mean of the refills and their spread", () => {
    const refills = [3.9, 4.1].map((value) => quantity(value, "gal", "spray"));
    const { rate, estimate } = calibrationByRefill({ refills, area: quantity(0.1, "acre") });
    expect(rate.in("gal/acre")).toBeCloseTo(40, 10);
    expect(estimate?.standardError.in("gal/acre")).toBeCloseTo(1, 9);
    expect(estimate?.degreesOfFreedom).toBeCloseTo(1, 12);
  });

  test("refuses an error of a time that nobody took", () => {
    const refills = [quantity(4, "gal", "spray"), quantity(0, "gal", "spray")];
    const run = { refills, area: quantity(0.1, "acre"), errors: { time: percent(1) } };
    expect(complaints(() => calibrationByRefill(run as never))).toEqual([
      "range refills[1]",
      "type errors.time",
    ]);
  });
});

describe("nozzleCheck", () => {
  const boom = (values: readonly number[], more: object = {}) =>
    nozzleCheck({ catches: values.map(ounces), time: quantity(1, "min"), divisor: "n", ...more });
  const verdicts = (values: readonly number[], more: object = {}): string[] =>
    boom(values, more).nozzles.map(({ verdict }) => verdict);

  test("replaces what is high, cleans what is low, and keeps what is on the limit", () => {
    expect(verdicts([95, 105, 100])).toEqual(["keep", "keep", "keep"]);
    expect(verdicts([94, 94, 112, 100])).toEqual(["clean", "clean", "replace", "keep"]);
    expect(verdicts([94, 106, 100], { ofMean: percent(10) })).toEqual(["keep", "keep", "keep"]);
  });

  test("sees an evenly worn boom only against the rating", () => {
    expect(verdicts([115, 115, 115])).toEqual(["keep", "keep", "keep"]);
    expect(boom([115, 115, 115]).notChecked[0]).toContain("no rated flow");
    const rated = quantity(100 / 128, "gal/min", "water");
    const worn = boom([115, 115, 115], { rated });
    expect(worn.nozzles.map(({ verdict }) => verdict)).toEqual(["replace", "replace", "replace"]);
    expect(worn.nozzles[0]?.fromRated?.in("%")).toBeCloseTo(15, 9);
    expect(worn.findings.map(({ code }) => code)).toEqual(["nozzle/check-again", "nozzle/boom-worn"]);
    expect(verdicts([110, 110, 110], { rated })).toEqual(["keep", "keep", "keep"]);
    expect(verdicts([88, 88, 88], { rated })).toEqual(["clean", "clean", "clean"]);
  });

  test("tells to clean first where a plugged nozzle makes good ones look worn", () => {
    const rated = quantity(38 / 128, "gal/min", "water");
    // One of five plugged: the mean is 30.4, and 38, which is the rated flow, lies 25 % above it.
    const plugged = boom([38, 38, 0, 38, 38], { rated });
    expect(plugged.nozzles.map(({ verdict }) => verdict)).toEqual([
      "check again",
      "check again",
      "clean",
      "check again",
      "check again",
    ]);
    const first = plugged.findings.find(({ code }) => code === "nozzle/clean-first");
    expect(first?.params).toEqual({ nozzles: ["1", "2", "4", "5"], low: ["3"] });
    // The four are at the rated flow: the pressure is not to blame.
    expect(plugged.findings.map(({ code }) => code)).toEqual(["nozzle/check-again", "nozzle/clean-first"]);
    // 33 is 13 % below the rated flow, so plugged, though near the mean: 40, 5 % above the rated flow, is not worn by it.
    const belowRated = boom([40, 40, 33, 33, 33, 0], { rated });
    expect(belowRated.nozzles.map(({ verdict }) => verdict)).toEqual([
      ...["check again", "check again"],
      ...["clean", "clean", "clean", "clean"],
    ]);
    const low = belowRated.findings.find(({ code }) => code === "nozzle/clean-first")?.params.low;
    expect(low).toEqual(["3", "4", "5", "6"]);
    // Where the whole boom gives too little, that is its pressure: one far above the others is worn.
    const pressure = boom([26, 26, 26, 31], { rated });
    expect(pressure.nozzles[3]?.verdict).toBe("replace");
    // 45 is 13 % above the mean of the others without the low one, too: that one is worn.
    const worn = boom([38, 39, 38, 45, 38, 20]);
    expect(worn.nozzles[3]?.verdict).toBe("replace");
    expect(worn.findings.find(({ code }) => code === "nozzle/clean-first")?.params.nozzles).toEqual(["2"]);
    // Above the rated flow is worn, whatever the mean does.
    const above = boom([50, 50, 0, 50, 50], { rated });
    expect(above.findings.map(({ code }) => code)).not.toContain("nozzle/clean-first");
    expect(above.nozzles[0]?.verdict).toBe("replace");
  });

  test("sees a boom that is low as a whole", () => {
    const rated = quantity(100 / 128, "gal/min", "water");
    const low = boom([80, 81, 79], { rated });
    expect(low.findings.map(({ code }) => code)).toEqual(["nozzle/check-again", "nozzle/boom-low"]);
    expect(low.findings[1]?.params.percent).toBeCloseTo(-20, 9);
    expect(boom([90, 90, 90], { rated }).findings).toEqual([]);
    expect(boom([80, 81, 79]).findings).toEqual([]);
  });

  test("names the divisor of the evenness", () => {
    expect(boom([9, 10, 11], { divisor: "n-1" }).evenness.in("%")).toBeCloseTo(10, 12);
    expect(boom([9, 10, 11]).evenness.in("%")).toBeCloseTo(10 * Math.sqrt(2 / 3), 12);
    expect(complaints(() => boom([9, 10], { divisor: undefined }))).toEqual(["missing divisor"]);
  });

  test("does not depend on units or on the catch time", () => {
    const metric = nozzleCheck({
      catches: [94, 106, 100].map((v) => quantity(ounces(v).in("mL") / 2, "mL", "water")),
      time: seconds(30),
      divisor: "n",
    });
    const us = boom([94, 106, 100]);
    expect(metric.mean.in("gal/min")).toBeCloseTo(us.mean.in("gal/min"), 12);
    expect(metric.nozzles.map(({ verdict }) => verdict)).toEqual(us.nozzles.map(({ verdict }) => verdict));
  });

  test("refuses missing catches, zero time and a boom that is off", () => {
    expect(complaints(() => boom([1, 2], { time: seconds(0) }))).toEqual(["range time"]);
    expect(complaints(() => boom([0, 0]))).toEqual(["range catches"]);
    expect(complaints(() => boom([5]))).toEqual(["missing catches"]);
    expect(complaints(() => boom([5, -1]))).toEqual(["range catches[1]"]);
    expect(complaints(() => boom([], { catches: [ounces(1), undefined] }))).toEqual(["missing catches[1]"]);
    expect(
      complaints(() => boom([], { catches: [undefined, quantity(-1, "L", "spray"), ounces(1)] })),
    ).toEqual(["missing catches[0]", "range catches[1]"]);
    const late = { catches: [undefined, quantity(1, "L", "spray")], rated: quantity(1, "L/min", "spray") };
    expect(complaints(() => boom([], late))).toEqual(["missing catches[0]"]);
    expect(complaints(() => boom([], { catches: [ounces(1), quantity(1, "L", "spray")] }))).toEqual([
      "substance/mismatch catches[1]",
    ]);
    expect(complaints(() => boom([5, 6], { rated: quantity(1, "gal/min", "spray") }))).toEqual([
      "substance/mismatch rated",
    ]);
    expect(complaints(() => boom([5, 6], { ofMean: percent(0) }))).toEqual(["range ofMean"]);
  });

  test("says who says what of the limits", () => {
    for (const { source, limit } of nozzleLimits()) {
      expect(source.publisher.length).toBeGreaterThan(3);
      expect(limit.in("%")).toBeGreaterThan(0);
    }
  });
});

describe("sprayTime", () => {
  const job = {
    area: quantity(10, "acre"),
    speed: mph(4),
    swath: quantity(20, "ft"),
    efficiency: percent(75),
    applicationVolume: gpa(40),
    capacity: quantity(200, "gal", "spray"),
    refill: quantity(20, "min"),
  };

  test("makes one trip less than fillings, and none for a tank that holds it all", () => {
    expect(sprayTime(job).fills).toBe(2);
    expect(sprayTime(job).refillTrips).toBe(1);
    // 10 acres at 4 mph times 20 ft times 75 % over 8.25, 80/11 acre/h, and one trip of 20 min.
    expect(sprayTime(job).spraying.in("min")).toBeCloseTo(82.5, 9);
    expect(sprayTime(job).total.in("min")).toBeCloseTo(102.5, 9);
    const three = sprayTime({ ...job, capacity: quantity(150, "gal", "spray") });
    expect([three.refillTrips, three.refilling.in("min")]).toEqual([2, 40]);
    const big = sprayTime({ ...job, capacity: quantity(400, "gal", "spray") });
    expect(big.refillTrips).toBe(0);
    expect(big.total.in("min")).toBe(big.spraying.in("min"));
    expect(sprayTime({ ...job, speed: mph(8) }).spraying.in("min")).toBeCloseTo(
      big.spraying.in("min") / 2,
      9,
    );
  });

  test("refuses gaps and more than all of the efficiency", () => {
    expect(complaints(() => sprayTime({ ...job, efficiency: percent(101) }))).toEqual(["range efficiency"]);
    expect(complaints(() => sprayTime({ ...job, refill: undefined } as never))).toEqual(["missing refill"]);
    expect(complaints(() => sprayTime({ ...job, capacity: quantity(0, "gal", "spray") }))).toEqual([
      "range capacity",
    ]);
  });
});
