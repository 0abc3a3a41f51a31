import { describe, expect, test } from "vitest";
import { type ErrorCode, parseQuantity, parseRange } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

describe("what is not one amount is refused, with what to write", () => {
  type Refused = readonly [text: string, code: ErrorCode, next: string, options?: object];
  const whole = "below the slash, a whole number or none: 3 lb per 1.5 acres is 2 lb/acre";
  const ends = "one amount, or a range with both of its ends";
  const rows: readonly Refused[] = [
    ["3 lb/1.5 acre", "unit/unknown", whole],
    ["3 lb per 1.5 acres", "unit/unknown", whole],
    ["3 lb/.5 acre", "unit/unknown", whole],
    ["3 lb/½ acre", "unit/unknown", whole],
    ["3 lb/1/2 acre", "unit/unknown", whole],
    ["3 lb per 1 1/2 acres", "unit/unknown", whole],
    ["3 lb per half acre", "unit/unknown", whole],
    ["3 lb per a quarter acre", "unit/unknown", whole],
    ["3 kg/1,5 ha", "unit/unknown", whole, { decimal: "," }],
    ["3 kg/1,500 ha", "text", 'below the slash, groups of three with "." as above it', { decimal: "," }],
    ["3 kg per 2,500 m2", "text", 'below the slash, groups of three with "." as above it', { decimal: "," }],
    ["3 - lb", "text", ends],
    ["3 – lb", "text", ends],
    ["3- lb", "text", ends],
    ["3-5 lb", "text", "parseRange"],
    ["3 to 5 lb", "text", "parseRange"],
    ["3 ± 1 lb", "text", ends],
    ["3 +- 1 lb", "text", ends],
    ["3 +/- 1 lb", "text", ends],
    ["3±1 lb", "text", ends],
    ["5 ft 6 in", "text", "5.5 ft"],
    ["5'6\"", "text", "5.5 ft"],
    ["43k ft2", "text", "43000 ft2"],
    ["12,40 lb", "text", "12.40, 1240"],
    ["11/2 lb", "text", "1 1/2, 5.5"],
    ["12 400 100 m2", "text", "12400100 m2"],
    ["3 oz/1,000 sq ft", "unit/ambiguous", "oz av/1000 ft2, fl oz/1000 ft2"],
    ["3 #/A", "unit/ambiguous", "lb/acre, count/acre"],
    ["3 lb/a", "unit/ambiguous", "lb/acre, lb/100 m2"],
    ["3 tons/ha", "unit/ambiguous", "US ton/ha, tonne/ha"],
    ["3 T/A", "unit/ambiguous", "US ton/acre, tonne/acre, tbsp/acre"],
    ["3 Mg/ha", "unit/ambiguous", "mg/ha, tonne/ha"],
    ["3 kg/M", "unit/ambiguous", "kg/m, kg/1000 ft2"],
    ["3 cwt", "unit/ambiguous", "short cwt, long cwt"],
    ["20 c", "unit/ambiguous", "°C, cup"],
    ["20°", "unit/ambiguous", "deg, °F, °C"],
    ["$3", "unit/ambiguous", "USD, CAD, AUD"],
    ["4 lb/gal ai", "conflict", "lb ai/gal"],
    ["3 lb/A/yr", "unit/unknown", 'per: "calendar year"'],
    ["3 lbz/acre", "unit/unknown", "lb/acre"],
    ["3 lb nitrogin/acre", "substance/unknown", "did you mean N?"],
    // a spoon, a cup and a bushel of Great Britain have another size
    ["3 tbs", "unit/ambiguous", "US tbsp", { measures: "imperial" }],
    ["3 tblsp", "unit/ambiguous", "US tbsp", { measures: "imperial" }],
    ["3 tbl", "unit/ambiguous", "US tbsp", { measures: "imperial" }],
    ["3 cups", "unit/ambiguous", "US cup", { measures: "imperial" }],
  ];
  test.each(rows.map((row) => ({ row })))("$row.0", ({ row: [text, code, next, options = {}] }) => {
    const problems = problemsOf(() => parseQuantity(text, options as { decimal: "." }));
    expect(problems[0]?.code).toBe(code);
    const { expected = "", suggestion = "", choices = [] } = problems[0] ?? {};
    expect(`${expected} did you mean ${suggestion}? ${choices.join(", ")}`).toContain(next);
  });

  test.each([
    ..."--3 lb|1_000 lb|one lb|1/2/3 lb|½½ lb|1.5/2 lb|3 1.5 lb|1 1 lb|1,000 1/2 lb|2.5 1/2 lb|½ 1/2 lb|1 ½½ lb".split(
      "|",
    ),
    ..."12 400 1/2 ft2|12,34,567 lb|3 lb acre|3 lb*acre|3 lb/|/3 lb|3 lb//acre|3 acre lb|3 lb N K|3 [lb]".split(
      "|",
    ),
    ..."(3 lb)|~3 lb|≤ 3 lb|about 3 lb|3+ lb|3 bags|2 oz/tank|3 lb/day/acre|5' 6|3 ft 6|24-0-11|2,4-D|50 WP".split(
      "|",
    ),
    ..."3 lb/x12 ft2|24 % N/acre|3 imp gal/M|3 lb/1000M|3 lb/12 100m2|3 lb/1 234 100 m2|3 mg/kg of soil".split(
      "|",
    ),
  ])("%s", (text) => {
    expect(problemsOf(() => parseQuantity(text)).length).toBeGreaterThan(0);
    expect(problemsOf(() => parseQuantity(text, { measures: "imperial" })).length).toBeGreaterThan(0);
  });
});

