import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { complaint } from "../../errors.js";
import { tellsEach } from "../../tells.js";
import { inch, mm, percent } from "../helpers.js";

type Plain = (input: unknown) => unknown;
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const holding = 'quantity(1.5, "in/ft"), quantity(125, "mm/m") or quantity(12.5, "% v/v")';

describe("what a root zone holds", () => {
  const layer = (capacity: unknown) => () =>
    call.availableWater({ layers: [{ thickness: inch(6), capacity }] });
  tellsEach([
    [
      () => call.availableWater({}),
      "missing layers: expected a list with at least one layer, { thickness, capacity }; waterHolding has printed capacities, got undefined",
    ],
    [
      () => call.availableWater({ layers: Array(101).fill({ thickness: inch(1), capacity: percent(10) }) }),
      "range layers: expected at most 100 items, got a list of 101",
    ],
    [layer(undefined), `missing layers[0].capacity: expected ${holding}, got undefined`],
    [layer(1.5), `type layers[0].capacity: expected ${holding}, got 1.5`],
    [
      layer(quantity(5, "% grade")),
      `unit/mismatch layers[0].capacity: expected depth of water by depth of soil: ${holding}, got 5 % grade`,
    ],
    [
      layer({ value: 1.5, unit: "in/ft", of: "water" }),
      `substance/mismatch layers[0].capacity: expected ${holding}, got "water"`,
    ],
    [
      layer(quantity(0, "in/ft")),
      "range layers[0].capacity: expected more than 0 % and less than 100 % of the soil, got 0 in/ft",
    ],
    [
      layer(quantity(12, "in/ft")),
      "range layers[0].capacity: expected more than 0 % and less than 100 % of the soil, got 12 in/ft",
    ],
    [
      () =>
        call.availableWater({
          layers: [{ thickness: inch(6), capacity: quantity(1.5, "in/ft") }],
          rootDepth: inch(8),
        }),
      "range rootDepth: expected 6 in or less, the depth of the layers: add the layer below, got 8 in",
    ],
  ]);

  it("a hundred layers, parts per million by volume, and roots that end within the layers", () => {
    const many = { layers: Array(100).fill({ thickness: mm(1), capacity: quantity(150_000, "ppm v/v") }) };
    const held = call.availableWater(many) as water.AvailableWater;
    expect(held.total.in("mm")).toBeCloseTo(15, 9);
    const roots = call.availableWater({ ...many, rootDepth: mm(40) }) as water.AvailableWater;
    expect([roots.depth.in("mm"), roots.total.in("mm")]).toEqual([40, expect.closeTo(6, 9)]);
    const deep = call.availableWater({ ...many, rootDepth: mm(100 + 1e-8) }) as water.AvailableWater;
    expect(deep.depth.in("mm")).toBe(100);
    expect(complaint(() => call.availableWater({ ...many, rootDepth: mm(100.001) }))).toBe("range rootDepth");
  });
});
