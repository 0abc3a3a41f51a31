import { describe, expect, test } from "vitest";
import {
  fromUcum,
  isDimension,
  isUnit,
  quantity,
  toUcum,
  unitName,
  unitSymbol,
  unitSystem,
  unitsOf,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(
    ({ code, path, expected, got, suggestion }) =>
      `${code} | ${path} | ${expected} | ${got}${suggestion === undefined ? "" : ` => ${suggestion}`}`,
  );

describe("a unit's code for other programs", () => {
  const known = "a UCUM code of a unit in the table, or a quotient of such codes";
  test.each([
    [
      "no unit",
      () => toUcum("lbs" as "lb"),
      'unit/unknown | unit | a unit that UCUM has a code for; it has none for money | "lbs"',
    ],
    [
      "money below",
      () => toUcum("money:USD/lb"),
      'unit/unknown | unit | a unit that UCUM has a code for; it has none for money | "money:USD/lb"',
    ],
    [
      "a quantity",
      () => toUcum(quantity(3, "lb") as never),
      "unit/unknown | unit | a unit as text: of a quantity q, q.unit | 3 lb",
    ],
    ["no code", () => fromUcum(""), `unit/unknown | code | ${known} | ""`],
    ["a number", () => fromUcum(3 as never), `unit/unknown | code | ${known} | 3`],
    ["a long code", () => fromUcum("m".repeat(101)), `unit/unknown | code | ${known} | "${"m".repeat(60)}"`],
    ["no unit of the table", () => fromUcum("mol"), `unit/unknown | code | ${known} | "mol"`],
    ["a product of two", () => fromUcum("m.m"), `unit/unknown | code | ${known} | "m.m"`],
    ["a quotient that is no unit", () => fromUcum("kg/m5"), `unit/unknown | code | ${known} | "kg/m5"`],
    [
      "acres of the survey",
      () => fromUcum("kg/[acr_us]"),
      'unit/unknown | code | an international unit: [acr_us] is built on the survey foot | "kg/[acr_us]" => 4840.[syd_i]',
    ],
    [
      "feet of the survey",
      () => fromUcum("[ft_us]"),
      'unit/unknown | code | an international unit: [ft_us] is built on the survey foot | "[ft_us]" => [ft_i]',
    ],
    [
      "yards of the survey",
      () => fromUcum("[yd_us]"),
      'unit/unknown | code | an international unit: [yd_us] is built on the survey foot | "[yd_us]" => [yd_i]',
    ],
    [
      "inches of the survey",
      () => fromUcum("[in_us]"),
      'unit/unknown | code | an international unit: [in_us] is built on the survey foot | "[in_us]" => [in_i]',
    ],
    [
      "miles of the survey",
      () => fromUcum("[mi_us]"),
      'unit/unknown | code | an international unit: [mi_us] is built on the survey foot | "[mi_us]" => [mi_i]',
    ],
    [
      "another word for the survey",
      () => fromUcum("m", { survey: "accept" as never }),
      'type | options.survey | one of "refuse", "as international" | "accept"',
    ],
    ["options that are none", () => fromUcum("m", 3 as never), "type | options | a record of options | 3"],
    [
      "another option",
      () => fromUcum("m", { surwey: 3 } as never),
      'type | options.surwey | one of the fields survey | a field "surwey" => survey',
    ],
  ] as const)("%s", (_, call, problem) => {
    expect(told(call)).toEqual([problem]);
  });

  // codes of other programs for the same sizes, as the standard builds them
  test.each([
    ["l", "L"],
    ["ml", "mL"],
    ["cm3", "mL"],
    ["[in_i]2", "in2"],
    ["[ft_i]2", "ft2"],
    ["[yd_i]2", "yd2"],
    ["[in_i]3", "in3"],
    ["[ft_i]3", "ft3"],
    ["[yd_i]3", "yd3"],
    ["43560.[ft_i]2", "acre"],
    ["43560.[sft_i]", "acre"],
    ["4840.[yd_i]2", "acre"],
    ["1000.[ft_i]2", "1000 ft2"],
    ["100.m2", "100 m2"],
    ["hm2", "ha"],
    ["Cel.d", "°C d"],
    ["cmol{charge}/kg", "cmolc/kg"],
    ["mmol{charge}/L", "mmolc/L"],
    ["kg/(100.m2)", "kg/100 m2"],
    ["kg.(100.m2)-1", "kg/100 m2"],
    ["g.cm-3", "g/mL"],
    ["m3.s-1", "m3/s"],
    ["kg.hm-2", "kg/ha"],
    ["/h", "1/h"],
    ["[ft_us]", "ft"],
    ["[yd_us]", "yd"],
    ["[in_us]", "in"],
    ["[mi_us]", "mi"],
  ])("%s is %s", (code, unit) => {
    expect(fromUcum(code, { survey: "as international" })).toBe(unit);
  });
});

describe("dimensions and units for a select box", () => {
  test("what is a dimension", () => {
    for (const name of [
      "mass",
      "mass/area",
      "mass/area/time",
      "1",
      "money:USD",
      "money:USD/area",
      "temperature difference",
      "1/time",
    ])
      expect([name, isDimension(name)]).toEqual([name, true]);
    for (const name of [
      "money",
      "money/area",
      "money:USD/psi",
      "money:usd",
      "money:USD/mass/area",
      "area/mass/time",
      "weight",
      "",
      3,
      undefined,
      "mass/".repeat(20),
      "xmoney:USD",
      "toString",
    ])
      expect([name, isDimension(name)]).toEqual([name, false]);
    expect(told(() => unitsOf("weight" as "mass"))).toEqual([
      'type | dimension | a dimension, such as mass/area | "weight"',
    ]);
  });

  test("what is a unit", () => {
    expect(isUnit("lb", "mass")).toBe(true);
    expect(isUnit("lb", "volume")).toBe(false);
    expect(isUnit("lb")).toBe(true);
    expect(isUnit("lbs")).toBe(false);
    expect(isUnit(3)).toBe(false);
    for (const text of ["lb/acre/d", "money:USD/lb", "1/d", "g/100 m2", "lb/1000 ft2/week"])
      expect(isUnit(text)).toBe(true);
    for (const text of [
      "",
      "/",
      "lb/",
      "/lb",
      "lb//acre",
      "money:",
      "money:USDX",
      "money:USD/EUR",
      "money:USD/money:EUR",
      "lb/acre/ha",
      "x".repeat(65),
    ])
      expect([text, isUnit(text)]).toEqual([text, false]);
  });

  const names = (dimension: string): readonly string[] =>
    unitsOf(dimension as "mass").map(({ unit }) => unit);
  test("the units of a dimension that the trade has no list for are made of usual ones, no US over metric", () => {
    expect(names("count/time")).toEqual(["count/min", "count/h", "count/d"]);
    expect(names("count/length")).toEqual(["count/ft", "count/m"]);
    expect(names("mass/volume/time")).toEqual([
      "lb/gal/min",
      "lb/gal/h",
      "lb/gal/d",
      "kg/L/min",
      "kg/L/h",
      "kg/L/d",
    ]);
    expect(names("money:EUR")).toEqual(["money:EUR"]);
    expect(names("money:EUR/count")).toEqual(["money:EUR/count"]);
    expect(names("money:EUR/time")).toEqual([
      "money:EUR/s",
      "money:EUR/min",
      "money:EUR/h",
      "money:EUR/d",
      "money:EUR/week",
    ]);
    expect(names("time")).toEqual(["s", "min", "h", "d", "week"]);
    expect(names("length/length").slice(0, 2)).toEqual(["% grade", "ft/ft"]);
    expect(unitsOf("area/time")[0]).toEqual({
      unit: "acre/h",
      symbol: "acre/h",
      name: "acres per hour",
      system: "US",
    });
  });

  test.each([
    ["lb", "US"],
    ["kg", "metric"],
    ["imp gal", "imperial"],
    ["d", "both"],
    ["lb/acre", "US"],
    ["kg/ha", "metric"],
    ["lb/d", "US"],
    ["1/d", "both"],
    ["1/ha", "both"],
    ["count/ha", "metric"],
    ["imp gal/acre", "both"],
    ["lb/ha", "both"],
    ["lb/1000 ft2/week", "US"],
    ["kg/acre/d", "both"],
    ["money:USD/lb", "US"],
    ["money:USD", "both"],
    ["lbs", "both"],
    ["toString", "both"],
  ])("%s is at home in %s", (unit, system) => {
    expect(unitSystem(unit)).toBe(system);
  });

  test("names and symbols", () => {
    const written = (unit: string): readonly string[] => [
      unitSymbol(unit),
      unitName(unit, 1),
      unitName(unit),
    ];
    expect(written("ft")).toEqual(["ft", "foot", "feet"]);
    expect(written("lb/ft2/d")).toEqual([
      "lb/ft²/d",
      "pound per square foot per day",
      "pounds per square foot per day",
    ]);
    expect(written("1/d")).toEqual(["/d", "per day", "per day"]);
    expect(written("1")).toEqual(["", "", ""]);
    expect(written("money:USD/acre")).toEqual(["USD/acre", "USD per acre", "USD per acre"]);
    expect(written("lbs")).toEqual(["lbs", "lbs", "lbs"]);
    expect(written(3 as never)).toEqual(["3", "3", "3"]);
    expect(unitName("ft", 0)).toBe("feet");
    expect(unitName("ft", 1.5)).toBe("feet");
  });
});
