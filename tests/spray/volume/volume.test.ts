import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  applicationVolume,
  bandFieldRate,
  bandTreatedArea,
  bandTreatedRate,
  boomHeight,
  boomWidth,
  catchCourse,
  courseTime,
  fanOverlap,
  fanWidth,
  groundSpeed,
  nozzleFlow,
  sprayWidth,
  travelSpeed,
  widthPerNozzle,
} from "../../../src/spray/index.js";
import { complaints } from "../../errors.js";
import { gpa, gpm, inches, mph, percent, seconds } from "../helpers.js";

const some = fc.double({ min: 0.01, max: 1000, noNaN: true });
/** Speeds of machines and aircraft, in mi/h. */
const slow = fc.double({ min: 0.01, max: 200, noNaN: true });

describe("applicationVolume and its inverses", () => {
  test("carry the constants of the trade: 5940, 495, 600 and 60 000", () => {
    const one = { flow: gpm(1), speed: mph(1) };
    expect(applicationVolume({ ...one, width: inches(1) }).in("gal/acre")).toBeCloseTo(5940, 8);
    expect(applicationVolume({ ...one, width: quantity(1, "ft") }).in("gal/acre")).toBeCloseTo(495, 9);
    const metric = { flow: quantity(1, "L/min", "spray"), speed: quantity(1, "km/h") };
    expect(applicationVolume({ ...metric, width: quantity(1, "m") }).in("L/ha")).toBeCloseTo(600, 9);
    expect(applicationVolume({ ...metric, width: quantity(1, "cm") }).in("L/ha")).toBeCloseTo(60_000, 7);
  });

  test("are turned round by one another", () => {
    fc.assert(
      fc.property(some, slow, some, (q, v, w) => {
        const [flow, speed, width] = [gpm(q), mph(v), inches(w)];
        const volume = applicationVolume({ flow, speed, width });
        const near = (a: number, b: number): void => expect(Math.abs(a / b - 1)).toBeLessThan(1e-9);
        near(nozzleFlow({ applicationVolume: volume, speed, width }).in("gal/min"), q);
        near(travelSpeed({ flow, applicationVolume: volume, width }).in("mi/h"), v);
        near(sprayWidth({ flow, applicationVolume: volume, speed }).in("in"), w);
      }),
    );
  });

  test("do not depend on units, and answer in the system of the flow", () => {
    fc.assert(
      fc.property(some, slow, some, (q, v, w) => {
        const us = applicationVolume({ flow: gpm(q), speed: mph(v), width: inches(w) });
        const metric = applicationVolume({
          flow: quantity(gpm(q).in("L/h"), "L/h", "spray"),
          speed: quantity(mph(v).in("m/s"), "m/s"),
          width: quantity(inches(w).in("mm"), "mm"),
        });
        expect(Math.abs(metric.in("gal/acre") / us.in("gal/acre") - 1)).toBeLessThan(1e-9);
        expect([us.unit, metric.unit]).toEqual(["gal/acre", "L/ha"]);
      }),
    );
    const imperial = quantity(1, "imp gal/min", "water");
    expect(applicationVolume({ flow: imperial, speed: mph(4), width: inches(20) }).unit).toBe("imp gal/acre");
    // An acre is at home in two systems: the gallon says which. 20 * 4 * 20 / 5940 in any gallon.
    const needed = nozzleFlow({
      applicationVolume: quantity(20, "imp gal/acre", "spray"),
      speed: mph(4),
      width: inches(20),
    });
    expect(needed.unit).toBe("imp gal/min");
    expect(needed.value).toBeCloseTo(1600 / 5940, 9);
    const mixed = quantity(20, "L/acre", "spray");
    expect(nozzleFlow({ applicationVolume: mixed, speed: mph(4), width: inches(20) }).unit).toBe("L/min");
  });

  test("fall with speed and width and rise with the flow", () => {
    const at = (q: number, v: number, w: number): number =>
      applicationVolume({ flow: gpm(q), speed: mph(v), width: inches(w) }).in("gal/acre");
    expect(at(0.5, 4, 20)).toBeGreaterThan(at(0.4, 4, 20));
    expect(at(0.4, 5, 20)).toBeLessThan(at(0.4, 4, 20));
    expect(at(0.4, 4, 30)).toBeLessThan(at(0.4, 4, 20));
  });

  test("keep water and spray apart", () => {
    const flow = quantity(0.4, "gal/min", "water");
    expect(applicationVolume({ flow, speed: mph(4), width: inches(20) }).of).toBe("water");
    const mixed = { flow, applicationVolume: gpa(20), width: inches(20) };
    expect(complaints(() => travelSpeed(mixed as never))).toEqual(["substance/mismatch applicationVolume"]);
    const nitrogen = quantity(1, "gal/min", "N");
    expect(
      complaints(() => applicationVolume({ flow: nitrogen, speed: mph(4), width: inches(1) } as never)),
    ).toEqual(["substance/mismatch flow"]);
  });

  test("take a product that is put on undiluted: what comes out is its rate", () => {
    const flow = quantity(0.1, "gal/min", "product:oil");
    const rate = applicationVolume({ flow, speed: mph(4), width: inches(20) });
    expect(rate.of).toBe("product:oil");
    // 5940 x 0.1 / (4 x 20).
    expect(rate.in("gal/acre")).toBeCloseTo(7.425, 9);
  });

  test("report everything that is wrong, and guess nothing", () => {
    expect(complaints(() => applicationVolume({ flow: gpm(0), speed: mph(-1), width: inches(0) }))).toEqual([
      "range flow",
      "range speed",
      "range width",
    ]);
    expect(complaints(() => applicationVolume({ flow: gpm(1) } as never))).toEqual([
      "missing speed",
      "missing width",
    ]);
    const nan = { value: Number.NaN, unit: "mi/h", of: "none" };
    expect(
      complaints(() => applicationVolume({ flow: gpm(1), speed: nan, width: inches(1) } as never)),
    ).toEqual(["not-finite speed"]);
    expect(
      complaints(() => applicationVolume({ flow: gpm(1), speed: inches(1), width: mph(1) } as never)),
    ).toEqual(["unit/mismatch speed", "unit/mismatch width"]);
  });

  test("take what JSON left", () => {
    const input = JSON.parse(JSON.stringify({ flow: gpm(0.4), speed: mph(4), width: inches(20) }));
    expect(applicationVolume(input).in("gal/acre")).toBeCloseTo(29.7, 10);
  });
});

