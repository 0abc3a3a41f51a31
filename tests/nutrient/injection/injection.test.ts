import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  chartAmount,
  chartConductivity,
  concentrationOf,
  fertilizer,
  injectionRate,
  injector,
  labelChart20,
  productForConcentration,
  type StockSalt,
  stockFlow,
  stockTank,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { errorOf } from "../../errors.js";

const salt = (id: string, analysis: string): StockSalt => ({ product: fertilizer({ id, analysis }) });
const ppm = (value: number) => quantity(value, "mg/L", "N");

describe("concentrations", () => {
  test("come back from the product", () => {
    const product = fertilizer({ id: "s", analysis: "21-7-14" });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (c) => {
        const amount = productForConcentration(quantity(c, "mg/L", "P"), product);
        expect(concentrationOf(amount, product, "P").in("mg/L")).toBeCloseTo(c, 8);
      }),
    );
  });

  test("follow the handbook constant: 75 ppm for an ounce in 100 gallons of a pure nutrient, to 0.2 %", () => {
    const pure = fertilizer({ id: "s", analysis: "100-0-0" });
    const ounce = quantity(0.01, "oz/gal", "product:s");
    const made = concentrationOf(ounce, pure, "N").in("mg/L");
    expect(made).toBeCloseTo(74.89, 2);
    expect(Math.abs(made / 75 - 1)).toBeLessThan(0.002);
  });

  test("refuse a nutrient that is not there, a negative one and a mass", () => {
    const urea = fertilizer({ id: "u", analysis: "46-0-0" });
    expect(errorOf(() => productForConcentration(quantity(1, "mg/L", "K2O"), urea)).code).toBe("infeasible");
    expect(errorOf(() => productForConcentration(ppm(-1), urea))).toMatchObject({
      code: "range",
      path: "concentration",
    });
    expect(errorOf(() => productForConcentration(quantity(1, "lb", "N") as never, urea)).code).toBe(
      "unit/mismatch",
    );
    expect(errorOf(() => concentrationOf(quantity(1, "g/L", "product:v") as never, urea, "N")).code).toBe(
      "substance/mismatch",
    );
  });
});

describe("injectors", () => {
  test("tell one in so many from one and so many", () => {
    expect([injector("1:15").dilution, injector("1+15").dilution]).toEqual([15, 16]);
    const of = (setting: "1:100" | "1+100" | "1+99") =>
      stockTank({
        targets: [ppm(200)],
        salts: [salt("s", "20-20-20")],
        injector: injector(setting),
        tank: quantity(1, "gal"),
      }).salts[0]?.amount.in("oz") as number;
    expect(of("1+100") / of("1:100")).toBeCloseTo(1.01, 12);
    expect(of("1+99")).toBeCloseTo(of("1:100"), 12);
  });

  test("refuse other notations and impossible settings", () => {
    for (const text of ["100", "1 : 100", "2:100", "1/100", "1:-5", "1:1e3", "1%", ""]) {
      expect(errorOf(() => injector(text as never)).code).toBe("text");
    }
    expect(errorOf(() => injector("1:1")).code).toBe("range");
    expect(errorOf(() => injector("1:0.5")).code).toBe("range");
    expect(errorOf(() => injector("1+0")).code).toBe("range");
    const forged = { ...injector("1:100"), dilution: 50 };
    expect(errorOf(() => stockFlow({ flow: quantity(1, "gal/min"), injector: forged })).path).toBe(
      "injector.dilution",
    );
  });

  test("draw what the rates say", () => {
    expect(stockFlow({ flow: quantity(100, "L/min"), injector: injector("1+99") }).in("L/min")).toBe(1);
    const rate = injectionRate({
      application: quantity(5, "gal/acre", "product:f"),
      covered: quantity(4, "acre/h"),
    });
    expect([rate.in("gal/h"), rate.of]).toEqual([20, "product:f"]);
    expect(
      errorOf(() => injectionRate({ application: quantity(5, "gal/acre"), covered: quantity(0, "acre/h") }))
        .path,
    ).toBe("covered");
  });
});

