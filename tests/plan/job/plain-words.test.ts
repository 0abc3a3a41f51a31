// A problem in the words of people who work outdoors, with the record that a job file has in its place.
import { describe, expect, test } from "vitest";
import { plainProblem } from "../../../src/plan/job/measure-problems.js";
import { withSuggestions } from "../../../src/plan/job/with-suggestions.js";
import { amountInWords, dimensionNoun } from "../../../src/quantity/house.js";
import type { Problem } from "../../../src/quantity/index.js";

const told = (expected: string, found: unknown, more: Partial<Problem> = {}) => {
  const problem: Problem = { code: "type", path: "a.b[1].c", got: "?", expected, ...more };
  const { code, path, expected: words, suggestion } = plainProblem(problem, { a: { b: [0, { c: found }] } });
  return [`${code} ${path}: ${words}`, ...(suggestion === undefined ? [] : [suggestion])];
};

describe("a dimension", () => {
  test.each([
    ["mass/area", "a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha"],
    ["volume/area", "a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha"],
    ["mass", "a weight, such as 50 lb or 20 kg"],
    ["mass/mass", "percent by weight of the PRODUCT, as labels print it, in % w/w"],
    ["length/time", "a speed or a depth per time, such as 3 mi/h or 5 mm/h"],
    ["flow", "a quantity of flow"],
  ])("%s is called %s", (dimension, words) => {
    const more = { params: { dimension } };
    const due = amountInWords(dimension);
    expect(told(due, { value: 1, unit: "x" }, more)).toEqual([`type a.b[1].c: ${words}`]);
    expect(told(`${due}, made by quantity(number, unit)`, null, more)).toEqual([`type a.b[1].c: ${words}`]);
    expect(told(`${due}; parseQuantity and readQuantity read text`, true, more)).toEqual([
      `type a.b[1].c: ${words}`,
    ]);
    expect(told(due, 5, more)).toEqual([
      `type a.b[1].c: ${dimensionNoun(dimension)} with its unit, such as { "value": 5, "unit": "..." }`,
    ]);
  });
});

test("slow nitrogen is told as labels print it", () => {
  expect(told("a quantity of N:slow/product", { value: 1, unit: "x" })).toEqual([
    "type a.b[1].c: percent of the PRODUCT that is slow nitrogen, of N:slow/product",
  ]);
});

describe("a measure", () => {
  const volume = "a volume";
  test("that is a number alone, or absent", () => {
    expect(told(volume, 12.5)).toEqual([
      'type a.b[1].c: a volume with its unit, such as { "value": 12.5, "unit": "..." }',
    ]);
    expect(told(volume, Number.NaN)).toEqual([
      'type a.b[1].c: a volume with its unit, such as { "value": 10, "unit": "..." }',
    ]);
    expect(told("a quantity", undefined)).toEqual([
      'type a.b[1].c: a quantity with its unit, such as { "value": 10, "unit": "..." }',
    ]);
    expect(told(volume, undefined)).toEqual(["type a.b[1].c: a volume"]);
    expect(told(volume, null)).toEqual(["type a.b[1].c: a volume"]);
  });

  test("that is a text: as the record it stands for, where it can be read", () => {
    const words = 'type a.b[1].c: a volume as a record, such as { "value": 10, "unit": "..." }';
    expect(told(volume, "10 gal")).toEqual([words, '{ "value": 10, "unit": "gal" }']);
    expect(told(volume, " 1,250.5 gallons ")).toEqual([words, '{ "value": 1250.5, "unit": "gal" }']);
    expect(told(volume, "12gal")).toEqual([words, '{ "value": 12, "unit": "gal" }']);
    for (const text of ["gal", "10", "ten gal", "1,25 gal", "10 parsecs", "1.2.3 gal"])
      expect(told(volume, text), text).toEqual([words]);
  });

  test("whose number is none: told at the number, with what it reads as", () => {
    const at = (value: unknown) => told(volume, { value, unit: "gal" });
    expect(at(undefined)).toEqual(["missing a.b[1].c.value: a number"]);
    expect(at("1,000")).toEqual(["type a.b[1].c.value: a number", "1000"]);
    expect(at(" 12 ")).toEqual(["type a.b[1].c.value: a number", "12"]);
    expect(at("1,000,000.5")).toEqual(["type a.b[1].c.value: a number", "1000000.5"]);
    for (const text of ["", " ", "1,00", "1,0000", "x1,000", "1,000x", "Infinity", null, true])
      expect(at(text), String(text)).toEqual(["type a.b[1].c.value: a number"]);
  });

  test("without its unit: told at the unit", () => {
    expect(told(volume, { value: 1 })).toEqual(["missing a.b[1].c.unit: the unit of the number"]);
    expect(told(volume, { value: 1, unit: 5 })).toEqual(["type a.b[1].c.unit: the unit of the number"]);
  });

  test("is asked for only where the words ask for one", () => {
    for (const words of ["a title", "a list", "not a volume", "a volume of spray", "the quantity"])
      expect(told(words, 5), words).toEqual([`type a.b[1].c: ${words}`]);
    for (const words of ["a rate of product", "what one package holds", "a quantity", "a quantity of length"])
      expect(told(words, 5)[0], words).toContain("with its unit, such as");
  });
});

describe("other words", () => {
  test("a number between quotes is told as the number; nothing is called undefined", () => {
    const number = (got: string) => told("a finite number", 0, { got });
    expect(number('"2"')).toEqual(["type a.b[1].c: a finite number", "2"]);
    expect(number('"1,500"')).toEqual(["type a.b[1].c: a finite number", "1500"]);
    expect(number('"two"')).toEqual(["type a.b[1].c: a finite number"]);
    expect(number("12")).toEqual(["type a.b[1].c: a finite number"]);
    expect(plainProblem({ code: "missing", path: "x", got: "undefined", expected: "a title" }, {})).toEqual({
      code: "missing",
      path: "x",
      got: "nothing",
      expected: "a title",
    });
  });

  test("a call that makes a quantity is written as the record", () => {
    expect(told('money, or quantity(-1.5e3, "gal") or quantity(2, "lb", "N")', {})).toEqual([
      'type a.b[1].c: money, or { "value": -1.5e3, "unit": "gal" } or { "value": 2, "unit": "lb", "of": "N" }',
    ]);
  });

  test("a place that is not there is nothing", () => {
    const at = (path: string, input: unknown) =>
      plainProblem({ code: "type", path, got: "?", expected: "a volume" }, input).expected;
    expect(at("x.y", { x: 5 })).toBe("a volume");
    expect(at("x.y", { x: null })).toBe("a volume");
    expect(at("x.toString", { x: {} })).toBe("a volume");
    expect(at("x", { x: 5 })).toContain("with its unit");
  });
});

describe("suggestions", () => {
  const of = (more: Partial<Problem>) =>
    withSuggestions(
      [{ code: "unit/unknown", path: "x", got: '"gallons"', expected: "a unit", ...more }],
      {},
    )[0]?.suggestion;
  test("the nearest unit or substance, where none is given and another name was written", () => {
    expect(of({})).toBe("gal");
    expect(of({ code: "substance/unknown", got: '"nitrogen"' })).toBe("N");
    expect(of({ suggestion: "L" })).toBe("L");
    expect(of({ choices: ["L"] })).toBeUndefined();
    expect(of({ code: "type" })).toBeUndefined();
    for (const got of ["gallons", 'x "gallons"', '"gallons" x', '"gal"', '"parsecs"'])
      expect(of({ got }), got).toBeUndefined();
  });
});
