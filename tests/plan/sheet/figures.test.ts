// How figures, amounts, dates and sizes are printed: what is written here is what a person would write.
import { describe, expect, test } from "vitest";
import { dayText, momentText, spokenDates } from "../../../src/plan/sheet/day-text.js";
import {
  areaText,
  areaUnitOf,
  figure,
  measureText,
  plainNumber,
  tankMark,
  unitFor,
  unitWords,
} from "../../../src/plan/sheet/sheet-units.js";
import { wrapped } from "../../../src/plan/sheet/text-lines.js";
import { stepsOf, stepsText, toolFor } from "../../../src/plan/sheet/tool-amount.js";

const q = (value: number, unit: string, dimension: string) => ({ value, unit, of: "product", dimension });

test("a number: three figures, whole from a thousand, commas between thousands, no noise", () => {
  expect([0, 0.125, 1.6667, 23.456, 234.56, 999.5, 1234.5, 120_825, 0.00012345].map(figure)).toEqual([
    "0",
    "0.125",
    "1.67",
    "23.5",
    "235",
    "1,000",
    "1,235",
    "120,825",
    "0.000123",
  ]);
  expect(plainNumber(2.5, 2)).toBe("2.5");
  expect(plainNumber(2.5, 2, true)).toBe("2.50");
  expect(plainNumber(-0.001, 2)).toBe("0");
  expect(plainNumber(-1234.5, 1)).toBe("-1,234.5");
});

test("a unit in the words of the trade", () => {
  expect(
    [
      "oz",
      "ft2",
      "1000 ft2",
      "acre",
      "yd2",
      "lb/1000 ft2",
      "oz/acre",
      "% v/v",
      "% w/v",
      "mi/h",
      "km/h",
      "fl oz/1000 ft2",
      "g/m2",
      "gal",
    ].map(unitWords),
  ).toEqual([
    "oz by weight",
    "sq ft",
    "1,000 sq ft",
    "acre",
    "sq yd",
    "lb per 1,000 sq ft",
    "oz by weight per acre",
    "% by volume",
    "% weight by volume",
    "mph",
    "km/h",
    "fl oz per 1,000 sq ft",
    "g per m²",
    "gal",
  ]);
});

test("the unit of a sheet: its own where it is of the system, and else the usual one", () => {
  const usual = (unit: string, dimension: string, first: "US" | "metric", spray = false) =>
    unitFor(q(1, unit, dimension), first, spray);
  for (const [unit, dimension, us, metric] of [
    ["m2", "area", "ft2", "m2"],
    ["kg", "mass", "lb", "kg"],
    ["L", "volume", "gal", "L"],
    ["m", "length", "ft", "m"],
    ["km/h", "length/time", "mi/h", "km/h"],
    ["bar", "pressure", "psi", "bar"],
    ["kg/ha", "mass/area", "lb/1000 ft2", "kg/ha"],
    ["L/ha", "volume/area", "fl oz/1000 ft2", "L/ha"],
    ["g/L", "mass/volume", "oz/gal", "g/L"],
  ] as const) {
    expect(usual(unit, dimension, "US"), unit).toBe(us);
    expect(usual(unit, dimension, "metric"), unit).toBe(metric);
  }
  for (const [unit, dimension, metric] of [
    ["ft2", "area", "m2"],
    ["lb", "mass", "kg"],
    ["gal", "volume", "L"],
    ["ft", "length", "m"],
    ["mi/h", "length/time", "km/h"],
    ["psi", "pressure", "bar"],
    ["lb/acre", "mass/area", "kg/ha"],
    ["fl oz/acre", "volume/area", "L/ha"],
    ["lb/1000 ft2", "mass/area", "g/m2"],
    ["fl oz/1000 ft2", "volume/area", "mL/100 m2"],
    ["oz/gal", "mass/volume", "g/L"],
  ] as const)
    expect(usual(unit, dimension, "metric"), unit).toBe(metric);
  expect(usual("L/ha", "volume/area", "US", true)).toBe("gal/1000 ft2");
  expect(usual("gal/acre", "volume/area", "metric", true)).toBe("L/ha");
  expect(usual("gal/1000 ft2", "volume/area", "metric", true)).toBe("L/100 m2");
  expect(usual("% v/v", "volume/volume", "metric")).toBe("% v/v");
  // 1.6667 lb per 1,000 sq ft x 48.824 kg/ha = 81.37 kg/ha, 8.14 g per m2
  expect(measureText(q(1.6667, "lb/1000 ft2", "mass/area"), "metric")).toBe("8.14 g per m²");
  expect(measureText(q(1.6667, "lb/1000 ft2", "mass/area"), "US")).toBe("1.67 lb per 1,000 sq ft");
});

