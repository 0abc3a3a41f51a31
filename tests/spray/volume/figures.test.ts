import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  acidEquivalentOf,
  activeInProduct,
  applicationVolume,
  asFinishedSpray,
  bandFieldRate,
  bandTreatedArea,
  bandTreatedRate,
  fanWidth,
  flowAtPressure,
  pressureForSpeed,
  productForActive,
} from "../../../src/spray/index.js";
import { gpa, gpm, inches, mph, psi } from "../helpers.js";

// Worked by hand. What lies at a limit is within it; a thousand-millionth past it is, too, for floating point.

describe("limits", () => {
  const tip = { flow: gpm(0.4), pressure: psi(40), lowest: psi(10), highest: psi(90) };
  test("a tip is rated to its pressures, both of them counted", () => {
    // half and one and a half times the flow at a quarter and two and a quarter times the pressure
    expect(flowAtPressure(tip, psi(10)).in("gal/min")).toBeCloseTo(0.2, 12);
    expect(flowAtPressure(tip, psi(90)).in("gal/min")).toBeCloseTo(0.6, 12);
    const kPa = (value: number) => quantity(value, "kPa");
    const metric = { ...tip, pressure: kPa(300), lowest: kPa(100), highest: kPa(400) };
    const goes = (pressure: number): boolean => {
      try {
        flowAtPressure(metric, kPa(pressure));
        return true;
      } catch {
        return false;
      }
    };
    expect([100, 100 * (1 - 1e-9), 100 * (1 - 2e-9)].map(goes)).toEqual([true, true, false]);
    expect([400, 400 * (1 + 1e-9), 400 * (1 + 2e-9)].map(goes)).toEqual([true, true, false]);
  });
  test("a tip of one pressure is one", () => {
    expect(flowAtPressure({ ...tip, lowest: psi(40), highest: psi(40) }, psi(40)).in("gal/min")).toBe(0.4);
  });
  test("twice the speed takes four times the pressure", () => {
    const to = (speed: number) =>
      pressureForSpeed({ pressure: psi(20), from: mph(4), to: mph(speed), lowest: psi(5), highest: psi(80) });
    expect(to(8).in("psi")).toBeCloseTo(80, 10);
    expect(to(2).in("psi")).toBeCloseTo(5, 10);
  });
  test("a band may be as wide as the row, a share all of it", () => {
    const whole = { band: inches(36), row: quantity(3, "ft") };
    expect(bandFieldRate({ ...whole, rate: gpa(20) }).in("gal/acre")).toBeCloseTo(20, 12);
    expect(bandTreatedRate({ ...whole, rate: gpa(20) }).in("gal/acre")).toBeCloseTo(20, 12);
    expect(
      bandTreatedRate({ band: quantity(100 * (1 + 1e-9), "cm"), row: quantity(100, "cm"), rate: gpa(20) })
        .value,
    ).toBeCloseTo(20, 6);
    expect(bandTreatedArea({ band: inches(12), row: inches(36), area: quantity(3, "acre") }).toString()).toBe(
      "1 acre of treated",
    );
    expect(acidEquivalentOf(quantity(1, "lb", "ai"), quantity(100, "% w/w", "ae/ai")).in("lb")).toBe(1);
    const pure = quantity(100, "% w/w", "ai/product");
    expect(productForActive({ active: quantity(1, "lb", "ai"), content: pure }).in("lb")).toBe(1);
    expect(
      activeInProduct({
        product: quantity(3, "lb", "product:a"),
        content: quantity(50, "% w/w", "ai:b/product:a"),
      }).of,
    ).toBe("ai:b");
    expect(
      productForActive({
        active: quantity(2, "kg", "ai:dicamba"),
        content: quantity(480, "g/L", "ai:dicamba/product:long name"),
      }).in("L"),
    ).toBeCloseTo(25 / 6, 12);
  });
  test("a fan up to half a turn", () => {
    // at 90 degrees as wide as twice its height
    expect(fanWidth({ angle: quantity(90, "deg"), height: inches(20) }).in("in")).toBeCloseTo(40, 12);
    expect(fanWidth({ angle: quantity(179, "deg"), height: inches(1) }).in("in")).toBeCloseTo(229.177, 3);
  });
});

describe("carriers", () => {
  test.each(["spray", "water", "product", "product:soap"] as const)("%s", (of) => {
    const found = applicationVolume({ flow: quantity(1, "gal/min", of), speed: mph(1), width: inches(5940) });
    expect(found.of).toBe(of);
    expect(found.in("gal/acre")).toBeCloseTo(1, 10);
  });
  test("ground of a plan is a field", () => {
    const area = quantity(3, "acre", "plan");
    expect(bandTreatedArea({ band: inches(12), row: inches(36), area }).in("acre")).toBeCloseTo(1, 12);
  });
});

describe("finished spray", () => {
  // a liquid of 2.25 times the weight of water comes at two thirds of the flow
  const heavy = quantity(2.25 * 8.34, "lb/gal");
  const estimate = {
    type: "estimate",
    version: 1,
    value: quantity(15, "gal/acre", "water"),
    standardError: quantity(0.75, "gal/acre", "water"),
    degreesOfFreedom: 4,
  } as const;
  test("of an estimate of water, with its error", () => {
    const found = asFinishedSpray(estimate, { density: heavy });
    expect(found.value.toString()).toBe("10 gal/acre of spray");
    expect(found.estimate?.standardError.toString()).toBe("0.5 gal/acre of spray");
    expect(found.estimate?.degreesOfFreedom).toBe(4);
    expect([found.type, found.version, found.measuredWith, found.carriedOver, found.findings]).toEqual([
      "finished-spray",
      1,
      "water",
      "by its density",
      [],
    ]);
    const { degreesOfFreedom: _, ...bare } = estimate;
    expect(Object.keys(asFinishedSpray(bare).estimate ?? {})).toEqual([
      "type",
      "version",
      "value",
      "standardError",
    ]);
  });
  test("of water without a density, which is told", () => {
    const { source, ...finding } = asFinishedSpray(quantity(20, "gal/acre", "water")).findings[0] ?? {};
    expect(finding).toEqual({
      code: "spray/as-heavy-as-water",
      severity: "note",
      params: {},
      text: "Measured with water, and the spray is taken to be as heavy as water. Give its density where it is not: a nozzle puts out less of a heavy liquid.",
    });
    expect(source).toEqual({
      title: "Spraying solutions other than water",
      publisher: "University of Georgia Extension",
    });
    expect(asFinishedSpray(estimate).carriedOver).toBe("as heavy as water");
  });
  test("of spray, which is what it is", () => {
    const found = asFinishedSpray(gpa(20));
    expect([found.value.in("gal/acre"), found.measuredWith, found.carriedOver, found.findings]).toEqual([
      20,
      "spray",
      "not needed",
      [],
    ]);
    expect(found.estimate).toBe(undefined);
    expect(
      asFinishedSpray({ ...estimate, value: gpa(20), standardError: gpa(1), degreesOfFreedom: 1 }).estimate
        ?.degreesOfFreedom,
    ).toBe(1);
  });
});
