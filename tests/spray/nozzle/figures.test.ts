import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  nozzleCheck,
  nozzleWear,
  pulseTips,
  pulseWidth,
  ratedFlow,
  readTip,
  tipChoices,
} from "../../../src/spray/index.js";
import { gpa, gpm, inches, mph, percent, psi, seconds } from "../helpers.js";

// Worked by hand. What lies at a limit is within it; a thousand-millionth past it is, too, for floating point.

const spray = (value: number) => quantity(value, "gal", "spray");
const water = (value: number) => quantity(value, "gal", "water");

describe("a boom", () => {
  const caught = (catches: readonly number[], rated?: number) =>
    nozzleCheck({
      catches: catches.map(spray),
      time: seconds(60),
      divisor: "n",
      ...(rated !== undefined && { rated: gpm(rated) }),
    });
  test("is told what was held against what", () => {
    expect(caught([1, 1])).toMatchObject({
      type: "nozzle-check",
      version: 1,
      checked: ["each nozzle against the mean"],
      notChecked: [
        "wear of the whole boom: no rated flow was given",
        "the shape of the fans, which a catch does not show",
      ],
    });
    expect(caught([1, 1], 1)).toMatchObject({
      checked: ["each nozzle against the mean", "each nozzle against the rated flow"],
      notChecked: ["the shape of the fans, which a catch does not show"],
    });
  });
  test("findings carry their figures", () => {
    const params = (catches: readonly number[], rated?: number) =>
      caught(catches, rated).findings.map(({ code, params: given, source }) => [code, given, source]);
    expect(params([1, 1, 1, 0])).toEqual([
      ["nozzle/check-again", { nozzles: 1 }, undefined],
      ["nozzle/clean-first", { nozzles: ["1", "2", "3"], low: ["4"] }, "common practice, no source"],
    ]);
    const [, worn] = params([1.25, 1.25], 1);
    expect(worn).toEqual(["nozzle/boom-worn", { percent: 25 }, undefined]);
    const [, low] = params([0.75, 0.75], 1);
    expect(low).toEqual(["nozzle/boom-low", { percent: -25 }, "common practice, no source"]);
  });
  test("two low nozzles are named together", () => {
    const text = caught([1, 1, 1, 1, 0, 0]).findings.find(({ code }) => code === "nozzle/clean-first")?.text;
    expect(text).toContain("(nozzles 5 and 6); without them nozzles 1, 2, 3 and 4 would");
  });
  test("a rated flow is of what the catches are of", () => {
    const catches = [water(1), water(1)];
    expect(
      nozzleCheck({ catches, time: seconds(60), divisor: "n", rated: quantity(1, "gal/min", "water") })
        .findings,
    ).toEqual([]);
  });
  test("one nozzle", () => {
    expect(
      nozzleWear({ caught: water(1.1), time: seconds(60), rated: quantity(1, "gal/min", "water") }),
    ).toMatchObject({
      type: "nozzle-wear",
      version: 1,
      verdict: "keep",
      checked: ["the flow against the rated flow"],
      notChecked: ["the shape of the fan, which a catch does not show", "the pressure at the nozzle"],
    });
  });
});

describe("pulses", () => {
  /** 59.4 gal/acre at 1 mi/h on 1 in takes a hundredth of a gal/min. */
  const open = (share: number, duty?: readonly [number, number]) =>
    pulseWidth({
      full: gpm(1),
      applicationVolume: gpa(59.4 * share),
      speed: mph(1),
      width: inches(1),
      ...(duty && { duty: { least: percent(duty[0]), most: percent(duty[1]) } }),
    });
  test("the usual duty ends at 60 and 80 %, the system's at its own", () => {
    expect([60, 80, 59.9, 80.1].map((share) => open(share).findings.length)).toEqual([0, 0, 1, 1]);
    expect([20, 90, 19.9, 90.1].map((share) => open(share, [20, 90]).withinDuty)).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(open(50, [50, 50]).withinDuty).toBe(true);
  });
  test("findings carry their figures", () => {
    const [usual] = open(50).findings;
    expect(usual).toMatchObject({
      severity: "note",
      source: {
        title: "How to Size a Nozzle for Pulse Width Modulation (PWM)",
        publisher: "Ontario Ministry of Agriculture (sprayers101)",
        url: "http://sprayers101.com/pwm-nozzle-sizing/",
      },
    });
    expect(usual?.params.duty).toBeCloseTo(50, 9);
    const [small] = open(95, [20, 90]).findings;
    expect([small?.severity, small?.params.least, small?.params.most]).toEqual(["warning", 20, 90]);
    expect(small?.params.duty).toBeCloseTo(95, 9);
  });
  test("of tips, the duty that is asked for", () => {
    const tips = (duty?: { least: ReturnType<typeof percent>; most: ReturnType<typeof percent> }) =>
      pulseTips({
        sizes: ["02", "04", "08"],
        pressure: psi(40),
        applicationVolume: gpa(59.4 * 30),
        speed: mph(1),
        width: inches(1),
        ...(duty && { duty }),
      }).map(({ code, duty: share }) => `${code} ${share.in("%").toFixed(1)}`);
    // 0.3 gal/min of 0.4 and of 0.8; 0.2 would need more than all of the time
    expect(tips()).toEqual(["04 75.0", "08 37.5"]);
    expect(tips({ least: percent(50), most: percent(100) })).toEqual(["04 75.0"]);
  });
});

