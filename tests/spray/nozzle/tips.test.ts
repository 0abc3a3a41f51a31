import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  applicationVolume,
  type CandidateTip,
  densityConversionFactor,
  driftableFines,
  dropletClasses,
  flowAtPressure,
  nozzleSizes,
  pressureForFlow,
  pressureForSpeed,
  ratedFlow,
  solutionEquivalent,
  tipChoices,
  waterEquivalent,
} from "../../../src/spray/index.js";
import { complaints } from "../../errors.js";
import { gpa, inches, mph, psi } from "../helpers.js";

const tip = { flow: quantity(0.4, "gal/min", "water"), pressure: psi(40), lowest: psi(15), highest: psi(60) };
const water = (value: number) => quantity(value, "gal/min", "water");

describe("pressure and flow", () => {
  test("turn one another round within the rating, and rise together", () => {
    const inside = fc.double({ min: 15, max: 60, noNaN: true });
    fc.assert(
      fc.property(inside, inside, (a, b) => {
        const flow = flowAtPressure(tip, psi(a));
        expect(pressureForFlow(tip, flow).in("psi")).toBeCloseTo(a, 9);
        if (a < b * (1 - 1e-12))
          expect(flow.in("gal/min")).toBeLessThan(flowAtPressure(tip, psi(b)).in("gal/min"));
      }),
    );
  });

  test("are errors outside the rating, and take the edges", () => {
    expect(complaints(() => flowAtPressure(tip, psi(14.99)))).toEqual(["range pressure"]);
    expect(complaints(() => flowAtPressure(tip, psi(60.01)))).toEqual(["range pressure"]);
    expect(flowAtPressure(tip, quantity(psi(60).in("bar"), "bar")).in("gal/min")).toBeCloseTo(0.4899, 4);
    expect(complaints(() => pressureForFlow(tip, water(0.5)))).toEqual(["range flow"]);
    // 0.4 gal/min times the roots of 15/40 and of 60/40.
    expect(() => pressureForFlow(tip, water(0.5))).toThrow(
      /0\.244949 to 0\.4898979 gal\/min, at the pressures/,
    );
    const single = { ...tip, lowest: psi(40), highest: psi(40) };
    expect(flowAtPressure(single, psi(40)).in("gal/min")).toBe(0.4);
    expect(complaints(() => pressureForFlow(tip, quantity(0.4, "gal/min", "spray") as never))).toEqual([
      "substance/mismatch flow",
    ]);
    expect(complaints(() => flowAtPressure({ ...tip, highest: psi(10) }, psi(20)))).toEqual([
      "conflict tip.highest",
    ]);
    const { lowest: _, ...open } = tip;
    expect(complaints(() => flowAtPressure(open as never, psi(20)))).toEqual(["missing tip.lowest"]);
    expect(complaints(() => flowAtPressure(undefined as never, psi(20)))).toEqual(["missing tip"]);
    expect(complaints(() => flowAtPressure({ ...open, flow: water(0) } as never, psi(0)))).toEqual([
      "range tip.flow",
      "missing tip.lowest",
      "range pressure",
    ]);
    expect(complaints(() => pressureForFlow(open as typeof tip, water(0)))).toEqual([
      "missing tip.lowest",
      "range flow",
    ]);
    expect(
      complaints(() => flowAtPressure(tip, { value: Number.NaN, unit: "psi", of: "none" } as never)),
    ).toEqual(["not-finite pressure"]);
  });

  test("follow the speed by its square", () => {
    const range = { lowest: psi(10), highest: psi(100) };
    expect(pressureForSpeed({ pressure: psi(20), from: mph(3), to: mph(6), ...range }).in("psi")).toBeCloseTo(
      80,
      12,
    );
    expect(
      complaints(() => pressureForSpeed({ pressure: psi(40), from: mph(3), to: mph(6), ...range })),
    ).toEqual(["range to"]);
    expect(
      complaints(() => pressureForSpeed({ pressure: psi(5), from: mph(3), to: mph(6), ...range })),
    ).toEqual(["range pressure"]);
    const crossed = { lowest: psi(60), highest: psi(20) };
    expect(
      complaints(() => pressureForSpeed({ pressure: psi(40), from: mph(3), to: mph(3), ...crossed })),
    ).toEqual(["conflict highest"]);
  });
});

