import { describe, expect, test } from "vitest";
import {
  expectAmount,
  expectQuantity,
  inUnit,
  likeQuantity,
  max,
  min,
  money,
  numberIn,
  perOf,
  Quantity,
  quantity,
  quantityOf,
  timesOf,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

// biome-ignore lint/suspicious/noExplicitAny: a plain-JavaScript caller has no compiler
const js = quantity as any;
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected, got }) => `${code} | ${path} | ${expected} | ${got}`);
const wrongSubstance = (got: string, of: string): readonly string[] =>
  told(() => expectQuantity(js(3, "lb", got), { dimension: "mass", of }, "bag"));

describe("numbers", () => {
  test("in its own unit a number is what it was, to the last digit", () => {
    for (const [value, unit] of [
      [0.1, "°F"],
      [0.1, "K"],
      [1 / 3, "lb/acre"],
    ] as const) {
      expect(js(value, unit).in(unit)).toBe(value);
      expect(numberIn(js(value, unit), unit)).toBe(value);
    }
  });

  test("what is divided and what is multiplied, worked by hand", () => {
    expect(quantity(6, "lb").dividedBy(4).toString()).toBe("1.5 lb");
    expect(quantity(6, "lb").times(4).toString()).toBe("24 lb");
    expect(quantity(6, "lb").dividedBy(0.5).value).toBe(12);
  });

  test("nothing times nothing is nothing, and nothing is no divisor", () => {
    const rate = quantity(3, "lb/acre", "N");
    expect(rate.times(quantity(0, "acre")).toString()).toBe("0 lb of N");
    expect(quantity(0, "lb/acre").times(quantity(2, "acre")).toString()).toBe("0 lb");
    expect(told(() => quantity(6, "lb").per(quantity(0, "acre")))).toEqual([
      "range | other | anything but 0 | 0 acre",
    ]);
  });

  test("a factor or divisor that is no number is told as such", () => {
    expect(told(() => quantity(6, "lb").dividedBy(Number.NaN))).toEqual([
      "not-finite | number | a finite number | not a number",
    ]);
    expect(told(() => quantity(6, "lb").times(Number.POSITIVE_INFINITY))).toEqual([
      "not-finite | number | a finite number | infinity",
    ]);
  });

  test("min and max give the very quantity of the list", () => {
    const [a, b] = [quantity(20, "fl oz"), quantity(1, "pt")];
    expect(min([a, b])).toBe(b);
    expect(max([a, b])).toBe(a);
    expect(min([a])).toBe(a);
  });

  test("what overflows is told under the name that the caller knows", () => {
    const huge = quantity(1e305, "US ton");
    const finite = "a finite number";
    const many = "an amount that is a finite number of mg | 1e+305 US ton";
    expect(told(() => inUnit(huge, "mg"))).toEqual([`not-finite | quantity | ${many}`]);
    expect(told(() => inUnit(huge, "mg", "bag"))).toEqual([`not-finite | bag | ${many}`]);
    expect(told(() => numberIn(huge, "mg"))).toEqual([`not-finite | quantity | ${many}`]);
    expect(told(() => numberIn(huge, "mg", "bag"))).toEqual([`not-finite | bag | ${many}`]);
    expect(told(() => huge.in("mg"))).toEqual([`not-finite | value | ${many}`]);
    const quotient = "amounts whose quotient is a finite number | 1e+305 US ton";
    const small = quantity(1e-10, "acre");
    expect(told(() => perOf(huge, small))).toEqual([`not-finite | dividend | ${quotient}`]);
    expect(told(() => perOf(huge, small, "bag"))).toEqual([`not-finite | bag | ${quotient}`]);
    expect(told(() => huge.per(small))).toEqual([`not-finite | value | ${quotient}`]);
    const product = "amounts whose product is a finite number | 1e+305 US ton";
    expect(told(() => timesOf(huge, quantity(1e10, "1")))).toEqual([`not-finite | factor | ${product}`]);
    expect(told(() => timesOf(huge, quantity(1e10, "1"), "bag"))).toEqual([`not-finite | bag | ${product}`]);
    expect(told(() => perOf(undefined, small, "bag")).map((text) => text.slice(0, 13))).toEqual([
      "missing | bag",
    ]);
    expect(told(() => perOf(huge, undefined)).map((text) => text.slice(0, 17))).toEqual([
      "missing | divisor",
    ]);
    expect(told(() => timesOf(huge, undefined)).map((text) => text.slice(0, 16))).toEqual([
      "missing | factor",
    ]);
    expect(told(() => likeQuantity(huge, Number.POSITIVE_INFINITY))).toEqual([
      `not-finite | value | ${finite} | infinity`,
    ]);
  });
});

describe("units written over by hand", () => {
  const lost = new Quantity(3, "furlong", "none", "length");
  const unit = "a unit, such as lb/acre (suggestUnit names the nearest)";
  test("on either side of a product", () => {
    expect(told(() => lost.times(quantity(2, "ft")))).toEqual([`unit/unknown | this | ${unit} | "furlong"`]);
    expect(told(() => quantity(2, "ft").times(lost as Quantity<"length", "none">))).toEqual([
      `unit/unknown | other | ${unit} | "furlong"`,
    ]);
  });
});

