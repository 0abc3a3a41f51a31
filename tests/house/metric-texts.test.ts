import { describe, expect, test } from "vitest";
import {
  deicingRate,
  type Finding,
  fertilizer,
  foliarMicronutrient,
  greenSpeed,
  heatIndex,
  injector,
  liquidDensity,
  loadAmounts,
  pipeVelocity,
  quantity,
  routeText,
  saltOutFindings,
  stockTank,
  sulfurApplications,
  tankLoads,
  tryWorkOrder,
} from "../../src/index.js";

/** A unit of the United States, as texts write it. */
const customary =
  /\b(?:lbs?|pounds?|oz|ounces?|gal|gallons?|ft2?|feet|foot|sq ft|acres?|inch(?:es)?|psi|mi\/h|mph|yd)\b|°F|\d in\b/;

const textOf = (findings: readonly Finding[], code: string): string =>
  findings.find((finding) => finding.code === code)?.text ?? `no ${code}`;

const refusal = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    return (error as Error).message;
  }
  return "nothing was refused";
};

describe("who asks in metric units is answered in them", () => {
  // 1 oz/1000 ft2 = 28.349523 g / 92.90304 m2 = 0.305152 g/m2: the published 2 to 4 oz are 0.6103 to 1.2206 g/m2
  test("a spray of iron", () => {
    const product = quantity(1.5, "g/m2", "product");
    const { findings } = foliarMicronutrient({ product, element: "Fe", percent: 20 });
    expect(textOf(findings, "iron/outside-published-rate")).toBe(
      "1.5 g/m2 of product is above the published 0.61 to 1.22 g/m2. Check that the rate is of product, not of iron.",
    );
  });
  test("a stock that is too strong", () => {
    const { findings } = stockTank({
      targets: [quantity(300, "mg/L", "N")],
      salts: [{ product: fertilizer({ id: "s", analysis: "20-20-20" }), solubility: quantity(300, "g/L") }],
      injector: injector("1:500"),
      tank: quantity(100, "L"),
    });
    // 300 mg/L x 500 / 0.2 = 750 g/L
    expect(textOf(findings, "stock/solubility")).toMatch(
      /^750 g\/L of s in the stock is over the stated 300 g\/L/,
    );
  });
  test("a liquid in the cold: 32 °F is 0 °C, 28 °F is -2.2 °C", () => {
    const texts = saltOutFindings("UAN 32", quantity(-5, "°C")).map(({ text }) => text);
    expect(texts.join(" ")).toMatch(/At -5 °C .* is -2\.2 °C/);
    expect(texts.join(" ")).toMatch(/At -5 °C .* is 0 °C/);
    expect(texts.join(" ")).not.toMatch(customary);
    expect(refusal(() => liquidDensity("UAN 28", quantity(-20, "°C")))).not.toMatch(customary);
  });
  test("a pipe: 5 ft/s is 1.524 m/s", () => {
    const pipe = pipeVelocity({ flow: quantity(100, "L/min", "water"), diameter: quantity(25, "mm") });
    // 0.1 / 60 m3/s / (pi / 4 x 0.025^2) = 3.395 m/s
    expect(textOf(pipe.findings, "water/fast-in-pipe")).toBe(
      "Water runs at 3.4 m/s: above 1.5 m/s, closing valves cause water hammer.",
    );
  });
  test("salt on ice: 15 °F is -9.4 °C, 4 lb/1000 ft2 is 19.5 g/m2, 40 °F is 4.44 °C", () => {
    const { findings } = deicingRate({ pavement: quantity(-12, "°C") });
    expect(textOf(findings, "deicing/too-cold")).toMatch(/below -9\.4 °C of pavement/);
    expect(textOf(findings, "deicing/sources-differ")).toMatch(/less than 19\.5 g\/m2 on walks/);
    expect(refusal(() => deicingRate({ pavement: quantity(10, "°C") }))).toMatch(/-51\.11 to 4\.44 °C/);
    expect(deicingRate({ pavement: quantity(4.44, "°C") }).rate).not.toBeNull();
  });
  test("heat: 15 °F more are 8 °C, 103 °F is 39.4 °C", () => {
    const hot = heatIndex({
      temperature: quantity(32, "°C"),
      humidity: quantity(70, "%"),
      table: "from 105 and 130 °F",
    });
    expect(textOf(hot.findings, "heat-index/shade")).toMatch(/Full sun can add up to 8 °C\./);
    const felt = [32, 33, 34, 35].flatMap(
      (t) =>
        heatIndex({
          temperature: quantity(t, "°C"),
          humidity: quantity(55, "%"),
          table: "from 105 and 130 °F",
        }).findings,
    );
    expect(textOf(felt, "heat-index/higher-in-other-table")).toMatch(/there it begins at 39\.4 °C\.$/);
  });
  test("the speed of a green: 8 in is 20.32 cm", () => {
    const m = (...values: readonly number[]) => values.map((value) => quantity(value, "m"));
    const { findings } = greenSpeed({ up: m(2.5, 2.8, 2.6), down: m(3, 3, 3) });
    expect(textOf(findings, "green-speed/rolls-apart")).toBe(
      "The rolls uphill are 30.0 cm apart, more than 20.3: roll them again.",
    );
  });
  test("sulfur on a close cut: 2 in is 50.8 mm", () => {
    const told = refusal(() =>
      sulfurApplications({
        total: quantity(50, "g/m2", "S"),
        mowingHeight: quantity(20, "mm"),
        freeLime: false,
        first: "2026-09-15",
        monthsApart: 2,
      }),
    );
    expect(told).toMatch(/50\.8 mm or more/);
  });
  test("a load that is more product than spray", () => {
    const loads = tankLoads({
      area: quantity(1, "ha"),
      applicationVolume: quantity(200, "L/ha", "spray"),
      capacity: quantity(300, "L", "spray"),
    });
    const dry = (rate: number) =>
      loadAmounts({
        loads,
        products: [{ id: "p", form: "dry", rate: quantity(rate, "kg/ha", "product") }],
      } as never);
    // 60 kg in 200 L
    expect(textOf(dry(60).findings, "load/much-dry-product")).toMatch(
      /300 g per L, .* per hectare, and not per 100 m2/,
    );
    expect(refusal(() => dry(300))).toMatch(/per 100 L, or/);
  });
});

