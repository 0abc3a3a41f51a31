import { describe, expect, test } from "vitest";
import { checks, fail, toldAt, toldBy } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

describe("problems of others, told of the place here", () => {
  const path = (call: () => unknown): string => problemsOf(call)[0]?.path ?? "";
  const at = (where: string) => () => fail("range", where, 3, "more");
  test("of a record inside", () => {
    expect(path(() => toldAt("treatments[0].interval", "rule", at("rule.days")))).toBe(
      "treatments[0].interval.days",
    );
    expect(path(() => toldAt("treatments[0].interval", "rule", at("rule")))).toBe("treatments[0].interval");
    expect(path(() => toldAt("interval", "rule", at("ruler.days")))).toBe("interval.ruler.days");
    expect(path(() => toldAt("interval", "rule", at("days")))).toBe("interval.days");
    expect(() =>
      toldAt("interval", "rule", () => {
        throw new TypeError("another");
      }),
    ).toThrow(TypeError);
    expect(toldAt("a", "b", () => 3)).toBe(3);
  });

  test("of arguments", () => {
    const places = { capacity: "sprayer.tank", rate: "job.rate" };
    expect(path(() => toldBy(places, at("capacity")))).toBe("sprayer.tank");
    expect(path(() => toldBy(places, at("rate.unit")))).toBe("job.rate.unit");
    expect(path(() => toldBy(places, at("rate[2]")))).toBe("job.rate[2]");
    expect(path(() => toldBy(places, at("rates")))).toBe("rates");
    expect(path(() => toldBy(places, at("width")))).toBe("width");
    expect(() =>
      toldBy(places, () => {
        throw new TypeError("another");
      }),
    ).toThrow(TypeError);
  });

  test("of checks", () => {
    const problems = checks();
    problems.run(at("rate"), "treatments[1]");
    problems.run(at("[2].rate"), "treatments");
    problems.run(at(""), "treatments");
    problems.run(at("rate"));
    problems.add({ code: "range", path: "area", got: "3", expected: "more" });
    expect(problems.count()).toBe(5);
    expect(problemsOf(() => problems.done()).map((one) => one.path)).toEqual([
      "treatments[1].rate",
      "treatments[2].rate",
      "treatments",
      "rate",
      "area",
    ]);
    expect(problems.run(() => 3)).toBe(3);
    expect(() =>
      problems.run(() => {
        throw new TypeError("another");
      }),
    ).toThrow(TypeError);
    checks().done();
  });

  test("the ten thousandth problem is the last", () => {
    const many = checks();
    const add = (): void => many.add({ code: "range", path: "x", got: "3", expected: "more" });
    for (let n = 1; n < 10_000; n += 1) add();
    expect(many.count()).toBe(9_999);
    expect(problemsOf(add)).toHaveLength(10_000);
  });
});
