import { describe, expect, test } from "vitest";
import {
  checkAgainstTarget,
  confidenceInterval,
  coverageFactor,
  errorOfProduct,
  estimateOfProduct,
  meanEstimate,
  readingsFor,
  statedEstimate,
} from "../../../src/numeric/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected, got }) => `${code} | ${path} | ${expected} | ${got}`);

const percent = (value: number) => quantity(value, "%");
const gpa = (value: number) => quantity(value, "gal/acre", "spray");
const stated = statedEstimate({ value: gpa(20), error: gpa(1), meaning: "limits" });
const good = { measured: gpa(20), target: gpa(20), tolerance: percent(5) };
const share = 'a share, such as 40 % or 0.4, made by quantity(40, "%") or quantity(0.4, "1")';

type Row = readonly [name: string, call: () => unknown, ...problems: readonly string[]];
const refused = (rows: readonly Row[]): void => {
  for (const [name, call, ...problems] of rows) expect([name, ...told(call)]).toEqual([name, ...problems]);
};

const productRows: readonly Row[] = [
  ["no list", () => errorOfProduct(3 as never), "type | factors | a list with at least one factor | 3"],
  ["none", () => errorOfProduct([]), "missing | factors | at least one factor | a list of 0"],
  ["no record", () => errorOfProduct([3 as never]), "type | factors[0] | a value with its error | 3"],
  [
    "no value",
    () => errorOfProduct([{ error: 1 } as never]),
    "missing | factors[0].value | a finite number | undefined",
  ],
  [
    "a value of 0",
    () => errorOfProduct([{ value: 0, error: 1 }]),
    "range | factors[0].value | a number other than 0, which has no relative error | 0",
  ],
  [
    "an error below none",
    () => errorOfProduct([{ value: 1, error: -1 }]),
    "range | factors[0].error | 0 or more | -1",
  ],
  [
    "a root of less than nothing",
    () => errorOfProduct([{ value: -1, error: 1, power: 0.5 }]),
    "range | factors[0].value | more than zero for power 0.5 | -1",
  ],
  [
    "a power in words",
    () => errorOfProduct([{ value: 1, error: 1, power: "2" as never }]),
    'not-finite | factors[0].power | a finite number | "2"',
  ],
  [
    "too large",
    () => errorOfProduct([{ value: 1e300, error: 0, power: 2 }]),
    "range | factors | numbers whose result is a finite number | a list of 1",
  ],
  [
    "no estimate",
    () => estimateOfProduct(gpa(1), [{ estimate: 3 as never }]),
    "type | factors[0].estimate | an estimate, as meanEstimate and statedEstimate give | 3",
  ],
  [
    "no factor",
    () => estimateOfProduct(gpa(1), [3 as never]),
    "type | factors[0] | an estimate or a relative error | 3",
  ],
  [
    "no relative error",
    () => estimateOfProduct(gpa(1), [{} as never]),
    "missing | factors[0] | one of its fields: an estimate, or a relativeError | a record",
  ],
  [
    "a relative error below none",
    () => estimateOfProduct(gpa(1), [{ relativeError: percent(-1) }]),
    "range | factors[0].relativeError | zero or more | -1 %",
  ],
  [
    "both",
    () => estimateOfProduct(gpa(1), [{ estimate: stated, relativeError: percent(1) } as never]),
    "conflict | factors[0].relativeError | an estimate or a relative error, not both | 1 %",
  ],
  [
    "an estimate of 0",
    () =>
      estimateOfProduct(gpa(1), [
        { estimate: statedEstimate({ value: gpa(0), error: gpa(1), meaning: "limits" }) },
      ]),
    "range | factors[0].estimate.value | anything but 0, which has no relative error | 0 gal/acre of spray",
  ],
  [
    "a power",
    () => estimateOfProduct(gpa(1), [{ relativeError: percent(1), power: Number.NaN }]),
    "not-finite | factors[0].power | a finite number | not a number",
  ],
  [
    "no value at all",
    () => estimateOfProduct(undefined as never, [{ relativeError: percent(1) }]),
    "missing | value | a quantity | undefined",
  ],
];

