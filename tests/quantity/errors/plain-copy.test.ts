import { describe, expect, it } from "vitest";
import { frozen, plainCopy, quantity } from "../../../src/quantity/index.js";

describe("plainCopy", () => {
  it("reads each value once", () => {
    let times = 0;
    const fickle = {
      get rate() {
        times += 1;
        return times === 1 ? 3 : Number.NaN;
      },
    };
    const own = plainCopy(fickle);
    expect([own.rate, own.rate, times]).toEqual([3, 3, 1]);
  });

  it("copies records and lists, and leaves what has a class as it is", () => {
    const given = { list: [{ a: 1 }], q: quantity(3, "lb"), bytes: Float64Array.of(1), day: new Date(0) };
    const own = plainCopy(given);
    expect(own).toEqual(given);
    expect(own.list[0]).not.toBe(given.list[0]);
    expect(own.q).toBe(given.q);
    expect(own.bytes).toBe(given.bytes);
    expect(own.day).toBe(given.day);
  });

  it("keeps a record that contains itself, and one that stands in two places", () => {
    const twice = { a: 1 };
    const given: Record<string, unknown> = { one: twice, two: twice };
    given.self = given;
    const own = plainCopy(given);
    expect(own.self).toBe(own);
    expect(own.one).toBe(own.two);
    expect(own.one).not.toBe(twice);
  });

  it("writes 0 for -0, and keeps a record without a prototype as one", () => {
    const bare = Object.assign(Object.create(null) as Record<string, unknown>, { value: -0 });
    const own = plainCopy({ bare }).bare;
    expect(Object.is(own.value, 0)).toBe(true);
    expect(Object.getPrototypeOf(own)).toBe(null);
  });

  it("goes sixty-four records or lists deep", () => {
    const nested = (depth: number, inside: unknown, wrap: (inner: unknown) => unknown): unknown =>
      depth === 0 ? inside : nested(depth - 1, wrap(inside), wrap);
    const innermost = (outer: unknown): unknown => {
      let at = outer;
      while (Array.isArray(at) || "a" in (at as object))
        at = Array.isArray(at) ? (at[0] as unknown) : (at as { readonly a: unknown }).a;
      return at;
    };
    for (const wrap of [(a: unknown) => ({ a }), (a: unknown) => [a]]) {
      const end = { end: 1 };
      expect(innermost(plainCopy(nested(64, end, wrap)))).not.toBe(end);
      expect(innermost(plainCopy(nested(64, end, wrap)))).toEqual(end);
      expect(innermost(plainCopy(nested(65, end, wrap)))).toBe(end);
    }
  });

  it("copies a list of a million items, and no longer one", () => {
    const long: unknown[] = [];
    long.length = 1_000_000;
    expect(plainCopy(long)).not.toBe(long);
    long.length += 1;
    expect(plainCopy(long)).toBe(long);
  });

  it("leaves what it cannot read, and what would name a prototype, to the reader behind it", () => {
    const thrower = {
      get rate(): number {
        throw new Error("not now");
      },
    };
    const named = JSON.parse('{"__proto__":{"polluted":1}}') as object;
    const endless: unknown[] = [];
    endless.length = 1e9;
    for (const given of [thrower, named, endless]) expect(plainCopy(given)).toBe(given);
    expect(plainCopy({ polluted: undefined }).polluted).toBeUndefined();
  });
});

describe("frozen", () => {
  it("takes a table that is deeper than a program can call itself", () => {
    const deep = JSON.parse(`${'{"a":'.repeat(20_000)}1${"}".repeat(20_000)}`) as { readonly a: object };
    expect(Object.isFrozen(frozen(deep).a)).toBe(true);
  });
});
