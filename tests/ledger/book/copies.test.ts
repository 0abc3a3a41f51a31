// Copies of what a caller hands in, and ids that read the same.
import { describe, expect, test } from "vitest";
import { ownCopies } from "../../../src/ledger/book/own-copy.js";
import { expectId, idKey, otherId } from "../../../src/ledger/entry/entry-id.js";
import { ledger, standingEntries } from "../../../src/ledger/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints, problemsOf } from "../../errors.js";

const copied = (input: unknown) => {
  const copies = ownCopies();
  const copy = copies.of(input);
  return { copy, whole: copies.whole(), same: copy === input };
};

describe("a copy", () => {
  test("of plain data is deep, frozen and whole", () => {
    const input = { id: "a", list: [{ value: 1 }], none: null, text: "x", yes: true, gone: undefined };
    const { copy, whole, same } = copied(input);
    expect([copy, whole, same]).toEqual([input, true, false]);
    expect(Object.isFrozen(copy) && Object.isFrozen((copy as typeof input).list[0])).toBe(true);
    input.list[0] = { value: 2 };
    expect((copy as typeof input).list).toEqual([{ value: 1 }]);
    for (const plain of [null, undefined, "x", 5, true])
      expect(copied(plain)).toEqual({ copy: plain, whole: true, same: true });
    expect(Object.is(copied(-0).copy, 0)).toBe(true);
    expect(copied(Object.assign(Object.create(null), { a: 1 }))).toEqual({
      copy: { a: 1 },
      whole: true,
      same: false,
    });
    expect(copied(Object.create(null)).copy).toEqual({});
    expect(copied({})).toEqual({ copy: {}, whole: true, same: false });
  });

  test("of a quantity is one", () => {
    const { copy, whole } = copied({ amount: quantity(3, "lb", "N") });
    const { amount } = copy as { amount: ReturnType<typeof quantity> };
    expect([String(amount), whole, Object.isFrozen(amount)]).toEqual(["3 lb of N", true, true]);
    expect(amount.in("oz" as never)).toBeCloseTo(48, 9);
  });

  test("of what cannot be copied is the thing itself, and the whole is not whole", () => {
    for (const odd of [() => 1, new Date(0), new Map(), new Uint8Array(2), JSON.parse('{"__proto__": 1}')])
      expect(copied({ odd })).toMatchObject({ whole: false });
    expect(copied(new Date(0)).same).toBe(true);
    expect(copied(Array.from({ length: 10_000 }, () => 1)).whole).toBe(true);
    expect(copied(Array.from({ length: 10_001 }, () => 1))).toMatchObject({ whole: false, same: true });
    const deep = (levels: number): unknown => (levels === 0 ? 1 : { in: deep(levels - 1) });
    expect([copied(deep(9)).whole, copied(deep(10)).whole]).toEqual([true, false]);
    const thrower = {
      get id(): string {
        throw new Error("no");
      },
    };
    expect(copied(thrower)).toMatchObject({ whole: false, same: true });
  });

  test("of an object of a class has what its prototype gives", () => {
    class Entry {
      readonly id = "a";
      get date(): string {
        return "2026-05-04";
      }
    }
    expect(copied(new Entry())).toMatchObject({ copy: { id: "a", date: "2026-05-04" }, whole: true });
  });
});

describe("ids", () => {
  test("that read the same are the same; letters and digits are taken as they are", () => {
    expect(["a1", "a  1", " a 1 ", "A1", "e\u0301 1"].map(idKey)).toEqual([
      "a1",
      "a 1",
      "a 1",
      "A1",
      "\u00e9 1",
    ]);
    expect(expectId("a-1/2", "id")).toBe("a-1/2");
    expect(expectId("a 1", "id")).toBe("a 1");
    expect(complaints(() => expectId("a\t1", "id"))).toEqual(["type id"]);
    expect(complaints(() => expectId("a\u200b1", "id"))).toEqual(["type id"]);
    expect(complaints(() => expectId("", "id"))).toEqual(["missing id"]);
    expect(otherId("a", "a", "entry")).toBe("an id that no other entry has");
    expect(otherId("a ", "a", "line")).toBe(
      'an id that differs from "a" by more than blanks or the way its letters are stored',
    );
  });
});

describe("corrections", () => {
  const entry = (id: string, more: object = {}) => ({ id, date: "2026-05-04", ...more }) as never;
  const told = (...entries: readonly never[]) =>
    problemsOf(() => ledger(entries)).map(
      ({ code, path, expected, suggestion }) =>
        `${code} ${path}: ${expected}${suggestion ? `; ${suggestion}?` : ""}`,
    );

  test("name an entry that stands before, by its very id, and each the latest of its line", () => {
    expect(told(entry("a"), entry("b", { corrects: "a" }), entry("c", { corrects: "b" }))).toEqual([]);
    expect(told(entry("b", { corrects: "a" }), entry("a"))).toEqual([
      "missing entries[0].corrects: the id of an earlier entry",
    ]);
    expect(told(entry("a 1"), entry("b", { corrects: "a  1" }))).toEqual([
      "missing entries[1].corrects: the id of an earlier entry; a 1?",
    ]);
    expect(told(entry("a"), entry("b", { corrects: "a" }), entry("c", { corrects: "a" }))).toEqual([
      'conflict entries[2].corrects: the latest correction: "a" was already corrected; b?',
    ]);
    expect(told(entry("a"), entry("a"))).toEqual(["duplicate entries[1].id: an id that no other entry has"]);
  });

  test("from a store may name what is not there, or comes later", () => {
    const stored = (entries: readonly never[]) => ({ type: "ledger", version: 1, entries }) as const;
    const ids = (...entries: readonly never[]) => standingEntries(stored(entries)).map(({ id }) => id);
    expect(ids(entry("b", { corrects: "a" }), entry("a"))).toEqual(["b"]);
    expect(ids(entry("b", { corrects: "gone" }))).toEqual(["b"]);
    expect(ids(entry("a"), entry("b", { corrects: "a", voids: true }))).toEqual([]);
    expect(
      complaints(() => ids(entry("a"), entry("b", { corrects: "a" }), entry("c", { corrects: "a" }))),
    ).toEqual(["conflict ledger.entries[2].corrects"]);
    expect(complaints(() => ids(entry("a"), entry("a")))).toEqual(["duplicate ledger.entries[1].id"]);
  });
});