describe("a work order in metric units", () => {
  const job = (target: number, unit: string, more: object = {}) =>
    tryWorkOrder({
      type: "job",
      version: 1,
      title: "Feed",
      date: "2026-05-04",
      site: {
        name: "Park",
        parts: [{ name: "pitch", shape: "measured", area: { value: 7140, unit: "m2" } }],
      },
      products: [{ id: "feed-a", form: "dry", analysis: "12-0-6", ...more }],
      treatments: [
        { id: "feed", method: "spread", product: "feed-a", target: { value: target, unit, of: "N" } },
      ],
    }).order?.findings ?? [];

  // 1 lb/1000 ft2 = 453.59237 g / 92.90304 m2 = 4.8824 g/m2 = 48.82 kg/ha
  test("holds nitrogen against the common advice in the unit of the rate", () => {
    expect(textOf(job(60, "kg/ha"), "nitrogen/above-common-advice")).toBe(
      "feed-a: 60 kg/ha of N in one application is above the common advice of 48.82 kg/ha.",
    );
    expect(textOf(job(5.5, "g/m2"), "nitrogen/above-common-advice")).toBe(
      "feed-a: 5.5 g/m2 of N in one application is above the common advice of 4.882 g/m2.",
    );
    expect(job(48.8, "kg/ha").map(({ code }) => code)).not.toContain("nitrogen/above-common-advice");
  });
  test("names the slip between g/m2 and kg/ha, and no acre", () => {
    // 40 kg/ha typed as g/m2 is 400 kg/ha
    expect(textOf(job(40, "g/m2"), "nitrogen/above-common-advice")).toBe(
      "feed-a: 40 g/m2 of N in one application is above the common advice of 4.882 g/m2. Check for g/m2 and kg/ha mixed up (10 times).",
    );
    const range = (min: number, max: number, unit: string) => ({
      labelRate: { min: { value: min, unit, of: "product" }, max: { value: max, unit, of: "product" } },
    });
    const slip = (target: number, unit: string, label: object) =>
      job(target, unit, { analysis: "100-0-0", ...label }).find(({ code }) => code.startsWith("rate/"))
        ?.params.slip;
    expect(slip(3, "kg/ha", range(25, 35, "g/m2"))).toBe("hectare-for-100-m2");
    expect(slip(30, "kg/ha", range(25, 35, "g/m2"))).toBe("g-per-m2-for-kg-per-ha");
    expect(slip(0.3, "kg/ha", range(25, 35, "g/m2"))).toBe("gram-for-kilogram");
  });
  test("names the slips of a liquid", () => {
    const spray = (value: number, unit: string) => {
      const rate = (amount: number) => ({ value: amount, unit: "L/ha", of: "product" });
      const { order } = tryWorkOrder({
        type: "job",
        version: 1,
        title: "Spray",
        date: "2026-05-04",
        site: {
          name: "Park",
          parts: [{ name: "pitch", shape: "measured", area: { value: 7140, unit: "m2" } }],
        },
        products: [
          { id: "p", form: "liquid", formulation: "EC", labelRate: { min: rate(0.8), max: rate(1) } },
        ],
        sprayer: {
          tank: { value: 600, unit: "L" },
          applicationVolume: { value: 400, unit: "L/ha", of: "spray" },
        },
        treatments: [
          { id: "s", method: "spray", mix: [{ product: "p", rate: { value, unit, of: "product" } }] },
        ],
      });
      return order?.findings.find(({ code }) => code.startsWith("rate/"))?.text;
    };
    expect(spray(0.01, "L/ha")).toMatch(/Check for per hectare and per 100 m2 mixed up \(100 times\)\.$/);
    expect(spray(0.9, "mL/ha")).toMatch(/Check for mL and L mixed up \(1,000 times\)\.$/);
    expect(spray(0.9, "L/ha")).toBeUndefined();
  });
});

test("the sheet of a route in metric units says labelled, as that of a visit does", () => {
  const text = routeText({
    type: "route-job",
    version: 1,
    title: "Round",
    date: "2026-06-09",
    units: "metric",
    products: [{ id: "wetter", form: "liquid", formulation: "surfactant" }],
    mix: [{ product: "wetter", rate: { value: 10, unit: "L/ha", of: "product" } }],
    sprayer: {
      tank: { value: 200, unit: "L" },
      applicationVolume: { value: 500, unit: "L/ha", of: "spray" },
      residualVolume: { value: 3, unit: "L" },
    },
    stops: [{ id: "green", area: { value: 1369, unit: "m2" } }],
  });
  expect(text).toMatch(/labelled\s+site/);
  expect(text).not.toMatch(/labeled|authorize/);
});
