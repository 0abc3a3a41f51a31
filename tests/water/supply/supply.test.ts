import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  frictionLoss,
  measuredFlow,
  multipleOutletFactor,
  pipeFlow,
  pipeSmoothness,
  pipeVelocity,
  pressureHead,
  pressureOfHeight,
  pumpPower,
  supplyPressure,
} from "../../../src/water/index.js";
import { complaints } from "../../errors.js";
import { close, gpm, inch, untyped } from "../helpers.js";

const psi = (value: number) => quantity(value, "psi");
const ft = (value: number) => quantity(value, "ft");
const size = fc.double({ min: 0.1, max: 100, noNaN: true });

describe("flow and velocity", () => {
  test("there and back, in both systems", () => {
    fc.assert(
      fc.property(size, size, (q, d) => {
        const velocity = pipeVelocity({ flow: gpm(q), diameter: inch(d) }).value;
        close(pipeFlow({ velocity, diameter: inch(d) }).in("gal/min"), q, 1e-12);
        const metric = pipeVelocity({ flow: gpm(q), diameter: quantity(d * 25.4, "mm") }).value;
        close(metric.in("ft/s"), velocity.in("ft/s"), 1e-12);
        // the constant of the handbooks, 0.408 or 0.4085
        close(velocity.in("ft/s"), (0.4085 * q) / (d * d), 1e-4);
        close(pipeFlow({ velocity, diameter: quantity(d * 2.54, "cm") }).in("gal/min"), q, 1e-12);
      }),
    );
    expect(measuredFlow({ volume: quantity(10, "L", "water"), time: quantity(30, "s") }).in("L/min")).toBe(
      20,
    );
    expect(complaints(untyped(measuredFlow, { volume: quantity(10, "L"), time: quantity(0, "s") }))).toEqual([
      "substance/mismatch volume",
      "range time",
    ]);
  });
  test("fast water is told", () => {
    const codes = (q: number) =>
      pipeVelocity({ flow: gpm(q), diameter: inch(1) }).findings.map(({ code }) => code);
    expect(codes(12)).toEqual([]);
    expect(codes(13)).toEqual(["water/fast-in-pipe"]);
  });
});

describe("friction", () => {
  test("by hand in the two forms of the handbooks", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.double({ min: 60, max: 155, noNaN: true }),
        (q, d, c) => {
          const loss = frictionLoss({ flow: gpm(q), diameter: inch(d), length: ft(100), smoothness: c }).in(
            "psi",
          );
          // psi: 4.52 Q^1.85 / (C^1.85 d^4.87) a foot; head in feet: 0.2083 (100/C)^1.852 Q^1.852 / d^4.8655 a hundred
          close(loss, (452 * q ** 1.85) / (c ** 1.85 * d ** 4.87), 0.03);
          close(loss, (0.4335 * 0.2083 * (100 / c) ** 1.852 * q ** 1.852) / d ** 4.8655, 0.03);
        },
      ),
    );
  });
  test("twice the length, twice the loss; twice the flow, 2^1.852 times; the units change nothing", () => {
    const run = { flow: gpm(10), diameter: inch(1), length: ft(100), smoothness: 150 };
    const loss = frictionLoss(run).in("psi");
    close(frictionLoss({ ...run, length: ft(200) }).in("psi"), 2 * loss);
    close(frictionLoss({ ...run, flow: gpm(20) }).in("psi"), 2 ** 1.852 * loss, 1e-12);
    const metric = frictionLoss({
      flow: quantity(10 * 3.785411784, "L/min", "water"),
      diameter: quantity(25.4, "mm"),
      length: quantity(30.48, "m"),
      smoothness: 150,
    });
    expect(metric.unit).toBe("kPa");
    close(metric.in("psi"), loss, 1e-9);
    expect(
      frictionLoss({ ...run, smoothness: pipeSmoothness({ material: "galvanized steel" }) }).in("psi"),
    ).toBeGreaterThan(loss);
    expect(complaints(untyped(frictionLoss, { ...run, smoothness: 1.5, diameter: inch(0) }))).toEqual([
      "range diameter",
      "range smoothness",
    ]);
    expect(complaints(untyped(pipeSmoothness, { material: "lead" }))).toEqual(["type material"]);
  });
  test("a line with outlets, summed stretch by stretch", () => {
    const misses: readonly (readonly [number, number])[] = [
      [1, 0.005],
      [2, 0.0006],
      [3, 0.0002],
      [10, 0.0002],
      [400, 0.0002],
    ];
    for (const [n, miss] of misses) {
      // the flow falls by one part at each outlet: stretch k of n carries (n - k + 1) / n
      let sum = 0;
      for (let k = 1; k <= n; k++) sum += ((n - k + 1) / n) ** 1.852 / n;
      expect(Math.abs(multipleOutletFactor({ outlets: n }) - sum), `${n}`).toBeLessThan(miss);
    }
    expect(complaints(() => multipleOutletFactor({ outlets: 0 }))).toEqual(["range outlets"]);
  });
});

