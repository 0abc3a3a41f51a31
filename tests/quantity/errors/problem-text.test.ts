import { describe, expect, test } from "vitest";
import {
  fail,
  type Problem,
  problemReason,
  problemText,
  quantity,
  RatewrightError,
  shown,
} from "../../../src/quantity/index.js";
import { errorOf } from "../../errors.js";

const lb = quantity(3, "lb", "N");

describe("the text of a problem", () => {
  const problem: Problem = { code: "range", path: "width", got: "0", expected: "more than 0" };
  test("with suggestion and choices where there are any", () => {
    expect(problemText(problem)).toBe("width: expected more than 0, got 0");
    expect(problemReason({ ...problem, suggestion: "1" })).toBe(
      "expected more than 0, got 0 (did you mean 1?)",
    );
    expect(problemReason({ ...problem, suggestion: "" })).toBe("expected more than 0, got 0");
    expect(problemReason({ ...problem, choices: ["1", "2"] })).toBe(
      "expected more than 0, got 0 (say which: 1, 2)",
    );
    expect(problemReason({ ...problem, choices: [] })).toBe("expected more than 0, got 0");
    expect(problemReason({ ...problem, choices: "12" as never })).toBe("expected more than 0, got 0");
  });

  test("is cut at 600 characters a part, 40 choices and 50 problems", () => {
    const long = "x".repeat(601);
    const cut = `${"x".repeat(599)}…`;
    const error = new RatewrightError({
      code: "range",
      path: long,
      got: long,
      expected: long,
      suggestion: long,
      choices: [long],
    });
    expect([error.path, error.got, error.expected, error.suggestion, error.problems[0]?.choices]).toEqual([
      cut,
      cut,
      cut,
      cut,
      [cut],
    ]);
    expect(new RatewrightError({ ...problem, path: "x".repeat(600) }).path).toBe("x".repeat(600));
    expect(
      new RatewrightError({ ...problem, choices: new Array(60).fill("a") }).problems[0]?.choices,
    ).toHaveLength(40);
    const lines = (count: number): readonly string[] =>
      new RatewrightError(new Array(count).fill(problem)).message.split("\n");
    expect(lines(50)).toHaveLength(50);
    expect(lines(52)).toHaveLength(51);
    expect(lines(52)[50]).toBe("and 2 more");
    expect(error.name).toBe("RatewrightError");
  });

  test("carries what an app needs, and nothing that is not there", () => {
    const bare = new RatewrightError(problem);
    expect(Object.keys(bare.problems[0] as object)).toEqual(["code", "path", "got", "expected"]);
    expect(new RatewrightError({ ...problem, params: { min: 1 } }).params).toEqual({ min: 1 });
    expect(
      errorOf(() => fail("range", "a", 3, "more", { suggestion: "4", params: { min: 4 } })).problems,
    ).toEqual([
      { code: "range", path: "a", got: "3", expected: "more", suggestion: "4", params: { min: 4 } },
    ]);
  });

  test("where nothing was given the code is missing, but for what is wrong even then", () => {
    const code = (given: string, got: unknown = undefined): string =>
      errorOf(() => fail(given as "type", "rate", got, "more")).code;
    for (const given of ["missing", "conflict", "duplicate", "infeasible"]) expect(code(given)).toBe(given);
    for (const given of ["type", "range", "date", "unit/mismatch", "", "rate", "missing|conflict"])
      expect([given, code(given)]).toEqual([given, "missing"]);
    expect(code(3 as never)).toBe("missing");
    expect(code("", 3)).toBe("type");
    expect(code(3 as never, 3)).toBe("type");
  });

  test.each<readonly [value: unknown, text: string]>([
    ["lb", '"lb"'],
    ["x".repeat(70), `"${"x".repeat(60)}"`],
    [() => 1, "a function"],
    [3, "3"],
    [-1.5, "-1.5"],
    [Number.NaN, "not a number"],
    [Number.POSITIVE_INFINITY, "infinity"],
    [Number.NEGATIVE_INFINITY, "minus infinity"],
    [[1, 2], "a list of 2"],
    [lb, "3 lb of N"],
    [quantity(3, "lb"), "3 lb"],
    [{ value: 3, unit: "lb" }, "3 lb"],
    [{ value: Number.NaN, unit: "lb", of: "" }, "not a number lb"],
    [{ value: 3, unit: "u".repeat(100) }, `3 ${"u".repeat(88)}`],
    [{ value: 3, unit: 3 }, "a record"],
    [{ value: "3", unit: "lb" }, "a record"],
    [{ value: 3, unit: "lb", of: 3 }, "a record"],
    [{}, "a record"],
    [null, "null"],
    [undefined, "undefined"],
    [true, "true"],
    [10n, "10"],
  ])("%o is shown as %s", (value, text) => {
    expect(shown(value)).toBe(text);
  });
});
