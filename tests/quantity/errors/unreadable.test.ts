import { describe, expect, test } from "vitest";
import { unreadable } from "../../../src/quantity/index.js";

describe("what is not plain data", () => {
  const plain = "plain data, as JSON.parse gives it";
  const line = (input: unknown, path = "job"): readonly string[] =>
    unreadable(input, path).map(
      ({ code, path: where, got, expected }) => `${code} | ${where} | ${got} | ${expected}`,
    );
  const nested = (depth: number): unknown => {
    let inner: unknown = 1;
    for (let n = 0; n < depth; n += 1) inner = { a: inner };
    return inner;
  };
  test("is told with its place", () => {
    expect(line({ rates: [1, { toString: 1 }] })).toEqual([
      `type | job.rates[1] | a record that cannot be turned into text | ${plain}`,
    ]);
    expect(line({ rate: 1n })).toEqual([`type | job.rate | a bigint | ${plain}`]);
    expect(line([Symbol("x")])).toEqual([`type | job[0] | a symbol | ${plain}`]);
    expect(line({ rate: 1n }, "")).toEqual([`type | rate | a bigint | ${plain}`]);
    expect(unreadable({ rate: 1n }, 3 as never)[0]?.path).toBe("input.rate");
    const self: Record<string, unknown> = {};
    self.self = self;
    expect(line(self)).toEqual([`type | job.self | a record that contains itself | ${plain}`]);
    const one = { a: 1 };
    expect(line({ one, two: one })).toEqual([]);
    expect(
      line(
        Object.defineProperty({}, "a", {
          enumerable: true,
          get: () => {
            throw new Error("no");
          },
        }),
      ),
    ).toEqual([`type | job | a record that throws when it is read | ${plain}`]);
    expect(line(nested(64))).toEqual([]);
    expect(line(nested(65))).toEqual([
      `type | job${".a".repeat(64)} | a record more than 64 deep | ${plain}`,
    ]);
    const long: unknown[] = [];
    long.length = 1_000_001;
    expect(unreadable(long, "job")).toEqual([
      {
        code: "range",
        path: "job",
        got: "a list of 1000001",
        expected: "at most 1000000 items",
        params: { max: 1_000_000 },
      },
    ]);
    long.length = 1_000_000;
    expect(line(long)).toEqual([]);
    expect(line(Float64Array.of(1))).toEqual([]);
    expect(line(null)).toEqual([]);
    expect(line("text")).toEqual([]);
  });

  test("what throws is told alone, whatever was found in it before", () => {
    const throws = (name: string, record: object = {}): object =>
      Object.defineProperty(record, name, {
        enumerable: true,
        get: () => {
          throw new Error("no");
        },
      });
    const thrown = `a record that throws when it is read | ${plain}`;
    expect(line({ last: 2n, job: throws("b", { a: 1n }) })).toEqual([
      `type | job.last | a bigint | ${plain}`,
      `type | job.job | ${thrown}`,
    ]);
    expect(line({ list: [1, throws("toString")] })).toEqual([`type | job.list[1] | ${thrown}`]);
  });

  test("numbers in a typed array and what is no record have nothing in them", () => {
    const bytes = Object.assign(Float64Array.of(1), { sign: 1n });
    expect(line({ bytes, text: "1", none: null, act: () => 1n })).toEqual([]);
    expect(line(bytes)).toEqual([]);
    expect(line(1n)).toEqual([]);
    expect(line([[1n], { a: [2n] }], "")).toEqual([
      `type | [0][0] | a bigint | ${plain}`,
      `type | [1].a[0] | a bigint | ${plain}`,
    ]);
  });
});
