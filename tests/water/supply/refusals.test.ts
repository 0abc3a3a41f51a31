import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { complaint, problemsOf } from "../../errors.js";
import { tellsEach } from "../../tells.js";
import { gpm, inch } from "../helpers.js";

type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const psi = (value: number) => quantity(value, "psi");
const ft = (value: number) => quantity(value, "ft");

describe("what is no record is told with what it should be", () => {
  tellsEach(
    (
      [
        ["pipeSmoothness", "material"],
        ["frictionLoss", "flow, diameter, length and smoothness"],
        ["multipleOutletFactor", "outlets"],
        ["measuredFlow", "volume and time"],
        ["pipeVelocity", "flow and diameter"],
        ["pipeFlow", "velocity and diameter"],
        ["pressureOfHeight", "height"],
        ["pressureHead", "pressure"],
        ["pumpPower", "flow, head and efficiency"],
        ["supplyPressure", "supply and losses"],
      ] as const
    ).map(([name, fields]) => [() => call[name](3), `type input: expected a record with ${fields}, got 3`]),
  );
});

describe("the power of a pump", () => {
  const pump = { flow: gpm(60), head: ft(150), efficiency: quantity(60, "%") };
  tellsEach([
    [
      () => call.pumpPower({ ...pump, head: psi(65) }),
      "unit/mismatch head: expected a head: pressureHead({ pressure }) makes one of a pressure, got 65 psi",
    ],
    [
      () => call.pumpPower({ ...pump, head: { value: 4, unit: "bar" } }),
      expect.stringMatching(/^unit\/mismatch head: expected a head: pressureHead/) as unknown as string,
    ],
    [
      () => call.pumpPower({ ...pump, efficiency: 0.6 }),
      'type efficiency: expected a share, such as quantity(40, "%") or quantity(0.4, "1"), got 0.6',
    ],
    [
      () => call.pumpPower({ flow: pump.flow, head: pump.head }),
      'missing efficiency: expected a share, such as quantity(70, "%"), got undefined',
    ],
    [
      () => call.pumpPower({ ...pump, efficiency: quantity(101, "%") }),
      "range efficiency: expected 100 or less, got 101",
    ],
  ]);

  it("offers percent where a share was typed as one", () => {
    const [told] = problemsOf(() => call.pumpPower({ ...pump, efficiency: quantity(0.6, "%") }));
    expect([told?.code, told?.path, told?.suggestion]).toEqual(["range", "efficiency", "60 %"]);
  });
  it("takes no flow of spray, and no pump of no efficiency", () => {
    expect(complaint(() => call.pumpPower({ ...pump, flow: quantity(60, "gal/min", "spray") }))).toMatch(
      /^substance\/mismatch flow/,
    );
    expect(complaint(() => call.pumpPower({ ...pump, efficiency: quantity(0, "%") }))).toMatch(
      /^range efficiency/,
    );
  });
});

describe("pipes and pressure", () => {
  const pipe = { flow: gpm(10), diameter: inch(1), length: ft(100) };
  tellsEach([
    [
      () => call.frictionLoss(pipe),
      "missing smoothness: expected the smoothness of the pipe, such as 150; pipeSmoothness({ material }) gives it, got undefined",
    ],
    [() => call.frictionLoss({ ...pipe, smoothness: 49 }), "range smoothness: expected 50 or more, got 49"],
    [
      () => call.frictionLoss({ ...pipe, smoothness: 161 }),
      "range smoothness: expected 160 or less, got 161",
    ],
    [() => call.multipleOutletFactor({ outlets: 0 }), "range outlets: expected 1 or more, got 0"],
    [
      () => call.multipleOutletFactor({ outlets: 10_001 }),
      "range outlets: expected 10000 or less, got 10001",
    ],
    [
      () => call.supplyPressure({ supply: psi(50) }),
      "missing losses: expected a list of losses; an empty one where there are none, got undefined",
    ],
    [
      () => call.supplyPressure({ supply: psi(50), losses: psi(3) }),
      "type losses: expected a list of losses; an empty one where there are none, got 3 psi",
    ],
    [
      () => call.supplyPressure({ supply: psi(50), losses: Array(201).fill(psi(0.1)) }),
      "range losses: expected 200 losses or fewer, got a list of 201",
    ],
    [
      () => call.supplyPressure({ supply: psi(50), losses: [psi(3), 4] }),
      expect.stringMatching(/^type losses\[1\]: expected a pressure/) as unknown as string,
    ],
  ]);

  it("200 losses are read, and pressure that is just enough makes no remark", () => {
    const many = { supply: psi(50), losses: Array(200).fill(psi(0.1)) };
    expect(water.supplyPressure({ ...many, needed: psi(30) }).findings).toEqual([]);
    const [low] = water.supplyPressure({ ...many, needed: psi(31) }).findings;
    expect(low).toMatchObject({
      path: "needed",
      params: { left: expect.closeTo(30, 9), needed: 31, unit: "psi" },
    });
  });

  it("five feet a second is not too fast, and a faster one stands in the remark", () => {
    const speed = (value: number) => {
      const flow = water.pipeFlow({ velocity: quantity(value, "ft/s"), diameter: inch(1) });
      return water.pipeVelocity({ flow, diameter: inch(1) }).findings;
    };
    expect(speed(5)).toEqual([]);
    expect(speed(6)[0]).toMatchObject({
      path: "flow",
      params: { feetPerSecond: expect.closeTo(6, 9), usual: 5 },
      source: "common practice, no source",
    });
  });

  it("the ends of smoothness and of outlets are taken", () => {
    for (const smoothness of [50, 160])
      expect(complaint(() => call.frictionLoss({ ...pipe, smoothness }))).toBe("nothing thrown");
    for (const outlets of [1, 10_000])
      expect(complaint(() => call.multipleOutletFactor({ outlets }))).toBe("nothing thrown");
  });
});