describe("stock tanks", () => {
  const salts = [salt("an", "33.5-0-0"), salt("mkp", "0-53-34"), salt("kn", "13-0-44")];

  test("of several salts meet every target behind the injector", () => {
    // None at all, or an amount that has all its digits: products of subnormal numbers lose them.
    const amount = fc.double({ min: 0, max: 2, noNaN: true }).map((grams) => (grams < 1e-200 ? 0 : grams));
    fc.assert(
      fc.property(fc.tuple(amount, amount, amount), fc.integer({ min: 2, max: 300 }), (grams, parts) => {
        // Targets that are made from known amounts, in g/L of final solution.
        const [a, m, k] = grams;
        const target = {
          N: 1000 * (0.335 * a + 0.13 * k),
          P2O5: 1000 * 0.53 * m,
          K2O: 1000 * (0.34 * m + 0.44 * k),
        };
        const recipe = stockTank({
          targets: [
            quantity(target.K2O, "mg/L", "K2O"),
            quantity(target.N, "mg/L", "N"),
            quantity(target.P2O5, "mg/L", "P2O5"),
          ],
          salts,
          injector: injector(`1:${parts}`),
          tank: quantity(50, "L"),
        });
        const made = recipe.salts.map((one) => one.amount.in("g"));
        for (const [i, g] of grams.entries()) {
          expect(Math.abs((made[i] as number) - g * parts * 50)).toBeLessThan(1e-6 * parts * 50);
        }
        for (const [name, value] of Object.entries(target)) {
          expect(Math.abs((recipe.solution[name as "N"]?.in("mg/L") ?? 0) - value)).toBeLessThan(
            1e-6 * Math.max(1, value),
          );
        }
        expect(recipe.makes.in("L")).toBeCloseTo(50 * parts, 9);
      }),
    );
  });

  test("say why they cannot be made", () => {
    const run = (targets: readonly unknown[], list: readonly StockSalt[]) =>
      errorOf(() =>
        stockTank({
          targets: targets as never,
          salts: list,
          injector: injector("1:100"),
          tank: quantity(10, "gal"),
        }),
      );
    const potash = quantity(200, "mg/L", "K2O");
    // The phosphate salt brings more potash than is wanted.
    expect(run([ppm(100), quantity(300, "mg/L", "P2O5"), quantity(50, "mg/L", "K2O")], salts)).toMatchObject({
      code: "infeasible",
      path: "salts[2]",
    });
    expect(run([ppm(100), potash], [salt("a", "33-0-0"), salt("b", "46-0-0")])).toMatchObject({
      code: "infeasible",
      path: "salts",
    });
    expect(run([ppm(100), potash], [salt("a", "10-0-20"), salt("b", "20-0-40")]).code).toBe("infeasible");
    expect(run([ppm(100)], salts)).toMatchObject({ code: "conflict", path: "salts" });
    expect(run([ppm(100), ppm(50)], salts.slice(0, 2))).toMatchObject({
      code: "duplicate",
      path: "targets[1]",
    });
    expect(run([ppm(100), potash], [salts[0] as StockSalt, salts[0] as StockSalt])).toMatchObject({
      code: "duplicate",
    });
    expect(run([quantity(50, "mg/L", "P2O5"), quantity(50, "mg/L", "P")], salts.slice(0, 2)).code).toBe(
      "duplicate",
    );
    expect(run([ppm(-1)], [salts[0] as StockSalt])).toMatchObject({ code: "range", path: "targets[0]" });
    expect(run([], [])).toMatchObject({ code: "missing", path: "targets" });
  });

  test("warn where a salt does not dissolve, and where two fall out together", () => {
    const recipe = (setting: "1:100" | "1:400") =>
      stockTank({
        targets: [ppm(200)],
        salts: [
          { ...salt("s", "20-20-20"), solubility: quantity(4, "lb/gal"), solubilitySource: "the label" },
        ],
        injector: injector(setting),
        tank: quantity(5, "gal"),
      });
    expect(recipe("1:100").findings).toEqual([]);
    expect(recipe("1:100").checked[0]).toContain("s");
    // 13.35 oz/gal at 1:100 is 3.34 lb/gal at 1:400.
    expect(recipe("1:400").findings).toEqual([]);
    const strong = stockTank({
      targets: [ppm(500)],
      salts: [{ ...salt("s", "20-20-20"), solubility: quantity(4, "lb/gal"), solubilitySource: "the label" }],
      injector: injector("1:400"),
      tank: quantity(5, "gal"),
    });
    expect(strong.findings).toMatchObject([
      { code: "stock/solubility", path: "salts[0].solubility", source: "the label" },
    ]);
    const together = stockTank({
      targets: [ppm(150), quantity(100, "mg/L", "P2O5")],
      salts: [salt("cn", "15.5-0-0-19Ca"), salt("map", "12-61-0")],
      injector: injector("1:100"),
      tank: quantity(5, "gal"),
    });
    expect(together.findings.map(({ code }) => code)).toEqual(["stock/precipitate"]);
    expect(together.solution.Ca?.in("mg/L")).toBeGreaterThan(0);
  });

  test("tell what the solution holds in the form of the target", () => {
    const recipe = stockTank({
      targets: [quantity(30, "mg/L", "P")],
      salts: [salt("map", "12-61-0")],
      injector: injector("1:100"),
      tank: quantity(5, "gal"),
    });
    // 30 mg/L P are 30 * 141.943 / 61.948 = 68.74 mg/L P2O5, and 12 / 61 of that in nitrogen.
    expect(Object.keys(recipe.solution)).toEqual(["P", "N"]);
    expect(recipe.solution.P?.in("mg/L")).toBeCloseTo(30, 9);
    expect(recipe.solution.N?.in("mg/L")).toBeCloseTo((((30 * 141.943) / 61.948) * 12) / 61, 9);
  });

  test("warn where the stock would hold more salt than water", () => {
    const heavy = stockTank({
      targets: [ppm(1000)],
      salts: [salt("s", "20-20-20")],
      injector: injector("1:250"),
      tank: quantity(5, "gal"),
    });
    // 5 g/L behind the injector is 1.25 kg/L in the stock.
    expect(heavy.findings).toMatchObject([{ code: "stock/heavier-than-water", params: { amount: 1.25 } }]);
  });

  test("take what JSON leaves of their input", () => {
    const input = {
      targets: [ppm(200), quantity(50, "mg/L", "P2O5"), quantity(150, "mg/L", "K2O")] as const,
      salts,
      injector: injector("1:200"),
      tank: quantity(100, "gal"),
    };
    expect(JSON.stringify(stockTank(JSON.parse(JSON.stringify(input))))).toBe(
      JSON.stringify(stockTank(input)),
    );
  });
});

