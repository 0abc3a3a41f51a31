import { describe, expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { refused, told } from "./typed.js";

describe("numbers", () => {
  const groups = `a number with "." before its decimals and groups of three`;
  const comma = `${groups}; the option decimal: "," takes the other sign`;
  const fraction = "a fraction such as 1/2 or 3/16, or a unit before the slash";
  const range = "one amount; parseRange reads a range";
  test("what has two readings is refused with both", () => {
    refused([
      ["1,5 lb", "text", "1,5", `${comma} ? 1.5 | 15`],
      ["12,40 lb", "text", "12,40", `${comma} ? 12.40 | 1240`],
      ["11/2 lb", "text", "11/2", "a space between a whole number and its fraction ? 1 1/2 | 5.5"],
      [
        "113/16 in",
        "text",
        "113/16",
        "a space between a whole number and its fraction ? 1 13/16 | 11 3/16 | 7.0625",
      ],
      ["3 100 m2", "text", "3 100", "one number and one unit ? 3100 m2 | 3 x 100 m2"],
      ["12 400 100 sq m", "text", "12 400 100", "one number and one unit ? 12400100 m2 | 12 400 x 100 m2"],
      [
        "1.5 kg",
        "text",
        "1.5",
        `a number with "," before its decimals and groups of three; the option decimal: "." takes the other sign ? 1,5 | 15`,
        { decimal: "," },
      ],
    ]);
  });

  test("what is no number is refused, with the full one where it is plain", () => {
    refused([
      ["1.234.567 m2", "text", "1.234.567", 'a number with one "." => 1234567'],
      ["1,234,567 m2", "text", "1,234,567", 'a number with one "," => 1234567', { decimal: "," }],
      ["1.2.3 lb", "text", "1.2.3", 'a number with one "."'],
      ["1..2 lb", "text", "1..2", 'a number with one "."'],
      [
        "1.234.567,5 m2",
        "text",
        "1.234.567,5",
        `${groups}; the option decimal: "," takes the other sign => 1234567.5`,
      ],
      ["1,234,56 m2", "text", "1,234,56", groups],
      ["0,123,456 m2", "text", "0,123,456", groups],
      ["1234,567,890 m2", "text", "1234,567,890", groups],
      ["1 234,5 m2", "text", "1 234,5", 'a number with "." before its decimals'],
      ["1 234.56 m2", "text", "1 234.56", 'a number with "," before its decimals', { decimal: "," }],
      ["3·5 lb", "text", "3·5", 'a number with "." before its decimals'],
      ["3·500 lb", "text", "3·500", 'a number with "." before its decimals'],
      ["3/1000 ft2", "text", "3/1000", fraction],
      ["1/0 lb", "text", "1/0", fraction],
      ["7/11 lb", "text", "7/11", fraction],
      ["1 3/2 lb", "text", "1 3/2", "a whole number and a fraction below 1, such as 1 1/2"],
      ["1 2/2 lb", "text", "1 2/2", "a whole number and a fraction below 1, such as 1 1/2"],
      ["1 0/2 lb", "text", "1 0/2", "a whole number and a fraction below 1, such as 1 1/2"],
      ["1 1/11 lb", "text", "1 1/11", "a whole number and a fraction below 1, such as 1 1/2"],
      ["10^2 ft2", "text", "10^2", "a number without a power"],
      ["10⁻² ft2", "text", "10^-2", "a number without a power"],
      ["1e999 lb", "not-finite", "1e999", "a number that can be held"],
      ["1e-400 lb", "not-finite", "1e-400", "a number that can be held"],
      ["43k ft2", "text", "43k ft2", "the number in full => 43000 ft2"],
      ["43 K ft2", "text", "43 K ft2", "the number in full => 43000 ft2"],
      ["1.5k", "text", "1.5k", "the number in full => 1500"],
      ["0.1k lb", "text", "0.1k lb", "the number in full => 100 lb"],
    ]);
    expect(problemsOf(() => parseQuantity("1 K")).length).toBe(0);
  });

  test("a range is one for parseRange", () => {
    for (const text of [
      "1.5-2 pt",
      "1.5 - 2 pt",
      "1 to 2 pt",
      "1 To 2 pt",
      "1 through 2 pt",
      "1 pt to 2 pt",
      "1 pt through 2 pt",
      "1 pt - 2 pt",
      "1 … 2 pt",
      "1…2 pt",
      "1 pt…2 pt",
      "1-3/2 lb",
    ])
      refused([[text, "text", text, range]]);
    // a word that begins like one is a unit, and a minus below a unit is a power
    expect(parseQuantity("3 tonnes").unit).toBe("t");
    expect(parseQuantity("3 kg ha-1").unit).toBe("kg/ha");
  });

  test("where there is no number, or no unit", () => {
    const sample = "a number and a unit, such as 3 lb/1000 ft2";
    refused([
      ["", "text", "", sample],
      ["  ", "text", "  ", sample],
      ["lb", "text", "lb", sample],
      ["abc 3", "text", "abc 3", sample],
      ["LBS 5", "text", "LBS 5", `${sample} => 5 LBS`],
      ["%", "text", "%", sample],
      ["lb", "text", "lb", "a number and a unit, such as 3 gal", { dimension: "volume" }],
      ["3", "missing", "3", "a unit after the number, such as 3 lb/1000 ft2"],
      ["3", "missing", "3", "a unit after the number, such as 3 lb", { dimension: "mass" }],
    ]);
    expect(problemsOf(() => parseQuantity("3 ".padEnd(201, "x"))).map(told)).toEqual([
      ["text", "201 characters", "at most 200 characters"],
    ]);
    expect(problemsOf(() => parseQuantity("3 ".padEnd(200, "x")))[0]?.code).toBe("unit/unknown");
    expect(problemsOf(() => parseQuantity(3 as never)).map(told)).toEqual([
      ["type", "number", "a text, such as 3 lb/1000 ft2"],
    ]);
    expect(problemsOf(() => parseQuantity(null as never))[0]?.got).toBe("null");
  });
});
