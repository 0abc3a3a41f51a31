import { describe, expect, test } from "vitest";
import { parseRange } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

describe("ranges", () => {
  test.each([
    ["1.5-2 pt/acre", "1.5 pt/acre", "2 pt/acre"],
    ["1 to 2 pt", "1 pt", "2 pt"],
    ["1 through 2 pt", "1 pt", "2 pt"],
    ["1 … 2 pt", "1 pt", "2 pt"],
    ["1…2 pt", "1 pt", "2 pt"],
    ["1 - 1 1/2 lb N", "1 lb of N", "1.5 lb of N"],
    ["16 fl oz - 1 qt", "16 fl oz", "1 qt"],
    ["16 fl oz to 1 qt", "16 fl oz", "1 qt"],
    ["1 pt through 2 qt", "1 pt", "2 qt"],
    ["1 pt…2 qt", "1 pt", "2 qt"],
    ["-2 - 1 °C", "-2 °C", "1 °C"],
    ["-2 to -1 °C", "-2 °C", "-1 °C"],
    // what is said below the slash is said of both ends, as labels print it
    ["1 pt to 1 qt/acre", "1 pt/acre", "1 qt/acre"],
    ["1/2 pt - 1 qt per acre", "0.5 pt/acre", "1 qt/acre"],
    ["16 fl oz to 1 qt per 100 gal", "0.16 fl oz/gal", "0.01 qt/gal"],
    ["1 pt/acre to 1 gal/ha", "1 pt/acre", "1 gal/ha"],
    ["from 1.5 to 2 pt", "1.5 pt", "2 pt"],
    ["between 1.5 and 2 pt", "1.5 pt", "2 pt"],
    ["between 1 pt and 1 qt/acre", "1 pt/acre", "1 qt/acre"],
    ["1.5 thru 2 pt", "1.5 pt", "2 pt"],
    ["3 lb", "3 lb", "3 lb"],
    ["2-2 lb", "2 lb", "2 lb"],
  ])("%s", (text, min, max) => {
    const range = parseRange(text);
    expect([`${range.min}`, `${range.max}`]).toEqual([min, max]);
  });

  test("what is no range", () => {
    const problem = (text: string): readonly string[] => {
      const [one] = problemsOf(() => parseRange(text));
      return [one?.code ?? "", one?.path ?? "", one?.got ?? "", one?.expected ?? ""];
    };
    expect(problem("2-1 pt")).toEqual(["range", "text", '"2-1 pt"', "the smaller amount first"]);
    expect(problem("1 lb to 2 gal")).toEqual([
      "unit/mismatch",
      "text",
      '"1 lb to 2 gal"',
      "two amounts of one dimension",
    ]);
    expect(problem("1 lb N to 2 lb K")).toEqual([
      "conflict",
      "text",
      '"1 lb N to 2 lb K"',
      "two amounts of one substance",
    ]);
    expect(problem("1 lb - 2")).toEqual([
      "missing",
      "text",
      '"2"',
      "a unit after the number, such as 3 lb/1000 ft2",
    ]);
    expect(problem("x".repeat(300))[3]).toBe("at most 200 characters");
    expect(problem(3 as never)[0]).toBe("type");
  });

  // one end alone is no label of exactly that rate: a rate below it would be told to be under the label
  test.each([
    ["up to 2 pt/acre", "0-2 pt/acre"],
    ["Up to 2 pt/acre", "0-2 pt/acre"],
    ["max. 2 pt/acre", "0-2 pt/acre"],
    ["maximum 2 pt/acre", "0-2 pt/acre"],
    ["at most 2 pt/acre", "0-2 pt/acre"],
    ["no more than 1 1/2 pt/acre", "0-1 1/2 pt/acre"],
    ["not to exceed 2 pt/acre", "0-2 pt/acre"],
    ["<= 2 pt/acre", "0-2 pt/acre"],
    ["≤2 pt/acre", "0-2 pt/acre"],
    ["up to €3/kg", undefined],
    ["at least 2 pt/acre", undefined],
    ["min 2 pt/acre", undefined],
    [">= 2 pt/acre", undefined],
    ["≥ 2 pt/acre", undefined],
    ["up to 2 plenties", undefined],
  ])("%s has one end", (text, suggestion) => {
    const [problem] = problemsOf(() => parseRange(text));
    expect([problem?.code, problem?.got, problem?.expected]).toEqual([
      "text",
      JSON.stringify(text),
      "a range with both of its ends",
    ]);
    expect(problem?.suggestion).toBe(suggestion);
    if (suggestion !== undefined) expect(parseRange(suggestion).min.value).toBe(0);
  });
});
