import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isUnit, quantity, unitSystem, unitTable } from "../../../src/quantity/index.js";
import {
  areaForFlow,
  catchDepth,
  depthFromFlow,
  flowForDepth,
  grossDepth,
  irrigationTime,
  matchedPrecipitation,
  netDepth,
  precipitationRate,
  runTime,
  runTimeMultiplier,
  spacingPrecipitationRate,
  waterDepth,
  waterVolume,
  zonePrecipitation,
} from "../../../src/water/index.js";
import { isMetric } from "../../../src/water/read.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, gpm, inch, inPerHour, min, mm, mmPerHour, percent, untyped } from "../helpers.js";

const size = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const ft2 = (value: number) => quantity(value, "ft2");
const m2 = (value: number) => quantity(value, "m2");

describe("depth and volume", () => {
  test("there and back", () => {
    fc.assert(
      fc.property(size, size, (d, a) => {
        close(waterDepth({ volume: waterVolume({ depth: mm(d), area: m2(a) }), area: m2(a) }).in("mm"), d);
        close(
          waterDepth({ volume: waterVolume({ depth: inch(d), area: ft2(a) }), area: ft2(a) }).in("in"),
          d,
        );
      }),
    );
  });

  test("the units that are chosen change nothing", () => {
    fc.assert(
      fc.property(size, size, (d, a) => {
        const us = waterVolume({ depth: inch(d), area: ft2(a) });
        const metric = waterVolume({ depth: mm(d * 25.4), area: m2(a * 0.09290304) });
        close(us.in("L"), metric.in("L"), 1e-12);
      }),
    );
  });

  test("an acre-inch is an acre-inch", () => {
    close(waterVolume({ depth: inch(1), area: quantity(1, "acre") }).in("acre-in"), 1, 1e-15);
    expect(
      waterVolume({ depth: inch(1), area: quantity(1, "acre", "treated") as never }).in("gal"),
    ).toBeCloseTo(27154.2857, 3);
  });

  test("flow, time, depth and area stand in one relation", () => {
    fc.assert(
      fc.property(size, size, size, (q, t, a) => {
        const flow = gpm(q);
        const time = quantity(t, "h");
        const area = ft2(a);
        const depth = depthFromFlow({ flow, time, area });
        close(irrigationTime({ flow, area, depth }).in("h"), t);
        close(flowForDepth({ area, depth, time }).in("gal/min"), q);
        close(areaForFlow({ flow, time, depth }).in("ft2"), a);
        // twice as long on twice the ground is as deep
        close(depthFromFlow({ flow, time: quantity(2 * t, "h"), area: ft2(2 * a) }).in("in"), depth.in("in"));
        const liters = quantity(flow.in("L/min"), "L/min", "water");
        close(depthFromFlow({ flow: liters, time, area: m2(area.in("m2")) }).in("in"), depth.in("in"));
        close(flowForDepth({ area: m2(area.in("m2")), depth, time }).in("gal/min"), q);
        close(areaForFlow({ flow, time, depth: mm(depth.in("mm")) }).in("ft2"), a);
      }),
    );
  });

  test("a volume that is not said to be water, a depth that is a volume per area", () => {
    expect(complaints(untyped(waterDepth, { volume: quantity(3, "gal", "spray"), area: ft2(3) }))).toEqual([
      "substance/mismatch volume",
    ]);
    const asked = problemsOf(untyped(waterVolume, { depth: quantity(3, "gal/acre"), area: ft2(3) }));
    expect(asked[0]?.expected).toContain("depthOf");
    expect(complaints(untyped(waterVolume, { dept: inch(1), area: ft2(0) }))).toEqual([
      "type dept",
      "missing depth",
      "range area",
    ]);
    expect(complaints(untyped(waterVolume, undefined))).toEqual(["missing input"]);
    expect(complaints(untyped(irrigationTime, { flow: gpm(-1), area: ft2(3), depth: mm(0) }))).toEqual([
      "range flow",
      "range depth",
    ]);
    expect(complaints(untyped(waterVolume, { depth: mm(1e200), area: m2(1e200) }))).toEqual(["range input"]);
  });

  test("metric units are told as the library tells them", () => {
    for (const [dimension, sizes] of Object.entries(unitTable)) {
      if (!["length", "area", "volume", "pressure"].includes(dimension)) continue;
      for (const unit of Object.keys(sizes)) {
        expect(isMetric(unit), unit).toBe(unitSystem(unit) === "metric");
        if (isUnit(`${unit}/h`, "length/time")) expect(isMetric(`${unit}/h`), unit).toBe(isMetric(unit));
      }
    }
  });
});

