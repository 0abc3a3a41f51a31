import { describe, expect, test } from "vitest";
import { fertilizer, injector, stockTank } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";

// What a stock tank tells of its salts, in figures worked by hand.

const tank = (targets: readonly unknown[], salts: readonly unknown[], setting = "1:100") =>
  stockTank({
    targets,
    salts,
    injector: injector(setting as "1:100"),
    tank: quantity(100, "L"),
  } as never);
const n = (ppm: number) => quantity(ppm, "mg/L", "N");
const k = (ppm: number) => quantity(ppm, "mg/L", "K2O");
const urea = (more: object = {}) => ({ product: fertilizer({ id: "urea", analysis: "50-0-0" }), ...more });
const potash = (more: object = {}) => ({
  product: fertilizer({ id: "potash", analysis: "0-0-50" }),
  ...more,
});
const room =
  "the room that salts take up: a solubility per volume of water is reached at less per volume of stock";
const always = "solubility of salts together, water temperature, hardness and pH";
const beside = [
  "weight of the salts beside that of water",
  "calcium beside phosphate or sulfate, where the labels state them",
];

describe("a stock tank tells", () => {
  test("what was checked, and of which salts nothing is stated", () => {
    const some = tank([n(100), k(100)], [urea({ solubility: quantity(500, "g/L") }), potash()]);
    expect(some.findings).toEqual([]);
    expect(some.checked).toEqual(["stated solubility of urea, each by itself", ...beside]);
    expect(some.notChecked).toEqual(["solubility of potash: none was stated", room, always]);
    const all = tank(
      [n(100), k(100)],
      [urea({ solubility: quantity(500, "g/L") }), potash({ solubility: quantity(300, "g/L") })],
    );
    expect(all.checked[0]).toBe("stated solubility of urea, potash, each by itself");
    expect(all.notChecked).toEqual([room, always]);
    const none = tank([n(100), k(100)], [urea(), potash()]);
    expect(none.checked).toEqual(beside);
    expect(none.notChecked).toEqual(["solubility of urea, potash: none was stated", always]);
  });

  test("more of a salt than is stated to dissolve, in the units of the recipe, and who states it", () => {
    // 600 mg/L of N take 1.2 g/L of urea, 120 g/L of stock at 1:100: more than 100.
    const over = tank([n(600)], [urea({ solubility: quantity(100, "g/L"), solubilitySource: "the label" })]);
    expect(over.findings).toEqual([
      {
        code: "stock/solubility",
        severity: "warning",
        path: "salts[0].solubility",
        params: { product: "urea", amount: expect.closeTo(120, 6), limit: 100, unit: "g/L" },
        text: "120 g/L of urea in the stock is over the stated 100 g/L that dissolve. A larger tank does not change that: set the injector to 1:83 or a smaller number, or ask for less in the final solution.",
        source: "the label",
      },
    ]);
    // 120 g/L exactly is within.
    expect(tank([n(600)], [urea({ solubility: quantity(120, "g/L") })]).findings).toEqual([]);
    const [bare] = tank([n(600)], [urea({ solubility: quantity(100, "g/L") })]).findings;
    expect(bare).not.toHaveProperty("source");
  });

  test("the way to a weaker stock, which works when it is gone", () => {
    // 120 g/L at 1:100 and 100 g/L dissolve: 100 x 100 / 120 = 83.3, so 1:83 holds 99.6 g/L, and 1:84 100.8.
    const salts = [urea({ solubility: quantity(100, "g/L") })];
    expect(tank([n(600)], salts, "1:83").findings).toEqual([]);
    expect(tank([n(600)], salts, "1:84").findings).toHaveLength(1);
    // 1+99 makes a hundredfold, too: 1+82 is the 83.
    expect(tank([n(600)], salts, "1+99").findings[0]?.text).toMatch(/set the injector to 1\+82 or/);
    expect(tank([n(600)], salts, "1+82").findings).toEqual([]);
    // 240 g/L in the final solution and 100 dissolve: no setting is low enough.
    expect(tank([n(120_000)], salts, "1:2").findings[0]?.text).toMatch(
      /dissolve\. A larger tank does not change that: ask for less in the final solution\.$/,
    );
    // A tank of twice the size takes twice the salt, and holds the same of it in a liter.
    const larger = stockTank({
      targets: [n(600)],
      salts: salts as never,
      injector: injector("1:100"),
      tank: quantity(200, "L"),
    });
    expect(larger.findings).toHaveLength(1);
  });

  test("salts that weigh more than the water they are in", () => {
    // 2500 mg/L of N and as much K2O take 10 g/L of salts, 2 kg/L of stock at 1:200; half of it is as much as water.
    const heavy = tank([n(2500), k(2500)], [urea(), potash()], "1:200");
    expect(heavy.findings).toEqual([
      {
        code: "stock/heavier-than-water",
        severity: "warning",
        path: "injector",
        params: { amount: expect.closeTo(2, 9), limit: 1 },
        text: "2 kg of salts in each liter of stock is more than its weight in water: hardly any salt dissolves that much. A larger tank does not change that: set the injector to 1:100 or a smaller number, or ask for less in the final solution.",
        source: "common practice, no source",
      },
    ]);
    expect(tank([n(2500), k(2500)], [urea(), potash()], "1:100").findings).toEqual([]);
  });

  test("a salt that the targets do not need is left out, and no noise of rounding of it is weighed in", () => {
    const nitrate = { product: fertilizer({ id: "nitrate", analysis: "13-0-46" }) };
    for (const ppm of [0.7, 1.1, 33.3, 77.7, 123.4, 299.9]) {
      const { salts: amounts } = tank([n(13 * ppm), k(46 * ppm)], [urea(), nitrate]);
      expect(amounts.map(({ amount }) => amount.value > 0)).toEqual([false, true]);
      expect(amounts[0]?.amount.value).toBe(0);
    }
  });

  test("calcium beside phosphate or sulfate, where both are in the tank", () => {
    const nitrate = { product: fertilizer({ id: "nitrate", analysis: "15-0-0-19Ca" }) };
    const sulfate = { product: fertilizer({ id: "sulfate", analysis: "0-0-50-18S" }) };
    const found = tank([n(100), k(100)], [nitrate, sulfate]);
    expect(found.findings).toEqual([
      {
        code: "stock/precipitate",
        severity: "warning",
        path: "salts",
        params: { calcium: ["nitrate"], with: ["sulfate"] },
        text: "Calcium (nitrate) with phosphate or sulfate (sulfate) in one concentrated stock precipitates: use two tanks.",
        source: "common practice, no source",
      },
    ]);
    expect(tank([n(100), k(0)], [nitrate, sulfate]).findings).toEqual([]);
  });
});
