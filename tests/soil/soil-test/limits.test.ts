import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { complaint } from "../../errors.js";

const meq = (value: number) => quantity(value, "meq/100 g");
const layer = { assumed: "2,000,000 lb/acre" } as const;
const codes = (found: { readonly findings: readonly { readonly code: string }[] }) =>
  found.findings.map(({ code }) => code);

describe("tests, leaves and organic matter", () => {
  it("the ends of a range lie within it", () => {
    const level = (content: number) =>
      soil.soilTestReading({
        nutrient: "K",
        content: quantity(content, "mg/kg", "K/soil"),
        extractant: "Mehlich 3",
        guideline: "sufficiency, Mehlich 3",
        soil: "sand",
      }).level;
    expect([49, 50, 116, 117].map(level)).toEqual(["below", "within", "within", "above"]);
    const leaf = (content: number) =>
      soil.tissueReading({ nutrient: "K", content: quantity(content, "% w/w") }).level;
    expect([0.9, 1, 1.4, 1.5, 3, 3.1].map(leaf)).toEqual([
      "deficient",
      "below",
      "below",
      "within",
      "within",
      "above",
    ]);
  });

  it("a need, a surplus, and a test above its range", () => {
    const need = (test: number, use = 1) =>
      soil.nutrientNeed({
        nutrient: "P",
        test: quantity(test, "mg/kg", "P/soil"),
        extractant: "Mehlich 3",
        guideline: "sufficiency, Mehlich 3",
        use: quantity(use, "lb/acre", "P"),
        layer,
      });
    // Two pounds an acre for each part per million.
    expect(need(27).need.in("lb/acre")).toBeCloseTo(1, 12);
    expect([need(27, 0).need.value, need(27, 0).surplus.value]).toEqual([0, 0]);
    expect(need(30).surplus.in("lb/acre")).toBeCloseTo(5, 12);
    expect(codes(need(54))).toEqual([]);
    expect(need(55).findings[0]).toMatchObject({
      severity: "caution",
      path: "test",
      params: { nutrient: "P", test: 55, to: 54, unit: "ppm w/w" },
    });
  });

  it("two and four ounces of iron product are the published rate", () => {
    const iron = (ounces: number, element: "Fe" | "Mn" = "Fe") =>
      soil.foliarMicronutrient({
        product: quantity(ounces, "oz/1000 ft2", "product"),
        element,
        percent: 10,
      }).findings;
    expect([iron(2), iron(4), iron(9, "Mn")]).toEqual([[], [], []]);
    expect([iron(1.9)[0]?.severity, iron(4.1)[0]?.severity]).toEqual(["note", "warning"]);
    expect(iron(4.1)[0]).toMatchObject({
      path: "product",
      params: { rate: expect.closeTo(4.1, 9), from: 2, to: 4, unit: "oz/1000 ft2" },
    });
  });

  it("dry matter bounds what a dry content can be, and nitrogen is set free by halves", () => {
    const dry = (content: number) => () =>
      soil.onDryBasis({ content: quantity(content, "% w/w"), moisture: 50 });
    expect(dry(50)().in("% w/w")).toBe(100);
    expect(complaint(dry(50.001))).toBe("range content");
    const free = soil.availableNitrogen({
      organic: quantity(100, "lb/acre", "N"),
      mineral: quantity(7, "lb/acre", "N"),
      firstYear: 50,
      years: 3,
      later: "half of the year before",
    });
    expect([...free.years, free.left].map(({ value }) => value)).toEqual([57, 25, 12.5, 12.5]);
    const shared = soil.availableNitrogen({
      organic: quantity(100, "lb/acre", "N"),
      firstYear: 100,
      years: 50,
      later: "same share of what is left",
    });
    expect([shared.years[0]?.value, shared.years[1]?.value, shared.left.value]).toEqual([100, 0, 0]);
  });

  it("sodium is told from the ratio at which the line is above zero", () => {
    expect(soil.sodiumPercentageFromRatio(0.8).findings[0]).toMatchObject({
      path: "ratio",
      params: { ratio: 0.8 },
    });
    expect(soil.sodiumPercentageFromRatio(0.86).percent?.in("%")).toBeCloseTo((100 * 0.000085) / 1.000085, 9);
    expect(complaint(() => soil.sodiumPercentageFromRatio(200))).toBe("nothing thrown");
  });

  it("bulk densities from loose peat to quartz, and layers of another depth than the shortcut's", () => {
    const density = (value: number) => () =>
      soil.soilMass({ depth: quantity(10, "cm"), bulkDensity: quantity(value, "g/mL", "soil") });
    expect([complaint(density(0.05)), complaint(density(2.65))]).toEqual([
      "nothing thrown",
      "nothing thrown",
    ]);
    expect([complaint(density(0.049)), complaint(density(2.66))]).toEqual([
      "range layer.bulkDensity",
      "range layer.bulkDensity",
    ]);
    expect(density(1)().in("kg/ha")).toBeCloseTo(1e6, 3);
    const half = soil.soilMass({ assumed: "4,000,000 lb/acre-ft", depth: quantity(6, "in") });
    expect([half.in("lb/acre"), half.unit]).toEqual([2_000_000, "lb/acre"]);
    expect(soil.soilMass({ depth: quantity(1, "ft"), bulkDensity: quantity(1.3, "g/mL", "soil") }).unit).toBe(
      "lb/acre",
    );
  });

  it("bases are told where sodium was not tested, and where lime may dissolve", () => {
    const base = (pH: number, Na?: number) =>
      codes(
        soil.exchangeCapacity({
          cations: {
            Ca: quantity(1000, "mg/kg", "Ca/soil"),
            Mg: quantity(100, "mg/kg", "Mg/soil"),
            K: quantity(100, "mg/kg", "K/soil"),
            ...(Na === undefined ? {} : { Na: quantity(Na, "mg/kg", "Na/soil") }),
          },
          acidity: meq(0),
          pH,
        }),
      );
    expect([base(7.2, 0), base(7.3, 0), base(6)]).toEqual([
      [],
      ["soil/capacity-by-sum-high"],
      ["soil/sodium-not-tested"],
    ]);
  });
});
