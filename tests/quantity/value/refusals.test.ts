import { describe, expect, test } from "vitest";
import { expectAmount, expectQuantity, Quantity, quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

/** A plain-JavaScript caller has no compiler. */
// biome-ignore lint/suspicious/noExplicitAny: that is the point
const js = quantity as any;
const lb = quantity(3, "lb");
const due = 'a quantity, as quantity(3, "lb") makes';
const finite = "a finite number";
const unit = "a unit, such as lb/acre (suggestUnit names the nearest)";
const substance =
  "a substance, such as N or product, or other:sand for one of your own (suggestSubstance names the nearest)";
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected, got }) => `${code} | ${path} | ${expected} | ${got}`);
type Row = readonly [name: string, call: () => unknown, problem: string];

describe("what a quantity refuses, and the next step", () => {
  test.each<Row>([
    [
      "text for a number",
      () => js("3", "lb"),
      `not-finite | value | ${finite}; parseQuantity and readQuantity read text | "3"`,
    ],
    ["no number", () => js(Number.NaN, "lb"), `not-finite | value | ${finite} | not a number`],
    ["a unit in words", () => js(3, "lbs"), `unit/unknown | unit | ${unit} | "lbs"`],
    [
      "a substance in words",
      () => js(3, "lb", "nitrogen"),
      `substance/unknown | of | ${substance} | "nitrogen"`,
    ],
    [
      "a class made by hand",
      () => new Quantity(1, 2 as never, "none", "mass"),
      "type | quantity | unit, substance and dimension as texts | a list of 3",
    ],
    [
      "a class without substance",
      () => new Quantity(1, "lb", 2 as never, "mass"),
      "type | quantity | unit, substance and dimension as texts | a list of 3",
    ],
    [
      "a class without dimension",
      () => new Quantity(1, "lb", "none", 2 as never),
      "type | quantity | unit, substance and dimension as texts | a list of 3",
    ],
    [
      "another dimension",
      () => js(3, "lb").in("gal"),
      'unit/mismatch | unit | a unit for a weight, as lb is | "gal"',
    ],
    ["no such unit to go to", () => js(3, "lb").in("gallon"), `unit/unknown | unit | ${unit} | "gallon"`],
    [
      "a number where a quantity is added",
      () => js(3, "lb").plus(2),
      "type | other | a weight, such as 50 lb or 20 kg, made by quantity(2, unit) | 2",
    ],
    [
      "a number by a share",
      () => expectQuantity(70, { dimension: "1" }, "share"),
      'type | share | a share, such as 40 % or 0.4, made by quantity(40, "%") or quantity(0.4, "1") | 70',
    ],
    [
      "a number for money",
      () => expectQuantity(70, { dimension: "money:USD" }, "cost"),
      "type | cost | an amount of money, such as 40 USD, made by quantity(70, unit) | 70",
    ],
    [
      "text for a quantity",
      () => expectQuantity("3 lb", { dimension: "mass" }, "bag"),
      'type | bag | a weight, such as 50 lb or 20 kg; parseQuantity and readQuantity read text | "3 lb"',
    ],
    [
      "nothing for a quantity",
      () => expectQuantity(undefined, { dimension: "mass" }, "bag"),
      "missing | bag | a weight, such as 50 lb or 20 kg | undefined",
    ],
    [
      "another kind",
      () => expectQuantity(lb, { dimension: "area" }, "field"),
      "unit/mismatch | field | an area, such as 5000 ft2 or 500 m2 | 3 lb",
    ],
    [
      "a stranger's field",
      () => expectQuantity({ value: 3, unit: "lb", fo: "N" }, { dimension: "mass" }, "bag"),
      'type | bag.fo | value, unit, of, dimension alone | "fo"',
    ],
    [
      "a stranger's unit",
      () => expectQuantity({ value: 3, unit: "lbs" }, { dimension: "mass" }, "bag"),
      `unit/unknown | bag | ${unit} | "lbs"`,
    ],
    [
      "a stranger's substance",
      () => expectQuantity({ value: 3, unit: "lb", of: "nitrogen" }, { dimension: "mass" }, "bag"),
      `substance/unknown | bag | ${substance} | "nitrogen"`,
    ],
    [
      "a stranger's number",
      () => expectQuantity({ value: Number.NaN, unit: "lb" }, { dimension: "mass" }, "bag"),
      `not-finite | bag | ${finite} | not a number`,
    ],
    [
      "a misspelt expectation",
      () => expectQuantity(lb, { dimension: "mass", fo: "N" } as never, "bag"),
      'type | expected.fo | dimension, of, bound, value, unit alone | "fo"',
    ],
    [
      "an expectation of no kind",
      () => expectQuantity(lb, {} as never, "bag"),
      "missing | expected.dimension | the name of a dimension | undefined",
    ],
    [
      "none at all",
      () => expectQuantity(quantity(0, "lb"), { dimension: "mass", bound: "positive" }, "bag"),
      "range | bag | more than zero | 0 lb",
    ],
    [
      "less than none",
      () => expectQuantity(quantity(-1, "lb"), { dimension: "mass", bound: "non-negative" }, "bag"),
      "range | bag | zero or more | -1 lb",
    ],
    [
      "no substance where one is due",
      () => expectQuantity(lb, { dimension: "mass", of: "N" }, "bag"),
      'substance/mismatch | bag | a quantity of N, such as quantity(3, "lb", "N") | 3 lb',
    ],
    [
      "a substance where none is due",
      () => expectQuantity(quantity(3, "lb", "N"), { dimension: "mass", of: "none" }, "bag"),
      "substance/mismatch | bag | a quantity of no substance | 3 lb of N",
    ],
    [
      "another substance",
      () => expectQuantity(quantity(3, "lb", "K"), { dimension: "mass", of: "N" }, "bag"),
      "substance/mismatch | bag | a quantity of N | 3 lb of K",
    ],
    [
      "times a quantity that goes with nothing",
      () => js(3, "lb").times(js(1, "psi")),
      "unit/mismatch | other | a quantity that can multiply a weight | 1 psi",
    ],
    [
      "per a quantity that goes with nothing",
      () => js(3, "psi").per(js(1, "lb")),
      "unit/mismatch | other | a quantity that can divide a pressure | 1 lb",
    ],
    [
      "times another substance",
      () => js(3, "% w/w", "ai/product").times(js(1, "lb", "spray")),
      "substance/mismatch | other | a substance that can multiply ai/product | 1 lb of spray",
    ],
    [
      "per another substance",
      () => js(3, "lb", "N/product").per(js(1, "lb", "spray")),
      "substance/mismatch | other | a substance that can divide N/product | 1 lb of spray",
    ],
    [
      "times text",
      () => js(3, "lb").times("2"),
      `type | other | ${due}; parseQuantity and readQuantity read text | "2"`,
    ],
    [
      "times infinity",
      () => js(3, "lb").times(Number.POSITIVE_INFINITY),
      `not-finite | number | ${finite} | infinity`,
    ],
    ["divided by 0", () => js(3, "lb").dividedBy(0), "range | number | anything but 0 | 0"],
    [
      "divided by a quantity",
      () => js(3, "lb").dividedBy(lb),
      "type | number | a number; per(...) divides by a quantity | 3 lb",
    ],
    ["per nothing", () => js(3, "lb").per(js(0, "acre")), "range | other | anything but 0 | 0 acre"],
    [
      "a temperature doubled",
      () => js(20, "°C").times(2),
      "type | this | what temperatureDifference(a, b) gives | 20 °C",
    ],
    [
      "a temperature added",
      () => js(20, "°C").plus(js(2, "°C")),
      "unit/mismatch | other | a temperature difference, such as 9 °F diff or 5 °C diff | 2 °C",
    ],
    [
      "a difference added of another substance",
      () => js(20, "°C", "soil").plus(js(2, "°C diff", "water")),
      "substance/mismatch | other | a quantity of soil | 2 °C diff of water",
    ],
    [
      "a plus sign",
      () => js(1, "lb") + js(1, "lb"),
      "type | quantity | no + or < on quantities, but plus, minus, compare, in(unit) or format | 1 lb",
    ],
    [
      "compared with another kind",
      () => js(1, "lb").compare(js(1, "gal")),
      "unit/mismatch | other | a weight, such as 50 lb or 20 kg | 1 gal",
    ],
  ])("%s", (_, call, problem) => {
    expect(told(call)).toEqual([problem]);
  });

  test("a form of an element that a function turns into the other", () => {
    const rows: readonly (readonly [got: string, wanted: string, words: string])[] = [
      ["P2O5", "P", 'a quantity of P; inForm(amount, "P") gives it'],
      ["P", "P2O5", 'a quantity of P2O5; inForm(amount, "P2O5") gives it'],
      ["K", "K2O", 'a quantity of K2O; inForm(amount, "K2O") gives it'],
      ["K2O", "K", 'a quantity of K; inForm(amount, "K") gives it'],
      ["CaO", "Ca", 'a quantity of Ca; inForm(amount, "Ca") gives it'],
      ["Ca", "CaO", 'a quantity of CaO; inForm(amount, "CaO") gives it'],
      ["MgO", "Mg", 'a quantity of Mg; inForm(amount, "Mg") gives it'],
      ["Mg", "MgO", 'a quantity of MgO; inForm(amount, "MgO") gives it'],
      ["P", "K", "a quantity of K"],
      ["Mg", "Ca", "a quantity of Ca"],
      ["NO3", "N", "a quantity of N; nitrogenOf(amount) counts it as N"],
      ["NO3-N", "N", "a quantity of N; nitrogenOf(amount) counts it as N"],
      ["NH4-N", "N", "a quantity of N; nitrogenOf(amount) counts it as N"],
      ["N:slow", "N", "a quantity of N; nitrogenOf(amount) counts it as N"],
      ["Na", "N", "a quantity of N"],
      ["Ni", "N", "a quantity of N"],
      ["NO3", "P", "a quantity of P"],
      ["product:K2O", "K", "a quantity of K"],
      ["K", "product:K", "a quantity of product:K"],
    ];
    for (const [got, of, words] of rows) {
      const call = (): unknown => expectQuantity(js(3, "lb", got), { dimension: "mass", of }, "bag");
      expect(told(call)).toEqual([`substance/mismatch | bag | ${words} | 3 lb of ${got}`]);
    }
  });

  test("of several kinds", () => {
    const either = { dimensions: ["mass", "mass/area"] } as const;
    expect(told(() => expectAmount(js(3, "gal"), either, "dose"))).toEqual([
      "unit/mismatch | dose | a weight or a weight over an area, such as 50 lb or 1 lb/1000 ft2 | 3 gal",
    ]);
    expect(told(() => expectAmount(3, either, "dose"))).toEqual([
      "type | dose | a weight or a weight over an area, such as 50 lb or 1 lb/1000 ft2, made by quantity(3, unit) | 3",
    ]);
    expect(told(() => expectAmount(lb, { dimensions: "mass" } as never, "dose"))).toEqual([
      'type | expected.dimensions | a list of dimensions | "mass"',
    ]);
    expect(told(() => expectAmount(lb, { ...either, of: "N" }, "dose"))).toEqual([
      'substance/mismatch | dose | a quantity of N, such as quantity(3, "lb", "N") | 3 lb',
    ]);
    expect(told(() => expectAmount(js(0, "lb"), { ...either, bound: "positive" }, "dose"))).toEqual([
      "range | dose | more than zero | 0 lb",
    ]);
    expect(expectAmount({ value: 0, unit: "lb" }, { ...either, bound: "non-negative" }, "dose").value).toBe(
      0,
    );
  });
});