describe("ranges as labels print them", () => {
  test.each([
    ["1 1/2 - 2 1/4 lb", "1.5 lb", "2.25 lb"],
    ["½–¾ lb", "0.5 lb", "0.75 lb"],
    ["1½–2½ lb N/1,000 ft²", "1.5 lb/1000 ft2 of N", "2.5 lb/1000 ft2 of N"],
    ["2–4 fl. oz./1,000 sq. ft.", "2 fl oz/1000 ft2", "4 fl oz/1000 ft2"],
    ["1-1/2-2 pt", "1.5 pt", "2 pt"],
    ["1-1/2 - 2-1/2 pt", "1.5 pt", "2.5 pt"],
    ["3/4 - 1-1/4 lb", "0.75 lb", "1.25 lb"],
    ["12 000–15 000 m2", "12000 m2", "15000 m2"],
    ["-5–2 °C", "-5 °C", "2 °C"],
    ["-5 - -2 °C", "-5 °C", "-2 °C"],
    ['¼ to ½"', "0.25 in", "0.5 in"],
    ["USD 3 - 5 per lb", "3 money:USD/lb", "5 money:USD/lb"],
    ["US$3-5/lb", "3 money:USD/lb", "5 money:USD/lb"],
    ["£3 to 5", "3 money:GBP", "5 money:GBP"],
    ["€3/kg", "3 money:EUR/kg", "3 money:EUR/kg"],
    ["3-5 €/kg", "3 money:EUR/kg", "5 money:EUR/kg"],
    ["1.000-2.000 m2", "1000 m2", "2000 m2", ","],
    ["1,5 - 2,5 kg/1.000 m2", "0.0015 kg/m2", "0.0025 kg/m2", ","],
  ] as const)("%s", (text, min, max, decimal: "." | "," = ".") => {
    const range = parseRange(text, { decimal });
    expect([`${range.min}`, `${range.max}`]).toEqual([min, max]);
  });

  test.each([
    "between 3 lb and 5",
    "3-5-7 lb",
    "3 or 4 lb",
    "1 lb/acre to 2 lb",
    "5-3 lb",
    "up to 5 lb",
    "2 - lb",
    "LBS 5-6",
    "£5-3",
    "$3-5/lb",
  ])("%s is refused", (text) => {
    expect(problemsOf(() => parseRange(text)).length).toBeGreaterThan(0);
  });
});