describe("groundSpeed", () => {
  const course = quantity(200, "ft");

  test("averages times unless told otherwise, and the mean of speeds is never less", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 500, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (list) => {
          const times = list.map(seconds);
          const byTimes = groundSpeed({ course, times }).in("mi/h");
          const bySpeeds = groundSpeed({ course, times, average: "speeds" }).in("mi/h");
          expect(bySpeeds).toBeGreaterThanOrEqual(byTimes * (1 - 1e-12));
          expect(courseTime({ course, speed: groundSpeed({ course, times }) }).in("s")).toBeCloseTo(
            list.reduce((sum, t) => sum + t, 0) / list.length,
            8,
          );
        },
      ),
    );
  });

  test("takes the mean of the speeds where it is told to, by hand", () => {
    // 100 m in 40 s and in 50 s: 2.5 and 2 m/s, 2.25 in the mean, 8.1 km/h; by the mean time of 45 s 8 km/h.
    const runs = { course: quantity(100, "m"), times: [40, 50].map(seconds) };
    expect(groundSpeed({ ...runs, average: "speeds" }).in("km/h")).toBeCloseTo(8.1, 12);
    expect(groundSpeed(runs).in("km/h")).toBeCloseTo(8, 12);
  });

  test("makes the volume of both ways together come out", () => {
    // 1 gal/min on 10 ft: 20 s one way and 30 s the other put 5/6 gal on 4000 ft2.
    const speed = groundSpeed({ course, times: [seconds(20), seconds(30)] });
    const volume = applicationVolume({ flow: gpm(1), speed, width: quantity(10, "ft") });
    expect(volume.in("gal/1000 ft2")).toBeCloseTo(5 / 6 / 4, 12);
  });

  test("refuses courses and times of nothing", () => {
    expect(complaints(() => groundSpeed({ course: quantity(0, "ft"), times: [seconds(3)] }))).toEqual([
      "range course",
    ]);
    expect(complaints(() => groundSpeed({ course, times: [] }))).toEqual(["missing times"]);
    expect(complaints(() => groundSpeed({ course, times: [seconds(3), seconds(0)] }))).toEqual([
      "range times[1]",
    ]);
    expect(complaints(() => groundSpeed({ course, times: [seconds(3), undefined] } as never))).toEqual([
      "missing times[1]",
    ]);
    expect(complaints(() => groundSpeed({ course, times: [seconds(3)], average: "mean" } as never))).toEqual([
      "type average",
    ]);
    expect(complaints(() => groundSpeed({ times: [seconds(-3)], average: "mean" } as never))).toEqual([
      "type average",
      "missing course",
      "range times[0]",
    ]);
  });
});