describe("injector charts", () => {
  test("hit their rows and go on in proportion beyond them", () => {
    for (const row of labelChart20.rows) {
      for (const [setting, ounces] of Object.entries(row.ouncesPerGallon)) {
        expect(chartAmount({ chart: labelChart20, setting, concentration: ppm(row.ppm) }).in("oz/gal")).toBe(
          ounces,
        );
      }
    }
    expect(chartAmount({ chart: labelChart20, setting: "1:100", concentration: ppm(400) }).in("oz/gal")).toBe(
      27,
    );
    expect(chartAmount({ chart: labelChart20, setting: "1:100", concentration: ppm(0) }).in("oz/gal")).toBe(
      0,
    );
  });

  test("give a conductivity inside their rows only", () => {
    expect(chartConductivity(labelChart20, ppm(75)).in("mS/cm")).toBeCloseTo(0.48, 12);
    expect(errorOf(() => chartConductivity(labelChart20, ppm(201)))).toMatchObject({
      code: "range",
      path: "concentration",
    });
    expect(
      errorOf(() => chartAmount({ chart: labelChart20, setting: "1:64", concentration: ppm(100) })),
    ).toMatchObject({
      code: "type",
      path: "setting",
    });
    const falling = { ...labelChart20, rows: [...labelChart20.rows].reverse() };
    expect(errorOf(() => chartConductivity(falling, ppm(75))).path).toBe("chart.rows[1].ppm");
  });
});
