// Conversions against three libraries that define their units by themselves.
import ucum from "@lhncbc/ucum-lhc";
import Qty from "js-quantities";
import { unit as mathUnit } from "mathjs";
import { describe, expect, test } from "vitest";
import { commonQuotients, quantityOf, toUcum } from "../../../src/quantity/index.js";
import { converted } from "../../../src/quantity/value/converted.js";
import { printedFactors, soleUnits } from "../../constants/unit-sizes.js";
import { baseUnitDimensions } from "../samples.js";

/** Rounding of doubles: a handful of operations on both sides. */
const rounding = 1e-13;

interface Oracle {
  readonly name: string;
  /** Our unit as the library writes it, with a number of them where it has none of that size. */
  readonly names: Readonly<Record<string, string | readonly [count: number, name: string]>>;
  /** How far the library is off the definition, relative, and why. */
  readonly off: Readonly<Record<string, readonly [tolerance: number, reason: string]>>;
  readonly convert: (value: number, from: string, to: string) => number;
}

const same = (list: string): Record<string, string> =>
  Object.fromEntries(list.split(" ").map((name) => [name, name]));

const mathjs: Oracle = {
  name: "mathjs",
  names: {
    ...same("kg g mg oz m cm mm um km in ft yd mi m2 m3 L mL gal qt pt cup s Pa kPa bar psi K deg rad week"),
    t: "tonne",
    lb: "lbm",
    "US ton": "ton",
    grain: "grain",
    cm2: "cm^2",
    "100 m2": [100, "m2"],
    ha: "hectare",
    in2: "sqin",
    ft2: "sqft",
    yd2: "sqyd",
    "1000 ft2": [1000, "sqft"],
    acre: "acre",
    in3: "cuin",
    ft3: "cuft",
    yd3: "yd^3",
    "fl oz": "floz",
    min: "minute",
    h: "hour",
    d: "day",
    "°C": "degC",
    "°F": "degF",
  },
  off: {
    acre: [8.9e-7, "rounded to 4046.86 m2"],
    psi: [6e-11, "rounded to 6894.75729276459 Pa"],
  },
  convert: (value, from, to) => mathUnit(value, from).toNumber(to),
};

const jsQuantities: Oracle = {
  name: "js-quantities",
  names: {
    ...same(
      "kg g mg oz m cm mm um km in ft yd mi m2 m3 ml gal qt pt s min h kPa bar psi deg rad ft2 in2 yd2 cm2",
    ),
    ...same("in3 ft3 yd3 tsp Pa nmi"),
    t: "tonne",
    lb: "lbs",
    "US ton": "ton",
    "100 m2": [100, "m2"],
    ha: "hectare",
    "1000 ft2": [1000, "ft2"],
    acre: "acre",
    L: "l",
    mL: "ml",
    cup: "cu",
    "fl oz": "floz",
    tbsp: "tb",
    bu: "bushel",
    d: "day",
    week: "wk",
    "°C": "tempC",
    "°F": "tempF",
    K: "tempK",
    "°C diff": "degC",
    "°F diff": "degF",
  },
  off: {
    oz: [9e-10, "rounded to 10 digits"],
    acre: [6e-10, "rounded to 10 digits"],
    gal: [4.3e-9, "rounded to 9 digits"],
    qt: [4.3e-9, "made of the gallon"],
    pt: [4.3e-9, "made of the gallon"],
    cup: [6.4e-9, "rounded to 9 digits"],
    "fl oz": [4.7e-9, "rounded to 9 digits"],
    tbsp: [1.3e-9, "rounded to 9 digits"],
    tsp: [3.4e-9, "rounded to 9 digits"],
    bu: [5.3e-8, "rounded to 7 digits"],
    psi: [4e-7, "rounded to 6894.76 Pa"],
  },
  convert: (value, from, to) => Qty(value, from).to(to).scalar,
};

const utils = ucum.UcumLhcUtils.getInstance();
const ucumLhc: Oracle = {
  name: "ucum-lhc",
  names: Object.fromEntries(baseUnitDimensions.map(([unit]) => [unit, toUcum(unit as "lb")])),
  // the acre is asked for as square yards: [acr_us] is the survey acre, 4.0e-6 larger
  off: {},
  convert: (value, from, to) => utils.convertUnitTo(from, value, to).toVal ?? Number.NaN,
};

const oracles = [mathjs, jsQuantities, ucumLhc];
const affine = new Set(["°C", "°F", "K"]);

/** What the library writes for a base unit or a quotient of two: a count and a name. */
const writtenBy = (oracle: Oracle, unit: string): readonly [number, string] | undefined => {
  const own = Object.hasOwn(oracle.names, unit) ? oracle.names[unit] : undefined;
  if (own !== undefined) return typeof own === "string" ? [1, own] : own;
  const [top = "", bottom = "", more] = unit.split("/");
  if (bottom === "" || more !== undefined || unit === "1/d" || unit === "1/h") return undefined;
  const [above, below] = [writtenBy(oracle, top), writtenBy(oracle, bottom)];
  if (above === undefined || below === undefined) return undefined;
  const name =
    oracle === mathjs || oracle === ucumLhc ? `(${above[1]})/(${below[1]})` : `${above[1]}/${below[1]}`;
  return [above[0] / below[0], name];
};

const tolerance = (oracle: Oracle, units: readonly string[]): number =>
  units
    .flatMap((unit) => (Object.hasOwn(oracle.off, unit) ? [unit] : unit.split("/")))
    .reduce((sum, part) => sum + (oracle.off[part]?.[0] ?? 0), rounding);