describe("tips for a job", () => {
  const of = (more: object) =>
    tipChoices({
      applicationVolume: gpa(20),
      speeds: { slowest: mph(4), usual: mph(5), fastest: mph(6) },
      spacing: inches(20),
      pressures: { lowest: psi(15), highest: psi(60) },
      ...more,
    } as Parameters<typeof tipChoices>[0]);
  test("say what was looked at", () => {
    expect(of({})).toMatchObject({
      type: "tip-choices",
      version: 1,
      checked: ["the pressure of each tip"],
      notChecked: [
        "droplet classes: none were asked for",
        "fan angle, boom height and what the label requires",
      ],
    });
    // at 4, 5 and 6 mi/h a size 03 is at 32, 50 and 73 psi
    const chart = [
      { from: psi(15), makes: "C" },
      { from: psi(52), makes: "M" },
    ];
    const tips = [{ code: "03", lowest: psi(15), highest: psi(60), droplets: chart }];
    const asked = of({
      pressures: undefined,
      tips,
      droplets: { finest: "C", coarsest: "VC" },
      rating: "40 psi",
    });
    expect(asked.checked).toEqual([
      "the pressure of each tip",
      "the droplet class at the usual speed of the tips whose chart has it",
    ]);
    expect(asked.notChecked).toEqual(["fan angle, boom height and what the label requires"]);
    const [choice] = asked.choices;
    // 20 gal/acre at 5 mi/h on 20 in are 20 x 5 x 20 / 5940 gal/min
    expect(choice?.pressure.in("psi")).toBeCloseTo(40 * (2000 / 5940 / 0.3) ** 2, 6);
    expect(choice?.steps.map(({ droplets }) => droplets)).toEqual(["C", "C", undefined]);
  });
  test("one speed or one pressure in two units is one, whatever the last digit of the conversion", () => {
    // 5.43 m/s is 1068.8976... ft/min: the conversion falls a last digit below
    const once = quantity(5.43, "m/s");
    const other = quantity(1068.8976377952754, "ft/min");
    for (const speeds of [
      { slowest: once, usual: other, fastest: once },
      { slowest: other, usual: once, fastest: other },
    ]) {
      const found = of({ speeds });
      expect(found.choices.length).toBeGreaterThan(0);
      expect(found.choices.map(({ ofSpeedRange }) => ofSpeedRange.in("%"))).toEqual(
        found.choices.map(() => 100),
      );
    }
    // 0.66031... bar is 9.577 psi
    const bar = quantity(0.6603109059667338, "bar");
    for (const [lowest, highest] of [
      [psi(9.577), bar],
      [bar, psi(9.577)],
    ])
      expect(() => of({ pressures: { lowest, highest } })).not.toThrow();
    expect(() => of({ speeds: { slowest: mph(5.001), usual: mph(5), fastest: mph(6) } })).toThrow(
      "speeds.slowest",
    );
    expect(() => of({ pressures: { lowest: psi(15.001), highest: psi(15) } })).toThrow("pressures.highest");
  });
  test("a class that is too fine or too coarse is a reason", () => {
    const told = (makes: string) =>
      of({
        pressures: undefined,
        tips: [{ code: "03", lowest: psi(15), highest: psi(60), droplets: [{ from: psi(15), makes }] }],
        droplets: { finest: "M", coarsest: "VC" },
        rating: "40 psi",
      }).rejected.map(({ reason }) => reason);
    // 20 gal/acre at 5 mi/h on 20 in take a size 03 to 50.4 psi
    expect([told("F"), told("M"), told("VC"), told("XC")]).toEqual([
      ["at 50.4 psi it makes F, outside M to VC"],
      [],
      [],
      ["at 50.4 psi it makes XC, outside M to VC"],
    ]);
  });
  test("one single speed is held or not", () => {
    const still = { slowest: mph(5), usual: mph(5), fastest: mph(5) };
    const { choices, rejected } = of({ speeds: still });
    for (const { ofSpeedRange } of choices) expect(ofSpeedRange.in("%")).toBe(100);
    expect(choices.length).toBeGreaterThan(0);
    expect(rejected.some(({ reason }) => reason.startsWith("too small: it would need "))).toBe(true);
    expect(rejected.some(({ reason }) => reason.startsWith("too large: it would need "))).toBe(true);
  });
});

describe("stamps", () => {
  test.each([
    ["11004", "04", 110, 0.4, "red"],
    ["8002", "02", 80, 0.2, "yellow"],
    ["110 - 015", "015", 110, 0.15, "green"],
    ["04", "04", undefined, 0.4, "red"],
    ["0067", "0067", undefined, 0.067, undefined],
    ["15", "15", undefined, 1.5, "light green"],
    ["6510", "10", 65, 1, "light blue"],
  ] as const)("%s", (stamp, code, angle, gallons, color) => {
    const tip = readTip(stamp);
    expect([
      tip.type,
      tip.version,
      tip.code,
      tip.angle?.in("deg"),
      tip.flow.in("gal/min"),
      tip.pressure.toString(),
    ]).toEqual(["stamped-tip", 1, code, angle, gallons, "40 psi"]);
    if (color === undefined) expect(tip.color).toBe(undefined);
    else expect(tip.color).toBe(ratedFlow(code, "40 psi").color);
  });
  test("of up to twenty letters", () => {
    expect(readTip(`04${" ".repeat(18)}`).code).toBe("04");
    expect(() => readTip(`04${" ".repeat(19)}`)).toThrow(/stamped on a tip/);
  });
});