test("an area in the unit of the rate; below an acre or a hectare in what can be paced", () => {
  const acres = (value: number) => q(value, "acre", "area");
  expect(areaUnitOf("lb/acre", acres(1), "US")).toBe("acre");
  expect(areaUnitOf("lb/acre", acres(0.99), "US")).toBe("ft2");
  expect(areaUnitOf("kg/ha", q(1, "ha", "area"), "metric")).toBe("ha");
  expect(areaUnitOf("kg/ha", q(0.99, "ha", "area"), "metric")).toBe("m2");
  expect(areaUnitOf("lb/1000 ft2", acres(3), "US")).toBe("ft2");
  expect(areaUnitOf("g/m2", q(5, "ha", "area"), "metric")).toBe("m2");
  expect(areaUnitOf("% v/v", acres(3), "US")).toBe("ft2");
  expect(areaUnitOf("kg/ha", acres(30), "US")).toBe("ft2");
  expect(areaText(acres(1), "acre")).toBe("1 acre");
  expect(areaText(acres(3.25), "acre")).toBe("3.25 acres");
  expect(areaText(acres(1), "ft2")).toBe("43,560 sq ft");
  expect(areaText(q(99.94, "m2", "area"), "m2")).toBe("99.9 m²");
  expect(areaText(q(100.4, "m2", "area"), "m2")).toBe("100 m²");
  expect(areaText(q(1.2346, "ha", "area"), "ha")).toBe("1.235 ha");
  expect(areaText(q(0.0124, "ha", "area"), "ha")).toBe("0.0124 ha");
  expect(areaText(q(3.456, "m2", "area"), "m2")).toBe("3.46 m²");
  // Beside something large: 1 m² is 0.0001 ha and 1 / 4,046.8564224 acre, and 5 cm² are not 0 m²
  expect(areaText(q(1, "m2", "area"), "ha")).toBe("0.0001 ha");
  expect(areaText(q(1, "m2", "area"), "acre")).toBe("0.000247 acres");
  expect(areaText(q(6, "m2", "area"), "ha")).toBe("0.0006 ha");
  expect(areaText(q(0.0005, "m2", "area"), "m2")).toBe("0.0005 m²");
  expect(areaText(q(0, "m2", "area"), "m2")).toBe("0 m²");
});

test("a mark of the tank: two decimals below 20, one below 200", () => {
  expect([19.994, 20.04, 199.94, 200.4].map((liters) => tankMark(liters, "L"))).toEqual([
    "19.99 L",
    "20 L",
    "199.9 L",
    "200 L",
  ]);
  expect(tankMark(3.785411784 * 4.4, "gal")).toBe("4.4 gal");
});

describe("a scale or a jug", () => {
  test("by what is measured, and how much of it", () => {
    const tool = (value: number, unit: string, dimension: string, first: "US" | "metric") =>
      Object.values(toolFor([q(value, unit, dimension)], first))
        .slice(0, 2)
        .join(" ");
    expect([19.9, 20].map((lb) => tool(lb, "lb", "mass", "US"))).toEqual(["SCALE oz", "SCALE lb"]);
    expect([4.9, 5].map((kg) => tool(kg, "kg", "mass", "metric"))).toEqual(["SCALE g", "SCALE kg"]);
    expect([1.9, 2].map((gal) => tool(gal, "gal", "volume", "US"))).toEqual(["JUG fl oz", "JUG gal"]);
    expect([4.9, 5].map((liters) => tool(liters, "L", "volume", "metric"))).toEqual(["JUG mL", "JUG L"]);
  });
  test("in steps of 1 percent of the smallest amount or finer, and of 1 at most", () => {
    const step = (...ounces: readonly number[]) =>
      toolFor(
        ounces.map((value) => q(value, "oz", "mass")),
        "US",
      ).step;
    expect(step(12)).toBeCloseTo(0.1, 12);
    expect(step(9.9)).toBeCloseTo(0.01, 12);
    expect(step(300, 100)).toBe(1);
    expect(step(300, 99)).toBeCloseTo(0.1, 12);
    expect(step(300, 0)).toBe(1);
    expect(step(0)).toBe(1);
    expect(step(1e-9)).toBeCloseTo(1e-6, 15);
    expect(toolFor([q(3, "oz", "mass")], "US", { unit: "g", step: 5 })).toEqual({
      name: "SCALE",
      unit: "g",
      step: 5,
    });
  });
  test("so many steps in words", () => {
    const scale = { name: "SCALE", unit: "oz", step: 0.1 } as const;
    expect(stepsOf(q(2.2, "lb", "mass"), scale)).toBe(352);
    expect([155, 159, 160, 161, 352].map((steps) => stepsText(steps, scale))).toEqual([
      "15.5 oz wt",
      "15.9 oz wt",
      "1 lb",
      "1 lb 0.1 oz",
      "2 lb 3.2 oz",
    ]);
    // A scale that reads in steps of 3 oz has no whole pound.
    expect(stepsText(8, { ...scale, step: 3 })).toBe("24 oz wt");
    expect(stepsText(37, { name: "JUG", unit: "mL", step: 1 })).toBe("37 mL");
    expect(stepsText(37, { name: "JUG", unit: "mL", step: 0.25 })).toBe("9.25 mL");
    expect(stepsText(5, { name: "SCALE", unit: "lb", step: 0.1 })).toBe("0.5 lb");
    expect(stepsText(12_345, { name: "JUG", unit: "mL", step: 1 })).toBe("12,345 mL");
  });
});

