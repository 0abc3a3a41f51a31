import { describe, expect, test } from "vitest";
import {
  isDimension,
  isUnit,
  quantity,
  quantityOf,
  rateQuotients,
  simpleQuotients,
  unitsOf,
} from "../../../src/quantity/index.js";
import { baseUnitDimensions } from "../samples.js";

const plain = [
  ...new Set([
    ...baseUnitDimensions.map(([, dimension]) => dimension),
    ...simpleQuotients.filter((dimension) => !dimension.startsWith("money")),
    ...rateQuotients,
  ]),
];
const money = ["money:USD", "money:EUR/mass", "money:USD/area", "money:USD/time"];

describe("unitsOf", () => {
  test.each([...plain, ...money])("%s: each is a unit of it", (dimension) => {
    expect(isDimension(dimension)).toBe(true);
    const choices = unitsOf(dimension as "mass");
    expect(choices.length).toBeGreaterThan(0);
    for (const { unit, system } of choices) {
      expect(isUnit(unit, dimension as "mass")).toBe(true);
      expect(quantityOf(1, unit, "none", "q").dimension).toBe(dimension);
      expect(["US", "metric", "imperial", "both"]).toContain(system);
    }
    expect(new Set(choices.map(({ unit }) => unit)).size).toBe(choices.length);
  });

  test("systems", () => {
    const system = (dimension: "mass" | "volume" | "time", unit: string): string | undefined =>
      unitsOf(dimension).find((choice) => choice.unit === unit)?.system;
    expect(system("mass", "lb")).toBe("US");
    expect(system("mass", "kg")).toBe("metric");
    expect(system("volume", "imp gal")).toBe("imperial");
    expect(system("time", "h")).toBe("both");
    expect(unitsOf("volume/time").find(({ unit }) => unit === ("gal/min" as string))?.system).toBe("US");
  });

  test("what is no dimension is refused", () => {
    for (const wrong of [
      "weight",
      "mass/pressure",
      "money",
      "money/mass",
      "money:usd",
      "",
      null,
      "toString",
    ]) {
      expect(isDimension(wrong)).toBe(false);
      expect(() => unitsOf(wrong as "mass")).toThrow(/a dimension/);
    }
  });
});

describe("isUnit", () => {
  test("takes units of the dimension only", () => {
    expect(isUnit("lb", "mass")).toBe(true);
    expect(isUnit("lb", "volume")).toBe(false);
    expect(isUnit("lbs", "mass")).toBe(false);
    expect(isUnit("lb/acre")).toBe(true);
    for (const wrong of [undefined, null, 3, {}, "", "toString", "__proto__"])
      expect(isUnit(wrong)).toBe(false);
  });

  test("a string from a select box reaches a quantity", () => {
    const chosen = ["lb", "acre"].join("/");
    if (!isUnit(chosen, "mass/area")) throw new Error("not a unit");
    expect(quantity(43.56, chosen, "N").in("lb/1000 ft2")).toBe(1);
  });
});