describe("precipitation rate", () => {
  test("a zone of heads is the sum of its heads, in any order and unit", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), size), { minLength: 1, maxLength: 8 }),
        size,
        (rows, a) => {
          const heads = rows.map(([count, q]) => ({ count, flow: gpm(q) }));
          const zone = zonePrecipitation({ heads, area: ft2(a) });
          const back = zonePrecipitation({ heads: [...heads].reverse(), area: m2(ft2(a).in("m2")) });
          close(zone.flow.in("L/min"), back.flow.in("L/min"), 1e-11);
          close(zone.rate.in("mm/h"), back.rate.in("mm/h"), 1e-11);
          close(zone.rate.in("in/h"), precipitationRate({ flow: zone.flow, area: ft2(a) }).in("in/h"), 1e-11);
          expect(zone.heads).toBe(rows.reduce((n, [count]) => n + count, 0));
        },
      ),
    );
  });

  test("the rate by spacing is the flow over the ground of one head", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 1, max: 360, noNaN: true }), (q, s, arc) => {
        const head = { flow: gpm(q), spacing: quantity(s, "ft") };
        const ground = precipitationRate({ flow: gpm(q), area: ft2(s * s) }).in("in/h");
        close(spacingPrecipitationRate({ ...head, pattern: "square" }).in("in/h"), ground);
        close(spacingPrecipitationRate({ ...head, rowSpacing: quantity(s, "ft") }).in("in/h"), ground);
        close(
          spacingPrecipitationRate({ ...head, pattern: "triangular" }).in("in/h"),
          ground / Math.sin(Math.PI / 3),
        );
        close(
          spacingPrecipitationRate({ ...head, pattern: "square", arc: quantity(arc, "deg") }).in("in/h"),
          (ground * 360) / arc,
        );
      }),
    );
    // the arc form of the handbooks: 34,650 = 96.25 x 360
    const handbook = (34650 * 2) / (180 * 15 * 12);
    close(
      spacingPrecipitationRate({
        flow: gpm(2),
        spacing: quantity(15, "ft"),
        rowSpacing: quantity(12, "ft"),
        arc: quantity(180, "deg"),
      }).in("in/h"),
      handbook,
      1e-12,
    );
  });

  test("exactly one of row spacing and pattern", () => {
    const head = { flow: gpm(2), spacing: quantity(15, "ft") };
    expect(complaints(untyped(spacingPrecipitationRate, head))).toEqual(["missing rowSpacing"]);
    expect(
      complaints(
        untyped(spacingPrecipitationRate, { ...head, rowSpacing: quantity(3, "ft"), pattern: "square" }),
      ),
    ).toEqual(["conflict rowSpacing"]);
    expect(complaints(untyped(spacingPrecipitationRate, { ...head, pattern: "hexagonal" }))).toEqual([
      "type pattern",
    ]);
    expect(
      complaints(
        untyped(spacingPrecipitationRate, { ...head, pattern: "square", arc: quantity(361, "deg") }),
      ),
    ).toEqual(["range arc"]);
  });

  test("matched heads, and those that are not", () => {
    const head = (q: number, arc: number, radius = 30) => ({
      flow: gpm(q),
      radius: quantity(radius, "ft"),
      arc: quantity(arc, "deg"),
    });
    const matched = matchedPrecipitation({ heads: [head(4, 360), head(1, 90)] });
    close(matched.ratio, 1);
    expect(matched.findings).toEqual([]);
    const off = matchedPrecipitation({ heads: [head(4, 360), head(4, 90)] });
    close(off.ratio, 4);
    expect(off.findings.map(({ code }) => code)).toEqual(["water/unmatched-heads"]);
    expect(complaints(untyped(matchedPrecipitation, { heads: [] }))).toEqual(["missing heads"]);
    expect(
      complaints(untyped(matchedPrecipitation, { heads: [head(4, 360), { ...head(4, 0), arc: 90 }] })),
    ).toEqual(["type heads[1].arc"]);
    expect(
      complaints(untyped(zonePrecipitation, { heads: [{ count: 1.5, flow: gpm(1) }], area: ft2(3) })),
    ).toEqual(["range heads[0].count"]);
    expect(
      complaints(
        untyped(zonePrecipitation, { heads: Array(1001).fill({ count: 1, flow: gpm(1) }), area: ft2(3) }),
      ),
    ).toEqual(["range heads"]);
  });

  test("a can by its opening and by its diameter", () => {
    fc.assert(
      fc.property(size, size, (v, d) => {
        const volume = quantity(v, "mL", "water");
        const round = catchDepth({ volume, diameter: quantity(d, "cm") }).in("mm");
        const opening = quantity((Math.PI / 4) * d * d, "cm2");
        close(catchDepth({ volume, opening }).in("mm"), round);
        close(waterDepth({ volume, area: opening }).in("mm"), round, 1e-11);
      }),
    );
    const volume = quantity(5, "mL", "water");
    expect(complaints(untyped(catchDepth, { volume }))).toEqual(["missing opening"]);
    expect(
      complaints(untyped(catchDepth, { volume, opening: quantity(3, "in2"), diameter: inch(2) })),
    ).toEqual(["conflict opening"]);
    expect(catchDepth({ volume: quantity(0, "mL", "water"), diameter: inch(2) }).in("in")).toBe(0);
  });
});