test("errors of products", () => {
  refused(productRows);
  // 2 % squared is 4 %, and a divisor counts as a factor does
  const error = (power: number): number =>
    estimateOfProduct(gpa(100), [{ relativeError: percent(2), power }]).standardError.in("gal/acre");
  expect([error(2), error(-2), error(1), error(-1)]).toEqual([4, 4, 2, 2]);
  expect(estimateOfProduct(gpa(-100), [{ relativeError: percent(2) }]).standardError.in("gal/acre")).toBe(2);
  const squared = estimateOfProduct(gpa(400), [{ estimate: meanEstimate([19, 21].map(gpa)), power: 2 }]);
  // one degree of freedom, a standard error of 1 in 20: 5 % twice
  expect(squared.standardError.in("gal/acre")).toBeCloseTo(40, 10);
  expect(squared.degreesOfFreedom).toBeCloseTo(1, 10);
});

const zero = "a quantity with a true zero, which a temperature has not: give a temperature difference";
const readingRows: readonly Row[] = [
  ["no list", () => meanEstimate(3 as never), "type | readings | a list with at least 2 readings | 3"],
  ["one", () => meanEstimate([gpa(1)]), "missing | readings | at least 2 readings | a list of 1"],
  [
    "a number",
    () => meanEstimate([1, 2] as never),
    'type | readings[0] | a quantity, such as quantity(3, "lb") | 1',
    'type | readings[1] | a quantity, such as quantity(3, "lb") | 2',
  ],
  [
    "temperatures",
    () => meanEstimate([quantity(1, "°C"), gpa(1)] as never),
    `unit/mismatch | readings[0] | ${zero} | 1 °C`,
  ],
  [
    "no substance",
    () => meanEstimate([{ value: 1, unit: "lb", of: 3 }, gpa(1)] as never),
    "substance/unknown | readings[0].of | a substance as text | 3",
  ],
  [
    "fewer than were read",
    () => meanEstimate([gpa(1), gpa(2)], { outOf: 1 }),
    "range | outOf | 2 or more | 1",
  ],
  [
    "half a reading",
    () => meanEstimate([gpa(1), gpa(2)], { outOf: 2.5 }),
    "range | outOf | a whole number | 2.5",
  ],
  [
    "no options",
    () => meanEstimate([gpa(1), gpa(2)], 3 as never),
    "type | options | a record of options | 3",
  ],
  [
    "no error",
    () => statedEstimate({ value: gpa(1), meaning: "limits" } as never),
    "missing | error | a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha | undefined",
  ],
  [
    "an error of another kind",
    () => statedEstimate({ value: gpa(1), error: quantity(1, "lb") as never, meaning: "limits" }),
    "unit/mismatch | error | a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha | 1 lb",
  ],
  [
    "an error below none",
    () => statedEstimate({ value: gpa(1), error: gpa(-1), meaning: "limits" }),
    "range | error | zero or more | -1 gal/acre of spray",
  ],
  [
    "another meaning",
    () => statedEstimate({ value: gpa(1), error: gpa(1), meaning: "2 sigma" as never }),
    'type | meaning | one of "standard error", "limits" | "2 sigma"',
  ],
  [
    "a confidence of all",
    () => confidenceInterval(stated, percent(100)),
    "range | confidence | 1 to 99.99 % | 100 %",
  ],
  ["hardly a confidence", () => coverageFactor(percent(0.5)), "range | confidence | 1 to 99.99 % | 0.5 %"],
  [
    "a confidence as a number",
    () => confidenceInterval(stated, 95 as never),
    `type | confidence | ${share.replace("70", "70")} | 95`,
  ],
  [
    "no degrees of freedom",
    () => coverageFactor(percent(95), 0.5),
    "range | degreesOfFreedom | 1 or more | 0.5",
  ],
  [
    "degrees of freedom of an estimate",
    () => confidenceInterval({ ...stated, degreesOfFreedom: 0 }),
    "range | estimate.degreesOfFreedom | 1 or more | 0",
  ],
  [
    "an error of an estimate",
    () => confidenceInterval({ ...stated, standardError: gpa(-1) }),
    "range | estimate.standardError | zero or more | -1 gal/acre of spray",
  ],
  [
    "no estimate",
    () => confidenceInterval(gpa(1) as never),
    "type | estimate | an estimate, as meanEstimate and statedEstimate give | 1 gal/acre of spray",
  ],
];