describe("what is expected", () => {
  test("the form of a nutrient is named only where one is converted to the other", () => {
    expect(wrongSubstance("P", "P2O5")).toEqual([
      'substance/mismatch | bag | a quantity of P2O5; inForm(amount, "P2O5") gives it | 3 lb of P',
    ]);
    for (const [got, of] of [
      ["CaCO3 equivalent", "CaO"],
      ["Ca", "CaCO3 equivalent"],
      ["P/product:K", "P"],
      ["P", "P/product:K"],
      ["K2O", "P2O5"],
    ] as const)
      expect(wrongSubstance(got, of)).toEqual([
        `substance/mismatch | bag | a quantity of ${of} | 3 lb of ${got}`,
      ]);
  });

  test("the parts of nitrogen are counted as nitrogen, and nothing else is", () => {
    for (const got of ["N:slow", "NO3", "NH4-N"])
      expect(wrongSubstance(got, "N")).toEqual([
        `substance/mismatch | bag | a quantity of N; nitrogenOf(amount) counts it as N | 3 lb of ${got}`,
      ]);
    for (const got of ["ai:NO", "Na", "Ni"])
      expect(wrongSubstance(got, "N")).toEqual([
        `substance/mismatch | bag | a quantity of N | 3 lb of ${got}`,
      ]);
  });

  test("a list of dimensions has at most a thousand", () => {
    const list = (length: number): readonly string[] =>
      Array.from({ length }, (_, i) => (i === 0 ? "mass" : "volume"));
    expect(expectAmount(quantity(3, "lb"), { dimensions: list(1000) }, "dose").value).toBe(3);
    expect(told(() => expectAmount(quantity(3, "lb"), { dimensions: list(1001) }, "dose"))).toEqual([
      "type | expected.dimensions | a list of dimensions | a list of 1001",
    ]);
  });

  test("words that are none are a slip of the program", () => {
    expect(told(() => expectQuantity(quantity(3, "lb"), { dimension: "" }, "dose"))).toEqual([
      'type | expected.dimension | the name of a dimension | ""',
    ]);
    for (const dimensions of [[], [3], [{}], ["mass", 3]]) {
      const call = () => expectAmount(undefined, { dimensions } as never, "dose");
      expect(told(call)).toEqual(['missing | dose | a quantity, as quantity(3, "lb") makes | undefined']);
    }
    const odd = () => expectQuantity(3, { dimension: { a: 1 } } as never, "dose");
    expect(told(odd)).toEqual(['type | dose | a quantity, as quantity(3, "lb") makes | 3']);
  });

  test("a misspelt field of a record that is the whole input", () => {
    const call = () => expectQuantity({ value: 3, unit: "lb", oof: "N" }, { dimension: "mass" }, "");
    expect(told(call)).toEqual(['type | oof | value, unit, of, dimension alone | "oof"']);
  });

  test("a misspelt field of what is expected, whatever else is there", () => {
    const full = { dimension: "mass", of: "none", bound: "positive", least: 2 } as never;
    expect(told(() => expectQuantity(quantity(3, "lb"), full, "dose"))).toEqual([
      'type | expected.least | dimension, of, bound, value, unit alone | "least"',
    ]);
  });
});

describe("makers", () => {
  test("a substance is known by its name of 0.1 too, in what another program stored", () => {
    expect(quantityOf(1, "lb", "N:soluble").of).toBe("N:quick");
    const stored = { value: 3, unit: "lb", of: "N:soluble" };
    expect(expectQuantity(stored, { dimension: "mass", of: "N:quick" }, "bag").of).toBe("N:quick");
  });

  test("what is no number is told what to write in its place", () => {
    expect(told(() => expectQuantity(true, { dimension: "mass" }, "bag"))).toEqual([
      "type | bag | a weight, such as 50 lb or 20 kg, made by quantity(number, unit) | true",
    ]);
  });

  test("a substance that is no text", () => {
    const substance =
      "a substance, such as N or product, or other:sand for one of your own (suggestSubstance names the nearest)";
    expect(told(() => quantityOf(1, "lb", 5 as never, "rate"))).toEqual([
      `substance/unknown | rate | ${substance} | 5`,
    ]);
    expect(told(() => js(1, "lb", ["none"]))).toEqual([
      `substance/unknown | of | ${substance} | a list of 1`,
    ]);
    expect(told(() => js(1, "lb", ""))).toEqual([`substance/unknown | of | ${substance} | ""`]);
  });

  test("a currency is a text", () => {
    expect(told(() => money(1, ["USD"] as never))).toEqual([
      "unit/unknown | currency | a currency code of three capitals, such as USD | a list of 1",
    ]);
    expect(told(() => money("1" as never, "USD"))).toEqual(['not-finite | amount | a finite number | "1"']);
  });
});
