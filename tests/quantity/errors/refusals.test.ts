import { describe, expect, test } from "vitest";
import {
  allOf,
  checks,
  expectFields,
  expectFlag,
  expectList,
  expectName,
  expectNumber,
  expectOneOf,
  expectRecord,
  expectText,
  fail,
  nearName,
  outOfRange,
  quantity,
  readFields,
  toldAt,
  toldBy,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(
    ({ code, path, expected, got, suggestion }) =>
      `${code} | ${path} | ${expected} | ${got}${suggestion === undefined ? "" : ` => ${suggestion}`}`,
  );
type Row = readonly [name: string, call: () => unknown, problem: string];
const lb = quantity(3, "lb", "N");

describe("readers at the door", () => {
  test.each<Row>([
    ["text for a number", () => expectNumber("3", "rate"), 'not-finite | rate | a finite number | "3"'],
    [
      "infinity",
      () => expectNumber(Number.NEGATIVE_INFINITY, "rate"),
      "not-finite | rate | a finite number | minus infinity",
    ],
    ["nothing", () => expectNumber(undefined, "rate"), "missing | rate | a finite number | undefined"],
    [
      "a quantity",
      () => expectNumber(lb, "rate"),
      'not-finite | rate | a bare number here: amount.in("...") gives it in the unit that the field is in | 3 lb of N',
    ],
    ["below min", () => expectNumber(1, "rate", { min: 2 }), "range | rate | 2 or more | 1"],
    ["beyond max", () => expectNumber(3, "rate", { max: 2 }), "range | rate | 2 or less | 3"],
    ["at above", () => expectNumber(2, "rate", { above: 2 }), "range | rate | more than 2 | 2"],
    ["at below", () => expectNumber(2, "rate", { below: 2 }), "range | rate | less than 2 | 2"],
    [
      "bounds that are none",
      () => expectNumber(2, "rate", { most: 2 } as never),
      "type | bounds.most | finite numbers alone, as min, max, above or below | 2",
    ],
    [
      "a name around a bound",
      () => expectNumber(2, "rate", { minimum: 2 } as never),
      "type | bounds.minimum | finite numbers alone, as min, max, above or below | 2",
    ],
    [
      "a name before a bound",
      () => expectNumber(2, "rate", { themax: 2 } as never),
      "type | bounds.themax | finite numbers alone, as min, max, above or below | 2",
    ],
    [
      "a bound as text",
      () => expectNumber(2, "rate", { min: "2" } as never),
      'type | bounds.min | finite numbers alone, as min, max, above or below | "2"',
    ],
    [
      "bounds as text",
      () => expectNumber(2, "rate", "2" as never),
      'type | bounds | a record with min, max, above or below | "2"',
    ],
    [
      "a list for a record",
      () => expectRecord([1], "job"),
      "type | job | a record of named arguments | a list of 1",
    ],
    [
      "nothing for a record",
      () => expectRecord(undefined),
      "missing | input | a record of named arguments | undefined",
    ],
    ["null for a record", () => expectRecord(null, "job", "a job"), "type | job | a job | null"],
    [
      "text for a record",
      () => expectFields("3", ["rate", "area"]),
      'type | input | a record with rate, area | "3"',
    ],
    [
      "nothing for fields",
      () => expectFields(undefined, ["rate", "area"], "job"),
      "missing | job | a record with rate, area | undefined",
    ],
    [
      "nothing for fields, in words",
      () => expectFields(undefined, ["rate", "area"], "job", "a job"),
      "missing | job | a job | undefined",
    ],
    [
      "a long list of fields",
      () => expectFields(3, "abcdefghij".split("")),
      "type | input | a record with a, b, c, d, e, f, g, h | 3",
    ],
    [
      "a quantity for a record",
      () => expectFields(lb, ["rate", "area"], "job"),
      "type | job | a record with rate, area: write { rate: ... } | 3 lb of N",
    ],
    [
      "a quantity for a record without a path",
      () => expectFields(lb, ["rate"], ""),
      "type | rate | a record with rate: write { rate: ... } | 3 lb of N",
    ],
    [
      "a misspelt field",
      () => expectFields({ rtae: 3 }, ["rate", "area"], "job"),
      'type | job.rtae | one of the fields rate, area | a field "rtae" => rate',
    ],
    [
      "a misspelt field of a record without a path",
      () => expectFields({ extra: 3 }, ["rate"], ""),
      'type | extra | one of the fields rate | a field "extra"',
    ],
    [
      "nothing for a list",
      () => expectList(undefined, "items", "item"),
      "missing | items | a list with at least one item | undefined",
    ],
    [
      "text for a list",
      () => expectList("ab", "items", "item"),
      'type | items | a list with at least one item | "ab"',
    ],
    [
      "an empty list",
      () => expectList([], "items", "item"),
      "missing | items | at least one item | an empty list",
    ],
    [
      "a long list",
      () => expectList([1, 2, 3], "items", "item", 2),
      "range | items | at most 2 items | a list of 3",
    ],
    [
      "a most that is none",
      () => expectList([1], "items", "item", "2" as never),
      'type | most | a number of items | "2"',
    ],
    [
      "nothing for a text",
      () => expectText(undefined, "part", "a name"),
      "missing | part | a name | undefined",
    ],
    ["blanks for a text", () => expectText(" \t", "part", "a name"), 'missing | part | a name | " \\t"'],
    ["a number for a text", () => expectText(3, "part", "a name"), "type | part | a name | 3"],
    ["null for a text", () => expectText(null, "part", "a name"), "type | part | a name | null"],
    [
      "another word",
      () => expectOneOf("SI", ["US", "metric"], "units"),
      'type | units | one of "US", "metric" | "SI"',
    ],
    [
      "no word",
      () => expectOneOf(undefined, ["US", "metric"], "units"),
      'missing | units | one of "US", "metric" | undefined',
    ],
    [
      "no word among none",
      () => expectOneOf(undefined, [undefined as never], "units"),
      "missing | words[0] | a list of words | undefined",
    ],
    ["yes for true", () => expectFlag("yes", "drift"), 'type | drift | true or false | "yes"'],
    [
      "a blank name",
      () => expectName(" ", "part", "the name of a part"),
      'missing | part | the name of a part | " "',
    ],
    [
      "a name with a blank behind it",
      () => expectName("lawn ", "part", "the name of a part"),
      'type | part | the name of a part, without spaces around it, double spaces or invisible characters | "lawn " => lawn',
    ],
    ["a near name of no text", () => nearName(3 as never, []), "type | name | a name | 3"],
    ["a near name of no list", () => nearName("a", "b" as never), 'type | known | a list of names | "b"'],
    [
      "a near name of a long list",
      () => nearName("a", new Array(1001).fill("b")),
      "type | known | a list of names | a list of 1001",
    ],
    ["a range", () => outOfRange("depth", 3, { max: 2, unit: "ft" }), "range | depth | 2 ft or less | 3"],
    [
      "bounds of a record",
      () => outOfRange("depth", 3, { max: {} } as never),
      "type | bounds.max | a number, or a text | a record",
    ],
    [
      "no bounds",
      () => outOfRange("depth", 3, undefined as never),
      "missing | bounds | a record with min, max, above, below, step, unit, count | undefined",
    ],
    [
      "a reader that is none",
      () => allOf({ rate: 3 } as never),
      "type | readers.rate | a function that reads | 3",
    ],
    [
      "readers that are none",
      () => allOf(undefined as never),
      "missing | readers | a record of named arguments | undefined",
    ],
    ["a run that is none", () => toldAt("a", "b", 3 as never), "type | run | a function that reads | 3"],
    ["a run by places that is none", () => toldBy({}, 3 as never), "type | run | a function that reads | 3"],
    [
      "a reader of a field that is none",
      () =>
        allOf({
          all: () => {
            const problems = checks();
            readFields({ rate: 3 }, { rate: 3 } as never, [], "job", "a job", problems);
            problems.done();
          },
        }),
      "type | run | a function that reads | 3",
    ],
    [
      "problems that are none",
      () => readFields({}, {}, [], "job", "a job", 3 as never),
      "missing | run | a function that reads | undefined",
    ],
    ["a code that is none", () => fail("rate" as never, "rate", 3, "more"), "type | rate | more | 3"],
    ["a code of two", () => fail("range|missing" as never, "rate", 3, "more"), "type | rate | more | 3"],
    ["a code of a part of one", () => fail("unit" as never, "rate", 3, "more"), "type | rate | more | 3"],
  ])("%s", (_, call, problem) => {
    expect(told(call)).toEqual([problem]);
  });

  test("what lies at a bound goes through, but not at one that excludes it", () => {
    expect(expectNumber(2, "rate", { min: 2 })).toBe(2);
    expect(expectNumber(2, "rate", { max: 2 })).toBe(2);
    expect(expectNumber(2, "rate", { above: 1, below: 3 })).toBe(2);
    expect(expectNumber(2, "rate", { min: undefined } as never)).toBe(2);
    expect(Object.is(expectNumber(-0, "rate"), 0)).toBe(true);
    expect(problemsOf(() => expectNumber(1, "rate", { min: 2, max: 9 }))[0]?.params).toEqual({
      min: 2,
      max: 9,
    });
    expect(problemsOf(() => expectList([1, 2], "items", "item", 1))[0]?.params).toEqual({ max: 1 });
    expect(expectList([1, 2], "items", "item", 2)).toEqual([1, 2]);
    const given = [1];
    expect(expectList(given, "items", "item")).not.toBe(given);
    expect(expectFlag(false, "drift")).toBe(false);
    expect(expectFields(lb, ["value", "unit", "of", "dimension"]).unit).toBe("lb");
    expect(nearName("rtae", ["rate"])).toBe("rate");
    expect(nearName("rtae", new Array(1000).fill("rate"))).toBe("rate");
  });

  test("of each field and of all", () => {
    const problems = checks();
    readFields(
      { rate: 3, area: "x" },
      { rate: expectNumber, area: expectNumber, speed: expectNumber },
      ["speed"],
      "job",
      "a job",
      problems,
    );
    expect(told(() => problems.done())).toEqual([
      'not-finite | job.area | a finite number | "x"',
      "missing | job.speed | a finite number | undefined",
    ]);
    const none = checks();
    readFields({}, { rate: expectNumber }, [], "job", "a job", none);
    expect(none.count()).toBe(0);
    const more = checks();
    readFields(3, { rate: expectNumber }, [], "job", "a job", more);
    readFields({ extra: 1 }, { rate: expectNumber }, [], 3 as never, "a job", more);
    expect(told(() => more.done())).toEqual([
      "type | job | a job | 3",
      'type | input.extra | one of the fields rate | a field "extra"',
    ]);
  });
});
