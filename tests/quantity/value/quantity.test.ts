import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  expectQuantity,
  max,
  min,
  oneWayProducts,
  perSubstance,
  productTable,
  Quantity,
  quantity,
  rateQuotients,
  simpleQuotients,
  substances,
  sum,
  timesSubstance,
} from "../../../src/quantity/index.js";
import { unitParts } from "../../../src/quantity/unit/units.js";
import { complaint } from "../../errors.js";

/** A quantity in SI units, by the sizes of the base units alone. */
const siOf = (q: Quantity<string, string>): number => {
  const parts = unitParts(q.unit);
  return (q.value * Number(parts?.size[0])) / Number(parts?.size[1]);
};

/** A plain-JavaScript caller has no compiler. */
// biome-ignore lint/suspicious/noExplicitAny: that is the point
const js = quantity as any;

describe("quantity", () => {
  test("keeps the typed number and its unit", () => {
    const q = quantity(3, "lb/1000 ft2", "N");
    expect(q.value).toBe(3);
    expect(q.unit).toBe("lb/1000 ft2");
    expect(q.of).toBe("N");
    expect(q.dimension).toBe("mass/area");
    expect(q.in("lb/1000 ft2")).toBe(3);
    expect(JSON.parse(JSON.stringify(q))).toEqual({ value: 3, unit: "lb/1000 ft2", of: "N" });
  });

  test("-0 is never returned", () => {
    expect(Object.is(quantity(-0, "lb").value, 0)).toBe(true);
    expect(Object.is(quantity(0, "lb").times(-1).value, 0)).toBe(true);
    expect(Object.is(quantity(-0, "lb").in("kg"), 0)).toBe(true);
  });

  test("temperatures are affine, differences are not", () => {
    expect(quantity(32, "°F").in("°C")).toBe(0);
    expect(quantity(212, "°F").in("°C")).toBe(100);
    expect(quantity(-40, "°F").in("°C")).toBe(-40);
    expect(quantity(25, "°C").in("K")).toBe(298.15);
    expect(quantity(9, "°F diff").in("°C diff")).toBe(5);
    expect(quantity(360, "°F d").in("°C d")).toBe(200);
    expect(quantity(50, "°F").plus(quantity(10, "°C diff")).in("°F")).toBe(68);
    expect(quantity(68, "°F").minus(quantity(18, "°F diff")).in("°F")).toBe(50);
  });
});