test("readings and estimates", () => {
  refused(readingRows);
  // the limits of a rectangle: half the width over the root of 3
  expect(stated.standardError.in("gal/acre")).toBeCloseTo(1 / Math.sqrt(3), 15);
  expect(coverageFactor(percent(1))).toBeGreaterThan(0);
  expect(coverageFactor(percent(99.99))).toBeGreaterThan(3.8);
});

const check = (more: object) => () => checkAgainstTarget({ ...good, ...more } as never);
const targetRows: readonly Row[] = [
  ["no measurement", check({ measured: null }), "missing | measured | a measured rate | null"],
  ["a number", check({ measured: 3 }), 'type | measured | a quantity, such as quantity(3, "lb") | 3'],
  ["less than none", check({ measured: gpa(-1) }), "range | measured | zero or more | -1 gal/acre of spray"],
  ["a target of none", check({ target: gpa(0) }), "range | target | more than zero | 0 gal/acre of spray"],
  [
    "a target of another kind",
    check({ target: quantity(1, "lb") }),
    "unit/mismatch | target | a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha | 1 lb",
  ],
  [
    "spray where water was caught",
    check({ measured: quantity(20, "gal/acre", "water") }),
    "substance/mismatch | target | a target of water, as measured; asFinishedSpray(measured).estimate is the measured one as spray | 20 gal/acre of spray",
  ],
  ["a tolerance of all", check({ tolerance: percent(100) }), "range | tolerance | less than 100 % | 100 %"],
  ["a tolerance of none", check({ tolerance: percent(0) }), "range | tolerance | more than zero | 0 %"],
  ["a tolerance as a number", check({ tolerance: 5 }), `type | tolerance | ${share} | 5`],
  ["a confidence of all", check({ confidence: percent(100) }), "range | confidence | 1 to 99.99 % | 100 %"],
  [
    "nothing came out",
    check({ measured: gpa(0) }),
    "range | measured | more than zero: no setting scales an output of nothing to a target | 0 gal/acre of spray",
  ],
];

describe("a check against a target", () => {
  test("what it refuses", () => {
    refused(targetRows);
  });

  test("what it says that it checked", () => {
    const bare = checkAgainstTarget(good);
    expect(bare.checked).toEqual(["the rate"]);
    expect(bare.notChecked).toEqual(["the spread of the readings: a single value was given"]);
    const whole = checkAgainstTarget({ ...good, measured: stated });
    expect(whole.checked).toEqual(["the rate", "the spread of the readings and the stated errors"]);
    expect(whole.notChecked).toEqual([]);
    expect([whole.type, whole.version]).toEqual(["target-check", 1]);
  });

  test("the band is the tolerance of the target, in the unit of the measurement", () => {
    const { band } = checkAgainstTarget(good);
    expect([band.low.in("gal/acre"), band.high.in("gal/acre")]).toEqual([19, 21]);
    const metric = checkAgainstTarget({ ...good, measured: quantity(200, "L/ha", "spray") });
    expect(metric.band.low.unit).toBe("L/ha");
    expect(metric.band.high.in("gal/acre")).toBeCloseTo(21, 10);
  });
});

const wanted = { coefficientOfVariation: percent(10), margin: percent(5) };
const countRows: readonly Row[] = [
  [
    "nothing",
    () => readingsFor({} as never),
    "missing | coefficientOfVariation | a share, such as 40 % or 0.4 | undefined",
    "missing | margin | a share, such as 40 % or 0.4 | undefined",
  ],
  [
    "a spread below none",
    () => readingsFor({ ...wanted, coefficientOfVariation: percent(-1) }),
    "range | coefficientOfVariation | zero or more | -1 %",
  ],
  [
    "no margin",
    () => readingsFor({ ...wanted, margin: percent(0) }),
    "range | margin | more than zero | 0 %",
  ],
  [
    "a confidence of all",
    () => readingsFor({ ...wanted, confidence: percent(100) }),
    "range | confidence | 1 to 99.99 % | 100 %",
  ],
];

test("how many readings", () => {
  refused(countRows);
  // t of 17 degrees of freedom is 2.110: 21.1 % over the root of 18 is 4.97 %; of 16, 2.120: over the root of 17, 5.14 %
  expect(readingsFor(wanted)).toBe(18);
  // exactly at the margin: one standard deviation of none
  expect(readingsFor({ coefficientOfVariation: percent(0), margin: percent(1) })).toBe(2);
});
