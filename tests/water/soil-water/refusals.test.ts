import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { tellsEach } from "../../tells.js";
import { inch, mm, percent } from "../helpers.js";

type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const share = (value: number) => quantity(value, "%");
const depthOf = 'a length, such as quantity(0.5, "in")';

describe("what is no record is told with what it should be", () => {
  tellsEach(
    (
      [
        ["availableWater", "layers"],
        ["readilyAvailableWater", "available and depletion"],
        ["irrigationInterval", "water and use"],
        ["depletionFraction", "table and use"],
        ["waterStress", "available, depleted and depletion"],
        ["effectiveRain", "rain and method"],
        ["soilWaterBalance", "available, depletion, before, use and rain"],
        ["soilWaterDay", "available, depletion and before"],
        ["waterHolding", "texture"],
      ] as const
    ).map(([name, fields]) => [() => call[name](3), `type input: expected a record with ${fields}, got 3`]),
  );
});

describe("depletion", () => {
  tellsEach([
    [
      () => call.readilyAvailableWater({ available: mm(30), depletion: share(101) }),
      "range depletion: expected 100 or less, got 101",
    ],
    [
      () => call.readilyAvailableWater({ available: mm(30), depletion: 0.5 }),
      'type depletion: expected a share, such as quantity(40, "%") or quantity(0.4, "1"), got 0.5',
    ],
    [
      () => call.depletionFraction({ table: share(81), use: quantity(5, "mm/d") }),
      "range table: expected 80 or less, got 81",
    ],
    [
      () => call.depletionFraction({ table: share(40), use: quantity(13, "mm/d") }),
      "range use: expected 10 or more, got 8",
    ],
    [
      () => call.waterStress({ available: mm(30), depleted: mm(31), depletion: share(50) }),
      "range depleted: expected 30 or less, which the root zone holds, got 31",
    ],
    [
      () => call.waterStress({ available: mm(30), depleted: mm(1), depletion: share(100) }),
      "range depletion: expected less than 100, got 100",
    ],
    [
      () => call.soilWaterDay({ available: mm(30), depletion: share(100), before: mm(31) }),
      "range depletion: expected less than 100, got 100",
    ],
    [
      () => call.soilWaterDay({ available: mm(30), depletion: share(50), before: mm(31) }),
      "range before: expected 30 or less, which the root zone holds, got 31",
    ],
    [
      () =>
        call.soilWaterDay({
          available: mm(30),
          depletion: share(50),
          before: quantity(3, "gal/ft2", "water"),
        }),
      "unit/mismatch before: expected a depth: depthOf(volumePerArea) makes one of a volume per area, got 3 gal/ft2 of water",
    ],
    [
      () => call.soilWaterDay({ available: mm(30), depletion: share(50), before: quantity(3, "mm/d") }),
      'unit/mismatch before: expected a depth: a rate over a time is one, rate.times(quantity(1, "week")), got 3 mm/d',
    ],
    [
      () => call.soilWaterDay({ available: mm(30), depletion: share(50), before: share(3) }),
      `unit/mismatch before: expected ${depthOf}, got 3 %`,
    ],
  ]);

  it("at its limits", () => {
    const stress = (depleted: number) =>
      water.waterStress({ available: mm(30), depleted: mm(depleted), depletion: percent(50) }).in("%");
    expect([stress(15), stress(22.5), stress(30)]).toEqual([100, 50, 0]);
    // A ten-millionth of a millimeter above what the root zone holds is rounding, and leaves nothing to use.
    expect(stress(30.00000001)).toBe(0);
    // 40 % at 5 mm/d; a tenth for each 2.5 mm/d. Both ends of 10 to 80 % are taken.
    const fraction = (table: number, use: number) =>
      water.depletionFraction({ table: percent(table), use: quantity(use, "mm/d") }).in("%");
    expect([fraction(40, 12.5), fraction(80, 5), fraction(10, 5)]).toEqual([10, 80, 10]);
    expect(water.irrigationInterval({ water: mm(12), use: quantity(1, "cm/d") }).in("d")).toBeCloseTo(
      1.2,
      12,
    );
    expect(water.irrigationInterval({ water: inch(1.2), use: quantity(0.1, "ft/d") }).in("d")).toBeCloseTo(
      1,
      12,
    );
  });

  it("no more is used than there is above the wilting point", () => {
    // 2 of 10 mm are left; the turf asks for 5 and manages its full use up to the last of it.
    const day = water.soilWaterDay({
      available: mm(10),
      depletion: percent(99),
      before: mm(8),
      use: mm(5),
    });
    expect([day.used.in("mm"), day.depleted.in("mm"), day.drained.in("mm"), day.stress.in("%")]).toEqual([
      2, 10, 0, 100,
    ]);
    const brim = water.soilWaterDay({ available: mm(10), depletion: percent(50), before: mm(10.000000001) });
    expect(brim.depleted.in("mm")).toBe(10);
    const same = water.soilWaterDay({
      available: inch(1),
      depletion: percent(0),
      before: inch(0),
      rain: inch(1),
    });
    expect([same.drained.in("in"), same.stress.in("%")]).toEqual([1, 100]);
  });
});

describe("rain", () => {
  tellsEach([
    [
      () => call.effectiveRain({ rain: mm(10), method: "fixed share" }),
      'missing share: expected the share that counts, such as quantity(80, "%"), got undefined',
    ],
    [
      () => call.effectiveRain({ rain: mm(10), method: "FAO, month", share: share(80) }),
      'conflict share: expected nothing: only "fixed share" takes a share, got 80 %',
    ],
    [
      () => call.effectiveRain({ rain: mm(10), method: "fixed share", share: share(101) }),
      "range share: expected 100 or less, got 101",
    ],
    [
      () => call.effectiveRain({ rain: mm(10), method: "Texas" }),
      'type method: expected one of "Texas, day", "fixed share", "USDA-SCS, month", "FAO, month", got "Texas"',
    ],
  ]);
  it("two ways meet at each joint", () => {
    const rain = (value: number, method: water.EffectiveRainMethod) =>
      water.effectiveRain({ rain: mm(value), method }).in("mm");
    expect(rain(75, "FAO, month")).toBeCloseTo(35, 12);
    expect(rain(250, "USDA-SCS, month")).toBeCloseTo(150, 12);
    expect(rain(25.4, "Texas, day")).toBeCloseTo(0.9 * 25.4, 12);
    expect(rain(2.54, "Texas, day")).toBe(0);
  });
});