describe("catchCourse", () => {
  test("has the exact plots", () => {
    expect(catchCourse({ width: quantity(1, "ft") }).area.in("ft2")).toBeCloseTo(43_560 / 128, 9);
    expect(catchCourse({ width: quantity(1, "m"), reading: "mL as L/ha" }).area.in("m2")).toBeCloseTo(10, 12);
    const ten = catchCourse({ width: quantity(1, "ft"), tenfold: true });
    expect(ten.area.in("ft2")).toBeCloseTo(3403.125, 8);
  });

  test("makes the catch read as the volume, for any width", () => {
    fc.assert(
      fc.property(some, some, (width, caught) => {
        const us = catchCourse({ width: inches(width) });
        const area = us.course.times(inches(width));
        expect(quantity(caught, "fl oz").per(area).in("gal/acre") / caught).toBeCloseTo(1, 9);
        const metric = catchCourse({ width: quantity(width, "cm"), reading: "mL as L/ha", tenfold: true });
        const plot = metric.course.times(quantity(width, "cm"));
        expect(quantity(caught, "mL").per(plot).in("L/ha") / (caught / metric.divideBy)).toBeCloseTo(1, 9);
      }),
    );
  });

  test("refuses no width and unknown readings", () => {
    expect(complaints(() => catchCourse({ width: inches(0) }))).toEqual(["range width"]);
    expect(complaints(() => catchCourse({ width: inches(1), reading: "toString" } as never))).toEqual([
      "type reading",
    ]);
    expect(complaints(() => catchCourse({ width: inches(1), tenfold: 1 } as never))).toEqual([
      "type tenfold",
    ]);
    expect(complaints(() => catchCourse({ reading: "qt", tenfold: 1 } as never))).toEqual([
      "type reading",
      "type tenfold",
      "missing width",
    ]);
  });
});

describe("widths and bands", () => {
  test("turn one another round", () => {
    const fan = fanWidth({ angle: quantity(80, "deg"), height: inches(18) });
    const overlap = fanOverlap({ fan, spacing: inches(20) });
    expect(boomHeight({ angle: quantity(80, "deg"), spacing: inches(20), overlap }).in("in")).toBeCloseTo(
      18,
      10,
    );
    expect(fanOverlap({ fan: inches(15), spacing: inches(20) }).in("%")).toBe(-25);
    // Fans of 90 degrees that just meet stand half a spacing high.
    const meeting = { angle: quantity(90, "deg"), spacing: inches(20), overlap: percent(0) };
    expect(boomHeight(meeting).in("in")).toBeCloseTo(10, 12);
    expect(boomWidth({ nozzles: 10, spacing: inches(20) }).in("in")).toBe(200);
    expect(boomWidth({ nozzles: 1, spacing: inches(20) }).in("in")).toBe(20);
    const band = { band: inches(7), row: quantity(30, "in") };
    const field = bandFieldRate({ rate: gpa(20), ...band });
    expect(bandTreatedRate({ rate: field, ...band }).in("gal/acre")).toBeCloseTo(20, 12);
  });

  test("conserve what is put on: treated rate on treated area is field rate on field area", () => {
    const band = { band: inches(12), row: quantity(1, "m") };
    const area = quantity(3, "acre");
    const treated = bandTreatedArea({ area, ...band });
    const byField = bandFieldRate({ rate: gpa(20), ...band }).times(area);
    expect(gpa(20).times(treated).in("gal")).toBeCloseTo(byField.in("gal"), 10);
    expect(treated.of).toBe("treated");
    // 30 cm of every 90 cm: a third of 9 ha.
    const third = { band: quantity(30, "cm"), row: quantity(90, "cm") };
    expect(bandTreatedArea({ area: quantity(9, "ha", "gross"), ...third }).in("ha")).toBeCloseTo(3, 12);
    // A band as wide as the row, also where its inches are told in meters, is the whole field.
    const whole = { band: quantity(inches(30).in("m"), "m"), row: inches(30) };
    expect(bandTreatedArea({ area, ...whole }).in("acre")).toBeCloseTo(3, 12);
    expect(bandTreatedArea({ area, band: inches(30), row: inches(30) }).in("acre")).toBe(3);
  });

  test("refuse what cannot be", () => {
    expect(complaints(() => bandFieldRate({ rate: gpa(20), band: inches(31), row: inches(30) }))).toEqual([
      "range band",
    ]);
    expect(
      complaints(() => bandFieldRate({ rate: inches(1), band: inches(0), row: inches(0) } as never)),
    ).toEqual(["range band", "range row", "unit/mismatch rate"]);
    expect(complaints(() => bandTreatedArea({ band: inches(31), row: inches(30) } as never))).toEqual([
      "range band",
      "missing area",
    ]);
    expect(
      bandTreatedRate({ rate: quantity(0, "lb/acre", "N"), band: inches(1), row: inches(3) }).value,
    ).toBe(0);
    const again = { area: quantity(3, "acre", "treated"), band: inches(1), row: inches(3) };
    expect(complaints(() => bandTreatedArea(again as never))).toEqual(["conflict area"]);
    expect(complaints(() => fanWidth({ angle: quantity(180, "deg"), height: inches(1) }))).toEqual([
      "range angle",
    ]);
    expect(complaints(() => widthPerNozzle({ row: inches(30), nozzles: 1.5 }))).toEqual(["range nozzles"]);
    expect(
      complaints(() =>
        boomHeight({ angle: quantity(80, "deg"), spacing: inches(20), overlap: percent(-10) }),
      ),
    ).toEqual(["range overlap"]);
  });
});