describe("plain-JavaScript callers", () => {
  test.each([
    ["misspelt unit", () => js(1, "lbs"), "unit/unknown unit"],
    ["no unit", () => js(1), "missing unit"],
    ["unit that is a number", () => js(1, 5), "unit/unknown unit"],
    ["inherited name", () => js(1, "toString"), "unit/unknown unit"],
    ["prototype", () => js(1, "__proto__"), "unit/unknown unit"],
    ["NaN", () => js(Number.NaN, "lb"), "not-finite value"],
    ["Infinity", () => js(Number.POSITIVE_INFINITY, "lb"), "not-finite value"],
    ["text for a number", () => js("3", "lb"), "not-finite value"],
    ["null", () => js(null, "lb"), "not-finite value"],
    ["no such quotient", () => js(1, "acre/psi"), "unit/unknown unit"],
    ["two slashes without time", () => js(1, "lb/acre/ft"), "unit/unknown unit"],
    ["four factors", () => js(1, "lb/acre/d/d"), "unit/unknown unit"],
    ["lower-case currency", () => js(1, "money:usd"), "unit/unknown unit"],
    ["no such substance", () => js(1, "lb", "nitrogen"), "substance/unknown of"],
    ["substance with two slashes", () => js(1, "lb", "N/product/spray"), "substance/unknown of"],
    ["empty id", () => js(1, "lb", "product:"), "substance/unknown of"],
    ["ounce and fluid ounce", () => js(1, "oz").plus(js(1, "fl oz")), "unit/mismatch other"],
    ["mass and area", () => js(1, "lb").minus(js(1, "acre")), "unit/mismatch other"],
    ["P and P2O5", () => js(1, "lb", "P").plus(js(1, "lb", "P2O5")), "substance/mismatch other"],
    [
      "product and nutrient",
      () => js(1, "lb", "product").compare(js(1, "lb", "N")),
      "substance/mismatch other",
    ],
    [
      "two products",
      () => js(1, "lb", "product:a").plus(js(1, "lb", "product:b")),
      "substance/mismatch other",
    ],
    ["area times area", () => js(1, "acre").times(js(1, "acre")), "unit/mismatch other"],
    [
      "ai/product times spray",
      () => js(1, "% w/w", "ai/product").times(js(1, "lb", "spray")),
      "substance/mismatch other",
    ],
    ["unit of another dimension", () => js(1, "lb/acre").in("gal/acre"), "unit/mismatch unit"],
    ["times text", () => js(1, "lb").times("2"), "type other"],
    ["times NaN", () => js(1, "lb").times(Number.NaN), "not-finite number"],
    ["divided by zero", () => js(1, "lb").dividedBy(0), "range number"],
    ["per a zero quantity", () => js(1, "lb").per(js(0, "acre")), "range other"],
    ["overflow", () => js(1e308, "lb").times(1e10), "not-finite value"],
    ["overflow on conversion", () => js(1e308, "US ton").in("mg"), "not-finite value"],
    ["a temperature doubled", () => js(20, "°C").times(2), "type this"],
    ["two temperatures added", () => js(20, "°C").plus(js(1, "°C")), "unit/mismatch other"],
    ["plus operator", () => js(1, "lb") + js(1, "lb"), "type quantity"],
    ["less-than operator", () => js(1, "lb") < js(1, "oz"), "type quantity"],
    ["two currencies", () => js(1, "money:USD").plus(js(1, "money:EUR")), "unit/mismatch other"],
    ["sum of nothing", () => sum([]), "missing items"],
    ["sum of a list with a hole", () => sum([js(1, "lb"), undefined] as never), "missing items[1]"],
    ["sum of what is no quantity", () => sum([null] as never), "type items[0]"],
    ["sum of pounds and gallons", () => sum([js(1, "lb"), js(1, "gal")]), "unit/mismatch items[1]"],
    ["sum of P and P2O5", () => sum([js(1, "lb", "P"), js(1, "lb", "P2O5")]), "substance/mismatch items[1]"],
    ["sum of temperatures", () => sum([js(20, "°C"), js(5, "°C")]), "type items"],
    ["largest of pounds and gallons", () => max([js(1, "lb"), js(1, "gal")]), "unit/mismatch items[1]"],
    ["smallest of one text", () => min(["1 lb"] as never), "type items[0]"],
  ])("%s", (_name, work, expected) => {
    expect(complaint(work)).toBe(expected);
  });

  test("a quantity is neither a number nor a text by itself, and says what to use", () => {
    const rate = quantity(3, "lb/acre", "N");
    expect(`${rate}`).toBe("3 lb/acre of N");
    expect(() => Number(rate)).toThrow(/plus, minus, compare, in\(unit\) or format/);
    const text: unknown = rate;
    expect(() => ["a rate: ", text].reduce((before, next) => (before as string) + (next as string))).toThrow(
      /plus, minus, compare, in\(unit\) or format/,
    );
  });

  test("a stranger's substance is told where none is wanted", () => {
    const area = { value: 2, unit: "acre", of: "N" };
    expect(() => expectQuantity(area, { dimension: "area", of: "none" }, "field")).toThrow(
      "field: expected a quantity of no substance, got 2 acre of N",
    );
  });

  test("what JSON and structuredClone leave works as an operand", () => {
    const rate = quantity(3.75, "lb/1000 ft2", "product:a");
    const clone = structuredClone({ ...rate });
    const json = JSON.parse(JSON.stringify(quantity(12_400, "ft2")));
    expect((rate.times as CallableFunction)(json).in("lb")).toBe(46.5);
    expect(rate.compare(clone as unknown as typeof rate)).toBe(0);
  });

  test("template text is readable", () => {
    expect(`${quantity(3.75, "lb/1000 ft2", "product:a")}`).toBe("3.75 lb/1000 ft2 of product:a");
    expect(`${quantity(2, "acre")}`).toBe("2 acre");
  });
});

/** A unit of each dimension. */
const sample: Record<string, string> = {
  mass: "lb",
  volume: "gal",
  area: "acre",
  length: "ft",
  time: "h",
  count: "count",
  pressure: "psi",
  angle: "deg",
  temperature: "°C",
  "temperature difference": "°F diff",
  "degree-days": "°F d",
  conductivity: "dS/m",
  "exchange capacity": "cmolc/kg",
  "charge/volume": "meq/L",
  irradiance: "W/m2",
  "radiant exposure": "MJ/m2",
  "mass/mass": "% w/w",
  "volume/volume": "fl oz/gal",
  "length/length": "in/ft",
  money: "money:USD",
  "1": "1",
};
const unitOf = (dimension: string): string =>
  sample[dimension] ??
  dimension
    .split("/")
    .map((part) => sample[part] as string)
    .join("/");