test("a date and a moment as people say them", () => {
  expect(dayText("2015-06-08", false)).toBe("Mon Jun 8, 2015");
  expect(dayText("2015-06-08", true)).toBe("Mon 8 Jun 2015");
  // The days of a week in July 2026, and the first of each month of that year.
  expect(
    [1, 2, 3, 4, 5, 6, 7].map((day) => dayText(`2026-07-0${day}` as "2026-07-01", true).slice(0, 3)),
  ).toEqual("Wed Thu Fri Sat Sun Mon Tue".split(" "));
  expect(
    Array.from({ length: 12 }, (_, i) =>
      dayText(`2026-${String(i + 1).padStart(2, "0")}-01` as "2026-01-01", false).slice(4, 7),
    ).join(" "),
  ).toBe("Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec");
  const at = (clock: string) => `2015-06-08T${clock}-07:00` as "2015-06-08T09:30-07:00";
  expect(
    ["00:00", "00:30", "09:05", "11:59", "12:00", "12:30", "13:00", "23:59"].map((clock) =>
      momentText(at(clock), false),
    ),
  ).toEqual([
    "midnight at the start of Mon Jun 8",
    "Mon Jun 8, 12:30 am",
    "Mon Jun 8, 9:05 am",
    "Mon Jun 8, 11:59 am",
    "Mon Jun 8, noon",
    "Mon Jun 8, 12:30 pm",
    "Mon Jun 8, 1:00 pm",
    "Mon Jun 8, 11:59 pm",
  ]);
  expect(["00:00", "09:05", "12:00", "23:59"].map((clock) => momentText(at(clock), true))).toEqual([
    "Mon 8 Jun, 00:00",
    "Mon 8 Jun, 09:05",
    "Mon 8 Jun, 12:00",
    "Mon 8 Jun, 23:59",
  ]);
  expect(spokenDates("from 2015-06-08 to 2015-06-31, lot A-2015-06-08", false)).toBe(
    "from Mon Jun 8, 2015 to 2015-06-31, lot A-2015-06-08",
  );
});

test("lines: none longer than the width, what follows hangs, a word that is too long is broken", () => {
  expect(wrapped("one two three four", 12, "- ", "  ")).toEqual(["- one two", "  three four"]);
  expect(wrapped("one two three", 11, "- ", "    ")).toEqual(["- one two", "    three"]);
  expect(wrapped("abcdefghijklmnopqrst", 12, "", "  ")).toEqual(["abcdefghij", "  klmnopqrst"]);
  expect(wrapped("", 12, "  ", "  ")).toEqual([""]);
  expect(wrapped("a  b\nc", 12, "", "")).toEqual(["a b c"]);
});

test("a moment of UTC says so, for it is another hour on the clock of the crew", () => {
  const [plain, utc] = ["2026-06-09T20:30-05:00", "2026-06-10T01:30Z"] as const;
  expect([momentText(plain, false), momentText(utc, false)]).toEqual([
    "Tue Jun 9, 8:30 pm",
    "Wed Jun 10, 1:30 am UTC",
  ]);
  expect(momentText(utc, true)).toBe("Wed 10 Jun, 01:30 UTC");
  expect(momentText("2026-06-10T00:00Z", false)).toBe("midnight at the start of Wed Jun 10 UTC");
  expect(momentText("2026-06-09T20:30+00:00", false)).toBe("Tue Jun 9, 8:30 pm");
});
