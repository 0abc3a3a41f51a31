// A crew knows a product by its name; an id is for the program. And what is less than another figure reads as less.
import { describe, expect, test } from "vitest";
import { type Quantity, quantity } from "../../../src/quantity/index.js";
import { loadAmounts, tankLoads, waterReport } from "../../../src/tank/index.js";
import { complaints, errorOf } from "../../errors.js";

const loads = tankLoads({
  area: quantity(1, "acre"),
  applicationVolume: quantity(20, "gal/acre", "spray"),
  capacity: quantity(50, "gal", "spray"),
});
const named = { id: "wp", name: "iprodione 50 % WP", form: "dry" } as const;
const rate = (ounces: number) => quantity(ounces, "oz/acre", "product:wp");
const texts = (more: object, ounces: number, step = 1) =>
  loadAmounts({
    loads,
    products: [{ ...named, rate: rate(ounces), ...more }],
    increments: { dry: { unit: "oz", step } },
  }).findings.map(({ text, params }) => [text, params.product]);

describe("findings on the loads of a job", () => {
  test("tell the name; the id stays in the params", () => {
    expect(texts({}, 0.8)).toEqual([
      [
        "Load 1 gets 1 oz by weight of iprodione 50 % WP where 0.8 oz by weight is computed, 25 % more: a measuring increment of 1 oz by weight is too coarse for what it needs.",
        "wp",
      ],
    ]);
    expect(texts({}, 0.2)).toEqual([
      [
        "Load 1 gets no iprodione 50 % WP: a measuring increment of 1 oz by weight is too coarse for what it needs.",
        "wp",
      ],
    ]);
    // 50 lb in 20 gal
    expect(texts({}, 800)[0]?.[0]).toMatch(/^Load 1 takes 800 oz by weight of iprodione 50 % WP in 20 gal /);
    expect(
      errorOf(() => loadAmounts({ loads, products: [{ ...named, rate: rate(16_000) }] })).expected,
    ).toContain("is the rate of iprodione 50 % WP per 100 gal");
  });

  test("a least that is missed by a hair, and a concentration that is passed by one", () => {
    expect(texts({ least: { value: 16.0003, unit: "oz" } }, 16)).toEqual([
      [
        "Load 1 takes 16 oz by weight of iprodione 50 % WP, less than the minimum (16.0003 oz by weight).",
        "wp",
      ],
    ]);
    const max: Quantity<"mass/volume", "product:wp/spray"> = quantity(1.00002, "oz/gal", "product:wp/spray");
    expect(texts({ concentration: { max, source: "label" } }, 20)).toEqual([]);
    const less = quantity(0.99998, "oz/gal", "product:wp/spray");
    expect(texts({ concentration: { max: less, source: "label" } }, 20)).toEqual([
      [
        "Load 1 has 20 oz by weight of iprodione 50 % WP, stronger than the highest stated concentration (19.9996 oz by weight in this volume).",
        "wp",
      ],
    ]);
  });

  test("a name that is no text is refused", () => {
    expect(
      complaints(() => loadAmounts({ loads, products: [{ ...named, name: 3 as never, rate: rate(1) }] })),
    ).toEqual(["type products[0].name"]);
  });
});

describe("the water of a tank", () => {
  const hard = (value: number) => ({ value, unit: "mg/L", of: "hardness as CaCO3" }) as const;
  test("a hardness that passes a threshold by a hair reads as more than it", () => {
    const told = (value: number) =>
      waterReport({ test: { hardness: hard(value) } }).findings.find(({ code }) => code === "water/hardness")
        ?.text;
    expect(told(200)).toBeUndefined();
    // 200.4 / 17.118 is 11.707
    expect(told(200.4)).toMatch(/^Hardness is 200\.4 mg\/L as CaCO3 \(11\.71 grains per US gallon\)\./);
    expect(told(250)).toMatch(/^Hardness is 250 mg\/L as CaCO3 \(14\.6 grains per US gallon\)\./);
  });
});
