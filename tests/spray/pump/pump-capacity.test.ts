import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pumpCapacity, quantity } from "../../../src/index.js";
import { complaints } from "../../errors.js";

const percent = (value: number) => quantity(value, "%");
const base = { tank: quantity(200, "gal"), agitation: percent(3), reserve: percent(20) };

describe("pumpCapacity", () => {
  it("adds up, and is the sum without a reserve", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.6, max: 20, noNaN: true }),
        fc.double({ min: 1.1, max: 50, noNaN: true }),
        (boom, agitation, reserve) => {
          const found = pumpCapacity({
            boom: quantity(boom, "gal/min"),
            tank: base.tank,
            agitation: percent(agitation),
            reserve: percent(reserve),
          });
          const parts = found.boom.plus(found.agitation).plus(found.reserve);
          expect(parts.in("gal/min")).toBeCloseTo(found.total.in("gal/min"), 9);
          expect(found.agitation.in("gal/min")).toBeCloseTo(2 * agitation, 9);
          expect(found.total.in("gal/min")).toBeCloseTo(((boom + 2 * agitation) * (100 + reserve)) / 100, 9);
        },
      ),
    );
  });

  it("does not depend on the units", () => {
    const metric = pumpCapacity({
      ...base,
      applicationVolume: quantity(200, "L/ha", "spray"),
      speed: quantity(6, "km/h"),
      swath: quantity(10, "m"),
    });
    // 200 L/ha at 6 km/h and 10 m is 20 L/min.
    expect(metric.boom.in("L/min")).toBeCloseTo(20, 9);
  });

  it("answers in the unit of the boom, or in the system of the application volume", () => {
    const boom = pumpCapacity({ ...base, boom: quantity(20, "L/min", "spray"), agitation: percent(0) });
    expect([boom.boom, boom.reserve, boom.total].map(String)).toEqual(["20 L/min", "4 L/min", "24 L/min"]);
    const made = pumpCapacity({
      ...base,
      applicationVolume: quantity(200, "L/ha", "spray"),
      speed: quantity(6, "km/h"),
      swath: quantity(10, "m"),
    });
    expect(made.total.unit).toBe("L/min");
  });

  it("says how much a pump lacks, and nothing of one that is just enough", () => {
    const job = { boom: quantity(8, "gal/min", "spray"), tank: quantity(200, "gal", "spray") };
    const shares = { agitation: percent(5), reserve: percent(0) };
    const small = pumpCapacity({ ...job, ...shares, pump: quantity(15, "gal/min", "spray") });
    expect(small.spare?.in("gal/min")).toBe(-3);
    expect(small.findings.map(({ code }) => code)).toEqual(["pump/too-small"]);
    expect(pumpCapacity({ ...job, ...shares, pump: quantity(18, "gal/min") }).findings).toEqual([]);
    expect(pumpCapacity({ ...job, ...shares }).spare).toBeUndefined();
  });

  it("takes the flow or what makes it, not both and not half", () => {
    expect(complaints(() => pumpCapacity({ ...base, speed: quantity(6, "km/h") }))).toEqual([
      "missing applicationVolume",
      "missing swath",
    ]);
    expect(
      complaints(() => pumpCapacity({ ...base, boom: quantity(5, "gal/min"), swath: quantity(10, "m") })),
    ).toEqual(["conflict swath"]);
    expect(complaints(() => pumpCapacity({ boom: quantity(5, "gal/min") } as never))).toEqual([
      "missing tank",
      "missing agitation",
      "missing reserve",
    ]);
  });
});
