import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { containment, containmentRules } from "../../../src/site/index.js";

// Whole records, as they go on paper: what is told, by whose word, and the figures by hand.

const ft = (value: number) => quantity(value, "ft");
const percent = (value: number) => quantity(value, "%");
const plain = (record: unknown): unknown => JSON.parse(JSON.stringify(record));
const of = (value: number, unit: string, substance = "none") => ({ value, unit, of: substance });

describe("containments", () => {
  const gal = (value: number) => quantity(value, "gal");
  test("by a rule, by a margin and by rain", () => {
    const by = (more: object) =>
      plain(containment({ largest: gal(1000), ...more } as Parameters<typeof containment>[0]));
    expect(by({ rule: "roofed 110 %", displaced: [gal(50), gal(25)] })).toEqual({
      type: "containment",
      version: 1,
      largest: of(1000, "gal"),
      reserve: { ...of(100, "gal"), value: expect.closeTo(100, 9) },
      displaced: of(75, "gal"),
      volume: of(1175, "gal"),
    });
    const margin = (value: number) =>
      containment({ largest: gal(1000), margin: percent(value) }).volume.in("gal");
    expect([margin(100), margin(1000)]).toEqual([1000, 10_000]);
    // a foot of rain on 231 ft2 is 231 x 1728 in3, which are 1728 gal of 231 in3
    const rain = containment({ largest: gal(1728), rain: ft(1), floor: quantity(231, "ft2") });
    expect([rain.reserve.in("gal"), rain.volume.in("gal")]).toEqual([
      expect.closeTo(1728, 8),
      expect.closeTo(3456, 8),
    ]);
    // both together stand two feet high on the floor, and four on half of it
    expect(rain.wall?.unit).toBe("ft");
    expect(rain.wall?.in("ft")).toBeCloseTo(2, 10);
    const half = containment({
      largest: gal(1728),
      rain: ft(1),
      floor: quantity(231, "ft2"),
      footprints: [quantity(115.5, "ft2")],
    });
    expect(half.wall?.in("ft")).toBeCloseTo(4, 10);
    const metric = containment({
      largest: quantity(1000, "L"),
      rule: "open 125 %",
      floor: quantity(5, "m2"),
    });
    expect([metric.wall?.unit, metric.wall?.value]).toEqual(["m", 0.25]);
  });
  test("rules say when and by whose word", () => {
    expect(
      Object.entries(containmentRules).map(([name, { percent: share, when }]) => [name, share, when]),
    ).toEqual([
      ["open 125 %", 125, "open to rain and snow"],
      ["roofed 110 %", 110, "under a roof"],
    ]);
    for (const { source } of Object.values(containmentRules)) expect(source.where).toBe("13.2");
  });
});