describe("density", () => {
  test("turns water into solution and back", () => {
    const rho = quantity(1.28, "kg/L");
    const wanted = quantity(200, "L/ha", "spray");
    const there = waterEquivalent(wanted, rho);
    expect(there.of).toBe("water");
    expect(solutionEquivalent(there, rho).in("L/ha")).toBeCloseTo(200, 10);
    expect(densityConversionFactor(quantity(8.34, "lb/gal"))).toBe(1);
    expect(densityConversionFactor(quantity(2.25, "kg/L"), quantity(1, "kg/L"))).toBeCloseTo(1.5, 14);
    expect(waterEquivalent(quantity(1, "L/min", "spray"), rho).unit).toBe("L/min");
  });

  test("refuses the wrong stuff and no density", () => {
    expect(
      complaints(() => waterEquivalent(quantity(1, "L/min", "water") as never, quantity(1, "kg/L"))),
    ).toEqual(["substance/mismatch wanted"]);
    expect(complaints(() => densityConversionFactor(quantity(0, "kg/L")))).toEqual(["range density"]);
    expect(complaints(() => densityConversionFactor(undefined as never))).toEqual(["missing density"]);
    expect(
      complaints(() => waterEquivalent(null as never, quantity(0, "kg/L"), quantity(-1, "kg/L"))),
    ).toEqual(["missing wanted", "range density", "range water"]);
    expect(
      complaints(() => solutionEquivalent(quantity(1, "L", "water") as never, quantity(1, "kg/L"))),
    ).toEqual(["unit/mismatch caught"]);
  });
});

describe("sizes and classes", () => {
  test("rate a size both ways, 1.3 % apart", () => {
    for (const { code } of nozzleSizes) {
      const [iso, us] = [ratedFlow(code), ratedFlow(code, "40 psi")];
      const carried = us.flow.in("L/min") * Math.sqrt(iso.pressure.in("kPa") / us.pressure.in("kPa"));
      expect(carried / iso.flow.in("L/min")).toBeGreaterThan(0.985);
      expect(carried / iso.flow.in("L/min")).toBeLessThan(0.99);
    }
    expect(ratedFlow("10", "40 psi").flow.in("gal/min")).toBe(1);
    // Two digits are tenths, a third one hundredths of a gal/min.
    expect(ratedFlow("015", "40 psi").flow.in("gal/min")).toBe(0.15);
    expect(ratedFlow("15", "40 psi").flow.in("gal/min")).toBe(1.5);
    expect(complaints(() => ratedFlow("4"))).toEqual(["type code"]);
    expect(complaints(() => ratedFlow("04", "2 bar" as never))).toEqual(["type rating"]);
  });

  test("go from fine to coarse, with shares where they were published", () => {
    expect(dropletClasses.map(({ code }) => code).join(" ")).toBe("XF VF F M C VC XC UC");
    expect(driftableFines("XC")).toBeUndefined();
    expect(driftableFines("XF")).toBeUndefined();
    expect(complaints(() => driftableFines("medium" as never))).toEqual(["type code"]);
  });
});

