import { describe, expect, test } from "vitest";
import { amountInWords, dimensionDue, dimensionNoun, unitInWords } from "../../../src/quantity/house.js";
import {
  expectQuantity,
  isUnit,
  parseQuantity,
  quantity,
  rateQuotients,
  simpleQuotients,
  unitSystem,
  unitTable,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const tagged = (name: string): string => name.replace(/^money/, "money:EUR");
const dimensions: readonly string[] = [
  ...new Set([...Object.keys(unitTable), ...simpleQuotients.map(tagged), ...rateQuotients, "money:EUR"]),
];
/** The examples of a text: what stands behind `such as`. */
const examplesIn = (text: string): readonly string[] => (text.split(", such as ")[1] ?? "").split(" or ");

describe("what is due, as a person of the trade says it", () => {
  test.each(dimensions)("%s", (dimension) => {
    const noun = dimensionNoun(dimension);
    expect(noun).toMatch(/^an? [a-z][a-z -]+$/);
    if (dimension.includes("/")) expect(noun).not.toContain(dimension);
    const asked = amountInWords(dimension);
    expect(asked.startsWith(`${noun}, such as `)).toBe(true);
    const amounts = examplesIn(asked);
    for (const text of amounts) {
      const read =
        text === "0.4" ? quantity(0.4, "1") : parseQuantity(text, { dimension: dimension as "mass" });
      expect([text, read.dimension]).toEqual([text, dimension]);
      expect(read.value).toBeGreaterThan(0);
      if (text !== "0.4") expect(text.endsWith(read.unit.replace("money:", ""))).toBe(true);
    }
    const units = examplesIn(unitInWords(dimension));
    expect(unitInWords(dimension).startsWith(`a unit for ${noun}, such as `)).toBe(true);
    for (const unit of units) expect([unit, isUnit(unit, dimension as "mass")]).toEqual([unit, true]);
    // where both systems have units of their own, both are shown
    const systems = units.map(unitSystem);
    if (systems.length === 2 && systems.includes("US")) {
      const both = ["volume/volume", "length/length", "mass/mass"].includes(dimension);
      if (!both) expect(systems).toContain("metric");
    }
  });

  test("no two dimensions are called alike", () => {
    expect(new Set(dimensions.map(dimensionNoun)).size).toBe(dimensions.length);
  });

  test.each([
    ["1", "a share, such as 40 % or 0.4"],
    ["mass", "a weight, such as 50 lb or 20 kg"],
    ["mass/area", "a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha"],
    ["volume/area", "a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha"],
    ["mass/volume", "a weight per volume, such as 10 lb/gal or 1.2 kg/L"],
    ["length/time", "a speed or a depth per time, such as 3 mi/h or 5 mm/h"],
    ["volume/time", "a flow, such as 0.4 gal/min or 1.5 L/min"],
    ["mass/mass", "a share by weight, such as 24 % w/w or 20 lb/US ton"],
    ["count", "a count, such as 12 count"],
    ["mass/count", "a weight per piece, such as 2 lb/count or 2 kg/count"],
    ["money:USD/count", "a price per piece, such as 2 USD/count"],
    ["time/area", "a time per area, such as 2 h/acre or 2 h/ha"],
    ["area/time", "an area per time, such as 2 acre/h or 2 ha/h"],
    // no dimension is of that form
    ["mass/money:EUR", "a quantity of mass/money:EUR"],
    ["money:EURO", "a quantity of money:EURO"],
    ["", "a quantity of "],
    ["money:USD", "an amount of money, such as 40 USD"],
    ["money:CAD/area", "a cost over an area, such as 2 CAD/acre or 2 CAD/ha"],
    ["money/mass", "a price per weight, such as 2 USD/lb or 2 USD/kg"],
    ["weight", "a quantity of weight"],
    ["toString", "a quantity of toString"],
  ])("%s reads: %s", (dimension, words) => {
    expect(amountInWords(dimension)).toBe(words);
  });

  test("a unit that is due", () => {
    expect(unitInWords("mass/area")).toBe("a unit for a weight over an area, such as lb/1000 ft2 or kg/ha");
    expect(unitInWords("1")).toBe("a unit for a share, such as %");
    expect(unitInWords("money:CAD")).toBe("a unit for an amount of money, such as money:CAD");
    expect(unitInWords("money:CAD/volume")).toBe(
      "a unit for a price per volume, such as money:CAD/gal or money:CAD/L",
    );
  });

  test("one of several", () => {
    expect(amountInWords("mass", "volume")).toBe("a weight or a volume, such as 50 lb or 2 gal");
    expect(amountInWords("mass", "volume", "count")).toBe(
      "a weight, a volume or a count, such as 50 lb, 2 gal or 12 count",
    );
    expect(amountInWords("mass", "weight")).toBe("a weight or a quantity of weight, such as 50 lb");
  });

  test("a refusal has the dimension as data, for an app that says it in another language", () => {
    const area = { dimension: "mass/area" } as const;
    expect(problemsOf(() => expectQuantity(quantity(3, "lb"), area, "rate"))).toEqual([
      {
        code: "unit/mismatch",
        path: "rate",
        got: "3 lb",
        expected: "a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha",
        params: { dimension: "mass/area" },
      },
    ]);
    expect(problemsOf(() => expectQuantity(undefined, area, "rate"))[0]?.params).toEqual({
      dimension: "mass/area",
    });
    const due = () => dimensionDue("missing", "dose", undefined, ["mass", "volume"], "; weigh it");
    expect(problemsOf(due)).toEqual([
      {
        code: "missing",
        path: "dose",
        got: "undefined",
        expected: "a weight or a volume, such as 50 lb or 2 gal; weigh it",
        params: { dimension: ["mass", "volume"] },
      },
    ]);
  });
});