describe("run time and efficiency", () => {
  test("gross and net are one another's inverse", () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1.1, max: 100, noNaN: true }), (d, e) => {
        const efficiency = percent(e);
        close(netDepth({ gross: grossDepth({ net: mm(d), efficiency }), efficiency }).in("mm"), d);
        expect(grossDepth({ net: mm(d), efficiency }).in("mm")).toBeGreaterThanOrEqual(d * (1 - 1e-15));
      }),
    );
    expect(complaints(untyped(grossDepth, { net: mm(3), efficiency: 0.8 }))).toEqual(["type efficiency"]);
    expect(complaints(untyped(grossDepth, { net: mm(3), efficiency: percent(101) }))).toEqual([
      "range efficiency",
    ]);
    expect(grossDepth({ net: mm(3), efficiency: quantity(0.75, "1") }).in("mm")).toBe(4);
  });

  test("a run in the rate's own units, and twice the depth twice as long", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 1, max: 5, noNaN: true }), (d, r, multiplier) => {
        const run = runTime({ depth: mm(d), rate: mmPerHour(r), multiplier }).in("min");
        close(run, (60 * d * multiplier) / r);
        close(runTime({ depth: mm(2 * d), rate: mmPerHour(r), multiplier }).in("min"), 2 * run);
        const us = runTime({ depth: mm(d), rate: inPerHour(r / 25.4), multiplier }).in("min");
        close(us, run, 1e-12);
      }),
    );
    expect(runTime({ depth: inch(0.5), rate: inPerHour(1.5) }).in("min")).toBe(20);
    expect(complaints(untyped(runTime, { depth: inch(0.5), rate: inPerHour(0), multiplier: 0.9 }))).toEqual([
      "range rate",
      "range multiplier",
    ]);
    expect(complaints(untyped(runTime, { depth: inch(0.5), rate: min(3) }))).toEqual(["unit/mismatch rate"]);
  });

  test("the lower half is close to that of a normal spread", () => {
    // in standard deviations below the mean: the mean of the lower half, 2 phi(0), and of the lowest quarter, 4 phi(0.67449)
    const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const slope = (2 * density(0)) / (4 * density(0.67449));
    close(slope, 0.628, 0.0005);
    for (const du of [40, 60, 85]) {
      const half =
        1 / runTimeMultiplier({ method: "lower half from lower quarter", uniformity: percent(du) });
      expect(Math.abs(half - (1 - slope * (1 - du / 100)))).toBeLessThan(0.02);
    }
  });

  test("the multipliers differ as the sources do", () => {
    expect(runTimeMultiplier({ method: "none" })).toBe(1);
    fc.assert(
      fc.property(fc.double({ min: 10, max: 99, noNaN: true }), (du) => {
        const uniformity = percent(du);
        const full = runTimeMultiplier({ method: "distribution uniformity", uniformity });
        const trade = runTimeMultiplier({ method: "lower half from lower quarter", uniformity });
        expect(trade).toBeLessThan(full);
        expect(trade).toBeGreaterThan(1);
        close(full * (du / 100), 1);
      }),
    );
    expect(complaints(untyped(runTimeMultiplier, { method: "none", uniformity: percent(60) }))).toEqual([
      "conflict uniformity",
    ]);
    expect(complaints(untyped(runTimeMultiplier, { method: "scheduling coefficient" }))).toEqual([
      "missing coefficient",
    ]);
    expect(
      complaints(untyped(runTimeMultiplier, { method: "distribution uniformity", uniformity: 60 })),
    ).toEqual(["type uniformity"]);
    expect(complaints(untyped(runTimeMultiplier, { method: "best" }))).toEqual(["type method"]);
    expect(runTimeMultiplier({ method: "scheduling coefficient", coefficient: 1.3 })).toBe(1.3);
  });
});
