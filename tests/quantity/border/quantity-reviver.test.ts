import { describe, expect, test } from "vitest";
import { quantity, quantityReviver } from "../../../src/quantity/index.js";

const back = (value: unknown): unknown => JSON.parse(JSON.stringify(value), quantityReviver);

describe("quantityReviver", () => {
  test("gives back every quantity, however deep, to the last digit", () => {
    const record = {
      rates: [quantity(0.1 + 0.2, "lb/1000 ft2", "N"), quantity(1 / 3, "% w/w", "N:slow/product:a")],
      day: { low: quantity(-40, "°F"), price: null },
    };
    expect(back(record)).toEqual(record);
    expect((back(record) as typeof record).day.low.in("°C")).toBe(-40);
  });

  test("also of what structuredClone left, by its unit and not by what it says of its dimension", () => {
    const clone = { ...structuredClone({ ...quantity(3, "lb/acre", "N") }), dimension: "volume" };
    expect(back({ clone })).toEqual({ clone: quantity(3, "lb/acre", "N") });
  });

  test.each([
    [{ value: 1, unit: "lb", of: "N", dimension: 3 }],
    [{ value: 1, unit: "lb" }],
    [{ value: 1, unit: "lb", of: "N", note: "more than a quantity" }],
    [{ value: "3", unit: "lb", of: "N" }],
    [{ value: 1, unit: 2, of: "N" }],
    [[1, "lb", "N"]],
    [null],
    ["lb"],
  ])("leaves alone what is no quantity: %j", (value) => {
    expect(back({ value })).toEqual({ value });
  });

  test("names the field of what cannot be one", () => {
    expect(() => back({ bag: { value: 1, unit: "lbs", of: "N" } })).toThrow(/bag\.unit/);
    expect(() => back({ bag: { value: 1, unit: "lb", of: "nitrogen" } })).toThrow(/bag\.of/);
  });
});