describe("pressure", () => {
  test("2.307 ft to the psi", () => {
    close(pressureOfHeight({ height: ft(2.3067) }).in("psi"), 1, 1e-4);
    expect(pressureOfHeight({ height: ft(0) }).in("psi")).toBe(0);
  });
  test("what is left is what was there, less the losses, and the height", () => {
    fc.assert(
      fc.property(
        fc.array(size, { maxLength: 8 }),
        size,
        fc.double({ min: -50, max: 50, noNaN: true }),
        (list, supply, drop) => {
          const head = supplyPressure({ supply: psi(supply), losses: list.map(psi), drop: ft(drop) });
          const height = pressureOfHeight({ height: ft(drop) }).in("psi");
          expect(head.atHead.in("psi")).toBeCloseTo(supply - list.reduce((a, b) => a + b, 0) + height, 9);
          expect(head.fromHeight.in("psi")).toBeCloseTo(height, 9);
        },
      ),
    );
    const low = supplyPressure({ supply: psi(40), losses: [psi(15)], needed: psi(30) });
    expect(low.findings.map(({ code }) => code)).toEqual(["water/pressure-too-low"]);
    expect(supplyPressure({ supply: psi(45), losses: [psi(15)], needed: psi(30) }).findings).toEqual([]);
    // 45 less 15.01 is 29.99, and not "30.0 where it works at 30.0"
    const hair = supplyPressure({ supply: psi(45), losses: [psi(15.01)], needed: psi(30) });
    expect(hair.findings[0]?.text).toMatch(/^29\.99 psi is left at the head, which works at 30\.00:/);
    // Nothing is left: told without what the head needs, too.
    const dry = supplyPressure({ supply: psi(45), losses: [psi(40), psi(5)] });
    expect(dry.findings.map(({ code, params }) => [code, params.left, params.needed])).toEqual([
      ["water/pressure-too-low", 0, 0],
    ]);
    expect(dry.findings[0]?.text).toMatch(/no water comes out at the head/);
    expect(complaints(untyped(supplyPressure, { supply: psi(0), losses: [psi(3), psi(-1)] }))).toEqual([
      "range supply",
      "range losses[1]",
    ]);
    expect(complaints(untyped(supplyPressure, { supply: psi(3) }))).toEqual(["missing losses"]);
  });
});

describe("head and power", () => {
  test("a head and its pressure, there and back, in both systems", () => {
    fc.assert(
      fc.property(size, (p) => {
        close(pressureOfHeight({ height: pressureHead({ pressure: psi(p) }) }).in("psi"), p, 1e-12);
        close(pressureHead({ pressure: quantity(p, "bar") }).in("m"), (p * 100) / 9.80665, 1e-12);
      }),
    );
    expect(pressureHead({ pressure: psi(1) }).unit).toBe("ft");
    expect(pressureHead({ pressure: quantity(1, "bar") }).unit).toBe("m");
  });
  test("power grows with flow and head, and what the pump wastes comes on top", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 2, max: 100, noNaN: true }), (q, h, e) => {
        const pump = (flow: number, head: number) =>
          pumpPower({ flow: gpm(flow), head: ft(head), efficiency: quantity(e, "%") });
        const one = pump(q, h);
        close(pump(2 * q, h).brakeHorsepower, 2 * one.brakeHorsepower, 1e-12);
        close(pump(q, 2 * h).brakeHorsepower, 2 * one.brakeHorsepower, 1e-12);
        close(one.brakeHorsepower * e, one.waterHorsepower * 100, 1e-12);
        close(one.brakeKilowatts / one.brakeHorsepower, 0.7457, 1e-5);
        // the constant of the handbooks, for 8.33 lb to the gallon
        close(one.waterHorsepower, (q * h) / 3960, 1.5e-3);
        const metric = pumpPower({
          flow: quantity(gpm(q).in("L/min"), "L/min", "water"),
          head: quantity(ft(h).in("m"), "m"),
          efficiency: quantity(e / 100, "1"),
        });
        close(metric.brakeHorsepower, one.brakeHorsepower, 1e-12);
      }),
    );
  });
});