describe("tipChoices", () => {
  const kmh = (value: number) => quantity(value, "km/h");
  const bar = (value: number) => quantity(value, "bar");
  const job = {
    applicationVolume: quantity(400, "L/ha", "spray"),
    speeds: { slowest: kmh(4), usual: kmh(5), fastest: kmh(6) },
    spacing: quantity(50, "cm"),
  };
  const pressures = { lowest: bar(1.5), highest: bar(6) };

  test("says what each tip does at every speed, consistent with the volume", () => {
    const found = tipChoices({ ...job, pressures });
    expect(found.waterFlow.in("L/min")).toBeCloseTo((400 * 5 * 0.5) / 600, 9);
    for (const choice of found.choices) {
      const size = ratedFlow(choice.code);
      for (const step of choice.steps) {
        const flow = size.flow.times(Math.sqrt(step.pressure.in("bar") / 3));
        const volume = applicationVolume({ flow, speed: step.speed, width: job.spacing });
        expect(volume.in("L/ha")).toBeCloseTo(400, 7);
        expect(step.volumeAtUsualPressure.in("L/ha")).toBeCloseTo((400 * 5) / step.speed.in("km/h"), 7);
        expect(step.withinRating).toBe(
          step.pressure.in("bar") >= 1.5 * (1 - 1e-9) && step.pressure.in("bar") <= 6 * (1 + 1e-9),
        );
      }
    }
  });

  test("ranks the whole range of speeds first and tells why the rest are none", () => {
    const found = tipChoices({ ...job, pressures });
    expect(found.choices.map(({ rank }) => rank)).toEqual([1, 2, 3]);
    const shares = found.choices.map(({ ofSpeedRange }) => ofSpeedRange.in("%"));
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(found.rejected).toHaveLength(nozzleSizes.length - 3);
    expect(found.rejected.find(({ code }) => code === "01")?.reason).toContain("too small");
    expect(found.rejected.find(({ code }) => code === "20")?.reason).toContain("too large");
    expect(found.choices[0]?.steps.every(({ withinRating }) => withinRating)).toBe(true);
  });

  test("chooses by the droplets of a chart, and says so where there is none", () => {
    const droplets = { finest: "C", coarsest: "XC" } as const;
    const bare = tipChoices({ ...job, pressures, droplets });
    expect(bare.notChecked[0]).toContain("the droplet class at the usual speed of 04, 05, 03");
    expect(bare.checked).toEqual(["the pressure of each tip"]);
    const chart = (id: string, makes: "M" | "VC"): CandidateTip => ({
      id,
      code: "04",
      ...pressures,
      droplets: [
        { from: bar(1.5), makes: "VC" },
        { from: bar(3), makes },
      ],
    });
    const found = tipChoices({ ...job, tips: [chart("fine", "M"), chart("coarse", "VC")], droplets });
    expect(found.choices.map(({ id }) => id)).toEqual(["coarse"]);
    expect(found.rejected[0]?.reason).toContain("makes M");
    expect(found.choices[0]?.steps.map((step) => step.droplets)).toEqual(["VC", "VC", "VC"]);
    expect(found.notChecked.join(" ")).not.toContain("droplet class");
    expect(found.checked).toHaveLength(2);
  });

  test("ranks by droplets, and then by the middle of the rating, by hand", () => {
    // Size 04 takes 2.08, 3.26 and 4.69 bar at 4, 5 and 6 km/h; the middles by ratio of the three ratings are
    // 3.24, 3.16 and 3 bar.
    const made = (id: string, lowest: number, highest: number, makes?: "C" | "M"): CandidateTip => ({
      id,
      code: "04",
      lowest: bar(lowest),
      highest: bar(highest),
      ...(makes && {
        droplets: [
          { from: bar(1), makes: "C" },
          { from: bar(4), makes },
        ],
      }),
    });
    const order = (tips: readonly CandidateTip[], more: object = {}) =>
      tipChoices({ ...job, tips, ...more }).choices.map(({ id }) => id);
    const [a, b, c] = [made("a", 1.5, 7), made("b", 2, 5), made("c", 1.5, 6)];
    for (const tips of [
      [a, b, c],
      [c, b, a],
      [b, a, c],
    ])
      expect(order(tips)).toEqual(["a", "b", "c"]);
    // At 6 km/h the first makes M, which is too fine: it fits at two speeds, the other at three.
    const droplets = { finest: "C", coarsest: "XC" } as const;
    const [fine, coarse] = [made("a", 1.5, 7, "M"), made("b", 2, 5, "C")];
    expect(order([fine, coarse], { droplets })).toEqual(["b", "a"]);
    expect(order([coarse, fine], { droplets })).toEqual(["b", "a"]);
    // The whole range of speeds comes before both: this one ends at 4.5 bar.
    expect(order([made("d", 2.4, 4.5, "C"), fine], { droplets })).toEqual(["a", "d"]);
  });

  test("says how much of the speeds a tip holds, by hand", () => {
    // 400 L/ha on 50 cm with 1.6 L/min at 3 bar: 4.8 km/h times the root of the pressure over 3 bar.
    const held = (lowest: number, highest: number): number | undefined =>
      tipChoices({
        ...job,
        tips: [{ code: "04", lowest: bar(lowest), highest: bar(highest) }],
      }).choices[0]?.ofSpeedRange.in("%");
    expect(held(2.4, 4.5)).toBeCloseTo((100 * 4.8 * (Math.sqrt(1.5) - Math.sqrt(0.8))) / 2, 9);
    expect(held(1, 4.5)).toBeCloseTo((100 * (4.8 * Math.sqrt(1.5) - 4)) / 2, 9);
    expect(held(2.4, 9)).toBeCloseTo((100 * (6 - 4.8 * Math.sqrt(0.8))) / 2, 9);
    expect(held(1, 9)).toBe(100);
  });

  test("takes one single class", () => {
    const droplets = [{ from: bar(1.5), makes: "C" as const }];
    const found = tipChoices({
      ...job,
      tips: [{ code: "04", ...pressures, droplets }],
      droplets: { finest: "C", coarsest: "C" },
    });
    expect(found.choices.map(({ code }) => code)).toEqual(["04"]);
  });

  test("says that a chart does not reach down to the pressure", () => {
    // 400 L/ha at 5 km/h and 50 cm is 1.667 L/min: a tip of 1.6 L/min at 3 bar takes 3.26 bar.
    const chart = (id: string, from: number): CandidateTip => ({
      id,
      code: "04",
      ...pressures,
      droplets: [{ from: bar(from), makes: "C" }],
    });
    const droplets = { finest: "C", coarsest: "XC" } as const;
    const found = tipChoices({ ...job, tips: [chart("low", 3), chart("high", 3.3)], droplets });
    expect(found.choices.map(({ id, steps }) => [id, steps[1]?.dropletsFit])).toEqual([
      ["low", true],
      ["high", undefined],
    ]);
    expect(found.notChecked[0]).toBe(
      "the droplet class at the usual speed of high: no chart has it at that pressure",
    );
    const alone = tipChoices({ ...job, tips: [chart("high", 3.3)], droplets });
    expect(alone.checked).toEqual(["the pressure of each tip"]);
  });

  test("asks more of a tip for a heavy solution", () => {
    const heavy = tipChoices({ ...job, pressures, density: quantity(1.28, "kg/L") });
    const light = tipChoices({ ...job, pressures });
    expect(heavy.waterFlow.value / light.waterFlow.value).toBeCloseTo(
      densityConversionFactor(quantity(1.28, "kg/L")),
      12,
    );
    // At one pressure a solution 2.25 times as heavy flows two thirds as fast: it takes 2.25 times the pressure.
    const tips = [{ code: "04", lowest: bar(1), highest: bar(20) }];
    const at = (weight: number) =>
      tipChoices({ ...job, tips, density: quantity(weight, "lb/gal") }).choices[0]?.pressure.in("bar");
    expect(at(2.25 * 8.34)).toBeCloseTo(2.25 * (at(8.34) as number), 9);
    expect(at(8.34)).toBeCloseTo(3 * ((400 * 5 * 0.5) / 600 / 1.6) ** 2, 9);
  });

  test("finds the same tips in US units", () => {
    const us = tipChoices({
      applicationVolume: quantity(job.applicationVolume.in("gal/acre"), "gal/acre", "spray"),
      speeds: {
        slowest: mph(kmh(4).in("mi/h")),
        usual: mph(kmh(5).in("mi/h")),
        fastest: mph(kmh(6).in("mi/h")),
      },
      spacing: inches(job.spacing.in("in")),
      pressures: { lowest: psi(bar(1.5).in("psi")), highest: psi(bar(6).in("psi")) },
    });
    expect(us.choices.map(({ code }) => code)).toEqual(
      tipChoices({ ...job, pressures }).choices.map(({ code }) => code),
    );
    expect(us.choices[0]?.pressure.unit).toBe("psi");
  });

  test("takes one single speed, and none at all for a job beyond every size", () => {
    const one = { slowest: kmh(5), usual: kmh(5), fastest: kmh(5) };
    expect(
      tipChoices({ ...job, speeds: one, pressures }).choices.map(({ ofSpeedRange }) => ofSpeedRange.in("%")),
    ).toEqual([100, 100, 100]);
    expect(tipChoices({ ...job, applicationVolume: gpa(100_000), pressures }).choices).toEqual([]);
  });

  test("refuses contradictions", () => {
    expect(complaints(() => tipChoices(job))).toEqual(["missing tips"]);
    expect(complaints(() => tipChoices({ ...job, pressures, tips: [] }))).toEqual(["conflict tips"]);
    expect(complaints(() => tipChoices({ ...job, tips: [] }))).toEqual(["missing tips"]);
    const same = { code: "04", ...pressures };
    expect(complaints(() => tipChoices({ ...job, tips: [same, { ...same, code: "4" }] }))).toEqual([
      "type tips[1].code",
    ]);
    expect(complaints(() => tipChoices({ ...job, tips: [same, same] }))).toEqual(["duplicate tips"]);
    const speeds = { slowest: kmh(6), usual: kmh(5), fastest: kmh(4) };
    expect(complaints(() => tipChoices({ ...job, speeds, pressures }))).toEqual([
      "conflict speeds.slowest",
      "conflict speeds.fastest",
    ]);
    // biome-ignore lint/suspicious/noSparseArray: a list with a hole
    const holed = [, same, { code: "4", lowest: bar(0), highest: bar(1) }, { ...same, id: 3 }];
    expect(complaints(() => tipChoices({ ...job, tips: holed as never }))).toEqual([
      "missing tips[0]",
      "type tips[2].code",
      "range tips[2].lowest",
      "type tips[3].id",
    ]);
    // biome-ignore lint/suspicious/noSparseArray: a chart with a hole
    const gap = [, { from: bar(0), makes: "fine" }] as never;
    expect(complaints(() => tipChoices({ ...job, tips: [{ ...same, droplets: gap }] }))).toEqual([
      "missing tips[0].droplets[0]",
      "range tips[0].droplets[1].from",
      "type tips[0].droplets[1].makes",
    ]);
    const level = [2, 2].map((from) => ({ from: bar(from), makes: "M" as const }));
    expect(complaints(() => tipChoices({ ...job, tips: [{ ...same, droplets: level }] }))).toEqual([
      "conflict tips[0].droplets[1].from",
    ]);
    expect(complaints(() => tipChoices({ ...job, tips: [{ ...same, droplets: [] }] }))).toEqual([
      "missing tips[0].droplets",
    ]);
    expect(complaints(() => tipChoices({ ...job, pressures: 3, droplets: 3 } as never))).toEqual([
      "type pressures",
      "type droplets",
    ]);
    const droplets = { finest: "VC", coarsest: "M" } as const;
    expect(complaints(() => tipChoices({ ...job, pressures, droplets }))).toEqual([
      "conflict droplets.coarsest",
    ]);
    expect(complaints(() => tipChoices({ ...job, pressures: { lowest: bar(3), highest: bar(2) } }))).toEqual([
      "conflict pressures.highest",
    ]);
    const nothing = [{ ...same, droplets: [null] }] as never;
    expect(complaints(() => tipChoices({ ...job, tips: nothing }))).toEqual(["type tips[0].droplets[0]"]);
    const chart = [
      { from: bar(3), makes: "M" as const },
      { from: bar(2), makes: "C" as const },
    ];
    expect(complaints(() => tipChoices({ ...job, tips: [{ ...same, droplets: chart }] }))).toEqual([
      "conflict tips[0].droplets[1].from",
    ]);
  });

  test("gives records that JSON carries", () => {
    const found = tipChoices({ ...job, pressures });
    expect(JSON.parse(JSON.stringify(found))).toMatchObject({ type: "tip-choices", version: 1 });
    const back = JSON.parse(JSON.stringify({ ...job, pressures })) as Parameters<typeof tipChoices>[0];
    expect(JSON.stringify(tipChoices(back))).toBe(JSON.stringify(found));
  });
});