/** What the tables say: `a * b` and `a / b`, each with the dimension that comes out. */
const tableOfArithmetic = (): ReadonlyMap<string, string> => {
  const table = new Map<string, string>();
  for (const [product, c] of Object.entries({ ...productTable, ...oneWayProducts })) {
    const [a, b] = product.split(" * ") as [string, string];
    table.set(`${a} * ${b}`, c).set(`${b} * ${a}`, c);
    if (product in oneWayProducts) continue;
    if (a !== c) table.set(`${c} / ${a}`, b);
    if (b !== c) table.set(`${c} / ${b}`, a);
  }
  for (const q of simpleQuotients) {
    const [a, b] = q.split("/") as [string, string];
    table.set(`${q} * ${b}`, a).set(`${b} * ${q}`, a).set(`${a} / ${b}`, q).set(`${a} / ${q}`, b);
  }
  return table;
};

describe("arithmetic", () => {
  test("a rate times an area is an amount, exactly", () => {
    expect(quantity(3.75, "lb/1000 ft2").times(quantity(12_400, "ft2")).toJSON()).toEqual({
      value: 46.5,
      unit: "lb",
      of: "none",
    });
    expect(quantity(2, "acre").times(quantity(20, "gal/acre")).toJSON()).toEqual({
      value: 40,
      unit: "gal",
      of: "none",
    });
    expect(quantity(4, "mi/h").times(quantity(10, "ft")).in("acre/h")).toBeCloseTo(
      (4 * 10 * 5280) / 43_560,
      12,
    );
    expect(quantity(15, "gal").per(quantity(60, "gal/acre")).in("acre")).toBe(0.25);
    expect(quantity(10, "gal/min").times(quantity(30, "s")).in("gal")).toBe(5);
    expect(quantity(2, "lb/acre").per(quantity(4, "lb/gal")).toJSON()).toEqual({
      value: 0.5,
      unit: "gal/acre",
      of: "none",
    });
    expect(
      quantity(0.5, "money:USD/lb", "none/N")
        .times(quantity(1, "lb/1000 ft2", "N"))
        .in("money:USD/acre"),
    ).toBe(21.78);
    expect(quantity(1, "in").times(quantity(1, "acre")).in("acre-in")).toBe(1);
    expect(quantity(200, "°C d").per(quantity(20, "°C diff")).in("d")).toBe(10);
    expect(quantity(1, "W/m2").times(quantity(1, "d")).in("MJ/m2")).toBe(0.0864);
    expect(quantity(1, "% w/v").in("g/L")).toBe(10);
  });

  test("for every pair of dimensions the arithmetic does what the table says, and no more", () => {
    const table = tableOfArithmetic();
    const all = [...Object.keys(sample), ...simpleQuotients, ...rateQuotients].filter((d) => d !== "1");
    let seen = 0;
    for (const a of all) {
      for (const b of all) {
        const [x, y] = [js(6, unitOf(a)), js(3, unitOf(b))];
        for (const sign of ["*", "/"]) {
          if (sign === "/" && a === b) continue;
          const expected = table.get(`${a} ${sign} ${b}`)?.replace(/^money/, "money:USD");
          const work = () => (sign === "*" ? x.times(y) : x.per(y));
          if (expected === undefined) {
            expect(complaint(work), `${a} ${sign} ${b}`).toMatch(/^unit\/mismatch|^substance\/mismatch/);
          } else {
            const result = work();
            expect(result.dimension, `${a} ${sign} ${b}`).toBe(expected);
            // The number agrees with SI arithmetic: what was put in comes out again.
            const back = sign === "*" ? siOf(x) * siOf(y) : siOf(x) / siOf(y);
            expect(Math.abs(siOf(result) / back - 1), `${a} ${sign} ${b}`).toBeLessThan(1e-12);
            seen += 1;
          }
        }
      }
    }
    expect(seen).toBeGreaterThan(500);
  });

  test("no two rows of the table claim the same product or quotient", () => {
    const seen = new Map<string, string>();
    const claim = (key: string, result: string): void => {
      expect(seen.get(key) ?? result, key).toBe(result);
      seen.set(key, result);
    };
    for (const [product, c] of Object.entries(productTable)) {
      const [a, b] = product.split(" * ") as [string, string];
      claim(`${a} * ${b}`, c);
      claim(`${b} * ${a}`, c);
      if (a !== c) claim(`${c} / ${a}`, b);
      if (b !== c) claim(`${c} / ${b}`, a);
    }
    for (const q of simpleQuotients) {
      const [a, b] = q.split("/") as [string, string];
      claim(`${q} * ${b}`, a);
      claim(`${a} / ${b}`, q);
      claim(`${a} / ${q}`, b);
    }
  });

  test.each([
    ["lb", "N"],
    ["lb/acre", "N"],
    ["gal/acre", "spray"],
    ["gal/min", "water"],
    ["lb/gal", "spray"],
    ["mi/h", "none"],
    ["ft", "none"],
    ["h", "none"],
  ] as const)("%s of %s by itself is a pure number", (unit, of) => {
    const ratio = js(3, unit, of).per(js(4, unit, of));
    expect([ratio.dimension, ratio.of, ratio.in("%")]).toEqual(["1", "none", 75]);
  });

  test.each([
    ["lb/acre", "N", "product", "mass/mass"],
    ["lb/gal", "N", "product", "mass/mass"],
    ["gal/acre", "product", "spray", "volume/volume"],
    ["gal/min", "product", "water", "volume/volume"],
  ] as const)("%s of %s by that of %s is a share of one in the other", (unit, top, bottom, dimension) => {
    const share = js(1, unit, top).per(js(4, unit, bottom));
    const percent = share.in(dimension === "mass/mass" ? "% w/w" : "% v/v");
    expect([share.dimension, share.of, percent]).toEqual([dimension, `${top}/${bottom}`, 25]);
  });

  test("a depth by time over an area is a flow, and 1 in/h over 1000 ft2 is 10.39 gal/min", () => {
    const flow = quantity(1, "in/h").times(quantity(1000, "ft2"));
    expect(flow.dimension).toBe("volume/time");
    // 1000 ft2 x 1/12 ft = 83.33 ft3 = 623.377 gal in 60 min
    expect(flow.in("gal/min")).toBeCloseTo(623.3766 / 60, 5);
  });

  test("like by like is the fraction of what stands on top", () => {
    expect(
      quantity(1, "lb", "N")
        .per(quantity(4, "lb", "product"))
        .toJSON(),
    ).toEqual({ value: 0.25, unit: "lb/lb", of: "N/product" });
    expect(quantity(1, "acre").per(quantity(43_560, "ft2")).toJSON()).toEqual({
      value: 1,
      unit: "1",
      of: "none",
    });
    expect(quantity(6, "% w/w", "N:slow/product").per(quantity(24, "% w/w", "N/product")).of).toBe(
      "N:slow/N",
    );
  });

  test("min, max and sum", () => {
    const items = [quantity(20, "fl oz"), quantity(1, "pt"), quantity(0.5, "gal")];
    expect(min(items).unit).toBe("pt");
    expect(max(items).unit).toBe("gal");
    expect(sum(items).in("fl oz")).toBe(100);
    expect(max([quantity(20, "°C"), quantity(70, "°F")]).unit).toBe("°F");
    const stored = JSON.parse(JSON.stringify(items));
    expect(sum(stored).in("fl oz")).toBe(100);
    expect(min(stored).unit).toBe("pt");
  });
});

