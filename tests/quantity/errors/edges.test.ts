import { describe, expect, test } from "vitest";
import {
  allOf,
  checks,
  expectFields,
  expectName,
  expectNumber,
  expectOneOf,
  expectText,
  frozen,
  nearName,
  plainCopy,
  rangeProblem,
  shown,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(
    ({ code, path, expected, got, suggestion }) =>
      `${code} | ${path} | ${expected} | ${got}${suggestion === undefined ? "" : ` => ${suggestion}`}`,
  );
const names = (count: number): string[] => Array.from({ length: count }, (_, i) => `field${i}`);
const js = (value: unknown): never => value as never;

describe("what another program threw", () => {
  test("goes through as it is", () => {
    const error = new TypeError("not ours");
    const thrown = (): never => {
      throw error;
    };
    expect(() => checks().run(thrown)).toThrow(error);
    expect(() => allOf({ rate: thrown })).toThrow(error);
  });
});

describe("names that a program gives", () => {
  test("are told as they are, and what is no name as it is shown", () => {
    expect(told(() => expectFields(3, js(["rate", {}])))).toEqual([
      "type | input | a record with rate, a record | 3",
    ]);
    expect(told(() => expectFields(3, js(names(9))))).toEqual([
      "type | input | a record with field0, field1, field2, field3, field4, field5, field6, field7 | 3",
    ]);
    expect(told(() => expectFields({ value: 3, unit: "lb" }, js(names(9))))).toEqual([
      "type | input | a record with field0, field1, field2, field3, field4, field5, field6, field7: write { field0: ... } | 3 lb",
    ]);
  });

  test("are at most a thousand", () => {
    expect(expectFields({ field999: 1 }, names(1000))).toEqual({ field999: 1 });
    expect(told(() => expectFields({ field0: 1 }, names(1001)))).toEqual([
      "type | known[0] | a list of words | a list of 1001",
    ]);
    expect(told(() => expectFields({ field0: 1 }, js({ length: 3 })))).toEqual([
      "type | known[0] | a list of words | a record",
    ]);
  });

  test("are at least one", () => {
    expect(told(() => expectFields({ rate: 1 }, []))).toEqual([
      "type | known | a list of words | a list of 0",
    ]);
    expect(told(() => expectOneOf("US", [], "units"))).toEqual([
      "type | words | a list of words | a list of 0",
    ]);
    expect(told(() => expectOneOf(undefined, [undefined as never], "units"))).toEqual([
      "missing | words[0] | a list of words | undefined",
    ]);
  });

  test("a strange field with none that is near has no suggestion", () => {
    const [problem] = problemsOf(() => expectFields({ xyzzy: 1 }, ["rate", "area"]));
    expect(Object.keys(problem ?? {})).toEqual(["code", "path", "got", "expected"]);
    expect(problemsOf(() => expectFields({ rtae: 1 }, ["rate", "area"]))[0]?.suggestion).toBe("rate");
  });

  test("a quantity where a record is due is one mistake, however it has its fields", () => {
    const getters = Object.create({ value: 3, unit: "lb" }) as object;
    expect(told(() => expectFields(getters, ["rate"]))).toEqual([
      "type | input | a record with rate: write { rate: ... } | 3 lb",
    ]);
    // where a unit is due it is read field by field
    expect(told(() => expectFields({ value: 3, unit: "lb", off: 1 }, ["value", "unit", "of"]))).toEqual([
      'type | input.off | one of the fields value, unit, of | a field "off" => of',
    ]);
    expect(expectFields({}, ["rate"])).toEqual({});
  });

  test("what is no record at all is told with the names, or in the caller's words", () => {
    for (const input of [null, [1], "rate", 3]) {
      expect(problemsOf(() => expectFields(input, ["rate", "area"]))[0]?.expected).toBe(
        "a record with rate, area",
      );
      expect(problemsOf(() => expectFields(input, ["rate"], "job", "a job"))[0]?.expected).toBe("a job");
    }
    expect(problemsOf(() => expectFields(undefined, ["rate"]))[0]?.code).toBe("missing");
    expect(problemsOf(() => expectFields(null, ["rate"]))[0]?.code).toBe("type");
  });
});

describe("texts and numbers", () => {
  test("a blank text is missing, a number in its place is not", () => {
    expect(told(() => expectText("  ", "part", "a part"))).toEqual(['missing | part | a part | "  "']);
    expect(told(() => expectText("", "part", "a part"))).toEqual(['missing | part | a part | ""']);
    expect(told(() => expectText(undefined, "part", "a part"))).toEqual([
      "missing | part | a part | undefined",
    ]);
    expect(told(() => expectText(0, "part", "a part"))).toEqual(["type | part | a part | 0"]);
    expect(expectText(" x ", "part", "a part")).toBe(" x ");
  });

  test("a name with blanks that nobody sees", () => {
    const expected = "a part, without spaces around it, double spaces or invisible characters";
    for (const name of [
      "meadow  ",
      "  meadow",
      "the  meadow",
      "the meadow  ",
      "meadow\u00a0",
      "mea\u200bdow",
    ])
      expect(problemsOf(() => expectName(name, "part", "a part"))[0]?.expected).toBe(expected);
    expect(problemsOf(() => expectName("the  meadow ", "part", "a part"))[0]?.suggestion).toBe("the meadow");
    const [nothing] = problemsOf(() => expectName("\u200b\u200b", "part", "a part"));
    expect([nothing?.code, nothing !== undefined && "suggestion" in nothing]).toEqual(["type", false]);
    for (const name of ["m", "a b", "the north meadow of the park", "pré", "50 % & more"])
      expect(expectName(name, "part", "a part")).toBe(name);
  });

  test("a number without bounds, and one whose bounds are left open", () => {
    for (const value of [-1e300, -1, 0, 5e-324, 1e300]) {
      expect(expectNumber(value, "rate")).toBe(value);
      expect(expectNumber(value, "rate", js({ min: undefined, max: undefined }))).toBe(value);
      expect(expectNumber(value, "rate", js({ above: undefined, below: undefined }))).toBe(value);
    }
    expect(Object.is(expectNumber(-0, "rate"), 0)).toBe(true);
    expect(Object.is(expectNumber(-0, "rate", { max: 1 }), 0)).toBe(true);
  });

  test("numbers that are none are shown in words", () => {
    expect([Number.NaN, 1 / 0, -1 / 0, 0, -2.5].map(shown)).toEqual([
      "not a number",
      "infinity",
      "minus infinity",
      "0",
      "-2.5",
    ]);
  });

  test("bounds that say nothing", () => {
    expect(rangeProblem("rate", "1", {}).expected).toBe("a usable number");
    expect(rangeProblem("rate", "1", { max: Number.POSITIVE_INFINITY }).expected).toBe("a usable number");
    expect(rangeProblem("rate", "0", js({ min: 1, max: undefined })).expected).toBe("1 or more");
  });
});

describe("tables", () => {
  test("are frozen to the last leaf, past nothing and what has no parts", () => {
    const act = (): number => 1;
    const table = frozen({ first: undefined, list: [[1], undefined, [2]], none: null, text: "lb", act });
    expect(Object.isFrozen(table)).toBe(true);
    expect([table.list, table.list[0], table.list[2]].every((part) => Object.isFrozen(part))).toBe(true);
    expect(Object.isFrozen(act)).toBe(false);
    const last = frozen({ list: [1], end: undefined });
    expect(Object.isFrozen(last.list)).toBe(true);
    expect([frozen(3), frozen("lb"), frozen(undefined), frozen(null)]).toEqual([3, "lb", undefined, null]);
  });

  test("a copy keeps what stands in two places, however many records stand before it", () => {
    const twice = { rate: 3 };
    const many = Array.from({ length: 20 }, (_, i) => ({ i }));
    const own = plainCopy({ many, one: twice, two: twice, first: many[0], last: many[19] });
    expect(own.one).toBe(own.two);
    expect(own.one).not.toBe(twice);
    expect(own.first).toBe(own.many[0]);
    expect(own.last).toBe(own.many[19]);
  });
});

describe("names that are near", () => {
  test.each([
    // two letters that one of them has alone, and none of the other's
    ["slowNitrog", ["slowNitrogen"], "slowNitrogen"],
    ["slowNitrogenxx", ["slowNitrogen"], "slowNitrogen"],
    // one letter for another, and one more
    ["ratxs", ["rate"], "rate"],
    ["ratxsy", ["rate"], undefined],
    // two letters for two others
    ["robe", ["rate"], undefined],
    ["raxy", ["rate"], undefined],
    // capitals and order do not count, the first letter does
    ["AREA", ["area"], "area"],
    ["raea", ["area"], undefined],
    // three letters more
    ["rateabc", ["rate"], undefined],
  ])("%s of %s is %s", (name, known, near) => {
    expect(nearName(name, known)).toBe(near);
  });

  test("a name of more than 64 letters is not looked at", () => {
    expect(nearName("a".repeat(64), ["a".repeat(63)])).toBe("a".repeat(63));
    expect(nearName("a".repeat(65), ["a".repeat(64)])).toBeUndefined();
  });
});
