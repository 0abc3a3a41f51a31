import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { plantsFor, plantsPerArea, spacingFor, sprigBushelsOf, sprigsFor } from "../../../src/stand/index.js";

// Worked by hand, in whole numbers; what lies just at a limit is within it.

const percent = (value: number) => quantity(value, "%");
const inches = (value: number) => quantity(value, "in");

describe("plants", () => {
  test("per area, and the spacing back", () => {
    expect(
      plantsPerArea({ pattern: "rectangular", spacing: inches(6), rowSpacing: inches(12) }).toString(),
    ).toBe("2 count/ft2");
    expect(spacingFor({ pattern: "square", plantsPerArea: quantity(25, "count/m2") }).toString()).toBe(
      "20 cm",
    );
    expect(spacingFor({ pattern: "square", plantsPerArea: quantity(4, "count/ft2") }).toString()).toBe(
      "6 in",
    );
    expect(
      spacingFor({ pattern: "triangular", plantsPerArea: quantity(25, "count/m2") }).in("cm"),
    ).toBeCloseTo(20 / Math.sqrt(Math.sqrt(3) / 2), 10);
  });
  test("to order in rows", () => {
    const order = plantsFor({
      area: quantity(100, "ft2"),
      pattern: "rectangular",
      spacing: inches(6),
      rowSpacing: inches(12),
      perTray: 72,
    });
    expect(
      [order.type, order.version, order.perArea, order.plants, order.trays, order.leftOver].map(String),
    ).toEqual(["plant-order", "1", "2 count/ft2", "200", "3", "16"]);
    const bare = plantsFor({
      area: quantity(10, "m2"),
      pattern: "square",
      spacing: quantity(20, "cm"),
      extra: percent(10),
    });
    expect([bare.plants, bare.trays, bare.leftOver]).toEqual([275, null, null]);
  });
  test("sprigs", () => {
    const order = sprigsFor({
      area: quantity(2, "acre"),
      rate: quantity(400, "count/acre"),
      bushel: quantity(0.4, "ft3"),
    });
    expect([order.type, order.version, order.bushels, order.volume, order.bushel].map(String)).toEqual([
      "sprig-order",
      "1",
      "800",
      "320 ft3",
      "0.4 ft3",
    ]);
    expect(order.findings[0]).toMatchObject({
      path: "bushel",
      params: { bushel: "0.4 ft3" },
      text: "Counted in bushels of 0.4 ft3. What is sold as a bushel of sprigs runs from 0.32 to 1.25 ft3: ask the supplier.",
      source: { publisher: "USGA Green Section Record 60(14)" },
    });
    const metric = sprigsFor({
      area: quantity(1000, "m2"),
      rate: quantity(2, "L/m2"),
      bushel: quantity(10, "L"),
    });
    expect([metric.rate, metric.volume, metric.bushels].map(String)).toEqual(["2 L/m2", "2 m3", "200"]);
    expect(sprigBushelsOf("Georgia").map(({ low }) => low.toString())).toEqual(["0.32 ft3", "0.4 ft3"]);
  });
});