describe("laws", () => {
  // Below 1e-12 the smallest floating-point numbers have no digits left to keep a relative error.
  const amount = fc
    .double({ min: -1e9, max: 1e9, noNaN: true })
    .filter((x) => x === 0 || Math.abs(x) > 1e-12);
  const masses = fc.constantFrom("kg", "g", "mg", "t", "lb", "oz", "US ton", "grain" as const);

  test("there and back again", () => {
    fc.assert(
      fc.property(amount, masses, masses, (x, a, b) => {
        const back = js(js(x, a).in(b), b).in(a);
        expect(Math.abs(back - x)).toBeLessThanOrEqual(1e-14 * Math.abs(x));
      }),
    );
  });

  test("a sum does not depend on the units it was given in", () => {
    fc.assert(
      fc.property(amount, amount, masses, masses, (x, y, a, b) => {
        const one = js(x, a).plus(js(y, b)).in("kg");
        const other = js(y, b).plus(js(x, a)).in("kg");
        expect(Math.abs(one - other)).toBeLessThanOrEqual(
          1e-12 * (Math.abs(js(x, a).in("kg")) + Math.abs(js(y, b).in("kg"))),
        );
      }),
    );
  });

  test("compare is an order", () => {
    fc.assert(
      fc.property(amount, amount, masses, (x, y, a) => {
        expect(js(x, a).compare(js(y, a)) + js(y, a).compare(js(x, a))).toBe(0);
      }),
    );
  });

  test("substances: what per builds, times takes apart", () => {
    const names = substances.filter((s) => !["none", "treated", "gross", "plan"].includes(s));
    const one = fc.constantFrom(...names);
    fc.assert(
      fc.property(one, one, (a, b) => {
        const pair = perSubstance(a, b) as string;
        expect(timesSubstance(pair, b)).toBe(a === b ? b : a);
        expect(timesSubstance(b, pair)).toBe(a === b ? b : a);
        if (a !== b) expect(timesSubstance(a, b)).toBeUndefined();
        expect(timesSubstance(a, "none")).toBe(a);
        expect(perSubstance(a, "treated")).toBe(a);
      }),
    );
  });

  test("two copies of the class work together", () => {
    class Copy extends Quantity<"mass", "none"> {}
    const other = new Copy(16, "oz", "none", "mass");
    expect(quantity(1, "lb").compare(other)).toBe(0);
  });
});
