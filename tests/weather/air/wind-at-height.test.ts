import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity, windAtHeight, windReading, windReadingAt } from "../../../src/index.js";
import { complaints } from "../../errors.js";

const m = (value: number) => quantity(value, "m");
const height = fc.double({ min: 0.3, max: 30, noNaN: true });
const speed = fc.double({ min: 0, max: 40, noNaN: true });

describe("windAtHeight", () => {
  it("is within the digits of the profile that the printed constants stand for: grass of 0.12 m", () => {
    // Displacement 2/3 and roughness 0.123 of the height of the grass, as the same source gives them.
    const grass = (z: number) => Math.log((z - 0.08) / (0.123 * 0.12));
    fc.assert(
      fc.property(speed, height, height, (u, from, to) => {
        const found = windAtHeight({ wind: quantity(u, "m/s"), from: m(from), to: m(to) }).in("m/s");
        const derived = (u * grass(to)) / grass(from);
        expect(Math.abs(found - derived)).toBeLessThanOrEqual(0.001 * derived + 1e-12);
      }),
    );
  });

  it("comes back, and goes by way of a third height", () => {
    fc.assert(
      fc.property(speed, height, height, height, (u, a, b, c) => {
        const wind = quantity(u, "mi/h");
        const there = windAtHeight({ wind, from: m(a), to: m(b) });
        expect(windAtHeight({ wind: there, from: m(b), to: m(a) }).in("mi/h")).toBeCloseTo(u, 9);
        const straight = windAtHeight({ wind, from: m(a), to: m(c) }).in("mi/h");
        expect(windAtHeight({ wind: there, from: m(b), to: m(c) }).in("mi/h")).toBeCloseTo(straight, 9);
      }),
    );
  });

  it("rises with the height and with the wind, and keeps the unit", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), height, height, (u, a, b) => {
        fc.pre(Math.abs(a - b) > 0.01);
        const found = windAtHeight({ wind: quantity(u, "km/h"), from: m(a), to: m(b) });
        expect(found.unit).toBe("km/h");
        expect(Math.sign(found.value - u)).toBe(Math.sign(b - a));
      }),
    );
  });

  it("does not depend on the units of the heights", () => {
    const wind = quantity(10, "mi/h");
    const feet = windAtHeight({ wind, from: quantity(33, "ft"), to: quantity(24, "in") }).value;
    expect(feet).toBeCloseTo(windAtHeight({ wind, from: m(10.0584), to: m(0.6096) }).value, 12);
  });

  it("tells every problem at once", () => {
    const call = windAtHeight as (input: unknown) => unknown;
    expect(complaints(() => call({ wind: quantity(-1, "m/s"), from: m(0.1), to: m(200) }))).toEqual([
      "range wind",
      "range from",
      "range to",
    ]);
    expect(complaints(() => call({ wind: m(3) }))).toEqual([
      "unit/mismatch wind",
      "missing from",
      "missing to",
    ]);
    expect(complaints(() => call({ wind: quantity(1, "m/s"), form: m(10), to: m(2) }))).toEqual([
      "type input.form",
    ]);
  });
});

describe("windReading", () => {
  it("survives JSON and moves to another height", () => {
    const reading = windReading({ speed: quantity(5, "m/s"), height: m(10) });
    const back = JSON.parse(JSON.stringify(reading)) as typeof reading;
    const moved = windReadingAt(back, m(2));
    expect(moved.height.in("m")).toBe(2);
    expect(moved.speed.in("m/s")).toBe(windAtHeight({ wind: reading.speed, from: m(10), to: m(2) }).value);
  });

  it("does not take a wind without its height", () => {
    expect(complaints(() => windReading({ speed: quantity(5, "m/s") } as never))).toEqual(["missing height"]);
  });
});