/** Converts 7 of one unit here and there; `undefined` where the library does not know both. */
const compared = (oracle: Oracle, from: string, to: string): number | undefined => {
  const [source, target] = [writtenBy(oracle, from), writtenBy(oracle, to)];
  if (source === undefined || target === undefined) return undefined;
  const there = oracle.convert(7 * source[0], source[1], target[1]) / target[0];
  const here = converted(7, from, to);
  return Math.abs(there - here) / (affine.has(from) ? 1000 : Math.abs(here));
};

describe.each(oracles)("against $name", (oracle) => {
  test.each(baseUnitDimensions)("%s to every unit of %s", (from, dimension) => {
    const others = baseUnitDimensions.filter(([unit, of]) => of === dimension && unit !== from);
    for (const [to] of others) {
      const error = compared(oracle, from, to);
      if (error !== undefined)
        expect(error, `${from} to ${to}`).toBeLessThanOrEqual(tolerance(oracle, [from, to]));
    }
  });

  test("knows enough pairs to be worth asking", () => {
    const pairs = baseUnitDimensions.flatMap(([from, dimension]) =>
      baseUnitDimensions
        .filter(([to, of]) => of === dimension && to !== from)
        .filter(([to]) => compared(oracle, from, to) !== undefined),
    );
    expect(pairs.length).toBeGreaterThan(oracle === ucumLhc ? 500 : 300);
  });

  test.each(Object.entries(commonQuotients))("%s: every pair of the common quotients", (_, units) => {
    for (const from of units) {
      for (const to of units) {
        const error = compared(oracle, from, to);
        if (error !== undefined)
          expect(error, `${from} to ${to}`).toBeLessThanOrEqual(tolerance(oracle, [from, to]));
      }
    }
  });

  test("quotients that are on no list", () => {
    const of = (dimension: string): readonly string[] =>
      baseUnitDimensions.filter(([, other]) => other === dimension).map(([unit]) => unit);
    let checked = 0;
    for (const [top, bottom] of [
      ["mass", "area"],
      ["volume", "area"],
      ["volume", "time"],
      ["mass", "volume"],
    ] as const) {
      const reference = { area: "m2", time: "s", volume: "m3" }[bottom];
      const to = `${top === "mass" ? "kg" : "m3"}/${reference}`;
      for (const a of of(top)) {
        for (const b of of(bottom)) {
          const error = compared(oracle, `${a}/${b}`, to);
          if (error === undefined) continue;
          checked += 1;
          expect(error, `${a}/${b} to ${to}`).toBeLessThanOrEqual(tolerance(oracle, [`${a}/${b}`, to]));
        }
      }
    }
    expect(checked).toBeGreaterThan(200);
  });
});

describe("a tolerance is not wider than it must be", () => {
  test.each(
    oracles.flatMap((oracle) => Object.keys(oracle.off).map((unit) => [oracle.name, unit, oracle] as const)),
  )("%s is off for %s", (_, unit, oracle) => {
    const dimension = baseUnitDimensions.find(([name]) => name === unit)?.[1];
    const reference = { mass: "kg", area: "m2", volume: "m3", pressure: "Pa" }[dimension ?? ""] as string;
    expect(compared(oracle, unit, reference)).toBeGreaterThan((oracle.off[unit]?.[0] ?? 0) / 2);
  });
});

describe("whole numbers are exact", () => {
  test.each([
    [1, "acre", 43560, "ft2"],
    [1, "acre", 43.56, "1000 ft2"],
    [1, "acre", 4840, "yd2"],
    [1, "ft2", 144, "in2"],
    [1, "gal", 128, "fl oz"],
    [1, "gal", 768, "tsp"],
    [1, "gal", 256, "tbsp"],
    [1, "gal", 4, "qt"],
    [1, "gal", 8, "pt"],
    [1, "gal", 16, "cup"],
    [1, "gal", 231, "in3"],
    [1, "ft", 12, "in"],
    [1, "mi", 5280, "ft"],
    [1, "yd", 3, "ft"],
    [1, "yd3", 27, "ft3"],
    [1, "ft3", 1728, "in3"],
    [1, "acre-in", 3630, "ft3"],
    [1, "acre-ft", 12, "acre-in"],
    [1, "US ton", 2000, "lb"],
    [1, "lb", 16, "oz"],
    [1, "lb", 7000, "grain"],
    [1, "imp gal", 160, "imp fl oz"],
    [1, "week", 168, "h"],
    [1, "ha", 10000, "m2"],
    [1, "t", 1000, "kg"],
    [1, "in", 25.4, "mm"],
    [1, "lb/1000 ft2", 43.56, "lb/acre"],
    [1, "gal/1000 ft2", 128, "fl oz/1000 ft2"],
    [1, "kg/ha", 0.1, "g/m2"],
    [60, "mi/h", 88, "ft/s"],
    [1, "nmi/h", 1.852, "km/h"],
    [1, "lb/gal", 0.0078125, "lb/fl oz"],
  ])("%d %s = %d %s", (a, from, b, to) => {
    expect(converted(a, from, to)).toBe(b);
    expect(converted(b, to, from)).toBe(a);
  });
});

test("every base unit is held by an oracle or by the transcription", () => {
  const byOracle = (unit: string, dimension: string): boolean =>
    [mathjs, jsQuantities].some(
      (oracle) =>
        Object.hasOwn(oracle.names, unit) &&
        baseUnitDimensions.some(
          ([other, of]) => of === dimension && other !== unit && Object.hasOwn(oracle.names, other),
        ),
    );
  const transcribed = new Set([...printedFactors.map(({ unit }) => unit), ...soleUnits]);
  const loose = baseUnitDimensions.filter(
    ([unit, dimension]) => !byOracle(unit, dimension) && !transcribed.has(unit),
  );
  expect(loose).toEqual([]);
  expect(quantityOf(1, "count", "none", "q").dimension).toBe("count");
});
